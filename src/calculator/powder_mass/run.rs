//! The run of one barrel, step by step, as the operator does it.

use super::{Finish, Input, Outcome, finding};
use crate::calculator::Figure;
use crate::calculator::run::{self, RunStep, minutes};
use crate::coat::barrel;
use crate::quantity::{Mass, Shown, Time, unit};
use crate::rule::{self, Key};
use crate::source::{Source, assumed, common_practice};
use crate::table::{inspection, mechanical_process as practice};

/// The steps, and how long those take whose time is known.
pub(super) fn of(input: &Input, outcome: &Outcome) -> (Vec<RunStep>, Time) {
    let mut clock = Time::from_minute(0.0);
    if let Some(ban) = run::ban(&finding::rules(outcome), "barrel") {
        return (vec![ban], clock);
    }
    let mut steps = vec![clean(outcome), load(input, outcome), water(input, outcome), acid()];
    let starter = practice::STARTER.value;
    steps.push(
        RunStep::new(
            "Conditioner and starter into the turning barrel; let them mix.",
            practice::STARTER.source,
        )
        .with(dose("Conditioner", practice::CONDITIONER))
        .with(minutes("They mix for", starter).source(practice::STARTER.source))
        .timed(&mut clock, starter),
    );
    let promoter = input.plan.promoter;
    steps.push(
        RunStep::new("Promoter before the copper.", practice::PROMOTER)
            .with(dose("Promoter", practice::PROMOTER_DOSE))
            .with(minutes("It works for", promoter))
            .timed(&mut clock, promoter),
    );
    let copper = practice::COPPER_TIME;
    steps.push(
        RunStep::new(
            "Copper flash: copper sulfate, dissolved, until the parts are lightly coated with copper.",
            copper.source,
        )
        .with(each(
            input,
            outcome,
            "Copper sulfate pentahydrate",
            (outcome.charge.copper_sulfate, 1),
            barrel::COPPER_FLASH.source,
        ))
        .with(minutes("It works for", copper.value).source(copper.source))
        .timed(&mut clock, copper.value),
    );
    additions(input, outcome, &mut clock, &mut steps);
    let tumble = input.plan.tumble;
    steps.push(
        RunStep::new("Final tumble in clear water: it brightens the coat.", practice::TUMBLE)
            .with(minutes("It turns for", tumble).source(assumed("final tumble; no document states a time")))
            .timed(&mut clock, tumble),
    );
    let takes = clock;
    steps.extend(after(input));
    steps.push(readings(input));
    (steps, takes)
}

/// The cleaning, by the steel.
fn clean(outcome: &Outcome) -> RunStep {
    let case = outcome.case();
    let ruling = rule::rule(Key::B695Cleaning).judge(&case);
    match ruling.filter(|ruling| ruling.says(&case).instruction.is_some()) {
        Some(ruling) => RunStep::new(
            "Clean this hard steel without plain acid: hot alkaline soak without current or anodic, inhibited acid for \
             the shortest time, or blast; rinse.",
            ruling.source(&case),
        ),
        None if case.steel.is_some() => {
            RunStep::new("Clean the parts: hot alkaline soak, acid pickle, rinse.", practice::CLEANING)
        }
        None => RunStep::new(
            "Clean the parts: hot alkaline soak, acid pickle, rinse. Hard steel: no plain acid; enter the steel.",
            practice::CLEANING,
        ),
    }
}

/// Beads by size, and parts.
fn load(input: &Input, outcome: &Outcome) -> RunStep {
    let system = input.stated.system();
    let barrels = outcome.barrels();
    let mut step = RunStep::new("Load beads and parts into the lined barrel.", practice::LOADING);
    if let Some(mass) = outcome.load.mass {
        step = step.with(Figure::one("", "Parts", system.weight(mass / barrels)));
    }
    let Some((parts, beads)) = outcome.bulk else {
        return step.with(Figure::words("Beads", "enter the weight of the load for them"));
    };
    step = step.with(Figure::one("", "Parts, by volume", system.heap(parts / barrels)));
    let recessed = outcome.load.piece.as_ref().is_some_and(|piece| super::finding::is_recessed(piece.kind));
    for (share, from, to) in barrel::bead_mix(recessed) {
        let heap = beads * share / barrels;
        let name = format!("Beads of {} to {} mm, {}", from.mm(), to.mm(), Shown::percent(share, 0));
        step = step.with(Figure::one("", name, system.heap(heap)).source(practice::BEAD_MIX.source)).with(
            Figure::one("", "by weight about", system.weight(barrel::bead_mass(heap)))
                .source(barrel::BEAD_PACKING.source),
        );
    }
    step
}

