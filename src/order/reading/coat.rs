//! The coat that the line asks for: a process, a document, or a class.

use super::{Became, left_out};
use crate::quantity::letters::lower;
use std::cmp::Reverse;

use super::items::Line;
use super::lexicon;
use super::what::{Family, What};
use crate::order::asked::{self, Asked};
use crate::process::Process;
use crate::quantity::{Quantity, unit};
use crate::source::{self, document};
use crate::steel::Grade;
use crate::thread::Designation;

/// What a piece says of the coat.
struct Said {
    at: usize,
    key: String,
    /// What of it is not judged.
    left: Option<&'static str>,
    /// The process it may belong to, where its word is used of several.
    may_be: &'static [Process],
}

const COLOUR: &str = "the colour of the chromate is not judged";
const NO_SUCH_CODE: &str =
    "no class of this thickness is judged here, only the process; nor is the letter for its chromate";

/// The coat asked for.
pub(super) fn settle(line: &mut Line) {
    let said = said(line);
    // What says most stands first: a class, then a document, then a process, then a word used of several.
    let mut order: Vec<&Said> = said.iter().collect();
    order.sort_by_key(|said| Reverse((said.may_be.is_empty(), rank(&said.key))));
    let mut chosen: Option<&Said> = None;
    for said in order {
        let process = asked::from_key(&said.key).and_then(|asked| asked.process());
        let agrees = chosen.is_none_or(|chosen| {
            let own = asked::from_key(&chosen.key).and_then(|asked| asked.process());
            let fits = own == process || own.is_some_and(|own| said.may_be.contains(&own));
            let says_no_other = rank(&chosen.key) > rank(&said.key) || chosen.key == said.key;
            fits && (says_no_other || !said.may_be.is_empty())
        });
        let Some(item) = line.item(said.at) else { continue };
        if agrees {
            item.became = Some(Became::Used(vec!["asked"], said.left));
            chosen = chosen.or(Some(said));
        } else {
            let of = chosen.and_then(|chosen| label(&chosen.key)).unwrap_or_default();
            item.not(format!("contradicts the coat asked for: {of}"));
        }
    }
    if let Some(chosen) = chosen {
        let key = chosen.key.clone();
        line.draft.set("asked", key);
    }
    not_wanted(line);
    not_judged(line);
    thicknesses(line);
}

