//! The bolts and nuts of an order that may be tried with each other, read from the tables.

use std::sync::OnceLock;

use super::trial::Known;
use super::{Ordered, Pair, Room};
use crate::quantity::Length;
use crate::source::document;
use crate::table::iso_965_1::{Position, deviation};
use crate::table::{Kept, Refusal};
use crate::thread::class::BoltPosition;
use crate::thread::limits::{self, NutLimits};
use crate::thread::overtap::{self, Allowance};
use crate::thread::{Thread, ToleranceClass};

/// The pairs of a thread: the one that is ordered, and those with more room, each read when it is first tried.
#[derive(Debug, Clone)]
pub(super) struct Halves {
    ordered: Ordered,
    as_ordered: Result<Known, Refusal>,
    tapped: OnceLock<Option<Result<Box<Known>, Refusal>>>,
    unspun: OnceLock<Option<Box<Known>>>,
    nut_g: OnceLock<Option<Box<Known>>>,
    bolt_f: OnceLock<Option<Box<Known>>>,
    bolt_e: OnceLock<Option<Box<Known>>>,
    g_is_narrower_than_e: OnceLock<bool>,
}

impl Halves {
    /// The halves of an order. Those of a thread in its usual classes, which most orders are of, are read once.
    pub(super) fn of(ordered: &Ordered) -> Kept<Self> {
        static USUAL: OnceLock<Vec<[OnceLock<Box<Halves>>; 2]>> = OnceLock::new();
        let is_usual = ordered.bolt == overtap::usual_bolt_class(ordered.thread)
            && ordered.nut.is_none()
            && ordered.own.is_none();
        let read = || Box::new(Self::read(ordered));
        let usual = USUAL.get_or_init(|| Thread::all().map(|_| Default::default()).collect());
        let of_thread = usual.get(ordered.thread.place()).filter(|_| is_usual);
        match of_thread.and_then(|by_family| by_family.get(usize::from(ordered.is_astm))) {
            Some(kept) => Kept::Once(kept.get_or_init(read)),
            None => Kept::Own(read()),
        }
    }

    fn read(ordered: &Ordered) -> Self {
        Self {
            ordered: *ordered,
            as_ordered: as_ordered(ordered),
            tapped: OnceLock::new(),
            unspun: OnceLock::new(),
            nut_g: OnceLock::new(),
            bolt_f: OnceLock::new(),
            bolt_e: OnceLock::new(),
            g_is_narrower_than_e: OnceLock::new(),
        }
    }

    /// The pair as it was ordered.
    pub(super) fn as_ordered(&self) -> Result<&Known, &Refusal> {
        self.as_ordered.as_ref()
    }

    /// The nut that is tapped over for a coat, by the document for the thread; `None` where what is ordered is
    /// not widened.
    pub(super) fn tapped(&self) -> Option<Result<&Known, &Refusal>> {
        let tapped = self.tapped.get_or_init(|| {
            let Ordered { thread, .. } = self.ordered;
            if !self.may_tap() {
                return None;
            }
            Some(match thread.is_metric() {
                true if self.ordered.is_astm => self.over(Allowance::A563M),
                // The tables end at M8, and hold coarse threads only.
                true if !has_metric_row(thread) => Err(Refusal::not_covered(
                    &thread.to_string(),
                    "coarse threads from M8 to M64",
                    document::ISO_965_5.read("scope"),
                )),
                true => self.over(Allowance::Az),
                false => self.over(Allowance::A563),
            })
        });
        tapped.as_ref().map(|tapped| tapped.as_deref())
    }

    /// 6AX, for metric coats that are not spun, and for those of the barrel.
    pub(super) fn unspun(&self) -> Option<&Known> {
        let has_ax = || has_metric_row(self.ordered.thread) && !self.ordered.is_astm && self.may_tap();
        let unspun = || if has_ax() { self.over(Allowance::Ax).ok() } else { None };
        self.unspun.get_or_init(unspun).as_deref()
    }

    /// The nut of class 6G, where the standard one is ordered.
    pub(super) fn nut_g(&self) -> Option<&Known> {
        let nut_g = || {
            let known = self.as_ordered.as_ref().ok()?;
            let nut = limits::nut_6g(self.ordered.thread, &known.pair.nut).ok()?;
            Some(self.pair(Pair { room: Room::NutG, nut, ..known.pair }))
        };
        self.nut_g.get_or_init(nut_g).as_deref()
    }

