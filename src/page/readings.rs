//! One reading after the other: a field that takes the next one and keeps the keyboard open.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::element::{button, element};

/// What the field of the next reading needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The name of the readings.
    pub label: AttrValue,
    /// The readings so far.
    pub text: AttrValue,
    /// Takes the readings with the next one behind them.
    pub add: Callback<String>,
}

/// The field of the next reading, with a button beside it.
#[component]
pub fn Next(props: &Props) -> Html {
    let next = use_state(AttrValue::default);
    let input = use_node_ref();
    let on_input = {
        let next = next.clone();
        move |text: String| next.set(text.into())
    };
    let add = {
        let (next, input, text, add) = (next.clone(), input.clone(), props.text.clone(), props.add.clone());
        move || {
            let reading = next.trim();
            if !reading.is_empty() {
                let so_far = text.trim_end();
                add.emit(if so_far.is_empty() { reading.to_owned() } else { format!("{so_far}\n{reading}") });
                next.set(AttrValue::default());
            }
            if let Some(input) = input.cast::<HtmlInputElement>() {
                let _ = input.focus();
            }
        }
    };
    let on_key = {
        let add = add.clone();
        move |event: KeyboardEvent| {
            if event.key() == "Enter" {
                event.prevent_default();
                add();
            }
        }
    };
    let input = element("input")
        .with("type", "text")
        .with("id", "next-reading")
        .node(input)
        .value(next.to_string())
        .with("inputmode", "decimal")
        .with("enterkeyhint", "next")
        .with("autocomplete", "off")
        .on_input(on_input)
        .on_key(on_key);
    // A touch on the button must not take the focus, or the keyboard folds away.
    let button = button("Add").class("strong").unfocused().on_click(move |_| add());
    let count = format!("{} lines in {}", lines(&props.text), props.label);
    element("div")
        .class("next-reading")
        .put(element("label").with("for", "next-reading").say("Next reading"))
        .put(element("div").class("control").put(input).put(button))
        .put(element("p").class("count").with("role", "status").text(count))
        .into()
}

fn lines(text: &str) -> usize {
    text.lines().filter(|line| !line.trim().is_empty()).count()
}
