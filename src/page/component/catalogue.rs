//! The list of calculators with their worked examples.

use yew::prelude::*;

use super::title::title;
use crate::calculator::{Address, Entry, REGISTER};

/// Every calculator of the register.
pub fn catalogue() -> Html {
    html! {
        <>
            { title("Calculators", "Each stands alone; each shows its working and where every number comes from.", None) }
            <ul class="cards">{ for REGISTER.iter().map(card) }</ul>
        </>
    }
}

fn card(entry: &'static Entry) -> Html {
    let about = &entry.about;
    let example = |example: &crate::calculator::Example| {
        let address = Address::new(about.id, example.pairs.iter().copied().collect());
        html! { <li><a href={format!("#{address}")}>{ example.title }</a></li> }
    };
    html! {
        <li class="panel card">
            <h2><a href={format!("#1/{}", about.id)}>{ about.title }</a></h2>
            <p>{ about.answers }</p>
            <details>
                <summary>{ format!("Worked examples, {}", about.examples.len()) }</summary>
                <ul>{ for about.examples.iter().map(example) }</ul>
            </details>
        </li>
    }
}
