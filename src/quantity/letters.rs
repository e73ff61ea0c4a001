//! Small and capital letters of what people write: Latin ones, and those with marks of western Europe.
//!
//! Not the standard library's `to_lowercase`: its tables of all the world's letters add 12 kB (brotli) to
//! the page, and no word of the trade needs them. Other letters stay as they are written.

/// With small letters.
pub fn lower(text: &str) -> String {
    if text.is_ascii() {
        return text.to_ascii_lowercase();
    }
    text.chars()
        .map(|letter| match letter {
            'À'..='Ö' | 'Ø'..='Þ' => char::from_u32(letter as u32 + 32).unwrap_or(letter),
            // The sign of the unit, whichever of its three shapes the keyboard has.
            'Μ' => 'μ',
            letter => letter.to_ascii_lowercase(),
        })
        .collect()
}

/// With capital letters; marked ones stay.
pub fn upper(text: &str) -> String {
    text.to_ascii_uppercase()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn agrees_with_the_standard_library_in_the_letters_of_western_europe() {
        for letter in (0..=0xFF).filter_map(char::from_u32) {
            let text = letter.to_string();
            assert_eq!(lower(&text), text.to_lowercase(), "{letter}");
        }
        assert_eq!(upper("a325 typ Ö"), "A325 TYP Ö");
    }
}
