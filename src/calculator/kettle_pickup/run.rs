//! The run of the kettle, step by step, as the operator does it.

use super::{Input, Outcome, finding};
use crate::calculator::Figure;
use crate::calculator::run::{self, RunStep, shown_tenths};
use crate::coat::kettle::Wiping;
use crate::quantity::{Quantity, Shown, Temperature, Time, unit};
use crate::rule::heat::in_the_bath;
use crate::rule::{self, Key};
use crate::source::Source;
use crate::steel::tempering;
use crate::table::{hotdip_process as practice, iso_10684};
use crate::working::Mark;

/// The steps; times are given where one is known, and no step has a place on a clock.
pub(super) fn of(input: &Input, outcome: &Outcome) -> Vec<RunStep> {
    if let Some(ban) = run::ban(&finding::rules(outcome), "kettle") {
        return vec![ban];
    }
    let mut steps = vec![load(input, outcome), degrease(), pickle(outcome)];
    steps.push(RunStep::new("Rinse in water.", practice::RINSING));
    steps.push(flux());
    steps.push(
        RunStep::new("Dry: wet work makes the zinc spatter.", practice::DRYING)
            .with(blank("Temperature", practice::DRYING)),
    );
    steps.push(dip(input, outcome));
    steps.push(wipe(outcome));
    steps.push(
        RunStep::new("Quench small parts at once; let cool in air what would distort.", practice::QUENCH)
            .with(
                Figure::one("", "The zinc goes on reacting above", celsius(practice::REACTS_ABOVE.value))
                    .source(practice::REACTS_ABOVE.source),
            ),
    );
    if outcome.part.is_some_and(|part| part.kind.is_nut()) {
        steps.push(RunStep::new("Tap the nuts, once, and oil them.", practice::NUTS_SOURCE));
    }
    steps.push(RunStep::new(
        "Inspect: appearance, thickness off the thread, adhesion, thread gauge; write it down in the lot check.",
        crate::table::inspection::DRAWING.source,
    ));
    steps
}

fn load(input: &Input, outcome: &Outcome) -> RunStep {
    let system = input.stated.system();
    if outcome.is_wiped_singly() {
        return RunStep::new(
            "Hang the pieces so that each can be drawn out by itself: they are longer than a basket.",
            practice::SPIN_SOURCE,
        );
    }
    let step =
        RunStep::new("Fill the baskets, or hang the pieces, so that zinc runs off.", practice::SPIN_SOURCE);
    let Some(mass) = outcome.load.mass else { return step };
    let baskets = outcome.baskets.unwrap_or(1.0);
    let step = match outcome.baskets {
        Some(baskets) => step.with(Figure::one("", "Baskets", Shown::plain(baskets, 0))),
        None => step,
    };
    step.with(Figure::one("", "Parts in each", system.weight(mass / baskets))).with(Figure::one(
        "",
        "Zinc on them",
        system.weight(outcome.zinc.on_parts / baskets),
    ))
}

fn degrease() -> RunStep {
    let (low, high) = practice::DEGREASING_HEAT.value;
    RunStep::new("Degrease: hot caustic or alkaline.", practice::DEGREASING).with(
        Figure::range("", "Temperature", celsius(low), celsius(high))
            .source(practice::DEGREASING_HEAT.source),
    )
}

/// The acid, by the steel.
fn pickle(outcome: &Outcome) -> RunStep {
    let case = outcome.case();
    // What ISO 10684 and ASTM A143 ask of the cleaning of hard steels.
    let careful = [Key::Iso10684Cleaning, Key::A143Strength]
        .into_iter()
        .filter_map(|key| rule::rule(key).judge(&case))
        .any(|ruling| ruling.mark > Mark::Met && outcome.in_force.holds(ruling.rule.under));
    let (low, high) = practice::ACID_STRENGTH.value;
    let step = if careful {
        RunStep::new(
            "Clean this hard steel without plain acid: inhibited acid for the shortest time, alkaline, or blast and \
             flash pickle.",
            iso_10684::CLEANING_FROM.source,
        )
        .with(Figure::words("High-strength bolts", "blasted in place of the acid").source(practice::BLASTING))
    } else {
        RunStep::new(
            "Pickle in inhibited hydrochloric acid until the rust is off, and no longer.",
            practice::PICKLING,
        )
    };
    step.with(
        Figure::range("", "Acid in use", Shown::percent(low, 0), Shown::percent(high, 0))
            .source(practice::ACID_STRENGTH.source),
    )
    .with(
        Figure::one("", "at most", Shown::percent(practice::ACID_STRENGTH_MAX.value, 0))
            .source(practice::ACID_STRENGTH_MAX.source),
    )
    .with(
        Figure::one("", "no warmer than", celsius(practice::ACID_HEAT.value))
            .source(practice::ACID_HEAT.source),
    )
    .with(Figure::words("Fasteners take", "minutes").source(practice::PICKLING_FASTENERS))
    .with(blank("Longest time", practice::PICKLING_TIME))
}

