//! Lengths, and two measures with a cross between them.

use super::items::Line;
use super::lexicon::{self, Word};
use super::number::{self, Number};
use super::steel;
use super::token::{Chain, Sort};
use super::what::{Found, What, Written, one};
use crate::quantity::Length;
use crate::table::asme_b1_1::Series;
use crate::table::iso_1478;
use crate::thread::{Designation, Thread};

/// Stands for the unit that the thread is written in.
pub const UNIT_OF_THREAD: &str = "?";
/// Longer bolts than this are written with their unit.
pub const MOST_INCHES: f64 = 24.0;
/// Dashes, as they are typed.
pub(super) const DASHES: &[&str] = &["-", "–", "‑", "—"];

/// `20mm x 100mm`, `6x30`, `25x1,2`: two measures without an M; the part says what they are.
pub fn pair(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let plain = |at: usize| number::decimal(chain, at).filter(|number| number.grouped.is_none());
    let is_st = chain.before(at).is_some_and(|before| chain.word(before) == Some("st"));
    let first = plain(at).filter(|_| is_st || !chain.inside_a_run(at))?;
    let first_mm = lexicon::over(chain, first.end, Word::Length("mm"));
    let second_at = cross(chain, first_mm)?;
    // `8 x 1-1/2`, `10 x 3/4`: the number of a screw and its length in inches.
    if let Some(fraction) = number::mixed(chain, second_at).or_else(|| number::fraction(chain, second_at)) {
        let end = over_inch(chain, fraction.end);
        let is_alone = !chain.inside_a_run(end) && !chain.sign(end, DASHES) && cross(chain, end).is_none();
        let is_number = first.whole().is_some_and(|number| (5..=24).contains(&number));
        return (is_alone && is_number && first_mm == first.end)
            .then(|| vec![(end, What::Pair { first: first.text, second: fraction.text, is_mm: false })]);
    }
    let second = plain(second_at)?;
    let end = lexicon::over(chain, second.end, Word::Length("mm"));
    let is_more = cross(chain, end).is_some_and(|behind| chain.digits(behind).is_some());
    // `6x30 St`: what touches its cross on both sides is no count.
    let is_glued = chain.glued(second_at) && chain.before(second_at).is_some_and(|cross| chain.glued(cross));
    let other_unit = end == second.end
        && (is_measured(chain, end) && !is_glued || unit_of_length(chain, &second).is_some());
    if is_more || other_unit || chain.inside_a_run(end) || chain.sign(end, &["/"]) {
        return None;
    }
    // `HV 10.9 x 100`: a class, and the length behind the cross.
    if first_mm == first.end
        && steel::DOTTED.contains(&first.text.as_str())
        && (first.value > 8.0 || is_behind_a_thread(chain, at))
    {
        return None;
    }
    let is_mm = first_mm != first.end || end != second.end;
    one(end, What::Pair { first: first.text, second: second.text, is_mm })
}

/// `M16 rods 4.6 x 800`: whether a metric thread stands a few words in front, so that the number is no size.
fn is_behind_a_thread(chain: &Chain<'_>, at: usize) -> bool {
    let mut place = chain.before(at);
    for _ in 0..8 {
        let Some(before) = place else { return false };
        let figures = chain.after(before);
        if chain.word(before) == Some("m") && chain.glued(figures) && chain.digits(figures).is_some() {
            return true;
        }
        place = chain.before(before);
    }
    false
}

/// Whether another number stands before it, joined as in a list: the list begins there.
fn is_within_a_row(chain: &Chain<'_>, at: usize) -> bool {
    let joint = chain.before(at).filter(|joint| chain.sign(*joint, &[",", "/", "&", "+", "-", "–"]));
    joint.and_then(|joint| chain.before(joint)).is_some_and(|before| chain.digits(before).is_some())
}

/// Nobody writes more lengths of one part in a line.
const MOST_LENGTHS: usize = 24;

