//! What the page holds: the view, what stands in each form, and what there is to tell. No DOM.

use std::rc::Rc;

use crate::calculator::{About, Address, Damage, Draft, Entry, FieldAbout, Form, REGISTER};
use yew::Reducible;

use crate::order;

/// The whole state of the page.
#[derive(Clone, PartialEq)]
pub struct State {
    /// What is open.
    pub view: View,
    /// The order line.
    pub order: Desk,
    /// The order line as it was written in one line.
    pub line: WrittenLine,
    /// The forms of the calculators, in the order of the register.
    pub calculators: Vec<Desk>,
    /// What there is to tell about the link that was opened.
    pub notices: Vec<String>,
    /// Counts the views opened, so that each arrival can move the focus.
    pub arrivals: u32,
    /// The element that opened a calculator from the order line: the way back leads to it.
    pub left_at: Option<String>,
}

/// What is open.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum View {
    /// The order line and its assessment.
    Order,
    /// The list of calculators.
    List,
    /// The calculator at that place of the register.
    Calculator(usize),
    /// What was kept on this device.
    Saved,
}

/// A form and where it came from.
#[derive(Clone, PartialEq)]
pub struct Desk {
    /// What stands in the fields.
    pub form: Rc<Form>,
    /// The worked example that fills it, unchanged.
    pub example: Option<usize>,
}

/// An order line written in one line.
#[derive(Clone, PartialEq, Default)]
pub struct WrittenLine {
    /// As typed.
    pub text: String,
    /// The fields it fills.
    pub filled: Draft,
    /// The words that found no field.
    pub unplaced: Vec<String>,
    /// What stood in the fields before the line was begun: the line asks for what it should say and
    /// does not; the rest shows through, and all of it is back when the line is emptied.
    before: Option<Rc<Form>>,
}

