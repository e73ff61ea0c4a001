//! One field of a form: label, hint, problem, then the control, and how the text was read.

use crate::calculator::{Bound, Choice, FieldAbout, Filled, Kind};
use crate::quantity::{Unit, unit};
use gloo_timers::callback::Timeout;
use yew::prelude::*;

use super::element::{Element, beside, component, element};
use super::readings::{Next, Props as NextProps};
use super::state::{Action, State};

/// What a field of a form needs to know.
#[derive(Properties, Clone)]
pub struct Props {
    /// The description of the field.
    pub field: &'static FieldAbout,
    /// What stands in it.
    pub entry: Filled,
    /// What is wrong with it.
    pub problem: Option<AttrValue>,
    /// Takes what is typed.
    pub state: UseReducerDispatcher<State>,
}

impl PartialEq for Props {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.field, other.field) && self.entry == other.entry && self.problem == other.problem
    }
}

/// The id of the control of a field.
pub fn id(name: &str) -> String {
    format!("field-{name}")
}

/// How long a text may stand wrong before it is said: while a number is being typed it passes
/// through many that are no good.
const PATIENCE: u32 = 900;

/// A field of a form.
#[component]
pub fn FieldRow(props: &Props) -> Html {
    let Props { field, entry, problem, .. } = props;
    let id = id(field.key);
    // The sentence is told after a pause or when the field is left, and taken back at once.
    let told = use_state_eq(|| problem.is_some());
    {
        let told = told.clone();
        use_effect_with(problem.is_some(), move |wrong| {
            let timer = if *wrong {
                Some(Timeout::new(PATIENCE, move || told.set(true)))
            } else {
                told.set(false);
                None
            };
            move || drop(timer)
        });
    }
    let on_focus_out = {
        let (told, wrong) = (told.clone(), problem.is_some());
        move || told.set(wrong)
    };
    let problem = problem.clone().filter(|_| *told);
    let read_as = entry.read_as(field);
    let part = |name: &str| format!("{id}-{name}");
    let hinted = !field.hint.is_empty() || field.source.is_some();
    let parts = [(hinted, "hint"), (problem.is_some(), "problem"), (read_as.is_some(), "read")];
    let described: Vec<_> = parts.iter().filter(|(there, _)| *there).map(|(_, name)| part(name)).collect();
    let wrong = problem.is_some();
    let hint = hinted.then(|| {
        let source = field
            .source
            .map(|source| element("span").class("hint-source").say(" ").text(source.to_string()).say("."));
        element("p").class("hint").set("id", part("hint")).say(field.hint).each(source)
    });
    // Always there, so that nothing beside the control comes and goes.
    let problem = element("div").class("problem-place").each(problem.map(|problem| {
        let hidden = element("span").class("hidden").say("Problem: ");
        element("p").class("problem").set("id", part("problem")).put(hidden).text(problem)
    }));
    let about = Described { id: id.clone(), by: described.join(" "), wrong };
    let control = control(props, &about);
    let wide = matches!(field.kind, Kind::Readings { .. });
    let class = match (wrong, wide) {
        (false, false) => "field",
        (false, true) => "field wide",
        (true, false) => "field wrong",
        (true, true) => "field wrong wide",
    };
    if is_segmented(field) {
        let legend = label(element("legend"), field, entry);
        let set = element("fieldset").class(class).put(legend).maybe(hint).put(problem);
        return set.html(control).on_focus_out(on_focus_out).into();
    }
    let read_as =
        element("div").class("read-place").with("aria-live", "polite").each(read_as.map(|read_as| {
            let read = element("p").class("read-as").set("id", part("read"));
            read.say("Read as ").put(element("b").text(read_as))
        }));
    let label = label(element("label").set("for", id), field, entry);
    let row = element("div").class(class).put(label).maybe(hint).put(problem);
    row.html(control).put(read_as).on_focus_out(on_focus_out).into()
}

fn label(into: Element, field: &FieldAbout, entry: &Filled) -> Element {
    let beside = |text: &'static str| element("span").class("unit").say(text);
    let unit = entry.unit.filter(|unit| !unit.symbol.is_empty());
    into.say(field.label)
        .maybe(unit.map(|unit| beside(", ").say(unit.symbol)))
        .maybe(field.optional.then(|| beside(" (may stay empty)")))
}

struct Described {
    id: String,
    by: String,
    wrong: bool,
}

impl Described {
    /// A control with its id, what describes it, and whether something is wrong with it.
    fn control(&self, control: Element) -> Element {
        let control = self.described(control.set("id", self.id.clone()));
        if self.wrong { control.with("aria-invalid", "true") } else { control }
    }

    fn described(&self, control: Element) -> Element {
        if self.by.is_empty() { control } else { control.set("aria-describedby", self.by.clone()) }
    }
}

