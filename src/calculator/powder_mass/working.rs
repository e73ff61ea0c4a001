//! The steps from a load of parts to the charge of a barrel.

use super::{Input, Outcome};
use crate::calculator::load::SUM;
use crate::coat::barrel::{self, target};
use crate::part::STEEL;
use crate::quantity::{Quantity, Shown, unit};
use crate::source::Source;
use crate::table::mechanical_process as practice;
use crate::working::{Term, Working};

pub(super) fn working(input: &Input, outcome: &Outcome) -> Working {
    let charge = &outcome.charge;
    let mut working = outcome.load.working(&input.stated);
    let area = Term::given("A", outcome.load.area.show(&unit::M2, 2));
    let deposit = charge.deposit.show(&unit::KG, 3);
    let powder = charge.powder.show(&unit::KG, 3);
    let corrected = outcome.powder.show(&unit::KG, 3);
    let copper = charge.copper.show(&unit::G, 1);
    target(input, outcome, &mut working);
    outcome.load.zinc(&mut working, input.density.known(), (outcome.mean, None), deposit);
    working
        .step("zinc powder to weigh in", "W", "100·Z / η", powder, practice::YIELD.source)
        .given("Z", deposit)
        .term(default(
            "η",
            Shown::percent(input.yielded.one(), 1),
            practice::YIELD.value,
            practice::YIELD.source,
        ));
    if let (Some(correction), Some(earlier), Some(charged)) =
        (outcome.correction, outcome.earlier, input.charged)
    {
        let factor = Shown::plain(correction, 4);
        working
            .step(
                "what the earlier load was charged for, over what it came out at",
                "q",
                "t_c / t_m",
                factor,
                SUM,
            )
            .given("t_c", charged.quantity.show(&unit::UM, 2))
            .given("t_m", earlier.mean.show(&unit::UM, 3));
        working
            .step("zinc powder to weigh in, corrected by it", "W_q", "q·W", corrected, SUM)
            .given("q", factor)
            .given("W", powder);
    }
    let number = Term::known("N", Shown::plain(f64::from(outcome.additions.0), 0), outcome.additions.1);
    working
        .step(
            "zinc powder in each addition",
            "w",
            if outcome.correction.is_some() { "W_q / N" } else { "W / N" },
            (outcome.powder / f64::from(outcome.additions.0)).show(&unit::KG, 3),
            outcome.additions.1.unwrap_or(SUM),
        )
        .given(if outcome.correction.is_some() { "W_q" } else { "W" }, corrected)
        .term(number);
    working.topic("The copper");
    working
        .step("copper of the flash, in grams", "C", "ρ_Cu·t_Cu·A", copper, practice::COPPER_SOURCE)
        .published("ρ_Cu", barrel::COPPER.value.show(&unit::G_CM3, 2), barrel::COPPER.source)
        .known(
            "t_Cu",
            input.flash.show(&unit::UM, 2),
            (input.flash == barrel::COPPER_FLASH.value).then_some(barrel::COPPER_FLASH.source),
        )
        .term(area);
    working
        .step(
            "as copper sulfate pentahydrate",
            "S",
            "r·C",
            charge.copper_sulfate.show(&unit::G, 1),
            barrel::SULFATE_TO_COPPER.source,
        )
        .published("r", Shown::plain(barrel::SULFATE_TO_COPPER.value, 3), barrel::SULFATE_TO_COPPER.source)
        .given("C", copper);
    let (Some((parts, beads)), Some(mass)) = (outcome.bulk, outcome.load.mass) else { return working };
    working.topic("The barrel");
    let heap = parts.show(&unit::LITRE, 2);
    working
        .step("heap of parts, in litres", "V_p", "100·M / (ρ·φ)", heap, practice::PARTS_PER_VOLUME.source)
        .given("M", mass.show(&unit::KG, 2))
        .published("ρ", STEEL.value.show(&unit::G_CM3, 2), STEEL.source)
        .term(default(
            "φ",
            Shown::percent(input.solid_share.one(), 1),
            barrel::usual_solid_share(STEEL.value),
            barrel::USUAL_SOLID_SHARE_SOURCE,
        ));
    working
        .step("glass beads, in litres", "V_b", "β·V_p", beads.show(&unit::LITRE, 2), SUM)
        .known("β", Shown::plain(outcome.bead_ratio.0, 2), outcome.bead_ratio.1)
        .given("V_p", heap);
    working
        .step(
            "glass beads, in kilograms",
            "M_b",
            "ρ_g·φ_g·V_b",
            barrel::bead_mass(beads).show(&unit::KG, 1),
            barrel::BEAD_PACKING.source,
        )
        .published(
            "ρ_g",
            Shown { number: practice::GLASS.value, unit: &unit::G_CM3, decimals: 1 },
            practice::GLASS.source,
        )
        .published("φ_g", Shown::plain(barrel::BEAD_PACKING.value, 1), barrel::BEAD_PACKING.source)
        .given("V_b", beads.show(&unit::LITRE, 2));
    if let Some((min, _)) = outcome.working_volume {
        working
            .step(
                "barrel loads, before rounding up; at the least working volume",
                "B",
                "V_p / V_w",
                Shown::plain(parts.litre() / min.litre(), 2),
                practice::PARTS_PER_VOLUME.source,
            )
            .given("V_p", heap)
            .given("V_w", min.show(&unit::LITRE, 2));
    }
    if let (Some((_, fast)), Some(diameter)) = (outcome.turns, input.diameter) {
        working
            .step(
                "fastest turns a minute",
                "n_max",
                "v_max / (π·D)",
                Shown { number: fast, unit: &unit::TURNS_MINUTE, decimals: 1 },
                practice::SURFACE_SPEED.source,
            )
            .published(
                "v_max",
                Shown::plain(practice::SURFACE_SPEED.value.1, 0),
                practice::SURFACE_SPEED.source,
            )
            .given("D", diameter.quantity.show(&unit::M, 3));
    }
    working
}

