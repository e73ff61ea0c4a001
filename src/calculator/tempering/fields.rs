//! What is asked, and how it is read and written.

use super::Input;
use crate::calculator::steel_fields::{self, AsWritten, DIAMETER, GRADE};
use crate::calculator::{Bound, Example, Field, FieldAbout, Missed, Reader, Writer, choices};
use crate::quantity::{Length, Shown, Temperature, Time, Unit, unit};
use crate::source::{common_practice, document};
use crate::steel::Grade;
use crate::steel::tempering::{self, Dip, Temper};

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 8] = [
    KNOWN.about,
    GRADE.when(&KNOWN, &[KnownBy::Grade.key()]).about,
    IF_KNOWN.about,
    DIAMETER
        .hint("Of the grade, if one is named; from M27 a class 10.9 bolt is kept out of the high-temperature bath.")
        .about,
    TEMPER.about,
    TEMPER_TIME.about,
    BATH.about,
    DIP.about,
];

choices! {
    /// How the steel is known.
    enum KnownBy {
        Grade: "grade", "Grade or property class";
        Temper: "temper", "Its actual temper";
    }
}

const KNOWN: Field<KnownBy> =
    Field::choice("known", "Steel known by", KnownBy::CHOICES, KnownBy::Grade.key());

/// The grade beside an actual temper; what a link says of the grade is kept, whichever way it is known.
const IF_KNOWN: Field<AsWritten> = Field::text("of_grade", "Grade, if it is known", "")
    .hint("With it the classes that a bath is closed to are judged as well.")
    .aliases(&["grade"])
    .when(&KNOWN, &[KnownBy::Temper.key()])
    .optional();

pub(super) const TEMPER: Field<Temperature> = Field::quantity(
    "temper",
    "Actual tempering temperature",
    &TEMPERATURES,
    Bound::Between(
        Shown { number: 150.0, unit: &unit::CELSIUS, decimals: 0 },
        Shown { number: 720.0, unit: &unit::CELSIUS, decimals: 0 },
        "steels for fasteners are tempered in this range",
    ),
    "",
)
.hint("From the maker's certificate. Left empty, the least of the grade's standard is taken.")
.optional();

const TEMPER_TIME: Field<Time> = Field::quantity(
    "temper_time",
    "Time of the temper",
    &TEMPER_TIMES,
    Bound::Between(
        Shown { number: 0.01, unit: &unit::HOUR, decimals: 2 },
        Shown { number: 48.0, unit: &unit::HOUR, decimals: 0 },
        "a temper lasts from a minute to two days",
    ),
    "1 h",
)
.hint("One hour is assumed where only the temperature is known.")
.source(tempering::ONE_HOUR_ASSUMED);

const BATH: Field<Temperature> = Field::quantity(
    "bath",
    "Temperature of the bath",
    &TEMPERATURES,
    Bound::Between(
        Shown { number: 420.0, unit: &unit::CELSIUS, decimals: 0 },
        Shown { number: 650.0, unit: &unit::CELSIUS, decimals: 0 },
        "zinc melts just below 420 °C, and no bath is run above 650 °C",
    ),
    "860 °F",
)
.hint("The usual bath is 860 °F, which is 460 °C.")
.source(common_practice("usual bath temperature"));

const DIP: Field<Time> = Field::quantity(
    "dip",
    "Time in the bath",
    &DIP_TIMES,
    Bound::Between(
        Shown { number: 0.05, unit: &unit::MINUTE, decimals: 2 },
        Shown { number: 60.0, unit: &unit::MINUTE, decimals: 0 },
        "fasteners stay in the zinc for minutes",
    ),
    "5 min",
)
.hint("The whole time in the zinc; the part is taken to be as hot as the bath all along.")
.source(document::GALVANIZING_TEXT.memory("1.5 to 5 min for spun fasteners"));

static TEMPERATURES: [&Unit; 2] = [&unit::CELSIUS, &unit::FAHRENHEIT];
static TEMPER_TIMES: [&Unit; 2] = [&unit::HOUR, &unit::MINUTE];
static DIP_TIMES: [&Unit; 2] = [&unit::MINUTE, &unit::SECOND];

/// Worked examples.
pub(super) static EXAMPLES: [Example; 9] = [
    Example { title: "A class 10.9 bolt at the least temper of its class", pairs: &[("bath", "860 °F")] },
    Example { title: "465 °C for 5 min is like one hour at 425 °C", pairs: &[("bath", "465 °C")] },
    Example {
        title: "A socket screw",
        pairs: &[("grade", "a574"), ("diameter", "10 mm"), ("bath", "860 °F")],
    },
    Example {
        title: "A stud for heat",
        pairs: &[("grade", "a193-b7"), ("diameter", "3/4 in"), ("bath", "860 °F")],
    },
    Example {
        title: "A large class 10.9 bolt in a high-temperature bath",
        pairs: &[("grade", "10.9"), ("diameter", "30 mm"), ("bath", "545 °C"), ("dip", "3 min")],
    },
    Example {
        title: "A structural bolt that is not hot-dipped at all",
        pairs: &[("grade", "a490"), ("diameter", "1 in")],
    },
    Example {
        title: "A class 10.9 bolt with its certificate",
        pairs: &[("grade", "10.9"), ("temper", "500 °C"), ("temper_time", "90 min"), ("bath", "455 °C")],
    },
    Example {
        title: "A steel known by its temper only",
        pairs: &[("known", "temper"), ("temper", "450 °C"), ("bath", "460 °C"), ("dip", "3 min")],
    },
    Example { title: "A bolt that is not tempered", pairs: &[("grade", "4.6")] },
];

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let known = reader.get(&KNOWN);
    let grade = match known {
        Ok(KnownBy::Grade) => steel_fields::read_grade(reader).map(Some),
        Ok(KnownBy::Temper) => match reader.optional(&IF_KNOWN) {
            Ok(Some(AsWritten(grade))) => reader.get(&DIAMETER).map(|diameter| Some((grade, diameter))),
            read => read.map(|_| None),
        },
        Err(missed) => Err(missed),
    };
    let temper = match known {
        Ok(KnownBy::Temper) => reader.get(&TEMPER).map(Some),
        _ => reader.optional(&TEMPER),
    };
    let (time, bath, dip) = (reader.get(&TEMPER_TIME), reader.get(&BATH), reader.get(&DIP));
    let time = time?;
    Ok(Input {
        grade: grade?,
        temper: temper?.map(|temperature| Temper::actual(temperature, time)),
        bath: bath?,
        dip: dip?,
    })
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    write_steel(input.grade, writer);
    write_dip(&Dip { grade: None, temper: input.temper, bath: input.bath, time: input.dip }, writer);
}

/// Writes the temper and the dip.
pub(super) fn write_dip(dip: &Dip, writer: &mut Writer) {
    writer.put_optional(&TEMPER, dip.temper.map(|temper| temper.temperature));
    if let Some(temper) = dip.temper {
        writer.put(&TEMPER_TIME, temper.time);
    }
    writer.put(&BATH, dip.bath);
    writer.put(&DIP, dip.time);
}

/// Writes how the steel is known.
pub(super) fn write_steel(grade: Option<(Grade, Length)>, writer: &mut Writer) {
    match grade {
        Some((grade, diameter)) => {
            writer.put(&KNOWN, KnownBy::Grade);
            steel_fields::write_grade(grade, diameter, writer);
        }
        None => writer.put(&KNOWN, KnownBy::Temper),
    }
}
