//! What is asked for a charge of the barrel, and how it is read and written.

use std::borrow::Cow;

use super::{DensityOf, Input, Pass, WantedCoat};
use crate::calculator::load::{Known, fields as load};
use crate::calculator::steel_fields::{AsWritten, STEEL};
use crate::calculator::{
    Bound, Choice, Fault, Field, FieldAbout, FieldValue, Missed, RawText, Reader, Writer, Written, choices,
};
use crate::coat::barrel::target::{USUAL_CHANCE, USUAL_SCATTER};
use crate::coat::factor::DEPOSIT;
use crate::coat::{CoatClass, Process, barrel, factor};
use crate::lot::{Comma, Reading, Readings};
use crate::quantity::{Area, Density, Length, PlainNumber, Shown, Unit, Volume, unit};
use crate::rule::Case;
use crate::table::{astm_b602_sampling, astm_b695, mechanical_process as practice};

mod plan;

pub use plan::Finish;

/// What is asked.
pub(super) static FIELDS: [FieldAbout; 42] = [
    load::LOAD.about,
    load::PART.about,
    load::THREAD.about,
    load::LENGTH.about,
    load::PIECES.about,
    load::WEIGHT.about,
    load::AREA.about,
    load::AREA_WEIGHT.about,
    load::SIZES.about,
    load::NEAREST.about,
    load::DIAMETER.about,
    load::THREADED.about,
    load::FLAT.about,
    load::TRIAL_PARTS.about,
    load::TRIAL_ZINC.about,
    load::TRIAL_COAT.about,
    GRADE.about,
    ASKED.about,
    CLASS.about,
    LEAST.about,
    COAT.about,
    CHECKS.about,
    CHANCE.about,
    SCATTER.about,
    EARLIER.about,
    CHARGED.about,
    DENSITY.about,
    OWN_DENSITY.about,
    YIELD.about,
    FLASH.about,
    SOLID.about,
    BEADS.about,
    ADDITIONS.about,
    BARREL.about,
    BARREL_BY.about,
    BARREL_DIAMETER.about,
    plan::PROMOTER.about,
    plan::SPACING.about,
    plan::TUMBLE.about,
    plan::START.about,
    plan::FINISH.about,
    plan::PATCH.about,
];

choices! {
    /// How the coat is asked for.
    enum WantedBy {
        Class: "class", "Class of ASTM B695";
        Least: "least", "Least of every place";
        Mean: "thickness", "Mean of the load, as it is";
    }
}
choices! {
    /// Density of the deposit.
    enum Densities {
        Heavy: "heavy", "80 % of solid zinc, 5.71 g/cm³: the safe end";
        Light: "light", "0.45 oz/ft² per mil, 5.41 g/cm³";
        Own: "own", "Own value";
    }
}
choices! {
    /// What the volume of a barrel is.
    pub enum BarrelBy {
        Working: "working", "Working volume";
        Total: "total", "Total volume";
    }
}
pub(super) const GRADE: Field<AsWritten> =
    STEEL.hint("class 8.8, 10.9, grade 5, A325 …; for cleaning and embrittlement.");
const ASKED: Field<WantedBy> =
    Field::choice("asked", "Coat asked by", WantedBy::CHOICES, WantedBy::Class.key())
        .hint("A class is the least of every place: more is weighed in, so that the readings of a lot pass.");
const CLASS: Field<Class> = Field::choice("class", "Class", &CLASSES, "55").when(&ASKED, &["class"]);
const LEAST: Field<Written<Length>> =
    Field::quantity("least", "Least of every place", &MICRONS, COATS, "50 µm").when(&ASKED, &["least"]);
const COAT: Field<Written<Length>> =
    Field::quantity("coat", "Mean coat", &MICRONS, COATS, "53 µm").when(&ASKED, &["thickness"]);
const CHECKS: Field<u32> = Field::count("checks", "Readings that all have to reach it", 1, 1000, "8")
    .hint("Readings of the acceptance: one low one fails the lot, so more of them ask for a thicker mean.")
    .source(astm_b602_sampling::NUMBERS)
    .when(&ASKED, LEAST_KNOWN);
