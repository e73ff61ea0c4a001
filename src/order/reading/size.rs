//! Threads, sizes and lengths.

use super::lexicon::{self, Word};
use super::number::{self, Number};
use super::token::{Chain, Sort};
use super::what::{Found, What, Written, one};
use crate::table::asme_b1_1::Series;
use crate::thread::{Designation, Thread, ToleranceClass};

/// Stands for the unit that the thread is written in.
pub const UNIT_OF_THREAD: &str = "?";
/// Longer bolts than this are written with their unit.
pub const MOST_INCHES: f64 = 24.0;
const DASHES: &[&str] = &["-", "–", "‑", "—"];

/// `M20`, `M16x1.5-6g x 60`, `M24-3.0`, `M 16 x 80`.
pub fn metric(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| *word == "m")?;
    let digits = chain.after(at);
    // Behind a number, a small m with a space behind it is a metre.
    let is_metre = !chain.glued(digits)
        && chain.get(at).is_some_and(|token| token.text == "m")
        && chain.before(at).is_some_and(|before| chain.digits(before).is_some());
    let diameter = whole_or_tenth(chain, digits).filter(|_| !is_metre)?;
    let mut text = format!("M{}", diameter.text);
    let mut end = diameter.end;
    let exists = |text: &str| Designation::read(text).is_ok();
    // A pitch behind a cross or a dash, if there is such a one; a fraction of a millimetre is always one.
    let mut length_behind = end;
    for is_cross in [true, false] {
        let Some(number) = behind(chain, end, is_cross).filter(|number| !number.is_fraction) else {
            continue;
        };
        let with_pitch = format!("{text}x{}", number.text);
        let more = is_cross && behind(chain, number.end, true).is_some();
        let is_pitch = exists(&with_pitch) && unit_of_length(chain, &number).is_none()
            || is_cross && number.value < 7.0 && (number.value.fract() != 0.0 || more);
        if is_pitch && (is_cross || exists(&with_pitch)) {
            text = with_pitch;
            end = number.end;
            length_behind = over_mm(chain, end, more);
            break;
        }
    }
    let class = class_behind(chain, length_behind).filter(|(_, class)| class.is_metric());
    if let Some((behind, class)) = class {
        text = format!("{text}-{class}");
        end = behind;
        length_behind = behind;
    }
    let pitched = text.contains('x');
    let read = Designation::read(&text).ok();
    let text = read.map_or(text, |it| it.to_string());
    let thread = read.map(|it| it.thread);
    let mut found = vec![(end, What::Thread(Written { text, thread, of_size: false, pitched, weak: false }))];
    if let Some((end, length)) = length_behind_cross(chain, length_behind, "mm") {
        found.push((end, too_short(length, diameter.value)));
    }
    Some(found)
}

/// A metric thread that is longer than a third of its diameter has a length; less may be a pitch that does
/// not exist, or metres.
fn too_short(length: What, diameter: f64) -> What {
    match &length {
        What::Length(text) => match text.strip_suffix(" mm").and_then(|number| number.parse::<f64>().ok()) {
            Some(number) if number < diameter / 3.0 => {
                What::Not(format!("a length of {number} mm or {number} m: write the unit").into())
            }
            _ => length,
        },
        _ => length,
    }
}

/// A pitch may carry its unit where a length follows: `M12 x 1.75 mm x 50`.
fn over_mm(chain: &Chain<'_>, end: usize, more: bool) -> usize {
    if more { lexicon::over(chain, end, Word::Length("mm")) } else { end }
}

/// A diameter: `20`, `2.5`.
fn whole_or_tenth(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let whole = chain.digits(at).filter(|digits| digits.len() <= 3)?;
    let number = number::decimal(chain, at)?;
    let plain = Number {
        value: whole.parse().ok()?,
        text: whole.to_owned(),
        grouped: None,
        is_fraction: false,
        end: chain.after(at),
    };
    Some(if number.text.len() == whole.len() + 2 { number } else { plain })
}

