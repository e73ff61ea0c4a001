//! How the figures came about: the hardest end, what was converted, the row of the bake.

use super::Outcome;
use crate::calculator::steel_fields;
use crate::coat::Process;
use crate::quantity::{Hardness, Quantity, unit};
use crate::rule::{self, Key};
use crate::steel::bake::Bake;
use crate::steel::{Converted, Level};
use crate::table::astm_b850;
use crate::working::Working;

/// The steps.
pub(super) fn working(outcome: &Outcome) -> Working {
    let mut working = Working::default();
    if let Ok((known, printed)) = outcome.steel.state.hardest_as_known()
        && let Some(source) = printed
    {
        working.table("greatest hardness of the grade", "H", known.show(), source);
    }
    let mut seen: Vec<Converted> = Vec::new();
    let of_hardest = outcome.hardest.iter().filter_map(|hardest| hardest.as_ref().ok()?.converted);
    let mut add = |converted: Converted, of| {
        if !seen.contains(&converted) {
            seen.push(converted);
            steel_fields::conversion(&mut working, &converted, of);
        }
    };
    of_hardest.for_each(|converted| add(converted, "the hardest end"));
    let compared = Process::ALL.into_iter().flat_map(|process| {
        let case = outcome.case(process);
        let compared = outcome.rulings(process);
        compared.into_iter().filter_map(move |ruling| ruling.rule.compared(&case)).collect::<Vec<_>>()
    });
    for compared in compared {
        if let Some(converted) = compared.converted {
            add(converted, "the hardest end");
        }
        if let Some(converted) = compared.limit_converted {
            add(converted, "the limit");
        }
    }
    if let Ok(Some(Bake { by, row })) = outcome.bake {
        let step = working.table(
            "shortest bake, by the row of the table",
            "t_bake",
            row.hours.show(&unit::HOUR, 0),
            astm_b850::TABLE_1_SOURCE,
        );
        let hrc = |number| Level::Hardness(Hardness::hrc(number));
        let (symbol, over, to) = match by {
            Level::Tensile(_) => ("Rm", Level::Tensile(row.over), Level::Tensile(row.to)),
            Level::Hardness(_) => ("HRC", hrc(row.hrc.0), hrc(row.hrc.1)),
        };
        step.given(symbol, by.show()).published("over", over.show(), astm_b850::TABLE_1_SOURCE).published(
            "to",
            to.show(),
            astm_b850::TABLE_1_SOURCE,
        );
    }
    if working.steps().is_empty() {
        // A strength that was typed and is compared in megapascals needs no table.
        if let Ok((known, _)) = outcome.steel.state.hardest_as_known() {
            working.table("hardest end, as given", "H", known.show(), rule::rule(Key::B850Bake).source);
        }
    }
    working
}
