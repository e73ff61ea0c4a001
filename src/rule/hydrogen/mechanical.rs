//! Hydrogen in the barrel: no current runs, but acid cleans and tumbles.

use super::{above_hardness, above_strength};
use crate::process::Process::Mechanical;
use crate::quantity::{Temperature, Time};
use crate::rule::case::{Cleaning, Under};
use crate::rule::{HeatTreatment, Instruction, Key, Phrase, Rule, Says, Test, Topic, When};
use crate::steel::Grade;
use crate::table::{astm_b695, astm_f3125, practice};

/// ASTM F3125: grade A490 is not mechanically coated.
pub static F3125: Rule = Rule {
    key: Key::F3125Mechanical,
    topic: Topic::Hydrogen,
    process: Some(Mechanical),
    under: Under::Any,
    source: astm_f3125::A490_COATINGS,
    when: When::Grades(Grade::AS_A490),
    test: Test::Always,
    says: |_| Says::bar(),
    words: Phrase::Text(
        "ASTM F3125 does not allow grade A490 to be mechanically coated; it lists zinc flake instead",
    ),
    why: Phrase::NONE,
    met: "",
    brief: Phrase::Text("F3125 forbids it on A490, and lists zinc flake"),
};

/// ASTM B695: stress relief above 1000 MPa.
pub static B695_RELIEF: Rule = Rule {
    key: Key::B695Relief,
    topic: Topic::Hydrogen,
    process: Some(Mechanical),
    under: Under::B695,
    source: astm_b695::RELIEF_ABOVE.source,
    when: When::Worked,
    test: Test::Steel(above_strength(astm_b695::RELIEF_ABOVE)),
    says: |_| Says::term().asking(Instruction::Relieve(RELIEF)),
    words: Phrase::Text("relieve stress before cleaning, at about 190 °C for 3 h or longer"),
    why: Phrase::Text(
        "what was machined, ground or formed cold after heat treatment holds stress; check temperature and time in \
         ASTM B695",
    ),
    met: "ASTM B695 asks for no stress relief",
    brief: Phrase::NONE,
};

/// The relief of ASTM B695, 6.2.1, as far as it is remembered.
const RELIEF: HeatTreatment = HeatTreatment {
    from: Temperature::from_celsius(190.0),
    to: None,
    time: Some(Time::from_hour(3.0)),
    within: None,
};

/// ASTM B695: which cleaners keep hydrogen out.
pub static B695_CLEANING: Rule = Rule {
    key: Key::B695Cleaning,
    topic: Topic::Hydrogen,
    process: Some(Mechanical),
    under: Under::B695,
    source: astm_b695::CLEANING,
    when: When::If(|case| case.steel.is_some_and(|steel| steel.levels.is_ok())),
    test: Test::By(|case| case.cleaning() == Cleaning::Acid),
    says: |case| {
        let hard = super::above_strength(astm_b695::RELIEF_ABOVE);
        let levels = case.steel.and_then(|steel| steel.levels.as_ref().ok());
        let passed = levels.is_some_and(|levels| levels.passes(hard, || B695_RELIEF.limit_in_vickers()));
        if passed { Says::term().asking(Instruction::CleanWithoutAcid) } else { Says::note() }
    },
    words: Phrase::By(|_, says, text| {
        text.push_str(if says.instruction.is_some() {
            "clean mechanically, in inhibited acid, or alkaline without cathodic current"
        } else {
            "a steel this soft stands it"
        });
    }),
    why: Phrase::Text("plain acid adds hydrogen"),
    met: "the cleaning chosen is one that ASTM B695 prefers",
    brief: Phrase::NONE,
};

/// Above 40 HRC the barrel is chosen to keep hydrogen out, and some is still possible.
pub static HYDROGEN: Rule = Rule {
    key: Key::MechanicalHydrogen,
    topic: Topic::Hydrogen,
    process: Some(Mechanical),
    under: Under::Any,
    source: practice::MECHANICAL_CHOSEN_ABOVE.source,
    when: When::Steel,
    test: Test::Steel(above_hardness(practice::MECHANICAL_CHOSEN_ABOVE)),
    says: |_| Says::note(),
    words: Phrase::Text(
        "the barrel is the process chosen to avoid embrittlement here: no current and so no hydrogen from plating, yet \
         cleaning and the acid tumble leave some possible",
    ),
    why: Phrase::NONE,
    met: "no concern in the barrel",
    brief: Phrase::NONE,
};

/// Common practice has plated parts of 45 HRC in the barrel.
pub static PRACTICE: Rule = Rule {
    key: Key::PracticeMechanical,
    topic: Topic::Hydrogen,
    process: Some(Mechanical),
    under: Under::Any,
    source: practice::MECHANICAL_TO.source,
    when: When::Steel,
    test: Test::Steel(above_hardness(practice::MECHANICAL_TO)),
    says: |_| Says::condition().asking(Instruction::TestForEmbrittlement),
    words: Phrase::Text("agree a test for embrittlement on the plated lot"),
    why: Phrase::Text("common practice plates parts of 45 HRC, and spring parts above 50 HRC"),
    met: "parts as hard are plated in barrels by common practice",
    brief: Phrase::NONE,
};
