//! How much room a text takes, without asking a browser.
//!
//! Letters are taken as wide as in the wider of the usual fonts, so that a text never needs more.

/// Pixels from one line of text to the next.
pub const LINE: f64 = 20.0;
/// Pixels that letters reach above the line they stand on.
pub const ABOVE: f64 = 12.5;
/// And below it.
pub const BELOW: f64 = 4.0;
/// Size of the letters.
const SIZE: f64 = 16.0;

/// The width of a text in pixels.
pub fn width_of(text: &str) -> f64 {
    text.chars().map(share).sum::<f64>() * SIZE
}

/// The width of a letter over its height.
fn share(letter: char) -> f64 {
    match letter {
        'i' | 'j' | 'l' | 'I' | '.' | ',' | ':' | ';' | '|' | '\'' | '’' => 0.3,
        ' ' | '\u{a0}' | 'f' | 't' | 'r' | '(' | ')' | '/' | '-' => 0.4,
        'm' | 'w' | '%' | '—' => 0.92,
        'M' | 'W' | '@' => 1.0,
        'A'..='Z' => 0.72,
        _ => 0.6,
    }
}

/// What a text in heavy letters may be wide, for a width.
pub fn heavy(width: f64) -> f64 {
    width * 0.92
}

/// A text in lines that are no wider than that, broken between words; a single word may be wider.
pub fn wrap(text: &str, width: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ') {
        match lines.last_mut() {
            Some(line) if width_of(line) + width_of(" ") + width_of(word) <= width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
