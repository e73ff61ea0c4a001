//! A formula as a tree, from which it is set as mathematics and done again.
//!
//! [`Step`](super::Step) writes a formula in a line of text; set on the screen, a quotient is a
//! fraction, a power is raised with all that belongs to it, and a root stands over its number.

use super::Segment;
use crate::quantity::Shown;

/// A part of a formula.
#[derive(Debug, Clone, PartialEq)]
pub enum Node<'a> {
    /// A number written in the formula.
    Number(&'a str),
    /// A symbol, and which of its values in the working, or 0.
    Symbol(&'a str, u8),
    /// A value put in, with its unit.
    Value(Shown),
    /// Parts joined by signs; the first sign stands before the first part and may be empty.
    Row(Vec<(&'a str, Node<'a>)>),
    /// A quotient.
    Fraction(Box<Node<'a>>, Box<Node<'a>>),
    /// A power.
    Power(Box<Node<'a>>, Box<Node<'a>>),
    /// A square root.
    Root(Box<Node<'a>>),
    /// A function of one or more parts.
    Call(&'a str, Vec<Node<'a>>),
    /// Parts in brackets.
    Bracket(Box<Node<'a>>),
}

/// The tree of a formula; `None` where the pieces are none.
pub fn tree<'a>(pieces: &[Segment<'a>]) -> Option<Node<'a>> {
    let mut parser = Parser { pieces, at: 0 };
    let node = parser.sum()?;
    (parser.at == pieces.len()).then_some(node)
}

/// A symbol taken apart into its letter and its index: `d2min` into `d` and `2min`.
pub fn letter_and_index(symbol: &str) -> (&str, String) {
    let at = symbol
        .find('_')
        .or_else(|| symbol.find(|letter: char| letter.is_ascii_digit()).filter(|at| *at > 0))
        .unwrap_or(symbol.len());
    let (letter, index) = symbol.split_at(at);
    (letter, index.trim_start_matches('_').replace('_', ","))
}

impl Node<'_> {
    /// What it comes to where each symbol stands for a number; nothing where one is not known.
    pub fn value(&self, of: &dyn Fn(&str) -> Option<f64>) -> Option<f64> {
        let sum = |parts: &[(&str, Node<'_>)]| {
            parts.iter().try_fold(0.0, |sum, (sign, part)| {
                let value = part.value(of)?;
                Some(if matches!(*sign, "−" | "-") { sum - value } else { sum + value })
            })
        };
        Some(match self {
            Self::Number("π") => std::f64::consts::PI,
            Self::Number(digits) => digits.parse().ok()?,
            Self::Symbol(symbol, _) => of(symbol)?,
            Self::Value(shown) => shown.number,
            Self::Row(parts) if parts.iter().any(|(sign, _)| *sign == "·") => {
                parts.iter().try_fold(1.0, |product, (_, part)| Some(product * part.value(of)?))?
            }
            Self::Row(parts) => sum(parts)?,
            Self::Fraction(over, under) => over.value(of)? / under.value(of)?,
            Self::Power(base, exponent) => base.value(of)?.powf(exponent.value(of)?),
            Self::Root(inside) => inside.value(of)?.sqrt(),
            Self::Bracket(inside) => inside.value(of)?,
            Self::Call(name, parts) => {
                let mut values = Vec::with_capacity(parts.len());
                for part in parts {
                    values.push(part.value(of)?);
                }
                match (*name, values.as_slice()) {
                    ("exp", [value]) => value.exp(),
                    ("log10", [value]) => value.log10(),
                    ("min", [first, rest @ ..]) => rest.iter().fold(*first, |least, value| least.min(*value)),
                    ("max", [first, rest @ ..]) => rest.iter().fold(*first, |most, value| most.max(*value)),
                    _ => return None,
                }
            }
        })
    }

    /// Without the brackets around it, where something else holds it together.
    pub fn bare(&self) -> &Self {
        match self {
            Self::Bracket(inside) => inside,
            other => other,
        }
    }
}

struct Parser<'p, 'a> {
    pieces: &'p [Segment<'a>],
    at: usize,
}

