//! The shape of a rule: data first, a function only where data cannot say it.

use std::sync::OnceLock;

use super::case::{Case, Under};
use super::compare::write_compared;
use super::{Key, RULES, Says};
use crate::process::Process;
use crate::sentence::capitalized;
use crate::source::Source;
use crate::steel::{Compared, Converted, Grade, State, SteelLimit, Worked};
use crate::working::Mark;

/// A rule: one row.
#[derive(Debug)]
pub struct Rule {
    /// Its name.
    pub key: Key,
    /// What it is about.
    pub topic: Topic,
    /// The process it speaks of; `None` for all of them.
    pub process: Option<Process>,
    /// The document under which an order has to stand for the rule to count.
    pub under: Under,
    /// Where it is published.
    pub source: Source,
    /// Of which case it speaks.
    pub when: When,
    /// What it tests.
    pub test: Test,
    /// What follows where the test is passed.
    pub says: fn(&Case<'_>) -> Says,
    /// The same in words; a condition or a term as an instruction.
    pub words: Phrase,
    /// Why, as a clause that can stand before the words; it is folded where an order is told in short.
    pub why: Phrase,
    /// What is said where the test is not passed.
    pub met: &'static str,
    /// What follows in a few words, to be read aloud; empty where its instruction says it.
    pub brief: Phrase,
}

/// What a rule is about; a calculator explains a topic.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Topic {
    /// Hydrogen in the steel, and its cleaning and baking.
    Hydrogen,
    /// The heat of the zinc against the temper.
    Heat,
    /// How the coated thread goes together.
    Fit,
    /// What bolt and nut carry.
    Strength,
    /// How the pieces go through kettle and barrel.
    Load,
    /// Years in the place.
    Life,
    /// The class of the coat, as a document lays it down.
    Class,
}

