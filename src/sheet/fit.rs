//! What gives way where a sheet would be longer than its pages.
//!
//! The height is estimated from the letters, for the narrower width and the lesser height of A4 and
//! Letter. First the places in the documents go; then what may go goes in this order: what is good to know,
//! the limits that are not gauged on the pitch diameter, and at last the documents. A verdict, a condition, a
//! term or a number of the answer never goes, and how much went is said.

use std::borrow::Cow;
use std::mem;

use super::{Block, Look, Row, Sheet, TICK};

/// Lines of the usual print on a page of Letter with margins of 10 mm: a line was measured to take 3.3 to
/// 3.7 mm of its 259 mm, over sheets of every kind and in a wide letter.
const PAGE: f64 = 69.0;
/// Lines that the title and the edge of the code at the head take.
const HEAD: f64 = 3.0;
/// Letters of the usual print across the page.
const FULL: usize = 118;
/// Letters across half of it.
const HALF: usize = 55;
/// Letters of small print across the page.
const FINE: usize = 152;
/// The height of a line that is written on by hand.
const WRITTEN_LINE: f64 = 1.5;
/// The height of a line of small print.
const FINE_LINE: f64 = 0.78;

/// What is said of the rows that went.
const MORE: &str = " more, behind the link";

/// Lets rows go until the sheet has its pages.
pub(super) fn fit(sheet: &mut Sheet) {
    let room = PAGE * f64::from(sheet.pages);
    if height(sheet) > room {
        for row in sheet.blocks.iter_mut().flat_map(|block| &mut block.rows) {
            row.text = row.shorter.take().map_or_else(|| mem::take(&mut row.text), Cow::from);
        }
    }
    while height(sheet) > room {
        let Some(block) = next(sheet) else { return };
        let Some(last) = block.rows.iter().rposition(|row| row.may_go) else { return };
        block.rows.remove(last);
        let said =
            block.rows.last().and_then(|row| row.text.strip_prefix("and ")?.strip_suffix(MORE)?.parse().ok());
        if said.is_some() {
            block.rows.pop();
        }
        block.rows.push(Row::said("", format!("and {}{MORE}", said.unwrap_or(0_u32) + 1)));
    }
}

/// The block that gives way next: the last that still has what may go, and small print after all others.
fn next(sheet: &mut Sheet) -> Option<&mut Block> {
    let may = |block: &Block| block.rows.iter().any(|row| row.may_go);
    let others = sheet.blocks.iter().rposition(|block| block.look != Look::Small && may(block));
    let place = others.or_else(|| sheet.blocks.iter().rposition(may))?;
    sheet.blocks.get_mut(place)
}

/// The height of a sheet, in lines of the usual print.
pub(super) fn height(sheet: &Sheet) -> f64 {
    let mut height = HEAD;
    let mut blocks = sheet.blocks.iter().peekable();
    while let Some(block) = blocks.next() {
        let mut own = of_block(block);
        if block.look == Look::Half
            && let Some(other) = blocks.next_if(|other| other.look == Look::Half)
        {
            own = own.max(of_block(other));
        }
        height += own;
    }
    height
}

fn of_block(block: &Block) -> f64 {
    let lines = |letters: usize, width: usize| letters.div_ceil(width).max(1) as f64;
    let letters = |row: &Row| row.name.chars().count() + 2 + row.text.chars().count();
    let title = if block.title.is_empty() { 0.3 } else { 1.5 };
    let rows: f64 = match block.look {
        Look::Signatures => 2.6,
        Look::Small => {
            let all: usize = block.rows.iter().map(|row| letters(row) + 1).sum();
            return 0.4 + FINE_LINE * lines(all + block.title.chars().count(), FINE);
        }
        Look::Lead => block.rows.iter().map(|row| 1.15 * lines(letters(row), 105)).sum::<f64>() + 0.6,
        Look::Full | Look::Half => {
            let width = if block.look == Look::Half { HALF } else { FULL };
            let of_row = |row: &Row| {
                // Room to write stands beside the text, and where there is none fills the line.
                let written: usize = row.room.iter().map(|room| of_room(room)).sum();
                let beside = lines(letters(row), width.saturating_sub(written).max(width / 3));
                if row.room.is_empty() { beside } else { f64::max(beside, WRITTEN_LINE) }
            };
            block.rows.iter().map(of_row).sum()
        }
    };
    title + rows
}

/// Letters that room to write takes: a line, or a box with its label.
fn of_room(label: &str) -> usize {
    label.chars().count() + if label.starts_with(TICK) { 3 } else { 16 }
}
