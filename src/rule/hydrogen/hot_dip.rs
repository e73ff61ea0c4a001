//! Hydrogen, and hardness as such, before the zinc of the kettle.

use super::{above_hardness, from_hardness};
use crate::part::Kind;
use crate::process::Process::HotDip;
use crate::quantity::{Scale, Stress};
use crate::rule::case::{Case, Cleaning, Under};
use crate::rule::{Instruction, Key, Part, Phrase, Rule, Says, SteelFacts, Test, Topic, When};
use crate::steel::{Grade, Level, Measure, State, Steel, Worked};
use crate::table::steel_row::Treatment;
use crate::table::{astm_a143, astm_f436, astm_f2329, astm_f3125, iso_10684, practice};

/// ASTM F2329: no hot-dip coating from 40 HRC; ASTM F436 itself provides for its washers.
pub static F2329_BAN: Rule = Rule {
    key: Key::F2329Ban,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::F2329,
    source: astm_f2329::NOT_FROM.source,
    when: When::NotGrades(&[Grade::F436]),
    test: Test::Steel(from_hardness(astm_f2329::NOT_FROM)),
    says: |_| Says::bar(),
    words: Phrase::Text("ASTM F2329 forbids hot-dip coating; take mechanical zinc or zinc flake"),
    why: Phrase::NONE,
    met: "no ban on hot-dip coating",
    brief: Phrase::Text("forbidden from 40 HRC"),
};

/// ASTM F2329: no hot-dip coating of case-hardened fasteners.
pub static F2329_CASE_HARDENED: Rule = Rule {
    key: Key::F2329CaseHardened,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    // Common practice follows it where an order stands under another document.
    under: Under::Any,
    source: astm_f2329::CASE_HARDENED,
    when: When::CaseHardened,
    test: Test::Always,
    says: |_| Says::bar(),
    words: Phrase::Text("ASTM F2329 forbids hot-dip coating of case-hardened fasteners"),
    why: Phrase::NONE,
    met: "",
    brief: Phrase::Text("forbidden on case-hardened parts"),
};

/// Common practice: no hot-dip above 39 HRC, washers of ASTM F436 excepted.
pub static PRACTICE: Rule = Rule {
    key: Key::PracticeHotDip,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::Any,
    source: practice::HOT_DIP_TO.source,
    when: When::NotGrades(&[Grade::F436]),
    test: Test::Steel(above_hardness(practice::HOT_DIP_TO)),
    says: |_| Says::bar(),
    words: Phrase::Text("common practice hot-dips nothing harder"),
    why: Phrase::NONE,
    met: "common practice does not advise against hot-dip",
    brief: Phrase::Text("harder than 39 HRC"),
};

/// ASTM F436 provides for its washers hot-dip coated, down to 26 HRC.
pub static F436: Rule = Rule {
    key: Key::F436HotDip,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::Any,
    source: astm_f436::HOT_DIP,
    when: When::Grades(&[Grade::F436]),
    test: Test::Always,
    says: |_| Says::term(),
    words: Phrase::Text("order the washers as hot-dip zinc coated"),
    why: Phrase::Text("ASTM F436 has such washers at 26 to 45 HRC after coating"),
    met: "",
    brief: Phrase::Text("F436 washers hot-dip"),
};

/// ISO 10684: bolts up to class 10.9, nuts up to class 12.
pub static ISO_10684_SCOPE: Rule = Rule {
    key: Key::Iso10684Scope,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::Iso10684,
    source: iso_10684::SCOPE,
    when: When::If(|case| case.grade().and_then(Grade::in_iso_10684).is_some()),
    test: Test::By(|case| case.grade().and_then(Grade::in_iso_10684) == Some(false)),
    says: |_| Says::bar(),
    words: Phrase::Text("ISO 10684 covers bolts up to class 10.9 only, and not this class"),
    why: Phrase::NONE,
    met: "ISO 10684 covers this class",
    brief: Phrase::Text("ISO 10684 ends at class 10.9"),
};

