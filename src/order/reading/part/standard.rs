//! The standards of parts that a line names.

use super::implied::{has_bolt, has_bolt_steel};
use super::mate::AS_ITS_OWN;
use super::name::{BARE, Name};
use super::{Family, Scopes, UNKNOWN, WASHERS_OF_A_SET};
use crate::order::reading::Became;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon::KINDS;
use crate::order::reading::nouns::MATES;
use crate::order::reading::what::What;
use crate::part::{Form, Kind};

/// The standards of parts.
pub(super) fn by_standard(line: &mut Line, scopes: &mut Scopes, about: Option<&Name>, names: &[Name]) {
    let mates = Mates::of(line, names);
    let standards = line.free(|what| match what {
        What::PartStandard(key) => Some(*key),
        _ => None,
    });
    let mut by: Option<(Kind, String)> = None;
    for (at, key) in standards {
        let kind = Kind::from_key(key);
        let text = line.items.get(at).map_or(String::new(), |item| item.text.clone());
        // What comes with a structural bolt by its own standard.
        if let Some(mate) = key.strip_prefix('?').filter(|mate| matches!(*mate, "nut" | "washer")) {
            let is_own = |family: Family| {
                scopes.family == family && (about.is_some() || scopes.system.is_some())
                    || about.is_none() && scopes.kind.is_none()
            };
            if mate == "nut" && is_own(Family::Nut) {
                (scopes.family, scopes.kind) = (Family::Nut, Some(Kind::HeavyHexNut));
                (scopes.system, scopes.by_steel) = (scopes.system.or(Some("HV")), None);
                own_part(line, scopes, at, Kind::HeavyHexNut);
            } else if mate == "washer" && is_own(Family::Washer) {
                (scopes.family, scopes.kind, scopes.by_steel) = (Family::Washer, Some(Kind::Washer), None);
                own_part(line, scopes, at, Kind::Washer);
            } else if scopes.kind.is_some_and(Kind::is_structural) {
                let with = if mate == "nut" { &mut scopes.with.0 } else { &mut scopes.with.1 };
                *with = true;
                if mate == "nut" {
                    scopes.nut.push(at)
                } else {
                    scopes.washer.push(at)
                }
                line.used(at, if mate == "nut" { "nut" } else { "washer" });
            } else {
                line.not(at, UNKNOWN);
            }
            continue;
        }
        let family = match kind {
            Some(kind) if kind.is_nut() => Family::Nut,
            Some(_) if key.ends_with("washer") => Family::Washer,
            _ => Family::Bolt,
        };
        // The nuts of a preloaded assembly stand in the standard of its bolts.
        if scopes.system.is_some() && scopes.family == Family::Nut && kind.is_some_and(Kind::is_structural) {
            line.used(at, "part");
            continue;
        }
        let is_first = about.is_none() && scopes.kind.is_none() && !mates.is_one(line, at, (key, family));
        let bolt_is_named = !is_first && scopes.family == Family::Bolt;
        match kind {
            None if line
                .before(at)
                .is_some_and(|before| scopes.nut.contains(&before) || scopes.washer.contains(&before)) =>
            {
                line.not(at, "the standard of what comes with the bolt is not asked");
            }
            None => {
                // The shape is another one, whatever the words say: judged by its steel and its coat alone.
                let places: Vec<usize> = scopes.names.iter().copied().chain([at]).collect();
                for place in places {
                    if let Some(item) = line.item(place) {
                        item.became = Some(Became::Used(vec!["part"], Some(UNKNOWN.into())));
                    }
                }
                scopes.kind = Some(Kind::Other);
                scopes.by_steel = None;
                line.draft.set("part", Kind::Other.key());
            }
            Some(kind) if family != Family::Bolt && bolt_is_named => {
                let field = if family == Family::Nut { "nut" } else { "washer" };
                match (family, key) {
                    (Family::Nut, "hex-nut") => {
                        scopes.with.0 = true;
                        scopes.nut.push(at);
                    }
                    (Family::Washer, key) if WASHERS_OF_A_SET.contains(&key) => {
                        scopes.with.1 = true;
                        scopes.washer.push(at);
                        scopes.washer_kind =
                            scopes.washer_kind.or(Some(kind)).filter(|kind| *kind != Kind::Washer);
                    }
                    _ => {
                        line.not(at, AS_ITS_OWN);
                        of_another_kind(line, scopes, at, family);
                        continue;
                    }
                }
                if let Some(item) = line.item(at) {
                    item.used(field);
                }
            }
            Some(kind) if by.as_ref().is_some_and(|(other, _)| *other != kind) => {
                let (other, text) = by.as_ref().map_or((kind, ""), |(other, text)| (*other, text.as_str()));
                line.not(
                    at,
                    format!("contradicts {text}, which stands before it: that is a {}", other.name()),
                );
            }
            Some(kind) if is_first || agrees(scopes, about, kind) => {
                by = Some((kind, text));
                if is_first {
                    scopes.family = family;
                }
                scopes.kind = Some(kind);
                scopes.by_steel = None;
                line.draft.set("part", kind.key());
                for at in scopes.names.iter().copied().chain([at]) {
                    if let Some(item) = line.item(at) {
                        item.became = None;
                        item.used("part");
                    }
                }
            }
            Some(kind) => {
                if let Some(item) = line.item(at) {
                    item.not(format!("it is the standard of another part: {}", kind.name()));
                }
            }
        }
    }
}

