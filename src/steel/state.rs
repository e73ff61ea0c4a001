//! The steel of the user's own part, and its comparison with a limit.

use super::grade::Properties;
use super::hardness::{self, Converted, Level};
use crate::quantity::{Hardness, Length, Scale, Stress};
use crate::source::Source;
use crate::table::Refusal;

/// The steel of a part and what was done to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct State {
    /// How the steel is known.
    pub steel: Steel,
    /// Whether its surface was hardened apart from its core.
    pub case_hardened: bool,
    /// Whether it was bent or formed cold after any heat treatment.
    pub cold_worked: bool,
}

/// How a steel is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Steel {
    /// By its grade and size.
    Grade(Properties),
    /// By a hardness: the hardest of the part, or the greatest that is allowed.
    Hardness(Hardness),
    /// By a tensile strength: the greatest.
    Tensile(Stress),
}

/// What a rule measures a steel by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measure {
    /// A hardness scale.
    Scale(Scale),
    /// Tensile strength.
    Tensile,
}

/// A limit of a rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// The value.
    pub at: Level,
    /// Whether reaching the value passes the limit.
    pub over: Over,
}

/// When a limit is passed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Over {
    /// At the value and above it.
    AtLeast,
    /// Above the value only.
    Above,
}

/// A steel beside a limit, both in one measure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Compared {
    /// The hardest end of the steel.
    pub value: Level,
    /// The limit.
    pub limit: Level,
    /// Whether the limit is passed.
    pub passed: bool,
    /// Where the steel's value is printed, if it was not typed.
    pub printed: Option<Source>,
    /// The table that brought the steel to this measure, if one was needed.
    pub converted: Option<Converted>,
    /// The table that brought the limit to this measure, if one was needed.
    pub limit_converted: Option<Converted>,
}

impl State {
    /// A steel as it comes: neither case-hardened nor cold-worked.
    pub const fn of(steel: Steel) -> Self {
        Self { steel, case_hardened: false, cold_worked: false }
    }

    /// The grade with its properties, if the steel is known by its grade.
    pub fn grade(&self) -> Option<Properties> {
        match self.steel {
            Steel::Grade(properties) => Some(properties),
            Steel::Hardness(_) | Steel::Tensile(_) => None,
        }
    }

    /// The hardest end as it is printed or typed, before any conversion.
    ///
    /// # Errors
    /// A [`Refusal`] where the grade sets no greatest hardness.
    pub fn hardest_as_known(&self) -> Result<(Level, Option<Source>), Refusal> {
        match self.steel {
            Steel::Grade(properties) => {
                properties.hardest().map(|(hardness, source)| (Level::Hardness(hardness), Some(source)))
            }
            Steel::Hardness(hardness) => Ok((Level::Hardness(hardness), None)),
            Steel::Tensile(tensile) => Ok((Level::Tensile(tensile), None)),
        }
    }

    /// The hardest end in a measure: as printed if the standard prints it so, else by one table.
    ///
    /// # Errors
    /// A [`Refusal`] where no table leads there in one step.
    pub fn hardest(&self, measure: Measure) -> Result<(Level, Option<Source>, Option<Converted>), Refusal> {
        if let Some((level, source)) = self.printed(measure) {
            return Ok((level, source, None));
        }
        let (known, printed) = self.hardest_as_known()?;
        let converted = match (known, measure) {
            (Level::Hardness(hardness), Measure::Scale(scale)) => hardness::convert(hardness, scale),
            (Level::Hardness(hardness), Measure::Tensile) => hardness::to_tensile(hardness),
            (Level::Tensile(tensile), Measure::Scale(scale)) => hardness::from_tensile(tensile, scale),
            (Level::Tensile(_), Measure::Tensile) => return Ok((known, printed, None)),
        }?;
        Ok((converted.to, printed, Some(converted)))
    }

