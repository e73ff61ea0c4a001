//! The search for a bolt and a nut that go together under a coat.

use std::cell::OnceCell;

use super::halves::Halves;
use super::trial::{Known, Trial, Tried};
use super::{DEEP_OVERLAP, Found, INSIDE_SHARE, Ordered, Pair, Room, Ways};
use crate::process::Process;
use crate::quantity::Length;
use crate::table::Kept;
use crate::thread::ToleranceClass;
use crate::thread::class::BoltPosition;
use crate::thread::fit::{self, Coat, PITCH_GROWTH};
use crate::thread::overtap::Allowance;

/// The search for a pair.
#[derive(Debug, Clone)]
pub struct Search {
    ordered: Ordered,
    /// How much more room a long plated bolt is given for its ends.
    at_ends: Option<f64>,
    halves: Kept<Halves>,
    /// The search without the class of the nut that was written.
    unwritten: OnceCell<Box<Search>>,
}

/// A way from the pair that was ordered to a wider one.
#[derive(Clone, Copy)]
enum Step {
    /// The nut of class 6G.
    NutG,
    /// The bolt of this position.
    Bolt(BoltPosition),
    /// The narrower of the published tapped nuts.
    Narrow,
    /// The wider of them.
    Wide,
    /// The nut tapped over by what the coat needs.
    Own,
    /// The bolt made smaller by what the coat needs.
    Smaller,
}

impl Search {
    /// A search for the threads of an order.
    pub fn new(ordered: Ordered) -> Self {
        let at_ends = super::at_ends(ordered.thread, ordered.length);
        Self { ordered, at_ends, halves: Halves::of(&ordered), unwritten: OnceCell::new() }
    }

    /// The narrowest pair that takes a coat from `min` to `max` on the bolt.
    pub fn narrowest(&self, process: Process, min: Length, max: Length, ways: Ways) -> Found {
        let known = match self.halves.as_ordered() {
            Ok(known) => known,
            Err(refusal) => return Found::Unknown(refusal.clone()),
        };
        let coat = self.coat(process, min, max);
        let ordered = known.trial().under(coat);
        let (mut widest, mut thin) = (ordered, None);
        for tried in std::iter::once(ordered).chain(self.wider(process, ways, &ordered, coat)) {
            if tried.assembles() {
                // Where it goes together and too little thread would be left, another way may leave more.
                if fit::keeps_enough(tried.trial.overlap()) {
                    return Found::Takes(tried.mated());
                }
                thin = thin.or(Some(tried));
            } else {
                widest = tried;
            }
        }
        if let Some(tried) = thin {
            return Found::Takes(tried.mated());
        }
        // A class that was written and is too narrow is changed by agreement, whichever it is.
        if let Some(found) = self.unwritten().map(|free| free.narrowest(process, min, max, ways))
            && !matches!(found, Found::Binds(_))
        {
            return found;
        }
        match self.halves.tapped() {
            Some(Err(refusal)) if matches!(ways, Ways::Tapped) => {
                Found::NotPublished(self.allowance_needed(&ordered, coat), refusal.clone())
            }
            _ => Found::Binds(widest.mated()),
        }
    }

