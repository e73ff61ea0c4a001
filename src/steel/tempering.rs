//! The heat of the bath against the temper of the steel.
//!
//! Two questions, asked apart. ASTM F2329 compares temperatures: below the tempering temperature
//! no mechanical test has to be repeated. The tempering parameter `T (20 + log10 t)` compares heat:
//! a dip lasts minutes where a temper lasts an hour, so a bath hotter than the temper need not
//! soften the steel. The verdict puts them together like this:
//!
//! - bath cooler than the temper, and the dip no stronger than the temper: nothing is asked;
//! - bath as hot or hotter, dip no stronger than the temper: get the actual temper, or test;
//! - dip stronger than the temper: ruled out, unless ISO 10684 takes in the class and the bath. It
//!   covers bolts to class 10.9 in baths to 480 °C and from 530 to 560 °C and leaves the proof to
//!   hardness and proof load after galvanizing, so the condition is that test.
//!
//! How much a steel softens is not computed: no table for it was found. Dip and temper are compared
//! as whole degrees of a one-hour temper, which is finer than the constant 20 is known.

use super::grade::Properties;
use super::{Grade, Standing};
use crate::quantity::{Length, Temperature, TemperatureDifference, Time};
use crate::source::{Source, assumed, document};
use crate::table::steel_row::Treatment;
use crate::table::{Refusal, hotdip_process};

mod bath;
mod words;

pub use bath::{Bath, HIGH, NORMAL};

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

/// What is judged.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Case {
    /// The grade at its size, if known.
    pub grade: Option<Properties>,
    /// The nominal diameter, if known.
    pub diameter: Option<Length>,
    /// The actual temper, if known; else the least of the grade is taken.
    pub temper: Option<Temper>,
    /// The bath.
    pub bath: Temperature,
    /// Time in the bath.
    pub dip: Time,
}

/// What the heat does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// Parameter of the dip, kelvin times log hours.
    pub dip_parameter: f64,
    /// The one-hour temper to which the dip is equal.
    pub dip_one_hour: Temperature,
    /// What the temper makes of it; `None` where the steel has no temper to lose.
    pub temper: Option<Against>,
    /// What kind of bath it is.
    pub bath: Bath,
    rulings: [Option<Ruling>; 5],
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

/// One reason.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ruling {
    /// The rule.
    pub rule: Rule,
    /// What it means.
    pub standing: Standing,
}

/// The rules.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rule {
    /// ASTM F3125: grade A490 is not hot-dipped.
    A490,
    /// ISO 10684: no high-temperature bath for class 10.9 from M27.
    HighTemperature,
    /// The bath's own range.
    Bath,
    /// Temperature and heat against the temper.
    Heat(Heat),
    /// ASTM A574 checks its temper at a heat of its own.
    A574Check,
}

/// How the dip stands to the temper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Heat {
    /// The steel was not tempered.
    NoTemper,
    /// Cooler than the temper, and not stronger.
    Below,
    /// As hot or hotter, but not stronger, for so short a time.
    NotStronger,
    /// Stronger, in a class and a bath that ISO 10684 takes in.
    StrongerCovered,
    /// Stronger, and no standard takes it in.
    Stronger,
}

/// The tempering parameter: `T (20 + log10 t)`, with kelvin and hours.
pub fn parameter(temperature: Temperature, time: Time) -> f64 {
    temperature.kelvin() * (20.0 + time.hour().log10())
}

/// The one-hour temper with this parameter.
pub fn one_hour(parameter: f64) -> Temperature {
    // log10 of one hour is zero.
    Temperature::from_kelvin(parameter / 20.0)
}

/// Judges a dip.
///
/// # Errors
/// A [`Refusal`] where the steel is tempered and neither its temper nor the least of its
/// standard is known.
pub fn judge(case: &Case) -> Result<Outcome, Refusal> {
    let dip_parameter = parameter(case.bath, case.dip);
    let dip_one_hour = one_hour(dip_parameter);
    let bath = Bath::of(case.bath);
    let temper = case.temper_to_judge_by()?;
    let against = temper.map(|temper| against(temper, case, dip_one_hour));
    let grade = case.grade.map(|properties| properties.grade);

    let heat = match against {
        None => Heat::NoTemper,
        Some(against) if against.dip_is_stronger && covered(grade, bath) => Heat::StrongerCovered,
        Some(against) if against.dip_is_stronger => Heat::Stronger,
        Some(against) if against.margin.kelvin() > 0.0 => Heat::Below,
        Some(_) => Heat::NotStronger,
    };
    let rulings = [
        (grade == Some(Grade::A490)).then_some(Ruling { rule: Rule::A490, standing: Standing::Bar }),
        (bath == Bath::High && forbids_high_bath(grade, case.diameter))
            .then_some(Ruling { rule: Rule::HighTemperature, standing: Standing::Bar }),
        Some(Ruling { rule: Rule::Bath, standing: bath.standing() }),
        Some(Ruling { rule: Rule::Heat(heat), standing: heat.standing() }),
        (grade == Some(Grade::A574)).then_some(Ruling { rule: Rule::A574Check, standing: Standing::Note }),
    ];
    Ok(Outcome { dip_parameter, dip_one_hour, temper: against, bath, rulings })
}

/// Whether ISO 10684 keeps a bolt out of the high-temperature bath: class 10.9 from M27.
pub fn forbids_high_bath(grade: Option<Grade>, diameter: Option<Length>) -> bool {
    grade == Some(Grade::Class10_9)
        && diameter.is_some_and(|diameter| diameter >= hotdip_process::NO_HIGH_BATH_FROM)
}

