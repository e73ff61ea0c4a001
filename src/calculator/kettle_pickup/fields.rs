//! What is asked for a load of the kettle, and how it is read and written.

use super::Input;
use crate::calculator::load::fields as load;
use crate::calculator::steel_fields::{AsWritten, STEEL};
use crate::calculator::{Bound, Choice, Fault, Field, FieldAbout, Missed, Reader, Writer, Written};
use crate::coat::{Factor, Process};
use crate::quantity::unit::Dimension;
use crate::quantity::{Length, Mass, PlainNumber, Shown, Temperature, Time, Unit, unit};
use crate::rule::Case;
use crate::source::common_practice;
use crate::steel::tempering::{HIGH, NORMAL};
use crate::table::hotdip_process as practice;

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 28] = [
    load::LOAD.about,
    load::PART.about,
    load::THREAD.about,
    load::LENGTH.about,
    load::PIECES.about,
    load::WEIGHT.about,
    load::AREA.about,
    load::AREA_WEIGHT.about,
    load::SIZES.about,
    load::NEAREST.about,
    load::DIAMETER.about,
    load::THREADED.about,
    load::FLAT.about,
    load::TRIAL_PARTS.about,
    load::TRIAL_ZINC.about,
    load::TRIAL_COAT.about,
    COAT.about,
    FACTOR.about,
    DROSS.about,
    ASH.about,
    PRICE.about,
    BASKET.about,
    BASKET_LENGTH.about,
    GRADE.about,
    SI_P.about,
    SI.about,
    BATH.about,
    DIP.about,
];

const COAT: Field<Written<Length>> = Field::quantity(
    "coat",
    "Coat, average",
    &THICKNESSES,
    Bound::PositiveTo(
        Shown { number: 0.1, unit: &unit::UM, decimals: 1 },
        Shown { number: 500.0, unit: &unit::UM, decimals: 0 },
        "hot-dip coats on fasteners are far thinner; check the unit",
    ),
    "50 µm",
)
.hint("Spun fasteners usually carry 40 to 60 µm.")
.source(practice::SPUN_COAT.source);
const FACTOR: Field<&'static Factor> = Field::choice("factor", "Thickness to mass by", &FACTORS, "iso1461");
const DROSS: Field<PlainNumber> = Field::quantity("dross", "Zinc lost with the dross", &SHARES, LOST, "")
    .hint("Of all the zinc used, from your plant's own books.")
    .optional();
const ASH: Field<PlainNumber> = Field::quantity("ash", "Zinc lost with the ash", &SHARES, LOST, "")
    .hint("Of all the zinc used, from your plant's own books.")
    .optional();
const PRICE: Field<Written<PlainNumber>> = Field::quantity(
    "price",
    "Price of zinc",
    &PRICES,
    Bound::PositiveTo(
        Shown { number: 0.001, unit: &PER_TONNE, decimals: 3 },
        Shown { number: 1e9, unit: &PER_TONNE, decimals: 0 },
        "check the unit of the price",
    ),
    "",
)
.hint("In your own currency, without its sign: 2900 per t.")
.optional();
const BASKET: Field<Written<Mass>> = Field::quantity(
    "basket",
    "A basket takes",
    &MASSES,
    Bound::PositiveTo(
        Shown { number: 1.0, unit: &unit::KG, decimals: 0 },
        Shown { number: 5000.0, unit: &unit::KG, decimals: 0 },
        "no centrifuge turns more; check the unit",
    ),
    "",
)
.optional();
const BASKET_LENGTH: Field<Written<Length>> = Field::quantity(
    "basket_length",
    "Inside length of a basket",
    &LENGTHS,
    Bound::PositiveTo(
        Shown { number: 0.1, unit: &unit::M, decimals: 1 },
        Shown { number: 6.0, unit: &unit::M, decimals: 0 },
        "no basket is longer; check the unit",
    ),
    "",
)
.hint("What is longer is wiped by an air ring. Left empty: up to 0.4 m goes in, from 0.6 m on not.")
.source(practice::BASKETS.source)
.optional();
pub(super) const GRADE: Field<AsWritten> =
    STEEL.hint("class 8.8, 10.9, grade 5, A325 …; for bath, acid and temper.");
const SI_P: Field<PlainNumber> =
    Field::quantity("si_p", "Silicon and phosphorus together", &CONTENTS, HOLDS, "")
        .hint("From the certificate of the steel: per cent of Si and per cent of P, added.")
        .source(practice::REACTIVE.source)
        .optional();
const SI: Field<PlainNumber> = Field::quantity("si", "Silicon alone", &CONTENTS, HOLDS, "")
    .hint("Steels of much silicon are reactive as well.")
    .source(practice::SILICON_A385.source)
    .optional();
const BATH: Field<Written<Temperature>> = Field::quantity(
    "bath",
    "Bath",
    &TEMPERATURES,
    Bound::Between(
        Shown { number: 420.0, unit: &unit::CELSIUS, decimals: 0 },
        Shown { number: HIGH.1.celsius(), unit: &unit::CELSIUS, decimals: 0 },
        "zinc melts just below 420 °C, and no document has a bath above 560 °C",
    ),
    "460 °C",
)
.source(common_practice("bath of 860 °F"));
const DIP: Field<Time> = Field::quantity(
    "dip",
    "Time in the bath",
    &MINUTES,
    Bound::PositiveTo(
        Shown { number: 0.1, unit: &unit::MINUTE, decimals: 1 },
        Shown { number: 60.0, unit: &unit::MINUTE, decimals: 0 },
        "fasteners stay a few minutes; check the unit",
    ),
    "3 min",
)
.source(practice::IMMERSION_TIME.source);