/// What can happen.
pub enum Action {
    /// An address was opened: by a link, by the way back, or by hand.
    Open(String),
    /// Something was typed into a field.
    Write(&'static str, String),
    /// A unit was chosen, by its symbol.
    ChooseUnit(&'static str, String),
    /// A worked example was chosen.
    TakeExample(usize),
    /// The form was emptied.
    Clear,
    /// The order line was written in one line.
    WriteLine(String),
    /// A calculator was opened from this element of the order line.
    LeaveAt(String),
    /// The notices were read.
    Dismiss,
}

impl State {
    /// The page as it opens at an address.
    pub fn at(address: &str) -> Self {
        let mut state = Self {
            view: View::Order,
            order: Desk::first(&order::ABOUT),
            line: WrittenLine::default(),
            calculators: REGISTER.iter().map(|entry| Desk::first(&entry.about)).collect(),
            notices: Vec::new(),
            arrivals: 0,
            left_at: None,
        };
        state.open(address);
        state.arrivals = 0;
        state
    }

    /// The address of the view, with all that stands in it.
    pub fn address(&self) -> Address {
        let draft = self.desk().map(|desk| desk.form.to_keep()).unwrap_or_default();
        Address::new(self.view.key(), draft)
    }

    /// The form of the view, if it has one.
    pub fn desk(&self) -> Option<&Desk> {
        match self.view {
            View::Order => Some(&self.order),
            View::Calculator(place) => self.calculators.get(place),
            View::List | View::Saved => None,
        }
    }

    fn desk_mut(&mut self) -> Option<&mut Desk> {
        match self.view {
            View::Order => Some(&mut self.order),
            View::Calculator(place) => self.calculators.get_mut(place),
            View::List | View::Saved => None,
        }
    }

    fn change(&mut self, change: impl FnOnce(&mut Form)) {
        if let Some(desk) = self.desk_mut() {
            change(Rc::make_mut(&mut desk.form));
            desk.example = None;
        }
        self.line.before = None;
    }

    fn open(&mut self, text: &str) {
        let before = self.view;
        self.arrivals += 1;
        self.notices.clear();
        if matches!(text, "" | "#") {
            self.view = View::Order;
            return;
        }
        let (mut address, mut damage) = Address::read(text);
        self.view = View::of_key(&address.view).unwrap_or_else(|| {
            damage.push(Damage::NoView(address.view.clone()));
            View::Order
        });
        // The way back is open as long as one stays among calculators, and taken once.
        if matches!(self.view, View::List | View::Saved) || (before, self.view) == (View::Order, View::Order)
        {
            self.left_at = None;
        }
        let fields = self.view.fields();
        damage.extend(address.keep_only(fields));
        self.notices = damage.iter().map(ToString::to_string).collect();
        // An address without fields opens the view as it was left.
        if address.draft != Draft::default()
            && let Some(desk) = self.desk_mut()
        {
            let form = Form::new(fields, &address.draft);
            if *desk.form != form {
                *desk = Desk { form: Rc::new(form), example: None };
                if self.view == View::Order {
                    self.line = WrittenLine::default();
                }
            }
        }
    }

    fn write_line(&mut self, text: String) {
        let before = self.line.before.take().unwrap_or_else(|| Rc::clone(&self.order.form));
        // A line taken back leaves the fields as they were before it.
        if text.trim().is_empty() {
            self.order = Desk { form: before, example: None };
            self.line = WrittenLine { text, ..WrittenLine::default() };
            return;
        }
        let order::Spread { draft: filled, unplaced } = order::spread(&text);
        let mut draft = before.draft();
        for (name, text) in filled.pairs() {
            draft.set(name, text);
        }
        self.order = Desk { form: Rc::new(Form::new(order::ABOUT.fields, &draft)), example: None };
        self.line = WrittenLine { text, filled, unplaced, before: Some(before) };
    }
}

impl Reducible for State {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        let mut state = Rc::unwrap_or_clone(self);
        match action {
            Action::Open(address) => state.open(&address),
            Action::Write(name, text) => state.change(|form| form.write(name, &text)),
            Action::ChooseUnit(name, symbol) => state.change(|form| form.choose_unit(name, &symbol)),
            Action::TakeExample(place) => {
                let about = state.view.about();
                let example = about.and_then(|about| about.examples.get(place));
                if let (Some(about), Some(example), Some(desk)) = (about, example, state.desk_mut()) {
                    *desk =
                        Desk { form: Rc::new(Form::example(about.fields, example)), example: Some(place) };
                    state.line = WrittenLine::default();
                }
            }
            Action::Clear => {
                let fields = state.view.fields();
                state.change(|form| *form = Form::cleared(fields));
                state.line = WrittenLine::default();
            }
            Action::WriteLine(text) => state.write_line(text),
            Action::LeaveAt(element) if state.view == View::Order => state.left_at = Some(element),
            Action::LeaveAt(_) => {}
            Action::Dismiss => state.notices.clear(),
        }
        Rc::new(state)
    }
}

impl Desk {
    /// A form filled with the first worked example.
    fn first(about: &About) -> Self {
        match about.examples.first() {
            Some(example) => Self { form: Rc::new(Form::example(about.fields, example)), example: Some(0) },
            None => Self { form: Rc::new(Form::new(about.fields, &Draft::default())), example: None },
        }
    }
}

impl View {
    /// The view of that key in an address.
    fn of_key(key: &str) -> Option<Self> {
        match key {
            "order" => Some(Self::Order),
            "calculators" => Some(Self::List),
            "saved" => Some(Self::Saved),
            _ => REGISTER.iter().position(|entry| entry.about.id == key).map(Self::Calculator),
        }
    }

    /// The key of the view in an address.
    pub fn key(self) -> &'static str {
        match self {
            Self::Order => "order",
            Self::List => "calculators",
            Self::Saved => "saved",
            Self::Calculator(_) => self.calculator().map_or("order", |entry| entry.about.id),
        }
    }

    /// What it is called.
    pub fn title(self) -> &'static str {
        match self {
            Self::Order => "Order line",
            Self::List => "Calculators",
            Self::Saved => "Saved",
            Self::Calculator(_) => self.calculator().map_or("", |entry| entry.about.title),
        }
    }

    /// The calculator that is open.
    pub fn calculator(self) -> Option<&'static Entry> {
        match self {
            Self::Calculator(place) => REGISTER.get(place),
            _ => None,
        }
    }

    /// The description of what it asks, if it asks anything.
    pub fn about(self) -> Option<&'static About> {
        match self {
            Self::Order => Some(&order::ABOUT),
            _ => self.calculator().map(|entry| &entry.about),
        }
    }

    fn fields(self) -> &'static [FieldAbout] {
        self.about().map_or(&[], |about| about.fields)
    }
}
