//! What is asked, and how it is read and written.

use std::borrow::Cow;

use super::{BoltSteel, Input, NutBody, NutSteel};
use crate::calculator::thread_fields::{self, Way};
use crate::calculator::{
    Bound, Choice, Example, Fault, Field, FieldAbout, FieldValue, HARDNESS, Missed, OrOwn, Reader, Writer,
    choices,
};
use crate::quantity::{Dimension, Hardness, Length, Quantity, Scale, Shown, Stress, Unit, unit};
use crate::steel::{Grade, Level};
use crate::thread::strength::nut_height::{self, Style};

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 13] = [
    thread_fields::THREAD.about,
    thread_fields::WAY.about,
    thread_fields::BOLT_CLASS_OVER.about,
    thread_fields::ALLOWANCE.about,
    thread_fields::OWN_ALLOWANCE.about,
    BOLT_GRADE.about,
    BOLT_TENSILE.about,
    NUT_GRADE.about,
    NUT_LEVEL.about,
    NUT_STYLE.about,
    NUT_HEIGHT.about,
    NUT_WIDTH.about,
    COUNTERSUNK.about,
];

/// The bolt's steel.
pub(super) const BOLT_GRADE: Field<OrOwn<Grade>> =
    Field::choice("bolt_grade", "Bolt", &BOLTS, "8.8").hint("At the minimum strength of its grade.");

const BOLT_TENSILE: Field<Stress> =
    Field::quantity("bolt_tensile", "Tensile strength of the bolt", &STRESSES, STRESS_BOUND, "800 MPa")
        .when(&BOLT_GRADE, &["own"]);

/// The nut's steel.
pub(super) const NUT_GRADE: Field<OrOwn<Grade>> = Field::choice("nut_grade", "Nut", &NUTS, "nut-8")
    .hint("At the minimum hardness of its grade, turned into a tensile strength by ISO 18265.");

const NUT_LEVEL: Field<Level> = Field::quantity(
    "nut_level",
    "Hardness or tensile strength of the nut",
    &LEVELS,
    Bound::Each(&LEVEL_BOUNDS),
    "200 HV",
)
.when(&NUT_GRADE, &["own"]);

choices! {
    /// Which height and width the nut has.
    pub(super) enum Height {
        Usual: "usual", "Usual: as the grade is made in this size";
        Iso4032: "iso4032", "ISO 4032, regular";
        Iso4033: "iso4033", "ISO 4033, high";
        Iso4035: "iso4035", "ISO 4035, thin";
        Hex: "hex", "ASME B18.2.2 hex (ASTM A563 hex)";
        Heavy: "heavy", "ASME B18.2.2 heavy hex (ASTM A563 heavy hex)";
        HeavyMetric: "heavy-metric", "ASME B18.2.4.6M heavy hex (ASTM A563M, EN 14399)";
        Own: "own", "Own height and width";
    }
}

/// The nut's body.
pub(super) const NUT_STYLE: Field<Height> =
    Field::choice("nut_style", "Height of the nut", Height::CHOICES, Height::Usual.key())
        .hint("The minimum height of the standard is taken.");

const NUT_HEIGHT: Field<Length> = Field::quantity("nut_height", "Own height", &LENGTHS, BODY_BOUND, "13 mm")
    .when(&NUT_STYLE, &[Height::Own.key()]);

const NUT_WIDTH: Field<Length> =
    Field::quantity("nut_width", "Own width across flats", &LENGTHS, BODY_BOUND, "24 mm")
        .when(&NUT_STYLE, &[Height::Own.key()]);

choices! {
    /// How many ends of the nut are countersunk.
    pub(super) enum Ends {
        Both: "2", "Both ends";
        One: "1", "One end";
        None: "0", "None";
    }
}

/// How many ends of the nut are countersunk.
pub(super) const COUNTERSUNK: Field<Ends> =
    Field::choice("countersunk", "Countersunk", Ends::CHOICES, Ends::Both.key())
        .hint("Each countersink takes 0.6 of its depth from the height that carries.")
        .source(nut_height::EFFECTIVE);

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

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let pair = thread_fields::read_pair(reader);
    let bolt = match reader.get(&BOLT_GRADE) {
        Ok(OrOwn::Published(grade)) => Ok(BoltSteel::Grade(grade)),
        Ok(OrOwn::Own) => reader.get(&BOLT_TENSILE).map(BoltSteel::Tensile),
        Err(missed) => Err(missed),
    };
    let nut = match reader.get(&NUT_GRADE) {
        Ok(OrOwn::Published(grade)) => Ok(NutSteel::Grade(grade)),
        Ok(OrOwn::Own) => reader.get(&NUT_LEVEL).map(NutSteel::Level),
        Err(missed) => Err(missed),
    };
    let body = read_body(reader);
    let ends = reader.get(&COUNTERSUNK);
    let thread_fields::Pair { thread, bolt_class, allowance, .. } = pair?;
    let input = Input {
        thread,
        bolt_class,
        allowance,
        bolt: bolt?,
        nut: nut?,
        body: NutBody::Style(Style::Iso4032),
        countersunk_ends: match ends? {
            Ends::Both => 2,
            Ends::One => 1,
            Ends::None => 0,
        },
    };
    let body = body?.unwrap_or_else(|| NutBody::Style(input.usual_style()));
    Ok(Input { body, ..input })
}

