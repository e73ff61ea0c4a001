//! One thing that is kept.

#[cfg(test)]
mod tests;

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::{PREFIX, Store};
use crate::calculator::{About, Address, Damage, FieldAbout, Filled, Form, Verdict, find};
use crate::coat::Process;
use crate::order::{self, Answer, Standing};
use crate::quantity::letters::lower;

/// An order line or a calculation that was kept.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// The name that the user gave it; empty where none was given.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// When it was kept, by the device's clock, in UTC as ISO 8601 writes it: `2026-11-25T20:08:53Z`.
    /// Empty where nobody wrote it down.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub saved: String,
    /// The verdict at that time: of the three processes for an order line, one or none for a
    /// calculation.
    #[serde(
        default,
        rename = "verdict",
        skip_serializing_if = "Vec::is_empty",
        serialize_with = "written_verdicts",
        deserialize_with = "read_verdicts"
    )]
    pub verdicts: Vec<Verdict>,
    /// The address that opens it, without the `#`.
    pub address: String,
}

/// Nobody types more than that; a longer text is none of ours.
const LONGEST_ADDRESS: usize = 20_000;
/// The name under which an address holds the line as it was written.
const LINE: &str = "line";
/// The longest name, in bytes.
const LONGEST_NAME: usize = 400;

impl Entry {
    /// An entry for an address, with the verdict of today.
    pub fn new(address: &str, saved: &str) -> Self {
        let verdicts = verdicts(address);
        Self { name: String::new(), saved: saved.to_owned(), verdicts, address: address.to_owned() }
    }

    /// An entry as it stands in the store; `None` where it is damaged.
    pub fn read(text: &str) -> Option<Self> {
        serde_json::from_str::<Self>(text).ok().filter(Self::is_sound)
    }

    /// Whether it can be opened.
    pub fn is_sound(&self) -> bool {
        let fits = self.address.len() <= LONGEST_ADDRESS && self.name.len() <= LONGEST_NAME;
        fits && {
            let (address, damage) = Address::read(&self.address);
            about(&address.view).is_some() && !damage.iter().any(|one| matches!(one, Damage::Version(_)))
        }
    }

    /// What it is called: its name, the line as it was written, or what stands in its first fields.
    pub fn title(&self) -> String {
        if !self.name.is_empty() {
            return self.name.clone();
        }
        if let Some(line) = self.line() {
            return line;
        }
        let (address, _) = Address::read(&self.address);
        let Some(about) = about(&address.view) else { return address.view };
        let form = Form::new(about.fields, &address.draft);
        // What everybody leaves as it is says nothing.
        let is_default = |field: &FieldAbout, entry: &Filled| {
            entry.text == field.default || entry.with_unit() == field.default
        };
        let said = form.asked().into_iter().filter(|(field, entry)| !is_default(field, entry));
        let texts = said.map(|(field, entry)| entry.shown(field));
        let texts: Vec<String> = texts.filter(|text| !text.is_empty()).take(6).collect();
        if texts.is_empty() { about.title.to_owned() } else { texts.join(", ") }
    }

