//! What is asked, and how it is read and written.

use super::{Input, Method};
use crate::calculator::thread_fields;
use crate::calculator::{Bound, Example, Field, FieldAbout, Missed, Reader, Writer, Written, choices};
use crate::quantity::{Length, PlainNumber, Shown, Unit, unit};
use crate::table::iso_4042_threads::Column;
use crate::thread::Designation;
use crate::thread::coat_room::Coated;
use crate::thread::pair::INSIDE_SHARE;

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 7] = [
    thread_fields::THREAD.about,
    COAT.about,
    RULE.about,
    UNEVENNESS.about,
    COATED.about,
    INSIDE.about,
    MEASURED.about,
];

const COAT: Field<Written<Length>> = Field::quantity(
    "coat",
    "Coat that must fit",
    &COATS,
    Bound::PositiveTo(
        Shown { number: 0.01, unit: &unit::UM, decimals: 2 },
        Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
        "zinc coats on threads are far thinner; check the unit",
    ),
    "53 µm",
)
.hint("Its maximum thickness; by ISO 4042 its nominal thickness.");

choices! {
    /// By which rule it is judged whether a coat fits.
    pub enum JudgedBy {
        Corner: "corner", "Worst corner of bolt, coat and nut";
        Iso4042: "iso4042", "ISO 4042:1999, plated coats by deviation and length";
        Quarter: "quarter", "A quarter of the bolt's allowance (ASME B1.13M, ASTM F1941)";
    }
}

pub(super) const RULE: Field<JudgedBy> =
    Field::choice("rule", "Judged by", JudgedBy::CHOICES, JudgedBy::Corner.key());

const UNEVENNESS: Field<PlainNumber> = thread_fields::UNEVENNESS.when(&RULE, &[JudgedBy::Corner.key()]);

choices! {
    const WHICH_THREADS: Coated {
        Bolt: "bolt", "The bolt only; the nut is tapped after its coat";
        Shared: "shared", "Bolt and nut, less of it inside the nut (mechanical zinc)";
        Both: "both", "Bolt and nut alike";
    }
}

const COATED: Field<Coated> = Field::choice("coated", "Which threads carry it", WHICH_THREADS, "bolt")
    .when(&RULE, &[JudgedBy::Corner.key()]);

const INSIDE: Field<PlainNumber> = Field::quantity(
    "inside",
    "Share that reaches the inside of the nut",
    &SHARES,
    Bound::Between(
        Shown { number: 0.0, unit: &unit::PERCENT, decimals: 0 },
        Shown { number: 100.0, unit: &unit::PERCENT, decimals: 0 },
        "it is a share of the coat on the bolt, from none to all",
    ),
    "50 %",
)
.hint("Of the coat on the bolt; no measured figure was found, so give your own where you have one.")
.source(INSIDE_SHARE.source)
.when(&COATED, &["shared"]);

static SHARES: [&Unit; 1] = [&unit::PERCENT];

choices! {
    const COLUMNS: Column {
        Local: "local", "At one place, any length";
        UpTo5: "batch5", "Batch average, length up to 5 diameters";
        UpTo10: "batch10", "Batch average, length over 5 up to 10 diameters";
        UpTo15: "batch15", "Batch average, length over 10 up to 15 diameters";
    }
}

const MEASURED: Field<Column> =
    Field::choice("measured", "Thickness measured", COLUMNS, "local").when(&RULE, &[JudgedBy::Iso4042.key()]);

static COATS: [&Unit; 4] = [&unit::UM, &unit::MM, &unit::MIL, &unit::INCH];

/// Worked examples.
pub(super) static EXAMPLES: [Example; 6] = [
    Example {
        title: "Mechanical zinc of 53 µm on M12, nuts coated as well",
        pairs: &[("thread", "M12"), ("spread", "10"), ("coated", "shared")],
    },
    Example {
        title: "Plated 8 µm on M10 x 80 by ISO 4042",
        pairs: &[("thread", "M10"), ("coat", "8"), ("rule", "iso4042"), ("measured", "batch10")],
    },
    Example {
        title: "Plated 0.4 mil on 3/8-16 by the quarter rule",
        pairs: &[("thread", "3/8-16 UNC"), ("coat", "0.4 mil"), ("rule", "quarter")],
    },
    Example { title: "Hot-dip up to 100 µm on M20", pairs: &[("thread", "M20"), ("coat", "100")] },
    Example {
        title: "Hot-dip up to 4 mil on 1/2-13",
        pairs: &[("thread", "1/2-13 UNC"), ("coat", "4 mil"), ("spread", "10")],
    },
    Example {
        title: "A thin even coat that a stock bolt takes",
        pairs: &[("thread", "M16"), ("coat", "8"), ("spread", "0")],
    },
];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let (designation, coat) = (reader.get(&thread_fields::THREAD), reader.get(&COAT));
    let rule = match reader.get(&RULE)? {
        JudgedBy::Corner => {
            let (unevenness, coated) = (reader.get(&UNEVENNESS), reader.get(&COATED));
            let inside = reader.if_asked(&INSIDE);
            let inside = inside?.said().map_or(INSIDE_SHARE.value, PlainNumber::one);
            Method::Corner { unevenness: unevenness?.one(), coated: coated?, inside }
        }
        JudgedBy::Iso4042 => Method::Iso4042(reader.get(&MEASURED)?),
        JudgedBy::Quarter => Method::Quarter,
    };
    let Written { quantity: coat, unit: coat_unit } = coat?;
    Ok(Input { thread: designation?.thread, coat, coat_unit, rule })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    writer.put(&thread_fields::THREAD, Designation { thread: input.thread, class: None });
    writer.put(&COAT, Written { quantity: input.coat, unit: input.coat_unit });
    match input.rule {
        Method::Corner { unevenness, coated, inside } => {
            writer.put(&RULE, JudgedBy::Corner);
            writer.put(&UNEVENNESS, PlainNumber::from_one(unevenness));
            writer.put(&COATED, coated);
            if coated == Coated::Shared {
                writer.put(&INSIDE, PlainNumber::from_one(inside));
            }
        }
        Method::Iso4042(column) => {
            writer.put(&RULE, JudgedBy::Iso4042);
            writer.put(&MEASURED, column);
        }
        Method::Quarter => writer.put(&RULE, JudgedBy::Quarter),
    }
}
