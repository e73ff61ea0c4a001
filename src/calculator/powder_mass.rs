//! Powder mass: what to weigh into the barrel for a mechanical zinc coat on a load of parts.

use super::load::{self, Load, Stated};
use super::{
    About, Bound, Calculator, Choice, Example, FieldAbout as Field, Missed, Problem, Reader, Report,
};
use crate::coat::barrel::{self, Charge};
use crate::coat::factor::DEPOSIT;
use crate::quantity::{Density, Length, PlainNumber, Shown, Unit, Volume, unit};
use crate::source::Source;
use crate::table::{astm_b695, mechanical_process as practice};

mod explain;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct PowderMass;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The load.
    pub stated: Stated,
    /// The coat wanted.
    pub coat: Length,
    /// The class it was asked by, and where it is published.
    pub class: Option<(&'static str, Source)>,
    /// Density of the deposit, and where it is published; no source for the user's own.
    pub deposit: (Density, Option<Source>),
    /// Share of the powder that ends up on the parts.
    pub yielded: f64,
    /// Thickness of the copper flash.
    pub flash: Length,
    /// Solid share of the heap of parts.
    pub solid_share: f64,
    /// Volume of beads to bulk volume of parts.
    pub bead_ratio: f64,
    /// Own number of additions.
    pub additions: Option<u32>,
    /// The barrel, if one is stated: its volume, and whether that is the total.
    pub barrel: Option<(Volume, bool)>,
    /// Inside diameter of the barrel.
    pub diameter: Option<Length>,
}

/// What it finds.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// The load.
    pub load: Load,
    /// What is weighed in.
    pub charge: Charge,
    /// The same at the least and the greatest published density of the deposit.
    pub charge_range: (Charge, Charge),
    /// Number of additions, and the rule where it is not the user's own.
    pub additions: (u32, Option<Source>),
    /// Coat after each addition.
    pub coats: Vec<Length>,
    /// Heap of parts and heap of beads, where the weight is known.
    pub bulk: Option<(Volume, Volume)>,
    /// Working volume of the barrel: least and greatest.
    pub working_volume: Option<(Volume, Volume)>,
    /// Loads in that barrel: fewest and most.
    pub loads: Option<(f64, f64)>,
    /// Turns a minute: slowest and fastest.
    pub turns: Option<(f64, f64)>,
}

static CLASSES: [Choice; 11] = [
    Choice::new("110", "Class 110"),
    Choice::new("80", "Class 80"),
    Choice::new("70", "Class 70"),
    Choice::new("65", "Class 65"),
    Choice::new("55", "Class 55"),
    Choice::new("50", "Class 50"),
    Choice::new("40", "Class 40"),
    Choice::new("25", "Class 25"),
    Choice::new("12", "Class 12"),
    Choice::new("8", "Class 8"),
    Choice::new("5", "Class 5"),
];

static ASKED: [Choice; 2] =
    [Choice::new("class", "Class of ASTM B695"), Choice::new("thickness", "Thickness")];

static DENSITIES: [Choice; 3] = [
    Choice::new("light", "0.45 oz/ft² per mil, 5.41 g/cm³"),
    Choice::new("heavy", "80 % of solid zinc, 5.71 g/cm³"),
    Choice::new("own", "Own value"),
];

static BARRELS: [Choice; 2] =
    [Choice::new("working", "Working volume"), Choice::new("total", "Total volume")];

static MICRONS: [&Unit; 3] = [&unit::UM, &unit::MIL, &unit::INCH];
static DEPOSITS: [&Unit; 3] = [&unit::G_CM3, &unit::G_M2_UM, &unit::OZ_FT2_MIL];
static SHARES: [&Unit; 2] = [&unit::PERCENT, &unit::ONE];
static NUMBERS: [&Unit; 1] = [&unit::ONE];
static VOLUMES: [&Unit; 3] = [&unit::LITRE, &unit::M3, &unit::FT3];
static DIAMETERS: [&Unit; 4] = [&unit::M, &unit::MM, &unit::INCH, &unit::FOOT];

const fn percent(number: f64) -> Shown {
    Shown { number, unit: &unit::PERCENT, decimals: 0 }
}

