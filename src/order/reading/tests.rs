//! What each rule finds at the beginning of a text: how far it goes, and what it takes it for.

mod count;
mod left_out;
mod length;
mod mark;
mod measure;
mod named;
mod number;
mod size;
mod steel;
mod worked;

use super::token::Chain;
use super::what::{Found, What};

type Rule = fn(&Chain<'_>, usize) -> Option<Found>;

/// The pieces that a rule finds at a token, each with what it is.
fn pieces(rule: Rule, text: &str, at: usize) -> Vec<(String, What)> {
    let chain = Chain::of(text);
    let token = |at: usize| chain.tokens().get(at);
    let mut from = at;
    let found = rule(&chain, at).unwrap_or_default();
    found
        .into_iter()
        .map(|(end, what)| {
            let span = token(from).map_or(0, |it| it.start)..token(end - 1).map_or(0, |it| it.end());
            from = end;
            (text.get(span).unwrap_or_default().to_owned(), what)
        })
        .collect()
}

/// What a rule takes at a token, piece by piece; nothing where it finds nothing.
fn taken(rule: Rule, text: &str, at: usize) -> String {
    pieces(rule, text, at).into_iter().map(|(piece, _)| piece).collect::<Vec<_>>().join(" | ")
}

/// Each text with what a rule takes at its beginning.
fn assert_takes(rule: Rule, cases: &[(&str, &str)]) {
    for (text, expected) in cases {
        assert_eq!(taken(rule, text, 0), *expected, "{text}");
    }
}

/// Each text with what a rule takes its beginning for, in one piece.
fn assert_finds(rule: Rule, cases: &[(&str, What)]) {
    for (text, expected) in cases {
        let pieces = pieces(rule, text, 0);
        assert_eq!(pieces.iter().map(|(_, what)| what).collect::<Vec<_>>(), [expected], "{text}");
    }
}

/// What is not used, with a reason that has these words in it.
fn assert_refuses(rule: Rule, cases: &[(&str, &str)]) {
    for (text, words) in cases {
        match pieces(rule, text, 0).as_slice() {
            [(_, What::Not(why))] => assert!(why.contains(words), "{text}: {why}"),
            other => panic!("{text}: {other:?}"),
        }
    }
}

/// A thread as it stands in a piece, `None` where it is something else.
fn thread(rule: Rule, text: &str, at: usize) -> Option<String> {
    match pieces(rule, text, at).into_iter().next()?.1 {
        What::Thread(written) => Some(written.text),
        _ => None,
    }
}
