//! What a part is for: `bolts for drywall partition`, `bolts to hold eye bolt`. Behind the part that is ordered, the name of
//! another one behind such a word is none of the order's.

mod front;
mod run;

use super::{OF_WHAT_IT_JOINS, says_joins};
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon;
use crate::order::reading::nouns::{BOLTS, is_named};
use crate::order::reading::what::{SteelWord, What};
use crate::quantity::letters::lower;
use crate::steel::Grade;
use front::{By, Front, Opened};
use run::{Noun, Run};

/// Why the thing that a part is for is not used.
const THING: &str = "what it is for is not judged";

/// Why the name of another part behind the word that says for what is not used: a reader may have meant it.
const NAMED: &str = "what it is for is not judged: write it as a line of its own if it is ordered as well";

/// Why a measure of a flange beside a bolt is not used.
const MEASURED: &str = "the flange that it joins: if the bolt itself has one, write flange bolt";

/// Names what a part is for, and no name of a part of it is left.
pub(super) fn settle(line: &mut Line, text: &str) {
    surroundings(line, text);
    let (mut front, mut opened) = (Front::default(), Opened::default());
    let is_of_bolt = (0..line.items.len()).any(|at| is_steel_of_bolts(line, at));
    let is_bolt = is_of_bolt && (0..line.items.len()).any(|at| is_machine_thread(line, at));
    let has_bolt = (1..line.items.len()).any(|at| ends_a_size(line, at));
    let last = (0..line.items.len()).rfind(|at| line.what(*at).is_some_and(|what| is_named(what, BOLTS)));
    let mut at = 0;
    while at < line.items.len() {
        if line.before(at).is_none() {
            opened = Opened::default();
        }
        let in_front = if at > 0 { gap(line, text, at) } else { "" };
        // `bolts for project: flange bolts`.
        if in_front.contains([':', '(', ')']) {
            opened = Opened::default();
        }
        if says_joins(in_front) {
            opened = Opened { by: Some(By::Joins), is_next: true, finish: None };
        }
        if !matches!(line.what(at), Some(What::Part(_))) || !line.items.get(at).is_some_and(Item::is_free) {
            front.size |= ends_a_size(line, at) && is_machine_thread(line, at - 1);
            front.standard(line, at);
            opened.go_on(line, at);
            at += 1;
            continue;
        }
        // `bolts to specification, stud M16`: beside much else the thing stands right behind.
        opened.is_next &= opened.by != Some(By::On) || is_blank(in_front);
        let run = Run::at(line, text, at);
        if let Some(flange) = run.measured_flange(line, at, &front)
            && let Some(item) = line.item(flange)
        {
            item.what = What::Not(MEASURED.into());
            continue;
        }
        let why = match () {
            () if run.is_in_front_of_a_noun(line, text)
                || opened.by == Some(By::For)
                    && (run.is_of_what_follows(&front, is_bolt, last) || run.heads_a_list(line, text)) =>
            {
                Some(NAMED)
            }
            // `set screw for shaft collar`.
            () if run.says_for && run.noun.is_none() && front.bolt && !front.ring => Some(THING),
            () if run.is_used_for(&front, &opened, is_bolt, has_bolt) => {
                Some(if run.noun.is_some() { NAMED } else { THING })
            }
            () => None,
        };
        match why {
            Some(why) => {
                line.items
                    .iter_mut()
                    .take(run.end)
                    .skip(at)
                    .for_each(|item| item.what = What::Not(why.into()));
                if let Some(finish) = opened.finish.take() {
                    line.not(finish, OF_WHAT_IT_JOINS);
                }
                opened.is_next = false;
            }
            None => {
                let with = line.before(at).is_some_and(|before| line.what(before) == Some(&What::With(true)));
                front.named(&run, with);
                if run.noun.is_some() {
                    opened = Opened::default();
                }
                opened.is_next = false;
            }
        }
        at = run.end;
    }
}

impl Run {
    /// `bolts M16x60, flange width 150`: the flange of which a measure follows, where the bolt has none in its name.
    fn measured_flange(&self, line: &Line, at: usize, front: &Front) -> Option<usize> {
        let is_flange = |place: usize| line.what(place) == Some(&What::Part("flange"));
        let last = self.end.checked_sub(1).filter(|last| self.is_measured && is_flange(*last))?;
        let of_bolt = |place: usize| line.what(place).is_some_and(|what| is_named(what, BOLTS));
        let is_bolts = front.bolt || (at..last).any(of_bolt);
        (is_bolts && !front.flange && !(at..last).any(is_flange)).then_some(last)
    }

