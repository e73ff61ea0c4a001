//! The calculator behind a reason, filled in from the order line.

use super::OrderLine;
use super::fit::{bolt_class, unevenness};
use super::offer::Offer;
use crate::calculator::Link;
use crate::coat::Process;
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::rule::case::USUAL_DIP;
use crate::steel::{Properties, Steel};
use crate::thread::overtap::Allowance;

/// How the coat goes into the nut, tapped as the order line was answered.
pub fn tap(line: &OrderLine, process: Process, offer: &Offer, allowance: Option<Allowance>) -> Link {
    let key = match allowance {
        Some(Allowance::Standard) => "standard",
        Some(Allowance::Az) => "az",
        Some(Allowance::Ax) => "ax",
        Some(Allowance::A563) => "a563",
        Some(Allowance::Own(_)) => "own",
        _ => "usual",
    };
    let mut link = Link {
        calculator: "oversize-tap",
        pairs: vec![
            ("thread", line.thread.to_string()),
            ("bolt_class", bolt_class(line).to_string()),
            ("allowance", key.to_owned()),
            ("coat_least", um(offer.min)),
            ("coat_greatest", um(offer.max)),
            ("spread", Shown::percent(unevenness(process), 0).to_string()),
        ],
    };
    if let Some(Allowance::Own(own)) = allowance {
        link.pairs.push(("own_allowance", own.show(&unit::UM, 1).to_string()));
    }
    link
}

/// Hydrogen, rule by rule, for the process whose reason it is.
pub fn hydrogen(line: &OrderLine, process: Process) -> Link {
    let mut pairs = match line.steel.map(|state| state.steel) {
        // A steel that was not said is asked for.
        None => vec![("known", "grade".to_owned()), ("grade", String::new())],
        Some(Steel::Grade(properties)) => grade(line, properties),
        Some(Steel::Hardness(hardness)) => {
            vec![("known", "hardness".to_owned()), ("hardness", hardness.show(1).to_string())]
        }
        Some(Steel::Tensile(tensile)) => {
            vec![("known", "tensile".to_owned()), ("tensile", tensile.show(&unit::MPA, 0).to_string())]
        }
    };
    pairs.push(("case", yes(line.steel.is_some_and(|state| state.case_hardened))));
    pairs.push(("cold", yes(line.steel.is_some_and(|state| state.cold_worked))));
    pairs.push(("process", process.key().to_owned()));
    Link { calculator: "hydrogen", pairs }
}

/// The heat of the bath against the temper.
pub fn tempering(line: &OrderLine) -> Link {
    // A hardness or a strength says nothing of a temper: then only the actual one can be judged.
    let mut pairs = match line.steel.map(|state| state.steel) {
        Some(Steel::Grade(properties)) => grade(line, properties),
        Some(Steel::Hardness(_) | Steel::Tensile(_)) | None => vec![("known", "temper".to_owned())],
    };
    if let Some(temper) = line.temper {
        pairs.push(("temper", temper.show(&unit::CELSIUS, 0).to_string()));
    }
    pairs.push(("bath", line.bath.show(&unit::CELSIUS, 1).to_string()));
    pairs.push(("dip", USUAL_DIP.show(&unit::MINUTE, 0).to_string()));
    Link { calculator: "tempering", pairs }
}

/// The zinc and the wiping of the kettle, with the coat on offer.
pub fn kettle(line: &OrderLine, offer: Option<&Offer>) -> Link {
    let mut pairs = load(line);
    if let Some(offer) = offer {
        pairs.push(("coat", um(offer.average())));
        pairs.push(("factor", offer.factor().key.to_owned()));
    }
    Link { calculator: "kettle", pairs }
}

/// The coat on offer, with the classes it meets.
pub fn coat(offer: &Offer) -> Link {
    let pairs = vec![("coat", um(offer.min)), ("factor", offer.factor().key.to_owned())];
    Link { calculator: "coat", pairs }
}

fn load(line: &OrderLine) -> Vec<(&'static str, String)> {
    let mut pairs = vec![
        ("load", "count".to_owned()),
        ("part", line.part.key().to_owned()),
        ("thread", line.thread.to_string()),
        // What was not said is asked for.
        ("pieces", line.quantity.map(|pieces| pieces.to_string()).unwrap_or_default()),
    ];
    if line.part.has_length() {
        let length = line.length.map(|length| length.show(&unit::MM, 3).to_string());
        pairs.push(("length", length.unwrap_or_default()));
    }
    pairs
}

/// The charge of the barrel, with the coat on offer.
pub fn powder(line: &OrderLine, offer: Option<&Offer>) -> Link {
    let mut pairs = load(line);
    if let Some(offer) = offer {
        pairs.push(("asked", "thickness".to_owned()));
        pairs.push(("coat", um(offer.min)));
    }
    Link { calculator: "powder", pairs }
}

/// Years in the place.
pub fn life(line: &OrderLine, offer: &Offer) -> Link {
    let mut pairs = vec![
        ("place", "category".to_owned()),
        ("category", line.place.map(|place| place.key().to_owned()).unwrap_or_default()),
        ("thickness", um(offer.average())),
        ("least", um(offer.min)),
        ("greatest", um(offer.max)),
    ];
    if let Some(years) = line.years {
        pairs.push(("years", years.show(&unit::YEAR, 1).to_string()));
    }
    Link { calculator: "life", pairs }
}

fn grade(line: &OrderLine, properties: Properties) -> Vec<(&'static str, String)> {
    vec![
        ("known", "grade".to_owned()),
        ("grade", properties.grade.key().to_owned()),
        ("diameter", line.thread.diameter().show(&unit::MM, 3).to_string()),
    ]
}

fn um(length: Length) -> String {
    length.show(&unit::UM, 1).to_string()
}

fn yes(yes: bool) -> String {
    if yes { "yes" } else { "no" }.to_owned()
}
