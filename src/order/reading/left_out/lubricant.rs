//! `nuts not lubricated`: of structural bolts, whose document asks for it.

use super::is_gone;
use crate::order::reading::items::Line;
use crate::order::reading::lexicon;
use crate::order::reading::what::What;
use crate::part::Kind;
use crate::quantity::letters::lower;
use crate::steel::Grade;
use crate::steel::structural;

/// Why it is named where the document asks for the lubricant.
const WITHOUT: &str =
    "without lubricant? The document of these bolts asks for it on their nuts: agree what is done instead";

/// Leaving out what the document asks for is agreed; of any other part it says nothing of the zinc.
pub(in crate::order::reading) fn not_lubricated(line: &mut Line) {
    let is_structural = |key: &str| {
        Grade::of_key(key).is_some_and(|grade| {
            structural::bolt(grade).is_some()
                || matches!(grade, Grade::A563Dh | Grade::A563Dh3 | Grade::A563mClass10S)
        })
    };
    let is_one = ["steel", "nut"].iter().filter_map(|field| line.draft.get(field)).any(is_structural)
        || line.draft.get("part") == Some(Kind::StructuralBolt.key());
    for item in line.items.iter_mut().filter(|_| is_one) {
        let text = lower(&item.text);
        let is_lubricant = item.what == What::Not(lexicon::TOP.into())
            && lexicon::LUBRICANTS.iter().any(|part| text.contains(part));
        if is_lubricant && is_gone(&item.became) {
            item.not(WITHOUT);
        }
    }
}
