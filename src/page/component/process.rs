//! One process of an order line: its verdict, its figures, its reasons.

use yew::prelude::*;

use super::figure::Figures;
use super::finding::Findings;
use super::verdict::verdict;
use crate::order::ProcessAssessment;

/// What the process needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What it is to the order line.
    pub process: ProcessAssessment,
}

/// One process, in a panel.
#[component]
pub fn Process(props: &Props) -> Html {
    let ProcessAssessment { process, verdict: found, figures, findings, .. } = &props.process;
    let id = process.key();
    html! {
        <section class="panel process" aria-labelledby={id}>
            <h2 {id} tabindex="-1">
                { process.name() }{ " " }<span class="vessel">{ process.vessel() }</span>
            </h2>
            <p>{ verdict(*found) }</p>
            <Figures figures={figures.clone()} />
            <Findings findings={findings.clone()} place={id} />
        </section>
    }
}
