//! A grade as people write it.

use std::fmt;

use super::Grade;

/// Why a text is not a grade known here.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum UnknownGrade {
    /// No such grade.
    Unknown {
        /// As it was written.
        text: String,
    },
    /// A bare number that is a bolt grade and a nut class.
    Ambiguous {
        /// As it was written.
        text: String,
        /// One reading.
        bolt: Grade,
        /// The other.
        nut: Grade,
    },
}

impl fmt::Display for UnknownGrade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unknown { text } => write!(
                f,
                "“{text}” is not a grade known here; write for example 8.8, 10.9, nut class 8, \
                 SAE grade 8, A325, A354 BD, A193 B7, A563 DH or F436, or give the hardness instead"
            ),
            Self::Ambiguous { text, bolt, nut } => write!(
                f,
                "“{text}” could be {} or {}; write “grade {text}” for the bolt or “nut class {text}” for the nut",
                bolt.name(),
                nut.name()
            ),
        }
    }
}

/// Words that do not tell one grade from another.
const NOISE: &[&str] = &[
    "astm",
    "asme",
    "iso",
    "898",
    "1",
    "property",
    "type",
    "steel",
    "bolt",
    "bolts",
    "screw",
    "screws",
    "stud",
    "studs",
    "shcs",
    "socket",
    "head",
    "cap",
    "structural",
    "heavy",
    "hex",
    "washer",
    "washers",
    "hardened",
];

/// What stands for each grade once the noise is gone, lower case, joined.
const WRITTEN: &[(&str, Grade)] = &[
    ("4.6", Grade::Class4_6),
    ("4.8", Grade::Class4_8),
    ("5.6", Grade::Class5_6),
    ("5.8", Grade::Class5_8),
    ("6.8", Grade::Class6_8),
    ("8.8", Grade::Class8_8),
    ("9.8", Grade::Class9_8),
    ("10.9", Grade::Class10_9),
    ("12.9", Grade::Class12_9),
    ("12.9u", Grade::Class12_9Underlined),
    ("12.9underlined", Grade::Class12_9Underlined),
    ("5.2", Grade::J429Grade5_2),
    ("8.2", Grade::J429Grade8_2),
    ("a307", Grade::A307),
    ("a307a", Grade::A307),
    ("a449", Grade::A449),
    ("bc", Grade::A354Bc),
    ("a354bc", Grade::A354Bc),
    ("bd", Grade::A354Bd),
    ("a354bd", Grade::A354Bd),
    ("a325", Grade::A325),
    ("a325m", Grade::A325),
    ("f3125a325", Grade::A325),
    ("a490", Grade::A490),
    ("a490m", Grade::A490),
    ("f3125a490", Grade::A490),
    ("b7", Grade::A193B7),
    ("a193b7", Grade::A193B7),
    ("a574", Grade::A574),
    ("a574m", Grade::A574),
    ("dh", Grade::A563Dh),
    ("a563dh", Grade::A563Dh),
    ("2h", Grade::A194Grade2H),
    ("a1942h", Grade::A194Grade2H),
    ("f436", Grade::F436),
];

pub(super) fn read(text: &str) -> Result<Grade, UnknownGrade> {
    let text = text.trim();
    let lower = text.to_ascii_lowercase().replace(',', ".");
    let unknown = || UnknownGrade::Unknown { text: text.to_owned() };
    let (mut class, mut grade, mut sae, mut nut) = (false, false, false, false);
    let mut core = String::new();
    // A point between figures belongs to the grade; any other ends an abbreviation ("Gr.5").
    let parts = lower.split(|c: char| !c.is_alphabetic() && !c.is_ascii_digit() && c != '.');
    let words = parts.flat_map(|part| match part.split_once('.') {
        Some((before, after)) if before.ends_with(|c: char| c.is_ascii_digit()) && !after.is_empty() => {
            [part, ""]
        }
        Some((before, after)) => [before, after],
        None => [part, ""],
    });
    let words = words.filter(|word| !word.is_empty());
    // "898-1" is the standard's number, and so is the figure behind it.
    let iso = lower.contains("898-2");
    for (at, word) in words.enumerate() {
        match word {
            "class" | "cl" | "pc" | "kl" => class = true,
            "grade" | "gr" => grade = true,
            "sae" | "j429" => sae = true,
            "nut" | "nuts" => nut = true,
            "2" if iso && at > 0 && core.is_empty() => nut = true,
            // A lone 1 is noise behind another word, and grade 1 of SAE J429 otherwise.
            "1" if (sae || grade) && core.is_empty() && !lower.contains("898") => core.push('1'),
            noise if NOISE.contains(&noise) => {}
            rest => core.push_str(rest),
        }
    }
    let plain = plain_number(&core);
    if let Some((bolt, as_nut)) = plain {
        return match (bolt, as_nut) {
            (_, Some(as_nut)) if class || nut || iso => Ok(as_nut),
            (Some(bolt), _) if sae || (grade && !class && !nut) => Ok(bolt),
            (Some(bolt), Some(nut)) => Err(UnknownGrade::Ambiguous { text: text.to_owned(), bolt, nut }),
            (None, Some(as_nut)) if !sae && !grade => Ok(as_nut),
            _ => Err(unknown()),
        };
    }
    WRITTEN.iter().find(|(written, _)| *written == core).map(|(_, found)| *found).ok_or_else(unknown)
}

