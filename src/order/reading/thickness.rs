//! The thickness of a coat.

pub(super) mod bounds;
mod range;
pub(super) mod whose;
mod zone;

use super::length::over_inch;
use super::lexicon::{self, Word};
use super::measure::plus_minus;
use super::number;
use super::steel::DOTTED;
use super::token::Chain;
use super::wanted::Wanted;
use super::what::{Found, What, one};
use crate::process::Process;
use crate::quantity::Length;

/// A coat by its thickness or its mass: `12 µm`, `0.3 mil`, `.0005 in min`, `0.05 mm`, `.0002-.0004 thick`, `60 g/m²`. No
/// size and no length of a fastener is so small as a coat: a hundredth of an inch without a unit is in inches.
pub fn thickness(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let first = number::decimal(chain, at).filter(|number| number.grouped.is_none_or(|_| number.value < 1.0));
    let first = ounces(chain, at).or(first)?;
    // `galv.8µm`: the point is that of the word.
    let is_point = chain.sign(at, &["."]) && chain.glued(at);
    if is_point && chain.before(at).is_some_and(|before| chain.word(before).is_some()) {
        return None;
    }
    // Of a range the least is asked for, and the greatest is held.
    let spread = range::spread(chain, first.end, first.value, None);
    let second = range::greatest(chain, at, &first).filter(|_| spread.is_none());
    // `8.8 max 30 µm`: a class in front of the greatest thickness; `8/12 µm` is no range, `min 8 / max 12 µm` is one.
    let is_class = DOTTED.contains(&first.text.as_str());
    let says_both = second.as_ref().is_some_and(|second| second.says_ends && !second.is_bare);
    if second.as_ref().is_some_and(|second| second.says_ends && second.is_bare) && is_class
        || chain.inside_a_run(at)
        || chain.sign(first.end, &["/"]) && first.value >= THICKEST_INCH && !says_both
    {
        return None;
    }
    let last = second.as_ref().map_or(&first, |second| &second.number);
    let past = spread.as_ref().map_or(last.end, |spread| spread.end);
    // `8 min 12 max µm`.
    let past = if second.is_some() { range::over_most(chain, past) } else { past };
    let unit = lexicon::find(chain, past, |word| match word {
        Word::OfCoat(unit) => Some((unit, f64::INFINITY)),
        Word::Length("mm") => Some(("mm", THICKEST_MM)),
        _ => None,
    })
    .filter(|(end, _)| !chain.inside_a_run(*end));
    let (end, (unit, most)) = unit.unwrap_or_else(|| {
        let end = over_inch(chain, past);
        (if chain.inside_a_run(end) { past } else { end }, ("in", THICKEST_INCH))
    });
    if last.value > most
        || first.value <= 0.0
        || chain.inside_a_run(end)
        || unit == "mil" && lexicon::counts_in_thousands(chain, end)
    {
        return None;
    }
    // `15 g/m2 per year`: what the place takes of it.
    let of_a_time = lexicon::over(chain, end, Word::PerTime);
    if of_a_time != end {
        return one(of_a_time, What::Not(LOSS.into()));
    }
    // `8 µm ± 2`, `45 µm +20/-0`.
    let name = range::unit_name(chain, past).map_or("in", |(_, name)| name);
    let is_one = second.is_none() && spread.is_none();
    let behind = if is_one { range::spread(chain, end, first.value, Some(name)) } else { None };
    // `8 µm or more`, `12 µm or more is rejected`.
    if is_one
        && behind.is_none()
        && let Some((end, is_least)) = bounds::or_so(chain, end).filter(|(end, _)| !chain.inside_a_run(*end))
    {
        let wanted = Wanted::read(first.value, unit)?;
        return one(end, if is_least { What::Thickness(wanted) } else { What::AtMost(wanted) });
    }
    // Where the lesser end stops, and the greater begins.
    let split = match (&second, &spread) {
        (Some(second), _) => second.from,
        (None, Some(_)) => first.end,
        (None, None) => end,
    };
    let end = behind.as_ref().map_or(end, |spread| spread.end);
    let spread = spread.or(behind);
    let (less, more) = spread.as_ref().map_or((0.0, 0.0), |spread| (spread.less, spread.more));
    let wanted = |value: f64| Wanted::read(value, unit);
    let thickness = What::Thickness(wanted((first.value - less).max(0.0))?);
    let at_most = |value: f64| wanted(value).map(What::AtMost);
    let thickest = wanted(last.value)?.solid();
    let most = over_greatest(chain, end);
    // `min 8 µm max 15 µm`, `min 45 µm max 320 HV`: the word is that of what stands behind it.
    let owns_next = most != end && {
        let behind = range::over_most(chain, end);
        let next = range::thickness_at(chain, behind);
        next.is_some_and(|next| next.exceeds(thickest)) || range::measures_another(chain, behind)
    };
    let most = if owns_next { end } else { most };
    // `15 µm max 8 µm min`: the word in front is that of the thickness before it.
    let least = lexicon::over(chain, end, Word::Least);
    let is_least = || least != end && range::thickness_at(chain, range::over_point(chain, least)).is_none();
    let is_unit =
        |at: usize, end: usize| range::unit_name(chain, at).is_some_and(|(behind, _)| behind == end);
    // `under 25 µm not accepted`: the least.
    let refused = bounds::over_refused(chain, at, end);
    // `up to` has two words, `must not be thicker than` five.
    let is_most = |before: usize| {
        // `maximum thickness 30 µm`, `max. 30 µm`.
        let mut behind = at;
        let mut before = before;
        while chain.sign(before, &[".", ":", "=", ")"])
            || chain.word(before).is_some_and(|word| lexicon::OF_A_GREATEST.contains(&word))
        {
            behind = before;
            match chain.before(before) {
                Some(place) => before = place,
                None => return false,
            }
        }
        let mut place = Some(before);
        for _ in 0..5 {
            let Some(from) = place else { break };
            // `under 30 µm`, `over 60 µm not accepted`; `under ISO 10684` is of something else.
            if from == before
                && let Some(is_greatest) = bounds::is_greatest(chain, from, refused.is_some())
            {
                return is_greatest;
            }
            // `zinc bis 12 µm`; `8 bis 12 µm` is a range.
            if from == before && chain.word(from) == Some("bis") {
                let front = chain.before(from);
                return !front.is_some_and(|front| chain.digits(front).is_some() || is_unit(front, from));
            }
            if lexicon::over(chain, from, Word::Most) == behind {
                // `(15 µm max) zinc 8 µm`: the word is that of the thickness before it.
                let is_apart =
                    chain.sign(behind, &[")"]) || chain.word(behind).is_some_and(lexicon::is_apart);
                if chain.before(from).is_some_and(|unit| is_unit(unit, from)) && (is_apart || is_least()) {
                    return false;
                }
                // `no less than`, `must not be less than`, `less than 25 µm is not accepted`: the least.
                let is_less = matches!(chain.word(from), Some("less" | "weniger"));
                return !(is_less && (refused.is_some() || range::is_refused(chain, from)));
            }
            place = chain.before(from);
        }
        false
    };
    let below = |before| {
        // `<= 12 µm`.
        let sign = chain.before(before).filter(|_| chain.sign(before, &["="]) && chain.glued(before));
        is_most(before) || chain.sign(sign.unwrap_or(before), &["<", "≤"])
    };
    if second.is_none() && (most != end || chain.before(at).is_some_and(below)) {
        let refused =
            refused.filter(|_| most == end && chain.before(at).is_some_and(|it| bounds::says(chain, it)));
        return one(refused.unwrap_or(most), at_most(last.value)?);
    }
    match (&second, spread) {
        (None, None) => {
            let refused = refused.filter(|_| chain.before(at).is_some_and(|it| bounds::says(chain, it)));
            one(refused.unwrap_or(least), thickness)
        }
        (second, _) => {
            let greatest = second.as_ref().map_or(first.value + more, |second| second.number.value);
            Some(vec![(split, thickness), (if most == end { least } else { most }, at_most(greatest)?)])
        }
    }
}

