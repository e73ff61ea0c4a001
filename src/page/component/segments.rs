//! Few choices beside each other: one touch instead of two.

use yew::prelude::*;

/// What ties a group of choices to its field.
pub struct Group {
    /// The id of the first, so that a link to the field finds it.
    pub id: AttrValue,
    /// The name of the group.
    pub name: &'static str,
    /// What describes it.
    pub by: Option<AttrValue>,
    /// Whether something is wrong with it.
    pub wrong: bool,
}

/// Radio buttons that look like one: keys with what they are called, and the key of what is chosen.
pub fn segments(
    group: &Group,
    offered: &[(&'static str, &'static str)],
    chosen: &str,
    choose: &Callback<&'static str>,
) -> Html {
    let segment = |(place, &(key, label)): (usize, &(&'static str, &'static str))| {
        let id = if place == 0 { group.id.clone() } else { format!("{}-{key}", group.id).into() };
        let choose = choose.reform(move |_: Event| key);
        html! {
            <label>
                <input
                    type="radio" {id} name={group.name} value={key} checked={key == chosen} onchange={choose}
                    aria-describedby={group.by.clone()} aria-invalid={group.wrong.then_some("true")}
                />
                <span>{ label }</span>
            </label>
        }
    };
    html! { <div class="segments">{ for offered.iter().enumerate().map(segment) }</div> }
}