/// `lengths 50, 60 and 70 mm`: of which a line takes one.
pub fn several(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let named = chain.word(at);
    // `50, 60 and 70 mm`: without a word in front the last has its unit.
    let start = match named {
        Some("lengths" | "längen" | "length" | "long" | "länge" | "l") => {
            lexicon::over(chain, chain.over(chain.after(at), &[":", "="]), Word::Filler)
        }
        Some(_) => return None,
        None if chain.inside_a_run(at) || is_within_a_row(chain, at) => return None,
        None => at,
    };
    let (mut from, mut is_unit) = (start, false);
    let (mut end, mut lengths) = (from, 0);
    // `length 60, 500`: pieces may follow one length.
    let mut is_list = matches!(named, Some("lengths" | "längen"));
    while let Some(number) =
        number::mixed(chain, from).or_else(|| number::fraction(chain, from)).or_else(|| {
            let digits = chain.digits(from).filter(|digits| digits.len() <= 4)?;
            let value = digits.parse().ok()?;
            Some(Number {
                value,
                text: digits.to_owned(),
                grouped: None,
                is_fraction: false,
                end: chain.after(from),
            })
        })
    {
        let unit = unit_of_length(chain, &number);
        let behind = unit.map_or(number.end, |(end, _)| end);
        // `lengths 50, 60 mm, 100 pcs`.
        if is_measured(chain, behind) {
            break;
        }
        (end, lengths, is_unit) = (behind, lengths + 1, unit.is_some());
        // Or else each number of a long row would look through all that follow.
        if lengths > MOST_LENGTHS {
            return None;
        }
        let comma = chain.get(end).is_some_and(|token| token.text == ",");
        let joint = if comma { chain.after(end) } else { chain.over(end, &["/", "&", "+", "-", "–"]) };
        let joint = match chain.word(joint) {
            Some("and" | "und" | "or" | "oder" | "to" | "bis") => {
                is_list = true;
                chain.after(joint)
            }
            _ => joint,
        };
        // `L = 50/60/70`.
        is_list = is_list || named == Some("l") && lengths > 1 && chain.sign(end, &["/"]);
        if joint == end || chain.digits(joint).is_none() {
            break;
        }
        from = joint;
    }
    // `60 x 50 and 60 mm`: behind a cross the first is that of a size.
    let is_size = chain.before(at).is_some_and(|before| {
        matches!(chain.word(before), Some("x" | "m" | "by")) || chain.sign(before, &["×", "*", "/", "-", "."])
    });
    let is_list = is_list && (named.is_some() || is_unit && lengths > 2 && !is_size);
    (lengths > 1 && is_list && !chain.inside_a_run(end))
        .then(|| vec![(end, What::Not("several lengths: write a line for each".into()))])
}

/// Why the measures of a square plate are not used.
pub const A_PLATE: &str = "a square plate, which says nothing of the thread";

/// `17 x 30 x 3`: hole, outside and thickness of a washer; `80 x 80 x 10` is a plate.
pub fn triple(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let plain = |at: usize| number::decimal(chain, at).filter(|number| number.grouped.is_none());
    let first = plain(at).filter(|_| !chain.inside_a_run(at))?;
    let outside = plain(cross(chain, first.end)?)?;
    let thickness = plain(cross(chain, outside.end)?)?;
    let end = lexicon::over(chain, thickness.end, Word::Length("mm"));
    let is_washer = first.value < outside.value && thickness.value < first.value / 2.0;
    let is_alone = !chain.inside_a_run(end)
        && (end != thickness.end || !is_measured(chain, end))
        && !chain.sign(end, &["/", "-", "\"", "″"])
        && cross(chain, end).is_none();
    // `plate washer 80 x 80 x 10`.
    let is_plate = first.text == outside.text && thickness.value < first.value / 2.0;
    if is_plate && is_alone {
        return one(end, What::Not(A_PLATE.into()));
    }
    (is_washer && is_alone).then(|| vec![(end, What::Washer(first.text))])
}

