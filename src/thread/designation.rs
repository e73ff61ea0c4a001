//! A written designation: which thread it means, and its class where one is written.

use std::fmt;
use std::str::FromStr;

use crate::quantity::number;
use crate::table::asme_b1_1::{Diameter, Series};
use crate::table::iso_261;

use super::{Thread, ToleranceClass};

/// A thread and, where it was written, its tolerance class.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Designation {
    /// The thread.
    pub thread: Thread,
    /// The class written behind it.
    pub class: Option<ToleranceClass>,
}

/// Why a text is not a designation.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    /// Nothing was written.
    Empty,
    /// It has no form of a designation.
    NotAThread {
        /// As it was written.
        text: String,
    },
    /// The diameter is in no series.
    NoSuchSize {
        /// As it was written, or its plain form.
        text: String,
        /// The threads next to it, one or two.
        nearest: Vec<Thread>,
    },
    /// The diameter exists, but not with this pitch or in this series.
    NoSuchPitch {
        /// As it was written, or its plain form.
        text: String,
        /// The diameter: `M16`, `5/8`.
        size: String,
        /// Its threads, coarse first.
        has: Vec<Thread>,
    },
    /// What stands behind the thread is no class.
    UnknownClass {
        /// As it was written.
        text: String,
        /// The thread in front of it.
        thread: Thread,
    },
}

impl Designation {
    /// Reads `M16`, `M16x1.5`, `M16×1,5 - 6g`, `5/8-11 UNC-2A`, `1 1/8-8 UN`, `1/2 UNC`, `.625-11`, `#10-24`, `10-32`.
    ///
    /// # Errors
    /// [`Unreadable`] says what is wrong and names the nearest thread that exists.
    pub fn read(text: &str) -> Result<Self, Unreadable> {
        let plain = plain_form(text);
        if plain.is_empty() {
            return Err(Unreadable::Empty);
        }
        match plain.strip_prefix(['M', 'm']) {
            Some(rest) => read_metric(rest.trim_start()),
            None => read_unified(&plain),
        }
    }
}

impl FromStr for Designation {
    type Err = Unreadable;
    fn from_str(text: &str) -> Result<Self, Unreadable> {
        Self::read(text)
    }
}

/// One kind of dash, cross, point and space; no space around a dash or a cross.
fn plain_form(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for c in text.trim().chars() {
        let c = match c {
            '×' | 'X' | '*' => 'x',
            '–' | '—' | '−' | '‐' | '‑' => '-',
            ',' => '.',
            '⁄' => '/',
            c if c.is_whitespace() => ' ',
            '"' | '″' | '”' => continue,
            c => c,
        };
        let joins = |c: Option<char>| matches!(c, Some('-' | 'x' | 'X' | '/' | ' '));
        if c == ' ' && joins(plain.chars().last()) {
            continue;
        }
        if matches!(c, '-' | 'x' | '/') && plain.ends_with(' ') {
            plain.pop();
        }
        // The second letter of position AX is no cross.
        plain.push(if c == 'x' && plain.ends_with('A') { 'X' } else { c });
    }
    plain
}

/// What stands behind the M.
fn read_metric(text: &str) -> Result<Designation, Unreadable> {
    let not_a_thread = || Unreadable::NotAThread { text: format!("M{text}") };
    let (diameter, rest) = split_number(text);
    let (pitch, rest) = match rest.strip_prefix('x') {
        Some(rest) => {
            let (pitch, rest) = split_number(rest);
            (Some(pitch), rest)
        }
        None => (None, rest),
    };
    let diameter = number::plain_number(diameter).ok_or_else(not_a_thread)?;
    let written = match pitch {
        Some(pitch) => format!("M{diameter}x{pitch}"),
        None => format!("M{diameter}"),
    };
    let size = iso_261::SIZES.iter().find(|size| f64::from(size.diameter_mm) == diameter);
    let Some(size) = size else {
        let coarse = Thread::all().filter(|thread| thread.is_metric() && thread.is_coarse());
        let nearest = neighbours(coarse, |thread| thread.diameter().mm(), diameter);
        return Err(Unreadable::NoSuchSize { text: written, nearest });
    };
    let thread = match pitch {
        None => Thread::metric(size.diameter_mm, None),
        Some(pitch) => {
            let pitch = number::plain_number(pitch).ok_or_else(not_a_thread)?;
            let um = size.pitches_um.iter().find(|&&um| (f64::from(um) - pitch * 1000.0).abs() < 0.5);
            um.and_then(|&um| Thread::metric(size.diameter_mm, Some(um)))
        }
    };
    let Some(thread) = thread else {
        let has = size.pitches_um.iter();
        return Err(Unreadable::NoSuchPitch {
            text: written,
            size: format!("M{}", size.diameter_mm),
            has: has.filter_map(|&um| Thread::metric(size.diameter_mm, Some(um))).collect(),
        });
    };
    with_class(thread, rest)
}

