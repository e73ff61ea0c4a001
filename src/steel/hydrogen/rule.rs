//! The rules, one a limit of one document.

use std::sync::OnceLock;

use super::super::hardness::{Converted, Level};
use super::super::state::SteelLimit;
use crate::process::Process;
use crate::quantity::{Hardness, Stress};
use crate::source::{Source, common_practice, document};
use crate::table::{astm_b850, iso_2081};

/// A rule of a document about hydrogen or embrittlement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rule {
    /// ASTM F2329: no hot-dip coating from 40 HRC.
    F2329Ban,
    /// ASTM F2329: no hot-dip coating of case-hardened fasteners.
    F2329CaseHardened,
    /// Common practice: no hot-dip above 39 HRC.
    PracticeKettle,
    /// ISO 10684: bolts to class 10.9, nuts to class 12.
    Iso10684Scope,
    /// ASTM F3125: grade A490 is not hot-dipped.
    F3125Kettle,
    /// ASTM F2329: risk of hydrogen embrittlement from 33 HRC.
    F2329Risk,
    /// ASTM A143: of concern above 1100 MPa.
    A143Strength,
    /// ISO 10684: cleaning from 320 HV.
    Iso10684Cleaning,
    /// ASTM A143: strain-age embrittlement at tight cold bends.
    A143Bend,
    /// Bolt makers advise against galvanizing these grades.
    MakersAdvice,
    /// ASTM F3125: grade A490 is not mechanically coated.
    F3125Barrel,
    /// ASTM B695: stress relief above 1000 MPa.
    B695Relief,
    /// ASTM B695: which cleaners keep hydrogen out.
    B695Cleaning,
    /// Above 40 HRC the barrel is chosen to avoid embrittlement, and some is still possible.
    BarrelHydrogen,
    /// Common practice has plated parts of 45 HRC.
    BarrelPractice,
    /// ASTM A490: no coating, before F3125.
    A490Cell,
    /// ISO 2081, earlier edition: no electroplating above 1500 MPa.
    Iso2081Strength,
    /// ASTM B849: stress relief from 1000 MPa.
    B849Relief,
    /// ASTM B633: stress relief above 1000 MPa.
    B633Relief,
    /// ASTM F1941: cleaning from 40 HRC and of case-hardened parts.
    F1941Cleaning,
    /// ASTM B850: bake by strength.
    B850Bake,
    /// ASTM B633: bake from 1200 MPa.
    B633Bake,
    /// ASTM F1941: bake above 39 HRC.
    F1941Bake,
    /// ASTM F1941, earlier editions: bake from 40 HRC.
    F1941BakeEarlier,
    /// ISO 4042:2018: bake from 390 HV.
    Iso4042Bake,
    /// ISO 4042:1999: process test above 320 HV.
    Iso4042Investigate,
    /// ISO 4042:1999: written agreement above 365 HV.
    Iso4042Agree,
}

