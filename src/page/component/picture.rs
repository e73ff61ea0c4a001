//! A picture, drawn from a report's own numbers at the width there is.

use gloo_events::EventListener;
use gloo_utils::window;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{Element, ResizeObserver};
use yew::prelude::*;

use crate::calculator::Picture;
use crate::page::chart::{Anchor, Drawing, Shape, lay_out};

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
    let Drawing { width, height, shapes } = lay_out(picture, width);
    html! {
        <figure class="block picture">
            <figcaption>{ picture.title().to_owned() }</figcaption>
            <div ref={place}>
                <svg
                    role="img" aria-label={picture.text()} viewBox={format!("0 0 {width:.0} {height:.0}")}
                    width={format!("{width:.0}")} height={format!("{height:.0}")}
                >
                    { for shapes.iter().map(shape) }
                </svg>
            </div>
        </figure>
    }
}

fn shape(shape: &Shape) -> Html {
    let px = |number: f64| format!("{number:.1}");
    match shape {
        Shape::Line { class, from, to } => html! {
            <line class={*class} x1={px(from.0)} y1={px(from.1)} x2={px(to.0)} y2={px(to.1)} />
        },
        Shape::Box { class, at, size } => html! {
            <rect class={*class} x={px(at.0)} y={px(at.1)} width={px(size.0)} height={px(size.1)} />
        },
        Shape::Dot { class, at, radius } => html! {
            <circle class={*class} cx={px(at.0)} cy={px(at.1)} r={px(*radius)} />
        },
        Shape::Path { class, outline } => html! { <path class={*class} d={outline.clone()} /> },
        Shape::Text { class, at, anchor, text } => {
            let anchor = match anchor {
                Anchor::Start => "start",
                Anchor::Middle => "middle",
                Anchor::End => "end",
            };
            html! {
                <text class={*class} x={px(at.0)} y={px(at.1)} text-anchor={anchor}>{ text.clone() }</text>
            }
        }
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
