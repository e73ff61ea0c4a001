//! What the service life asks, and how it is read and written.

use super::{Input, Place};
use crate::calculator::{
    Bound, Choice, Example, Fault, Field, FieldAbout, Missed, Reader, Writer, Written, choices, chosen_by_key,
};
use crate::quantity::{Length, PlainNumber, Rate, Shown, Temperature, Time, Unit, unit};
use crate::rule::Case;
use crate::site::life::Promise;
use crate::site::{Category, Climate, SO2_IN_AIR, Surroundings};
use crate::source::document;
use crate::table::iso_9223;

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 12] = [
    SURROUNDINGS.about,
    PLACE.about,
    CATEGORY.about,
    TEMPERATURE.about,
    HUMIDITY.about,
    SO2.about,
    CHLORIDE.about,
    RATE.about,
    AVERAGE.about,
    MIN.about,
    MAX.about,
    WANTED.about,
];

choices! {
    /// How a place is known.
    enum PlaceBy {
        Category: "category", "Its category";
        Climate: "climate", "Its climate";
        Rate: "rate", "A loss of zinc measured there";
    }
}

static CATEGORIES: [Choice; 6] = [
    Choice::new("C1", "C1, very low: heated rooms, dry and clean; deserts"),
    Choice::new("C2", "C2, low: unheated rooms; open country with clean air"),
    Choice::new("C3", "C3, medium: rooms with some damp; towns, coasts with little salt"),
    Choice::new("C4", "C4, high: swimming pools, works; industry, coasts with salt"),
    Choice::new("C5", "C5, very high: damp foul rooms; heavy industry, shores with much salt"),
    Choice::new("CX", "CX, extreme: the wet tropics with salt, offshore, spray"),
];

static AROUND: [Choice; 10] = [
    around(Surroundings::OpenAir),
    around(Surroundings::Indoors),
    around(Surroundings::Soil),
    around(Surroundings::Water),
    around(Surroundings::Concrete),
    around(Surroundings::OtherMetal),
    around(Surroundings::Copper),
    around(Surroundings::Stainless),
    around(Surroundings::Aluminium),
    around(Surroundings::AcidWood),
];

/// What surrounds a part, as a choice.
pub(crate) const fn around(surroundings: Surroundings) -> Choice {
    Choice::new(surroundings.key(), surroundings.label())
}

static THICKNESS: [&Unit; 4] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH];
static TEMPERATURES: [&Unit; 2] = [&unit::CELSIUS, &unit::FAHRENHEIT];
static PER_CENT: [&Unit; 1] = [&unit::PERCENT];
static SO2_UNITS: [&Unit; 2] = [&unit::MG_M2_DAY, &SO2_IN_AIR];
static CHLORIDE_UNITS: [&Unit; 1] = [&unit::MG_M2_DAY];
static RATES: [&Unit; 2] = [&unit::UM_YEAR, &unit::MIL_YEAR];
static YEARS: [&Unit; 1] = [&unit::YEAR];

const RANGE: &str = "the dose-response function was fitted on this range";
const COAT: Bound = Bound::PositiveTo(
    Shown { number: 0.01, unit: &unit::UM, decimals: 2 },
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    "zinc coats on fasteners are far thinner; check the unit",
);

const fn deposition(number: f64) -> Shown {
    Shown { number, unit: &unit::MG_M2_DAY, decimals: 1 }
}

pub(super) const SURROUNDINGS: Field<Surroundings> =
    Field::choice("surroundings", "The part stands", &AROUND, "air")
        .hint("Years are given in air, outdoors and indoors; elsewhere the document to read is named.");
const PLACE: Field<PlaceBy> =
    Field::choice("place", "The place is known by", PlaceBy::CHOICES, PlaceBy::Category.key());
