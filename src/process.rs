//! The three ways of putting zinc on a fastener.

use std::fmt;

/// A way of putting zinc on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Process {
    /// Hot-dip: molten zinc, then the spin.
    Kettle,
    /// Mechanical: zinc powder peened on by glass beads in an acid tumble.
    Barrel,
    /// Electroplating, the everyday yardstick.
    Cell,
}

impl Process {
    /// In the order of the trade: hot-dip, mechanical, electroplated.
    pub const ALL: [Self; 3] = [Self::Kettle, Self::Barrel, Self::Cell];

    /// Stable key for links.
    pub fn key(self) -> &'static str {
        match self {
            Self::Kettle => "kettle",
            Self::Barrel => "barrel",
            Self::Cell => "cell",
        }
    }

    /// The process of that key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|process| process.key() == key)
    }

    /// What the trade calls it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Kettle => "Hot-dip",
            Self::Barrel => "Mechanical",
            Self::Cell => "Electroplating",
        }
    }

    /// Where it happens, in one word.
    pub fn vessel(self) -> &'static str {
        match self {
            Self::Kettle => "kettle",
            Self::Barrel => "barrel",
            Self::Cell => "plating cell",
        }
    }
}

impl fmt::Display for Process {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} ({})", self.name(), self.vessel())
    }
}