/// A class behind a thread, or nothing.
fn with_class(thread: Thread, rest: &str) -> Result<Designation, Unreadable> {
    let rest = rest.trim_matches(['-', ' ']);
    if rest.is_empty() {
        return Ok(Designation { thread, class: None });
    }
    match ToleranceClass::read(rest) {
        Some(class) if class.is_metric() == thread.is_metric() => {
            Ok(Designation { thread, class: Some(class) })
        }
        _ => Err(Unreadable::UnknownClass { text: rest.to_owned(), thread }),
    }
}

/// Size, threads per inch and series in one of the ways the trade writes them.
fn read_unified(text: &str) -> Result<Designation, Unreadable> {
    let not_a_thread = || Unreadable::NotAThread { text: text.to_owned() };
    let (sizes, letters) = match text.find(|c: char| c.is_ascii_alphabetic()) {
        Some(at) => text.split_at(at),
        None => (text, ""),
    };
    let end = letters.find(|c: char| !c.is_ascii_alphabetic()).unwrap_or(letters.len());
    let (letters, behind) = letters.split_at(end);
    // Without letters of a series a class may follow at once: 5/8-11-2A.
    let (sizes, letters, class) = match (letters, sizes.rsplit_once(['-', ' '])) {
        ("A" | "B" | "a" | "b", Some((before, grade))) if grade.len() == 1 && behind.is_empty() => {
            (before, "", format!("{grade}{letters}"))
        }
        _ => (sizes, letters, behind.to_owned()),
    };
    let series = match letters.to_ascii_uppercase().as_str() {
        "" => None,
        "UNC" | "UNRC" => Some(Series::Unc),
        "UNF" | "UNRF" => Some(Series::Unf),
        "UNEF" | "UNREF" => Some(Series::Unef),
        "UN" | "UNR" => Some(Series::Un8),
        // A special pitch is none of those known here, or else its own series counts.
        "UNS" | "UNRS" => None,
        _ => return Err(not_a_thread()),
    };
    let sizes = sizes.trim_matches(['-', ' ']);
    let (marked, sizes) = match sizes.strip_prefix('#') {
        Some(rest) => (true, rest.trim_start()),
        None => (false, sizes),
    };
    let (written, per_inch) = read_size(sizes).ok_or_else(not_a_thread)?;
    let diameter = if marked || is_numbered(written, per_inch) {
        number_diameter(written).ok_or_else(not_a_thread)?
    } else {
        written
    };
    let of_size = Thread::all()
        .filter(|thread| !thread.is_metric() && (thread.diameter().inch() - diameter).abs() < 0.0006);
    let of_pitch = |thread: &Thread| per_inch.is_none_or(|n| thread.threads_per_inch() == Some(n));
    let of_series = |thread: &Thread| match series {
        // 1-8 UN is the coarse thread of its size.
        Some(Series::Un8) => {
            thread.series() == Some(Series::Un8)
                || thread.is_coarse() && thread.threads_per_inch() == Some(8.0)
        }
        Some(series) => thread.series() == Some(series),
        None => true,
    };
    let has: Vec<Thread> = of_size.collect();
    if let Some(&thread) = has.iter().find(|thread| of_pitch(thread) && of_series(thread)) {
        // Without threads per inch and without a series a size alone means nothing.
        if per_inch.is_some() || series.is_some() {
            return with_class(thread, &class);
        }
    }
    let text = text.to_owned();
    match has.first() {
        None => {
            let all = Thread::all().filter(|thread| match series {
                Some(series) => thread.series() == Some(series),
                None => thread.series() == Some(Series::Unc),
            });
            Err(Unreadable::NoSuchSize {
                text,
                nearest: neighbours(all, |thread| thread.diameter().inch(), diameter),
            })
        }
        Some(first) => {
            let size = first.to_string();
            let size = size.rsplit_once('-').map_or(size.as_str(), |(size, _)| size).to_owned();
            Err(Unreadable::NoSuchPitch { text, size, has })
        }
    }
}

