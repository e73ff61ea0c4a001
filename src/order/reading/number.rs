//! Numbers of a written line: decimals, fractions of an inch, grouped figures.

use super::token::{Chain, Sort};
use crate::quantity::number;

/// A number as it stands in the line.
#[derive(Debug, Clone, PartialEq)]
pub struct Number {
    /// Its value, with the mark between figures as a decimal mark.
    pub value: f64,
    /// As a field takes it: `1 1/4`, `12.5`.
    pub text: String,
    /// Its value where the marks or spaces between figures group them by three.
    pub grouped: Option<f64>,
    /// Whether it is a fraction.
    pub is_fraction: bool,
    /// The place behind it.
    pub end: usize,
}

impl Number {
    /// A whole number without any mark.
    pub fn whole(&self) -> Option<u64> {
        let plain = self.text.bytes().all(|byte| byte.is_ascii_digit());
        plain.then(|| self.text.parse().ok()).flatten()
    }

    /// A whole number, its figures grouped by three or not: of pieces no part is counted.
    pub fn pieces(&self) -> Option<u64> {
        let marks = ['.', ',', '\'', '’'];
        self.whole().or_else(|| self.grouped.and_then(|_| self.text.replace(marks, "").parse().ok()))
    }

    /// Both values, where a mark between figures leaves two meanings.
    pub fn two_meanings(&self) -> Option<(f64, f64)> {
        self.grouped.filter(|grouped| *grouped != self.value).map(|grouped| (self.value, grouped))
    }
}

/// The longest that figures are grouped: more is no count.
const MOST_GROUPS: usize = 4;

/// The number at a place: a fraction, with or without a whole in front of it, or a decimal.
pub fn number(chain: &Chain<'_>, at: usize) -> Option<Number> {
    mixed(chain, at).or_else(|| fraction(chain, at)).or_else(|| decimal(chain, at))
}

/// `1200`, `12.5`, `12,5`, `.75`, `1,200`, `1.234.567`, `1'200`: figures without a space.
pub fn decimal(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let begins_with_mark = chain.sign(at, &["."]) && chain.glued(chain.after(at)) && !goes_on(chain, at);
    let first = if begins_with_mark { chain.after(at) } else { at };
    let mut text = chain.digits(first)?.to_owned();
    if begins_with_mark {
        text.insert_str(0, "0.");
    }
    let mut end = chain.after(first);
    let mut marks = 0;
    while marks < MOST_GROUPS {
        let behind = chain.after(end);
        let Some(more) = chain.digits(behind).filter(|_| chain.glued(end) && chain.glued(behind)) else {
            break;
        };
        let Some(mark) = chain.get(end).filter(|mark| matches!(mark.text, "." | "," | "'" | "’")) else {
            break;
        };
        // `F436-1,7/8`: a fraction in a cell of its own.
        if mark.text == "," && fraction(chain, behind).is_some() {
            break;
        }
        text.push_str(mark.text);
        text.push_str(more);
        end = chain.after(behind);
        marks += 1;
    }
    // Most numbers are figures alone, and every rule that begins with figures asks for one.
    if marks == 0 && !begins_with_mark {
        let value = text.parse().ok()?;
        return Some(Number { value, text, grouped: None, is_fraction: false, end });
    }
    let grouped = grouped(&text);
    // Many marks are groups or nothing; one mark is first of all a decimal mark.
    let value = match text.matches(['.', ',', '\'', '’']).count() {
        0 | 1 if !text.contains(['\'', '’']) => text.replace(',', ".").parse().ok()?,
        _ => grouped.or_else(|| number::read_number(&text).ok())?,
    };
    let text = if text.contains(',') && !text.contains('.') && grouped.is_none() {
        text.replace(',', ".")
    } else {
        text
    };
    Some(Number { value, text, grouped, is_fraction: false, end })
}

/// `1 200 000`: figures grouped by spaces.
pub fn spaced(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let mut text = chain.digits(at).filter(|first| first.len() <= 3 && !first.starts_with('0'))?.to_owned();
    let mut end = chain.after(at);
    let mut groups = 0;
    // Only a space, and only one token after the other: a word between is no group.
    while groups < MOST_GROUPS {
        let Some(more) = chain.digits(end).filter(|more| more.len() == 3) else { break };
        if end != at + groups + 1 || chain.glued(end) {
            break;
        }
        text.push_str(more);
        end = chain.after(end);
        groups += 1;
    }
    let value: f64 = text.parse().ok()?;
    (groups > 0).then_some(Number { value, text, grouped: Some(value), is_fraction: false, end })
}