/// Of which case a rule speaks.
#[derive(Debug, Clone, Copy)]
pub enum When {
    /// Of every case whose steel is known.
    Steel,
    /// Of steels hardened at the surface.
    CaseHardened,
    /// Of parts machined, ground, bent or formed cold after heat treatment.
    Worked,
    /// Of parts bent or formed cold after heat treatment.
    ColdFormed,
    /// Of these grades.
    Grades(&'static [Grade]),
    /// Of every steel but these grades.
    NotGrades(&'static [Grade]),
    /// Of cases with these facts.
    If(fn(&Case<'_>) -> bool),
    /// Of structural bolts and the nuts made for them, with these facts.
    Structural(fn(&Case<'_>) -> bool),
}

/// What a rule tests.
#[derive(Debug, Clone, Copy)]
pub enum Test {
    /// Nothing: whoever it speaks of is met by it.
    Always,
    /// The hardest end of the steel against a limit.
    Steel(SteelLimit),
    /// The same, or a hardened case whatever the hardness.
    SteelOrCase(SteelLimit),
    /// A fact of the case.
    By(fn(&Case<'_>) -> bool),
}

/// Words, fixed or put together for the case.
#[derive(Debug, Clone, Copy)]
pub enum Phrase {
    /// Fixed words.
    Text(&'static str),
    /// Words put together for the case.
    By(fn(&Case<'_>, Says, &mut String)),
}

/// A rule, judged on a case.
///
/// Many are made and few are read, so it is small: what goes with its mark is worked out again from the same
/// case for whoever reads it ([`Ruling::says`]).
#[derive(Debug, Clone, Copy)]
pub struct Ruling {
    /// The rule.
    pub rule: &'static Rule,
    /// What it means for the verdict.
    pub mark: Mark,
    /// Whether its test was passed; else it is met.
    passed: bool,
    /// Whether it counts: a rule of a document that the order does not stand under is told by the
    /// calculator of its topic, and moves nothing.
    pub counts: bool,
}

impl Phrase {
    /// No words.
    pub const NONE: Self = Self::Text("");

    fn write(&self, case: &Case<'_>, says: Says, text: &mut String) {
        match self {
            Self::Text(words) => text.push_str(words),
            Self::By(words) => words(case, says, text),
        }
    }
}

impl Rule {
    /// What it says of a case; `None` where it does not speak of it.
    ///
    /// A rule of a document that the order does not stand under is told as a note and moves nothing.
    #[inline]
    pub fn judge(&'static self, case: &Case<'_>) -> Option<Ruling> {
        // Most rules do not speak of a case, and are passed over without a call.
        if self.when.holds(case) { self.rule_on(case) } else { None }
    }

    /// What it says of a case that it speaks of.
    fn rule_on(&'static self, case: &Case<'_>) -> Option<Ruling> {
        let passed = match self.test {
            Test::Always => true,
            Test::Steel(limit) => self.passed_by_steel(limit, case)?,
            Test::SteelOrCase(limit) => {
                self.passed_by_steel(limit, case)? || case.steel.is_some_and(|steel| steel.state.is_cased())
            }
            Test::By(test) => test(case),
        };
        let counts = case.in_force.holds(self.under);
        let mark = match if passed { (self.says)(case).mark } else { Mark::Met } {
            mark if counts => mark,
            mark => mark.min(Mark::Note),
        };
        Some(Ruling { rule: self, mark, passed, counts })
    }

    fn passed_by_steel(&self, limit: SteelLimit, case: &Case<'_>) -> Option<bool> {
        let levels = case.steel?.levels.as_ref().ok()?;
        Some(levels.passes(limit, || self.limit_in_vickers()))
    }

    /// The limit it sets on the steel, where it sets one.
    pub fn limit(&self) -> Option<SteelLimit> {
        match self.test {
            Test::Steel(limit) | Test::SteelOrCase(limit) => Some(limit),
            Test::Always | Test::By(_) => None,
        }
    }

    /// The steel of a case beside the limit, where there is one and a table reaches it.
    pub fn compared(&self, case: &Case<'_>) -> Option<Compared> {
        let levels = case.steel?.levels.as_ref().ok()?;
        Some(levels.compare(self.limit()?, self.limit_in_vickers()))
    }

    /// Its limit in Vickers, where every steel can be compared; `None` if it is in Vickers already or
    /// has none. Read from the tables once.
    pub fn limit_in_vickers(&self) -> Option<Converted> {
        static IN_VICKERS: OnceLock<[Option<Converted>; Key::COUNT]> = OnceLock::new();
        let limits = IN_VICKERS.get_or_init(|| RULES.map(|rule| rule.limit()?.at.in_vickers().ok()?));
        limits.get(self.key as usize).copied().flatten()
    }
}

impl Ruling {
    /// What it says of the case that it was judged on, with its source and what is to be done.
    pub fn says(&self, case: &Case<'_>) -> Says {
        let says = if self.passed { (self.rule.says)(case) } else { Says::MET };
        Says { mark: self.mark, ..says }
    }

    /// Where it is published.
    pub fn source(&self, case: &Case<'_>) -> Source {
        self.says(case).source.unwrap_or(self.rule.source)
    }

    /// What it says in a few words, to be read aloud.
    pub fn brief(&self, case: &Case<'_>) -> String {
        let mut text = String::new();
        let says = self.says(case);
        self.rule.brief.write(case, says, &mut text);
        match says.instruction {
            Some(instruction) if text.is_empty() => instruction.brief(case),
            _ => text,
        }
    }

    /// What it says in words, and before it why.
    pub fn text(&self, case: &Case<'_>) -> String {
        let mut text = self.reason(case);
        let why = text.len();
        if why > 0 {
            text.push_str(": ");
        }
        if self.is_met() {
            text.push_str(self.rule.met);
        } else {
            self.rule.words.write(case, self.says(case), &mut text);
        }
        // A reason may be all that is said.
        if text.len() == why + 2 {
            text.truncate(why);
        }
        capitalized(text)
    }

    /// What it asks for, without the reason: what goes on an order, or has to be proved or said.
    pub fn instruction(&self, case: &Case<'_>) -> String {
        // Room for most of them, and their full stop.
        let mut text = String::with_capacity(160);
        self.rule.words.write(case, self.says(case), &mut text);
        capitalized(text)
    }

    /// Why it asks for that; empty where it says no reason.
    pub fn why(&self, case: &Case<'_>) -> String {
        capitalized(self.reason(case))
    }

    /// The steel beside the limit, then the reason of the rule.
    fn reason(&self, case: &Case<'_>) -> String {
        // Room for the longest of them.
        let mut text = String::with_capacity(320);
        match self.rule.compared(case) {
            // The case decides, whatever the hardness.
            Some(compared) if !compared.passed && self.mark > Mark::Met => {
                text.push_str("the part is case-hardened");
            }
            Some(compared) => write_compared(&mut text, self.rule.limit(), &compared),
            None => {}
        }
        if !self.is_met() {
            let before = text.len();
            if before > 0 {
                text.push_str(", and ");
            }
            let after = text.len();
            self.rule.why.write(case, self.says(case), &mut text);
            if text.len() == after {
                text.truncate(before);
            }
        }
        text
    }

    /// Whether it is met and has words for that.
    fn is_met(&self) -> bool {
        self.mark == Mark::Met && !self.rule.met.is_empty()
    }
}

impl When {
    #[inline]
    fn holds(&self, case: &Case<'_>) -> bool {
        let steel = |test: fn(&State) -> bool| case.steel.is_some_and(|steel| test(&steel.state));
        match self {
            Self::Steel => case.steel.is_some(),
            Self::CaseHardened => steel(State::is_cased),
            Self::Worked => steel(|state| state.worked != Worked::No),
            Self::ColdFormed => steel(|state| state.worked == Worked::Formed),
            Self::Grades(grades) => case.grade().is_some_and(|grade| grades.contains(&grade)),
            Self::NotGrades(grades) => {
                case.steel.is_some() && case.grade().is_none_or(|grade| !grades.contains(&grade))
            }
            Self::If(test) | Self::Structural(test) => test(case),
        }
    }
}
