//! The sources of a sheet, in small print.

use super::{Block, Look, Row};
use crate::source::Source;

/// The sources with their basis, each once.
pub(super) fn source_block(sources: Vec<Source>) -> Block {
    let mut rows: Vec<Row> = Vec::new();
    for source in sources {
        let row = Row::said("", source.to_string()).may_go();
        if !rows.contains(&row) {
            rows.push(row);
        }
    }
    Block::new("Sources, and how they are known", Look::Small, rows)
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
