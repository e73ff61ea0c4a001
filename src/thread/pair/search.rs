//! The search for a bolt and a nut that go together under a coat.

use std::cell::OnceCell;

use super::trial::{Trial, Tried};
use super::{DEEP_OVERLAP, Found, INSIDE_SHARE, Mated, Ordered, Pair, Room, Ways};
use crate::process::Process;
use crate::quantity::Length;
use crate::source::document;
use crate::table::Refusal;
use crate::table::iso_965_1::{Position, deviation};
use crate::thread::class::BoltPosition;
use crate::thread::fit::{self, Coat, PITCH_GROWTH};
use crate::thread::limits::{self, BoltLimits, NutLimits};
use crate::thread::overtap::{self, Allowance};
use crate::thread::{Thread, ToleranceClass};

/// The search for a pair.
#[derive(Debug, Clone)]
pub struct Search {
    ordered: Ordered,
    /// How much more room a long plated bolt is given for its ends.
    at_ends: Option<f64>,
    bolt: Result<BoltLimits, Refusal>,
    /// What the pair as ordered has room for under an even coat: it is asked of one class of barrel and cell
    /// after the other.
    even: Option<fit::Room>,
    /// The nut that is ordered: the standard one, of the class that was written, or of the user's own
    /// allowance.
    nut: Result<NutLimits, Refusal>,
    tapped: Option<Result<(Allowance, NutLimits), Refusal>>,
    /// 6AX, for metric coats that are not spun, and for those of the barrel.
    unspun: Option<(Allowance, NutLimits)>,
    made: Made,
}

/// Threads that are only tried where the ordered ones are too narrow: read from the tables once, for a
/// class of coat after the other asks for them.
#[derive(Debug, Default, Clone)]
struct Made {
    nut_g: OnceCell<Option<Box<NutLimits>>>,
    bolt_f: OnceCell<Option<Box<BoltLimits>>>,
    bolt_e: OnceCell<Option<Box<BoltLimits>>>,
    g_is_narrower_than_e: OnceCell<bool>,
    /// The search without the class of the nut that was written.
    unwritten: OnceCell<Box<Search>>,
}

impl Search {
    /// A search for the threads of an order.
    pub fn new(ordered: Ordered) -> Self {
        let thread = ordered.thread;
        let bolt = limits::bolt(thread, ordered.bolt);
        let standard = limits::nut(thread, overtap::standard_class(thread));
        let tap = |allowance| {
            let nut = overtap::over(thread, standard.as_ref().map_err(Refusal::clone)?, allowance)?;
            Ok((allowance, nut))
        };
        let tapped = match (ordered.nut, ordered.own) {
            // The nut that is ordered is not widened.
            (Some(_), _) | (_, Some(_)) => None,
            // 6AZ and 6AX nuts must not be put on 6az bolts (ISO 965-5, clause 1).
            (None, None) if is_undersize(ordered.bolt) => None,
            (None, None) if thread.is_metric() && ordered.is_astm => Some(tap(Allowance::A563M)),
            // The tables end at M8, and hold coarse threads only.
            (None, None) if thread.is_metric() && !has_metric_row(thread) => Some(Err(Refusal::not_covered(
                &thread.to_string(),
                "coarse threads from M8 to M64",
                document::ISO_965_5.read("scope"),
            ))),
            (None, None) if thread.is_metric() => Some(tap(Allowance::Az)),
            (None, None) => Some(tap(Allowance::A563)),
        };
        // A spun coat gets 6AZ at every size; 6AX is for coats that are not spun (ISO 965-5).
        let free = has_metric_row(thread)
            && !ordered.is_astm
            && !is_undersize(ordered.bolt)
            && ordered.nut.is_none()
            && ordered.own.is_none();
        let unspun = if free { tap(Allowance::Ax).ok() } else { None };
        let nut = match (ordered.nut, ordered.own) {
            (_, Some(own)) => tap(Allowance::Own(own)).map(|(_, nut)| nut),
            (Some(class), None) => limits::nut(thread, class),
            (None, None) => standard,
        };
        let at_ends = super::at_ends(thread, ordered.length);
        let even = match (&bolt, &nut) {
            (Ok(bolt), Ok(nut)) => Some(fit::room(bolt.greatest(), nut.least(), 0.0)),
            _ => None,
        };
        Self { ordered, at_ends, bolt, even, nut, tapped, unspun, made: Made::default() }
    }

