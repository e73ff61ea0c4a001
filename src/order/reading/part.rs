//! Which part the line is about, and which nuts and washers come with it.

use crate::quantity::letters::lower;
use std::collections::HashSet;

use super::Became;
use super::items::Line;
use super::lexicon::{self, KINDS};
use super::what::{SteelWord, What};
use crate::part::{Form, Kind, UsualSteel};
use crate::steel::Grade;

/// What belongs to what in a line.
#[derive(Debug, Default)]
pub(super) struct Scopes {
    /// The part, if it is known here.
    pub kind: Option<Kind>,
    /// Whether the part that the line is about is a nut, a washer, or another.
    pub family: Family,
    /// The items of the part's name.
    pub names: HashSet<usize>,
    /// The items of the nut's name, where a nut comes with the part.
    pub nut: Vec<usize>,
    /// The items of the washer's name, where a washer comes with it.
    pub washer: Vec<usize>,
    /// For each item, what stands next to it.
    pub of: Vec<Scope>,
    /// Whether a nut, or a washer, comes with the part.
    pub with: (bool, bool),
    /// Whether the name, known or not, is of a pin or a ring, which have no thread.
    pub is_smooth: bool,
    /// Whether the name of a ring says that it is for a shaft.
    pub is_external: bool,
    /// Whether the name is a bare `bolt`, or a heavy hex bolt: the steel says which.
    pub by_steel: Option<BySteel>,
}

impl Scopes {
    /// What the item at a place stands next to.
    pub fn beside(&self, at: usize) -> Scope {
        self.of.get(at).copied().unwrap_or_default()
    }
}

/// What an item stands next to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Scope {
    /// The part.
    #[default]
    Part,
    /// The nut that comes with it.
    Nut,
    /// The washer that comes with it.
    Washer,
}

/// What the line is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Family {
    /// A bolt, a screw, a rod, or what no word says.
    #[default]
    Bolt,
    /// A nut.
    Nut,
    /// A washer.
    Washer,
}

/// A name that a steel makes definite.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum BySteel {
    /// A bolt without more: of A325 and A490 it is the structural one.
    Bolt,
    /// A heavy hex bolt: known only as the structural one.
    HeavyHex,
    /// A nut without more: of A194 and A563 DH it is a heavy hex nut.
    Nut,
    /// No name: some steels are those of one kind of part.
    Nothing,
}

/// A name of a part in the line.
#[derive(Debug, Clone, Default)]
struct Name {
    words: Vec<&'static str>,
    items: Vec<usize>,
    noun: Option<Family>,
    /// `Some(true)` behind `with`, `Some(false)` behind `and`.
    with: Option<bool>,
    stretch: usize,
}

/// Words that need not be there, and need not fit: they are named where they do not.
const SOFT: &[&str] =
    &["uss", "sae", "plain", "round", "flat", "threaded", "full-thread", "part-thread", "heavy"];
/// Nouns of one word that say no more than what the part is for.
const BARE: &[&str] = &["bolt", "screw", "schraube", "nut", "washer", "ring", "pin"];

/// Steels whose document is that of one kind of part.
const OF_ONE_KIND: &[(&str, &str)] = &[
    ("f1554", "anchor-rod"),
    ("a325", "structural-bolt"),
    ("a490", "structural-bolt"),
    ("a574", "socket-screw"),
    ("45h", "set-screw"),
    ("a193-b7", "stud"),
    ("f1852", "other"),
    ("f2280", "other"),
    ("iso-2702", "tapping-screw"),
];

const TWIST_OFF: &str =
    "a twist-off bolt, taken as another part: its head and spline are not known here, nor is its fit judged";
const UNKNOWN: &str = "no part known here has this name";

