//! Numbers beside a whole thread that count: behind a cross far from it, or in front of one.

use super::ACROSS;
use crate::order::reading::items::Line;
use crate::order::reading::length;
use crate::order::reading::what::{What, Written};

/// `3 x 100` beside a whole thread: so many times so many.
pub(super) fn times(line: &mut Line, weak: usize) {
    let matched = |at: usize| line.items.get(at).map(|item| item.matched.clone());
    let other = Some(weak + 1).filter(|next| matched(*next) == matched(weak));
    let number = |at: usize| -> Option<u64> {
        match line.what(at)? {
            What::Length(text) => {
                text.strip_suffix(" in").or(text.strip_suffix(length::UNIT_OF_THREAD))?.trim().parse().ok()
            }
            _ => line.items.get(at)?.text.parse().ok(),
        }
    };
    let all = other.and_then(|other| Some((other, number(weak)?.checked_mul(number(other)?)?)));
    match all {
        Some((other, all)) => {
            let why = format!("so many times so many: write {all} pcs if that is all");
            line.not(weak, why.clone());
            line.not(other, why);
        }
        None => line.not(weak, "a number by itself: write what it counts"),
    }
}

/// `#4 5/8-11 x 3`: beside a whole thread the number of the item.
pub(super) fn item_numbers(line: &mut Line, strong: &mut Vec<(usize, Written)>) {
    let has_other =
        strong.iter().any(|(_, written)| written.thread.is_some() && !written.text.starts_with('#'));
    let is_number = |written: &Written| {
        written.text.strip_prefix('#').is_some_and(|number| number.bytes().all(|byte| byte.is_ascii_digit()))
    };
    strong.retain(|(at, written)| {
        let is_item = has_other && is_number(written);
        if is_item {
            line.not(*at, "it numbers the item");
        }
        !is_item
    });
}

/// `1 m lengths … x 25`: far behind its thread, and beside another length, a plain number counts.
pub(super) fn counted_behind(line: &mut Line, lengths: Vec<(usize, String)>) -> Vec<(usize, String)> {
    let is_loose = |line: &Line, at: usize| {
        line.items.get(at).is_some_and(|item| item.rule == ACROSS)
            && !at.checked_sub(1).is_some_and(|before| {
                // `pack of 25 x 4`.
                let is_other = |what: &What| matches!(what, What::Not(_) | What::Count(_) | What::Bare(_));
                line.what(before).is_some_and(|what| {
                    matches!(what, What::Thread(_) | What::ThreadClass(_) | What::Inches { .. })
                        || is_other(what)
                })
            })
    };
    let is_counted = line.items.iter().any(|item| matches!(item.what, What::Count(_)));
    let (loose, other): (Vec<_>, Vec<_>) = lengths
        .into_iter()
        .partition(|(at, text)| is_loose(line, *at) && text.ends_with(length::UNIT_OF_THREAD));
    let (Some((at, text)), false) = (loose.first(), other.is_empty()) else {
        return other.into_iter().chain(loose).collect();
    };
    let pieces: Option<u64> = text.trim_end_matches(length::UNIT_OF_THREAD).trim().parse().ok();
    match pieces.filter(|_| !is_counted && loose.len() == 1) {
        Some(pieces) => {
            line.fill(*at, "quantity", &pieces.to_string(), "the quantity");
            line.note("quantity", "the number behind the cross, beside another length");
            other
        }
        None => other.into_iter().chain(loose).collect(),
    }
}

/// So many times so many.
pub(super) fn product(one: &str, other: &str) -> Option<u64> {
    one.parse::<u64>().ok()?.checked_mul(other.parse().ok()?)
}
