//! What the service life asks.

use crate::calculator::{Bound, Choice, FieldAbout as Field};
use crate::quantity::{Shown, Unit, unit};
use crate::site::SO2_IN_AIR;
use crate::source::document;
use crate::table::iso_9223;

/// Categories as choices; the order line offers the same.
pub static CATEGORIES: [Choice; 6] = [
    Choice::new("C1", "C1, very low: heated rooms, dry and clean"),
    Choice::new("C2", "C2, low: unheated rooms, open country with clean air"),
    Choice::new("C3", "C3, medium: towns, or a coast with little salt"),
    Choice::new("C4", "C4, high: industry, or a coast with moderate salt"),
    Choice::new("C5", "C5, very high: heavy industry and damp, or a coast with much salt"),
    Choice::new("CX", "CX, extreme: splash from the sea, or the tropics with salt and smoke"),
];

static SURROUNDINGS: [Choice; 7] = [
    Choice::new("air", "Open air"),
    Choice::new("indoors", "Indoors"),
    Choice::new("soil", "In soil"),
    Choice::new("water", "In water"),
    Choice::new("concrete", "In concrete"),
    Choice::new("other-metal", "In contact with another metal"),
    Choice::new("acid-wood", "In acid or preserved wood"),
];

pub(super) static PLACES: [Choice; 3] = [
    Choice::new("category", "Its category"),
    Choice::new("climate", "Its climate"),
    Choice::new("rate", "A loss of zinc measured there"),
];

static THICKNESS: [&Unit; 4] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH];
static TEMPERATURES: [&Unit; 2] = [&unit::CELSIUS, &unit::FAHRENHEIT];
static PER_CENT: [&Unit; 1] = [&unit::PERCENT];
static SO2: [&Unit; 2] = [&unit::MG_M2_DAY, &SO2_IN_AIR];
static CHLORIDE: [&Unit; 1] = [&unit::MG_M2_DAY];
static RATES: [&Unit; 2] = [&unit::UM_YEAR, &unit::MIL_YEAR];
static YEARS: [&Unit; 1] = [&unit::YEAR];

const RANGE: &str = "the dose-response function was fitted on this range";
const COAT: Bound = Bound::PositiveTo(
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    "zinc coats on fasteners are far thinner; check the unit",
);

const fn deposition(number: f64) -> Shown {
    Shown { number, unit: &unit::MG_M2_DAY, decimals: 1 }
}

pub(super) static FIELDS: [Field; 12] = [
    Field::choice("surroundings", "The part stands", &SURROUNDINGS, "air")
        .hint("Years are given in open air only; elsewhere the document to read is named."),
    Field::choice("place", "The place is known by", &PLACES, "category"),
    Field::choice("category", "Category of corrosivity", &CATEGORIES, "C4")
        .when("place", &["category"])
        .hint("The loss of zinc decides; the words are a help.")
        .source(document::ISO_9223.read("Table 2")),
    Field::quantity(
        "temperature",
        "Mean temperature of the year",
        &TEMPERATURES,
        Bound::Between(
            Shown { number: iso_9223::TEMPERATURE.0.celsius(), unit: &unit::CELSIUS, decimals: 1 },
            Shown { number: iso_9223::TEMPERATURE.1.celsius(), unit: &unit::CELSIUS, decimals: 1 },
            RANGE,
        ),
        "10 °C",
    )
    .when("place", &["climate"])
    .source(iso_9223::VALIDITY),
    Field::quantity(
        "humidity",
        "Mean relative humidity of the year",
        &PER_CENT,
        Bound::Between(
            Shown { number: iso_9223::HUMIDITY.0.percent(), unit: &unit::PERCENT, decimals: 0 },
            Shown { number: iso_9223::HUMIDITY.1.percent(), unit: &unit::PERCENT, decimals: 0 },
            RANGE,
        ),
        "80 %",
    )
    .when("place", &["climate"])
    .source(iso_9223::VALIDITY),
    Field::quantity(
        "so2",
        "Deposition of SO2",
        &SO2,
        Bound::Between(deposition(iso_9223::SO2.0), deposition(iso_9223::SO2.1), RANGE),
        "10 mg/(m²·d)",
    )
    .when("place", &["climate"])
    .hint("A concentration in µg/m³ counts as 0.8 of it in mg/(m²·d).")
    .source(iso_9223::VALIDITY),
    Field::quantity(
        "chloride",
        "Deposition of chloride",
        &CHLORIDE,
        Bound::Between(deposition(iso_9223::CHLORIDE.0), deposition(iso_9223::CHLORIDE.1), RANGE),
        "3 mg/(m²·d)",
    )
    .when("place", &["climate"])
    .source(iso_9223::VALIDITY),
    Field::quantity(
        "rate",
        "Loss of zinc in the first year",
        &RATES,
        Bound::PositiveTo(
            Shown { number: 25.0, unit: &unit::UM_YEAR, decimals: 0 },
            "CX ends there; beyond it no category is defined",
        ),
        "2.1 µm/year",
    )
    .when("place", &["rate"])
    .source(document::ISO_9223.memory("Table 2")),
    Field::quantity("thickness", "Coat, average", &THICKNESS, COAT, "50 µm"),
    Field::quantity("least", "Coat, least", &THICKNESS, COAT, "").optional(),
    Field::quantity("greatest", "Coat, greatest", &THICKNESS, COAT, "").optional(),
    Field::quantity(
        "years",
        "Years wanted",
        &YEARS,
        Bound::PositiveTo(
            Shown { number: 200.0, unit: &unit::YEAR, decimals: 0 },
            "nobody has watched zinc outdoors for longer",
        ),
        "",
    )
    .optional(),
];