/// The diameter in inches of the number of a small screw.
fn number_diameter(number: f64) -> Option<f64> {
    (number.fract() == 0.0 && (0.0..=12.0).contains(&number)).then(|| Diameter::Number(number as u8).inch())
}

/// Whether a whole number is that of a small screw and no inches: `10-24`, where no thread of ten inches is.
fn is_numbered(number: f64, per_inch: Option<f64>) -> bool {
    let Some(inches) = number_diameter(number) else { return false };
    let is_of = |thread: &Thread, diameter: f64| {
        (thread.diameter().inch() - diameter).abs() < 1e-6 && thread.threads_per_inch() == per_inch
    };
    per_inch.is_some()
        && Thread::all().any(|thread| is_of(&thread, inches) && thread.number().is_some())
        && !Thread::all().any(|thread| is_of(&thread, number))
}

/// `5/8-11`, `1 1/8-8`, `1-1/8-8`, `1-8`, `.625-11`, `2-4 1/2`, `5/8 11`, `1/2`: inches, and threads
/// per inch where they are written.
fn read_size(text: &str) -> Option<(f64, Option<f64>)> {
    let value = |part: &str| number::read_number(part).ok().filter(|number| *number > 0.0);
    let is_fraction = |part: &str| part.contains('/');
    // The last part is a number of threads if it is no fraction of an inch.
    if let Some((size, last)) = text.rsplit_once('-') {
        if !is_fraction(last) || last.contains(' ') {
            return Some((value(size)?, Some(value(last)?)));
        }
        return Some((value(text)?, None));
    }
    match text.rsplit_once(' ') {
        Some((size, last)) if !is_fraction(last) => Some((value(size)?, Some(value(last)?))),
        _ => Some((value(text)?, None)),
    }
}

/// The digits (and point) a text begins with, and the rest.
fn split_number(text: &str) -> (&str, &str) {
    let text = text.trim_start();
    text.split_at(text.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(text.len()))
}

/// The last thread below a size and the first above it.
fn neighbours(
    threads: impl Iterator<Item = Thread>,
    size_of: impl Fn(&Thread) -> f64,
    size: f64,
) -> Vec<Thread> {
    let (mut below, mut above) = (None, None);
    for thread in threads {
        if size_of(&thread) <= size {
            below = Some(thread);
        } else if above.is_none() {
            above = Some(thread);
        }
    }
    below.into_iter().chain(above).collect()
}

impl fmt::Display for Designation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.thread)?;
        self.class.map_or(Ok(()), |class| write!(f, "-{class}"))
    }
}

impl fmt::Display for Unreadable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => {
                f.write_str("no thread is written here; write for example M16, M16x1.5 or 5/8-11 UNC")
            }
            Self::NotAThread { text } => write!(
                f,
                "“{text}” is no thread designation; write for example M16, M16x1.5-6g, 5/8-11 UNC-2A"
            ),
            Self::NoSuchSize { text, nearest } => {
                write!(
                    f,
                    "{text} is not in the first and second choice of ISO 261, M3 to M64, nor in ASME B1.1, #4 to \
                     4 in; nearest "
                )?;
                write_list(f, nearest.iter(), " or ")
            }
            Self::NoSuchPitch { text, size, has } if text.starts_with('M') => {
                write!(f, "{text} does not exist; {size} has ")?;
                let pitches: Vec<String> = has.iter().map(|thread| thread.pitch().mm().to_string()).collect();
                f.write_str(if pitches.len() == 1 { "pitch " } else { "pitches " })?;
                write_list(f, pitches.iter(), ", ")
            }
            Self::NoSuchPitch { text, size, has } => {
                write!(f, "{text} is not known here, where special pitches (UNS) are not; {size} in has ")?;
                write_list(f, has.iter(), ", ")
            }
            Self::UnknownClass { text, .. } if text.to_ascii_uppercase().ends_with("LH") => write!(
                f,
                "“{text}”: the limits of a left-hand thread are those of a right-hand one; leave LH out, and \
                 order its taps and gauges left-hand"
            ),
            Self::UnknownClass { text, thread } if thread.is_metric() => write!(
                f,
                "“{text}” is no class of {thread}; write for example 6g or 6az for the bolt, 6H, 6AZ or 6AX \
                 for the nut"
            ),
            Self::UnknownClass { text, thread } => write!(
                f,
                "“{text}” is no class of {thread}; write 1A, 2A or 3A for the bolt, 1B, 2B or 3B for the nut"
            ),
        }
    }
}

