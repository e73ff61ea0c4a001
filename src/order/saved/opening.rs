//! Reading what is kept, so many entries at a time, and moving what version 1 has left.

use super::{Fault, Shelf, Store, is_ours, verdicts, version_one};

/// The shelf on its way out of the store.
#[derive(Debug)]
pub struct Opening {
    names: std::vec::IntoIter<String>,
    total: usize,
    done: usize,
    shelf: Shelf,
    /// The list of version 1 as it was last read, and how far its lines have been looked at.
    old: Option<Old>,
    fault: Option<Fault>,
}

#[derive(Debug)]
pub(super) struct Old {
    pub text: String,
    /// How much of it has been looked at.
    pub at: usize,
    /// How much of that stays: lines that cannot be read or stored.
    pub written: usize,
    pub left: Vec<String>,
}

impl Opening {
    /// Looks what there is to read.
    ///
    /// # Errors
    /// Where the store may not be read.
    pub fn begin(store: &impl Store) -> Result<Self, Fault> {
        let mut names = store.names()?;
        names.retain(|name| is_ours(name) && name != version_one::NAME);
        let old = Old::read(store)?;
        let total = names.len() + old.as_ref().map_or(0, |old| version_one::lines(&old.text).count());
        let shelf = Shelf::default();
        Ok(Self { names: names.into_iter(), total, done: 0, shelf, old, fault: None })
    }

    /// Reads or moves so many more; whether there are others still to come.
    pub fn step(&mut self, store: &impl Store, count: usize) -> bool {
        for _ in 0..count {
            let Some(name) = self.names.next() else { return self.move_old(store, count) };
            self.done += 1;
            match store.text(&name) {
                Ok(Some(text)) => self.shelf.take(store, name, text),
                // Another window has removed it meanwhile.
                Ok(None) => {}
                Err(fault) => self.fault = Some(fault),
            }
        }
        true
    }

    /// How many are done, of how many.
    pub fn progress(&self) -> (usize, usize) {
        (self.done, self.total.max(self.done))
    }

    /// The shelf, and what went wrong on the way.
    pub fn finish(self) -> (Shelf, Option<Fault>) {
        (self.shelf, self.fault)
    }

    /// Makes entries of so many lines of the old list, then takes those lines out of it: where the
    /// page is closed half-way, each stands in one place or in both, and nowhere twice on the shelf.
    fn move_old(&mut self, store: &impl Store, count: usize) -> bool {
        let Some(old) = &mut self.old else { return false };
        let (lines, behind) = old.next(count);
        let ended = lines.is_empty();
        for line in lines {
            self.done += 1;
            let moved = version_one::entry(&line).is_some_and(|mut entry| {
                entry.verdicts = verdicts(&entry.address);
                // An entry that stands there already is newer: it has a date.
                let known = self.shelf.0.contains_key(&entry.place());
                known
                    || self.fault.is_none()
                        && self.shelf.add(store, entry).map_err(|fault| self.fault = Some(fault)).is_ok()
            });
            if !moved {
                old.left.push(line);
            }
        }
        if ended {
            if let Some(old) = self.old.take().filter(|old| !old.left.is_empty()) {
                self.shelf.take(store, version_one::NAME.to_owned(), old.left.join("\n"));
            }
            return false;
        }
        old.at = behind;
        if old.is_worth_writing()
            && let Err(fault) = old.write(store)
        {
            self.fault = Some(fault);
        }
        true
    }
}

impl Old {
    fn of(text: String) -> Self {
        Self { text, at: 0, written: 0, left: Vec::new() }
    }

    fn read(store: &impl Store) -> Result<Option<Self>, Fault> {
        let text = store.text(version_one::NAME)?;
        Ok(text.map(Self::of))
    }

    /// The next lines, and the place behind them.
    pub fn next(&self, count: usize) -> (Vec<String>, usize) {
        let mut rest = self.text.get(self.at..).unwrap_or_default();
        let mut lines = Vec::new();
        while lines.len() < count && !rest.is_empty() {
            let (line, behind) = rest.split_once('\n').unwrap_or((rest, ""));
            lines.extend(version_one::lines(line).map(str::to_owned));
            rest = behind;
        }
        (lines, self.text.len() - rest.len())
    }

    /// Whether so much was moved since the list was last written that its room is worth having. Each
    /// time an eighth of it goes: writing it costs in all no more than eight times its length.
    pub fn is_worth_writing(&self) -> bool {
        (self.at - self.written) * 8 >= self.text.len() || self.at == self.text.len()
    }

    /// Writes what is left of the list, unless another window has changed it meanwhile: then it is
    /// read anew, and lines that were moved before are moved onto themselves.
    fn write(&mut self, store: &impl Store) -> Result<(), Fault> {
        let now = store.text(version_one::NAME)?;
        if now.as_deref() != Some(self.text.as_str()) {
            *self = Self::of(now.unwrap_or_default());
            return Ok(());
        }
        let kept: String = self.left.iter().flat_map(|line| [line.as_str(), "\n"]).collect();
        let text = format!("{kept}{}", self.text.get(self.at..).unwrap_or_default());
        if text.is_empty() {
            store.remove(version_one::NAME)?;
        } else {
            store.put(version_one::NAME, &text)?;
        }
        (self.text, self.at, self.written) = (text, kept.len(), kept.len());
        Ok(())
    }
}
