//! The ranges a zinc bath is run in.

use crate::quantity::Temperature;
use crate::source::{Source, document};

/// The normal bath of ISO 10684.
pub const NORMAL: (Temperature, Temperature) =
    (Temperature::from_celsius(455.0), Temperature::from_celsius(480.0));
/// The high-temperature bath of ISO 10684; ASTM F2329 gives 990 to 1040 °F.
pub const HIGH: (Temperature, Temperature) =
    (Temperature::from_celsius(530.0), Temperature::from_celsius(560.0));

/// The coolest usual bath. Known by [`USUAL_SOURCE`].
pub const USUAL_FROM: Temperature = Temperature::from_celsius(445.0);

const NORMAL_SOURCE: Source = document::ISO_10684.read("5.4");
const HIGH_SOURCE: Source = document::ISO_10684.read("5.5");
const AVOIDED_SOURCE: Source = document::GALVANIZING_TEXT.memory("attack of zinc on iron by temperature");
const USUAL_SOURCE: Source = document::GALVANIZING_TEXT.read("usual bath, 445 to 465 °C");

/// The kind of a bath by its temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bath {
    /// Below the range of ISO 10684.
    Low,
    /// Its normal range, 455 to 480 °C.
    Normal,
    /// Between the two ranges, where zinc attacks iron fastest.
    Avoided,
    /// High temperature, 530 to 560 °C.
    High,
    /// Above every range.
    Beyond,
}

impl Bath {
    /// The kind of a bath; a hundredth of a degree is allowed for the rounding of °F.
    pub fn of(bath: Temperature) -> Self {
        let (celsius, slack) = (bath.celsius(), 0.01);
        if celsius < NORMAL.0.celsius() - slack {
            Self::Low
        } else if celsius <= NORMAL.1.celsius() + slack {
            Self::Normal
        } else if celsius < HIGH.0.celsius() - slack {
            Self::Avoided
        } else if celsius <= HIGH.1.celsius() + slack {
            Self::High
        } else {
            Self::Beyond
        }
    }

    /// Its coolest and its hottest; a range without an end has none.
    pub const fn range(self) -> (Option<Temperature>, Option<Temperature>) {
        match self {
            Self::Low => (None, Some(NORMAL.0)),
            Self::Normal => (Some(NORMAL.0), Some(NORMAL.1)),
            Self::Avoided => (Some(NORMAL.1), Some(HIGH.0)),
            Self::High => (Some(HIGH.0), Some(HIGH.1)),
            Self::Beyond => (Some(HIGH.1), None),
        }
    }

    /// Where the range is published.
    pub const fn source(self) -> Source {
        match self {
            Self::Low => USUAL_SOURCE,
            Self::Normal => NORMAL_SOURCE,
            Self::Avoided => AVOIDED_SOURCE,
            Self::High | Self::Beyond => HIGH_SOURCE,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The baths of ISO 10684 and what lies between them follow on each other.
    #[test]
    fn the_ranges_of_baths_follow_on_each_other() {
        let all = [Bath::Low, Bath::Normal, Bath::Avoided, Bath::High, Bath::Beyond];
        assert_eq!(all[0].range().0, None);
        for (bath, next) in all.iter().zip(&all[1..]) {
            assert!(bath.range().1.is_some() && bath.range().1 == next.range().0, "{bath:?}");
        }
        assert_eq!(all[4].range().1, None);
        let celsius = |bath: Bath| bath.range().0.map(|from| from.celsius().round());
        assert_eq!(all.map(celsius), [None, Some(455.0), Some(480.0), Some(530.0), Some(560.0)]);
    }
}
