//! A demand in words, with the numbers of the case that was judged.

use super::Demand;
use crate::order::judge::{Judged, Judgement};
use crate::rule::Case;

impl Demand {
    /// The demand as a sentence.
    pub fn text(&self, judgement: &Judgement, judged: &Judged) -> String {
        let mut texts = self
            .rulings
            .iter()
            .filter_map(|(place, ruling)| Some(ruling.text(&judgement.case(judged, *place)?)));
        let mut keys = self.rulings.iter().map(|(_, ruling)| ruling.rule.key);
        let first = keys.next();
        let several = keys.any(|key| Some(key) != first);
        match self.instruction {
            Some(instruction) if several && !self.clash => {
                self.case(judgement, judged).map(|case| instruction.words(&case)).unwrap_or_default()
            }
            _ if self.clash => {
                let mut each: Vec<String> = Vec::new();
                for text in texts {
                    if !each.contains(&text) {
                        each.push(text);
                    }
                }
                format!("Settle with the purchaser which counts: {}", each.join("; or: "))
            }
            // The parts of a set that differ in a number are told by the first, the worst of its kind.
            _ => texts.next().unwrap_or_default(),
        }
    }

    /// The demand in a few words, to be read aloud.
    pub fn brief(&self, judgement: &Judgement, judged: &Judged) -> String {
        let one = self.rulings.iter().find(|(_, ruling)| ruling.says.mark == self.mark);
        let is_one = |key| one.is_some_and(|(_, ruling)| ruling.rule.key == key);
        let alone = self.rulings.iter().all(|(_, other)| is_one(other.rule.key));
        match self.instruction {
            Some(instruction) if !alone => {
                self.case(judgement, judged).map(|case| instruction.brief(&case)).unwrap_or_default()
            }
            _ => one
                .and_then(|(place, ruling)| Some(ruling.brief(&judgement.case(judged, *place)?)))
                .unwrap_or_default(),
        }
    }

    /// The case of the first part that it speaks of.
    fn case<'j>(&self, judgement: &'j Judgement, judged: &'j Judged) -> Option<Case<'j>> {
        judgement.case(judged, self.rulings.first()?.0)
    }
}
