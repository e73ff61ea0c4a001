//! What the kettle says of the steel, the bath and the parts: the rules as everywhere, and the plant's own.

use super::Outcome;
use crate::calculator::load::told;
use crate::calculator::{Finding, Mark};
use crate::coat::kettle::{Reactivity, Wiping};
use crate::quantity::{Quantity, unit};
use crate::rule::{self, Key, Ruling, Topic};
use crate::source::Source;
use crate::table::hotdip_process as practice;

pub(super) fn of(outcome: &Outcome) -> Vec<Finding> {
    let mut findings = rules(outcome);
    findings.push(steel(outcome));
    findings.extend(wiping(outcome));
    if outcome.part.is_some_and(|part| part.kind.is_nut()) {
        findings.push(Finding::new(
            Mark::Term,
            "Dip the nuts as blanks and tap them afterwards: their area counts without the thread, and the zinc of \
             the bolt protects it.",
            practice::NUTS_SOURCE,
        ));
    }
    Finding::worst_first(findings)
}

/// What the rules of the kettle say of the part and its steel; what is met is left to their own calculators.
pub(super) fn rules(outcome: &Outcome) -> Vec<Finding> {
    let case = outcome.case();
    let size = [Key::BelowM8, Key::FinePitch, Key::BelowThreeEighths]
        .into_iter()
        .filter_map(|key| rule::rule(key).judge(&case));
    let steel = [Topic::Hydrogen, Topic::Heat]
        .into_iter()
        .flat_map(|topic| rule::judge_topic(&case, topic))
        .filter(|ruling| case.steel.is_some() || ruling.rule.key == Key::Bath);
    let load = rule::judge_topic(&case, Topic::Load);
    let counts = |ruling: &Ruling| ruling.mark > Mark::Met && outcome.in_force.holds(ruling.rule.under);
    told(&case, steel.chain(size).chain(load).filter(counts))
}

/// The bath by what the steel holds.
fn steel(outcome: &Outcome) -> Finding {
    let iso = practice::REACTIVE.source;
    let (text, source): (&str, Source) = match outcome.reactivity {
        Reactivity::Unknown => (
            "The normal bath does, unless the steel holds 0.03 to 0.13 % Si + P or much silicon; enter it from the \
             certificate.",
            iso,
        ),
        Reactivity::SiliconAlone => (
            "Enter silicon and phosphorus together: silicon alone does not say which bath, for ISO 10684 goes by Si + P, \
             from 0.03 to 0.13 %.",
            iso,
        ),
        Reactivity::ByItsSilicon => (
            "Enter silicon and phosphorus together: with 0.04 % silicon and more the coat grows thick and dull whatever \
             the phosphorus; up to 0.13 % Si + P the high-temperature bath helps, above it dip a trial.",
            practice::SILICON_A385_LOW.source,
        ),
        Reactivity::Quiet => ("The normal bath does: the steel is below 0.03 % Si + P.", iso),
        Reactivity::Between => (
            "The normal bath does: the steel is above 0.13 % Si + P, and its silicon below where it is reactive again.",
            iso,
        ),
        Reactivity::Reactive if outcome.high_bath_forbidden => (
            "Take another steel or the barrel: this one wants the high-temperature bath, and class 10.9 from M27 may \
             not go into it.",
            practice::NO_HIGH_BATH_FROM.source,
        ),
        Reactivity::Reactive if outcome.hot_bath_takes_the_temper() => (
            "Two things conflict: with 0.03 to 0.13 % Si + P the steel wants the high-temperature bath, and its temper \
             does not bear that bath for as long as a basket takes. Show the actual tempering temperature, agree the \
             thick, dull coat of the normal bath, or take the barrel.",
            iso,
        ),
        Reactivity::Reactive => (
            "Ask for the high-temperature bath: between 0.03 and 0.13 % Si + P the normal one grows a thick, dull coat.",
            iso,
        ),
        Reactivity::AboveRange => (
            "Say how much of it is silicon: from 0.04 to 0.15 % and above 0.22 % the coat grows thick and dull.",
            practice::SILICON_A385.source,
        ),
        Reactivity::LowDisputed => (
            "Dip a trial: the steel is above the 0.13 % Si + P of ISO 10684, but ASTM A385 has the coat grow fast from \
             0.04 to 0.15 % silicon, and ISO 14713-2 below 0.14 %.",
            practice::SILICON_A385_LOW.source,
        ),
        Reactivity::Disputed => (
            "Dip a trial: from 0.22 % silicon ASTM A385 has the coat grow fast, and ISO 14713-2 only from 0.25 %.",
            practice::SILICON_A385.source,
        ),
        Reactivity::HighSilicon => (
            "Dip a trial and agree the coat: with so much silicon it grows thick and dull, and no document was found \
             that says which bath helps.",
            practice::SILICON_14713.source,
        ),
    };
    Finding::new(outcome.reactivity.mark(), text, source)
}

/// How the zinc is taken off, by the length, the basket and the weight of a piece.
fn wiping(outcome: &Outcome) -> Vec<Finding> {
    let overall = outcome.load.piece.as_ref().and_then(|piece| piece.shape.overall_length());
    let (Some(length), Some(wiping)) = (overall, outcome.wiping) else { return Vec::new() };
    let length = length.show(&unit::MM, 0);
    let (small, large) = practice::BASKETS.value;
    let mut findings = vec![match wiping {
        Wiping::Spin => Finding::new(
            Mark::Note,
            format!("Spin: {length} overall goes into the basket."),
            practice::SPIN_AT_ONCE_SOURCE,
        ),
        Wiping::AskBasket => Finding::new(
            Mark::Condition,
            format!(
                "Ask how long the basket is: {length} overall is longer than small baskets of {} and shorter than \
                 large ones of {}.",
                small.show(&unit::M, 1),
                large.show(&unit::M, 1)
            ),
            practice::BASKETS.source,
        ),
        Wiping::AirRing => Finding::new(
            Mark::Note,
            format!(
                "Air ring: {length} overall is longer than the basket; it is drawn through air jets, or hung, one by one."
            ),
            practice::SPIN_SOURCE,
        ),
        // What the rule of the kettle says of it stands above.
        Wiping::TooLong => Finding::new(
            Mark::Note,
            format!("Air ring, if the galvanizer takes it: {length} overall."),
            practice::SPIN_SOURCE,
        ),
    }];
    if outcome.part.and_then(|part| part.mass()).is_some_and(|mass| mass >= practice::ON_FIXTURES.value) {
        let text = format!(
            "Ask how pieces of {} and more are spun: one plant has them singly on fixtures.",
            practice::ON_FIXTURES.value.show(&unit::KG, 0)
        );
        findings.push(Finding::new(Mark::Note, text, practice::ON_FIXTURES.source));
    }
    findings
}
