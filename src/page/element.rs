//! Elements made by calling a function.
//!
//! The macro writes out every element where it stands. A report is hundreds of them, all alike, and
//! the page is a good deal smaller when one function makes them; where there are listeners,
//! components or many attributes the macro reads better and is used.

use yew::prelude::*;
use yew::virtual_dom::{AttributeOrProperty, Attributes, VTag, VText};

/// An element with a class (or none) and what stands in it.
pub fn element(name: &'static str, class: &'static str, children: Vec<Html>) -> Html {
    if class.is_empty() {
        return with(name, &[], Vec::new(), children);
    }
    with(name, &["class"], vec![AttrValue::Static(class)], children)
}

/// An element with any attributes, of which each has its value, and what stands in it.
pub fn with(
    name: &'static str,
    keys: &'static [&'static str],
    values: Vec<AttrValue>,
    children: Vec<Html>,
) -> Html {
    let mut tag = VTag::new(AttrValue::Static(name));
    if !keys.is_empty() {
        let values = values.into_iter().map(|value| Some(AttributeOrProperty::Attribute(value))).collect();
        tag.attributes = Attributes::Dynamic { keys, values };
    }
    tag.add_children(children);
    tag.into()
}

/// A text.
pub fn text(text: String) -> Html {
    VText::new(text).into()
}

/// A text that is always the same.
pub fn word(text: &'static str) -> Html {
    VText::new(AttrValue::Static(text)).into()
}
