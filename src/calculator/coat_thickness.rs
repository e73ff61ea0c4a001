//! Coat thickness and mass: any way of stating a coat into all the others, and the classes it meets.

use super::{
    About, Bound, Calculator, Choice, Example, Fault, Field, Figure, Note, Problem, Reader, Report, Section,
};
use crate::coat::{Factor, ThicknessLimit, class};
use crate::quantity::{ArealMass, Density, Dimension, Length, Quantity, Shown, Unit, unit};
use crate::source::{Source, document};
use crate::working::Working;

/// The calculator.
#[derive(Debug)]
pub struct CoatThickness;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The coat, as thickness or as mass.
    pub coat: Stated,
    /// From thickness to mass: least and greatest; equal where there is one value.
    pub density: (Density, Density),
    /// Where the factor is published; `None` for the user's own.
    pub factor: Option<&'static Factor>,
}

/// A coat as it is stated.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stated {
    /// By thickness.
    Thickness(Length),
    /// By mass on an area.
    Mass(ArealMass),
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// Least and greatest thickness.
    pub thickness: (Length, Length),
    /// Least and greatest mass.
    pub mass: (ArealMass, ArealMass),
}

static THICKNESS_AND_MASS: [&Unit; 6] =
    [&unit::UM, &unit::MM, &unit::MIL, &unit::INCH, &unit::G_M2, &unit::OZ_FT2];

static FACTORS: [Choice; 6] = [
    Choice::new("a123", "ASTM A123, A153, F2329 (hot-dip): 7.067 g/m² per µm"),
    Choice::new("iso1461", "ISO 1461, ISO 10684 (hot-dip): 7.2 g/m² per µm"),
    Choice::new("a653", "Solid zinc, ASTM A653 (sheet, electroplate): 7.14 g/m² per µm"),
    Choice::new("deposit", "Mechanical deposit (porous): 5.41 to 5.71 g/m² per µm"),
    Choice::new("bs729", "BS 729 (older British practice): 7.0 g/m² per µm"),
    Choice::new("own", "Own value"),
];

static DENSITIES: [&Unit; 2] = [&unit::G_M2_UM, &unit::OZ_FT2_MIL];

static FIELDS: [Field; 3] = [
    Field::quantity(
        "coat",
        "Coat",
        &THICKNESS_AND_MASS,
        Bound::PositiveTo(
            Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
            "zinc coats on fasteners are far thinner; check the unit",
        ),
        "50 µm",
    )
    .hint("A thickness or a mass on an area, as your document states it."),
    Field::choice("factor", "Thickness to mass by", &FACTORS, "a123")
        .hint("The factor belongs to the standard or the process in hand."),
    Field::quantity(
        "own_factor",
        "Own factor",
        &DENSITIES,
        Bound::Between(
            Shown { number: 4.0, unit: &unit::G_M2_UM, decimals: 0 },
            Shown { number: 7.2, unit: &unit::G_M2_UM, decimals: 1 },
            "a deposit cannot be denser than zinc, and below 4 it is no coat",
        ),
        "7.14 g/m² per µm",
    )
    .when("factor", &["own"]),
];

