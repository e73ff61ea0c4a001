//! The steps of the answer.

use super::{Answer, Input, Method, Outcome};
use crate::calculator::thread_fields::{Ruler, thickness};
use crate::quantity::Shown;
use crate::thread::coat_room::{Coated, NutChoice};
use crate::thread::fit::GROWTH;
use crate::thread::pair::INSIDE_SHARE;
use crate::thread::{limits, overtap};
use crate::working::Working;

/// The thickest coat of every pair tried.
pub(super) fn working(input: &Input, outcome: &Outcome) -> Working {
    let mut working = Working::default();
    for answer in outcome.answers.iter().flatten() {
        step(input, answer, &mut working);
    }
    working
}

/// How the thickest coat of a pair comes about. A pair whose limits are not known gave no answer.
fn step(input: &Input, answer: &Answer, working: &mut Working) {
    let ruler = Ruler::of(input.thread);
    let Ok(bolt) = limits::bolt(input.thread, answer.pair.bolt) else { return };
    let meaning = format!("thickest coat for bolt {} in nut {}", answer.pair.bolt, answer.pair.nut);
    let step = match input.rule {
        Method::Quarter => working
            .step("", "t_max", "a / 4", ruler.fine(answer.thickest), answer.source)
            .published("a", ruler.exact(bolt.allowance()), bolt.deviation.source),
        Method::Iso4042(_) => {
            working.table("", "t_max", thickness(answer.thickest, input.coat_unit), answer.source)
        }
        Method::Corner { unevenness, coated, inside } => {
            let nut = match answer.pair.nut {
                NutChoice::ToleranceClass(class) => limits::nut(input.thread, class),
                NutChoice::Over(allowance) => overtap::nut(input.thread, allowance).map(|nut| nut.limits),
            };
            let Ok(nut) = nut else { return };
            working
                .step("", "t_max", "(D2min − d2max) / (4 · (1 + u) · n)", ruler.fine(answer.thickest), GROWTH)
                .given("D2min", ruler.size(nut.pitch.min))
                .given("d2max", ruler.size(bolt.pitch.max))
                .given("u", Shown::plain(unevenness, 3))
                .known(
                    "n",
                    Shown::plain(coated.parts(inside), if coated == Coated::Shared { 4 } else { 0 }),
                    (coated == Coated::Shared).then_some(INSIDE_SHARE.source),
                )
        }
    };
    step.said(meaning);
}
