//! Hydrogen from the current of electroplating, and the bakes that drive it out.

use super::{above_hardness, above_strength, from_hardness, from_strength};
use crate::process::Process::Electroplated;
use crate::quantity::{Quantity, Scale, Temperature, Time, unit};
use crate::rule::case::{Case, Cleaning, Under};
use crate::rule::{HeatTreatment, Instruction, Key, Phrase, Rule, Says, Test, Topic, When};
use crate::sentence::worded;
use crate::steel::{Grade, Measure, State, bake};
use crate::table::{astm_b633, astm_b849, astm_b850, astm_f1941, astm_f3125, iso_2081, iso_4042, practice};
use crate::working::Mark;

/// Whether somebody named the steel, or a document did: a harder washer that is proposed here is ordered softer,
/// and asks for nothing besides.
fn is_named(case: &Case<'_>) -> bool {
    case.steel.is_some() && !is_proposed(case)
}

fn is_proposed(case: &Case<'_>) -> bool {
    case.part.is_some_and(|part| part.is_steel_proposed)
}

const fn row(key: Key, under: Under) -> Rule {
    Rule {
        key,
        topic: Topic::Hydrogen,
        process: Some(Electroplated),
        under,
        source: astm_f3125::A490_BEFORE,
        when: When::If(is_named),
        test: Test::Always,
        says: |_| Says::condition(),
        words: Phrase::NONE,
        why: Phrase::NONE,
        met: "",
        brief: Phrase::NONE,
    }
}

/// ASTM A490: no coating, before F3125; F3125 lists zinc flake and no plating.
pub static A490: Rule = Rule {
    source: astm_f3125::A490_BEFORE,
    when: When::Grades(Grade::AS_A490),
    says: |_| Says::bar(),
    words: Phrase::Text("ASTM A490 allows no coating; ASTM F3125 later lists zinc flake, and no plating"),
    brief: Phrase::Text("F3125 forbids it on A490, and lists zinc flake"),
    ..row(Key::A490Electroplated, Under::Any)
};

/// ISO 2081, earlier edition: no electroplating above 1500 MPa; each measure by its own column, and the
/// core, not a hard case.
pub static ISO_2081_STRENGTH: Rule = Rule {
    source: iso_2081::NOT_ABOVE.source,
    when: When::If(|case| case.steel.is_some_and(|steel| !steel.state.is_cased())),
    test: Test::By(|case| case.steel.is_some_and(|steel| over_iso_2081(&steel.state).is_some())),
    says: |_| Says::bar(),
    words: Phrase::Text(
        "above 1500 MPa, 45 HRC or 440 HV conventional zinc electroplating should not be used",
    ),
    met: "electroplating is not ruled out by strength",
    // In the column that the steel is known by: 443 HV are above the limit, and about 44.8 HRC.
    brief: Phrase::By(|case, _, text| {
        let Some(steel) = case.steel else { return };
        text.push_str(match over_iso_2081(&steel.state) {
            Some(Measure::Tensile) => "stronger than 1500 MPa",
            Some(Measure::Scale(Scale::Hv)) => "harder than 440 HV",
            _ => "harder than 45 HRC",
        });
    }),
    ..row(Key::Iso2081Strength, Under::Any)
};

/// Common practice relieves stress above 1000 MPa before any plate: of the documents known here ASTM B633 and B849
/// alone ask for it, and ASTM F1941 and ISO 4042 are silent.
pub static PRACTICE_RELIEF: Rule = Rule {
    source: practice::RELIEF_ABOVE.source,
    when: When::Worked,
    says: |_| Says::term().asking(Instruction::Relieve(B849_HEAT)),
    test: Test::Steel(above_strength(practice::RELIEF_ABOVE)),
    why: Phrase::Text("machined, ground and cold-formed parts hold stress"),
    words: Phrase::Text("relieve stress at 190 to 230 °C before cleaning, below the temper"),
    met: "common practice asks for no stress relief",
    ..row(Key::PracticeRelief, Under::Any)
};

/// ASTM B849: stress relief from 1000 MPa.
pub static B849_RELIEF: Rule = Rule {
    source: astm_b849::RELIEF_FROM.source,
    when: When::Worked,
    says: |_| Says::term().asking(Instruction::Relieve(B849_HEAT)),
    test: Test::Steel(from_strength(astm_b849::RELIEF_FROM)),
    words: Phrase::Text("relieve stress at 190 to 230 °C or hotter, below the temper, before cleaning"),
    met: "ASTM B849 asks for no stress relief",
    ..row(Key::B849Relief, Under::B633)
};

/// ASTM B633: stress relief above 1000 MPa.
pub static B633_RELIEF: Rule = Rule {
    source: astm_b633::RELIEF_ABOVE.source,
    when: When::Worked,
    says: |_| Says::term().asking(Instruction::Relieve(B849_HEAT)),
    test: Test::Steel(above_strength(astm_b633::RELIEF_ABOVE)),
    why: Phrase::Text("machined, ground and cold-formed parts hold stress"),
    words: Phrase::Text("relieve stress before cleaning"),
    met: "ASTM B633 asks for no stress relief",
    ..row(Key::B633Relief, Under::B633)
};

