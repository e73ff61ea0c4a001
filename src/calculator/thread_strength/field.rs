//! The fields of the strength, its worked examples, and how they are read.

use super::{BoltSteel, Input, NutBody, NutSteel};
use crate::calculator::{Bound, Choice, Example, FieldAbout as Field, HARDNESS, Reader, thread_fields};
use crate::quantity::{Dimension, Hardness, Length, Quantity, Scale, Shown, Stress, Unit, unit};
use crate::steel::{Grade, Level};
use crate::thread::Thread;
use crate::thread::strength::nut_height::{self, Style};

/// What is asked.
pub(super) static FIELDS: [Field; 13] = [
    thread_fields::THREAD.about,
    thread_fields::WAY.about,
    thread_fields::BOLT_CLASS_OVER.about,
    thread_fields::ALLOWANCE_OVER.about,
    thread_fields::OWN_ALLOWANCE.about,
    Field::choice("bolt_grade", "Bolt", &BOLTS, "8.8").hint("At the least strength of its grade."),
    Field::quantity("bolt_tensile", "Tensile strength of the bolt", &STRESSES, STRESS_BOUND, "800 MPa")
        .when("bolt_grade", &["own"]),
    Field::choice("nut_grade", "Nut", &NUTS, "nut-8")
        .hint("At the least hardness of its grade, turned into a tensile strength by ISO 18265."),
    Field::quantity(
        "nut_level",
        "Hardness or tensile strength of the nut",
        &LEVELS,
        Bound::Each(&LEVEL_BOUNDS),
        "200 HV",
    )
    .when("nut_grade", &["own"]),
    Field::choice("nut_style", "Height of the nut", &STYLES, "usual")
        .hint("The least height of the standard is taken."),
    Field::quantity("nut_height", "Own height", &LENGTHS, BODY_BOUND, "13 mm").when("nut_style", &["own"]),
    Field::quantity("nut_width", "Own width across flats", &LENGTHS, BODY_BOUND, "24 mm")
        .when("nut_style", &["own"]),
    Field::choice("countersunk", "Countersunk", &ENDS, "2")
        .hint("Each countersink takes 0.6 of its depth from the height that carries.")
        .source(nut_height::EFFECTIVE),
];

/// Worked examples.
pub(super) static EXAMPLES: [Example; 7] = [
    Example { title: "M16 bolt 8.8, nut of class 8 tapped to 6AZ", pairs: &[("thread", "M16")] },
    Example {
        title: "The same with a high nut of class 10",
        pairs: &[("thread", "M16"), ("nut_grade", "nut-10"), ("nut_style", "iso4033")],
    },
    Example {
        title: "M24 bolt 10.9, heavier coat, nut 6AX of class 10",
        pairs: &[("thread", "M24"), ("bolt_grade", "10.9"), ("nut_grade", "nut-10"), ("allowance", "ax")],
    },
    Example {
        title: "3/4-10 A325 bolt, DH heavy hex nut tapped to ASTM A563",
        pairs: &[("thread", "3/4-10 UNC-2A"), ("bolt_grade", "a325"), ("nut_grade", "a563-dh")],
    },
    Example {
        title: "M12 bolt 8.8 cut under, standard nut of class 8",
        pairs: &[("thread", "M12"), ("way", "under")],
    },
    Example {
        title: "1/2-13 bolt of grade 5, hex nut of known hardness",
        pairs: &[
            ("thread", "1/2-13 UNC"),
            ("bolt_grade", "j429-5"),
            ("nut_grade", "own"),
            ("nut_level", "24 HRC"),
            ("nut_style", "hex"),
        ],
    },
    Example {
        title: "M8 bolt, own nut without countersinks",
        pairs: &[
            ("thread", "M8"),
            ("bolt_grade", "own"),
            ("bolt_tensile", "850"),
            ("nut_style", "own"),
            ("nut_height", "8"),
            ("nut_width", "13"),
            ("countersunk", "0"),
        ],
    },
];

/// Reads the fields into a typed input.
pub(super) fn read(reader: &mut Reader<'_>) -> Option<Input> {
    let pair = thread_fields::read_pair(reader);
    let bolt_steel = read_bolt_steel(reader);
    let nut_steel = read_nut_steel(reader);
    let body = read_body(reader, pair.ok().map(|pair| pair.thread));
    let ends = reader.choice("countersunk", |key| key.parse::<u8>().ok());
    let thread_fields::Pair { thread, bolt_class, allowance, .. } = pair.ok()?;
    Some(Input {
        thread,
        bolt_class,
        allowance,
        bolt: bolt_steel?,
        nut: nut_steel?,
        body: body?,
        countersunk_ends: ends?,
    })
}

