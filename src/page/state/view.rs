//! What can be open.

use crate::calculator::{About, Entry, FieldAbout, REGISTER};
use crate::source::{Document, document};
use crate::{course, order};

/// What is open.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum View {
    /// The order line and its assessment.
    Order,
    /// The list of calculators.
    Catalogue,
    /// The calculator at that place of the register.
    Calculator(usize),
    /// What was kept on this device.
    Saved,
    /// A list of orders.
    List,
    /// Sheets of paper: of the order, or of the calculator at that place of the register.
    Sheet(Option<usize>),
    /// Lessons and exercises.
    Course,
    /// What the numbers rest on: every document, or the one at that place of [`document::ALL`].
    Sources(Option<usize>),
}

impl View {
    /// The view of that key in an address.
    pub fn of_key(key: &str) -> Option<Self> {
        match key {
            "order" => Some(Self::Order),
            "calculators" => Some(Self::Catalogue),
            "saved" => Some(Self::Saved),
            "list" => Some(Self::List),
            "sheet" => Some(Self::Sheet(None)),
            "course" => Some(Self::Course),
            "sources" => Some(Self::Sources(None)),
            _ => REGISTER.iter().position(|entry| entry.about.id == key).map(Self::Calculator),
        }
    }

    /// The key of the view in an address.
    pub fn key(self) -> &'static str {
        match self {
            Self::Order => "order",
            Self::Catalogue => "calculators",
            Self::Saved => "saved",
            Self::List => "list",
            Self::Sheet(_) => "sheet",
            Self::Course => course::ABOUT.id,
            Self::Sources(_) => "sources",
            Self::Calculator(_) => self.calculator().map_or("order", |entry| entry.about.id),
        }
    }

    /// Whether it shows the order line or a sheet of it.
    pub fn is_of_order(self) -> bool {
        matches!(self, Self::Order | Self::Sheet(None))
    }

    /// What a sheet is of; any other view is of itself.
    pub fn behind(self) -> Self {
        match self {
            Self::Sheet(None) => Self::Order,
            Self::Sheet(Some(place)) => Self::Calculator(place),
            other => other,
        }
    }

    /// What it is called.
    pub fn title(self) -> &'static str {
        match self {
            Self::Order => "Order line",
            Self::Catalogue => "Calculators",
            Self::Saved => "Saved",
            Self::List => "Order list",
            Self::Sheet(_) => "Sheets to print",
            Self::Course => course::ABOUT.title,
            Self::Sources(_) => self.document().map_or("What the numbers rest on", |document| document.name),
            Self::Calculator(_) => self.calculator().map_or("", |entry| entry.about.title),
        }
    }

    /// The calculator that is open, or whose sheet is.
    pub fn calculator(self) -> Option<&'static Entry> {
        match self {
            Self::Calculator(place) | Self::Sheet(Some(place)) => REGISTER.get(place),
            _ => None,
        }
    }

    /// The document that is open.
    pub fn document(self) -> Option<&'static Document> {
        match self {
            Self::Sources(Some(place)) => document::ALL.get(place).copied(),
            _ => None,
        }
    }

    /// The description of what it asks, if it asks anything.
    pub fn about(self) -> Option<&'static About> {
        match self {
            Self::Order | Self::Sheet(None) => Some(&order::ABOUT),
            Self::Course => Some(&course::ABOUT),
            _ => self.calculator().map(|entry| &entry.about),
        }
    }

    /// What it asks; nothing where it asks nothing.
    pub fn fields(self) -> &'static [FieldAbout] {
        self.about().map_or(&[], |about| about.fields)
    }
}
