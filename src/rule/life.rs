//! Years in the place.

use super::{Case, Choice, Key, Offer, Phrase, Rule, Says, Test, Topic, Under, When};
use crate::process::Process::Electroplated;
use crate::quantity::{Quantity, Shown, Time, unit};
use crate::sentence::{put, worded};
use crate::site::life::{self, Exponent, Promise, thickness_needed};
use crate::site::{Categories, Category, Surroundings};
use crate::source::{Source, Sourced, assumed, document};
use crate::table::{iso_14713_1, practice};
use crate::working::Mark;

/// ISO 14713-1 prints no number beyond a hundred years, and neither is one shown.
pub const TABLE_ENDS: f64 = 100.0;

pub(super) const fn row(key: Key) -> Rule {
    Rule {
        key,
        topic: Topic::Life,
        process: None,
        under: Under::Any,
        source: iso_14713_1::STRAIGHT,
        when: When::If(|case| case.promise().is_some()),
        test: Test::Always,
        says: |_| Says::note(),
        words: Phrase::NONE,
        why: Phrase::NONE,
        met: "",
        brief: Phrase::NONE,
    }
}

/// Whether the coat lasts the years wanted: from the minimum coat at the greatest loss to the maximum
/// coat at the least.
pub static LASTS: Rule = Rule {
    says: |case| case.promise().map_or(Says::MET, of_promise),
    why: Phrase::By(|case, says, text| {
        if let (Mark::Condition, Some((min, max)), Some(place), Some(wanted)) =
            (says.mark, case.years(), place(case), wanted(case))
        {
            let needed = rounded_up(thickness_needed(place.rates(), wanted).show(&unit::UM, 0));
            let lasts = between(min.min, max.most, Some(wanted));
            put(text, format_args!("in {place} the coat lasts {lasts}, and {needed} of zinc would be sure"));
        }
    }),
    words: Phrase::By(lasts),
    brief: Phrase::By(|case, says, text| {
        match says.mark {
            Mark::Bar => {
                let best = case.years().map(|(_, max)| at_most(max.most.unwrap_or(max.min), wanted(case)));
                put(text, format_args!("{} at most", best.unwrap_or_default()));
            }
            Mark::Condition => match place(case) {
                // No answer to which of them it is would be enough.
                Some(place) if place.mildest != place.harshest && !is_sure_in(case, place.mildest) => {
                    put(text, format_args!("find out how harsh, {} at mildest", place.mildest.key()));
                }
                Some(place) if place.mildest != place.harshest => {
                    put(text, format_args!("find out whether {place}"));
                }
                _ => text.push_str("find out how harsh the place is"),
            },
            _ => {}
        }
    }),
    ..row(Key::Lasts)
};

/// Whether the coat is sure of the years wanted where a place is of this category.
fn is_sure_in(case: &Case<'_>, category: Category) -> bool {
    let sure =
        |offer: &Offer| life::range(offer.min, Categories::from(category).rates(), Exponent::Straight).min;
    case.offer.zip(wanted(case)).is_some_and(|(offer, wanted)| sure(offer).year() >= wanted.year())
}

/// What follows from whether a coat lasts the years wanted.
pub fn of_promise(promise: Promise) -> Says {
    match promise {
        Promise::Lasts => Says::MET,
        Promise::MayLast => Says::condition(),
        Promise::FallsShort => Says::bar(),
    }
}

/// Years are wanted and nobody said where.
pub static PLACE_NOT_SAID: Rule = Rule {
    source: practice::NAME_THE_PLACE,
    when: When::If(|case| case.site.is_some_and(|site| site.place.is_none()) && elsewhere(case).is_none()),
    test: Test::By(|case| case.process == Electroplated || wanted(case).is_some()),
    says: |_| Says::only(Mark::NotJudged),
    words: Phrase::By(|case, _, text| {
        text.push_str(match wanted(case) {
            Some(_) => "say the place: years without a place cannot be judged",
            None => "say the place: whether so thin a coat lasts depends on it",
        });
    }),
    met: "no years are wanted",
    brief: Phrase::Text("say the place"),
    ..row(Key::PlaceNotSaid)
};

/// A coat that may be gone within these years is accepted by somebody: so the usual ones of every process are
/// in CX, and none of them in a milder place.
const SHORT_LIFE: Sourced<Time> = assumed("a short life of a thick coat").gives(Time::from_year(3.0));

