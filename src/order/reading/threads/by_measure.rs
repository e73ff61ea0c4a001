//! What a measure without a thread's letter says: a diameter, the legs of a U-bolt.

use super::of_length;
use crate::order::reading::diameter::of_diameter;
use crate::order::reading::items::Line;
use crate::order::reading::length;
use crate::order::reading::part::{Family, Scopes};
use crate::order::reading::what::{What, Written};
use crate::part::Kind;

/// `16 mm threaded rod 3 m long`, `20 mm nuts`: without an M the lesser of two lengths, or the one of a nut, is the
/// diameter; one alone in front of the name of a bolt may be either.
pub(super) fn by_diameter(line: &mut Line, scopes: &Scopes, strong: &mut Vec<(usize, Written)>) {
    let kind = scopes.kind.or_else(|| line.draft.get("part").and_then(Kind::from_key));
    if !kind.is_some_and(Kind::has_mate) && scopes.family != Family::Nut {
        return;
    }
    let lengths = line.free(|what| match what {
        What::Length(text) => length::in_mm(text),
        _ => None,
    });
    let shortest = lengths.iter().copied().min_by(|(_, one), (_, other)| one.total_cmp(other));
    let Some((at, mm)) = shortest.filter(|(at, _)| of_length(line, *at) == 2) else { return };
    let is_in_mm = matches!(line.what(at), Some(What::Length(text)) if text.ends_with(" mm"));
    let Some(thread) = of_diameter(&mm.to_string()).filter(|thread| thread.is_coarse() && is_in_mm) else {
        return;
    };
    if lengths.len() > 1 || scopes.family == Family::Nut {
        let text = thread.to_string();
        strong.push((at, Written { text, thread: Some(thread), of_size: true, pitched: false, weak: false }));
    } else if line.behind(at).is_some_and(|behind| scopes.names.contains(&behind)) {
        line.not(at, format!("a diameter or a length? Write {thread}, or “{mm} mm long”"));
    }
}

/// `M16 80 8.8 hex bolt, 60 pcs`: the number right behind the size of a bolt is its length, where the pieces are
/// counted by their unit.
pub(super) fn behind_the_size(line: &mut Line, scopes: &Scopes, is_open: bool) -> Option<(usize, String)> {
    let is_counted = line.items.iter().any(|item| matches!(item.what, What::Count(_)));
    let has_length = scopes.kind.is_none_or(Kind::has_length) && scopes.family == Family::Bolt;
    let found = line.free(|what| match what {
        What::Bare(Some(number)) if (10..=500).contains(number) => Some(*number),
        _ => None,
    });
    let behind = found.into_iter().find(|(at, _)| {
        let before = line.before(*at).and_then(|before| line.what(before));
        matches!(before, Some(What::Thread(written)) if written.text.starts_with('M'))
    });
    let (at, number) = behind.filter(|_| is_open && is_counted && has_length)?;
    line.note("length", "the number behind the size");
    Some((at, format!("{number} mm")))
}

/// The legs of a U-bolt `M20 x 220 x 300` are higher than the bow is wide.
pub(super) fn of_legs(
    line: &mut Line,
    scopes: &Scopes,
    lengths: Vec<(usize, String)>,
) -> Vec<(usize, String)> {
    let number = |text: &str| -> Option<f64> { text.split([' ', '?']).next()?.parse().ok() };
    let crossed: Vec<(usize, f64)> = lengths
        .iter()
        .filter(|(at, _)| of_length(line, *at) == 0)
        .filter_map(|(at, text)| Some((*at, number(text)?)))
        .collect();
    let [(first, width), (second, height)] = crossed.as_slice() else { return lengths };
    if scopes.kind != Some(Kind::UBolt) || second != &(first + 1) || width >= height {
        return lengths;
    }
    line.not(*first, length::ACROSS);
    line.note("length", "of the two measures the greater: the height of the legs");
    lengths.into_iter().filter(|(at, _)| at != first).collect()
}