/// The part and what comes with it.
pub(super) fn settle(line: &mut Line) -> Scopes {
    let mut names = names(line);
    let mut scopes = Scopes { of: vec![Scope::Part; line.items.len()], ..Scopes::default() };
    let is_implied = implied(line, &mut scopes, &names);
    let main = main_of(&names).filter(|_| !is_implied).filter(|main| {
        let has_nut = names.iter().any(|name| name.noun == Some(Family::Nut));
        let is_mate = names.get(*main).is_some_and(|name| match name.noun {
            Some(Family::Nut) => true,
            Some(Family::Washer) => has_nut || has_bolt_steel(line),
            _ => false,
        });
        !(is_mate && has_bolt(line))
    });
    if let Some(main) = main {
        join_loose(line, &mut names, main);
    }
    let about = main.and_then(|main| names.get(main)).cloned();
    if !is_implied {
        scopes.family = about.as_ref().and_then(|name| name.noun).unwrap_or_default();
    }
    for (at, name) in names.iter().enumerate() {
        if Some(at) == main || name.items.is_empty() || is_implied {
            continue;
        }
        match name.noun {
            Some(family @ (Family::Nut | Family::Washer)) if scopes.family == Family::Bolt => {
                mate(line, &mut scopes, name, family);
            }
            _ => other(line, name, about.as_ref()),
        }
    }
    if let Some(about) = &about {
        name_part(line, &mut scopes, about);
    }
    by_standard(line, &mut scopes, about.as_ref());
    by_document(line, &scopes);
    let is_named = line.items.iter().any(|item| {
        let is_name = matches!(item.what, What::Part(_) | What::PartStandard(_) | What::PartDocument(_))
            && !matches!(item.what, What::Part("plain" | "sae"));
        is_name && !matches!(&item.became, Some(Became::Used(fields, _)) if !fields.contains(&"part"))
    });
    if about.is_none() && (!is_named || only_hex(&names)) && scopes.kind.is_none() {
        scopes.by_steel = Some(BySteel::Nothing);
    }
    scope_items(line, &mut scopes, &names, main);
    scopes
}

/// Whether the words of parts in the line say no more than that a head is a hexagon.
fn only_hex(names: &[Name]) -> bool {
    let hex = |name: &Name| name.words.iter().all(|word| matches!(*word, "hex" | "head" | "plain" | "sae"));
    names.iter().all(hex) && names.iter().any(|name| name.words.contains(&"hex"))
}

