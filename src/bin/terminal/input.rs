//! What is typed: fields, and standard input.

use std::io::Read;

use kettle_barrel::calculator::{FieldAbout, Kind};

/// The longest text that is taken from standard input, in bytes: more is no order and no list of
/// readings, but a file given by mistake.
const LONGEST_INPUT: u64 = 1 << 20;

/// All that stands in standard input.
///
/// # Errors
/// That it cannot be read, is too long, or is not UTF-8.
pub fn standard_input() -> Result<String, String> {
    let mut bytes = Vec::new();
    std::io::stdin()
        .take(LONGEST_INPUT + 1)
        .read_to_end(&mut bytes)
        .map_err(|problem| format!("Standard input cannot be read: {problem}."))?;
    if bytes.len() as u64 > LONGEST_INPUT {
        return Err(format!("Standard input is longer than {LONGEST_INPUT} bytes; give less."));
    }
    let text = String::from_utf8(bytes).map_err(|_| "Standard input is not UTF-8; convert it first.")?;
    Ok(text.trim_start_matches('\u{feff}').trim().to_owned())
}

/// The fields of a calculator, one a line.
pub fn help(fields: &[FieldAbout]) -> String {
    let line = |field: &FieldAbout| {
        let takes = match field.kind {
            Kind::Choice(choices) => choices.iter().map(|choice| choice.key).collect::<Vec<_>>().join(" | "),
            _ => field.units().iter().map(|unit| unit.symbol).collect::<Vec<_>>().join(", "),
        };
        format!("  {} ({}) [{takes}] = {}", field.key, field.label, field.default)
    };
    fields.iter().map(line).collect::<Vec<_>>().join("\n")
}
