//! The diameter of what has no thread of its own, where it has no unit.

use super::Written;
use crate::order::reading::diameter::of_diameter;
use crate::order::reading::items::Line;
use crate::order::reading::length;
use crate::order::reading::what::What;
use crate::part::Kind;

/// No spring pin is so many inches across, and a bare number from here on is millimetres; common practice. Clevis pins
/// are.
const MOST_INCHES_OF_A_PIN: f64 = 2.0;

/// The size by a bare diameter, where its length or the kind of part says that it is one of millimetres; else its unit is
/// asked, and so is that of a length that has none either.
pub(super) fn in_millimetres(
    line: &mut Line,
    at: usize,
    written: Written,
    kind: Option<Kind>,
) -> Option<Written> {
    let diameter = line.items.get(at).map_or(String::new(), |item| item.text.clone());
    // `4 x 40`: so long a pin is written in millimetres.
    let is_long =
        matches!(line.what(at + 1), Some(What::Length(text)) if text.ends_with(length::UNIT_OF_THREAD));
    // `4 x 24`: what has no unit goes by the diameter.
    let bare = length_without_unit(line, at + 1);
    if let Some(number) = &bare
        && let Some(item) = line.item(at + 1)
    {
        item.what = What::Length(format!("{number} {}", length::UNIT_OF_THREAD));
    }
    let is_large = bare.is_some()
        && kind == Some(Kind::SpringPin)
        && diameter.parse::<f64>().is_ok_and(|number| number >= MOST_INCHES_OF_A_PIN);
    match of_diameter(&diameter).filter(|_| is_long || is_large) {
        Some(thread) => Some(Written { text: thread.to_string(), thread: Some(thread), ..written }),
        None => {
            line.not(at, "a diameter of millimetres or of inches? Write the unit");
            None
        }
    }
}

/// The number of a length in whole inches that says no unit.
fn length_without_unit(line: &Line, at: usize) -> Option<String> {
    let item = line.items.get(at).filter(|item| item.is_free())?;
    let What::Length(text) = &item.what else { return None };
    let number = text.strip_suffix(" in")?;
    let written = item.text.trim_start_matches(['x', 'X', '×', '*', ' ']);
    (written == number && number.chars().all(|c| c.is_ascii_digit())).then(|| number.to_owned())
}