/// `ST4.2 x 16`, `ST 4.2`: the size of a tapping screw by ISO 1478, in millimetres.
pub fn tapping(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let first = chain.get(at).filter(|token| token.lower == "st").map(|_| chain.after(at))?;
    let size = number::decimal(chain, first)?;
    let row = iso_1478::ROWS.iter().find(|row| row.st == size.value);
    // `500 St 4.2 mm`: pieces, and a measure.
    let is_counted = chain.before(at).is_some_and(|before| chain.digits(before).is_some());
    let is_apart = !chain.glued(first);
    if is_apart && (is_counted || row.is_none() || chain.get(at)?.text != "ST") {
        return None;
    }
    if let Some((end, What::Pair { first, second, .. })) =
        pair(chain, first).and_then(|it| it.into_iter().next())
    {
        return one(end, What::Pair { first, second, is_mm: true });
    }
    let thread = row.and_then(|row| Thread::numbered(Series::Unc, row.number))?;
    let text = thread.to_string();
    let written = Written { text, thread: Some(thread), of_size: false, pitched: false, weak: false };
    (!chain.inside_a_run(size.end)).then(|| vec![(size.end, What::Thread(written))])
}

/// The place behind a cross: `x`, `×`, `*`, `by`.
pub(super) fn cross(chain: &Chain<'_>, at: usize) -> Option<usize> {
    if chain.sign(at, &["×", "✕", "*"]) {
        return Some(chain.after(at));
    }
    lexicon::find(chain, at, |word| (word == Word::Times).then_some(())).map(|(end, ())| end)
}

/// Why a measure of something else is not used.
pub(super) const ACROSS: &str = "a width or a bore, and no length";

/// A measure of something else: `for 4" pipe`, `2-3/8" id`.
pub(super) fn across_something(chain: &Chain<'_>, end: usize) -> Option<Found> {
    // `4" SCH 40 pipe`.
    let wall = chain.word(end).filter(|word| matches!(*word, "sch" | "schedule"));
    let end = wall
        .and_then(|_| {
            chain
                .digits(chain.over(chain.after(end), &[".", "-"]))
                .map(|_| chain.after(chain.over(chain.after(end), &[".", "-"])))
        })
        .unwrap_or(end);
    let behind = lexicon::over(chain, end, Word::Across);
    // `75 mm AF 24`: the word belongs to what follows it.
    let owns_next = chain.digits(behind).is_some() && chain.word(end).is_some_and(|word| word != "pipe");
    // `x 60 pipe flange bolts`.
    let joint = |word| (word == Word::Not(lexicon::JOINT)).then_some(());
    let is_joint = lexicon::find(chain, end, joint).is_some_and(|(longer, ())| longer > behind);
    (behind != end && !owns_next && !is_joint).then(|| vec![(behind, What::Not(ACROSS.into()))])
}

/// The length behind a cross; without a unit it is in the unit of the thread.
pub(super) fn length_behind_cross(chain: &Chain<'_>, at: usize, unit: &'static str) -> Option<(usize, What)> {
    let mut behind = cross(chain, at)?;
    // `x L50`, `x L = 50`.
    if chain.word(behind) == Some("l") {
        behind = chain.over(chain.after(behind), &["=", ":"]);
    }
    measure(chain, behind, Some(unit))
}

/// A length behind a cross whose thread stands elsewhere: `x 1000`; without a unit it takes the thread's.
pub fn across(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, length) =
        length_behind_cross(chain, at, UNIT_OF_THREAD).filter(|_| chain.word(at) != Some("by"))?;
    // `M16*60*8.8`: a class.
    let is_class = cross(chain, at)
        .and_then(|behind| number::decimal(chain, behind))
        .is_some_and(|number| number.end == end && steel::DOTTED.contains(&number.text.as_str()));
    // `3 ft x 3/4-10`: the size of a thread.
    let per_inch = chain.after(end);
    let is_size = chain.sign(end, DASHES)
        && chain.glued(end)
        && chain.glued(per_inch)
        && chain.digits(per_inch).is_some_and(|digits| digits.len() <= 2);
    (!is_measured(chain, end) && !is_class && !is_size).then(|| vec![(end, length)])
}