    /// `for stud wall: bolts M16x60`: no part stands in front, and the name of one behind.
    fn is_of_what_follows(&self, front: &Front, is_bolt: bool, last: Option<usize>) -> bool {
        let is_first = !front.bolt && !front.mate && !front.size;
        is_first
            && (is_bolt || !self.is_into)
            && self.noun == Some(Noun::Bolt)
            && self.of_a_thing
            && last.is_some_and(|last| last >= self.end)
    }

    /// Whether it is what the part in front is for.
    fn is_used_for(&self, front: &Front, opened: &Opened, is_bolt: bool, has_bolt: bool) -> bool {
        let Some(by) = opened.by else { return false };
        // Beside much else a word behind it says nothing.
        let of_a_thing = self.of_a_thing && by != By::On;
        let is_next = opened.is_next || of_a_thing;
        let is_thing = || self.words.iter().any(|word| lexicon::THINGS_BY_THEMSELVES.contains(word));
        match self.noun {
            // `M16 x 60 8.8 for stud wall`.
            _ if !front.bolt && front.size => {
                by != By::On && (of_a_thing || self.noun.is_none() && is_thing())
            }
            // `nuts for M16 studs`: which bolt it is for is settled where the part is.
            _ if !front.bolt => {
                let is_one = self.noun == Some(Noun::Bolt) || self.noun.is_none() && is_thing();
                front.mate && by != By::For && !has_bolt && is_next && is_one
            }
            Some(Noun::Mate) => of_a_thing || by == By::Joins && opened.is_next,
            // `screws for drywall`: where nothing says that it is a bolt, it is the screw for it.
            _ if self.is_into && front.bare => is_bolt && opened.is_next,
            // `HDG on bolts only`: the part itself once more.
            Some(Noun::Bolt) => is_next && !self.words.iter().all(|word| run::BARE_NOUNS.contains(word)),
            None => is_thing() && opened.is_next,
        }
    }
}

/// `for timber`, `for solar panel frames`: what it goes into or joins, and no name of a part, where none follows.
fn surroundings(line: &mut Line, text: &str) {
    for at in 0..line.items.len() {
        let is_thing = line.what(at) == Some(&What::Part("?"))
            && line
                .items
                .get(at)
                .is_some_and(|item| lexicon::SURROUNDINGS.contains(&lower(&item.text).as_str()));
        let is_named =
            || matches!(line.what(at + 1), Some(What::Part(_))) && is_blank(gap(line, text, at + 1));
        if !is_thing || is_named() {
            continue;
        }
        // A word that names nothing by itself may stand between: `for solar panel`.
        let mut word = line.before(at);
        while let Some(other) = word.filter(|word| line.what(*word) == Some(&What::Not("".into()))) {
            word = line.before(other);
        }
        if word.is_some_and(|word| line.says_for(word) || is_put_on(line, word))
            && let Some(item) = line.item(at)
        {
            item.what = What::Not(lexicon::JOINT.into());
        }
    }
}

/// What stands between a piece and the one in front of it.
fn gap<'t>(line: &Line, text: &'t str, at: usize) -> &'t str {
    let from = at.checked_sub(1).and_then(|before| line.end(before)).unwrap_or_default();
    let to = line.start(at).unwrap_or(text.len());
    text.get(from..to).unwrap_or_default()
}

fn is_blank(gap: &str) -> bool {
    gap.chars().all(|c| matches!(c, ' ' | '-'))
}

fn is_put_on(line: &Line, at: usize) -> bool {
    line.items.get(at).is_some_and(|item| lexicon::PUT_ON.contains(&lower(&item.text).as_str()))
}

/// Whether a length ends a size with its length: `M16 x 60` is a bolt, whatever stands behind it.
fn ends_a_size(line: &Line, at: usize) -> bool {
    let [Some(size), Some(length)] = [at.checked_sub(1), Some(at)].map(|at| line.items.get(at?)) else {
        return false;
    };
    size.matched == length.matched && matches!((&size.what, &length.what), (What::Thread(_), What::Length(_)))
}

/// Whether a thread stands at a place that no screw forms by itself.
fn is_machine_thread(line: &Line, at: usize) -> bool {
    matches!(line.what(at), Some(What::Thread(written)) if !written.weak && (written.pitched || written.text.starts_with('M')))
}

/// Whether a steel of bolts stands at a place, and not that of screws which form their own thread.
fn is_steel_of_bolts(line: &Line, at: usize) -> bool {
    match line.what(at) {
        Some(What::Steel(SteelWord::Grade(grade))) => {
            !grade.is_nut() && !grade.is_washer() && *grade != Grade::Iso2702
        }
        Some(What::Steel(SteelWord::Number(_))) => true,
        _ => false,
    }
}
