//! A tapped hole that takes a bolt instead of a nut.

use crate::order::line::{HOLE, HOLE_AS_IT_STANDS};
use crate::order::reading::items::Line;
use crate::order::reading::part::{Family, Scopes};
use crate::order::reading::what::What;
use crate::part::Kind;
use crate::thread::{Designation, ToleranceClass, overtap};

/// `into tapped holes`, `tapped holes M12 6H`, `into hole tapped to 6AZ`: what the part goes into instead of a nut; one of a
/// standard class, or that is there already, stands as it is, and one of another class has its room.
pub(super) fn settle(line: &mut Line, scopes: &Scopes) {
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
        let classes: Vec<(usize, ToleranceClass)> = (0..line.items.len())
            .filter_map(|at| Some((at, line.what(at).and_then(class_of).filter(|class| !class.is_bolt())?)))
            .collect();
        let thread = line.draft.get("thread").and_then(|text| Designation::read(text).ok());
        let standard = thread.map(|written| overtap::standard_class(written.thread));
        let has_room = classes.iter().any(|(_, class)| Some(*class) != standard);
        let stands = !has_room && (is_there || !classes.is_empty());
        line.fill(at, "nut", if stands { HOLE_AS_IT_STANDS } else { HOLE }, "what the part goes into");
        for (at, class) in classes {
            match has_room {
                true if ToleranceClass::read("6AZ") == Some(class) => {
                    line.fill(at, "nut_class", &class.to_string(), "the class of the hole");
                }
                true => line.not(at, "agree the class of the hole: the answer says how it has to be tapped"),
                false => line.used(at, "nut"),
            }
        }
    }
}
