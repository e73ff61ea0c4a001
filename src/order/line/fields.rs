//! What an order line asks, field by field.
//!
//! What an order says (part, thread, steel, place …) starts empty and is asked for; only what the
//! method sets (the bath, a case as is usual for the part, not formed cold, nothing asked for) has a default.

use super::super::asked;
use crate::calculator::{About, Bound, Choice, Example, FieldAbout as Field};
use crate::part;
use crate::quantity::{Shown, Unit, unit};
use crate::source::common_practice;
use crate::steel::Grade;

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

/// How many grades are of nuts (`true`) or of washers.
#[allow(clippy::indexing_slicing, reason = "evaluated when it is compiled")]
const fn count(nuts: bool) -> usize {
    let (mut at, mut count) = (0, 0);
    while at < Grade::ALL.len() {
        if (nuts && Grade::ALL[at].is_nut()) || (!nuts && Grade::ALL[at].is_washer()) {
            count += 1;
        }
        at += 1;
    }
    count
}

#[allow(clippy::indexing_slicing, reason = "evaluated when it is compiled")]
const fn mates<const N: usize>(nuts: bool, none: &'static str, standard: &'static str) -> [Choice; N] {
    let mut choices = [Choice::new(NONE, none); N];
    choices[1] = Choice::new(STANDARD, standard);
    let (mut at, mut place) = (0, 2);
    while at < Grade::ALL.len() {
        let grade = Grade::ALL[at];
        if (nuts && grade.is_nut()) || (!nuts && grade.is_washer()) {
            choices[place] = Choice::new(grade.key(), grade.name());
            place += 1;
        }
        at += 1;
    }
    choices
}

/// The key of no nut, or no washer.
pub(super) const NONE: &str = "none";
/// The key of the nut or washer that the standards ask for.
pub(super) const STANDARD: &str = "standard";

static NUTS: [Choice; count(true) + 2] = mates(true, "Without a nut", "The nut that the standards ask for");
static WASHERS: [Choice; count(false) + 2] =
    mates(false, "Without a washer", "The washer that the standards ask for");
/// Keys of [`NUTS`] with a nut.
static WITH_NUT: [&str; count(true) + 1] = keys(&NUTS);
/// Keys of [`WASHERS`] with a washer.
static WITH_WASHER: [&str; count(false) + 1] = keys(&WASHERS);

#[allow(clippy::indexing_slicing, reason = "evaluated when it is compiled")]
const fn keys<const N: usize>(choices: &[Choice]) -> [&'static str; N] {
    let mut keys = [""; N];
    let mut at = 0;
    while at < N {
        keys[at] = choices[at + 1].key;
        at += 1;
    }
    keys
}

static PLACES: [Choice; 6] = [
    Choice::new("C1", "C1, very low: heated rooms"),
    Choice::new("C2", "C2, low: unheated rooms, clean country air"),
    Choice::new("C3", "C3, medium: towns, little salt"),
    Choice::new("C4", "C4, high: industry, coast with moderate salt"),
    Choice::new("C5", "C5, very high: heavy industry, coast with much salt"),
    Choice::new("CX", "CX, extreme: spray, hot and salt"),
];

static CASE: [Choice; 3] =
    [Choice::new("usual", "As usual"), Choice::new("no", "No"), Choice::new("yes", "Yes")];
static YES_NO: [Choice; 2] = [Choice::new("no", "No"), Choice::new("yes", "Yes")];
static LENGTHS: [&Unit; 4] = [&unit::MM, &unit::INCH, &unit::M, &unit::FOOT];
static ALLOWANCES: [&Unit; 4] = [&unit::UM, &unit::MM, &unit::INCH, &unit::MIL];
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
pub static FIELDS: [Field; 19] = [
    Field::choice("part", "Part", &PARTS, ""),
    Field::text("thread", "Thread", "").hint("As written on the order: M20, M16x1.5-6g, 5/8-11 UNC-2A."),
    Field::quantity(
        "length",
        "Length",
        &LENGTHS,
        Bound::PositiveTo(mm(6000.0), "longer bars are cut before they are coated"),
        "",
    )
    .when("part", part::Kind::KEYS_WITH_LENGTH)
    .hint("Under the head; of a rod, over all.")
    .optional(),
    Field::count("quantity", "Quantity", 1, 100_000_000, "").hint("Pieces.").optional(),
    Field::choice("steel", "Steel", &GRADES, "").optional(),
    Field::quantity(
        "hardness",
        "Hardness",
        &HARDNESS,
        Bound::PositiveTo(
            Shown { number: 1000.0, unit: &unit::HV, decimals: 0 },
            "no fastener steel is that hard; check the scale",
        ),
        "",
    )
    .when("steel", &["hardness"])
    .hint("The hardest of the part, or the greatest that is allowed."),
    Field::choice("case", "Case-hardened", &CASE, "usual")
        .hint("A hard skin over a softer core: tapping and drywall screws usually are."),
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
    Field::choice("nut", "Nut", &NUTS, NONE).when("part", part::Kind::KEYS_WITH_LENGTH),
    Field::text("nut_class", "Thread of the nut", "")
        .when("nut", &WITH_NUT)
        .hint("As written on the order: 6H, 6AZ, 2B.")
        .optional(),
    Field::count("nuts", "Nuts to a bolt", 1, 8, "1").when("nut", &WITH_NUT),
    Field::choice("washer", "Washer", &WASHERS, NONE).when("part", part::Kind::KEYS_WITH_LENGTH),
    Field::count("washers", "Washers to a bolt", 1, 8, "1").when("washer", &WITH_WASHER),
    Field::quantity(
        "own_allowance",
        "Own allowance of the nut",
        &ALLOWANCES,
        Bound::PositiveTo(mm(3.0), "more leaves no thread"),
        "",
    )
    .hint("On the diameter, over 6H or 2B; empty takes the published ones.")
    .optional(),
    Field::choice("place", "Place", &PLACES, "").hint("Corrosivity of the air (ISO 9223).").optional(),
    Field::quantity(
        "years",
        "Years wanted",
        &YEARS,
        Bound::PositiveTo(
            Shown { number: 200.0, unit: &unit::YEAR, decimals: 0 },
            "no table of zinc loss reaches so far",
        ),
        "",
    )
    .optional()
    .hint("Until the zinc is used up; empty asks for none."),
    Field::choice("asked", "Asked for", &asked::CHOICES, asked::ADVISE),
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
        Example {
            title: "Footbridge railing, class 10.9 bolts near the coast",
            pairs: &[
                ("part", "hex-bolt"),
                ("thread", "M20"),
                ("length", "90 mm"),
                ("quantity", "1200"),
                ("steel", "10.9"),
                ("place", "C4"),
                ("years", "12 years"),
            ],
        },
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
                ("part", "hex-bolt"),
                ("thread", "M24"),
                ("length", "120 mm"),
                ("quantity", "96"),
                ("steel", "12.9"),
                ("place", "C3"),
            ],
        },
    ],
};
