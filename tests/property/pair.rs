//! Which bolt goes into which nut under a coat.

use kettle_barrel::calculator::Draft;
use kettle_barrel::order;
use kettle_barrel::process::Process;
use kettle_barrel::quantity::Length;
use kettle_barrel::thread::class::{BoltPosition, NutPosition};
use kettle_barrel::thread::fit::{self, Assembly};
use kettle_barrel::thread::overtap::Allowance;
use kettle_barrel::thread::pair::{self, Found, INSIDE_SHARE, Ordered, Pair, Room, Search, Ways};
use kettle_barrel::thread::{Thread, ToleranceClass};
use proptest::prelude::*;

fn any_thread() -> impl Strategy<Value = Thread> {
    let all: Vec<Thread> = Thread::all().collect();
    (0..all.len()).prop_map(move |at| all[at])
}

/// The classes that an order may name, the usual one first.
fn classes(thread: Thread) -> (Vec<ToleranceClass>, Vec<Option<ToleranceClass>>) {
    let metric_nut = |position| Some(ToleranceClass::nut(6, position));
    if thread.is_metric() {
        use BoltPosition::{Az, E, F, G, H};
        let bolts = [G, H, E, F, Az].map(|position| ToleranceClass::bolt(6, position));
        let nuts = [NutPosition::G, NutPosition::Az, NutPosition::Ax].map(metric_nut);
        (bolts.to_vec(), [vec![None], nuts.to_vec()].concat())
    } else {
        let bolts = [2, 1, 3].map(ToleranceClass::UnifiedBolt);
        (bolts.to_vec(), vec![None, Some(ToleranceClass::UnifiedNut(3))])
    }
}

proptest! {
    /// What is found assembles, and no narrower pair of those tried does; what binds, binds in all.
    #[test]
    fn the_narrowest_pair_of_those_tried_that_assembles_is_found(
        thread in any_thread(),
        (bolt, nut, process, ways) in (0usize..5, 0usize..4, 0usize..3, 0usize..6),
        (min, thicker) in (1.0..150.0, 1.0..1.6),
        is_spun: bool,
    ) {
        let (bolts, nuts) = classes(thread);
        let ordered = Ordered {
            thread,
            bolt: bolts[bolt % bolts.len()],
            nut: nuts[nut % nuts.len()],
            own: None,
            length: None,
            is_spun,
            is_astm: false,
        };
        let process = Process::ALL[process];
        let ways = [Ways::Ordered, Ways::Tapped, Ways::AnyNut, Ways::PublishedNut, Ways::ThinNut, Ways::Bolt][ways];
        let (min, max) = (Length::from_um(min), Length::from_um(min * thicker));
        let search = Search::new(ordered);
        let coat = pair::coat(process, (thread, None), (min, max), INSIDE_SHARE.value);
        let goes = |pair: &Pair| {
            let room = fit::room(pair.bolt.greatest(), pair.nut.least(), coat.unevenness);
            room.assembly(coat.max) == Assembly::Assembles
                && fit::keeps_enough(fit::overlap(pair.bolt.major.min, pair.nut.minor.max, thread.pitch()))
        };
        // Whether a pair is found is asked of class after class, without the pair.
        let takes = search.takes(process, (min, max), ways, false);
        let width = |pair: &Pair| (pair.nut.pitch.min - pair.bolt.pitch.max).mm();
        let tried = search.tried(process, min, max, ways);
        match search.narrowest(process, min, max, ways) {
            Found::Takes(mated) if fit::keeps_enough(mated.overlap) => {
                prop_assert_eq!(takes, Some(true));
                prop_assert!(goes(&mated.pair), "{mated:?}");
                // What is made to the coat, and to no class of a standard, is tried last.
                let to_measure =
                    |pair: &Pair| matches!(pair.room, Room::Smaller(_) | Room::Tapped(Allowance::Own(_)));
                let standard = tried.iter().filter(|pair| !to_measure(pair));
                if !to_measure(&mated.pair) {
                    let narrower = standard.clone().find(|pair| goes(pair) && width(pair) < width(&mated.pair) - 1e-9);
                    prop_assert!(narrower.is_none(), "{narrower:?} before {:?}", mated.pair);
                } else {
                    prop_assert!(!standard.clone().any(goes));
                }
            }
            found @ (Found::Takes(_) | Found::Binds(_) | Found::NotPublished(..)) => {
                // Where the nut that was written goes on and leaves too little thread, another one may leave more.
                let is_written = matches!(found, Found::Takes(_)) && ordered.nut.is_some();
                prop_assert!(takes == Some(false) || is_written, "{found:?}");
                prop_assert!(!tried.iter().any(goes), "{tried:?}");
            }
            Found::Unknown(_) => prop_assert!(tried.is_empty() && takes.is_none()),
        }
    }

    /// A spun hot-dip coat takes 6AZ at every size; 6AX only one that is not spun (ISO 965-5).
    #[test]
    fn a_spun_coat_never_takes_6ax(thread in any_thread(), max in 40.0..140.0) {
        prop_assume!(thread.is_metric());
        let bolt = ToleranceClass::bolt(6, BoltPosition::G);
        let room = |is_spun| {
            let search = Search::new(Ordered { thread, bolt, nut: None, own: None, length: None, is_spun, is_astm: false });
            let max = Length::from_um(max);
            match search.narrowest(Process::HotDip, Length::from_um(40.0), max, Ways::Tapped) {
                Found::Takes(mated) => Some(mated.pair.room),
                _ => None,
            }
        };
        prop_assert!(!matches!(room(true), Some(Room::Tapped(Allowance::Ax))));
        if let Some(Room::Tapped(allowance)) = room(true) {
            prop_assert_eq!(allowance, Allowance::Az);
            prop_assert!(room(false).is_some());
        }
    }
}

