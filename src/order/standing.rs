//! What a process is to an order: its verdict, and whether the order wants the zinc that it judges.
//!
//! A coat may suit the part that nobody asked for. Tiles, answer, terminal, sheet, list and what is kept say so
//! in the same words, which stand here.

use std::borrow::Cow;

use serde::Serialize;

use super::OrderLine;
use super::judge::Judged;
use super::recommend::is_wanted;
use crate::calculator::Verdict;
use crate::coat::Process;
use crate::sentence::worded;

/// What a process is to an order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Standing {
    /// Its verdict.
    pub verdict: Verdict,
    /// Why it is not ordered all the same; `None` where it may be, and where it is ruled out anyhow.
    pub aside: Option<Aside>,
}

/// Why a process that is not ruled out is not ordered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Aside {
    /// The order asks for no zinc, or for a coat that is not judged here.
    NotAskedFor,
    /// The order leaves the process out.
    LeftOut,
}

impl Standing {
    /// Of a process as it was judged.
    pub fn of(line: &OrderLine, judged: &Judged) -> Self {
        Self::with(line, judged.process, judged.verdict())
    }

    /// Of a process whose verdict is known.
    pub fn with(line: &OrderLine, process: Process, verdict: Verdict) -> Self {
        let aside = match verdict {
            Verdict::RuledOut => None,
            _ if line.not_judged().is_some() => Some(Aside::NotAskedFor),
            _ if !is_wanted(line, process) => Some(Aside::LeftOut),
            _ => None,
        };
        Self { verdict, aside }
    }

    /// In words, with a capital: `Suits`, `Suits, not asked for`.
    pub fn words(self) -> Cow<'static, str> {
        match self.aside {
            None => self.verdict.words().into(),
            Some(aside) => worded(format_args!("{}, {}", self.verdict.words(), aside.words())).into(),
        }
    }
}

impl Aside {
    /// In words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::NotAskedFor => "not asked for",
            Self::LeftOut => "left out by the order",
        }
    }
}
