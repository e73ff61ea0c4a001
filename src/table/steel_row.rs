//! The shape of a row in a standard's table of mechanical properties.
//!
//! Standards print a hardness on the scale they prefer, and sometimes on three at once. A row keeps
//! each as it is printed, with its own basis; nothing is converted here.

use crate::quantity::{Hardness, Length, Scale, Stress, Temperature};
use crate::source::{Source, Sourced};

/// What a standard asks of a steel, for a range of nominal diameters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SteelRow {
    /// The nominal diameters the row holds for.
    pub sizes: Sizes,
    /// How the steel is treated.
    pub treatment: Treatment,
    /// Rockwell C.
    pub hrc: Option<HardnessLimits>,
    /// Rockwell B.
    pub hrb: Option<HardnessLimits>,
    /// Vickers.
    pub hv: Option<HardnessLimits>,
    /// Brinell.
    pub hb: Option<HardnessLimits>,
    /// Least tensile strength.
    pub tensile_min: Option<Sourced<Stress>>,
    /// Greatest tensile strength, where one is set.
    pub tensile_max: Option<Sourced<Stress>>,
    /// Stress under proof load.
    pub proof: Proof,
    /// Least tempering temperature.
    pub temper_min: Option<Sourced<Temperature>>,
    /// The document, for what the row leaves blank.
    pub document: Source,
}

/// The stress under proof load: known, or not asked for by the document, or not found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Proof {
    /// The published stress.
    Stress(Sourced<Stress>),
    /// The document asks for no proof load.
    NotAsked(Source),
    /// The document was not read on this point.
    NotKnown,
}

/// The limits of a hardness on one scale; a standard may set only one of them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HardnessLimits {
    /// The least, if one is set.
    pub min: Option<Hardness>,
    /// The greatest, if one is set.
    pub max: Option<Hardness>,
    /// Where they are published.
    pub source: Source,
}

/// How a steel got its strength.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Treatment {
    /// Quenched and tempered: the heat of a bath may soften it.
    QuenchedTempered,
    /// Quenched and tempered, with a surface hardened apart from the core; the row's limits are the core's.
    CaseHardened,
    /// Not heat treated, or not required to be: no temper to lose.
    NotHeatTreated,
    /// The document was not read on this point.
    NotKnown,
}

/// A range of nominal diameters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sizes {
    /// Where it begins, and whether that size itself belongs to it.
    pub from: Option<(Length, bool)>,
    /// Where it ends; that size belongs to it.
    pub to: Option<Length>,
    /// Whether the document counts in inches.
    pub inch: bool,
}

impl Sizes {
    /// Every size.
    pub const ALL: Self = Self { from: None, to: None, inch: false };
    /// Every size of an inch standard.
    pub const ALL_INCH: Self = Self { from: None, to: None, inch: true };

    /// Up to a size in millimetres, which belongs to it.
    pub const fn to_mm(to: f64) -> Self {
        Self { from: None, to: Some(Length::from_mm(to)), inch: false }
    }

    /// Above a size in millimetres.
    pub const fn over_mm(from: f64) -> Self {
        Self { from: Some((Length::from_mm(from), false)), to: None, inch: false }
    }

    /// Above one size and up to another, in millimetres.
    pub const fn over_to_mm(from: f64, to: f64) -> Self {
        Self { from: Some((Length::from_mm(from), false)), to: Some(Length::from_mm(to)), inch: false }
    }

    /// From one size to another in millimetres, both belonging to it.
    pub const fn from_to_mm(from: f64, to: f64) -> Self {
        Self { from: Some((Length::from_mm(from), true)), to: Some(Length::from_mm(to)), inch: false }
    }

    /// From one size to another in inches, both belonging to it.
    pub const fn from_to_inch(from: f64, to: f64) -> Self {
        Self { from: Some((Length::from_inch(from), true)), to: Some(Length::from_inch(to)), inch: true }
    }

    /// Up to a size in inches, which belongs to it.
    pub const fn to_inch(to: f64) -> Self {
        Self { from: None, to: Some(Length::from_inch(to)), inch: true }
    }

    /// Above a size in inches.
    pub const fn over_inch(from: f64) -> Self {
        Self { from: Some((Length::from_inch(from), false)), to: None, inch: true }
    }

    /// Above one size and up to another, in inches.
    pub const fn over_to_inch(from: f64, to: f64) -> Self {
        Self { from: Some((Length::from_inch(from), false)), to: Some(Length::from_inch(to)), inch: true }
    }

    /// Whether a diameter belongs to the range.
    ///
    /// A tenth of a micrometre is allowed for the rounding between inches and millimetres.
    pub fn hold(&self, diameter: Length) -> bool {
        let slack = 1e-4;
        let above = match self.from {
            Some((from, true)) => diameter.mm() >= from.mm() - slack,
            Some((from, false)) => diameter.mm() > from.mm() + slack,
            None => true,
        };
        above && self.to.is_none_or(|to| diameter.mm() <= to.mm() + slack)
    }
}

