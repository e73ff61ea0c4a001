//! Which classes of bolt and nut leave room for a wanted coat.
//!
//! The fit itself is that of [`super::fit`]; here pairs are tried from the one nearest to a stock
//! part to the one farthest from it. Two documents on plating have a rule of their own: ISO 4042 by
//! the deviation and the length of the part, ASTM F1941 and ASME B1.13M by a quarter of the allowance.

use crate::quantity::{Length, Quantity, Shown, unit};
use crate::source::{Source, Sourced, document};
use crate::table::Refusal;
use crate::table::iso_965_1::{Position, deviation};
use crate::table::iso_4042_threads::{self, Column};

use super::class::{BoltPosition, NutPosition};
use super::fit::{self, Coat};
use super::overtap::{self, Allowance};
use super::{Thread, ToleranceClass, limits, undersize};

/// A bolt class with a nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pair {
    /// The bolt's class before its coat.
    pub bolt: ToleranceClass,
    /// The nut.
    pub nut: NutChoice,
}

/// A nut to order.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NutChoice {
    /// Of a class of the standard, as 6G.
    ToleranceClass(ToleranceClass),
    /// Tapped over by a rule.
    Over(Allowance),
}

/// Which threads carry the coat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Coated {
    /// The bolt alone: the nut is tapped after its coat, or bare.
    Bolt,
    /// Bolt and nut, and a share of the bolt's coat reaches the inside of the nut.
    Shared,
    /// Bolt and nut alike.
    Both,
}

/// The pairs in the order in which they are worth trying: stock parts first, then a bolt with more
/// allowance, a nut with some, a nut tapped over, a bolt cut under.
pub fn pairs(thread: Thread) -> &'static [Pair] {
    if thread.is_metric() { METRIC } else { UNIFIED }
}

const fn class(bolt: ToleranceClass, nut: ToleranceClass) -> Pair {
    Pair { bolt, nut: NutChoice::ToleranceClass(nut) }
}

const fn over(bolt: ToleranceClass, nut: Allowance) -> Pair {
    Pair { bolt, nut: NutChoice::Over(nut) }
}

const BOLT_G: ToleranceClass = ToleranceClass::bolt(6, BoltPosition::G);
const NUT_H: ToleranceClass = ToleranceClass::nut(6, NutPosition::H);
const NUT_G: ToleranceClass = ToleranceClass::nut(6, NutPosition::G);

static METRIC: &[Pair] = &[
    class(BOLT_G, NUT_H),
    class(ToleranceClass::bolt(6, BoltPosition::F), NUT_H),
    class(ToleranceClass::bolt(6, BoltPosition::E), NUT_H),
    class(BOLT_G, NUT_G),
    class(ToleranceClass::bolt(6, BoltPosition::F), NUT_G),
    class(ToleranceClass::bolt(6, BoltPosition::E), NUT_G),
    over(BOLT_G, Allowance::Az),
    over(BOLT_G, Allowance::Ax),
    class(undersize::CLASS, NUT_H),
];

static UNIFIED: &[Pair] = &[
    class(ToleranceClass::UnifiedBolt(2), ToleranceClass::UnifiedNut(2)),
    over(ToleranceClass::UnifiedBolt(2), Allowance::A563),
];

/// The thickest stated coat that a pair takes at its worst corner, with this unevenness, where so many
/// coats share the room: see [`Coated::parts`].
///
/// # Errors
/// Refuses a pair that its table does not have for this thread.
pub fn thickest(thread: Thread, pair: Pair, unevenness: f64, parts: f64) -> Result<Length, Refusal> {
    let bolt = limits::bolt(thread, pair.bolt)?;
    let nut = match pair.nut {
        NutChoice::ToleranceClass(class) => limits::nut(thread, class)?,
        NutChoice::Over(allowance) => overtap::nut(thread, allowance)?.limits,
    };
    let thickest = fit::room(bolt.greatest(), nut.least(), unevenness).thickest;
    Ok(thickest / parts)
}

/// The least diametral allowance on a standard nut with which a bolt of this class takes the coat.
///
/// # Errors
/// Refuses a class that the thread does not have.
pub fn allowance_needed(
    thread: Thread,
    bolt: ToleranceClass,
    max: Length,
    unevenness: f64,
    parts: f64,
) -> Result<Length, Refusal> {
    let bare = limits::bolt(thread, bolt)?;
    let standard = limits::nut(thread, overtap::standard_class(thread))?;
    let max = max * parts;
    let fit = fit::fit(bare, Coat { min: max, max, unevenness }, standard);
    let short = fit.pitch.min.min(fit.major_min).min(fit.minor_min);
    // Room to spare needs no allowance.
    Ok((-short).max(Length::ZERO))
}