    /// The bolt of a position that its maker leaves for a coat: 6f, 6e.
    pub(super) fn bolt_of(&self, position: BoltPosition) -> Option<&Known> {
        let made = if position == BoltPosition::F { &self.bolt_f } else { &self.bolt_e };
        let bolt_of = || {
            let known = self.as_ordered.as_ref().ok()?;
            let class = ToleranceClass::bolt(6, position);
            let bolt = limits::bolt(self.ordered.thread, class).ok()?;
            Some(self.pair(Pair { room: Room::Bolt(position), class, bolt, ..known.pair }))
        };
        made.get_or_init(bolt_of).as_deref()
    }

    /// Whether 6g in 6G leaves less room than 6e in 6H: so it is up to a pitch of 1.5 mm.
    pub(super) fn g_is_narrower_than_e(&self) -> bool {
        *self.g_is_narrower_than_e.get_or_init(|| {
            let of = |position| deviation(position, self.ordered.thread.pitch()).map(|found| found.value);
            match (of(Position::NutG), of(Position::BoltG), of(Position::BoltE)) {
                (Ok(nut), Ok(g), Ok(e)) => nut < g - e,
                _ => true,
            }
        })
    }

    /// Whether the nut may be widened: the one that is ordered is not, and 6AZ and 6AX nuts must not be put on
    /// 6az bolts (ISO 965-5, clause 1).
    fn may_tap(&self) -> bool {
        self.ordered.is_standard_nut() && !self.ordered.bolt.is_undercut()
    }

    fn over(&self, allowance: Allowance) -> Result<Box<Known>, Refusal> {
        let known = self.as_ordered.as_ref().map_err(Refusal::clone)?;
        let nut = overtap::over(self.ordered.thread, &known.pair.nut, allowance)?;
        Ok(self.pair(Pair { room: Room::Tapped(allowance), nut, ..known.pair }))
    }

    fn pair(&self, pair: Pair) -> Box<Known> {
        Box::new(Known::new(pair, self.ordered.thread.pitch()))
    }
}

/// The pair as it was ordered; its room is that which the order itself makes: by a nut of a class or an
/// allowance that was written.
fn as_ordered(ordered: &Ordered) -> Result<Known, Refusal> {
    let Ordered { thread, bolt: class, .. } = *ordered;
    let room = match (ordered.own, ordered.nut) {
        (Some(own), _) => Room::Tapped(Allowance::Own(own)),
        (None, Some(class)) => Room::of_nut(class),
        (None, None) => Room::Ordered,
    };
    let bolt = limits::bolt(thread, class)?;
    Ok(Known::new(Pair { room, class, bolt, nut: nut(ordered)? }, thread.pitch()))
}

/// The nut that is ordered: the standard one, of the class that was written, or of the user's own allowance.
fn nut(ordered: &Ordered) -> Result<NutLimits, Refusal> {
    let thread = ordered.thread;
    let standard = || limits::nut(thread, overtap::standard_class(thread));
    match (ordered.nut, ordered.own) {
        (_, Some(own)) => overtap::over(thread, &standard()?, Allowance::Own(own)),
        (Some(class), None) => limits::nut(thread, class),
        (None, None) => standard(),
    }
}

/// Whether ISO 965-5 or ISO 10684 has a tapped nut for a thread: coarse from M8.
fn has_metric_row(thread: Thread) -> bool {
    thread.is_metric() && thread.is_coarse() && thread.diameter() >= Length::from_mm(8.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What is kept of a thread is its own, and what an order makes of its own is kept of none.
    #[test]
    fn the_halves_kept_of_a_thread_are_its_own() {
        for thread in Thread::all() {
            for is_astm in [false, true] {
                let bolt = overtap::usual_bolt_class(thread);
                let usual =
                    Ordered { thread, bolt, nut: None, own: None, length: None, is_spun: true, is_astm };
                let (kept, read) = (Halves::of(&usual), Halves::read(&usual));
                assert!(matches!(kept, Kept::Once(_)), "{thread}");
                let pairs = |halves: &Halves| {
                    let [f, e] = [BoltPosition::F, BoltPosition::E].map(|position| halves.bolt_of(position));
                    let tapped = halves.tapped().and_then(Result::ok);
                    [halves.as_ordered().ok(), tapped, halves.unspun(), halves.nut_g(), f, e]
                        .map(|known| known.map(|known| known.pair))
                };
                assert_eq!(pairs(&kept), pairs(&read), "{thread}");
                let own = Ordered { own: Some(Length::from_um(300.0)), ..usual };
                assert!(matches!(Halves::of(&own), Kept::Own(_)));
            }
        }
    }
}
