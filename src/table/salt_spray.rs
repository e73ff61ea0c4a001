//! Hours in the salt spray of ASTM B117 and ISO 9227, as the documents of coats state them.
//!
//! Only zinc that is plated or peened on has such hours. A blank was looked for and not found.

use crate::source::{Source, common_practice, document};

/// What a document says of the hours until something is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HoursUntil {
    /// At least so many.
    AtLeast(u32),
    /// So many, in a table that informs.
    Listed(u32),
    /// About so many, and nobody promises them; whether to white corrosion or to red rust is not said.
    About(u32),
    /// The document asks for none.
    Nothing,
    /// The document has a value, and it is not known here.
    NotFound,
}

/// A finish and its hours.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Stable key for links.
    pub key: &'static str,
    /// What is put on the zinc, or how thick it is.
    pub name: &'static str,
    /// Who says so, and where.
    pub source: Source,
    /// Until the zinc itself corrodes white.
    pub white: HoursUntil,
    /// Until the steel rusts.
    pub red: HoursUntil,
}

const fn b633(key: &'static str, name: &'static str, white: HoursUntil) -> Row {
    Row { key, name, source: document::ASTM_B633.read("Table 1"), white, red: HoursUntil::Nothing }
}

const fn row(key: &'static str, name: &'static str, source: Source, white: HoursUntil) -> Row {
    Row { key, name, source, white, red: HoursUntil::NotFound }
}

/// The finishes that are listed one by one.
pub static ROWS: [Row; 12] = [
    b633("b633-i", "ASTM B633 type I, as plated", HoursUntil::Nothing),
    b633("b633-ii", "ASTM B633 type II, coloured chromate", HoursUntil::AtLeast(96)),
    b633("b633-iii", "ASTM B633 type III, colourless chromate", HoursUntil::AtLeast(12)),
    b633("b633-iv", "ASTM B633 type IV, phosphate", HoursUntil::Nothing),
    b633("b633-v", "ASTM B633 type V, colourless passivate", HoursUntil::AtLeast(72)),
    b633("b633-vi", "ASTM B633 type VI, coloured passivate", HoursUntil::AtLeast(120)),
    row("f1941", "ASTM F1941", document::ASTM_F1941.memory("salt spray tables"), HoursUntil::NotFound),
    row(
        "b695-i",
        "ASTM B695 type I, as coated",
        document::ASTM_B695.memory("salt spray table by class"),
        HoursUntil::NotFound,
    ),
    row(
        "b695-ii",
        "ASTM B695 type II, coloured chromate",
        document::ASTM_B695.memory("salt spray clause"),
        HoursUntil::AtLeast(72),
    ),
    row("iso12683", "ISO 12683", document::ISO_12683.memory("salt spray by class"), HoursUntil::NotFound),
    Row {
        key: "barrel-5",
        name: "about 5 µm of mechanical zinc",
        source: ABOUT_5_UM,
        white: HoursUntil::About(36),
        red: HoursUntil::Nothing,
    },
    Row {
        key: "cell-5",
        name: "about 5 µm of electroplated zinc",
        source: ABOUT_5_UM,
        white: HoursUntil::About(24),
        red: HoursUntil::Nothing,
    },
];
/// Where the rule of the trade on the two thin coats is from.
pub const ABOUT_5_UM: Source = common_practice("salt spray of about 5 µm of zinc");

/// A chromate, by its letter in ISO 4520.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Chromate {
    /// A, clear.
    A,
    /// B, bluish.
    B,
    /// C, iridescent.
    C,
    /// D, opaque.
    D,
    /// F, or Bk in ISO 4042: black.
    Black,
}

/// How the parts hang or tumble while they are plated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlatedIn {
    /// Tumbling.
    Barrel,
    /// Hanging.
    Rack,
}

/// A row of ISO 4042:1999, Table B.1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Iso4042 {
    /// Nominal thickness, µm.
    pub um: u32,
    /// The chromate.
    pub chromate: Chromate,
    /// Hours to white corrosion.
    pub white: u32,
    /// Hours to red rust; none where the table has a dash.
    pub red: Option<u32>,
}

const fn iso4042(um: u32, chromate: Chromate, white: u32, red: Option<u32>) -> Iso4042 {
    Iso4042 { um, chromate, white, red }
}

/// ISO 4042:1999, Table B.1. Of 25 µm it says that no data are available. Known by [`ISO_4042_TABLE`].
pub static ISO_4042: [Iso4042; 19] = [
    iso4042(3, Chromate::A, 2, Some(12)),
    iso4042(3, Chromate::B, 6, Some(12)),
    iso4042(3, Chromate::C, 24, Some(24)),
    iso4042(3, Chromate::D, 24, Some(24)),
    iso4042(5, Chromate::A, 6, Some(24)),
    iso4042(5, Chromate::B, 12, Some(36)),
    iso4042(5, Chromate::C, 48, Some(72)),
    iso4042(5, Chromate::D, 72, Some(96)),
    iso4042(5, Chromate::Black, 12, None),
    iso4042(8, Chromate::A, 6, Some(48)),
    iso4042(8, Chromate::B, 24, Some(72)),
    iso4042(8, Chromate::C, 72, Some(120)),
    iso4042(8, Chromate::D, 96, Some(144)),
    iso4042(8, Chromate::Black, 24, Some(72)),
    iso4042(12, Chromate::A, 6, Some(72)),
    iso4042(12, Chromate::B, 24, Some(96)),
    iso4042(12, Chromate::C, 72, Some(144)),
    iso4042(12, Chromate::D, 96, Some(168)),
    iso4042(12, Chromate::Black, 24, Some(96)),
];
/// Where they are printed; it informs and asks for nothing.
pub const ISO_4042_TABLE: Source = document::ISO_4042_1999.read("Table B.1, informative");

