//! Figures with a space in them: one number grouped by three, or two numbers of which the first has an owner.

use super::count::HAVE_TYPES;
use super::galv;
use super::items::Line;
use super::lexicon::OWN_A_NUMBER;
use super::part::{Family, Scopes};
use super::steels::{B695, BOTH, STANDARD};
use super::what::{Counted, SteelWord, What};
use crate::process::Process;
use crate::quantity::letters::lower;
use crate::steel::Grade;
use crate::thread::Designation;

/// What stands in front of the figures.
struct Front<'a> {
    what: &'a What,
    text: &'a str,
    line: &'a Line,
    scopes: &'a Scopes,
    /// Whether it is of the name of a nut, or of the part's own.
    is_nut: bool,
    is_name: bool,
}

/// Who may own the first figures: what stands in front of them; which figures; what they say then.
type Owner = (fn(&Front<'_>) -> bool, fn(u32) -> bool, &'static str);

/// Every owner; of two the first counts. `{}` stands for the figures, `{w}` for the word in front of them.
const OWNERS: &[Owner] = &[
    (
        |front| front.is(Process::Mechanical),
        |first| B695.contains(&first) || BOTH.contains(&first),
        "class {}",
    ),
    (|front| front.is(Process::Electroplated), is_plated, "a coat of {} µm"),
    // `galv` is hot-dip in English and electroplated in German.
    (
        |front| front.is(Process::HotDip) && galv::is_short(front.text.trim_end_matches('.')),
        is_plated,
        "a coat of {} µm",
    ),
    (|front| front.is(Process::HotDip), |first| (20..=150).contains(&first), "a coat of {} µm"),
    (|front| front.has_types(), |first| first <= 3, "type {}"),
    (
        |front| *front.what == What::Steel(SteelWord::OtherMetal),
        |first| (200..=699).contains(&first),
        "“{w} {}”",
    ),
    (|front| matches!(front.what, What::Steel(SteelWord::Half(_))), |first| first <= 105, "“{w} {}”"),
    (|front| front.owns_a_number(), |first| (3..=150).contains(&first), "“{w} {}”"),
    // `class 40 or 55 500 pcs`.
    (|front| *front.what == What::Or, |_| true, "“{w} {}”"),
    (|front| matches!(front.what, What::Category(_) | What::Place(_)), |first| first <= 100, "{} years"),
    (|front| front.is_thread() && front.scopes.family == Family::Nut, is_nut_class, "class {}"),
    (|front| front.lacks_class(), is_nut_class, "a nut of class {}"),
    (|front| front.lacks_size(), |_| true, "a size of {}"),
    (|front| front.is_standard_of_mate(), is_metric_size, "a size of {}"),
    (|front| front.lacks_length(), |_| true, "a length of {}"),
    (|front| front.lacks_grade(), |first| matches!(first, 2 | 5 | 8), "grade {}"),
];

impl Front<'_> {
    fn is(&self, process: Process) -> bool {
        matches!(self.what, What::Process(own, _) if *own == process)
    }

    fn is_thread(&self) -> bool {
        matches!(self.what, What::Thread(_))
    }

    fn has_types(&self) -> bool {
        matches!(self.what, What::Steel(SteelWord::Grade(grade)) if HAVE_TYPES.contains(&grade.key()))
    }

    fn owns_a_number(&self) -> bool {
        matches!(self.what, What::Coat(_) | What::Other(_) | What::Not(_))
            || *self.what == What::Filler && OWN_A_NUMBER.contains(&lower(self.text).as_str())
    }

    fn lacks_size(&self) -> bool {
        matches!(self.what, What::PartStandard(_)) && self.line.draft.get("thread").is_none()
    }

    /// Whether a nut is ordered, alone or with the part, whose class the line does not say, and nothing in front of
    /// the figures has a number of its own.
    fn lacks_class(&self) -> bool {
        let is_open = match self.scopes.family {
            Family::Nut => self.line.draft.get("steel").is_none(),
            Family::Bolt => self.scopes.with.0 && lacks_nut(self.line),
            Family::Washer => false,
        };
        let is_metric = self.line.draft.get("thread").is_none_or(|thread| thread.starts_with('M'));
        is_open
            && is_metric
            && (self.is_nut
                || !self.is_name && matches!(self.what, What::Process(..) | What::Coat(_) | What::Thread(_)))
    }

    /// Whether it is the standard of a nut or a washer that comes with the part.
    fn is_standard_of_mate(&self) -> bool {
        let is_mate = |key: &str| key.ends_with("nut") || key.ends_with("washer");
        matches!(self.what, What::PartStandard(key) if self.scopes.family == Family::Bolt && is_mate(key))
    }

    fn lacks_length(&self) -> bool {
        self.is_thread() && self.scopes.family == Family::Bolt && self.line.draft.get("length").is_none()
    }

    fn lacks_grade(&self) -> bool {
        self.is_name && self.scopes.family == Family::Bolt && self.line.draft.get("steel").is_none()
    }
}