impl Calculator for CoatThickness {
    const ABOUT: About = About {
        id: "coat",
        title: "Coat thickness and mass",
        answers: "Turns any way of stating a zinc coat into all the others, and says which classes it meets.",
        fields: &FIELDS,
        examples: &[
            Example { title: "Batch average of a spun hot-dip coat", pairs: &[("coat", "50 µm")] },
            Example { title: "A mass from an American drawing", pairs: &[("coat", "1.25 oz/ft²")] },
            Example {
                title: "A mechanical deposit, class 55",
                pairs: &[("coat", "53 µm"), ("factor", "deposit")],
            },
            Example {
                title: "A coat of solid zinc by its mass",
                pairs: &[("coat", "381 g/m²"), ("factor", "a653")],
            },
            Example {
                title: "A factor measured in the shop",
                pairs: &[("coat", "2.1 mil"), ("factor", "own"), ("own_factor", "0.47 oz/ft² per mil")],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Option<Input> {
        let coat = reader.number_and_unit("coat").map(|(number, unit)| match unit.dimension {
            Dimension::ArealMass => Stated::Mass(ArealMass::of(number, unit)),
            _ => Stated::Thickness(Length::of(number, unit)),
        });
        let factor = reader.choice("factor", |key| match key {
            "own" => Some(None),
            _ => Factor::from_key(key).map(Some),
        });
        let own = reader.quantity::<Density>("own_factor");
        let density = match factor? {
            Some(factor) => (factor.min, factor.max),
            None => (own?, own?),
        };
        Some(Input { coat: heavy_enough(reader, coat?)?, density, factor: factor? })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let (light, heavy) = input.density;
        Ok(match input.coat {
            Stated::Thickness(thickness) => {
                Outcome { thickness: (thickness, thickness), mass: (light * thickness, heavy * thickness) }
            }
            // The heavier the deposit, the thinner the same mass.
            Stated::Mass(mass) => Outcome { thickness: (mass / heavy, mass / light), mass: (mass, mass) },
        })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        let thickness = |unit, decimals| range("t", unit_name(unit), outcome.thickness, unit, decimals);
        let mass = |unit, decimals| range("m", unit_name(unit), outcome.mass, unit, decimals);
        let figures = vec![
            thickness(&unit::UM, 1),
            thickness(&unit::MIL, 3),
            thickness(&unit::MM, 4),
            thickness(&unit::INCH, 5),
            mass(&unit::G_M2, 1),
            mass(&unit::OZ_FT2, 3),
        ];
        let headline = match figures.as_slice() {
            [um, mil, _, _, g_m2, oz_ft2] => {
                format!("{} = {} = {} = {}", um.value, mil.value, g_m2.value, oz_ft2.value)
            }
            _ => String::new(),
        };
        Report {
            headline,
            figures,
            sections: classes(input, outcome),
            working: working(input, outcome),
            notes: vec![
                Note::plain(
                    "Limits are compared without rounding. A single value is one article or one place; \
                     the average is over the articles of a batch.",
                ),
                Note::sourced(
                    "The classes of ISO 12683 (mechanical zinc) were not found in a public copy; open the \
                     standard for them.",
                    document::ISO_12683.read("class table not seen"),
                ),
                Note::sourced(
                    "Class 80 of ASTM B695 is 80 µm in one listing and 81 µm in another.",
                    document::ASTM_B695.read("Table 1"),
                ),
            ],
            ..Report::default()
        }
    }
}

/// Beyond the greatest thickness a mass is refused as a thickness would be.
fn heavy_enough(reader: &mut Reader<'_>, coat: Stated) -> Option<Stated> {
    let max = ArealMass::from_g_m2(7200.0);
    match coat {
        Stated::Mass(mass) if mass > max => {
            reader.problem(
                "coat",
                Fault::TooLarge {
                    value: mass.show(&unit::G_M2, 0),
                    max: max.show(&unit::G_M2, 0),
                    why: "that would be a millimetre of zinc; check the unit",
                },
            );
            None
        }
        coat => Some(coat),
    }
}

fn unit_name(unit: &Unit) -> String {
    let what = if unit.dimension == Dimension::ArealMass { "Mass" } else { "Thickness" };
    format!("{what}, {}", unit.name)
}

/// A figure that is one number where both ends are the same.
fn range<Q: Quantity + PartialEq>(
    symbol: &'static str,
    name: String,
    (min, max): (Q, Q),
    unit: &'static Unit,
    decimals: u8,
) -> Figure {
    if min == max {
        Figure::one(symbol, name, min.show(unit, decimals))
    } else {
        Figure::range(symbol, name, min.show(unit, decimals), max.show(unit, decimals))
    }
}

fn working(input: &Input, outcome: &Outcome) -> Working {
    let (light, heavy) = input.density;
    let source = |published: fn(&Factor) -> Source| input.factor.map(published);
    let ends = [
        (light, source(|f| f.source), outcome.mass.0, outcome.thickness.1),
        (heavy, source(|f| f.source_max), outcome.mass.1, outcome.thickness.0),
    ];
    let ends = if light == heavy { ends.get(..1) } else { ends.get(..) };
    let mut working = Working::default();
    for &(density, published, mass, thickness) in ends.unwrap_or_default() {
        let k = density.show(&unit::G_M2_UM, 3);
        match input.coat {
            Stated::Thickness(thickness) => working
                .step(
                    "mass on the area: the factor times the thickness",
                    "m",
                    "k · t",
                    mass.show(&unit::G_M2, 1),
                    document::ARITHMETIC.computed("mass = density × thickness"),
                )
                .known("k", k, published)
                .given("t", thickness.show(&unit::UM, 2)),
            Stated::Mass(mass) => working
                .step(
                    "thickness: the mass on the area over the factor",
                    "t",
                    "m / k",
                    thickness.show(&unit::UM, 1),
                    document::ARITHMETIC.computed("thickness = mass / density"),
                )
                .given("m", mass.show(&unit::G_M2, 2))
                .known("k", k, published),
        };
    }
    working
        .step(
            "in thousandths of an inch",
            "t_mil",
            "t / 25.4",
            outcome.thickness.0.show(&unit::MIL, 3),
            document::ARITHMETIC.computed("1 mil = 25.4 µm exactly"),
        )
        .given("t", outcome.thickness.0.show(&unit::UM, 2));
    working
        .step(
            "in ounces on a square foot",
            "m_oz",
            "m / 305.1517",
            outcome.mass.0.show(&unit::OZ_FT2, 3),
            document::ARITHMETIC.computed("28.349523125 g / 0.09290304 m²"),
        )
        .given("m", outcome.mass.0.show(&unit::G_M2, 2));
    working
}

/// The classes of every standard, with what the coat is to each.
fn classes(input: &Input, outcome: &Outcome) -> Vec<Section> {
    let mut sections: Vec<Section> = Vec::new();
    for class in class::all() {
        let title = format!("{}, {}", class.document.name, class.process);
        let words = format!(
            "as a single value {}; as an average {}",
            judged(class.single.as_ref(), input, outcome, None),
            judged(class.average.as_ref(), input, outcome, class.average_max.as_ref()),
        );
        let limit = class.single.or(class.average);
        let mut figure = Figure::words(format!("{}: {}", class.name, class.applies), words);
        figure.source = limit.map(|limit| class.source(&limit));
        match sections.last_mut() {
            Some(last) if last.title == title => last.figures.push(figure),
            _ => sections.push(Section { title: title.into(), figures: vec![figure] }),
        }
    }
    sections
}

/// What the coat is to one limit, in words.
fn judged(
    limit: Option<&ThicknessLimit>,
    input: &Input,
    outcome: &Outcome,
    max: Option<&ThicknessLimit>,
) -> String {
    let Some(limit) = limit else { return "is not asked".to_owned() };
    // A coat stated by mass is compared with the mass that the standard prints, where it prints one.
    let by_mass = match input.coat {
        Stated::Mass(mass) => limit.is_met_by_mass(mass),
        Stated::Thickness(_) => None,
    };
    let met = by_mass.unwrap_or_else(|| limit.is_met_by(outcome.thickness.0));
    let min = match (by_mass, limit.mass) {
        (Some(_), Some(mass)) => mass.show(&unit::G_M2, 0),
        _ => limit.printed,
    };
    match max {
        Some(max) if met && outcome.thickness.1 > max.thickness => {
            format!("too thick (at most {})", max.printed)
        }
        _ if met => format!("met (least {min})"),
        _ => format!("short (least {min})"),
    }
}