/// A coat that is not judged here is asked for all the same, and named; where zinc is asked for as well, that
/// is judged.
fn not_judged(line: &mut Line) {
    let is_plain = |item: &super::items::Item| {
        let left = match &item.became {
            None => true,
            Some(Became::NotUsed(why)) => why.is_empty() || why == lexicon::BARE,
            Some(_) => false,
        };
        left && item.what == What::Part("plain")
    };
    let mut named: Vec<(usize, &'static str)> = line
        .items
        .iter()
        .enumerate()
        .filter_map(|(at, item)| match item.what {
            What::Other(key) if item.is_free() => Some((at, key)),
            _ => is_plain(item).then_some((at, "bare")),
        })
        .collect();
    // `black phos` is a coat, and its colour.
    named.sort_by_key(|(_, key)| *key == "bare");
    for (at, key) in named {
        let why = if key == "bare" { lexicon::BARE } else { lexicon::OTHER_COAT };
        if line.draft.get("asked").is_none_or(|asked| asked == key) {
            line.draft.set("asked", key);
            if let Some(item) = line.item(at) {
                item.became = Some(Became::Used(vec!["asked"], Some(why)));
            }
        } else {
            line.not(at, why);
        }
    }
}

/// What is left out (`no HDG`): where nothing is asked for, any process but that one, and of two the third;
/// beside a process (`HDG, no mech galv`) that process without it.
fn not_wanted(line: &mut Line) {
    let left_out: Vec<(usize, Process)> = line
        .items
        .iter()
        .enumerate()
        .filter(|(_, item)| item.became == Some(Became::NotUsed(left_out::WHY.into())))
        .filter_map(|(at, item)| match item.what {
            // A word for zinc alone does not say which.
            What::Process(..) if matches!(lower(&item.text).as_str(), "zinc" | "zn") => None,
            What::Process(process, _) => Some((at, process)),
            What::Coat(key) => Some((at, asked::from_key(key)?.process()?)),
            _ => None,
        })
        .collect();
    let open: Vec<Process> =
        Process::ALL.into_iter().filter(|process| left_out.iter().all(|(_, of)| of != process)).collect();
    let asked = line.draft.get("asked").map(asked::from_key);
    let key = match (open.as_slice(), left_out.first()) {
        (_, None) | ([], _) => return,
        _ if asked.is_some() => match asked.flatten() {
            Some(Asked::Process(process)) if open == [process] => format!("only-{}", process.key()),
            Some(Asked::Process(process)) if open.contains(&process) => {
                let left = left_out.first().map_or("", |(_, left)| left.key());
                format!("{}-no-{left}", process.key())
            }
            _ => return,
        },
        ([only], _) => format!("only-{}", only.key()),
        (_, Some((_, process))) => format!("no-{}", process.key()),
    };
    line.draft.set("asked", key);
    for (at, _) in left_out {
        if let Some(item) = line.item(at) {
            item.became = None;
            item.used("asked");
        }
    }
}

/// A thickness asks for the thinnest class of its document that has about that much everywhere.
fn thicknesses(line: &mut Line) {
    let found = line.free(|what| match what {
        What::Thickness(thickness) => Some(*thickness),
        _ => None,
    });
    for (at, wanted) in found {
        let key = line.draft.get("asked").unwrap_or_default().to_owned();
        let (document, of_class) = match asked::from_key(&key) {
            Some(Asked::Class(keyed)) => (None, Some(keyed)),
            Some(Asked::Process(Process::Mechanical)) => (Some("b695-"), None),
            Some(Asked::Process(Process::Electroplated)) if is_iso(line) => (Some("iso4042-"), None),
            Some(Asked::Process(Process::Electroplated)) => (Some("f1941-"), None),
            Some(Asked::Document(document)) if document == &document::ASTM_B695 => (Some("b695-"), None),
            Some(Asked::Document(document)) if document == &document::ASTM_B633 => (Some("b633-"), None),
            Some(Asked::Document(document)) if document == &document::ASTM_F1941 => (Some("f1941-"), None),
            Some(Asked::Document(document)) if document == &document::ISO_4042_1999 => {
                (Some("iso4042-"), None)
            }
            Some(_) => {
                line.not(at, "hot-dip has one class for a size; agree another thickness with the galvanizer");
                continue;
            }
            None => {
                line.not(at, "of which coat? Write hot-dip, mechanical or electroplated beside it");
                continue;
            }
        };
        let has = |keyed: &asked::Keyed| {
            let min = keyed.class()?.single?.thickness;
            // Classes are named in round numbers of either unit: 50 µm stand for 2 mil.
            (min.um() >= 0.98 * wanted.um()).then_some(min)
        };
        let of_document = |document: &str| {
            let classes = asked::ALL.iter().filter(|keyed| keyed.key.starts_with(document));
            classes
                .filter_map(|keyed| Some((keyed, has(keyed)?)))
                .min_by(|(_, one), (_, other)| one.um().total_cmp(&other.um()))
        };
        let shown = wanted.show(&unit::UM, 0);
        match (document.and_then(of_document), of_class.and_then(has)) {
            (Some((keyed, _)), _) => {
                line.draft.set("asked", keyed.key);
                line.note("asked", format!("the thinnest class of about {shown} or more"));
                line.used(at, "asked");
            }
            (None, Some(_)) => line.used(at, "asked"),
            (None, None) => {
                line.not(at, format!("no class asks for {shown} there: agree it with the plater"))
            }
        }
    }
}

/// As the field shows it.
fn label(key: &str) -> Option<&'static str> {
    asked::CHOICES.iter().find(|choice| choice.key == key).map(|choice| choice.label)
}

