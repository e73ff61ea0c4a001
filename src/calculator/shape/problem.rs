//! What is wrong with a field: the field, the limit, the remedy.

use std::fmt;

use serde::ser::{Serialize, SerializeStruct, Serializer};

use crate::quantity::Shown;
use crate::quantity::number::Unreadable;
use crate::table::Refusal;

/// All that is wrong, at once: never nothing.
#[derive(Debug, Clone, PartialEq)]
pub struct Problems {
    first: Problem,
    rest: Vec<Problem>,
}

/// What is wrong with one field.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    /// The field's key.
    pub field: &'static str,
    /// The field's label.
    pub label: &'static str,
    /// What is wrong.
    pub fault: Fault,
}

/// The kinds of fault.
#[derive(Debug, Clone, PartialEq)]
pub enum Fault {
    /// Nothing is written yet; not an error, but there is no answer without it.
    Missing,
    /// The text is no number.
    Unreadable(Unreadable),
    /// More characters than the field can need.
    TooLong {
        /// How many there are.
        characters: usize,
        /// How many there may be.
        longest: usize,
    },
    /// Below the least admissible value.
    TooSmall {
        /// The value as read.
        value: Shown,
        /// The least.
        min: Shown,
        /// Why.
        why: &'static str,
        /// The same number with the unit that was meant, if one of the field's would do.
        meant: Option<Shown>,
    },
    /// Above the greatest admissible value.
    TooLarge {
        /// The value as read.
        value: Shown,
        /// The greatest.
        max: Shown,
        /// Why.
        why: &'static str,
        /// The same number with the unit that was meant, if one of the field's would do.
        meant: Option<Shown>,
    },
    /// A count that is not a whole number.
    NotWhole {
        /// The value as read.
        value: f64,
    },
    /// Not one of the choices.
    NotAChoice {
        /// As written.
        text: String,
        /// The keys that would do.
        offered: Vec<&'static str>,
    },
    /// A written designation that the room could not read; its own words say why and what would do.
    NotUnderstood(String),
    /// Fields that contradict each other: what, and what to change.
    Conflict(String),
    /// A table or formula has no answer.
    Refused(Refusal),
}

impl Problem {
    /// A problem of a field.
    pub fn new(field: &'static str, label: &'static str, fault: Fault) -> Self {
        Self { field, label, fault }
    }

    /// A table or formula has no answer for what a field asks.
    pub fn refused(field: &'static str, label: &'static str, refusal: Refusal) -> Self {
        Self::new(field, label, Fault::Refused(refusal))
    }
}

impl Serialize for Problems {
    /// As a list of them.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.iter())
    }
}

impl Serialize for Problem {
    /// The field, its label, and what is wrong in words.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut problem = serializer.serialize_struct("Problem", 3)?;
        problem.serialize_field("field", self.field)?;
        problem.serialize_field("label", self.label)?;
        problem.serialize_field("text", &self.fault.to_string())?;
        problem.end()
    }
}

impl Problems {
    /// A single problem.
    pub fn one(problem: Problem) -> Self {
        Self { first: problem, rest: Vec::new() }
    }

    /// And another one.
    pub fn push(&mut self, problem: Problem) {
        self.rest.push(problem);
    }

    /// One after the other, in the order they were met.
    pub fn iter(&self) -> impl Iterator<Item = &Problem> {
        std::iter::once(&self.first).chain(&self.rest)
    }

    /// The problem of a field, if it has one.
    pub fn of(&self, field: &str) -> Option<&Problem> {
        self.iter().find(|problem| problem.field == field)
    }

    /// Whether nothing is wrong but that something is still to be filled in.
    pub fn only_missing(&self) -> bool {
        self.iter().all(|problem| matches!(problem.fault, Fault::Missing))
    }
}

impl fmt::Display for Problems {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, problem) in self.iter().enumerate() {
            if at > 0 {
                f.write_str("\n")?;
            }
            write!(f, "{problem}")?;
        }
        Ok(())
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.label, self.fault)
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Missing => f.write_str("fill this in to get an answer"),
            Self::TooLong { characters, longest } => {
                write!(f, "{characters} characters are too many; write at most {longest}")
            }
            Self::Unreadable(unreadable) => write!(f, "{unreadable}"),
            Self::TooSmall { value, min, why, meant } => {
                write!(f, "{} must be at least {min}", AsTyped(value))?;
                because(f, why)?;
                or_meant(f, meant.as_ref())
            }
            Self::TooLarge { value, max, why, meant } => {
                write!(f, "{} must be at most {max}", AsTyped(value))?;
                because(f, why)?;
                or_meant(f, meant.as_ref())
            }
            Self::NotWhole { value } => {
                write!(f, "{value} is not a whole number; count the pieces")
            }
            Self::NotAChoice { text, offered } => {
                write!(f, "“{text}” is not one of the choices; use {}", offered.join(", "))
            }
            Self::NotUnderstood(why) | Self::Conflict(why) => f.write_str(why),
            Self::Refused(refusal) => write!(f, "{refusal}"),
        }
    }
}

