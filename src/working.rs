//! The steps of a result, so that anybody can redo the sum on paper.
//!
//! A step keeps the formula as it is written and the values that went into it. Text is made only
//! when somebody looks: [`Step::segments`] gives typed pieces that the page, the terminal and the
//! sheet each set in their own way. Put the numbers in for the symbols and the formula is a sum
//! that a test does again.

mod mark;
mod settle;
mod tree;

pub use mark::Mark;
pub use tree::{Node, letter_and_index, tree};

use std::borrow::Cow;
use std::fmt;

use serde::Serialize;

use crate::quantity::Shown;
use crate::source::Source;

/// One step: `symbol = formula = numbers put in = result`.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Step {
    /// What is computed, in words: `thickest coat that still assembles`.
    pub meaning: Cow<'static, str>,
    /// Its symbol in the formula of the trade: `t_max`.
    pub symbol: &'static str,
    /// Which of several values of that symbol in the working it is, from 1; 0 where there is one.
    pub index: u8,
    /// What the step is a part of; empty in a short working.
    pub topic: &'static str,
    /// The formula over the symbols of `terms`, or empty where the value is taken from a table.
    ///
    /// Grammar: numbers, symbols (letters, digits, `_`, Greek), `+ − · / ^ ( )`, and the functions
    /// `sqrt`, `exp`, `log10`, `min`, `max`; `π` is a number.
    pub formula: &'static str,
    /// The values put in. Their units must fit each other as they stand.
    pub terms: Vec<Term>,
    /// What came out.
    pub result: Shown,
    /// Where the formula or the table value is published.
    pub source: Source,
}

/// A value put into a formula.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Term {
    /// Its symbol in the formula.
    pub symbol: &'static str,
    /// Which of several values of that symbol in the working it is, from 1; 0 where there is one.
    pub index: u8,
    /// Its value.
    pub value: Shown,
    /// Where it is published; `None` for what the user typed or an earlier step gave.
    pub source: Option<Source>,
}

impl Term {
    /// A value that the user gave or an earlier step computed.
    pub fn given(symbol: &'static str, value: Shown) -> Self {
        Self::known(symbol, value, None)
    }

    /// A value that is published somewhere, or is not.
    pub fn known(symbol: &'static str, value: Shown, source: Option<Source>) -> Self {
        Self { symbol, index: 0, value, source }
    }

    /// Its symbol as it is written in this working: `t`, or `t_2` where there are several.
    pub fn name(&self) -> Cow<'static, str> {
        named(self.symbol, self.index)
    }
}

/// The steps of a result, in the order they are done.
///
/// A step is written down where its number is computed:
///
/// ```
/// use kettle_barrel::quantity::{Length, Quantity, unit};
/// use kettle_barrel::source::document;
/// use kettle_barrel::working::Working;
///
/// let mm = |number| Length::from_mm(number).show(&unit::MM, 3);
/// let mut working = Working::default();
/// working
///     .step("clearance", "c2", "D2min − d2c", mm(0.078), document::ARITHMETIC.computed("difference"))
///     .given("D2min", mm(15.041))
///     .given("d2c", mm(14.963));
/// assert_eq!(working.steps().len(), 1);
/// ```
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
#[serde(transparent)]
pub struct Working {
    steps: Vec<Step>,
    /// What the steps that follow are a part of.
    #[serde(skip)]
    topic: &'static str,
}

impl Working {
    /// Writes down a step, whose values are then put in.
    pub fn step(
        &mut self,
        meaning: &'static str,
        symbol: &'static str,
        formula: &'static str,
        result: Shown,
        source: Source,
    ) -> &mut Step {
        let (meaning, topic) = (Cow::Borrowed(meaning), self.topic);
        self.steps.push_mut(Step {
            meaning,
            symbol,
            index: 0,
            topic,
            formula,
            terms: Vec::new(),
            result,
            source,
        })
    }

    /// Writes down a value read from a table, with no formula.
    pub fn table(
        &mut self,
        meaning: &'static str,
        symbol: &'static str,
        result: Shown,
        source: Source,
    ) -> &mut Step {
        self.step(meaning, symbol, "", result, source)
    }

    /// Says what the steps that follow are a part of: `the barrel`.
    pub fn topic(&mut self, topic: &'static str) {
        self.topic = topic;
    }

    /// The steps.
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// The steps by their topics, in the order they are done, each with its place.
    pub fn by_topic(&self) -> impl Iterator<Item = (&'static str, usize, &[Step])> {
        let mut place = 0;
        self.steps.chunk_by(|one, next| one.topic == next.topic).map(move |steps| {
            let from = place;
            place += steps.len();
            (steps.first().map_or("", |step| step.topic), from, steps)
        })
    }
}

impl Step {
    /// Says what is computed in words put together for the case.
    pub fn said(&mut self, meaning: String) -> &mut Self {
        self.meaning = Cow::Owned(meaning);
        self
    }

    /// Puts in a value that the user gave or an earlier step computed.
    pub fn given(&mut self, symbol: &'static str, value: Shown) -> &mut Self {
        self.known(symbol, value, None)
    }

    /// Puts in a published constant.
    pub fn published(&mut self, symbol: &'static str, value: Shown, source: Source) -> &mut Self {
        self.known(symbol, value, Some(source))
    }

    /// Puts in a value that is published somewhere, or is not.
    pub fn known(&mut self, symbol: &'static str, value: Shown, source: Option<Source>) -> &mut Self {
        self.term(Term::known(symbol, value, source))
    }

