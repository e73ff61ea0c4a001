//! What is said of the pair that takes the coat: at the worst corner by the rules of the fit, which the order
//! reads as well; by ISO 4042 and by a quarter of the allowance, by those themselves.

use super::super::{Input, Method, Outcome};
use super::rule_source;
use crate::calculator::thread_fields::{Ruler, thickness};
use crate::calculator::{Finding, Mark};
use crate::process::Process;
use crate::quantity::Length;
use crate::rule::{self, Case, Part, Topic};
use crate::thread::class::BoltPosition;
use crate::thread::coat_room::{Coated, NutChoice, Pair};
use crate::thread::fit::{self, Assembly};
use crate::thread::overtap::{self, Allowance};
use crate::thread::pair::{self, Found, Mated, Room};
use crate::thread::{Thread, ToleranceClass, limits};

/// What is said at the head, and the findings.
pub(super) fn all(input: &Input, outcome: &Outcome) -> (String, Vec<Finding>) {
    let coat = thickness(input.coat, input.coat_unit);
    let said = match outcome.first {
        Some(first) => {
            let (Pair { bolt, nut }, up_to) = (first.pair, thickness(first.thickest, input.coat_unit));
            if first.pair == stock_pair(input.thread) {
                format!("A stock pair takes {coat}: bolt {bolt} with nut {nut}, up to {up_to}.")
            } else {
                format!("For {coat} order bolts {bolt} with nuts {nut}: they take up to {up_to}.")
            }
        }
        None if matches!(input.rule, Method::Corner { .. }) => format!(
            "No class takes {coat}: tap the nut over by an allowance of your own, at least {} on a standard nut.",
            Ruler::of(input.thread).size(outcome.allowance)
        ),
        None => format!(
            "No bolt class takes {coat} by this rule: order a thinner coat, or make the room in the nut and judge \
             by the worst corner."
        ),
    };
    let findings = match input.rule {
        Method::Corner { unevenness, coated, inside } => {
            by_rules(input, outcome, (unevenness, coated, inside)).unwrap_or_default()
        }
        Method::Iso4042(_) | Method::Quarter => {
            let mark = match outcome.first {
                None => Mark::Bar,
                Some(first) if first.pair == stock_pair(input.thread) => Mark::Met,
                Some(_) => Mark::Term,
            };
            let source = outcome.first.map_or(rule_source(input), |first| first.source);
            vec![Finding::new(mark, said.clone(), source)]
        }
    };
    (said, findings)
}

/// What the rules of the fit say of the pair, or of the nut tapped by what the coat needs where no class takes
/// it. A coat on the bolt alone in a nut tapped over, or on a bolt cut under, is one of hot-dip.
fn by_rules(
    input: &Input,
    outcome: &Outcome,
    (unevenness, coated, inside): (f64, Coated, f64),
) -> Option<Vec<Finding>> {
    let (thread, parts) = (input.thread, coated.parts(inside));
    let usual = overtap::usual_bolt_class(thread);
    // A nanometre covers the rounding of the sum.
    let own = Allowance::Own(outcome.allowance + Length::from_um(0.001));
    let pair = outcome.first.map_or(Pair { bolt: usual, nut: NutChoice::Over(own) }, |first| first.pair);
    let bolt = limits::bolt(thread, pair.bolt).ok()?;
    let nut = match pair.nut {
        NutChoice::ToleranceClass(class) => limits::nut(thread, class).ok()?,
        NutChoice::Over(allowance) => overtap::nut(thread, allowance).ok()?.limits,
    };
    let room = room(thread, pair);
    let max = parts * input.coat;
    let mut worst = fit::room(bolt.greatest(), nut.least(), unevenness);
    let assembly = worst.assembly(max);
    // What lies on the bolt, of all that shares the room.
    worst.thickest = worst.thickest / parts;
    let overlap = fit::overlap(bolt.major.min, nut.minor.max, thread.pitch());
    let mated = Mated { pair: pair::Pair { room, class: pair.bolt, bolt, nut }, worst, assembly, overlap };
    let mated = Box::new(mated);
    let found = if assembly == Assembly::Assembles { Found::Takes(mated) } else { Found::Binds(mated) };
    let part = Part::of_pair(thread, pair.bolt, None);
    let for_hot_dip = coated == Coated::Bolt && (matches!(room, Room::Tapped(_)) || pair.bolt.is_undercut());
    let process = if for_hot_dip { Process::HotDip } else { Process::Electroplated };
    let case = Case { part: Some(&part), fit: Some(&found), ..Case::of(process) };
    let rulings = rule::judge_topic(&case, Topic::Fit);
    let findings = rulings
        .map(|ruling| Finding::new(ruling.mark, format!("{}.", ruling.text(&case)), ruling.source(&case)));
    Some(Finding::worst_first(findings.collect()))
}

/// Where a pair makes its room.
fn room(thread: Thread, pair: Pair) -> Room {
    match (pair.nut, pair.bolt) {
        (NutChoice::Over(allowance), _) => Room::Tapped(allowance),
        (NutChoice::ToleranceClass(class), _) if class != overtap::standard_class(thread) => {
            Room::of_nut(class)
        }
        (_, ToleranceClass::Bolt(class)) if matches!(class.position, BoltPosition::E | BoltPosition::F) => {
            Room::Bolt(class.position)
        }
        _ => Room::Ordered,
    }
}

/// What everybody has on the shelf.
fn stock_pair(thread: Thread) -> Pair {
    Pair {
        bolt: overtap::usual_bolt_class(thread),
        nut: NutChoice::ToleranceClass(overtap::standard_class(thread)),
    }
}
