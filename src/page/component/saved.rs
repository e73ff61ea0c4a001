//! What is kept on this device, which can be taken out as a file and put back.

use std::cell::RefCell;
use std::rc::Rc;

use gloo_events::EventListener;
use gloo_timers::future::TimeoutFuture;
use gloo_utils::window;
use wasm_bindgen::JsCast;
use web_sys::{HtmlInputElement, StorageEvent};
use yew::platform::spawn_local;
use yew::prelude::*;

use super::entry::EntryCard;
use super::title::title;
use super::typed::typed;
use crate::order::saved::{Entry, Fault, File, Import, Opening, Others, Shelf};
use crate::page::browser::{self, Device};

/// Entries read or stored before the page is given back to its user: a few milliseconds.
const SLICE: usize = 100;
/// Entries shown at a time.
const SHOWN: usize = 50;

/// What the view holds while it is open.
#[derive(Clone)]
struct Kept {
    shelf: Rc<RefCell<Shelf>>,
    /// Set anew whenever the shelf has changed.
    changed: UseStateHandle<u32>,
    said: UseStateHandle<AttrValue>,
    /// How many entries are done, of how many, while something is under way.
    progress: UseStateHandle<Option<(usize, usize)>>,
}

impl Kept {
    fn show(&self, count: u32) {
        self.changed.set(count);
    }

    fn say(&self, text: impl Into<AttrValue>) {
        self.said.set(text.into());
    }

    /// Reads what is kept, slice by slice.
    fn open(&self) {
        let kept = self.clone();
        spawn_local(async move {
            let mut opening = match Opening::begin(&Device) {
                Ok(opening) => opening,
                Err(fault) => return kept.say(fault.to_string()),
            };
            while opening.step(&Device, SLICE) {
                kept.progress.set(Some(opening.progress()));
                TimeoutFuture::new(0).await;
            }
            let (shelf, fault) = opening.finish();
            kept.shelf.replace(shelf);
            kept.progress.set(None);
            if let Some(fault) = fault {
                kept.say(fault.to_string());
            }
            kept.show(1);
        });
    }

    /// Takes a file in, slice by slice.
    fn take_in(&self, file: web_sys::File) {
        let kept = self.clone();
        spawn_local(async move {
            let text = gloo_file::futures::read_as_text(&file.into()).await;
            let file = match text.as_deref().map(File::read) {
                Ok(Ok(file)) => file,
                Ok(Err(unread)) => return kept.say(unread.to_string()),
                Err(_) => return kept.say("The file could not be read; nothing was taken in."),
            };
            Device::hold();
            let mut import = Import::of(file);
            while import.step(&Device, &mut kept.shelf.borrow_mut(), SLICE) {
                kept.progress.set(Some(import.progress()));
                TimeoutFuture::new(0).await;
            }
            kept.progress.set(None);
            kept.say(import.to_string());
            kept.show(*kept.changed + 1);
        });
    }

    fn did(&self, done: Result<(), Fault>) {
        match done {
            Ok(()) => self.say(""),
            Err(fault) => self.say(fault.to_string()),
        }
        self.show(*self.changed + 1);
    }
}