/// The number behind a cross, or behind a dash that touches it on both sides.
fn behind(chain: &Chain<'_>, at: usize, is_cross: bool) -> Option<Number> {
    let behind = if is_cross {
        cross(chain, at)?
    } else {
        let behind = chain.after(at);
        (chain.sign(at, DASHES) && chain.glued(at) && chain.glued(behind)).then_some(behind)?
    };
    number::number(chain, behind).map(|number| before_comma(chain, behind, number))
}

/// Figures that a comma groups by three are taken up to the comma: what follows it is another piece.
fn before_comma(chain: &Chain<'_>, at: usize, number: Number) -> Number {
    match chain.digits(at) {
        Some(first) if number.grouped.is_some() && number.text.contains(',') => Number {
            value: first.parse().unwrap_or(number.value),
            text: first.to_owned(),
            grouped: None,
            is_fraction: false,
            end: chain.after(at),
        },
        _ => number,
    }
}

/// The place behind a cross: `x`, `×`, `*`, `by`.
fn cross(chain: &Chain<'_>, at: usize) -> Option<usize> {
    if chain.sign(at, &["×", "✕", "*"]) {
        return Some(chain.after(at));
    }
    lexicon::find(chain, at, |word| (word == Word::Times).then_some(())).map(|(end, ())| end)
}

/// A class that touches a thread by a dash or a space: `-6g`, ` 6H`, `-2A`.
fn class_behind(chain: &Chain<'_>, at: usize) -> Option<(usize, ToleranceClass)> {
    class_at(chain, chain.over(at, DASHES))
}

/// `6g`, `5g6g`, `6AZ`, `2A`.
fn class_at(chain: &Chain<'_>, at: usize) -> Option<(usize, ToleranceClass)> {
    chain.digits(at).filter(|digits| digits.len() == 1)?;
    let mut text = String::new();
    let mut end = at;
    for part in 0..4 {
        let token = chain.get(end).filter(|token| token.is_alphanumeric() && token.text.len() <= 2)?;
        let due = if part % 2 == 0 { Sort::Digits } else { Sort::Word };
        if token.sort != due || (part > 0 && !chain.glued(end)) {
            break;
        }
        text.push_str(token.text);
        end = chain.after(end);
        if !chain.inside_a_run(end) {
            break;
        }
    }
    ToleranceClass::read(&text).filter(|_| !chain.inside_a_run(end)).map(|class| (end, class))
}

/// A class by itself.
pub fn thread_class(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, class) = class_at(chain, at).filter(|_| !chain.inside_a_run(at))?;
    one(end, What::ThreadClass(class))
}

/// `5/8-11 UNC-2A x 2 1/2`, `1-1/4-7`, `.75-10`, `1/2 UNC`, `7/8 x 3-1/2`, `#10-24`.
pub fn unified(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if let Some(found) = numbered(chain, at) {
        return Some(found);
    }
    // A whole number in front of a fraction may be a count of its own.
    let readings = [number::mixed(chain, at), number::fraction(chain, at), number::decimal(chain, at)];
    let mut readings = readings.into_iter().flatten();
    readings.find_map(|size| with_pitch(chain, at, &size).or_else(|| by_size(chain, at, &size)))
}

