//! A picture, drawn from a report's own numbers at the width there is.

use gloo_events::EventListener;
use gloo_utils::window;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{Element, ResizeObserver};
use yew::prelude::*;

use crate::calculator::Picture;
use crate::page::chart::lay_out;

/// What the picture needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The picture.
    pub picture: Picture,
}

/// A picture with its title. Whoever cannot see it gets its text.
#[component]
pub fn PictureBlock(props: &Props) -> Html {
    let place = use_node_ref();
    let width = use_width(place.clone());
    let picture = &props.picture;
    let svg = lay_out(picture, width).svg(&picture.text());
    html! {
        <figure class="block picture">
            <figcaption>{ picture.title().to_owned() }</figcaption>
            <div ref={place}>{ Html::from_html_unchecked(svg.into()) }</div>
        </figure>
    }
}

/// The width of an element, also after it has changed.
#[hook]
fn use_width(place: NodeRef) -> f64 {
    // Before it is measured: a phone has no more than its screen.
    let width = use_state_eq(|| {
        let screen = window().inner_width().ok().and_then(|width| width.as_f64()).unwrap_or(320.0);
        (screen - 64.0).clamp(256.0, 640.0)
    });
    {
        let width = width.clone();
        use_effect_with(place.clone(), move |place| {
            let measure = {
                let (place, width) = (place.clone(), width.clone());
                move || {
                    if let Some(element) = place.cast::<Element>()
                        && element.client_width() > 0
                    {
                        width.set(f64::from(element.client_width()));
                    }
                }
            };
            measure();
            let listener = EventListener::new(&window(), "resize", {
                let measure = measure.clone();
                move |_| measure()
            });
            // The element also changes where a fold opens or a column comes beside it.
            let changed = Closure::<dyn FnMut()>::new(measure);
            let observer = ResizeObserver::new(changed.as_ref().unchecked_ref()).ok();
            if let (Some(observer), Some(element)) = (&observer, place.cast::<Element>()) {
                observer.observe(&element);
            }
            move || {
                if let Some(observer) = observer {
                    observer.disconnect();
                }
                drop((listener, changed));
            }
        });
    }
    *width
}
