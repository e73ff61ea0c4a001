//! What stands in front of the name of a part: another name, and a word that says for what it is.

use super::is_put_on;
use super::run::{BARE_NOUNS, Noun, Run};
use crate::order::reading::items::{Item, Line};
use crate::order::reading::left_out::is_finish;
use crate::order::reading::lexicon;
use crate::order::reading::nouns::MATES;
use crate::order::reading::what::{SteelWord, What};
use crate::quantity::letters::lower;

/// What of a part stands in front of a place.
#[derive(Default)]
pub(super) struct Front {
    /// A bolt, a screw, a rod, or what else has no nut's or washer's noun.
    pub bolt: bool,
    /// A nut or a washer that does not come with another part.
    pub mate: bool,
    /// The size of a machine thread with its length: a bolt that no word names.
    pub size: bool,
    /// Nothing but the bare noun, or the noun of screws.
    pub bare: bool,
    /// A ring, which is for a shaft or a bore.
    pub ring: bool,
    /// A flange in the name.
    pub flange: bool,
}

impl Front {
    /// The name of a part, which is not that of what is used for.
    pub fn named(&mut self, run: &Run, with: bool) {
        self.ring |= run.words.contains(&"ring");
        self.flange |= run.words.contains(&"flange");
        match run.noun {
            Some(Noun::Bolt) => {
                self.bare = !self.bolt && run.words.iter().all(|word| BARE_NOUNS.contains(word));
                self.bolt = true;
            }
            Some(Noun::Mate) => self.mate |= !with,
            None => {}
        }
    }

    /// `DIN 933 M16x60`: the standard of a part names it too.
    pub fn standard(&mut self, line: &Line, at: usize) {
        if let Some(What::PartStandard(key)) =
            line.what(at).filter(|_| line.items.get(at).is_some_and(Item::is_free))
        {
            let is_mate = MATES.iter().any(|mate| key.ends_with(mate));
            let with = line.before(at).is_some_and(|before| line.what(before) == Some(&What::With(true)));
            self.bolt |= !is_mate;
            self.ring |= key.ends_with("ring");
            self.mate |= is_mate && !with;
        }
    }
}

/// What says for what a part is.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum By {
    /// `for`, `to suit`.
    For,
    /// `to hold`, `clamping`, `between`.
    Joins,
    /// `on`, `in`, `to`: beside much else.
    On,
}

/// Such a word that stands in front of a place, in the same stretch of the line.
#[derive(Default)]
pub(super) struct Opened {
    /// Which, of two the later.
    pub by: Option<By>,
    /// Whether nothing but what a thing may have in front of it stands between.
    pub is_next: bool,
    /// A finish that stands between: `for galvanized flange`.
    pub finish: Option<usize>,
}

impl Opened {
    /// What a piece that is no name of a part makes of it.
    pub fn go_on(&mut self, line: &Line, at: usize) {
        let text = line.items.get(at).map_or(String::new(), |item| lower(&item.text));
        let is_free = line.items.get(at).is_some_and(Item::is_free);
        let opens = match line.what(at) {
            Some(What::Filler) if line.says_for(at) => Some(By::For),
            Some(What::Filler) if lexicon::BETWEEN.contains(&text.as_str()) => Some(By::Joins),
            Some(What::Filler) if lexicon::JOINS.contains(&text.as_str()) => Some(By::Joins),
            Some(What::Filler) if is_put_on(line, at) => Some(By::On),
            _ => None,
        };
        if opens.is_some() {
            *self = Self { by: opens, is_next: true, finish: None };
            return;
        }
        let is_between = self.by == Some(By::Joins);
        match line.what(at) {
            // `zum Spannen von Stangen`.
            Some(What::Filler) if is_between && lexicon::OF.contains(&text.as_str()) => {}
            Some(What::Filler) => self.is_next &= lexicon::IN_FRONT_OF_A_THING.contains(&text.as_str()),
            Some(What::Steel(SteelWord::OtherMetal) | What::Small(_)) => {}
            // `for 4" flange`.
            Some(What::Inches { .. } | What::Length(_) | What::Bare(_)) => {
                self.is_next &= self.by != Some(By::On)
            }
            // `between wall and flange`.
            Some(What::With(false) | What::Or) => self.is_next = is_between,
            Some(What::Not(_) | What::Around(_) | What::Place(_) | What::Category(_) | What::Part(_)) => {
                self.is_next = false
            }
            _ if !is_free => self.is_next = false,
            Some(what)
                if is_finish(what) && self.is_next && self.finish.is_none() && self.by != Some(By::On) =>
            {
                self.finish = Some(at);
            }
            _ => *self = Self::default(),
        }
    }
}
