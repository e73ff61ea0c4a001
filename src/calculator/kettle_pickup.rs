//! Kettle pick-up: the zinc that a load takes out of the kettle, the bath, the baskets and the wiping.

use super::load::{self, Load, Stated};
use super::{
    About, Bound, Calculator, Choice, Example, FieldAbout as Field, Missed, Problem, Reader, Report,
};
use crate::coat::Factor;
use crate::coat::kettle::{self, Bath, PickUp, Wiping};
use crate::quantity::unit::Dimension;
use crate::quantity::{Length, Mass, PlainNumber, Shown, Unit, unit};
use crate::rule::heat::forbids_high_bath;
use crate::steel::Grade;
use crate::table::hotdip_process as practice;

mod explain;

/// The calculator.
#[derive(Debug)]
pub struct KettlePickup;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The load, nuts as blanks.
    pub stated: Stated,
    /// Average thickness of the coat.
    pub coat: Length,
    /// From thickness to mass.
    pub factor: &'static Factor,
    /// Zinc lost with the dross for the zinc on the parts.
    pub dross: Option<f64>,
    /// Zinc lost with the ash for the zinc on the parts.
    pub ash: Option<f64>,
    /// Price of a kilogram of zinc, in the user's currency.
    pub price: Option<f64>,
    /// What a basket takes.
    pub basket: Option<Mass>,
    /// Inside length of a basket.
    pub basket_length: Option<Length>,
    /// Grade of the steel.
    pub grade: Option<Grade>,
    /// Silicon and phosphorus together, in per cent.
    pub si_p: Option<f64>,
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// The load.
    pub load: Load,
    /// The zinc.
    pub zinc: PickUp,
    /// Zinc on the parts for the weight of steel, where it is known.
    pub share: Option<f64>,
    /// What the zinc fed costs.
    pub cost: Option<f64>,
    /// Baskets, where weight and capacity are known.
    pub baskets: Option<f64>,
    /// The bath.
    pub bath: Bath,
    /// Spin or air ring, where the part is known.
    pub wiping: Option<Wiping>,
}

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
static PER_KG: Unit = price_unit("per kg", "for a kilogram", &["/kg"], 1.0);
static PER_LB: Unit = price_unit("per lb", "for a pound", &["/lb"], 0.453_592_37);

static PRICES: [&Unit; 3] = [&PER_TONNE, &PER_KG, &PER_LB];
static THICKNESSES: [&Unit; 3] = [&unit::UM, &unit::MIL, &unit::INCH];
static LENGTHS: [&Unit; 4] = [&unit::MM, &unit::M, &unit::INCH, &unit::FOOT];
static MASSES: [&Unit; 2] = [&unit::KG, &unit::LB];
static SHARES: [&Unit; 2] = [&unit::PERCENT, &unit::ONE];
static CONTENTS: [&Unit; 1] = [&unit::PERCENT];

const LOST: Bound = Bound::ZeroTo(
    Shown { number: 100.0, unit: &unit::PERCENT, decimals: 0 },
    "a kettle that loses more zinc than it puts on is faulty; check the figure",
);

static FIELDS: [Field; 18] = [
    load::LOAD,
    load::PART,
    load::THREAD,
    load::LENGTH,
    load::PIECES,
    load::WEIGHT,
    load::AREA,
    load::AREA_WEIGHT,
    load::SIZES,
    Field::quantity(
        "coat",
        "Coat, average",
        &THICKNESSES,
        Bound::PositiveTo(
            Shown { number: 500.0, unit: &unit::UM, decimals: 0 },
            "hot-dip coats on fasteners are far thinner; check the unit",
        ),
        "50 µm",
    )
    .hint("Spun fasteners usually carry 40 to 60 µm.")
    .source(practice::SPUN_COAT.source),
    Field::choice("factor", "Thickness to mass by", &FACTORS, "iso1461"),
    Field::quantity("dross", "Zinc lost with the dross", &SHARES, LOST, "")
        .hint("For the zinc on the parts, from your plant's own books.")
        .optional(),
    Field::quantity("ash", "Zinc lost with the ash", &SHARES, LOST, "")
        .hint("For the zinc on the parts, from your plant's own books.")
        .optional(),
    Field::quantity(
        "price",
        "Price of zinc",
        &PRICES,
        Bound::PositiveTo(
            Shown { number: 1e9, unit: &PER_TONNE, decimals: 0 },
            "check the unit of the price",
        ),
        "",
    )
    .hint("In your own currency, without its sign: 2900 per t.")
    .optional(),
    Field::quantity(
        "basket",
        "A basket takes",
        &MASSES,
        Bound::PositiveTo(
            Shown { number: 5000.0, unit: &unit::KG, decimals: 0 },
            "no centrifuge turns more; check the unit",
        ),
        "",
    )
    .optional(),
    Field::quantity(
        "basket_length",
        "Inside length of a basket",
        &LENGTHS,
        Bound::PositiveTo(
            Shown { number: 6.0, unit: &unit::M, decimals: 0 },
            "no basket is longer; check the unit",
        ),
        "",
    )
    .hint("What is longer is wiped by an air ring; left empty, rods are.")
    .optional(),
    Field::text("grade", "Steel", "").hint("class 8.8, 10.9, grade 5, A325 …; for the bath.").optional(),
    Field::quantity(
        "si_p",
        "Silicon and phosphorus together",
        &CONTENTS,
        Bound::ZeroTo(
            Shown { number: 1.0, unit: &unit::PERCENT, decimals: 0 },
            "bolt steels hold less; check the certificate",
        ),
        "",
    )
    .hint("From the certificate of the steel: per cent of Si and per cent of P, added.")
    .source(practice::REACTIVE.source)
    .optional(),
];

