//! The heat of the bath against the temper of the steel.
//!
//! Two questions, asked apart. ASTM F2329 compares temperatures: below the tempering temperature no
//! mechanical test has to be repeated. The tempering parameter compares heat: see
//! [`crate::steel::tempering`]. [`stands`] puts them together:
//!
//! - bath cooler than the temper, and the dip no stronger than the temper: nothing is asked;
//! - bath as hot or hotter, dip no stronger than the temper: get the actual temper, or test;
//! - dip stronger than the temper: ruled out, unless the steel is dipped all the same by a document or by
//!   common practice. ISO 10684 takes in bolts to class 10.9 and leaves the proof to hardness and proof
//!   load after galvanizing, so the condition is that test.

use super::case::{Case, Under};
use super::{Instruction, Key, Phrase, Rule, Says, Test, Topic, When};
use crate::process::Process::HotDip;
use crate::quantity::{Length, Quantity, Temperature, unit};
use crate::sentence::put;
use crate::source::Sourced;
use crate::steel::Grade;
use crate::steel::tempering::{
    self, Bath, Effect, NO_RETEST_SOURCE, PARAMETER_SOURCE, STILL_MET_SOURCE, parameter,
};
use crate::table::{astm_a574, hotdip_process, iso_10684, practice};
use crate::working::Mark;

mod daily;
mod words;

use daily::{DAILY, is_provable, is_routine, is_soft_or_pressed};
use words::{in_words, prove, whole, why};

pub use words::in_the_bath;

/// How a dip stands to the temper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Heat {
    /// The steel was not tempered.
    NoTemper,
    /// Cooler than the temper, and not stronger.
    Below,
    /// As hot or hotter, but not stronger, for so short a time.
    NotStronger,
    /// Stronger.
    Stronger,
}

const fn row(key: Key) -> Rule {
    Rule {
        key,
        topic: Topic::Heat,
        process: Some(HotDip),
        under: Under::Any,
        source: PARAMETER_SOURCE,
        when: When::If(|case| case.effect().is_some()),
        test: Test::Always,
        says: |_| Says::note(),
        words: Phrase::NONE,
        why: Phrase::NONE,
        met: "",
        brief: Phrase::NONE,
    }
}

/// ISO 10684: no high-temperature bath for class 10.9 from M27.
pub static HIGH_BATH: Rule = Rule {
    source: iso_10684::HIGH_BATH,
    when: When::If(|case| {
        case.effect().is_some_and(|effect| effect.bath == Bath::High)
            && forbids_high_bath(case.grade(), case.diameter)
    }),
    says: |_| Says::bar(),
    words: Phrase::Text(
        "ISO 10684 forbids the high-temperature bath for class 10.9 from M27: it cracks the steel",
    ),
    brief: Phrase::Text("no high-temperature bath for class 10.9 from M27"),
    ..row(Key::HighBath)
};

/// The bath's own range.
pub static BATH: Rule = Rule {
    source: iso_10684::HIGH_BATH,
    // A bath that no standard has is none for steels of unknown temper either.
    when: When::If(|case| case.effect().is_some() || bath(case) != Bath::Normal),
    says: |case| {
        let bath = bath(case);
        let mark = match bath {
            Bath::Normal => Mark::Met,
            Bath::Low | Bath::High => Mark::Note,
            Bath::Avoided | Bath::Beyond => Mark::Bar,
        };
        Says::from(mark, bath.source())
    },
    words: Phrase::By(|case, _, text| {
        text.push_str(match bath(case) {
            Bath::Low if bath_temperature(case).is_some_and(|bath| bath < tempering::USUAL_FROM) => {
                "the bath is below the 455 °C of ISO 10684, and below the 445 °C that baths are usual from"
            }
            Bath::Low => "the bath is below the 455 °C of ISO 10684; baths from 445 °C are usual",
            Bath::Normal => "a normal bath by ISO 10684, 455 to 480 °C",
            Bath::Avoided => {
                "between 480 and 530 °C zinc attacks iron fastest and no standard has a bath: run at 480 °C or below, or \
                 from 530 °C in a ceramic kettle"
            }
            Bath::High => {
                "a high-temperature bath, 530 to 560 °C, in a ceramic kettle: a thin, smooth, dull coat"
            }
            Bath::Beyond => "hotter than any bath of ISO 10684, which ends at 560 °C",
        });
    }),
    brief: Phrase::Text("no standard has a bath at this temperature"),
    ..row(Key::Bath)
};

fn bath_temperature(case: &Case<'_>) -> Option<Temperature> {
    case.effect().map(|effect| effect.bath_temperature).or_else(|| case.dip.map(|dip| dip.bath))
}

fn bath(case: &Case<'_>) -> Bath {
    let of_effect = case.effect().map(|effect| effect.bath);
    of_effect.or_else(|| case.dip.map(|dip| Bath::of(dip.bath))).unwrap_or(Bath::Normal)
}