/// The list of what is kept.
#[component]
pub fn SavedView() -> Html {
    let kept = Kept {
        shelf: use_mut_ref(Shelf::default),
        changed: use_state(|| 0),
        said: use_state(AttrValue::default),
        progress: use_state(|| Some((0, 0))),
    };
    let words = use_state(AttrValue::default);
    let shown = use_state(|| SHOWN);
    use_effect_with((), {
        let kept = kept.clone();
        move |()| kept.open()
    });
    use_effect_with(*kept.changed, {
        let kept = kept.clone();
        move |count| {
            let count = *count;
            // Another window of the page adds, renames and removes entries as well.
            let listener = EventListener::new(&window(), "storage", move |event| {
                let Some(event) = event.dyn_ref::<StorageEvent>() else { return };
                match event.key() {
                    Some(name) => {
                        if kept.shelf.borrow_mut().heard(&Device, &name, event.new_value().as_deref()) {
                            kept.show(count + 1);
                        }
                    }
                    None => kept.open(),
                }
            });
            move || drop(listener)
        }
    });
    let rename = {
        let kept = kept.clone();
        Callback::from(move |(place, name): (AttrValue, String)| {
            let done = kept.shelf.borrow_mut().rename(&Device, &place, &name);
            kept.did(done);
        })
    };
    // What was removed last can be put back.
    let removed = use_state(|| None::<Entry>);
    let remove = {
        let (kept, removed) = (kept.clone(), removed.clone());
        Callback::from(move |place: AttrValue| {
            let done = kept.shelf.borrow_mut().remove(&Device, &place);
            kept.did(done.map(|entry| removed.set(entry)));
        })
    };
    let put_back = (*removed).clone().map(|entry| {
        let (kept, removed, title) = (kept.clone(), removed.clone(), entry.title());
        let put_back = move |_: MouseEvent| {
            let done = kept.shelf.borrow_mut().put_back(&Device, entry.clone());
            kept.did(done.map(|()| removed.set(None)));
        };
        html! {
            <>
                <p>{ format!("Removed: {title}.") }</p>
                <button type="button" onclick={put_back}>{ "Put it back" }</button>
            </>
        }
    });
    let export = {
        let kept = kept.clone();
        move |_: MouseEvent| {
            let text = kept.shelf.borrow().file();
            if !browser::download("kettle-and-barrel.json", &text, "application/json") {
                kept.say("This browser takes no file from the page.");
            }
        }
    };
    let import = {
        let kept = kept.clone();
        move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            if let Some(file) = input.files().and_then(|files| files.get(0)) {
                kept.take_in(file);
            }
            // The same file may be chosen again.
            input.set_value("");
        }
    };
    let search = {
        let (words, shown) = (words.clone(), shown.clone());
        move |event: InputEvent| {
            words.set(typed(&event).into());
            shown.set(SHOWN);
        }
    };
    let more = {
        let shown = shown.clone();
        move |_: MouseEvent| shown.set(*shown + SHOWN)
    };
    // Found anew only when something was changed or searched for: there may be thousands.
    let found = use_memo((*kept.changed, (*words).clone(), *shown), {
        let shelf = Rc::clone(&kept.shelf);
        move |(_, words, shown)| {
            let shelf = shelf.borrow();
            let found = shelf.found(words);
            let first =
                found.iter().take(*shown).map(|(place, entry)| ((*place).to_owned(), (*entry).clone()));
            (first.collect::<Vec<_>>(), found.len())
        }
    });
    let (first, total) = &*found;
    let shelf = kept.shelf.borrow();
    let card = |(place, entry): &(String, Entry)| {
        html! {
            <EntryCard
                key={place.clone()} entry={entry.clone()} place={place.clone()} rename={rename.clone()}
                remove={remove.clone()}
            />
        }
    };
    let under_way = *kept.progress;
    html! {
        <>
            { title("Saved", "Kept on this device only. Take it out as a file to move it to another.", None) }
            <div class="tools">
                <button type="button" disabled={shelf.is_empty() || under_way.is_some()} onclick={export}>
                    { "Export as a file" }
                </button>
                <label class="button">
                    { "Import a file" }
                    <input
                        class="hidden" type="file" accept=".json,.txt,application/json,text/plain"
                        disabled={under_way.is_some()} onchange={import}
                    />
                </label>
                <div role="status">
                    if let Some((done, total)) = under_way.filter(|(_, total)| *total > 0) {
                        <p>{ format!("{done} of {total}") }</p>
                        <progress value={done.to_string()} max={total.to_string()} aria-label="Entries done" />
                    }
                    if !kept.said.is_empty() { <p>{ (*kept.said).clone() }</p> }
                    { put_back }
                </div>
            </div>
            { others_note(shelf.others()) }
            if shelf.len() > 8 || !words.is_empty() {
                <div class="field search">
                    <label for="search">{ format!("Find among {}", shelf.len()) }</label>
                    <div class="control">
                        <input
                            id="search" type="text" value={(*words).clone()} autocomplete="off"
                            spellcheck="false" oninput={search}
                        />
                    </div>
                </div>
            }
            if shelf.is_empty() && under_way.is_none() {
                <p class="panel">
                    { "Nothing is kept yet. “Save” stands below the answer of the order line and of every \
                       calculator." }
                </p>
            }
            <ul class="cards saved">{ for first.iter().map(card) }</ul>
            if *total > first.len() {
                <div class="tools">
                    <button type="button" onclick={more}>{ "Show more" }</button>
                    <p>{ format!("{} of {total} are shown.", first.len()) }</p>
                </div>
            }
        </>
    }
}

/// What is kept as it is, because this version does not understand it.
fn others_note(others: Others) -> Html {
    let Others { damaged, of_another_version, old_lines } = others;
    let said = [
        (damaged, "saved entries are damaged and cannot be opened."),
        (of_another_version, "entries were saved by another version of this page."),
        (old_lines, "lines of an older list cannot be opened, or found no room as entries."),
    ];
    let said: Vec<Html> = said
        .into_iter()
        .filter(|(count, _)| *count > 0)
        .map(|(count, what)| html! { <li>{ format!("{count} {what}") }</li> })
        .collect();
    if said.is_empty() {
        return Html::default();
    }
    html! {
        <div class="notice">
            <div>
                <ul>{ for said }</ul>
                <p>{ "They stay as they are, and go into the exported file." }</p>
            </div>
        </div>
    }
}