/// A length with its unit: `90 mm`, `36 in`, `3 m`, `L = 50 mm`.
pub fn length(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, length) = measure(chain, at, None)?;
    one(end, length)
}

pub(super) fn measure(chain: &Chain<'_>, at: usize, default: Option<&'static str>) -> Option<(usize, What)> {
    let feet = feet_and_inches(chain, at);
    if feet.is_some() {
        return feet;
    }
    // `x 60zork 8.8`: the class behind a measure that nobody knows is no length.
    let is_behind_unknown = default.is_some() && chain.before(at).is_some_and(|before| before + 1 != at);
    if is_behind_unknown
        && number::decimal(chain, at).is_some_and(|number| steel::DOTTED.contains(&number.text.as_str()))
    {
        return None;
    }
    let spaced = number::spaced(chain, at).filter(|number| unit_of_length(chain, number).is_some());
    let mut number = spaced.map_or_else(|| number::number(chain, at), Some)?;
    // `3/8 x 1 5/16-18`: a length, and a thread behind it.
    if parts_into_two(chain, at, &number) {
        number = number::decimal(chain, at)?;
    }
    let is_millimetres = default == Some("mm") && is_no_inch(chain, &number);
    if is_millimetres && number.value <= MOST_INCHES {
        let why = format!("{0} mm or {0} in: write the unit", number.text);
        return Some((number.end, What::Not(why.into())));
    }
    let unit_of = |number: &Number| unit_of_length(chain, number).filter(|_| !is_millimetres);
    let mut unit = unit_of(&number);
    // `2 x 2H`: a grade.
    let code = lexicon::find(chain, at, |word| matches!(word, Word::Steel(_)).then_some(()));
    if unit.is_none() && code.is_some_and(|(end, ())| end > number.end) {
        return None;
    }
    if unit.is_none() {
        number = before_comma(chain, at, number);
        unit = unit_of(&number);
    }
    let (end, name) = match unit {
        Some(unit) => unit,
        None if number.is_fraction => (number.end, default.map(|_| "in")?),
        // So many inches are rare on a bolt: its unit is asked for where the part is known.
        None if default == Some("in") && number.value > MOST_INCHES => (number.end, UNIT_OF_THREAD),
        None => (number.end, default?),
    };
    // Letters that no rule knows make another thing of it.
    if unit.is_none()
        && chain.inside_a_run(end)
        && chain.get(end).is_some_and(|next| next.sort == Sort::Digits)
    {
        return None;
    }
    if let Some((decimal, grouped)) =
        number.two_meanings().filter(|_| name != "in" || number.text.contains(','))
    {
        let why = format!("it could be {decimal} or {grouped} {name}: write it without the mark");
        return Some((end, What::Not(why.into())));
    }
    if let Some(found) = across_something(chain, end) {
        return found.into_iter().next();
    }
    let text = match name {
        "cm" => format!("{} mm", number.value * 10.0),
        _ => format!("{} {name}", number.text),
    };
    Some((end, What::Length(text)))
}

/// `6'`, `6'-4"`, `6 ft 4 in`.
pub(super) fn feet_and_inches(chain: &Chain<'_>, at: usize) -> Option<(usize, What)> {
    let feet = number::decimal(chain, at).filter(|feet| feet.value <= 40.0)?;
    if !chain.sign(feet.end, &["'", "′", "’"]) || !chain.glued(feet.end) {
        return None;
    }
    let end = chain.after(feet.end);
    // Two strokes are an inch.
    if chain.sign(end, &["'", "′", "’"]) && chain.glued(end) {
        return None;
    }
    let inches = number::number(chain, chain.over(end, DASHES));
    let inches = inches.filter(|inches| over_inch(chain, inches.end) != inches.end);
    Some(match inches {
        Some(inches) => {
            let text = format!("{} in", feet.value * 12.0 + inches.value);
            (over_inch(chain, inches.end), What::Length(text))
        }
        None => (end, What::Length(format!("{} ft", feet.text))),
    })
}

