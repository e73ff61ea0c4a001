//! The steps from a load of parts to the charge of a barrel.

use super::explain::each;
use super::{Input, Outcome};
use crate::calculator::load::SUM;
use crate::coat::barrel;
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
    let copper = charge.copper.show(&unit::G, 1);
    let coat = (input.coat, input.class.map(|(_, source)| source));
    outcome.load.zinc(&mut working, input.deposit, coat, deposit);
    working
        .step("zinc powder to weigh in", "W", "100·Z / η", powder, practice::YIELD.source)
        .given("Z", deposit)
        .term(default("η", Shown::percent(input.yielded, 1), practice::YIELD.value, practice::YIELD.source));
    let number = Term {
        symbol: "N",
        value: Shown::plain(f64::from(outcome.additions.0), 0),
        source: outcome.additions.1,
    };
    working
        .step(
            "zinc powder in each addition",
            "w",
            "W / N",
            each(charge.powder, f64::from(outcome.additions.0)).show(&unit::KG, 3),
            outcome.additions.1.unwrap_or(SUM),
        )
        .given("W", powder)
        .term(number);
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
    let heap = parts.show(&unit::LITRE, 2);
    working
        .step("heap of parts, in litres", "V_p", "100·M / (ρ·φ)", heap, practice::PARTS_PER_VOLUME.source)
        .given("M", mass.show(&unit::KG, 2))
        .published("ρ", STEEL.value.show(&unit::G_CM3, 2), STEEL.source)
        .term(default(
            "φ",
            Shown::percent(input.solid_share, 1),
            barrel::usual_solid_share(STEEL.value),
            barrel::USUAL_SOLID_SHARE_SOURCE,
        ));
    working
        .step(
            "glass beads, in litres",
            "V_b",
            "b·V_p",
            beads.show(&unit::LITRE, 2),
            practice::BEADS_TO_PARTS.source,
        )
        .term(default(
            "b",
            Shown::plain(input.bead_ratio, 2),
            practice::BEADS_TO_PARTS.value,
            practice::BEADS_TO_PARTS.source,
        ))
        .given("V_p", heap);
    working
        .step(
            "glass beads, in kilograms",
            "M_b",
            "ρ_g·p·V_b",
            barrel::bead_mass(beads).show(&unit::KG, 1),
            barrel::BEAD_PACKING.source,
        )
        .published(
            "ρ_g",
            Shown { number: practice::GLASS.value, unit: &unit::G_CM3, decimals: 1 },
            practice::GLASS.source,
        )
        .published("p", Shown::plain(barrel::BEAD_PACKING.value, 1), barrel::BEAD_PACKING.source)
        .given("V_b", beads.show(&unit::LITRE, 2));
    if let Some((min, _)) = outcome.working_volume {
        working
            .step(
                "barrel loads, before rounding up; at the least working volume",
                "L",
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
                "v / (π·D)",
                Shown { number: fast, unit: &unit::TURNS_MINUTE, decimals: 1 },
                practice::SURFACE_SPEED.source,
            )
            .published("v", Shown::plain(practice::SURFACE_SPEED.value.1, 0), practice::SURFACE_SPEED.source)
            .given("D", diameter.show(&unit::M, 3));
    }
    working
}

/// A value that is published as long as the user has left it as it is.
fn default(symbol: &'static str, value: Shown, published: f64, source: Source) -> Term {
    let own = (value.number * value.unit.factor - published).abs() > 5e-4;
    Term { symbol, value, source: (!own).then_some(source) }
}