    /// The pair as ordered under a plated coat, whether or not it goes together at its worst corner: for a
    /// document that gives the thread this coat. `None` where the limits are not known.
    pub fn takes_as_ordered(&self, min: Length, max: Length) -> Option<Found> {
        let coat = self.coat(Process::Electroplated, min, max);
        Some(Found::Takes(self.halves.as_ordered().ok()?.trial().under(coat).mated()))
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
        let coat = self.coat(process, min, max);
        let takes = |tried: &Tried<'_>| {
            tried.assembles() && {
                let overlap = tried.trial.overlap();
                let own = matches!(tried.trial.room, Room::Tapped(Allowance::Own(_)));
                fit::keeps_enough(overlap) && !(usual && own && overlap < DEEP_OVERLAP.value)
            }
        };
        // A thin coat goes into the pair that was ordered, and nothing else is reckoned for it.
        let ordered = self.halves.as_ordered().ok()?.trial().under(coat);
        // A nut of another class than the one written is agreed for the years wanted, and not for a usual coat.
        let free = || self.unwritten().filter(|_| !usual);
        Some(
            takes(&ordered)
                || self.wider(process, ways, &ordered, coat).any(|tried| takes(&tried))
                || free().is_some_and(|free| free.takes(process, (min, max), ways, usual) == Some(true)),
        )
    }

    /// The search as if no class of the nut were written; `None` where none is, or where the bolt that is cut
    /// under takes no other.
    fn unwritten(&self) -> Option<&Self> {
        let ordered = self.ordered;
        let is_free = ordered.nut.is_some() && ordered.own.is_none() && !ordered.bolt.is_undercut();
        let free = || Box::new(Self::new(Ordered { nut: None, ..ordered }));
        is_free.then(|| &**self.unwritten.get_or_init(free))
    }

    /// Whether a tapped nut is published for the thread.
    pub fn has_published_nut(&self) -> bool {
        matches!(self.halves.tapped(), Some(Ok(_)))
    }

    /// The pairs that are tried for a coat, in their order; none where the limits are not known.
    pub fn tried(&self, process: Process, min: Length, max: Length, ways: Ways) -> Vec<Pair> {
        let Ok(known) = self.halves.as_ordered() else { return Vec::new() };
        let coat = self.coat(process, min, max);
        let ordered = known.trial().under(coat);
        let wider = self.wider(process, ways, &ordered, coat);
        std::iter::once(ordered).chain(wider).map(|tried| tried.trial.pair()).collect()
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

    /// What is tried beyond the pair that was ordered, from the narrowest to the widest, under the coat.
    fn wider<'a>(
        &'a self,
        process: Process,
        ways: Ways,
        ordered: &Tried<'a>,
        coat: Coat,
    ) -> impl Iterator<Item = Tried<'a>> {
        let steps = self.steps(ways).iter();
        steps.filter_map(move |step| Some(self.step(*step, process, ordered, coat)?.under(coat)))
    }

    /// The steps from the pair that was ordered to wider ones.
    fn steps(&self, ways: Ways) -> &'static [Step] {
        use BoltPosition::{E, F};
        match ways {
            Ways::Ordered => &[],
            Ways::Tapped => &[Step::Narrow, Step::Wide],
            Ways::AnyNut => &[Step::NutG, Step::Narrow, Step::Wide, Step::Own],
            Ways::PublishedNut => &[Step::NutG, Step::Narrow, Step::Wide],
            Ways::ThinNut => &[Step::NutG, Step::Own],
            Ways::Bolt if self.ordered.thread.is_metric() && !self.halves.g_is_narrower_than_e() => {
                &[Step::Bolt(F), Step::Bolt(E), Step::NutG, Step::Smaller]
            }
            Ways::Bolt => &[Step::Bolt(F), Step::NutG, Step::Bolt(E), Step::Smaller],
        }
    }

    /// The pair of a step; `None` where the order leaves no such step, or where the tables do not have it.
    fn step<'a>(
        &'a self,
        step: Step,
        process: Process,
        ordered: &Tried<'a>,
        coat: Coat,
    ) -> Option<Trial<'a>> {
        let (bolt, free) = (self.ordered.bolt, self.ordered.is_standard_nut());
        let needed = || self.allowance_needed(ordered, coat);
        match step {
            Step::NutG if free && self.ordered.thread.is_metric() => self.halves.nut_g().map(Known::trial),
            Step::Bolt(position) if bolt == ToleranceClass::bolt(6, BoltPosition::G) => {
                self.halves.bolt_of(position).map(Known::trial)
            }
            Step::Narrow | Step::Wide => {
                let [narrow, wide] = self.tapped_nuts(process);
                if matches!(step, Step::Narrow) { narrow } else { wide }.map(Known::trial)
            }
            Step::Own if free && !bolt.is_undercut() => {
                let own = needed();
                Some(ordered.trial.with(Room::Tapped(Allowance::Own(own)), own))
            }
            Step::Smaller => {
                let by = needed();
                Some(ordered.trial.with(Room::Smaller(by), by))
            }
            Step::NutG | Step::Bolt(_) | Step::Own => None,
        }
    }

    /// The tapped nuts for a process, the narrower first.
    fn tapped_nuts(&self, process: Process) -> [Option<&Known>; 2] {
        let tapped = self.halves.tapped().and_then(Result::ok);
        // A spun coat gets 6AZ at every size; 6AX is for coats that are not spun (ISO 965-5).
        let is_spun = process == Process::HotDip && self.ordered.is_spun;
        let unspun = if is_spun { None } else { self.halves.unspun() };
        match (tapped, unspun) {
            // Below a pitch of 1.6 mm 6AX is the narrower of the two.
            (Some(az), Some(ax)) if ax.pair.nut.pitch.min < az.pair.nut.pitch.min => [Some(ax), Some(az)],
            (tapped, unspun) => [tapped, unspun],
        }
    }

    /// The allowance on the diameter that a coat needs beyond the room of the pair as ordered, rounded up to a
    /// hundredth of a millimetre, or to half a thousandth of an inch.
    fn allowance_needed(&self, ordered: &Tried<'_>, coat: Coat) -> Length {
        // What is missing in thickness, grown on the pitch diameter; crests and roots need less.
        let room = ordered.worst.thickest.min(coat.max);
        let missing = PITCH_GROWTH * (1.0 + coat.unevenness) * (coat.max - room);
        let step = if self.ordered.thread.is_metric() { 0.01 } else { 0.0127 };
        Length::from_mm((missing.mm() / step - 1e-6).ceil().max(0.0) * step)
    }
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
