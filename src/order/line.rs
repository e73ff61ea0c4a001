//! The order line: its fields, and what they say together.

use super::asked::{self, Asked};
use crate::calculator::{About, Bound, Choice, Draft, Example, Fault, Field, Problem, Problems, Reader};
use crate::part;
use crate::quantity::{Hardness, Length, Shown, Temperature, Time, Unit, unit};
use crate::site::Category;
use crate::source::common_practice;
use crate::steel::{Grade, State, Steel};
use crate::thread::{Designation, Thread, ToleranceClass};

/// An order line, typed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OrderLine {
    /// What kind of part.
    pub part: part::Kind,
    /// Its thread; for a washer, the thread it goes on.
    pub thread: Thread,
    /// The class of the thread, if it was written.
    pub class: Option<ToleranceClass>,
    /// Length, for what has one.
    pub length: Option<Length>,
    /// Number of pieces.
    pub quantity: u32,
    /// The steel.
    pub steel: State,
    /// The temperature it was tempered at, if known.
    pub temper: Option<Temperature>,
    /// Where it will stand.
    pub place: Category,
    /// Years wanted, if anybody said.
    pub years: Option<Time>,
    /// The class asked for; `None` asks for advice.
    pub asked: Option<&'static Asked>,
    /// Temperature of the zinc in the kettle.
    pub bath: Temperature,
}

#[allow(
    clippy::indexing_slicing,
    reason = "evaluated when it is compiled: a place beyond the end is no build"
)]
static GRADES: [Choice; Grade::ALL.len() + 1] = {
    let mut choices = [Choice::new("hardness", "By its hardness"); Grade::ALL.len() + 1];
    let mut at = 0;
    while at < Grade::ALL.len() {
        choices[at] = Choice::new(Grade::ALL[at].key(), Grade::ALL[at].name());
        at += 1;
    }
    choices
};

#[allow(
    clippy::indexing_slicing,
    reason = "evaluated when it is compiled: a place beyond the end is no build"
)]
static PARTS: [Choice; part::Kind::ALL.len()] = {
    let mut choices = [Choice::new("", ""); part::Kind::ALL.len()];
    let mut at = 0;
    while at < part::Kind::ALL.len() {
        choices[at] = Choice::new(part::Kind::ALL[at].key(), part::Kind::ALL[at].name());
        at += 1;
    }
    choices
};

static PLACES: [Choice; 6] = [
    Choice::new("C1", "C1, very low: heated rooms"),
    Choice::new("C2", "C2, low: unheated rooms, clean country air"),
    Choice::new("C3", "C3, medium: towns, little salt"),
    Choice::new("C4", "C4, high: industry, coast with moderate salt"),
    Choice::new("C5", "C5, very high: heavy industry, coast with much salt"),
    Choice::new("CX", "CX, extreme: spray, hot and salt"),
];

static YES_NO: [Choice; 2] = [Choice::new("no", "No"), Choice::new("yes", "Yes")];
static LENGTHS: [&Unit; 4] = [&unit::MM, &unit::INCH, &unit::M, &unit::FOOT];
static HARDNESS: [&Unit; 3] = [&unit::HRC, &unit::HV, &unit::HB];
static TEMPERATURES: [&Unit; 2] = [&unit::CELSIUS, &unit::FAHRENHEIT];
static YEARS: [&Unit; 1] = [&unit::YEAR];

const fn mm(number: f64) -> Shown {
    Shown { number, unit: &unit::MM, decimals: 0 }
}

const fn celsius(number: f64) -> Shown {
    Shown { number, unit: &unit::CELSIUS, decimals: 0 }
}

/// The fields of an order line.
pub static FIELDS: [Field; 13] = [
    Field::choice("part", "Part", &PARTS, "hex-bolt"),
    Field::text("thread", "Thread", "M20").hint("As written on the order: M20, M16x1.5-6g, 5/8-11 UNC-2A."),
    Field::quantity(
        "length",
        "Length",
        &LENGTHS,
        Bound::PositiveTo(mm(6000.0), "longer bars are cut before they are coated"),
        "90 mm",
    )
    .when("part", &["hex-bolt", "hex-screw", "structural-bolt", "socket-screw", "rod"])
    .hint("Under the head; of a rod, over all."),
    Field::count("quantity", "Quantity", 1, 100_000_000, "1200").hint("Pieces."),
    Field::choice("steel", "Steel", &GRADES, "10.9"),
    Field::quantity(
        "hardness",
        "Hardness",
        &HARDNESS,
        Bound::PositiveTo(
            Shown { number: 1000.0, unit: &unit::HV, decimals: 0 },
            "no fastener steel is that hard; check the scale",
        ),
        "35 HRC",
    )
    .when("steel", &["hardness"])
    .hint("The hardest of the part, or the greatest that is allowed."),
    Field::choice("case", "Case-hardened", &YES_NO, "no")
        .hint("A hard skin over a softer core, as on self-drilling screws."),
    Field::choice("cold", "Formed cold after heat treatment", &YES_NO, "no")
        .hint("Bent or rolled after hardening."),
    Field::quantity(
        "temper",
        "Tempered at",
        &TEMPERATURES,
        Bound::Between(celsius(100.0), celsius(750.0), "steel is tempered between these"),
        "",
    )
    .optional()
    .hint("From the mill's certificate; empty takes the least of the standard."),
    Field::choice("place", "Place", &PLACES, "C4").hint("Corrosivity of the air (ISO 9223)."),
    Field::quantity(
        "years",
        "Years wanted",
        &YEARS,
        Bound::PositiveTo(
            Shown { number: 200.0, unit: &unit::YEAR, decimals: 0 },
            "no table of zinc loss reaches so far",
        ),
        "12 years",
    )
    .optional()
    .hint("Until the zinc is used up; empty asks for none."),
    Field::choice("asked", "Asked for", asked::CHOICES, "advise"),
    Field::quantity(
        "bath",
        "Zinc bath",
        &TEMPERATURES,
        Bound::Between(celsius(420.0), celsius(650.0), "zinc melts at 420 °C, and no kettle runs hotter"),
        "860 °F",
    )
    .source(common_practice("860 °F is usual")),
];