/// ASTM F3125: grade A490 is not hot-dipped.
pub static F3125: Rule = Rule {
    key: Key::F3125HotDip,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::Any,
    source: astm_f3125::A490_COATINGS,
    when: When::Grades(Grade::AS_A490),
    test: Test::Always,
    says: |_| Says::bar(),
    words: Phrase::Text(
        "ASTM F3125 does not allow grade A490 to be hot-dip galvanized; it lists zinc flake instead",
    ),
    why: Phrase::NONE,
    met: "",
    brief: Phrase::Text("F3125 forbids it on A490, and lists zinc flake"),
};

/// ASTM F2329: risk of hydrogen embrittlement where a hardness of 33 HRC or more is specified as the
/// least. It acts where the product standard or the purchaser asks, so it goes on the order.
pub static F2329_RISK: Rule = Rule {
    key: Key::F2329Risk,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::F2329,
    source: astm_f2329::RISK_FROM.source,
    when: When::If(|case| case.steel.is_some_and(|steel| specified_min(&steel.state).is_some())),
    test: Test::By(|case| {
        let min = case.steel.and_then(|steel| specified_min(&steel.state));
        min.is_some_and(|min| min >= astm_f2329::RISK_FROM.value.number)
    }),
    says: |_| Says::term().asking(Instruction::CleanMechanically),
    words: Phrase::Text("descale mechanically, or bake after pickling and before galvanizing"),
    why: Phrase::Text("the least hardness specified is 33 HRC or more, and the coat keeps hydrogen in"),
    met: "the least hardness specified is below 33 HRC: no risk of hydrogen embrittlement by ASTM F2329",
    brief: Phrase::NONE,
};

/// The least Rockwell C hardness that is specified of a steel; what is known by a hardness alone is
/// taken to be specified so.
fn specified_min(state: &State) -> Option<f64> {
    match state.steel {
        Steel::Grade(properties) => properties.limits(Scale::Hrc)?.min.map(|min| min.number),
        Steel::Hardness(_) | Steel::Tensile(_) => {
            state.hardest(Measure::Scale(Scale::Hrc)).ok().map(|hardest| hardest.as_compared().number())
        }
    }
}

/// ASTM A143: hydrogen is of concern above 1100 MPa, as specified: the least of the grade counts.
pub static A143_STRENGTH: Rule = Rule {
    key: Key::A143Strength,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::F2329,
    source: astm_a143::STRENGTH.source,
    // A nut is pressed, not pulled: hydrogen cracks what is under tension.
    when: When::If(|case| {
        let pulled = case.part.is_none_or(|part| !part.kind.is_nut());
        pulled && case.steel.is_some_and(|steel| specified_strength(&steel.state).is_some())
    }),
    test: Test::By(|case| {
        let strength = case.steel.and_then(|steel| specified_strength(&steel.state));
        strength.is_some_and(|strength| strength > astm_a143::STRENGTH.value)
    }),
    says: |_| Says::term().asking(Instruction::CleanMechanically),
    words: Phrase::By(|case, _, text| {
        text.push_str(match case.cleaning() {
            Cleaning::Mechanical => "blast clean as chosen, then flash pickle only",
            _ => "blast clean, then flash pickle only",
        });
    }),
    why: Phrase::Text("specified above 1100 MPa, hydrogen is of concern by ASTM A143"),
    met: "specified with 1100 MPa or less: hydrogen is usually of no concern by ASTM A143",
    brief: Phrase::NONE,
};

/// The tensile strength that is specified of a steel; what is known by a hardness alone is taken to be
/// specified so.
fn specified_strength(state: &State) -> Option<Stress> {
    match state.steel {
        Steel::Grade(properties) => properties.row.tensile_min.map(|min| min.value),
        Steel::Tensile(strength) => Some(strength),
        Steel::Hardness(_) => match state.hardest(Measure::Tensile).ok()?.as_compared() {
            Level::Tensile(strength) => Some(strength),
            Level::Hardness(_) => None,
        },
    }
}

