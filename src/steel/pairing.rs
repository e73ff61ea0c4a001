//! Which nut the standards ask for on a zinc-coated bolt, by the bolt's grade.

use super::Grade;
use crate::source::{Source, document};

/// What a standard asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pairing {
    /// In words.
    pub nut: &'static str,
    /// The grades among those known here that would do.
    pub grades: &'static [Grade],
    /// The document.
    pub source: Source,
}

/// The nut for a zinc-coated bolt of this grade; `None` where no rule is known here.
pub fn nut_for(bolt: Grade) -> Option<Pairing> {
    use Grade::*;
    let of_class =
        |nut, grades| Some(Pairing { nut, grades, source: document::ISO_898_2.memory("pairing of classes") });
    match bolt {
        Class4_6 | Class4_8 | Class5_6 | Class5_8 => {
            of_class("class 5 or higher", &[Nut5, Nut6, Nut8, Nut10, Nut12])
        }
        Class6_8 => of_class("class 6 or higher", &[Nut6, Nut8, Nut10, Nut12]),
        Class8_8 => of_class("class 8 or higher", &[Nut8, Nut10, Nut12]),
        Class9_8 => of_class("class 9 or higher", &[Nut10, Nut12]),
        Class10_9 => of_class("class 10 or higher", &[Nut10, Nut12]),
        Class12_9 | Class12_9Underlined => of_class("class 12", &[Nut12]),
        A325 => Some(Pairing {
            nut: "ASTM A563 DH or A194 2H, heavy hex",
            grades: &[A563Dh, A194Grade2H],
            source: document::ASTM_F3125.memory("nuts for hot-dip and mechanically galvanized A325"),
        }),
        A449 | A354Bc | A354Bd => Some(Pairing {
            nut: "ASTM A563 DH or A194 2H, heavy hex",
            grades: &[A563Dh, A194Grade2H],
            source: document::ASTM_A563.memory("Appendix X1, zinc-coated nuts"),
        }),
        A193B7 => Some(Pairing {
            nut: "ASTM A194 2H, heavy hex",
            grades: &[A194Grade2H],
            source: document::ASTM_A193.memory("nuts"),
        }),
        _ => None,
    }
}
