//! What an order line asks, field by field.
//!
//! What an order says (part, thread, steel, place …) starts empty and is asked for; only what the
//! method sets (the bath, a case as is usual for the part, not worked after hardening, nothing asked for) has a default.

use super::choices::{
    AROUND, BY_HARDNESS, BY_LEAST_HARDNESS, BY_TENSILE, CaseHardened, END_OF_STEEL, End, GRADES, KnownSteel,
    NUTS, Named, PARTS, PLACES, WASHERS, WITH_NUT, WITH_WASHER, WITHOUT,
};
use super::examples::EXAMPLES;
use crate::calculator::{About, Bound, Field, FieldAbout, HARDNESS as TABULATED, WORKED};
use crate::order::asked::{self, Asked, LeftOut};
use crate::part;
use crate::quantity::{Hardness, Length, Shown, Stress, Temperature, Time, Unit, unit};
use crate::site::{Categories, Surroundings};
use crate::source::common_practice;
use crate::steel::Worked;
use crate::thread::{Designation, ToleranceClass};

/// The order line described like a calculator: the same form, link and examples.
pub static ABOUT: About = About {
    id: "order",
    title: "Order line",
    answers: "Says which zinc finish suits an order line, which does not, and exactly why.",
    fields: &FIELDS,
    examples: &EXAMPLES,
};

/// What an order line asks.
pub static FIELDS: [FieldAbout; 29] = [
    PART.about,
    THREAD.about,
    LEFT.about,
    LENGTH.about,
    QUANTITY.about,
    STEEL.about,
    HARDNESS.about,
    TENSILE.about,
    END.about,
    CASE.about,
    COLD.about,
    PATCH.about,
    TEMPER.about,
    NUT.about,
    NUT_HARDNESS.about,
    NUT_CLASS.about,
    NUTS_TO_A_BOLT.about,
    WASHER.about,
    WASHER_HARDNESS.about,
    WASHERS_TO_A_BOLT.about,
    OWN_ALLOWANCE.about,
    SURROUNDINGS.about,
    PLACE.about,
    HEAT.about,
    YEARS.about,
    ASKED.about,
    MOST.about,
    LEFT_OUT.about,
    BATH.about,
];

pub(super) const PART: Field<part::Kind> = Field::choice("part", "Part", &PARTS, "");

pub(super) const THREAD: Field<Designation> = Field::text("thread", "Thread", "")
    .hint("As written on the order: M20, M16x1.5-6g, 5/8-11 UNC-2A.")
    .optional();

pub(super) const LEFT: Field<bool> = Field::yes_no("left", "Left-hand thread")
    .hint("The limits are those of a right-hand thread; nuts, taps and gauges are left-hand.");

pub(super) const LENGTH: Field<Length> = Field::quantity(
    "length",
    "Length",
    &LENGTHS,
    Bound::PositiveTo(mm(1.0), mm(6000.0), "longer bars are cut before they are coated"),
    "",
)
.when(&PART, part::Kind::KEYS_WITH_LENGTH)
.hint("Under the head; of a rod, over all.")
.optional();

pub(super) const QUANTITY: Field<u32> =
    Field::count("quantity", "Quantity", 1, 100_000_000, "").hint("Pieces.").optional();

pub(super) const STEEL: Field<KnownSteel> = Field::choice("steel", "Steel", &GRADES, "").optional();

pub(super) const HARDNESS: Field<Hardness> = Field::quantity(BY_HARDNESS, "Hardness", &SCALES, TABULATED, "")
    .when(&STEEL, &[BY_HARDNESS])
    .hint("The hardest of the part, or the greatest that is allowed.");

pub(super) const TENSILE: Field<Stress> = Field::quantity(
    BY_TENSILE,
    "Tensile strength",
    &STRESSES,
    Bound::Between(
        Shown { number: 255.0, unit: &unit::MPA, decimals: 0 },
        Shown { number: 2180.0, unit: &unit::MPA, decimals: 0 },
        "the range of the conversion table of ISO 18265",
    ),
    "",
)
.when(&STEEL, &[BY_TENSILE])
.hint("The greatest of the part, or that is allowed.");

pub(super) const END: Field<End> =
    Field::choice(END_OF_STEEL, "Which end that is", End::CHOICES, End::Greatest.key())
        .when(&STEEL, &[BY_HARDNESS, BY_TENSILE])
        .hint("Hydrogen and the bake follow from the greatest.");

pub(super) const CASE: Field<CaseHardened> =
    Field::choice("case", "Case-hardened", CaseHardened::CHOICES, CaseHardened::Usual.key())
        .hint("A hard skin over a softer core: tapping and drywall screws usually are.");

pub(super) const COLD: Field<Worked> = Field::choice("cold", "Worked after heat treatment", WORKED, "no")
    .hint("Ground, bent or rolled after hardening.");

pub(super) const PATCH: Field<bool> = Field::yes_no("patch", "Nylon patch")
    .hint("Sprayed on the finished thread and heated, so that it locks.");

pub(super) const TEMPER: Field<Temperature> = Field::quantity(
    "temper",
    "Tempered at",
    &TEMPERATURES,
    Bound::Between(celsius(100.0), celsius(750.0), "steel is tempered between these"),
    "",
)
.optional()
.hint("From the mill's certificate; empty takes the least of the standard.");

pub(super) const NUT: Field<Named> =
    Field::choice("nut", "Nut", &NUTS, WITHOUT).when(&PART, part::Kind::KEYS_WITH_LENGTH);