const CATEGORY: Field<Category> = Field::choice("category", "Category of corrosivity", &CATEGORIES, "C4")
    .when(&PLACE, &[PlaceBy::Category.key()])
    .hint("The loss of zinc decides; the places of each category stand beside the answer.")
    .source(document::ISO_9223.read("Table 2"));
pub(super) const TEMPERATURE: Field<Temperature> = Field::quantity(
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
.when(&PLACE, CLIMATE)
.source(iso_9223::VALIDITY);
const HUMIDITY: Field<PlainNumber> = Field::quantity(
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
.when(&PLACE, CLIMATE)
.source(iso_9223::VALIDITY);
const SO2: Field<PlainNumber> = Field::quantity(
    "so2",
    "Deposition of SO2",
    &SO2_UNITS,
    Bound::Between(deposition(iso_9223::SO2.0), deposition(iso_9223::SO2.1), RANGE),
    "10 mg/(m²·d)",
)
.when(&PLACE, CLIMATE)
.hint("A concentration in µg/m³ counts as 0.8 of it in mg/(m²·d).")
.source(iso_9223::VALIDITY);
pub(super) const CHLORIDE: Field<PlainNumber> = Field::quantity(
    "chloride",
    "Deposition of chloride",
    &CHLORIDE_UNITS,
    Bound::Between(deposition(iso_9223::CHLORIDE.0), deposition(iso_9223::CHLORIDE.1), RANGE),
    "3 mg/(m²·d)",
)
.when(&PLACE, CLIMATE)
.source(iso_9223::VALIDITY);
pub(super) const RATE: Field<Rate> = Field::quantity(
    "rate",
    "Loss of zinc in the first year",
    &RATES,
    Bound::PositiveTo(
        Shown { number: 0.01, unit: &unit::UM_YEAR, decimals: 2 },
        Shown { number: 25.0, unit: &unit::UM_YEAR, decimals: 0 },
        "CX ends there; beyond it no category is defined",
    ),
    "2.1 µm/year",
)
.when(&PLACE, &[PlaceBy::Rate.key()])
.source(document::ISO_9223.memory("Table 2"));
const AVERAGE: Field<Written<Length>> =
    Field::quantity("thickness", "Coat, average", &THICKNESS, COAT, "50 µm");
const MIN: Field<Length> = Field::quantity("least", "Coat, least", &THICKNESS, COAT, "").optional();
const MAX: Field<Length> = Field::quantity("greatest", "Coat, greatest", &THICKNESS, COAT, "").optional();
const WANTED: Field<Time> = Field::quantity(
    "years",
    "Years wanted",
    &YEARS,
    Bound::PositiveTo(
        Shown { number: 0.1, unit: &unit::YEAR, decimals: 1 },
        Shown { number: 200.0, unit: &unit::YEAR, decimals: 0 },
        "nobody has watched zinc outdoors for longer",
    ),
    "",
)
.optional();

const CLIMATE: &[&str] = &[PlaceBy::Climate.key()];

chosen_by_key!(Surroundings, Self::from_key);
chosen_by_key!(Category, Self::read);

/// Worked examples.
pub(super) static EXAMPLES: [Example; 4] = [
    Example {
        title: "A spun hot-dip coat in an industrial town, wanted for 15 years",
        pairs: &[("thickness", "50 µm"), ("least", "40 µm"), ("greatest", "60 µm"), ("years", "15")],
    },
    Example {
        title: "Thin mechanical zinc in a clean country place",
        pairs: &[("category", "C2"), ("thickness", "8 µm")],
    },
    Example {
        title: "A harbour known by its climate",
        pairs: &[
            ("place", "climate"),
            ("temperature", "12 °C"),
            ("humidity", "77 %"),
            ("so2", "20 mg/(m²·d)"),
            ("chloride", "60 mg/(m²·d)"),
            ("thickness", "2.1 mil"),
            ("years", "25"),
        ],
    },
    Example {
        title: "A loss of zinc measured on the site",
        pairs: &[("place", "rate"), ("rate", "1.4 µm/year"), ("thickness", "85 µm"), ("years", "40")],
    },
];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let (surroundings, place) = (reader.get(&SURROUNDINGS), read_place(reader));
    let (average, wanted) = (reader.get(&AVERAGE), reader.optional(&WANTED));
    let (min, max) = (reader.optional(&MIN), reader.optional(&MAX));
    let (min, max) = match average {
        Ok(Written { quantity: average, .. }) => (
            min.and_then(|min| within(reader, &MIN, min, |min| !min.exceeds(average), "least", "at most")),
            max.and_then(|max| {
                within(reader, &MAX, max, |max| !average.exceeds(max), "greatest", "at least")
            }),
        ),
        Err(_) => (min, max),
    };
    Ok(Input {
        surroundings: surroundings?,
        place: place?,
        average: average?,
        min: min?,
        max: max?,
        wanted: wanted?,
    })
}

fn read_place(reader: &mut Reader<'_>) -> Result<Place, Missed> {
    match reader.get(&PLACE)? {
        PlaceBy::Category => reader.get(&CATEGORY).map(Place::Category),
        PlaceBy::Rate => reader.get(&RATE).map(Place::Measured),
        PlaceBy::Climate => {
            let (temperature, humidity) = (reader.get(&TEMPERATURE), reader.get(&HUMIDITY));
            let (so2, chloride) = (reader.get(&SO2), reader.get(&CHLORIDE));
            Ok(Place::Climate(Climate {
                temperature: temperature?,
                humidity: humidity?,
                so2: so2?,
                chloride: chloride?,
            }))
        }
    }
}

/// An end of the coat that lies on its own side of the average.
fn within(
    reader: &mut Reader<'_>,
    field: &Field<Length>,
    end: Option<Length>,
    sound: impl FnOnce(Length) -> bool,
    which: &str,
    relation: &str,
) -> Result<Option<Length>, Missed> {
    if end.is_none_or(sound) {
        return Ok(end);
    }
    Err(reader.wrong(
        field,
        Fault::Conflict(format!(
            "the {which} thickness must be {relation} the average; change one of them, or leave the {which} empty"
        )),
    ))
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    // Open air is what nearly every order means; a link stays short without it.
    if input.surroundings != Surroundings::OpenAir {
        writer.put(&SURROUNDINGS, input.surroundings);
    }
    match input.place {
        Place::Category(category) => {
            writer.put(&PLACE, PlaceBy::Category);
            writer.put(&CATEGORY, category);
        }
        Place::Climate(climate) => {
            writer.put(&PLACE, PlaceBy::Climate);
            writer.put(&TEMPERATURE, climate.temperature);
            writer.put(&HUMIDITY, climate.humidity);
            writer.put(&SO2, climate.so2);
            writer.put(&CHLORIDE, climate.chloride);
        }
        Place::Measured(rate) => {
            writer.put(&PLACE, PlaceBy::Rate);
            writer.put(&RATE, rate);
        }
    }
    writer.put(&AVERAGE, input.average);
    writer.put_optional(&MIN, input.min);
    writer.put_optional(&MAX, input.max);
    if let Some(wanted) = input.wanted {
        writer.put(&WANTED, wanted);
    }
}

/// Fills the fields from a case: its coat, its place and the years wanted there.
pub(super) fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
    let (offer, site) = (case.offer?, case.site?);
    let may_be = site.place?;
    // Where it falls short, it does so in the mildest; else the harshest decides.
    let falls_short = case.promise() == Some(Promise::FallsShort);
    let place = if falls_short { may_be.mildest } else { may_be.harshest };
    let input = Input {
        surroundings: Surroundings::OpenAir,
        place: Place::Category(place),
        average: Written { quantity: offer.average(), unit: &unit::UM },
        min: Some(offer.min),
        max: Some(offer.max),
        wanted: site.wanted,
    };
    write(&input, writer);
    Some(())
}
