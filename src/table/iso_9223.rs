//! ISO 9223: first-year loss of zinc by category, and the dose-response function of zinc.

use crate::quantity::{PlainNumber, Rate, Temperature};
use crate::source::{Source, document::ISO_9223};

/// One category of corrosivity: the loss of zinc in the first year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CategoryRow {
    /// `C4`.
    pub name: &'static str,
    /// The air in two words.
    pub corrosivity: &'static str,
    /// Lower limit, not belonging to the category; the mildest has none.
    pub lower: Option<Rate>,
    /// Upper limit, belonging to the category.
    pub upper: Rate,
    /// Where it is printed.
    pub source: Source,
    /// Such places inside a building, in words of our own.
    pub indoors: &'static str,
    /// Such places outdoors.
    pub outdoors: &'static str,
}

/// Where the places are described.
pub const PLACES: Source = ISO_9223.read("Table C.1");

const fn row(
    name: &'static str,
    corrosivity: &'static str,
    lower: Option<f64>,
    upper: f64,
    source: Source,
    [indoors, outdoors]: [&'static str; 2],
) -> CategoryRow {
    let lower = match lower {
        Some(rate) => Some(Rate::from_um_year(rate)),
        None => None,
    };
    CategoryRow { name, corrosivity, lower, upper: Rate::from_um_year(upper), source, indoors, outdoors }
}

/// Very low.
pub static C1: CategoryRow = row(
    "C1",
    "very low",
    None,
    0.1,
    ISO_9223.read("Table 2"),
    [
        "heated rooms with dry, clean air: offices, schools",
        "dry or cold country with clean air, seldom wet: some deserts, the far Arctic",
    ],
);
/// Low.
pub static C2: CategoryRow = row(
    "C2",
    "low",
    Some(0.1),
    0.7,
    ISO_9223.read("Table 2"),
    [
        "unheated rooms where water seldom condenses: stores, sports halls",
        "clean air of temperate country and small towns, SO2 below 5 µg/m³; deserts",
    ],
);
/// Medium.
pub static C3: CategoryRow = row(
    "C3",
    "medium",
    Some(0.7),
    2.1,
    ISO_9223.read("Table 2"),
    [
        "rooms with some condensation and fumes of production: laundries, dairies, breweries",
        "towns with SO2 of 5 to 30 µg/m³, coasts with little salt; warm damp country with clean air",
    ],
);
/// High.
pub static C4: CategoryRow = row(
    "C4",
    "high",
    Some(2.1),
    4.2,
    ISO_9223.read("Table 2"),
    [
        "rooms with frequent condensation and strong fumes: works, swimming pools",
        "industry with SO2 of 30 to 90 µg/m³, coasts out of reach of the spray, much de-icing salt",
    ],
);
/// Very high.
pub static C5: CategoryRow = row(
    "C5",
    "very high",
    Some(4.2),
    8.4,
    ISO_9223.read("Table 2"),
    [
        "rooms that are nearly always damp, or very foul: mines, unventilated sheds in the tropics",
        "industry with SO2 of 90 to 250 µg/m³, shores with much salt, sheltered places there",
    ],
);
/// Extreme.
pub static CX: CategoryRow = row(
    "CX",
    "extreme",
    Some(8.4),
    25.0,
    ISO_9223.memory("Table 2"),
    [
        "sheds in the wet tropics that let salt and dust in and stay damp",
        "the wet tropics with salt, offshore, spray now and then, SO2 above 250 µg/m³",
    ],
);

/// The dose-response function of zinc.
///
/// `r = a · P^p · exp(h · RH + f) + c · S^s · exp(k · RH + m · T)`, with `r` in µm in the first year,
/// `P` and `S` the depositions of SO2 and chloride in mg/(m²·d), `RH` in per cent, `T` in °C and
/// `f = below · (T − 10)` up to 10 °C, `f = above · (T − 10)` beyond.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoseResponse {
    /// Factor of the sulfur term, µm a year.
    pub a: f64,
    /// Power of the SO2 deposition.
    pub p: f64,
    /// Factor of the humidity in the sulfur term.
    pub h: f64,
    /// Temperature where the sulfur term turns, °C.
    pub turn: f64,
    /// Slope of `f` up to the turn.
    pub below: f64,
    /// Slope of `f` beyond the turn.
    pub above: f64,
    /// Factor of the chloride term, µm a year.
    pub c: f64,
    /// Power of the chloride deposition.
    pub s: f64,
    /// Factor of the humidity in the chloride term.
    pub k: f64,
    /// Factor of the temperature in the chloride term.
    pub m: f64,
}

/// The constants of zinc.
pub static ZINC: DoseResponse = DoseResponse {
    a: 0.0129,
    p: 0.44,
    h: 0.046,
    turn: 10.0,
    below: 0.038,
    above: -0.071,
    c: 0.0175,
    s: 0.57,
    k: 0.008,
    m: 0.085,
};
/// Where the function and its constants are printed.
pub const DOSE_RESPONSE: Source = ISO_9223.memory("Eq. (2)");

/// Annual mean temperatures that the function was fitted on.
pub const TEMPERATURE: (Temperature, Temperature) =
    (Temperature::from_celsius(-17.1), Temperature::from_celsius(28.7));
/// Annual mean humidities that the function was fitted on.
pub const HUMIDITY: (PlainNumber, PlainNumber) =
    (PlainNumber::from_percent(34.0), PlainNumber::from_percent(93.0));
/// Depositions of SO2 that the function was fitted on, mg/(m²·d).
pub const SO2: (f64, f64) = (0.7, 150.4);
/// Depositions of chloride that the function was fitted on, mg/(m²·d).
pub const CHLORIDE: (f64, f64) = (0.4, 760.5);
/// Where those ranges are printed.
pub const VALIDITY: Source = ISO_9223.read("Table 3");

/// Uncertainty of an estimate by the function, as factors on the rate: 33 % down, 50 % up.
pub const UNCERTAINTY: (f64, f64) = (0.67, 1.5);
/// Where the uncertainty is printed.
pub const UNCERTAINTY_SOURCE: Source = ISO_9223.memory("Table A.1");

/// A loss that was measured on specimens is known to so much, as factors on it.
pub const MEASURED: (f64, f64) = (0.95, 1.05);

/// Deposition of SO2 in mg/(m²·d) for each µg/m³ in the air.
pub const DEPOSITION_OF_SO2: f64 = 0.8;
/// Where that factor is printed.
pub const DEPOSITION_SOURCE: Source = ISO_9223.memory("with ISO 9225, SO2 deposition from concentration");
