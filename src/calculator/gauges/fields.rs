//! What is asked, and how it is read and written.

use super::Input;
use crate::calculator::thread_fields;
use crate::calculator::{Bound, Example, Field, FieldAbout, Missed, Reader, Writer, choices};
use crate::quantity::{PlainNumber, Shown, Unit, unit};
use crate::thread::tap::Making;

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 8] = [
    thread_fields::THREAD.about,
    thread_fields::BOLT_CLASS.about,
    thread_fields::ALLOWANCE.about,
    thread_fields::OWN_ALLOWANCE.about,
    thread_fields::COAT_MIN.about,
    thread_fields::COAT_MAX.about,
    INSIDE.about,
    MAKING.about,
];

const INSIDE: Field<PlainNumber> = Field::quantity(
    "inside",
    "Share of it inside the nut",
    &SHARES,
    Bound::Between(
        Shown { number: 0.0, unit: &unit::PERCENT, decimals: 0 },
        Shown { number: 100.0, unit: &unit::PERCENT, decimals: 0 },
        "it is a share of the coat on the bolt, from none to all",
    ),
    "0 %",
)
.hint(
    "0 for a nut tapped after its coat, as for hot-dip; for a nut coated after tapping no figure was found.",
);

choices! {
    const MAKINGS: Making {
        Cut: "cut", "Cut";
        Formed: "formed", "Formed without chips";
    }
}

const MAKING: Field<Making> = Field::choice("making", "Thread of the nut", MAKINGS, "cut");

static SHARES: [&Unit; 1] = [&unit::PERCENT];

/// Worked examples.
pub(super) static EXAMPLES: [Example; 4] = [
    Example { title: "M16 hot-dip, nut 6AZ", pairs: &[("thread", "M16")] },
    Example {
        title: "1/2-13 UNC, nut tapped to ASTM A563: H number of the tap",
        pairs: &[("thread", "1/2-13 UNC-2A"), ("coat_least", "2 mil"), ("coat_greatest", "3 mil")],
    },
    Example {
        title: "M12 plated 5 to 8 µm, standard nut: 6h after the coat",
        pairs: &[("thread", "M12"), ("allowance", "standard"), ("coat_least", "5"), ("coat_greatest", "8")],
    },
    Example {
        title: "M6 nut coated 8 to 16 µm after it is formed",
        pairs: &[
            ("thread", "M6"),
            ("allowance", "standard"),
            ("coat_least", "8"),
            ("coat_greatest", "16"),
            ("inside", "100 %"),
            ("making", "formed"),
        ],
    },
];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let bolt = thread_fields::read_bolt(reader);
    let allowance = thread_fields::read_allowance(reader, bolt.map(|(thread, _)| thread));
    let coat = thread_fields::read_even_coat(reader);
    let (inside, making) = (reader.get(&INSIDE), reader.get(&MAKING));
    let ((thread, bolt_class), (coat, coat_unit)) = (bolt?, coat?);
    Ok(Input {
        thread,
        bolt_class,
        allowance: allowance?,
        coat,
        coat_unit,
        inside: inside?.one(),
        making: making?,
    })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    thread_fields::write_bolt(input.thread, input.bolt_class, writer);
    thread_fields::write_allowance(input.allowance, writer);
    thread_fields::write_even_coat(input.coat, input.coat_unit, writer);
    writer.put(&INSIDE, PlainNumber::from_one(input.inside));
    writer.put(&MAKING, input.making);
}
