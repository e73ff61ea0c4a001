//! Which part the line is about, and which nuts and washers come with it.

use std::collections::HashSet;

mod another;
mod concluded;
mod implied;
mod mate;
mod meant_for;
mod name;
mod scope;
mod standard;

use super::items::{Item, Line};
use super::lexicon;
use super::what::{SteelWord, What};
use super::{Became, left_out, second};
use crate::part::Kind;
use crate::quantity::letters::lower;
use crate::steel::Grade;
use another::{another, is_thing};
use implied::{has_bolt, has_bolt_steel, implied, is_heavy, only_hex};
use mate::{AS_ITS_OWN, WASHERS_OF_A_SET, is_unknown_mate, mate, other};
use meant_for::meant_for;
use name::{Name, SOFT, is_its_pin, join_loose, kind_of, main_of, names};
use scope::scope_items;
use standard::{by_document, by_standard, loose_words};

pub(super) use concluded::{A_BOLT, NO_PART, by_default, by_steel, spring_washer, usual_steel};

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
    /// Which kind of washer, where it is not the usual one.
    pub washer_kind: Option<Kind>,
    /// For each item, what stands next to it.
    pub of: Vec<Scope>,
    /// Whether a nut, or a washer, comes with the part.
    pub with: (bool, bool),
    /// Whether the name, known or not, is of a pin or a ring, which have no thread.
    pub is_smooth: bool,
    /// The system of a preloaded assembly (EN 14399) in the name: `HV`, `HR`.
    pub system: Option<&'static str>,
    /// Whether the name of a ring says that it is for a shaft.
    pub is_external: bool,
    /// Whether the name is a bare `bolt`, or a heavy hex bolt: the steel says which.
    pub by_steel: Option<BySteel>,
}

impl Scopes {
    /// Whether the item at a place is of the nut that comes with the part.
    pub fn is_of_nut(&self, line: &Line, at: usize) -> bool {
        let is_grade = matches!(line.what(at), Some(What::Steel(SteelWord::Grade(grade))) if grade.is_nut());
        self.nut.contains(&at) || self.family == Family::Bolt && is_grade
    }

    /// Whether the item at a place is of the washer that comes with the part.
    pub fn is_of_washer(&self, line: &Line, at: usize) -> bool {
        let is_grade =
            matches!(line.what(at), Some(What::Steel(SteelWord::Grade(grade))) if grade.is_washer());
        self.washer.contains(&at) || self.family == Family::Bolt && is_grade
    }

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

impl Family {
    /// Whether a grade can be of such a part, as far as nuts and washers have grades of their own.
    pub fn has(self, grade: Grade) -> bool {
        match self {
            Self::Bolt => true,
            Self::Nut => grade.is_nut(),
            Self::Washer => grade.is_washer(),
        }
    }
}

/// A name that a steel makes definite.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum BySteel {
    /// A bolt without more: of A325 and A490 it is the structural one.
    Bolt,
    /// A hexagon bolt that is called structural: it is one of A325 and A490.
    StructuralHex,
    /// A heavy hex bolt: of A325 and A490 the structural one.
    HeavyHex,
    /// A cap screw without more: of an SAE grade the hexagon one, of A574 the socket one.
    CapScrew,
    /// A nut without more: of A194 and A563 DH it is a heavy hex nut.
    Nut,
    /// No name: some steels are those of one kind of part.
    Nothing,
}

const UNKNOWN: &str =
    "no part known here has this name: as another part its steel and its coat are judged, its fit is not";

