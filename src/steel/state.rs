//! The steel of the user's own part, and its comparison with a limit.

use std::sync::OnceLock;

use super::grade::{Grade, Properties};
use super::hardness::{self, Converted, Level};
use crate::quantity::{Hardness, Length, Scale, Stress};
use crate::source::Source;
use crate::table::steel_row::Treatment;
use crate::table::{Kept, Refusal};

/// The steel of a part and what was done to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct State {
    /// How the steel is known.
    pub steel: Steel,
    /// Whether somebody said that its surface was hardened apart from its core; see [`State::is_cased`].
    pub case_hardened: bool,
    /// What was done to it after any heat treatment, that leaves stress in it.
    pub worked: Worked,
}

/// What was done to a part after its heat treatment, that leaves stress in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Worked {
    /// Nothing.
    No,
    /// It was machined or ground.
    Machined,
    /// It was bent or formed cold.
    Formed,
}

impl Worked {
    /// Every one.
    pub const ALL: [Self; 3] = [Self::No, Self::Machined, Self::Formed];

    /// Stable key for links.
    pub const fn key(self) -> &'static str {
        match self {
            Self::No => "no",
            Self::Machined => "machined",
            Self::Formed => "yes",
        }
    }

    /// The one of that key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|worked| worked.key() == key)
    }
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
pub struct SteelLimit {
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

/// The hardest end in one measure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hardest {
    /// The value.
    pub level: Level,
    /// Where it, or what it was converted from, is printed; `None` where it was typed.
    pub printed: Option<Source>,
    /// The table that led to it, if one was needed.
    pub converted: Option<Converted>,
}

/// The hardest end of a steel in every measure that rules use, looked up once for all of them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Levels {
    hrc: Option<Hardest>,
    hv: Hardest,
    tensile: Option<Hardest>,
}

impl State {
    /// A steel as it comes: neither case-hardened nor worked after its heat treatment.
    pub const fn of(steel: Steel) -> Self {
        Self { steel, case_hardened: false, worked: Worked::No }
    }

