//! One of two: `8.8 or 10.9` asks which; `HDG or mech galv` asks for either, and leaves the third open.

mod brackets;
mod wished;

pub(super) use brackets::{in_brackets, in_brackets_behind};

use std::collections::HashMap;

use super::items::Line;
use super::lexicon::{self, Word};
use super::nouns::{BOLTS, MATES, is_named};
use super::token;
use super::token::{Chain, Sort};
use super::what::{Found, SteelWord, What};
use super::{Became, Piece, length};
use crate::order::asked;
use crate::process::Process;
use crate::quantity::letters::lower;

/// Steels, threads and finishes of which one will do.
pub(super) fn settle(line: &mut Line, text: &str, unknown: &[Piece]) {
    let (pieces, unknown) = (unknown, members(text, unknown));
    let mut at = 0;
    while at < line.items.len() {
        // `quote HDG and mech galv`.
        let joins = line.what(at) == Some(&What::With(false))
            && over_colours(line, at, false).and_then(|before| process(line.what(before)?)).is_some()
            && over_colours(line, at, true).and_then(|behind| process(line.what(behind)?)).is_some()
            && !is_of_a_mate(line, at);
        if let Some(item) = line.item(at).filter(|item| joins && item.is_free()) {
            item.what = What::Or;
        }
        if is_dutch_or(line, at)
            && let Some(item) = line.item(at)
        {
            item.what = What::Or;
        }
        if line.what(at) == Some(&What::Or)
            && line.items.get(at).is_some_and(super::items::Item::is_free)
            && let (Some(one), Some(other)) = (over_colours(line, at, false), over_colours(line, at, true))
        {
            pair(line, (one, at, other), &unknown);
        }
        if is_last_resort(line, at) {
            if_not_available(line, at, &unknown);
        }
        at += 1;
    }
    wished::settle(line, text, pieces);
}

/// `bolts zinc plated and HDG nuts`: the second finish is that of another part.
fn is_of_a_mate(line: &Line, and: usize) -> bool {
    let has = |place: usize, nouns: &[&str]| line.what(place).is_some_and(|what| is_named(what, nouns));
    let finish = over_colours(line, and, true);
    finish.is_some_and(|finish| has(finish + 1, MATES)) && (0..and).any(|place| has(place, BOLTS))
}

/// `galvanisé … of elektrolytisch verzinkt`: in Dutch, `or`; `a coat of zinc` has its noun and no other finish in front.
fn is_dutch_or(line: &Line, at: usize) -> bool {
    let is_of = line.items.get(at).is_some_and(|item| item.what == What::Filler && lower(&item.text) == "of");
    let finish = |place: usize| line.what(place).and_then(process);
    let pair = || Some((over_colours(line, at, false)?, over_colours(line, at, true)?));
    is_of
        && pair().is_some_and(|(one, other)| {
            finish(one).is_some() && finish(other).is_some() && !is_any_zinc(line, other)
        })
}

/// Whether a piece says, behind a finish, that this one is wanted only where the one before it does not suit.
fn is_last_resort(line: &Line, at: usize) -> bool {
    let is_it = |text: &str| lexicon::LAST_RESORT.iter().any(|first| text.starts_with(&format!("{first} ")));
    line.items
        .get(at)
        .is_some_and(|item| item.is_free() && item.what == What::Or && is_it(&lower(&item.text)))
}

/// `HDG, zinc if not available`: the finish in front of such a piece stands behind the one before it.
fn if_not_available(line: &mut Line, at: usize, unknown: &[usize]) {
    let finish = |line: &Line, place: Option<usize>| {
        place.filter(|place| {
            line.items.get(*place).is_some_and(|item| item.is_free() && process(&item.what).is_some())
        })
    };
    let second = finish(line, over_colours(line, at, false));
    let first = second.and_then(|second| finish(line, over_colours(line, second, false)));
    let is_read = first.zip(second).is_some_and(|(one, other)| any_of(line, vec![one, other], true, unknown));
    if is_read {
        line.binds(at);
    } else {
        line.not(at, "if what is not available? Write the finishes in the order in which they are wanted");
    }
}

/// The next piece in front of or behind one, over the colours of a chromate: `HDG or yellow zinc`.
fn over_colours(line: &Line, at: usize, forward: bool) -> Option<usize> {
    let mut place = at;
    loop {
        place = if forward { place + 1 } else { place.checked_sub(1)? };
        match line.what(place)? {
            What::Not(why) if why == lexicon::COLOUR => {}
            _ => return Some(place),
        }
    }
}

