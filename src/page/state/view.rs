//! What can be open.

use crate::calculator::{About, Entry, FieldAbout, REGISTER};
use crate::order;

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
}

impl View {
    /// The view of that key in an address.
    pub fn of_key(key: &str) -> Option<Self> {
        match key {
            "order" => Some(Self::Order),
            "calculators" => Some(Self::Catalogue),
            "saved" => Some(Self::Saved),
            _ => REGISTER.iter().position(|entry| entry.about.id == key).map(Self::Calculator),
        }
    }

    /// The key of the view in an address.
    pub fn key(self) -> &'static str {
        match self {
            Self::Order => "order",
            Self::Catalogue => "calculators",
            Self::Saved => "saved",
            Self::Calculator(_) => self.calculator().map_or("order", |entry| entry.about.id),
        }
    }

    /// What it is called.
    pub fn title(self) -> &'static str {
        match self {
            Self::Order => "Order line",
            Self::Catalogue => "Calculators",
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

    /// What it asks; nothing where it asks nothing.
    pub fn fields(self) -> &'static [FieldAbout] {
        self.about().map_or(&[], |about| about.fields)
    }
}
