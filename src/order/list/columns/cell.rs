//! A cell of a column in words that stand for themselves.

use super::heading::{Column, Numbers, Says};
use crate::quantity::letters::lower;

/// What becomes of a cell.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Cell {
    /// Words for the order line; none where the cell says that there is nothing.
    Said(String),
    /// It is not used, and why.
    LeftOut(&'static str),
}

/// A bare diameter above it is one in millimetres: no thread in inches is as large.
const GREATEST_INCH: f64 = 6.0;

impl Column {
    /// What a cell says; a bare number is what it is beside such a thread.
    pub fn cell(&self, cell: &str, in_inches: Option<bool>) -> Cell {
        // A sign stays with its pieces and its years, and their field says what is wrong with it.
        let figures = cell.trim_start_matches(['-', '−']);
        let is_number = figures.starts_with(|c: char| c.is_ascii_digit())
            && !figures.contains(|c: char| c.is_alphabetic() || matches!(c, '"' | '\'' | '°'));
        if is_number && figures.len() < cell.len() && !matches!(self.says, Says::Quantity | Says::Years) {
            return Cell::LeftOut("less than nothing: write the number without a sign");
        }
        if is_number {
            return self.number(cell, in_inches);
        }
        if self.says == Says::Quantity && cell.ends_with(" a") {
            return Cell::LeftOut("pieces, or years? Write the number alone");
        }
        Cell::Said(match self.says {
            Says::Length => format!("length {cell}"),
            Says::Diameter if is_measure(cell) => format!("diameter {cell}"),
            Says::Nut => self.mate("nut", cell),
            Says::Washer => self.mate("washer", cell),
            _ => cell.to_owned(),
        })
    }

    /// Whether a cell names an inch thread or a metric one; nothing where it names none.
    pub fn is_in_inches(&self, cell: &str) -> Option<bool> {
        match self.says {
            Says::Thread | Says::Line | Says::Part => is_inch(cell),
            Says::Diameter => is_inch(cell).or(match self.numbers {
                Numbers::In("in") => Some(true),
                Numbers::In(_) => Some(false),
                _ => None,
            }),
            _ => None,
        }
    }

    fn number(&self, cell: &str, in_inches: Option<bool>) -> Cell {
        let is_fraction = cell.contains('/');
        let unit = match self.numbers {
            Numbers::Usual => None,
            Numbers::In(unit) => Some(unit),
            Numbers::Other => {
                return Cell::LeftOut(
                    "the heading makes something else of its numbers: write the unit in the cell",
                );
            }
        };
        if is_fraction && matches!(unit, Some("mm" | "cm" | "m" | "µm")) {
            return Cell::LeftOut(
                "a fraction is in inches, and the heading says otherwise: write the unit in the cell",
            );
        }
        let class = if self.of_classes || in_inches == Some(false) { "class" } else { "grade" };
        Cell::Said(match (self.says, unit) {
            (Says::Line | Says::Part, _) if cell.bytes().all(|byte| byte.is_ascii_digit()) => {
                return Cell::LeftOut("a number by itself names no part");
            }
            (Says::Quantity, _) => format!("{cell} pcs"),
            (Says::Years, unit) => format!("{cell} {}", unit.unwrap_or("years")),
            (Says::Length, Some(unit)) => format!("length {cell} {unit}"),
            (Says::Length, None) if in_inches == Some(true) || is_fraction => format!("length {cell} in"),
            (Says::Length, None) => format!("length {cell} mm"),
            (Says::Diameter, Some(unit)) => format!("diameter {cell} {unit}"),
            (Says::Diameter, None) if is_fraction => format!("diameter {cell} in"),
            (Says::Diameter, None) => {
                let number = cell.replace(',', ".").parse::<f64>();
                if !number.is_ok_and(|number| number > GREATEST_INCH) {
                    return Cell::LeftOut("millimetres or inches? Write the unit in the heading or the cell");
                }
                format!("diameter {cell} mm")
            }
            (Says::Hardness, None) => return Cell::LeftOut("write the scale, as in 32 HRC"),
            (Says::Tensile, None) => return Cell::LeftOut("write the unit, as in 830 MPa"),
            (Says::Coat | Says::Steel | Says::Hardness | Says::Tensile, Some(unit)) => {
                format!("{cell} {unit}")
            }
            (Says::Coat, None) => format!("coat {cell}"),
            (Says::Steel, None) => format!("{class} {cell}"),
            (Says::Nut, _) => self.mate_of("nut", cell, class),
            (Says::Washer, _) => self.mate_of("washer", cell, class),
            _ => cell.to_owned(),
        })
    }

    fn mate(&self, noun: &str, cell: &str) -> String {
        match lower(cell).as_str() {
            small if NONE.contains(&small) => String::new(),
            small if YES.contains(&small) => format!("with {noun}"),
            small if small.contains(noun) => cell.to_owned(),
            _ => format!("with {cell} {noun}"),
        }
    }

    fn mate_of(&self, noun: &str, cell: &str, class: &str) -> String {
        match cell {
            "0" => String::new(),
            "1" => format!("with {noun}"),
            _ => format!("with {class} {cell} {noun}"),
        }
    }
}

/// What people write into a cell where there is none, and where there is one.
const NONE: [&str; 12] = ["-", "–", "—", "--", "no", "none", "n/a", "na", "without", "nein", "keine", "ohne"];
const YES: [&str; 5] = ["x", "yes", "y", "ja", "with"];

/// Whether a diameter is written as a number with its unit, and not as a thread.
fn is_measure(cell: &str) -> bool {
    cell.starts_with(|c: char| c.is_ascii_digit()) && !cell.contains(['x', 'X', '-'])
}

/// Whether a size that is written so is one of an inch thread, of a metric one, or none.
fn is_inch(text: &str) -> Option<bool> {
    let digit = |text: &str| text.starts_with(|c: char| c.is_ascii_digit());
    text.split([' ', ',', ';']).find_map(|word| {
        let small = lower(word);
        if small.strip_prefix('m').is_some_and(digit) {
            return Some(false);
        }
        let parts = || word.split(['/', '-']);
        let fraction = digit(word) && parts().count() > 1 && parts().all(digit);
        let numbered = word.strip_prefix('#').is_some_and(digit);
        let named = ["unc", "unf", "un"].contains(&small.as_str()) || digit(word) && word.ends_with('"');
        (fraction || numbered || named).then_some(true)
    })
}