fn flux() -> RunStep {
    let (low, high) = practice::FLUX_DENSITY.value;
    let (old_low, old_high) = practice::FLUX_DENSITY_OLD.value;
    let baume = |low: f64, high: f64| format!("{low} to {high} °Bé");
    RunStep::new("Flux: zinc chloride and ammonium chloride.", practice::FLUXING)
        .with(Figure::words("Density", baume(low, high)).source(practice::FLUX_DENSITY.source))
        .with(
            Figure::words("Older practice", baume(old_low, old_high))
                .source(practice::FLUX_DENSITY_OLD.source),
        )
        .with(
            Figure::one("", "Temperature, about", celsius(practice::FLUX_HEAT.value))
                .source(practice::FLUX_HEAT.source),
        )
}

fn dip(input: &Input, outcome: &Outcome) -> RunStep {
    let ((low, high), kind) = outcome.advised;
    let (short, long) = practice::IMMERSION_TIME.value;
    let mut step =
        RunStep::new("Dip until the work has the heat of the bath and boiling stops.", practice::IMMERSION)
            .with(Figure::range("", "Bath advised", celsius(low), celsius(high)).source(kind.source()));
    let entered = input.bath.quantity.show(input.bath.unit, 0);
    let of_entered = tempering::Bath::of(input.bath.quantity);
    let usual = kind == tempering::Bath::Normal
        && of_entered == tempering::Bath::Low
        && input.bath.quantity >= tempering::USUAL_FROM;
    if of_entered != kind && !usual {
        let text = format!("{entered} is not the bath advised: change one of them");
        step = step.with(Figure::words("Bath as entered", text).source(kind.source()));
    } else {
        step = step.with(Figure::one("", "Bath as entered", entered));
    }
    let entered_time = in_the_bath(input.dip);
    if outcome.is_wiped_singly() {
        step = step.with(Figure::one("", "Time as entered", entered_time));
    } else {
        step = step.with(
            Figure::range("", "Baskets of fasteners", shown_tenths(short), shown_tenths(long))
                .source(practice::IMMERSION_TIME.source),
        );
        step = step.with(match (short..=long).contains(&input.dip) {
            true => Figure::one("", "Time as entered", entered_time),
            false => {
                let text = format!("{entered_time} is not what such baskets take: see that it is meant");
                Figure::words("Time as entered", text).source(practice::IMMERSION_TIME.source)
            }
        });
    }
    let Some((bath, longest)) = outcome.longest_dip else {
        return step.with(
            Figure::words("For the temper", "enter the steel for the longest dip")
                .source(tempering::PARAMETER_SOURCE),
        );
    };
    let bath = if bath == input.bath.quantity { entered } else { celsius(bath) };
    let name = format!("For the temper of this steel, at {bath}");
    step = step.with(Figure::words(name, longest_words(longest)).source(tempering::PARAMETER_SOURCE));
    if outcome.is_too_short() {
        step = step.with(
            Figure::words(
                "In conflict",
                "the temper bears less than a basket takes: not in this bath until the maker shows the actual tempering \
                 temperature",
            )
            .source(tempering::PARAMETER_SOURCE),
        );
    }
    step
}

/// The longest dip in words: what is shorter than a second or longer than an hour limits no dip by its digits.
pub(super) fn longest_words(longest: Time) -> String {
    if longest > Time::from_hour(1.0) {
        "no limit within an hour".to_owned()
    } else if longest < Time::from_second(1.0) {
        "less than a second".to_owned()
    } else if longest < Time::from_minute(1.0) {
        format!("no longer than {}", longest.show(&unit::SECOND, 0))
    } else {
        format!("no longer than {}", shown_tenths(longest))
    }
}

fn wipe(outcome: &Outcome) -> RunStep {
    let ((slow, fast), (short, long)) = (practice::SPIN_TURNS.value, practice::SPIN_TIME.value);
    let turns = |turns| Shown { number: turns, unit: &unit::TURNS_MINUTE, decimals: 0 };
    let seconds = |time: Time| time.show(&unit::SECOND, 0);
    match outcome.wiping {
        Some(Wiping::AirRing | Wiping::TooLong) => {
            RunStep::new("Draw out through the air ring, or shake, one by one.", practice::SPIN_SOURCE)
        }
        Some(Wiping::Spin | Wiping::AskBasket) | None => {
            RunStep::new("Out quickly, and spin at once, before the zinc freezes.", practice::WITHDRAWAL)
                .with(
                    Figure::range("", "Turns", turns(slow), turns(fast)).source(practice::SPIN_TURNS.source),
                )
                .with(
                    Figure::range("", "for", seconds(short), seconds(long))
                        .source(practice::SPIN_TIME.source),
                )
        }
    }
}

fn celsius(temperature: Temperature) -> Shown {
    temperature.show(&unit::CELSIUS, 0)
}

fn blank(name: &'static str, source: Source) -> Figure {
    Figure::words(name, "not found: the plant's own").source(source)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Each bound belongs to the words with digits.
    #[test]
    fn a_dip_of_seconds_or_hours_is_told_in_words() {
        for (time, words) in [
            (Time::from_second(0.9), "less than a second"),
            (Time::from_second(1.0), "no longer than 1\u{a0}s"),
            (Time::from_second(59.0), "no longer than 59\u{a0}s"),
            (Time::from_minute(1.0), "no longer than 1.0\u{a0}min"),
            (Time::from_minute(6.7), "no longer than 6.7\u{a0}min"),
            (Time::from_minute(60.0), "no longer than 60.0\u{a0}min"),
            (Time::from_minute(60.1), "no limit within an hour"),
        ] {
            assert_eq!(longest_words(time), words);
        }
    }
}
