//! Threads, by their names and by their sizes.

mod foreign;
mod lengths;

use super::length::{
    DASHES, across_something, before_comma, cross, is_measured, length_behind_cross, over_inch,
    over_inch_behind, parts_into_two, text_is_one, triple, unit_of_length,
};
use super::lexicon::{self, Word};
use super::number::{self, Number};
use super::steel;
use super::token::{Chain, Sort, Token};
use super::what::{Found, What, Written, one};
use crate::table::asme_b1_1::Series;
use crate::thread::{Designation, Thread, ToleranceClass};
pub use foreign::{FOREIGN, foreign, foreign_in_front};
use lengths::{length_of_thread, named_near, second_length, several, third_number, too_short};

/// `M20`, `M16x1.5-6g x 60`, `M24-3.0`, `M 16 x 80`.
pub fn metric(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| *word == "m")?;
    let digits = chain.after(at);
    // Behind a number, a small m with a space behind it is a metre.
    let is_metre = !chain.glued(digits)
        && chain.get(at).is_some_and(|token| token.text == "m")
        && chain.before(at).is_some_and(|before| chain.digits(before).is_some());
    // `5 M 1/2-13`: thousands of an inch size.
    let is_count = !chain.glued(digits) && number::fraction(chain, digits).is_some();
    let diameter = whole_or_tenth(chain, digits).filter(|_| !is_metre && !is_count)?;
    let mut text = format!("M{}", diameter.text);
    let mut end = diameter.end;
    if let Some(found) = with_steel_between(chain, end, &text) {
        return Some(found);
    }
    if let Some(found) = lengths::with_thousands(chain, end, &text, diameter.value) {
        return Some(found);
    }
    let exists = |text: &str| Designation::read(text).is_ok();
    // A pitch behind a cross or a dash, if there is such a one; a fraction of a millimetre is always one.
    let mut length_behind = end;
    for is_cross in [true, false] {
        let Some(number) = behind(chain, end, is_cross).filter(|number| !number.is_fraction) else {
            continue;
        };
        let with_pitch = format!("{text}x{}", number.text);
        let past = lexicon::over(chain, number.end, Word::Length("mm"));
        let more = is_cross && behind(chain, past, true).is_some();
        // `M20 x 2.5 m`: a length.
        if unit_of_length(chain, &number).is_some_and(|(_, unit)| unit != "mm") {
            break;
        }
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
    // `M20-8`: a nut of class 8.
    let nut_class = behind(chain, end, false).filter(|number| {
        let is_alone = cross(chain, number.end).is_none()
            && !chain.inside_a_run(number.end)
            && !is_measured(chain, number.end)
            && !chain.sign(number.end, DASHES);
        number.whole().is_some_and(|class| matches!(class, 5 | 6 | 8 | 9 | 10 | 12))
            && is_alone
            && class.is_none()
    });
    let pitched = text.contains('x');
    let read = Designation::read(&text).ok();
    let text = read.map_or(text, |it| it.to_string());
    let thread = read.map(|it| it.thread);
    let mut found = vec![(end, What::Thread(Written { text, thread, of_size: false, pitched, weak: false }))];
    if let Some((end, length)) = length_behind_cross(chain, length_behind, "mm") {
        if let Some(end) = several(chain, end) {
            found.push((end, What::Not("several lengths: write a line for each".into())));
            return Some(found);
        }
        if let Some(other) = second_length(chain, end, &length) {
            found.push((end, length));
            found.extend(other);
            return Some(found);
        }
        let threaded = length_of_thread(chain, end, &length);
        let third = third_number(chain, end, &length, diameter.value);
        found.push((end, too_short(length, diameter.value)));
        found.extend(third);
        found.extend(threaded.map(|end| (end, What::Not(lexicon::THREAD_LENGTH.into()))));
    } else if let Some(number) = nut_class {
        found.push((number.end, What::Class(number.whole().and_then(|class| class.try_into().ok())?)));
    }
    Some(found)
}

