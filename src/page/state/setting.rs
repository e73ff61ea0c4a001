//! What is remembered from one visit to the next.

use crate::quantity::Units;

/// What the user has chosen once and for all.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Settings {
    /// The units of everything shown.
    pub units: Units,
    /// The colours.
    pub theme: Theme,
}

/// The colours of the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Theme {
    /// What the device is set to.
    #[default]
    Device,
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
    /// Black on white without a grey, for reading in the sun.
    Sun,
}

impl Theme {
    /// Every theme, in the order they are offered.
    pub const ALL: [Self; 4] = [Self::Device, Self::Light, Self::Dark, Self::Sun];

    /// Its key in the store and in the style.
    pub fn key(self) -> &'static str {
        match self {
            Self::Device => "device",
            Self::Light => "light",
            Self::Dark => "dark",
            Self::Sun => "sun",
        }
    }

    /// What it is called.
    pub fn label(self) -> &'static str {
        match self {
            Self::Device => "As the device",
            Self::Light => "Light",
            Self::Dark => "Dark",
            Self::Sun => "Full sun",
        }
    }

    /// The theme of that key; the device's where there is none.
    pub fn of_key(key: &str) -> Self {
        Self::ALL.into_iter().find(|theme| theme.key() == key).unwrap_or_default()
    }
}
