//! The kettle: the zinc a load takes, what is lost beside it, the bath and the wiping.
//!
//! It knows no steel: what the heat of the bath does to one is judged in the rules.

use crate::quantity::{Area, Density, Length, Mass, Temperature, Time};
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
/// `dross` and `ash` are shares of all the zinc used, together below one, as plants and documents
/// state them: what stays for the parts is the rest. They belong to the plant.
pub fn pick_up(area: Area, coat: Length, factor: Density, dross: f64, ash: f64) -> PickUp {
    let on_parts = (factor * coat) * area;
    let fed = on_parts / (1.0 - dross - ash);
    PickUp { on_parts, dross: fed * dross, ash: fed * ash, fed }
}

/// Baskets that a load fills; `capacity` above zero.
pub fn baskets(load: Mass, capacity: Mass) -> f64 {
    // One part in 10^9 of a basket is no basket.
    (load / capacity - 1e-9).ceil().max(1.0)
}

/// What a certificate says of the steel, in per cent.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Composition {
    /// Silicon and phosphorus together.
    pub si_p: Option<f64>,
    /// Silicon alone.
    pub si: Option<f64>,
}

/// How the steel reacts with the zinc.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reactivity {
    /// Nobody said what it holds.
    Unknown,
    /// Silicon alone is known, and what the steel does hangs on the phosphorus beside it.
    SiliconAlone,
    /// Silicon alone is known, and so much of it that the coat grows fast whatever the phosphorus.
    ByItsSilicon,
    /// Below the range: a bright, thinner coat.
    Quiet,
    /// From 0.03 to 0.13 % Si + P: a thick, dull coat in the normal bath.
    Reactive,
    /// Above the range, and silicon below where it is reactive again.
    Between,
    /// Above the range, and nobody said how much of it is silicon.
    AboveRange,
    /// Above the range of Si + P, with silicon up to 0.15 %: still reactive for ASTM A385, and below 0.14 %
    /// for ISO 14713-2.
    LowDisputed,
    /// So much silicon that documents differ: reactive again for ASTM A385, not yet for ISO 14713-2.
    Disputed,
    /// Silicon beyond 0.25 %: reactive again, and no document was found that says which bath.
    HighSilicon,
}

impl Composition {
    /// How the steel reacts with the zinc; the ends of a range belong to it.
    pub fn reactivity(self) -> Reactivity {
        // What is written to hundredths must not fall out of a range by the binary form of a number.
        let at_least = |value: f64, limit: f64| value >= limit - 1e-9;
        let above = |value: f64, limit: f64| value > limit + 1e-9;
        let (from, to) = practice::REACTIVE.value;
        let (a385, iso) = (practice::SILICON_A385.value, practice::SILICON_14713.value);
        let (fast_from, fast_to) = practice::SILICON_A385_LOW.value;
        // Phosphorus only adds: silicon alone is the least that both can be.
        let Some(sum) = self.si_p.or(self.si) else { return Reactivity::Unknown };
        match self.si {
            Some(si) if above(si, iso) => Reactivity::HighSilicon,
            Some(si) if above(si, a385) => Reactivity::Disputed,
            Some(si) if self.si_p.is_none() && !above(sum, to) && at_least(si, fast_from) => {
                Reactivity::ByItsSilicon
            }
            Some(_) if self.si_p.is_none() && !above(sum, to) => Reactivity::SiliconAlone,
            Some(si) if above(sum, to) && at_least(si, fast_from) && !above(si, fast_to) => {
                Reactivity::LowDisputed
            }
            _ if at_least(sum, from) && !above(sum, to) => Reactivity::Reactive,
            _ if !at_least(sum, from) => Reactivity::Quiet,
            Some(_) => Reactivity::Between,
            None => Reactivity::AboveRange,
        }
    }
}

impl Reactivity {
    /// What it means for the verdict.
    pub fn mark(self) -> Mark {
        match self {
            Self::Quiet | Self::Between => Mark::Met,
            Self::Unknown => Mark::Note,
            Self::SiliconAlone => Mark::NotJudged,
            Self::ByItsSilicon
            | Self::Reactive
            | Self::AboveRange
            | Self::LowDisputed
            | Self::Disputed
            | Self::HighSilicon => Mark::Condition,
        }
    }
}

/// The longest dip whose heat is no stronger than a temper, by the tempering parameter `P` in kelvin
/// times log hours: `t = 10^(P / T − 20)` hours.
pub fn longest_dip(temper: f64, bath: Temperature) -> Time {
    Time::from_hour(10f64.powf(temper / bath.kelvin() - 20.0))
}

/// How the zinc is taken off after the bath.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wiping {
    /// In the basket of a centrifuge.
    Spin,
    /// Too long for small baskets, short enough for large ones: which it is, nobody said.
    AskBasket,
    /// By a ring of air jets, or hung and shaken, one by one.
    AirRing,
    /// By a ring, and longer than what is said to be processed.
    TooLong,
}

