//! What is in stock already: `nuts HDG already in stock`.

use super::{BOLTS, MATES, can_be_left_out, is_grade, is_named};
use crate::order::reading::items::Line;
use crate::order::reading::lexicon;
use crate::order::reading::what::What;
use crate::quantity::letters::lower;

/// Why a nut or washer that is in stock is not used.
pub(super) const IN_STOCK: &str = "of what is in stock already: it is not ordered";

/// Whether a piece says that something is in stock.
pub(super) fn is_in_stock(line: &Line, at: usize) -> bool {
    let text = line.items.get(at).map_or(String::new(), |item| lower(&item.text));
    lexicon::STOCK.iter().any(|word| text.contains(word))
}

/// `nuts HDG already in stock`: a nut or washer with all that the stretch says of it, its finish included; of a
/// bolt it says where it is kept.
pub(super) fn in_stock(line: &mut Line, at: usize) {
    let mut begin = at;
    while let Some(before) =
        line.before(begin).filter(|before| !matches!(line.what(*before), Some(What::With(_))))
    {
        begin = before;
    }
    let has =
        |nouns: &[&str]| (begin..at).filter_map(|place| line.what(place)).any(|what| is_named(what, nouns));
    // Nuts alone may be what is ordered.
    let has_a_bolt = (0..line.items.len()).any(|place| {
        !(begin..at).contains(&place)
            && matches!(line.what(place), Some(What::Part(_) | What::Length(_) | What::PartStandard(_)))
    });
    let is_mate = has_a_bolt && has(MATES) && !has(BOLTS);
    if !is_mate {
        line.not(at, "where it is kept is not asked");
        return;
    }
    for place in begin..at {
        let is_its = line.what(place).is_some_and(|what| can_be_left_out(what) || is_grade(what));
        if is_its {
            line.not(place, IN_STOCK);
        }
    }
    line.binds(at);
}