fn with_pitch(chain: &Chain<'_>, at: usize, size: &Number) -> Option<Found> {
    let mark = over_inch(chain, size.end);
    let mut text = size.text.clone();
    let mut end = mark;
    let dash = chain.after(mark);
    if chain.sign(mark, DASHES)
        && let Some(per_inch) = number::decimal(chain, dash).filter(|number| number.value <= 80.0)
        && !chain.sign(per_inch.end, &["/"])
    {
        text = format!("{text}-{}", per_inch.text);
        end = per_inch.end;
    }
    // `1/2 x 13 x 2`: threads per inch behind a cross, where a length follows.
    if end == mark
        && let Some(per_inch) = cross(chain, mark).and_then(|behind| number::decimal(chain, behind))
        && cross(chain, per_inch.end).is_some()
        && Designation::read(&format!("{}-{}", size.text, per_inch.text)).is_ok()
    {
        text = format!("{}-{}", size.text, per_inch.text);
        end = per_inch.end;
    }
    let has_pitch = end != mark;
    let series = lexicon::find(chain, chain.over(end, DASHES), |word| match word {
        Word::Series(series) => Some(series),
        _ => None,
    });
    // Fine and coarse stand for a series only behind a size without threads per inch.
    let series =
        series.filter(|(behind, _)| !chain.inside_a_run(*behind) || class_at(chain, *behind).is_some());
    if let Some((behind, name)) = series {
        text = format!("{text} {name}");
        end = behind;
    }
    if !has_pitch && series.is_none() {
        return None;
    }
    if let Some((behind, class)) = class_behind(chain, end).filter(|(_, class)| !class.is_metric()) {
        text = format!("{text}-{class}");
        end = behind;
    }
    let read = Designation::read(&text);
    // Figures that are no fraction, and a whole number that may be a count, make a thread only if there is
    // such a one; so does a dash with a unit behind it.
    let is_sure = size.is_fraction && text_is_one(chain, at, size) && !is_measured(chain, end);
    let text = match &read {
        Ok(designation) if is_sure || !is_measured(chain, end) => designation.to_string(),
        Err(_) if is_sure => text,
        _ => return None,
    };
    let thread = read.ok().map(|it| it.thread);
    let mut found =
        vec![(end, What::Thread(Written { text, thread, of_size: false, pitched: true, weak: false }))];
    found.extend(length_behind_cross(chain, end, "in"));
    Some(found)
}

/// Whether a mixed number is written in one, with a dash or with a sign.
fn text_is_one(chain: &Chain<'_>, at: usize, size: &Number) -> bool {
    !size.text.contains(' ') || chain.glued(chain.after(at))
}

/// `No. 8 x 1`: the size of a small screw by its word.
pub fn numbered_in_words(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at)?;
    numbered(chain, at)
}

/// `#10-24`, `8-32`: the sizes of small screws.
fn numbered(chain: &Chain<'_>, at: usize) -> Option<Found> {
    const SIZES: &[&str] = &[
        "0-80", "1-64", "1-72", "2-56", "2-64", "3-48", "3-56", "4-40", "4-48", "5-40", "5-44", "6-32",
        "6-40", "8-32", "8-36", "10-24", "10-32", "12-24", "12-28",
    ];
    let in_words = matches!(chain.word(at), Some("no" | "nr" | "number"));
    let marked = if in_words { chain.over(chain.after(at), &["."]) } else { chain.over(at, &["#"]) };
    let size = chain.digits(marked).filter(|digits| digits.len() <= 2)?;
    let dash = chain.after(marked);
    let per_inch = chain.after(dash);
    let joined = chain.sign(dash, DASHES) && chain.glued(dash) && chain.glued(per_inch);
    let pitch = chain.digits(per_inch).filter(|digits| joined && digits.len() == 2);
    let (text, end) = match pitch {
        Some(pitch) => (format!("{size}-{pitch}"), chain.after(per_inch)),
        None => (size.to_owned(), dash),
    };
    // `no. 500` is no size, and without a pitch or a length behind it nor is `item no. 4`.
    if in_words && pitch.is_none() && cross(chain, end).is_none() {
        return None;
    }
    let is_bare = marked == at;
    if is_bare && (!SIZES.contains(&text.as_str()) || is_measured(chain, end) || chain.sign(end, DASHES))
        || chain.inside_a_run(end) && cross(chain, end).is_none()
    {
        return None;
    }
    let series = lexicon::find(chain, end, |word| match word {
        Word::Series(series) => Some(series),
        _ => None,
    });
    let end = series.map_or(end, |(end, _)| end);
    let mut text = match series {
        Some((_, series)) => format!("#{text} {series}"),
        None => format!("#{text}"),
    };
    let mut end = end;
    if let Some((behind, class)) = class_behind(chain, end).filter(|(_, class)| !class.is_metric()) {
        text = format!("{text}-{class}");
        end = behind;
    }
    let read = Designation::read(&text).ok();
    let thread = read.map(|it| it.thread);
    let text = read.map_or(text, |it| it.to_string());
    let mut found =
        vec![(end, What::Thread(Written { text, thread, of_size: false, pitched: true, weak: is_bare }))];
    found.extend(length_behind_cross(chain, end, "in"));
    Some(found)
}

