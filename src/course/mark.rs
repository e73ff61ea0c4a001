//! Marking: an answer beside the right one.
//!
//! Right is what agrees to one in the last place asked, in any unit of the quantity: a sum redone from
//! rounded numbers may end there. Badly rounded is what is within a hundredth of it, or within two
//! in the last place.

use std::fmt;

use crate::quantity::{Dimension, Shown, Unit, number, unit};

use super::exercise::{Question, Sought};
use super::slip::Slip;
use super::tolerance::{agrees, agrees_well, near};

/// What an answer is worth.
#[derive(Debug, Clone, PartialEq)]
pub enum Marked {
    /// Nothing is written.
    Open,
    /// Right.
    Right,
    /// Right, but rounded too early or too far.
    BadlyRounded,
    /// The number is right in another unit than the one written, or in the one that is missing.
    WrongUnit(String),
    /// What a usual slip gives.
    Slip(&'static str),
    /// Wrong.
    Wrong,
    /// No answer that can be read, and why.
    Unread(String),
}

/// Marks an answer.
pub fn mark(question: &Question, answer: &str) -> Marked {
    let answer = answer.trim();
    if answer.is_empty() {
        return Marked::Open;
    }
    match &question.sought {
        Sought::Figure(right, slips) => figure(*right, slips, answer),
        Sought::OneOf(options, right) => match chosen(options, answer) {
            Some(number) if number == *right => Marked::Right,
            Some(_) => Marked::Wrong,
            None => Marked::Unread(format!("write a number from 1 to {}", options.len())),
        },
    }
}

/// The units in which an answer of this unit may be given.
pub fn units(right: &'static Unit) -> Vec<&'static Unit> {
    match right.dimension {
        // A scale of hardness leads to no other, and of what has no dimension only the share does.
        Dimension::Hardness => vec![right],
        Dimension::PlainNumber if *right == unit::ONE || *right == unit::PERCENT => {
            vec![&unit::ONE, &unit::PERCENT]
        }
        Dimension::PlainNumber => vec![right],
        dimension => unit::ALL.iter().copied().filter(|unit| unit.dimension == dimension).collect(),
    }
}

fn figure(right: Shown, slips: &[Slip], answer: &str) -> Marked {
    let (digits, written) = number::split_unit(answer.trim_start_matches(['=', ' ']));
    let number = match number::read_number(digits) {
        Ok(number) => number,
        Err(unreadable) => return Marked::Unread(unreadable.to_string()),
    };
    let offered = units(right.unit);
    let unit = offered.iter().copied().find(|unit| unit.is_written(written));
    let Some(unit) = unit else {
        return without_unit(right, slips, number, written);
    };
    let Some(in_right) = unit.convert(number, right.unit).or((unit == right.unit).then_some(number)) else {
        return Marked::Wrong;
    };
    if agrees(right, in_right) {
        return Marked::Right;
    }
    if let Some(slip) = slip(slips, right.unit, in_right) {
        return slip;
    }
    if near(right, in_right) {
        return Marked::BadlyRounded;
    }
    // The number would be right in another unit of the quantity.
    let meant = offered.iter().copied().find(|&other| {
        other != unit && other.convert(number, right.unit).is_some_and(|number| agrees_well(right, number))
    });
    match meant {
        Some(meant) => Marked::WrongUnit(format!("as {} the number would be right", name(meant))),
        None => Marked::Wrong,
    }
}

/// A unit that the quantity does not have, or none at all.
fn without_unit(right: Shown, slips: &[Slip], number: f64, written: &str) -> Marked {
    let scale =
        slips.iter().find(|slip| slip.value.unit != right.unit && slip.value.unit.is_written(written));
    if let Some(slip) = scale.filter(|_| agrees(right, number)) {
        return Marked::Slip(slip.name);
    }
    let what = if written.is_empty() {
        "the unit is missing".to_owned()
    } else {
        format!("“{written}” is no unit of this quantity")
    };
    match units(right.unit).iter().any(|unit| {
        unit.convert(number, right.unit)
            .or((*unit == right.unit).then_some(number))
            .is_some_and(|number| agrees(right, number))
    }) {
        true => Marked::WrongUnit(format!("{what}; the number is right in {}", name(right.unit))),
        false if written.is_empty() => match slip(slips, right.unit, number) {
            Some(slip) => slip,
            None => Marked::Unread(format!("{what}; write it behind the number")),
        },
        false => Marked::WrongUnit(what),
    }
}

fn slip(slips: &[Slip], unit: &Unit, number: f64) -> Option<Marked> {
    let same_unit = slips.iter().filter(|slip| slip.value.unit == unit);
    let mut given = same_unit.filter(|slip| agrees(slip.value, number));
    given.next().map(|slip| Marked::Slip(slip.name))
}

fn name(unit: &Unit) -> &str {
    if unit.symbol.is_empty() { unit.name } else { unit.symbol }
}

/// The number of the option that an answer names: by its number, or by its words.
fn chosen(options: &[String], answer: &str) -> Option<usize> {
    let number = answer.split(['.', ' ']).next().and_then(|word| word.parse::<usize>().ok());
    let by_number = number.filter(|number| (1..=options.len()).contains(number));
    by_number.or_else(|| options.iter().position(|option| option == answer).map(|at| at + 1))
}

impl Marked {
    /// In a word or two.
    pub fn words(&self) -> &'static str {
        match self {
            Self::Open => "open",
            Self::Right => "right",
            Self::BadlyRounded => "right, but badly rounded",
            Self::WrongUnit(_) => "wrong unit",
            Self::Slip(_) => "a usual slip",
            Self::Wrong => "wrong",
            Self::Unread(_) => "not read",
        }
    }
}

impl fmt::Display for Marked {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.words())?;
        match self {
            Self::WrongUnit(why) | Self::Unread(why) => write!(f, ": {why}"),
            Self::Slip(why) => write!(f, ": {why}"),
            _ => Ok(()),
        }
    }
}
