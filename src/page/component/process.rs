//! One process of an order line: its verdict, its figures, its reasons.

use yew::prelude::*;

use super::figure::figures;
use super::finding::findings;
use super::verdict::verdict;
use crate::order::ProcessAssessment;
use crate::page::reducer::Dispatch;

/// One process, in a panel.
pub fn process(assessed: &ProcessAssessment, dispatch: &Dispatch) -> Html {
    let ProcessAssessment { process, verdict: found, figures: shown, findings: said, .. } = assessed;
    let id = process.key();
    html! {
        <section class="panel process" aria-labelledby={id}>
            <h2 {id} tabindex="-1">
                { process.name() }{ " " }<span class="vessel">{ process.vessel() }</span>
            </h2>
            <p>{ verdict(*found) }</p>
            { figures(shown, false) }
            { findings(said, id, dispatch) }
        </section>
    }
}
