//! The standard of a nut or a washer that is not there, and its name.

use super::is_finish;
use crate::order::reading::items::{Item, Line};
use crate::order::reading::nouns::{BOLTS, MATES, is_named};
use crate::order::reading::what::{SteelWord, What};

/// `without DIN 934 nuts`, `without ISO 4032 class 8 nuts`: from the standard of a nut or a washer the place of its name,
/// over its class and thread, another of its standards, and words that nobody knows.
pub(super) fn name_behind(line: &Line, standard: usize, text: &str) -> Option<usize> {
    let mate = match line.what(standard)? {
        What::PartDocument(_) => None,
        what => Some(standard_of(what)?),
    };
    let is_of_it = |noun: &str| match mate {
        Some(mate) => noun.ends_with(mate),
        None => MATES.iter().any(|mate| noun.ends_with(mate)),
    };
    let mut at = standard;
    loop {
        let next = line.behind(at)?;
        let gap = line.between(text, at, next)?;
        if gap.contains(|c: char| c.is_numeric() || matches!(c, '(' | ')')) {
            return None;
        }
        at = next;
        match line.what(at)? {
            What::Thread(_) | What::Class(_) | What::Small(_) | What::Or => {}
            What::Part(noun) if is_of_it(noun) => return Some(at),
            what if mate.is_some() && standard_of(what) == mate => {}
            _ => return None,
        }
    }
}

/// `without nuts (ISO 4032)`, `no washers F436`: right behind its name, where the line has another part.
pub(super) fn is_standard_of_the_mate(line: &Line, name: usize, standard: usize) -> bool {
    let named = |at: usize| match line.what(at) {
        Some(What::Part(noun)) => MATES.iter().copied().find(|mate| noun.ends_with(mate)),
        _ => None,
    };
    let is_one = |at: usize, mate| line.what(at).and_then(standard_of) == Some(mate);
    // `… class 8`, of the nuts.
    if let Some(What::Class(_)) = line.what(standard) {
        let is_of_a_finish = line.behind(standard).and_then(|at| line.what(at)).is_some_and(is_finish);
        return is_one(name, "nut") && !is_of_a_finish;
    }
    named(name).is_some_and(|mate| {
        // `no washers nuts ISO 4032`: of nuts that are wanted.
        let is_second = line.before(name).and_then(named).is_some_and(|other| other != mate);
        is_one(standard, mate) && !is_second && has_another(line, mate)
    })
}

/// Whether the line has another part than this nut or washer.
pub(super) fn has_another(line: &Line, mate: &str) -> bool {
    line.items.iter().any(|item| match &item.what {
        What::Length(_) => true,
        What::Part(noun) => !noun.ends_with(mate) && [BOLTS, MATES].iter().any(|it| is_named(&item.what, it)),
        What::PartStandard(_) | What::Steel(SteelWord::Grade(_)) => standard_of(&item.what).is_none(),
        _ => false,
    })
}

/// The noun of the nut or the washer that a standard or a grade is of.
pub(super) fn standard_of(what: &What) -> Option<&'static str> {
    match what {
        What::PartStandard(key) => MATES.iter().copied().find(|mate| key.ends_with(mate)),
        What::Steel(SteelWord::Grade(grade)) if grade.is_nut() => Some("nut"),
        What::Steel(SteelWord::Grade(grade)) if grade.is_washer() => Some("washer"),
        _ => None,
    }
}

/// Whether the nut or the washer at a place is named once more, so that the line does not only refuse it.
pub(super) fn is_named_elsewhere(line: &Line, at: usize) -> bool {
    let own = MATES.iter().find(|mate| line.what(at).is_some_and(|what| is_named(what, &[mate])));
    own.is_some_and(|own| {
        let is_one =
            |(other, item): (usize, &Item)| other != at && item.is_free() && is_named(&item.what, &[own]);
        line.items.iter().enumerate().any(is_one)
    })
}

/// Whether a nut or a washer of the line comes with a bolt.
pub(super) fn has_bolt(line: &Line) -> bool {
    line.items.iter().any(|item| is_named(&item.what, BOLTS) || matches!(item.what, What::Length(_)))
}