/// A pair is one, whether the bolt is ordered with its nut or the nut for its bolt.
#[test]
fn a_pair_written_from_either_side_gets_the_same_fit() {
    let found = |pairs: &[(&str, &str)], process: usize| {
        let draft: Draft = pairs.iter().copied().collect();
        let line = order::read(&draft).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"));
        let judged = order::judge(&line).processes[process].clone();
        let offer = judged.offer.map(|offer| (offer.min, offer.max));
        let pair = match judged.fit {
            Some(Found::Takes(mated) | Found::Binds(mated)) => {
                Some((mated.pair.bolt, mated.pair.nut, mated.worst, mated.assembly))
            }
            _ => None,
        };
        (offer, pair)
    };
    for thread in ["M10", "M12", "M16", "M20", "M30", "1/2-13 UNC", "3/4-10 UNC"] {
        let metric = thread.starts_with('M');
        let nuts: &[&str] = if metric { &["", "6H", "6G", "6AZ", "6AX"] } else { &["", "2B"] };
        let coats: &[(usize, &str)] = &[(1, "b695-40"), (1, "b695-5")];
        for nut in nuts {
            for (process, coat) in coats {
                let with_class = format!("{thread}-{nut}");
                let thread_of_nut = if nut.is_empty() { thread } else { &with_class };
                let (grade, nut_grade) = if metric { ("8.8", "nut-8") } else { ("a325", "a563-dh") };
                let bolt_line = [
                    ("part", "hex-bolt"),
                    ("thread", thread),
                    ("length", "60 mm"),
                    ("steel", grade),
                    ("nut", "standard"),
                    ("nut_class", nut),
                    ("asked", coat),
                ];
                let nut_line =
                    [("part", "hex-nut"), ("thread", thread_of_nut), ("steel", nut_grade), ("asked", coat)];
                let (bolt, nut_side) = (found(&bolt_line, *process), found(&nut_line, *process));
                assert!(bolt.1.is_some(), "{thread} {nut} {coat}");
                assert_eq!(bolt, nut_side, "{thread} {nut} {coat}");
            }
        }
    }
}

/// ISO 965-5, clause 1: 6AZ and 6AX nuts must not meet 6az bolts, from whichever side it is written.
#[test]
fn a_nut_tapped_over_is_not_put_on_a_bolt_cut_under() {
    use kettle_barrel::calculator::{Mark, evaluate};
    let marks = |pairs: &[(&str, &str)]| {
        let draft: Draft = pairs.iter().copied().collect();
        let line = order::read(&draft).unwrap_or_else(|problems| panic!("{pairs:?}: {problems}"));
        let judged = order::judge(&line).processes[0].clone();
        judged.ruling(kettle_barrel::rule::Key::Mating).map(|ruling| ruling.mark)
    };
    let with = |nut: &'static str| {
        marks(&[
            ("part", "hex-bolt"),
            ("thread", "M16-6az"),
            ("length", "60 mm"),
            ("steel", "8.8"),
            ("nut", "standard"),
            ("nut_class", nut),
        ])
    };
    assert_eq!(
        [with("6AZ"), with("6AX"), with("6H"), with("")],
        [Some(Mark::Bar), Some(Mark::Bar), Some(Mark::Met), None]
    );
    for calculator in ["oversize-tap", "thread-strength"] {
        let report = evaluate(calculator, [("thread", "M16-6az"), ("allowance", "az")]).unwrap();
        let bars = report
            .findings
            .iter()
            .filter(|finding| finding.mark == Mark::Bar && finding.text.contains("6az"));
        assert_eq!(bars.count(), 1, "{calculator}: {:?}", report.findings);
    }
    // However a bolt cut under is written, it is marked and has its own stress area.
    let found = |pairs: &[(&str, &str)]| {
        let report = evaluate("oversize-tap", pairs.iter().copied()).unwrap();
        report
            .findings
            .into_iter()
            .map(|finding| (finding.mark, finding.text.into_owned()))
            .collect::<Vec<_>>()
    };
    let under = found(&[("thread", "M16"), ("way", "under")]);
    assert!(under.iter().any(|(_, text)| text.contains("8.8U")), "{under:?}");
    assert_eq!(found(&[("thread", "M16-6az"), ("allowance", "standard")]), under);
    assert_eq!(found(&[("thread", "M16"), ("bolt_class", "6az"), ("allowance", "standard")]), under);
}