    /// Whether its surface is hardened apart from its core: as was said, or because its grade is.
    pub fn is_cased(&self) -> bool {
        self.case_hardened || self.grade().is_some_and(|grade| grade.treatment() == Treatment::CaseHardened)
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
    /// A [`Refusal`] where the grade sets neither a greatest hardness nor a greatest strength.
    pub fn hardest_as_known(&self) -> Result<(Level, Option<Source>), Refusal> {
        match self.steel {
            Steel::Grade(properties) => match (properties.hardest(), properties.row.tensile_max) {
                (Ok(hardness), _) => Ok((Level::Hardness(hardness.value), Some(hardness.source))),
                // A grade may state its strength alone.
                (Err(_), Some(max)) => Ok((Level::Tensile(max.value), Some(max.source))),
                (Err(refusal), None) => Err(refusal),
            },
            Steel::Hardness(hardness) => Ok((Level::Hardness(hardness), None)),
            Steel::Tensile(tensile) => Ok((Level::Tensile(tensile), None)),
        }
    }

    /// The hardest end in a measure: as printed if the standard prints it so, else by one table.
    ///
    /// # Errors
    /// A [`Refusal`] where no table leads there in one step.
    pub fn hardest(&self, measure: Measure) -> Result<Hardest, Refusal> {
        if let Some(printed) = self.printed(measure) {
            return Ok(printed);
        }
        let (known, printed) = self.hardest_as_known()?;
        Self::converted(known, printed, measure)
    }

    /// The hardest end as it is known, brought to a measure by one table.
    fn converted(known: Level, printed: Option<Source>, measure: Measure) -> Result<Hardest, Refusal> {
        let converted = match (known, measure) {
            (Level::Hardness(hardness), Measure::Scale(scale)) => hardness::convert(hardness, scale),
            (Level::Hardness(hardness), Measure::Tensile) => hardness::to_tensile(hardness),
            (Level::Tensile(tensile), Measure::Scale(scale)) => hardness::from_tensile(tensile, scale),
            (Level::Tensile(_), Measure::Tensile) => {
                return Ok(Hardest { level: known, printed, converted: None });
            }
        }?;
        Ok(Hardest { level: converted.to, printed, converted: Some(converted) })
    }

    /// The hardest end in every measure that rules use, of a grade read once; a [`Refusal`] where no table
    /// reaches the steel at all.
    pub fn levels(&self) -> Kept<Result<Levels, Refusal>> {
        static OF_GRADES: OnceLock<Vec<Vec<Result<Levels, Refusal>>>> = OnceLock::new();
        let of_grade = |Properties { grade, row }: Properties| {
            let read = |properties| Self::of(Steel::Grade(properties)).read_levels();
            let all = || Grade::ALL.iter().map(|grade| grade.sizes().map(read).collect()).collect();
            let place = grade.rows().iter().position(|of| std::ptr::eq(of, row))?;
            OF_GRADES.get_or_init(all).get(grade as usize)?.get(place)
        };
        match self.grade().and_then(of_grade) {
            Some(levels) => Kept::Once(levels),
            None => Kept::Own(Box::new(self.read_levels())),
        }
    }

    fn read_levels(&self) -> Result<Levels, Refusal> {
        let (known, printed) = self.hardest_as_known()?;
        let hardest = |measure| {
            let as_printed = self.printed(measure);
            as_printed.map_or_else(|| Self::converted(known, printed, measure), Ok)
        };
        let hv = hardest(Measure::Scale(Scale::Hv))?;
        // From Rockwell B no table leads anywhere but to Vickers and Brinell.
        let only_b = matches!(known, Level::Hardness(Hardness { scale: Scale::Hrb, .. }));
        let of = |measure| if only_b { None } else { hardest(measure).ok() };
        Ok(Levels { hrc: of(Measure::Scale(Scale::Hrc)), hv, tensile: of(Measure::Tensile) })
    }

    /// The hardest end in a measure that the standard prints or the user typed, without any conversion.
    pub fn printed(&self, measure: Measure) -> Option<Hardest> {
        let (level, printed) = match (self.steel, measure) {
            (Steel::Grade(properties), Measure::Scale(scale)) => {
                let limits = properties.limits(scale)?;
                (Level::Hardness(limits.max?), Some(limits.source))
            }
            (Steel::Grade(properties), Measure::Tensile) => {
                let max = properties.row.tensile_max?;
                (Level::Tensile(max.value), Some(max.source))
            }
            (Steel::Hardness(hardness), Measure::Scale(scale)) if hardness.scale == scale => {
                (Level::Hardness(hardness), None)
            }
            (Steel::Tensile(tensile), Measure::Tensile) => (Level::Tensile(tensile), None),
            _ => return None,
        };
        Some(Hardest { level, printed, converted: None })
    }
}

impl Levels {
    /// Puts the hardest end beside a limit.
    ///
    /// In the limit's own measure where the steel is printed in it or one table leads there; a soft
    /// steel, beyond the table of Rockwell C, is compared in Vickers, where every limit can be read:
    /// `in_vickers` is the limit there, if it is not in Vickers already.
    pub fn compare(&self, limit: SteelLimit, in_vickers: Option<Converted>) -> Compared {
        let (hardest, at, limit_converted) = match self.of(Measure::of(limit.at)) {
            Some(hardest) => (hardest, limit.at, None),
            None => (&self.hv, in_vickers.map_or(limit.at, |converted| converted.to), in_vickers),
        };
        let Hardest { printed, converted, .. } = *hardest;
        let value = hardest.as_compared();
        let passed = limit.passed_by(value, at);
        Compared { value, limit: at, passed, printed, converted, limit_converted }
    }

    /// Whether a limit is passed, as [`Levels::compare`] finds it; asks for the limit in Vickers only
    /// where it is needed.
    pub fn passes(&self, limit: SteelLimit, in_vickers: impl Fn() -> Option<Converted>) -> bool {
        match self.of(Measure::of(limit.at)) {
            Some(hardest) => limit.passed_by(hardest.as_compared(), limit.at),
            None => limit
                .passed_by(self.hv.as_compared(), in_vickers().map_or(limit.at, |converted| converted.to)),
        }
    }

