//! The heat of a dip beside the temper of the steel.
//!
//! The tempering parameter `T (20 + log10 t)` compares heat: a dip lasts minutes where a temper lasts
//! an hour, so a bath hotter than the temper need not soften the steel. How much a steel softens is
//! not computed: no table for it was found. Dip and temper are compared as whole degrees of a
//! one-hour temper, which is finer than the constant 20 is known. What follows from it is judged in
//! `rule::heat`.

use super::grade::Properties;
use crate::quantity::{Temperature, TemperatureDifference, Time};
use crate::source::{Source, assumed, document};
use crate::table::Refusal;
use crate::table::steel_row::Treatment;

mod bath;

pub use bath::{Bath, HIGH, NORMAL, USUAL_FROM};

/// Where the tempering parameter is published.
pub const PARAMETER_SOURCE: Source = document::HOLLOMON_JAFFE.read("as restated, with C = 20 and hours");
/// How long a temper is taken to last where only its temperature is known.
pub const ONE_HOUR_ASSUMED: Source = assumed("a temper of one hour");
/// No retest below the temper.
pub const NO_RETEST_SOURCE: Source = document::ASTM_F2329.read("7.1");
/// The properties must still be met after galvanizing.
pub const STILL_MET_SOURCE: Source = document::AS_NZS_1214.read("7");

/// A temper: how hot and how long.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Temper {
    /// Its temperature.
    pub temperature: Temperature,
    /// Its time.
    pub time: Time,
    /// `None` if it is the actual temper of the part; else the standard whose least it is.
    pub least_of: Option<Source>,
}

/// A dip: what goes into which bath for how long.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dip {
    /// The grade at its size, if known.
    pub grade: Option<Properties>,
    /// The actual temper, if known; else the least of the grade is taken.
    pub temper: Option<Temper>,
    /// The bath.
    pub bath: Temperature,
    /// Time in the bath.
    pub time: Time,
}

/// What the heat does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effect {
    /// Parameter of the dip, kelvin times log hours.
    pub dip_parameter: f64,
    /// The one-hour temper to which the dip is equal.
    pub dip_one_hour: Temperature,
    /// What the temper makes of it; `None` where the steel has no temper to lose.
    pub temper: Option<Against>,
    /// What kind of bath it is.
    pub bath: Bath,
    /// How hot it is.
    pub bath_temperature: Temperature,
    /// How long the part stays in it.
    pub time: Time,
}

/// The dip against the temper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Against {
    /// The temper it is judged by.
    pub temper: Temper,
    /// Its parameter.
    pub parameter: f64,
    /// The one-hour temper to which it is equal.
    pub one_hour: Temperature,
    /// Temper less bath; negative where the bath is hotter.
    pub margin: TemperatureDifference,
    /// The same of the equal one-hour tempers: what the dip leaves.
    pub one_hour_margin: TemperatureDifference,
    /// Whether the dip is the stronger, in whole degrees of a one-hour temper.
    pub dip_is_stronger: bool,
    /// The hottest bath in which this dip is no stronger than the temper.
    pub hottest_bath: Temperature,
}

/// The tempering parameter: `T (20 + log10 t)`, with kelvin and hours.
pub fn parameter(temperature: Temperature, time: Time) -> f64 {
    temperature.kelvin() * weight(time)
}

/// What the time weighs in it.
fn weight(time: Time) -> f64 {
    20.0 + time.hour().log10()
}

/// The one-hour temper with this parameter.
pub fn one_hour(parameter: f64) -> Temperature {
    // log10 of one hour is zero.
    Temperature::from_kelvin(parameter / 20.0)
}

/// What a dip does to the temper.
///
/// # Errors
/// A [`Refusal`] where the steel is tempered and neither its temper nor the least of its
/// standard is known.
pub fn effect(dip: &Dip) -> Result<Effect, Refusal> {
    let of_dip = weight(dip.time);
    let dip_parameter = dip.bath.kelvin() * of_dip;
    let dip_one_hour = one_hour(dip_parameter);
    let temper = dip.temper_to_judge_by()?.map(|temper| against(temper, dip, (dip_one_hour, of_dip)));
    Ok(Effect {
        dip_parameter,
        dip_one_hour,
        temper,
        bath: Bath::of(dip.bath),
        bath_temperature: dip.bath,
        time: dip.time,
    })
}

fn against(temper: Temper, dip: &Dip, (dip_one_hour, of_dip): (Temperature, f64)) -> Against {
    let parameter = parameter(temper.temperature, temper.time);
    let one_hour = one_hour(parameter);
    let whole = |temperature: Temperature| temperature.celsius().round_ties_even();
    Against {
        temper,
        parameter,
        one_hour,
        margin: temper.temperature - dip.bath,
        one_hour_margin: one_hour - dip_one_hour,
        dip_is_stronger: whole(dip_one_hour) > whole(one_hour),
        hottest_bath: Temperature::from_kelvin(parameter / of_dip),
    }
}

impl Dip {
    /// The actual temper, else the least of the grade; `None` where the grade has none to lose.
    fn temper_to_judge_by(&self) -> Result<Option<Temper>, Refusal> {
        match (self.temper, self.grade) {
            (Some(temper), _) => Ok(Some(temper)),
            (None, Some(grade)) if grade.treatment() == Treatment::NotHeatTreated => Ok(None),
            (None, Some(grade)) => {
                let min = grade.temper_min()?;
                let time = Time::from_hour(1.0);
                Ok(Some(Temper { temperature: min.value, time, least_of: Some(min.source) }))
            }
            (None, None) => Err(Refusal::blank(
                "the tempering temperature of a steel without a grade",
                document::ASTM_F2329.read("7.1"),
            )),
        }
    }
}

impl Temper {
    /// An actual temper.
    pub const fn actual(temperature: Temperature, time: Time) -> Self {
        Self { temperature, time, least_of: None }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Grade;
    use super::*;

    #[test]
    fn the_dip_as_a_one_hour_temper() {
        let equal = one_hour(parameter(Temperature::from_celsius(465.0), Time::from_minute(5.0)));
        assert_eq!(equal.celsius().round(), 425.0);
        assert!((Temperature::from_fahrenheit(860.0).celsius() - 460.0).abs() < 1e-9);
    }

    #[test]
    fn an_unknown_temper_stays_unknown() {
        let dip = Dip {
            grade: Grade::Nut10.any_size(),
            temper: None,
            bath: Temperature::from_celsius(455.0),
            time: Time::from_minute(4.0),
        };
        assert!(effect(&dip).unwrap_err().to_string().contains("open ISO 898-2"));
    }
}