fn control(props: &Props, about: &Described) -> Html {
    let Props { field, entry, state, .. } = props;
    let name = field.key;
    let write = {
        let state = state.clone();
        Callback::from(move |text| state.dispatch(Action::Write(name, text)))
    };
    let place = element("div").class("control");
    match field.kind {
        Kind::Choice(choices) if is_segmented(field) => segments(name, choices, &entry.text, about, &write),
        Kind::Choice(choices) => place.put(options(choices, &entry.text, about, &write)),
        Kind::Quantity { units, bounds } => place
            .put(line(about, &entry.text, keypad(bounds, entry.unit), &write))
            .put(units_beside(field, units, entry.unit, state)),
        Kind::Count { .. } => place.put(line(about, &entry.text, Some("numeric"), &write)),
        Kind::Text => place.put(line(about, &entry.text, None, &write)),
        Kind::Readings { units } => {
            let place = place
                .put(area(about, &entry.text, &write))
                .put(units_beside(field, units, entry.unit, state));
            let (label, text) = (AttrValue::Static(field.label), AttrValue::from(entry.text.clone()));
            let next = NextProps { label, text, add: write };
            return beside([place.into(), component::<Next>(next)]);
        }
    }
    .into()
}

/// The keypad that has all the signs a field takes: no pad has a minus, and inches take fractions.
fn keypad(bounds: Bound, chosen: Option<&'static Unit>) -> Option<&'static str> {
    let negative = matches!(bounds, Bound::Between(min, ..) if min.number < 0.0);
    let fractions = chosen.is_some_and(|chosen| [&unit::INCH, &unit::FOOT].contains(&chosen));
    (!negative && !fractions).then_some("decimal")
}

fn line(about: &Described, text: &str, keypad: Option<&'static str>, write: &Callback<String>) -> Element {
    let write = write.clone();
    let line = unaided(element("input").with("type", "text")).value(text.to_owned());
    let line = keypad.into_iter().fold(line, |line, keypad| line.with("inputmode", keypad));
    about.control(line).on_input(move |text| write.emit(text))
}

fn area(about: &Described, text: &str, write: &Callback<String>) -> Element {
    let write = write.clone();
    let area = unaided(element("textarea").with("rows", "6")).value(text.to_owned());
    about.control(area).on_input(move |text| write.emit(text))
}

/// What stands in such a control is no word that a device knows better.
pub fn unaided(control: Element) -> Element {
    control.with("autocomplete", "off").with("autocapitalize", "off").with("spellcheck", "false")
}

fn options(choices: &'static [Choice], text: &str, about: &Described, write: &Callback<String>) -> Element {
    let write = write.clone();
    let known = choices.iter().any(|choice| choice.key == text);
    let unknown = (!known).then(|| option(text.to_owned(), true).text(text.to_owned()));
    let offered = choices.iter().map(|choice| option(choice.key, choice.key == text).say(choice.label));
    about.control(element("select")).each(unknown).each(offered).on_change(move |key| write.emit(key))
}

/// An option of a choice.
pub fn option(value: impl Into<AttrValue>, selected: bool) -> Element {
    element("option").set("value", value).flag("selected", selected)
}

fn units_beside(
    field: &'static FieldAbout,
    units: &'static [&'static Unit],
    unit: Option<&'static Unit>,
    state: &UseReducerDispatcher<State>,
) -> Element {
    if units.len() < 2 {
        // The label has it for those who listen.
        let symbol = unit.map_or("", |unit| unit.symbol);
        return element("span").class("suffix").with("aria-hidden", "true").say(symbol);
    }
    let (state, name) = (state.clone(), field.key);
    let offered = units.iter().map(|offered| {
        let said = if offered.symbol.is_empty() { "as a number" } else { offered.symbol };
        option(offered.symbol, Some(*offered) == unit).say(said)
    });
    element("select")
        .class("units")
        .set("aria-label", format!("Unit of {}", field.label))
        .each(offered)
        .on_change(move |symbol| state.dispatch(Action::ChooseUnit(name, symbol)))
}

/// Few choices with short names stand beside each other: one touch instead of two.
fn is_segmented(field: &FieldAbout) -> bool {
    match field.kind {
        Kind::Choice(choices) => choices.len() <= 4 && choices.iter().all(|choice| choice.label.len() <= 12),
        _ => false,
    }
}

fn segments(
    name: &'static str,
    choices: &'static [Choice],
    text: &str,
    about: &Described,
    write: &Callback<String>,
) -> Element {
    let segment = |(place, choice): (usize, &'static Choice)| {
        let write = write.clone();
        // The first has the field's id, so that a link to the field finds it.
        let id = if place == 0 { about.id.clone() } else { format!("{}-{}", about.id, choice.key) };
        let button = about
            .described(element("input").with("type", "radio").set("id", id).with("name", name))
            .with("value", choice.key)
            .checked(choice.key == text)
            .on_change(move |_| write.emit(choice.key.to_owned()));
        element("label").put(button).put(element("span").say(choice.label))
    };
    element("div").class("segments").each(choices.iter().enumerate().map(segment))
}
