//! The reasons in words, each with its source and the calculator behind it.

use std::rc::Rc;

use super::judge::{Judged, Judgement, Reason};
use super::offer::{Choice, FOR_PLACE};
use super::{OrderLine, links};
use crate::calculator::{Finding, Link, Mark};
use crate::quantity::{Length, Quantity, Shown, unit};
use crate::rule::Topic;
use crate::site::life::{Exponent, Promise, Years};
use crate::source::{Source, common_practice, document};
use crate::table::{Refusal, hotdip_process, mechanical_process};
use crate::thread::fit::{self, Diameter, Fit};
use crate::thread::overtap::Allowance;

/// A reason in words; `None` where there is nothing to say.
///
/// `rules` is the calculator of hydrogen, filled in: most reasons of a steel are rules of it.
pub fn finding(
    line: &OrderLine,
    judgement: &Judgement,
    judged: &Judged,
    rules: &Rc<Link>,
    reason: &Reason,
) -> Option<Finding> {
    let mark = reason.mark();
    let offer = judged.offer.as_ref();
    let tap = |allowance| offer.map(|offer| links::tap(line, judged.process, offer, allowance));
    let coat = || offer.map(links::coat);
    let (text, source, link): (String, Source, Option<Link>) = match reason {
        // What is met needs no word here: the calculator lists every rule.
        Reason::Rule(_) if mark == Mark::Met => return None,
        Reason::Rule(ruling) => {
            let text = sentence(ruling.text(&judgement.case(judged.process)));
            let finding = Finding::new(mark, text, ruling.source());
            return Some(match ruling.rule.topic {
                Topic::Hydrogen => finding.opens(Rc::clone(rules)),
                Topic::Heat => finding.opens(links::tempering(line)),
            });
        }
        Reason::BelowIso10684 => (
            format!(
                "{} is below M8 or a pitch of 1.25 mm: hot-dip zinc fills such a thread. Take the barrel or electroplate.",
                line.thread
            ),
            hotdip_process::LEAST_THREAD.source,
            tap(None),
        ),
        Reason::FinePitch => (
            "ISO 10684 covers coarse threads only: agree thread, nut and gauges with the galvanizer.".to_owned(),
            document::ISO_10684.read("scope"),
            tap(None),
        ),
        Reason::BelowThreeEighths => (
            "Below 3/8 in a thread takes hot-dip zinc less well: have a sample dipped and gauged first.".to_owned(),
            common_practice("3/8 in is the smallest thread that takes the coat well"),
            tap(None),
        ),
        Reason::ReducedLoads => (
            format!("Design {} with the reduced loads of ISO 10684, Annex A.", line.thread),
            document::ISO_10684.read("7 and Annex A"),
            tap(None),
        ),
        Reason::WashersStick => (
            "Agree how many washers may be stuck together: flat washers can leave the zinc in fours and fives.".to_owned(),
            hotdip_process::WASHERS_SOURCE,
            Some(links::kettle(line, offer)),
        ),
        Reason::BeadsPart => (
            "Glass beads keep flat washers and rings from nesting and hooking together.".to_owned(),
            common_practice("beads between flat parts"),
            Some(links::powder(line, offer)),
        ),
        Reason::WashersNest => (
            "Flat washers lie on each other in a plating barrel and leave bare spots: mix them with other parts.".to_owned(),
            common_practice("flat parts nest"),
            coat(),
        ),
        Reason::Heavy(mass) => (
            format!(
                "Ask the plater: a piece weighs {}, and above about {} the tumble can damage it.",
                mass.show(&unit::G, 0),
                mechanical_process::HEAVIEST_PIECE.value.show(&unit::G, 0)
            ),
            mechanical_process::HEAVIEST_PIECE.source,
            Some(links::powder(line, offer)),
        ),
        Reason::LongForBarrel => (
            format!("Ask the plater: the part is longer than {}.", mechanical_process::LONGEST_PIECE.value.show(&unit::INCH, 0)),
            mechanical_process::LONGEST_PIECE.source,
            Some(links::powder(line, offer)),
        ),
        Reason::LongForKettle => (
            format!("Ask the galvanizer: threaded rods are taken up to {}.", hotdip_process::LONGEST_ROD.value.show(&unit::M, 0)),
            hotdip_process::LONGEST_ROD.source,
            Some(links::kettle(line, offer)),
        ),
        Reason::Fits(allowance, fit) => {
            (fits(*allowance, fit, line), fit::GROWTH, tap(Some(*allowance)))
        }
        Reason::NoNut(best) => (no_nut(best.as_ref(), line), fit::GROWTH, tap(best.as_ref().map(|(allowance, _)| *allowance))),
        Reason::FitRefused(refusal) => {
            (refused("Have the fit gauged", refusal), refusal.source(), tap(None))
        }
        Reason::TappedAfter(allowance) => (
            format!(
                "Dip the nut as a blank and tap it afterwards, {}: its bare thread is protected by the zinc of the bolt.",
                nut(*allowance)
            ),
            hotdip_process::NUTS_SOURCE,
            tap(Some(*allowance)),
        ),
        Reason::BothCoated(Allowance::Standard, fit) => (
            format!("Bolt and nut may both carry the coat: {} is left on the pitch diameter.", room(fit, line)),
            fit::GROWTH,
            tap(Some(Allowance::Standard)),
        ),
        Reason::BothCoated(allowance, _) => (
            format!("Order the nut {} before it is coated, for a bolt with the same coat.", nut(*allowance)),
            fit::GROWTH,
            tap(Some(*allowance)),
        ),
        Reason::Life(promise, min, max) => {
            let text = life(line, *promise, min, max);
            (text, Exponent::Straight.source(), offer.map(|offer| links::life(line, offer)))
        }
        Reason::Needs(thickness) => (
            format!(
                "{} of zinc would be sure to last them in {}.",
                thickness.show(&unit::UM, 0),
                place(line)
            ),
            Exponent::Straight.source(),
            offer.map(|offer| links::life(line, offer)),
        ),
        Reason::AskedOther => (
            "Get the purchaser's agreement: the order names a coat of another process.".to_owned(),
            document::PROJECT.known("what the order asks for", crate::source::Basis::Assumed),
            coat(),
        ),
        Reason::ClassForPlace if offer.is_some_and(|offer| offer.choice == Choice::ForPlace) => (
            "No years are wanted: the class is the usual one for such a place. Ask for the years.".to_owned(),
            FOR_PLACE,
            offer.map(|offer| links::life(line, offer)),
        ),
        Reason::ClassForPlace => return None,
    };
    let finding = Finding::new(mark, sentence(text), source);
    Some(match link {
        Some(link) => finding.opens(link),
        None => finding,
    })
}

