//! One thing that was kept: its name, its date, its verdict, and what can be done with it.

use yew::platform::spawn_local;
use yew::prelude::*;

use super::sign::sign;
use super::typed::typed;
use super::verdict::look_of;
use crate::order::Standing;
use crate::order::saved::Entry;
use crate::page::browser;
use crate::process::Process;

/// What the entry needs to know.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The entry.
    pub entry: Entry,
    /// Its place in the store.
    pub place: AttrValue,
    /// Gives it another name: its place and the name.
    pub rename: Callback<(AttrValue, String)>,
    /// Removes it.
    pub remove: Callback<AttrValue>,
}

/// One thing that was kept.
#[component]
pub fn EntryCard(props: &Props) -> Html {
    let Props { entry, place, rename, remove } = props;
    let title = entry.title();
    let name = use_state(|| AttrValue::from(entry.name.clone()));
    let write = {
        let name = name.clone();
        move |event: InputEvent| name.set(typed(&event).into())
    };
    let give = {
        let (rename, place, name) = (rename.clone(), place.clone(), name.clone());
        move |event: SubmitEvent| {
            event.prevent_default();
            rename.emit((place.clone(), name.to_string()));
        }
    };
    let take_away = {
        let (remove, place) = (remove.clone(), place.clone());
        move |_: MouseEvent| remove.emit(place.clone())
    };
    let answer = use_memo(entry.address.clone(), |_| entry.answer());
    let said = use_state(AttrValue::default);
    let copy = answer.as_ref().as_ref().map(|answer| {
        let text = format!("{}\n{}", answer.text, browser::full_address(&entry.address));
        let said = said.clone();
        let copy = move |_: MouseEvent| {
            let (said, text) = (said.clone(), text.clone());
            spawn_local(async move {
                let copied = browser::copy(&text).await;
                said.set(if copied { "The answer is copied, with its link.".into() } else { text.into() });
            });
        };
        html! { <button type="button" aria-label={format!("Copy {title}")} onclick={copy}>{ "Copy" }</button> }
    });
    let line = entry.line().filter(|line| *line != title);
    let id = format!("name-{}", place.replace('/', "-"));
    html! {
        <li class="panel card">
            <h2><a href={format!("#{}", entry.address)}>{ title.clone() }</a></h2>
            <p class="when">
                { entry.kind() }
                { ", " }
                { browser::local_time(&entry.saved).unwrap_or_else(|| "no date".to_owned()) }
            </p>
            if let Some(line) = line { <p class="as-written">{ line }</p> }
            { verdicts(&entry.standings()) }
            if let Some(answer) = answer.as_ref().as_ref().filter(|answer| !answer.order.is_empty()) {
                <p class="to-order">
                    if answer.recommended.is_some() { <span>{ "To order: " }</span> }
                    { answer.order.clone() }
                </p>
            }
            <div class="buttons">
                { copy }
                <a class="button" href={format!("#{}", entry.sheets())} aria-label={format!("Print {title}")}>{ "Print" }</a>
                <button type="button" aria-label={format!("Remove {title}")} onclick={take_away}>{ "Remove" }</button>
                <details class="rename">
                    <summary>{ "Rename" }</summary>
                    <form class="control" onsubmit={give}>
                        <label class="hidden" for={id.clone()}>{ format!("Name of {title}") }</label>
                        <input {id} type="text" value={(*name).clone()} maxlength="100" autocomplete="off" oninput={write} />
                        <button type="submit">{ "Rename" }</button>
                    </form>
                </details>
            </div>
            <p role="status">{ (*said).clone() }</p>
        </li>
    }
}

/// The verdict at the time: of the three processes, or of the one calculation.
fn verdicts(standings: &[Standing]) -> Html {
    let names = match standings {
        [_, _, _] => Process::ALL.map(Process::name).to_vec(),
        _ => vec![""],
    };
    let item = |(name, standing): (&'static str, &Standing)| {
        let (class, mark) = look_of(*standing);
        let said = format!("{name} {}", standing.words().to_ascii_lowercase());
        html! { <li class={classes!("verdict", class)}>{ sign(mark) }<span>{ said.trim().to_owned() }</span></li> }
    };
    html! { <ul class="verdicts">{ for names.into_iter().zip(standings).map(item) }</ul> }
}
