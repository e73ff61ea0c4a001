//! What is chosen and written before a sheet is printed.

use yew::platform::spawn_local;
use yew::prelude::*;

use super::control::{chosen, option};
use super::typed::typed;
use crate::page::browser;
use crate::page::reducer::Dispatch;
use crate::page::state::{Action, Paper, Written};
use crate::process::Process;
use crate::sheet::price::By;
use crate::sheet::{Offered, Prices};

/// What there is to choose and to write.
pub(super) struct Choices<'a> {
    /// The sheets to choose from.
    pub offered: &'a [Offered],
    /// Which sheet, and what stands at its head.
    pub paper: &'a Paper,
    /// Own prices, where they are asked.
    pub prices: Option<&'a Prices>,
    /// The reply to the customer, for an order.
    pub reply: Option<String>,
}

/// The form before a sheet.
pub(super) fn sheet_form(
    choices: Choices<'_>,
    dispatch: &Dispatch,
    said: &UseStateHandle<AttrValue>,
) -> Html {
    let Choices { offered, paper, prices, reply } = choices;
    let note = |part: Written, text: String| Action::Note(part, text);
    let which = {
        let dispatch = dispatch.clone();
        move |event: Event| dispatch.dispatch(note(Written::Which, chosen(&event)))
    };
    let field = |id: &'static str, label: &'static str, part: Written, text: &str| {
        let dispatch = dispatch.clone();
        let write = move |event: InputEvent| dispatch.dispatch(note(part, typed(&event)));
        text_field(id, label, text, write.into())
    };
    let copy = reply.map(|reply| {
        let said = said.clone();
        let copy = move |_: MouseEvent| {
            let (said, reply) = (said.clone(), reply.clone());
            spawn_local(async move {
                let copied = browser::copy(&reply).await;
                said.set(if copied { "The reply is copied.".into() } else { reply.into() });
            });
        };
        html! { <button type="button" onclick={copy}>{ "Copy the reply" }</button> }
    });
    let first = offered.first().map_or("", |one| one.key.as_str());
    let key = if paper.which.is_empty() { first } else { paper.which.as_str() };
    let options = offered.iter().map(|one| option(one.key.clone().into(), one.label.clone(), one.key == key));
    html! {
        <div class="panel form sheet-form">
            <div class="fields">
                <div class="field">
                    <label for="which">{ "Sheet" }</label>
                    <div class="control"><select id="which" onchange={which}>{ for options }</select></div>
                </div>
                { field("sheet-number", "Number of the order", Written::Number, &paper.number) }
                { field("sheet-name", "Name of the order", Written::Name, &paper.name) }
            </div>
            { for prices.map(|prices| price_fields(prices, dispatch)) }
            <div class="tools">
                <button type="button" onclick={|_| browser::print()}>{ "Print" }</button>
                { copy }
                <p role="status">{ (**said).clone() }</p>
            </div>
        </div>
    }
}

/// Own prices, a row for each process.
fn price_fields(prices: &Prices, dispatch: &Dispatch) -> Html {
    let row = |(place, process): (usize, Process)| {
        let price = prices.of(process);
        let change = {
            let (dispatch, prices) = (dispatch.clone(), prices.clone());
            move |text: Option<String>, by: Option<By>| {
                let mut prices = prices.clone();
                if let Some(price) = prices.0.get_mut(place) {
                    price.text = text.unwrap_or_else(|| price.text.clone());
                    price.by = by.unwrap_or(price.by);
                }
                dispatch.dispatch(Action::Charge(prices));
            }
        };
        let write = {
            let change = change.clone();
            Callback::from(move |event: InputEvent| change(Some(typed(&event)), None))
        };
        let by = move |event: Event| change(None, By::ALL.into_iter().find(|by| by.key() == chosen(&event)));
        let options = By::ALL.map(|by| option(by.key().into(), by.label(), by == price.by));
        let id = format!("price-{}", process.key());
        html! {
            <div class="field">
                <label for={id.clone()}>{ process.name() }</label>
                <div class="control">
                    <input {id} type="text" inputmode="decimal" autocomplete="off" value={price.text.clone()} oninput={write} />
                    <select class="units" aria-label={format!("{}, for", process.name())} onchange={by}>{ for options }</select>
                </div>
            </div>
        }
    };
    html! {
        <details class="more">
            <summary><span><b>{ "Own prices" }</b>{ ", kept on this device only and in no link" }</span></summary>
            <div class="fields">{ for Process::ALL.into_iter().enumerate().map(row) }</div>
        </details>
    }
}

fn text_field(id: &'static str, label: &'static str, text: &str, oninput: Callback<InputEvent>) -> Html {
    html! {
        <div class="field">
            <label for={id}>{ label }</label>
            <div class="control"><input {id} type="text" autocomplete="off" value={text.to_owned()} {oninput} /></div>
        </div>
    }
}
