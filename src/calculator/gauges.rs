//! Gauges and taps: what to gauge before and after the coat, which tap to order, which hole to make.

use super::thread_fields::{ALLOWANCE, BOLT_CLASS, THREAD};
use super::{About, Calculator, Missed, Problem, Reader, Report, Writer};
use crate::quantity::{Length, Unit};
use crate::table::Refusal;
use crate::thread::fit::{Coat, PITCH_GROWTH};
use crate::thread::gauge::{self, BeforeCoat, NutBeforeCoat};
use crate::thread::limits::{self, BoltLimits};
use crate::thread::overtap::{self, Allowance, Nut};
use crate::thread::tap::{self, Hole, Making, Tap};
use crate::thread::{Thread, ToleranceClass};

mod fields;
mod report;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct Gauges;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The thread.
    pub thread: Thread,
    /// The class of the bolt before its coat.
    pub bolt_class: ToleranceClass,
    /// How the nut is tapped.
    pub allowance: Allowance,
    /// The coat on the bolt.
    pub coat: Coat,
    /// The unit in which coats are shown.
    pub coat_unit: &'static Unit,
    /// The share of that coat that reaches the inside of a nut which is coated after tapping; 0 for a nut
    /// tapped after its coat.
    pub inside: f64,
    /// How the nut's thread is made.
    pub making: Making,
}

/// What it finds.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// The bolt before its coat.
    pub bolt: BoltLimits,
    /// The nut as it is mated.
    pub nut: Nut,
    /// The nut before its own coat.
    pub nut_before: NutBeforeCoat,
    /// The thread without allowance, 6h or 3A.
    pub basic: BoltLimits,
    /// The thickest coat after which the bolt still passes a GO gauge of basic size.
    pub quarter: Length,
    /// What to cut the bolt to so that the coated thread lies within 6h or 3A.
    pub before: Option<BeforeCoat>,
    /// The tap that leaves a margin inside the limits.
    pub tap: Result<Tap, Refusal>,
    /// The hole before the tap.
    pub hole: Hole,
}

impl Calculator for Gauges {
    const ABOUT: About = About {
        id: "gauges",
        title: "Gauges and taps",
        answers: "Gives GO and NOT-GO limits before and after the coat, the tap to order and the hole before it.",
        fields: &fields::FIELDS,
        examples: &fields::EXAMPLES,
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        fields::read(reader)
    }

    fn write(input: &Input, writer: &mut Writer) {
        fields::write(input, writer);
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let bolt =
            limits::bolt(input.thread, input.bolt_class).map_err(|refusal| BOLT_CLASS.refused(refusal))?;
        let nut =
            overtap::nut(input.thread, input.allowance).map_err(|refusal| ALLOWANCE.refused(refusal))?;
        of_pair(input, bolt, nut)
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

/// The gauges of a bolt and a nut whose limits are known.
///
/// # Errors
/// A thread that has no class without allowance.
pub fn of_pair(input: &Input, bolt: BoltLimits, nut: Nut) -> Result<Outcome, Problem> {
    let Input { thread, coat, inside, making, .. } = *input;
    let basic = gauge::basic(thread).map_err(|refusal| THREAD.refused(refusal))?;
    // Of the bolt as it is made: its thread may be smaller than its class has it.
    let quarter = bolt.allowance() / PITCH_GROWTH;
    let inner = Coat::even(inside * coat.min, inside * coat.max);
    let nut_before = gauge::nut_before_coat(&nut.limits, inner);
    let allowance = nut.allowance.value + nut_before.larger;
    let tapped = nut_before.limits(&nut.limits);
    Ok(Outcome {
        bolt,
        nut,
        nut_before,
        basic,
        quarter,
        before: gauge::before_coat(&bolt, &basic, coat),
        tap: tap::tap(thread, &tapped, allowance, making),
        hole: tap::hole(thread, nut.allowance.value + nut_before.minor_larger, making),
    })
}
