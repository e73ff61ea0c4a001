//! What a rule says of a case: a mark, and the instruction that goes with it.

use super::Case;
use crate::part::Form;
use crate::process::Process;
use crate::quantity::{Length, Quantity, Temperature, Time, unit};
use crate::sentence::worded;
use crate::source::Source;
use crate::working::Mark;

/// What a rule says of a case.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Says {
    /// What it means for the verdict.
    pub mark: Mark,
    /// Where this is published, if it is not where the rule is.
    pub source: Option<Source>,
    /// What is to be done, where rules may ask for the same thing.
    pub instruction: Option<Instruction>,
}

/// What rules ask for. Rules that ask for the same kind of thing are told as one instruction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Instruction {
    /// Clean without plain acid: inhibited acid, alkaline, or mechanically.
    CleanWithoutAcid,
    /// Clean mechanically, with at most a flash pickle.
    CleanMechanically,
    /// Relieve stress before cleaning.
    Relieve(HeatTreatment),
    /// Bake after the coat.
    Bake(HeatTreatment),
    /// Get the actual temper, or hardness and proof load after dipping.
    ProveTemper,
    /// Have the maker of the part agree in writing.
    MakerAgrees,
    /// Agree a test for hydrogen embrittlement on the coated lot.
    TestForEmbrittlement,
    /// Ask the plater or the galvanizer whether the piece goes in.
    AskThePlant,
    /// Agree thread, nut and gauges; the allowance on the diameter that the coat needs, if it is known.
    AgreeAllowance(Option<Length>),
    /// Bolt, nut and washer as one matched lot, coated by one process.
    OneLot,
}

/// A time at a temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatTreatment {
    /// The lowest temperature.
    pub from: Temperature,
    /// The highest temperature; `None` where the document names none.
    pub to: Option<Temperature>,
    /// The shortest time; `None` where the document sets none.
    pub time: Option<Time>,
    /// How soon it begins, where the document says.
    pub within: Option<Time>,
}

impl Says {
    /// The rule is met.
    pub const MET: Self = Self::only(Mark::Met);

    /// A mark, published where the rule is.
    pub const fn only(mark: Mark) -> Self {
        Self { mark, source: None, instruction: None }
    }

    /// It is ruled out.
    pub const fn bar() -> Self {
        Self::only(Mark::Bar)
    }

    /// Somebody has to prove or agree something.
    pub const fn condition() -> Self {
        Self::only(Mark::Condition)
    }

    /// It goes on the order, and there is nothing to prove.
    pub const fn term() -> Self {
        Self::only(Mark::Term)
    }

    /// It is good to know.
    pub const fn note() -> Self {
        Self::only(Mark::Note)
    }

    /// A mark that is published elsewhere than the rule.
    pub const fn from(mark: Mark, source: Source) -> Self {
        Self { mark, source: Some(source), instruction: None }
    }

    /// With what is to be done.
    #[must_use]
    pub const fn asking(mut self, instruction: Instruction) -> Self {
        self.instruction = Some(instruction);
        self
    }
}

impl Instruction {
    /// Whether two instructions are of one kind, so that one of them can stand for both.
    pub fn is_like(&self, other: &Self) -> bool {
        let cleans = |it: &Self| matches!(it, Self::CleanWithoutAcid | Self::CleanMechanically);
        std::mem::discriminant(self) == std::mem::discriminant(other) || (cleans(self) && cleans(other))
    }

    /// What satisfies both: the stricter cleaning, the overlap of the temperatures, the longest time,
    /// the earliest start; `None` where nothing does.
    pub fn and(self, other: Self) -> Option<Self> {
        Some(match (self, other) {
            (Self::Relieve(one), Self::Relieve(other)) => Self::Relieve(one.and(other)?),
            (Self::Bake(one), Self::Bake(other)) => Self::Bake(one.and(other)?),
            (Self::CleanWithoutAcid, stricter @ Self::CleanMechanically) => stricter,
            (Self::AgreeAllowance(None), other @ Self::AgreeAllowance(_)) => other,
            (one, other) if one.is_like(&other) => one,
            _ => return None,
        })
    }
}