/// The bolt grade and the nut class that a whole number may mean.
fn plain_number(core: &str) -> Option<(Option<Grade>, Option<Grade>)> {
    match core {
        "1" => Some((Some(Grade::J429Grade1), None)),
        "2" => Some((Some(Grade::J429Grade2), None)),
        "5" => Some((Some(Grade::J429Grade5), Some(Grade::Nut5))),
        "8" => Some((Some(Grade::J429Grade8), Some(Grade::Nut8))),
        "6" => Some((None, Some(Grade::Nut6))),
        "10" => Some((None, Some(Grade::Nut10))),
        "12" => Some((None, Some(Grade::Nut12))),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn grades_as_people_write_them() {
        let cases = [
            ("class 10.9", Grade::Class10_9),
            ("10,9", Grade::Class10_9),
            ("ISO 898-1 8.8", Grade::Class8_8),
            ("8.8 bolt", Grade::Class8_8),
            ("12.9 underlined", Grade::Class12_9Underlined),
            ("12.9U", Grade::Class12_9Underlined),
            ("grade 8", Grade::J429Grade8),
            ("Gr. 8", Grade::J429Grade8),
            ("Gr.5", Grade::J429Grade5),
            ("SAE 5", Grade::J429Grade5),
            ("SAE J429 Grade 8.2", Grade::J429Grade8_2),
            ("grade 1", Grade::J429Grade1),
            ("SAE J429 grade 2", Grade::J429Grade2),
            ("A490", Grade::A490),
            ("A 325", Grade::A325),
            ("A325M", Grade::A325),
            ("ASTM F3125 Gr A325 Type 1", Grade::A325),
            ("A354 grade BD", Grade::A354Bd),
            ("B7", Grade::A193B7),
            ("ASTM A193-B7", Grade::A193B7),
            ("A574", Grade::A574),
            ("A449 type 1", Grade::A449),
            ("A307 Grade A", Grade::A307),
            ("A563 DH nut", Grade::A563Dh),
            ("A194 2H", Grade::A194Grade2H),
            ("2H", Grade::A194Grade2H),
            ("class 8", Grade::Nut8),
            ("nut class 10", Grade::Nut10),
            ("ISO 898-2 class 8", Grade::Nut8),
            ("10", Grade::Nut10),
            ("F436 hardened washer", Grade::F436),
        ];
        for (text, grade) in cases {
            assert_eq!(read(text), Ok(grade), "{text}");
        }
        for grade in Grade::ALL {
            assert_eq!(read(grade.key()), Ok(*grade));
            assert_eq!(read(grade.name()), Ok(*grade), "{}", grade.name());
        }
    }

    #[test]
    fn what_is_not_a_grade_says_how_to_write_it() {
        assert!(read("8").unwrap_err().to_string().contains("SAE J429 grade 8 or nut class 8"));
        for text in ["", "B7M", "B7 M", "grade 9", "11.9", "A193 B16", "soft", "grade 10", "A354", "1", "."] {
            let problem = read(text).unwrap_err().to_string();
            assert!(problem.contains("not a grade known here"), "{text}: {problem}");
        }
    }
}
