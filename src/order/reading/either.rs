//! One of two: `8.8 or 10.9` asks which; `HDG or mech galv` leaves the third out.

use super::Became;
use super::items::Line;
use super::lexicon::{self, Word};
use super::token::Chain;
use super::what::{Found, SteelWord, What};
use crate::order::asked::{self, LeftOut};
use crate::process::Process;

/// Steels, threads and finishes of which one will do.
pub(super) fn settle(line: &mut Line) {
    let mut at = 0;
    while at < line.items.len() {
        // `quote HDG and mech galv`.
        let joins = line.what(at) == Some(&What::With(false))
            && at.checked_sub(1).and_then(|before| process(line.what(before)?)).is_some()
            && line.what(at + 1).and_then(process).is_some();
        if let Some(item) = line.item(at).filter(|item| joins && item.is_free()) {
            item.what = What::Or;
        }
        if line.what(at) == Some(&What::Or) && line.items.get(at).is_some_and(super::items::Item::is_free) {
            let beside = (at.checked_sub(1), at + 1);
            if let (Some(one), other) = beside {
                pair(line, (one, at, other));
            }
        }
        at += 1;
    }
}

/// First halves of words for a coat, the second of which follows with the other coat.
const HALVES: &[(&str, Process)] = &[
    ("feuer", Process::HotDip),
    ("hot", Process::HotDip),
    ("electro", Process::Electroplated),
    ("elektro", Process::Electroplated),
];

/// `mech./galv. verzinkt`, `feuer- oder galvanisch verzinkt`: two coats that share a word, or a stroke.
pub(super) fn coats(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let coat = |word| match word {
        Word::Process(process) => Some((process, false)),
        Word::Tinted(process) => Some((process, true)),
        _ => None,
    };
    let mut end = at;
    for _ in 0..4 {
        end = chain.after(end);
        let marked = chain.over(end, &[".", "-", "–"]);
        let stroke = chain.over(marked, &["/"]);
        let or = if stroke == marked { lexicon::over(chain, marked, Word::Or) } else { stroke };
        if or == marked {
            continue;
        }
        let half = HALVES.iter().find(|(half, _)| chain.word(at) == Some(*half) && chain.after(at) == end);
        let first = lexicon::until(chain, at, end, coat).filter(|_| or == stroke);
        let (first, tinted) = first.or(half.map(|(_, process)| (*process, false)))?;
        let (last, (second, also)) = lexicon::whole(chain, or, coat)?;
        return Some(vec![
            (marked, What::Process(first, tinted)),
            (or, What::Or),
            (last, What::Process(second, also)),
        ]);
    }
    None
}

fn pair(line: &mut Line, (one, or, other): (usize, usize, usize)) {
    let free = |at: usize| line.items.get(at).filter(|item| item.is_free());
    let (Some(first), Some(second)) = (free(one), free(other)) else { return };
    match (process(&first.what), process(&second.what)) {
        (Some(_), Some(_)) => return finishes(line, one),
        (None, None) => {}
        _ => return,
    }
    let same = match (&first.what, &second.what) {
        (What::Steel(SteelWord::Grade(one)), What::Steel(SteelWord::Grade(other))) => one != other,
        (What::Thread(one), What::Thread(other)) => one.thread != other.thread,
        (What::Length(one), What::Length(other)) => one != other,
        _ => false,
    };
    if !same {
        return;
    }
    let why = format!("one of two: {} or {}? Write the one", first.text, second.text);
    line.not(one, why.clone());
    line.not(other, why);
    binds(line, or);
}

/// The finish that a piece asks for.
pub(super) fn process(what: &What) -> Option<Process> {
    match what {
        What::Process(process, _) => Some(*process),
        What::Coat(key) => asked::from_key(key)?.process(),
        _ => None,
    }
}

const CLASS_OF_SEVERAL: &str =
    "the class of one of several finishes: ask for that finish alone to have its class";

/// Finishes of which any will do: what is not among them is left out.
fn finishes(line: &mut Line, first: usize) {
    let mut places = vec![first];
    let mut at = first;
    while line.what(at + 1) == Some(&What::Or) && line.what(at + 2).and_then(process).is_some() {
        at += 2;
        places.push(at);
    }
    // `HDG, mech galv or zinc plated`: of a list the last two alone have the word between.
    while let Some(before) = places.first().and_then(|first| first.checked_sub(1))
        && line.items.get(before).is_some_and(|item| item.is_free() && process(&item.what).is_some())
    {
        places.insert(0, before);
    }
    let named: Vec<Process> = places.iter().filter_map(|at| process(line.what(*at)?)).collect();
    let others: Vec<Process> = Process::ALL.into_iter().filter(|process| !named.contains(process)).collect();
    let (Some(left), true) = (LeftOut::of(&others), named.windows(2).any(|pair| pair.first() != pair.last()))
    else {
        return;
    };
    if left != LeftOut::Nothing {
        line.draft.set("left_out", left.key());
        line.note("left_out", "one of those named");
    }
    for pair in places.windows(2) {
        if let [from, to] = pair
            && to - from == 2
        {
            binds(line, from + 1);
        }
    }
    for at in places {
        match line.what(at) {
            Some(What::Coat(_)) => line.not(at, CLASS_OF_SEVERAL),
            _ => line.used(at, "left_out"),
        }
    }
}

fn binds(line: &mut Line, at: usize) {
    if let Some(item) = line.item(at) {
        item.became = Some(Became::Binds);
    }
}