const fn of(grade: Grade) -> Choice {
    Choice::new(grade.key(), grade.name())
}

static BOLTS: [Choice; 23] = [
    of(Grade::Class4_6),
    of(Grade::Class4_8),
    of(Grade::Class5_6),
    of(Grade::Class5_8),
    of(Grade::Class6_8),
    of(Grade::Class8_8),
    of(Grade::Class9_8),
    of(Grade::Class10_9),
    of(Grade::Class12_9),
    of(Grade::J429Grade1),
    of(Grade::J429Grade2),
    of(Grade::J429Grade5),
    of(Grade::J429Grade5_2),
    of(Grade::J429Grade8),
    of(Grade::J429Grade8_2),
    of(Grade::A307),
    of(Grade::A449),
    of(Grade::A354Bc),
    of(Grade::A354Bd),
    of(Grade::A325),
    of(Grade::A193B7),
    of(Grade::A574),
    Choice::new("own", "Own tensile strength"),
];

static NUTS: [Choice; 8] = [
    of(Grade::Nut5),
    of(Grade::Nut6),
    of(Grade::Nut8),
    of(Grade::Nut10),
    of(Grade::Nut12),
    of(Grade::A563Dh),
    of(Grade::A194Grade2H),
    Choice::new("own", "Own hardness or tensile strength"),
];

static STYLES: [Choice; 6] = [
    Choice::new("usual", "Usual: ISO 4032, or heavy hex for an inch thread"),
    Choice::new("iso4032", "ISO 4032, regular"),
    Choice::new("iso4033", "ISO 4033, high"),
    Choice::new("hex", "ASME B18.2.2 hex (ASTM A563 hex)"),
    Choice::new("heavy", "ASME B18.2.2 heavy hex (ASTM A563 heavy hex)"),
    Choice::new("own", "Own height and width"),
];

static ENDS: [Choice; 3] =
    [Choice::new("2", "Both ends"), Choice::new("1", "One end"), Choice::new("0", "None")];

static STRESSES: [&Unit; 2] = [&unit::MPA, &unit::KSI];
static LEVELS: [&Unit; 5] = [&unit::HV, &unit::HRC, &unit::HB, &unit::MPA, &unit::KSI];
static LENGTHS: [&Unit; 2] = [&unit::MM, &unit::INCH];

const STRESS_BOUND: Bound = Bound::Between(
    Shown { number: 200.0, unit: &unit::MPA, decimals: 0 },
    Shown { number: 2000.0, unit: &unit::MPA, decimals: 0 },
    "steel fasteners lie between",
);
static LEVEL_BOUNDS: [Bound; 2] = [STRESS_BOUND, HARDNESS];
const BODY_BOUND: Bound =
    Bound::PositiveTo(Shown { number: 200.0, unit: &unit::MM, decimals: 0 }, "no nut named here is larger");

fn read_bolt_steel(reader: &mut Reader<'_>) -> Option<BoltSteel> {
    let own = reader.quantity::<Stress>("bolt_tensile");
    reader
        .choice("bolt_grade", |key| if key == "own" { Some(None) } else { Grade::of_key(key).map(Some) })?
        .map_or_else(|| own.map(BoltSteel::Tensile), |grade| Some(BoltSteel::Grade(grade)))
}

fn read_nut_steel(reader: &mut Reader<'_>) -> Option<NutSteel> {
    let own = reader.number_and_unit("nut_level").and_then(|(number, unit)| {
        if unit.dimension == Dimension::Stress {
            return Some(NutSteel::Level(Level::Tensile(Stress::of(number, unit))));
        }
        Some(NutSteel::Level(Level::Hardness(Hardness { scale: Scale::of_unit(unit)?, number })))
    });
    reader
        .choice("nut_grade", |key| if key == "own" { Some(None) } else { Grade::of_key(key).map(Some) })?
        .map_or(own, |grade| Some(NutSteel::Grade(grade)))
}

fn read_body(reader: &mut Reader<'_>, thread: Option<Thread>) -> Option<NutBody> {
    let height = reader.quantity::<Length>("nut_height");
    let width = reader.quantity::<Length>("nut_width");
    let key = reader.choice("nut_style", |key| STYLES.iter().map(|c| c.key).find(|known| *known == key))?;
    let style = match key {
        "own" => return Some(NutBody::Own(height?, width?)),
        "iso4032" => Style::Iso4032,
        "iso4033" => Style::Iso4033,
        "hex" => Style::Hex,
        "heavy" => Style::HeavyHex,
        _ if thread?.is_metric() => Style::Iso4032,
        _ => Style::HeavyHex,
    };
    Some(NutBody::Style(style))
}