/// From the least of every place to the mean that is charged for.
fn target(input: &Input, outcome: &Outcome, working: &mut Working) {
    let (Some(target), Some((least, published)), Some(pass)) = (outcome.target, outcome.least, input.pass)
    else {
        return;
    };
    working.topic("The mean to charge for");
    let one = target.one.show(&unit::PERCENT, 3);
    working
        .step(
            "chance that a single reading reaches the least, so that all of them do",
            "p_1",
            "100·(p_lot / 100)^(1 / n_r)",
            one,
            target::SUM,
        )
        .known(
            "p_lot",
            pass.chance.show(&unit::PERCENT, 1),
            (pass.chance.one() == target::USUAL_CHANCE.value).then_some(target::USUAL_CHANCE.source),
        )
        .given("n_r", Shown::plain(f64::from(pass.readings), 0));
    let deviations = Shown::plain(target.deviations, 4);
    let meaning =
        format!("standard deviations below the mean that a reading stays above with a chance of {one}");
    working.table("", "z", deviations, target::SUM).said(meaning);
    working
        .step(
            "mean coat of the load, so that the least is so many deviations below it",
            "t_Zn",
            "100·L / (100 − z·c_v)",
            outcome.mean.show(&unit::UM, 2),
            target::SUM,
        )
        .known("L", least.show(&unit::UM, 2), published)
        .given("z", deviations)
        .known("c_v", Shown::percent(outcome.scatter.0, 2), outcome.scatter.1);
}

/// A value that is published as long as the user has left it as it is.
fn default(symbol: &'static str, value: Shown, published: f64, source: Source) -> Term {
    let own = (value.number * value.unit.factor - published).abs() > 5e-4;
    Term::known(symbol, value, (!own).then_some(source))
}
