//! One of the two words for a process in brackets: `(feuer-)verzinkt`, `verzinkt (thermisch)`.

use super::may_be;
use crate::order::reading::lexicon::{self, Word};
use crate::order::reading::token::Chain;
use crate::order::reading::what::{Found, What, one};
use crate::process::Process;

/// `(thermisch) verzinkt`, `(feuer-)verzinkt`, `(mechanically) galvanized`: the first word of two for one process.
pub fn in_brackets(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let opens = chain.before(at).is_some_and(|before| chain.sign(before, &["("]));
    let close = chain.over(chain.after(at), DASHES);
    if !opens || !chain.sign(close, &[")"]) {
        return None;
    }
    let next = chain.after(close);
    let of_a_process = |word| matches!(word, Word::Process(_)).then_some(());
    lexicon::find(chain, next, of_a_process)?;
    let both = format!("{} {}", chain.word(at)?, chain.word(next)?);
    one(chain.after(next), What::Process(process_of(&both)?, false))
}

/// `verzinkt (thermisch)`, `zinc plated (mechanically)`, `verzinkt - thermisch`: how zinc is put on, behind the word for it.
pub fn in_brackets_behind(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let is_zinc = |word| match word {
        Word::Process(_) => Some(false),
        Word::Not(why) => (why == lexicon::ANY_ZINC).then_some(true),
        _ => None,
    };
    let (zinc, is_any) = lexicon::whole(chain, at, is_zinc)?;
    let open = chain.over(zinc, &["("]);
    let dash = chain.over(zinc, DASHES);
    let how = if open == zinc { dash } else { open };
    let end = chain.after(how);
    let word = chain.word(how).filter(|_| how != zinc)?;
    let end = match open == zinc {
        true => end,
        false => Some(chain.over(end, &[")"])).filter(|close| *close != end)?,
    };
    // Words that nobody knows may be what it says how: `verzinkt - mechanisch gesichert`.
    let is_apart = open != zinc
        || end == how + 1 && chain.get(end).is_none_or(|next| !next.is_alphanumeric()) && !chain.glued(dash);
    let written: Vec<&str> =
        chain.tokens().get(at..zinc).unwrap_or_default().iter().map(|token| token.lower.as_str()).collect();
    let written = written.join(" ");
    let process = process_of(&format!("{word} {written}"))
        .or_else(|| process_of(&format!("{written} {word}")))
        .or_else(|| {
            let (_, process) = lexicon::BY_WHICH.iter().find(|(how, _)| *how == word)?;
            (is_any || may_be(&written).contains(process)).then_some(*process)
        })?;
    (is_apart && !chain.inside_a_run(end)).then(|| vec![(end, What::Process(process, false))])
}

/// The process that two words mean together.
fn process_of(both: &str) -> Option<Process> {
    Process::ALL.into_iter().find(|process| lexicon::means(both, Word::Process(*process)))
}

/// Behind the half of a word.
const DASHES: &[&str] = &["-", "–", "‑"];
