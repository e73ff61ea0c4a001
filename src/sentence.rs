//! Sentences put together from parts.

use std::fmt;

/// The text with a capital first letter. Letters beyond A to Z stay as they are: a sentence that
/// begins with µ must not begin with another unit.
pub fn capital(text: &str) -> String {
    capitalized(text.to_owned())
}

/// The same of a text in hand.
pub fn capitalized(mut text: String) -> String {
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    text
}

/// Room for most sentences.
const ROOM: usize = 128;

/// Words and numbers as a text, with room for a sentence from the start: `format!` guesses its room by the
/// fixed words alone, and moves the text each time that it grows.
pub fn worded(words: fmt::Arguments<'_>) -> String {
    let mut text = String::with_capacity(ROOM);
    put(&mut text, words);
    text
}

/// Puts words and numbers behind a text.
pub fn put(text: &mut String, words: fmt::Arguments<'_>) {
    // Writing to a string cannot fail.
    let _ = fmt::Write::write_fmt(text, words);
}