/// Whether the nut that comes with the part has no grade of its own yet.
fn lacks_nut(line: &Line) -> bool {
    line.draft.get("nut").is_none_or(|nut| nut == STANDARD)
}

/// Thicknesses of plated zinc, in µm.
fn is_plated(number: u32) -> bool {
    matches!(number, 3 | 5 | 8 | 12 | 25)
}

fn is_metric_size(number: u32) -> bool {
    Designation::read(&format!("M{number}")).is_ok()
}

fn is_nut_class(number: u32) -> bool {
    Grade::read(&format!("nut class {number}")).is_ok()
}

/// What figures with a space in them are, where the first may have an owner.
pub(super) enum Grouped {
    /// One number.
    One,
    /// It may be two: why it is not used.
    Either(String),
    /// The class of a nut, and the pieces.
    NutClass(&'static str, u64),
}

/// Who owns the first figures of a count; `word` is one that nobody knows and that stands in front of it.
pub(super) fn read(
    line: &Line,
    scopes: &Scopes,
    (at, counted): (usize, &Counted),
    word: Option<&str>,
) -> Grouped {
    let Some((first, rest)) = counted.spaced.filter(|(_, rest)| *rest >= 100) else { return Grouped::One };
    if let Some(word) = word {
        return either(counted, &format!("“{word} {first}”"), rest);
    }
    let front = line.before(at).and_then(|before| {
        let item = line.items.get(before)?;
        let is_name = scopes.names.contains(&before);
        let is_nut = scopes.nut.contains(&before) || scopes.family == Family::Nut && is_name;
        Some(Front { what: &item.what, text: &item.text, line, scopes, is_nut, is_name })
    });
    let Some(front) = front else { return Grouped::One };
    let is_own = scopes.family == Family::Nut;
    let lacks = if is_own { line.draft.get("steel").is_none() } else { lacks_nut(line) };
    let class = Grade::read(&format!("nut class {first}")).ok();
    // `with nuts 10 500 sets` may be so many sets.
    let is_one = is_own || !lower(front.text).ends_with(['s', 'n']);
    if let Some(class) = class.filter(|_| front.is_nut && lacks && is_one) {
        return Grouped::NutClass(class.key(), rest);
    }
    // `M20 DIN 471 20 100 pcs`, `M16x60 … with washers 16 200 sets`: the size said twice.
    let is_of_mate =
        line.before(at).is_some_and(|at| scopes.nut.contains(&at) || scopes.washer.contains(&at));
    let is_size = (matches!(front.what, What::PartStandard(_)) || is_of_mate)
        && line.draft.get("thread").is_some_and(|thread| thread == format!("M{first}"));
    if is_size {
        return either(counted, &format!("a size of {first}"), rest);
    }
    let owner = OWNERS.iter().find(|(stands, owns, _)| stands(&front) && owns(first));
    let Some((.., says)) = owner else { return Grouped::One };
    let other = says.replace("{}", &first.to_string()).replace("{w}", front.text);
    either(counted, &other, rest)
}

fn either(counted: &Counted, other: &str, rest: u64) -> Grouped {
    let pieces = counted.pieces;
    Grouped::Either(format!(
        "it could be {pieces} pieces, or {other} and {rest} pieces: write {pieces} pcs or put a comma between"
    ))
}
