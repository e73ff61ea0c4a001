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
    "anchor",
    "rod",
    "rods",
    "set",
    "tapping",
    "spring",
    "lock",
    "conical",
    "retaining",
    "ring",
    "rings",
    "pin",
    "pins",
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
    ("a307b", Grade::A307B),
    ("a449", Grade::A449),
    ("bc", Grade::A354Bc),
    ("a354bc", Grade::A354Bc),
    ("bd", Grade::A354Bd),
    ("a354bd", Grade::A354Bd),
    ("a325", Grade::A325),
    ("a325m", Grade::A325M),
    ("f3125a325", Grade::A325),
    ("f3125a325m", Grade::A325M),
    ("f1852", Grade::F1852),
    ("f3125f1852", Grade::F1852),
    ("a490", Grade::A490),
    ("a490m", Grade::A490M),
    ("f3125a490", Grade::A490),
    ("f3125a490m", Grade::A490M),
    ("f2280", Grade::F2280),
    ("f3125f2280", Grade::F2280),
    ("36", Grade::F1554Grade36),
    ("55", Grade::F1554Grade55),
    ("105", Grade::F1554Grade105),
    ("f155436", Grade::F1554Grade36),
    ("f155455", Grade::F1554Grade55),
    ("f1554105", Grade::F1554Grade105),
    ("b7", Grade::A193B7),
    ("a193b7", Grade::A193B7),
    ("b7m", Grade::A193B7M),
    ("a193b7m", Grade::A193B7M),
    ("45h", Grade::Class45H),
    ("2702", Grade::Iso2702),
    ("a574", Grade::A574),
    ("a574m", Grade::A574),
    ("a563a", Grade::A563A),
    ("a563b", Grade::A563B),
    ("a563c", Grade::A563C),
    ("a563c3", Grade::A563C3),
    ("a563m8s", Grade::A563mClass8S),
    ("a563m10s", Grade::A563mClass10S),
    ("8s", Grade::A563mClass8S),
    ("10s", Grade::A563mClass10S),
    ("a563d", Grade::A563D),
    ("a563dh3", Grade::A563Dh3),
    ("dh3", Grade::A563Dh3),
    ("dh", Grade::A563Dh),
    ("a563dh", Grade::A563Dh),
    ("2h", Grade::A194Grade2H),
    ("a1942h", Grade::A194Grade2H),
    ("a1941", Grade::A194Grade1),
    ("a1942", Grade::A194Grade2),
    ("2hm", Grade::A194Grade2HM),
    ("a1942hm", Grade::A194Grade2HM),
    ("a1944", Grade::A194Grade4),
    ("a1947", Grade::A194Grade7),
    ("7m", Grade::A194Grade7M),
    ("a1947m", Grade::A194Grade7M),
    ("hr8", Grade::NutHr8),
    ("hr10", Grade::NutHr10),
    ("hv10", Grade::NutHv10),
    ("f436", Grade::F436),
    ("f844", Grade::F844),
    ("din127", Grade::Din127),
    ("b18.21.1", Grade::B18_21_1),
    ("din6796", Grade::Din6796),
    ("din471", Grade::Din471),
    ("8752", Grade::Iso8752),
];

/// Letters that are a grade of ASTM A563 only behind the word grade or beside the word nut: `grade C`.
const LETTERS: &[(&str, Grade)] = &[("c", Grade::A563C), ("d", Grade::A563D)];

pub(super) fn read(text: &str) -> Result<Grade, UnknownGrade> {
    let text = text.trim();
    let lower = text.to_ascii_lowercase().replace(',', ".");
    let unknown = || UnknownGrade::Unknown { text: text.to_owned() };
    let (mut class, mut grade, mut sae, mut j995, mut nut) = (false, false, false, false, false);
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
            "j995" => j995 = true,
            "nut" | "nuts" => nut = true,
            "2" if iso && at > 0 && core.is_empty() => nut = true,
            // A lone 1 is noise behind another word, and grade 1 of SAE J429 otherwise.
            "1" if core == "a194" => core.push('1'),
            "1" if (sae || grade) && core.is_empty() && !lower.contains("898") => core.push('1'),
            noise if NOISE.contains(&noise) => {}
            rest => core.push_str(rest),
        }
    }
    // Inch nuts have grades, metric ones classes.
    if j995 || (nut && grade && !class && !iso) {
        match core.as_str() {
            "2" => return Ok(Grade::J995Grade2),
            "5" => return Ok(Grade::J995Grade5),
            "8" => return Ok(Grade::J995Grade8),
            _ => {}
        }
    }
    if let Some((_, found)) = LETTERS.iter().find(|(letter, _)| *letter == core && (grade || nut)) {
        return Ok(*found);
    }
    // A bare number is a yield of ASTM F1554 only as a grade.
    if !grade && matches!(core.as_str(), "36" | "55" | "105") {
        return Err(unknown());
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
        "04" => Some((None, Some(Grade::Nut04))),
        "05" => Some((None, Some(Grade::Nut05))),
        "9" => Some((None, Some(Grade::Nut9))),
        "10" => Some((None, Some(Grade::Nut10))),
        "12" => Some((None, Some(Grade::Nut12))),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The figure behind 898 is that of the standard; one before it is not.
    #[test]
    fn the_number_of_the_standard_is_no_class() {
        assert_eq!(read("ISO 898-2 8"), Ok(Grade::Nut8));
        assert!(read("2 898-2 8").is_err());
    }

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
            ("A325M", Grade::A325M),
            ("F1852", Grade::F1852),
            ("ASTM F1554 Gr. 36", Grade::F1554Grade36),
            ("F1554 grade 105", Grade::F1554Grade105),
            ("grade 55", Grade::F1554Grade55),
            ("B7M", Grade::A193B7M),
            ("B7 M", Grade::A193B7M),
            ("45H set screw", Grade::Class45H),
            ("nut grade 5", Grade::J995Grade5),
            ("grade 8 nut", Grade::J995Grade8),
            ("SAE J995 grade 2", Grade::J995Grade2),
            ("A563 C", Grade::A563C),
            ("gr C", Grade::A563C),
            ("A563 DH3", Grade::A563Dh3),
            ("class 04 nut", Grade::Nut04),
            ("F844 washers", Grade::F844),
            ("ASTM F3125 Gr A325 Type 1", Grade::A325),
            ("A354 grade BD", Grade::A354Bd),
            ("B7", Grade::A193B7),
            ("ASTM A193-B7", Grade::A193B7),
            ("A574", Grade::A574),
            ("A449 type 1", Grade::A449),
            ("A307 Grade A", Grade::A307),
            ("A307-B", Grade::A307B),
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
        for text in ["", "55", "C", "grade 9", "11.9", "A193 B16", "soft", "grade 10", "A354", "1", "."] {
            let problem = read(text).unwrap_err().to_string();
            assert!(problem.contains("not a grade known here"), "{text}: {problem}");
        }
    }
}
