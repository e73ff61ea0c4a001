//! A part that no kind here is, by its name.

use super::name::Name;
use super::{Family, Scopes, UNKNOWN};
use crate::order::reading::Became;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon;
use crate::order::reading::what::What;
use crate::part::Kind;
use crate::quantity::letters::lower;

/// A part that no kind here is: judged as another part by its steel and its coat, its name in sight.
pub(super) fn another(line: &mut Line, scopes: &mut Scopes, about: &Name) {
    // What has no thread is not asked for its size.
    let mut kind = Kind::Other;
    let is_bolt = |name: &str| {
        let ends = |noun: &str| name.ends_with(noun);
        // A screw may form its own thread, and its size is then no machine thread's.
        ends("bolt") || ends("bolzen") || (ends("screw") || ends("schraube")) && has_machine_thread(line)
    };
    let names: Vec<String> = about
        .items
        .iter()
        .filter_map(|at| line.items.get(*at))
        .map(|item| lower(&item.text).trim_end_matches(['s', 'n']).to_owned())
        .collect();
    // Such nuts are pushed on and have no thread.
    let is_pushed = names.iter().any(|name| name.contains("push") || name.contains("speed"));
    for name in &names {
        kind = match name.trim_end_matches('e') {
            name if name.ends_with("nut") || name.ends_with("mutter") => Kind::OtherNut,
            name if name.starts_with("sicherungsscheib") => Kind::Other,
            name if name.ends_with("washer") || name.ends_with("scheib") => Kind::OtherWasher,
            _ if is_bolt(name) => Kind::OtherBolt,
            _ => kind,
        };
    }
    if kind == Kind::OtherNut && is_pushed {
        kind = Kind::Other;
    }
    scopes.kind = Some(kind);
    line.draft.set("part", kind.key());
    for at in &about.items {
        if let Some(item) = line.item(*at) {
            let text = lower(&item.text);
            let singular = text.trim_end_matches(['s', 'n', 'e']);
            if singular.ends_with("nut") || singular.ends_with("mutter") {
                scopes.family = Family::Nut;
            }
            let ends = |smooth: &&str| text.trim_end_matches(['s', 'n']).ends_with(*smooth);
            scopes.is_smooth |= kind == Kind::Other && lexicon::SMOOTH.iter().any(ends);
            item.became = Some(Became::Used(
                vec!["part"],
                Some(if kind == Kind::Other { UNKNOWN } else { SHAPE }.into()),
            ));
        }
    }
    if kind == Kind::OtherWasher {
        scopes.family = Family::Washer;
    }
}

/// Why the name of a part with a machine thread, or of a washer, is not used in full.
pub(super) const SHAPE: &str =
    "its shape is not known here: its area and its mass are asked where they count, the rest is judged";

/// Whether a machine thread stands in the line.
fn has_machine_thread(line: &Line) -> bool {
    line.items.iter().any(|item| {
        matches!(&item.what, What::Thread(written) if !written.weak && (written.pitched || written.text.starts_with('M')))
    })
}

/// Whether a word names a thing, and not what it is like or goes with.
pub(super) fn is_thing(text: &str) -> bool {
    let text = lower(text);
    let singular = text.trim_end_matches(['s', 'n']);
    // `spring steel` is no ring.
    if singular.ends_with("spring") {
        return false;
    }
    lexicon::THINGS.iter().any(|thing| text.ends_with(thing) || singular.ends_with(thing))
}
