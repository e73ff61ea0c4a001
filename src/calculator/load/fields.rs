//! What is asked of a load, and how it is read and written.

use super::{Body, Known, Piece, Stated, Trial};
use crate::calculator::{
    Bound, Choice, Fault, Field, Missed, RawText, Reader, Writer, Written, choices, chosen_by_key,
};
use crate::part::{self, Kind, Shape, ShapeError};
use crate::quantity::{Area, Density, Length, Mass, PlainNumber, Quantity, Shown, Unit, unit};
use crate::rule::Case;
use crate::thread::Designation;

choices! {
    /// How a load is stated.
    pub enum StatedBy {
        Count: "count", "Part and number of pieces";
        Weight: "weight", "Part and weight";
        Area: "area", "Area";
        /// Nobody knows the shape; it is measured.
        Measured: "measured", "Weight, and a size of the parts by calliper";
        /// Nobody knows the shape; a trial is weighed.
        Trial: "trial", "Weight, and a trial stripped or coated and weighed";
    }
}

choices! {
    /// What parts of unknown shape come nearest to.
    pub enum Nearest {
        Round: "round", "Round: bars, pins, shanks";
        Flat: "flat", "Flat: plates, clips, stampings";
    }
}

/// How the load is stated.
pub const LOAD: Field<StatedBy> =
    Field::choice("load", "Load stated by", StatedBy::CHOICES, StatedBy::Count.key()).hint(
        "A bucket of unknown parts: weigh it, then measure one, or strip or coat a few and weigh them.",
    );
/// The kind of part.
pub const PART: Field<Kind> = Field::choice("part", "Part", &KINDS, "hex-bolt").when(&LOAD, KNOWN);
/// Its thread.
pub const THREAD: Field<Designation> =
    Field::text("thread", "Thread", "M12").hint("M12, M16x1.5, 5/8-11 UNC.").when(&LOAD, KNOWN);
/// Its length.
pub const LENGTH: Field<Written<Length>> = Field::quantity("length", "Length", &LENGTHS, LONGEST, "50 mm")
    .hint("Under the head; of a rod, the whole length.")
    .when(&PART, Kind::KEYS_WITH_LENGTH);
/// Sizes that differ from the standard's.
pub const SIZES: Field<RawText> = Field::text("sizes", "Own sizes", "")
    .hint("Only where the part is not standard: k = 11 mm; s = 25. The sizes in use are listed below.")
    .when(&LOAD, KNOWN)
    .optional();
/// The number of pieces.
pub const PIECES: Field<u32> =
    Field::count("pieces", "Pieces", 1, 100_000_000, "4000").when(&LOAD, &["count"]);
/// The weight of the load.
pub const WEIGHT: Field<Written<Mass>> = Field::quantity("weight", "Weight", &MASSES, HEAVIEST, "500 kg")
    .when(&LOAD, &["weight", "measured", "trial"]);
/// The area of the load.
pub const AREA: Field<Written<Area>> =
    Field::quantity("area", "Area", &AREAS, LARGEST, "100 m²").when(&LOAD, &["area"]);
/// The weight of a load stated by its area.
pub const AREA_WEIGHT: Field<Written<Mass>> =
    Field::quantity("area_weight", "Weight of the load, if known", &MASSES, HEAVIEST, "")
        .hint("Without it there is no volume of parts, and so no beads, barrels or baskets.")
        .when(&LOAD, &["area"])
        .optional();
/// What the parts come nearest to.
pub const NEAREST: Field<Nearest> =
    Field::choice("nearest", "The parts are", Nearest::CHOICES, Nearest::Round.key())
        .when(&LOAD, &["measured"]);
/// Their diameter.
pub const DIAMETER: Field<Written<Length>> = Field::quantity("bar", "Diameter", &SIZES_OF, THICK, "8 mm")
    .hint("Measure a few with a calliper; of a threaded part the outside.")
    .when(&NEAREST, &["round"]);
