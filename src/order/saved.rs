//! What is kept on a device: order lines and calculations, each with a name, a date and its verdict.
//!
//! Every entry stands under a name of its own in the device's [`Store`]. So two windows of the page
//! never write over what the other has put there, an entry that cannot be read harms no other, and
//! saving costs the same however much is kept.

mod entry;
mod file;
mod import;
mod opening;
mod store;
#[cfg(test)]
mod tests;
mod version_one;

pub use entry::{Entry, verdicts};
pub use file::{File, Unread};
pub use import::Import;
pub use opening::Opening;
pub use store::{Drawer, Fault, Store};

use std::collections::BTreeMap;

use store::keep;

use crate::quantity::letters::lower;
use crate::sorting::sort_by;

/// The entries of this version stand under this, followed by their id.
const PREFIX: &str = "kb2/";

/// All that is kept, as read from the store.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Shelf(BTreeMap<String, Item>);

/// What stands under a name of ours in the store.
#[derive(Debug, Clone, PartialEq)]
enum Item {
    /// An entry, with the small letters in which is searched: made once, for there may be thousands.
    Entry(Entry, String),
    /// What is not understood, kept as it is.
    Other(String),
}

/// How much is kept as it is because this version does not understand it.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Others {
    /// Entries of this version that are damaged.
    pub damaged: usize,
    /// What another version of the page has put there.
    pub of_another_version: usize,
    /// Lines of the list of version 1 that are damaged, or that found no room as entries.
    pub old_lines: usize,
}

/// Keeps an entry without reading the others. One with the same name and the same address takes the
/// new date and verdict.
///
/// # Errors
/// What the store says; then nothing was kept.
pub fn save(store: &impl Store, entry: &Entry) -> Result<(), Fault> {
    keep(store, &entry.place(), &entry.written())
}

impl Shelf {
    /// The number of entries.
    pub fn len(&self) -> usize {
        self.entries().count()
    }

    /// Whether nothing is kept, understood or not.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// The entries in whose name, line, fields or date (as the device shows it) all of these words stand, the newest first; each with
    /// its name in the store.
    pub fn found(&self, words: &str) -> Vec<(&str, &Entry)> {
        let words = lower(words);
        let words: Vec<&str> = words.split_whitespace().collect();
        let holds = |item: &&Item| match item {
            Item::Entry(_, text) => words.iter().all(|word| text.contains(word)),
            Item::Other(_) => false,
        };
        let found = self.0.iter().filter(|(_, item)| holds(item));
        let mut found: Vec<(&str, &Entry)> =
            found.filter_map(|(place, item)| Some((place.as_str(), item.entry()?))).collect();
        // Among entries of one time, and of none, the place decides: the order is the same each time.
        sort_by(&mut found, |(one, a), (other, b)| b.saved.cmp(&a.saved).then_with(|| one.cmp(other)));
        found
    }

    /// What is kept without being understood.
    pub fn others(&self) -> Others {
        let mut count = Others::default();
        for (name, text) in self.kept_as_they_are() {
            if name == version_one::NAME {
                count.old_lines += version_one::lines(text).count();
            } else if name.starts_with(PREFIX) {
                count.damaged += 1;
            } else {
                count.of_another_version += 1;
            }
        }
        count
    }

    /// Everything as a file, in the order of the list; what is not understood goes along as it is.
    pub fn file(&self) -> String {
        file::write(self.found("").into_iter().map(|(_, entry)| entry), self.kept_as_they_are())
    }

    /// Gives an entry another name.
    ///
    /// # Errors
    /// What the store says; then the entry keeps its old name.
    pub fn rename(&mut self, store: &impl Store, place: &str, name: &str) -> Result<(), Fault> {
        let Some(entry) = self.0.get(place).and_then(Item::entry) else { return Ok(()) };
        let renamed = Entry { name: name.trim().to_owned(), ..entry.clone() };
        let new_place = renamed.place();
        if new_place == place {
            return Ok(());
        }
        save(store, &renamed)?;
        self.0.insert(new_place, Item::of(renamed, store));
        self.remove(store, place).map(drop)
    }

    /// Removes an entry, and gives it back to whoever may want it again.
    ///
    /// # Errors
    /// What the store says; then it is still there.
    pub fn remove(&mut self, store: &impl Store, place: &str) -> Result<Option<Entry>, Fault> {
        store.remove(place)?;
        if store.text(place)?.is_some() {
            return Err(Fault::NotKept);
        }
        Ok(match self.0.remove(place) {
            Some(Item::Entry(entry, _)) => Some(entry),
            _ => None,
        })
    }

    /// Puts an entry where it was, after it was removed.
    ///
    /// # Errors
    /// What the store says; then it was not put back.
    pub fn put_back(&mut self, store: &impl Store, entry: Entry) -> Result<(), Fault> {
        self.add(store, entry).map(drop)
    }

    /// Takes in what another window has put under a name, or that it has removed it; whether that
    /// changed anything.
    pub fn heard(&mut self, store: &impl Store, name: &str, text: Option<&str>) -> bool {
        if !is_ours(name) {
            return false;
        }
        let known = self.0.remove(name).is_some();
        if let Some(text) = text {
            self.take(store, name.to_owned(), text.to_owned());
        }
        known || text.is_some()
    }

    /// Takes in what stands in the store under a name of ours.
    fn take(&mut self, store: &impl Store, name: String, text: String) {
        let entry = if name.starts_with(PREFIX) { Entry::read(&text) } else { None };
        self.0.insert(name, entry.map_or(Item::Other(text), |entry| Item::of(entry, store)));
    }

    fn entries(&self) -> impl Iterator<Item = (&str, &Entry)> {
        self.0.iter().filter_map(|(place, item)| Some((place.as_str(), item.entry()?)))
    }

    fn kept_as_they_are(&self) -> impl Iterator<Item = (&str, &str)> {
        self.0.iter().filter_map(|(name, item)| match item {
            Item::Entry(..) => None,
            Item::Other(text) => Some((name.as_str(), text.as_str())),
        })
    }

    /// Stores an entry, then shows it; whether it is new.
    fn add(&mut self, store: &impl Store, entry: Entry) -> Result<bool, Fault> {
        let place = entry.place();
        if let Some(known) = self.0.get(&place).and_then(Item::entry)
            && known.saved >= entry.saved
        {
            return Ok(false);
        }
        save(store, &entry)?;
        Ok(self.0.insert(place, Item::of(entry, store)).is_none())
    }
}

impl Item {
    fn of(entry: Entry, store: &impl Store) -> Self {
        let text = entry.searched(store);
        Self::Entry(entry, text)
    }

    fn entry(&self) -> Option<&Entry> {
        match self {
            Self::Entry(entry, _) => Some(entry),
            Self::Other(_) => None,
        }
    }
}

/// Whether a name in the store is one that this page, in any version, has given.
fn is_ours(name: &str) -> bool {
    let of_a_version = |rest: &str| {
        rest.split_once('/').is_some_and(|(version, _)| {
            !version.is_empty() && version.bytes().all(|byte| byte.is_ascii_digit())
        })
    };
    name == version_one::NAME || name.strip_prefix("kb").is_some_and(of_a_version)
}
