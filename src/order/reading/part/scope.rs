//! What each piece of a line stands next to: the part, its nut, its washer.

use super::name::Name;
use super::{Family, Scope, Scopes};
use crate::order::reading::either::process;
use crate::order::reading::items::Line;
use crate::order::reading::left_out;
use crate::order::reading::what::{SteelWord, What};

/// What each item stands next to.
pub(super) fn scope_items(line: &mut Line, scopes: &mut Scopes, names: &[Name], main: Option<usize>) {
    if scopes.family != Family::Bolt {
        return;
    }
    let mut name_of = vec![None; line.items.len()];
    for (place, name) in names.iter().enumerate() {
        for at in &name.items {
            if let Some(of) = name_of.get_mut(*at) {
                *of = Some(place);
            }
        }
    }
    let of_item = |at: usize| name_of.get(at).copied().flatten();
    let main_stretches: Vec<usize> =
        main.and_then(|main| names.get(main)).into_iter().map(|name| name.stretch).collect();
    let mut start = 0;
    while start < line.items.len() {
        // From one `with` or comma to the next.
        let stretch = line.items.get(start).map_or(0, |item| item.stretch);
        let is_end = |at: usize| {
            line.items
                .get(at)
                .is_none_or(|item| item.stretch != stretch || matches!(item.what, What::With(_)))
        };
        let mut end = start + 1;
        while !is_end(end) {
            end += 1;
        }
        let marked = matches!(line.what(start), Some(What::With(_)));
        let holds_main = (start..end).any(|at| scopes.names.contains(&at));
        let alone = !main_stretches.contains(&stretch) && (main.is_some() || scopes.kind.is_some());
        // `…, 2 F436, 1 DH each`: a stretch that says no more than so many of such a grade.
        let bare = marked
            || alone
                && (start..end).all(|at| {
                    matches!(
                        line.what(at),
                        Some(What::Steel(_) | What::Bare(_) | What::Small(_) | What::Count(_) | What::Filler)
                    )
                });
        let family = (start..end).find_map(|at| match line.what(at)? {
            What::Part(_) => {
                of_item(at).filter(|name| Some(*name) != main).and_then(|name| names.get(name)?.noun)
            }
            What::Steel(SteelWord::Grade(grade)) if bare && grade.is_nut() => Some(Family::Nut),
            What::Steel(SteelWord::Grade(grade)) if bare && grade.is_washer() => Some(Family::Washer),
            What::PartStandard("hex-nut" | "?nut") if marked => Some(Family::Nut),
            What::PartStandard("washer" | "?washer") if marked => Some(Family::Washer),
            _ => None,
        });
        // `with 2 2H nuts stud`: up to its own name it is what comes with the part.
        let own = (start..end)
            .rfind(|at| of_item(*at).is_some_and(|name| Some(name) != main))
            .filter(|last| marked && holds_main && (start..=*last).all(|at| !scopes.names.contains(&at)));
        let (holds_main, last) = (holds_main && own.is_none(), own.map_or(end, |last| last + 1));
        let scope = match family {
            Some(Family::Nut) if (marked || alone) && !holds_main => Scope::Nut,
            Some(Family::Washer) if (marked || alone) && !holds_main => Scope::Washer,
            _ => Scope::Part,
        };
        scopes.of.iter_mut().take(last).skip(start).for_each(|of| *of = scope);
        start = end;
    }
    // A class or a number next to the nut's name is the nut's.
    for (items, scope) in [(&scopes.nut, Scope::Nut), (&scopes.washer, Scope::Washer)] {
        for at in items {
            for beside in [line.before(*at), line.behind(*at)].into_iter().flatten() {
                let takes = matches!(
                    line.what(beside),
                    Some(What::Class(_) | What::Bare(_) | What::Small(_) | What::Hardness(..))
                );
                if let Some(of) = scopes.of.get_mut(beside).filter(|_| takes) {
                    *of = scope;
                }
            }
        }
    }
    metals_of_mates(line, scopes);
}

/// `8.8 HDG stainless washer`, `8.8 HDG nut A4-80`: the metal beside the name of what comes with the part is its own, where
/// the part has a steel. A word stands in front of the name, a code behind it; in front of it a word is of no part that zinc
/// is asked for.
fn metals_of_mates(line: &Line, scopes: &mut Scopes) {
    let is_steel = |at: usize| {
        let is_one = match line.what(at) {
            Some(What::Steel(SteelWord::Grade(grade))) => !grade.is_nut() && !grade.is_washer(),
            Some(What::Class(_)) => true,
            _ => false,
        };
        is_one && scopes.beside(at) == Scope::Part
    };
    let has_steel = (0..line.items.len()).any(is_steel);
    let has_zinc =
        line.items.iter().any(|item| process(&item.what).is_some() && !left_out::is_gone(&item.became));
    if !has_steel && !has_zinc {
        return;
    }
    for at in 0..line.items.len() {
        if line.what(at) != Some(&What::Steel(SteelWord::OtherMetal)) || scopes.beside(at) != Scope::Part {
            continue;
        }
        let is_code =
            line.items.get(at).is_some_and(|item| item.text.bytes().any(|byte| byte.is_ascii_digit()));
        let (before, behind) = (line.before(at), line.behind(at));
        let order = if is_code { [before, behind] } else { [behind, before] };
        // Without a steel only what stands right in front of the name, and a code not behind that of the bolt: `bolt A4 nut`.
        let is_of_bolt = |before: usize| {
            scopes.names.contains(&before)
                || matches!(line.what(before), Some(What::Thread(_) | What::Length(_)))
        };
        let is_of_mate = !is_code || !before.is_some_and(is_of_bolt);
        let order = if has_steel { order } else { [behind.filter(|_| is_of_mate), None] };
        let mate = order.into_iter().flatten().find_map(|beside| match () {
            () if scopes.nut.contains(&beside) => Some(Scope::Nut),
            () if scopes.washer.contains(&beside) => Some(Scope::Washer),
            () => None,
        });
        if let Some((of, mate)) = scopes.of.get_mut(at).zip(mate) {
            *of = mate;
        }
    }
}
