//! What stands behind the length of a thread: a second length, that of the thread, a third number.

use crate::order::reading::length::{cross, is_measured, length_of, unit_of_length};
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::number;
use crate::order::reading::token::{Chain, Sort};
use crate::order::reading::what::{Found, What, Written};
use crate::thread::Designation;

/// `M30x1,200 mm`: no bolt is 1.2 mm long, and no thread has this pitch; without the unit it may be a pitch of 1, and so
/// many pieces. With a point it is a pitch, but of a rod or a stud, which may be so long, in front of a word that counts, and where few
/// threads have it.
pub(super) fn with_thousands(chain: &Chain<'_>, end: usize, size: &str, diameter: f64) -> Option<Found> {
    let number = number::decimal(chain, cross(chain, end)?)?;
    let has_point = number.text.contains('.');
    // Pitches of 1.25 mm are so written too.
    let is_round = || number.grouped.is_some_and(|grouped| grouped % 500.0 == 0.0);
    let is_rare = number.value == 1.0 && diameter > FINE_OF_ONE && !named_near(chain, end, &["nut"]);
    let counts = |word| matches!(word, Word::Count(..) | Word::Each | Word::Set).then_some(());
    let counted = lexicon::find(chain, number.end, counts).map(|(end, ())| end);
    let is_long = || {
        counted.is_some()
            || chain.word(number.end).is_some_and(|word| lexicon::LONG.contains(&word))
            || named_near(chain, end, &["rod", "stud"])
    };
    let may_be_long = || is_round() && (is_rare || is_long());
    let grouped = number
        .grouped
        .filter(|_| number.value < 10.0 && (number.text.contains(',') || has_point && may_be_long()))?;
    let past = unit_of_length(chain, &number).map_or(number.end, |(end, _)| end);
    if cross(chain, past).is_some() {
        return None;
    }
    let thread = Designation::read(size).ok()?.thread;
    let (behind, length) = match unit_of_length(chain, &number) {
        unit if has_point && unit.is_none_or(|(_, unit)| unit == "mm") => {
            let why = format!(
                "{grouped} mm long, or a pitch of {} mm? Write the one without its noughts",
                number.value
            );
            (unit.map_or(number.end, |(end, _)| end), What::Not(why.into()))
        }
        Some((behind, "mm")) => (behind, What::Length(format!("{grouped} mm"))),
        Some(_) => return None,
        None => {
            let why = format!("{grouped} mm long, or {grouped} pieces? Write the unit of each");
            (counted.unwrap_or(number.end), What::Not(why.into()))
        }
    };
    let text = thread.to_string();
    let written = Written { text, thread: Some(thread), of_size: false, pitched: false, weak: false };
    Some(vec![(end, What::Thread(written)), (behind, length)])
}

/// Up to so many millimetres a pitch of 1 mm is among those that fasteners have (ISO 262).
const FINE_OF_ONE: f64 = 10.0;

/// How many tokens on either side of a size are looked at for the name of its part.
const NEAR: usize = 12;

/// Whether the name of a part with one of these nouns stands near a place, with no comma between.
pub(super) fn named_near(chain: &Chain<'_>, at: usize, nouns: &[&str]) -> bool {
    let is_name = |at: usize| {
        let noun = |word| match word {
            Word::Part(words) => words.split(' ').any(|word| nouns.contains(&word)).then_some(()),
            _ => None,
        };
        lexicon::whole(chain, at, noun).is_some()
    };
    let is_inside = |at: &usize| chain.get(*at).is_some_and(|token| token.sort != Sort::Break);
    let behind = std::iter::successors(Some(at), |at| Some(chain.after(*at)));
    let front = std::iter::successors(chain.before(at), |at| chain.before(*at));
    behind.take(NEAR).take_while(is_inside).any(is_name)
        || front.take(NEAR).take_while(is_inside).any(is_name)
}

/// `M20x50/60/70`, `M20 x 50, 60 and 70`: the place behind lengths of which a line takes one.
pub(super) fn several(chain: &Chain<'_>, at: usize) -> Option<usize> {
    let (mut end, mut more, mut is_said) = (at, 0, false);
    loop {
        let is_stroke = chain.sign(end, &["/"]);
        let joint = if is_stroke { chain.after(end) } else { chain.over(end, &[",", "&"]) };
        let and = matches!(chain.word(joint), Some("and" | "und" | "or" | "oder")) && !is_stroke;
        let from = if and { chain.after(joint) } else { joint };
        let is_number = from != end
            && chain.digits(from).is_some_and(|digits| is_stroke || (2..=3).contains(&digits.len()))
            && !chain.sign(chain.after(from), &[".", "-"]);
        if !is_number {
            break;
        }
        (end, more, is_said) = (chain.after(from), more + 1, is_said || and || is_stroke);
    }
    let is_of_part =
        lexicon::find(chain, end, |word| matches!(word, Word::Part("nut" | "washer")).then_some(()));
    (more > 1 && is_said && !chain.inside_a_run(end) && !is_measured(chain, end) && is_of_part.is_none())
        .then(|| lexicon::over(chain, end, Word::Length("mm")))
}

