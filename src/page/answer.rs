//! The place of the answer, and how it is told to those who listen.

use gloo_timers::callback::Timeout;
use yew::prelude::*;

use super::element::element;

/// Milliseconds without typing after which the answer is told.
const PAUSE: u32 = 800;

/// What is told.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The answer in one sentence.
    pub text: AttrValue,
}

/// Tells the answer after a short pause, for screen readers. What is there at the opening is not
/// told: it is read in its place.
#[component]
pub fn Note(props: &Props) -> Html {
    let told = use_state(AttrValue::default);
    let first = use_mut_ref(|| true);
    {
        let told = told.clone();
        use_effect_with(props.text.clone(), move |text| {
            let timer = if std::mem::take(&mut *first.borrow_mut()) {
                None
            } else {
                let text = text.clone();
                Some(Timeout::new(PAUSE, move || told.set(text)))
            };
            move || drop(timer)
        });
    }
    element("output").class("hidden").with("aria-live", "polite").text((*told).clone()).into()
}
