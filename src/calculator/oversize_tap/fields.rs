//! What is asked, and how it is read and written.

use super::{Input, Sizes};
use crate::calculator::thread_fields::{self, Pair};
use crate::calculator::{Bound, Example, Field, FieldAbout, Missed, Reader, Writer, choices};
use crate::quantity::{Length, Shown, Unit, unit};
use crate::thread::chance::SIGMAS;

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 12] = [
    thread_fields::THREAD.about,
    thread_fields::WAY.about,
    thread_fields::BOLT_CLASS_OVER.about,
    thread_fields::ALLOWANCE.about,
    thread_fields::OWN_ALLOWANCE.about,
    thread_fields::COAT_MIN.about,
    thread_fields::COAT_MAX.about,
    thread_fields::UNEVENNESS.about,
    SPREAD.about,
    BOLT_DEVIATION.about,
    NUT_DEVIATION.about,
    COAT_DEVIATION.about,
];

choices! {
    /// How the sizes of a lot are spread.
    enum Kind {
        Bell: "bell", "Like a bell over their limits";
        Even: "even", "Evenly over their limits";
        Own: "own", "By standard deviations of my own";
    }
}

const SPREAD: Field<Kind> =
    Field::choice("sizes", "Sizes and coat are spread", Kind::CHOICES, Kind::Bell.key())
        .hint("For the chance that a pair binds; the worst corner needs no spread.")
        .source(SIGMAS.source);

const BOLT_DEVIATION: Field<Length> = deviation("bolt_deviation", "Pitch diameters of the bolts", "0.02 mm");
const NUT_DEVIATION: Field<Length> = deviation("nut_deviation", "Pitch diameters of the nuts", "0.03 mm");
const COAT_DEVIATION: Field<Length> = deviation("coat_deviation", "Thicknesses of the coat", "5 µm");

const fn deviation(key: &'static str, label: &'static str, default: &'static str) -> Field<Length> {
    Field::quantity(
        key,
        label,
        &DEVIATIONS,
        Bound::ZeroTo(
            Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
            "no lot is spread so far; check the unit",
        ),
        default,
    )
    .hint("Its standard deviation, about the middle of the limits.")
    .when(&SPREAD, &["own"])
}

static DEVIATIONS: [&Unit; 4] = [&unit::MM, &unit::UM, &unit::INCH, &unit::MIL];

/// Worked examples.
pub(super) static EXAMPLES: [Example; 7] = [
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
        title: "How often a thick spun coat binds, by the spread of a lot",
        pairs: &[
            ("thread", "M16"),
            ("allowance", "az"),
            ("coat_least", "60"),
            ("coat_greatest", "110"),
            ("sizes", "own"),
            ("bolt_deviation", "20 µm"),
            ("nut_deviation", "25 µm"),
            ("coat_deviation", "8 µm"),
        ],
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
    let sizes = match reader.get(&SPREAD) {
        Ok(Kind::Bell) => Ok(Sizes::Bell),
        Ok(Kind::Even) => Ok(Sizes::Even),
        Ok(Kind::Own) => {
            let (bolt, nut) = (reader.get(&BOLT_DEVIATION), reader.get(&NUT_DEVIATION));
            let coat = reader.get(&COAT_DEVIATION);
            bolt.and_then(|bolt| Ok(Sizes::Own { bolt, nut: nut?, coat: coat? }))
        }
        Err(missed) => Err(missed),
    };
    let Pair { thread, way, bolt_class, allowance } = pair?;
    let (coat, coat_unit) = coat?;
    Ok(Input { thread, way, bolt_class, allowance, coat, coat_unit, sizes: sizes? })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    thread_fields::write_pair(&input.pair(), writer);
    thread_fields::write_coat(input.coat, input.coat_unit, writer);
    match input.sizes {
        // What is assumed is not written, so that a link stays as short as the answer it carries.
        Sizes::Bell => {}
        Sizes::Even => writer.put(&SPREAD, Kind::Even),
        Sizes::Own { bolt, nut, coat } => {
            writer.put(&SPREAD, Kind::Own);
            writer.put(&BOLT_DEVIATION, bolt);
            writer.put(&NUT_DEVIATION, nut);
            writer.put(&COAT_DEVIATION, coat);
        }
    }
}
