//! The nut that takes the coated thread of an order line.

use super::OrderLine;
use crate::coat::Process;
use crate::quantity::Length;
use crate::table::Refusal;
use crate::thread::ToleranceClass;
use crate::thread::class::BoltPosition;
use crate::thread::fit::{self, Assembly, Coat, DEFAULT_UNEVENNESS, Fit};
use crate::thread::limits::{self, BoltLimits, NutLimits};
use crate::thread::overtap::{self, Allowance};

/// What a coat asks of the nut.
#[derive(Debug, Clone)]
pub enum Answer {
    /// A washer has no thread.
    NoThread,
    /// The narrowest nut that takes the coat.
    Takes(Allowance, Box<Fit>),
    /// No published nut takes it; the widest of those that were tried.
    TooThick(Option<(Allowance, Box<Fit>)>),
    /// The limits of the thread are not known.
    Refused(Refusal),
}

/// The narrowest nut that takes a coat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Narrowest {
    /// There is no thread, or its limits are not known.
    Unknown,
    /// This one.
    Nut(Allowance),
    /// None that is published takes it.
    NoneTakes,
}

/// The thread of an order line and the nuts there are for it, looked up once for every coat.
#[derive(Debug)]
pub struct Mates {
    bolt: Option<Result<BoltLimits, Refusal>>,
    nuts: Vec<(Allowance, NutLimits)>,
    is_nut: bool,
}

impl Mates {
    /// The thread of this line; a washer has none.
    pub fn of(line: &OrderLine) -> Self {
        let threaded = line.part.has_mate();
        let nut = |allowance| Some((allowance, overtap::nut(line.thread, allowance).ok()?.limits));
        Self {
            bolt: threaded.then(|| limits::bolt(line.thread, bolt_class(line))),
            nuts: if threaded { allowances(line).filter_map(nut).collect() } else { Vec::new() },
            is_nut: line.part.is_nut(),
        }
    }

    /// Whether a nut takes a coat of this greatest thickness, and which is the narrowest.
    pub fn narrowest(&self, process: Process, max: Length) -> Narrowest {
        let Some(Ok(bare)) = &self.bolt else { return Narrowest::Unknown };
        match self.nut(bare, process, max) {
            Some((allowance, _)) => Narrowest::Nut(*allowance),
            None => Narrowest::NoneTakes,
        }
    }

    /// The narrowest nut that takes this coat, and how the coated thread fits it.
    pub fn take(&self, process: Process, min: Length, max: Length) -> Answer {
        let bare = match &self.bolt {
            None => return Answer::NoThread,
            Some(Err(refusal)) => return Answer::Refused(refusal.clone()),
            Some(Ok(bare)) => bare,
        };
        let both = |length: Length| self.both(process, length);
        let coat = Coat { min: both(min), max: both(max), unevenness: unevenness(process) };
        let fit = |nut: NutLimits| Box::new(fit::fit(*bare, coat, nut));
        match self.nut(bare, process, max) {
            Some(&(allowance, nut)) => Answer::Takes(allowance, fit(nut)),
            None => Answer::TooThick(self.nuts.last().map(|&(allowance, nut)| (allowance, fit(nut)))),
        }
    }

    fn nut(&self, bare: &BoltLimits, process: Process, max: Length) -> Option<&(Allowance, NutLimits)> {
        let max = self.both(process, max);
        let assembles = |nut: &NutLimits| fit::room(bare, nut, unevenness(process)).assembly(max);
        self.nuts.iter().find(|(_, nut)| assembles(nut) == Assembly::Assembles)
    }

    /// A nut for hot-dip is tapped after the bath; elsewhere the zinc of both halves shares the room.
    fn both(&self, process: Process, thickness: Length) -> Length {
        let halves = if self.is_nut && process != Process::HotDip { 2.0 } else { 1.0 };
        thickness * halves
    }
}

/// How unevenly the coat lies on a thread: molten zinc runs, powder and plating follow the surface.
pub fn unevenness(process: Process) -> f64 {
    if process == Process::HotDip { DEFAULT_UNEVENNESS.value } else { 0.0 }
}

/// The class a bolt has if none is written: 6g, 2A.
pub fn bolt_class(line: &OrderLine) -> ToleranceClass {
    match line.class.filter(|class| class.is_bolt()) {
        Some(class) => class,
        None if line.thread.is_metric() => ToleranceClass::bolt(6, BoltPosition::G),
        None => ToleranceClass::UnifiedBolt(2),
    }
}

/// The rules a nut can be tapped by, from none to the widest; an own allowance takes their place.
fn allowances(line: &OrderLine) -> impl Iterator<Item = Allowance> {
    let own = line.own_allowance.map(Allowance::Own);
    let published = if own.is_some() { &[] } else { published(line) };
    own.into_iter().chain(published.iter().copied())
}

fn published(line: &OrderLine) -> &'static [Allowance] {
    if !line.thread.is_metric() {
        &[Allowance::Standard, Allowance::A563]
    } else if line.thread.pitch() > Length::from_mm(1.6) {
        &[Allowance::Standard, Allowance::Az, Allowance::Ax]
    } else {
        // Below a pitch of 1.6 mm AX is the narrower of the two.
        &[Allowance::Standard, Allowance::Ax, Allowance::Az]
    }
}
