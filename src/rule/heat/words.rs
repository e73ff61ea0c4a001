//! The heat of a dip beside that of a temper, in words.

use crate::quantity::{Quantity, Shown, Temperature, Time, unit};
use crate::rule::says::to_prove;
use crate::rule::{Case, Says};
use crate::sentence::worded;
use crate::steel::tempering::{Against, Effect};
use crate::working::Mark;

pub(super) fn in_words(case: &Case<'_>, says: Says, effect: &Effect) -> String {
    let Some(against) = &effect.temper else {
        return "its standard still has to be met after galvanizing".to_owned();
    };
    let actual = against.temper.least_of.is_none();
    let text = match (says.mark, actual) {
        // The bath stays below the temper, and the dip is no stronger than it.
        (Mark::Met | Mark::Note, _) => "no mechanical test has to be repeated",
        (Mark::Term, _) => "the retest after dipping is the maker's",
        (Mark::Bar, true) => "the bath takes the temper away",
        (Mark::Bar, false) => "the bath takes the temper away; a higher actual temper can change this",
        (Mark::Condition | Mark::NotJudged, true) => {
            return worded(format_args!("verify {} after galvanizing", to_prove(case)));
        }
        (Mark::Condition | Mark::NotJudged, false) => return prove(case),
    };
    text.to_owned()
}

/// What is asked where the actual temper is not known.
pub(super) fn prove(case: &Case<'_>) -> String {
    worded(format_args!(
        "get the actual temper from the maker, or verify {} after galvanizing",
        to_prove(case)
    ))
}

/// The heat of the dip beside that of the temper.
pub(super) fn why(says: Says, effect: &Effect) -> String {
    let Some(against) = &effect.temper else {
        return "this steel is not tempered, so the bath has no temper to take".to_owned();
    };
    let named = named(against);
    if says.mark < Mark::Term {
        return worded(format_args!("the bath stays below {named}"));
    }
    let stronger = if against.dip_is_stronger { "stronger than" } else { "no stronger than" };
    let daily = if says.mark == Mark::Term { ", and the grade is dipped every day" } else { "" };
    worded(format_args!(
        "{} at {} is like one hour at {}, {stronger} {named}{daily}",
        in_the_bath(effect.time),
        whole(effect.bath_temperature),
        whole(effect.dip_one_hour)
    ))
}

/// `the actual temper (480 °C for 1.5 h)`.
fn named(against: &Against) -> String {
    let whose = match against.temper.least_of {
        None => "the actual temper",
        Some(_) => "the least temper of the standard",
    };
    let time = against.temper.time;
    // In minutes where tenths of an hour would say another time.
    let tenths = time.hour() * 10.0;
    let time = match (tenths - tenths.round()).abs() < 1e-9 {
        true => time.show(&unit::HOUR, u8::from((time.hour() - time.hour().round()).abs() > 1e-9)),
        false => time.show(&unit::MINUTE, 0),
    };
    worded(format_args!("{whose} ({} for {time})", whole(against.temper.temperature)))
}

/// A time in the bath: in seconds below a minute, so that it says what was entered.
pub fn in_the_bath(time: Time) -> Shown {
    let minutes = time.minute();
    match (minutes - minutes.round()).abs() < 1e-9 {
        true => time.show(&unit::MINUTE, 0),
        false if minutes < 1.0 => time.show(&unit::SECOND, 0),
        false => time.show(&unit::MINUTE, 1),
    }
}

pub(super) fn whole(temperature: Temperature) -> String {
    temperature.show(&unit::CELSIUS, 0).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A time says what was entered: whole minutes, seconds below one, tenths above.
    #[test]
    fn a_time_in_the_bath_is_told_as_it_was_entered() {
        for (time, shown) in [
            (Time::from_second(45.0), "45\u{a0}s"),
            (Time::from_second(60.0), "1\u{a0}min"),
            (Time::from_second(90.0), "1.5\u{a0}min"),
            (Time::from_minute(3.0), "3\u{a0}min"),
            (Time::from_minute(0.5), "30\u{a0}s"),
            (Time::from_minute(60.0), "60\u{a0}min"),
        ] {
            assert_eq!(in_the_bath(time).to_string(), shown);
        }
    }
}
