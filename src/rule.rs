//! Everything that judges: one row a rule, and each rule in one place, with one severity.
//!
//! A [`Rule`] speaks of some cases ([`When`]), tests one limit ([`Test`]) and says what follows
//! ([`Says`]). It judges a [`Case`] of facts and knows no order line, no form and no link. A
//! calculator declares which [`Topic`] it explains; whoever shows a finding looks the calculator up
//! by the topic of its rule. Facts are computed once a case, words are made only when somebody reads.
//!
//! To add a rule: a variant in [`key`], a row in the file of its topic, its place in [`RULES`].

pub mod bolt_and_nut;
pub mod case;
mod compare;
pub mod fit;
pub mod handling;
pub mod heat;
pub mod hydrogen;
pub mod key;
pub mod life;
mod row;
pub mod says;
pub mod size;
pub mod strength;
pub mod structural;

pub use case::{Case, Choice, Cleaning, InForce, Offer, Part, Site, SteelFacts, Under};
pub use key::Key;
pub use row::{Phrase, Rule, Ruling, Test, Topic, When};
pub use says::{HeatTreatment, Instruction, Says};

use std::sync::OnceLock;

use crate::process::Process;
use crate::working::Mark;

/// Every rule, topic by topic; a rule stands at the place of its key.
#[rustfmt::skip]
pub static RULES: [&Rule; Key::COUNT] = [
    &hydrogen::hot_dip::F2329_BAN,
    &hydrogen::hot_dip::F2329_CASE_HARDENED,
    &hydrogen::hot_dip::PRACTICE,
    &hydrogen::hot_dip::F436,
    &hydrogen::hot_dip::ISO_10684_SCOPE,
    &hydrogen::hot_dip::F3125,
    &hydrogen::hot_dip::F2329_RISK,
    &hydrogen::hot_dip::A143_STRENGTH,
    &hydrogen::hot_dip::ISO_10684_CLEANING,
    &hydrogen::hot_dip::A143_BEND,
    &hydrogen::hot_dip::MAKERS_ADVICE,
    &hydrogen::mechanical::F3125,
    &hydrogen::mechanical::B695_RELIEF,
    &hydrogen::mechanical::B695_CLEANING,
    &hydrogen::mechanical::HYDROGEN,
    &hydrogen::mechanical::PRACTICE,
    &hydrogen::electroplated::A490,
    &hydrogen::electroplated::ISO_2081_STRENGTH,
    &hydrogen::electroplated::B849_RELIEF,
    &hydrogen::electroplated::B633_RELIEF,
    &hydrogen::electroplated::F1941_CLEANING,
    &hydrogen::electroplated::B850_BAKE,
    &hydrogen::electroplated::B633_BAKE,
    &hydrogen::electroplated::F1941_BAKE,
    &hydrogen::electroplated::F1941_BAKE_EARLIER,
    &hydrogen::electroplated::ISO_4042_BAKE,
    &hydrogen::electroplated::ISO_4042_INVESTIGATE,
    &hydrogen::electroplated::ISO_4042_AGREE,
    &hydrogen::electroplated::PRACTICE,
    &hydrogen::NOT_SAID,
    &hydrogen::UNKNOWN,
    &heat::HIGH_BATH,
    &heat::BATH,
    &heat::TEMPER,
    &heat::A574_CHECK,
    &heat::TEMPER_UNKNOWN,
    &size::BELOW_M8,
    &size::FINE_PITCH,
    &size::BELOW_THREE_EIGHTHS,
    &strength::REDUCED_LOADS,
    &size::BEYOND_TABLE_2,
    &size::SIZE_NOT_SAID,
    &size::LENGTH_UNLIKELY,
    &fit::ASSEMBLES,
    &fit::NOT_PUBLISHED,
    &fit::UNKNOWN,
    &fit::OTHER_PART,
    &fit::WRITTEN_NUT,
    &fit::OVERLAP,
    &fit::MATING,
    &handling::WASHERS_STICK,
    &handling::BEADS_PART,
    &handling::WASHERS_NEST,
    &handling::NYLON_PATCH,
    &handling::NYLON_INSERT,
    &handling::OWN_THREAD,
    &handling::HEAVY,
    &handling::LONG_FOR_BARREL,
    &handling::LONG_FOR_KETTLE,
    &life::LASTS,
    &life::PLACE_NOT_SAID,
    &life::THIN_OUTDOORS,
    &life::CLASS_FOR_PLACE,
    &structural::COATING,
    &structural::LUBRICANT,
    &structural::LOT,
    &structural::ONE_PROCESS,
    &structural::TAPPING,
    &structural::ROTATIONAL_CAPACITY,
    &structural::WASHER,
    &structural::REUSE,
    &size::CLASS_OF_ANOTHER_SIZE,
    &size::AT_MOST,
    &structural::ADVISED_AGAINST,
    &structural::NUT_BY_NAME,
    &structural::HOT_SERVICE,
    &structural::NUT,
    &strength::CARRIES,
];

