//! The steps of the answer.

use super::{Input, Outcome, Way};
use crate::calculator::thread_fields::Ruler;
use crate::quantity::Shown;
use crate::source::{Source, document};
use crate::thread::fit::{self, Diameter};
use crate::thread::undersize;
use crate::working::Working;

const ADDITION: Source = document::ARITHMETIC.computed("sums and differences of limits");

/// From the limits of bolt and nut to the room for the coat.
pub(super) fn working(input: &Input, outcome: &Outcome, ruler: Ruler) -> Working {
    let fit = &outcome.fit;
    let (nut, bare) = (fit.nut, fit.bare);
    let growth = fit::GROWTH;
    let widest = input.coat.max * (1.0 + input.coat.unevenness);
    let mut working = Working::default();
    working.topic("Limits before the coat");
    working
        .step(
            "greatest pitch diameter of the bolt before the coat",
            "d2max",
            "d2 − a",
            ruler.size(bare.pitch.max),
            ADDITION,
        )
        .given("d2", ruler.size(input.thread.pitch_diameter()))
        .published("a", ruler.exact(bare.allowance()), bare.deviation.source);
    working
        .step("least pitch diameter of the nut", "D2min", "D2 + EI", ruler.size(nut.pitch.min), ADDITION)
        .given("D2", ruler.size(input.thread.pitch_diameter()))
        .published("EI", ruler.exact(nut.deviation.value), nut.deviation.source);
    working
        .step(
            "greatest pitch diameter of the nut",
            "D2max",
            "D2min + TD2",
            ruler.size(nut.pitch.max),
            ADDITION,
        )
        .given("D2min", ruler.size(nut.pitch.min))
        .published("TD2", ruler.exact(nut.pitch_tolerance.value), nut.pitch_tolerance.source);
    working.topic("With the coat");
    working
        .step("greatest coat on the flanks", "t_flank", "t · (1 + u)", ruler.fine(widest), ADDITION)
        .given("t", ruler.fine(input.coat.max))
        .given("u", Shown::plain(input.coat.unevenness, 3));
    working
        .step(
            "greatest pitch diameter of the bolt after the coat",
            "d2c",
            "d2max + 4 · t_flank",
            ruler.size(fit.coated.pitch.max),
            growth,
        )
        .given("d2max", ruler.size(bare.pitch.max))
        .given("t_flank", ruler.fine(widest));
    working
        .step(
            "greatest major diameter of the bolt after the coat",
            "d_c",
            "d_max + 2 · t",
            ruler.size(fit.coated.major.max),
            growth,
        )
        .given("d_max", ruler.size(bare.major.max))
        .given("t", ruler.fine(input.coat.max));
    working
        .step(
            "clearance on the pitch diameter at the worst corner",
            "c2",
            "D2min − d2c",
            ruler.size(fit.pitch.min),
            ADDITION,
        )
        .given("D2min", ruler.size(nut.pitch.min))
        .given("d2c", ruler.size(fit.coated.pitch.max));
    working.topic("The coat that still fits");
    thickest(&mut working, outcome, ruler);
    if input.way == Way::Under {
        undercut_area(&mut working, input, outcome, ruler);
    }
    working
}

/// The thickest even coat, on the diameter that sets it.
fn thickest(working: &mut Working, outcome: &Outcome, ruler: Ruler) {
    let fit = &outcome.fit;
    let (formula, nut, bolt) = match fit.worst.governs {
        Diameter::Pitch => {
            ("(D2min − d2max) / 4", ("D2min", fit.nut.pitch.min), ("d2max", fit.bare.pitch.max))
        }
        Diameter::Major => {
            ("(D_min − d_max) / 2", ("D_min", fit.nut.major_min), ("d_max", fit.bare.major.max))
        }
        Diameter::Minor => {
            ("(D1min − d1max) / 2", ("D1min", fit.nut.minor.min), ("d1max", fit.bare.minor_max))
        }
    };
    working
        .step("", "t_even", formula, ruler.fine(fit.worst.thickest_even), fit::GROWTH)
        .said(format!("thickest even coat, set by the {}", fit.worst.governs.name()))
        .given(nut.0, ruler.size(nut.1))
        .given(bolt.0, ruler.size(bolt.1));
}

fn undercut_area(working: &mut Working, input: &Input, outcome: &Outcome, ruler: Ruler) {
    let Ok(bolt) = undersize::bolt(input.thread) else { return };
    working
        .step(
            "stress area of the bolt cut under",
            "As",
            "π / 4 · ((d2az + d3az) / 2)^2",
            ruler.area(outcome.stress_area),
            undersize::STRESS_AREA,
        )
        .given("d2az", ruler.size(bolt.pitch_diameter))
        .given("d3az", ruler.size(bolt.root_diameter));
}