/// The value of figures grouped by three, by one kind of mark.
fn grouped(text: &str) -> Option<f64> {
    let mark = text.chars().find(|c| !c.is_ascii_digit())?;
    let mut groups = text.split(mark);
    let first = groups.next()?;
    let by_three = groups.all(|group| group.len() == 3 && group.bytes().all(|byte| byte.is_ascii_digit()));
    let good = (1..=3).contains(&first.len()) && !first.starts_with('0') && by_three;
    good.then(|| text.replace(mark, "").parse().ok()).flatten()
}

/// Whether the point at a place stands behind figures, or behind another point (`5...8`), and begins no number.
fn goes_on(chain: &Chain<'_>, at: usize) -> bool {
    let before = chain.before(at).and_then(|before| chain.get(before));
    chain.glued(at) && before.is_some_and(|it| it.sort == Sort::Digits || it.text == ".")
}

/// `5/8`, `½`.
pub fn fraction(chain: &Chain<'_>, at: usize) -> Option<Number> {
    // Behind a cross stands a length, and no date.
    let is_length = chain
        .before(at)
        .is_some_and(|before| chain.sign(before, &["×", "✕", "*"]) || chain.word(before) == Some("x"));
    no_date(chain, at, is_length)
}

/// The same, where it looks like no date or is sure to be none.
fn no_date(chain: &Chain<'_>, at: usize, is_sure: bool) -> Option<Number> {
    if let Some((above, below)) = chain.get(at).and_then(|token| one_sign(token.text)) {
        let text = format!("{above}/{below}");
        let value = f64::from(above) / f64::from(below);
        return Some(Number { value, text, grouped: None, is_fraction: true, end: chain.after(at) });
    }
    let above = chain.digits(at).filter(|above| above.len() <= 3)?;
    let stroke = chain.after(at);
    let under = chain.after(stroke);
    if !chain.sign(stroke, &["/", "⁄"]) || !chain.glued(stroke) || !chain.glued(under) {
        return None;
    }
    let below = chain.digits(under).filter(|below| below.len() <= 3)?;
    let end = chain.after(under);
    // A date has two strokes between figures: `1/2/26`, and not `1/2/GR5`.
    let goes_on = chain.sign(end, &["/"]) && chain.glued(end) && chain.digits(chain.after(end)).is_some();
    if !is_sure && (goes_on || date_before(chain, at)) {
        return None;
    }
    let (one, other): (f64, f64) = (above.parse().ok()?, below.parse().ok()?);
    let value = one / other;
    let fair = matches!(below, "2" | "4" | "8" | "16" | "32" | "64") && one > 0.0 && value < 1.0;
    fair.then(|| Number { value, text: format!("{above}/{below}"), grouped: None, is_fraction: true, end })
}

fn date_before(chain: &Chain<'_>, at: usize) -> bool {
    chain.glued(at) && chain.before(at).is_some_and(|before| chain.sign(before, &["/"]))
}

/// `1 1/4`, `1-1/4`, `1½`.
pub fn mixed(chain: &Chain<'_>, at: usize) -> Option<Number> {
    let whole = chain.digits(at).filter(|whole| whole.len() <= 2)?;
    let behind = chain.after(at);
    // `1.1/8` is written in Europe.
    let dash = chain.sign(behind, &["-", "–", "‑", "."]) && chain.glued(behind);
    let part = if dash { chain.after(behind) } else { behind };
    // The parts stand side by side: a word between them makes two numbers.
    if part != at + if dash { 2 } else { 1 } || (dash && !chain.glued(part)) {
        return None;
    }
    // No date begins with a dash: `2-1/2/500`.
    let part = no_date(chain, part, dash)?;
    let value = whole.parse::<f64>().ok()? + part.value;
    let text = format!("{whole} {}", part.text);
    (part.value < 1.0).then_some(Number { value, text, is_fraction: true, ..part })
}

fn one_sign(text: &str) -> Option<(u8, u8)> {
    Some(match text {
        "½" => (1, 2),
        "¼" => (1, 4),
        "¾" => (3, 4),
        "⅛" => (1, 8),
        "⅜" => (3, 8),
        "⅝" => (5, 8),
        "⅞" => (7, 8),
        _ => return None,
    })
}

/// Whether a sign is a minus. A dash behind a letter or a figure, or with a space behind it, joins two
/// pieces.
pub fn is_minus(chain: &Chain<'_>, at: usize) -> bool {
    chain.sign(at, &["-", "−"]) && !chain.glued(at) && chain.glued(chain.after(at))
}