impl Rule {
    /// Every rule: what forbids first, then what asks, process by process.
    pub const ALL: &'static [Self; 27] = &[
        Self::F2329Ban,
        Self::F2329CaseHardened,
        Self::PracticeKettle,
        Self::Iso10684Scope,
        Self::F3125Kettle,
        Self::F2329Risk,
        Self::A143Strength,
        Self::Iso10684Cleaning,
        Self::A143Bend,
        Self::MakersAdvice,
        Self::F3125Barrel,
        Self::B695Relief,
        Self::B695Cleaning,
        Self::BarrelHydrogen,
        Self::BarrelPractice,
        Self::A490Cell,
        Self::Iso2081Strength,
        Self::B849Relief,
        Self::B633Relief,
        Self::F1941Cleaning,
        Self::B850Bake,
        Self::B633Bake,
        Self::F1941Bake,
        Self::F1941BakeEarlier,
        Self::Iso4042Bake,
        Self::Iso4042Investigate,
        Self::Iso4042Agree,
    ];

    /// The process it speaks of.
    pub const fn process(self) -> Process {
        match self {
            Self::F2329Ban
            | Self::F2329CaseHardened
            | Self::PracticeKettle
            | Self::Iso10684Scope
            | Self::F3125Kettle
            | Self::F2329Risk
            | Self::A143Strength
            | Self::Iso10684Cleaning
            | Self::A143Bend
            | Self::MakersAdvice => Process::HotDip,
            Self::F3125Barrel
            | Self::B695Relief
            | Self::B695Cleaning
            | Self::BarrelHydrogen
            | Self::BarrelPractice => Process::Mechanical,
            Self::A490Cell
            | Self::Iso2081Strength
            | Self::B849Relief
            | Self::B633Relief
            | Self::F1941Cleaning
            | Self::B850Bake
            | Self::B633Bake
            | Self::F1941Bake
            | Self::F1941BakeEarlier
            | Self::Iso4042Bake
            | Self::Iso4042Investigate
            | Self::Iso4042Agree => Process::Electroplated,
        }
    }

    /// The limit it sets; `None` where it goes by something else than hardness or strength.
    pub const fn limit(self) -> Option<SteelLimit> {
        Some(match self {
            Self::F2329Ban | Self::F1941Cleaning | Self::F1941BakeEarlier => SteelLimit::at_least(hrc(40.0)),
            Self::PracticeKettle | Self::F1941Bake => SteelLimit::above(hrc(39.0)),
            Self::F2329Risk => SteelLimit::at_least(hrc(33.0)),
            Self::A143Strength => SteelLimit::above(mpa(1100.0)),
            Self::Iso10684Cleaning => SteelLimit::at_least(hv(320.0)),
            Self::B695Relief | Self::B695Cleaning | Self::B633Relief => SteelLimit::above(mpa(1000.0)),
            Self::BarrelHydrogen => SteelLimit::above(hrc(40.0)),
            Self::BarrelPractice => SteelLimit::above(hrc(45.0)),
            Self::Iso2081Strength => SteelLimit::above(Level::Tensile(iso_2081::NOT_ABOVE.0)),
            Self::B849Relief => SteelLimit::at_least(mpa(1000.0)),
            Self::B850Bake => SteelLimit::above(mpa(1000.0)),
            Self::B633Bake => SteelLimit::at_least(mpa(1200.0)),
            Self::Iso4042Bake => SteelLimit::at_least(hv(390.0)),
            Self::Iso4042Investigate => SteelLimit::above(hv(320.0)),
            Self::Iso4042Agree => SteelLimit::above(hv(365.0)),
            Self::F2329CaseHardened
            | Self::Iso10684Scope
            | Self::F3125Kettle
            | Self::A143Bend
            | Self::MakersAdvice
            | Self::F3125Barrel
            | Self::A490Cell => return None,
        })
    }

    /// Its limit in Vickers, where every steel can be compared; `None` if it is in Vickers already or has
    /// none. Read from the tables once.
    pub fn limit_in_vickers(self) -> Option<Converted> {
        static IN_VICKERS: OnceLock<[Option<Converted>; Rule::ALL.len()]> = OnceLock::new();
        let limits = IN_VICKERS.get_or_init(|| Self::ALL.map(|rule| rule.limit()?.at.in_vickers().ok()?));
        limits.get(self as usize).copied().flatten()
    }

    /// Where it is published.
    pub const fn source(self) -> Source {
        match self {
            Self::F2329Ban | Self::F2329CaseHardened => document::ASTM_F2329.read("7"),
            Self::F2329Risk => document::ASTM_F2329.read("7.2.2"),
            Self::PracticeKettle => common_practice("hardness for hot-dip"),
            Self::Iso10684Scope => document::ISO_10684.read("scope"),
            Self::F3125Kettle | Self::F3125Barrel => document::ASTM_F3125.memory("coatings of grade A490"),
            Self::A143Strength => document::ASTM_A143.read("hydrogen embrittlement"),
            Self::Iso10684Cleaning => document::ISO_10684.read("5.2"),
            Self::A143Bend => document::ASTM_A143.memory("cold bending"),
            Self::MakersAdvice => document::BOLT_MAKERS_TEXT.read("on ASTM A143 and F2329"),
            Self::B695Relief => document::ASTM_B695.memory("6.2.1"),
            Self::B695Cleaning => document::ASTM_B695.read("6.2.2"),
            Self::BarrelHydrogen => document::ENCYCLOPEDIA.read("mechanical plating"),
            Self::BarrelPractice => common_practice("hardness of parts plated in a barrel"),
            Self::A490Cell => document::ASTM_A490.read("coatings"),
            Self::Iso2081Strength => iso_2081::NOT_ABOVE.1,
            Self::B849Relief => document::ASTM_B849.read("scope"),
            Self::B633Relief => document::ASTM_B633.memory("2007, 6.4"),
            Self::B633Bake => document::ASTM_B633.read("2007, 6.5"),
            Self::F1941Cleaning => document::ASTM_F1941.read("6"),
            Self::B850Bake => astm_b850::TABLE_1_SOURCE,
            Self::F1941Bake => document::ASTM_F1941.memory("2015, 6.4"),
            Self::F1941BakeEarlier => document::ASTM_F1941.read("earlier editions"),
            Self::Iso4042Bake => document::ISO_4042_2018.memory("4.4 and annex B"),
            Self::Iso4042Investigate | Self::Iso4042Agree => document::ISO_4042_1999.read("6"),
        }
    }
}

const fn hrc(number: f64) -> Level {
    Level::Hardness(Hardness::hrc(number))
}

const fn hv(number: f64) -> Level {
    Level::Hardness(Hardness::hv(number))
}

const fn mpa(number: f64) -> Level {
    Level::Tensile(Stress::from_mpa(number))
}
