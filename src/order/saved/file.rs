//! The file that takes what is kept to another device.
//!
//! It is JSON with a version, one entry a line; a file of version 1, a list of addresses, is read as
//! well.

use std::fmt;

use serde::Deserialize;
use serde_json::value::RawValue;

use super::{Entry, version_one};

/// What the files of this page call themselves.
const FORMAT: &str = "kettle-and-barrel saved";
/// The version of the file and of the entries in it.
const VERSION: u64 = 2;

/// A file, read.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct File {
    /// The entries that can be opened.
    pub entries: Vec<Entry>,
    /// The number of entries or lines that cannot.
    pub bad: usize,
    /// Whether the file ends before its end.
    pub cut: bool,
    /// What was kept without being understood, with its name in the store.
    pub others: Vec<(String, String)>,
}

/// Why nothing was taken from a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unread {
    /// There is nothing in it.
    Empty,
    /// It was not written by this page.
    NotOurs,
    /// It was written by a newer version of the page.
    Newer,
    /// It is damaged, and no entry in it is whole.
    Damaged,
}

impl fmt::Display for Unread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Empty => "The file is empty; nothing was taken in.",
            Self::NotOurs => "This is not a file of saved work from this page; nothing was taken in.",
            Self::Newer => {
                "The file was written by a newer version of this page; nothing was taken in. Load the newer \
                 version here first."
            }
            Self::Damaged => "The file is damaged, and no entry in it is whole; nothing was taken in.",
        })
    }
}

/// What tells whose file it is.
#[derive(Deserialize)]
struct Head<'a> {
    #[serde(borrow, default)]
    format: Option<&'a RawValue>,
    #[serde(borrow, default)]
    version: Option<&'a RawValue>,
}

/// Each entry is read by itself, so that a bad one harms no other.
#[derive(Deserialize)]
struct Body<'a> {
    #[serde(borrow)]
    entries: Vec<&'a RawValue>,
    #[serde(default)]
    others: Vec<(String, String)>,
}

impl File {
    /// Reads a file.
    ///
    /// # Errors
    /// [`Unread`] says why nothing can be taken from it.
    pub fn read(text: &str) -> Result<Self, Unread> {
        let text = text.trim_start_matches('\u{feff}').trim();
        if text.is_empty() {
            return Err(Unread::Empty);
        }
        if !text.starts_with('{') {
            return Self::of_version_one(text);
        }
        let Ok(head) = serde_json::from_str::<Head<'_>>(text) else {
            return if text.contains(FORMAT) { Self::of_lines(text) } else { Err(Unread::NotOurs) };
        };
        if head.format.is_none_or(|format| format.get().trim_matches('"') != FORMAT) {
            return Err(Unread::NotOurs);
        }
        match head.version.and_then(|version| version.get().parse().ok()) {
            Some(VERSION) => Self::of_body(text),
            Some(version) if version > VERSION => Err(Unread::Newer),
            _ => Err(Unread::Damaged),
        }
    }

    fn of_body(text: &str) -> Result<Self, Unread> {
        let Ok(body) = serde_json::from_str::<Body<'_>>(text) else { return Err(Unread::Damaged) };
        let mut file = Self { others: body.others, ..Self::default() };
        for raw in body.entries {
            file.take(Entry::read(raw.get()));
        }
        // A list of version 1 that found no room where the file was written.
        if let Some(at) = file.others.iter().position(|(name, _)| name == version_one::NAME) {
            let (_, list) = file.others.remove(at);
            version_one::lines(&list).for_each(|line| file.take(version_one::entry(line)));
        }
        Ok(file)
    }

    /// The whole lines of a file that is cut or damaged.
    fn of_lines(text: &str) -> Result<Self, Unread> {
        let mut file = Self { cut: true, ..Self::default() };
        // The first line is the head.
        for line in text.lines().skip(1).map(|line| line.trim().trim_end_matches(',')) {
            if line.starts_with('{') {
                file.take(Entry::read(line));
            }
        }
        if file.entries.is_empty() { Err(Unread::Damaged) } else { Ok(file) }
    }

    fn of_version_one(text: &str) -> Result<Self, Unread> {
        let mut file = Self::default();
        version_one::lines(text).for_each(|line| file.take(version_one::entry(line)));
        if file.entries.is_empty() { Err(Unread::NotOurs) } else { Ok(file) }
    }

    fn take(&mut self, entry: Option<Entry>) {
        match entry {
            Some(entry) => self.entries.push(entry),
            None => self.bad += 1,
        }
    }
}

/// Writes a file.
pub(super) fn write<'a>(
    entries: impl Iterator<Item = &'a Entry>,
    others: impl Iterator<Item = (&'a str, &'a str)>,
) -> String {
    let mut text = format!("{{\"format\":\"{FORMAT}\",\"version\":{VERSION},\"entries\":[");
    for (at, entry) in entries.enumerate() {
        text.push_str(if at == 0 { "\n" } else { ",\n" });
        text.push_str(&entry.written());
    }
    let others: Vec<(&str, &str)> = others.collect();
    // Texts have no way to fail.
    let others = serde_json::to_string(&others).unwrap_or_default();
    text.push_str(&format!("\n],\n\"others\":{others}}}\n"));
    text
}