impl Instruction {
    /// The instruction in a few words, to be read aloud.
    pub fn brief(&self, case: &Case<'_>) -> String {
        let plant = plant(case);
        match self {
            Self::CleanWithoutAcid => "clean without plain acid".to_owned(),
            Self::CleanMechanically => "clean mechanically".to_owned(),
            Self::Relieve(_) => "relieve stress before cleaning".to_owned(),
            Self::Bake(_) => "bake within 4 h".to_owned(),
            Self::ProveTemper if case.temper_is_said() => {
                worded(format_args!("prove {} after dipping", to_prove(case)))
            }
            Self::ProveTemper => worded(format_args!(
                "get the maker's tempering temperature, or {} after dipping",
                to_prove(case)
            )),
            Self::MakerAgrees => "have the maker agree in writing".to_owned(),
            Self::TestForEmbrittlement => {
                worded(format_args!("agree a test for embrittlement with the {plant}"))
            }
            Self::AskThePlant => worded(format_args!("ask the {plant} whether it goes in")),
            Self::AgreeAllowance(None) => {
                worded(format_args!("agree {} and gauges with the {plant}", mate(case)))
            }
            Self::AgreeAllowance(Some(needed)) if case.is_for_a_tapped_hole() => worded(format_args!(
                "agree the hole tapped over by {} or more with whoever makes it",
                case.size(*needed, 2)
            )),
            Self::AgreeAllowance(Some(needed)) => worded(format_args!(
                "agree nuts tapped over by {} or more with the {plant}",
                case.size(*needed, 2)
            )),
            Self::OneLot => "one matched lot".to_owned(),
        }
    }

    /// The instruction as a sentence, where several rules ask for it.
    pub fn words(&self, case: &Case<'_>) -> String {
        let plant = plant(case);
        match self {
            Self::CleanWithoutAcid => {
                "Clean in inhibited acid, alkaline without cathodic current, or mechanically.".to_owned()
            }
            Self::CleanMechanically => {
                "Clean mechanically, with at most a flash pickle; or bake after pickling and before the zinc."
                    .to_owned()
            }
            Self::Relieve(heat) => worded(format_args!("Relieve stress before cleaning, {heat}.")),
            Self::Bake(heat) => worded(format_args!("Bake after plating, {heat}.")),
            Self::ProveTemper if case.temper_is_said() => {
                worded(format_args!("Verify {} after dipping.", to_prove(case)))
            }
            Self::ProveTemper => worded(format_args!(
                "Get the actual tempering temperature from the maker, or verify {} after dipping.",
                to_prove(case)
            )),
            Self::MakerAgrees => "Have the maker of the part agree in writing.".to_owned(),
            Self::TestForEmbrittlement => worded(format_args!(
                "Agree a test for hydrogen embrittlement on the coated lot with the {plant}."
            )),
            Self::AskThePlant => worded(format_args!("Ask the {plant} whether the piece goes in.")),
            Self::AgreeAllowance(None) => {
                worded(format_args!("Agree thread, {} and gauges with the {plant}.", mate(case)))
            }
            Self::AgreeAllowance(Some(needed)) => worded(format_args!(
                "Agree thread, {} and gauges with the {plant}: the coat needs an allowance of {} on the diameter.",
                mate(case),
                case.size(*needed, 3)
            )),
            Self::OneLot => {
                "Order one matched lot of bolts, nuts and washers, coated by one process.".to_owned()
            }
        }
    }
}

/// What is proved of a temper: a part without a thread has no proof load.
pub(super) fn to_prove(case: &Case<'_>) -> &'static str {
    let is_smooth = case.part.is_some_and(|part| {
        matches!(part.kind.form(), Form::Washer | Form::Ring | Form::Pin)
            || part.kind.form() == Form::Other && part.thread.is_none()
    });
    if is_smooth { "hardness" } else { "hardness and proof load" }
}

/// What the coated bolt goes into.
fn mate(case: &Case<'_>) -> &'static str {
    if case.is_for_a_tapped_hole() { "hole" } else { "nut" }
}

/// Who puts the zinc on.
fn plant(case: &Case<'_>) -> &'static str {
    if case.process == Process::HotDip { "galvanizer" } else { "plater" }
}

impl std::fmt::Display for HeatTreatment {
    /// `at 190 to 220 °C for at least 14 h, begun within 4 h`.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let celsius = |temperature: Temperature| temperature.show(&unit::CELSIUS, 0);
        match self.to {
            Some(to) => write!(f, "at {} to {}", celsius(self.from).digits(), celsius(to))?,
            None => write!(f, "at {} or more", celsius(self.from))?,
        }
        if let Some(time) = self.time {
            write!(f, " for at least {}", time.show(&unit::HOUR, 0))?;
        }
        match self.within {
            Some(within) => write!(f, ", begun within {}", within.show(&unit::HOUR, 0)),
            None => Ok(()),
        }
    }
}

impl HeatTreatment {
    /// The overlap of two; `None` where their temperatures do not meet.
    pub fn and(self, other: Self) -> Option<Self> {
        fn either<T>(one: Option<T>, other: Option<T>, pick: fn(T, T) -> T) -> Option<T> {
            match (one, other) {
                (Some(one), Some(other)) => Some(pick(one, other)),
                (one, other) => one.or(other),
            }
        }
        let from = self.from.max(other.from);
        let to = either(self.to, other.to, Temperature::min);
        if to.is_some_and(|to| to < from) {
            return None;
        }
        Some(Self {
            from,
            to,
            time: either(self.time, other.time, Time::max),
            within: either(self.within, other.within, Time::min),
        })
    }
}

#[cfg(test)]
mod tests;