/// More than this of the zinc used is never lost.
const MOST_LOST: f64 = 0.8;
const LOST: Bound = Bound::ZeroTo(
    Shown { number: 100.0 * MOST_LOST, unit: &unit::PERCENT, decimals: 0 },
    "a kettle that loses nearly all of its zinc is faulty; check the figure",
);
const HOLDS: Bound = Bound::ZeroTo(
    Shown { number: 1.0, unit: &unit::PERCENT, decimals: 0 },
    "bolt steels hold less; check the certificate",
);

static FACTORS: [Choice; 3] = [
    Choice::new("iso1461", "ISO 1461, ISO 10684: 7.2 g/m² per µm"),
    Choice::new("a123", "ASTM A123, A153, F2329: 7.067 g/m² per µm"),
    Choice::new("a653", "Solid zinc, ASTM A653: 7.14 g/m² per µm"),
];

/// A price of so much for each unit of zinc, in whatever currency; held for a kilogram.
const fn price_unit(
    symbol: &'static str,
    name: &'static str,
    also: &'static [&'static str],
    kg: f64,
) -> Unit {
    Unit { dimension: Dimension::PlainNumber, symbol, name, also, factor: 1.0 / kg, offset: 0.0 }
}

static PER_TONNE: Unit = price_unit("per t", "for a tonne", &["/t"], 1000.0);
pub(super) static PER_KG: Unit = price_unit("per kg", "for a kilogram", &["/kg"], 1.0);
static PER_LB: Unit = price_unit("per lb", "for a pound", &["/lb"], 0.453_592_37);

static PRICES: [&Unit; 3] = [&PER_TONNE, &PER_KG, &PER_LB];
static THICKNESSES: [&Unit; 3] = [&unit::UM, &unit::MIL, &unit::INCH];
static LENGTHS: [&Unit; 4] = [&unit::MM, &unit::M, &unit::INCH, &unit::FOOT];
static MASSES: [&Unit; 2] = [&unit::KG, &unit::LB];
static SHARES: [&Unit; 1] = [&unit::PERCENT];
static CONTENTS: [&Unit; 1] = [&unit::PERCENT];
static TEMPERATURES: [&Unit; 2] = [&unit::CELSIUS, &unit::FAHRENHEIT];
static MINUTES: [&Unit; 2] = [&unit::MINUTE, &unit::SECOND];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let (coat, factor) = (reader.get(&COAT), reader.get(&FACTOR));
    let known = factor.unwrap_or(&crate::coat::factor::ISO_1461);
    let stated = load::read(reader, (known.min, Some(known.source)));
    let (dross, ash, price) = (reader.optional(&DROSS), reader.optional(&ASH), reader.optional(&PRICE));
    let (basket, basket_length) = (reader.optional(&BASKET), reader.optional(&BASKET_LENGTH));
    let grade = reader.optional(&GRADE);
    let (si_p, si) = (reader.optional(&SI_P), reader.optional(&SI));
    let (bath, dip) = (reader.get(&BATH), reader.get(&DIP));
    let (dross, ash) = (dross?, ash?);
    let lost = |share: Option<PlainNumber>| share.map_or(0.0, PlainNumber::one);
    if lost(dross) + lost(ash) > MOST_LOST {
        let text =
            "dross and ash are shares of all the zinc used, and leave little for the parts; check both";
        return Err(reader.wrong(&ASH, Fault::Conflict(text.to_owned())));
    }
    let composition = match (si_p?, si?) {
        (Some(sum), Some(si)) if si.one() > sum.one() => {
            let text = "silicon alone is no more than silicon and phosphorus together; correct one of them";
            return Err(reader.wrong(&SI, Fault::Conflict(text.to_owned())));
        }
        both => both,
    };
    Ok(Input {
        stated: stated?.blanks(),
        coat: coat?,
        factor: factor?,
        dross,
        ash,
        price: price?,
        basket: basket?,
        basket_length: basket_length?,
        grade: grade?.map(|grade| grade.0),
        composition,
        bath: bath?,
        dip: dip?,
    })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    load::write(&input.stated, writer);
    writer.put(&COAT, input.coat);
    writer.put(&FACTOR, input.factor);
    writer.put_optional(&DROSS, input.dross);
    writer.put_optional(&ASH, input.ash);
    writer.put_optional(&PRICE, input.price);
    writer.put_optional(&BASKET, input.basket);
    writer.put_optional(&BASKET_LENGTH, input.basket_length);
    writer.put_optional(&GRADE, input.grade.map(AsWritten));
    writer.put_optional(&SI_P, input.composition.0);
    writer.put_optional(&SI, input.composition.1);
    writer.put(&BATH, input.bath);
    writer.put(&DIP, input.dip);
}

/// Fills the fields from a case that goes into the kettle.
pub(super) fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
    if case.process != Process::HotDip {
        return None;
    }
    load::fill(case, writer)?;
    if let Some(offer) = case.offer {
        writer.put(&COAT, Written { quantity: offer.mean_of_a_load(), unit: &unit::UM });
        writer.put(&FACTOR, offer.factor());
    }
    writer.put_optional(&GRADE, case.grade().map(AsWritten));
    if let Some(dip) = case.dip {
        writer.put(&BATH, Written { quantity: dip.bath, unit: &unit::CELSIUS });
        writer.put(&DIP, dip.time);
    }
    Some(())
}

/// The normal bath and the hot one.
pub(super) const BATHS: [(Temperature, Temperature); 2] = [NORMAL, HIGH];
