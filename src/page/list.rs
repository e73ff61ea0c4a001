//! The list of calculators with their worked examples.

use crate::calculator::{Address, Entry, REGISTER};
use yew::prelude::*;

use super::element::{Element, beside, element};
use super::frame::title;

/// Every calculator of the register.
pub fn list() -> Html {
    let lead = "Each stands alone; each shows its working and where every number comes from.";
    beside([
        title(None, "Calculators", lead).into(),
        element("ul").class("cards").each(REGISTER.iter().map(card)).into(),
    ])
}

fn card(entry: &Entry) -> Element {
    let about = &entry.about;
    let open = element("a").set("href", format!("#1/{}", about.id)).say(about.title);
    let examples = about.examples.iter().map(|example| {
        let address = Address::new(about.id, example.pairs.iter().copied().collect());
        element("li").put(element("a").set("href", format!("#{address}")).say(example.title))
    });
    let count = format!("Worked examples, {}", about.examples.len());
    let fold = element("details").put(element("summary").text(count)).put(element("ul").each(examples));
    element("li")
        .class("panel card")
        .put(element("h2").put(open))
        .put(element("p").say(about.answers))
        .put(fold)
}
