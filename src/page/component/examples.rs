//! Order lines to begin with, one touch each.

use yew::prelude::*;

use crate::page::browser;
use crate::page::reducer::Dispatch;
use crate::page::state::{Action, EXAMPLES};

/// Example lines.
pub fn examples(dispatch: &Dispatch) -> Html {
    let item = |line: &'static str| {
        let dispatch = dispatch.clone();
        let take = move |_: MouseEvent| {
            dispatch.dispatch(Action::WriteLine(line.to_owned()));
            browser::focus("line");
        };
        html! { <li><button type="button" onclick={take}>{ line }</button></li> }
    };
    html! {
        <div class="examples">
            <p>{ "Or begin with one of these:" }</p>
            <ul>{ for EXAMPLES.map(item) }</ul>
        </div>
    }
}
