//! Elements made by calling functions, one after the other.
//!
//! The macro of the framework writes out every element where it stands. The page is hundreds of
//! them, all alike, and it is smaller when the same few functions make them all.

use std::cell::RefCell;
use std::rc::Rc;

use web_sys::HtmlInputElement;
use yew::html::BaseComponent;
use yew::html::{onchange, onclick, onfocusout, oninput, onkeydown, onmousedown, onsubmit};
use yew::prelude::*;
use yew::virtual_dom::{AttributeOrProperty, Attributes, Key, Listener, VComp, VTag, VText};

/// An element in the making. It stands where it will stay, so that each call hands on a single word.
pub struct Element(Rc<VTag>);

/// An element with nothing in it.
pub fn element(name: &'static str) -> Element {
    Element(Rc::new(VTag::new(AttrValue::Static(name))))
}

/// A button that does what it says.
pub fn button(says: &'static str) -> Element {
    element("button").with("type", "button").say(says)
}

/// Elements and components beside each other.
pub fn beside<const N: usize>(all: [Html; N]) -> Html {
    Html::from_iter(all)
}

/// A component.
pub fn component<C: BaseComponent>(properties: C::Properties) -> Html {
    VComp::new::<C>(Rc::new(properties), None).into()
}

/// A component that is another one where the key is another.
pub fn keyed<C: BaseComponent>(key: &'static str, properties: C::Properties) -> Html {
    VComp::new::<C>(Rc::new(properties), Some(Key::from(key))).into()
}

impl Element {
    /// With a class; an empty one is none.
    pub fn class(self, class: &'static str) -> Self {
        if class.is_empty() { self } else { self.with("class", class) }
    }

    /// With an attribute that is always the same.
    pub fn with(self, key: &'static str, value: &'static str) -> Self {
        self.set(key, AttrValue::Static(value))
    }

    /// With an attribute.
    pub fn set(self, key: &'static str, value: impl Into<AttrValue>) -> Self {
        self.attribute(key, value.into())
    }

    #[inline(never)]
    fn attribute(self, key: &'static str, value: AttrValue) -> Self {
        self.change(|tag| {
            let (keys, mut values) = match std::mem::take(&mut tag.attributes) {
                Attributes::Dynamic { keys, values } => (keys, values.into_vec()),
                _ => (&[][..], Vec::new()),
            };
            values.push(Some(AttributeOrProperty::Attribute(value)));
            tag.attributes = Attributes::Dynamic { keys: and(keys, key), values: values.into() };
        })
    }

    fn change(mut self, change: impl FnOnce(&mut VTag)) -> Self {
        // Nobody else holds an element that is still in the making.
        if let Some(tag) = Rc::get_mut(&mut self.0) {
            change(tag);
        }
        self
    }

    /// With an attribute that says yes by being there.
    pub fn flag(self, key: &'static str, yes: bool) -> Self {
        if yes { self.with(key, key) } else { self }
    }

    /// An input or a text area that holds this text.
    pub fn value(self, value: String) -> Self {
        self.change(|tag| tag.set_value(Some(AttrValue::from(value))))
    }

    /// An input that is chosen, or is not.
    pub fn checked(self, checked: bool) -> Self {
        self.change(|tag| tag.set_checked(checked))
    }

    /// One of a list whose others may come and go.
    pub fn key(self, key: String) -> Self {
        self.change(|tag| tag.key = Some(Key::from(key)))
    }

    /// An element that can be found again in the document.
    pub fn node(self, node: NodeRef) -> Self {
        self.change(|tag| tag.node_ref = node)
    }

    /// With a text in it that is always the same.
    pub fn say(self, text: &'static str) -> Self {
        self.html(VText::new(AttrValue::Static(text)).into())
    }

    /// With a text in it.
    pub fn text(self, text: impl Into<AttrValue>) -> Self {
        self.html(VText::new(text.into()).into())
    }

    /// With another element in it.
    pub fn put(self, child: Element) -> Self {
        self.html(child.into())
    }

