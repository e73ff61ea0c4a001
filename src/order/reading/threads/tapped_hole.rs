//! A tapped hole that takes a bolt instead of a nut.

use crate::order::line::{HOLE, HOLE_AS_IT_STANDS};
use crate::order::reading::items::Line;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::part::{Family, Scopes};
use crate::order::reading::size;
use crate::order::reading::token::{Chain, Sort, Token};
use crate::order::reading::what::{Found, What, one};
use crate::part::Kind;
use crate::thread::{Designation, ToleranceClass, overtap};

/// Why what is said of a hole is not used.
const OF_THE_HOLE: &str = "said of the hole that it goes into, and not of the part";

/// So many words stand between a hole and what says that it is there: `tapped holes already made in the`.
const MOST_BETWEEN: usize = 6;

/// So many words behind a hole may say that it is still to be made.
const FARTHEST: usize = 16;

/// `existing uncoated M16 tapped hole`, `tapped holes already made in the casting`: a hole that is there already, with
/// its thread and its finish.
pub fn already_there(chain: &Chain<'_>, at: usize) -> Option<Found> {
    if let Some((mut end, ())) = lexicon::whole(chain, at, |word| (word == Word::Hole(false)).then_some(())) {
        if is_to_be_made(chain, at, end) {
            return None;
        }
        for _ in 0..MOST_BETWEEN {
            if is_in(chain, end, lexicon::EXISTING) {
                // `bereits vorhanden`.
                let last = chain.after(end);
                let last = if is_in(chain, last, lexicon::EXISTING) { chain.after(last) } else { last };
                return one(last, What::Hole(true));
            }
            is_in(chain, end, lexicon::OF_A_HOLE).then_some(())?;
            end = chain.after(end);
        }
        return None;
    }
    is_in(chain, at, lexicon::EXISTING).then_some(())?;
    let mut end = chain.after(at);
    let mut found: Found = vec![(end, What::Filler)];
    for _ in 0..MOST_BETWEEN {
        if let Some((last, _)) =
            lexicon::whole(chain, end, |word| matches!(word, Word::Hole(_)).then_some(()))
        {
            // `existing tapped hole`: in one piece.
            if found.len() == 1 {
                return one(last, What::Hole(true));
            }
            found.push((last, What::Hole(true)));
            return Some(found);
        }
        let finish = lexicon::whole(chain, end, |word| {
            let is_its_own = matches!(
                word,
                Word::Other(_)
                    | Word::Process(_)
                    | Word::Tinted(_)
                    | Word::Not(_)
                    | Word::Qualifier
                    | Word::Part("plain")
            );
            is_its_own.then_some(())
        });
        let own = || {
            let class = size::metric(chain, end).or_else(|| size::unified(chain, end));
            class.or_else(|| size::thread_class(chain, end))
        };
        match (finish, own()) {
            (Some((last, ())), _) => {
                found.push((last, What::Not(OF_THE_HOLE.into())));
                end = last;
            }
            (None, Some(own)) => {
                end = own.last().map(|(end, _)| *end)?;
                found.extend(own);
            }
            (None, None) => {
                is_in(chain, end, lexicon::OF_A_HOLE).then_some(())?;
                end = chain.after(end);
            }
        }
    }
    None
}

/// `new tapped hole in existing casting`, `tapped hole in existing beam to be drilled and tapped`: what is there is the base.
fn is_to_be_made(chain: &Chain<'_>, at: usize, end: usize) -> bool {
    let tokens = chain.tokens();
    let is_new = |token: &Token<'_>| lexicon::NEW.contains(&token.lower.as_str());
    // `new bolts in tapped holes already there` are of no new hole.
    let may_stand = |token: &Token<'_>| {
        token.sort != Sort::Break
            && !lexicon::names_a_part(&token.lower)
            && !lexicon::INTO.contains(&token.lower.as_str())
    };
    // Words that nobody knows stand between as well.
    let before = tokens.get(..at).unwrap_or_default().iter().rev();
    let mut before = before.take_while(|token| may_stand(token)).take(MOST_BETWEEN);
    let is_behind = || {
        let behind: Vec<&str> = tokens
            .get(end..)
            .unwrap_or_default()
            .iter()
            .take(FARTHEST)
            .take_while(|token| token.sort != Sort::Break)
            .map(|token| token.lower.as_str())
            .collect();
        behind.windows(3).any(|words| {
            matches!(words, ["to", "be", done] if lexicon::MADE.contains(done))
                || matches!(words, ["zu", done, _] | [_, "zu", done] if lexicon::MADE.contains(done))
        })
    };
    before.any(is_new) || is_behind()
}

fn is_in(chain: &Chain<'_>, at: usize, words: &[&str]) -> bool {
    chain.word(at).is_some_and(|word| words.contains(&word))
}

/// `into tapped holes`, `tapped holes M12 6H`, `into hole tapped to 6AZ`: what the part goes into instead of a nut; one of a
/// standard class, or that is there already, stands as it is, and one of another class has its room.
pub(super) fn settle(line: &mut Line, scopes: &Scopes) {
    for (at, is_there) in line.free(|what| match what {
        What::Hole(is_there) => Some(*is_there),
        _ => None,
    }) {
        if scopes.family != Family::Bolt || !scopes.kind.is_none_or(Kind::has_mate) {
            line.not(at, "the hole of another part is not judged");
            continue;
        }
        if line.draft.get("nut").is_some() || scopes.with.0 {
            line.not(at, "nuts come with the part: the hole is not judged");
            continue;
        }
        let class_of = |what: &What| match what {
            What::ThreadClass(class) => Some(*class),
            What::Thread(written) => Designation::read(&written.text).ok().and_then(|it| it.class),
            _ => None,
        };
        let classes: Vec<(usize, ToleranceClass)> = (0..line.items.len())
            .filter_map(|at| Some((at, line.what(at).and_then(class_of).filter(|class| !class.is_bolt())?)))
            .collect();
        let thread = line.draft.get("thread").and_then(|text| Designation::read(text).ok());
        let standard = thread.map(|written| overtap::standard_class(written.thread));
        let has_room = classes.iter().any(|(_, class)| Some(*class) != standard);
        let stands = !has_room && (is_there || !classes.is_empty());
        line.fill(at, "nut", if stands { HOLE_AS_IT_STANDS } else { HOLE }, "what the part goes into");
        for (at, class) in classes {
            match has_room {
                true if ToleranceClass::read("6AZ") == Some(class) => {
                    line.fill(at, "nut_class", &class.to_string(), "the class of the hole");
                }
                true => line.not(at, "agree the class of the hole: the answer says how it has to be tapped"),
                false => line.used(at, "nut"),
            }
        }
    }
}