impl Coated {
    /// How many coats share the room, where this share reaches the inside of the nut.
    pub fn parts(self, inside: f64) -> f64 {
        match self {
            Self::Bolt => 1.0,
            Self::Shared => 1.0 + inside,
            Self::Both => 2.0,
        }
    }
}

/// The deviation that ISO 4042 asks for under a coat of a nominal thickness.
pub fn iso_4042_deviation(thickness: Length, column: Column) -> Length {
    column.factor() * thickness
}

/// The column of ISO 4042 for a part of this length under the head, its coat measured as the average of a
/// batch: a long part is plated thicker at its ends, and is given 5 t and 6 t instead of 4 t.
///
/// # Errors
/// Refuses a length of more than 15 diameters, where the document ends.
pub fn iso_4042_column(thread: Thread, length: Length) -> Result<Column, Refusal> {
    let d = thread.diameter();
    match length / d {
        ratio if ratio <= 5.0 + 1e-9 => Ok(Column::UpTo5),
        ratio if ratio <= 10.0 + 1e-9 => Ok(Column::UpTo10),
        ratio if ratio <= 15.0 + 1e-9 => Ok(Column::UpTo15),
        _ => Err(Refusal::outside(
            "length of the part",
            length.show(&unit::MM, 1),
            Shown { number: 0.0, unit: &unit::MM, decimals: 0 },
            (15.0 * d).show(&unit::MM, 0),
            iso_4042_threads::TABLE_2_SOURCE,
        )),
    }
}

/// The greatest nominal thickness that a plated bolt of this class and length takes by ISO 4042, batch
/// average; `None` where even the thinnest does not fit.
///
/// # Errors
/// Refuses an inch thread, a class that is not g, f or e, and a length of more than 15 diameters.
pub fn iso_4042_thickest(
    thread: Thread,
    bolt: ToleranceClass,
    length: Length,
) -> Result<Option<Sourced<Length>>, Refusal> {
    let position = match bolt {
        ToleranceClass::Bolt(class) => class.position.of_iso_965_1(),
        _ => None,
    };
    let Some(position) = position.filter(|_| thread.is_metric()) else {
        return Err(Refusal::not_covered(
            &format!("{thread}-{bolt}"),
            "metric bolts of positions g, f and e",
            iso_4042_threads::TABLE_2_SOURCE,
        ));
    };
    iso_4042_max(thread.pitch(), position, iso_4042_column(thread, length)?)
}

/// The greatest nominal thickness that ISO 4042 allows on a bolt thread of position g, f or e; `None`
/// where even the thinnest does not fit.
///
/// Beyond the pitches of its Table 2 this is the rule behind the table: the largest nominal thickness
/// not above the deviation over 4, 4, 5 and 6. It gives every cell read but one.
///
/// # Errors
/// Refuses the other positions and a pitch that ISO 965-1 does not have.
pub fn iso_4042_max(
    pitch: Length,
    position: Position,
    column: Column,
) -> Result<Option<Sourced<Length>>, Refusal> {
    if !matches!(position, Position::BoltG | Position::BoltF | Position::BoltE) {
        return Err(Refusal::not_covered(
            &format!("a thread of pitch {} without an allowance", pitch.show(&unit::MM, 2)),
            "bolt positions g, f and e",
            iso_4042_threads::TABLE_2_SOURCE,
        ));
    }
    if let Some(printed) = iso_4042_threads::max(pitch, position, column) {
        return Ok(Some(printed));
    }
    let room = -deviation(position, pitch)?.value.um() / column.factor();
    let thickest = iso_4042_threads::NOMINAL.iter().rev().find(|nominal| **nominal <= room + 1e-9);
    let rule = document::ISO_4042_1999.computed("rule of Table 2, |es| over 4, 4, 5, 6");
    Ok(thickest.map(|um| rule.gives(Length::from_um(*um))))
}

/// The thickest coat by the quarter rule: a quarter of the bolt's allowance, so that the coated
/// thread still passes a GO gauge of basic size.
///
/// # Errors
/// Refuses a class that the thread does not have.
pub fn quarter(thread: Thread, bolt: ToleranceClass) -> Result<Length, Refusal> {
    Ok(limits::bolt(thread, bolt)?.allowance() / fit::PITCH_GROWTH)
}

/// Where the quarter rule is published.
pub fn quarter_source(thread: Thread) -> Source {
    if thread.is_metric() {
        document::ASME_B1_13M.read("8.2")
    } else {
        document::ASTM_F1941.read("Appendix X3")
    }
}

impl std::fmt::Display for NutChoice {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::ToleranceClass(class) => write!(f, "{class}"),
            Self::Over(allowance) => write!(f, "{allowance}"),
        }
    }
}
