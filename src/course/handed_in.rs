//! What a student hands in: one line of text with the sheet, the answers, the score and a check code.
//!
//! The code finds a line that was changed by mistake or by a careless hand. It is no secret: whoever
//! reads this file can make one. The table of a class therefore marks the answers anew.

use super::Sheet;
use super::setup::Setup;
use crate::calculator::{Draft, Problems};

/// The mark of the kind of line, and its version.
const KIND: &str = "KB2";
/// Between the parts of a line; in an answer it becomes a stroke.
const BETWEEN: char = '|';

/// A line as it was handed in.
#[derive(Debug, Clone, PartialEq)]
pub struct HandedIn {
    /// Who hands it in, in the student's own words.
    pub name: String,
    /// The sheet: number, level, what it is drawn from, how many, in which units.
    pub sheet: String,
    /// The score that the line states, and out of how many.
    pub stated: String,
    /// The score of its answers, marked anew; `None` where the sheet cannot be made.
    pub score: Option<(usize, usize)>,
    /// Whether the line is as it was made.
    pub state: State,
}

/// Whether a line is as it was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    /// As it was made.
    Intact,
    /// The code does not fit: something was changed.
    Changed,
    /// It is no line of this kind.
    Unread,
}

impl State {
    /// In a word.
    pub fn words(self) -> &'static str {
        match self {
            Self::Intact => "intact",
            Self::Changed => "changed",
            Self::Unread => "no result line",
        }
    }
}

/// The line that a student hands in.
pub fn line<'a>(sheet: &Sheet, name: &str, answers: impl Iterator<Item = &'a str> + Clone) -> String {
    let setup = &sheet.setup;
    let mut parts: Vec<String> = vec![
        KIND.to_owned(),
        setup.number.to_string(),
        setup.level.key().to_owned(),
        setup.from(),
        setup.count.to_string(),
        setup.units.key().to_owned(),
        name.to_owned(),
    ];
    let total = sheet.questions().count();
    let answers = answers.chain(std::iter::repeat("")).take(total);
    parts.extend(answers.clone().map(str::to_owned));
    parts.push(format!("{}/{total}", sheet.score(answers)));
    let parts: Vec<String> = parts.iter().map(|part| clean(part)).collect();
    let text = parts.join(" | ");
    format!("{text} | {}", code(&text))
}

/// Reads the lines of a class, each by itself; empty ones are left out.
pub fn read(text: &str) -> Vec<HandedIn> {
    text.lines().map(str::trim).filter(|line| !line.is_empty()).map(read_line).collect()
}

fn read_line(line: &str) -> HandedIn {
    let parts: Vec<String> = line.split(BETWEEN).map(clean).collect();
    let unread = || HandedIn {
        name: line.chars().take(40).collect(),
        sheet: String::new(),
        stated: String::new(),
        score: None,
        state: State::Unread,
    };
    let [kind, number, level, from, count, units, name, answers @ .., stated, given] = parts.as_slice()
    else {
        return unread();
    };
    if kind != KIND {
        return unread();
    }
    let before = parts.len() - 1;
    let text = parts.iter().take(before).map(String::as_str).collect::<Vec<_>>().join(" | ");
    let intact = code(&text) == *given;
    let pairs = [("number", number), ("count", count), ("level", level), ("from", from), ("units", units)];
    let draft: Draft = pairs.into_iter().map(|(key, text)| (key, text.as_str())).collect();
    let score = score(&draft, answers).ok();
    HandedIn {
        name: name.clone(),
        sheet: format!("{number}, {level}, {from}, {count}, {units}"),
        stated: stated.clone(),
        score,
        state: if intact { State::Intact } else { State::Changed },
    }
}

fn score(draft: &Draft, answers: &[String]) -> Result<(usize, usize), Problems> {
    let sheet = Sheet::of(&Setup::read(draft)?);
    Ok((sheet.score(answers.iter().map(String::as_str)), sheet.questions().count()))
}

/// A part without what ends one, its spaces made single: mail programs change those.
fn clean(part: &str) -> String {
    let spaced = |c: char| if c == BETWEEN || c.is_control() || c == '\u{a0}' { ' ' } else { c };
    let text: String = part.chars().map(spaced).collect();
    text.split(' ').filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ")
}

/// FNV-1a over the bytes of a text, folded to eight signs that are not taken for each other.
fn code(text: &str) -> String {
    const SIGNS: &[u8; 32] = b"23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
    let hashed = text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
    });
    let folded = hashed ^ (hashed >> 24);
    let sign = |place: u32| SIGNS.get((folded >> (5 * place)) as usize % SIGNS.len());
    (0..8).filter_map(sign).map(|&sign| char::from(sign)).collect()
}
