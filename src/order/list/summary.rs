//! What a list comes to.

use std::collections::BTreeMap;
use std::fmt;

use super::Row;
use crate::calculator::Verdict;
use crate::coat::Process;
use crate::quantity::Mass;
use crate::rule::{self, Key};

/// What a list comes to: how many suit by process, what stands in the way most often, zinc and weight in all.
#[derive(Debug, Clone, PartialEq)]
pub struct Summary {
    /// Lines that were assessed.
    pub assessed: u64,
    /// Lines that could not be.
    pub problems: u64,
    /// Lines of which not every word was used.
    pub not_all_used: u64,
    /// By process, how many suit, suit on conditions, are ruled out.
    verdicts: [[u64; 3]; 3],
    /// How many lines are recommended each process, with the zinc they take, minimum and maximum.
    taken: [(u64, Mass, Mass); 3],
    /// Lines whose zinc is not known, because a shape is not.
    pub zinc_unknown: u64,
    /// Of all lines whose shape is known.
    weight: Mass,
    in_the_way: BTreeMap<(Process, Key), u64>,
}

/// Of what stands in the way, as many as are named.
const NAMED: usize = 5;

impl Default for Summary {
    fn default() -> Self {
        let nothing = Mass::from_kg(0.0);
        Self {
            assessed: 0,
            problems: 0,
            not_all_used: 0,
            verdicts: [[0; 3]; 3],
            taken: [(0, nothing, nothing); 3],
            zinc_unknown: 0,
            weight: nothing,
            in_the_way: BTreeMap::new(),
        }
    }
}

impl Summary {
    /// With one more row.
    pub fn add(&mut self, row: &Row) {
        self.not_all_used += u64::from(!row.not_used.is_empty());
        let Ok(assessed) = &row.result else {
            self.problems += 1;
            return;
        };
        self.assessed += 1;
        self.weight = self.weight + assessed.weight.unwrap_or(Mass::from_kg(0.0));
        let judged = Process::ALL.into_iter().zip(assessed.verdicts).zip(assessed.in_the_way);
        for (((process, verdict), rule), counts) in judged.zip(&mut self.verdicts) {
            if let Some(count) = counts.get_mut(verdict as usize) {
                *count += 1;
            }
            if let Some(rule) = rule {
                *self.in_the_way.entry((process, rule)).or_default() += 1;
            }
        }
        for (process, (count, min, max)) in Process::ALL.into_iter().zip(&mut self.taken) {
            let Some(take) = assessed.take.as_ref().filter(|take| take.process == process) else { continue };
            *count += 1;
            match take.zinc {
                Some((least, greatest)) => {
                    *min = *min + least;
                    *max = *max + greatest;
                }
                None => self.zinc_unknown += 1,
            }
        }
    }

    /// How many lines have this verdict in this process.
    pub fn count(&self, process: Process, verdict: Verdict) -> u64 {
        let place = Process::ALL.iter().position(|one| *one == process);
        place.and_then(|place| self.verdicts.get(place)?.get(verdict as usize).copied()).unwrap_or_default()
    }
}

impl fmt::Display for Summary {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(
            f,
            "{} lines assessed, {} with a problem, {} with words that were not used.",
            self.assessed, self.problems, self.not_all_used
        )?;
        for (process, (count, min, max)) in Process::ALL.into_iter().zip(self.taken) {
            writeln!(
                f,
                "{process}: suits {}, on conditions {}, ruled out {}; recommended {count} times, with {:.1} to {:.1} kg of zinc.",
                self.count(process, Verdict::Suits),
                self.count(process, Verdict::OnConditions),
                self.count(process, Verdict::RuledOut),
                min.kg(),
                max.kg(),
            )?;
        }
        if self.zinc_unknown > 0 {
            writeln!(f, "The zinc of {} lines is not known: no shape is.", self.zinc_unknown)?;
        }
        writeln!(f, "Weight where the shape is known: {:.1} kg.", self.weight.kg())?;
        let mut often: Vec<_> = self.in_the_way.iter().collect();
        often.sort_by_key(|(_, count)| std::cmp::Reverse(**count));
        if !often.is_empty() {
            writeln!(f, "Most often in the way:")?;
        }
        for ((process, key), count) in often.into_iter().take(NAMED) {
            writeln!(f, "  {count} × {process}: {}", rule::rule(*key).source)?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::super::row;
    use super::*;

    #[test]
    fn a_summary_adds_up() {
        let lines = [
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs",
            "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs, with love",
            "nothing at all",
        ];
        let mut summary = Summary::default();
        lines.iter().for_each(|line| summary.add(&row(line)));
        assert_eq!((summary.assessed, summary.problems, summary.not_all_used), (2, 1, 2));
        for process in Process::ALL {
            let all = [Verdict::Suits, Verdict::OnConditions, Verdict::RuledOut];
            assert_eq!(all.map(|verdict| summary.count(process, verdict)).iter().sum::<u64>(), 2);
        }
        assert!(summary.to_string().contains("recommended 2 times"));
    }
}
