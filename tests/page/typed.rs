//! A person types what a worked example says, and reads what the core computes.

use kettle_barrel::calculator::{Entry, Filled, Form, Kind, REGISTER};
use kettle_barrel::sentence::capital;
use serde_json::json;

use crate::harness::{Done, Page, in_chromium};

#[test]
fn the_first_worked_example_of_every_calculator_typed_by_hand_gives_the_answer_of_the_core() -> Done {
    in_chromium(|page| {
        for entry in REGISTER {
            type_example(page, entry).map_err(|why| format!("{}: {why}", entry.about.id))?;
        }
        page.console_is_quiet()
    })
}

fn type_example(page: &Page, entry: &Entry) -> Done {
    let example = &entry.about.examples[0];
    let form = Form::example(entry.about.fields, example);
    let report = entry.evaluate(&form.draft()).map_err(|problems| problems.to_string())?;
    page.open(&format!("#{}", entry.about.id))?;
    // Choices first: they decide what is asked.
    let mut asked = form.asked();
    asked.sort_by_key(|(field, _)| !matches!(field.kind, Kind::Choice(_)));
    for (field, Filled { text, unit, .. }) in asked {
        let id = format!("#field-{}", field.key);
        match field.kind {
            Kind::Choice(_) if page.count(&format!("input[name='{}']", field.key))? > 0 => {
                page.click(&format!("input[name='{}'][value={}]", field.key, json!(text)))?;
            }
            Kind::Choice(_) => page.choose(&id, text)?,
            _ => {
                let unit = unit.map_or("", |unit| unit.symbol);
                let typed =
                    if text.is_empty() { String::new() } else { format!("{text} {unit}").trim().to_owned() };
                page.fill(&id, &typed)?;
            }
        }
    }
    // The headline without the verdict, which has a sign of its own.
    let behind = report.verdict.and_then(|verdict| report.headline.strip_prefix(&format!("{verdict}: ")));
    let headline = behind.map_or_else(|| report.headline.clone(), capital);
    page.text_holds("#answer .headline", &headline)?;
    let figures: Vec<String> = report.figures.iter().map(|figure| figure.value.to_string()).collect();
    const SEEN: &str = "[...document.querySelectorAll('.detail > .figures .value')].map(e => e.textContent)";
    // They follow the answer by one picture of the screen.
    let expected = json!(json!(figures).to_string());
    let _ = page.until(&format!("JSON.stringify({SEEN}) === {expected}"));
    let seen = page.value(SEEN)?;
    if seen == json!(figures) { Ok(()) } else { Err(format!("{seen} and not {figures:?}").into()) }
}
