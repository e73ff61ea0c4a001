//! The address in the browser, kept in step with the page.

use gloo_events::EventListener;
use gloo_timers::callback::Timeout;
use gloo_utils::window;
use yew::prelude::*;

use crate::page::browser;
use crate::page::reducer::Dispatch;
use crate::page::state::Action;

/// Milliseconds without typing after which the address is written anew.
const REST: u32 = 300;

/// Opens the addresses that the browser goes to, and writes the one of what is shown. The callback
/// writes it at once: whoever leaves a field may follow a link next.
#[hook]
pub fn use_address(address: AttrValue, dispatch: Dispatch) -> Callback<()> {
    use_effect_with((), move |()| {
        let listener = EventListener::new(&window(), "popstate", move |_| {
            dispatch.dispatch(Action::Open(browser::hash()));
        });
        move || drop(listener)
    });
    browser::remember(&address);
    // A page just opened keeps its bare address until something changes.
    let bare = use_mut_ref(|| (browser::hash().len() < 2).then(|| address.clone()));
    {
        let bare = bare.clone();
        use_effect_with(address.clone(), move |address| {
            let timer = if *bare.borrow() == Some(address.clone()) {
                None
            } else {
                bare.take();
                let address = address.clone();
                Some(Timeout::new(REST, move || browser::replace_address(&address)))
            };
            move || drop(timer)
        });
    }
    Callback::from(move |()| {
        if bare.borrow().is_none() {
            browser::replace_address(&address);
        }
    })
}
