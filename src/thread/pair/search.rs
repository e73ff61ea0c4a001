//! The search for a bolt and a nut that go together under a coat.

use std::cell::OnceCell;

use super::trial::Trial;
use super::{DEEP_OVERLAP, Found, Mated, Ordered, Pair, Room, Ways};
use crate::process::Process;
use crate::quantity::Length;
use crate::source::document;
use crate::table::Refusal;
use crate::table::iso_965_1::{Position, deviation};
use crate::thread::class::{BoltPosition, NutPosition};
use crate::thread::fit::{self, Coat, PITCH_GROWTH};
use crate::thread::limits::{self, BoltLimits, NutLimits};
use crate::thread::overtap::{self, Allowance};
use crate::thread::{Thread, ToleranceClass};

/// The search for a pair.
#[derive(Debug, Clone)]
pub struct Search {
    ordered: Ordered,
    bolt: Result<BoltLimits, Refusal>,
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
    nut_g: OnceCell<Option<NutLimits>>,
    bolt_f: OnceCell<Option<BoltLimits>>,
    bolt_e: OnceCell<Option<BoltLimits>>,
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
            let nut = overtap::over(thread, standard.clone()?, allowance)?;
            Ok((allowance, nut.limits))
        };
        let nut = match (ordered.nut, ordered.own) {
            (_, Some(own)) => tap(Allowance::Own(own)).map(|(_, nut)| nut),
            (Some(class), None) => limits::nut(thread, class),
            (None, None) => standard.clone(),
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
        Self { ordered, bolt, nut, tapped, unspun, made: Made::default() }
    }

    /// The narrowest pair that takes a coat from `min` to `max` on the bolt.
    pub fn narrowest(&self, process: Process, min: Length, max: Length, ways: Ways) -> Found {
        let (bolt, nut) = match (&self.bolt, &self.nut) {
            (Ok(bolt), Ok(nut)) => (bolt, nut),
            (Err(refusal), _) | (_, Err(refusal)) => return Found::Unknown(refusal.clone()),
        };
        let coat = self.ordered.coat(process, min, max);
        let (mut widest, mut thin) = (None, None);
        let rooms = self.rooms(process, ways, self.allowance_needed(bolt, nut, coat));
        for room in rooms.into_iter().flatten() {
            let Some(trial) = self.trial(room, bolt, nut) else { continue };
            if trial.assembles(coat) {
                // Where it goes together and too little thread would be left, another way may leave more.
                if fit::keeps_enough(self.overlap(&trial)) {
                    return Found::Takes(self.mated(trial, coat));
                }
                thin = thin.or(Some(trial));
            } else {
                widest = Some(trial);
            }
        }
        if let Some(trial) = thin {
            return Found::Takes(self.mated(trial, coat));
        }
        // A class that was written and is too narrow is changed by agreement, whichever it is.
        if let Some(found) = self.unwritten().map(|free| free.narrowest(process, min, max, ways))
            && !matches!(found, Found::Binds(_))
        {
            return found;
        }
        match (&self.tapped, widest) {
            (Some(Err(refusal)), _) if matches!(ways, Ways::Tapped) => {
                Found::NotPublished(self.allowance_needed(bolt, nut, coat), refusal.clone())
            }
            (_, Some(trial)) => Found::Binds(self.mated(trial, coat)),
            (_, None) => Found::Binds(self.mated(self.as_ordered(bolt, nut), coat)),
        }
    }

    /// The pair as ordered under a plated coat, whether or not it goes together at its worst corner: for a
    /// document that gives the thread this coat. `None` where the limits are not known.
    pub fn takes_as_ordered(&self, min: Length, max: Length) -> Option<Found> {
        let (bolt, nut) = (self.bolt.as_ref().ok()?, self.nut.as_ref().ok()?);
        let coat = self.ordered.coat(Process::Electroplated, min, max);
        Some(Found::Takes(self.mated(self.as_ordered(bolt, nut), coat)))
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
        let coat = self.ordered.coat(process, min, max);
        let takes = |trial: Trial<'_>| {
            trial.assembles(coat) && {
                let overlap = self.overlap(&trial);
                let own = matches!(trial.room, Room::Tapped(Allowance::Own(_)));
                fit::keeps_enough(overlap) && !(usual && own && overlap < DEEP_OVERLAP.value)
            }
        };
        // A thin coat goes into the pair that was ordered, and nothing else is reckoned for it.
        if takes(self.as_ordered(bolt, nut)) {
            return Some(true);
        }
        let [_, wider @ ..] = self.rooms(process, ways, self.allowance_needed(bolt, nut, coat));
        let mut trials = wider.into_iter().flatten().filter_map(|room| self.trial(room, bolt, nut));
        // A nut of another class than the one written is agreed for the years wanted, and not for a usual coat.
        let free = || self.unwritten().filter(|_| !usual);
        Some(
            trials.any(takes)
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
        let coat = self.ordered.coat(process, min, max);
        let own = self.allowance_needed(bolt, nut, coat);
        let rooms = self.rooms(process, ways, own).into_iter().flatten();
        rooms.filter_map(|room| self.trial(room, bolt, nut)).map(Trial::into_pair).collect()
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
    fn allowance_needed(&self, bolt: &BoltLimits, nut: &NutLimits, coat: Coat) -> Length {
        let room = fit::room(bolt.greatest(), nut.least(), coat.unevenness);
        // What is missing in thickness, grown on the pitch diameter; crests and roots need less.
        let missing = PITCH_GROWTH * (1.0 + coat.unevenness) * (coat.max - room.thickest.min(coat.max));
        let step = if self.ordered.thread.is_metric() { 0.01 } else { 0.0127 };
        Length::from_mm((missing.mm() / step - 1e-6).ceil().max(0.0) * step)
    }

    /// From the narrowest to the widest; `own` is what the coat needs.
    fn rooms(&self, process: Process, ways: Ways, own: Length) -> [Option<Room>; 8] {
        let free = self.ordered.nut.is_none() && self.ordered.own.is_none();
        let usual = self.ordered.bolt == ToleranceClass::bolt(6, BoltPosition::G);
        let nut_g = free && self.ordered.thread.is_metric() && ways > Ways::Tapped;
        let may_tap = matches!(ways, Ways::AnyNut | Ways::PublishedNut | Ways::Tapped);
        let [narrow, wide] = self.tapped_nuts(process).map(|nut| nut.filter(|_| may_tap));
        let needs = matches!(ways, Ways::AnyNut | Ways::ThinNut) && free && !is_undersize(self.ordered.bolt);
        let bolt = |position| (ways == Ways::Bolt && usual).then_some(Room::Bolt(position));
        let both = nut_g && ways == Ways::Bolt && usual;
        let [second, third] = if !both || self.g_is_narrower_than_e() {
            [nut_g.then_some(Room::NutG), bolt(BoltPosition::E)]
        } else {
            [bolt(BoltPosition::E), nut_g.then_some(Room::NutG)]
        };
        [
            Some(self.as_is()),
            bolt(BoltPosition::F),
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

    /// Where the room is that the order itself makes: a nut of a class or an allowance that was written.
    fn as_is(&self) -> Room {
        match (self.ordered.own, self.ordered.nut) {
            (Some(own), _) => Room::Tapped(Allowance::Own(own)),
            (None, Some(class)) => Room::of_nut(class),
            (None, None) => Room::Ordered,
        }
    }

    fn as_ordered<'a>(&self, bolt: &'a BoltLimits, nut: &'a NutLimits) -> Trial<'a> {
        Trial { room: self.as_is(), class: self.ordered.bolt, bolt, nut, beyond: None }
    }

    /// The pair with its room made there; `None` where the thread is not known.
    fn trial<'a>(&'a self, room: Room, bolt: &'a BoltLimits, nut: &'a NutLimits) -> Option<Trial<'a>> {
        let ordered = Trial { room, ..self.as_ordered(bolt, nut) };
        Some(match room {
            room if room == self.as_is() => ordered,
            Room::Ordered => ordered,
            Room::NutG => Trial { nut: self.nut_g()?, ..ordered },
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

    fn nut_g(&self) -> Option<&NutLimits> {
        let class = ToleranceClass::nut(6, NutPosition::G);
        self.made.nut_g.get_or_init(|| limits::nut(self.ordered.thread, class).ok()).as_ref()
    }

    /// The bolt of a position that its maker leaves for a coat: 6f, 6e.
    fn bolt_of(&self, position: BoltPosition) -> Option<&BoltLimits> {
        let made = if position == BoltPosition::F { &self.made.bolt_f } else { &self.made.bolt_e };
        let class = ToleranceClass::bolt(6, position);
        made.get_or_init(|| limits::bolt(self.ordered.thread, class).ok()).as_ref()
    }

    /// Overlap of the threads of a pair at minimum material, as a share of 5/8 H.
    fn overlap(&self, trial: &Trial<'_>) -> f64 {
        trial.overlap(self.ordered.thread.pitch())
    }

    fn mated(&self, trial: Trial<'_>, coat: Coat) -> Box<Mated> {
        let overlap = self.overlap(&trial);
        let pair = trial.into_pair();
        Box::new(Mated { pair, fit: fit::fit(pair.bolt, coat, pair.nut), overlap })
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