    /// With another element in it, or with its place kept free: what stands behind stays what it is.
    pub fn maybe(self, child: Option<Element>) -> Self {
        self.html(child.map_or_else(Html::default, Html::from))
    }

    /// With other elements in it.
    pub fn each(self, children: impl IntoIterator<Item = Element>) -> Self {
        children.into_iter().fold(self, Self::put)
    }

    /// With anything in it.
    #[inline(never)]
    pub fn html(self, child: Html) -> Self {
        self.change(|tag| tag.add_child(child))
    }

    /// Listens.
    #[inline(never)]
    fn on(self, listener: Rc<dyn Listener>) -> Self {
        self.change(|tag| {
            tag.add_listener(listener);
        })
    }

    /// Listens for a touch, a click, or the key that does the same.
    pub fn on_click(self, heard: impl Fn(MouseEvent) + 'static) -> Self {
        self.on(Rc::new(onclick::Wrapper::new(Callback::from(heard))))
    }

    /// Listens for a link that leads to a place in the page, and brings its focus there.
    pub fn on_click_to(self, go: impl Fn() + 'static) -> Self {
        self.on_click(move |event| {
            event.prevent_default();
            go();
        })
    }

    /// Listens for what is typed.
    pub fn on_input(self, heard: impl Fn(String) + 'static) -> Self {
        self.on(Rc::new(oninput::Wrapper::new(Callback::from(move |event: InputEvent| {
            heard(control(&event).value());
        }))))
    }

    /// Listens for what is chosen.
    pub fn on_change(self, heard: impl Fn(String) + 'static) -> Self {
        self.on_change_of(move |control| heard(control.value()))
    }

    /// Listens for a change of the control.
    pub fn on_change_of(self, heard: impl Fn(HtmlInputElement) + 'static) -> Self {
        self.on(Rc::new(onchange::Wrapper::new(Callback::from(move |event: Event| {
            heard(control(&event));
        }))))
    }

    /// Listens for the focus that goes.
    pub fn on_focus_out(self, heard: impl Fn() + 'static) -> Self {
        self.on(Rc::new(onfocusout::Wrapper::new(Callback::from(move |_| heard()))))
    }

    /// Listens for a key.
    pub fn on_key(self, heard: impl Fn(KeyboardEvent) + 'static) -> Self {
        self.on(Rc::new(onkeydown::Wrapper::new(Callback::from(heard))))
    }

    /// Does not take the focus when it is touched.
    pub fn unfocused(self) -> Self {
        self.on(Rc::new(onmousedown::Wrapper::new(Callback::from(|event: MouseEvent| {
            event.prevent_default()
        }))))
    }

    /// A form that goes nowhere when it is sent.
    pub fn on_submit(self, heard: impl Fn() + 'static) -> Self {
        self.on(Rc::new(onsubmit::Wrapper::new(Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            heard();
        }))))
    }
}

impl From<Element> for Html {
    fn from(element: Element) -> Self {
        Self::VTag(element.0)
    }
}

thread_local! {
    static KEYS: RefCell<Vec<&'static [&'static str]>> = const { RefCell::new(Vec::new()) };
}

/// These keys and one more. Elements of one kind share their keys, which the framework then need not
/// compare; the few dozen kinds of the page are kept for good.
fn and(keys: &'static [&'static str], key: &'static str) -> &'static [&'static str] {
    KEYS.with_borrow_mut(|known| {
        let same = |all: &&&'static [&'static str]| all.split_last() == Some((&key, keys));
        if let Some(&all) = known.iter().find(same) {
            return all;
        }
        let all: &'static [&'static str] = Box::leak([keys, &[key]].concat().into_boxed_slice());
        known.push(all);
        all
    })
}

/// The control that an event comes from. Inputs, text areas and choices all have a `value`, and the
/// cast is not checked.
fn control(event: &Event) -> HtmlInputElement {
    event.target_unchecked_into()
}
