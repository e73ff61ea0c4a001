//! The factor from thickness to mass, which belongs to the standard or the process in hand.

use crate::process::Process;
use crate::quantity::Density;
use crate::source::{Document, Source, document};
use crate::table::coat_class::CoatClass;

/// A published mass of zinc on an area for each unit of thickness.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Factor {
    /// Stable key for links.
    pub key: &'static str,
    /// What it belongs to.
    pub label: &'static str,
    /// The least value.
    pub min: Density,
    /// The greatest value; the same where the document gives one.
    pub max: Density,
    /// Where the least is published.
    pub source: Source,
    /// Where the greatest is published.
    pub source_max: Source,
}

const fn one(key: &'static str, label: &'static str, g_m2_um: f64, source: Source) -> Factor {
    let density = Density::from_g_m2_um(g_m2_um);
    Factor { key, label, min: density, max: density, source, source_max: source }
}

/// ASTM A123: 7.067 g/m² for each micrometre; for hot-dip coats by the ASTM standards.
pub static A123: Factor =
    one("a123", "ASTM A123, A153, F2329 (hot-dip)", 7.067, document::ASTM_A123.read("Table 2 note"));

/// ISO 1461: a nominal density of 7.2 g/cm³; for hot-dip coats by the ISO standards.
pub static ISO_1461: Factor =
    one("iso1461", "ISO 1461, ISO 10684 (hot-dip)", 7.2, document::ISO_1461.read("6.2.2"));

/// ASTM A653: 7.14 g/m² for each micrometre, which is solid zinc; for electroplate too.
pub static A653: Factor = one(
    "a653",
    "Solid zinc, ASTM A653 (sheet, electroplate)",
    7.14,
    document::ASTM_A653.read("coating thickness note"),
);

/// BS 729: 7.0 g/cm³, older British practice.
pub static BS_729: Factor =
    one("bs729", "BS 729 (older British practice)", 7.0, document::BS_729.read("note to Table 1"));

/// A mechanically deposited coat is porous: 0.45 oz/ft² for each mil, up to 80 % of solid zinc.
pub static DEPOSIT: Factor = Factor {
    key: "deposit",
    label: "Mechanical deposit (porous)",
    min: Density::from_oz_ft2_mil(0.45),
    max: Density::from_g_m2_um(0.8 * 7.14),
    source: document::GALVANIZING_TEXT.read("0.45 oz/ft² per mil"),
    source_max: document::PROCESS_TEXT.read("about 80 % of the density of solid zinc"),
};

/// All of them, hot-dip first.
pub static ALL: [&Factor; 5] = [&A123, &ISO_1461, &A653, &DEPOSIT, &BS_729];

impl Factor {
    /// The factor of that key.
    pub fn from_key(key: &str) -> Option<&'static Self> {
        ALL.into_iter().find(|factor| factor.key == key)
    }
}

/// The factor that belongs to the standard a class is of.
pub fn of_class(class: &CoatClass) -> &'static Factor {
    let of = |document: &'static Document| class.document == document;
    match class.process {
        Process::HotDip if of(&document::ISO_10684) || of(&document::ISO_1461) => &ISO_1461,
        Process::HotDip => &A123,
        Process::Mechanical => &DEPOSIT,
        Process::Electroplated => &A653,
    }
}
