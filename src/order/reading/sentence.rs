//! What was understood, as a sentence in which each piece has its place.

use crate::quantity::letters::lower;
use std::fmt;

use super::{Became, Reading};
use crate::calculator::{Draft, FieldAbout, Kind};
use crate::order::FIELDS;
use crate::order::asked::{ADVISE, LeftOut};
use crate::order::line::{BY_HARDNESS, BY_TENSILE, END_OF_STEEL, LEAST, NOT_MADE};
use crate::order::threads::size_without_thread;
use crate::part;
use crate::site::{Categories, Category, Surroundings};
use crate::thread::Designation;

/// A stretch of the sentence.
#[derive(Debug, Clone, PartialEq)]
pub enum Segment {
    /// Understood: the field, what stands in it as one says it, and what was concluded for it.
    Used {
        /// The field.
        field: &'static str,
        /// As one says it.
        text: String,
        /// What was concluded and not written, or empty.
        note: String,
    },
    /// Named as not used.
    NotUsed {
        /// As it was written.
        text: String,
        /// Why; empty where it was not understood.
        why: String,
    },
    /// Words that can mean several categories.
    Which {
        /// The field that asks.
        field: &'static str,
        /// As it was written.
        text: String,
        /// What it can mean.
        offers: Vec<Category>,
    },
    /// A fact that the line does not say.
    NotSaid {
        /// The field.
        field: &'static str,
        /// What the form calls it.
        label: &'static str,
    },
}

/// The fields in the order in which an order is said.
const ORDER: &[&str] = &[
    "quantity",
    "part",
    "thread",
    "left",
    "length",
    "steel",
    "hardness",
    "tensile",
    "end",
    "case",
    "cold",
    "patch",
    "temper",
    "nut",
    "nuts",
    "nut_class",
    "nut_hardness",
    "washer",
    "washers",
    "washer_hardness",
    "own_allowance",
    "asked",
    "most",
    "left_out",
    "surroundings",
    "place",
    "heat",
    "years",
    "bath",
];
/// The facts that an order usually says.
const FACTS: &[&str] = &["part", "thread", "length", "quantity", "steel", "place"];

/// The sentence of a reading.
pub fn of(reading: &Reading) -> Vec<Segment> {
    let mut segments = said(&reading.draft);
    for segment in &mut segments {
        if let Segment::Used { field, note, .. } = segment {
            let own = reading.notes.iter().filter(|(of, _)| of == field).map(|(_, note)| note.as_ref());
            *note = own.collect::<Vec<_>>().join("; ");
        }
    }
    // That any finish will do stands in no field, and is said all the same.
    if reading.draft.get("asked") == Some(ADVISE) {
        let own = reading.notes.iter().find(|(of, _)| *of == "asked").map(|(_, note)| note.to_string());
        segments.extend(own.map(|note| Segment::Used {
            field: "asked",
            text: "Hot-dip, mechanical or electroplated".to_owned(),
            note,
        }));
    }
    let not_used =
        reading.not_used().map(|(text, why)| Segment::NotUsed { text: text.to_owned(), why: why.to_owned() });
    segments.extend(not_used);
    let mut asked = Vec::new();
    for piece in &reading.pieces {
        if let Became::Asked(offers) = &piece.became {
            asked.push(Segment::Which { field: "place", text: piece.text.clone(), offers: offers.clone() });
        }
    }
    let is_asked = |field: &str| field == "place" && !asked.is_empty();
    let not_said = not_said(&reading.draft).filter(|field| !is_asked(field.key));
    // A nut or a washer of a kind that is not known has no length either.
    let not_said = not_said.filter(|field| field.key != "length" || reading.has_length);
    segments.extend(not_said.map(|field| Segment::NotSaid { field: field.key, label: field.label }));
    segments.extend(asked);
    segments
}

/// What stands in the fields, as one says it; the page says it again when a field is changed.
pub fn said(draft: &Draft) -> Vec<Segment> {
    let text = |name: &str| draft.get(name).filter(|text| !text.is_empty());
    let fields = ORDER.iter().filter_map(|name| {
        let field = FIELDS.iter().find(|field| field.key == *name)?;
        let text = in_words(field, text(name)?, draft)?;
        Some(Segment::Used { field: field.key, text, note: String::new() })
    });
    fields.collect()
}