/// `8.8 "galvanized"`: the mark stands apart from a class and touches the finish behind it.
fn opens_a_quotation(chain: &Chain<'_>, at: usize) -> bool {
    let behind = chain.after(at);
    let finish = |word| {
        matches!(word, Word::Process(_) | Word::Tinted(_) | Word::Other(_) | Word::Not(_)).then_some(())
    };
    let class = chain.before(at).and_then(|ratio| {
        let strength = chain.before(chain.before(ratio)?)?;
        number::decimal(chain, strength)
    });
    let is_class = class.is_some_and(|class| class.end == at && steel::DOTTED.contains(&class.text.as_str()));
    is_class && !chain.glued(at) && chain.glued(behind) && lexicon::find(chain, behind, finish).is_some()
}

/// The place behind the mark of an inch.
pub(super) fn over_inch(chain: &Chain<'_>, at: usize) -> usize {
    if chain.sign(at, &["\"", "″", "”", "“"]) {
        return if opens_a_quotation(chain, at) { at } else { chain.after(at) };
    }
    let other = chain.after(at);
    if chain.sign(at, &["'", "′", "’"]) && chain.sign(other, &["'", "′", "’"]) && chain.glued(other) {
        return chain.after(other);
    }
    let end = lexicon::over(chain, at, Word::Length("in"));
    // `in` in front of a place is no inch: `in C4`, `in the harbour`.
    let is_place = |at| {
        let place = |at| {
            lexicon::find(chain, at, |word| matches!(word, Word::Category(_) | Word::Place(_)).then_some(()))
                .is_some()
        };
        place(at) || place(lexicon::over(chain, at, Word::Filler))
    };
    // Nor where a longer phrase begins with it: `in concrete`, `in service at`.
    let is_phrase = |at| lexicon::find(chain, at, Some).is_some_and(|(longest, _)| longest > end);
    // Nor in front of what holds so many: `200 in a box`, `500 in total`.
    let holds = |at| {
        matches!(chain.word(at), Some("a" | "an" | "the" | "total"))
            || lexicon::find(chain, at, |word| (word == Word::Box).then_some(())).is_some()
    };
    // Nor so many in front of a word that nobody knows: `100 now and 250 in March`.
    let is_unknown = || {
        let number = chain.before(at).filter(|_| !chain.glued(at)).and_then(|before| chain.digits(before));
        number.and_then(|digits| digits.parse().ok()).is_some_and(|number: f64| number > MOST_INCHES)
            && chain.tokens().get(at + 1).is_some_and(|next| next.sort == Sort::Word)
            && chain.is_out(at + 1)
    };
    let is_other = |at| is_phrase(at) || is_place(end) || holds(end) || is_unknown();
    if chain.word(at) == Some("in") && is_other(at) { at } else { end }
}

/// Whether the `in` behind a number of a metric thread is no inch: `M16 x 60 in bags of 50`, `in grade 8.8`. So few
/// that they are no length in millimetres are inches, and so is what ends a cell or stands in front of a part.
fn is_no_inch(chain: &Chain<'_>, number: &Number) -> bool {
    const LEAST_MILLIMETRES: f64 = 10.0;
    if chain.word(number.end) != Some("in") || chain.glued(number.end) || number.value < LEAST_MILLIMETRES {
        return false;
    }
    // As it was written: a word that nobody knows is no end.
    let Some(behind) = chain.tokens().get(number.end + 1) else { return false };
    let is_long = matches!(behind.lower.as_str(), "long" | "lg" | "length" | "x");
    let is_part = lexicon::find(chain, number.end + 1, |word| matches!(word, Word::Part(_)).then_some(()));
    behind.is_alphanumeric() && !is_long && is_part.is_none()
}

/// The place behind the mark of an inch that stands behind a number: `8.8 in accordance with` is a class and a
/// word.
pub(super) fn over_inch_behind(chain: &Chain<'_>, number: &Number) -> usize {
    let end = over_inch(chain, number.end);
    let is_class = steel::DOTTED.contains(&number.text.as_str())
        && chain.word(number.end) == Some("in")
        && chain.word(end).is_some_and(|word| !matches!(word, "long" | "lg" | "x"));
    if is_class { number.end } else { end }
}

