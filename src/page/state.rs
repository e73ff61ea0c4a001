//! What the page holds, and what can happen to it. No browser, no framework: `cargo test` tries it.

mod desk;
mod line;
mod notice;
mod paper;
mod setting;
mod view;

pub use desk::Desk;
pub use line::{EXAMPLES, WrittenLine};
pub use notice::Notice;
pub use paper::{Paper, Written};
pub use setting::{Settings, Theme};
pub use view::View;

use std::rc::Rc;

use crate::calculator::{Address, Damage, Draft, Form, REGISTER};
use crate::quantity::Units;
use crate::sheet::Prices;
use crate::source::document;
use crate::{course, order};

/// The whole state of the page.
#[derive(Debug, Clone, PartialEq)]
pub struct State {
    /// What is open.
    pub view: View,
    /// The order line.
    pub order: Desk,
    /// The order line as it was written in one line.
    pub line: WrittenLine,
    /// What of the course is open, and what fixes its sheet.
    pub course: Desk,
    /// The forms of the calculators, in the order of the register.
    pub calculators: Vec<Desk>,
    /// What there is to tell about the link that was opened.
    pub notice: Notice,
    /// Counts the views opened, so that each arrival can move the focus.
    pub arrivals: u32,
    /// The element that opened a calculator from the order line: the way back leads to it.
    pub left_at: Option<String>,
    /// What is remembered from one visit to the next.
    pub settings: Settings,
    /// Which sheet is chosen, and what stands at its head.
    pub paper: Paper,
    /// Own prices; they stay on the device and are in no link.
    pub prices: Prices,
}

/// What can happen.
#[derive(Debug, Clone, PartialEq)]
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
    /// The written line is to be read, if it has not been.
    Read,
    /// A calculator was opened from this element of the order line.
    LeaveAt(String),
    /// The notice was read.
    Dismiss,
    /// Units were chosen for everything shown.
    Use(Units),
    /// Colours were chosen.
    Wear(Theme),
    /// A sheet was chosen, or something was written on it.
    Note(Written, String),
    /// The own prices were changed.
    Charge(Prices),
}

/// The name under which an address holds the written line, beside the fields it fills.
pub const LINE: &str = "line";
/// The name under which the address of a sheet holds the calculator that it is of, and that of the sources
/// the document.
pub const OF: &str = "of";

impl State {
    /// The page as it opens at an address, but for its written line: that is read when somebody sees it, so that the
    /// first reading, which is the slowest, keeps nobody from writing.
    pub fn opening(address: &str, settings: Settings) -> Self {
        let mut state = Self {
            view: View::Order,
            order: Desk::empty(&order::ABOUT, settings.units),
            line: WrittenLine::default(),
            course: Desk::empty(&course::ABOUT, settings.units),
            calculators: REGISTER.iter().map(|entry| Desk::empty(&entry.about, settings.units)).collect(),
            notice: Notice::default(),
            arrivals: 0,
            left_at: None,
            settings,
            paper: Paper::default(),
            prices: Prices::default(),
        };
        state.open(address);
        state.arrivals = 0;
        // A sheet is on paper at once.
        if state.view != View::Order {
            state.read();
        }
        state
    }

    /// The page as it opens at an address.
    pub fn at(address: &str, settings: Settings) -> Self {
        Self::opening(address, settings).after(Action::Read)
    }

    /// The address of the view, with all that stands in it.
    pub fn address(&self) -> Address {
        let mut draft = match self.desk() {
            Some(desk) if desk.is_touched() => desk.form.to_keep(),
            _ => Draft::default(),
        };
        let line = self.line.text.trim();
        if self.view.is_of_order() && !line.is_empty() {
            draft.set(LINE, line);
        }
        if let (View::Sheet(_), Some(entry)) = (self.view, self.view.calculator()) {
            draft.set(OF, entry.about.id);
        }
        if let Some(document) = self.view.document() {
            draft.set(OF, document.name);
        }
        let is_sheet = matches!(self.view, View::Sheet(_));
        if is_sheet || self.view == View::Order {
            self.paper.clone().write(&mut draft, is_sheet);
        }
        Address::new(self.view.key(), draft)
    }

    /// Whether it holds readings that somebody takes one after the other: they are kept on the device, so that a
    /// closed window does not lose them.
    pub fn takes_readings(&self) -> bool {
        let desk = self.desk().filter(|desk| desk.example.is_none());
        let has_readings = |desk: &Desk| desk.readings().any(|(_, filled)| !filled.text.trim().is_empty());
        matches!(self.view, View::Calculator(_)) && desk.is_some_and(has_readings)
    }

    /// The address of another view, with what stands in it.
    pub fn address_of(&self, view: View) -> Address {
        Self { view, ..self.clone() }.address()
    }

    /// The form of the view, if it has one.
    pub fn desk(&self) -> Option<&Desk> {
        match self.view {
            View::Order | View::Sheet(None) => Some(&self.order),
            View::Calculator(place) | View::Sheet(Some(place)) => self.calculators.get(place),
            View::Course => Some(&self.course),
            View::Catalogue | View::Saved | View::List | View::Sources(_) => None,
        }
    }