/// `M12 x 8.8 x 45`, `M16 x 10.9`: the class of the steel behind the cross of the size, where no pitch and no unit follows.
fn with_steel_between(chain: &Chain<'_>, end: usize, size: &str) -> Option<Found> {
    let class = cross(chain, end)?;
    let number = number::decimal(chain, class).filter(|it| steel::DOTTED.contains(&it.text.as_str()))?;
    let thread = Designation::read(size).ok()?.thread;
    let is_pitch = |length: usize| {
        let number = number::decimal(chain, length);
        number.is_none_or(|number| {
            cross(chain, number.end).is_some() || number.value < thread.diameter().mm() / 3.0
        })
    };
    let length = cross(chain, number.end);
    if unit_of_length(chain, &number).is_some() || length.is_some_and(is_pitch) {
        return None;
    }
    let text = thread.to_string();
    let written = Written { text, thread: Some(thread), of_size: false, pitched: false, weak: false };
    let (steel, what) =
        steel::steel(chain, class)?.into_iter().last().filter(|(steel, _)| *steel == number.end)?;
    let mut found = vec![(class, What::Thread(written)), (steel, what)];
    found.extend(length_behind_cross(chain, steel, "mm"));
    Some(found)
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
    let ends = !chain.inside_a_run(end) || cross(chain, end).is_some();
    ToleranceClass::read(&text).filter(|_| ends).map(|class| (end, class))
}

/// A class by itself.
pub fn thread_class(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, class) = class_at(chain, at).filter(|_| !chain.inside_a_run(at))?;
    one(end, if is_hours(chain, at, end) { What::Not(OR_HOURS.into()) } else { What::ThreadClass(class) })
}

const OR_HOURS: &str = "hours, or the class of a thread? Write the class behind its thread, as M12-6h";

/// Whether a class may be hours: `tempered 4h`, `soak 6h before the dip`, `4h at 200 °C`; `tolerance 6h` is none.
fn is_hours(chain: &Chain<'_>, at: usize, end: usize) -> bool {
    let is_hour = end == chain.after(at + 1) && chain.get(at + 1).is_some_and(|unit| unit.text == "h");
    let word = |at: usize| chain.tokens().get(at).filter(|token| token.sort == Sort::Word);
    let front = at.checked_sub(1);
    let is_of_a_thread = |token: &Token<'_>| {
        let word = token.lower.as_str();
        word.starts_with("tol") || lexicon::OF_THREADS.contains(&word) || lexicon::means(word, Word::Class)
    };
    if !is_hour || front.and_then(word).is_some_and(is_of_a_thread) {
        return false;
    }
    let is_behind = |front: usize| {
        word(front).is_some() && chain.is_out(front)
            || chain.word(front).is_some_and(|word| ["of", "for", "after", "within"].contains(&word))
            || matches!(
                lexicon::meaning(chain, front),
                Some((
                    _,
                    Word::Process(_)
                        | Word::Tinted(_)
                        | Word::Not(_)
                        | Word::Bake
                        | Word::Tempered
                        | Word::Bath
                ))
            )
    };
    let heat = chain.over(lexicon::over(chain, end, Word::Filler), &["@"]);
    let degrees = number::decimal(chain, heat).map_or(heat, |heat| chain.over(heat.end, &["°"]));
    front.is_some_and(is_behind)
        || word(at + 2).is_some_and(|word| word.text.len() > 1) && lexicon::meaning(chain, at + 2).is_none()
        || degrees != heat && matches!(lexicon::meaning(chain, degrees), Some((_, Word::Degrees(_))))
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
        && let Some(per_inch) = threads_per_inch(chain, dash, size)
    {
        text = format!("{text}-{}", per_inch.text);
        end = per_inch.end;
    }
    // `1/2 x 13 x 2`: threads per inch behind a cross, where a length follows.
    if end == mark
        && let Some(per_inch) = cross(chain, mark).and_then(|behind| threads_per_inch(chain, behind, size))
        && cross(chain, per_inch.end).is_some()
        && Designation::read(&format!("{}-{}", size.text, per_inch.text)).is_ok()
        // `washer 12 x 24 x 2.5`: hole, outside and thickness.
        && !(triple(chain, at).is_some()
            && named_near(chain, at, &["washer"])
            && !named_near(chain, at, &["screw"]))
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
    let series = series.filter(|(behind, _)| {
        !chain.inside_a_run(*behind) || class_at(chain, *behind).is_some() || cross(chain, *behind).is_some()
    });
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
    // `5-4UN` is a thread, if none that is known here.
    let is_named = has_pitch && series.is_some() && size.value <= 12.0;
    // `1"-14 x 4`, `1-14 x 4`: so is what touches its dash on both sides and has a length behind it.
    let is_pitch =
        text.rsplit_once('-').and_then(|(_, pitch)| pitch.parse::<f64>().ok()).is_some_and(|per| per >= 4.0);
    let is_joined = has_pitch
        && is_pitch
        && (0.06..=6.0).contains(&size.value)
        && text_is_one(chain, at, size)
        && chain.glued(mark)
        && chain.glued(dash)
        && (mark != size.end || cross(chain, end).is_some_and(|length| chain.digits(length).is_some()));
    let is_named = is_named || is_joined;
    let is_sure = (size.is_fraction && text_is_one(chain, at, size) || is_named) && !is_measured(chain, end);
    let text = match &read {
        Ok(designation) if is_sure || !is_measured(chain, end) => designation.to_string(),
        Err(_) if is_sure => text,
        _ => return None,
    };
    let thread = read.ok().map(|it| it.thread);
    let mut found =
        vec![(end, What::Thread(Written { text, thread, of_size: false, pitched: true, weak: false }))];
    found.extend(inches_behind_cross(chain, end).into_iter().flatten());
    Some(found)
}