/// ASTM F1941: cleaning from 40 HRC and of case-hardened parts.
pub static F1941_CLEANING: Rule = Rule {
    source: astm_f1941::CLEANING_FROM.source,
    says: |_| Says::term().asking(Instruction::CleanWithoutAcid),
    test: Test::SteelOrCase(from_hardness(astm_f1941::CLEANING_FROM)),
    words: Phrase::By(|case, _, text| {
        text.push_str(match case.cleaning() {
            Cleaning::Mechanical => "keep to abrasive cleaning as chosen",
            Cleaning::Alkaline => "clean abrasively; alkaline cleaning stays without cathodic current",
            Cleaning::Acid | Cleaning::InhibitedAcid => {
                "clean abrasively; use inhibited acid, and alkaline without cathodic current"
            }
        });
    }),
    met: "ASTM F1941 asks for no special cleaning",
    ..row(Key::F1941Cleaning, Under::F1941)
};

/// ASTM B850: bake by strength.
pub static B850_BAKE: Rule = Rule {
    source: astm_b850::TABLE_1_SOURCE,
    says: |case| {
        let bake = case.steel.map(|steel| bake::by_b850(&steel.state));
        match bake {
            Some(Err(refusal)) => Says::from(Mark::NotJudged, refusal.source()),
            Some(Ok(Some(bake))) => Says::term().asking(Instruction::Bake(HeatTreatment {
                from: astm_b850::TEMPERATURE.0,
                to: Some(astm_b850::TEMPERATURE.1),
                time: Some(bake.row.hours),
                within: Some(astm_b850::WITHIN.value),
            })),
            _ => Says::MET,
        }
    },
    test: Test::Steel(above_strength(astm_b850::TABLE_1_SOURCE.gives(astm_b850::ABOVE))),
    why: Phrase::By(|_, _, text| {
        text.push_str("a bake is better begun within ");
        text.push_str(&astm_b850::PREFERABLY_WITHIN.show(&unit::HOUR, 0).to_string());
    }),
    words: Phrase::By(|case, _, text| bake_by_b850(case, text)),
    met: "ASTM B850 asks for no bake",
    brief: Phrase::Text("bake by B850"),
    ..row(Key::B850Bake, Under::B633)
};

/// ASTM B633: bake from 1200 MPa.
pub static B633_BAKE: Rule = Rule {
    source: astm_b633::BAKE_FROM.source,
    says: |_| {
        // It stands beside B850, which says how.
        Says::term().asking(Instruction::Bake(HeatTreatment {
            from: astm_b850::TEMPERATURE.0,
            to: Some(astm_b850::TEMPERATURE.1),
            time: None,
            within: Some(astm_b850::WITHIN.value),
        }))
    },
    test: Test::Steel(from_strength(astm_b633::BAKE_FROM)),
    words: Phrase::Text("bake after plating"),
    met: "ASTM B633 asks for no bake",
    ..row(Key::B633Bake, Under::B633)
};

const F1941_BAKE_WORDS: Phrase =
    Phrase::Text("bake at 177 to 232 °C (350 to 450 °F), begun within 4 h; agree the hours");
const F1941_BAKE_WHY: Phrase = Phrase::Text("ASTM F1941 sets no hours, 2 to 24 may suit");

/// ASTM F1941: bake above 39 HRC.
pub static F1941_BAKE: Rule = Rule {
    source: astm_f1941::BAKE_ABOVE.source,
    says: |_| Says::term().asking(Instruction::Bake(F1941_HEAT)),
    test: Test::SteelOrCase(above_hardness(astm_f1941::BAKE_ABOVE)),
    why: F1941_BAKE_WHY,
    words: F1941_BAKE_WORDS,
    met: "no bake by this edition of ASTM F1941",
    ..row(Key::F1941Bake, Under::F1941)
};

/// ASTM F1941, earlier editions: bake from 40 HRC.
pub static F1941_BAKE_EARLIER: Rule = Rule {
    source: astm_f1941::BAKE_FROM_EARLIER.source,
    test: Test::Steel(from_hardness(astm_f1941::BAKE_FROM_EARLIER)),
    why: F1941_BAKE_WHY,
    words: F1941_BAKE_WORDS,
    met: "no bake by this edition of ASTM F1941",
    ..row(Key::F1941BakeEarlier, Under::Replaced)
};

/// ISO 4042:2018: from 390 HV on the bake is settled with the purchaser.
pub static ISO_4042_BAKE: Rule = Rule {
    source: iso_4042::BAKE_FROM.source,
    says: |_| Says::term(),
    test: Test::SteelOrCase(from_hardness(iso_4042::BAKE_FROM)),
    words: Phrase::Text("settle with the purchaser whether and how to bake"),
    met: "ISO 4042:2018 asks for no bake",
    brief: Phrase::Text("settle the bake"),
    ..row(Key::Iso4042Bake, Under::Iso4042)
};