const CHANCE: Field<PlainNumber> = Field::quantity(
    "chance",
    "Chance that the lot passes",
    &PER_CENT,
    Bound::Between(
        percent(50.0),
        Shown { number: 99.9, unit: &unit::PERCENT, decimals: 1 },
        "less is no chance to plan for, and nothing is certain",
    ),
    "95 %",
)
.source(USUAL_CHANCE.source)
.when(&ASKED, LEAST_KNOWN);
pub(super) const SCATTER: Field<PlainNumber> = Field::quantity(
    "scatter",
    "Scatter of single readings",
    &PER_CENT,
    Bound::Between(percent(1.0), percent(40.0), "no barrel is more even, and one less even is to be mended first"),
    "",
)
.hint("Standard deviation of single readings for their mean. Empty: that of the earlier load, else 10 %, an assumption.")
.source(USUAL_SCATTER.source)
.optional();
const EARLIER: Field<RawText> = Field::readings("earlier", "Readings on an earlier load", &MICRONS, "")
    .hint("Single readings on significant surfaces of a load like this one, for the scatter of your shop.")
    .optional();
pub(super) const CHARGED: Field<Written<Length>> =
    Field::quantity("charged", "Mean that the earlier load was charged for", &MICRONS, COATS, "")
        .hint("Then this load is corrected by what the earlier one came out at.")
        .optional();
const DENSITY: Field<Densities> =
    Field::choice("density", "Density of the deposit", Densities::CHOICES, Densities::Heavy.key())
        .hint("A mechanical deposit is porous: lighter than the zinc of a hot-dip coat.");
const OWN_DENSITY: Field<Density> = Field::quantity(
    "own_density",
    "Own density",
    &DEPOSITS,
    Bound::Between(
        Shown { number: 4.0, unit: &unit::G_CM3, decimals: 0 },
        Shown { number: 7.14, unit: &unit::G_CM3, decimals: 2 },
        "a deposit cannot be denser than zinc, and below 4 it is no coat",
    ),
    "5.5 g/cm³",
)
.when(&DENSITY, &["own"]);
const YIELD: Field<PlainNumber> = Field::quantity(
    "yield",
    "Yield of the powder",
    &SHARES,
    Bound::Between(percent(50.0), percent(100.0), "less than half on the parts is a fault to be found first"),
    "93 %",
)
.hint("Share of the powder weighed in that ends up on the parts.")
.source(practice::YIELD.source);
const FLASH: Field<Length> = Field::quantity(
    "flash",
    "Copper flash",
    &MICRONS,
    Bound::ZeroTo(
        Shown { number: 5.0, unit: &unit::UM, decimals: 0 },
        "a flash is far thinner; check the unit",
    ),
    "0.5 µm",
)
.hint("An assumption: no document states a thickness. Enter what your chemistry asks for.")
.source(barrel::COPPER_FLASH.source);
const SOLID: Field<PlainNumber> = Field::quantity(
    "solid",
    "Steel in a heap of the parts",
    &SHARES,
    Bound::Between(percent(5.0), percent(70.0), "no heap of fasteners is looser or denser"),
    "20.4 %",
)
.hint("Fill a measured bucket level and weigh it: kg over litres over 7.85 is the share.")
.source(barrel::USUAL_SOLID_SHARE_SOURCE);
const BEADS: Field<PlainNumber> = Field::quantity(
    "beads",
    "Beads to parts, by volume",
    &NUMBERS,
    Bound::Between(
        Shown { number: 0.5, unit: &unit::ONE, decimals: 1 },
        Shown { number: 3.0, unit: &unit::ONE, decimals: 0 },
        "practice runs from 1 to 2",
    ),
    "",
)
.hint("Empty: as many as parts, and twice as many for coats above 25 µm.")
.source(practice::BEADS_TO_PARTS.source)
.optional();
pub(super) const ADDITIONS: Field<u32> = Field::count("additions", "Additions", 1, 40, "")
    .hint("Equal additions of powder; left empty, the usual number for the coat.")
    .source(practice::ADDITIONS.source)
    .optional();
const BARREL: Field<Written<Volume>> = Field::quantity(
    "barrel",
    "Barrel",
    &VOLUMES,
    Bound::PositiveTo(
        Shown { number: 0.01, unit: &unit::M3, decimals: 2 },
        Shown { number: 10.0, unit: &unit::M3, decimals: 0 },
        "no barrel is smaller or larger; check the unit",
    ),
    "",
)
.hint("Leave empty if you do not know it.")
.optional();
const BARREL_BY: Field<BarrelBy> =
    Field::choice("barrel_by", "The barrel's volume is its", BarrelBy::CHOICES, BarrelBy::Working.key())
        .hint("The working volume is what it takes of parts: 25 to 35 % of the total.")
        .source(practice::WORKING_SHARE.source);