impl Wiping {
    /// Whether the pieces are drawn out one by one.
    pub fn is_single(self) -> bool {
        matches!(self, Self::AirRing | Self::TooLong)
    }
}

/// Spin or air ring, by the overall length; `basket` is the inside length of the basket, if known.
///
/// What is shorter than a basket goes into it, bolt or rod; what is longer does not.
pub fn wiping(length: Length, basket: Option<Length>) -> Wiping {
    let (small, large) = practice::BASKETS.value;
    match basket {
        _ if length > practice::LONGEST_ROD.value => Wiping::TooLong,
        Some(basket) if length <= basket => Wiping::Spin,
        Some(_) => Wiping::AirRing,
        None if length <= small => Wiping::Spin,
        None if length <= large => Wiping::AskBasket,
        None => Wiping::AirRing,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(si_p: Option<f64>, si: Option<f64>) -> Reactivity {
        Composition { si_p, si }.reactivity()
    }

    /// ISO 10684: 0.03 to 0.13 % Si + P, both ends within; ASTM A385: above 0.22 % Si; ISO 14713-2:
    /// above 0.25 %.
    #[test]
    fn the_ends_of_the_reactive_range_belong_to_it() {
        assert_eq!(of(None, None), Reactivity::Unknown);
        assert_eq!(of(Some(0.03), None), Reactivity::Reactive);
        assert_eq!(of(Some(0.0003 / 0.01), None), Reactivity::Reactive);
        assert_eq!(of(Some(0.13), None), Reactivity::Reactive);
        assert_eq!(of(Some(0.029), None), Reactivity::Quiet);
        assert_eq!(of(Some(0.14), None), Reactivity::AboveRange);
        assert_eq!(of(Some(0.20), Some(0.18)), Reactivity::Between);
        assert_eq!(of(Some(0.25), Some(0.22)), Reactivity::Between);
        assert_eq!(of(Some(0.26), Some(0.24)), Reactivity::Disputed);
        assert_eq!(of(None, Some(0.3)), Reactivity::HighSilicon);
    }

    /// Silicon without phosphorus is not Si + P: 0.029 % once passed as below 0.03 %. ASTM A385 has the coat
    /// grow fast from 0.04 to 0.15 % silicon, ISO 14713-2 below 0.14 %.
    #[test]
    fn silicon_alone_is_no_sum_and_documents_may_differ() {
        assert_eq!(of(None, Some(0.029)), Reactivity::SiliconAlone);
        assert_eq!(of(None, Some(0.03)), Reactivity::SiliconAlone);
        // Reactive by both of them, whatever the phosphorus.
        assert_eq!(of(None, Some(0.1)), Reactivity::ByItsSilicon);
        assert_eq!(of(None, Some(0.18)), Reactivity::Between);
        assert_eq!(of(None, Some(0.145)), Reactivity::LowDisputed);
        assert_eq!(of(Some(0.16), Some(0.15)), Reactivity::LowDisputed);
        assert_eq!(of(Some(0.14), Some(0.12)), Reactivity::LowDisputed);
        assert_eq!(of(Some(0.17), Some(0.16)), Reactivity::Between);
    }

    /// A kettle fed 100 kg, of which 15 % leave as dross and 15 % as ash, puts 70 kg on the parts.
    #[test]
    fn dross_and_ash_are_shares_of_the_zinc_used() {
        let zinc = pick_up(
            Area::from_m2(70.0 / 0.36),
            Length::from_um(50.0),
            Density::from_g_m2_um(7.2),
            0.15,
            0.15,
        );
        assert!((zinc.fed.kg() - 100.0).abs() < 1e-9 && (zinc.dross.kg() - 15.0).abs() < 1e-9, "{zinc:?}");
    }

    #[test]
    fn the_length_decides_between_basket_and_ring() {
        let m = Length::from_m;
        assert_eq!(wiping(m(0.1), None), Wiping::Spin);
        assert_eq!(wiping(m(0.5), None), Wiping::AskBasket);
        assert_eq!(wiping(m(0.9), None), Wiping::AirRing);
        assert_eq!(wiping(m(0.9), Some(m(1.0))), Wiping::Spin);
        assert_eq!(wiping(m(0.1), Some(m(0.08))), Wiping::AirRing);
        assert_eq!(wiping(m(2.1), Some(m(3.0))), Wiping::TooLong);
    }

    /// A temper of one hour at 425 °C is worth 698.15 · 20 = 13963; at 455 °C that is
    /// 10^(13963 / 728.15 − 20) h = 0.150 h, nine minutes.
    #[test]
    fn the_longest_dip_is_worth_the_temper() {
        let temper =
            crate::steel::tempering::parameter(Temperature::from_celsius(425.0), Time::from_hour(1.0));
        let dip = longest_dip(temper, Temperature::from_celsius(455.0));
        assert!((dip.minute() - 9.0).abs() < 0.05, "{}", dip.minute());
    }
}
