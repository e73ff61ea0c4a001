//! Readings of an earlier visit: whoever was called away goes on where they stopped.

use yew::prelude::*;

use crate::calculator::Address;
use crate::page::browser::Device;
use crate::page::state::{Settings, State, View};

/// What there is to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The calculator that is open.
    pub view: View,
}

/// A way to the readings that were kept for this calculator, and one to forget them.
#[component]
pub fn EarlierReadings(props: &Props) -> Html {
    let kept = use_state_eq(|| Device::readings().filter(|kept| is_of(props.view, kept)));
    let Some(address) = (*kept).clone() else { return Html::default() };
    let forget = move |_: MouseEvent| {
        Device::forget_readings();
        kept.set(None);
    };
    html! {
        <div class="panel earlier-readings">
            <p>{ format!("Readings of an earlier visit are kept on this device: {}.", told(&address)) }</p>
            <div class="buttons">
                <a class="button" href={format!("#{address}")}>{ "Go on with them" }</a>
                <button type="button" onclick={forget}>{ "Forget them" }</button>
            </div>
        </div>
    }
}

fn is_of(view: View, kept: &str) -> bool {
    let (address, _) = Address::read(kept);
    View::of_key(&address.view) == Some(view)
}

/// The first of them, and how many lines.
fn told(kept: &str) -> String {
    let state = State::at(kept, Settings::default());
    let Some(desk) = state.desk() else { return String::new() };
    let text: String = desk.readings().map(|(_, filled)| filled.text.as_str()).collect();
    let lines: Vec<&str> = text.lines().collect();
    match lines[..] {
        [only] => only.to_owned(),
        [first, .., last] => format!("{first} … {last}, {} lines", lines.len()),
        [] => String::new(),
    }
}