fn refused(instruction: &str, refusal: &Refusal) -> String {
    format!("{instruction}: {refusal}.")
}

/// Room left on the pitch diameter at the worst corner.
fn room(fit: &Fit, line: &OrderLine) -> Shown {
    length(fit.pitch.min, line)
}

fn length(length: Length, line: &OrderLine) -> Shown {
    if line.thread.is_metric() { length.show(&unit::MM, 3) } else { length.show(&unit::INCH, 4) }
}

fn fits(allowance: Allowance, fit: &Fit, line: &OrderLine) -> String {
    let thickest = fit.thickest.show(&unit::UM, 0);
    match allowance {
        Allowance::Standard => {
            format!("Goes into a standard nut: the thickest coat that still assembles is {thickest}.")
        }
        _ => format!(
            "Order the nut {}: pitch diameter {} to {}; the thickest coat that still assembles is {thickest}.",
            nut(allowance),
            length(fit.nut.pitch.min, line).digits(),
            length(fit.nut.pitch.max, line),
        ),
    }
}

fn no_nut(best: Option<&(Allowance, Box<Fit>)>, line: &OrderLine) -> String {
    match best {
        Some((allowance, fit)) => format!(
            "No standard nut takes this coat on {}: even {allowance} has room for {} only, on the {}. Order a thinner class.",
            line.thread,
            fit.thickest.show(&unit::UM, 0),
            match fit.governs {
                Diameter::Pitch => "pitch diameter",
                Diameter::Major => "major diameter",
                Diameter::Minor => "minor diameter",
            }
        ),
        None => {
            format!("No tapped nut is published for {}: agree the allowance with the purchaser.", line.thread)
        }
    }
}

fn life(line: &OrderLine, promise: Promise, min: &Years, max: &Years) -> String {
    let wanted = years(line.years.map_or(0.0, |years| years.year())).digits();
    let worst = in_words(min.min.year());
    let best = max.most.map(|most| in_words(most.year()));
    let place = place(line);
    match (promise, best) {
        (Promise::Lasts, _) => format!("Lasts the {wanted} years wanted in {place}: {worst} at the least."),
        (Promise::MayLast, Some(best)) => format!(
            "Find out how harsh the place is: in {place} the coat lasts from {worst} to {best}, and {wanted} are wanted."
        ),
        (Promise::MayLast, None) => format!(
            "Find out how harsh the place is: in {place} the coat lasts {worst} or more, and {wanted} are wanted."
        ),
        (Promise::FallsShort, best) => {
            format!(
                "Falls short in {place}: it lasts {} at most, and {wanted} are wanted.",
                best.unwrap_or(worst)
            )
        }
    }
}

/// The place by its category.
pub fn place(line: &OrderLine) -> &'static str {
    line.place.map_or("the place", |place| place.key())
}

/// ISO 14713-1 prints no number beyond a hundred years, and neither does this.
pub const TABLE_ENDS: f64 = 100.0;

/// Years as they are shown.
pub fn years(number: f64) -> Shown {
    Shown { number, unit: &unit::YEAR, decimals: if number < 10.0 { 1 } else { 0 } }
}

/// Years in a sentence.
fn in_words(number: f64) -> String {
    if number > TABLE_ENDS { "over 100 years".to_owned() } else { years(number).to_string() }
}

/// The nut in words.
pub fn nut(allowance: Allowance) -> String {
    match allowance {
        Allowance::Standard => "standard nut, not tapped over".to_owned(),
        Allowance::A563 => "tapped over by ASTM A563".to_owned(),
        other => match other.mark() {
            Some((letter, _)) => format!("tapped over to {other}, marked {letter}"),
            None => format!("tapped over to {other}"),
        },
    }
}

/// Ends a sentence, whoever wrote it.
fn sentence(mut text: String) -> String {
    if !text.ends_with(['.', '!', '?']) {
        text.push('.');
    }
    text
}
