//! The range a field admits, in every scale and unit that may be written in it.

use super::Fault;
use crate::quantity::{Scale, Shown, Unit, unit};

/// An admissible range, inclusive.
#[derive(Debug, Clone, Copy)]
pub enum Bound {
    /// From one value to another, and why.
    Between(Shown, Shown, &'static str),
    /// From the least that anybody would write, which is above zero, to the greatest value, and why that one.
    PositiveTo(Shown, Shown, &'static str),
    /// Zero or more, up to the greatest value, and why.
    ZeroTo(Shown, &'static str),
    /// One for each dimension or hardness scale: a factor leads from none of them to another.
    Each(&'static [Self]),
}

/// What a bound says of a unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ends {
    /// Least admissible.
    pub min: Shown,
    /// Why nothing less; empty where that needs no reason.
    pub why_min: &'static str,
    /// Greatest admissible; `None` where the bound says nothing of this dimension or scale.
    pub max: Option<Shown>,
    /// Why nothing more.
    pub why_max: &'static str,
}

/// Hardness on any scale, as far as the conversion tables reach: ASTM E140 Tables 1 and 2, and
/// ISO 18265 Table A.1 for the softest in HV and HB.
pub const HARDNESS: Bound = Bound::Each(&[
    Bound::Between(
        scale(20.0, &unit::HRC),
        scale(68.0, &unit::HRC),
        "Rockwell C is tabulated from 20 to 68; give a softer steel in HV, HB or HRB",
    ),
    Bound::Between(scale(80.0, &unit::HV), scale(940.0, &unit::HV), "Vickers is tabulated from 80 to 940"),
    Bound::Between(scale(76.0, &unit::HB), scale(615.0, &unit::HB), "Brinell is tabulated from 76 to 615"),
    Bound::Between(
        scale(55.0, &unit::HRB),
        scale(100.0, &unit::HRB),
        "Rockwell B is tabulated from 55 to 100; give a harder steel in HRC, HV or HB",
    ),
]);

const fn scale(number: f64, unit: &'static Unit) -> Shown {
    Shown { number, unit, decimals: 0 }
}

impl Bound {
    /// What it says of numbers written in this unit; `None` where it says nothing at all.
    pub fn ends(&self, unit: &'static Unit) -> Option<Ends> {
        let zero = Shown { number: 0.0, unit, decimals: 0 };
        let applies = |limit: &Shown| limit.unit.dimension == unit.dimension && same_scale(limit.unit, unit);
        match *self {
            Self::Between(min, max, why) => {
                applies(&min).then_some(Ends { min, why_min: why, max: Some(max), why_max: why })
            }
            Self::PositiveTo(min, max, why_max) => {
                let (min, why_min) = if applies(&min) { (min, "check the unit") } else { (zero, "") };
                Some(Ends { min, why_min, max: Some(max).filter(applies), why_max })
            }
            Self::ZeroTo(max, why_max) => {
                Some(Ends { min: zero, why_min: "", max: Some(max).filter(applies), why_max })
            }
            Self::Each(bounds) => {
                bounds.iter().filter_map(|bound| bound.ends(unit)).find(|ends| ends.max.is_some())
            }
        }
    }

    /// The fault of a value outside, with the unit that was meant if the number fits one of `offered`.
    pub(super) fn fault(&self, value: Shown, offered: &[&'static Unit]) -> Option<Fault> {
        let Ends { min, why_min, max, why_max } = self.ends(value.unit)?;
        let in_unit = |unit: &&'static Unit| Shown { unit, ..value };
        let named = |other: &Shown| other.unit != value.unit && !other.unit.symbol.is_empty();
        let meant = offered
            .iter()
            .map(in_unit)
            .find(|other| named(other) && self.ends(other.unit).is_some_and(|ends| ends.hold(other)));
        if base(&value) < base(&min) {
            return Some(Fault::TooSmall { value, min, why: why_min, meant });
        }
        let too_large = |max: &Shown| base(&value) > base(max);
        max.filter(too_large).map(|max| Fault::TooLarge { value, max, why: why_max, meant })
    }
}

impl Ends {
    fn hold(&self, value: &Shown) -> bool {
        base(value) >= base(&self.min) && self.max.is_none_or(|max| base(value) <= base(&max))
    }
}

fn base(shown: &Shown) -> f64 {
    shown.number * shown.unit.factor + shown.unit.offset
}

/// Hardness scales do not convert by a factor: a bound holds on its own scale only.
fn same_scale(limit: &Unit, written: &Unit) -> bool {
    match (Scale::of_unit(limit), Scale::of_unit(written)) {
        (None, None) => true,
        (limit, written) => limit == written,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::table::{astm_e140, iso_18265};

    /// The bounds of hardness are the ends of the tables.
    #[test]
    fn hardness_ends_where_the_tables_end() {
        let ends = |unit: &'static Unit| {
            let ends = HARDNESS.ends(unit).unwrap();
            (ends.min.number, ends.max.unwrap().number)
        };
        let (rockwell, soft, iso) = (astm_e140::TABLE_1, astm_e140::TABLE_2, iso_18265::TABLE_A_1);
        let (first, last) = (rockwell.first().unwrap(), rockwell.last().unwrap());
        let brinell = rockwell.iter().rfind(|row| row.hrc <= astm_e140::TABLE_1_BRINELL_TO).unwrap();
        assert_eq!(ends(&unit::HRC), (first.hrc, last.hrc));
        assert_eq!(ends(&unit::HV), (iso.first().unwrap().hv, last.hv));
        assert_eq!(ends(&unit::HB), (iso.first().unwrap().hb.unwrap(), brinell.hb.unwrap()));
        assert_eq!(ends(&unit::HRB), (soft.first().unwrap().hrb, soft.last().unwrap().hrb));
    }

    /// A bound in °C holds for °F: 420 °C is 788 °F, 560 °C 1040 °F. A number without a sign is no unit that could
    /// have been meant.
    #[test]
    fn a_bound_holds_in_every_unit() {
        let of = |number, unit| Shown { number, unit, decimals: 0 };
        let bath = Bound::Between(of(420.0, &unit::CELSIUS), of(560.0, &unit::CELSIUS), "");
        let is_wrong = |number, unit| bath.fault(of(number, unit), &[]).is_some();
        for (fahrenheit, wrong) in [(787.0, true), (789.0, false), (1039.0, false), (1041.0, true)] {
            assert_eq!(is_wrong(fahrenheit, &unit::FAHRENHEIT), wrong, "{fahrenheit} °F");
        }
        let share = Bound::ZeroTo(of(80.0, &unit::PERCENT), "");
        let told =
            |number, unit| share.fault(of(number, unit), &[&unit::ONE, &unit::PERCENT]).unwrap().to_string();
        assert!(
            told(30.0, &unit::ONE).ends_with("if % was meant, write 30\u{a0}%"),
            "{}",
            told(30.0, &unit::ONE)
        );
        let least = Bound::Between(of(1.0, &unit::ONE), of(100.0, &unit::ONE), "");
        let half = least.fault(of(50.0, &unit::PERCENT), &[&unit::ONE, &unit::PERCENT]).unwrap().to_string();
        assert!(!half.contains("was meant"), "{half}");
    }

    #[test]
    fn a_number_on_the_wrong_scale_is_told_the_right_one() {
        let fault = |number, unit| {
            let value = Shown { number, unit, decimals: 0 };
            HARDNESS.fault(value, &[&unit::HRC, &unit::HV]).map(|fault| fault.to_string())
        };
        assert_eq!(
            fault(350.0, &unit::HRC).as_deref(),
            Some(
                "350\u{a0}HRC must be at most 68\u{a0}HRC: Rockwell C is tabulated from 20 to 68; give a softer \
                 steel in HV, HB or HRB; if HV was meant, write 350\u{a0}HV"
            )
        );
        assert_eq!(
            fault(-5.0, &unit::HV).as_deref(),
            Some("−5\u{a0}HV must be at least 80\u{a0}HV: Vickers is tabulated from 80 to 940")
        );
        assert_eq!(fault(350.0, &unit::HV), None);
    }
}