/// A value as somebody would write it: nobody counts three hundred noughts.
struct AsTyped<'a>(&'a Shown);

impl fmt::Display for AsTyped<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Shown { number, unit, .. } = self.0;
        if *number == 0.0 || (1e-3..1e9).contains(&number.abs()) {
            write!(f, "{}", self.0)
        } else {
            write!(f, "{}", format!("{number:e} {}", unit.symbol).trim_end())
        }
    }
}

fn because(f: &mut fmt::Formatter<'_>, why: &str) -> fmt::Result {
    if why.is_empty() { Ok(()) } else { write!(f, ": {why}") }
}

fn or_meant(f: &mut fmt::Formatter<'_>, meant: Option<&Shown>) -> fmt::Result {
    match meant {
        Some(meant) => write!(f, "; if {} was meant, write {meant}", meant.unit.symbol),
        None => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use crate::calculator::{Draft, evaluate};

    /// One problem a line; where all that is wrong is that something is empty, nothing is wrong yet.
    #[test]
    fn what_is_missing_is_told_from_what_is_wrong() {
        let of = |pairs: &[(&str, &str)]| evaluate("life", pairs.iter().copied()).unwrap_err();
        let wrong = of(&[("thickness", "many"), ("years", "201")]);
        assert_eq!(wrong.to_string().lines().count(), wrong.iter().count());
        assert!(wrong.iter().count() > 1 && !wrong.to_string().starts_with('\n'));
        assert!(!wrong.only_missing());
        let missing = of(&[("thickness", "")]);
        assert!(missing.only_missing(), "{missing}");
        assert!(!of(&[("thickness", ""), ("years", "201")]).only_missing());
    }

    /// No designation needs more than 200 letters.
    #[test]
    fn a_text_is_read_up_to_its_longest() {
        let told = |letters: usize| {
            let thread = "1".repeat(letters);
            evaluate("coat-room", [("thread", thread.as_str())]).unwrap_err().to_string()
        };
        for (letters, too_many) in [(199, false), (200, false), (201, true), (300, true)] {
            let text = told(letters);
            assert_eq!(text.contains("characters are too many"), too_many, "{letters}: {text}");
        }
    }

    /// A length is asked of a bolt and not of a nut; where it is asked it is not left out.
    #[test]
    fn what_is_asked_on_a_condition_is_missed_where_it_holds() {
        let of = |part| evaluate("kettle", [("part", part), ("length", "")]);
        assert_eq!(of("hex-bolt").unwrap_err().to_string(), "Length: fill this in to get an answer");
        assert!(of("hex-nut").is_ok());
    }

    #[test]
    fn the_reason_belongs_to_the_end_and_the_number_is_as_it_was_typed() {
        let told = |id: &str, field: &str, text: &str| {
            let draft: Draft = [(field, text)].into_iter().collect();
            let problems = evaluate(id, draft.pairs()).unwrap_err();
            problems.of(field).map(|problem| problem.fault.to_string()).unwrap_or_default()
        };
        assert_eq!(
            told("life", "years", "0"),
            "0\u{a0}years must be at least 0.1\u{a0}years: check the unit"
        );
        assert!(told("life", "years", "201").ends_with("nobody has watched zinc outdoors for longer"));
        assert_eq!(
            told("coat", "coat", "1e-300 µm"),
            "1e-300 µm must be at least 0.01\u{a0}µm: check the unit"
        );
        // A fraction has the decimals that it needs.
        assert!(told("coat", "coat", "1/2 in").starts_with("0.5\u{a0}in must be"));
        assert!(told("coat", "coat", "5/64 in").starts_with("0.078125\u{a0}in must be"));
        assert!(told("coat", "coat", "1e15").starts_with("1e15 µm must be at most 1\u{a0}mm"));
        assert!(told("powder", "barrel", "1e-6 m3").starts_with("1e-6 m³ must be at least 0.01\u{a0}m³"));
        assert!(!told("powder", "yield", "1").contains("was meant"));
    }
}