/// `with DIN 985 nuts`: the noun beside the standard of another nut or washer is that of the same.
fn of_another_kind(line: &mut Line, scopes: &mut Scopes, at: usize, family: Family) {
    let (items, with) = match family {
        Family::Nut => (&mut scopes.nut, &mut scopes.with.0),
        _ => (&mut scopes.washer, &mut scopes.with.1),
    };
    for beside in [line.before(at), line.behind(at)].into_iter().flatten() {
        let is_bare = matches!(line.what(beside), Some(What::Part(noun)) if MATES.contains(noun));
        if is_bare && items.contains(&beside) {
            items.retain(|item| *item != beside);
            line.not(beside, AS_ITS_OWN);
        }
    }
    *with &= !items.is_empty();
}

/// What makes the standard of a nut or a washer that of what comes with a bolt which no word names.
struct Mates {
    /// A size with its length: `M12x50`.
    has_bolt: bool,
    /// A steel of bolts.
    has_steel: bool,
    /// The names of nuts, or of washers, that stand in the line.
    named: Vec<Family>,
}

impl Mates {
    fn of(line: &Line, names: &[Name]) -> Self {
        let named = [Family::Nut, Family::Washer]
            .into_iter()
            .filter(|family| names.iter().any(|name| name.noun == Some(*family)))
            .collect();
        Self { has_bolt: has_bolt(&line.items), has_steel: has_bolt_steel(line), named }
    }

    /// `M12x50 8.8 with DIN 985 nyloc`: behind `with`, with its name, or of a nut beside a steel of bolts.
    fn is_one(&self, line: &Line, at: usize, (key, family): (&str, Family)) -> bool {
        // A coupling nut has a length of its own.
        if family == Family::Bolt || key == "coupling-nut" || !self.has_bolt {
            return false;
        }
        let mut before = line.before(at);
        for _ in 0..NEAR {
            match before {
                Some(place) if matches!(line.what(place), Some(What::With(_))) => return true,
                Some(place) => before = line.before(place),
                None => break,
            }
        }
        self.named.contains(&family) || family == Family::Nut && self.has_steel
    }
}

/// How many pieces in front of a standard are asked for `with`.
const NEAR: usize = 8;

/// Words without a noun that the part of a standard may have in its name belong to it: `Senkkopf … DIN 7991`.
pub(super) fn loose_words(line: &mut Line, scopes: &Scopes) {
    let Some(kind) = scopes.kind.filter(|_| !scopes.names.is_empty() || scopes.by_steel.is_none()) else {
        return;
    };
    let may_have = |words: &str| {
        let rows = KINDS.iter().filter(|(key, ..)| *key == kind.key());
        let all = |needed: &str, may: &str| {
            words.split(' ').all(|word| needed.split(' ').chain(may.split(' ')).any(|own| own == word))
        };
        rows.into_iter().any(|(_, needed, may)| all(needed, may))
    };
    let standard =
        line.items.iter().any(|item| matches!(item.what, What::PartStandard(key) if key == kind.key()));
    for item in line.items.iter_mut().filter(|_| standard) {
        let is_lost = item.became.is_none() || item.became == Some(Became::NotUsed(UNKNOWN.into()));
        if matches!(item.what, What::Part(words) if is_lost && may_have(words)) {
            item.became = None;
            item.used("part");
        }
    }
}

