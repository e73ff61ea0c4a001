//! The steps of the answer.

use super::{Input, Outcome};
use crate::calculator::thread_fields::Ruler;
use crate::quantity::{Length, Shown};
use crate::source::document;
use crate::table::iso_965_1::{Tolerance, tolerance};
use crate::table::{asme_b94_9, iso_2857};
use crate::thread::tap::{Making, Name};
use crate::thread::{coat_room, gauge};
use crate::working::Working;

pub(super) fn working(input: &Input, outcome: &Outcome, ruler: Ruler) -> Working {
    let (nut, bolt) = (outcome.nut.limits, outcome.bolt);
    let sum = document::ARITHMETIC.computed("sums and differences of limits");
    let mut working = Working::default();
    working.topic("The nut");
    working
        .step("GO plug for the nut", "D2min", "D2 + EI", ruler.size(nut.pitch.min), sum)
        .given("D2", ruler.size(input.thread.pitch_diameter()))
        .published("EI", ruler.exact(nut.deviation.value), nut.deviation.source);
    working.topic("The bolt");
    working
        .step(
            "thickest coat that passes a GO ring of basic size",
            "t_go",
            "a / 4",
            ruler.fine(outcome.quarter),
            coat_room::quarter_source(input.thread),
        )
        .published("a", ruler.exact(bolt.allowance()), bolt.deviation.source);
    if let Some(before) = outcome.before {
        if before.pitch.max < bolt.pitch.max {
            working
                .step(
                    "greatest pitch diameter before the coat",
                    "d2before",
                    "d2basic − 4 · t_max",
                    ruler.size(before.pitch.max),
                    gauge::BEFORE_COAT,
                )
                .given("d2basic", ruler.size(outcome.basic.pitch.max))
                .given("t_max", ruler.fine(input.coat.max));
        } else {
            let meaning =
                "greatest pitch diameter before the coat: that of the class, whose allowance takes the coat";
            working.table(meaning, "d2before", ruler.size(before.pitch.max), bolt.pitch_tolerance.source);
        }
        working
            .step(
                "least pitch diameter before the coat",
                "d2least",
                "d2min − 4 · t_min",
                ruler.size(before.pitch.min),
                gauge::BEFORE_COAT,
            )
            .given("d2min", ruler.size(bolt.pitch.min))
            .given("t_min", ruler.fine(input.coat.min));
    }
    working.topic("The tap");
    if outcome.nut_before.larger > Length::ZERO {
        working
            .step(
                "least pitch diameter of the nut before its own coat",
                "D2before",
                "D2min + 4 · t_in",
                ruler.size(outcome.nut_before.pitch.min),
                gauge::BEFORE_COAT,
            )
            .given("D2min", ruler.size(nut.pitch.min))
            .given("t_in", ruler.fine(input.inside * input.coat.max));
    }
    tap(input, outcome, ruler, &mut working);
    if input.making == Making::Cut {
        let coated = outcome.nut_before.minor_larger > Length::ZERO;
        let step = working
            .step(
                "hole before the tap",
                "d_h",
                if coated { "d_s + z + 2 · t_in" } else { "d_s + z" },
                ruler.size(outcome.hole.diameter),
                sum,
            )
            .published("d_s", ruler.exact(outcome.hole.standard.value), outcome.hole.standard.source)
            .published("z", ruler.exact(outcome.nut.allowance.value), outcome.nut.allowance.source);
        if coated {
            step.given("t_in", ruler.fine(input.inside * input.coat.max));
        }
    }
    working
}

fn tap(input: &Input, outcome: &Outcome, ruler: Ruler, working: &mut Working) {
    let Ok(tap) = &outcome.tap else { return };
    let basic = ruler.size(input.thread.pitch_diameter());
    match tap.name {
        Name::Iso(_, oversize) => {
            let grade = iso_2857::GRADE;
            let (d, p) = (input.thread.diameter(), input.thread.pitch());
            let Ok(t) = tolerance(Tolerance::NutPitch, grade, d, p) else { return };
            working
                .step(
                    "least pitch diameter of the tap",
                    "D2tap",
                    "D2 + z + x · t",
                    ruler.size(tap.pitch.min),
                    tap.source,
                )
                .given("D2", basic)
                .given("z", ruler.exact(oversize))
                .published("x", Shown::plain(iso_2857::CLASS_2.from, 1), iso_2857::SOURCE)
                .published("t", ruler.exact(t.value), t.source);
        }
        Name::Number(making, number) | Name::Plus(making, number, _) => {
            let plus = if let Name::Plus(.., oversize) = tap.name { oversize } else { Length::ZERO };
            let step = match making {
                Making::Cut => asme_b94_9::STEP.source,
                Making::Formed => asme_b94_9::FORMING_STEP,
            };
            working
                .step(
                    "least pitch diameter of the tap",
                    "D2tap",
                    "D2 + (n − 1) · w + z",
                    ruler.size(tap.pitch.min),
                    tap.source,
                )
                .given("D2", basic)
                .given("n", Shown::plain(f64::from(number), 0))
                .published("w", ruler.exact(asme_b94_9::STEP.value), step)
                .given("z", ruler.exact(plus));
        }
    }
}