fn against(temper: Temper, case: &Case, dip_one_hour: Temperature) -> Against {
    let parameter = parameter(temper.temperature, temper.time);
    let one_hour = one_hour(parameter);
    let whole = |temperature: Temperature| temperature.celsius().round_ties_even();
    Against {
        temper,
        parameter,
        one_hour,
        margin: temper.temperature - case.bath,
        one_hour_margin: one_hour - dip_one_hour,
        dip_is_stronger: whole(dip_one_hour) > whole(one_hour),
        hottest_bath: Temperature::from_kelvin(parameter / (20.0 + case.dip.hour().log10())),
    }
}

/// Whether ISO 10684 takes in the class and the bath.
fn covered(grade: Option<Grade>, bath: Bath) -> bool {
    grade.and_then(Grade::in_iso_10684) == Some(true) && matches!(bath, Bath::Low | Bath::Normal | Bath::High)
}

impl Case {
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

impl Outcome {
    /// The reasons that apply.
    pub fn rulings(&self) -> impl Iterator<Item = &Ruling> {
        self.rulings.iter().flatten()
    }

    /// The worst of them.
    pub fn standing(&self) -> Standing {
        self.rulings().map(|ruling| ruling.standing).max().unwrap_or(Standing::Met)
    }

    /// How the dip stands to the temper.
    pub fn heat(&self) -> Heat {
        let heat = self.rulings().find_map(|ruling| match ruling.rule {
            Rule::Heat(heat) => Some(heat),
            _ => None,
        });
        heat.unwrap_or(Heat::NoTemper)
    }
}

impl Heat {
    /// What it means.
    pub const fn standing(self) -> Standing {
        match self {
            Self::NoTemper => Standing::Note,
            Self::Below => Standing::Met,
            Self::NotStronger | Self::StrongerCovered => Standing::Condition,
            Self::Stronger => Standing::Bar,
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
    use super::*;

    fn dip(grade: Grade, mm: f64, bath: Temperature, minutes: f64) -> Outcome {
        let diameter = Length::from_mm(mm);
        let case = Case {
            grade: Some(grade.properties(diameter).unwrap()),
            diameter: Some(diameter),
            temper: None,
            bath,
            dip: Time::from_minute(minutes),
        };
        judge(&case).unwrap()
    }

    #[test]
    fn the_dip_as_a_one_hour_temper() {
        let equal = one_hour(parameter(Temperature::from_celsius(465.0), Time::from_minute(5.0)));
        assert_eq!(equal.celsius().round(), 425.0);
        assert!((Temperature::from_fahrenheit(860.0).celsius() - 460.0).abs() < 1e-9);
    }

    #[test]
    fn the_verdict_of_a_usual_bath() {
        let usual = Temperature::from_fahrenheit(860.0);
        let cases = [
            (Grade::A193B7, 20.0, Standing::Met),
            (Grade::Class10_9, 20.0, Standing::Condition),
            (Grade::Class8_8, 20.0, Standing::Condition),
            (Grade::A325, 20.0, Standing::Condition),
            (Grade::A194Grade2H, 20.0, Standing::Condition),
            (Grade::A574, 10.0, Standing::Bar),
            (Grade::J429Grade8_2, 20.0, Standing::Bar),
            (Grade::A490, 20.0, Standing::Bar),
            (Grade::Class4_6, 20.0, Standing::Note),
        ];
        for (grade, mm, standing) in cases {
            assert_eq!(dip(grade, mm, usual, 5.0).standing(), standing, "{}", grade.name());
        }
    }

    #[test]
    fn high_temperature_and_the_zone_between() {
        let at = |celsius, mm| dip(Grade::Class10_9, mm, Temperature::from_celsius(celsius), 3.0);
        assert_eq!(at(480.0, 30.0).standing(), Standing::Condition);
        assert_eq!(at(500.0, 30.0).standing(), Standing::Bar);
        assert_eq!(at(530.0, 24.0).standing(), Standing::Condition);
        for celsius in [530.0, 545.0, 560.0] {
            assert_eq!(at(celsius, 27.0).standing(), Standing::Bar);
        }
        assert_eq!(at(561.0, 24.0).standing(), Standing::Bar);
    }

    #[test]
    fn an_actual_temper_decides() {
        let mut case = Case {
            grade: Grade::J429Grade8.any_size(),
            diameter: None,
            temper: Some(Temper::actual(Temperature::from_celsius(480.0), Time::from_hour(1.0))),
            bath: Temperature::from_celsius(455.0),
            dip: Time::from_minute(4.0),
        };
        assert_eq!(judge(&case).unwrap().heat(), Heat::Below);
        case.temper = Some(Temper::actual(Temperature::from_celsius(400.0), Time::from_hour(1.0)));
        assert_eq!(judge(&case).unwrap().heat(), Heat::Stronger);
        // A temper of a minute is outdone by a longer dip in a cooler bath.
        case.temper = Some(Temper::actual(Temperature::from_celsius(460.0), Time::from_minute(1.0)));
        assert_eq!(judge(&case).unwrap().heat(), Heat::Stronger);
    }

    #[test]
    fn an_unknown_temper_stays_unknown() {
        let case = Case {
            grade: Grade::Nut10.any_size(),
            diameter: None,
            temper: None,
            bath: Temperature::from_celsius(455.0),
            dip: Time::from_minute(4.0),
        };
        assert!(judge(&case).unwrap_err().to_string().contains("open ISO 898-2"));
    }
}
