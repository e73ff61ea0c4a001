//! What is kept on this device: addresses, one a line, which can be taken out as a file and put back.

use crate::calculator::Address;
use crate::calculator::shape::address::{read_list, write_list};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::browser;
use super::element::{Element, beside, button, element};
use super::frame::title;
use super::state::State;

const NAME: &str = "kettle-and-barrel saved 1";
const REMARK: &str = "Kettle & Barrel, saved: one address a line, each behind # of the page's own address";

fn kept() -> Vec<Address> {
    read_list(&browser::kept(NAME)).0
}

fn keep(addresses: &[Address]) -> bool {
    browser::keep(NAME, &write_list(REMARK, addresses))
}

/// Keeps an address, the newest first; whether it went well.
pub fn add(address: &str) -> bool {
    let mut addresses = kept();
    let (address, _) = Address::read(address);
    addresses.retain(|other| *other != address);
    addresses.insert(0, address);
    keep(&addresses)
}

/// The list of what is kept.
#[component]
pub fn SavedView() -> Html {
    let addresses = use_state(kept);
    let said = use_state(AttrValue::default);
    let change = {
        let addresses = addresses.clone();
        Callback::from(move |changed: Vec<Address>| {
            keep(&changed);
            addresses.set(changed);
        })
    };
    let export = {
        let addresses = addresses.clone();
        move |_| browser::download("kettle-and-barrel.txt", &write_list(REMARK, addresses.iter()))
    };
    let import = {
        let (addresses, change, said) = (addresses.clone(), change.clone(), said.clone());
        move |input: HtmlInputElement| {
            let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
            let (addresses, change, said) = (addresses.clone(), change.clone(), said.clone());
            browser::read_file(
                &file,
                Callback::from(move |text: String| {
                    let (found, unread) = read_list(&text);
                    let mut all = (*addresses).clone();
                    let before = all.len();
                    for address in found {
                        if !all.contains(&address) {
                            all.push(address);
                        }
                    }
                    said.set(taken_in(all.len() - before, unread.len()).into());
                    change.emit(all);
                }),
            );
            // The same file may be chosen again.
            input.set_value("");
        }
    };
    let nothing = addresses.is_empty().then(|| {
        element("p").class("panel").say(
            "Nothing is kept yet. “Save” stands below the answer of the order line and of every calculator.",
        )
    });
    let items = addresses.iter().enumerate();
    let items = items.map(|(place, address)| item(place, address, &addresses, &change));
    let file = element("input").class("hidden").with("type", "file").with("accept", ".txt,text/plain");
    let told = (!said.is_empty()).then(|| element("p").text((*said).clone()));
    let tools = element("div")
        .class("tools")
        .put(button("Export as a file").flag("disabled", addresses.is_empty()).on_click(export))
        .put(element("label").class("button").say("Import a file").put(file.on_change_of(import)))
        .put(element("div").with("role", "status").each(told));
    beside([
        title(None, "Saved", "Kept on this device only. Take it out as a file to move it to another.").into(),
        nothing.map_or_else(Html::default, Html::from),
        element("ul").class("cards saved").each(items).into(),
        tools.into(),
    ])
}

fn taken_in(new: usize, unread: usize) -> String {
    match (new, unread) {
        (new, 0) => format!("{new} new taken in."),
        (new, unread) => format!("{new} new taken in; {unread} lines of the file are no addresses of ours."),
    }
}

fn item(place: usize, address: &Address, all: &[Address], change: &Callback<Vec<Address>>) -> Element {
    let state = State::at(&format!("#{address}"));
    let texts: Vec<String> = state
        .desk()
        .map(|desk| {
            let asked = desk.form.asked().into_iter();
            asked.map(|(field, entry)| entry.shown(field)).filter(|text| !text.is_empty()).take(6).collect()
        })
        .unwrap_or_default();
    let remove = {
        let (all, change) = (all.to_vec(), change.clone());
        move |_| {
            let mut all = all.clone();
            if place < all.len() {
                all.remove(place);
            }
            change.emit(all);
        }
    };
    let title = state.view.title();
    let remove =
        button("Remove").set("aria-label", format!("Remove {title}: {}", texts.join(", "))).on_click(remove);
    element("li")
        .key(address.to_string())
        .class("panel card")
        .put(element("h2").put(element("a").set("href", format!("#{address}")).say(title)))
        .put(element("p").text(texts.join(" · ")))
        .put(remove)
}