    /// What becomes of the page when this happens.
    pub fn after(mut self, action: Action) -> Self {
        match action {
            Action::Open(address) => {
                self.open(&address);
                self.read();
            }
            Action::Write(name, text) => self.change(name, |form| form.write(name, &text)),
            Action::ChooseUnit(name, symbol) => self.change(name, |form| form.choose_unit(name, &symbol)),
            Action::TakeExample(place) => self.take_example(place),
            Action::Clear => self.clear(),
            Action::WriteLine(text) => self.write_line(text),
            Action::Read => self.read(),
            Action::LeaveAt(element) => {
                if self.view == View::Order {
                    self.left_at = Some(element);
                }
            }
            Action::Dismiss => self.notice = Notice::default(),
            Action::Use(units) => {
                self.settings.units = units;
                let desks = std::iter::once(&mut self.order).chain(&mut self.calculators);
                desks.for_each(|desk| Rc::make_mut(&mut desk.form).prefer(units));
                // A sheet that was opened or changed keeps its own.
                if !self.course.is_touched() {
                    self.course = Desk::empty(&course::ABOUT, units);
                }
            }
            Action::Wear(theme) => self.settings.theme = theme,
            Action::Note(part, text) => *self.paper.part(part) = text,
            Action::Charge(prices) => self.prices = prices,
        }
        self
    }

    fn desk_mut(&mut self) -> Option<&mut Desk> {
        match self.view {
            View::Order | View::Sheet(None) => Some(&mut self.order),
            View::Calculator(place) | View::Sheet(Some(place)) => self.calculators.get_mut(place),
            View::Course => Some(&mut self.course),
            View::Catalogue | View::Saved | View::List | View::Sources(_) => None,
        }
    }

    fn change(&mut self, name: &str, change: impl FnOnce(&mut Form)) {
        if let Some(desk) = self.desk_mut() {
            if desk.example.is_some() {
                desk.empty_readings_but(name);
            }
            change(Rc::make_mut(&mut desk.form));
            desk.example = None;
        }
        if self.view == View::Order {
            self.line.settle();
        }
    }

    fn clear(&mut self) {
        let units = self.settings.units;
        if let (Some(about), Some(desk)) = (self.view.about(), self.desk_mut()) {
            *desk = Desk::empty(about, units);
        }
        if self.view == View::Order {
            self.line = WrittenLine::default();
            self.paper = Paper::default();
        }
    }

    fn take_example(&mut self, place: usize) {
        let example = self.view.about().and_then(|about| Some((about, about.examples.get(place)?)));
        if let (Some((about, example)), Some(desk)) = (example, self.desk_mut()) {
            *desk = Desk::example(about, place, example);
        }
    }

    fn write_line(&mut self, text: String) {
        let (line, form) = WrittenLine::over(std::mem::take(&mut self.line), &self.order.form, text);
        self.line = line;
        self.order.fill(form);
    }

    fn open(&mut self, text: &str) {
        let before = self.view;
        self.arrivals += 1;
        self.notice = Notice::default();
        let text = text.strip_prefix('#').unwrap_or(text);
        let bare = if text.is_empty() { Some(View::Order) } else { View::of_key(text) };
        // A bare name, such as a person would type, opens the view as it was left.
        let (address, damage) = match bare {
            Some(view) => (Address::new(view.key(), Draft::default()), Vec::new()),
            None => Address::read(text),
        };
        self.view = View::of_key(&address.view).unwrap_or(View::Order);
        // The way back is open as long as one stays among calculators, and taken once.
        let leaves = matches!(self.view, View::Catalogue | View::Saved | View::List | View::Course);
        if leaves || (before, self.view) == (View::Order, View::Order) {
            self.left_at = None;
        }
        self.fill(address, damage);
    }

    /// Fills the view with what an address says, and notes what could not be used of it.
    fn fill(&mut self, mut address: Address, damage: Vec<Damage>) {
        if let View::Sheet(_) = self.view
            && let Some(id) = address.take(OF)
        {
            self.view = View::Sheet(REGISTER.iter().position(|entry| entry.about.id == id));
        }
        if let View::Sources(_) = self.view {
            let named = address.draft.get(OF);
            let place = document::ALL.iter().position(|document| named == Some(document.name));
            if place.is_some() {
                address.take(OF);
            }
            self.view = View::Sources(place);
        }
        self.notice = Notice::of_damage(self.view, &address, &damage);
        let line = address.take(LINE).filter(|_| self.view.is_of_order());
        if matches!(self.view, View::Order | View::Sheet(_)) {
            let paper = Paper::take(&mut address);
            // A bare name opens what is there, with its own number.
            if line.is_some() || !address.draft.is_empty() || paper != Paper::default() {
                self.paper = paper;
            }
        }
        let given = address.draft.clone();
        self.notice.leave_out(&address.keep_only(self.view.fields()), &given);
        // The way to the course leads to its lessons.
        if address.draft.is_empty() && line.is_none() && self.view != View::Course {
            return;
        }
        let units = self.settings.units;
        let Some(about) = self.view.about() else { return };
        if self.view.is_of_order()
            && let Some(line) = &line
            && line.trim() == self.line.text.trim()
            && self.order.form.to_keep() == address.draft
        {
            return;
        }
        if let Some(desk) = self.desk_mut() {
            // The bare way to the course leads to a sheet of the reader's system, and a link says its own.
            let filled = match address.draft.is_empty() && desk.form.draft().get("units").is_some() {
                true => Desk::empty(about, units),
                false => Desk::filled(about, &address.draft, units),
            };
            // What stands there already keeps what the user sees of it, such as a unit without a number.
            if desk.form.to_keep() != filled.form.to_keep() || !desk.is_touched() {
                *desk = filled;
                if self.view.is_of_order() {
                    self.line = WrittenLine::default();
                }
            }
        }
        if let Some(line) = line {
            self.line = WrittenLine::unread(line);
        }
    }

    /// Reads the line of a link: alone it fills the fields, beside them it says where they came from.
    fn read(&mut self) {
        if !self.line.is_unread() {
            return;
        }
        let text = std::mem::take(&mut self.line.text);
        if self.order.is_touched() {
            self.line = WrittenLine::beside(text, &self.order.form.to_keep());
        } else {
            self.write_line(text);
        }
    }
}

#[cfg(test)]
mod tests;
