//! The kettle: the zinc a load takes, what is lost beside it, the bath and the wiping.
//!
//! It knows no steel: what the heat of the bath does to one is judged in the rules.

use crate::quantity::{Area, Density, Length, Mass};
use crate::table::hotdip_process as practice;
use crate::working::Mark;

/// The zinc of a load.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PickUp {
    /// Zinc on the parts.
    pub on_parts: Mass,
    /// Zinc that leaves with the dross.
    pub dross: Mass,
    /// Zinc that leaves with the ash.
    pub ash: Mass,
    /// All of it: what the kettle must be fed.
    pub fed: Mass,
}

/// The zinc a load takes: area times thickness times factor, and what dross and ash take beside it.
///
/// `dross` and `ash` are zinc lost for the zinc on the parts; they belong to the plant.
pub fn pick_up(area: Area, coat: Length, factor: Density, dross: f64, ash: f64) -> PickUp {
    let on_parts = (factor * coat) * area;
    let share = |share: f64| on_parts * share;
    PickUp { on_parts, dross: share(dross), ash: share(ash), fed: share(1.0 + dross + ash) }
}

/// Baskets that a load fills; `capacity` above zero.
pub fn baskets(load: Mass, capacity: Mass) -> f64 {
    // One part in 10^9 of a basket is no basket.
    (load / capacity - 1e-9).ceil().max(1.0)
}

/// What is said of the two baths.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bath {
    /// The normal bath does; nothing asks for another.
    Normal,
    /// Normal; the high-temperature bath is forbidden.
    NormalOnly,
    /// A reactive steel: high temperature is advised.
    High,
    /// A reactive steel that may not go into the high-temperature bath.
    Neither,
    /// The steel is not known: normal, unless it is reactive.
    Unknown,
}

impl Bath {
    /// What it means for the verdict.
    pub fn mark(self) -> Mark {
        match self {
            Self::Normal => Mark::Met,
            Self::NormalOnly | Self::Unknown => Mark::Note,
            Self::High | Self::Neither => Mark::Condition,
        }
    }
}

/// The bath for a steel of this silicon and phosphorus, in per cent, by ISO 10684; the
/// high-temperature bath may be forbidden to the part.
pub fn bath(si_p: Option<f64>, high_forbidden: bool) -> Bath {
    let (from, to) = practice::REACTIVE.value;
    match si_p {
        Some(si_p) if (from..=to).contains(&si_p) && high_forbidden => Bath::Neither,
        Some(si_p) if (from..=to).contains(&si_p) => Bath::High,
        _ if high_forbidden => Bath::NormalOnly,
        Some(_) => Bath::Normal,
        None => Bath::Unknown,
    }
}

/// How the zinc is taken off after the bath.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wiping {
    /// In the basket of a centrifuge.
    Spin,
    /// By a ring of air jets, one by one.
    AirRing,
    /// By a ring, and longer than what is said to be processed.
    TooLong,
}

/// Spin or air ring, by length and shape; `basket` is the inside length of the basket, if known.
pub fn wiping(is_rod: bool, length: Length, basket: Option<Length>) -> Wiping {
    let spun = basket.map_or(!is_rod, |basket| length <= basket);
    match spun {
        _ if length > practice::LONGEST_ROD.value => Wiping::TooLong,
        true => Wiping::Spin,
        false => Wiping::AirRing,
    }
}
