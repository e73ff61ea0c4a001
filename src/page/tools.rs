//! What can be done with a view: copy its link, keep it, print it.

use yew::prelude::*;

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
    let said = use_state(|| Said::Nothing);
    // What was said belongs to the address it was said of.
    {
        let said = said.clone();
        use_effect_with(props.address.clone(), move |_| said.set(Said::Nothing));
    }
    let copy = {
        let (said, address) = (said.clone(), props.address.clone());
        Callback::from(move |_: MouseEvent| {
            let (said, link) = (said.clone(), browser::full_address(&address));
            let copied = link.clone();
            browser::copy(
                &copied,
                Callback::from(move |good| {
                    said.set(if good { Said::Copied } else { Said::CopyByHand(link.clone()) })
                }),
            );
        })
    };
    let keep = {
        let (said, address) = (said.clone(), props.address.clone());
        Callback::from(move |_: MouseEvent| {
            said.set(if saved::add(&address) { Said::Kept } else { Said::NotKept })
        })
    };
    let print = Callback::from(|_: MouseEvent| browser::print());
    html! {
        <div class="tools">
            <button type="button" onclick={copy}>{ "Copy link" }</button>
            <button type="button" onclick={keep}>{ "Save" }</button>
            <button type="button" onclick={print}>{ "Print" }</button>
            <div role="status">{ match &*said {
                Said::Nothing => Html::default(),
                Said::Copied => html! { <p>{ "The link is copied. It holds all that stands here." }</p> },
                Said::CopyByHand(link) => html! {
                    <label>{ "Copy this link" }<input type="text" readonly=true value={link.clone()} /></label>
                },
                Said::Kept => html! { <p>{ "Kept on this device, under Saved." }</p> },
                Said::NotKept => html! { <p>{ "This browser keeps nothing for this page; copy the link instead." }</p> },
            } }</div>
        </div>
    }
}

enum Said {
    Nothing,
    Copied,
    CopyByHand(String),
    Kept,
    NotKept,
}