/// A size without threads per inch, with a length behind it: `7/8 x 3-1/2`, `1" x 6"`, `1 x 6`.
fn by_size(chain: &Chain<'_>, at: usize, size: &Number) -> Option<Found> {
    let mark = over_inch(chain, size.end);
    let (end, length) = length_behind_cross(chain, mark, "in")?;
    let is_whole = size.text.bytes().all(|byte| byte.is_ascii_digit());
    let fair =
        size.is_fraction && text_is_one(chain, at, size) || mark != size.end || size.value < 1.0 || is_whole;
    if !fair || size.value <= 0.0 || size.value > 4.0 || (is_whole && is_measured(chain, end)) {
        return None;
    }
    let weak = !size.is_fraction && mark == size.end;
    // `4 x 40 mm`: two measures in millimetres.
    let is_metric = matches!(&length, What::Length(text) if text.ends_with(" mm"));
    if weak && is_whole && is_metric {
        return None;
    }
    Some(vec![(mark, What::Thread(of_size(size.value, &size.text, Series::Unc, weak))), (end, length)])
}

/// `20mm x 100mm`, `6x30`, `25x1,2`: two measures without an M; the part says what they are.
pub fn pair(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let plain = |at: usize| number::decimal(chain, at).filter(|number| number.grouped.is_none());
    let is_st = chain.before(at).is_some_and(|before| chain.word(before) == Some("st"));
    let first = plain(at).filter(|_| is_st || !chain.inside_a_run(at))?;
    let first_mm = lexicon::over(chain, first.end, Word::Length("mm"));
    let second = plain(cross(chain, first_mm)?)?;
    let end = lexicon::over(chain, second.end, Word::Length("mm"));
    let is_more = cross(chain, end).is_some_and(|behind| chain.digits(behind).is_some());
    let other_unit =
        end == second.end && (is_measured(chain, end) || unit_of_length(chain, &second).is_some());
    if is_more || other_unit || chain.inside_a_run(end) || chain.sign(end, &["/"]) {
        return None;
    }
    let is_mm = first_mm != first.end || end != second.end;
    one(end, What::Pair { first: first.text, second: second.text, is_mm })
}

/// `ST4.2 x 16`: the size of a tapping screw by ISO 1478, in millimetres.
pub fn tapping(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let first = chain.word(at).filter(|word| *word == "st").map(|_| chain.after(at))?;
    let found = pair(chain, first).filter(|_| chain.glued(first))?;
    let what = match found.into_iter().next()? {
        (end, What::Pair { first, second, .. }) => (end, What::Pair { first, second, is_mm: true }),
        _ => return None,
    };
    Some(vec![what])
}

/// Why a thread of another series is not used.
pub const FOREIGN: &str = "only M and unified threads are known here";

/// `3/4 BSW`, `1/2-14 NPT`: a thread of another series is not the unified one of its size.
pub fn foreign(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let size = number::number(chain, at)?;
    let mut end = chain.over(over_inch(chain, size.end), DASHES);
    end = number::decimal(chain, end).filter(|_| end != size.end).map_or(end, |per_inch| per_inch.end);
    let (end, ()) = lexicon::whole(chain, end, |word| (word == Word::Foreign).then_some(()))?;
    one(end, What::Not(FOREIGN.into()))
}

/// The thread of a size, by a series.
pub fn of_size(inches: f64, text: &str, series: Series, weak: bool) -> Written {
    let sixteenths = inches * 16.0;
    let thread = (sixteenths.fract() == 0.0).then(|| Thread::unified(series, sixteenths as u16)).flatten();
    let text = thread.map_or_else(|| format!("{text} {}", series.name()), |thread| thread.to_string());
    Written { text, thread, of_size: true, pitched: false, weak }
}