    /// The narrowest pair that takes a coat from `min` to `max` on the bolt.
    pub fn narrowest(&self, process: Process, min: Length, max: Length, ways: Ways) -> Found {
        let (bolt, nut) = match (&self.bolt, &self.nut) {
            (Ok(bolt), Ok(nut)) => (bolt, nut),
            (Err(refusal), _) | (_, Err(refusal)) => return Found::Unknown(refusal.clone()),
        };
        let coat = self.coat(process, min, max);
        let ordered = self.ordered_under(coat, bolt, nut);
        let own = self.allowance_needed(ordered.worst, coat);
        let wider = || self.wider(process, ways, own).into_iter().flatten();
        let trials = wider().filter_map(|room| self.trial(room, bolt, nut));
        let (mut widest, mut thin) = (ordered, None);
        for tried in std::iter::once(ordered).chain(trials.map(|trial| trial.under(coat))) {
            if tried.assembles() {
                // Where it goes together and too little thread would be left, another way may leave more.
                if fit::keeps_enough(self.overlap(&tried.trial)) {
                    return Found::Takes(self.mated(tried));
                }
                thin = thin.or(Some(tried));
            } else {
                widest = tried;
            }
        }
        if let Some(tried) = thin {
            return Found::Takes(self.mated(tried));
        }
        // A class that was written and is too narrow is changed by agreement, whichever it is.
        if let Some(found) = self.unwritten().map(|free| free.narrowest(process, min, max, ways))
            && !matches!(found, Found::Binds(_))
        {
            return found;
        }
        match &self.tapped {
            Some(Err(refusal)) if matches!(ways, Ways::Tapped) => Found::NotPublished(own, refusal.clone()),
            _ => Found::Binds(self.mated(widest)),
        }
    }

    /// The pair as ordered under a plated coat, whether or not it goes together at its worst corner: for a
    /// document that gives the thread this coat. `None` where the limits are not known.
    pub fn takes_as_ordered(&self, min: Length, max: Length) -> Option<Found> {
        let (bolt, nut) = (self.bolt.as_ref().ok()?, self.nut.as_ref().ok()?);
        let coat = self.coat(Process::Electroplated, min, max);
        Some(Found::Takes(self.mated(self.ordered_under(coat, bolt, nut))))
    }

