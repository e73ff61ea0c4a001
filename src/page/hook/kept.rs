//! What is kept on the device behind the picture in which it is drawn.

use std::cell::RefCell;

use gloo_events::EventListener;
use gloo_timers::callback::Timeout;
use gloo_utils::{document, window};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use yew::prelude::*;

/// Keeps each new text behind the next picture, for a device may take a millisecond to write it; at once where the
/// page is hidden or left before that picture is drawn. Nothing that was given is dropped where none follows it.
#[hook]
pub fn use_kept(text: Option<AttrValue>, keep: fn(&str)) {
    let waiting = use_mut_ref(|| None::<AttrValue>);
    let written = move |waiting: &RefCell<Option<AttrValue>>| {
        if let Some(text) = waiting.take() {
            keep(&text);
        }
    };
    // Noted while it is rendered and not by an effect: the effects of a long rendering follow it by a timer, and
    // whoever leaves the page in between has seen what was given.
    use_memo(text.clone(), |text| {
        if text.is_some() {
            waiting.replace(text.clone());
        }
    });
    {
        let waiting = waiting.clone();
        use_effect_with(text, move |_| {
            if waiting.borrow().is_some() {
                // A frame is told of before it is drawn, and what is due at once comes behind it.
                let frame = {
                    let waiting = waiting.clone();
                    Closure::once_into_js(move || Timeout::new(0, move || written(&waiting)).forget())
                };
                if window().request_animation_frame(frame.unchecked_ref()).is_err() {
                    written(&waiting);
                }
            }
        });
    }
    use_effect_with((), move |()| {
        let other = waiting.clone();
        let listeners = [
            EventListener::new(&window(), "pagehide", move |_| written(&waiting)),
            EventListener::new(&document(), "visibilitychange", move |_| written(&other)),
        ];
        move || drop(listeners)
    });
}
