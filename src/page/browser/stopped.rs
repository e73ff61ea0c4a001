//! What happens when the program stops for a fault of its own.

use std::cell::RefCell;

use gloo_utils::window;
use web_sys::{CustomEvent, console};

thread_local! {
    static ADDRESS: RefCell<String> = const { RefCell::new(String::new()) };
}

/// The event that the script in `index.html` waits for.
const STOPPED: &str = "kettle-and-barrel-stopped";

/// Remembers the address of what is being shown: should the program stop, it stands in the link.
pub fn remember(address: &str) {
    ADDRESS.with_borrow_mut(|kept| address.clone_into(kept));
}

/// Has a fault of the program put what was typed into the link and tell the page, whose own script
/// then says it in a sentence.
pub fn tell_when_stopped() {
    yew::set_custom_panic_hook(Box::new(|fault| {
        console::error_1(&fault.to_string().into());
        ADDRESS.with(|address| {
            if let Ok(address) = address.try_borrow().as_deref()
                && !address.is_empty()
            {
                super::replace_address(address);
            }
        });
        if let Ok(event) = CustomEvent::new(STOPPED) {
            let _ = window().dispatch_event(&event);
        }
    }));
}
