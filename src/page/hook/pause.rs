//! What somebody has come to rest on.

use gloo_timers::callback::Timeout;
use yew::prelude::*;

/// A value as it was when it last stayed the same for so many milliseconds; at first, as it is.
#[hook]
pub fn use_pause<T: Clone + PartialEq + 'static>(value: T, milliseconds: u32) -> T {
    let rested = use_state_eq(|| value.clone());
    {
        let rested = rested.clone();
        use_effect_with(value, move |value| {
            let value = value.clone();
            let timer = Timeout::new(milliseconds, move || rested.set(value));
            move || drop(timer)
        });
    }
    (*rested).clone()
}
