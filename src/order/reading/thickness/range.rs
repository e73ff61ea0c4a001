//! The two ends of a thickness: `8-12 µm`, `min 8, max 12 µm`, `45 µm +20/-0`.

use super::THICKEST_INCH;
use crate::order::reading::left_out;
use crate::order::reading::length::over_inch;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::measure::plus_minus;
use crate::order::reading::number::{self, Number};
use crate::order::reading::steel::DOTTED;
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::wanted::Wanted;
use crate::order::reading::what::What;
use crate::quantity::Length;

/// What stands between the ends of a range.
const DASHES: &[&str] = &["-", "–", "~", "/", "…"];

/// The greater end of a range.
pub(super) struct Greatest {
    /// Its number.
    pub number: Number,
    /// The place behind the lesser end, with its own unit and the word that says that it is the least.
    pub from: usize,
    /// Whether the lesser end has neither a unit of its own nor the word for the least in front.
    pub is_bare: bool,
    /// Whether the word for the greatest stands between the two, or that for the least.
    pub says_ends: bool,
}

/// The greater end behind a number, if a range is written there. What joins the two: a dash, points, `to`, `and` behind
/// `between`, or the word for the greatest.
pub(super) fn greatest(chain: &Chain<'_>, at: usize, first: &Number) -> Option<Greatest> {
    // `.0002"-.0005"`, `8 µm - 12 µm`: its unit stands behind both.
    let unit = unit_of_both(chain, at, first.end);
    let own = unit.unwrap_or(first.end);
    let named = lexicon::over(chain, own, Word::Least);
    let from = if named == own { own } else { over_point(chain, named) };
    let is_bare = unit.is_none() && !is_behind_least(chain, at);
    let joint = over_joint(chain, at, from);
    // `min 8, max 12 µm`: only where the two are said.
    let loose =
        if is_bare && from == own { from } else { over_but(chain, chain.over(from, &[",", ";", "("])) };
    let most = [joint, loose].into_iter().find_map(|at| Some(over_most(chain, at)).filter(|end| *end != at));
    let to = most.unwrap_or(joint);
    let number = number::decimal(chain, to)
        .filter(|second| second.value > first.value && second.grouped.is_none_or(|_| second.value < 1.0))?;
    // `8 min 12 max µm`: said behind the greater end.
    let says_most = most.is_some() || says_most_behind(chain, number.end);
    let is_joined = to != from && from == own || says_most && from != own;
    is_joined.then_some(Greatest { number, from, is_bare, says_ends: most.is_some() || from != own })
}

/// The place behind what sets the greatest against the least: `at least 45 µm but not more than 80 µm`.
fn over_but(chain: &Chain<'_>, at: usize) -> usize {
    let is_one = |word: &str| lexicon::BUT.contains(&word) || lexicon::AND.contains(&word);
    if chain.word(at).is_some_and(is_one) { chain.after(at) } else { at }
}

/// Whether the word for the greatest stands behind a number, or behind its unit, and is not that of a thickness behind it.
fn says_most_behind(chain: &Chain<'_>, at: usize) -> bool {
    let unit = unit_name(chain, at).map_or(at, |(end, _)| end);
    let says = |at: usize| {
        let end = over_most(chain, at);
        end != at && thickness_at(chain, end).is_none()
    };
    says(at) || says(unit)
}

/// The place behind the unit at a place, where a range follows whose end has the same unit.
fn unit_of_both(chain: &Chain<'_>, at: usize, behind: usize) -> Option<usize> {
    let (end, first) = unit_name(chain, behind)?;
    let joint = over_joint(chain, at, end);
    let second = number::decimal(chain, joint).filter(|_| joint != end)?;
    unit_name(chain, second.end).filter(|(_, second)| *second == first).map(|_| end)
}

/// The place behind a unit that coats are measured in, and its name.
pub(super) fn unit_name(chain: &Chain<'_>, at: usize) -> Option<(usize, &'static str)> {
    let inch = over_inch(chain, at);
    let other = || {
        lexicon::find(chain, at, |word| match word {
            Word::OfCoat(unit) => Some(unit),
            Word::Length("mm") => Some("mm"),
            _ => None,
        })
    };
    if inch != at { Some((inch, "in")) } else { other() }
}

