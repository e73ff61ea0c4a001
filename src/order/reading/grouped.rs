//! Figures with a space in them: one number grouped by three, or two numbers of which the first has an owner.

use super::count::HAVE_TYPES;
use super::items::Line;
use super::lexicon::OWN_A_NUMBER;
use super::part::{Family, Scopes};
use super::steels::B695;
use super::what::{Counted, SteelWord, What};
use crate::process::Process;
use crate::quantity::letters::lower;
use crate::steel::Grade;

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
    (|front| front.is(Process::Mechanical), |first| B695.contains(&first), "class {}"),
    (
        |front| front.is(Process::Electroplated),
        |first| matches!(first, 3 | 5 | 8 | 12 | 25),
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
    (|front| matches!(front.what, What::Category(_) | What::Place(_)), |first| first <= 100, "{} years"),
    (|front| front.is_thread() && front.scopes.family == Family::Nut, is_nut_class, "class {}"),
    (|front| front.lacks_size(), |_| true, "a size of {}"),
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

    fn lacks_length(&self) -> bool {
        self.is_thread() && self.scopes.family == Family::Bolt && self.line.draft.get("length").is_none()
    }

    fn lacks_grade(&self) -> bool {
        self.is_name && self.scopes.family == Family::Bolt && self.line.draft.get("steel").is_none()
    }
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

/// Who owns the first figures of a count.
pub(super) fn read(line: &Line, scopes: &Scopes, at: usize, counted: &Counted) -> Grouped {
    let Some((first, rest)) = counted.spaced.filter(|(_, rest)| *rest >= 100) else { return Grouped::One };
    let front = line.before(at).and_then(|before| {
        let item = line.items.get(before)?;
        let is_name = scopes.names.contains(&before);
        let is_nut = scopes.nut.contains(&before) || scopes.family == Family::Nut && is_name;
        Some(Front { what: &item.what, text: &item.text, line, scopes, is_nut, is_name })
    });
    let Some(front) = front else { return Grouped::One };
    let field = if scopes.family == Family::Nut { "steel" } else { "nut" };
    let class = Grade::read(&format!("nut class {first}")).ok();
    if let Some(class) = class.filter(|_| front.is_nut && line.draft.get(field).is_none()) {
        return Grouped::NutClass(class.key(), rest);
    }
    let owner = OWNERS.iter().find(|(stands, owns, _)| stands(&front) && owns(first));
    let Some((.., says)) = owner else { return Grouped::One };
    let other = says.replace("{}", &first.to_string()).replace("{w}", front.text);
    let pieces = counted.pieces;
    Grouped::Either(format!(
        "it could be {pieces} pieces, or {other} and {rest} pieces: write {pieces} pcs or put a comma between"
    ))
}