/// Whether figures are those of a size, and count nothing: a fraction, what has its threads per inch behind a dash, or a
/// length behind its number, `#8 x 1`.
pub fn begins_a_size(chain: &Chain<'_>, at: usize) -> bool {
    // `need: .500-13`, `qty #10-24`: its sign is that of the size.
    let sign = chain.before(at).filter(|sign| chain.sign(*sign, &[".", "#"]) && chain.glued(at));
    let at = sign.filter(|sign| !chain.glued(*sign)).unwrap_or(at);
    let is_dashed = || number::mixed(chain, at).is_some_and(|_| chain.sign(chain.after(at), DASHES));
    let is_size = || match unified(chain, at).as_deref() {
        Some([(_, What::Thread(written)), rest @ ..]) => {
            written.pitched && (written.thread.is_some() || chain.sign(at, &["#"]) && !rest.is_empty())
        }
        _ => false,
    };
    number::fraction(chain, at).is_some() || is_dashed() || is_size()
}

/// The threads per inch behind a size: `13`, `4.5`; and `4 1/2` where there is such a thread, for a fraction behind
/// a whole number may as well be a length of its own.
fn threads_per_inch(chain: &Chain<'_>, at: usize, size: &Number) -> Option<Number> {
    let mixed = number::mixed(chain, at).filter(|number| {
        over_inch(chain, number.end) == number.end
            && Designation::read(&format!("{}-{}", size.text, number.text)).is_ok()
    });
    mixed.or_else(|| {
        number::decimal(chain, at).filter(|number| number.value <= 80.0 && !chain.sign(number.end, &["/"]))
    })
}

/// `No. 8 x 1`: the size of a small screw by its word.
pub fn numbered_in_words(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at)?;
    numbered(chain, at)
}

