//! One of two: `8.8 or 10.9` asks which; `HDG or mech galv` leaves the third out.

use super::items::Line;
use super::lexicon::{self, Word};
use super::token::{Chain, Sort};
use super::what::{Found, SteelWord, What};
use super::{Became, Piece};
use crate::order::asked::{self, LeftOut};
use crate::process::Process;
use crate::quantity::letters::lower;

/// Steels, threads and finishes of which one will do.
pub(super) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    let unknown = members(text, unknown);
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
                pair(line, (one, at, other), &unknown);
            }
        }
        at += 1;
    }
}

/// `10.9 but drawing says 8.8`: two grades with a word between that sets them against each other.
pub(super) fn contradict(line: &mut Line, unknown: &[Piece]) {
    const AGAINST: &[&str] = &[
        "but", "whereas", "while", "although", "though", "however", "yet", "vs", "versus", "says", "aber",
        "jedoch", "sondern", "sagt", "doch", "obwohl",
    ];
    const SAYS: &[&str] = &["says", "say", "shows", "states", "calls", "reads", "sagt", "zeigt"];
    let grades = line.free(|what| match what {
        What::Steel(SteelWord::Grade(grade)) if !grade.is_nut() && !grade.is_washer() => Some(*grade),
        _ => None,
    });
    let start = |at: usize| line.items.get(at)?.spans.first().map(|span| span.start);
    // `PO 10.9, drawing 8.8`: between them a word that marks something, too.
    let places = |words: &[&str], labels: bool| -> Vec<usize> {
        let is_one = |text: &str| words.contains(&text) || labels && lexicon::is_label(text);
        let found = unknown.iter().filter(|piece| is_one(&lower(&piece.text)));
        found.map(|piece| piece.span.start).collect()
    };
    let (between, before) = (places(AGAINST, true), places(SAYS, false).into_iter().min());
    let against = |one: usize, other: usize| {
        let (from, to) = (start(one), start(other));
        before.is_some_and(|place| Some(place) < to)
            || between.iter().any(|place| from < Some(*place) && Some(*place) < to)
    };
    let pair = grades.windows(2).find_map(|pair| match pair {
        [(one, first), (other, second)] if first != second && against(*one, *other) => Some((*one, *other)),
        _ => None,
    });
    if let Some((one, other)) = pair {
        one_of_two(line, one, other);
    }
}

fn one_of_two(line: &mut Line, one: usize, other: usize) {
    let text = |at: usize| line.items.get(at).map_or(String::new(), |item| item.text.clone());
    let why = format!("one of two: {} or {}? Write the one", text(one), text(other));
    line.not(one, why.clone());
    line.not(other, why);
}

/// First halves of words for a coat, the second of which follows with the other coat.
const HALVES: &[(&str, Process)] = &[
    ("feuer", Process::HotDip),
    ("hot", Process::HotDip),
    ("electro", Process::Electroplated),
    ("elektro", Process::Electroplated),
    ("mechanisch", Process::Mechanical),
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

/// `feuerverzinkt, mechanisch oder galvanisch`, `HDG, mech or electro`: the coat where no word follows that it would be
/// of, as `mechanisch bearbeitet`.
pub(super) fn half_alone(chain: &Chain<'_>, at: usize) -> Option<Found> {
    let process = match chain.word(at)? {
        "mechanisch" => Process::Mechanical,
        "electro" | "elektro" => Process::Electroplated,
        _ => return None,
    };
    let end = chain.after(at);
    // Words that nobody knows are out of the chain, and may be what it says how: `mechanisch gesichert`.
    if end != at + 1 {
        return None;
    }
    let or = |word| matches!(word, Word::Or | Word::Count(..)).then_some(());
    let is_alone = chain.get(end).is_none_or(|next| matches!(next.sort, Sort::Break | Sort::Digits))
        || chain.sign(end, &["/", ")"])
        || lexicon::find(chain, end, or).is_some();
    (is_alone && !chain.inside_a_run(end)).then(|| vec![(end, What::Process(process, false))])
}

/// Words that nobody knows and that stand alone between commas, or between a comma and an `or`.
fn members(text: &str, unknown: &[Piece]) -> Vec<usize> {
    let is_joint = |word: &str| lexicon::means(&lower(word), Word::Or);
    let stands_alone = |piece: &&Piece| {
        let front = text.get(..piece.span.start).unwrap_or_default().trim_end();
        let behind = text.get(piece.span.end..).unwrap_or_default().trim_start();
        (front.ends_with([',', '/']) || front.split_whitespace().next_back().is_some_and(is_joint))
            && (behind.starts_with([',', '/']) || behind.split_whitespace().next().is_some_and(is_joint))
    };
    unknown.iter().filter(stands_alone).map(|piece| piece.span.start).collect()
}

fn pair(line: &mut Line, (one, or, other): (usize, usize, usize), unknown: &[usize]) {
    let free = |at: usize| line.items.get(at).filter(|item| item.is_free());
    let (Some(first), Some(second)) = (free(one), free(other)) else { return };
    match (process(&first.what), process(&second.what)) {
        (Some(_), Some(_)) => return finishes(line, one, unknown),
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
    one_of_two(line, one, other);
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

const ONE_NOT_KNOWN: &str = "one of several finishes, among which a word is not known here: write each as hot-dip, \
                             mechanical or electroplated";

/// Finishes of which any will do: what is not among them is left out.
fn finishes(line: &mut Line, first: usize, unknown: &[usize]) {
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
    let joints: Vec<usize> = places
        .windows(2)
        .filter_map(|pair| match pair {
            [from, to] if to - from == 2 => Some(from + 1),
            _ => None,
        })
        .collect();
    if any_of(line, places, unknown) {
        joints.into_iter().for_each(|joint| binds(line, joint));
    }
}

/// Any of the finishes at these places will do, where they are of several processes; `unknown` are words that may be
/// another of them.
pub(super) fn any_of(line: &mut Line, places: Vec<usize>, unknown: &[usize]) -> bool {
    let named: Vec<Process> = places.iter().filter_map(|at| process(line.what(*at)?)).collect();
    let others: Vec<Process> = Process::ALL.into_iter().filter(|process| !named.contains(process)).collect();
    let (Some(left), true) = (LeftOut::of(&others), named.windows(2).any(|pair| pair.first() != pair.last()))
    else {
        return false;
    };
    // `HDG, zork or zinc plated`: a word that nobody knows may be the third.
    let start = |at: &usize| line.items.get(*at).and_then(|item| item.spans.first()).map(|span| span.start);
    let within = places.first().and_then(start).zip(places.last().and_then(start));
    let is_open = left != LeftOut::Nothing
        && within.is_some_and(|(from, to)| unknown.iter().any(|at| (from..to).contains(at)));
    if left != LeftOut::Nothing && !is_open {
        line.draft.set("left_out", left.key());
        line.note("left_out", "one of those named");
    }
    for at in places {
        match line.what(at) {
            Some(What::Coat(_)) => line.not(at, CLASS_OF_SEVERAL),
            _ if is_open => line.not(at, ONE_NOT_KNOWN),
            _ => line.used(at, "left_out"),
        }
    }
    true
}

fn binds(line: &mut Line, at: usize) {
    if let Some(item) = line.item(at) {
        item.became = Some(Became::Binds);
    }
}