/// `10.9 but drawing says 8.8`: two grades with a word between that sets them against each other.
pub(super) fn contradict(line: &mut Line, unknown: &[Piece]) {
    let grades = line.free(|what| match what {
        What::Steel(SteelWord::Grade(grade)) if !grade.is_nut() && !grade.is_washer() => Some(*grade),
        _ => None,
    });
    // `PO 10.9, drawing 8.8`: between them a word that marks something, too.
    let places = |words: &[&str], labels: bool| -> Vec<usize> {
        let is_one = |text: &str| words.contains(&text) || labels && lexicon::is_label(text);
        let found = unknown.iter().filter(|piece| is_one(&lower(&piece.text)));
        found.map(|piece| piece.span.start).collect()
    };
    let (between, before) = (places(lexicon::AGAINST, true), places(lexicon::SAYS, false).into_iter().min());
    let against = |one: usize, other: usize| {
        let (from, to) = (line.start(one), line.start(other));
        before.is_some_and(|place| Some(place) < to)
            || between.iter().any(|place| from < Some(*place) && Some(*place) < to)
    };
    let pair = grades.windows(2).find_map(|pair| match pair {
        [(one, first), (other, second)] if first != second && against(*one, *other) => Some((*one, *other)),
        _ => None,
    });
    if let Some((one, other)) = pair {
        one_of(line, &[one, other]);
    }
}

/// Whether a reason asks which of several is meant.
pub(super) fn asks_which(why: &str) -> bool {
    why.starts_with("one of ")
}

fn one_of(line: &mut Line, places: &[usize]) {
    if length::the_longer(line, places) {
        return;
    }
    let why = ask_which(&names(line, places));
    places.iter().for_each(|at| line.not(*at, why.clone()));
}

/// What stands at these places, each but once; a few of them are enough to be asked, however long the line is.
pub(super) fn names<'a>(line: &'a Line, places: &[usize]) -> Vec<&'a str> {
    const MOST_ASKED: usize = 4;
    let mut names: Vec<&str> = Vec::new();
    for item in places.iter().filter_map(|at| line.items.get(*at)) {
        if names.len() < MOST_ASKED && !names.contains(&item.text.as_str()) {
            names.push(&item.text);
        }
    }
    names
}

/// Why none of several is used.
pub(super) fn ask_which(names: &[&str]) -> String {
    let several = if names.len() == 2 { "two" } else { "several" };
    format!("one of {several}: {}? Write the one", names.join(" or "))
}

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
        let half =
            lexicon::HALVES.iter().find(|(half, _)| chain.word(at) == Some(*half) && chain.after(at) == end);
        let first = lexicon::until(chain, at, end, coat).filter(|_| or == stroke);
        let (first, tinted) = first.or(half.map(|(_, process)| (*process, false)))?;
        let (mut last, (second, also)) = lexicon::whole(chain, or, coat)?;
        let mut found =
            vec![(marked, What::Process(first, tinted)), (or, What::Or), (last, What::Process(second, also))];
        // `HDG / zinc / mech galv`.
        let third = chain.over(last, &["/"]);
        if let Some((end, (third_one, also))) = lexicon::whole(chain, third, coat).filter(|_| third != last) {
            last = end;
            found.push((third, What::Or));
            found.push((last, What::Process(third_one, also)));
        }
        return Some(found);
    }
    None
}

