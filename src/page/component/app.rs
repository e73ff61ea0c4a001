//! The whole page.

use gloo_timers::callback::Timeout;
use gloo_utils::document;
use yew::prelude::*;

use super::catalogue::catalogue;
use super::course::Course;
use super::footer::footer;
use super::header::Header;
use super::list::ListView;
use super::notice::notice_bar;
use super::saved::SavedView;
use super::sheet::SheetView;
use super::sources::sources_view;
use super::work::Work;
use crate::order::reading;
use crate::page::browser::{self, Device};
use crate::page::hook::{use_address, use_drawn, use_kept};
use crate::page::reducer::{Dispatch, Page};
use crate::page::state::{Action, State, View};

/// The whole page.
#[component]
pub fn App() -> Html {
    let page = use_reducer(|| {
        Page(State { prices: Device::prices(), ..State::opening(&browser::hash(), Device::settings()) })
    });
    let dispatch = page.dispatcher();
    let address = AttrValue::from(page.address().to_string());
    let on_focus_out = use_address(address.clone(), dispatch.clone()).reform(|_: FocusEvent| ());
    use_effect_with((page.view, page.arrivals), {
        let left_at = page.left_at.clone();
        let nothing_yet = page.line.text.is_empty() && !page.order.is_touched();
        move |&(view, arrivals)| {
            document().set_title(&format!("{} | Kettle & Barrel", view.title()));
            let left_at = left_at.filter(|id| view == View::Order && browser::element(id).is_some());
            match left_at {
                Some(id) => browser::focus(&id),
                // The order line opens ready to be written.
                None if view == View::Order && nothing_yet => browser::focus_at_top("line"),
                None if arrivals > 0 => browser::focus_at_top("title"),
                None => {}
            }
        }
    });
    use_effect_with(page.settings, |settings| {
        if let Some(root) = document().document_element() {
            let _ = root.set_attribute("data-theme", settings.theme.key());
        }
        Device::remember(*settings);
    });
    use_kept(Some(page.prices.to_string().into()), Device::remember_prices);
    use_kept(page.takes_readings().then(|| address.clone()), Device::remember_readings);
    let back = (page.view != View::Order && page.left_at.is_some())
        .then(|| AttrValue::from(format!("#{}", page.address_of(View::Order))));
    let drawn = use_drawn();
    use_effect_with((drawn, page.view == View::Order), {
        let (dispatch, is_unread) = (dispatch.clone(), page.line.is_unread());
        move |&(drawn, is_order)| {
            if drawn && is_unread {
                dispatch.dispatch(Action::Read);
            }
            // The first letter of a line does not wait for the words to be made ready.
            if drawn && is_order {
                Timeout::new(0, reading::prepare).forget();
            }
        }
    });
    // A list that was begun goes on while something else is open.
    let list = use_mut_ref(|| false);
    let on_list = page.view == View::List;
    *list.borrow_mut() |= on_list;
    let list = *list.borrow();
    let view = match (page.view, page.desk()) {
        (View::Catalogue, _) => catalogue(),
        (View::Saved, _) => html! { <SavedView /> },
        (View::Sources(_), _) => sources_view(page.view),
        (View::Sheet(_), Some(desk)) => html! {
            <SheetView
                view={page.view}
                desk={desk.clone()}
                line={page.line.text.clone()}
                paper={page.paper.clone()}
                prices={page.prices.clone()}
                units={page.settings.units}
                behind={AttrValue::from(page.address_of(page.view.behind()).to_string())}
            />
        },
        (View::Course, _) => html! { <Course desk={page.course.clone()} units={page.settings.units} /> },
        (view, Some(desk)) => html! {
            <Work
                key={view.key()}
                {view}
                desk={desk.clone()}
                line={page.line.clone()}
                units={page.settings.units}
                {address}
                {back}
                {drawn}
            />
        },
        (_, None) => Html::default(),
    };
    html! {
        <ContextProvider<Dispatch> context={dispatch.clone()}>
            <div class={classes!(matches!(page.view, View::Sheet(_)).then_some("on-paper"))} onfocusout={on_focus_out}>
                <Header view={page.view} settings={page.settings} />
                <main id="main" tabindex="-1">
                    { notice_bar(&page.notice, &dispatch) }
                    { view }
                    if list { <ListView key="list" shown={on_list} units={page.settings.units} /> }
                </main>
                { footer() }
            </div>
        </ContextProvider<Dispatch>>
    }
}
