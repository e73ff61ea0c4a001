//! A device that keeps texts, with what can go wrong on one.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

use kettle_barrel::order::saved::{Fault, File, Import, Opening, Shelf, Store};

/// A device, with what can go wrong on one.
#[derive(Default)]
pub struct Device {
    pub texts: RefCell<BTreeMap<String, String>>,
    /// The device refuses to be read or written.
    pub forbidden: Cell<bool>,
    /// Letters there is room for.
    pub room: Cell<Option<usize>>,
    /// It says yes and does nothing.
    pub deaf: Cell<bool>,
    /// It throws at this call, and afterwards if it does so for good.
    fails: Cell<Option<(usize, bool)>>,
    /// What the clock on the wall shows.
    pub clock: Cell<Option<fn(&str) -> String>>,
    pub calls: Cell<usize>,
    pub letters: Cell<usize>,
}

impl Device {
    pub fn holding(texts: &[(&str, &str)]) -> Self {
        let device = Self::default();
        device
            .texts
            .borrow_mut()
            .extend(texts.iter().map(|(name, text)| ((*name).to_owned(), (*text).to_owned())));
        device
    }

    /// From now on it fails at that call, counted from 0, or from that call on.
    pub fn fails_at(&self, call: usize, forever: bool) {
        self.fails.set(Some((self.calls.get() + call, forever)));
    }

    pub fn mends(&self) {
        self.fails.set(None);
    }

    fn call(&self, letters: usize) -> Result<(), Fault> {
        let call = self.calls.get();
        if self.fails.get().is_some_and(|(at, forever)| call == at || forever && call > at) {
            self.calls.set(call + 1);
            return Err(Fault::Forbidden);
        }
        self.calls.set(self.calls.get() + 1);
        self.letters.set(self.letters.get() + letters);
        if self.forbidden.get() { Err(Fault::Forbidden) } else { Ok(()) }
    }

    pub fn get(&self, name: &str) -> Option<String> {
        self.texts.borrow().get(name).cloned()
    }

    pub fn open(&self) -> (Shelf, Option<Fault>) {
        self.try_open().unwrap()
    }

    pub fn try_open(&self) -> Result<(Shelf, Option<Fault>), Fault> {
        let mut opening = Opening::begin(self)?;
        while opening.step(self, 5) {}
        Ok(opening.finish())
    }

    pub fn take_in(&self, shelf: &mut Shelf, text: &str) -> String {
        let mut import = Import::of(File::read(text).unwrap());
        while import.step(self, shelf, 100) {}
        import.to_string()
    }
}

impl Store for Device {
    fn names(&self) -> Result<Vec<String>, Fault> {
        self.call(0)?;
        Ok(self.texts.borrow().keys().cloned().collect())
    }

    fn text(&self, name: &str) -> Result<Option<String>, Fault> {
        let text = self.get(name);
        self.call(text.as_ref().map_or(0, String::len))?;
        Ok(text)
    }

    fn put(&self, name: &str, text: &str) -> Result<(), Fault> {
        self.call(text.len())?;
        let mut texts = self.texts.borrow_mut();
        let others: usize = texts
            .iter()
            .filter(|(known, _)| *known != name)
            .map(|(name, text)| name.len() + text.len())
            .sum();
        if self.room.get().is_some_and(|room| others + name.len() + text.len() > room) {
            return Err(Fault::Full);
        }
        if !self.deaf.get() {
            texts.insert(name.to_owned(), text.to_owned());
        }
        Ok(())
    }

    fn remove(&self, name: &str) -> Result<(), Fault> {
        self.call(0)?;
        if !self.deaf.get() {
            self.texts.borrow_mut().remove(name);
        }
        Ok(())
    }

    fn local_time(&self, time: &str) -> Option<String> {
        self.clock.get().map(|clock| clock(time))
    }
}