/// The part that a standard is of, with the words of its name.
fn own_part(line: &mut Line, scopes: &Scopes, at: usize, kind: Kind) {
    line.draft.set("part", kind.key());
    for at in scopes.names.iter().copied().chain([at]) {
        if let Some(item) = line.item(at) {
            item.became = None;
            item.used("part");
        }
    }
}

/// The standards of several parts.
pub(super) fn by_document(line: &mut Line, scopes: &Scopes) {
    let documents = line.free(|what| match what {
        What::PartDocument(document) => Some(*document),
        _ => None,
    });
    for (at, document) in documents {
        let is_of = |kind: &Kind| [true, false].iter().any(|metric| kind.document(*metric) == document);
        let kinds: Vec<Kind> = Kind::ALL.into_iter().filter(is_of).collect();
        match scopes.kind {
            Some(kind) if kinds.contains(&kind) => line.used(at, "part"),
            _ if kinds.iter().any(|kind| kind.is_nut()) && scopes.with.0 => line.used(at, "nut"),
            _ if kinds.iter().any(|kind| kind.is_washer()) && scopes.with.1 => line.used(at, "washer"),
            Some(kind) => line.not(at, format!("no {kind} is taken from it here")),
            None if kinds.is_empty() => line.not(at, "no part known here is taken from it"),
            None => {
                let names: Vec<&str> = kinds.iter().map(|kind| kind.name()).collect();
                line.not(at, format!("it has more than one part: {}?", names.join(", ")));
            }
        }
    }
}

/// Whether a standard can be that of the part named: people call a hex screw a hex bolt.
fn agrees(scopes: &Scopes, about: Option<&Name>, kind: Kind) -> bool {
    let hex = ["hex-bolt", "hex-screw"];
    // The name says less than the standard does.
    let says_less = match scopes.kind {
        Some(Kind::HexBolt) => matches!(kind, Kind::OtherBolt),
        Some(Kind::HexNut) => matches!(kind, Kind::ThinNut | Kind::OtherNut | Kind::CouplingNut),
        Some(Kind::Stud) => kind == Kind::DoubleEndStud,
        Some(Kind::AnchorRod) => kind == Kind::BentAnchor,
        Some(Kind::Washer | Kind::OtherWasher) => kind == Kind::OtherWasher,
        Some(Kind::OtherNut) => kind.is_nut(),
        Some(Kind::OtherBolt | Kind::Other) => matches!(kind, Kind::OtherBolt | Kind::BentAnchor),
        _ => false,
    };
    let named = scopes.kind.map(Kind::key);
    let is_all = |noun: &str| about.is_some_and(|about| about.words == [noun]);
    if is_all("ring") || is_all("pin") {
        return kind.form() == if is_all("ring") { Form::Ring } else { Form::Pin };
    }
    let bare = about.is_some_and(|about| about.words.iter().all(|word| BARE.contains(word)))
        && !matches!(kind.form(), Form::Ring | Form::Pin);
    // A retaining ring without more may be for a shaft or a bore.
    let is_open = about.is_some_and(|about| about.words == ["retaining", "ring"] && !scopes.is_external);
    // A set screw without more is the hexagon one as well, in British trade.
    let is_set_screw = about.is_some_and(|about| about.words.join(" ") == "set screw")
        && scopes.kind == Some(Kind::SetScrew)
        && kind.key() == "hex-screw";
    named == Some(kind.key())
        || is_set_screw
        || says_less
        || is_open && kind.is_ring()
        || named.is_some_and(|named| hex.contains(&named)) && hex.contains(&kind.key())
        || named == Some("hex-bolt") && kind.is_structural()
        || bare && (kind.is_nut() == (scopes.family == Family::Nut))
}
