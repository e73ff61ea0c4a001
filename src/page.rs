//! The page: the order line and the calculators in a browser.
//!
//! It sets what the rooms below compute and computes nothing itself.

use std::rc::Rc;

use gloo_timers::callback::Timeout;
use yew::prelude::*;

mod answer;
mod browser;
mod element;
mod field;
mod form;
mod frame;
mod list;
mod order;
mod part;
mod picture;
mod readings;
mod report;
mod saved;
mod state;
mod tools;
mod work;
mod working;

use element::{component, element, keyed};
use state::{Action, State, View};

/// Milliseconds without typing after which the address is written anew.
const REST: u32 = 300;

/// Puts the page into the element that `index.html` keeps for it.
pub fn mount() {
    browser::unfold_for_print();
    if let Some(root) = browser::element("page") {
        yew::Renderer::<Page>::with_root(root.into()).render();
    }
}

/// The whole page.
#[component]
fn Page() -> Html {
    let state = use_reducer(|| State::at(&browser::hash()));
    let dispatcher = state.dispatcher();
    {
        let dispatcher = dispatcher.clone();
        use_effect_with((), move |()| browser::on_address(dispatcher_callback(dispatcher)));
    }
    let address = AttrValue::from(state.address().to_string());
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
    use_effect_with((state.view, state.arrivals), {
        let left_at = state.left_at.clone();
        move |&(view, arrivals)| {
            browser::set_title(&format!("{} | Kettle & Barrel", view.title()));
            if arrivals > 0 {
                match left_at.filter(|id| view == View::Order && browser::element(id).is_some()) {
                    Some(id) => browser::focus(&id),
                    None => browser::focus_at_top("title"),
                }
            }
        }
    });
    // Whoever leaves a field may follow a link next: the address must hold what was typed.
    let on_focus_out = {
        let address = address.clone();
        move || {
            if bare.borrow().is_none() {
                browser::replace_address(&address);
            }
        }
    };
    let view = match (state.view, state.desk()) {
        (View::List, _) => list::list(),
        (View::Saved, _) => component::<saved::SavedView>(()),
        (view, Some(desk)) => {
            let back = (view != View::Order && state.left_at.is_some()).then(|| order_address(&state));
            let (desk, line) = (desk.clone(), state.line.clone());
            let state = dispatcher.clone();
            keyed::<work::Work>(view.key(), work::Props { view, desk, line, address, back, state })
        }
        (_, None) => Html::default(),
    };
    let main = element("main")
        .with("id", "main")
        .with("tabindex", "-1")
        .put(frame::notices(&state.notices, &dispatcher))
        .html(view);
    element("div").put(frame::header(&state)).put(main).put(frame::footer()).on_focus_out(on_focus_out).into()
}

fn dispatcher_callback(state: UseReducerDispatcher<State>) -> Callback<String> {
    Callback::from(move |address| state.dispatch(Action::Open(address)))
}

/// The address of the order line as it stands.
fn order_address(state: &State) -> AttrValue {
    let order = State { view: View::Order, ..state.clone() };
    AttrValue::from(format!("#{}", Rc::new(order).address()))
}
