//! One written line in trade terms, spread over the fields of the order line.
//!
//! `M20x2.5 x 90 hex bolt, 10.9, 1200 pcs, C4, 25 years, class 55`. What is understood fills a
//! field; what is not is given back word for word, so that nothing typed is lost.

use super::asked;
use crate::calculator::Draft;
use crate::part;
use crate::quantity::number;
use crate::quantity::unit;
use crate::site::Category;
use crate::steel::Grade;
use crate::thread::Designation;

/// A line as it was understood.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Spread {
    /// The fields it fills.
    pub draft: Draft,
    /// The words it could not place.
    pub unplaced: Vec<String>,
}

/// Spreads a written line over the fields.
pub fn spread(line: &str) -> Spread {
    let mut spread = Spread::default();
    let line = line.replace(['×', '✕'], "x");
    let mut chunks: Vec<Vec<&str>> =
        line.split([',', ';', '\n', '\t']).map(|chunk| chunk.split_whitespace().collect()).collect();
    let draft = &mut spread.draft;
    // The order matters: a thread holds digits that would pass for a length or a count.
    if let Some(found) = first(&mut chunks, thread_and_length) {
        draft.set("thread", found.0);
        if let Some(length) = found.1 {
            draft.set("length", length);
        }
    }
    type Read = fn(&[&str]) -> Option<(&'static str, String)>;
    let readers: [(usize, Read); 8] =
        [(4, pieces), (3, years), (3, hardness), (2, place), (4, class), (3, grade), (4, shape), (3, length)];
    for (longest, read) in readers {
        let found = first(&mut chunks, |words| window(words, longest, read));
        if let Some((name, text)) = found {
            if name == "hardness" {
                draft.set("steel", "hardness");
            }
            if draft.get(name).is_none() {
                draft.set(name, text);
            }
        }
    }
    let nut = draft.get("part").and_then(part::Kind::from_key).is_some_and(part::Kind::is_nut);
    if nut
        && draft.get("steel").is_none()
        && let Some((name, text)) = first(&mut chunks, |words| window(words, 2, nut_grade))
    {
        draft.set(name, text);
    }
    // What the line does not say is asked for, and never taken from the worked example.
    for name in ["part", "thread", "length", "quantity", "steel", "place", "years"] {
        if draft.get(name).is_none() {
            draft.set(name, "");
        }
    }
    let noise = ["x", "-", "of", "in", "for", "to", "grade", "class", "steel", "@"];
    spread.unplaced =
        chunks.into_iter().flatten().filter(|word| !noise.contains(word)).map(str::to_owned).collect();
    spread
}

/// The first chunk in which `read` finds something.
fn first<T>(chunks: &mut [Vec<&str>], read: impl Fn(&mut Vec<&str>) -> Option<T>) -> Option<T> {
    chunks.iter_mut().find_map(read)
}

/// The longest run of words that `read` understands; it is taken out.
fn window<T>(words: &mut Vec<&str>, longest: usize, read: impl Fn(&[&str]) -> Option<T>) -> Option<T> {
    for size in (1..=longest.min(words.len())).rev() {
        for start in 0..=words.len() - size {
            if let Some(found) = words.get(start..start + size).and_then(&read) {
                words.drain(start..start + size);
                return Some(found);
            }
        }
    }
    None
}

/// A thread and the length written behind it: `M20x2.5 x 90`, `M16x60`, `5/8-11 UNC x 3 in`.
fn thread_and_length(words: &mut Vec<&str>) -> Option<(String, Option<String>)> {
    for start in 0..words.len() {
        for size in (1..=5.min(words.len() - start)).rev() {
            let text = words.get(start..start + size)?.join(" ");
            let Some((thread, length)) = thread_in(&text) else { continue };
            words.drain(start..start + size);
            let length = length.or_else(|| length_behind(words, start, &thread));
            return Some((thread, length));
        }
    }
    None
}

/// A thread that is the whole text, or all of it before the last `x`.
fn thread_in(text: &str) -> Option<(String, Option<String>)> {
    // A bare number is no thread in a line: it may be a grade or a count.
    let named =
        text.starts_with(['M', 'm']) || text.contains('-') || text.to_ascii_uppercase().contains("UN");
    if !named {
        return None;
    }
    if let Ok(designation) = Designation::read(text) {
        return Some((designation.to_string(), None));
    }
    let (thread, length) = text.rsplit_once(['x', 'X'])?;
    let designation = Designation::read(thread.trim()).ok()?;
    let length = length_text(length.trim(), &designation.to_string())?;
    Some((designation.to_string(), Some(length)))
}

/// The length behind a thread, taken out of the words: `x 90`, `x 2 1/2 in`.
fn length_behind(words: &mut Vec<&str>, start: usize, thread: &str) -> Option<String> {
    if !words.get(start).is_some_and(|word| word.eq_ignore_ascii_case("x")) {
        return None;
    }
    for size in (1..=3.min(words.len() - start - 1)).rev() {
        let text = words.get(start + 1..start + 1 + size)?.join(" ");
        if let Some(length) = length_text(&text, thread) {
            words.drain(start..start + 1 + size);
            return Some(length);
        }
    }
    None
}

/// A length with its unit; without one it is in millimetres behind a metric thread, else inches.
fn length_text(text: &str, thread: &str) -> Option<String> {
    let reading = number::read(text, &[&unit::MM, &unit::INCH, &unit::M, &unit::FOOT]).ok()?;
    match reading.unit {
        Some(_) => Some(text.to_owned()),
        None if thread.starts_with('M') => Some(format!("{text} mm")),
        None => Some(format!("{text} in")),
    }
}

fn length(words: &[&str]) -> Option<(&'static str, String)> {
    let text = words.join(" ");
    let reading = number::read(&text, &[&unit::MM, &unit::INCH, &unit::M, &unit::FOOT]).ok()?;
    reading.unit.map(|_| ("length", text))
}

/// `1200 pcs`, `qty 1200`, `1 200 off`.
fn pieces(words: &[&str]) -> Option<(&'static str, String)> {
    let text = words.join(" ");
    let lower = text.to_ascii_lowercase();
    let (digits, named) = match lower.strip_prefix("qty").or_else(|| lower.strip_prefix("quantity")) {
        Some(rest) => (rest.trim_start_matches([':', ' ']), true),
        None => {
            let (digits, unit) = number::split_unit(&lower);
            (digits, ["pcs", "pc", "pieces", "off", "nos", "ea"].contains(&unit.trim_end_matches('.')))
        }
    };
    let number = number::read_number(digits).ok()?;
    (named && number.fract() == 0.0).then(|| ("quantity", digits.to_owned()))
}

/// `25 years`.
fn years(words: &[&str]) -> Option<(&'static str, String)> {
    let text = words.join(" ");
    let reading = number::read(&text, &[&unit::YEAR]).ok()?;
    reading.unit.map(|_| ("years", text))
}

/// `36 HRC`.
fn hardness(words: &[&str]) -> Option<(&'static str, String)> {
    let text = words.join(" ");
    let reading = number::read(&text, &[&unit::HRC, &unit::HV, &unit::HB]).ok()?;
    reading.unit.map(|_| ("hardness", text))
}

fn place(words: &[&str]) -> Option<(&'static str, String)> {
    let text = words.join(" ");
    let short = text.len() == 2;
    Category::read(&text).filter(|_| short).map(|category| ("place", category.key().to_owned()))
}

fn class(words: &[&str]) -> Option<(&'static str, String)> {
    asked::read(&words.join(" ")).map(|key| ("asked", key.to_owned()))
}

fn shape(words: &[&str]) -> Option<(&'static str, String)> {
    part::Kind::read(&words.join(" ")).ok().map(|kind| ("part", kind.key().to_owned()))
}

fn grade(words: &[&str]) -> Option<(&'static str, String)> {
    // The grade's reader forgives words around it; those that name the part are the part's.
    if words.iter().any(|word| names_part(word)) {
        return None;
    }
    Grade::read(&words.join(" ")).ok().map(|grade| ("steel", grade.key().to_owned()))
}

/// A class that means a nut because the part is one: `class 8`.
fn nut_grade(words: &[&str]) -> Option<(&'static str, String)> {
    let grade = Grade::read(&format!("nut {}", words.join(" "))).ok()?;
    grade.is_nut().then(|| ("steel", grade.key().to_owned()))
}

fn names_part(word: &str) -> bool {
    let word = word.to_ascii_lowercase();
    part::Kind::read(&word).is_ok()
        || ["hex", "heavy", "socket", "head", "cap", "structural", "screw", "screws", "threaded"]
            .contains(&word.as_str())
}
