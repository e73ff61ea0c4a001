//! The size of a washer by its hole.

use crate::order::reading::diameter::washer_of;
use crate::order::reading::items::Line;
use crate::order::reading::length;
use crate::order::reading::part::Scopes;
use crate::order::reading::what::What;
use crate::part::Kind;
use crate::quantity::letters::lower;

/// Hole, outside and thickness of a washer: by the hole.
pub(super) fn hole(line: &mut Line, scopes: &Scopes) {
    let found = line.free(|what| match what {
        What::Washer(hole) => Some(hole.clone()),
        _ => None,
    });
    for (at, hole) in found {
        let is_washer = scopes.kind.is_some_and(Kind::is_washer);
        match washer_of(&hole).filter(|_| is_washer) {
            Some(thread) => {
                if line.draft.get("thread").is_none() {
                    line.note("thread", OF_A_HOLE);
                }
                line.fill(at, "thread", &thread.to_string(), "the size");
            }
            None if is_washer && line.draft.get("thread").is_some() => {
                line.not(at, "no washer known here has this hole: it is judged by the thread it is for")
            }
            None if is_washer => {
                line.not(at, "no washer known here has this hole: write the thread it is for")
            }
            None => line.not(at, "three measures of what? Write a thread as M20, 3/4-10 or #8-32"),
        }
    }
}

/// `Scheibe 10,5`, `ISO 7093-1 16`, `ID 17`: the size of a washer behind its name or its standard, by the hole or
/// by the thread.
pub(super) fn bare_hole(line: &mut Line, scopes: &Scopes) {
    if !scopes.kind.is_some_and(Kind::is_washer) || line.draft.get("thread").is_some() {
        return;
    }
    let is_counted = line.items.iter().any(|item| matches!(item.what, What::Count(_)));
    for at in 0..line.items.len() {
        let Some(item) = line.items.get(at) else { break };
        let text = item.text.replace(',', ".");
        let number = match &item.what {
            What::Bare(_) if item.is_free() => text.parse::<f64>().ok(),
            What::Not(why) if why == length::ACROSS => {
                let bore = lower(&text);
                let bore =
                    ["id", "i.d.", "hole", "bore", "innen"].iter().find_map(|word| bore.strip_prefix(word));
                bore.and_then(|bore| {
                    bore.trim_matches([' ', '.', ':', '=']).trim_end_matches("mm").trim().parse().ok()
                })
            }
            _ => None,
        };
        let Some(number) = number else { continue };
        let before = line.before(at);
        let is_behind = before.is_some_and(|before| {
            matches!(line.what(before), Some(What::PartStandard(_))) || scopes.names.contains(&before)
        });
        let of_a_standard =
            before.is_some_and(|before| matches!(line.what(before), Some(What::PartStandard(_))));
        let is_bore = matches!(line.what(at), Some(What::Not(_)));
        let is_sure = is_bore || is_behind && (number.fract() != 0.0 || of_a_standard && is_counted);
        if let Some(thread) = washer_of(&number.to_string()).filter(|_| is_sure) {
            if is_bore && let Some(item) = line.item(at) {
                item.became = None;
            }
            line.fill(at, "thread", &thread.to_string(), "the size");
            line.note("thread", OF_A_HOLE);
            return;
        }
    }
}

const OF_A_HOLE: &str = "the bolt that a washer of this size goes with";
