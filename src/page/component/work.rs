//! What is asked, the answer, and how that came about: the order line and every calculator alike.

use yew::prelude::*;

use super::answer::{Told, answer, told};
use super::detail::Detail;
use super::earlier_readings::EarlierReadings;
use super::form::FormPanel;
use super::found::Found;
use super::line::LinePanel;
use super::title::title;
use super::tools::Tools;
use crate::page::hook::use_wide;
use crate::page::state::{Desk, View, WrittenLine};
use crate::quantity::Units;

/// What there is to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The order line or a calculator.
    pub view: View,
    /// Its form.
    pub desk: Desk,
    /// The order line as it was written in one line.
    pub line: WrittenLine,
    /// The units of everything shown.
    pub units: Units,
    /// The address of the view.
    pub address: AttrValue,
    /// The way back to the order line, if that is where one came from.
    pub back: Option<AttrValue>,
    /// Whether a picture of the page was drawn since it was opened.
    pub drawn: bool,
}

/// The answer stands before the form once there is one; where there is room, beside it.
#[component]
pub fn Work(props: &Props) -> Html {
    let Props { view, desk, line, units, address, back, drawn } = props;
    // Nothing is answered before the line is read: its words may leave something open.
    let waits_for_line = line.is_unread();
    let asked = (*view, desk.clone(), line.has_open_words, *units, waits_for_line);
    let found = use_memo(asked, |(view, desk, open, units, waits)| match waits {
        true => Found::Nothing,
        false => Found::by(*view, desk, *open, *units),
    });
    let found = (*found).clone();
    let wide = use_wide();
    let Some(about) = view.about() else { return Html::default() };
    let problems = match &found {
        Found::Problems(problems) => Some((**problems).clone()),
        _ => None,
    };
    let answered = matches!(found, Found::Report(_) | Found::Assessment(_));
    let unasked = found == Found::Nothing;
    let is_order = *view == View::Order;
    let (_, fields) = address.split_once('?').unwrap_or_default();
    let of = view.calculator().map(|entry| format!("of={}&", entry.about.id)).unwrap_or_default();
    let sheets = AttrValue::from(format!("#1/sheet?{of}{fields}"));
    // A line says what the fields would: on a narrow screen they need not stand in the way.
    let open = !unasked && (wide || line.text.trim().is_empty());
    // Most of a page that opens is what stands behind its answer, or the fields of an order, which lie in a closed
    // fold: they follow its first picture.
    let waits = is_order && unasked && (!drawn || waits_for_line);
    let behind = if *drawn { found.clone() } else { Found::Nothing };
    let form = if waits {
        Html::default()
    } else {
        html! { <FormPanel {about} desk={desk.clone()} {problems} /> }
    };
    html! {
        <>
            { title(about.title, about.answers, back.clone()) }
            if is_order { <LinePanel line={line.clone()} desk={desk.clone()} /> }
            if !waits_for_line { <Told text={told(&found)} /> }
            if !desk.is_touched() && desk.readings().next().is_some() {
                <EarlierReadings view={*view} />
            }
            <div class={classes!("work", is_order.then_some("of-order"), unasked.then_some("unasked"))}>
                { answer(&found) }
                if answered { <Tools address={address.clone()} answer={told(&found)} {sheets} /> }
                if is_order {
                    <details class="fold-form" {open}>
                        <summary>{ "The order in fields" }</summary>
                        { form }
                    </details>
                } else {
                    { form }
                }
                <Detail found={behind} view={*view} form={desk.form.clone()} />
            </div>
        </>
    }
}
