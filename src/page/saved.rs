//! What is kept on this device: addresses, one a line, which can be taken out as a file and put back.

use crate::calculator::Address;
use crate::calculator::shape::address::{read_list, write_list};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::browser;
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
        Callback::from(move |_: MouseEvent| {
            browser::download("kettle-and-barrel.txt", &write_list(REMARK, addresses.iter()))
        })
    };
    let import = {
        let (addresses, change, said) = (addresses.clone(), change.clone(), said.clone());
        Callback::from(move |event: Event| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
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
        })
    };
    html! {
        <>
            <div class="title">
                <h1 id="title" tabindex="-1">{ "Saved" }</h1>
                <p class="lead">{ "Kept on this device only. Take it out as a file to move it to another." }</p>
            </div>
            if addresses.is_empty() {
                <p class="panel">{ "Nothing is kept yet. “Save” stands below the answer of the order line and of every calculator." }</p>
            }
            <ul class="cards saved">{ for addresses.iter().enumerate().map(|(place, address)| item(place, address, &addresses, &change)) }</ul>
            <div class="tools">
                <button type="button" onclick={export} disabled={addresses.is_empty()}>{ "Export as a file" }</button>
                <label class="button">{ "Import a file" }<input type="file" accept=".txt,text/plain" class="hidden" onchange={import} /></label>
                <div role="status">if !said.is_empty() { <p>{ (*said).clone() }</p> }</div>
            </div>
        </>
    }
}

fn taken_in(new: usize, unread: usize) -> String {
    match (new, unread) {
        (new, 0) => format!("{new} new taken in."),
        (new, unread) => format!("{new} new taken in; {unread} lines of the file are no addresses of ours."),
    }
}

fn item(place: usize, address: &Address, all: &[Address], change: &Callback<Vec<Address>>) -> Html {
    let state = State::at(&format!("#{address}"));
    let texts: Vec<String> = state
        .desk()
        .map(|desk| {
            let asked = desk.form.asked().into_iter();
            asked.map(|(field, entry)| field.shown(entry)).filter(|text| !text.is_empty()).take(6).collect()
        })
        .unwrap_or_default();
    let remove = {
        let (all, change) = (all.to_vec(), change.clone());
        Callback::from(move |_: MouseEvent| {
            let mut all = all.clone();
            if place < all.len() {
                all.remove(place);
            }
            change.emit(all);
        })
    };
    let title = state.view.title();
    html! {
        <li key={address.to_string()} class="panel card">
            <h2><a href={format!("#{address}")}>{ title }</a></h2>
            <p>{ texts.join(" · ") }</p>
            <button type="button" onclick={remove} aria-label={format!("Remove {title}: {}", texts.join(", "))}>{ "Remove" }</button>
        </li>
    }
}
