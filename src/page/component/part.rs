//! A part of what stands behind an answer, which is set anew only where it has changed.

use std::rc::Rc;

use yew::prelude::*;

use super::figure::figures;
use super::finding::rules;
use super::line_read::as_read;
use super::process::process;
use super::section::sections;
use super::source::sources;
use super::step::working;
use crate::calculator::{Figure, Finding, Form, Section};
use crate::order::ProcessAssessment;
use crate::page::hook::use_painted;
use crate::page::reducer::use_dispatch;
use crate::page::state::WrittenLine;
use crate::source::Source;
use crate::working::Working;

/// What there is to set.
#[derive(Clone, PartialEq)]
pub enum Piece {
    /// The figures of an answer.
    Figures(Vec<Figure>),
    /// What each rule says.
    Rules(Vec<Finding>),
    /// Further figures, in groups.
    Sections(Vec<Section>),
    /// The steps, and which of them gives the answer.
    Working(Working, usize),
    /// The documents.
    Sources(Vec<Source>),
    /// One process of an order line.
    Process(ProcessAssessment),
    /// A written line, and the form that it fills.
    Line(WrittenLine, Rc<Form>),
}

/// What the part needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What there is to set.
    pub piece: Piece,
}

/// A part. One component for all of them: each further one would cost the page some kilobytes.
#[component]
pub fn Part(props: &Props) -> Html {
    let dispatch = use_dispatch();
    match &props.piece {
        Piece::Figures(all) => figures(all, false),
        Piece::Rules(all) => rules(all, &dispatch),
        Piece::Sections(all) => sections(all),
        Piece::Working(steps, answer) => working(steps, *answer),
        Piece::Sources(all) => sources(all),
        Piece::Process(assessed) => process(assessed, &dispatch),
        Piece::Line(line, form) => as_read(line, form, &dispatch),
    }
}

/// A part that follows the answer by one picture of the screen.
#[component]
pub fn Later(props: &Props) -> Html {
    let piece = use_painted(props.piece.clone());
    html! { <Part {piece} /> }
}
