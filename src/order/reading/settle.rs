//! Each piece finds its place among the others.

use std::collections::HashSet;
use std::ops::Range;

use super::items::{Item, Line};
use super::rule;
use super::token::{Chain, Sort};
use super::what::What;
use super::{
    Became, Piece, Reading, UNKNOWN, address, bake, coat, either, ends, galv, heat, joined, label, left_out,
    lexicon, number, part, per_part, place, qualified, quantity, second, spelling, steels, thickness,
    threads,
};
use crate::calculator::Draft;
use crate::order::asked;
use crate::sorting::sort_by_key;
use crate::steel::Worked;

/// Reads a line.
pub(super) fn settle(text: &str) -> Reading {
    let scanned = scan(text);
    let mut line = Line {
        items: scanned.items,
        draft: Draft::default(),
        notes: Vec::new(),
        contradictions: HashSet::new(),
    };
    thickness::whose::settle(&mut line, text, &scanned.unknown);
    per_part::behind_a_cross(&mut line);
    spelling::settle(&mut line, text, &scanned.unknown);
    galv::settle(&mut line, text);
    address::settle(&mut line, text);
    left_out::settle(&mut line, text, &scanned.unknown);
    galv::beside_refused(&mut line, text);
    joined::settle(&mut line, text);
    either::settle(&mut line, text, &scanned.unknown);
    either::contradict(&mut line, &scanned.unknown);
    second::settle(&mut line);
    let scopes = part::settle(&mut line);
    steels::settle(&mut line, &scopes, text);
    part::by_steel(&mut line, &scopes);
    threads::settle(&mut line, &scopes);
    steels::washers(&mut line, &scopes);
    part::by_default(&mut line, &scopes);
    part::usual_steel(&mut line);
    steels::out_of_size(&mut line);
    let unknown: Vec<Range<usize>> = scanned.unknown.iter().map(|piece| piece.span.clone()).collect();
    quantity::settle(&mut line, &scopes, text, &unknown);
    second::which_length(&mut line);
    steels::of_system(&mut line, &scopes);
    steels::mates_of_another_metal(&mut line, &scopes);
    ends::settle(&mut line, &scopes);
    ends::under_both(&mut line, &scopes);
    coat::settle(&mut line, &scopes, text);
    place::settle(&mut line, text, &unknown);
    heat::settle(&mut line);
    bake::settle(&mut line);
    left_out::not_lubricated(&mut line);
    left_out::of_an_assembly(&mut line);
    the_rest(&mut line);
    let mut pieces: Vec<Piece> = scanned.unknown;
    qualified::settle(&mut line, &scopes, text, &mut pieces);
    qualified::named_by_another(&mut line, &pieces);
    for item in line.items {
        let became = item.became.unwrap_or(Became::NotUsed("".into()));
        pieces.extend(item.spans.into_iter().map(|span| Piece {
            text: text.get(span.clone()).unwrap_or_default().to_owned(),
            span,
            rule: item.rule,
            became: became.clone(),
        }));
    }
    sort_by_key(&mut pieces, |piece| piece.span.start);
    whole_names(text, &mut pieces);
    let has_length = scopes.family == part::Family::Bolt;
    Reading { pieces, draft: line.draft, notes: line.notes, has_length, looked_at: scanned.looked_at }
}

/// The words of a name that is not known here stand as one piece.
fn whole_names(text: &str, pieces: &mut Vec<Piece>) {
    let is_name =
        |piece: &Piece| matches!(&piece.became, Became::Used(fields, Some(_)) if fields == &["part"]);
    let mut whole: Vec<Piece> = Vec::with_capacity(pieces.len());
    for piece in pieces.drain(..) {
        let joins = |last: &Piece| {
            let gap = text.get(last.span.end..piece.span.start);
            is_name(last)
                && last.became == piece.became
                && gap.is_some_and(|gap| gap.chars().all(|c| matches!(c, ' ' | '-')))
        };
        match whole.last_mut().filter(|last| joins(last)) {
            Some(last) => {
                last.span.end = piece.span.end;
                last.text = text.get(last.span.clone()).unwrap_or_default().to_owned();
            }
            None => whole.push(piece),
        }
    }
    *pieces = whole;
}

/// Why a name beside that of the part is not used.
const NO_SUCH_PART: &str = "no part known here has this name: write what it is";

