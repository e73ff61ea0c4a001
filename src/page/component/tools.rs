//! What can be done with an answer: copy it, copy its link, keep it, print it.

use yew::platform::spawn_local;
use yew::prelude::*;

use crate::order::saved::{self, Entry};
use crate::page::browser::{self, Device};

/// What the tools need to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The address of the view.
    pub address: AttrValue,
    /// The answer as text.
    pub answer: AttrValue,
    /// The address of its sheets.
    pub sheets: AttrValue,
}

/// Buttons for the answer as it stands, and what came of the last touch.
#[component]
pub fn Tools(props: &Props) -> Html {
    let said = use_state_eq(AttrValue::default);
    // What was said belongs to the address it was said of.
    {
        let said = said.clone();
        use_effect_with(props.address.clone(), move |_| said.set(AttrValue::default()));
    }
    let copy = |answer: Option<AttrValue>, done: &'static str| {
        let (said, address) = (said.clone(), props.address.clone());
        move |_: MouseEvent| {
            let link = browser::full_address(&address);
            let text = answer.as_ref().map_or_else(|| link.clone(), |answer| format!("{answer}\n{link}"));
            let said = said.clone();
            spawn_local(async move {
                let copied = browser::copy(&text).await;
                said.set(if copied { done.into() } else { format!("Copy this: {text}").into() });
            });
        }
    };
    let copy_answer = copy(Some(props.answer.clone()), "The answer is copied, with its link.");
    let copy_link = copy(None, "The link is copied. It holds all that stands here.");
    let keep = {
        let (said, address) = (said.clone(), props.address.clone());
        move |_: MouseEvent| {
            Device::hold();
            let entry = Entry::new(&address, &browser::now());
            said.set(match saved::save(&Device, &entry) {
                Ok(()) => format!("Kept on this device, under Saved: {}.", entry.title()).into(),
                Err(fault) => fault.to_string().into(),
            });
        }
    };
    html! {
        <div class="tools">
            <button type="button" onclick={copy_answer}>{ "Copy" }</button>
            <button type="button" onclick={keep}>{ "Save" }</button>
            <a class="button" href={props.sheets.clone()}>{ "Print" }</a>
            <button type="button" onclick={copy_link}>{ "Copy link" }</button>
            <p role="status">{ (*said).clone() }</p>
        </div>
    }
}