    fn of(&self, measure: Measure) -> Option<&Hardest> {
        match measure {
            Measure::Scale(Scale::Hrc) => self.hrc.as_ref(),
            Measure::Scale(Scale::Hv) => Some(&self.hv),
            Measure::Tensile => self.tensile.as_ref(),
            Measure::Scale(Scale::Hrb | Scale::Hb) => None,
        }
    }
}

impl Hardest {
    /// The value as it is put beside a limit; what is printed or typed stands as it is.
    ///
    /// A conversion is no sharper than its table prints: whole numbers of hardness, steps of 5 MPa. What
    /// lies between them counts for the harder side, so that no steel passes a limit by the conversion.
    pub fn as_compared(&self) -> Level {
        match (self.level, self.converted) {
            (level, None) => level,
            (Level::Hardness(hardness), Some(_)) => {
                // Nearer than a tenth to a printed number it is that number.
                let tenth = (hardness.number * 10.0).round() / 10.0;
                Level::Hardness(Hardness { number: hardness.number.round().max(tenth), ..hardness })
            }
            (Level::Tensile(tensile), Some(_)) => {
                let whole = tensile.mpa().round();
                Level::Tensile(Stress::from_mpa(((tensile.mpa() / 5.0).round() * 5.0).max(whole)))
            }
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

    /// The same; where the diameter is not known, of the size in which the grade is hardest.
    ///
    /// # Errors
    /// A [`Refusal`] where the standard does not cover the size.
    pub fn of(grade: super::Grade, diameter: Option<Length>) -> Result<Self, Refusal> {
        let Some(diameter) = diameter else {
            let hardness = |steel: &Self| {
                let hardest = State::of(*steel).hardest(Measure::Scale(Scale::Hv));
                hardest.map_or(0.0, |hardest| hardest.as_compared().number())
            };
            let hardest =
                grade.sizes().map(Self::Grade).max_by(|one, other| hardness(one).total_cmp(&hardness(other)));
            return hardest.map_or_else(|| Self::grade(grade, Length::ZERO), Ok);
        };
        Self::grade(grade, diameter)
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

impl SteelLimit {
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

    const RISK: SteelLimit = SteelLimit::at_least(Level::Hardness(Hardness::hrc(33.0)));

    fn compare(state: State, limit: SteelLimit) -> Compared {
        state.levels().as_ref().unwrap().compare(limit, limit.at.in_vickers().unwrap())
    }

    fn grade(grade: Grade, mm: f64) -> State {
        State::of(Steel::grade(grade, Length::from_mm(mm)).unwrap())
    }

    #[test]
    fn a_printed_scale_is_compared_as_it_stands() {
        let compared = compare(grade(Grade::Class10_9, 16.0), RISK);
        assert_eq!((compared.value, compared.converted), (Level::Hardness(Hardness::hrc(39.0)), None));
        assert!(compared.passed && compared.printed.is_some());
    }

    #[test]
    fn one_table_where_the_scale_is_not_printed() {
        let cleaning = SteelLimit::at_least(Level::Hardness(Hardness::hv(320.0)));
        let compared = compare(grade(Grade::J429Grade8, 20.0), cleaning);
        assert_eq!(compared.value, Level::Hardness(Hardness::hv(382.0)));
        assert!(compared.converted.is_some() && compared.limit_converted.is_none());
    }

    #[test]
    fn a_soft_steel_is_compared_in_vickers() {
        for soft in [grade(Grade::J429Grade2, 20.0), State::of(Steel::Tensile(Stress::from_mpa(500.0)))] {
            let compared = compare(soft, RISK);
            assert_eq!(Measure::of(compared.limit), Measure::Scale(Scale::Hv));
            assert!(!compared.passed && compared.limit_converted.is_some());
        }
    }

    #[test]
    fn a_conversion_is_no_sharper_than_its_table() {
        // ASTM E140, Table 1: 39 HRC is 382 HV and 40 HRC is 392 HV, so 386 HV is about 39.4 HRC. It once was
        // taken as 39 and not above it, while 388 HV was taken as 40 and the limit itself: what lies between
        // two printed numbers counts for the harder side on both limits.
        let limit = SteelLimit::above(Level::Hardness(Hardness::hrc(39.0)));
        let from = SteelLimit::at_least(Level::Hardness(Hardness::hrc(40.0)));
        let known = |number| State::of(Steel::Hardness(Hardness::hv(number)));
        assert!(!compare(known(382.0), limit).passed);
        for hv in [383.0, 386.0, 388.0] {
            assert!(compare(known(hv), limit).passed, "{hv}");
        }
        assert!(!compare(known(386.0), from).passed && compare(known(388.0), from).passed);
        let typed = State::of(Steel::Hardness(Hardness::hrc(39.1)));
        assert!(compare(typed, limit).passed);
    }

    #[test]
    fn at_the_limit_and_above_it_are_told_apart() {
        let at = State::of(Steel::Hardness(Hardness::hrc(39.0)));
        let limit = Level::Hardness(Hardness::hrc(39.0));
        assert!(compare(at, SteelLimit::at_least(limit)).passed);
        assert!(!compare(at, SteelLimit::above(limit)).passed);
    }

    #[test]
    fn the_levels_kept_of_a_grade_are_its_own() {
        for grade in Grade::ALL {
            for state in grade.sizes().map(|properties| State::of(Steel::Grade(properties))) {
                assert!(matches!(state.levels(), Kept::Once(_)), "{}", grade.name());
                assert_eq!(*state.levels(), state.read_levels(), "{}", grade.name());
            }
        }
    }
}