/// ISO 2081:2008, Table 5: hours to white corrosion in the barrel and on the rack, by chromate.
/// Known by [`ISO_2081_WHITE_TABLE`].
pub static ISO_2081_WHITE: [(Chromate, u32, u32); 5] = [
    (Chromate::A, 8, 16),
    (Chromate::B, 8, 24),
    (Chromate::C, 72, 96),
    (Chromate::D, 72, 96),
    (Chromate::Black, 24, 48),
];
/// Where they are printed.
pub const ISO_2081_WHITE_TABLE: Source = document::ISO_2081.memory("2008, Table 5");
/// ISO 2081:2008, Table 6: thickness in µm, hours to red rust with A, B and F, and with C and D.
/// Known by [`ISO_2081_RED_TABLE`].
pub static ISO_2081_RED: [(u32, u32, u32); 4] = [(5, 48, 72), (8, 72, 120), (12, 120, 192), (25, 240, 360)];
/// Where they are printed; they lie above those of ISO 4042.
pub const ISO_2081_RED_TABLE: Source = document::ISO_2081.memory("2008, Table 6, 25 µm of low confidence");

/// A passivate free of hexavalent chromium, ISO 19598.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Passivate {
    /// An, transparent.
    An,
    /// Cn, iridescent.
    Cn,
    /// Cn with a sealer.
    CnT2,
    /// Fn, black, with a sealer.
    FnT2,
}

/// ISO 19598:2016: hours to white corrosion in the barrel and on the rack. Known by [`ISO_19598_TABLE`].
pub static ISO_19598: [(Passivate, u32, u32); 4] = [
    (Passivate::An, 8, 16),
    (Passivate::Cn, 72, 120),
    (Passivate::CnT2, 120, 168),
    (Passivate::FnT2, 24, 48),
];
/// Where they are printed; hours to red rust were not found.
pub const ISO_19598_TABLE: Source = document::ISO_19598.memory("2016, hours by passivate");

/// Hours of finishes that no standard of zinc plate states: what, white, red, source.
pub static BESIDE: [(&str, Option<u32>, Option<u32>, Source); 25] = [
    ("8 to 9 µm, trivalent with sealer: clear, blue or black", Some(120), Some(240), GUIDEBOOK),
    ("8 to 9 µm, trivalent with sealer: yellow, iridescent", Some(120), Some(360), GUIDEBOOK),
    (
        "8 to 9 µm, trivalent with sealer: silver, first grade of another car maker",
        Some(96),
        Some(384),
        GUIDEBOOK,
    ),
    ("8 to 9 µm, trivalent with sealer: silver, third grade of the same", Some(72), Some(360), GUIDEBOOK),
    ("8 to 9 µm, iridescent, rack, sealed, after 120 °C", Some(200), None, GUIDEBOOK),
    ("8 to 9 µm, iridescent, barrel, sealed, after 120 °C", Some(160), None, GUIDEBOOK),
    ("8 to 9 µm, iridescent, rack, no sealer, after 120 °C", Some(120), None, GUIDEBOOK),
    ("8 to 9 µm, iridescent, barrel, no sealer, after 120 °C", Some(100), None, GUIDEBOOK),
    ("5 µm, transparent passivate, a car maker's standard", None, Some(36), CAR_MAKER),
    ("7 µm, transparent passivate", None, Some(48), CAR_MAKER),
    ("12 µm, transparent passivate", None, Some(72), CAR_MAKER),
    ("25 µm, transparent passivate", None, Some(96), CAR_MAKER),
    ("5 µm, bright passivate, a car maker's standard", None, Some(72), CAR_MAKER),
    ("7 µm, bright passivate", None, Some(96), CAR_MAKER),
    ("5 to 8 µm, chromium treated, an old car maker's specification", Some(50), None, CAR_MAKER),
    ("15 µm, thick trivalent iridescent, sealer, lubricant, by a plater", None, Some(600), PLATER),
    ("13 µm, trivalent, good topcoat, by a consultant", None, Some(120), PLATER),
    ("a hardware maker's zinc of today", Some(120), Some(240), MAKER),
    ("a hardware maker's yellow chromate of old", Some(48), Some(120), MAKER),
    ("hot-dip castings of 86 to 140 µm, one test: such hours rank no hot-dip coat", None, Some(120), MAKER),
    ("zinc phosphate, ASTM F1137 grades A, B and D", None, Some(72), F1137),
    ("zinc phosphate, ASTM F1137 grade C", None, Some(24), F1137),
    ("zinc flake, ASTM F1136 grade 1, 5 to 6 µm", None, Some(144), F1136),
    ("zinc flake, ASTM F1136 grade 2, 6 to 13 µm", None, Some(240), F1136),
    ("zinc flake, ASTM F1136 grade 3, 7 to 13 µm", None, Some(400), F1136),
];
const GUIDEBOOK: Source =
    document::FINISHING_GUIDEBOOK.read("2013, car makers' requirements, pairing inferred");
const CAR_MAKER: Source = document::TRADE.read("car makers' standards, extracts");
const PLATER: Source = document::TRADE.read("what platers say of their own work");
const MAKER: Source = document::TRADE.read("makers' test statements");
const F1137: Source = document::ASTM_F1137.read("Table 1");
const F1136: Source = document::ASTM_F1136.read("1988, Table 1");

/// The spray, and what it is not for.
pub const TEST: Source = document::ASTM_B117.read("1997, 3.2");