/// How much of their length is threaded.
pub const THREADED: Field<PlainNumber> = Field::quantity(
    "threaded",
    "Threaded part of the length",
    &SHARES,
    Bound::Between(
        Shown { number: 0.0, unit: &unit::PERCENT, decimals: 0 },
        Shown { number: 100.0, unit: &unit::PERCENT, decimals: 0 },
        "a part of the whole length",
    ),
    "0 %",
)
.when(&NEAREST, &["round"]);
/// Their thickness.
pub const FLAT: Field<Written<Length>> =
    Field::quantity("plate", "Thickness", &SIZES_OF, THICK, "3 mm").when(&NEAREST, &["flat"]);
/// Weight of the parts of a trial.
pub const TRIAL_PARTS: Field<Written<Mass>> =
    Field::quantity("trial_parts", "Weight of the parts of the trial", &SMALL, TRIAL, "2000 g")
        .hint("Some pieces like those of the load, without a coat.")
        .when(&LOAD, &["trial"]);
/// Zinc on them.
pub const TRIAL_ZINC: Field<Written<Mass>> =
    Field::quantity("trial_zinc", "Zinc on them", &SMALL, TRIAL, "40 g")
        .hint("What they gained in coating, or lost in stripping.")
        .when(&LOAD, &["trial"]);
/// The coat on them.
pub const TRIAL_COAT: Field<Written<Length>> = Field::quantity(
    "trial_coat",
    "Mean coat on them, by gauge",
    &COATS,
    Bound::PositiveTo(
        Shown { number: 0.1, unit: &unit::UM, decimals: 1 },
        Shown { number: 500.0, unit: &unit::UM, decimals: 0 },
        "coats on fasteners are far thinner; check the unit",
    ),
    "50 µm",
)
.when(&LOAD, &["trial"]);

const KNOWN: &[&str] = &["count", "weight"];

const LONGEST: Bound = Bound::PositiveTo(
    Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
    Shown { number: 6.0, unit: &unit::M, decimals: 0 },
    "longer rods are not coated whole; check the unit",
);
const HEAVIEST: Bound = Bound::PositiveTo(
    Shown { number: 1.0, unit: &unit::G, decimals: 0 },
    Shown { number: 1000.0, unit: &unit::TONNE, decimals: 0 },
    "that is more than any plant coats in a day; check the unit",
);
const LARGEST: Bound = Bound::PositiveTo(
    Shown { number: 1.0, unit: &unit::CM2, decimals: 0 },
    Shown { number: 100_000.0, unit: &unit::M2, decimals: 0 },
    "that is more than any plant coats in a day; check the unit",
);
const THINNEST: Shown = Shown { number: 0.5, unit: &unit::MM, decimals: 1 };
const THICK: Bound = Bound::Between(
    THINNEST,
    Shown { number: 200.0, unit: &unit::MM, decimals: 0 },
    "fasteners are no thinner and no thicker; check the unit",
);
const TRIAL: Bound = Bound::PositiveTo(
    Shown { number: 0.01, unit: &unit::G, decimals: 2 },
    Shown { number: 100.0, unit: &unit::KG, decimals: 0 },
    "a trial is a few pieces; check the unit",
);

static LENGTHS: [&Unit; 3] = [&unit::MM, &unit::INCH, &unit::M];
static SIZES_OF: [&Unit; 2] = [&unit::MM, &unit::INCH];
static MASSES: [&Unit; 3] = [&unit::KG, &unit::LB, &unit::TONNE];
static SMALL: [&Unit; 4] = [&unit::G, &unit::KG, &unit::OZ, &unit::LB];
static AREAS: [&Unit; 3] = [&unit::M2, &unit::FT2, &unit::CM2];
static COATS: [&Unit; 3] = [&unit::UM, &unit::MIL, &unit::INCH];
static SHARES: [&Unit; 1] = [&unit::PERCENT];

#[allow(
    clippy::indexing_slicing,
    reason = "evaluated when it is compiled: a place beyond the end is no build"
)]
static KINDS: [Choice; Kind::ALL.len()] = {
    let mut choices = [Choice::new("", ""); Kind::ALL.len()];
    let mut at = 0;
    while at < Kind::ALL.len() {
        choices[at] = Choice::new(Kind::ALL[at].key(), Kind::ALL[at].name());
        at += 1;
    }
    choices
};

chosen_by_key!(Kind, Self::from_key);