static FIELDS: [Field; 22] = [
    load::LOAD,
    load::PART,
    load::THREAD,
    load::LENGTH,
    load::PIECES,
    load::WEIGHT,
    load::AREA,
    load::AREA_WEIGHT,
    load::SIZES,
    Field::choice("asked", "Coat asked by", &ASKED, "class"),
    Field::choice("class", "Class", &CLASSES, "55").when("asked", &["class"]),
    Field::quantity(
        "coat",
        "Coat",
        &MICRONS,
        Bound::Between(
            Shown { number: 5.0, unit: &unit::UM, decimals: 0 },
            Shown { number: 110.0, unit: &unit::UM, decimals: 0 },
            "the classes of ASTM B695 end there, and nothing is known of charges beyond them",
        ),
        "53 µm",
    )
    .when("asked", &["thickness"]),
    Field::choice("density", "Density of the deposit", &DENSITIES, "light")
        .hint("A mechanical deposit is porous: lighter than the zinc of a hot-dip coat."),
    Field::quantity(
        "own_density",
        "Own density",
        &DEPOSITS,
        Bound::Between(
            Shown { number: 4.0, unit: &unit::G_CM3, decimals: 0 },
            Shown { number: 7.14, unit: &unit::G_CM3, decimals: 2 },
            "a deposit cannot be denser than zinc, and below 4 it is no coat",
        ),
        "5.5 g/cm³",
    )
    .when("density", &["own"]),
    Field::quantity(
        "yield",
        "Yield of the powder",
        &SHARES,
        Bound::Between(
            percent(50.0),
            percent(100.0),
            "less than half on the parts is a fault to be found first",
        ),
        "93 %",
    )
    .hint("Share of the powder weighed in that ends up on the parts.")
    .source(practice::YIELD.source),
    Field::quantity(
        "flash",
        "Copper flash",
        &MICRONS,
        Bound::ZeroTo(
            Shown { number: 5.0, unit: &unit::UM, decimals: 0 },
            "a flash is far thinner; check the unit",
        ),
        "0.5 µm",
    )
    .hint("An assumption: no document states a thickness. Enter what your chemistry asks for.")
    .source(barrel::COPPER_FLASH.source),
    Field::quantity(
        "solid",
        "Steel in a heap of the parts",
        &SHARES,
        Bound::Between(percent(5.0), percent(70.0), "no heap of fasteners is looser or denser"),
        "20.4 %",
    )
    .hint("Fill a measured bucket level and weigh it: kg over litres over 7.85 is the share.")
    .source(barrel::USUAL_SOLID_SHARE_SOURCE),
    Field::quantity(
        "beads",
        "Beads to parts, by volume",
        &NUMBERS,
        Bound::Between(
            Shown { number: 0.5, unit: &unit::ONE, decimals: 1 },
            Shown { number: 3.0, unit: &unit::ONE, decimals: 0 },
            "practice runs from 1 to 2",
        ),
        "1",
    )
    .hint("As many beads as parts; more for heavy parts and thick coats.")
    .source(practice::BEADS_TO_PARTS.source),
    Field::count("additions", "Additions", 1, 40, "")
        .hint("Equal additions of powder; left empty, the usual number for the coat.")
        .source(practice::ADDITIONS.source)
        .optional(),
    Field::quantity(
        "barrel",
        "Barrel",
        &VOLUMES,
        Bound::PositiveTo(
            Shown { number: 10.0, unit: &unit::M3, decimals: 0 },
            "no barrel is larger; check the unit",
        ),
        "",
    )
    .hint("Leave empty if you do not know it.")
    .optional(),
    Field::choice("barrel_by", "The barrel's volume is its", &BARRELS, "working")
        .hint("The working volume is what it takes of parts: 25 to 35 % of the total.")
        .source(practice::WORKING_SHARE.source),
    Field::quantity(
        "diameter",
        "Inside diameter of the barrel",
        &DIAMETERS,
        Bound::Between(
            Shown { number: 0.1, unit: &unit::M, decimals: 1 },
            Shown { number: 4.0, unit: &unit::M, decimals: 0 },
            "no barrel is smaller or larger; check the unit",
        ),
        "",
    )
    .hint("For the turns a minute.")
    .optional(),
];