/// A size or a length in inches: `3/4`, `1 1/4"`, `4"`.
pub fn inches(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = number::number(chain, at).filter(|number| number.grouped.is_none())?;
    let end = over_inch(chain, number.end);
    let marked = end != number.end && !chain.inside_a_run(end);
    if !(marked || number.is_fraction) || chain.inside_a_run(end) {
        return None;
    }
    if let Some(found) = across_something(chain, end) {
        return Some(found);
    }
    one(end, What::Inches { value: number.value, text: format!("{} in", number.text) })
}

/// A measure of something else: `for 4" pipe`, `2-3/8" id`.
fn across_something(chain: &Chain<'_>, end: usize) -> Option<Found> {
    let behind = lexicon::over(chain, end, Word::Across);
    (behind != end).then(|| vec![(behind, What::Not("a width or a bore, and no length".into()))])
}

/// The length behind a cross; without a unit it is in the unit of the thread.
fn length_behind_cross(chain: &Chain<'_>, at: usize, unit: &'static str) -> Option<(usize, What)> {
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
    (!is_measured(chain, end)).then(|| vec![(end, length)])
}

/// A length with its unit: `90 mm`, `36 in`, `3 m`, `L = 50 mm`.
pub fn length(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, length) = measure(chain, at, None)?;
    one(end, length)
}

fn measure(chain: &Chain<'_>, at: usize, default: Option<&'static str>) -> Option<(usize, What)> {
    let feet = feet_and_inches(chain, at);
    if feet.is_some() {
        return feet;
    }
    let spaced = number::spaced(chain, at).filter(|number| unit_of_length(chain, number).is_some());
    let mut number = spaced.map_or_else(|| number::number(chain, at), Some)?;
    let mut unit = unit_of_length(chain, &number);
    if unit.is_none() {
        number = before_comma(chain, at, number);
        unit = unit_of_length(chain, &number);
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
fn feet_and_inches(chain: &Chain<'_>, at: usize) -> Option<(usize, What)> {
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

/// The place behind the mark of an inch.
fn over_inch(chain: &Chain<'_>, at: usize) -> usize {
    if chain.sign(at, &["\"", "″", "”", "“"]) {
        return chain.after(at);
    }
    let other = chain.after(at);
    if chain.sign(at, &["'", "′", "’"]) && chain.sign(other, &["'", "′", "’"]) && chain.glued(other) {
        return chain.after(other);
    }
    let end = lexicon::over(chain, at, Word::Length("in"));
    // `in` in front of a place is no inch.
    let is_place = |at| {
        lexicon::find(chain, at, |word| matches!(word, Word::Category(_) | Word::Place(_)).then_some(()))
            .is_some()
    };
    if chain.word(at) == Some("in") && is_place(end) { at } else { end }
}

/// The unit of length behind a number, if one stands there that fits it.
fn unit_of_length(chain: &Chain<'_>, number: &Number) -> Option<(usize, &'static str)> {
    let inch = over_inch(chain, number.end);
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
    unit.filter(|(end, unit)| !chain.inside_a_run(*end) && (*unit != "ft" || number.value <= 12.0))
}

/// Whether a unit of something else stands here: pieces, weeks, a hardness.
fn is_measured(chain: &Chain<'_>, at: usize) -> bool {
    let unit = |word| {
        matches!(
            word,
            Word::Count(..)
                | Word::Each
                | Word::Micrometre
                | Word::Mil
                | Word::Measure(_)
                | Word::Mass(_)
                | Word::Scale(_)
                | Word::Years
                | Word::Box
                | Word::Set
                | Word::Thousand
                | Word::Degrees(_)
        )
        .then_some(())
    };
    lexicon::find(chain, at, unit).is_some_and(|(end, ())| !chain.inside_a_run(end))
        || chain.sign(at, &["°", "%"])
}