/// A coat that is thin for outdoors, and nobody said for how long.
pub static THIN_OUTDOORS: Rule = Rule {
    source: practice::THIN_OUTDOORS,
    when: When::If(|case| case.site.is_some_and(|site| site.place.is_some() && site.wanted.is_none())),
    test: Test::By(|case| match case.process {
        Electroplated => place(case).is_some_and(|place| place.harshest > Category::C2),
        _ => case.years().is_some_and(|(min, _)| min.min < SHORT_LIFE.value),
    }),
    says: |case| match (case.process, place(case)) {
        (Electroplated, Some(place)) if place.mildest > Category::C3 => Says::bar(),
        _ => Says::condition(),
    },
    words: Phrase::By(|case, says, text| {
        let years = case.years().map_or_else(String::new, |(min, max)| between(min.min, max.most, None));
        let place = named(case);
        match says.mark {
            Mark::Bar => put(text, format_args!("far too thin for {place}: it lasts {years}")),
            _ => put(text, format_args!("have a short life accepted: in {place} it lasts {years}")),
        }
    }),
    met: "enough for such a place where no years are wanted",
    brief: Phrase::By(|case, says, text| match says.mark {
        Mark::Bar => put(text, format_args!("far too thin for {}", named(case))),
        _ => text.push_str("have a short life accepted"),
    }),
    ..row(Key::ThinOutdoors)
};

/// No years are wanted: the class follows the place.
pub static CLASS_FOR_PLACE: Rule = Rule {
    source: assumed("thicker classes for harsher places"),
    when: When::If(|case| case.offer.is_some_and(|offer| offer.choice == Choice::ForPlace)),
    why: Phrase::Text("no years are wanted"),
    words: Phrase::Text("the class is the usual one for such a place; ask for the years"),
    ..row(Key::ClassForPlace)
};

/// What is not in air has a life of which the categories say nothing, and plate is too thin for what wets it.
pub static NOT_IN_AIR: Rule = Rule {
    source: document::ISO_9223.memory("scope"),
    when: When::If(|case| elsewhere(case).is_some()),
    says: |case| {
        let is_wet = matches!(
            elsewhere(case),
            Some((Surroundings::Soil | Surroundings::Water | Surroundings::AcidWood, _))
        );
        match case.process {
            Electroplated if is_wet => Says::from(Mark::Bar, practice::THIN_OUTDOORS),
            _ => Says::only(Mark::NotJudged),
        }
    },
    why: Phrase::By(|case, says, text| {
        if let (Mark::NotJudged, Some((around, _))) = (says.mark, elsewhere(case)) {
            put(text, format_args!("no years can be given {}: {}", around.name(), around.why()));
        }
    }),
    words: Phrase::By(|case, says, text| not_in_air(case, says, true, text)),
    brief: Phrase::By(|case, says, text| not_in_air(case, says, false, text)),
    ..row(Key::NotInAir)
};

/// What follows outside air; in full with what the document to read is about.
fn not_in_air(case: &Case<'_>, says: Says, in_full: bool, text: &mut String) {
    let Some((around, read)) = elsewhere(case) else { return };
    if says.mark == Mark::Bar {
        return put(text, format_args!("far too thin {}", around.name()));
    }
    put(text, format_args!("have its life {} judged by {}", around.name(), read.document.name));
    if in_full {
        put(text, format_args!(" ({})", read.document.about));
    }
}

/// What surrounds a part that does not stand in air, and the document to read of it.
fn elsewhere(case: &Case<'_>) -> Option<(Surroundings, Source)> {
    let around = case.site.map(|site| site.surroundings).filter(|around| !around.is_in_air())?;
    Some((around, around.to_read()?))
}

fn named(case: &Case<'_>) -> String {
    place(case).map_or_else(String::new, |place| place.to_string())
}

pub(super) fn place(case: &Case<'_>) -> Option<Categories> {
    case.site.and_then(|site| site.place)
}

fn wanted(case: &Case<'_>) -> Option<Time> {
    case.site.and_then(|site| site.wanted)
}

fn lasts(case: &Case<'_>, says: Says, text: &mut String) {
    let (Some((min, max)), Some(place), Some(wanted)) = (case.years(), place(case), wanted(case)) else {
        return;
    };
    let years = as_wanted(wanted).digits();
    match says.mark {
        Mark::Met => {
            let worst = in_words(min.min);
            put(text, format_args!("lasts the {years} years wanted in {place}: {worst} at the least"));
        }
        Mark::Bar => {
            let best = max.most.map_or_else(|| in_words(min.min), |most| at_most(most, Some(wanted)));
            let needed = rounded_up(thickness_needed(place.rates(), wanted).show(&unit::UM, 0));
            put(
                text,
                format_args!(
                    "falls short in {place}: it lasts {best} at most, and {years} are wanted; {needed} of zinc would be \
                     sure to last them"
                ),
            );
        }
        _ => put(text, format_args!("find out how harsh the place is: {years} years are wanted")),
    }
}

/// Years as they are shown: a tenth below twenty, and never more than there are.
pub fn years(time: Time) -> Shown {
    let decimals = if time.year() < 20.0 { 1 } else { 0 };
    let step = if decimals == 1 { 0.1 } else { 1.0 };
    // A billionth covers the rounding of the sum.
    let whole = ((time.year() / step) * (1.0 + 1e-9)).floor() * step;
    let decimals = if whole.fract() < 1e-9 { 0 } else { decimals };
    Time::from_year(whole).show(&unit::YEAR, decimals)
}

