//! The classes of each standard, as the lot check offers them.

use std::borrow::Cow;

use crate::calculator::{Choice, Fault, FieldAbout, FieldValue};
use crate::coat::CoatClass;
use crate::table::{astm_a153, astm_b695, astm_f2329, iso_1461, iso_4042};

/// A class of one standard, under its name in small letters with hyphens.
macro_rules! classes {
    ($($(#[$doc:meta])* $name:ident: $table:ident;)+) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy)]
        pub struct $name(pub &'static CoatClass);

        impl FieldValue for $name {
            fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
                about.chosen(text, |key| $table::CLASSES.iter().find(|class| key_of(class) == key).map(Self))
            }

            fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
                key_of(self.0).into()
            }
        }
    )+};
}

classes! {
    /// ASTM A153.
    A153: astm_a153;
    /// ASTM F2329.
    F2329: astm_f2329;
    /// ISO 1461.
    Iso1461: iso_1461;
    /// ASTM B695.
    B695: astm_b695;
    /// ISO 4042.
    Iso4042: iso_4042;
}

fn key_of(class: &CoatClass) -> String {
    let words = class.name.split(|c: char| !c.is_ascii_alphanumeric()).filter(|word| !word.is_empty());
    words.map(str::to_ascii_lowercase).collect::<Vec<_>>().join("-")
}

/// As a field offers them.
pub static OF_A153: [Choice; 6] = [
    Choice::new("class-a", "A: castings"),
    Choice::new("class-b-1", "B-1: rolled or forged, 5/8 in thick and over, longer than 15 in"),
    Choice::new("class-b-2", "B-2: rolled or forged, under 5/8 in thick, longer than 15 in"),
    Choice::new("class-b-3", "B-3: rolled or forged, 15 in long or shorter"),
    Choice::new("class-c", "C: fasteners over 3/8 in; washers 3/16 in thick and over"),
    Choice::new("class-d", "D: fasteners of 3/8 in and under; washers under 3/16 in thick"),
];

/// As a field offers them.
pub static OF_F2329: [Choice; 2] = [
    Choice::new("over-3-8-in", "Fasteners over 3/8 in; washers 3/16 to 1/4 in thick"),
    Choice::new("3-8-in-and-under", "Fasteners of 3/8 in and under; washers under 3/16 in thick"),
];

/// As a field offers them.
pub static OF_ISO_1461: [Choice; 10] = [
    Choice::new("threads-over-6-mm", "Spun, threads over 6 mm"),
    Choice::new("threads-of-6-mm-and-under", "Spun, threads of 6 mm and under"),
    Choice::new("spun-3-mm-and-over", "Spun, other articles 3 mm and over"),
    Choice::new("spun-under-3-mm", "Spun, other articles under 3 mm"),
    Choice::new("steel-over-6-mm", "Not spun, steel over 6 mm"),
    Choice::new("steel-over-3-to-6-mm", "Not spun, steel over 3 to 6 mm"),
    Choice::new("steel-1-5-to-3-mm", "Not spun, steel 1.5 to 3 mm"),
    Choice::new("steel-under-1-5-mm", "Not spun, steel under 1.5 mm"),
    Choice::new("castings-6-mm-and-over", "Not spun, castings 6 mm and over"),
    Choice::new("castings-under-6-mm", "Not spun, castings under 6 mm"),
];

/// As a field offers them.
pub static OF_B695: [Choice; 11] = [
    Choice::new("class-110", "Class 110"),
    Choice::new("class-80", "Class 80"),
    Choice::new("class-70", "Class 70"),
    Choice::new("class-65", "Class 65"),
    Choice::new("class-55", "Class 55"),
    Choice::new("class-50", "Class 50"),
    Choice::new("class-40", "Class 40"),
    Choice::new("class-25", "Class 25"),
    Choice::new("class-12", "Class 12"),
    Choice::new("class-8", "Class 8"),
    Choice::new("class-5", "Class 5"),
];

/// As a field offers them.
pub static OF_ISO_4042: [Choice; 9] = [
    Choice::new("nominal-3", "Nominal 3 µm"),
    Choice::new("nominal-5", "Nominal 5 µm"),
    Choice::new("nominal-8", "Nominal 8 µm"),
    Choice::new("nominal-10", "Nominal 10 µm"),
    Choice::new("nominal-12", "Nominal 12 µm"),
    Choice::new("nominal-15", "Nominal 15 µm"),
    Choice::new("nominal-20", "Nominal 20 µm"),
    Choice::new("nominal-25", "Nominal 25 µm"),
    Choice::new("nominal-30", "Nominal 30 µm"),
];

#[cfg(test)]
mod tests {
    use super::*;

    /// The choices of the form and the classes of the tables are the same.
    #[test]
    fn every_class_is_offered() {
        for (choices, classes) in [
            (&OF_A153[..], astm_a153::CLASSES),
            (&OF_F2329, astm_f2329::CLASSES),
            (&OF_ISO_1461, iso_1461::CLASSES),
            (&OF_B695, astm_b695::CLASSES),
            (&OF_ISO_4042, iso_4042::CLASSES),
        ] {
            let mut offered: Vec<&str> = choices.iter().map(|choice| choice.key).collect();
            let mut listed: Vec<String> = classes.iter().map(key_of).collect();
            offered.sort_unstable();
            listed.sort_unstable();
            assert_eq!(offered, listed);
        }
    }
}
