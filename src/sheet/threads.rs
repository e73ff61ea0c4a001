//! The limits of the threads and their gauges, before and after the coat.

use super::{Block, Look, Row};
use crate::calculator::gauges::{self, Gauges};
use crate::calculator::{Calculator, Mark, Report};
use crate::order::{Assessed, Judged};
use crate::process::Process;
use crate::quantity::{Length, unit};
use crate::source::Source;
use crate::thread::fit::Coat;
use crate::thread::limits;
use crate::thread::overtap::{Allowance, Nut, standard_class};
use crate::thread::pair::{Found, Mated, Room};
use crate::thread::tap::Making;

/// The block of an order whose threads take the coat.
pub(super) fn block(assessed: &Assessed, judged: &Judged, sources: &mut Vec<Source>) -> Option<Block> {
    let Some(Found::Takes(mated)) = &judged.fit else { return None };
    let report = report(assessed, judged, mated)?;
    let line = &assessed.line;
    let [bolt, nut] = if line.goes_into_a_tapped_hole() { ["Screw", "Hole"] } else { ["Bolt", "Nut"] };
    let mut rows = Vec::new();
    let mut sections = report.sections.iter();
    let nut_when = match judged.process {
        Process::HotDip => "tapped after the coat",
        Process::Mechanical => "before its coat",
        Process::Electroplated => "with its coat",
    };
    // In the order of the calculator: the bolt before and after the coat, then the nut.
    let titles = [
        format!("{bolt} {} before the coat", mated.pair.class),
        format!("{bolt} after the coat"),
        format!("{nut}, {nut_when}"),
    ];
    for (title, section) in titles.into_iter().zip(&mut sections) {
        rows.push(Row::said(title, ""));
        for figure in &section.figures {
            sources.extend(figure.source);
            let row = Row::figure(figure);
            // GO and NOT-GO on the pitch diameter are what is gauged; the rest gives way on a full page.
            let is_main = figure.name.contains("GO") && figure.name.contains("pitch diameter");
            rows.push(if is_main { row } else { row.may_go() });
        }
    }
    // Whether the coat fits was judged already, on these very limits.
    let after = report
        .findings
        .iter()
        .filter(|finding| finding.mark < Mark::Condition && finding.text.starts_with("A coat of"));
    rows.extend(after.map(|finding| Row::said("", finding.text.clone()).may_go()));
    let tap =
        report.figures.iter().filter(|figure| ["Tap", "Tap over size by"].contains(&figure.name.as_ref()));
    rows.extend(tap.map(|figure| Row::figure(figure).may_go()));
    Some(Block::new("Threads and gauges", Look::Half, rows))
}

/// What the calculator of gauges says of the pair that was found, at its own limits.
fn report(assessed: &Assessed, judged: &Judged, mated: &Mated) -> Option<Report> {
    let thread = assessed.line.thread?;
    let offer = judged.offer.as_ref()?;
    let nut = mated.pair.nut;
    let allowance = match mated.pair.room {
        Room::Tapped(allowance) => allowance,
        _ if nut.deviation.value > Length::ZERO => Allowance::Own(nut.deviation.value),
        _ => Allowance::Standard,
    };
    let input = gauges::Input {
        thread,
        bolt_class: mated.pair.class,
        allowance,
        coat: Coat::even(offer.min, offer.max),
        coat_unit: if thread.is_metric() { &unit::UM } else { &unit::MIL },
        // The nut is gauged as it is tapped: after the bath, or before the barrel.
        inside: 0.0,
        making: Making::Cut,
    };
    let standard = limits::nut(thread, standard_class(thread)).ok()?;
    let nut = Nut { limits: nut, standard, allowance: nut.deviation };
    let outcome = gauges::of_pair(&input, mated.pair.bolt, nut).ok()?;
    Some(Gauges::explain(&input, &outcome))
}