fn write_list<T: fmt::Display>(
    f: &mut fmt::Formatter<'_>,
    items: impl Iterator<Item = T>,
    between: &str,
) -> fmt::Result {
    for (at, item) in items.enumerate() {
        if at > 0 {
            f.write_str(between)?;
        }
        write!(f, "{item}")?;
    }
    Ok(())
}

impl std::error::Error for Unreadable {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn designations_as_the_trade_writes_them() {
        let cases = [
            ("M16", "M16"),
            ("m16", "M16"),
            ("M16x2", "M16"),
            ("M16 x 1.5", "M16x1.5"),
            ("M16×1,5 - 6g", "M16x1.5-6g"),
            ("M16-6AZ", "M16-6AZ"),
            ("M16-6AX", "M16-6AX"),
            ("M20X2.5 6H", "M20-6H"),
            ("M12-5g6g", "M12-5g6g"),
            ("5/8-11 UNC-2A", "5/8-11 UNC-2A"),
            ("5/8-11UNC 2A", "5/8-11 UNC-2A"),
            ("5/8 - 11 UNC", "5/8-11 UNC"),
            ("5/8-11-2A", "5/8-11 UNC-2A"),
            ("1 1/8-8 UN", "1-1/8-8 UN"),
            ("1-1/8-8 UN", "1-1/8-8 UN"),
            ("1 1/8 8UN", "1-1/8-8 UN"),
            ("1-8 UN", "1-8 UNC"),
            ("1-8", "1-8 UNC"),
            ("1\"-8 UNC", "1-8 UNC"),
            ("1-1/8 UNC", "1-1/8-7 UNC"),
            ("1/2 UNC", "1/2-13 UNC"),
            ("1/2-20", "1/2-20 UNF"),
            (".625-11 UNC", "5/8-11 UNC"),
            ("0.3125-18", "5/16-18 UNC"),
            ("2-4.5 UNC", "2-4.5 UNC"),
            ("2-4 1/2 UNC-2B", "2-4.5 UNC-2B"),
            ("1/2-28 UNEF-2A", "1/2-28 UNEF-2A"),
        ];
        for (text, shown) in cases {
            let read = Designation::read(text).unwrap_or_else(|problem| panic!("{text}: {problem}"));
            assert_eq!(read.to_string(), shown, "{text}");
        }
    }

    #[test]
    fn every_thread_reads_back_as_it_shows() {
        for thread in Thread::all() {
            let read: Designation = thread.to_string().parse().unwrap();
            assert_eq!(read, Designation { thread, class: None });
        }
    }

    #[test]
    fn what_does_not_exist_is_refused_with_the_nearest_that_does() {
        let cases = [
            (
                "M17",
                "M17 is not in the first and second choice of ISO 261, M3 to M64, nor in ASME B1.1, #4 to 4 in; \
                 nearest M16 or M18",
            ),
            (
                "M100",
                "M100 is not in the first and second choice of ISO 261, M3 to M64, nor in ASME B1.1, #4 to 4 in; \
                 nearest M64",
            ),
            ("M16x1.75", "M16x1.75 does not exist; M16 has pitches 2, 1.5, 1"),
            (
                "5/8-12 UNC",
                "5/8-12 UNC is not known here, where special pitches (UNS) are not; 5/8 in has 5/8-11 UNC, 5/8-18 \
                 UNF, 5/8-24 UNEF",
            ),
            (
                "0.55-12 UNC",
                "0.55-12 UNC is not in the first and second choice of ISO 261, M3 to M64, nor in ASME B1.1, #4 to 4 \
                 in; nearest 1/2-13 UNC or 9/16-12 UNC",
            ),
            (
                "M16-2A",
                "“2A” is no class of M16; write for example 6g or 6az for the bolt, 6H, 6AZ or 6AX for the nut",
            ),
            ("bolt", "“bolt” is no thread designation; write for example M16, M16x1.5-6g, 5/8-11 UNC-2A"),
            ("", "no thread is written here; write for example M16, M16x1.5 or 5/8-11 UNC"),
        ];
        for (text, problem) in cases {
            assert_eq!(Designation::read(text).unwrap_err().to_string(), problem, "{text}");
        }
    }
}