/// What needs no neighbour, and what nobody took.
fn the_rest(line: &mut Line) {
    for at in 0..line.items.len() {
        let is_noun = |place: Option<usize>| {
            place.is_some_and(|place| {
                matches!(line.what(place), Some(What::Part(_) | What::Steel(_) | What::Class(_)))
            })
        };
        let joins = is_noun(line.before(at)) && is_noun(line.behind(at));
        // `square washer`: what else may come with the part, and nobody judges it.
        if let Some(item) = line.item(at)
            && matches!(item.what, What::Part(_))
            && item.became == Some(Became::NotUsed("".into()))
        {
            item.not(NO_SUCH_PART);
        }
        let Some(item) = line.item(at).filter(|item| item.is_free()) else { continue };
        match item.what.clone() {
            What::Worked(how) => worked(line, at, how),
            What::Yes(field) => line.fill(at, field, "yes", ""),
            What::AtMost(most) => {
                let asked =
                    line.draft.get("asked").and_then(asked::from_key).and_then(|asked| asked.process());
                let Some(text) = thickness::greatest(most, asked) else {
                    line.not(at, thickness::GREATEST_MASS);
                    thickness::whose::named_whole(line, at);
                    continue;
                };
                let agrees = line.draft.get("most").is_some_and(|most| thickness::is_same(most, &text));
                if agrees {
                    line.used(at, "most");
                } else {
                    line.fill(at, "most", &text, "the greatest thickness");
                }
                thickness::whose::named_whole(line, at);
            }
            What::Allowance(text) => line.fill(at, "own_allowance", &text, "the allowance"),
            What::Not(why) => item.not(why),
            // `12 L anchor`: a letter that measures nothing is no filler.
            What::Filler if item.text.eq_ignore_ascii_case("l") => item.not(""),
            What::With(_) if item.text == "U" && !joins => {
                item.not("if it marks bolts that are cut under (ISO 10684): write 6az")
            }
            What::Filler | What::With(_) | What::Or => item.became = Some(Became::Binds),
            What::Bare(Some(number)) if number > 0 => {
                item.not(format!("a number by itself: write {number} pcs if it counts them"))
            }
            What::Bare(_) => item.not("a number by itself: write what it measures"),
            What::Small(1) if matches!(item.text.as_str(), "a" | "A") => item.became = Some(Became::Binds),
            _ => item.not(""),
        }
    }
}

/// What leaves stress in a hard part, however that was done.
fn worked(line: &mut Line, at: usize, how: Worked) {
    line.fill(at, "cold", how.key(), "that it is");
    if line.notes.iter().all(|(field, _)| *field != "cold") {
        line.note(
            "cold",
            "above 1000 MPa it is relieved of stress before it is plated, mechanically (ASTM B695) or by current (ASTM B633, else common practice)",
        );
    }
}

struct Scanned {
    items: Vec<Item>,
    unknown: Vec<Piece>,
    looked_at: usize,
}

/// Finds the pieces.
fn scan(text: &str) -> Scanned {
    let mut chain = Chain::of(text);
    spelling::mend(&mut chain);
    let mut unknown: Vec<Range<usize>> = Vec::new();
    take_out_unknown(&mut chain, &mut unknown);
    let mut items: Vec<Item> = Vec::new();
    let mut stretch = 0;
    let mut at = chain.first();
    while at < chain.tokens().len() {
        if let Some((name, found)) = rule::longest(&chain, at) {
            let matched = at..found.last().map_or(at, |(end, _)| *end);
            let mut from = at;
            for (end, what) in found {
                let spans = spans(&chain, from, end);
                let text =
                    spans.iter().filter_map(|span| text.get(span.clone())).collect::<Vec<_>>().join(" ");
                items.push(Item {
                    what,
                    text,
                    stretch,
                    became: None,
                    rule: name,
                    spans,
                    matched: matched.clone(),
                });
                from = end;
            }
            at = matched.end;
            continue;
        }
        let Some(token) = chain.get(at) else { break };
        match token.sort {
            Sort::Break => {
                stretch += 1;
                at = chain.after(at);
            }
            Sort::Sign => {
                if !is_punctuation(token.text) {
                    unknown.push(at..at + 1);
                }
                at = chain.after(at);
            }
            Sort::Word | Sort::Digits => {
                // Letters and figures that touch are one word: it is read whole or not at all.
                let run = whole_run(&chain, at);
                at = behind_run(&chain, at, &run);
                while let Some(last) = items.last().filter(|last| last.matched.end > run.start) {
                    if last.matched.start < run.start {
                        at = last.matched.start;
                    }
                    stretch = last.stretch;
                    items.pop();
                }
                chain.take_out(run.clone());
                unknown.push(run);
            }
        }
    }
    let pieces = unknown.into_iter().map(|run| {
        let (first, last) = (chain.tokens().get(run.start), chain.tokens().get(run.end - 1));
        let span = first.map_or(0, |token| token.start)..last.map_or(0, |token| token.end());
        let text = text.get(span.clone()).unwrap_or_default().to_owned();
        Piece { span, text, rule: UNKNOWN, became: Became::NotUsed("".into()) }
    });
    let mut unknown: Vec<Piece> = pieces.collect();
    sort_by_key(&mut unknown, |piece| piece.span.start);
    Scanned { items, unknown, looked_at: chain.looked_at() }
}

