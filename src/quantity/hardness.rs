//! Hardness: a number that means nothing without its scale.

use super::{Shown, Unit, unit};

/// A hardness scale. Scales convert into each other by published tables only, never by a factor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scale {
    /// Rockwell C.
    Hrc,
    /// Rockwell B.
    Hrb,
    /// Vickers.
    Hv,
    /// Brinell, with a hard-metal ball.
    Hb,
}

/// A hardness reading or limit on its own scale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hardness {
    /// The scale.
    pub scale: Scale,
    /// The number on that scale.
    pub number: f64,
}

impl Scale {
    /// The scale as a unit, for a field that offers several.
    pub fn unit(self) -> &'static Unit {
        match self {
            Self::Hrc => &unit::HRC,
            Self::Hrb => &unit::HRB,
            Self::Hv => &unit::HV,
            Self::Hb => &unit::HB,
        }
    }

    /// The scale whose unit this is.
    pub fn of_unit(unit: &Unit) -> Option<Self> {
        [Self::Hrc, Self::Hrb, Self::Hv, Self::Hb].into_iter().find(|scale| scale.unit() == unit)
    }
}

impl Hardness {
    /// Rockwell C.
    pub const fn hrc(number: f64) -> Self {
        Self { scale: Scale::Hrc, number }
    }
    /// Rockwell B.
    pub const fn hrb(number: f64) -> Self {
        Self { scale: Scale::Hrb, number }
    }
    /// Vickers.
    pub const fn hv(number: f64) -> Self {
        Self { scale: Scale::Hv, number }
    }
    /// Brinell.
    pub const fn hb(number: f64) -> Self {
        Self { scale: Scale::Hb, number }
    }

    /// As shown with so many decimals.
    pub fn show(self, decimals: u8) -> Shown {
        Shown { number: self.number, unit: self.scale.unit(), decimals }
    }
}