/// `#10-24`, `8-32`: the sizes of small screws; `8-18`: of screws that form their own thread.
fn numbered(chain: &Chain<'_>, at: usize) -> Option<Found> {
    const SIZES: &[&str] = &[
        "0-80", "1-64", "1-72", "2-56", "2-64", "3-48", "3-56", "4-40", "4-48", "5-40", "5-44", "6-32",
        "6-40", "6-20", "8-15", "8-18", "10-12", "10-16", "12-11", "12-14", "8-32", "8-36", "10-24", "10-32",
        "12-24", "12-28",
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
    found.extend(inches_behind_cross(chain, end).into_iter().flatten());
    Some(found)
}

/// A size without threads per inch, with a length behind it: `7/8 x 3-1/2`, `1" x 6"`, `1 x 6`.
fn by_size(chain: &Chain<'_>, at: usize, size: &Number) -> Option<Found> {
    let mark = over_inch(chain, size.end);
    if cross(chain, mark).is_some_and(|behind| is_thread_of(chain, behind, size.value)) {
        return None;
    }
    let (end, length) = length_behind_cross(chain, mark, "in")?;
    // `3" x 1/2" lag screw`: nobody orders a screw so short for its size.
    let inches =
        cross(chain, mark).and_then(|behind| number::number(chain, behind)).map(|number| number.value);
    let is_turned = matches!(&length, What::Length(text) if text.ends_with(" in"))
        && inches.is_some_and(|inches| size.value > MOST_SIZES * inches);
    if is_turned && (size.is_fraction && text_is_one(chain, at, size) || mark != size.end) {
        let why =
            format!("a size of {0} in, or a length of {0} in? Write the size first, as 1/2 x 3", size.text);
        return one(end, What::Not(why.into()));
    }
    let is_whole = size.text.bytes().all(|byte| byte.is_ascii_digit());
    // `1 x 4-1/4 assy`: no such number counts sets.
    let is_whole_length = inches.is_none_or(|inches| inches.fract() == 0.0);
    let fair =
        size.is_fraction && text_is_one(chain, at, size) || mark != size.end || size.value < 1.0 || is_whole;
    if !fair
        || size.value <= 0.0
        || size.value > 4.0
        || (is_whole && is_whole_length && is_measured(chain, end))
    {
        return None;
    }
    let weak = !size.is_fraction && mark == size.end;
    // `4 x 40 mm`: two measures in millimetres.
    let is_metric = matches!(&length, What::Length(text) if text.ends_with(" mm"));
    if weak && is_whole && is_metric {
        return None;
    }
    let mut found = vec![(mark, What::Thread(of_size(size.value, &size.text, Series::Unc, weak)))];
    found.extend(inches_behind_cross(chain, mark)?);
    Some(found)
}

/// A length behind a cross, and a second one that is joined to it.
fn inches_behind_cross(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let (end, length) = length_behind_cross(chain, at, "in")?;
    let other = second_length(chain, end, &length);
    let mut found = vec![(end, length)];
    found.extend(other.into_iter().flatten());
    Some(found)
}

/// No screw is shorter than its size divided by so much.
const MOST_SIZES: f64 = 2.0;

/// Whether a thread with its pitch stands at a place, and no larger one than so many inches: what stands in front
/// of its cross is its length.
fn is_thread_of(chain: &Chain<'_>, at: usize, most: f64) -> bool {
    let readings = [number::mixed(chain, at), number::fraction(chain, at), number::decimal(chain, at)];
    let found = readings.into_iter().flatten().find_map(|size| with_pitch(chain, at, &size));
    matches!(found.as_deref(), Some([(_, What::Thread(Written { thread: Some(thread), .. })), ..])
        if thread.diameter().inch() <= most)
}

/// `3 in x 1/2-13`, `1-1/2 x 3/8-16`: a length in front of its thread, and the cross between.
pub fn length_before(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let number = number::number(chain, at).filter(|number| number.grouped.is_none())?;
    let mark = over_inch(chain, number.end);
    let behind = cross(chain, mark).filter(|_| number.is_fraction || mark != number.end)?;
    // `2 1/2 x 3/8-16`: two, and a length.
    ((text_is_one(chain, at, &number) || mark != number.end) && is_thread_of(chain, behind, number.value))
        .then(|| vec![(behind, What::Length(format!("{} in", number.text)))])
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
    if parts_into_two(chain, at, &number) {
        return None;
    }
    let end = over_inch_behind(chain, &number);
    let marked = end != number.end && !chain.inside_a_run(end);
    if !(marked || number.is_fraction) || chain.inside_a_run(end) {
        return None;
    }
    if let Some(found) = across_something(chain, end) {
        return Some(found);
    }
    one(end, What::Inches { value: number.value, text: format!("{} in", number.text) })
}