/// The run of letters and figures around a place, and, where it ends with the first figures of a fraction, all of that:
/// `HEX3/4-10` is one word, for no thread is cut out of its fraction.
fn whole_run(chain: &Chain<'_>, at: usize) -> Range<usize> {
    let mut run = chain.run(at);
    let is_cut = run.len() > 1
        && run.end.checked_sub(1).is_some_and(|figures| number::fraction(chain, figures).is_some());
    if !is_cut {
        return run;
    }
    for signs in [&["/", "⁄"][..], &["-"][..]] {
        let joint = run.end;
        let joins = chain.sign(joint, signs) && chain.glued(joint) && chain.glued(joint + 1);
        if joins && chain.digits(joint + 1).is_some() {
            run.end = chain.run(joint + 1).end;
        }
    }
    run
}

/// The first place behind a run.
fn behind_run(chain: &Chain<'_>, mut at: usize, run: &Range<usize>) -> usize {
    while at < run.end {
        at = chain.after(at);
    }
    at
}

/// Words that the lexicon does not have, with the letters and figures that touch them, and the numbers
/// that hang on them by a dash or a stroke: `ACME-4711/2`; so does a letter between.
fn take_out_unknown(chain: &mut Chain<'_>, unknown: &mut Vec<Range<usize>>) {
    let is_unknown = |chain: &Chain<'_>, run: &Range<usize>| {
        chain.tokens().get(run.clone()).unwrap_or_default().iter().zip(run.clone()).any(|(token, at)| {
            let known = lexicon::is_looked_for(&token.lower)
                || lexicon::names_a_part(&token.lower)
                || joined::is_thing(&token.lower)
                || qualified::is_compound(chain.tokens(), at);
            token.sort == Sort::Word && !known
        })
    };
    let runs: Vec<Range<usize>> = chain.runs().to_vec();
    let names: Vec<Range<usize>> =
        (0..chain.tokens().len()).filter_map(|at| Some(label::whole_name(chain, at)?.0)).collect();
    let mut hangs = false;
    for (place, run) in runs.iter().enumerate() {
        let touches = place > 0
            && chain
                .tokens()
                .get(run.start.saturating_sub(1))
                .zip(chain.tokens().get(run.start))
                .is_some_and(|(one, other)| one.end() == other.start);
        let token = chain.tokens().get(run.start);
        let is_joint = token.is_some_and(|token| matches!(token.text, "-" | "/" | "#" | "_" | "." | ":"));
        let is_number = token.is_some_and(|token| token.sort == Sort::Digits) && run.len() == 1;
        // `QQ-P-416`.
        let is_letter =
            token.is_some_and(|token| token.sort == Sort::Word && token.text.len() == 1) && run.len() == 1;
        if names
            .get(names.partition_point(|name| name.end <= run.start))
            .is_some_and(|name| name.contains(&run.start))
        {
            hangs = false;
        } else if is_unknown(chain, run) {
            chain.take_out(run.clone());
            unknown.push(run.clone());
            hangs = true;
        } else if hangs && touches && (is_number || is_letter) {
            chain.take_out(run.clone());
            unknown.push(run.clone());
        } else if !(hangs && touches && is_joint) {
            hangs = false;
        }
    }
}

/// Where tokens stand, in stretches without a token between that is not of them.
fn spans(chain: &Chain<'_>, from: usize, end: usize) -> Vec<Range<usize>> {
    let mut spans: Vec<Range<usize>> = Vec::new();
    let mut last = None;
    let mut at = from;
    while at < end {
        if let Some(token) = chain.tokens().get(at) {
            match spans.last_mut() {
                Some(span) if last == Some(at) => span.end = token.end(),
                _ => spans.push(token.start..token.end()),
            }
        }
        last = Some(at + 1);
        at = chain.after(at);
    }
    spans
}

fn is_punctuation(sign: &str) -> bool {
    sign.chars().all(|c| {
        c.is_ascii_punctuation() && !matches!(c, '$' | '%' | '^')
            || matches!(
                c,
                '–' | '—'
                    | '‑'
                    | '·'
                    | '•'
                    | '…'
                    | '“'
                    | '”'
                    | '„'
                    | '’'
                    | '‘'
                    | '×'
                    | '✕'
                    | '″'
                    | '′'
                    | '®'
                    | '«'
                    | '»'
            )
    })
}
