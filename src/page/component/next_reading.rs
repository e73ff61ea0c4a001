//! One reading after the other: a field that takes the next one and keeps the keyboard open.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::typed::typed;

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
pub fn NextReading(props: &Props) -> Html {
    let next = use_state(AttrValue::default);
    let input = use_node_ref();
    let on_input = {
        let next = next.clone();
        move |event: InputEvent| next.set(typed(&event).into())
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
    let lines = props.text.lines().filter(|line| !line.trim().is_empty()).count();
    html! {
        <div class="next-reading">
            <label for="next-reading">{ "Next reading" }</label>
            <div class="control">
                <input
                    type="text" id="next-reading" ref={input} value={(*next).clone()} inputmode="decimal"
                    enterkeyhint="next" autocomplete="off" oninput={on_input} onkeydown={on_key}
                />
                // A touch on the button must not take the focus, or the keyboard folds away.
                <button
                    type="button" class="strong" onclick={move |_| add()}
                    onmousedown={|event: MouseEvent| event.prevent_default()}
                >
                    { "Add" }
                </button>
            </div>
            <p class="count" role="status">{ format!("{lines} lines in {}", props.label) }</p>
        </div>
    }
}