/// What the rules say of a case: those of its process that speak of it.
pub fn judge<'c>(case: &'c Case<'_>) -> impl Iterator<Item = Ruling> + use<'c> {
    of_process(case.process).iter().filter_map(|rule| rule.judge(case))
}

/// What the rules of one topic say of a case.
pub fn judge_topic<'c>(case: &'c Case<'_>, topic: Topic) -> impl Iterator<Item = Ruling> + use<'c> {
    of_process(case.process)
        .iter()
        .filter(move |rule| rule.topic == topic)
        .filter_map(|rule| rule.judge(case))
}

/// What rules a case out by a topic, of the rules that count for every order: for a calculator of another
/// topic, so that it calls nothing suitable that no order gets.
pub fn bars<'c>(case: &'c Case<'_>, topic: Topic) -> impl Iterator<Item = Ruling> + use<'c> {
    judge_topic(case, topic).filter(|ruling| ruling.rule.under == Under::Any && ruling.mark == Mark::Bar)
}

/// The rule of a key.
pub fn rule(key: Key) -> &'static Rule {
    // Every key has its place: the array has as many, and a test holds their order.
    RULES.iter().copied().find(|rule| rule.key == key).unwrap_or(RULES[0])
}

/// The rules of its process that may speak of a case and count under its documents; what others say moves no
/// order.
pub fn counting<'c>(case: &'c Case<'_>) -> impl Iterator<Item = &'static Rule> + use<'c> {
    // Few parts are structural: the others are not put before each of the rules on those.
    static ORDINARY: Picked = Picked::new();
    let is_ordinary = |rule: &Rule| !matches!(rule.when, When::Structural(_));
    let rules = match structural::is_structural(case) {
        true => of_process(case.process),
        false => picked(&ORDINARY, case.process, is_ordinary),
    };
    let in_force = case.in_force;
    rules.iter().copied().filter(move |rule| in_force.holds(rule.under))
}

/// The rules of a process.
fn of_process(process: Process) -> &'static [&'static Rule] {
    static ALL: Picked = Picked::new();
    picked(&ALL, process, |_| true)
}

/// Rules of each process, picked out of all of them once.
type Picked = OnceLock<[Vec<&'static Rule>; Process::ALL.len()]>;

fn picked(once: &'static Picked, process: Process, is_one: fn(&Rule) -> bool) -> &'static [&'static Rule] {
    let pick = |process| {
        let is_of = |rule: &&Rule| rule.process.is_none_or(|only| only == process) && is_one(rule);
        RULES.into_iter().filter(is_of).collect()
    };
    once.get_or_init(|| Process::ALL.map(pick)).get(process as usize).map_or(&[], Vec::as_slice)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rule_stands_at_the_place_of_its_key() {
        for (rule, key) in RULES.iter().zip(Key::ALL) {
            assert_eq!(rule.key, *key);
        }
    }

    #[test]
    fn a_limit_can_be_read_in_vickers() {
        for rule in RULES {
            if let Test::Steel(limit) = rule.test {
                assert!(limit.at.in_vickers().is_ok(), "{}", rule.key.key());
            }
        }
    }
}
