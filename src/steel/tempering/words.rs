//! The reasons in words. Nothing is judged here.

use super::super::hydrogen;
use super::{
    Against, Bath, Heat, NO_RETEST_SOURCE, Outcome, PARAMETER_SOURCE, Rule, Ruling, STILL_MET_SOURCE,
    parameter,
};
use crate::quantity::{Quantity, Temperature, unit};
use crate::sentence::capital;
use crate::source::{Source, document};
use crate::table::astm_a574;

impl Outcome {
    /// A ruling in words; a condition is said as an instruction.
    pub fn text(&self, ruling: &Ruling) -> String {
        match ruling.rule {
            Rule::A490 => {
                "ASTM F3125 does not allow grade A490 to be hot-dip galvanized, in any bath".to_owned()
            }
            Rule::HighTemperature => {
                "ISO 10684 forbids the high-temperature bath for class 10.9 from M27: it cracks the steel"
                    .to_owned()
            }
            Rule::Bath => self.bath.text().to_owned(),
            Rule::Heat(heat) => self.heat_text(heat),
            Rule::A574Check => {
                let (heat, time, _) = astm_a574::VERIFICATION;
                let check = super::one_hour(parameter(heat, time));
                format!(
                    "ASTM A574 proves its temper at {} for {}, like one hour at {}; the dip is like one hour at {}",
                    heat.show(&unit::FAHRENHEIT, 0),
                    time.show(&unit::MINUTE, 0),
                    whole(check),
                    whole(self.dip_one_hour)
                )
            }
        }
    }

    fn heat_text(&self, heat: Heat) -> String {
        let Some(against) = &self.temper else {
            return "This steel is not tempered, so the bath has no temper to take; its standard still has to be \
                    met after galvanizing"
                .to_owned();
        };
        let actual = against.temper.least_of.is_none();
        let asked = if actual {
            "verify hardness and proof load after galvanizing"
        } else {
            "get the actual temper from the maker, or verify hardness and proof load after galvanizing"
        };
        let named = against.named();
        let hours = format!("the dip is like one hour at {}", whole(self.dip_one_hour));
        match heat {
            Heat::NoTemper => String::new(),
            Heat::Below => format!("The bath stays below {named}: no mechanical test has to be repeated"),
            Heat::NotStronger => {
                format!(
                    "The bath is no cooler than {named}, but {hours}, no stronger than the temper: {asked}"
                )
            }
            Heat::StrongerCovered => format!(
                "{} and stronger than {named}: the steel softens; {asked}, or keep the bath at {} or below",
                capital(&hours),
                whole(against.hottest_bath)
            ),
            Heat::Stronger => {
                let remedy = if actual { "" } else { " (an actual temper that is higher can change this)" };
                format!(
                    "{} and stronger than {named}: the bath takes the temper away{remedy}",
                    capital(&hours)
                )
            }
        }
    }
}

impl Against {
    /// `the actual temper (480 °C for 1.5 h)`.
    fn named(&self) -> String {
        let whose = match self.temper.least_of {
            None => "the actual temper",
            Some(_) => "the least temper of the standard",
        };
        let hours = self.temper.time.hour();
        let decimals = u8::from((hours - hours.round()).abs() > 1e-9);
        let time = self.temper.time.show(&unit::HOUR, decimals);
        format!("{whose} ({} for {time})", whole(self.temper.temperature))
    }
}

impl Ruling {
    /// Where the rule is published.
    pub fn source(&self, outcome: &Outcome) -> Source {
        match self.rule {
            Rule::A490 => hydrogen::Rule::F3125Kettle.source(),
            Rule::HighTemperature => document::ISO_10684.read("5.5"),
            Rule::Bath => outcome.bath.source(),
            Rule::Heat(Heat::NoTemper) => STILL_MET_SOURCE,
            Rule::Heat(Heat::Below | Heat::NotStronger) => NO_RETEST_SOURCE,
            Rule::Heat(Heat::StrongerCovered) => STILL_MET_SOURCE,
            Rule::Heat(Heat::Stronger) => PARAMETER_SOURCE,
            Rule::A574Check => astm_a574::VERIFICATION.2,
        }
    }
}

impl Bath {
    /// The kind of bath in words.
    pub const fn text(self) -> &'static str {
        match self {
            Self::Low => "The bath is below the 455 °C of ISO 10684; baths from 445 °C are usual",
            Self::Normal => "A normal bath by ISO 10684, 455 to 480 °C",
            Self::Avoided => {
                "Between 480 and 530 °C zinc attacks iron fastest and no standard has a bath: \
                 run at 480 °C or below, or from 530 °C in a ceramic kettle"
            }
            Self::High => {
                "A high-temperature bath, 530 to 560 °C, in a ceramic kettle: a thin, smooth, dull coat"
            }
            Self::Beyond => "Hotter than any bath of ISO 10684, which ends at 560 °C",
        }
    }
}

fn whole(temperature: Temperature) -> String {
    temperature.show(&unit::CELSIUS, 0).to_string()
}