/// The place behind the word for the greatest, of what stands in front of it: `30 µm max`, `30 µm is the maximum`.
fn over_greatest(chain: &Chain<'_>, end: usize) -> usize {
    let mut from = end;
    for _ in 0..2 {
        if chain.word(from).is_some_and(|word| lexicon::IS_THE.contains(&word)) {
            from = chain.after(from);
        }
    }
    let most = lexicon::over(chain, from, Word::Most);
    if most != from {
        return most;
    }
    // `45 µm (must not be exceeded)`.
    let open = chain.over(end, &["("]);
    let no_more = lexicon::over(chain, open, Word::NoMore);
    if no_more == open { end } else { no_more }
}

/// Why a mass in a time is not used.
const LOSS: &str = "a loss of zinc in a time, and no coat";

/// Why the greatest mass of a coat is not used.
pub(super) const GREATEST_MASS: &str = "how thick is that at most? Write the greatest thickness";

/// The greatest thickness as its field takes it; of a mass, in the zinc of the process that is asked for. `None` where none
/// is.
pub(super) fn greatest(most: Wanted, asked: Option<Process>) -> Option<String> {
    let (number, name, places) = match most {
        Wanted::Metric(most) => (most.um(), "µm", 1e1),
        Wanted::Inch(most) => (most.inch(), "in", 1e5),
        mass => (mass.put_on_by(asked?).um(), "µm", 1e1),
    };
    Some(format!("{} {name}", (number * places).round() / places))
}