    /// What it is: `Order line`, or the title of the calculator.
    pub fn kind(&self) -> &'static str {
        let (address, _) = Address::read(&self.address);
        about(&address.view).map_or("", |about| about.title)
    }

    /// The verdict at that time, with what the order itself does not want of it.
    pub fn standings(&self) -> Vec<Standing> {
        let (address, _) = Address::read(&self.address);
        let line = (address.view == order::ABOUT.id).then(|| order::read(&address.draft).ok()).flatten();
        // A calculation has one verdict and wants nothing.
        let of = |(verdict, process): (&Verdict, Process)| match &line {
            Some(line) => Standing::with(line, process, *verdict),
            None => Standing { verdict: *verdict, aside: None },
        };
        self.verdicts.iter().zip(Process::ALL).map(of).collect()
    }

    /// The order as it was written in one line, where it was.
    pub fn line(&self) -> Option<String> {
        Address::read(&self.address).0.take(LINE).filter(|line| !line.trim().is_empty())
    }

    /// What to order by the rules of today, or the result of a calculation in a sentence; the whole answer is
    /// its text. None where something is missing or wrong.
    pub fn answer(&self) -> Option<Answer> {
        let (address, _) = Address::read(&self.address);
        if address.view == order::ABOUT.id {
            let line = order::read(&address.draft).ok()?;
            return Some(order::answer::answer(&line, &order::judge(&line)));
        }
        let report = find(&address.view)?.evaluate(&address.draft).ok()?;
        Some(Answer { text: report.headline.clone(), recommended: None, order: report.headline })
    }

    /// The address of its sheets.
    pub fn sheets(&self) -> String {
        let (view, fields) = self.address.split_once('?').unwrap_or((&self.address, ""));
        let id = view.split_once('/').map_or(view, |(_, id)| id);
        let of = if id == order::ABOUT.id { String::new() } else { format!("of={id}&") };
        format!("1/sheet?{of}{fields}")
    }

    /// All that is searched, in small letters: name, date as the device shows it, address, and what its fields
    /// say.
    pub(super) fn searched(&self, store: &impl Store) -> String {
        let local = store.local_time(&self.saved);
        let mut text = format!("{} {} {}", self.name, local.as_deref().unwrap_or(&self.saved), self.address);
        for (_, said) in Address::read(&self.address).0.draft.pairs() {
            text.push(' ');
            text.push_str(said);
        }
        lower(&text)
    }

    /// As it stands in the store, and on a line of a file.
    pub(super) fn written(&self) -> String {
        // A struct of texts has no way to fail.
        serde_json::to_string(self).unwrap_or_default()
    }

    /// Its name in the store: made from its name and address alone, so that the same entry has the
    /// same place on every device.
    pub(super) fn place(&self) -> String {
        // Fowler, Noll, Vo: FNV-1a with 64 bits.
        let bytes = self.name.bytes().chain([0]).chain(self.address.bytes());
        let id = bytes.fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
            (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
        });
        format!("{PREFIX}{id:016x}")
    }
}

/// The verdict on what an address opens: of the three processes for an order line, one or none for a
/// calculation; none where something is missing or wrong.
pub fn verdicts(address: &str) -> Vec<Verdict> {
    let (address, _) = Address::read(address);
    if address.view == order::ABOUT.id {
        let judged = order::read(&address.draft).map(|line| order::judge(&line));
        return judged.map_or_else(
            |_| Vec::new(),
            |judged| judged.processes.iter().map(|one| one.verdict()).collect(),
        );
    }
    let report = find(&address.view).map(|entry| entry.evaluate(&address.draft));
    report.and_then(Result::ok).and_then(|report| report.verdict).into_iter().collect()
}

fn about(view: &str) -> Option<&'static About> {
    if view == order::ABOUT.id { Some(&order::ABOUT) } else { find(view).map(|entry| &entry.about) }
}

/// A letter for each verdict: `s` suits, `c` suits on conditions, `o` ruled out.
const LETTERS: [(char, Verdict); 3] =
    [('s', Verdict::Suits), ('c', Verdict::OnConditions), ('o', Verdict::RuledOut)];

fn written_verdicts<S: Serializer>(verdicts: &[Verdict], to: S) -> Result<S::Ok, S::Error> {
    let letter =
        |verdict: &Verdict| LETTERS.iter().find(|(_, known)| known == verdict).map(|(letter, _)| *letter);
    to.serialize_str(&verdicts.iter().filter_map(letter).collect::<String>())
}

fn read_verdicts<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<Verdict>, D::Error> {
    let text = String::deserialize(from)?;
    let verdict =
        |letter: char| LETTERS.iter().find(|(known, _)| *known == letter).map(|(_, verdict)| *verdict);
    text.chars()
        .map(verdict)
        .collect::<Option<_>>()
        .ok_or_else(|| serde::de::Error::custom("an unknown verdict"))
}
