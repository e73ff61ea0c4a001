//! What is asked, and how it is read and written.

use super::Input;
use crate::calculator::thread_fields::{self, Pair};
use crate::calculator::{Example, FieldAbout, Missed, Reader, Writer};

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 8] = [
    thread_fields::THREAD.about,
    thread_fields::WAY.about,
    thread_fields::BOLT_CLASS_OVER.about,
    thread_fields::ALLOWANCE_OVER.about,
    thread_fields::OWN_ALLOWANCE.about,
    thread_fields::COAT_MIN.about,
    thread_fields::COAT_MAX.about,
    thread_fields::UNEVENNESS.about,
];

/// Worked examples.
pub(super) static EXAMPLES: [Example; 6] = [
    Example {
        title: "M16 bolt 6g, spun hot-dip, nut 6AZ",
        pairs: &[("thread", "M16"), ("bolt_class", "6g"), ("allowance", "az")],
    },
    Example {
        title: "1/2-13 UNC bolt 2A, hot-dip, nut tapped to ASTM A563",
        pairs: &[
            ("thread", "1/2-13 UNC-2A"),
            ("allowance", "a563"),
            ("coat_least", "2 mil"),
            ("coat_greatest", "3 mil"),
        ],
    },
    Example { title: "M12 bolt cut under for a standard nut", pairs: &[("thread", "M12"), ("way", "under")] },
    Example {
        title: "M20 bolt 6g, heavy coat that is not spun, nut 6AX",
        pairs: &[("thread", "M20"), ("allowance", "ax"), ("coat_least", "70"), ("coat_greatest", "100")],
    },
    Example {
        title: "Mechanical zinc on M10, own allowance",
        pairs: &[
            ("thread", "M10"),
            ("allowance", "own"),
            ("own_allowance", "0.2 mm"),
            ("coat_least", "40"),
            ("coat_greatest", "50"),
            ("spread", "10"),
        ],
    },
    Example {
        title: "An even coat too thick for a standard nut",
        pairs: &[
            ("thread", "M16"),
            ("allowance", "standard"),
            ("coat_least", "8"),
            ("coat_greatest", "12"),
            ("spread", "0"),
        ],
    },
];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let (pair, coat) = (thread_fields::read_pair(reader), thread_fields::read_coat(reader));
    let Pair { thread, way, bolt_class, allowance } = pair?;
    let (coat, coat_unit) = coat?;
    Ok(Input { thread, way, bolt_class, allowance, coat, coat_unit })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    thread_fields::write_pair(&input.pair(), writer);
    thread_fields::write_coat(input.coat, input.coat_unit, writer);
}