/// ISO 10684: from 320 HV on inhibited acid, alkaline or mechanical cleaning.
pub static ISO_10684_CLEANING: Rule = Rule {
    key: Key::Iso10684Cleaning,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::Iso10684,
    source: iso_10684::CLEANING_FROM.source,
    when: When::Steel,
    test: Test::Steel(from_hardness(iso_10684::CLEANING_FROM)),
    says: |_| Says::term().asking(Instruction::CleanWithoutAcid),
    words: Phrase::By(|case, _, text| {
        text.push_str(match case.cleaning() {
            Cleaning::Acid => "clean mechanically, alkaline, or in inhibited acid for as short as cleans",
            Cleaning::InhibitedAcid => "keep to inhibited acid as chosen, for the shortest time that cleans",
            Cleaning::Alkaline => {
                "keep to alkaline cleaning as chosen, with the shortest time in acid after it"
            }
            Cleaning::Mechanical => {
                "keep to mechanical cleaning as chosen, with the shortest time in acid after it"
            }
        });
    }),
    why: Phrase::NONE,
    met: "ISO 10684 asks for no special cleaning",
    brief: Phrase::NONE,
};

/// ISO 10684: what was severely work-hardened may have to be relieved of stress before the acid. Which hardness that is
/// it does not say: taken from where the same document cleans without plain acid. Of what was ground or machined no
/// document of hot-dip speaks.
pub static ISO_10684_RELIEF: Rule = Rule {
    key: Key::Iso10684Relief,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::Iso10684,
    source: iso_10684::RELIEF,
    when: When::ColdFormed,
    test: Test::Steel(from_hardness(iso_10684::CLEANING_FROM)),
    says: |_| Says::term(),
    words: Phrase::Text("settle with the galvanizer whether stress is relieved before cleaning"),
    why: Phrase::Text("cold forming after heat treatment hardens it further"),
    met: "no stress relief is settled of so soft a part",
    brief: Phrase::Text("settle the stress relief"),
};

/// ASTM A143: strain-age embrittlement at tight cold bends.
pub static A143_BEND: Rule = Rule {
    key: Key::A143Bend,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::Any,
    source: astm_a143::BENDS,
    // Some parts are bent by nature.
    when: When::If(|case| {
        let is_bent = |part: &Part| matches!(part.kind, Kind::UBolt | Kind::BentAnchor);
        let worked = |steel: &SteelFacts| steel.state.worked == Worked::Formed;
        case.steel.is_some_and(worked) || case.part.is_some_and(is_bent)
    }),
    test: Test::Always,
    says: |_| Says::term(),
    words: Phrase::By(|case, _, text| {
        text.push_str("bend cold with an inside radius of at least three times the section");
        text.push_str(match treatment(case) {
            Treatment::NotHeatTreated => ", or relieve the bend before pickling",
            Treatment::QuenchedTempered | Treatment::CaseHardened => ", or hot before heat treatment",
            Treatment::NotKnown => "",
        });
    }),
    why: Phrase::By(|case, _, text| {
        text.push_str(match treatment(case) {
            Treatment::NotHeatTreated => {
                "a tighter bend is relieved at 595 °C (1100 °F), one hour per inch of section"
            }
            Treatment::QuenchedTempered | Treatment::CaseHardened => {
                "a tighter bend would need 595 °C for an hour per inch, which takes this steel's temper"
            }
            Treatment::NotKnown => {
                "a tighter bend is relieved at 595 °C (1100 °F), one hour per inch of section, before pickling, unless \
                 the steel is quenched and tempered, whose temper that heat takes"
            }
        });
    }),
    met: "",
    brief: Phrase::NONE,
};

/// Bolt makers advise against galvanizing the hardest inch grades.
pub static MAKERS_ADVICE: Rule = Rule {
    key: Key::MakersAdvice,
    topic: Topic::Hydrogen,
    process: Some(HotDip),
    under: Under::Any,
    source: practice::MAKERS_ADVICE,
    when: When::Grades(&[Grade::A354Bd, Grade::J429Grade8]),
    test: Test::Always,
    says: |_| Says::condition().asking(Instruction::MakerAgrees),
    words: Phrase::Text("have its maker agree in writing"),
    why: Phrase::Text("bolt makers advise against galvanizing this grade"),
    met: "",
    brief: Phrase::NONE,
};

fn treatment(case: &Case<'_>) -> Treatment {
    let grade = case.steel.and_then(|steel| steel.state.grade());
    grade.map_or(Treatment::NotKnown, |properties| properties.treatment())
}
