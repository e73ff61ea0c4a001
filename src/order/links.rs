//! The calculator behind a rule, filled in from the case that was judged.

use super::OrderLine;
use crate::calculator::{Link, behind};
use crate::coat::Process;
use crate::quantity::{Length, Quantity, unit};
use crate::rule::{Case, Topic};

/// The calculator that explains the topic of a rule, with the numbers of the case.
pub fn of(line: &OrderLine, case: &Case<'_>, topic: Topic) -> Option<Link> {
    match topic {
        Topic::Load if case.process == Process::HotDip => Some(kettle(line, case)),
        Topic::Load if case.process == Process::Mechanical => Some(powder(line, case)),
        Topic::Load => behind(case, Topic::Class),
        Topic::Life => life(line, case),
        Topic::Hydrogen | Topic::Heat | Topic::Fit | Topic::Strength | Topic::Class => behind(case, topic),
    }
}

/// The zinc and the wiping of the kettle, with the coat on offer.
fn kettle(line: &OrderLine, case: &Case<'_>) -> Link {
    let mut pairs = load(line, case);
    if let Some(offer) = case.offer {
        pairs.push(("coat", um(offer.average())));
        pairs.push(("factor", offer.factor().key.to_owned()));
    }
    Link { calculator: "kettle", pairs }
}

fn load(line: &OrderLine, case: &Case<'_>) -> Vec<(&'static str, String)> {
    let kind = case.part.map_or(line.part, |part| part.kind);
    let mut pairs = vec![
        ("load", "count".to_owned()),
        ("part", kind.key().to_owned()),
        ("thread", line.thread.to_string()),
    ];
    pairs.extend(line.quantity.map(|quantity| ("pieces", quantity.to_string())));
    pairs.extend(case.part.and_then(|part| part.length).map(|length| ("length", mm(length))));
    pairs
}

/// The charge of the barrel, with the coat on offer.
fn powder(line: &OrderLine, case: &Case<'_>) -> Link {
    let mut pairs = load(line, case);
    if let Some(offer) = case.offer {
        pairs.push(("asked", "thickness".to_owned()));
        pairs.push(("coat", um(offer.min)));
    }
    Link { calculator: "powder", pairs }
}

/// Years in the place.
fn life(line: &OrderLine, case: &Case<'_>) -> Option<Link> {
    let offer = case.offer?;
    let place = case.site?.place?;
    let mut pairs = vec![
        ("place", "category".to_owned()),
        ("category", place.key().to_owned()),
        ("thickness", um(offer.average())),
        ("least", um(offer.min)),
        ("greatest", um(offer.max)),
    ];
    if let Some(years) = line.years {
        pairs.push(("years", years.show(&unit::YEAR, 1).to_string()));
    }
    Some(Link { calculator: "life", pairs })
}

fn um(length: Length) -> String {
    length.show(&unit::UM, 1).to_string()
}

fn mm(length: Length) -> String {
    length.show(&unit::MM, 4).to_string()
}