/// Reads the fields of a load; `deposit` is what a coat weighs, for a trial.
pub fn read(reader: &mut Reader<'_>, deposit: Known<Density>) -> Result<Stated, Missed> {
    // Every field is read before any answer is missed, so that all problems are told at once.
    let stated = match reader.get(&LOAD)? {
        StatedBy::Count => {
            let (piece, pieces) = (read_piece(reader), reader.get(&PIECES));
            Stated::Count(piece?, pieces?)
        }
        StatedBy::Weight => {
            let (piece, weight) = (read_piece(reader), reader.get(&WEIGHT));
            Stated::Weight(piece?, weight?)
        }
        StatedBy::Area => {
            let (area, weight) = (reader.get(&AREA), reader.optional(&AREA_WEIGHT));
            Stated::Area(area?, weight?)
        }
        StatedBy::Measured => {
            let (body, weight) = (read_body(reader), reader.get(&WEIGHT));
            Stated::Measured(body?, weight?)
        }
        StatedBy::Trial => {
            let (parts, zinc) = (reader.get(&TRIAL_PARTS), reader.get(&TRIAL_ZINC));
            let (coat, weight) = (reader.get(&TRIAL_COAT), reader.get(&WEIGHT));
            let trial = Trial { parts: parts?, zinc: zinc?, coat: coat?, deposit };
            Stated::Trial(trial, weight?)
        }
    };
    not_thinner_than_a_fastener(within_a_plant(stated, reader)?, reader)
}

/// Refuses a weight with more area than a wire of the thinnest fastener has, threaded all along: one of the two
/// weights is in another unit.
fn not_thinner_than_a_fastener(stated: Stated, reader: &mut Reader<'_>) -> Result<Stated, Missed> {
    let field = match stated {
        Stated::Area(..) => &AREA_WEIGHT,
        Stated::Trial(..) => &TRIAL_ZINC,
        Stated::Count(..) | Stated::Weight(..) | Stated::Measured(..) => return Ok(stated),
    };
    let load = stated.load();
    let wire = Body::Round(
        Written { quantity: Length::from_mm(THINNEST.number), unit: &unit::MM },
        PlainNumber::from_percent(100.0),
    );
    let most = wire.area_of_a_kilogram();
    match load.mass.map(|mass| load.area / mass.kg()).filter(|area| area.exceeds(most)) {
        None => Ok(stated),
        Some(area) => Err(reader.wrong(
            field,
            Fault::TooLarge {
                value: area.show(&unit::M2, 2),
                max: most.show(&unit::M2, 2),
                why: "no fastener is so thin that a kilogram has more area; check the units",
                meant: None,
            },
        )),
    }
}

/// Refuses a load that is more than any plant coats in a day.
fn within_a_plant(stated: Stated, reader: &mut Reader<'_>) -> Result<Stated, Missed> {
    let load = stated.load();
    let too_large = |value: Shown, max: Shown| {
        let why = "that is more than any plant coats in a day; check the numbers of the load";
        Fault::TooLarge { value, max, why, meant: None }
    };
    let fault = match (load.mass, load.area) {
        (Some(mass), _) if mass > Mass::from_tonne(1000.0) => {
            too_large(mass.show(&unit::TONNE, 0), Mass::from_tonne(1000.0).show(&unit::TONNE, 0))
        }
        (_, area) if area > Area::from_m2(100_000.0) => {
            too_large(area.show(&unit::M2, 0), Area::from_m2(100_000.0).show(&unit::M2, 0))
        }
        _ => return Ok(stated),
    };
    Err(match stated {
        Stated::Count(..) => reader.wrong(&PIECES, fault),
        Stated::Area(..) => reader.wrong(&AREA, fault),
        Stated::Trial(..) => reader.wrong(&TRIAL_ZINC, fault),
        Stated::Weight(..) | Stated::Measured(..) => reader.wrong(&WEIGHT, fault),
    })
}

fn read_body(reader: &mut Reader<'_>) -> Result<Body, Missed> {
    match reader.get(&NEAREST)? {
        Nearest::Round => {
            let (diameter, threaded) = (reader.get(&DIAMETER), reader.get(&THREADED));
            Ok(Body::Round(diameter?, threaded?))
        }
        Nearest::Flat => reader.get(&FLAT).map(Body::Flat),
    }
}