/// `1-1/4 oz/ft2`: no other unit of a coat has fractions.
fn ounces(chain: &Chain<'_>, at: usize) -> Option<number::Number> {
    let number = number::mixed(chain, at).or_else(|| number::fraction(chain, at))?;
    let unit = lexicon::find(chain, number.end, |word| (word == Word::OfCoat("oz/ft²")).then_some(()));
    unit.map(|_| number)
}

/// Whether two greatest thicknesses are one, said in µm and again in inches: `12 µm (.0005 in)`.
pub(super) fn is_same(one: &str, other: &str) -> bool {
    /// Inches are rounded to a ten-thousandth: 12 µm are .0005 in, which are 12.7.
    const ROUNDED: f64 = 0.07;
    let um = |text: &str| {
        let (number, unit) = text.split_once(' ')?;
        let number: f64 = number.parse().ok()?;
        Some((if unit == "in" { Length::from_inch(number).um() } else { number }, unit == "in"))
    };
    let both = um(one).zip(um(other)).filter(|((_, one), (_, other))| one != other);
    both.is_some_and(|((one, _), (other, _))| (one - other).abs() <= ROUNDED * one.max(other))
}

/// `measured 38 µm`, `readings 41, 44, 52 microns`, `rejected at 1.2 mil`, `38 µm gemessen`: what somebody found on
/// a lot, and no coat that is wanted.
pub fn reading(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let is_word = |at: usize| chain.word(at).is_some_and(|word| lexicon::READINGS.contains(&word));
    let over_words = |mut at: usize| {
        for _ in 0..4 {
            at = chain.over(lexicon::over(chain, at, Word::Filler), &[":", "=", "(", "@"]);
            at = if matches!(chain.word(at), Some("was" | "were")) { chain.after(at) } else { at };
        }
        at
    };
    let found = |end| Some(vec![(end, What::Not(lexicon::A_READING.into()))]);
    if is_word(at) {
        return found(list_of_readings(chain, over_words(chain.after(at)))?);
    }
    let end = one_reading(chain, at).filter(|_| !chain.inside_a_run(at))?;
    let word = chain.over(over_words(end), &[")"]);
    // `50 µm, measured 38 µm`: the word belongs to what follows it.
    let owns_next = || list_of_readings(chain, over_words(chain.after(word))).is_some();
    (is_word(word) && !owns_next()).then(|| found(chain.after(word)))?
}

/// The place behind numbers of which the last has a unit of a coat.
fn list_of_readings(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let (mut from, mut end) = (at, None);
    for _ in 0..MOST_READINGS {
        let Some(number) = number::decimal(chain, from).filter(|_| !chain.inside_a_run(from)) else { break };
        let last = one_reading(chain, from);
        end = last.or(end);
        let behind = last.unwrap_or(number.end);
        let joint = match chain.get(behind).map(|token| token.text) {
            Some("," | ";" | "/" | "&" | "-" | "–" | "+") => chain.after(behind),
            _ => behind,
        };
        from = match chain.word(joint) {
            Some("and" | "und" | "to" | "bis" | "or") => chain.after(joint),
            _ => joint,
        };
    }
    end
}

/// So many readings stand in one line.
const MOST_READINGS: usize = 60;

/// The place behind a number with the unit of a coat.
fn one_reading(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let number = number::decimal(chain, at)?;
    let most = |word| match word {
        Word::OfCoat(_) => Some(f64::INFINITY),
        Word::Length("mm") => Some(THICKEST_MM),
        _ => None,
    };
    let unit = lexicon::find(chain, number.end, most);
    let inch = over_inch(chain, number.end);
    let (end, most) = unit.or((inch != number.end).then_some((inch, THICKEST_INCH)))?;
    (number.value <= most && !chain.inside_a_run(end)).then_some(end)
}

/// The thickest coat that is written in inches or in millimetres.
const THICKEST_INCH: f64 = 0.01;
const THICKEST_MM: f64 = 0.25;

/// `± 2`: a tolerance of something that no field takes.
pub fn tolerance(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, _) = plus_minus(chain, at)?;
    let unit = |word| matches!(word, Word::Length(_) | Word::OfCoat(_)).then_some(());
    let end = lexicon::find(chain, end, unit).map_or(end, |(end, ())| end);
    let end = chain.over(end, &["%"]);
    (!chain.inside_a_run(end)).then(|| vec![(end, What::Not("a tolerance is not judged".into()))])
}
