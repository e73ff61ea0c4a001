//! Sentences put together from parts.

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
