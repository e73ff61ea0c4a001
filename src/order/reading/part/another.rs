//! A part that no kind here is, by its name.

use super::name::Name;
use super::{Family, Scopes, UNKNOWN};
use crate::order::reading::Became;
use crate::order::reading::items::Line;
use crate::part::Kind;
use crate::quantity::letters::lower;

/// A part that no kind here is: judged as another part by its steel and its coat, its name in sight.
pub(super) fn another(line: &mut Line, scopes: &mut Scopes, about: &Name) {
    // What has no thread is not asked for its size.
    const SMOOTH: &[&str] =
        &["washer", "ring", "clip", "pin", "rivet", "nail", "niet", "niete", "scheibe", "stift"];
    scopes.kind = Some(Kind::Other);
    line.draft.set("part", Kind::Other.key());
    for at in &about.items {
        if let Some(item) = line.item(*at) {
            let text = lower(&item.text);
            let singular = text.trim_end_matches(['s', 'n', 'e']);
            if singular.ends_with("nut") || singular.ends_with("mutter") {
                scopes.family = Family::Nut;
            }
            let ends = |smooth: &&str| text.trim_end_matches(['s', 'n']).ends_with(*smooth);
            scopes.is_smooth |= SMOOTH.iter().any(ends);
            item.became = Some(Became::Used(vec!["part"], Some(UNKNOWN)));
        }
    }
}

/// Whether a word names a thing, and not what it is like or goes with.
pub(super) fn is_thing(text: &str) -> bool {
    const THINGS: &[&str] = &[
        "bolt",
        "nut",
        "screw",
        "washer",
        "anchor",
        "clip",
        "ring",
        "schraube",
        "mutter",
        "niet",
        "rivet",
        "nail",
        "nägel",
        "dowel",
        "insert",
        "turnbuckle",
        "shackle",
        "eye",
        "pin",
        "stein",
        "bolzen",
        "stift",
        "stifte",
        "scheibe",
        "niete",
        "anker",
        "clamp",
        "dübel",
    ];
    let text = lower(text);
    let singular = text.trim_end_matches(['s', 'n']);
    // `spring steel` is no ring.
    if singular.ends_with("spring") {
        return false;
    }
    THINGS.iter().any(|thing| text.ends_with(thing) || singular.ends_with(thing))
}
