//! A list of orders: chosen or pasted, assessed beside the page, its results.

use std::rc::Rc;

use js_sys::{Array, Uint8Array};
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::prelude::*;

use super::table::table;
use super::title::title;
use crate::order::list::{MARK, TEMPLATE};
use crate::page::browser;
use crate::page::state::View;
use crate::page::worker::{Outcome, Told, Work};
use crate::quantity::Units;

/// What the list needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Whether it is what is open. It goes on while something else is.
    pub shown: bool,
    /// The units of its results, those of when it was started.
    pub units: Units,
}

/// How far it is.
#[derive(Clone, PartialEq)]
enum Stage {
    Waiting,
    UnderWay { lines: u32, problems: u32, share: f64 },
    Ended(Rc<Outcome>),
    Stopped(&'static str),
}

const STOPPED: &str = "The work has stopped for a fault of its own; nothing was kept of it.";
const NO_WORKER: &str = "This browser starts no worker here, and a list needs one: open the page from its host, or in another browser.";
const CANCELLED: &str = "Cancelled; nothing was kept of it.";

/// The list of orders.
#[component]
pub fn ListView(props: &Props) -> Html {
    let stage = use_state(|| Stage::Waiting);
    let work = use_mut_ref(|| None::<Work>);
    // What a worker tells that was ended before is not heard.
    let run = use_mut_ref(|| 0_u32);
    let pasted = use_node_ref();
    let start = {
        let (stage, work, run, units) = (stage.clone(), Rc::clone(&work), Rc::clone(&run), props.units);
        move |list: web_sys::Blob| {
            work.take();
            *run.borrow_mut() += 1;
            let this = *run.borrow();
            stage.set(Stage::UnderWay { lines: 0, problems: 0, share: 0.0 });
            let is_this = {
                let run = Rc::clone(&run);
                move || *run.borrow() == this
            };
            let hear = {
                let (stage, work, is_this) = (stage.clone(), Rc::clone(&work), is_this.clone());
                move |told: Option<Told>| {
                    if !is_this() {
                        return;
                    }
                    stage.set(match told {
                        Some(Told::Progress { lines, problems, share }) => {
                            return stage.set(Stage::UnderWay { lines, problems, share });
                        }
                        Some(Told::Ended(outcome)) => Stage::Ended(Rc::new(outcome)),
                        None => Stage::Stopped(STOPPED),
                    });
                    end(&work);
                }
            };
            let (stage, work) = (stage.clone(), Rc::clone(&work));
            Work::start(list, units, hear, move |started| match started {
                Some(started) if is_this() => drop(work.replace(Some(started))),
                Some(_) => {}
                None => stage.set(Stage::Stopped(NO_WORKER)),
            });
        }
    };
    let choose = {
        let start = start.clone();
        move |event: Event| {
            let input: HtmlInputElement = event.target_unchecked_into();
            if let Some(file) = input.files().and_then(|files| files.get(0)) {
                start(file.into());
            }
            // The same file may be chosen again.
            input.set_value("");
        }
    };
    let paste = {
        let (start, pasted) = (start.clone(), pasted.clone());
        move |event: SubmitEvent| {
            event.prevent_default();
            if let Some(area) = pasted.cast::<HtmlTextAreaElement>() {
                let text = gloo_file::Blob::new(area.value().as_str());
                start(<gloo_file::Blob as AsRef<web_sys::Blob>>::as_ref(&text).clone());
            }
        }
    };
    let cancel = {
        let (stage, work, run) = (stage.clone(), Rc::clone(&work), Rc::clone(&run));
        move |_: MouseEvent| {
            *run.borrow_mut() += 1;
            work.take();
            stage.set(Stage::Stopped(CANCELLED));
        }
    };
    let template = |_: MouseEvent| {
        browser::download("order-list.csv", TEMPLATE, "text/csv");
    };
    let under_way = matches!(*stage, Stage::UnderWay { .. });
    html! {
        <div hidden={!props.shown}>
            if props.shown { { title(View::List.title(), LEAD, None) } }
            <form class="panel of-list" onsubmit={paste}>
                <div class="tools">
                    <label class="button">
                        { "Choose a file" }
                        <input
                            class="hidden" type="file" disabled={under_way} onchange={choose}
                            accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
                        />
                    </label>
                    <button type="button" onclick={template}>{ "Save a template" }</button>
                </div>
                <div class="field written">
                    <label for="list">{ "Or paste the rows here" }</label>
                    <p class="hint">
                        { "With their heading, as a spreadsheet copies them; or one written order on each line." }
                    </p>
                    <div class="control">
                        <textarea id="list" ref={pasted} rows="4" autocomplete="off" spellcheck="false" wrap="off" />
                        <button type="submit" class="strong" disabled={under_way}>{ "Assess" }</button>
                    </div>
                </div>
                { progress(&stage, cancel.into()) }
            </form>
            { outcome(&stage) }
        </div>
    }
}

const LEAD: &str = "Up to 100,000 order lines at once: what suits each, zinc and weight in all, and what can share a bath or \
                    a barrel.";

/// Ends the worker, once it has said its last word.
fn end(work: &Rc<std::cell::RefCell<Option<Work>>>) {
    let work = Rc::clone(work);
    // Not from within what it calls.
    gloo_timers::callback::Timeout::new(0, move || drop(work.take())).forget();
}

/// How far it is, and how it ended.
fn progress(stage: &Stage, cancel: Callback<MouseEvent>) -> Html {
    let said = match stage {
        Stage::Waiting => "".into(),
        Stage::UnderWay { .. } => "The list is being assessed.".into(),
        Stage::Stopped(why) => AttrValue::from(*why),
        Stage::Ended(outcome) => match &outcome.unread {
            Some(why) => format!("The list could not be read to its end: {why}.").into(),
            None => "The list is assessed.".into(),
        },
    };
    html! {
        <>
            <p role="status">{ said }</p>
            if let Stage::UnderWay { lines, problems, share } = stage {
                <progress value={share.to_string()} max="1" aria-label="Share of the list that was read" />
                <div class="tools">
                    <button type="button" onclick={cancel}>{ "Cancel" }</button>
                    <p>{ format!("{lines} lines, {problems} with a problem") }</p>
                </div>
            }
        </>
    }
}

/// What came of it.
fn outcome(stage: &Stage) -> Html {
    let Stage::Ended(outcome) = stage else { return Html::default() };
    let results = outcome.results.clone().map(|results| {
        let marked = results.clone();
        let save = move |_: MouseEvent| {
            browser::download_blob("order-list-results.csv", results.clone().into());
        };
        // Without the mark some spreadsheets take UTF-8 for something else, and programs are put off by it.
        let save_marked = move |_: MouseEvent| {
            let parts = Array::of2(&Uint8Array::from(MARK), &marked);
            if let Ok(blob) = web_sys::Blob::new_with_blob_sequence(&parts) {
                browser::download_blob("order-list-results.csv", blob.into());
            }
        };
        html! {
            <div class="tools">
                <button type="button" class="strong" onclick={save}>{ "Save the results" }</button>
                <button type="button" onclick={save_marked}>{ "Save for a spreadsheet" }</button>
            </div>
        }
    });
    html! {
        <div class="outcome">
            if !outcome.said.is_empty() {
                <ul class="panel">{ for outcome.said.iter().map(|said| html! { <li>{ said.clone() }</li> }) }</ul>
            }
            { results }
            { for outcome.tables.iter().map(table) }
        </div>
    }
}
