//! What a person writes on a sheet, and which sheet it is.

use crate::calculator::{Address, Draft};

/// Which sheet is chosen, and what stands at its head.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Paper {
    /// The key of the sheet; empty for the first.
    pub which: String,
    /// The number of the order.
    pub number: String,
    /// Its name.
    pub name: String,
}

/// A part of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Written {
    /// Which sheet.
    Which,
    /// The number of the order.
    Number,
    /// Its name.
    Name,
}

impl Written {
    const ALL: [Self; 3] = [Self::Which, Self::Number, Self::Name];

    /// Its name in a link.
    fn key(self) -> &'static str {
        match self {
            Self::Which => "which",
            Self::Number => "number",
            Self::Name => "name",
        }
    }
}

impl Paper {
    /// A part of it.
    pub fn part(&mut self, part: Written) -> &mut String {
        match part {
            Written::Which => &mut self.which,
            Written::Number => &mut self.number,
            Written::Name => &mut self.name,
        }
    }

    /// Writes it into a link, beside the fields; which sheet it is only where a sheet is open.
    pub(super) fn write(mut self, draft: &mut Draft, with_which: bool) {
        for part in Written::ALL.into_iter().filter(|part| with_which || *part != Written::Which) {
            let text = self.part(part);
            if !text.trim().is_empty() {
                draft.set(part.key(), text.as_str());
            }
        }
    }

    /// Takes it out of a link.
    pub(super) fn take(address: &mut Address) -> Self {
        let mut paper = Self::default();
        for part in Written::ALL {
            *paper.part(part) = address.take(part.key()).unwrap_or_default();
        }
        paper
    }
}