impl SteelRow {
    /// A row that says nothing yet.
    pub const fn new(sizes: Sizes, treatment: Treatment, document: Source) -> Self {
        Self {
            sizes,
            treatment,
            hrc: None,
            hrb: None,
            hv: None,
            hb: None,
            tensile_min: None,
            tensile_max: None,
            proof: Proof::NotKnown,
            temper_min: None,
            document,
        }
    }

    /// With Rockwell C limits.
    #[must_use]
    pub const fn hrc(mut self, min: f64, max: f64, source: Source) -> Self {
        self.hrc = Some(HardnessLimits::both(Scale::Hrc, min, max, source));
        self
    }

    /// With a greatest Rockwell C hardness and no least.
    #[must_use]
    pub const fn hrc_to(mut self, max: f64, source: Source) -> Self {
        self.hrc = Some(HardnessLimits::to(Scale::Hrc, max, source));
        self
    }

    /// With a greatest Rockwell B hardness and no least.
    #[must_use]
    pub const fn hrb_to(mut self, max: f64, source: Source) -> Self {
        self.hrb = Some(HardnessLimits::to(Scale::Hrb, max, source));
        self
    }

    /// With a least Rockwell B hardness and no greatest.
    #[must_use]
    pub const fn hrb_from(mut self, min: f64, source: Source) -> Self {
        let min = Hardness { scale: Scale::Hrb, number: min };
        self.hrb = Some(HardnessLimits { min: Some(min), max: None, source });
        self
    }

    /// With a greatest Brinell hardness and no least.
    #[must_use]
    pub const fn hb_to(mut self, max: f64, source: Source) -> Self {
        self.hb = Some(HardnessLimits::to(Scale::Hb, max, source));
        self
    }

    /// With Rockwell B limits.
    #[must_use]
    pub const fn hrb(mut self, min: f64, max: f64, source: Source) -> Self {
        self.hrb = Some(HardnessLimits::both(Scale::Hrb, min, max, source));
        self
    }

    /// With Vickers limits.
    #[must_use]
    pub const fn hv(mut self, min: f64, max: f64, source: Source) -> Self {
        self.hv = Some(HardnessLimits::both(Scale::Hv, min, max, source));
        self
    }

    /// With Brinell limits.
    #[must_use]
    pub const fn hb(mut self, min: f64, max: f64, source: Source) -> Self {
        self.hb = Some(HardnessLimits::both(Scale::Hb, min, max, source));
        self
    }

    /// With a least tensile strength in MPa.
    #[must_use]
    pub const fn mpa(mut self, min: f64, source: Source) -> Self {
        self.tensile_min = Some(source.gives(Stress::from_mpa(min)));
        self
    }

    /// With a greatest tensile strength in MPa.
    #[must_use]
    pub const fn mpa_to(mut self, max: f64, source: Source) -> Self {
        self.tensile_max = Some(source.gives(Stress::from_mpa(max)));
        self
    }

    /// With a least tensile strength in ksi.
    #[must_use]
    pub const fn ksi(mut self, min: f64, source: Source) -> Self {
        self.tensile_min = Some(source.gives(Stress::from_ksi(min)));
        self
    }

    /// With a greatest tensile strength in ksi.
    #[must_use]
    pub const fn ksi_to(mut self, max: f64, source: Source) -> Self {
        self.tensile_max = Some(source.gives(Stress::from_ksi(max)));
        self
    }

    /// With a stress under proof load in MPa.
    #[must_use]
    pub const fn proof_mpa(mut self, stress: f64, source: Source) -> Self {
        self.proof = Proof::Stress(source.gives(Stress::from_mpa(stress)));
        self
    }

    /// With a stress under proof load in ksi.
    #[must_use]
    pub const fn proof_ksi(mut self, stress: f64, source: Source) -> Self {
        self.proof = Proof::Stress(source.gives(Stress::from_ksi(stress)));
        self
    }

    /// With no proof load in the document.
    #[must_use]
    pub const fn no_proof(mut self, source: Source) -> Self {
        self.proof = Proof::NotAsked(source);
        self
    }

    /// With a least tempering temperature in °C.
    #[must_use]
    pub const fn temper_celsius(mut self, min: f64, source: Source) -> Self {
        self.temper_min = Some(source.gives(Temperature::from_celsius(min)));
        self
    }

    /// With a least tempering temperature in °F.
    #[must_use]
    pub const fn temper_fahrenheit(mut self, min: f64, source: Source) -> Self {
        self.temper_min = Some(source.gives(Temperature::from_fahrenheit(min)));
        self
    }

    /// The limits printed on a scale.
    pub const fn limits(&self, scale: Scale) -> Option<HardnessLimits> {
        match scale {
            Scale::Hrc => self.hrc,
            Scale::Hrb => self.hrb,
            Scale::Hv => self.hv,
            Scale::Hb => self.hb,
        }
    }
}

impl HardnessLimits {
    const fn to(scale: Scale, max: f64, source: Source) -> Self {
        Self { min: None, max: Some(Hardness { scale, number: max }), source }
    }

    const fn both(scale: Scale, min: f64, max: f64, source: Source) -> Self {
        Self {
            min: Some(Hardness { scale, number: min }),
            max: Some(Hardness { scale, number: max }),
            source,
        }
    }
}