impl Calculator for PowderMass {
    const ABOUT: About = About {
        id: "powder",
        title: "Powder mass",
        answers: "Says what to weigh into the barrel for a mechanical zinc coat on a load of parts.",
        fields: &FIELDS,
        examples: &[
            Example {
                title: "A barrel of M12 bolts, class 55",
                pairs: &[("pieces", "4000"), ("barrel", "0.57 m³"), ("diameter", "0.9 m")],
            },
            Example { title: "Class 55 on 100 m²", pairs: &[("load", "area"), ("area", "100 m²")] },
            Example {
                title: "Half a tonne of inch washers, 8 µm",
                pairs: &[
                    ("load", "weight"),
                    ("part", "washer"),
                    ("thread", "1/2-13 UNC"),
                    ("weight", "500 kg"),
                    ("asked", "thickness"),
                    ("coat", "8 µm"),
                ],
            },
            Example {
                title: "Nuts with a height of their own, a deposit weighed in the shop",
                pairs: &[
                    ("part", "hex-nut"),
                    ("thread", "M16"),
                    ("sizes", "m = 13 mm"),
                    ("density", "own"),
                    ("own_density", "5.6 g/cm³"),
                    ("barrel", "20 ft³"),
                    ("barrel_by", "total"),
                ],
            },
            Example {
                title: "Structural bolts too heavy for the barrel",
                pairs: &[
                    ("part", "structural-bolt"),
                    ("thread", "1-8 UNC"),
                    ("length", "4 in"),
                    ("pieces", "300"),
                    ("class", "80"),
                ],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
            let stated = load::read(reader);
            reader.choice("asked", |key| Some(key == "class"));
            let class = reader.choice("class", |key| {
                astm_b695::CLASSES.iter().find(|class| class.name.strip_prefix("class ") == Some(key))
            });
            let class = class.and_then(|class| class.single.map(|limit| (class, limit)));
            let coat = class.map(|(_, limit)| limit.thickness).or_else(|| reader.quantity("coat"));
            let own = reader.quantity::<Density>("own_density");
            let density = reader.choice("density", |key| {
                Some(match key {
                    "light" => Some((DEPOSIT.min, Some(DEPOSIT.source))),
                    "heavy" => Some((DEPOSIT.max, Some(DEPOSIT.source_max))),
                    _ => None,
                })
            });
            let yielded = reader.quantity::<PlainNumber>("yield");
            let flash = reader.quantity("flash");
            let solid_share = reader.quantity::<PlainNumber>("solid");
            let bead_ratio = reader.quantity::<PlainNumber>("beads");
            let additions = reader.count("additions");
            let volume = reader.quantity::<Volume>("barrel");
            let by_total = reader.choice("barrel_by", |key| Some(key == "total"));
            let diameter = reader.quantity("diameter");
            Some(Input {
                stated: stated?,
                coat: coat?,
                class: class.map(|(class, limit)| (class.name, class.source(&limit))),
                deposit: density?.or_else(|| Some((own?, None)))?,
                yielded: yielded?.one(),
                flash: flash?,
                solid_share: solid_share?.one(),
                bead_ratio: bead_ratio?.one(),
                additions,
                barrel: volume.zip(by_total),
                diameter,
            })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let load = input.stated.load();
        let charge = |deposit| barrel::charge(load.area, input.coat, deposit, input.yielded, input.flash);
        let additions = match input.additions {
            Some(own) => (own, None),
            None => {
                let (number, source) = barrel::usual_additions(input.coat)
                    .map_err(|refusal| Problem::refused("additions", "Additions", refusal))?;
                (number, Some(source))
            }
        };
        let bulk = load.solid.map(|solid| {
            let parts = barrel::bulk_volume(solid, input.solid_share);
            (parts, parts * input.bead_ratio)
        });
        let working_volume = input.barrel.map(|(volume, is_total)| {
            let (min, max) = if is_total { practice::WORKING_SHARE.value } else { (1.0, 1.0) };
            (volume * min, volume * max)
        });
        let loads = bulk
            .zip(working_volume)
            .map(|((parts, _), (min, max))| (barrel::loads(parts, max), barrel::loads(parts, min)));
        Ok(Outcome {
            load,
            charge: charge(input.deposit.0),
            charge_range: (charge(DEPOSIT.min), charge(DEPOSIT.max)),
            additions,
            coats: barrel::coat_after_each(input.coat, additions.0).collect(),
            bulk,
            working_volume,
            loads,
            turns: input.diameter.map(barrel::turns_a_minute),
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        explain::report(input, outcome)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::part::STEEL;

    /// The choices of the form and the classes of the table are the same.
    #[test]
    fn every_class_is_offered() {
        let offered: Vec<String> = CLASSES.iter().map(|choice| format!("class {}", choice.key)).collect();
        let listed: Vec<&str> = astm_b695::CLASSES.iter().map(|class| class.name).collect();
        assert_eq!(offered, listed);
    }

    /// The default share of steel in a heap is the published load of a barrel.
    #[test]
    fn the_default_share_is_the_published_load() {
        assert!((barrel::usual_solid_share(STEEL.value) - 0.204).abs() < 5e-4);
    }
}