/// The place behind what joins the ends of a range whose lesser one begins at `first`: a dash, points, `to`, `and`.
fn over_joint(chain: &Chain<'_>, first: usize, at: usize) -> usize {
    let dash = chain.over(at, DASHES);
    if dash != at {
        return dash;
    }
    // `5...8 µm`.
    let point = |at: usize| chain.sign(at, &["."]);
    let second = chain.after(at);
    if point(at) && point(second) && chain.glued(second) {
        let third = chain.after(second);
        return if point(third) && chain.glued(third) { chain.after(third) } else { third };
    }
    let is_between = || {
        let word = chain.before(first).and_then(|before| chain.word(before));
        word.is_some_and(|word| lexicon::BETWEEN.contains(&word))
    };
    match chain.word(at) {
        Some(word) if lexicon::UP_TO.contains(&word) => chain.after(at),
        Some(word) if lexicon::AND.contains(&word) && is_between() => chain.after(at),
        _ => at,
    }
}

/// The place behind the word for the greatest, with its point.
pub(super) fn over_most(chain: &Chain<'_>, at: usize) -> usize {
    let end = lexicon::over(chain, at, Word::Most);
    if end == at { at } else { over_point(chain, end) }
}

/// The place behind the point of a word cut short, or its colon; in `max .0005` the point is that of the number.
pub(super) fn over_point(chain: &Chain<'_>, at: usize) -> usize {
    if chain.sign(at, &["."]) && !chain.glued(at) { at } else { chain.over(at, &[".", ":"]) }
}

/// Whether the word for the least stands in front of a place.
fn is_behind_least(chain: &Chain<'_>, at: usize) -> bool {
    let mut place = chain.before(at);
    // `must not be less than`.
    for _ in 0..5 {
        let Some(from) = place else { return false };
        let end = lexicon::over(chain, from, Word::Least);
        if chain.sign(from, &["≥", ">"]) || end != from && over_point(chain, end) == at {
            return true;
        }
        place = chain.before(from);
    }
    false
}

/// Whether what stands in front of `under` or `less than` refuses it, which makes a least of it: `no coat under`, `do not go
/// under`. Words that nobody knows are looked at as well.
pub(super) fn is_refused(chain: &Chain<'_>, at: usize) -> bool {
    let front = chain.tokens().get(..at).unwrap_or_default().iter().rev().take(5);
    let mut words = front.take_while(|token| token.sort == Sort::Word).map(|token| token.lower.as_str());
    let word = words.find(|word| !lexicon::OF_A_COAT.contains(word) && !lexicon::UNDER_WHICH.contains(word));
    word.is_some_and(|word| lexicon::NOT_UNDER.contains(&word))
}

/// The place behind what refuses a thickness in front of it: `under 25 µm is not accepted`.
pub(super) fn over_refused(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let from =
        if matches!(chain.word(at), Some("is" | "are" | "ist" | "sind")) { chain.after(at) } else { at };
    let refuses = |word| matches!(word, Word::Excluded | Word::Refused).then_some(());
    let by_a_verb = || match left_out::by_a_verb(chain, at)?.as_slice() {
        [(end, What::Excluded)] => Some(*end),
        _ => None,
    };
    // `is rejected`, `is not accepted`.
    let is = lexicon::whole(chain, at, refuses).or_else(|| lexicon::whole(chain, from, refuses));
    is.map(|(end, ())| end).or_else(by_a_verb)
}

/// The thickness at a place, with its unit; so small a number without one is in inches.
pub(super) fn thickness_at(chain: &Chain<'_>, at: usize) -> Option<Length> {
    let number =
        number::decimal(chain, at).filter(|number| number.grouped.is_none_or(|_| number.value < 1.0))?;
    match unit_name(chain, number.end) {
        Some((_, "mm")) => Some(Length::from_mm(number.value)),
        Some((_, name)) if name != "in" => Wanted::read(number.value, name).map(Wanted::solid),
        _ => (number.value <= THICKEST_INCH).then(|| Length::from_inch(number.value)),
    }
}

