//! The nut and the washer that the standards put with a bolt.

use super::threads::is_metric;
use super::{Mate, OrderLine};
use crate::part::Kind;
use crate::quantity::Hardness;
use crate::rule::Part;
use crate::rule::bolt_and_nut::{BoltAndNut, BoltSteel, NutBody, NutSteel};
use crate::steel::pairing::{self, BoltToPair, Nuts};
use crate::steel::{Grade, State, Steel, load};
use crate::table::en_14399_loads::System;
use crate::table::nut_style::Style;
use crate::table::pairing::Washer;
use crate::thread::Thread;
use crate::thread::overtap::Allowance;
use crate::thread::pair::{Found, Room};
use crate::thread::strength::nut_height;

/// A nut that goes with a bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nut {
    /// Its grade.
    pub grade: Grade,
    /// Whether it is a heavy hex.
    pub is_heavy: bool,
    /// Whether its class is made in this size as a high nut only, style 2.
    pub is_high: bool,
}

/// The nut of an order: as named, or the one that the standards ask for on the bolt; which one that is can
/// depend on whether the nut is tapped over for its zinc.
pub fn nut(line: &OrderLine, is_tapped_over: bool) -> Option<Nut> {
    nut_of(line, nuts_for(line.part, line.thread, line.steel, is_tapped_over).as_ref())
}

/// The nut that goes on the order: as named, or that of the standards where they put another one on the bolt.
pub fn nut_to_order(line: &OrderLine, is_tapped_over: bool) -> Option<Nut> {
    if line.hole.is_some() {
        return None;
    }
    let asked_for = nuts_for(line.part, line.thread, line.steel, is_tapped_over);
    let does_not_go =
        |nut: &Mate| nut.grade.zip(asked_for).is_some_and(|(of, nuts)| nuts.takes(of, None) == Some(false));
    let nut = line.nut.map(|nut| if does_not_go(&nut) { Mate { grade: None, ..nut } } else { nut });
    nut_of(&OrderLine { nut, ..*line }, asked_for.as_ref())
}

/// The same, where what the standards put on the bolt is known.
pub(super) fn nut_of(line: &OrderLine, asked_for: Option<&Nuts>) -> Option<Nut> {
    if let Some(grade) = line.nut.and_then(|nut| nut.grade) {
        let takes = |style| asked_for.is_some_and(|nuts| nuts.takes(grade, Some(style)) == Some(true));
        let (is_heavy, is_high) = (takes(Style::HeavyHex), takes(Style::High) && !takes(Style::Regular));
        let grade = asked_for.map_or(grade, |nuts| nuts.named(grade));
        return Some(Nut { grade, is_heavy, is_high });
    }
    // What is known by its hardness alone is no grade.
    if line.nut.is_some_and(|nut| nut.hardness.is_some()) {
        return None;
    }
    let nuts = asked_for?;
    let grade = load::grade_of_nut(nuts.nut.grade)?;
    let style = nuts.nut.style;
    Some(Nut { grade, is_heavy: style == Style::HeavyHex, is_high: style == Style::High })
}

/// What the standards put on a bolt of this steel, its nut tapped over or not; `None` for what takes no nut.
pub fn nuts_for(
    kind: Kind,
    thread: Option<Thread>,
    steel: Option<State>,
    is_tapped_over: bool,
) -> Option<Nuts> {
    let thread = thread?;
    if !kind.has_mate() || kind.is_nut() || kind.goes_into_a_tapped_hole() {
        return None;
    }
    let grade = steel.and_then(|steel| steel.grade())?.grade;
    let bolt = BoltToPair {
        grade,
        diameter: thread.diameter(),
        is_coarse: thread.is_coarse(),
        is_zinc_coated: is_tapped_over,
        system: system(kind, thread, grade),
    };
    pairing::nuts(bolt).ok()
}

/// The system of a metric structural bolt: its sizes are those of EN 14399-4, HV, which has class 10.9
/// alone; 8.8 is HR.
fn system(kind: Kind, thread: Thread, grade: Grade) -> Option<System> {
    let hr = kind == Kind::HrBolt || grade == Grade::Class8_8;
    (kind.is_structural() && thread.is_metric()).then_some(if hr { System::Hr } else { System::Hv })
}