/// The years wanted, as they were written.
pub fn as_wanted(wanted: Time) -> Shown {
    let shown = |decimals| wanted.show(&unit::YEAR, decimals);
    let exact = |decimals: &u8| (shown(*decimals).rounded() - wanted.year()).abs() < 1e-9;
    shown((0..3).find(exact).unwrap_or(3))
}

/// The most years there can be: rounded, not cut, and never past the years wanted that they fall short of.
pub fn at_most(time: Time, wanted: Option<Time>) -> String {
    if time.year() > TABLE_ENDS { "over 100 years".to_owned() } else { most(time, wanted).to_string() }
}

/// The same as a number, up to the end of the table.
pub fn most(time: Time, wanted: Option<Time>) -> Shown {
    let least = if time.year() < 10.0 { 1 } else { 0 };
    let shown = |decimals| time.show(&unit::YEAR, decimals);
    // Beside the number that it is compared with, as many digits as tell them apart.
    let tells = |decimals: &u8| {
        wanted.is_none_or(|wanted| (shown(*decimals).rounded() >= wanted.year()) == (time >= wanted))
    };
    shown((least..4).find(tells).unwrap_or(4))
}

/// A least that is enough as it is shown.
pub fn rounded_up(least: Shown) -> Shown {
    let step = 10_f64.powi(-i32::from(least.decimals));
    // A billionth covers the rounding of the sum.
    Shown { number: (least.number / step * (1.0 - 1e-9)).ceil() * step, ..least }
}

/// Years in a sentence.
pub fn in_words(time: Time) -> String {
    if time.year() > TABLE_ENDS { "over 100 years".to_owned() } else { years(time).to_string() }
}

/// From the least to the most years there can be, in a sentence.
pub fn between(min: Time, max: Option<Time>, wanted: Option<Time>) -> String {
    match max {
        _ if min.year() > TABLE_ENDS => in_words(min),
        Some(max) => worded(format_args!("{} to {}", years(min).digits(), at_most(max, wanted))),
        None => worded(format_args!("{} or more", in_words(min))),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn year(year: f64) -> Time {
        Time::from_year(year)
    }

    /// Never more years than there are, in tenths below twenty.
    #[test]
    fn sure_years_are_cut_and_not_rounded() {
        for (there_are, shown) in [
            (0.96, "0.9\u{a0}years"),
            (1.0, "1\u{a0}year"),
            (4.7, "4.7\u{a0}years"),
            (19.99, "19.9\u{a0}years"),
            (20.0, "20\u{a0}years"),
            (20.9, "20\u{a0}years"),
            (99.9, "99\u{a0}years"),
        ] {
            assert_eq!(years(year(there_are)).to_string(), shown);
        }
        for (there_are, shown) in [(100.0, "100\u{a0}years"), (100.1, "over 100 years")] {
            assert_eq!(in_words(year(there_are)), shown);
        }
    }

    /// The longest life is rounded, and told apart from the years that it falls short of.
    #[test]
    fn the_longest_life_is_told_apart_from_the_years_wanted() {
        for (time, wanted, shown) in [
            (9.94, None, "9.9\u{a0}years"),
            (9.96, None, "10.0\u{a0}years"),
            (10.0, None, "10\u{a0}years"),
            (14.97, None, "15\u{a0}years"),
            (14.97, Some(15.0), "14.97\u{a0}years"),
            (15.0, Some(15.0), "15\u{a0}years"),
            (15.3, Some(15.4), "15\u{a0}years"),
            (15.45, Some(15.4), "15.5\u{a0}years"),
            (100.0, None, "100\u{a0}years"),
            (100.1, None, "over 100 years"),
        ] {
            assert_eq!(at_most(year(time), wanted.map(year)), shown, "{time}");
        }
        for (min, max, shown) in [
            (5.0, Some(12.0), "5 to 12\u{a0}years"),
            (5.0, None, "5\u{a0}years or more"),
            (100.0, Some(120.0), "100 to over 100 years"),
            (100.5, Some(120.0), "over 100 years"),
        ] {
            assert_eq!(between(year(min), max.map(year), None), shown);
        }
        for (wanted, shown) in [(15.0, "15"), (7.5, "7.5"), (2.25, "2.25"), (0.125, "0.125")] {
            assert_eq!(as_wanted(year(wanted)).digits(), shown);
        }
        for (least, up) in [(12.01, 13.0), (12.0, 12.0), (12.99, 13.0)] {
            let least = Shown { number: least, unit: &unit::UM, decimals: 0 };
            assert_eq!(rounded_up(least).number, up);
        }
    }
}