fn water(input: &Input, outcome: &Outcome) -> RunStep {
    let system = input.stated.system();
    let (near, far) = practice::WATER_AHEAD.value;
    let (cold, warm) = practice::LIQUOR.value;
    let (best_cold, best_warm) = practice::LIQUOR_BEST.value;
    let mut step = RunStep::new(
        "Water until it stands ahead of the mix while the barrel turns.",
        practice::WATER_AHEAD.source,
    )
    .with(
        Figure::range("", "Ahead of the mix by", system.length(near), system.length(far))
            .source(practice::WATER_AHEAD.source),
    )
    .with(
        Figure::range("", "Temperature", system.temperature(cold), system.temperature(warm))
            .source(practice::LIQUOR.source),
    )
    .with(
        Figure::range("", "Best at", system.temperature(best_cold), system.temperature(best_warm))
            .source(practice::LIQUOR_BEST.source),
    );
    if let Some((slow, fast)) = outcome.turns {
        let turns = |turns| Shown { number: turns, unit: &unit::TURNS_MINUTE, decimals: 1 };
        step = step.with(
            Figure::range("", "Turns of the barrel", turns(slow), turns(fast))
                .source(practice::SURFACE_SPEED.source),
        );
    }
    step
}

fn acid() -> RunStep {
    RunStep::new(
        "Acid to below the pH; measure it before every addition and bring it back with the same acid.",
        practice::ACID,
    )
    .with(
        Figure::range("", "pH", Shown::plain(1.0, 0), Shown::plain(practice::PH.value, 0))
            .source(practice::PH.source),
    )
    .with(Figure::words("Through all additions", "below pH 2").source(common_practice("liquor below pH 2")))
    .with(dose("Acid", practice::ACID))
}

/// Each addition of zinc with its time and its grams.
fn additions(input: &Input, outcome: &Outcome, clock: &mut Time, steps: &mut Vec<RunStep>) {
    let (number, rule) = outcome.additions;
    let each_takes = input.plan.spacing;
    for (at, coat) in (1..=number).zip(&outcome.coats) {
        let mut step = RunStep::new(
            format!("Zinc powder, addition {at} of {number}, with its promoter."),
            rule.unwrap_or(practice::SPACING.source),
        )
        .with(each(input, outcome, "Zinc powder", (outcome.powder, number), practice::YIELD.source))
        .with(Figure::one("", "The mean coat is then", input.stated.system().coat(*coat)));
        if at == 1 {
            step = step
                .with(dose("Tin salt, with this addition", practice::TIN))
                .with(dose("Promoter, with every addition", practice::PROMOTER_DOSE))
                .with(minutes("Next addition after", each_takes).source(practice::SPACING.source));
        }
        steps.push(step.timed(clock, each_takes));
    }
}

/// After the tumble.
fn after(input: &Input) -> Vec<RunStep> {
    let plan = input.plan;
    let mut steps = vec![RunStep::new(
        "Discharge, rinse, and part the beads from the parts: screen with sprays, or magnets.",
        practice::SEPARATION,
    )];
    let heat = practice::CHROMATE_HEAT;
    // A sprayed patch wants a trivalent chromate under it, whatever was asked for.
    match (plan.finish, plan.patch) {
        (Finish::None, false) => {}
        (Finish::Hexavalent, false) => steps.push(RunStep::new(
            "Coloured chromate, after the separation and before drying.",
            practice::CHROMATE,
        )),
        (Finish::Trivalent, false) => steps.push(RunStep::new(
            "Trivalent chromate, after the separation and before drying.",
            practice::CHROMATE,
        )),
        (_, true) => steps.push(RunStep::new(
            "Trivalent chromate first, for the patch that is sprayed on afterwards.",
            practice::PATCH,
        )),
    }
    let dry = RunStep::new("Dry: heated centrifuge, belt or vibratory oven.", practice::DRYING).with(
        Figure::words("Temperature", "not found; the maker of the chemistry says it")
            .source(practice::DRYING),
    );
    let harmed = plan.finish == Finish::Hexavalent && !plan.patch;
    steps.push(if harmed {
        let limit = input.stated.system().temperature(heat.value);
        dry.with(Figure::one("", "With this chromate no hotter than", limit).source(heat.source))
    } else {
        dry
    });
    if plan.patch {
        steps.push(RunStep::new("Spray the nylon patch.", practice::PATCH));
    }
    steps
}

/// The readings to take, with a place for each.
fn readings(input: &Input) -> RunStep {
    let source = inspection::PLACES_SIGNIFICANT.first().map_or(practice::CHROMATE, |row| row.source);
    let step = RunStep::new(
        "Measure on significant surfaces, write the readings down, and enter them in the lot check.",
        source,
    );
    match input.pass {
        Some(pass) => step
            .with(Figure::one("", "Readings to take", Shown::plain(f64::from(pass.readings), 0)))
            .with(Figure::words("Every one reaches", input.wanted_words())),
        None => step,
    }
}

/// What one barrel gets at a time, of so many equal times, and all of them where there are more.
fn each(
    input: &Input,
    outcome: &Outcome,
    name: &'static str,
    (whole, parts): (Mass, u32),
    source: Source,
) -> Figure {
    let (system, barrels) = (input.stated.system(), outcome.barrels());
    let one = system.portion(whole / barrels, parts);
    let figure = if barrels > 1.0 {
        let all =
            format!("{one}; for all {} barrels {}", Shown::plain(barrels, 0), system.portion(whole, parts));
        Figure::words(name, all)
    } else {
        Figure::one("", name, one)
    };
    figure.source(source)
}

/// A dose that no document states.
fn dose(name: &'static str, source: Source) -> Figure {
    Figure::words(name, "no dose was found: take it from the data sheet of your chemistry").source(source)
}