/// The unit of length behind a number, if one stands there that fits it.
pub(super) fn unit_of_length(chain: &Chain<'_>, number: &Number) -> Option<(usize, &'static str)> {
    let inch = over_inch_behind(chain, number);
    if inch != number.end {
        return (!chain.inside_a_run(inch)).then_some((inch, "in"));
    }
    if let Some(token) = chain.get(number.end).filter(|token| token.text == "m") {
        let end = chain.after(number.end);
        let is_thread = chain.digits(end).is_some() && (chain.glued(end) || number.value > 12.0);
        return (token.sort == Sort::Word && !is_thread && number.value <= 20.0).then_some((end, "m"));
    }
    let unit = lexicon::find(chain, number.end, |word| match word {
        Word::Length(unit) => Some(unit),
        _ => None,
    });
    // So many feet are no length: FT is a full thread.
    unit.filter(|(end, unit)| {
        // `60mmx100pcs`.
        (!chain.inside_a_run(*end) || cross(chain, *end).is_some())
            && (*unit != "ft" || number.value <= 12.0)
            && chain.word(number.end) != Some("in")
    })
}

/// `M16 x 60 or 70`: of several lengths the longest is judged, for what holds of it holds of the others, and the others are
/// named. Whether all of them are lengths.
pub(super) fn the_longer(line: &mut Line, places: &[usize]) -> bool {
    let of = |at: usize| match line.what(at)? {
        What::Length(text) => Some((at, length_of(text.as_str())?.mm())),
        _ => None,
    };
    let Some(lengths) = places.iter().map(|at| of(*at)).collect::<Option<Vec<_>>>() else { return false };
    let longest = lengths.iter().copied().reduce(|one, other| if other.1 > one.1 { other } else { one });
    let Some((longest, _)) = longest else { return false };
    let text = line.items.get(longest).map_or(String::new(), |item| item.text.clone());
    line.note("length", format!("the longest of several: {text} is judged"));
    for at in places.iter().filter(|at| **at != longest) {
        line.not(*at, LONGER);
    }
    true
}

/// Why the shorter of two lengths is not used.
pub(super) const LONGER: &str =
    "one of several lengths, of which the longest is judged: write a line for each";

/// Whether a unit of something else stands here: pieces, weeks, a hardness.
pub(super) fn is_measured(chain: &Chain<'_>, at: usize) -> bool {
    let unit = |word| {
        matches!(
            word,
            Word::Count(..)
                | Word::Each
                | Word::OfCoat(_)
                | Word::Measure(_)
                | Word::Mass(_)
                | Word::Scale(_)
                | Word::Box
                | Word::Set
                | Word::Thousand
                | Word::Degrees(_)
        )
        .then_some(())
    };
    let found =
        lexicon::find(chain, at, unit).map(|(end, ())| end).or_else(|| lexicon::over_years(chain, at));
    found.is_some_and(|end| !chain.inside_a_run(end))
        && !is_list(chain, at)
        && !lexicon::begins_a_name(chain, at)
        && !is_thickness(chain, at)
        || chain.sign(at, &["°", "%"])
}

/// Whether `lengths` begins a list of them, and counts no rods: `5/8-11 lengths 2, 3 in`.
pub(super) fn is_list(chain: &Chain<'_>, at: usize) -> bool {
    matches!(chain.word(at), Some("lengths" | "lgths"))
        && chain.digits(chain.over(chain.after(at), &[":"])).is_some()
}

/// Whether a letter of a drawing stands here, and no tonnes: `ID 17 t 3`.
pub(super) fn is_thickness(chain: &Chain<'_>, at: usize) -> bool {
    let behind = chain.after(at);
    chain.word(at) == Some("t") && !chain.glued(at) && chain.digits(behind).is_some() && !chain.glued(behind)
}