    /// Puts the hardest end beside a limit.
    ///
    /// In the limit's own measure where the steel is printed in it or one table leads there; a soft
    /// steel, beyond the table of Rockwell C, is compared in Vickers, where every limit can be read.
    ///
    /// # Errors
    /// A [`Refusal`] where no table reaches the steel at all.
    pub fn compare(&self, limit: Limit) -> Result<Compared, Refusal> {
        let measure = Measure::of(limit.at);
        if let Ok((value, printed, converted)) = self.hardest(measure) {
            let passed = limit.passed_by(value, limit.at);
            return Ok(Compared {
                value,
                limit: limit.at,
                passed,
                printed,
                converted,
                limit_converted: None,
            });
        }
        let (known, printed) = self.hardest_as_known()?;
        let converted = known.in_vickers()?;
        let limit_converted = limit.at.in_vickers()?;
        let value = converted.map_or(known, |converted| converted.to);
        let at = limit_converted.map_or(limit.at, |converted| converted.to);
        let passed = limit.passed_by(value, at);
        Ok(Compared { value, limit: at, passed, printed, converted, limit_converted })
    }

    /// The hardest end in a measure that the standard prints or the user typed.
    fn printed(&self, measure: Measure) -> Option<(Level, Option<Source>)> {
        match (self.steel, measure) {
            (Steel::Grade(properties), Measure::Scale(scale)) => {
                let limits = properties.limits(scale)?;
                Some((Level::Hardness(limits.greatest?), Some(limits.source)))
            }
            (Steel::Grade(properties), Measure::Tensile) => {
                let greatest = properties.row.tensile_greatest?;
                Some((Level::Tensile(greatest.value), Some(greatest.source)))
            }
            (Steel::Hardness(hardness), Measure::Scale(scale)) if hardness.scale == scale => {
                Some((Level::Hardness(hardness), None))
            }
            (Steel::Tensile(tensile), Measure::Tensile) => Some((Level::Tensile(tensile), None)),
            _ => None,
        }
    }
}

impl Steel {
    /// A grade at a nominal diameter.
    ///
    /// # Errors
    /// A [`Refusal`] where the standard does not cover the size.
    pub fn grade(grade: super::Grade, diameter: Length) -> Result<Self, Refusal> {
        grade.properties(diameter).map(Self::Grade)
    }
}

impl Measure {
    /// The measure of a level.
    pub fn of(level: Level) -> Self {
        match level {
            Level::Hardness(hardness) => Self::Scale(hardness.scale),
            Level::Tensile(_) => Self::Tensile,
        }
    }
}

impl Limit {
    /// Passed at the value and above it.
    pub const fn at_least(at: Level) -> Self {
        Self { at, over: Over::AtLeast }
    }

    /// Passed above the value only.
    pub const fn above(at: Level) -> Self {
        Self { at, over: Over::Above }
    }

    fn passed_by(&self, value: Level, at: Level) -> bool {
        match self.over {
            Over::AtLeast => value.number() >= at.number(),
            Over::Above => value.number() > at.number(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Grade;
    use super::*;

    const RISK: Limit = Limit::at_least(Level::Hardness(Hardness::hrc(33.0)));

    fn grade(grade: Grade, mm: f64) -> State {
        State::of(Steel::grade(grade, Length::from_mm(mm)).unwrap())
    }

    #[test]
    fn a_printed_scale_is_compared_as_it_stands() {
        let compared = grade(Grade::Class10_9, 16.0).compare(RISK).unwrap();
        assert_eq!((compared.value, compared.converted), (Level::Hardness(Hardness::hrc(39.0)), None));
        assert!(compared.passed && compared.printed.is_some());
    }

    #[test]
    fn one_table_where_the_scale_is_not_printed() {
        let cleaning = Limit::at_least(Level::Hardness(Hardness::hv(320.0)));
        let compared = grade(Grade::J429Grade8, 20.0).compare(cleaning).unwrap();
        assert_eq!(compared.value, Level::Hardness(Hardness::hv(382.0)));
        assert!(compared.converted.is_some() && compared.limit_converted.is_none());
    }

    #[test]
    fn a_soft_steel_is_compared_in_vickers() {
        for soft in [grade(Grade::J429Grade2, 20.0), State::of(Steel::Tensile(Stress::from_mpa(500.0)))] {
            let compared = soft.compare(RISK).unwrap();
            assert_eq!(Measure::of(compared.limit), Measure::Scale(Scale::Hv));
            assert!(!compared.passed && compared.limit_converted.is_some());
        }
    }

    #[test]
    fn at_the_limit_and_above_it_are_told_apart() {
        let at = State::of(Steel::Hardness(Hardness::hrc(39.0)));
        let limit = Level::Hardness(Hardness::hrc(39.0));
        assert!(at.compare(Limit::at_least(limit)).unwrap().passed);
        assert!(!at.compare(Limit::above(limit)).unwrap().passed);
    }
}
