//! What the device keeps for the page.

use gloo_utils::window;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DomException, Storage};

use crate::order::saved::{Fault, Store};
use crate::page::state::{Settings, Theme};
use crate::quantity::Units;
use crate::sheet::Prices;

/// The store that a browser has for each site. Each use asks for it anew: a browser may forbid it at
/// any time.
pub struct Device;

/// Under these the settings are kept.
const UNITS: &str = "kettle-and-barrel units";
const THEME: &str = "kettle-and-barrel theme";
const PRICES: &str = "kettle-and-barrel prices";
const READINGS: &str = "kettle-and-barrel readings";

impl Device {
    /// What was chosen on an earlier visit.
    pub fn settings() -> Settings {
        let kept = |name| Self.text(name).ok().flatten().unwrap_or_default();
        Settings { units: Units::of_key(&kept(UNITS)), theme: Theme::of_key(&kept(THEME)) }
    }

    /// Keeps what was chosen. A device that keeps nothing asks again on the next visit; a page that opens has
    /// nothing new to keep, and writing takes longer than reading.
    pub fn remember(settings: Settings) {
        if Self::settings() != settings {
            let _ = Self.put(UNITS, settings.units.key());
            let _ = Self.put(THEME, settings.theme.key());
        }
    }

    /// The own prices of an earlier visit.
    pub fn prices() -> Prices {
        Prices::read(&Self.text(PRICES).ok().flatten().unwrap_or_default())
    }

    /// Keeps the own prices as a text.
    pub fn remember_prices(prices: &str) {
        if Self::prices() != Prices::read(prices) {
            let _ = Self.put(PRICES, prices);
        }
    }

    /// The address with the readings that were taken last.
    pub fn readings() -> Option<String> {
        Self.text(READINGS).ok().flatten()
    }

    /// Keeps the address with the readings that are being taken.
    pub fn remember_readings(address: &str) {
        let _ = Self.put(READINGS, address);
    }

    /// Forgets the readings.
    pub fn forget_readings() {
        let _ = Self.remove(READINGS);
    }

    /// Asks the browser not to drop what is kept when room gets scarce.
    pub fn hold() {
        let manager = window().navigator().storage();
        if !manager.is_undefined() {
            let _ = manager.persist();
        }
    }
}

impl Store for Device {
    fn names(&self) -> Result<Vec<String>, Fault> {
        let storage = storage()?;
        let count = storage.length().map_err(fault)?;
        let mut names = Vec::with_capacity(count as usize);
        for place in 0..count {
            names.extend(storage.key(place).map_err(fault)?);
        }
        Ok(names)
    }

    fn text(&self, name: &str) -> Result<Option<String>, Fault> {
        storage()?.get_item(name).map_err(fault)
    }

    fn put(&self, name: &str, text: &str) -> Result<(), Fault> {
        storage()?.set_item(name, text).map_err(fault)
    }

    fn remove(&self, name: &str) -> Result<(), Fault> {
        storage()?.remove_item(name).map_err(fault)
    }

    fn local_time(&self, time: &str) -> Option<String> {
        super::local_time(time)
    }
}

fn storage() -> Result<Storage, Fault> {
    window().local_storage().map_err(fault)?.ok_or(Fault::Forbidden)
}

fn fault(thrown: JsValue) -> Fault {
    match thrown.dyn_ref::<DomException>().map(DomException::name) {
        // The name in Firefox differs from the one that the standard gives.
        Some(name) if name == "QuotaExceededError" || name == "NS_ERROR_DOM_QUOTA_REACHED" => Fault::Full,
        _ => Fault::Forbidden,
    }
}