/// The part and what comes with it.
pub(super) fn settle(line: &mut Line) -> Scopes {
    // `bout met moer en ring`: in Dutch a washer is a ring.
    if is_dutch(line) {
        let is_ring = |item: &&mut Item| matches!(lower(&item.text).as_str(), "ring" | "ringen");
        line.items.iter_mut().filter(is_ring).for_each(|item| item.what = What::Part("washer"));
    }
    let mut names = names(line);
    // `with 2 heavy hex`: nuts.
    for name in &mut names {
        let is_hex = name.words.iter().all(|word| matches!(*word, "heavy" | "hex"));
        if name.noun.is_none() && name.with == Some(true) && is_hex {
            name.noun = Some(Family::Nut);
            name.words.push("nut");
        }
    }
    let mut scopes = Scopes { of: vec![Scope::Part; line.items.len()], ..Scopes::default() };
    // Beside nuts or washers that come with a bolt, others may be named that are not known here.
    let is_beside = names.iter().any(|name| name.with == Some(true)) && has_bolt(&line.items);
    let is_implied = implied(line, &mut scopes, &names);
    let main = main_of(&names).filter(|_| !is_implied).filter(|main| {
        let has_nut = names.iter().any(|name| name.noun == Some(Family::Nut));
        let is_other_mate = names.get(*main).is_some_and(|name| is_beside && is_unknown_mate(line, name));
        let is_mate = is_other_mate
            || names.get(*main).is_some_and(|name| match name.noun {
                // A coupling nut has a length of its own, as a bolt has.
                Some(Family::Nut) => !name.words.contains(&"coupling"),
                Some(Family::Washer) => has_nut || is_beside || has_bolt_steel(line),
                _ => false,
            });
        !(is_mate && has_bolt(&line.items))
    });
    let meant = meant_for(line, &names).filter(|_| !is_implied);
    // What stands behind the word that says for what is none of the part's name.
    let behind =
        meant.and_then(|(_, place)| names.iter().position(|name| name.items.iter().all(|at| *at > place)));
    let (main, meant_for) = match meant {
        Some((about, place)) => (Some(about), place),
        None => (main, usize::MAX),
    };
    let end = behind.unwrap_or(names.len());
    if let Some((main, own)) = main.zip(names.get_mut(..end)) {
        join_loose(line, own, main);
    }
    let about = main.and_then(|main| names.get(main)).cloned();
    if !is_implied {
        scopes.family = about.as_ref().and_then(|name| name.noun).unwrap_or_default();
    }
    for (at, name) in names.iter().enumerate() {
        if Some(at) == main || name.items.is_empty() || is_implied {
            continue;
        }
        if name.items.iter().all(|at| *at > meant_for) {
            name.items.iter().for_each(|at| line.not(*at, meant_for::WHY));
            continue;
        }
        match name.noun {
            Some(family @ (Family::Nut | Family::Washer)) if scopes.family == Family::Bolt => {
                mate(line, &mut scopes, name, family);
            }
            _ => other(line, name, about.as_ref(), is_its_pin(&names, at)),
        }
    }
    for at in meant_for.min(line.items.len())..line.items.len() {
        let is_of_bolt = |grade: &Grade| !grade.is_nut() && !grade.is_washer();
        if matches!(line.what(at), Some(What::Steel(SteelWord::Grade(grade))) if is_of_bolt(grade)) {
            line.not(at, meant_for::WHY);
        }
    }
    if let Some(about) = &about {
        name_part(line, &mut scopes, about);
    }
    by_standard(line, &mut scopes, about.as_ref(), &names);
    by_document(line, &scopes);
    loose_words(line, &scopes);
    if scopes.kind == Some(Kind::DoubleEndStud) {
        line.note("part", "the tapped hole of its other end needs its room for the coat too");
    }
    // A second washer to the bolt is a name as well, and none of the part.
    let of_mates: HashSet<usize> = names
        .iter()
        .filter(|name| {
            let is_known =
                matches!(name.noun, Some(Family::Nut | Family::Washer)) && kind_of(&name.words).is_some();
            // `A325 3/4 x 2 with DTIs`: what comes with a bolt is not its name.
            let comes_with = name.with == Some(true)
                && name.items.iter().all(|at| {
                    line.items
                        .get(*at)
                        .is_some_and(|item| lexicon::COMES_WITH.contains(&lower(&item.text).as_str()))
                });
            // `with cap nut`: whichever it is.
            let is_mate = name.with == Some(true) && matches!(name.noun, Some(Family::Nut | Family::Washer));
            is_known || is_mate || comes_with || is_beside && is_unknown_mate(line, name)
        })
        .chain((0..names.len()).filter(|at| is_its_pin(&names, *at)).filter_map(|at| names.get(at)))
        .flat_map(|name| name.items.iter().copied())
        .collect();
    let is_named = line.items.iter().enumerate().any(|(at, item)| {
        // `ohne Mutter` names no part.
        let is_left_out = left_out::is_gone(&item.became)
            || left_out::is_open(&item.became)
            || item.became == Some(Became::NotUsed(second::WHY.into()));
        // `with DIN 985`.
        let is_mate = matches!(item.what, What::PartStandard(_))
            && item.became == Some(Became::NotUsed(AS_ITS_OWN.into()));
        let is_name = !of_mates.contains(&at)
            && !is_left_out
            && !is_mate
            && matches!(item.what, What::Part(_) | What::PartStandard(_) | What::PartDocument(_))
            && !matches!(item.what, What::Part("plain" | "sae" | "flat" | "full-thread" | "part-thread"));
        is_name && !matches!(&item.became, Some(Became::Used(fields, _)) if !fields.contains(&"part"))
    });
    if about.is_none() && (!is_named || only_hex(&names)) && scopes.kind.is_none() {
        scopes.by_steel = Some(BySteel::Nothing);
    }
    scope_items(line, &mut scopes, &names, main);
    scopes
}