    /// Whether some pair of these ways takes a coat from `min` to `max` and leaves enough thread;
    /// `None` where the limits of the thread are not known. A nut tapped by what the coat needs counts
    /// where it leaves [`DEEP_OVERLAP`], if it has to be `usual`.
    pub fn takes(
        &self,
        process: Process,
        (min, max): (Length, Length),
        ways: Ways,
        usual: bool,
    ) -> Option<bool> {
        let (bolt, nut) = (self.bolt.as_ref().ok()?, self.nut.as_ref().ok()?);
        let coat = self.coat(process, min, max);
        let takes = |tried: &Tried<'_>| {
            tried.assembles() && {
                let overlap = self.overlap(&tried.trial);
                let own = matches!(tried.trial.room, Room::Tapped(Allowance::Own(_)));
                fit::keeps_enough(overlap) && !(usual && own && overlap < DEEP_OVERLAP.value)
            }
        };
        // A thin coat goes into the pair that was ordered, and nothing else is reckoned for it.
        let ordered = self.ordered_under(coat, bolt, nut);
        if takes(&ordered) {
            return Some(true);
        }
        let with_more_room = || {
            let wider = self.wider(process, ways, self.allowance_needed(ordered.worst, coat));
            let mut trials = wider.into_iter().flatten().filter_map(|room| self.trial(room, bolt, nut));
            trials.any(|trial| takes(&trial.under(coat)))
        };
        // A nut of another class than the one written is agreed for the years wanted, and not for a usual coat.
        let free = || self.unwritten().filter(|_| !usual);
        Some(
            (ways > Ways::Ordered && with_more_room())
                || free().is_some_and(|free| free.takes(process, (min, max), ways, usual) == Some(true)),
        )
    }

    /// The search as if no class of the nut were written; `None` where none is, or where the bolt that is cut
    /// under takes no other.
    fn unwritten(&self) -> Option<&Self> {
        let ordered = self.ordered;
        let is_free = ordered.nut.is_some() && ordered.own.is_none() && !is_undersize(ordered.bolt);
        let free = || Box::new(Self::new(Ordered { nut: None, ..ordered }));
        is_free.then(|| &**self.made.unwritten.get_or_init(free))
    }

    /// Whether a tapped nut is published for the thread.
    pub fn has_published_nut(&self) -> bool {
        matches!(self.tapped, Some(Ok(_)))
    }

    /// The pairs that are tried for a coat, in their order; none where the limits are not known.
    pub fn tried(&self, process: Process, min: Length, max: Length, ways: Ways) -> Vec<Pair> {
        let (Ok(bolt), Ok(nut)) = (&self.bolt, &self.nut) else { return Vec::new() };
        let coat = self.coat(process, min, max);
        let ordered = self.as_ordered(bolt, nut);
        let own = self.allowance_needed(ordered.under(coat).worst, coat);
        let wider = self.wider(process, ways, own).into_iter().flatten();
        let trials = wider.filter_map(|room| self.trial(room, bolt, nut));
        std::iter::once(ordered).chain(trials).map(Trial::into_pair).collect()
    }

    /// The coat that shares the room; what reaches the inside of the nut as is assumed.
    fn coat(&self, process: Process, min: Length, max: Length) -> Coat {
        match process {
            Process::Electroplated => super::plated(self.at_ends, min, max),
            Process::HotDip | Process::Mechanical => {
                super::coat(process, (self.ordered.thread, None), (min, max), INSIDE_SHARE.value)
            }
        }
    }

    /// The tapped nuts for a process, the narrower first.
    fn tapped_nuts(&self, process: Process) -> [Option<Allowance>; 2] {
        let tapped = self.published();
        let unspun = self.unspun.as_ref().filter(|_| process != Process::HotDip || !self.ordered.is_spun);
        let pair = match (tapped, unspun) {
            // Below a pitch of 1.6 mm 6AX is the narrower of the two.
            (Some(az), Some(ax)) if ax.1.pitch.min < az.1.pitch.min => [Some(ax), Some(az)],
            (tapped, unspun) => [tapped, unspun],
        };
        pair.map(|nut| nut.map(|(allowance, _)| *allowance))
    }

    /// The tapped nut of the thread, where one is published.
    fn published(&self) -> Option<&(Allowance, NutLimits)> {
        self.tapped.as_ref()?.as_ref().ok()
    }

    /// The allowance on the diameter that a coat needs beyond the room of a pair, rounded up to a
    /// hundredth of a millimetre, or to half a thousandth of an inch.
    fn allowance_needed(&self, room: fit::Room, coat: Coat) -> Length {
        // What is missing in thickness, grown on the pitch diameter; crests and roots need less.
        let missing = PITCH_GROWTH * (1.0 + coat.unevenness) * (coat.max - room.thickest.min(coat.max));
        let step = if self.ordered.thread.is_metric() { 0.01 } else { 0.0127 };
        Length::from_mm((missing.mm() / step - 1e-6).ceil().max(0.0) * step)
    }

    /// What is tried beyond the pair that was ordered, from the narrowest to the widest; `own` is what the
    /// coat needs.
    fn wider(&self, process: Process, ways: Ways, own: Length) -> [Option<Room>; 7] {
        if ways == Ways::Ordered {
            return [None; 7];
        }
        let free = self.ordered.nut.is_none() && self.ordered.own.is_none();
        let made = ways == Ways::Bolt && self.ordered.bolt == ToleranceClass::bolt(6, BoltPosition::G);
        let nut_g = free && self.ordered.thread.is_metric() && ways > Ways::Tapped;
        let may_tap = matches!(ways, Ways::AnyNut | Ways::PublishedNut | Ways::Tapped);
        let [narrow, wide] = if may_tap { self.tapped_nuts(process) } else { [None; 2] };
        let needs = matches!(ways, Ways::AnyNut | Ways::ThinNut) && free && !is_undersize(self.ordered.bolt);
        let nut_g = nut_g.then_some(Room::NutG);
        let bolt_e = made.then_some(Room::Bolt(BoltPosition::E));
        let g_first = nut_g.is_none() || bolt_e.is_none() || self.g_is_narrower_than_e();
        let [second, third] = if g_first { [nut_g, bolt_e] } else { [bolt_e, nut_g] };
        [
            made.then_some(Room::Bolt(BoltPosition::F)),
            second,
            third,
            narrow.map(Room::Tapped),
            wide.map(Room::Tapped),
            needs.then_some(Room::Tapped(Allowance::Own(own))),
            (ways == Ways::Bolt).then_some(Room::Smaller(own)),
        ]
    }

    /// Whether 6g in 6G leaves less room than 6e in 6H: so it is up to a pitch of 1.5 mm.
    fn g_is_narrower_than_e(&self) -> bool {
        *self.made.g_is_narrower_than_e.get_or_init(|| {
            let of = |position| deviation(position, self.ordered.thread.pitch()).map(|found| found.value);
            match (of(Position::NutG), of(Position::BoltG), of(Position::BoltE)) {
                (Ok(nut), Ok(g), Ok(e)) => nut < g - e,
                _ => true,
            }
        })
    }

    /// The pair as it was ordered; its room is that which the order itself makes: by a nut of a class or an
    /// allowance that was written.
    fn as_ordered<'a>(&self, bolt: &'a BoltLimits, nut: &'a NutLimits) -> Trial<'a> {
        let room = match (self.ordered.own, self.ordered.nut) {
            (Some(own), _) => Room::Tapped(Allowance::Own(own)),
            (None, Some(class)) => Room::of_nut(class),
            (None, None) => Room::Ordered,
        };
        Trial { room, class: self.ordered.bolt, bolt, nut, beyond: None }
    }

    /// The same under a coat.
    fn ordered_under<'a>(&self, coat: Coat, bolt: &'a BoltLimits, nut: &'a NutLimits) -> Tried<'a> {
        let trial = self.as_ordered(bolt, nut);
        match self.even {
            Some(even) if coat.unevenness == 0.0 => trial.with_room(even, coat),
            _ => trial.under(coat),
        }
    }

    /// The pair with more room than was ordered, made there; `None` where the thread is not known.
    fn trial<'a>(&'a self, room: Room, bolt: &'a BoltLimits, nut: &'a NutLimits) -> Option<Trial<'a>> {
        let ordered = Trial { room, class: self.ordered.bolt, bolt, nut, beyond: None };
        Some(match room {
            Room::Ordered => ordered,
            // It is tried where no class was written: the nut that is ordered is the standard one.
            Room::NutG => Trial { nut: self.nut_g(nut)?, ..ordered },
            Room::Bolt(position) => {
                Trial { class: ToleranceClass::bolt(6, position), bolt: self.bolt_of(position)?, ..ordered }
            }
            Room::Tapped(Allowance::Own(by)) | Room::Smaller(by) => Trial { beyond: Some(by), ..ordered },
            Room::Tapped(of) => {
                let mut nuts = [self.published(), self.unspun.as_ref()].into_iter().flatten();
                let (_, nut) = nuts.find(|(allowance, _)| *allowance == of)?;
                Trial { nut, ..ordered }
            }
        })
    }

    fn nut_g(&self, standard: &NutLimits) -> Option<&NutLimits> {
        let nut_g = || limits::nut_6g(self.ordered.thread, standard).ok().map(Box::new);
        self.made.nut_g.get_or_init(nut_g).as_deref()
    }

    /// The bolt of a position that its maker leaves for a coat: 6f, 6e.
    fn bolt_of(&self, position: BoltPosition) -> Option<&BoltLimits> {
        let made = if position == BoltPosition::F { &self.made.bolt_f } else { &self.made.bolt_e };
        let class = ToleranceClass::bolt(6, position);
        made.get_or_init(|| limits::bolt(self.ordered.thread, class).ok().map(Box::new)).as_deref()
    }

    /// Overlap of the threads of a pair at minimum material, as a share of 5/8 H.
    fn overlap(&self, trial: &Trial<'_>) -> f64 {
        trial.overlap(self.ordered.thread.pitch())
    }

    fn mated(&self, Tried { trial, worst, assembly }: Tried<'_>) -> Box<Mated> {
        Box::new(Mated { pair: trial.into_pair(), worst, assembly, overlap: self.overlap(&trial) })
    }
}

