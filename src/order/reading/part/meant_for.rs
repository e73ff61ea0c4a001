//! What a nut or a washer is for: that bolt is not ordered.

use super::Family;
use super::implied::has_bolt;
use super::name::Name;
use crate::order::reading::items::Line;

/// Why the bolt that a nut or a washer is for is not used.
pub(super) const WHY: &str =
    "of the bolt that it is for, which is not ordered here: write the grade of the part itself";

/// `washers for M16 bolts 8.8`: the name of what is ordered, and where the word stands that says for what.
pub(super) fn meant_for(line: &Line, names: &[Name]) -> Option<(usize, usize)> {
    let place = (0..line.items.len()).find(|at| line.says_for(*at))?;
    let stands = |name: &Name, before: bool| name.items.iter().all(|at| (*at < place) == before);
    let is_bolt = |name: &&Name| name.noun == Some(Family::Bolt) || name.noun.is_none();
    let about = names
        .iter()
        .position(|name| matches!(name.noun, Some(Family::Nut | Family::Washer)) && stands(name, true))?;
    let is_washer = names.get(about).is_some_and(|name| name.noun == Some(Family::Washer));
    // `A325 7/8 x 3 with F436 washer under nut`: a size with its length is a bolt too.
    let bolt_before = names.iter().filter(is_bolt).any(|name| stands(name, true))
        || line.items.get(..place).is_some_and(has_bolt);
    // `washers for HV`: the mark of a bolt stands for it; `washers under the nut`.
    let is_mark =
        |name: &Name| name.words.iter().any(|word| matches!(*word, "HV" | "HR" | "anchor" | "structural"));
    let is_mate = |name: &Name| {
        name.noun == Some(Family::Bolt) || is_mark(name) || is_washer && name.noun == Some(Family::Nut)
    };
    let bolt_behind = names.iter().any(|name| is_mate(name) && stands(name, false));
    (!bolt_before && bolt_behind).then_some((about, place))
}
