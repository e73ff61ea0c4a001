//! The three ways of putting zinc on a fastener.

use std::fmt;

use serde::Serialize;

/// A way of putting zinc on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Process {
    /// Hot-dip: molten zinc, then the spin.
    HotDip,
    /// Mechanical: zinc powder peened on by glass beads in an acid tumble.
    Mechanical,
    /// Electroplating, the everyday yardstick.
    Electroplated,
}

impl Process {
    /// In the order of the trade: hot-dip, mechanical, electroplated.
    pub const ALL: [Self; 3] = [Self::HotDip, Self::Mechanical, Self::Electroplated];

    /// Stable key for links.
    pub const fn key(self) -> &'static str {
        match self {
            Self::HotDip => "kettle",
            Self::Mechanical => "barrel",
            Self::Electroplated => "cell",
        }
    }

    /// The process of that key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|process| process.key() == key)
    }

    /// What the trade calls it.
    pub fn name(self) -> &'static str {
        match self {
            Self::HotDip => "Hot-dip",
            Self::Mechanical => "Mechanical",
            Self::Electroplated => "Electroplating",
        }
    }

    /// Where it happens, in one word.
    pub fn vessel(self) -> &'static str {
        match self {
            Self::HotDip => "kettle",
            Self::Mechanical => "barrel",
            Self::Electroplated => "plating cell",
        }
    }
}

impl fmt::Display for Process {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} ({})", self.name(), self.vessel())
    }
}
