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
pub mod service;
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
    &hydrogen::hot_dip::ISO_10684_RELIEF,
    &hydrogen::hot_dip::A143_BEND,
    &hydrogen::hot_dip::MAKERS_ADVICE,
    &hydrogen::mechanical::F3125,
    &hydrogen::mechanical::B695_RELIEF,
    &hydrogen::mechanical::B695_CLEANING,
    &hydrogen::mechanical::HYDROGEN,
    &hydrogen::mechanical::PRACTICE,
    &hydrogen::electroplated::A490,
    &hydrogen::electroplated::ISO_2081_STRENGTH,
    &hydrogen::electroplated::PRACTICE_RELIEF,
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
    &hydrogen::GREATEST_NOT_SAID,
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
    &handling::PATCH_AFTER_DIP,
    &handling::NYLON_INSERT,
    &handling::OWN_THREAD,
    &handling::HEAVY,
    &handling::LONG_FOR_BARREL,
    &handling::LONG_FOR_KETTLE,
    &life::NOT_IN_AIR,
    &service::OTHER_METAL,
    &service::HOT_PLACE,
    &service::STEEL_IN_SERVICE,
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
    &structural::WASHER_FOR_BOLT,
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

/// The rules of its process that may speak of an order under a document and count there; what others say moves
/// no order. Few parts are structural: the others are not put before each of the rules on those.
pub fn counting(case: &Case<'_>, under: Under) -> &'static [&'static Rule] {
    static COUNTING: [[[Picked; 2]; Process::ALL.len()]; Under::COUNT] =
        [const { [const { [const { Picked::new() }; 2] }; Process::ALL.len()] }; Under::COUNT];
    let is_structural = structural::is_structural(case);
    let counts = |rule: &Rule| {
        InForce::NONE.and(under).holds(rule.under)
            && (is_structural || !matches!(rule.when, When::Structural(_)))
    };
    let of_document = COUNTING.get(under as usize).and_then(|of| of.get(case.process as usize));
    let picked = of_document.and_then(|of| of.get(usize::from(is_structural)));
    picked.map_or(&[], |once| once.get_or_init(|| pick(case.process, counts)))
}

/// The rules of a process.
fn of_process(process: Process) -> &'static [&'static Rule] {
    static ALL: [Picked; Process::ALL.len()] = [const { Picked::new() }; Process::ALL.len()];
    ALL.get(process as usize).map_or(&[], |once| once.get_or_init(|| pick(process, |_| true)))
}

/// Rules picked out of all of them once.
type Picked = OnceLock<Vec<&'static Rule>>;

fn pick(process: Process, is_one: impl Fn(&Rule) -> bool) -> Vec<&'static Rule> {
    let is_of = |rule: &&Rule| rule.process.is_none_or(|only| only == process) && is_one(rule);
    RULES.into_iter().filter(is_of).collect()
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
    fn what_is_put_before_an_order_is_what_counts_under_its_document() {
        use crate::quantity::Length;
        use crate::steel::{Grade, State, Steel};
        let steel = Steel::grade(Grade::A325, Length::from_inch(0.75)).unwrap();
        let structural = SteelFacts::new(State::of(steel), Cleaning::Acid);
        let documents =
            [Under::Iso10684, Under::F2329, Under::B695, Under::F1941, Under::Iso4042, Under::B633];
        for (process, under) in Process::ALL.into_iter().flat_map(|process| documents.map(|of| (process, of)))
        {
            for steel in [None, Some(&structural)] {
                let case = Case { steel, ..Case::of(process) };
                let is_asked = |rule: &&Rule| {
                    rule.process.is_none_or(|only| only == process)
                        && InForce::NONE.and(under).holds(rule.under)
                        && (steel.is_some() || !matches!(rule.when, When::Structural(_)))
                };
                let keys = |rules: Vec<&Rule>| rules.iter().map(|rule| rule.key).collect::<Vec<_>>();
                let asked = keys(RULES.into_iter().filter(is_asked).collect());
                assert_eq!(keys(counting(&case, under).to_vec()), asked, "{process:?} {under:?}");
            }
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
