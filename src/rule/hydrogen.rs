//! Hydrogen: which documents' limits a steel meets or passes, and what each then asks for.
//!
//! The limits answer different questions (a ban, a risk, a way of cleaning, a bake) and are never
//! merged into one: each row is judged by itself, on its own scale, at the hardest end of the steel.

pub mod electroplated;
pub mod hot_dip;
pub mod mechanical;
mod remarks;

pub use remarks::remarks;

use super::case::Under;
use super::{Case, Key, Phrase, Rule, Says, Test, Topic, When};
use crate::process::Process;
use crate::quantity::{Hardness, Stress};
use crate::source::{Sourced, assumed, document};
use crate::steel::{Level, SteelLimit};
use crate::table::{astm_f2329, practice};
use crate::working::Mark;

/// The order does not say the steel.
pub static NOT_SAID: Rule = Rule {
    key: Key::SteelNotSaid,
    topic: Topic::Hydrogen,
    process: None,
    under: Under::Any,
    source: assumed("a steel that is not said is not judged"),
    when: When::If(|case| case.steel.is_none()),
    test: Test::Always,
    says: |_| Says::only(Mark::NotJudged),
    words: Phrase::By(|case, _, text| {
        text.push_str(match (case.is_mate, is_nut(case)) {
            (true, true) if case.part.is_some_and(|part| part.bolt.is_some()) => {
                "name the grade of the nut: no document known here puts one on this bolt in this size"
            }
            (true, true) => "name the grade of the nut: which one goes on the bolt follows from a grade alone",
            (true, false) => "name the steel of the washer",
            (false, _) if is_not_made(case) => "name another steel: the one that is named is not made in this size",
            (false, _) => {
                "say the steel: without its grade or hardness neither hydrogen nor the heat of the zinc can be judged"
            }
        });
    }),
    why: Phrase::NONE,
    met: "",
    brief: Phrase::By(|case, _, text| {
        text.push_str(match (case.is_mate, is_nut(case)) {
            (true, true) => "name the grade of the nut",
            (true, false) => "name the steel of the washer",
            (false, _) if is_not_made(case) => "name a steel that is made in this size",
            (false, _) => "say the steel",
        });
    }),
};

fn is_not_made(case: &Case<'_>) -> bool {
    case.part.is_some_and(|part| part.is_steel_not_made)
}

fn is_nut(case: &Case<'_>) -> bool {
    case.part.is_some_and(|part| part.kind.is_nut())
}

/// No conversion table reaches the steel.
pub static UNKNOWN: Rule = Rule {
    key: Key::HardnessUnknown,
    topic: Topic::Hydrogen,
    process: None,
    under: Under::Any,
    source: document::ISO_18265.read(""),
    when: When::If(|case| case.steel.is_some_and(|steel| steel.levels.is_err())),
    test: Test::Always,
    says: |case| match case.steel.map(|steel| &*steel.levels) {
        // Nuts and washers whose standard sets no greatest hardness are soft; of nuts of ISO 898-2 above M39
        // it sets nothing at all.
        Some(Err(refusal))
            if case.grade().is_some_and(|grade| {
                (grade.is_nut() || grade.is_washer()) && grade.document() != &document::ISO_898_2
            }) =>
        {
            Says::from(Mark::Note, refusal.source())
        }
        Some(Err(refusal)) => Says::from(Mark::NotJudged, refusal.source()),
        _ => Says::MET,
    },
    words: Phrase::By(|_, says, text| {
        text.push_str(match says.mark {
            Mark::NotJudged => "give the hardness",
            _ => "no greatest hardness is set, and such parts are soft",
        });
    }),
    why: Phrase::By(|case, _, text| {
        if let Some(Err(refusal)) = case.steel.map(|steel| &*steel.levels) {
            text.push_str(&refusal.to_string());
        }
    }),
    met: "",
    brief: Phrase::Text("give the hardness"),
};

/// The order says the least hardness or strength alone, and what rules out or is to be agreed for harder parts is
/// not reached by that. Below the least from which ASTM F2329 sees a risk no bolt of a known grade is harder than
/// what every process takes as a matter of course.
pub static GREATEST_NOT_SAID: Rule = Rule {
    key: Key::GreatestNotSaid,
    topic: Topic::Hydrogen,
    process: None,
    under: Under::Any,
    source: practice::GREATEST_HARDNESS,
    when: When::If(|case| {
        case.part.is_some_and(|part| part.is_steel_least) && case.steel.is_some() && !asks_most(case)
    }),
    test: Test::Steel(from_hardness(astm_f2329::RISK_FROM)),
    says: |_| Says::only(Mark::NotJudged),
    words: Phrase::Text("say the greatest hardness: hydrogen and the bake go by it"),
    why: Phrase::Text("the least is said alone: the steel may be harder"),
    met: "no steel of such a least is so hard that hydrogen counts",
    brief: Phrase::By(|case, _, text| {
        text.push_str(match (case.is_mate, is_nut(case)) {
            (true, true) => "say the greatest hardness of the nut",
            (true, false) => "say the greatest hardness of the washer",
            (false, _) => "say the greatest hardness",
        });
    }),
};

/// Whether the process asks of this hardness all that it asks of any.
fn asks_most(case: &Case<'_>) -> bool {
    let hardest = match case.process {
        Process::HotDip => &hot_dip::PRACTICE,
        Process::Mechanical => &mechanical::PRACTICE,
        Process::Electroplated => &electroplated::ISO_2081_STRENGTH,
    };
    hardest.judge(case).is_some_and(|ruling| ruling.mark > Mark::Met)
}

/// Passed at a hardness and above it.
const fn from_hardness(limit: Sourced<Hardness>) -> SteelLimit {
    SteelLimit::at_least(Level::Hardness(limit.value))
}

/// Passed above a hardness only.
const fn above_hardness(limit: Sourced<Hardness>) -> SteelLimit {
    SteelLimit::above(Level::Hardness(limit.value))
}

/// Passed at a strength and above it.
const fn from_strength(limit: Sourced<Stress>) -> SteelLimit {
    SteelLimit::at_least(Level::Tensile(limit.value))
}

/// Passed above a strength only.
const fn above_strength(limit: Sourced<Stress>) -> SteelLimit {
    SteelLimit::above(Level::Tensile(limit.value))
}
