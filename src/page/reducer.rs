//! The state of the page, as the framework holds it.

use std::ops::Deref;
use std::rc::Rc;

use yew::prelude::*;

use super::state::{Action, State};

/// The state of the page.
#[derive(Clone, PartialEq)]
pub struct Page(pub State);

/// What components send to the page.
pub type Dispatch = UseReducerDispatcher<Page>;

impl Reducible for Page {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        Rc::new(Self(Rc::unwrap_or_clone(self).0.after(action)))
    }
}

impl Deref for Page {
    type Target = State;
    fn deref(&self) -> &State {
        &self.0
    }
}

/// How a component sends what happened in it.
#[hook]
pub fn use_dispatch() -> Dispatch {
    let Some(dispatch) = use_context::<Dispatch>() else {
        unreachable!("every component stands inside the page")
    };
    dispatch
}