/// Whether a bolt is cut under for its coat: 6az.
fn is_undersize(class: ToleranceClass) -> bool {
    matches!(class, ToleranceClass::Bolt(bolt) if bolt.position == BoltPosition::Az)
}

/// Whether ISO 965-5 or ISO 10684 has a tapped nut for a thread: coarse from M8.
fn has_metric_row(thread: Thread) -> bool {
    thread.is_metric() && thread.is_coarse() && thread.diameter() >= Length::from_mm(8.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::thread::Designation;

    fn search(text: &str) -> Search {
        let thread = Designation::read(text).unwrap().thread;
        let bolt = if thread.is_metric() {
            ToleranceClass::bolt(6, BoltPosition::G)
        } else {
            ToleranceClass::UnifiedBolt(2)
        };
        Search::new(Ordered {
            thread,
            bolt,
            nut: None,
            own: None,
            length: None,
            is_spun: true,
            is_astm: false,
        })
    }

    fn room(found: Found) -> Room {
        match found {
            Found::Takes(mated) => mated.pair.room,
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn a_spun_coat_gets_6az_at_every_size() {
        for thread in ["M10", "M12", "M16", "M24", "M36"] {
            let found = search(thread).narrowest(
                Process::HotDip,
                Length::from_um(40.0),
                Length::from_um(60.0),
                Ways::Tapped,
            );
            assert_eq!(room(found), Room::Tapped(Allowance::Az), "{thread}");
        }
    }

    #[test]
    fn a_thin_plate_takes_the_narrowest_pair() {
        let plated = |thread: &str, max| {
            let max = Length::from_um(max);
            room(search(thread).narrowest(Process::Electroplated, max, max, Ways::Bolt))
        };
        assert_eq!(plated("M20", 8.0), Room::Ordered);
        assert_eq!(plated("M20", 14.0), Room::Bolt(BoltPosition::F));
        assert_eq!(plated("M20", 18.0), Room::Bolt(BoltPosition::E));
        assert_eq!(plated("M6", 12.0), Room::NutG);
        assert!(matches!(plated("1/4-20", 12.0), Room::Smaller(_)));
    }

    #[test]
    fn both_halves_of_a_structural_pair_are_coated() {
        for thread in ["1/2-13", "3/4-10", "7/8-9", "1-8"] {
            let found = search(thread).narrowest(
                Process::Mechanical,
                Length::from_um(53.0),
                Length::from_um(79.5),
                Ways::AnyNut,
            );
            assert_eq!(room(found), Room::Tapped(Allowance::A563), "{thread}");
        }
    }
}
