//! What can be done with a view: copy its link, keep it, print it.

use yew::prelude::*;

use super::element::{button, element};
use super::{browser, saved};

/// What the tools need to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The address of the view.
    pub address: AttrValue,
}

/// Buttons for the view as it stands, and what came of the last touch.
#[component]
pub fn Tools(props: &Props) -> Html {
    let said = use_state(AttrValue::default);
    // What was said belongs to the address it was said of.
    {
        let said = said.clone();
        use_effect_with(props.address.clone(), move |_| said.set(AttrValue::default()));
    }
    let copy = {
        let (said, address) = (said.clone(), props.address.clone());
        move |_| {
            let (said, link) = (said.clone(), browser::full_address(&address));
            let by_hand = format!("Copy this link: {link}");
            let copied = Callback::from(move |good| {
                let done = AttrValue::from("The link is copied. It holds all that stands here.");
                said.set(if good { done } else { by_hand.clone().into() });
            });
            browser::copy(&link, copied);
        }
    };
    let keep = {
        let (said, address) = (said.clone(), props.address.clone());
        move |_| {
            said.set(AttrValue::from(if saved::add(&address) {
                "Kept on this device, under Saved."
            } else {
                "This browser keeps nothing for this page; copy the link instead."
            }));
        }
    };
    element("div")
        .class("tools")
        .put(button("Copy link").on_click(copy))
        .put(button("Save").on_click(keep))
        .put(button("Print").on_click(|_| browser::print()))
        .put(element("p").with("role", "status").text((*said).clone()))
        .into()
}