/// `M16 x 60 or 70`, `M16x60/80`, `1/2-13 x 2 or 2-1/2`: one of two lengths.
pub(super) fn second_length(chain: &Chain<'_>, at: usize, length: &What) -> Option<Found> {
    let What::Length(text) = length else { return None };
    let unit = text.rsplit(' ').next().filter(|unit| matches!(*unit, "mm" | "in"))?;
    let (joint, joins) = joint_of_lengths(chain, at)?;
    let other = number::number(chain, joint).filter(|_| !chain.inside_a_run(joint))?;
    let is_sure = joins == Joins::Or;
    let is_so_written = match unit {
        "mm" => other.whole().is_some(),
        // `1/2-13 x 2-1/2`: a sign may be of one length.
        _ => !other.text.contains('.') && joins != Joins::Sign,
    };
    let (first, own) = (length_of(text)?, length_of(&format!("{} {unit}", other.text))?);
    // By no word for one of two a lesser one is the length of the thread, or a class; many more are pieces.
    let fits = match is_sure {
        true => own != first && own.mm() <= 5.0 * first.mm() && first.mm() <= 5.0 * own.mm(),
        false => first.mm() < own.mm() && own.mm() <= 2.0 * first.mm(),
    };
    let end = match unit_of_length(chain, &other) {
        Some((end, of_other)) if of_other == unit => end,
        Some(_) => return None,
        None => other.end,
    };
    let mate = |word| match word {
        Word::Part(noun) => ["nut", "washer"].iter().any(|mate| noun.ends_with(mate)).then_some(()),
        _ => None,
    };
    let goes_on = is_measured(chain, end)
        || chain.inside_a_run(end)
        || chain.sign(end, &["/", "-", "–", ".", "\"", "″", "#", "'"])
        || cross(chain, end).is_some()
        || chain.word(end) == Some("m")
        || lexicon::find(chain, end, mate).is_some();
    (is_so_written && fits && !goes_on)
        .then(|| vec![(joint, What::Or), (end, What::Length(format!("{} {unit}", other.text)))])
}

/// What joins two lengths.
#[derive(Clone, Copy, PartialEq)]
enum Joins {
    Or,
    And,
    Sign,
}

/// What joins the number behind a place to the length in front of it: the place behind.
fn joint_of_lengths(chain: &Chain<'_>, at: usize) -> Option<(usize, Joins)> {
    let or = lexicon::over(chain, at, Word::Or);
    if or != at {
        return Some((chain.over(or, &["."]), Joins::Or));
    }
    if matches!(chain.word(at), Some("and" | "und" | "to" | "bis")) || chain.sign(at, &["&"]) {
        return Some((chain.after(at), Joins::And));
    }
    let behind = chain.after(at);
    // `M16x60 - 100`: a dash with spaces parts two pieces.
    let is_joined = chain.sign(at, &["-", "–", "+"]) && chain.glued(at) && chain.glued(behind);
    (is_joined || chain.sign(at, &["/"])).then_some((behind, Joins::Sign))
}

/// `M20x150/60`: behind a stroke that touches it, the length of the thread.
pub(super) fn length_of_thread(chain: &Chain<'_>, at: usize, length: &What) -> Option<usize> {
    let from = chain.after(at);
    let is_glued = chain.sign(at, &["/"]) && chain.glued(at) && chain.glued(from);
    let number =
        number::decimal(chain, from).filter(|_| is_glued && !chain.inside_a_run(chain.after(from)))?;
    let What::Length(text) = length else { return None };
    let all: f64 = text.strip_suffix(" mm")?.parse().ok()?;
    (number.value < all && number.whole().is_some() && !is_measured(chain, number.end)).then_some(number.end)
}

/// `M16x60x38`: behind the length a lesser number that is no less than the diameter is how far the part is
/// threaded, as the word behind it may say, or counts the parts.
pub(super) fn third_number(
    chain: &Chain<'_>,
    at: usize,
    length: &What,
    diameter: f64,
) -> Option<(usize, What)> {
    let number = number::decimal(chain, cross(chain, at)?).filter(|number| number.grouped.is_none())?;
    let mm = lexicon::over(chain, number.end, Word::Length("mm"));
    let What::Length(text) = length else { return None };
    let all: f64 = text.strip_suffix(" mm")?.parse().ok()?;
    let is_said =
        |at: usize| matches!(chain.word(at), Some("thread" | "threads" | "threaded" | "thd" | "gewinde"));
    let is_measure = chain.inside_a_run(mm)
        || mm == number.end && is_measured(chain, mm)
        || cross(chain, mm).is_some()
        || chain.sign(mm, &["/", "-", "\"", "%"]);
    if is_measure || number.value < diameter || number.value >= all {
        return None;
    }
    Some(match is_said(mm) {
        true => (chain.after(mm), What::Not(lexicon::THREAD_LENGTH.into())),
        false => {
            let third = &number.text;
            let why = format!(
                "the length of the thread, or pieces? It is that of the standard; write {third} pcs if it counts them"
            );
            (mm, What::Not(why.into()))
        }
    })
}

/// A metric thread that is longer than a third of its diameter has a length; less may be a pitch that does
/// not exist, or metres.
pub(super) fn too_short(length: What, diameter: f64) -> What {
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
