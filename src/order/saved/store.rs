//! Where a device keeps texts under names.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::fmt;

/// A store of texts, as a browser has one for each site. Other windows may change it at any time.
pub trait Store {
    /// Every name in the store, in any order.
    ///
    /// # Errors
    /// Where the store may not be read.
    fn names(&self) -> Result<Vec<String>, Fault>;

    /// The text under a name.
    ///
    /// # Errors
    /// Where the store may not be read.
    fn text(&self, name: &str) -> Result<Option<String>, Fault>;

    /// Puts a text under a name, in place of what stands there.
    ///
    /// # Errors
    /// Where there is no room, or the store may not be written.
    fn put(&self, name: &str, text: &str) -> Result<(), Fault>;

    /// Removes a name with its text.
    ///
    /// # Errors
    /// Where the store may not be written.
    fn remove(&self, name: &str) -> Result<(), Fault>;

    /// A time in UTC, as ISO 8601 writes it, by the clock on the wall; none where the device knows of none, or
    /// it is no time.
    fn local_time(&self, _time: &str) -> Option<String> {
        None
    }
}

/// Texts that are kept as long as this lasts: it forgets nothing, and never fails.
#[derive(Debug, Default)]
pub struct Drawer(RefCell<BTreeMap<String, String>>);

impl Store for Drawer {
    fn names(&self) -> Result<Vec<String>, Fault> {
        Ok(self.0.borrow().keys().cloned().collect())
    }

    fn text(&self, name: &str) -> Result<Option<String>, Fault> {
        Ok(self.0.borrow().get(name).cloned())
    }

    fn put(&self, name: &str, text: &str) -> Result<(), Fault> {
        self.0.borrow_mut().insert(name.to_owned(), text.to_owned());
        Ok(())
    }

    fn remove(&self, name: &str) -> Result<(), Fault> {
        self.0.borrow_mut().remove(name);
        Ok(())
    }
}

/// Why something was not kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// The device keeps nothing for this page.
    Forbidden,
    /// There is no room left.
    Full,
    /// The store said nothing, and did not do it.
    NotKept,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Forbidden => {
                "This browser keeps nothing for this page: a private window or a setting forbids it. \
                 Copy the link instead."
            }
            Self::Full => {
                "The room that this browser gives the page is full. Export what is saved as a file, remove \
                 what is no longer needed, and try again."
            }
            Self::NotKept => "This browser did not keep the change. Copy the link, or export a file.",
        })
    }
}

/// Puts a text, and looks whether it is there.
pub(super) fn keep(store: &impl Store, name: &str, text: &str) -> Result<(), Fault> {
    store.put(name, text)?;
    if store.text(name)?.as_deref() == Some(text) { Ok(()) } else { Err(Fault::NotKept) }
}
