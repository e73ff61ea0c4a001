//! How version 1 kept things: a list of addresses, one a line, under a single name; its file was the
//! same text.

use super::Entry;

/// The name of the list in the store.
pub const NAME: &str = "kettle-and-barrel saved 1";

/// The lines of a list that say something; one that begins with `#` and a space is a remark.
pub fn lines(text: &str) -> impl Iterator<Item = &str> {
    text.lines()
        .map(|line| line.trim_start_matches('\u{feff}').trim())
        .filter(|line| !line.is_empty() && *line != "#" && !line.starts_with("# "))
}

/// A line as an entry without name, date and verdict; `None` where it is no address.
pub fn entry(line: &str) -> Option<Entry> {
    let address = line.strip_prefix('#').unwrap_or(line).to_owned();
    let entry = Entry { name: String::new(), saved: String::new(), verdicts: Vec::new(), address };
    entry.is_sound().then_some(entry)
}