fn rank(key: &str) -> u8 {
    match asked::from_key(key) {
        Some(Asked::Class(_)) => 2,
        Some(Asked::Document(_)) => 1,
        _ => 0,
    }
}

/// Every piece that says something of the coat; numbers of classes are those of the document in the line.
fn said(line: &mut Line) -> Vec<Said> {
    let document = |line: &Line, keys: &[&str]| {
        line.items.iter().find_map(|item| match item.what {
            What::Coat(key) if keys.contains(&key) => Some(key),
            _ => None,
        })
    };
    let plated = document(line, &["b633", "f1941", "iso4042"]);
    let exists = |key: &str| asked::ALL.iter().any(|asked| asked.key == key);
    let mut said = Vec::new();
    let found = line.free(|what| Some(what.clone()));
    for (at, what) in found {
        let colour = |tinted: bool| tinted.then_some(COLOUR);
        let (key, may_be, left): (String, &'static [Process], _) = match what {
            What::Process(process, tinted) => {
                let text = line.items.get(at).map_or("", |item| &item.text);
                (process.key().to_owned(), may_be(text), colour(tinted))
            }
            What::Coat(key) => (key.to_owned(), &[], None),
            What::Class(number) if exists(&format!("b695-{number}")) => (format!("b695-{number}"), &[], None),
            What::HighBath if is_hot_dip(line, at) => (Process::HotDip.key().to_owned(), &[], None),
            What::Zinc(um, family, tinted) => {
                let usual = match family {
                    Family::Iso4042 => "iso4042",
                    Family::B633 => "b633",
                    Family::Zn => "iso4042",
                    Family::FeZn if is_iso(line) => "iso4042",
                    Family::FeZn => "f1941",
                };
                // A code is that of its document alone.
                let plated = plated.filter(|_| family != Family::Iso4042).unwrap_or(usual);
                let other = if family == Family::Iso4042 { usual } else { "b633" };
                let keys = [plated, usual, other].map(|of| format!("{of}-{um}"));
                match keys.into_iter().find(|key| exists(key)) {
                    Some(key) => (key, &[], colour(tinted)),
                    None if family == Family::Iso4042 => (usual.to_owned(), &[], Some(NO_SUCH_CODE)),
                    None => {
                        line.not(at, format!("no class of {um} µm is known here"));
                        continue;
                    }
                }
            }
            _ => continue,
        };
        said.push(Said { at, key, left, may_be });
    }
    said
}

/// Whether words for zinc at a high temperature are of hot-dip: beside its name, or by their own.
pub(super) fn is_hot_dip(line: &Line, at: usize) -> bool {
    let names_it = |text: &str| lower(text).contains("verzink");
    line.items.get(at).is_some_and(|item| names_it(&item.text))
        || line.items.iter().any(|item| matches!(item.what, What::Process(Process::HotDip, _)))
}

/// Whether the order is one of metric parts whose steel is none of ASTM or SAE: ISO 4042 writes its coats
/// with the same letters as ASTM F1941.
fn is_iso(line: &Line) -> bool {
    let thread = line.draft.get("thread").and_then(|text| Designation::read(text).ok());
    let steel = line.draft.get("steel").and_then(Grade::of_key);
    thread.is_some_and(|written| written.thread.is_metric())
        && steel.is_none_or(|grade| grade.document().family != source::Family::Astm)
}

/// Words that people use of more than one process.
fn may_be(text: &str) -> &'static [Process] {
    match lower(text).as_str() {
        "zinc" | "zn" | "plated" | "plating" | "verzinkt" => &Process::ALL,
        "galv" | "gal" | "galvanized" | "galvanised" | "galvanizing" | "galvanising" => {
            &[Process::HotDip, Process::Mechanical]
        }
        _ => &[],
    }
}