/// The heat of the dip against the temper.
pub static TEMPER: Rule = Rule {
    says: |case| {
        let Some(effect) = case.effect() else { return Says::MET };
        if let Some(least) = below_its_least(case, effect) {
            // Not tempered as its standard asks, it is not the steel that a standard takes in.
            let stronger = effect.temper.is_some_and(|against| against.dip_is_stronger);
            let says = Says::from(if stronger { Mark::Bar } else { Mark::Condition }, least.source);
            return if stronger { says } else { says.asking(Instruction::ProveTemper) };
        }
        match stands(effect) {
            Heat::NoTemper => Says::from(Mark::Note, STILL_MET_SOURCE),
            Heat::Below => Says::from(Mark::Met, NO_RETEST_SOURCE),
            Heat::NotStronger | Heat::Stronger if is_routine(case, effect) => {
                Says::from(Mark::Term, practice::DIPPED_DAILY)
            }
            Heat::NotStronger => {
                Says::from(Mark::Condition, STILL_MET_SOURCE).asking(Instruction::ProveTemper)
            }
            Heat::Stronger if case.grade().is_some_and(is_provable) => {
                Says::from(Mark::Condition, STILL_MET_SOURCE).asking(Instruction::ProveTemper)
            }
            Heat::Stronger => Says::bar(),
        }
    },
    why: Phrase::By(|case, says, text| {
        if let Some(effect) = case.effect() {
            text.push_str(&why(says, effect));
            if let (Some(least), Some(grade)) = (below_its_least(case, effect), case.grade()) {
                put(
                    text,
                    format_args!(
                        ", which is below the {} that is the least of {}",
                        whole(least.value),
                        grade.name()
                    ),
                );
            }
        }
    }),
    words: Phrase::By(|case, says, text| {
        if let Some(effect) = case.effect() {
            text.push_str(&in_words(case, says, effect));
        }
    }),
    brief: Phrase::By(|_, says, text| {
        if says.mark == Mark::Bar {
            text.push_str("the bath takes the temper");
        }
    }),
    ..row(Key::Temper)
};

/// ASTM A574 checks its temper at a heat of its own.
pub static A574_CHECK: Rule = Rule {
    source: astm_a574::VERIFICATION.source,
    when: When::If(|case| case.effect().is_some() && case.grade() == Some(Grade::A574)),
    words: Phrase::By(|case, _, text| {
        let Some(effect) = case.effect() else { return };
        let (heat, time) = astm_a574::VERIFICATION.value;
        let check = tempering::one_hour(parameter(heat, time));
        put(
            text,
            format_args!(
                "ASTM A574 proves its temper at {} for {}, like one hour at {}; the dip is like one hour at {}",
                heat.show(&unit::FAHRENHEIT, 0),
                time.show(&unit::MINUTE, 0),
                whole(check),
                whole(effect.dip_one_hour)
            ),
        );
    }),
    ..row(Key::A574Check)
};

/// The temper of a tempered steel is not known.
pub static TEMPER_UNKNOWN: Rule = Rule {
    source: NO_RETEST_SOURCE,
    when: When::If(|case| case.heat.is_some_and(Result::is_err)),
    says: |case| match case.heat {
        // A flat washer carries no load by its thread; nuts and the grades of every day are dipped daily.
        Some(Err(_))
            if is_soft_or_pressed(case) || case.grade().is_some_and(|grade| DAILY.contains(&grade)) =>
        {
            Says::from(Mark::Note, practice::DIPPED_DAILY)
        }
        Some(Err(refusal)) => Says::from(Mark::Condition, refusal.source()).asking(Instruction::ProveTemper),
        _ => Says::MET,
    },
    why: Phrase::By(|_, says, text| {
        if says.mark > Mark::Note {
            text.push_str("how a steel known by its hardness was tempered is not known");
        }
    }),
    words: Phrase::By(|case, says, text| {
        if let Some(Err(refusal)) = case.heat {
            match says.mark {
                Mark::Note => put(
                    text,
                    format_args!(
                        "its temper is not published, and such parts are dipped every day: {refusal}"
                    ),
                ),
                _ => text.push_str(&prove(case)),
            }
        }
    }),
    ..row(Key::TemperUnknown)
};

/// The least temper of the grade, where the temper that was said lies below it.
fn below_its_least(case: &Case<'_>, effect: &Effect) -> Option<Sourced<Temperature>> {
    let actual = effect.temper.filter(|against| against.temper.least_of.is_none())?.temper;
    let least = case.steel?.state.grade()?.temper_min().ok()?;
    (actual.temperature.celsius().round() < least.value.celsius().round()).then_some(least)
}

/// How a dip stands to the temper.
pub fn stands(effect: &Effect) -> Heat {
    match effect.temper {
        None => Heat::NoTemper,
        Some(against) if against.dip_is_stronger => Heat::Stronger,
        Some(against) if against.margin.kelvin() > 0.0 => Heat::Below,
        Some(_) => Heat::NotStronger,
    }
}

/// Whether ISO 10684 keeps a bolt out of the high-temperature bath: class 10.9 from M27.
pub fn forbids_high_bath(grade: Option<Grade>, diameter: Option<Length>) -> bool {
    grade == Some(Grade::Class10_9)
        && diameter.is_some_and(|diameter| diameter >= hotdip_process::NO_HIGH_BATH_FROM.value)
}

#[cfg(test)]
mod tests;
