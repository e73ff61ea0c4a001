//! What may wait until the screen shows what was typed.

use std::cell::Cell;
use std::rc::Rc;

use gloo_timers::callback::Timeout;
use gloo_utils::window;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use yew::prelude::*;

/// A value as it stood at the last picture of the screen; the next follows behind it. So what is long does not
/// keep what is short from being seen.
#[hook]
pub fn use_painted<T: Clone + PartialEq + 'static>(value: T) -> T {
    let values = use_mut_ref(|| Values { painted: value.clone(), latest: value.clone(), number: 0 });
    let number = {
        let mut values = values.borrow_mut();
        if values.latest != value {
            values.latest = value;
            values.number += 1;
        }
        values.number
    };
    let painted = use_painted_since(0, number);
    let mut values = values.borrow_mut();
    if painted == number {
        values.painted = values.latest.clone();
    }
    values.painted.clone()
}

/// A value as it is, how often it has changed, and as it was painted.
struct Values<T> {
    painted: T,
    latest: T,
    number: u32,
}

/// Whether a picture was drawn since this was opened: what nobody sees at the opening follows the first.
#[hook]
pub fn use_drawn() -> bool {
    use_painted_since(0, 1) == 1
}

/// A number as it stood at the last picture of the screen, and what stood there before the first.
#[hook]
fn use_painted_since(first: u32, number: u32) -> u32 {
    let painted = use_state_eq(|| first);
    {
        let painted = painted.clone();
        use_effect_with(number, move |&number| {
            let waiting = Rc::new(Cell::new(None));
            // A frame is told of before it is drawn, and what is due at once comes behind it.
            let frame = {
                let waiting = waiting.clone();
                Closure::once(move || waiting.set(Some(Timeout::new(0, move || painted.set(number)))))
            };
            let asked = window().request_animation_frame(frame.as_ref().unchecked_ref());
            move || {
                if let Ok(asked) = asked {
                    let _ = window().cancel_animation_frame(asked);
                }
                // A timer that is let go of is called off.
                drop((frame, waiting.take()));
            }
        });
    }
    *painted
}