impl<'a> Parser<'_, 'a> {
    /// The sign that comes next, if it is one of these.
    fn sign(&mut self, signs: &[&str]) -> Option<&'a str> {
        match self.pieces.get(self.at) {
            Some(Segment::Operator(sign)) if signs.contains(sign) => {
                self.at += 1;
                Some(*sign)
            }
            _ => None,
        }
    }

    fn sum(&mut self) -> Option<Node<'a>> {
        let first = self.sign(&["−", "-", "+"]).unwrap_or("");
        let mut parts = vec![(first, self.product()?)];
        while let Some(sign) = self.sign(&["+", "−", "-"]) {
            parts.push((sign, self.product()?));
        }
        Some(row(parts))
    }

    fn product(&mut self) -> Option<Node<'a>> {
        let mut parts = vec![("", self.power()?)];
        while let Some(sign) = self.sign(&["·", "/"]) {
            let next = self.power()?;
            if sign == "/" {
                // From left to right: all that was multiplied so far is divided.
                let over = row(std::mem::take(&mut parts));
                parts = vec![("", Node::Fraction(Box::new(over), Box::new(next)))];
            } else {
                parts.push((sign, next));
            }
        }
        Some(row(parts))
    }

    fn power(&mut self) -> Option<Node<'a>> {
        let base = self.part()?;
        if self.sign(&["^"]).is_none() {
            return Some(base);
        }
        let sign = self.sign(&["−", "-"]);
        let exponent = self.power()?;
        let exponent =
            sign.map_or_else(|| exponent.clone(), |sign| Node::Row(vec![(sign, exponent.clone())]));
        Some(Node::Power(Box::new(base), Box::new(exponent)))
    }

    fn part(&mut self) -> Option<Node<'a>> {
        let piece = *self.pieces.get(self.at)?;
        self.at += 1;
        match piece {
            Segment::Number(digits) => Some(Node::Number(digits)),
            Segment::Symbol(symbol, index) => Some(Node::Symbol(symbol, index)),
            Segment::Value(value) => Some(Node::Value(value)),
            Segment::Operator("(") => {
                let inside = self.sum()?;
                self.sign(&[")"])?;
                Some(Node::Bracket(Box::new(inside)))
            }
            Segment::Function(name) => {
                self.sign(&["("])?;
                let mut parts = vec![self.sum()?];
                while self.sign(&[","]).is_some() {
                    parts.push(self.sum()?);
                }
                self.sign(&[")"])?;
                match (name, parts.len()) {
                    ("sqrt", 1) => parts.pop().map(|inside| Node::Root(Box::new(inside))),
                    _ => Some(Node::Call(name, parts)),
                }
            }
            Segment::Operator(_) => None,
        }
    }
}

/// Parts in a row; one alone is no row.
fn row<'a>(mut parts: Vec<(&'a str, Node<'a>)>) -> Node<'a> {
    match parts.as_slice() {
        [("", _)] => parts.remove(0).1,
        _ => Node::Row(parts),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calculator::REGISTER;
    use crate::working::plain;

    /// The tree in signs: fractions in `{ }`, raised parts in `[ ]`.
    fn written(node: &Node<'_>) -> String {
        match node {
            Node::Number(text) | Node::Symbol(text, _) => (*text).to_owned(),
            Node::Value(shown) => shown.to_string(),
            Node::Row(parts) => parts.iter().map(|(sign, part)| format!("{sign}{}", written(part))).collect(),
            Node::Fraction(over, under) => format!("{{{}/{}}}", written(over.bare()), written(under.bare())),
            Node::Power(base, exponent) => format!("{}[{}]", written(base), written(exponent.bare())),
            Node::Root(inside) => format!("√{{{}}}", written(inside)),
            Node::Call(name, parts) => {
                format!("{name}({})", parts.iter().map(written).collect::<Vec<_>>().join(","))
            }
            Node::Bracket(inside) => format!("({})", written(inside)),
        }
    }

    fn step(formula: &'static str) -> crate::working::Step {
        let mut working = crate::working::Working::default();
        let source = crate::source::document::ARITHMETIC.computed("");
        working.step("", "x", formula, Shown::plain(1.0, 0), source);
        working.steps()[0].clone()
    }

    #[test]
    fn a_power_is_raised_with_all_that_belongs_to_it_and_a_quotient_is_a_fraction() {
        let cases = [
            ("(D/r)^(1/b)", "({D/r})[{1/b}]"),
            ("20^0.873", "20[0.873]"),
            ("a · b / c · d", "{a·b/c}·d"),
            ("a / b / c", "{{a/b}/c}"),
            ("−a + b^2 − (c − d)", "−a+b[2]−(c−d)"),
            ("sqrt(a^2 + b^2)", "√{a[2]+b[2]}"),
            ("max(a, b + 1)", "max(a,b+1)"),
            ("2^a^b", "2[a[b]]"),
            ("(a + b) / (c + d)", "{a+b/c+d}"),
            ("π / 4 · d^2", "{π/4}·d[2]"),
        ];
        for (formula, expected) in cases {
            assert_eq!(written(&tree(&step(formula).segments()).unwrap()), expected, "{formula}");
        }
        for broken in ["a +", "(a", "a b", "^2", ""] {
            assert_eq!(tree(&step(broken).segments()), None, "{broken}");
        }
    }

    #[test]
    fn every_formula_of_every_worked_example_is_set_whole() {
        for entry in REGISTER {
            for example in entry.about.examples {
                let report = entry.evaluate(&example.pairs.iter().copied().collect()).unwrap();
                for step in report.working.steps().iter().filter(|step| !step.formula.is_empty()) {
                    for pieces in [step.segments(), step.substituted()] {
                        assert!(tree(&pieces).is_some(), "{}: {}", entry.about.id, plain(&pieces));
                    }
                }
            }
        }
    }

    #[test]
    fn a_symbol_is_taken_apart_into_letter_and_index() {
        for (symbol, letter, index) in
            [("d2min", "d", "2min"), ("t_max", "t", "max"), ("D", "D", ""), ("A_s_1", "A", "s,1")]
        {
            assert_eq!(letter_and_index(symbol), (letter, index.to_owned()), "{symbol}");
        }
    }
}