/// Whether a number with a unit of another thing stands at a place, or behind the name of one: `max 2 weeks`, `max 320
/// HV`, `max torque 80 Nm`.
pub(super) fn measures_another(chain: &Chain<'_>, at: usize) -> bool {
    /// So many words a name has.
    const LONGEST: usize = 3;
    // A word that means nothing by itself, or one for what is measured.
    let is_name = |at: usize| {
        chain.is_out(at)
            || lexicon::find(chain, at, |word| {
                Some(matches!(word, Word::Of(_) | Word::Filler | Word::Scale(_)))
            })
            .is_none_or(|(_, is_one)| is_one)
    };
    let is_word = |at: usize| chain.tokens().get(at).is_some_and(|token| token.sort == Sort::Word);
    // Words that nobody took are out of the chain.
    let first = chain.before(at).map_or(at, |before| before + 1);
    let number_at = (first..).take(LONGEST + 1).find(|at| !(is_word(*at) && is_name(*at)));
    let number = number_at
        .and_then(|at| number::decimal(chain, at))
        .filter(|number| number.grouped.is_none() && !DOTTED.contains(&number.text.as_str()));
    let is_scale =
        number_at.is_some_and(|at| (first..at).any(|at| lexicon::find(chain, at, of_a_hardness).is_some()));
    let unit = |word| match word {
        Word::Measure(_) | Word::Scale(_) | Word::Degrees(_) | Word::Mass(_) | Word::Hours => Some(()),
        _ => None,
    };
    number.is_some_and(|number| {
        is_scale || lexicon::find(chain, number.end, unit).is_some_and(|(end, ())| !chain.inside_a_run(end))
    })
}

/// A scale of hardness, which may stand in front of its number: `max HRC 32`.
fn of_a_hardness(word: Word) -> Option<()> {
    matches!(word, Word::Scale(_)).then_some(())
}

/// By how much a thickness may be less and more: `± 2`, `±10 %`, `+20/-0`, `-0 +20`, `(+20/0)`.
pub(super) struct Spread {
    /// The place behind it.
    pub end: usize,
    /// By how much less.
    pub less: f64,
    /// By how much more.
    pub more: f64,
}

/// The tolerance at a place, of a number whose unit, `unit`, stands in front of it or not yet.
pub(super) fn spread(chain: &Chain<'_>, at: usize, of: f64, unit: Option<&str>) -> Option<Spread> {
    let amount = |at: usize| {
        let number = number::decimal(chain, at)
            .filter(|number| number.grouped.is_none_or(|_| number.value < 1.0) && !chain.inside_a_run(at))?;
        Some(percent_or_unit(chain, number.end, number.value, of, unit))
    };
    let open = chain.over(at, &["("]);
    let found = match plus_minus(chain, open) {
        Some((end, by)) => {
            let (end, by) = percent_or_unit(chain, end, by, of, unit);
            Spread { end, less: by, more: by }
        }
        None => {
            let signed = |at: usize, signs: &[&str]| {
                let number = chain.after(at);
                (chain.sign(at, signs) && chain.glued(number)).then(|| amount(number))?
            };
            let (plus, minus) = (&["+"], &["-", "−", "–"]);
            match signed(open, plus) {
                Some((end, more)) => {
                    let to = chain.over(end, &["/", ","]);
                    // `+20/0`.
                    let nought = || amount(to).filter(|(_, less)| to != end && *less == 0.0);
                    let (end, less) = signed(to, minus).or_else(nought)?;
                    Spread { end, less, more }
                }
                None => {
                    let (end, less) = signed(open, minus)?;
                    let (end, more) = signed(chain.over(end, &["/", ","]), plus)?;
                    Spread { end, less, more }
                }
            }
        }
    };
    let end = if open == at { found.end } else { chain.over(found.end, &[")"]) };
    // `10±2µm`: its unit touches it.
    (unit.is_none() || !chain.inside_a_run(end)).then_some(Spread { end, ..found })
}

/// `10 %` of the number, or so much of its unit, which may be said again.
fn percent_or_unit(chain: &Chain<'_>, at: usize, by: f64, of: f64, unit: Option<&str>) -> (usize, f64) {
    if chain.sign(at, &["%"]) {
        return (chain.after(at), by * of / 100.0);
    }
    match unit_name(chain, at) {
        Some((end, name)) if Some(name) == unit => (end, by),
        _ => (at, by),
    }
}