impl Calculator for KettlePickup {
    const ABOUT: About = About {
        id: "kettle",
        title: "Kettle pick-up",
        answers: "Says how much zinc a load takes out of the kettle, in which bath, in how many baskets, spun or wiped.",
        fields: &FIELDS,
        examples: &[
            Example {
                title: "A batch of M20 bolts of class 8.8",
                pairs: &[
                    ("thread", "M20"),
                    ("length", "90 mm"),
                    ("pieces", "1200"),
                    ("grade", "8.8"),
                    ("si_p", "0.25 %"),
                    ("basket", "80 kg"),
                ],
            },
            Example {
                title: "Half a tonne of nuts, tapped afterwards, with the losses of the plant and a price",
                pairs: &[
                    ("load", "weight"),
                    ("part", "hex-nut"),
                    ("thread", "M16"),
                    ("coat", "55 µm"),
                    ("dross", "10 %"),
                    ("ash", "15 %"),
                    ("price", "2900 per t"),
                ],
            },
            Example {
                title: "Threaded rods of a reactive steel",
                pairs: &[
                    ("part", "rod"),
                    ("thread", "M24"),
                    ("length", "1 m"),
                    ("pieces", "60"),
                    ("si_p", "0.08 %"),
                ],
            },
            Example {
                title: "M30 bolts of class 10.9: no high-temperature bath",
                pairs: &[
                    ("thread", "M30"),
                    ("length", "160 mm"),
                    ("pieces", "100"),
                    ("grade", "10.9"),
                    ("si_p", "0.05 %"),
                    ("factor", "a123"),
                ],
            },
            Example {
                title: "A load known by its area",
                pairs: &[
                    ("load", "area"),
                    ("area", "35 m²"),
                    ("area_weight", "800 kg"),
                    ("basket", "150 lb"),
                ],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
            let stated = load::read(reader);
            let coat = reader.quantity("coat");
            let factor = reader.choice("factor", Factor::from_key);
            let share =
                |reader: &mut Reader<'_>, name| reader.quantity::<PlainNumber>(name).map(PlainNumber::one);
            let dross = share(reader, "dross");
            let ash = share(reader, "ash");
            let price = share(reader, "price");
            let basket = reader.quantity("basket");
            let basket_length = reader.quantity("basket_length");
            let grade = reader.parsed("grade", Grade::read);
            let si_p = reader.quantity::<PlainNumber>("si_p").map(PlainNumber::percent);
            Some(Input {
                stated: stated?.blanks(),
                coat: coat?,
                factor: factor?,
                dross,
                ash,
                price,
                basket,
                basket_length,
                grade,
                si_p,
            })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let load = input.stated.load();
        let (dross, ash) = (input.dross.unwrap_or(0.0), input.ash.unwrap_or(0.0));
        // The hot-dip factors are single values: least and greatest are the same.
        let zinc = kettle::pick_up(load.area, input.coat, input.factor.min, dross, ash);
        let diameter = load.piece.map(|piece| piece.thread.diameter());
        Ok(Outcome {
            load,
            zinc,
            share: load.mass.map(|mass| zinc.on_parts / mass),
            cost: input.price.map(|price| price * zinc.fed.kg()),
            baskets: load.mass.zip(input.basket).map(|(mass, basket)| kettle::baskets(mass, basket)),
            bath: kettle::bath(input.si_p, forbids_high_bath(input.grade, diameter)),
            wiping: load.piece.and_then(|piece| {
                let length = piece.shape.overall_length()?;
                Some(kettle::wiping(piece.kind.is_rod(), length, input.basket_length))
            }),
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        explain::report(input, outcome)
    }
}
