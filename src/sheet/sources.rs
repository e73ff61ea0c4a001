//! The sources of a sheet, in small print.

use super::{Block, Look, Row};
use crate::source::{Basis, Document, Source};

/// The documents, each once, with the places in them and how each is known; where the page is full, how the
/// document is known.
pub(super) fn source_block(sources: Vec<Source>) -> Block {
    let mut documents: Vec<(&Document, Vec<Source>)> = Vec::new();
    for source in sources {
        match documents.iter_mut().find(|(document, _)| *document == source.document) {
            Some((_, places)) if places.contains(&source) => {}
            Some((_, places)) => places.push(source),
            None => documents.push((source.document, vec![source])),
        }
    }
    let rows = documents.iter().map(|(document, places)| row(document, places)).collect();
    Block::new("Sources, and how they are known", Look::Small, rows)
}

fn row(document: &Document, places: &[Source]) -> Row {
    let mut text = document.name.to_owned();
    for (at, source) in places.iter().enumerate() {
        text.push_str(if at == 0 { "" } else { ";" });
        if !source.place.is_empty() {
            text.push_str(if at == 0 { ", " } else { " " });
            text.push_str(source.place);
        }
        text.push_str(&format!(" ({})", source.basis));
    }
    let known = Basis::ALL.into_iter().filter(|basis| places.iter().any(|source| source.basis == *basis));
    let known: Vec<String> = known.map(|basis| basis.to_string()).collect();
    Row::said("", text).shorter(format!("{} ({})", document.name, known.join(", "))).may_go()
}

/// A text without the places it names in brackets: they stand among the sources.
pub(super) fn without_sources(text: &str) -> String {
    let mut kept = String::with_capacity(text.len());
    let mut rest = text;
    while let Some((before, after)) = rest.split_once(" [") {
        kept.push_str(before);
        match after.split_once(']') {
            Some((source, behind)) if source.ends_with(')') => rest = behind,
            _ => {
                kept.push_str(" [");
                rest = after;
            }
        }
    }
    kept + rest
}