/// Whether a bolt or a nut has its Dutch name.
fn is_dutch(line: &Line) -> bool {
    line.items.iter().any(|item| {
        let is_name = matches!(item.what, What::Part(_));
        is_name && lexicon::DUTCH_NAMES.iter().any(|name| lower(&item.text).contains(name))
    })
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
    let said: Vec<&str> =
        about.words.iter().copied().filter(|word| !matches!(*word, "plain" | "heavy")).collect();
    scopes.by_steel = match said.as_slice() {
        ["bolt"] | ["schraube"] => Some(BySteel::Bolt),
        ["nut"] => Some(BySteel::Nut),
        ["cap", "screw"] => Some(BySteel::CapScrew),
        _ if key == Some("heavy-hex-bolt") => Some(BySteel::HeavyHex),
        _ if key == Some("hex-bolt") && said.contains(&"structural") => Some(BySteel::StructuralHex),
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
    // The nuts of preloaded assemblies are those of the wide series.
    let kind = match key {
        Some("?nut") => Some(Kind::HeavyHexNut),
        key => key.and_then(Kind::from_key),
    };
    scopes.system = about.words.iter().copied().find(|word| kind.is_some() && matches!(*word, "HV" | "HR"));
    scopes.kind = kind;
    if kind.is_some_and(Kind::is_nut) {
        scopes.family = Family::Nut;
    }
    if about.words.contains(&"machine") && key == Some("hex-bolt") && !about.words.contains(&"hex") {
        line.note("part", "a machine bolt is taken with a hex head; a square one has another area");
    }
    let is_shortened = || {
        about
            .items
            .iter()
            .any(|at| line.items.get(*at).is_some_and(|item| lower(&item.text).starts_with("mech")))
    };
    if key == Some("machine-screw") && is_shortened() {
        line.note(
            "part",
            "“mech” in front of a screw is taken for machine: write mechanically plated for the coat",
        );
    }
    let is_of_f1554 = || {
        line.items.iter().any(|item| match &item.what {
            What::Steel(SteelWord::Grade(grade)) => grade.key().starts_with("f1554"),
            What::Steel(SteelWord::Half(document)) => document == "f1554",
            _ => false,
        })
    };
    let has_length = || line.items.iter().any(|item| matches!(item.what, What::Length(_)) && item.is_free());
    if about.words == ["anchor"] && (is_of_f1554() || has_length()) {
        scopes.kind = Some(Kind::AnchorRod);
        line.draft.set("part", Kind::AnchorRod.key());
        if !is_of_f1554() {
            line.note("part", "an anchor without more is taken for a straight rod");
        }
        about.items.iter().for_each(|at| line.used(*at, "part"));
        return;
    }
    if let Some(kind) = kind.filter(|kind| kind.is_ring()) {
        ring_in_or_out(line, scopes, kind);
    }
    let why = which(&about.words);
    let is_thing = about.noun.is_some()
        || about.items.iter().any(|at| line.items.get(*at).is_some_and(|item| is_thing(&item.text)));
    let is_other = kind.is_none() && why == UNKNOWN && scopes.by_steel.is_none() && is_thing;
    if is_other {
        another(line, scopes, about);
        return;
    }
    for at in &about.items {
        let Some(item) = line.item(*at) else { continue };
        if left.contains(at) {
            item.not(if matches!(item.what, What::Part("plain")) { lexicon::BARE } else { "" });
        } else if kind.is_some() {
            item.used("part");
        } else {
            item.not(why);
        }
    }
    if let Some(kind) = scopes.kind.or(kind) {
        line.draft.set("part", kind.key());
    }
}

/// `Seegerring 25 außen`: a ring for a shaft or a bore, and no place.
fn ring_in_or_out(line: &mut Line, scopes: &mut Scopes, kind: Kind) {
    for at in 0..line.items.len() {
        let text = line.items.get(at).map_or(String::new(), |item| lower(&item.text));
        let is_inside = matches!(text.as_str(), "innen" | "inside" | "interior");
        let is_outside = matches!(text.as_str(), "außen" | "aussen" | "outside" | "exterior");
        if !(is_inside || is_outside) || !matches!(line.what(at), Some(What::Place(_))) {
            continue;
        }
        line.used(at, "part");
        if is_inside && kind == Kind::RetainingRing {
            scopes.kind = Some(Kind::InternalRing);
        }
        scopes.is_external |= is_outside;
    }
}

/// Why a name is no part known here.
fn which(words: &[&str]) -> &'static str {
    match words {
        ["ring"] => "which ring: a retaining ring for a shaft or a bore, or a snap ring?",
        ["pin"] => "which pin: clevis, cotter, parallel or spring pin?",
        ["screw"] => "which screw: hex, socket head, machine, tapping …?",
        ["cap", "screw"] => "which cap screw: hex or socket head?",
        _ => UNKNOWN,
    }
}
