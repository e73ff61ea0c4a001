//! A tapped hole that takes a bolt instead of a nut.

use crate::order::line::{HOLE, HOLE_AS_IT_STANDS};
use crate::order::reading::items::Line;
use crate::order::reading::part::{Family, Scopes};
use crate::order::reading::what::What;
use crate::part::Kind;
use crate::thread::{Designation, ToleranceClass};

/// `into tapped holes`, `tapped holes M12 6H`: what the part goes into instead of a nut; one whose class is written, or
/// that is there already, stands as it is.
pub(super) fn settle(line: &mut Line, scopes: &Scopes) {
    let is_one = |class: Option<ToleranceClass>| class.is_some_and(|class| !class.is_bolt());
    for (at, is_there) in line.free(|what| match what {
        What::Hole(is_there) => Some(*is_there),
        _ => None,
    }) {
        if scopes.family != Family::Bolt || !scopes.kind.is_none_or(Kind::has_mate) {
            line.not(at, "the hole of another part is not judged");
            continue;
        }
        if line.draft.get("nut").is_some() || scopes.with.0 {
            line.not(at, "nuts come with the part: the hole is not judged");
            continue;
        }
        let class_of = |what: &What| match what {
            What::ThreadClass(class) => Some(*class),
            What::Thread(written) => Designation::read(&written.text).ok().and_then(|it| it.class),
            _ => None,
        };
        let classes: Vec<usize> =
            (0..line.items.len()).filter(|at| is_one(line.what(*at).and_then(class_of))).collect();
        let stands = is_there || !classes.is_empty();
        line.fill(at, "nut", if stands { HOLE_AS_IT_STANDS } else { HOLE }, "what the part goes into");
        classes.into_iter().for_each(|at| line.used(at, "nut"));
    }
}
