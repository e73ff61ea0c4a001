//! What an order asks for: advice, or a class of a standard.

use crate::calculator::Choice;
use crate::coat::{CoatClass, class};
use crate::source::Document;
use crate::source::document;

/// A class that an order can ask for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Asked {
    /// Stable key for links.
    pub key: &'static str,
    /// As the user sees it.
    pub label: &'static str,
    document: &'static Document,
    class: &'static str,
}

macro_rules! asked {
    ($($key:literal, $label:literal, $document:ident, $class:literal;)+) => {
        /// Every class that can be asked for.
        pub static ALL: &[Asked] = &[
            $(Asked { key: $key, label: $label, document: &document::$document, class: $class }),+
        ];
        /// The choices of the field: advice first.
        pub static CHOICES: &[Choice] = &[
            Choice::new("advise", "Advise me"),
            $(Choice::new($key, $label)),+
        ];
    };
}

asked! {
    "iso10684", "ISO 10684, hot-dip, M8 to M64", ISO_10684, "M8 to M64";
    "a153-c", "ASTM A153 class C, hot-dip, over 3/8 in", ASTM_A153, "class C";
    "a153-d", "ASTM A153 class D, hot-dip, 3/8 in and under", ASTM_A153, "class D";
    "f2329", "ASTM F2329, hot-dip, over 3/8 in", ASTM_F2329, "over 3/8 in";
    "f2329-small", "ASTM F2329, hot-dip, 3/8 in and under", ASTM_F2329, "3/8 in and under";
    "iso1461", "ISO 1461, hot-dip, spun, threads over 6 mm", ISO_1461, "threads over 6 mm";
    "b695-5", "ASTM B695 class 5, mechanical", ASTM_B695, "class 5";
    "b695-8", "ASTM B695 class 8, mechanical", ASTM_B695, "class 8";
    "b695-12", "ASTM B695 class 12, mechanical", ASTM_B695, "class 12";
    "b695-25", "ASTM B695 class 25, mechanical", ASTM_B695, "class 25";
    "b695-40", "ASTM B695 class 40, mechanical", ASTM_B695, "class 40";
    "b695-50", "ASTM B695 class 50, mechanical", ASTM_B695, "class 50";
    "b695-55", "ASTM B695 class 55, mechanical", ASTM_B695, "class 55";
    "b695-65", "ASTM B695 class 65, mechanical", ASTM_B695, "class 65";
    "b695-70", "ASTM B695 class 70, mechanical", ASTM_B695, "class 70";
    "b695-80", "ASTM B695 class 80, mechanical", ASTM_B695, "class 80";
    "b695-110", "ASTM B695 class 110, mechanical", ASTM_B695, "class 110";
    "b633-5", "ASTM B633 Fe/Zn 5, electroplated", ASTM_B633, "Fe/Zn 5 (SC 1, mild)";
    "b633-8", "ASTM B633 Fe/Zn 8, electroplated", ASTM_B633, "Fe/Zn 8 (SC 2, moderate)";
    "b633-12", "ASTM B633 Fe/Zn 12, electroplated", ASTM_B633, "Fe/Zn 12 (SC 3, severe)";
    "b633-25", "ASTM B633 Fe/Zn 25, electroplated", ASTM_B633, "Fe/Zn 25 (SC 4, very severe)";
    "f1941-3", "ASTM F1941 Fe/Zn 3, electroplated", ASTM_F1941, "Fe/Zn 3";
    "f1941-5", "ASTM F1941 Fe/Zn 5, electroplated", ASTM_F1941, "Fe/Zn 5";
    "f1941-8", "ASTM F1941 Fe/Zn 8, electroplated", ASTM_F1941, "Fe/Zn 8";
    "f1941-12", "ASTM F1941 Fe/Zn 12, electroplated", ASTM_F1941, "Fe/Zn 12";
    "iso4042-5", "ISO 4042 nominal 5, electroplated", ISO_4042_1999, "nominal 5";
    "iso4042-8", "ISO 4042 nominal 8, electroplated", ISO_4042_1999, "nominal 8";
    "iso4042-12", "ISO 4042 nominal 12, electroplated", ISO_4042_1999, "nominal 12";
}

impl Asked {
    /// The class, from the table of its standard.
    pub fn class(&self) -> Option<&'static CoatClass> {
        class::all().find(|class| class.document == self.document && class.name == self.class)
    }
}

/// The class of that key; `advise` is none.
pub fn from_key(key: &str) -> Option<&'static Asked> {
    ALL.iter().find(|asked| asked.key == key)
}

/// Reads `class 55`, `B695-55`, `ASTM A153`, `ISO 10684`, `Fe/Zn 8`.
pub fn read(text: &str) -> Option<&'static Asked> {
    let plain: String = text.to_ascii_lowercase().chars().filter(|c| c.is_ascii_alphanumeric()).collect();
    let plain = plain.strip_prefix("astm").unwrap_or(&plain);
    let key = match plain {
        "a153" | "a153c" | "a153classc" => "a153-c",
        "a153d" | "a153classd" => "a153-d",
        "f2329" | "hdg" | "hotdip" => "f2329",
        "iso10684" => "iso10684",
        "iso1461" => "iso1461",
        _ => return numbered(plain),
    };
    from_key(key)
}

/// The families whose classes are numbers: `b695class55`, `class55`, `fezn8`.
fn numbered(plain: &str) -> Option<&'static Asked> {
    let digits = plain.len() - plain.trim_end_matches(|c: char| c.is_ascii_digit()).len();
    let (family, number) = plain.split_at(plain.len() - digits);
    let family = match family {
        // `b695` takes its own digits with it: `b69555` is not split here but below.
        // A low number behind `class` may be that of a nut.
        "class" if number.parse().is_ok_and(|number: u32| number >= 25) => "b695-",
        "b695class" | "b695cl" => "b695-",
        "fezn" | "b633fezn" => "b633-",
        "f1941fezn" => "f1941-",
        "b" | "iso" | "f" => return joined(plain),
        _ => return None,
    };
    ALL.iter().find(|asked| asked.key.strip_prefix(family) == Some(number))
}

/// `B695-55` without its dash.
fn joined(plain: &str) -> Option<&'static Asked> {
    ALL.iter().find(|asked| asked.key.replace('-', "") == plain)
}
