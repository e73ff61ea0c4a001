//! Taking a file in, so many entries at a time.

use std::fmt;

use super::{Entry, Fault, File, Shelf, Store, is_ours, store, verdicts};

/// A file on its way to the shelf. An entry is shown once it is stored, and not before.
#[derive(Debug)]
pub struct Import {
    entries: std::vec::IntoIter<Entry>,
    others: Vec<(String, String)>,
    total: usize,
    new: usize,
    known: usize,
    bad: usize,
    cut: bool,
    stopped: Option<Fault>,
}

impl Import {
    /// A file that is to be taken in.
    pub fn of(file: File) -> Self {
        let File { entries, bad, cut, others } = file;
        let total = entries.len();
        Self { entries: entries.into_iter(), others, total, new: 0, known: 0, bad, cut, stopped: None }
    }

    /// Takes in so many entries more; whether there are others still to come.
    pub fn step(&mut self, store: &impl Store, shelf: &mut Shelf, count: usize) -> bool {
        for _ in 0..count {
            let Some(mut entry) = self.entries.next() else {
                self.take_others(store, shelf);
                return false;
            };
            if entry.verdicts.is_empty() {
                entry.verdicts = verdicts(&entry.address);
            }
            match shelf.add(store, entry) {
                Ok(true) => self.new += 1,
                Ok(false) => self.known += 1,
                Err(fault) => {
                    self.stopped = Some(fault);
                    return false;
                }
            }
        }
        true
    }

    /// How many are done, of how many.
    pub fn progress(&self) -> (usize, usize) {
        (self.new + self.known, self.total)
    }

    /// What another version had left on the other device goes where nothing stands under its name.
    fn take_others(&mut self, store: &impl Store, shelf: &mut Shelf) {
        for (name, text) in std::mem::take(&mut self.others) {
            if is_ours(&name) && store.text(&name) == Ok(None) && store::keep(store, &name, &text).is_ok() {
                shelf.take(store, name, text);
            }
        }
    }
}

impl fmt::Display for Import {
    /// What came of it.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} new taken in", self.new)?;
        if self.known > 0 {
            write!(f, ", {} {} here already", self.known, if self.known == 1 { "was" } else { "were" })?;
        }
        f.write_str(".")?;
        if self.bad > 0 {
            let were = if self.bad == 1 { "was" } else { "were" };
            write!(f, " {} in the file cannot be opened by this page and {were} left out.", self.bad)?;
        }
        if self.cut {
            f.write_str(" The file is damaged or cut short; its whole entries were read.")?;
        }
        if let Some(fault) = self.stopped {
            let (done, total) = self.progress();
            write!(f, " {} of the file were not taken in. {fault}", total - done)?;
        }
        Ok(())
    }
}
