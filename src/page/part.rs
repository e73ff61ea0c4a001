//! The parts of an answer. Each is set anew only where what it shows has changed: a keystroke
//! touches a few of a thousand elements.

use std::rc::Rc;

use yew::prelude::*;

use super::element::{Element, component};
use super::picture::picture;
use super::state::State;
use super::working::working;
use super::{order, report};
use crate::calculator::{Figure, Finding, Problems, Report};
use crate::order::Assessment;

/// What was found.
#[derive(Clone)]
pub enum Found {
    /// By a calculator.
    Report(Rc<Report>),
    /// For an order line.
    Assessment(Rc<Assessment>),
    /// Nothing, and why.
    Problems(Rc<Problems>),
}

impl Found {
    /// Whether it is the same finding, and not only one like it.
    pub fn is(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Report(one), Self::Report(other)) => Rc::ptr_eq(one, other),
            (Self::Assessment(one), Self::Assessment(other)) => Rc::ptr_eq(one, other),
            (Self::Problems(one), Self::Problems(other)) => Rc::ptr_eq(one, other),
            _ => false,
        }
    }
}

/// A part of a report or an assessment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Part {
    /// Verdict and headline.
    Answer,
    /// The figures that answer the question; of an order line, how it was understood.
    Figures,
    /// The picture.
    Picture,
    /// Rule by rule.
    Findings,
    /// Further figures.
    Sections,
    /// One process of an order line.
    Process(usize),
    /// Its figures.
    ProcessFigures(usize),
    /// Its reasons.
    Reasons(usize),
    /// The working.
    Working,
    /// What to know besides.
    Notes,
    /// Cautions.
    Cautions,
    /// Sources.
    Sources,
}

#[derive(Properties)]
struct Props {
    part: Part,
    found: Found,
    state: UseReducerDispatcher<State>,
}

impl PartialEq for Props {
    fn eq(&self, other: &Self) -> bool {
        let (Props { part, found, .. }, true) = (self, self.part == other.part) else { return false };
        match (found, &other.found) {
            (Found::Report(one), Found::Report(other)) => same_in_report(*part, one, other),
            (Found::Assessment(one), Found::Assessment(other)) => same_in_assessment(*part, one, other),
            _ => false,
        }
    }
}

fn same_in_report(part: Part, one: &Report, other: &Report) -> bool {
    match part {
        Part::Answer => one.verdict == other.verdict && one.headline == other.headline,
        Part::Figures => one.figures == other.figures,
        Part::Picture => one.picture == other.picture,
        Part::Findings => one.findings == other.findings,
        Part::Sections => one.sections == other.sections,
        Part::Working => one.working == other.working,
        Part::Notes => one.notes == other.notes,
        Part::Cautions => one.cautions == other.cautions,
        Part::Sources => one.sources() == other.sources(),
        Part::Process(_) | Part::ProcessFigures(_) | Part::Reasons(_) => true,
    }
}

fn same_in_assessment(part: Part, one: &Assessment, other: &Assessment) -> bool {
    match part {
        Part::Answer => {
            let verdicts = |of: &Assessment| of.processes.each_ref().map(|process| process.verdict);
            one.headline == other.headline && verdicts(one) == verdicts(other)
        }
        Part::Figures => one.figures == other.figures,
        Part::Process(at) => one.processes.get(at) == other.processes.get(at),
        Part::ProcessFigures(at) => figures_of(one, at) == figures_of(other, at),
        Part::Reasons(at) => reasons_of(one, at) == reasons_of(other, at),
        Part::Notes => one.notes == other.notes,
        Part::Cautions => one.cautions == other.cautions,
        Part::Sources => order::sources_of(one) == order::sources_of(other),
        Part::Picture | Part::Findings | Part::Sections | Part::Working => true,
    }
}

fn figures_of(assessment: &Assessment, at: usize) -> Option<&Vec<Figure>> {
    assessment.processes.get(at).map(|process| &process.figures)
}

fn reasons_of(assessment: &Assessment, at: usize) -> Option<&Vec<Finding>> {
    assessment.processes.get(at).map(|process| &process.findings)
}

/// A part, where it has something to show.
#[component]
fn View(props: &Props) -> Html {
    let Props { part, found, state } = props;
    let shown = match found {
        Found::Report(report) => in_report(*part, report, state),
        Found::Assessment(assessment) => match *part {
            // Around parts that are set on their own.
            Part::Process(at) => assessment.processes.get(at).map(|process| {
                order::process(process, parts(&[Part::ProcessFigures(at), Part::Reasons(at)], found, state))
            }),
            part => in_assessment(part, assessment, state),
        },
        Found::Problems(_) => None,
    };
    shown.map_or_else(Html::default, Html::from)
}

fn in_report(part: Part, found: &Report, state: &UseReducerDispatcher<State>) -> Option<Element> {
    match part {
        Part::Answer => Some(report::answer(found)),
        Part::Figures => report::figures(&found.figures),
        Part::Picture => found.picture.as_ref().map(picture),
        Part::Findings => report::rules(&found.findings, state),
        Part::Sections => Some(report::sections(&found.sections)),
        Part::Working => working(found.working.steps()),
        Part::Notes => report::notes(&found.notes),
        Part::Cautions => Some(report::cautions(&found.cautions)),
        Part::Sources => report::sources(&found.sources()),
        Part::Process(_) | Part::ProcessFigures(_) | Part::Reasons(_) => None,
    }
}

fn in_assessment(part: Part, found: &Assessment, state: &UseReducerDispatcher<State>) -> Option<Element> {
    match part {
        Part::Answer => Some(order::answer(found)),
        Part::Figures => order::understood(found),
        Part::ProcessFigures(at) => report::figures(figures_of(found, at)?),
        Part::Reasons(at) => {
            let process = found.processes.get(at)?;
            Some(report::findings(&process.findings, process.process.key(), state))
        }
        Part::Notes => report::notes(&found.notes),
        Part::Cautions => Some(report::cautions(&found.cautions)),
        Part::Sources => report::sources(&order::sources_of(found)),
        Part::Process(_) | Part::Picture | Part::Findings | Part::Sections | Part::Working => None,
    }
}

/// Parts of what was found, one below the other.
pub fn parts(parts: &[Part], found: &Found, state: &UseReducerDispatcher<State>) -> Html {
    let view = |&part: &Part| component::<View>(Props { part, found: found.clone(), state: state.clone() });
    parts.iter().map(view).collect()
}