/// The part where no noun names it: a grade of nuts or of washers is that of one, if no bolt stands in the
/// line; so is a size of ISO 1478 that of a tapping screw.
fn implied(line: &mut Line, scopes: &mut Scopes, names: &[Name]) -> bool {
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

/// Whether nuts of a grade are heavy hex nuts.
fn is_heavy(steel: &str) -> bool {
    steel.starts_with("a194") || steel.starts_with("a563-dh")
}

/// The names of parts, one after the other.
fn names(line: &Line) -> Vec<Name> {
    let noun = |words: &str| {
        words.split(' ').find_map(|word| match word {
            "bolt" | "screw" | "schraube" | "rod" | "stud" | "u-bolt" | "ring" | "pin" => Some(Family::Bolt),
            "nut" => Some(Family::Nut),
            "washer" => Some(Family::Washer),
            _ => None,
        })
    };
    // Whether a noun follows before the stretch ends or another part begins.
    let mut ahead = vec![false; line.items.len() + 1];
    for (at, item) in line.items.iter().enumerate().rev() {
        let next = line.items.get(at + 1).is_some_and(|next| next.stretch == item.stretch)
            && ahead.get(at + 1) == Some(&true);
        let is = match &item.what {
            What::Part(words) if item.is_free() => noun(words).is_some() || next,
            What::With(_) => false,
            _ => next,
        };
        if let Some(ahead) = ahead.get_mut(at) {
            *ahead = is;
        }
    }
    let mut names: Vec<Name> = Vec::new();
    let mut open = false;
    let (mut with, mut stretch, mut brings) = (None, 0, false);
    for (at, item) in line.items.iter().enumerate() {
        if item.stretch != stretch {
            (with, stretch, open, brings) = (None, item.stretch, false, false);
        }
        match &item.what {
            What::With(strong) => {
                // Behind `with`, `and` goes on with what comes with the part.
                brings |= *strong;
                (with, open) = (Some(brings), false);
            }
            What::Part(words) if item.is_free() => {
                let own = noun(words);
                let follows = ahead.get(at + 1) == Some(&true)
                    && line.items.get(at + 1).is_some_and(|next| next.stretch == stretch);
                let touches = names.last().is_some_and(|last| {
                    last.items.last() == at.checked_sub(1).as_ref() && last.stretch == stretch
                });
                let trails = own.is_none()
                    && !follows
                    && touches
                    && names.last().is_some_and(|last| last.noun.is_some());
                let goes_on = open && names.last().is_some_and(|last| last.noun.is_none());
                if !trails && !goes_on {
                    names.push(Name { with: with.take(), stretch, ..Name::default() });
                }
                if let Some(last) = names.last_mut() {
                    add(&mut last.words, words.split(' '));
                    last.items.push(at);
                    last.noun = last.noun.or(own);
                }
                open = true;
            }
            _ => {}
        }
    }
    names
}

/// Each word once: a name does not grow with the line.
fn add(words: &mut Vec<&'static str>, more: impl Iterator<Item = &'static str>) {
    for word in more {
        if !words.contains(&word) {
            words.push(word);
        }
    }
}

/// Whether a thread with its length stands in the line: `M16 x 60` is a bolt, whatever nut is named.
fn has_bolt(line: &Line) -> bool {
    line.items.windows(2).any(|pair| match pair {
        [one, other] => {
            matches!((&one.what, &other.what), (What::Thread(_), What::Length(_)))
                && one.matched == other.matched
        }
        _ => false,
    })
}

/// Whether a steel of bolts stands in the line.
fn has_bolt_steel(line: &Line) -> bool {
    line.items.iter().any(|item| match &item.what {
        What::Steel(SteelWord::Grade(grade)) => !grade.is_nut() && !grade.is_washer(),
        _ => false,
    })
}

/// The name that the line is about: a bolt before a nut or a washer; a name with more than its noun first.
fn main_of(names: &[Name]) -> Option<usize> {
    let find = |is: &dyn Fn(&Name) -> bool| names.iter().position(is);
    let says_more =
        |name: &Name| !(name.words.len() == 1 && name.words.iter().all(|word| BARE.contains(word)));
    // `nuts … heavy hex`: such words may belong to a nut or washer that is named.
    let joins_other = |loose: &Name| {
        names.iter().any(|name| {
            let mut words = name.words.clone();
            add(&mut words, loose.words.iter().copied());
            matches!(name.noun, Some(Family::Nut | Family::Washer))
                && name.with != Some(true)
                // The mark HV is that of a bolt by itself.
                && !loose.words.contains(&"HV")
                && kind_of(&words).is_some()
        })
    };
    let loose_part =
        |name: &Name| name.noun.is_none() && kind_of(&name.words).is_some() && !joins_other(name);
    let unknown = |name: &Name| name.noun.is_none() && name.words.contains(&"?") && name.with.is_none();
    find(&|name| name.noun == Some(Family::Bolt) && says_more(name))
        .or_else(|| find(&|name| name.noun == Some(Family::Bolt)))
        .or_else(|| find(&loose_part))
        .or_else(|| find(&|name| name.noun.is_some() && name.with != Some(true) && says_more(name)))
        .or_else(|| find(&|name| name.noun.is_some() && name.with != Some(true)))
        .or_else(|| find(&unknown))
}

/// Words without a noun belong to the part that the line is about, if there is a part of that name.
fn join_loose(line: &mut Line, names: &mut [Name], main: usize) {
    for at in 0..names.len() {
        let Some(loose) = names.get(at).filter(|name| at != main && name.noun.is_none()).cloned() else {
            continue;
        };
        let Some(about) = names.get_mut(main) else { return };
        let mut words = about.words.clone();
        add(&mut words, loose.words.iter().copied());
        let is_soft = loose.words.iter().all(|word| SOFT.contains(word) || *word == "?" || *word == "head");
        let joins = kind_of(&words).is_some();
        if joins || !is_soft {
            about.words = words;
            about.items.extend(&loose.items);
        } else {
            loose.items.iter().for_each(|at| line.not(*at, ""));
        }
        if let Some(name) = names.get_mut(at) {
            name.items.clear();
        }
    }
}

/// A nut or washer that comes with the part.
fn mate(line: &mut Line, scopes: &mut Scopes, name: &Name, family: Family) {
    let (field, kinds, items): (_, &[&str], _) = match family {
        Family::Nut => ("nut", &["hex-nut", "heavy-hex-nut", "?nut"], &mut scopes.nut),
        _ => ("washer", &["washer", "?washer"], &mut scopes.washer),
    };
    let key = kind_of(&name.words);
    if key.is_some_and(|key| kinds.contains(&key)) {
        items.extend(&name.items);
        match family {
            Family::Nut => scopes.with.0 = true,
            _ => scopes.with.1 = true,
        }
        name.items.iter().for_each(|at| line.used(*at, field));
    } else {
        let why = if key.is_some() {
            "it is judged as a line of its own, not as what comes with a bolt"
        } else {
            UNKNOWN
        };
        name.items.iter().for_each(|at| line.not(*at, why));
    }
}

/// A second name of a part.
fn other(line: &mut Line, name: &Name, about: Option<&Name>) {
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
    } else if about.is_some() {
        "one line is about one part: write it as a line of its own"
    } else {
        UNKNOWN
    };
    for at in &name.items {
        if let Some(item) = line.item(*at) {
            if same { item.used("part") } else { item.not(why) }
        }
    }
}