/// A bolt in its nut, where both are known and room for the coat is made in one of them; where no tapped nut
/// is published, with the one that is asked of the galvanizer.
pub(super) fn pair(
    bolt: &Part,
    steel: Option<State>,
    nuts: Option<&Nuts>,
    fit: &Found,
) -> Option<BoltAndNut> {
    let (bolt_class, allowance) = match fit {
        Found::Takes(mated) | Found::Binds(mated) => {
            let allowance = match mated.pair.room {
                Room::Tapped(allowance) => allowance,
                Room::NutG => Allowance::Own(mated.pair.nut.deviation.value),
                Room::Ordered | Room::Bolt(_) | Room::Smaller(_) => Allowance::Standard,
            };
            (mated.pair.class, allowance)
        }
        Found::NotPublished(needed, _) => (bolt.bolt_class?, Allowance::Own(*needed)),
        Found::Unknown(_) => return None,
    };
    if allowance == Allowance::Standard && !bolt_class.is_undercut() {
        return None;
    }
    let (grade, nuts) = (steel?.grade()?.grade, nuts?);
    let nut = match bolt.nut {
        Some(named) => nuts.find(|nut| load::known_nut(nuts.named(named)) == Some(nut.grade)),
        None => Some(nuts.nut),
    };
    let named = bolt.nut.map(|named| nuts.named(named));
    let thread = bolt.thread?;
    let pair = BoltAndNut {
        thread,
        bolt_class,
        allowance,
        bolt: BoltSteel::Grade(grade),
        nut: NutSteel::Grade(named.or_else(|| load::grade_of_nut(nuts.nut.grade))?),
        body: NutBody::Style(nut_height::Style::Iso4032),
        countersunk_ends: 2,
    };
    let style = nut.and_then(|nut| nut_height::Style::of(nut.style, thread));
    Some(BoltAndNut { body: NutBody::Style(style.unwrap_or_else(|| pair.usual_style())), ..pair })
}

/// The bolt that a nut ordered alone is made for: the strongest whose document puts this nut on it plain. What
/// is asked of the pair is then the same, whichever half is ordered.
pub(super) fn bolt_of_nut(nut: &Part, grade: Grade) -> Option<Part> {
    // The load of a nut goes with its height, which these do not have.
    let is_of_full_height = nut.kind.is_nut() && !matches!(nut.kind, Kind::ThinNut | Kind::OtherNut);
    let thread = nut.thread.filter(|_| is_of_full_height)?;
    let (known, kind) = (load::known_nut(grade)?, Kind::HexBolt);
    let puts_it_on = |bolt: &Grade| {
        let steel = Steel::of(*bolt, Some(thread.diameter())).ok()?;
        let state = State::of(steel);
        nuts_for(kind, Some(thread), Some(state), false).filter(|nuts| nuts.nut.grade == known).map(|_| *bolt)
    };
    let bolt = Grade::ALL.iter().rev().find_map(puts_it_on)?;
    Some(Part { kind, bolt: Some(bolt), nut: Some(grade), own_mass: None, ..*nut })
}

/// The kind of a washer that comes with a bolt: a spring steel is that of one kind.
pub(super) fn kind_of_washer(washer: Mate) -> Kind {
    match washer.grade {
        Some(Grade::Din127 | Grade::B18_21_1) => Kind::SpringWasher,
        Some(Grade::Din6796) => Kind::ConicalWasher,
        _ => washer.kind.unwrap_or(Kind::Washer),
    }
}

/// Bolts of inches beside which soft washers lie, as 200 HV lies beside class 8.8: common practice. Harder washers
/// would have to be baked where they are electroplated.
const BESIDE_SOFT_WASHERS: [Grade; 5] =
    [Grade::A307, Grade::J429Grade1, Grade::J429Grade2, Grade::J429Grade5, Grade::J429Grade5_2];

/// Whether the document of the bolt names F436 washers.
fn is_f436(asked_for: Option<&Nuts>) -> bool {
    asked_for.and_then(|nuts| nuts.washer) == Some(Washer::F436)
}

/// Whether the steel of a washer is proposed here: neither the order nor the document of the bolt names it.
pub(super) fn is_washer_proposed(washer: Mate, asked_for: Option<&Nuts>) -> bool {
    washer.grade.is_none() && washer.hardness.is_none() && !is_f436(asked_for)
}

/// The steel of the washer: as named; F436 where the document of the bolt names it and beside hard inch
/// bolts, F844 beside soft ones, 200 HV or 300 HV beside metric ones.
pub fn washer(line: &OrderLine) -> Option<Steel> {
    washer_of(line, nuts_for(line.part, line.thread, line.steel, true).as_ref())
}

/// The same, where what the standards put on the bolt is known.
pub(super) fn washer_of(line: &OrderLine, asked_for: Option<&Nuts>) -> Option<Steel> {
    let diameter = line.thread.map(Thread::diameter);
    if let Some(grade) = line.washer.and_then(|washer| washer.grade) {
        return Steel::of(grade, diameter).ok();
    }
    if let Some(hardness) = line.washer.and_then(|washer| washer.hardness) {
        return Some(Steel::Hardness(hardness));
    }
    // Wide and narrow washers are of unhardened steel, unless somebody says so.
    if line.washer.is_some_and(|washer| washer.kind.is_some()) && !is_metric(line) {
        return Steel::of(Grade::F844, diameter).ok();
    }
    let bolt = line.steel.and_then(|steel| steel.grade())?.grade;
    let named = is_f436(asked_for);
    if named || !is_metric(line) {
        let grade = if BESIDE_SOFT_WASHERS.contains(&bolt) && !named { Grade::F844 } else { Grade::F436 };
        return Steel::of(grade, diameter).ok();
    }
    let hard = matches!(bolt, Grade::Class10_9 | Grade::Class12_9 | Grade::Class12_9Underlined);
    Some(Steel::Hardness(Hardness::hv(if hard { 300.0 } else { 200.0 })))
}
