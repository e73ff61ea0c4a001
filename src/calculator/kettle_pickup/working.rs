//! The sums of a load of the kettle, step by step.

use super::{Input, Outcome, fields};
use crate::calculator::load::SUM;
use crate::quantity::{PlainNumber, Quantity, Shown, Time, unit};
use crate::steel::tempering;
use crate::working::Working;

pub(super) fn working(input: &Input, outcome: &Outcome) -> Working {
    let zinc = &outcome.zinc;
    let mut working = outcome.load.working(&input.stated);
    let on_parts = zinc.on_parts.show(&unit::KG, 3);
    let factor = (input.factor.min, Some(input.factor.source));
    outcome.load.zinc(&mut working, factor, (input.coat.quantity, None), on_parts);
    if let (Some(share), Some(mass)) = (outcome.share, outcome.load.mass) {
        working
            .step("zinc for the weight of steel", "p", "100·Z / M", Shown::percent(share, 2), SUM)
            .given("Z", on_parts)
            .given("M", mass.show(&unit::KG, 2));
    }
    let percent = |share: Option<PlainNumber>| Shown::percent(share.map_or(0.0, PlainNumber::one), 2);
    if input.knows_losses() {
        working
            .step(
                "zinc fed to the kettle: what dross and ash leave of it is on the parts",
                "F",
                "Z / (1 − (x_d + x_a) / 100)",
                zinc.fed.show(&unit::KG, 3),
                SUM,
            )
            .given("Z", on_parts)
            .given("x_d", percent(input.dross))
            .given("x_a", percent(input.ash));
    }
    if let (Some(cost), Some(price)) = (outcome.cost, input.price) {
        working
            .step("cost at your price of a kilogram", "K", "c·F", Shown::plain(cost, 2), SUM)
            .given("c", Shown { number: price.quantity.one(), unit: &fields::PER_KG, decimals: 4 })
            .given("F", zinc.fed.show(&unit::KG, 3));
    }
    working.topic("The bath");
    if let (Some(_), Some(mass), Some(basket)) = (outcome.baskets, outcome.load.mass, input.basket) {
        working
            .step("baskets, before rounding up", "B", "M / M_B", Shown::plain(mass / basket.quantity, 2), SUM)
            .given("M", mass.show(&unit::KG, 2))
            .given("M_B", basket.quantity.show(&unit::KG, 2));
    }
    let against = outcome.heat.1.as_ref().and_then(|effect| effect.as_ref().ok()?.temper);
    let limit = outcome.longest_dip.filter(|&(_, longest)| longest <= Time::from_hour(1.0));
    if let (Some((bath, longest)), Some(against)) = (limit, against) {
        // As many digits as tell a dip of seconds.
        let minutes = longest.minute();
        let decimals = if minutes >= 1.0 { 1 } else { (1.0 - minutes.log10()).clamp(1.0, 9.0) as u8 };
        working
            .step(
                "longest dip whose heat is no stronger than the temper, in minutes",
                "t_T",
                "60·10^(P_T / T − 20)",
                longest.show(&unit::MINUTE, decimals),
                tempering::PARAMETER_SOURCE,
            )
            .known(
                "P_T",
                Shown { number: against.parameter, unit: &unit::TEMPERING_PARAMETER, decimals: 1 },
                against.temper.least_of,
            )
            .given("T", bath.show(&unit::KELVIN, 2));
    }
    working
}