const BARREL_DIAMETER: Field<Written<Length>> = Field::quantity(
    "diameter",
    "Inside diameter of the barrel",
    &DIAMETERS,
    Bound::Between(
        Shown { number: 0.1, unit: &unit::M, decimals: 1 },
        Shown { number: 4.0, unit: &unit::M, decimals: 0 },
        "barrels are made between these; check the unit",
    ),
    "",
)
.hint("For the turns a minute.")
.optional();

const LEAST_KNOWN: &[&str] = &["class", "least"];

const COATS: Bound = Bound::Between(
    Shown { number: 5.0, unit: &unit::UM, decimals: 0 },
    Shown { number: 110.0, unit: &unit::UM, decimals: 0 },
    "the classes of ASTM B695 end there, and nothing is known of charges beyond them",
);

static CLASSES: [Choice; 11] = [
    Choice::new("110", "Class 110"),
    Choice::new("80", "Class 80"),
    Choice::new("70", "Class 70"),
    Choice::new("65", "Class 65"),
    Choice::new("55", "Class 55"),
    Choice::new("50", "Class 50"),
    Choice::new("40", "Class 40"),
    Choice::new("25", "Class 25"),
    Choice::new("12", "Class 12"),
    Choice::new("8", "Class 8"),
    Choice::new("5", "Class 5"),
];
static MICRONS: [&Unit; 3] = [&unit::UM, &unit::MIL, &unit::INCH];
static DEPOSITS: [&Unit; 3] = [&unit::G_CM3, &unit::G_M2_UM, &unit::OZ_FT2_MIL];
static SHARES: [&Unit; 1] = [&unit::PERCENT];
static PER_CENT: [&Unit; 1] = [&unit::PERCENT];
static NUMBERS: [&Unit; 1] = [&unit::ONE];
static VOLUMES: [&Unit; 3] = [&unit::LITRE, &unit::M3, &unit::FT3];
static DIAMETERS: [&Unit; 4] = [&unit::M, &unit::MM, &unit::INCH, &unit::FOOT];

const fn percent(number: f64) -> Shown {
    Shown { number, unit: &unit::PERCENT, decimals: 0 }
}

/// A class of ASTM B695, by its number.
#[derive(Debug, Clone, Copy)]
struct Class(&'static CoatClass);

/// Reads the fields.
pub(super) fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
    let density = read_density(reader);
    let stated = match density {
        Ok(density) => load::read(reader, density.known()),
        // The load is read all the same, for its problems.
        Err(missed) => load::read(reader, deposit()).and(Err(missed)),
    };
    let (grade, wanted) = (reader.optional(&GRADE), read_wanted(reader));
    let (checks, chance) = (reader.if_asked(&CHECKS), reader.if_asked(&CHANCE));
    let (scatter, charged) = (reader.optional(&SCATTER), reader.optional(&CHARGED));
    let earlier = reader.optional(&EARLIER).and_then(|text| read_earlier(text, reader));
    let (yielded, flash, solid_share) = (reader.get(&YIELD), reader.get(&FLASH), reader.get(&SOLID));
    let (bead_ratio, additions) = (reader.optional(&BEADS), reader.optional(&ADDITIONS));
    let (barrel, barrel_by) = (reader.optional(&BARREL), reader.get(&BARREL_BY));
    let diameter = reader.optional(&BARREL_DIAMETER);
    let plan = plan::read(reader);
    Ok(Input {
        stated: stated?,
        grade: grade?.map(|grade| grade.0),
        wanted: wanted?,
        pass: checks?.said().zip(chance?.said()).map(|(readings, chance)| Pass { readings, chance }),
        scatter: scatter?,
        earlier: earlier?,
        charged: charged?,
        density: density?,
        yielded: yielded?,
        flash: flash?,
        solid_share: solid_share?,
        bead_ratio: bead_ratio?,
        additions: additions?,
        barrel: barrel?,
        barrel_by: barrel_by?,
        diameter: diameter?,
        plan: plan?,
    })
}

/// The density that a load is read with where its own has a problem.
fn deposit() -> Known<Density> {
    (DEPOSIT.max, Some(DEPOSIT.source_max))
}

fn read_density(reader: &mut Reader<'_>) -> Result<DensityOf, Missed> {
    Ok(match reader.get(&DENSITY)? {
        Densities::Heavy => DensityOf::Heavy,
        Densities::Light => DensityOf::Light,
        Densities::Own => DensityOf::Own(reader.get(&OWN_DENSITY)?),
    })
}

