//! Nuts and washers at each of two ends, or on each of two sides: twice as many as stand there.

use super::items::Line;
use super::part::Scopes;
use super::per_part;
use super::what::What;
use crate::part::{Form, Kind};
use crate::quantity::letters::lower;

const TWO_ENDS: &str = "twice as many: at each of two ends";
const TWO_SIDES: &str = "twice as many: on each of two sides";

/// `2 nuts each end`, `with washers on both sides`.
pub(super) fn settle(line: &mut Line, scopes: &Scopes) {
    for (at, ()) in line.free(|what| (*what == What::Ends).then_some(())) {
        // `H30 plate washer 1 each end`.
        let number = number_before(line, at).map_or(at, |(number, _)| number);
        if per_part::is_of_another(line, scopes, number) {
            line.not(at, per_part::OF_ANOTHER);
            if number != at {
                line.not(number, per_part::OF_ANOTHER);
            }
            continue;
        }
        let mates = mates(line, scopes, at);
        let kind = line.draft.get("part").and_then(Kind::from_key);
        let has_two_ends = kind.is_some_and(|kind| kind.form() == Form::Bar || kind == Kind::Other);
        if mates.is_empty() {
            line.not(at, "of what at each end? Write how many nuts go on one part");
            continue;
        }
        for mate in mates {
            let (field, note) = match mate {
                "nut" => ("nuts", TWO_ENDS),
                _ => ("washers", TWO_SIDES),
            };
            if mate == "nut" && !has_two_ends {
                line.not(at, "a bolt with a head takes nuts at one end: write how many go on one");
                continue;
            }
            let named = line.draft.get(field).and_then(|text| text.parse::<u32>().ok()).unwrap_or(1);
            // `with 2 nuts, one each end`: the number that stands with the ends is that of one end.
            let of_one = number_before(line, at);
            let twice = |each: u32| each.checked_mul(2).filter(|all| u64::from(*all) <= per_part::MOST);
            let Some(all) = twice(of_one.map_or(named, |(_, each)| each)) else {
                line.not(at, "too many for one part: write how many go on one");
                continue;
            };
            let is_said = line.draft.get(field).is_some();
            if let Some((number, _)) = of_one.filter(|_| !is_said || named == all) {
                if line.items.get(number).is_some_and(super::items::Item::is_free) {
                    line.used(number, field);
                }
            } else if of_one.is_some() {
                line.not(at, format!("contradicts the number {named}, which stands before it"));
                continue;
            }
            line.draft.set(field, all.to_string());
            line.note(mate, note);
            line.used(at, field);
        }
    }
}

/// `1 washer under the head, 1 under the nut`: two of them.
pub(super) fn under_both(line: &mut Line, scopes: &Scopes) {
    let is_under = |at: &usize| {
        let words = line.items.get(*at).map(|item| lower(&item.text));
        words.is_some_and(|words| words.starts_with("under") || words.starts_with("unter"))
    };
    let under = (0..line.items.len()).filter(is_under);
    let washers = under.filter(|at| line.before(*at).is_some_and(|before| scopes.washer.contains(&before)));
    let is_one = line.draft.get("washers").is_none_or(|washers| washers == "1");
    if washers.count() == 2 && is_one && line.draft.get("washer").is_some() {
        line.draft.set("washers", "2");
        line.note("washer", "one under the head, one under the nut");
    }
}

/// What comes with the part and stands in front of the word: in its own stretch, else in the one before.
fn mates(line: &Line, scopes: &Scopes, at: usize) -> Vec<&'static str> {
    let of = |place: usize| match () {
        () if scopes.is_of_nut(line, place) => Some("nut"),
        () if scopes.is_of_washer(line, place) => Some("washer"),
        () => None,
    };
    let mut found = Vec::new();
    let mut place = at;
    let own = line.items.get(at).map(|item| item.stretch);
    let mut stretch = own;
    while let Some(before) = place.checked_sub(1) {
        place = before;
        let here = line.items.get(before).map(|item| item.stretch);
        if here != stretch {
            if !found.is_empty() || here.map(|here| here + 1) < own {
                break;
            }
            stretch = here;
        }
        if line.what(before) == Some(&What::Ends) || scopes.names.contains(&before) && !found.is_empty() {
            break;
        }
        if let Some(mate) = of(before).filter(|mate| !found.contains(mate)) {
            found.push(mate);
        }
    }
    // `each end with a nut and a washer`.
    let mut place = at;
    let is_behind = found.is_empty();
    while let Some(behind) = line.behind(place).filter(|_| is_behind) {
        let binds = matches!(
            line.what(behind),
            Some(What::With(_) | What::Filler | What::Small(_) | What::Bare(_) | What::Steel(_))
        );
        match of(behind) {
            Some(mate) if !found.contains(&mate) => found.push(mate),
            None if !binds => break,
            _ => {}
        }
        place = behind;
    }
    found
}

/// The number that stands right in front of the word.
fn number_before(line: &Line, at: usize) -> Option<(usize, u32)> {
    let number = |what: &What| match what {
        What::Small(number) => Some(*number),
        What::Bare(Some(number)) => u32::try_from(*number).ok(),
        What::Count(counted) => u32::try_from(counted.pieces).ok(),
        _ => None,
    };
    let before = line.before(at)?;
    line.what(before).and_then(number).map(|number| (before, number))
}
