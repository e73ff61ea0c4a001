//! What is asked, and how it is read and written.

use super::{Input, Known};
use crate::calculator::steel_fields::{self, DIAMETER, GRADE, WORKED};
use crate::calculator::{
    Bound, Choice, Example, Field, FieldAbout, HARDNESS as TABULATED, Missed, Reader, Writer, choices,
    chosen_by_key,
};
use crate::process::Process;
use crate::quantity::{Hardness, Shown, Stress, Unit, unit};
use crate::rule::Cleaning;
use crate::steel::Worked;

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 9] = [
    KNOWN.about,
    GRADE.when(&KNOWN, &[KnownBy::Grade.key()]).about,
    DIAMETER
        .hint("Some grades ask for another hardness above a certain size.")
        .when(&KNOWN, &[KnownBy::Grade.key()])
        .about,
    HARDNESS.about,
    TENSILE.about,
    CASE.about,
    COLD.about,
    PROCESS.about,
    CLEANING.about,
];

choices! {
    /// How the steel is known.
    enum KnownBy {
        Grade: "grade", "Grade or property class";
        Hardness: "hardness", "Hardness";
        Tensile: "tensile", "Tensile strength";
    }
}

const KNOWN: Field<KnownBy> =
    Field::choice("known", "Steel known by", KnownBy::CHOICES, KnownBy::Grade.key());

pub(super) const HARDNESS: Field<Hardness> = Field::quantity(
    "hardness",
    "Maximum hardness",
    &SCALES,
    TABULATED,
    "39 HRC",
)
.hint(
    "The hardest reading of the lot, or the greatest that is allowed; of the surface if it is case-hardened.",
)
.when(&KNOWN, &[KnownBy::Hardness.key()]);

pub(super) const TENSILE: Field<Stress> = Field::quantity(
    "tensile",
    "Maximum tensile strength",
    &STRESSES,
    Bound::Between(
        Shown { number: 255.0, unit: &unit::MPA, decimals: 0 },
        Shown { number: 2180.0, unit: &unit::MPA, decimals: 0 },
        "the range of the conversion table of ISO 18265",
    ),
    "1100 MPa",
)
.when(&KNOWN, &[KnownBy::Tensile.key()]);

const CASE: Field<bool> = Field::yes_no("case", "Case-hardened")
    .hint("A surface hardened apart from its core, as on many tapping screws.");

const COLD: Field<Worked> = Field::choice("cold", "Worked after heat treatment", WORKED, "no")
    .hint("Ground, or bent as hooks, eyes, U-bolts.");

const PROCESS: Field<Process> = Field::choice("process", "Process", &PROCESSES, Process::HotDip.key())
    .hint("The other two are judged beside it.");

const CLEANING: Field<Cleaning> = Field::choice("cleaning", "Cleaning before the zinc", CLEANINGS, "acid");

chosen_by_key!(Process, Self::from_key);

static PROCESSES: [Choice; 3] = [
    Choice::new(Process::HotDip.key(), "Hot-dip (kettle)"),
    Choice::new(Process::Mechanical.key(), "Mechanical (barrel)"),
    Choice::new(Process::Electroplated.key(), "Electroplating (cell)"),
];

choices! {
    const CLEANINGS: Cleaning {
        Acid: "acid", "Acid pickle";
        InhibitedAcid: "inhibited", "Inhibited acid, short";
        Alkaline: "alkaline", "Alkaline, without cathodic current";
        Mechanical: "mechanical", "Mechanical (blast), at most a flash pickle";
    }
}

static SCALES: [&Unit; 4] = [&unit::HRC, &unit::HV, &unit::HB, &unit::HRB];
static STRESSES: [&Unit; 2] = [&unit::MPA, &unit::KSI];

/// Worked examples.
pub(super) static EXAMPLES: [Example; 8] = [
    Example { title: "A class 10.9 bolt for the kettle", pairs: &[("grade", "10.9"), ("diameter", "20 mm")] },
    Example {
        title: "A grade 8 bolt, electroplated",
        pairs: &[("grade", "j429-8"), ("diameter", "3/4 in"), ("process", "cell")],
    },
    Example {
        title: "A structural bolt that takes no coat of zinc",
        pairs: &[("grade", "a490"), ("diameter", "1 in"), ("process", "barrel")],
    },
    Example {
        title: "A socket screw in the barrel",
        pairs: &[("grade", "a574"), ("diameter", "10 mm"), ("process", "barrel"), ("cleaning", "inhibited")],
    },
    Example {
        title: "A lot known by its hardness, blasted",
        pairs: &[("known", "hardness"), ("hardness", "36.5 HRC"), ("cleaning", "mechanical")],
    },
    Example {
        title: "A case-hardened tapping screw",
        pairs: &[("known", "hardness"), ("hardness", "450 HV"), ("case", "yes")],
    },
    Example {
        title: "A mild steel U-bolt, bent cold",
        pairs: &[("known", "tensile"), ("tensile", "420 MPa"), ("cold", "yes")],
    },
    Example {
        title: "A hard spring ring, electroplated",
        pairs: &[("known", "hardness"), ("hardness", "52 HRC"), ("process", "cell")],
    },
];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let steel = match reader.get(&KNOWN) {
        Ok(KnownBy::Grade) => {
            steel_fields::read_grade(reader).map(|(grade, diameter)| Known::Grade(grade, diameter))
        }
        Ok(KnownBy::Hardness) => reader.get(&HARDNESS).map(Known::Hardness),
        Ok(KnownBy::Tensile) => reader.get(&TENSILE).map(Known::Tensile),
        Err(missed) => Err(missed),
    };
    let (case_hardened, worked) = (reader.get(&CASE), reader.get(&COLD));
    let (process, cleaning) = (reader.get(&PROCESS), reader.get(&CLEANING));
    Ok(Input {
        steel: steel?,
        case_hardened: case_hardened?,
        worked: worked?,
        process: process?,
        cleaning: cleaning?,
    })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    write_steel(input.steel, writer);
    writer.put(&CASE, input.case_hardened);
    writer.put(&COLD, input.worked);
    writer.put(&PROCESS, input.process);
    writer.put(&CLEANING, input.cleaning);
}

/// Writes how the steel is known.
pub(super) fn write_steel(steel: Known, writer: &mut Writer) {
    match steel {
        Known::Grade(grade, diameter) => {
            writer.put(&KNOWN, KnownBy::Grade);
            steel_fields::write_grade(grade, diameter, writer);
        }
        Known::Hardness(hardness) => {
            writer.put(&KNOWN, KnownBy::Hardness);
            writer.put(&HARDNESS, hardness);
        }
        Known::Tensile(tensile) => {
            writer.put(&KNOWN, KnownBy::Tensile);
            writer.put(&TENSILE, tensile);
        }
    }
}