fn read_wanted(reader: &mut Reader<'_>) -> Result<WantedCoat, Missed> {
    match reader.get(&ASKED)? {
        WantedBy::Class => {
            let class = reader.get(&CLASS)?.0;
            let limit = class.single.ok_or_else(|| reader.wrong(&CLASS, Fault::Missing))?;
            Ok(WantedCoat::Class(class, limit))
        }
        WantedBy::Least => reader.get(&LEAST).map(WantedCoat::Least),
        WantedBy::Mean => reader.get(&COAT).map(WantedCoat::Mean),
    }
}

fn read_earlier(text: Option<RawText>, reader: &mut Reader<'_>) -> Result<Option<Readings>, Missed> {
    let Some(RawText(text)) = text else { return Ok(None) };
    let how = Reading { units: &MICRONS, comma: Comma::Decide, columns: None, per_article: None };
    Readings::read(&text, &how, factor::DEPOSIT.max)
        .map(Some)
        .map_err(|problem| reader.wrong(&EARLIER, Fault::NotUnderstood(problem.to_string())))
}

/// Writes the fields.
pub(super) fn write(input: &Input, writer: &mut Writer) {
    load::write(&input.stated, writer);
    writer.put_optional(&GRADE, input.grade.map(AsWritten));
    match input.wanted {
        WantedCoat::Class(class, _) => {
            writer.put(&ASKED, WantedBy::Class);
            writer.put(&CLASS, Class(class));
        }
        WantedCoat::Least(least) => {
            writer.put(&ASKED, WantedBy::Least);
            writer.put(&LEAST, least);
        }
        WantedCoat::Mean(mean) => {
            writer.put(&ASKED, WantedBy::Mean);
            writer.put(&COAT, mean);
        }
    }
    if let Some(pass) = input.pass {
        writer.put(&CHECKS, pass.readings);
        writer.put(&CHANCE, pass.chance);
    }
    writer.put_optional(&SCATTER, input.scatter);
    let earlier = input.earlier.as_ref();
    writer.put_optional(&EARLIER, earlier.map(|readings| RawText(readings.text.clone())));
    writer.put_optional(&CHARGED, input.charged);
    match input.density {
        DensityOf::Heavy => writer.put(&DENSITY, Densities::Heavy),
        DensityOf::Light => writer.put(&DENSITY, Densities::Light),
        DensityOf::Own(density) => {
            writer.put(&DENSITY, Densities::Own);
            writer.put(&OWN_DENSITY, density);
        }
    }
    writer.put(&YIELD, input.yielded);
    writer.put(&FLASH, input.flash);
    writer.put(&SOLID, input.solid_share);
    writer.put_optional(&BEADS, input.bead_ratio);
    writer.put_optional(&ADDITIONS, input.additions);
    writer.put_optional(&BARREL, input.barrel);
    writer.put(&BARREL_BY, input.barrel_by);
    writer.put_optional(&BARREL_DIAMETER, input.diameter);
    plan::write(&input.plan, writer);
}

/// Fills the fields from a case that goes into the barrel: its coat is the least of every place.
pub(super) fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
    if case.process != Process::Mechanical {
        return None;
    }
    load::fill(case, writer)?;
    writer.put_optional(&GRADE, case.grade().map(AsWritten));
    if let Some(offer) = case.offer {
        writer.put(&ASKED, WantedBy::Least);
        writer.put(&LEAST, Written { quantity: offer.min, unit: &unit::UM });
    }
    Some(())
}

/// Fills the fields with an area and the least of every place.
pub(super) fn fill_usual(area: Area, least: Length, writer: &mut Writer) {
    writer.put(&load::LOAD, load::StatedBy::Area);
    writer.put(&load::AREA, Written { quantity: area, unit: &unit::M2 });
    writer.put(&ASKED, WantedBy::Least);
    writer.put(&LEAST, Written { quantity: least, unit: &unit::UM });
}

impl FieldValue for Class {
    fn read(text: &str, about: &FieldAbout) -> Result<Self, Fault> {
        let of_number = |key: &str| {
            let named = |class: &&CoatClass| class.name.strip_prefix("class ") == Some(key);
            astm_b695::CLASSES.iter().find(named).map(Self)
        };
        about.chosen(text, of_number)
    }

    fn write(&self, _: &FieldAbout) -> Cow<'static, str> {
        self.0.name.trim_start_matches("class ").into()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The choices of the form and the classes of the table are the same.
    #[test]
    fn every_class_is_offered() {
        let offered: Vec<String> = CLASSES.iter().map(|choice| format!("class {}", choice.key)).collect();
        let listed: Vec<&str> = astm_b695::CLASSES.iter().map(|class| class.name).collect();
        assert_eq!(offered, listed);
    }
}
