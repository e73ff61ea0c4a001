//! What comes with the part: a nut, a washer, another name of it.

use super::name::{BARE, Name, kind_of};
use super::{Family, Scopes, UNKNOWN};
use crate::order::reading::items::Line;
use crate::order::reading::lexicon;
use crate::order::reading::what::What;
use crate::part::Kind;
use crate::quantity::letters::lower;

/// A nut or washer that comes with the part.
pub(super) fn mate(line: &mut Line, scopes: &mut Scopes, name: &Name, family: Family) {
    let (field, kinds, items): (_, &[&str], _) = match family {
        Family::Nut => ("nut", &["hex-nut", "heavy-hex-nut", "?nut"], &mut scopes.nut),
        _ => ("washer", WASHERS_OF_A_SET, &mut scopes.washer),
    };
    // `plain nuts` have no zinc.
    let words: Vec<&'static str> = name.words.iter().copied().filter(|word| *word != "plain").collect();
    let key = kind_of(&words);
    let kind = key.and_then(Kind::from_key).filter(|kind| kind.is_washer() && *kind != Kind::Washer);
    if family == Family::Washer && !items.is_empty() && kind != scopes.washer_kind {
        name.items.iter().for_each(|at| line.not(*at, "one kind of washer to a bolt is asked for here"));
    } else if key.is_some_and(|key| kinds.contains(&key)) {
        scopes.washer_kind = scopes.washer_kind.or(kind);
        items.extend(&name.items);
        match family {
            Family::Nut => scopes.with.0 = true,
            _ => scopes.with.1 = true,
        }
        for at in &name.items {
            match line.what(*at) {
                Some(What::Part("plain")) => line.not(*at, lexicon::BARE),
                _ => line.used(*at, field),
            }
        }
    } else {
        let why = if key.is_some() { AS_ITS_OWN } else { UNKNOWN };
        name.items.iter().for_each(|at| line.not(*at, why));
    }
}

/// Why a nut or a washer of another kind is not used beside a bolt.
pub(super) const AS_ITS_OWN: &str = "it is not judged as what comes with a bolt: write it as a line of its own, and ask whether it runs on the coat";

/// Whether a name that is not known here is of a nut or a washer: `with 2 heavy hex, 1 plate washer`.
pub(super) fn is_unknown_mate(line: &Line, name: &Name) -> bool {
    let ends = |at: &usize| {
        let text = line.items.get(*at).map_or(String::new(), |item| lower(&item.text));
        let singular = text.trim_end_matches(['s', 'n']);
        ["nut", "washer", "mutter", "scheibe"].iter().any(|mate| singular.ends_with(mate))
    };
    name.noun.is_none() && name.words.contains(&"?") && name.items.iter().any(ends)
}

/// The washers that can come with a bolt.
pub(super) const WASHERS_OF_A_SET: &[&str] =
    &["washer", "?washer", "spring-washer", "conical-washer", "wide-washer", "narrow-washer"];

/// A second name of a part.
pub(super) fn other(line: &mut Line, name: &Name, about: Option<&Name>, is_its_pin: bool) {
    let same = about.is_some_and(|about| {
        kind_of(&about.words) == kind_of(&name.words)
            || name.words.iter().all(|word| about.words.contains(word))
            || (name.words.len() == 1
                && about.noun == name.noun
                && name.words.iter().all(|word| BARE.contains(word)))
    });
    let is_bare = name.words == ["plain"];
    let why = if is_bare {
        lexicon::BARE
    } else if about.is_some() || is_its_pin {
        "one line is about one part: write it as a line of its own"
    } else {
        UNKNOWN
    };
    for at in &name.items {
        if let Some(item) = line.item(*at) {
            if same { item.used("part") } else { item.not(why) }
        }
    }
    if !same && name.words.contains(&"pin") && (about.is_some() || is_its_pin) {
        sizes_behind(line, name, why);
    }
}

/// `with cotter pin 3.2 x 32`, `clevis pin 3 x 8`: the measures right behind the name of another part are its own.
fn sizes_behind(line: &mut Line, name: &Name, why: &'static str) {
    let Some(first) = name.items.last().and_then(|last| line.behind(*last)) else { return };
    let Some(matched) = line.items.get(first).filter(|item| item.is_free()).map(|item| item.matched.clone())
    else {
        return;
    };
    let is_measure = match line.what(first) {
        Some(What::Thread(written)) => written.weak || written.of_size,
        Some(What::Pair { .. } | What::Inches { .. }) => true,
        _ => false,
    };
    let mut at = first;
    while is_measure && line.items.get(at).is_some_and(|item| item.matched == matched) {
        line.not(at, why);
        at += 1;
    }
}
