//! A demand in words, with the numbers of the case that was judged.

use super::demand::Demand;
use super::judge::{Judged, Judgement};
use crate::rule::{Case, Ruling};
use crate::sentence::worded;
use crate::source::Source;
use crate::working::Mark;

/// Why a thing is asked for, by one of its rules.
#[derive(Debug, Clone)]
pub struct Reason {
    /// The place of the part that it speaks of.
    pub place: usize,
    /// The reason.
    pub text: String,
    /// Where the rule is published.
    pub source: Source,
}

impl Demand {
    /// The demand as a sentence: what is asked for as an instruction, what rules out or is good to know
    /// with its reason.
    pub fn text(&self, judgement: &Judgement, judged: &Judged) -> String {
        let asks = matches!(self.mark, Mark::Term | Mark::Condition | Mark::NotJudged);
        let said = |case: &Case<'_>, ruling: &Ruling| {
            if asks { ruling.instruction(case) } else { ruling.text(case) }
        };
        let mut texts = self
            .rulings
            .iter()
            .filter_map(|(place, ruling)| Some(said(&judgement.case(judged, *place)?, ruling)));
        match self.instruction {
            Some(instruction) if self.is_merged() => {
                self.case(judgement, judged).map(|case| instruction.words(&case)).unwrap_or_default()
            }
            _ if self.clash => {
                let mut each: Vec<String> = Vec::new();
                for text in texts {
                    if !each.contains(&text) {
                        each.push(text);
                    }
                }
                worded(format_args!("Settle with the purchaser which counts: {}", each.join("; or: ")))
            }
            // The parts of a set that differ in a number are told by the first, the worst of its kind.
            _ => texts.next().unwrap_or_default(),
        }
    }

    /// Why it is asked for, rule by rule, each reason once; where several rules were put together, with
    /// what each of them asks for. What rules out or is good to know has its reason in its sentence.
    pub fn reasons(&self, judgement: &Judgement, judged: &Judged) -> Vec<Reason> {
        let mut reasons: Vec<Reason> = Vec::new();
        if matches!(self.mark, Mark::Bar | Mark::Note) {
            return reasons;
        }
        let mut first = None;
        for (place, ruling) in &self.rulings {
            let Some(case) = judgement.case(judged, *place) else { continue };
            let source = ruling.source(&case);
            let first = *first.get_or_insert(source);
            let text = if self.is_merged() { ruling.text(&case) } else { ruling.why(&case) };
            // A further source is told even if its rule has no reason of its own.
            let text = match text.is_empty() {
                true if source != first => ruling.instruction(&case),
                _ => text,
            };
            let is_told = |told: &Reason| told.text == text && told.source == source;
            if !text.is_empty() && !reasons.iter().any(is_told) {
                reasons.push(Reason { place: *place, text, source });
            }
        }
        reasons
    }

    /// The first place where it is published, and the others, each once.
    pub fn sources(&self, judgement: &Judgement, judged: &Judged) -> Option<(Source, Vec<Source>)> {
        let mut sources = self
            .rulings
            .iter()
            .filter_map(|(place, ruling)| Some(ruling.source(&judgement.case(judged, *place)?)));
        let first = sources.next()?;
        let mut others = Vec::new();
        for source in sources {
            if source != first && !others.contains(&source) {
                others.push(source);
            }
        }
        Some((first, others))
    }

    /// Whether rules of several kinds are told as one instruction.
    fn is_merged(&self) -> bool {
        let mut keys = self.rulings.iter().map(|(_, ruling)| ruling.rule.key);
        let first = keys.next();
        self.instruction.is_some() && !self.clash && keys.any(|key| Some(key) != first)
    }

    /// The demand in a few words, to be read aloud.
    pub fn brief(&self, judgement: &Judgement, judged: &Judged) -> String {
        let one = self.rulings.iter().find(|(_, ruling)| ruling.mark == self.mark);
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