/// A length with its unit, in millimetres.
pub(super) fn in_mm(text: &str) -> Option<f64> {
    let (number, unit) = text.rsplit_once(' ')?;
    let number: f64 = number.parse().ok()?;
    Some(match unit {
        "mm" => number,
        "m" => number * 1e3,
        "in" => number * 25.4,
        "ft" => number * 304.8,
        _ => return None,
    })
}

/// Figures that a comma groups by three are taken up to the comma: what follows it is another piece; so is `1000` and what
/// counts pieces, of `M16x60,1000` and `M16x60,50 pcs`.
pub(super) fn before_comma(chain: &Chain<'_>, at: usize, number: Number) -> Number {
    let comma = chain.after(at);
    let behind = chain.digits(chain.after(comma)).filter(|_| chain.glued(comma));
    let counts = |word| matches!(word, Word::Count(..)).then_some(());
    let is_apart = chain.sign(comma, &[","])
        && (number.grouped.is_some()
            || behind.is_some_and(|digits| digits.len() > 3)
            || lexicon::find(chain, number.end, counts).is_some());
    match chain.digits(at) {
        Some(first) if is_apart && behind.is_some() && number.end > comma => Number {
            value: first.parse().unwrap_or(number.value),
            text: first.to_owned(),
            grouped: None,
            is_fraction: false,
            end: comma,
        },
        _ => number,
    }
}

/// Whether a whole number in front of a fraction is a number of its own, because only the fraction is the size of
/// the thread behind it: `2 1/2-13`.
pub(super) fn parts_into_two(chain: &Chain<'_>, at: usize, number: &Number) -> bool {
    if !number.text.contains(' ') || text_is_one(chain, at, number) {
        return false;
    }
    let fraction = number::fraction(chain, chain.after(at));
    let per_inch = chain.over(number.end, DASHES);
    let per_inch = number::decimal(chain, per_inch).filter(|_| per_inch != number.end);
    // `50 3/4 x 3`: no thread is so large.
    let is_sized = cross(chain, over_inch(chain, number.end))
        .is_some_and(|behind| number::number(chain, behind).is_some());
    if number.value > 4.0 && is_sized && fraction.is_some() {
        return true;
    }
    // `6 3/4 DH nuts`: nor is the thread of a nut so large.
    if number.value > 4.0
        && fraction.is_some()
        && chain.before(at).is_none()
        && names_a_mate(chain, number.end)
    {
        return true;
    }
    fraction.zip(per_inch).is_some_and(|(fraction, per_inch)| {
        Designation::read(&format!("{}-{}", fraction.text, per_inch.text)).is_ok()
    })
}

/// Whether the name of a nut or a washer stands near behind a place, with no more than its grade between.
fn names_a_mate(chain: &Chain<'_>, at: usize) -> bool {
    let mate = |word| match word {
        Word::Part(noun) => ["nut", "washer"].iter().any(|mate| noun.ends_with(mate)).then_some(()),
        _ => None,
    };
    let mut place = at;
    for _ in 0..MOST_OF_A_GRADE {
        if lexicon::find(chain, place, mate).is_some() {
            return true;
        }
        if chain.get(place).is_none_or(|token| token.sort == Sort::Break) {
            return false;
        }
        place = chain.after(place);
    }
    false
}

/// A grade has so many tokens at most.
const MOST_OF_A_GRADE: usize = 6;

/// Whether a mixed number is written in one, with a dash or with a sign.
pub(super) fn text_is_one(chain: &Chain<'_>, at: usize, size: &Number) -> bool {
    !size.text.contains(' ') || chain.glued(chain.after(at))
}

/// A length as a field of it reads it.
pub(super) fn length_of(text: &str) -> Option<Length> {
    let (number, name) = text.trim().rsplit_once(' ')?;
    let number = crate::quantity::number::read_number(number).ok()?;
    Some(match name {
        "mm" => Length::from_mm(number),
        "in" => Length::from_inch(number),
        "m" => Length::from_mm(number * 1000.0),
        "ft" => Length::from_inch(number * 12.0),
        _ => return None,
    })
}
