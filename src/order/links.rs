//! The calculator behind a rule, filled in from the case that was judged.

use super::OrderLine;
use super::judge::bolt_class;
use crate::calculator::Link;
use crate::coat::Process;
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::rule::case::USUAL_DIP;
use crate::rule::{Case, Topic};
use crate::steel::{Properties, Steel};
use crate::thread::pair::{self, Found, Room};

/// The calculator that explains the topic of a rule, with the numbers of the case.
pub fn of(line: &OrderLine, case: &Case<'_>, topic: Topic) -> Option<Link> {
    Some(match topic {
        Topic::Hydrogen => hydrogen(line, case)?,
        Topic::Heat => tempering(line, case),
        Topic::Fit | Topic::Strength => tap(line, case)?,
        Topic::Load if case.process == Process::HotDip => kettle(line, case),
        Topic::Load if case.process == Process::Mechanical => powder(line, case),
        Topic::Load | Topic::Class => coat(case)?,
        Topic::Life => life(line, case)?,
    })
}

/// How the coat goes into the nut, tapped as the order line was answered.
fn tap(line: &OrderLine, case: &Case<'_>) -> Option<Link> {
    let offer = case.offer?;
    let room = match case.fit? {
        Found::Takes(mated) | Found::Binds(mated) => mated.pair.room,
        Found::NotPublished(needed, _) => Room::Smaller(*needed),
        Found::Unknown(_) => Room::Ordered,
    };
    let class = match room {
        Room::Bolt(position) => crate::thread::ToleranceClass::bolt(6, position),
        _ => bolt_class(line),
    };
    // What the two halves carry together is what shares the room.
    let shared = pair::coat(case.process, offer.min, offer.max);
    let mut pairs = vec![
        ("thread", line.thread.to_string()),
        ("bolt_class", class.to_string()),
        ("coat_least", um(shared.min)),
        ("coat_greatest", um(shared.max)),
        ("spread", Shown::percent(shared.unevenness, 0).to_string()),
    ];
    let own = |by: Length| vec![("allowance", "own".to_owned()), ("own_allowance", mm(by))];
    pairs.extend(match room {
        Room::Ordered | Room::Bolt(_) => vec![("allowance", "standard".to_owned())],
        Room::NutG => own(case.mated()?.fit.nut.deviation.value),
        Room::Tapped(allowance) => allowance_pairs(allowance),
        // The same room, made in the nut instead of on the bolt.
        Room::Smaller(by) => own(by),
    });
    Some(Link { calculator: "oversize-tap", pairs })
}

fn allowance_pairs(allowance: crate::thread::overtap::Allowance) -> Vec<(&'static str, String)> {
    use crate::thread::overtap::Allowance;
    let key = match allowance {
        Allowance::Az => "az",
        Allowance::Ax => "ax",
        Allowance::A563 => "a563",
        Allowance::A563M => "a563m",
        Allowance::Standard => "standard",
        Allowance::Own(by) => return vec![("allowance", "own".to_owned()), ("own_allowance", mm(by))],
    };
    vec![("allowance", key.to_owned())]
}

/// Hydrogen, rule by rule, for the process whose reason it is.
fn hydrogen(line: &OrderLine, case: &Case<'_>) -> Option<Link> {
    let state = case.steel?.state;
    let mut pairs = match state.steel {
        Steel::Grade(properties) => grade(line, properties),
        Steel::Hardness(hardness) => {
            vec![("known", "hardness".to_owned()), ("hardness", hardness.show(1).to_string())]
        }
        Steel::Tensile(tensile) => {
            vec![("known", "tensile".to_owned()), ("tensile", tensile.show(&unit::MPA, 0).to_string())]
        }
    };
    pairs.push(("case", yes(state.case_hardened)));
    pairs.push(("cold", yes(state.cold_worked)));
    pairs.push(("process", case.process.key().to_owned()));
    Some(Link { calculator: "hydrogen", pairs })
}

/// The heat of the bath against the temper.
fn tempering(line: &OrderLine, case: &Case<'_>) -> Link {
    // A hardness or a strength says nothing of a temper: then only the actual one can be judged.
    let mut pairs = match case.steel.map(|steel| steel.state.steel) {
        Some(Steel::Grade(properties)) => grade(line, properties),
        _ => vec![("known", "temper".to_owned())],
    };
    if let Some(temper) = line.temper {
        pairs.push(("temper", temper.show(&unit::CELSIUS, 0).to_string()));
    }
    pairs.push(("bath", line.bath.show(&unit::CELSIUS, 1).to_string()));
    pairs.push(("dip", USUAL_DIP.show(&unit::MINUTE, 0).to_string()));
    Link { calculator: "tempering", pairs }
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

/// The coat on offer, with the classes it meets.
fn coat(case: &Case<'_>) -> Option<Link> {
    let offer = case.offer?;
    let pairs = vec![("coat", um(offer.min)), ("factor", offer.factor().key.to_owned())];
    Some(Link { calculator: "coat", pairs })
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

fn mm(length: Length) -> String {
    length.show(&unit::MM, 4).to_string()
}
