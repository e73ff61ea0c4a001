//! In the place of the result: what is wrong or missing, each with a way to its field.

use yew::prelude::*;

use super::field::id_of;
use crate::calculator::{Fault, Problem, Problems};
use crate::page::browser;

/// What is wrong or missing.
pub fn problem_list(problems: &Problems) -> Html {
    let title = if problems.only_missing() { "Still to fill in" } else { "No result while this is open" };
    let item = |problem: &Problem| {
        let id = id_of(problem.field);
        let go = {
            let id = id.clone();
            move |event: MouseEvent| {
                event.prevent_default();
                browser::focus(&id);
            }
        };
        html! {
            <li>
                <a href={format!("#{id}")} onclick={go}>{ problem.label }</a>
                if problem.fault != Fault::Missing { { ": " }{ problem.fault.to_string() } }
            </li>
        }
    };
    let list = if problems.only_missing() { "missing" } else { "" };
    html! {
        <div class="problems">
            <h2>{ title }</h2>
            <ul class={list}>{ for problems.iter().map(item) }</ul>
        </div>
    }
}