    /// Puts in a value that stands in more than one formula.
    pub fn term(&mut self, term: Term) -> &mut Self {
        self.terms.push(term);
        self
    }
}

/// A piece of a formula, typed so that each reader sets it in its own way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Segment<'a> {
    /// A symbol: `d2`, `t_max`, and which of its values in the working, or 0.
    Symbol(&'a str, u8),
    /// A function: `sqrt`.
    Function(&'a str),
    /// An operator, a bracket or a comma.
    Operator(&'a str),
    /// A number written in the formula itself.
    Number(&'a str),
    /// A value put in or a result, with its unit.
    Value(Shown),
}

impl Step {
    /// Its symbol as it is written in this working: `t`, or `t_2` where there are several.
    pub fn name(&self) -> Cow<'static, str> {
        named(self.symbol, self.index)
    }

    /// The pieces of the formula with its symbols.
    pub fn segments(&self) -> Vec<Segment<'_>> {
        let mut pieces = pieces(self.formula);
        for piece in &mut pieces {
            if let Segment::Symbol(symbol, index) = piece
                && let Some(term) = self.terms.iter().find(|term| term.symbol == *symbol)
            {
                *index = term.index;
            }
        }
        pieces
    }

    /// The pieces of the formula with the numbers put in.
    pub fn substituted(&self) -> Vec<Segment<'_>> {
        let formula = pieces(self.formula);
        let mut put_in = Vec::with_capacity(formula.len());
        for (at, piece) in formula.iter().enumerate() {
            let term = match piece {
                Segment::Symbol(symbol, _) => self.terms.iter().find(|term| term.symbol == *symbol),
                _ => None,
            };
            // A value with its unit is raised to a power as a whole: (12 mm)^2.
            let raised = matches!(formula.get(at + 1), Some(Segment::Operator("^")));
            match term {
                Some(term) if raised => put_in.extend([
                    Segment::Operator("("),
                    Segment::Value(term.value),
                    Segment::Operator(")"),
                ]),
                Some(term) => put_in.push(Segment::Value(term.value)),
                None => put_in.push(*piece),
            }
        }
        put_in
    }
}

/// The symbols of a formula, in its order; one that stands twice comes twice.
pub fn symbols(formula: &str) -> impl Iterator<Item = &str> {
    pieces(formula).into_iter().filter_map(|piece| match piece {
        Segment::Symbol(symbol, _) => Some(symbol),
        _ => None,
    })
}

/// A symbol with its number, where there are several of it.
pub fn named(symbol: &str, index: u8) -> Cow<'_, str> {
    if index == 0 { Cow::Borrowed(symbol) } else { Cow::Owned(format!("{symbol}_{index}")) }
}

/// Cuts a formula into its pieces.
fn pieces(formula: &str) -> Vec<Segment<'_>> {
    let mut pieces = Vec::new();
    let mut rest = formula.trim_start();
    while let Some(first) = rest.chars().next() {
        let in_word = |c: char| c.is_alphabetic() || c.is_ascii_digit() || c == '_' || c == '\'';
        let length = if first.is_ascii_digit() {
            rest.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(rest.len())
        } else if in_word(first) {
            rest.find(|c| !in_word(c)).unwrap_or(rest.len())
        } else {
            first.len_utf8()
        };
        let (piece, behind) = rest.split_at(length);
        pieces.push(match piece {
            "sqrt" | "exp" | "log10" | "min" | "max" => Segment::Function(piece),
            "π" => Segment::Number(piece),
            _ if first.is_ascii_digit() => Segment::Number(piece),
            _ if in_word(first) => Segment::Symbol(piece, 0),
            _ => Segment::Operator(piece),
        });
        rest = behind.trim_start();
    }
    pieces
}

/// Sets pieces as plain text, with spaces around what joins two sides.
pub fn plain(pieces: &[Segment<'_>]) -> String {
    let mut text = String::new();
    for piece in pieces {
        match piece {
            Segment::Symbol(symbol, index) => text.push_str(&named(symbol, *index)),
            Segment::Function(word) | Segment::Number(word) => text.push_str(word),
            Segment::Operator(sign @ ("+" | "−" | "·" | "/" | "-")) => {
                text.push(' ');
                text.push_str(sign);
                text.push(' ');
            }
            Segment::Operator(",") => text.push_str(", "),
            Segment::Operator(sign) => text.push_str(sign),
            Segment::Value(shown) => text.push_str(&shown.to_string()),
        }
    }
    text
}

impl fmt::Display for Step {
    /// `t_max = (D2min − d2max) / 4 = (15.041 mm − 14.663 mm) / 4 = 0.0945 mm`
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} = ", self.name())?;
        if !self.formula.is_empty() {
            write!(f, "{} = {} = ", plain(&self.segments()), plain(&self.substituted()))?;
        }
        write!(f, "{}", self.result)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Length, Quantity, unit};
    use crate::source::document;

    #[test]
    fn a_step_shows_the_formula_the_numbers_and_the_result() {
        let mm = |number, decimals| Length::from_mm(number).show(&unit::MM, decimals);
        let source = document::ARITHMETIC.computed("60° flanks");
        let mut working = Working::default();
        let step = working
            .step("thickest coat that still assembles", "t_max", "(D2min − d2max) / 4", mm(0.0945, 4), source)
            .given("D2min", mm(15.041, 3))
            .given("d2max", mm(14.663, 3));
        assert_eq!(
            step.to_string(),
            "t_max = (D2min − d2max) / 4 = (15.041\u{a0}mm − 14.663\u{a0}mm) / 4 = 0.0945\u{a0}mm"
        );
    }
}
