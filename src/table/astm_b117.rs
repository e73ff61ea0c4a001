//! Hours in the salt spray of ASTM B117 that the standards of coats ask for.
//!
//! Only zinc that is plated or peened on has such hours. A blank was looked for and not found.

use crate::source::{Basis, Document, Source, common_practice, document};

/// A finish and the hours it has to stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// The standard of the coat.
    pub document: &'static Document,
    /// Where it says so.
    pub place: &'static str,
    /// `Type II`.
    pub name: &'static str,
    /// What is put on the zinc.
    pub treatment: &'static str,
    /// The hours.
    pub hours: Asked,
    /// How the row is known here.
    pub basis: Basis,
}

/// What a standard asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Asked {
    /// At least so many hours until the zinc itself corrodes white.
    White(u32),
    /// The standard asks for no hours.
    Nothing,
    /// The standard has a value, and it is not known here.
    NotFound,
}

const fn b633(name: &'static str, treatment: &'static str, hours: Asked) -> Row {
    Row { document: &document::ASTM_B633, place: "Table 1", name, treatment, hours, basis: Basis::Read }
}

/// ASTM B633, electroplated zinc, by finish type.
pub static B633: &[Row] = &[
    b633("Type I", "as plated", Asked::Nothing),
    b633("Type II", "coloured chromate", Asked::White(96)),
    b633("Type III", "colourless chromate", Asked::White(12)),
    b633("Type IV", "phosphate", Asked::Nothing),
    b633("Type V", "colourless passivate", Asked::White(72)),
    b633("Type VI", "coloured passivate", Asked::White(120)),
];

/// ASTM B695, mechanically deposited zinc: to white corrosion.
pub static B695: &[Row] = &[
    Row {
        document: &document::ASTM_B695,
        place: "salt spray clause",
        name: "Type I",
        treatment: "as coated",
        hours: Asked::NotFound,
        basis: Basis::Memory,
    },
    Row {
        document: &document::ASTM_B695,
        place: "salt spray clause",
        name: "Type II",
        treatment: "coloured chromate",
        hours: Asked::White(72),
        basis: Basis::Memory,
    },
];

/// ASTM B695 by class, to red rust; its values were not found.
pub const B695_RED: Source = document::ASTM_B695.memory("salt spray table by class");

/// ASTM F1941: its values were not found.
pub static F1941: Row = Row {
    document: &document::ASTM_F1941,
    place: "salt spray tables",
    name: "Fe/Zn",
    treatment: "any",
    hours: Asked::NotFound,
    basis: Basis::Memory,
};

/// About 5 µm of mechanical zinc, hours.
pub const MECHANICAL_5_UM: u32 = 36;
/// About 5 µm of electroplated zinc, hours.
pub const ELECTROPLATED_5_UM: u32 = 24;
/// Where those two are from.
pub const ABOUT_5_UM: Source = common_practice("salt spray of about 5 µm of zinc");