pub(super) const NUT_HARDNESS: Field<Hardness> =
    Field::quantity("nut_hardness", "Hardness of the nut", &SCALES, TABULATED, "")
        .when(&NUT, &[BY_HARDNESS, BY_LEAST_HARDNESS])
        .hint("The hardest, or the greatest that is allowed; else say that it is the least.");

pub(super) const NUT_CLASS: Field<ToleranceClass> = Field::text("nut_class", "Thread of the nut", "")
    .when(&NUT, &WITH_NUT)
    .hint("As written on the order: 6H, 6AZ, 2B.")
    .optional();

pub(super) const NUTS_TO_A_BOLT: Field<u32> =
    Field::count("nuts", "Nuts to a bolt", 1, 8, "1").when(&NUT, &WITH_NUT);

pub(super) const WASHER: Field<Named> =
    Field::choice("washer", "Washer", &WASHERS, WITHOUT).when(&PART, part::Kind::KEYS_WITH_LENGTH);

pub(super) const WASHER_HARDNESS: Field<Hardness> =
    Field::quantity("washer_hardness", "Hardness of the washer", &SCALES, TABULATED, "")
        .when(&WASHER, &[BY_HARDNESS, BY_LEAST_HARDNESS])
        .hint("The hardest, or the greatest that is allowed; else say that it is the least.");

pub(super) const WASHERS_TO_A_BOLT: Field<u32> =
    Field::count("washers", "Washers to a bolt", 1, 8, "1").when(&WASHER, &WITH_WASHER);

pub(super) const OWN_ALLOWANCE: Field<Length> = Field::quantity(
    "own_allowance",
    "Own allowance of the nut",
    &ALLOWANCES,
    Bound::PositiveTo(mm(0.001), mm(3.0), "more leaves no thread"),
    "",
)
.hint("On the diameter, over 6H or 2B; empty takes the published ones.")
.optional();

pub(super) const SURROUNDINGS: Field<Surroundings> =
    Field::choice("surroundings", "It stands", &AROUND, Surroundings::OpenAir.key())
        .hint("Years are given in air; elsewhere the document to read is named.");

pub(super) const PLACE: Field<Categories> = Field::choice("place", "Place", &PLACES, "")
    .when(&SURROUNDINGS, &Surroundings::IN_AIR_OUTDOORS)
    .hint("Corrosivity of the air (ISO 9223).")
    .optional();

pub(super) const HEAT: Field<Temperature> = Field::quantity(
    "heat",
    "Heat in service",
    &TEMPERATURES,
    Bound::Between(celsius(-270.0), celsius(1200.0), "no bolt of steel is in service beyond these"),
    "",
)
.hint("The hottest it gets; empty takes a place that is not hot.")
.optional();

pub(super) const YEARS: Field<Time> = Field::quantity(
    "years",
    "Years wanted",
    &YEAR,
    Bound::PositiveTo(
        Shown { number: 0.1, unit: &unit::YEAR, decimals: 1 },
        Shown { number: 200.0, unit: &unit::YEAR, decimals: 0 },
        "no table of zinc loss reaches so far",
    ),
    "",
)
.optional()
.hint("Until the zinc is used up; empty asks for none.");

pub(super) const ASKED: Field<Option<Asked>> =
    Field::choice("asked", "Asked for", &asked::CHOICES, asked::ADVISE);

pub(super) const MOST: Field<Length> = Field::quantity(
    "most",
    "Coat at most",
    &ALLOWANCES,
    Bound::PositiveTo(mm(0.001), mm(1.0), "no coat of zinc here is thicker"),
    "",
)
.hint("The greatest thickness that is taken, where there is one.")
.optional();

pub(super) const LEFT_OUT: Field<LeftOut> =
    Field::choice("left_out", "Left out", LeftOut::CHOICES, LeftOut::Nothing.key());

/// The zinc bath that is usual: what its field says where nobody changed it.
pub const USUAL_BATH: Temperature = Temperature::from_celsius(460.0);

pub(super) const BATH: Field<Temperature> = Field::quantity(
    "bath",
    "Zinc bath",
    &TEMPERATURES,
    Bound::Between(celsius(420.0), celsius(650.0), "zinc melts at 420 °C, and no kettle runs hotter"),
    "860 °F",
)
.source(common_practice("860 °F is usual"));

static LENGTHS: [&Unit; 4] = [&unit::MM, &unit::INCH, &unit::M, &unit::FOOT];
static ALLOWANCES: [&Unit; 4] = [&unit::UM, &unit::MM, &unit::INCH, &unit::MIL];
static SCALES: [&Unit; 4] = [&unit::HRC, &unit::HV, &unit::HB, &unit::HRB];
static STRESSES: [&Unit; 2] = [&unit::MPA, &unit::KSI];
static TEMPERATURES: [&Unit; 2] = [&unit::CELSIUS, &unit::FAHRENHEIT];
static YEAR: [&Unit; 1] = [&unit::YEAR];

const fn mm(number: f64) -> Shown {
    Shown { number, unit: &unit::MM, decimals: 0 }
}

const fn celsius(number: f64) -> Shown {
    Shown { number, unit: &unit::CELSIUS, decimals: 0 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calculator::FieldValue;

    #[test]
    fn the_usual_bath_is_what_its_field_says() {
        assert_eq!(Temperature::read(BATH.about.default, &BATH.about), Ok(USUAL_BATH));
    }
}