/// The order line described like a calculator: the same form, link and examples.
pub static ABOUT: About = About {
    id: "order",
    title: "Order line",
    answers: "Says which zinc finish suits an order line, which does not, and exactly why.",
    fields: &FIELDS,
    examples: &[
        Example { title: "Footbridge railing, class 10.9 bolts near the coast", pairs: &[] },
        Example {
            title: "Pump skid, socket screws of alloy steel",
            pairs: &[
                ("part", "socket-screw"),
                ("thread", "M10"),
                ("length", "40 mm"),
                ("quantity", "400"),
                ("steel", "a574"),
                ("place", "C3"),
                ("years", "10 years"),
            ],
        },
        Example {
            title: "Pipe rack, inch studs of B7",
            pairs: &[
                ("part", "rod"),
                ("thread", "5/8-11 UNC-2A"),
                ("length", "4 in"),
                ("quantity", "2400"),
                ("steel", "a193-b7"),
                ("place", "C5"),
                ("years", "15 years"),
            ],
        },
        Example {
            title: "Roof clips, flat washers",
            pairs: &[
                ("part", "washer"),
                ("thread", "M12"),
                ("quantity", "20000"),
                ("steel", "4.6"),
                ("place", "C3"),
                ("years", "15 years"),
                ("asked", "b695-55"),
            ],
        },
        Example {
            title: "Switch cabinet, small screws indoors",
            pairs: &[
                ("part", "hex-screw"),
                ("thread", "M6"),
                ("length", "20 mm"),
                ("quantity", "5000"),
                ("steel", "8.8"),
                ("place", "C1"),
                ("years", "20 years"),
            ],
        },
        Example {
            title: "Crane rail, class 12.9",
            pairs: &[
                ("thread", "M24"),
                ("length", "120 mm"),
                ("quantity", "96"),
                ("steel", "12.9"),
                ("place", "C3"),
            ],
        },
    ],
};

/// Reads an order line.
///
/// # Errors
/// All the problems of its fields at once.
pub fn read(draft: &Draft) -> Result<OrderLine, Problems> {
    let mut reader = Reader::new(&FIELDS, draft);
    let line = typed(&mut reader);
    reader.finish(line)
}

fn typed(reader: &mut Reader<'_>) -> Option<OrderLine> {
    let part = reader.choice("part", part::Kind::from_key);
    let designation = reader.parsed("thread", Designation::read);
    let length = reader.quantity::<Length>("length");
    let quantity = reader.count("quantity");
    let grade = reader.choice("steel", |key| match key {
        "hardness" => Some(None),
        _ => Grade::of_key(key).map(Some),
    });
    let hardness = reader.hardness("hardness");
    let yes = |key: &str| Some(key == "yes");
    let (case_hardened, cold_worked) = (reader.choice("case", yes), reader.choice("cold", yes));
    let temper = reader.quantity::<Temperature>("temper");
    let place = reader.choice("place", Category::read);
    let years = reader.quantity::<Time>("years");
    let asked = reader.choice("asked", |key| match key {
        "advise" => Some(None),
        _ => asked::from_key(key).map(Some),
    });
    let bath = reader.quantity::<Temperature>("bath");
    let thread = designation?.thread;
    if designation?.class.is_some_and(|class| class.is_bolt() == part.is_some_and(part::Kind::is_nut)) {
        reader.problem("thread", Fault::Conflict(
            "the class belongs to the other half of the pair: bolts take 6g, 8g or 2A, nuts take 6H or 2B".to_owned(),
        ));
        return None;
    }
    let steel = steel(reader, grade?, hardness, thread.diameter())?;
    Some(OrderLine {
        part: part?,
        thread,
        class: designation?.class,
        length,
        quantity: quantity?,
        steel: State { steel, case_hardened: case_hardened?, cold_worked: cold_worked? },
        temper,
        place: place?,
        years,
        asked: asked?,
        bath: bath?,
    })
}

/// The steel; a grade that its standard does not have in this size is a problem of the field.
fn steel(
    reader: &mut Reader<'_>,
    grade: Option<Grade>,
    hardness: Option<Hardness>,
    diameter: Length,
) -> Option<Steel> {
    let Some(grade) = grade else { return hardness.map(Steel::Hardness) };
    match Steel::grade(grade, diameter) {
        Ok(steel) => Some(steel),
        Err(refusal) => {
            reader.problem("steel", Problem::refused("steel", "Steel", refusal).fault);
            None
        }
    }
}