fn in_words(field: &FieldAbout, text: &str, draft: &Draft) -> Option<String> {
    Some(match field.key {
        "part" => part::Kind::from_key(text).map_or_else(|| text.to_owned(), |kind| kind.name().to_owned()),
        "thread" => {
            let part = draft.get("part").and_then(part::Kind::from_key);
            let thread = Designation::read(text).ok().map(|written| written.thread);
            part.zip(thread)
                .and_then(|(part, thread)| size_without_thread(part, thread))
                .unwrap_or_else(|| text.to_owned())
        }
        "quantity" => format!("{text} pcs"),
        "steel" if matches!(text, BY_HARDNESS | BY_TENSILE | NOT_MADE) => return None,
        "hardness" => of_its_end(text, draft),
        "tensile" => format!("{} of tensile strength", of_its_end(text, draft)),
        // It stands before the hardness or the strength.
        END_OF_STEEL => return None,
        "case" | "left" | "patch" if text != "yes" => return None,
        "cold" if text == "no" => return None,
        "left" | "patch" => lower(field.label),
        "case" => "case-hardened".to_owned(),
        "cold" if text == "machined" => "machined or ground after heat treatment".to_owned(),
        "cold" => "formed cold after heat treatment".to_owned(),
        "temper" => format!("tempered at {text}"),
        "nut" | "washer" if text == "none" => return None,
        "nut" | "washer" => {
            let count =
                draft.get(if field.key == "nut" { "nuts" } else { "washers" }).filter(|count| *count != "1");
            let name = match text {
                "standard" => format!("the {} that the standards ask for", field.key),
                BY_HARDNESS => format!("a {} known by its hardness", field.key),
                _ => choice(field, text).to_owned(),
            };
            count.map_or_else(|| format!("with {name}"), |count| format!("with {count} × {name}"))
        }
        "nuts" | "washers" => return None,
        "nut_hardness" | "washer_hardness" => format!("its hardness {text}"),
        "nut_class" => format!("nut thread {text}"),
        "most" => format!("a coat of {text} at most"),
        "own_allowance" => format!("nut tapped over by {text}"),
        "asked" if text == ADVISE => return None,
        "left_out" if text == LeftOut::Nothing.key() => return None,
        "left_out" => format!("not {}", lower(choice(field, text)).replace(" and ", ", not ")),
        "bath" => format!("zinc bath {text}"),
        "surroundings" if text == Surroundings::OpenAir.key() => return None,
        "surroundings" => lower(choice(field, text)),
        "heat" => format!("{text} in service"),
        "place" => Categories::read(text).map_or_else(|| text.to_owned(), |place| place.to_string()),
        _ => choice(field, text).to_owned(),
    })
}

/// A hardness or a strength, or the least that it may be.
fn of_its_end(text: &str, draft: &Draft) -> String {
    if draft.get(END_OF_STEEL) == Some(LEAST) { format!("at least {text}") } else { text.to_owned() }
}

/// The label of a choice, or the text itself.
fn choice<'a>(field: &'a FieldAbout, text: &'a str) -> &'a str {
    match field.kind {
        Kind::Choice(choices) => {
            choices.iter().find(|choice| choice.key == text).map_or(text, |choice| choice.label)
        }
        _ => text,
    }
}

/// The facts that an order usually says and a draft does not.
pub fn not_said(draft: &Draft) -> impl Iterator<Item = &'static FieldAbout> + use<> {
    let says = |name: &str| draft.get(name).is_some_and(|text| !text.is_empty());
    let long = draft.get("part").and_then(part::Kind::from_key).is_none_or(part::Kind::has_length);
    let around = draft.get("surroundings").and_then(Surroundings::from_key);
    let in_air = around.is_none_or(Surroundings::is_in_air);
    let is_asked = |name: &str| match name {
        "length" => long,
        "place" => in_air,
        _ => true,
    };
    let missing: Vec<&str> = FACTS.iter().copied().filter(|name| !says(name) && is_asked(name)).collect();
    FIELDS.iter().filter(move |field| missing.contains(&field.key))
}

impl fmt::Display for Reading {
    /// As plain text, a line each: `Understood: …`, `Not used: …`, `Asked: …`, `Not said: …`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let segments = self.sentence();
        let mut lines: Vec<String> = Vec::new();
        let mut line = |title: &str, texts: Vec<String>, between: &str| {
            if !texts.is_empty() {
                lines.push(format!("{title}: {}", texts.join(between)));
            }
        };
        let texts =
            |take: fn(&Segment) -> Option<String>| segments.iter().filter_map(take).collect::<Vec<_>>();
        line(
            "Understood",
            texts(|segment| match segment {
                Segment::Used { text, note, .. } if note.is_empty() => Some(text.clone()),
                Segment::Used { text, note, .. } => Some(format!("{text} ({note})")),
                _ => None,
            }),
            "; ",
        );
        line(
            "Not used",
            texts(|segment| match segment {
                Segment::NotUsed { text, why } if why.is_empty() => Some(format!("“{text}”")),
                Segment::NotUsed { text, why } => Some(format!("“{text}” ({why})")),
                _ => None,
            }),
            "; ",
        );
        line(
            "Asked",
            texts(|segment| match segment {
                Segment::Which { text, offers, .. } => {
                    let offers: Vec<&str> = offers.iter().map(|category| category.key()).collect();
                    Some(format!("“{text}”: {}?", offers.join(" or ")))
                }
                _ => None,
            }),
            "; ",
        );
        line(
            "Not said",
            texts(|segment| match segment {
                Segment::NotSaid { label, .. } => Some(lower(label)),
                _ => None,
            }),
            ", ",
        );
        f.write_str(&lines.join("\n"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A field without a place in the sentence would be understood and not said.
    #[test]
    fn every_field_has_its_place_in_the_sentence() {
        for field in &FIELDS {
            assert_eq!(ORDER.iter().filter(|name| **name == field.key).count(), 1, "{}", field.key);
        }
        assert_eq!(ORDER.len(), FIELDS.len());
    }
}