/// `zinc/galv`, `zn/galvanised`: with a stroke between they are two, and with a space one word for hot-dip.
pub(super) fn zinc_or_galvanized(chain: &Chain<'_>, at: usize) -> Option<Found> {
    chain.word(at).filter(|word| matches!(*word, "zinc" | "zink" | "zn"))?;
    let zinc = chain.after(at);
    let or = chain.over(zinc, &["/"]);
    let hot_dip = |word| (word == Word::Process(Process::HotDip)).then_some(());
    let (end, ()) = lexicon::whole(chain, or, hot_dip).filter(|_| or != zinc)?;
    Some(vec![
        (zinc, What::Process(Process::Electroplated, false)),
        (or, What::Or),
        (end, What::Process(Process::HotDip, false)),
    ])
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

/// So many letters on either side are looked at: words that join are short.
const FARTHEST: usize = 20;

/// So many words that nobody knows stand together as one.
const MOST_TOGETHER: usize = 4;

/// Words that nobody knows and that stand alone between commas, or between a comma and an `or`.
fn members(text: &str, unknown: &[Piece]) -> Vec<usize> {
    let is_joint = |word: &str| lexicon::means(&lower(word), Word::Or);
    let starts: HashMap<usize, usize> =
        unknown.iter().map(|piece| (piece.span.end, piece.span.start)).collect();
    let ends: HashMap<usize, usize> =
        unknown.iter().map(|piece| (piece.span.start, piece.span.end)).collect();
    let stands_alone = |piece: &&Piece| {
        let mut front = text.get(..piece.span.start).unwrap_or_default().trim_end();
        let mut behind = text.get(piece.span.end..).unwrap_or_default().trim_start();
        // A word more that nobody knows changes nothing.
        for _ in 0..MOST_TOGETHER {
            if let Some(start) = starts.get(&front.len()) {
                front = text.get(..*start).unwrap_or_default().trim_end();
            }
            if let Some(end) = ends.get(&(text.len() - behind.len())) {
                behind = text.get(*end..).unwrap_or_default().trim_start();
            }
        }
        let (front, behind) = token::beside(text, front.len()..text.len() - behind.len(), FARTHEST);
        (front.ends_with([',', '/']) || front.split_whitespace().next_back().is_some_and(is_joint))
            && (behind.starts_with([',', '/']) || behind.split_whitespace().next().is_some_and(is_joint))
    };
    unknown.iter().filter(stands_alone).map(|piece| piece.span.start).collect()
}

fn pair(line: &mut Line, (one, or, other): (usize, usize, usize), unknown: &[usize]) {
    let free = |at: usize| line.items.get(at).filter(|item| item.is_free());
    let (Some(first), Some(second)) = (free(one), free(other)) else { return };
    if are_classes_of_a_coat(&first.what, &second.what) {
        if let Some(item) = line.item(other) {
            item.became = Some(Became::Used(vec!["asked"], Some(OTHER_CLASS.into())));
        }
        line.binds(or);
        return;
    }
    match (process(&first.what), process(&second.what)) {
        (Some(_), Some(_)) => return finishes(line, one, unknown),
        (None, None) => {}
        _ => return,
    }
    if !are_two(&first.what, &second.what) {
        return;
    }
    // `gr 2 or gr 5 or gr 8`, `8.8, 10.9 or 12.9`: as many as there are.
    let joins = |line: &Line, last: usize, next: usize| match (line.what(last), line.what(next)) {
        (Some(last), Some(next)) => are_two(last, next) && !matches!(last, What::Thread(_) | What::Length(_)),
        _ => false,
    };
    let is_free = |line: &Line, at: usize| line.items.get(at).is_some_and(super::items::Item::is_free);
    let (mut places, mut joints) = (vec![one, other], vec![or]);
    let mut last = other;
    loop {
        let is_joint = line.what(last + 1) == Some(&What::Or);
        let next = if is_joint { last + 2 } else { last + 1 };
        if !(is_free(line, next) && joins(line, last, next)) {
            break;
        }
        joints.extend(is_joint.then_some(last + 1));
        places.push(next);
        last = next;
    }
    let mut first = one;
    while let Some(before) =
        first.checked_sub(1).filter(|before| is_free(line, *before) && joins(line, *before, first))
    {
        first = before;
        places.insert(0, first);
    }
    one_of(line, &places);
    joints.into_iter().for_each(|joint| line.binds(joint));
}

/// Whether two pieces say one thing of the same part, and not the same of it.
fn are_two(one: &What, other: &What) -> bool {
    let of = |grade: &crate::steel::Grade| (grade.is_nut(), grade.is_washer());
    match (one, other) {
        (What::Steel(SteelWord::Grade(one)), What::Steel(SteelWord::Grade(other))) => {
            one != other && of(one) == of(other)
        }
        // `B7 or B16`: a steel that is not known here may be meant as well.
        (What::Steel(SteelWord::Grade(grade)), What::Steel(SteelWord::Unknown(_)))
        | (What::Steel(SteelWord::Unknown(_)), What::Steel(SteelWord::Grade(grade))) => {
            of(grade) == (false, false)
        }
        (What::Steel(SteelWord::Number(one)), What::Steel(SteelWord::Number(other)))
        | (What::Steel(SteelWord::Half(one)), What::Steel(SteelWord::Half(other))) => one != other,
        (What::Class(one), What::Class(other)) => one != other,
        (What::Thread(one), What::Thread(other)) => one.thread != other.thread,
        (What::Length(one), What::Length(other)) => one != other,
        _ => false,
    }
}

const OTHER_CLASS: &str = "the other of two classes that will do: the first is judged";

/// `class 40 or class 55`, `Fe/Zn 5 or Fe/Zn 8`: two classes of one coat, of which either will do.
fn are_classes_of_a_coat(first: &What, second: &What) -> bool {
    // The thinner classes are numbers of nuts as well.
    let is_class = |number: &u32| asked::from_key(&format!("b695-{number}")).is_some();
    let is_thick = |number: &u32| *number >= 25;
    match (first, second) {
        (What::Class(one), What::Class(other)) => {
            is_class(one) && is_class(other) && (is_thick(one) || is_thick(other))
        }
        (What::Coat(one), What::Coat(other)) => {
            let of = |key: &str| asked::from_key(key)?.process();
            one != other && of(one).is_some() && of(one) == of(other)
        }
        (What::Zinc(one, family, _), What::Zinc(other, also, _)) => one != other && family == also,
        _ => false,
    }
}

/// The finish that a piece asks for.
pub(super) fn process(what: &What) -> Option<Process> {
    match what {
        What::Process(process, _) => Some(*process),
        What::Coat(key) => asked::from_key(key)?.process(),
        _ => None,
    }
}

/// Why a class of one of several finishes is not used.
pub(super) const CLASS_OF_SEVERAL: &str =
    "the class of one of several finishes: ask for that finish alone to have its class";

const ANY_OF_ALL: &str = "any of the three will do, as the line says";

const ONE_NOT_KNOWN: &str = "one of several finishes, among which a word is not known here: write each as hot-dip, \
                             mechanical or electroplated";

/// Finishes of which any will do, or the second where the first does not suit.
fn finishes(line: &mut Line, first: usize, unknown: &[usize]) {
    let mut places = vec![first];
    let mut joints = Vec::new();
    let mut at = first;
    while let Some(or) = over_colours(line, at, true).filter(|or| line.what(*or) == Some(&What::Or))
        && let Some(next) = over_colours(line, or, true)
        && line.what(next).and_then(process).is_some()
    {
        joints.push(or);
        places.push(next);
        at = next;
    }
    // `HDG, mech galv or zinc plated`: of a list the last two alone have the word between.
    while let Some(before) = places.first().and_then(|first| over_colours(line, *first, false))
        && line.items.get(before).is_some_and(|item| item.is_free() && process(&item.what).is_some())
        // `zinc (HDG or mech galv)`: the word for all of them is none of the list.
        && !(line.behind(before).is_some() && is_any_zinc(line, before))
    {
        places.insert(0, before);
    }
    // `HDG, or mech galv as an alternative`.
    joints.extend(over_colours(line, at, true).filter(|last| is_last_resort(line, *last)));
    let in_order = joints.iter().any(|joint| says_an_order(line, *joint));
    if any_of(line, places, in_order, unknown) {
        joints.into_iter().for_each(|joint| line.binds(joint));
    }
}

/// `otherwise`, `if not possible`: what stands behind is wanted only where what stands before does not suit; `or` says
/// of neither that it is wanted first.
fn says_an_order(line: &Line, or: usize) -> bool {
    line.items.get(or).is_some_and(|item| {
        let is_word = item.text.chars().any(char::is_alphabetic);
        is_word && !lexicon::ALIKE.contains(&lower(&item.text).as_str())
    })
}

/// Any of the finishes at these places will do, where they are of several processes, or each only where those before it
/// do not suit; `unknown` are words that may be another of them. A process that is not named is left open.
pub(super) fn any_of(line: &mut Line, places: Vec<usize>, in_order: bool, unknown: &[usize]) -> bool {
    let mut named: Vec<Process> = Vec::new();
    for process in places.iter().filter_map(|at| process(line.what(*at)?)) {
        if !named.contains(&process) {
            named.push(process);
        }
    }
    let [first, second, ..] = named.as_slice() else { return false };
    // `HDG, zork or zinc plated`: a word that nobody knows may be the third.
    let starts = || places.iter().filter_map(|at| line.start(*at));
    let within = starts().min().zip(starts().max());
    let is_whole = named.len() == Process::ALL.len();
    let is_open =
        !is_whole && within.is_some_and(|(from, to)| unknown.iter().any(|at| (from..to).contains(at)));
    // All three, of which none is wanted first, ask for nothing.
    let key = asked::either_key(*first, *second, in_order).filter(|_| !is_open && (in_order || !is_whole));
    if let Some(key) = key {
        line.draft.set("asked", key);
    } else if is_whole {
        line.draft.set("asked", asked::ADVISE);
        line.note("asked", ANY_OF_ALL);
    }
    for at in places {
        match line.what(at) {
            Some(What::Coat(_)) => line.not(at, CLASS_OF_SEVERAL),
            _ if is_open => line.not(at, ONE_NOT_KNOWN),
            Some(What::Process(_, true)) => {
                if let Some(item) = line.item(at) {
                    item.became = Some(Became::Used(vec!["asked"], Some(lexicon::COLOUR.into())));
                }
            }
            _ => line.used(at, "asked"),
        }
    }
    true
}

/// Whether a word is used of every process: `zinc`, `plated`.
fn is_any_zinc(line: &Line, at: usize) -> bool {
    line.items.get(at).is_some_and(|item| may_be(&item.text).len() == Process::ALL.len())
}

/// Words that people use of more than one process.
pub(super) fn may_be(text: &str) -> &'static [Process] {
    let word = lower(text);
    match lexicon::without_ending(&word).unwrap_or(&word) {
        word if lexicon::ZINC_OF_ALL.contains(&word) => &Process::ALL,
        word if lexicon::GALVANIZED_OF_TWO.contains(&word) => &[Process::HotDip, Process::Mechanical],
        _ => &[],
    }
}
