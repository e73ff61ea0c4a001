//! The list of calculators with their worked examples.

use crate::calculator::{Address, Entry, REGISTER};
use yew::prelude::*;

/// Every calculator of the register.
pub fn list() -> Html {
    html! {
        <>
            <div class="title">
                <h1 id="title" tabindex="-1">{ "Calculators" }</h1>
                <p class="lead">{ "Each stands alone; each shows its working and where every number comes from." }</p>
            </div>
            <ul class="cards">{ for REGISTER.iter().map(card) }</ul>
        </>
    }
}

fn card(entry: &Entry) -> Html {
    let about = &entry.about;
    html! {
        <li class="panel card">
            <h2><a href={format!("#1/{}", about.id)}>{ about.title }</a></h2>
            <p>{ about.answers }</p>
            <details>
                <summary>{ format!("Worked examples, {}", about.examples.len()) }</summary>
                <ul>{ for about.examples.iter().map(|example| {
                    let address = Address::new(about.id, example.pairs.iter().copied().collect());
                    html! { <li><a href={format!("#{address}")}>{ example.title }</a></li> }
                }) }</ul>
            </details>
        </li>
    }
}
