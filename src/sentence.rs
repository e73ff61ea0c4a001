//! Sentences put together from parts.

/// The text with a capital first letter. Letters beyond A to Z stay as they are: a sentence that
/// begins with µ must not begin with another unit.
pub fn capital(text: &str) -> String {
    let mut text = text.to_owned();
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    text
}
