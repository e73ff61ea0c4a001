//! The part where no noun names it, and what of a line is that of a bolt.

use super::name::Name;
use super::{Family, Scopes};
use crate::order::reading::items::{Item, Line};
use crate::order::reading::what::{SteelWord, What};
use crate::part::Kind;

/// The part where no noun names it: a grade of nuts or of washers is that of one, if no bolt stands in the
/// line; so is a size of ISO 1478 that of a tapping screw.
pub(super) fn implied(line: &mut Line, scopes: &mut Scopes, names: &[Name]) -> bool {
    const SIZE_OF_TAPPING: &str = "size of a tapping screw";
    if names.is_empty() && line.items.iter().any(|item| item.rule == SIZE_OF_TAPPING) {
        scopes.kind = Some(Kind::TappingScrew);
        line.draft.set("part", Kind::TappingScrew.key());
        line.note("part", "ST is the thread of tapping screws (ISO 1478)");
        return true;
    }
    let loose = names.iter().all(|name| {
        name.noun.is_none()
            && name.words.iter().all(|word| matches!(*word, "hex" | "heavy" | "flat" | "plain" | "round"))
    });
    let has_length = line.items.iter().any(|item| matches!(item.what, What::Length(_) | What::Pair { .. }));
    let has_bolt = has_bolt_steel(line)
        || line
            .items
            .iter()
            .any(|item| matches!(item.what, What::PartStandard(_) | What::PartDocument(_) | What::With(_)));
    let grade = line.items.iter().filter(|item| item.is_free()).find_map(|item| match &item.what {
        What::Steel(SteelWord::Grade(grade)) => Some(*grade),
        _ => None,
    });
    let Some(grade) = grade.filter(|_| loose && !has_length && !has_bolt) else { return false };
    let heavy = names.iter().any(|name| name.words.contains(&"heavy")) || is_heavy(grade.key());
    let (family, kind, note) = if grade.is_nut() {
        let kind = if heavy { Kind::HeavyHexNut } else { Kind::HexNut };
        (Family::Nut, kind, "a grade of nuts, and no bolt in the line")
    } else if grade.is_washer() {
        (Family::Washer, Kind::Washer, "a grade of washers, and no bolt in the line")
    } else {
        return false;
    };
    scopes.family = family;
    scopes.kind = Some(kind);
    line.draft.set("part", kind.key());
    line.note("part", note);
    for at in names.iter().flat_map(|name| &name.items) {
        scopes.names.insert(*at);
        line.used(*at, "part");
    }
    true
}

/// Whether the words of parts in the line say no more than that a head is a hexagon.
pub(super) fn only_hex(names: &[Name]) -> bool {
    let hex = |name: &Name| name.words.iter().all(|word| matches!(*word, "hex" | "head" | "plain" | "sae"));
    names.iter().all(hex) && names.iter().any(|name| name.words.contains(&"hex"))
}

/// Whether nuts of a grade are heavy hex nuts.
pub(super) fn is_heavy(steel: &str) -> bool {
    ["a194", "a563-dh", "a563-c"].iter().any(|grade| steel.starts_with(grade))
}

/// Whether a thread with its length stands in the line: `M16 x 60` is a bolt, whatever nut is named; so is what has a
/// length by its name and a class of bolts, `M24 L=800 5.6`.
pub(super) fn has_bolt(items: &[Item]) -> bool {
    let has = |is: fn(&What) -> bool| items.iter().any(|item| is(&item.what));
    let is_named = items.iter().any(|item| {
        matches!(item.what, What::Length(_))
            && item.text.chars().any(|c| c == 'L' || c == '=')
            && item.is_free()
    });
    let has_class = has(
        |what| matches!(what, What::Steel(SteelWord::Grade(grade)) if !grade.is_nut() && !grade.is_washer()),
    );
    if is_named && has_class && has(|what| matches!(what, What::Thread(_))) {
        return true;
    }
    items.windows(2).any(|pair| match pair {
        [one, other] => {
            matches!((&one.what, &other.what), (What::Thread(_), What::Length(_)))
                && one.matched == other.matched
        }
        _ => false,
    })
}

/// Whether a steel of bolts stands in the line.
pub(super) fn has_bolt_steel(line: &Line) -> bool {
    line.items.iter().any(|item| match &item.what {
        What::Steel(SteelWord::Grade(grade)) => !grade.is_nut() && !grade.is_washer(),
        _ => false,
    })
}