/// The body that was chosen; `None` for the usual one.
fn read_body(reader: &mut Reader<'_>) -> Result<Option<NutBody>, Missed> {
    let style = match reader.get(&NUT_STYLE)? {
        Height::Own => {
            let (height, width) = (reader.get(&NUT_HEIGHT), reader.get(&NUT_WIDTH));
            return Ok(Some(NutBody::Own(height?, width?)));
        }
        Height::Usual => return Ok(None),
        Height::Iso4032 => Style::Iso4032,
        Height::Iso4033 => Style::Iso4033,
        Height::Hex => Style::Hex,
        Height::Heavy => Style::HeavyHex,
        Height::Iso4035 => Style::Iso4035,
        Height::HeavyMetric => Style::HeavyMetric,
    };
    Ok(Some(NutBody::Style(style)))
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    let Input { thread, bolt_class, allowance, .. } = *input;
    // A bolt cut under is written by its class.
    thread_fields::write_pair(&thread_fields::Pair { way: Way::Over, thread, bolt_class, allowance }, writer);
    match input.bolt {
        BoltSteel::Grade(grade) => writer.put(&BOLT_GRADE, OrOwn::Published(grade)),
        BoltSteel::Tensile(tensile) => {
            writer.put(&BOLT_GRADE, OrOwn::Own);
            writer.put(&BOLT_TENSILE, tensile);
        }
    }
    match input.nut {
        NutSteel::Grade(grade) => writer.put(&NUT_GRADE, OrOwn::Published(grade)),
        NutSteel::Level(level) => {
            writer.put(&NUT_GRADE, OrOwn::Own);
            writer.put(&NUT_LEVEL, level);
        }
    }
    match input.body {
        NutBody::Style(style) => writer.put(
            &NUT_STYLE,
            match style {
                Style::Iso4032 => Height::Iso4032,
                Style::Iso4033 => Height::Iso4033,
                Style::Hex => Height::Hex,
                Style::HeavyHex => Height::Heavy,
                Style::Iso4035 => Height::Iso4035,
                Style::HeavyMetric => Height::HeavyMetric,
            },
        ),
        NutBody::Own(height, width) => {
            writer.put(&NUT_STYLE, Height::Own);
            writer.put(&NUT_HEIGHT, height);
            writer.put(&NUT_WIDTH, width);
        }
    }
    writer.put(
        &COUNTERSUNK,
        match input.countersunk_ends {
            0 => Ends::None,
            1 => Ends::One,
            _ => Ends::Both,
        },
    );
}

static STRESSES: [&Unit; 2] = [&unit::MPA, &unit::KSI];
static LEVELS: [&Unit; 5] = [&unit::HV, &unit::HRC, &unit::HB, &unit::MPA, &unit::KSI];
static LENGTHS: [&Unit; 2] = [&unit::MM, &unit::INCH];

const STRESS_BOUND: Bound = Bound::Between(
    Shown { number: 200.0, unit: &unit::MPA, decimals: 0 },
    Shown { number: 2000.0, unit: &unit::MPA, decimals: 0 },
    "steel fasteners lie between",
);
static LEVEL_BOUNDS: [Bound; 2] = [STRESS_BOUND, HARDNESS];
const BODY_BOUND: Bound = Bound::PositiveTo(
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    Shown { number: 200.0, unit: &unit::MM, decimals: 0 },
    "no nut named here is larger",
);

/// A hardness on its scale, or a tensile strength.
impl FieldValue for Level {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        let (number, unit) = about.measured(text)?;
        if unit.dimension == Dimension::Stress {
            return Ok(Self::Tensile(Stress::of(number, unit)));
        }
        match Scale::of_unit(unit) {
            Some(scale) => Ok(Self::Hardness(Hardness { scale, number })),
            None => Hardness::read(text, about).map(Self::Hardness),
        }
    }

    fn write(&self, about: &FieldAbout) -> Cow<'static, str> {
        match self {
            Self::Hardness(hardness) => hardness.write(about),
            Self::Tensile(tensile) => tensile.write(about),
        }
    }
}

/// Grades of bolts, and the bolt's own strength.
static BOLTS: [Choice; count(false) + 1] = grades(false, Choice::new("own", "Own tensile strength"));

/// Grades of nuts, and the nut's own level.
static NUTS: [Choice; count(true) + 1] = grades(true, Choice::new("own", "Own hardness or tensile strength"));

const fn is_of(grade: Grade, nuts: bool) -> bool {
    grade.is_nut() == nuts && !grade.is_washer() && !grade.is_spring()
}

const fn count(nuts: bool) -> usize {
    let (mut at, mut count) = (0, 0);
    while at < Grade::ALL.len() {
        // In range by the loop's own condition; a const function cannot call `get`.
        #[allow(clippy::indexing_slicing)]
        if is_of(Grade::ALL[at], nuts) {
            count += 1;
        }
        at += 1;
    }
    count
}

const fn grades<const N: usize>(nuts: bool, own: Choice) -> [Choice; N] {
    let mut choices = [own; N];
    let (mut at, mut next) = (0, 0);
    while at < Grade::ALL.len() {
        // In range by the loop's own condition and by `count`.
        #[allow(clippy::indexing_slicing)]
        if is_of(Grade::ALL[at], nuts) {
            choices[next] = Choice::new(Grade::ALL[at].key(), Grade::ALL[at].name());
            next += 1;
        }
        at += 1;
    }
    choices
}
