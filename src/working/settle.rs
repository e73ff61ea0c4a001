//! A working made fit to be done again: a symbol has one value, and each sum comes out of the numbers
//! that are shown.

use super::{Node, Step, Working, tree};
use crate::quantity::Shown;

/// Times that the steps are gone through; a digit more in one may ask for one more in another.
const PASSES: usize = 6;
/// Most decimals that a number is shown with.
const MOST: u8 = 17;

/// A value that a symbol stands for somewhere.
struct Use {
    symbol: &'static str,
    value: Shown,
    /// The step that it came out of, if it did.
    result: Option<usize>,
}

impl Working {
    /// Numbers the values of a symbol that stands for several, and shows a digit more of what is put
    /// into a sum that would not come out to the last digit.
    pub fn settle(&mut self) {
        self.number();
        self.refine();
    }

    fn number(&mut self) {
        let mut uses: Vec<Use> = Vec::new();
        let mut index_of = |symbol: &'static str, value: Shown, result: Option<usize>| {
            let fits = |one: &Use| {
                let taken = result.is_some() && one.result.is_some();
                one.symbol == symbol && !taken && same(one.value, value)
            };
            // The latest is meant where two came to the same.
            let at = uses.iter().rposition(fits);
            match at.and_then(|at| uses.get_mut(at)) {
                Some(one) => one.result = one.result.or(result),
                None => uses.push(Use { symbol, value, result }),
            }
            let before = at.map_or(uses.len(), |at| at + 1);
            uses.iter().take(before).filter(|one| one.symbol == symbol).count()
        };
        let mut numbers = Vec::new();
        for (at, step) in self.steps.iter().enumerate() {
            let terms = step.terms.iter().map(|term| index_of(term.symbol, term.value, None));
            numbers.extend(terms.collect::<Vec<_>>());
            numbers.push(index_of(step.symbol, step.result, Some(at)));
        }
        let several = |symbol: &str| uses.iter().filter(|one| one.symbol == symbol).count() > 1;
        let mut numbers = numbers.into_iter();
        let mut next = |symbol: &str| {
            let number = numbers.next().and_then(|number| u8::try_from(number).ok());
            number.filter(|_| several(symbol)).unwrap_or(0)
        };
        for step in &mut self.steps {
            step.terms.iter_mut().for_each(|term| term.index = next(term.symbol));
            step.index = next(step.symbol);
        }
    }

    fn refine(&mut self) {
        let pieces: Vec<_> = self.steps.iter().map(|step| super::pieces(step.formula)).collect();
        let trees: Vec<Option<Node<'_>>> = pieces.iter().map(|pieces| tree(pieces)).collect();
        (0..self.steps.len()).for_each(|at| self.show_alike_of(at));
        for _ in 0..PASSES {
            let mut is_settled = true;
            // From the last: what a step shows of an earlier result is what that step then has to give.
            for (at, node) in trees.iter().enumerate().rev() {
                let Some(node) = node else { continue };
                while let Some(step) = self.steps.get_mut(at)
                    && !comes_out(node, step)
                    && finer(step)
                {
                    is_settled = false;
                }
                self.show_alike_of(at);
            }
            if is_settled {
                break;
            }
        }
    }

    /// Shows the values of a step with as many decimals wherever they stand.
    fn show_alike_of(&mut self, at: usize) {
        let Some(step) = self.steps.get(at) else { return };
        let result = (step.symbol, step.index, step.result);
        let terms = step.terms.iter().map(|term| (term.symbol, term.index, term.value));
        for (symbol, index, value) in terms.chain([result]).collect::<Vec<_>>() {
            self.show_alike(symbol, index, value);
        }
    }

    /// Shows a value with as many decimals wherever it stands.
    fn show_alike(&mut self, symbol: &str, index: u8, value: Shown) {
        for step in &mut self.steps {
            let of_terms = step.terms.iter_mut().map(|term| ((term.symbol, term.index), &mut term.value));
            for (name, other) in of_terms.chain([((step.symbol, step.index), &mut step.result)]) {
                if name == (symbol, index) && other.unit == value.unit && same(*other, value) {
                    other.decimals = other.decimals.max(value.decimals);
                }
            }
        }
    }
}

/// Whether two are the same value, whatever the unit.
fn same(one: Shown, other: Shown) -> bool {
    let number =
        if one.unit == other.unit { Some(one.number) } else { one.unit.convert(one.number, other.unit) };
    number.is_some_and(|number| (number - other.number).abs() <= 1e-9 * other.number.abs())
}

/// Whether the sum of the numbers shown rounds to the result shown.
fn comes_out(node: &Node<'_>, step: &Step) -> bool {
    let put_in = |symbol: &str| {
        step.terms.iter().find(|term| term.symbol == symbol).map(|term| term.value.displayed())
    };
    let half = 0.5 * 10f64.powi(-i32::from(step.result.decimals));
    let result = step.result.displayed();
    node.value(&put_in).is_none_or(|sum| (sum - result).abs() <= half * (1.0 + 1e-6) + 1e-12 * result.abs())
}

/// Shows a digit more of every value that is shown rounded; `false` where none is.
fn finer(step: &mut Step) -> bool {
    let mut is_finer = false;
    for term in &mut step.terms {
        let value = &mut term.value;
        let is_rounded = (value.displayed() - value.number).abs() > 1e-12 * value.number.abs();
        if is_rounded && value.decimals < MOST {
            value.decimals += 1;
            is_finer = true;
        }
    }
    is_finer
}