/// Common practice electroplates parts up to 39 HRC as a matter of course; a hard case counts.
pub static PRACTICE: Rule = Rule {
    source: practice::ELECTROPLATED_TO.source,
    when: When::Steel,
    says: |case| match is_proposed(case) {
        true => Says::term(),
        false => Says::condition().asking(Instruction::TestForEmbrittlement),
    },
    test: Test::SteelOrCase(above_hardness(practice::ELECTROPLATED_TO)),
    why: Phrase::Text("harder than what is electroplated as a matter of course"),
    words: Phrase::By(|case, _, text| {
        text.push_str(if is_proposed(case) {
            "order washers no harder than 39 HRC: harder ones are baked and tested for embrittlement"
        } else {
            "agree a test for embrittlement on the plated lot"
        });
    }),
    brief: Phrase::By(|case, _, text| {
        if is_proposed(case) {
            text.push_str("washers no harder than 39 HRC");
        }
    }),
    met: "no harder than what is electroplated as a matter of course",
    ..row(Key::PracticeElectroplated, Under::Any)
};

/// ISO 4042:1999: a test of the process above 320 HV.
pub static ISO_4042_INVESTIGATE: Rule = Rule {
    source: iso_4042::INVESTIGATE_ABOVE.source,
    test: Test::Steel(above_hardness(iso_4042::INVESTIGATE_ABOVE)),
    // Told for who still orders by it; the later edition decides.
    says: |_| Says::note(),
    words: Phrase::Text(
        "the earlier ISO 4042 asked for a test of the process, and for a bake where it found embrittlement",
    ),
    met: "the earlier ISO 4042 asked for no process test",
    ..row(Key::Iso4042Investigate, Under::Replaced)
};

/// ISO 4042:1999: a written agreement above 365 HV.
pub static ISO_4042_AGREE: Rule = Rule {
    source: iso_4042::AGREE_ABOVE.source,
    test: Test::Steel(above_hardness(iso_4042::AGREE_ABOVE)),
    says: |_| Says::note(),
    words: Phrase::Text("the earlier ISO 4042 asked for a written agreement on the risk"),
    met: "the earlier ISO 4042 asked for no agreement",
    ..row(Key::Iso4042Agree, Under::Replaced)
};

/// 190 to 230 °C, as ASTM B849 is quoted; its times were not read.
const B849_HEAT: HeatTreatment = HeatTreatment {
    from: Temperature::from_celsius(190.0),
    to: Some(Temperature::from_celsius(230.0)),
    time: None,
    within: None,
};

/// 350 to 450 °F, begun within 4 h; no hours are set.
const F1941_HEAT: HeatTreatment = HeatTreatment {
    from: Temperature::from_fahrenheit(350.0),
    to: Some(Temperature::from_fahrenheit(450.0)),
    time: None,
    within: Some(Time::from_hour(4.0)),
};

/// The measure in which the core is above the limit of ISO 2081: the one that it is known by.
fn over_iso_2081(state: &State) -> Option<Measure> {
    let number = |measure| Some(state.printed(measure)?.level.number());
    let (hrc, hv) = iso_2081::NOT_ABOVE_HARDNESS;
    let (rockwell, vickers) = (Measure::Scale(Scale::Hrc), Measure::Scale(Scale::Hv));
    let (measure, is_over) = if let Some(strength) = number(Measure::Tensile) {
        (Measure::Tensile, strength > iso_2081::NOT_ABOVE.value.mpa())
    } else if let Some(number) = number(rockwell) {
        (rockwell, number > hrc.number)
    } else if let Some(number) = number(vickers) {
        (vickers, number > hv.number)
    } else {
        let converted = state.hardest(vickers);
        (vickers, converted.is_ok_and(|hardest| hardest.as_compared().number() > hv.number))
    };
    is_over.then_some(measure)
}

fn bake_by_b850(case: &Case<'_>, text: &mut String) {
    let (low, high) = astm_b850::TEMPERATURE;
    let within =
        worded(format_args!("begun within {} of plating", astm_b850::WITHIN.value.show(&unit::HOUR, 0)));
    let Some(steel) = case.steel else { return };
    text.push_str(&match bake::by_b850(&steel.state) {
        Ok(Some(bake)) => worded(format_args!(
            "bake at {} to {} for at least {}, by the row of {}, {within}",
            low.show(&unit::CELSIUS, 0).digits(),
            high.show(&unit::CELSIUS, 0),
            bake.row.hours.show(&unit::HOUR, 0),
            bake.row_in_words()
        )),
        Ok(None) => "no bake".to_owned(),
        Err(refusal) => {
            worded(format_args!("a bake is needed, {within}; its hours are not in the table: {refusal}"))
        }
    });
}
