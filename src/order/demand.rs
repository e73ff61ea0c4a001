//! What an order has to see to: instructions, each told once, with all the rules that ask for it.

use crate::rule::{Case, Instruction, Key, Ruling};
use crate::sorting::sort_by_key;
use crate::working::Mark;

/// Begins what is not only written on the order, but agreed with somebody.
pub const AGREE: &str = "Agree ";

/// One thing that rules say, told once.
#[derive(Debug, Clone)]
pub struct Demand {
    /// What it means for the verdict: the worst of its rules.
    pub mark: Mark,
    /// What satisfies all of them, where they are an instruction.
    pub instruction: Option<Instruction>,
    /// The rules, with the place of the part that each speaks of.
    pub rulings: Vec<(usize, Ruling)>,
    /// Whether nothing satisfies all of them: a condition that names both.
    pub clash: bool,
}

/// What rules say, the same things put together, the worst first; with the place of the part that each
/// rule speaks of, whose case is asked for.
pub fn of<'c>(rulings: &[(usize, Ruling)], case: impl Fn(usize) -> Option<Case<'c>>) -> Vec<Demand> {
    let mut demands: Vec<Demand> = Vec::new();
    for &(place, ruling) in rulings.iter().filter(|(_, ruling)| ruling.mark > Mark::Met) {
        let asks = match ruling.mark {
            Mark::Term | Mark::Condition => case(place).and_then(|case| ruling.says(&case).instruction),
            _ => None,
        };
        let same = demands.iter_mut().find(|demand| match (demand.instruction, asks) {
            (Some(one), Some(other)) => one.is_like(&other),
            (None, None) => {
                demand.rulings.iter().any(|(_, other)| other.rule.key == ruling.rule.key)
                    && demand.mark == ruling.mark
            }
            _ => false,
        });
        match same {
            Some(demand) => demand.take(place, ruling, asks),
            None => demands.push(Demand {
                mark: ruling.mark,
                instruction: asks,
                rulings: vec![(place, ruling)],
                clash: false,
            }),
        }
    }
    sort_by_key(&mut demands, |demand| std::cmp::Reverse(demand.mark));
    demands
}

impl Demand {
    /// Whether it has to be proved, agreed or said before the process can be taken.
    pub fn is_condition(&self) -> bool {
        matches!(self.mark, Mark::Condition | Mark::NotJudged)
    }

    /// Whether it is a condition of this rule.
    pub fn is_of(&self, key: Key) -> bool {
        self.is_condition() && self.rulings.iter().any(|(_, ruling)| ruling.rule.key == key)
    }

    fn take(&mut self, place: usize, ruling: Ruling, asks: Option<Instruction>) {
        self.mark = self.mark.max(ruling.mark);
        if let (Some(one), Some(other)) = (self.instruction, asks) {
            match one.and(other) {
                Some(both) => self.instruction = Some(both),
                None => {
                    self.clash = true;
                    self.mark = self.mark.max(Mark::Condition);
                }
            }
        }
        self.rulings.push((place, ruling));
    }
}
