//! Which of the processes to take.
//!
//! Of what suits, then of what suits on conditions, the one with the fewest conditions; among equals
//! the one that is sure of the years wanted; then hot-dip for thick coats on large threads in open
//! air, mechanical for hard steel, washers, rings and small threads, electroplating in dry places.

use std::cmp::Reverse;

use super::OrderLine;
use super::demand::Demand;
use super::judge::{Judged, Judgement};
use crate::calculator::Verdict;
use crate::coat::Process;
use crate::quantity::{Length, Scale};
use crate::site::Category;
use crate::steel::Measure;
use crate::table::practice;

/// From this diameter on a thread is large enough for hot-dip to be the first thought: 12 mm, 1/2 in.
const LARGE: Length = Length::from_mm(12.0);

/// The process to take, as its place among the three; `None` where all are ruled out. What the order
/// asks for comes first, unless it is ruled out, and of two that it names either before the third; what it does not
/// want is never taken.
pub fn recommended(line: &OrderLine, judgement: &Judgement) -> Option<usize> {
    let asked = line.asked.and_then(|asked| asked.process());
    let is_asked = |judged: &Judged| Some(judged.process) == asked && judged.verdict() != Verdict::RuledOut;
    if let Some(place) = judgement.processes.iter().position(is_asked) {
        return Some(place);
    }
    let rank = |judged: &Judged| {
        (
            // Of what is not asked for none comes before another by this.
            !line.asked.is_some_and(|asked| asked.is_either(judged.process)),
            judged.verdict(),
            conditions(judgement, judged).count(),
            Reverse(judged.is_sure()),
            preference(judgement, judged.process),
        )
    };
    let open = judgement
        .processes
        .iter()
        .enumerate()
        .filter(|(_, judged)| judged.verdict() != Verdict::RuledOut && is_wanted(line, judged.process));
    open.min_by_key(|(_, judged)| rank(judged)).map(|(place, _)| place)
}

/// Whether the order does not leave the process out.
pub fn is_wanted(line: &OrderLine, process: Process) -> bool {
    !line.left_out.holds(process)
}

/// What has to be proved, agreed or said before the process can be taken.
pub fn conditions<'j>(
    judgement: &Judgement,
    judged: &'j Judged,
) -> impl Iterator<Item = &'j Demand> + use<'j> {
    judgement.demands(judged).iter().filter(|demand| demand.is_condition())
}

/// Whether the steel is harder than what is hot-dipped, or its case is.
pub fn is_hard(judgement: &Judgement) -> bool {
    judgement.main().and_then(|main| main.steel.as_ref()).is_some_and(|steel| {
        let hrc = steel.state.hardest(Measure::Scale(Scale::Hrc));
        steel.state.is_cased()
            || hrc.is_ok_and(|hrc| hrc.as_compared().number() > practice::HOT_DIP_TO.value.number)
    })
}

/// The first thought is 0.
fn preference(judgement: &Judgement, process: Process) -> u8 {
    let Some(main) = judgement.main() else { return 0 };
    let place = judgement.site.place;
    let dry = place.is_some_and(|place| place.harshest <= Category::C2);
    let hard = is_hard(judgement);
    let barrel = hard || main.part.kind.is_flat() || !main.part.kind.has_mate();
    let small = main.part.thread.is_some_and(|thread| thread.diameter() < LARGE);
    let order = match () {
        () if barrel => [Process::Mechanical, Process::HotDip, Process::Electroplated],
        () if dry => [Process::Electroplated, Process::Mechanical, Process::HotDip],
        () if small => [Process::Mechanical, Process::HotDip, Process::Electroplated],
        () => [Process::HotDip, Process::Mechanical, Process::Electroplated],
    };
    order.iter().position(|one| *one == process).map_or(u8::MAX, |place| place as u8)
}
