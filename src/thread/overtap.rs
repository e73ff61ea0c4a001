//! Nuts tapped over size, so that a bolt coated after threading still goes in.

use std::fmt;

use crate::quantity::Length;
use crate::source::{Sourced, document};
use crate::table::nut_style::Tapping;
use crate::table::{Refusal, astm_a563, iso_965_5};

use super::class::{BoltPosition, NutPosition};
use super::limits::{self, NutLimits};
use super::{Thread, ToleranceClass};

/// By which rule a nut is tapped over.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Allowance {
    /// Class 6AZ of ISO 965-5: for bolts spun after the bath.
    Az,
    /// Class 6AX of ISO 965-5: for heavier coats.
    Ax,
    /// Table 5 of ASTM A563, inch.
    A563,
    /// The metric allowance of ASTM A563M, which is recalled to be that of AX.
    A563M,
    /// The user's own diametral allowance on 6H or 2B.
    Own(Length),
    /// None: the standard nut, 6H or 2B.
    Standard,
}

/// A nut tapped by a rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nut {
    /// Its limits of size.
    pub limits: NutLimits,
    /// The standard nut it is measured against, 6H or 2B.
    pub standard: NutLimits,
    /// How much wider than the standard nut it is, on every diameter.
    pub allowance: Sourced<Length>,
}

/// The limits to tap and to gauge a nut to.
///
/// # Errors
/// Refuses a rule of the other system of threads, and a thread that its table does not have.
pub fn nut(thread: Thread, allowance: Allowance) -> Result<Nut, Refusal> {
    let standard = limits::nut(thread, standard_class(thread))?;
    let by = match allowance {
        Allowance::Standard => none_on(&standard),
        _ => self::allowance(thread, allowance)?,
    };
    Ok(Nut { limits: widened(thread, &standard, allowance, by), standard, allowance: by })
}

/// The limits alone, where the standard nut is known already.
///
/// # Errors
/// Refuses as [`nut`] does.
pub fn over(thread: Thread, standard: &NutLimits, allowance: Allowance) -> Result<NutLimits, Refusal> {
    match allowance {
        Allowance::Standard => Ok(*standard),
        _ => Ok(widened(thread, standard, allowance, self::allowance(thread, allowance)?)),
    }
}

fn widened(thread: Thread, standard: &NutLimits, allowance: Allowance, by: Sourced<Length>) -> NutLimits {
    match allowance {
        Allowance::Standard => *standard,
        Allowance::Az | Allowance::Ax => limits::metric::placed_like(thread, by, standard),
        Allowance::A563 | Allowance::A563M | Allowance::Own(_) => standard.widened(by),
    }
}

/// How much wider than the standard nut a rule makes a nut, on every diameter.
///
/// # Errors
/// Refuses as [`nut`] does.
pub fn allowance(thread: Thread, of: Allowance) -> Result<Sourced<Length>, Refusal> {
    match of {
        Allowance::Az => iso_965_5_deviation(thread, NutPosition::Az),
        Allowance::Ax => iso_965_5_deviation(thread, NutPosition::Ax),
        Allowance::A563 => a563_allowance(thread),
        Allowance::A563M if thread.is_metric() => {
            let by_formula = limits::metric::over_size_by_formula(iso_965_5::Position::Ax, thread.pitch());
            let source = document::ASTM_A563M.memory("diametral zinc allowance, as 220 P − 20");
            Ok(source.gives(by_formula.value))
        }
        Allowance::A563M => Err(Refusal::not_covered(
            &format!("{thread}"),
            "metric nuts; an inch nut is tapped by ASTM A563",
            document::ASTM_A563M.memory("scope"),
        )),
        Allowance::Own(value) => Ok(document::OWN.computed("diametral allowance").gives(value)),
        Allowance::Standard => Ok(none_on(&limits::nut(thread, standard_class(thread))?)),
    }
}

fn none_on(standard: &NutLimits) -> Sourced<Length> {
    standard.deviation.source.gives(Length::ZERO)
}

/// The class of the nut that is not tapped over: 6H, 2B.
pub fn standard_class(thread: Thread) -> ToleranceClass {
    if thread.is_metric() { ToleranceClass::nut(6, NutPosition::H) } else { ToleranceClass::UnifiedNut(2) }
}

/// The class of the bolt that is not made smaller for a coat: 6g, 2A.
pub fn usual_bolt_class(thread: Thread) -> ToleranceClass {
    if thread.is_metric() { ToleranceClass::bolt(6, BoltPosition::G) } else { ToleranceClass::UnifiedBolt(2) }
}

fn iso_965_5_deviation(thread: Thread, position: NutPosition) -> Result<Sourced<Length>, Refusal> {
    if !thread.is_metric() {
        return Err(Refusal::not_covered(
            &format!("{thread}"),
            "metric nuts; an inch nut is tapped by ASTM A563",
            document::ISO_965_5.read("scope"),
        ));
    }
    limits::metric::nut_deviation(thread, position)
}

fn a563_allowance(thread: Thread) -> Result<Sourced<Length>, Refusal> {
    let source = document::ASTM_A563.read("Table 5");
    if thread.is_metric() {
        return Err(Refusal::not_covered(
            &format!("{thread}"),
            "inch nuts; a metric nut is tapped to 6AZ or 6AX",
            source,
        ));
    }
    match thread
        .inch_key()
        .and_then(|(sixteenths, per_two_inches)| astm_a563::row(sixteenths, per_two_inches))
    {
        Some(row) => Ok(row.source().gives(Length::from_inch(f64::from(row.allowance) / 1000.0))),
        None => Err(Refusal::not_covered(
            &format!("{thread}"),
            "UNC from 1/4 to 4 in and 8UN from 1-1/8 to 1-1/2 in; give your own allowance",
            source,
        )),
    }
}

impl Allowance {
    /// The class that it is, where it is one: 6AZ, 6AX.
    pub fn class(self) -> Option<ToleranceClass> {
        match self {
            Self::Az => Some(ToleranceClass::nut(6, NutPosition::Az)),
            Self::Ax => Some(ToleranceClass::nut(6, NutPosition::Ax)),
            _ => None,
        }
    }

    /// How the tables of loads call it.
    pub fn tapping(self) -> Tapping {
        match self {
            Self::Az => Tapping::Az,
            Self::Ax => Tapping::Ax,
            Self::A563 | Self::A563M => Tapping::Zinc,
            Self::Own(_) => Tapping::Own,
            Self::Standard => Tapping::Standard,
        }
    }

    /// The letter marked behind the property class of the nut, and where that is asked for.
    pub fn mark(self) -> Option<Sourced<&'static str>> {
        match self {
            Self::Az => Some(document::ISO_10684.read("6.2").gives("Z")),
            Self::Ax => Some(document::ISO_10684.read("6.2").gives("X")),
            _ => None,
        }
    }
}

impl fmt::Display for Allowance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Az => "6AZ",
            Self::Ax => "6AX",
            Self::A563 => "ASTM A563",
            Self::A563M => "ASTM A563M",
            Self::Own(_) => "own allowance",
            Self::Standard => "standard nut",
        })
    }
}