fn read_piece(reader: &mut Reader<'_>) -> Result<Piece, Missed> {
    let (kind, designation) = (reader.get(&PART), reader.get(&THREAD));
    let (length, sizes) = (reader.if_asked(&LENGTH), reader.optional(&SIZES));
    let (kind, designation, length) = (kind?, designation?, length?.said());
    let sizes = sizes?.map(|sizes| sizes.0).unwrap_or_default();
    let shape = part::shape(kind, designation.thread, length.map(|length| length.quantity), &sizes);
    let shape = shape.map_err(|why| match why {
        ShapeError::Refused(refusal) => reader.wrong(&PART, Fault::Refused(refusal)),
        // Without own sizes only the length can be wrong: shorter than the point of the thread.
        ShapeError::Own(unsound) if sizes.is_empty() => {
            reader.wrong(&LENGTH, Fault::Conflict(unsound.to_string()))
        }
        ShapeError::Own(why) => reader.wrong(&SIZES, Fault::NotUnderstood(why.to_string())),
    })?;
    let shape = sane(shape).map_err(|fault| reader.wrong(&SIZES, fault))?;
    Ok(Piece { kind, designation, length, sizes, shape })
}

/// Refuses own sizes that no part has.
fn sane(shape: Shape) -> Result<Shape, Fault> {
    let max = Length::from_m(6.0);
    let too_long = shape.dimensions().into_iter().find(|own| own.size.length > max);
    match too_long {
        Some(own) => Err(Fault::TooLarge {
            value: own.size.length.show(&unit::MM, 0),
            max: max.show(&unit::MM, 0),
            why: "longer parts are not coated whole; check the unit",
            meant: None,
        }),
        None => Ok(shape),
    }
}

/// Writes the fields of a load.
pub fn write(stated: &Stated, writer: &mut Writer) {
    match stated {
        Stated::Count(piece, pieces) => {
            writer.put(&LOAD, StatedBy::Count);
            write_piece(piece, writer);
            writer.put(&PIECES, *pieces);
        }
        Stated::Weight(piece, weight) => {
            writer.put(&LOAD, StatedBy::Weight);
            write_piece(piece, writer);
            writer.put(&WEIGHT, *weight);
        }
        Stated::Area(area, weight) => {
            writer.put(&LOAD, StatedBy::Area);
            writer.put(&AREA, *area);
            writer.put_optional(&AREA_WEIGHT, *weight);
        }
        Stated::Measured(body, weight) => {
            writer.put(&LOAD, StatedBy::Measured);
            match body {
                Body::Round(diameter, threaded) => {
                    writer.put(&NEAREST, Nearest::Round);
                    writer.put(&DIAMETER, *diameter);
                    writer.put(&THREADED, *threaded);
                }
                Body::Flat(thickness) => {
                    writer.put(&NEAREST, Nearest::Flat);
                    writer.put(&FLAT, *thickness);
                }
            }
            writer.put(&WEIGHT, *weight);
        }
        Stated::Trial(trial, weight) => {
            writer.put(&LOAD, StatedBy::Trial);
            writer.put(&TRIAL_PARTS, trial.parts);
            writer.put(&TRIAL_ZINC, trial.zinc);
            writer.put(&TRIAL_COAT, trial.coat);
            writer.put(&WEIGHT, *weight);
        }
    }
}

/// Fills the fields from the part of a case: so many pieces, where anybody said how many.
pub fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
    let part = case.part?;
    let thread = part.thread?;
    writer.put(&LOAD, StatedBy::Count);
    writer.put(&PART, part.kind);
    writer.put(&THREAD, Designation { thread, class: None });
    if let Some(pieces) = part.quantity {
        writer.put(&PIECES, pieces);
    }
    if let Some(length) = part.length.filter(|_| part.kind.has_length()) {
        let unit = if thread.is_metric() { &unit::MM } else { &unit::INCH };
        writer.put(&LENGTH, Written { quantity: length, unit });
    }
    Some(())
}

fn write_piece(piece: &Piece, writer: &mut Writer) {
    writer.put(&PART, piece.kind);
    writer.put(&THREAD, piece.designation);
    if let Some(length) = piece.length {
        writer.put(&LENGTH, length);
    }
    writer.put(&SIZES, RawText(piece.sizes.clone()));
}
