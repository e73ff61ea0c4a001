//! One reading after the other: a field that takes the next one, keeps the keyboard open, says where the
//! next one belongs and takes the last one back.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::typed::typed;
use crate::lot::count::{next_place, with_next, without_last};
use crate::quantity::{Unit, number};

/// What the field of the next reading needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The readings so far.
    pub text: AttrValue,
    /// The units that may stand behind a reading.
    pub units: &'static [&'static Unit],
    /// Readings that belong to an article.
    pub per_article: Option<u32>,
    /// Takes the readings with one more or one less.
    pub write: Callback<String>,
}

/// The field of the next reading, a button beside it, and one that takes the last reading back.
#[component]
pub fn NextReading(props: &Props) -> Html {
    let Props { text, units, per_article, write } = props;
    let next = use_state(AttrValue::default);
    let problem = use_state_eq(|| None::<AttrValue>);
    let input = use_node_ref();
    let on_input = {
        let (next, problem) = (next.clone(), problem.clone());
        move |event: InputEvent| {
            next.set(typed(&event).into());
            problem.set(None);
        }
    };
    let stay = {
        let input = input.clone();
        move || {
            if let Some(input) = input.cast::<HtmlInputElement>() {
                let _ = input.focus();
            }
        }
    };
    let add = {
        let (next, problem, stay) = (next.clone(), problem.clone(), stay.clone());
        let (text, units, per_article, write) = (text.clone(), *units, *per_article, write.clone());
        move || {
            let reading = next.trim();
            // What is no reading stays in the field, where it can be put right.
            match number::read(reading, units) {
                _ if reading.is_empty() => {}
                Ok(read) if read.number <= 0.0 => {
                    problem.set(Some(format!("{reading} is no thickness: a reading is above 0").into()));
                }
                Ok(_) => {
                    write.emit(with_next(&text, reading, per_article));
                    next.set(AttrValue::default());
                }
                Err(wrong) => problem.set(Some(wrong.to_string().into())),
            }
            stay();
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
    let last = without_last(text);
    let take_back = last.map(|(rest, last)| {
        let (write, stay) = (write.clone(), stay.clone());
        let back = move |_: MouseEvent| {
            write.emit(rest.clone());
            stay();
        };
        html! {
            <button type="button" onclick={back} onmousedown={keep_focus}>{ format!("Take back {last}") }</button>
        }
    });
    let described = problem.is_some().then_some("next-problem");
    html! {
        <div class="next-reading">
            <label for="next-reading">{ "Next reading: " }{ next_place(text, *per_article).to_string() }</label>
            <div class="control">
                <input
                    type="text" id="next-reading" ref={input} value={(*next).clone()} inputmode="decimal"
                    enterkeyhint="next" autocomplete="off" aria-describedby={described}
                    aria-invalid={described.map(|_| "true")} oninput={on_input} onkeydown={on_key}
                />
                <button type="button" class="strong" onclick={move |_| add()} onmousedown={keep_focus}>
                    { "Add" }
                </button>
            </div>
            <div role="status">
                if let Some(problem) = (*problem).clone() {
                    <p class="problem" id="next-problem">{ problem }</p>
                }
            </div>
            { for take_back }
        </div>
    }
}

/// A touch on a button must not take the focus, or the keyboard folds away.
fn keep_focus(event: MouseEvent) {
    event.prevent_default();
}
