//! The title of a view, with a way back where there is one.

use yew::prelude::*;

/// The title of a view, what it answers in one sentence, and the order line that one came from.
pub fn title(title: &'static str, lead: &'static str, back: Option<AttrValue>) -> Html {
    html! {
        <div class="title">
            if let Some(back) = back {
                <a class="back" href={back}>{ "Back to the order line" }</a>
            }
            <h1 id="title" tabindex="-1">{ title }</h1>
            <p class="lead">{ lead }</p>
        </div>
    }
}