/// The key of the kind of that name.
fn kind_of(words: &[&'static str]) -> Option<&'static str> {
    let fits = |needed: &str, may: &str, words: &[&str]| {
        needed.split(' ').all(|word| words.contains(&word))
            && words.iter().all(|word| needed.split(' ').chain(may.split(' ')).any(|own| own == *word))
    };
    let best = |words: &[&str]| {
        let rows = KINDS.iter().filter(|(_, needed, may)| fits(needed, may, words));
        rows.max_by_key(|(_, needed, _)| needed.split(' ').count()).map(|(key, ..)| *key)
    };
    best(words)
}

/// The name in the field, if a part known here has it.
fn name_part(line: &mut Line, scopes: &mut Scopes, about: &Name) {
    let mut key = kind_of(&about.words);
    let mut left = Vec::new();
    if key.is_none() && about.noun.is_some() {
        let hard: Vec<&'static str> =
            about.words.iter().copied().filter(|word| !SOFT.contains(word)).collect();
        key = kind_of(&hard);
        left = about
            .items
            .iter()
            .copied()
            .filter(|at| matches!(line.what(*at), Some(What::Part(word)) if SOFT.contains(word)))
            .collect();
    }
    scopes.by_steel = match about.words.as_slice() {
        ["bolt"] | ["schraube"] => Some(BySteel::Bolt),
        ["nut"] => Some(BySteel::Nut),
        _ if key == Some("heavy-hex-bolt") => Some(BySteel::HeavyHex),
        _ => None,
    };
    scopes.names = about.items.iter().copied().collect();
    scopes.is_smooth = about.words.iter().any(|word| matches!(*word, "pin" | "ring"));
    scopes.is_external = about.items.iter().any(|at| {
        line.items.get(*at).is_some_and(|item| {
            let text = lower(&item.text);
            text.contains("extern") || text.contains("welle")
        })
    });
    let kind = key.and_then(Kind::from_key);
    scopes.kind = kind;
    for at in &about.items {
        let Some(item) = line.item(*at) else { continue };
        if left.contains(at) {
            item.not(if matches!(item.what, What::Part("plain")) { lexicon::BARE } else { "" });
        } else if kind.is_some() {
            item.used("part");
        } else {
            item.not(which(&about.words));
        }
    }
    if let Some(kind) = kind {
        line.draft.set("part", kind.key());
    }
}

/// Why a name is no part known here.
fn which(words: &[&str]) -> &'static str {
    match words {
        ["ring"] => "which ring: a retaining ring for a shaft or a bore, or a snap ring?",
        ["pin"] => "which pin: cotter or spring pin?",
        ["screw"] => "which screw: hex, socket head, machine, tapping …?",
        ["heavy", "hex", ..] => "a heavy hex bolt is known here only as the structural bolt of A325 or A490",
        ["cap", "screw"] => "which cap screw: hex or socket head?",
        _ => UNKNOWN,
    }
}

/// The standards of parts.
fn by_standard(line: &mut Line, scopes: &mut Scopes, about: Option<&Name>) {
    let standards = line.free(|what| match what {
        What::PartStandard(key) => Some(*key),
        _ => None,
    });
    let mut by: Option<(Kind, String)> = None;
    for (at, key) in standards {
        let kind = Kind::from_key(key);
        let text = line.items.get(at).map_or(String::new(), |item| item.text.clone());
        // What comes with a structural bolt by its own standard.
        if let Some(mate) = key.strip_prefix('?') {
            if scopes.kind == Some(Kind::StructuralBolt) {
                let with = if mate == "nut" { &mut scopes.with.0 } else { &mut scopes.with.1 };
                *with = true;
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
        let is_first = about.is_none() && scopes.kind.is_none();
        let bolt_is_named = !is_first && scopes.family == Family::Bolt;
        match kind {
            None if line
                .before(at)
                .is_some_and(|before| scopes.nut.contains(&before) || scopes.washer.contains(&before)) =>
            {
                line.not(at, "the standard of what comes with the bolt is not asked");
            }
            None => {
                // The shape is another one, whatever the words say.
                line.items
                    .iter_mut()
                    .enumerate()
                    .filter(|(place, _)| scopes.names.contains(place))
                    .for_each(|(_, item)| item.not(UNKNOWN));
                scopes.kind = None;
                line.draft = line.draft.pairs().filter(|(name, _)| *name != "part").collect();
                if let Some(item) = line.item(at) {
                    item.not(UNKNOWN);
                }
            }
            Some(_) if family != Family::Bolt && bolt_is_named => {
                let field = if family == Family::Nut { "nut" } else { "washer" };
                match (family, key) {
                    (Family::Nut, "hex-nut") => scopes.with.0 = true,
                    (Family::Washer, "washer") => scopes.with.1 = true,
                    _ => {
                        if let Some(item) = line.item(at) {
                            item.not("it is judged as a line of its own, not as what comes with a bolt");
                        }
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

/// The standards of several parts.
fn by_document(line: &mut Line, scopes: &Scopes) {
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
    let named = scopes.kind.map(Kind::key);
    let is_all = |noun: &str| about.is_some_and(|about| about.words == [noun]);
    if is_all("ring") || is_all("pin") {
        return kind.form() == if is_all("ring") { Form::Ring } else { Form::Pin };
    }
    let bare = about.is_some_and(|about| about.words.iter().all(|word| BARE.contains(word)))
        && !matches!(kind.form(), Form::Ring | Form::Pin);
    // A retaining ring without more may be for a shaft or a bore.
    let is_open = about.is_some_and(|about| about.words == ["retaining", "ring"] && !scopes.is_external);
    named == Some(kind.key())
        || is_open && kind.is_ring()
        || named.is_some_and(|named| hex.contains(&named)) && hex.contains(&kind.key())
        || named == Some("hex-bolt") && kind == Kind::StructuralBolt
        || bare && (kind.is_nut() == (scopes.family == Family::Nut))
}

/// What each item stands next to.
fn scope_items(line: &mut Line, scopes: &mut Scopes, names: &[Name], main: Option<usize>) {
    if scopes.family != Family::Bolt {
        return;
    }
    let mut name_of = vec![None; line.items.len()];
    for (place, name) in names.iter().enumerate() {
        for at in &name.items {
            if let Some(of) = name_of.get_mut(*at) {
                *of = Some(place);
            }
        }
    }
    let of_item = |at: usize| name_of.get(at).copied().flatten();
    let main_stretches: Vec<usize> =
        main.and_then(|main| names.get(main)).into_iter().map(|name| name.stretch).collect();
    let mut start = 0;
    while start < line.items.len() {
        // From one `with` or comma to the next.
        let stretch = line.items.get(start).map_or(0, |item| item.stretch);
        let is_end = |at: usize| {
            line.items
                .get(at)
                .is_none_or(|item| item.stretch != stretch || matches!(item.what, What::With(_)))
        };
        let mut end = start + 1;
        while !is_end(end) {
            end += 1;
        }
        let marked = matches!(line.what(start), Some(What::With(_)));
        let family = (start..end).find_map(|at| match line.what(at)? {
            What::Part(_) => {
                of_item(at).filter(|name| Some(*name) != main).and_then(|name| names.get(name)?.noun)
            }
            What::Steel(SteelWord::Grade(grade)) if marked && grade.is_nut() => Some(Family::Nut),
            What::Steel(SteelWord::Grade(grade)) if marked && grade.is_washer() => Some(Family::Washer),
            What::PartStandard(key) if marked && *key == "hex-nut" => Some(Family::Nut),
            What::PartStandard(key) if marked && *key == "washer" => Some(Family::Washer),
            _ => None,
        });
        let holds_main = (start..end).any(|at| scopes.names.contains(&at));
        let alone = !main_stretches.contains(&stretch) && main.is_some();
        let scope = match family {
            Some(Family::Nut) if (marked || alone) && !holds_main => Scope::Nut,
            Some(Family::Washer) if (marked || alone) && !holds_main => Scope::Washer,
            _ => Scope::Part,
        };
        scopes.of.iter_mut().take(end).skip(start).for_each(|of| *of = scope);
        start = end;
    }
    // A class or a number next to the nut's name is the nut's.
    for (items, scope) in [(&scopes.nut, Scope::Nut), (&scopes.washer, Scope::Washer)] {
        for at in items {
            for beside in [line.before(*at), line.behind(*at)].into_iter().flatten() {
                let takes = matches!(
                    line.what(beside),
                    Some(What::Class(_) | What::Bare(_) | What::Small(_) | What::Hardness(..))
                );
                if let Some(of) = scopes.of.get_mut(beside).filter(|_| takes) {
                    *of = scope;
                }
            }
        }
    }
}

/// A twist-off bolt has the grade of its own that is of the strength of A325 or A490.
fn twist_off(line: &mut Line, steel: &str) {
    line.note("part", TWIST_OFF);
    let own = match steel {
        "a325" | "a325m" => Grade::F1852,
        "a490" | "a490m" => Grade::F2280,
        _ => return,
    };
    line.draft.set("steel", own.key());
    line.note("steel", "the twist-off bolt of that strength");
    for item in &mut line.items {
        if item.what == What::Steel(SteelWord::Grade(own)) {
            item.became = None;
            item.used("steel");
        }
    }
}

/// A set screw of a bolt's class: the hexagon screw that is threaded to the head, or a headless one, whose
/// classes are others (ISO 898-5).
fn set_screw_of_a_bolt(line: &mut Line, scopes: &Scopes, steel: &str) -> bool {
    let is_class =
        steel.contains('.') && steel.trim_end_matches('u').bytes().all(|c| c.is_ascii_digit() || c == b'.');
    let is_headless =
        scopes.names.iter().any(|at| {
            line.items.get(*at).is_some_and(|item| {
                let text = lower(&item.text);
                ["socket", "sss", "grub", "stift", "maden", "headless", "iso 40", "din 91"]
                    .iter()
                    .any(|word| text.contains(word))
            })
        }) || line.items.iter().any(|item| matches!(item.what, What::PartStandard("set-screw")));
    if !is_class {
        return false;
    }
    if !is_headless {
        let why = format!(
            "a set screw of class {steel}: the hexagon one (ISO 4017, threaded to the head), or a headless one of 14H to 45H?"
        );
        scopes.names.iter().for_each(|at| line.not(*at, why.clone()));
        line.draft = line.draft.pairs().filter(|(name, _)| *name != "part").collect();
    }
    true
}

/// What a size with its length and a bolt's grade most often is, where the line names no part; said in sight.
pub(super) fn by_default(line: &mut Line, scopes: &Scopes) {
    let says = |name: &str| line.draft.get(name).is_some_and(|text| !text.is_empty());
    let of_bolt = line
        .draft
        .get("steel")
        .and_then(Grade::of_key)
        .is_some_and(|grade| !grade.is_nut() && !grade.is_washer() && !grade.is_spring());
    if scopes.by_steel != Some(BySteel::Nothing)
        || says("part")
        || !(says("thread") && says("length") && of_bolt)
    {
        return;
    }
    line.draft.set("part", Kind::HexBolt.key());
    line.note("part", "taken as a hex bolt: the line names no part");
    for at in 0..line.items.len() {
        if let Some(item) =
            line.item(at).filter(|item| matches!(item.what, What::Part("hex" | "head" | "hex head")))
        {
            item.became = None;
            item.used("part");
        }
    }
}

/// The steel of a screw that is hardened on its surface, where the line says no other.
pub(super) fn case_hardened(line: &mut Line) {
    let kind = line.draft.get("part").and_then(Kind::from_key);
    let is_usual = kind.is_some_and(|kind| kind.usual_steel() == UsualSteel::CaseHardened);
    if is_usual
        && line.draft.get("steel").is_none()
        && line.items.iter().all(|item| !matches!(item.what, What::Steel(_)))
    {
        line.draft.set("steel", Grade::Iso2702.key());
        line.note("steel", "case-hardened, as such screws usually are: the line says no steel");
    }
}

/// What only the steel says of the part.
pub(super) fn by_steel(line: &mut Line, scopes: &Scopes) {
    let steel = line.draft.get("steel").unwrap_or_default().to_owned();
    let is_structural = ["a325", "a490"].iter().any(|grade| steel.starts_with(grade));
    if scopes.kind == Some(Kind::Other) {
        twist_off(line, &steel);
        return;
    }
    if scopes.kind == Some(Kind::SetScrew) && set_screw_of_a_bolt(line, scopes, &steel) {
        return;
    }
    let of_one_kind = || {
        let row = OF_ONE_KIND.iter().find(|(grade, _)| steel.starts_with(grade));
        row.map(|(grade, key)| {
            let note = if *grade == "a193-b7" {
                "taken as a stud: the line names no part, and this steel is that of studs"
            } else {
                "this steel is made for no other part"
            };
            (*key, note)
        })
    };
    let (key, note) = match scopes.by_steel {
        Some(BySteel::Bolt | BySteel::HeavyHex | BySteel::Nothing)
            if matches!(steel.as_str(), "f1852" | "f2280") =>
        {
            ("other", TWIST_OFF)
        }
        Some(BySteel::Bolt) if is_structural => {
            ("structural-bolt", "bolts of this steel are heavy hex structural bolts")
        }
        Some(BySteel::Bolt) => ("hex-bolt", "a bolt without more is taken for a hex bolt"),
        Some(BySteel::HeavyHex) if is_structural => {
            ("structural-bolt", "heavy hex bolts of this steel are structural bolts")
        }
        Some(BySteel::Nut) if is_heavy(&steel) => ("heavy-hex-nut", "nuts of this steel are heavy hex nuts"),
        Some(BySteel::Nothing) => match of_one_kind() {
            Some(found) => found,
            None => return,
        },
        _ => return,
    };
    line.draft.set("part", key);
    line.note("part", note);
    for at in &scopes.names {
        if let Some(item) = line.item(*at) {
            item.became = None;
            item.used("part");
        }
    }
}
