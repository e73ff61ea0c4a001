//! What must hold for every thread, coat and nut.

use kettle_barrel::calculator::{Mark, Value, evaluate};
use kettle_barrel::quantity::{Length, Stress};
use kettle_barrel::thread::chance::{self, Spread};
use kettle_barrel::thread::class::BoltPosition;
use kettle_barrel::thread::fit::{self, Coat, Fit, fit};
use kettle_barrel::thread::overtap::{self, Allowance};
use kettle_barrel::thread::strength::{Joint, Sizes, shear_area, strength};
use kettle_barrel::thread::{Designation, H, Thread, ToleranceClass, coat_room, limits, undersize};
use proptest::prelude::*;

fn any_thread() -> impl Strategy<Value = Thread> {
    let all: Vec<Thread> = Thread::all().collect();
    (0..all.len()).prop_map(move |at| all[at])
}

fn usual_bolt(thread: Thread) -> ToleranceClass {
    if thread.is_metric() { ToleranceClass::bolt(6, BoltPosition::G) } else { ToleranceClass::UnifiedBolt(2) }
}

fn fit_with(thread: Thread, allowance_um: f64, coat: Coat) -> Fit {
    let bolt = limits::bolt(thread, usual_bolt(thread)).unwrap();
    let nut = overtap::nut(thread, Allowance::Own(Length::from_um(allowance_um))).unwrap();
    fit(bolt, coat, nut.limits)
}

/// A joint with about the engagement and the width of a standard nut.
fn joint(thread: Thread, bolt_mpa: f64, nut_mpa: f64) -> Joint {
    Joint {
        is_bell: true,
        diameter: thread.diameter(),
        stress_area: thread.stress_area(),
        engagement: Length::from_mm(0.8 * thread.diameter().mm()),
        across_flats: Length::from_mm(1.5 * thread.diameter().mm()),
        bolt_tensile: Stress::from_mpa(bolt_mpa),
        nut_tensile: Stress::from_mpa(nut_mpa),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    /// Tapping a nut further over never makes the thread stronger.
    #[test]
    fn overtapping_never_raises_the_strength(
        thread in any_thread(), bolt in 400.0..1300.0, nut in 400.0..1300.0,
        min in 0.0..400.0, more in 1.0..400.0,
    ) {
        let joint = joint(thread, bolt, nut);
        let with = |um: f64| {
            let bolt = limits::bolt(thread, usual_bolt(thread)).unwrap();
            let nut = overtap::nut(thread, Allowance::Own(Length::from_um(um))).unwrap().limits;
            strength(&joint, Sizes::least_material(thread.pitch(), &bolt, &nut))
        };
        // A nut so wide that no thread is left, or one outside the factors' ranges, has no strength.
        if let (Ok(narrow), Ok(wide)) = (with(min), with(min + more)) {
            prop_assert!(wide.nut_strips.newton() <= narrow.nut_strips.newton() * (1.0 + 1e-9));
            prop_assert!(wide.first().1.newton() <= narrow.first().1.newton() * (1.0 + 1e-9));
        }
    }

    /// Cutting a bolt under never makes it stronger.
    #[test]
    fn cutting_under_never_raises_the_strength(
        thread in any_thread(), bolt in 400.0..1300.0, nut in 400.0..1300.0,
    ) {
        prop_assume!(thread.is_metric());
        let plain = joint(thread, bolt, nut);
        let under = undersize::bolt(thread).unwrap();
        let usual = limits::bolt(thread, usual_bolt(thread)).unwrap();
        let nut = overtap::nut(thread, Allowance::Standard).unwrap().limits;
        prop_assert!(under.stress_area < thread.stress_area());
        let before = strength(&plain, Sizes::least_material(thread.pitch(), &usual, &nut));
        let cut = Joint { stress_area: under.stress_area, ..plain };
        let after = strength(&cut, Sizes::least_material(thread.pitch(), &under.limits, &nut));
        if let (Ok(before), Ok(after)) = (before, after) {
            prop_assert!(after.bolt_breaks < before.bolt_breaks);
            prop_assert!(after.bolt_strips.newton() <= before.bolt_strips.newton() * (1.0 + 1e-9));
            prop_assert!(after.first().1.newton() <= before.first().1.newton() * (1.0 + 1e-9));
        }
    }

    /// Each micrometre of coat takes four from the clearance on the pitch diameter, two from the others.
    #[test]
    fn clearance_falls_by_four_and_by_two(
        thread in any_thread(), allowance in 0.0..1000.0, coat in 0.0..200.0, more in 0.0..100.0,
    ) {
        let with = |um: f64| fit_with(thread, allowance, Coat::even(Length::from_um(0.0), Length::from_um(um)));
        let (thin, thick) = (with(coat), with(coat + more));
        let near = |fall: f64, times: f64| f64::abs(fall - times * more) < 1e-6;
        prop_assert!(near(thin.pitch.min.um() - thick.pitch.min.um(), 4.0));
        prop_assert!(near(thin.major_min.um() - thick.major_min.um(), 2.0));
        prop_assert!(near(thin.minor_min.um() - thick.minor_min.um(), 2.0));
    }

    /// A thicker or a less even coat never fits better, a wider nut never worse.
    #[test]
    fn more_coat_never_fits_better(
        thread in any_thread(), allowance in 0.0..1000.0, wider in 0.0..300.0,
        coat in 0.0..200.0, more in 0.0..100.0, unevenness in 0.0..0.5, rougher in 0.0..0.4,
    ) {
        let um = Length::from_um;
        let with = |allowance: f64, max: f64, unevenness: f64| {
            fit_with(thread, allowance, Coat { min: um(0.0), max: um(max), unevenness })
        };
        let fit = with(allowance, coat, unevenness);
        prop_assert!(!with(allowance, coat + more, unevenness).assembles() || fit.assembles());
        prop_assert!(!with(allowance, coat, unevenness + rougher).assembles() || fit.assembles());
        prop_assert!(with(allowance + wider, coat, unevenness).assembles() || !fit.assembles());
    }

    /// The thickest coat that assembles does, and one a micrometre thicker does not.
    #[test]
    fn the_thickest_coat_is_the_thickest(thread in any_thread(), allowance in 0.0..1000.0, unevenness in 0.0..0.9) {
        let um = Length::from_um;
        let with = |max: f64| {
            fit_with(thread, allowance, Coat { min: um(0.0), max: um(max), unevenness })
        };
        let thickest = with(0.0).worst.thickest.um();
        prop_assert!(with(thickest).assembles());
        prop_assert!(!with(thickest + 1.0).assembles());
    }

    /// The same coat and allowance in inches or in millimetres is the same fit.
    #[test]
    fn inches_and_millimetres_give_the_same_fit(thread in any_thread(), allowance in 0.0..0.02, coat in 0.0..0.004) {
        let inch = fit_with(
            thread,
            Length::from_inch(allowance).um(),
            Coat::even(Length::from_inch(0.0), Length::from_inch(coat)),
        );
        let mm = fit_with(
            thread,
            allowance * 25_400.0,
            Coat::even(Length::from_mm(0.0), Length::from_mm(coat * 25.4)),
        );
        prop_assert!((inch.pitch.min.mm() - mm.pitch.min.mm()).abs() < 1e-9);
        prop_assert!((inch.worst.thickest.mm() - mm.worst.thickest.mm()).abs() < 1e-9);
    }

    /// The metric profile on an inch thread gives its basic sizes, to the last digit B1.1 prints, and
    /// shear areas scale as areas do.
    #[test]
    fn metric_and_inch_profiles_are_one(thread in any_thread(), scale in 0.2..5.0) {
        let (d, p) = (thread.diameter().mm(), thread.pitch().mm());
        let half_digit = if thread.is_metric() { 0.000_501 } else { 0.000_050_1 * 25.4 };
        prop_assert!((thread.pitch_diameter().mm() - (d - 0.75 * H * p)).abs() < half_digit);
        prop_assert!((thread.minor_diameter().mm() - (d - 1.25 * H * p)).abs() < half_digit);
        let at = |scale: f64| Sizes {
            pitch: Length::from_mm(scale * p),
            bolt_major: Length::from_mm(scale * d),
            bolt_pitch: Length::from_mm(scale * thread.pitch_diameter().mm()),
            nut_minor: Length::from_mm(scale * thread.minor_diameter().mm()),
            nut_pitch: Length::from_mm(scale * thread.pitch_diameter().mm()),
        };
        let area = |scale: f64| {
            shear_area::nut(at(scale), Length::from_mm(scale * d)).unwrap().mm2()
        };
        prop_assert!((area(scale) / area(1.0) / (scale * scale) - 1.0).abs() < 1e-9);
    }

    /// Any text is a designation or says why it is none.
    #[test]
    fn any_text_is_read_or_refused(text in any::<String>()) {
        if let Err(problem) = Designation::read(&text) {
            prop_assert!(!problem.to_string().is_empty());
        }
    }
}

/// Every thread has limits for the usual classes, and a GO is never above a NOT-GO's other side.
#[test]
fn every_thread_has_its_limits() {
    for thread in Thread::all() {
        let bolt = limits::bolt(thread, usual_bolt(thread)).unwrap();
        let nut = limits::nut(thread, overtap::standard_class(thread)).unwrap();
        for limits in [bolt.major, bolt.pitch, nut.pitch, nut.minor] {
            assert!(limits.min < limits.max, "{thread}");
        }
        assert!(bolt.root_max <= bolt.minor_max, "{thread}");
        assert!(bolt.pitch.max <= nut.pitch.min, "{thread}");
        assert!(nut.minor.max < bolt.major.min, "{thread}");
    }
}

/// Every class of ISO 965-1 and B1.1 has limits or is refused; the usual grades have them everywhere.
#[test]
fn every_class_has_limits_or_a_refusal() {
    for thread in Thread::all() {
        let mut found = 0;
        for grade in 3..=9 {
            for crest in [4, 6, 8] {
                for letter in ["e", "f", "g", "h", "az"] {
                    let class = ToleranceClass::read(&format!("{grade}{letter}{crest}{letter}")).unwrap();
                    found += usize::from(limits::bolt(thread, class).is_ok());
                }
            }
            for letter in ["G", "H", "AZ", "AX"] {
                let class = ToleranceClass::read(&format!("{grade}{letter}")).unwrap();
                found += usize::from(limits::nut(thread, class).is_ok());
            }
        }
        for class in 1..=3 {
            found += usize::from(limits::bolt(thread, ToleranceClass::UnifiedBolt(class)).is_ok());
            found += usize::from(limits::nut(thread, ToleranceClass::UnifiedNut(class)).is_ok());
        }
        // 3 to 7 with crests 4 and 6 in five positions, and nuts of 4 to 7 in four; or 1A to 3B.
        let min = if thread.is_metric() { 5 * 2 * 5 + 4 * 4 } else { 6 };
        assert!(found >= min, "{thread}: {found}");
    }
}

/// The class that the inverse question names does take the coat, by the calculator of the fit.
#[test]
fn the_class_that_is_named_takes_the_coat() {
    for thread in ["M8", "M10", "M16", "M30", "M64", "M16x1.5", "1/2-13 UNC", "1-8 UNC"] {
        for coat in ["5", "10", "20", "50", "80"] {
            let room = evaluate("coat-room", [("thread", thread), ("coat", coat)]).unwrap();
            let words = |name: &str| {
                room.figures.iter().find(|figure| figure.name == name).map(|figure| match &figure.value {
                    Value::Words(words) => words.to_string(),
                    other => other.to_string(),
                })
            };
            let (Some(bolt), Some(nut)) = (words("Bolt"), words("Nut")) else { continue };
            let allowance = match nut.as_str() {
                "6AZ" => "az",
                "6AX" => "ax",
                "ASTM A563" => "a563",
                "6H" | "2B" => "standard",
                // 6G is no choice of the other calculator.
                _ => continue,
            };
            let class = bolt.split_whitespace().next().unwrap();
            let report = evaluate(
                "oversize-tap",
                [
                    ("thread", thread),
                    ("bolt_class", class),
                    ("allowance", allowance),
                    ("coat_least", "0"),
                    ("coat_greatest", coat),
                ],
            )
            .unwrap();
            assert!(
                report.headline.contains("the coat stated goes together."),
                "{thread} {coat}: {}",
                report.headline
            );
        }
    }
}

/// A bolt cut under is one, whether its class is chosen, written behind the thread, or asked for as a
/// way to make room.
#[test]
fn a_bolt_cut_under_is_the_same_however_it_is_written() {
    let strength = |pairs: &[(&str, &str)]| {
        let report = evaluate("thread-strength", pairs.iter().copied()).unwrap();
        report.sections.iter().map(|section| format!("{section:?}")).collect::<Vec<_>>()
    };
    let way = strength(&[("thread", "M16"), ("way", "under")]);
    assert_eq!(strength(&[("thread", "M16-6az"), ("allowance", "standard")]), way);
    assert_eq!(strength(&[("thread", "M16"), ("bolt_class", "6az"), ("allowance", "standard")]), way);
}

/// What stands beside a bolt cut under is read, and not left out in silence.
#[test]
fn a_nut_beside_a_bolt_cut_under_is_read() {
    let under = |pairs: &[(&'static str, &'static str)]| {
        let all = [("thread", "M12"), ("way", "under")].into_iter().chain(pairs.iter().copied());
        evaluate("oversize-tap", all).unwrap()
    };
    let usual = under(&[]).headline;
    assert_eq!(under(&[("allowance", "standard")]).headline, usual);
    assert_ne!(under(&[("allowance", "own"), ("own_allowance", "0.1 mm")]).headline, usual);
    let barred = under(&[("allowance", "az")]).findings;
    assert!(barred.iter().any(|found| found.mark == Mark::Bar && found.text.contains("6az")), "{barred:?}");
}

/// The findings of `thread-strength` as mark and text.
fn findings(pairs: &[(&str, &str)]) -> Vec<(Mark, String)> {
    let report =
        evaluate("thread-strength", pairs.iter().copied()).unwrap_or_else(|why| panic!("{pairs:?}: {why}"));
    report.findings.into_iter().map(|finding| (finding.mark, finding.text.into_owned())).collect()
}

/// ISO 10684, clause 7, gives 6AZ nuts from M12 up the full load: the model is a note beside it, once.
#[test]
fn the_standard_comes_before_the_model() {
    let found =
        findings(&[("thread", "M16"), ("bolt_grade", "10.9"), ("nut_grade", "nut-10"), ("allowance", "az")]);
    assert!(found.iter().all(|(mark, _)| matches!(mark, Mark::Met | Mark::Note)), "{found:?}");
    let model = found.iter().filter(|(_, text)| text.contains("model of ISO/TR 16224"));
    assert_eq!(model.count(), 1, "{found:?}");
    assert!(found.iter().any(|(mark, text)| *mark == Mark::Met && text.contains("full loads")), "{found:?}");
    // M10 carries the reduced load of Annex A.
    let found =
        findings(&[("thread", "M10"), ("bolt_grade", "8.8"), ("nut_grade", "nut-8"), ("allowance", "az")]);
    assert!(found.iter().any(|(mark, text)| *mark == Mark::Condition && text.contains("42.2")), "{found:?}");
    // An allowance of no document leaves the model as the rule.
    let own = [
        ("thread", "M16"),
        ("bolt_grade", "10.9"),
        ("nut_grade", "nut-10"),
        ("allowance", "own"),
        ("own_allowance", "0.6 mm"),
    ];
    let found = findings(&own);
    assert!(found.iter().any(|(mark, text)| *mark >= Mark::Condition && text.contains("model")), "{found:?}");
}

/// Fine threads of large diameter overlap; the factor for the bell-mouth cannot be used on them.
#[test]
fn large_fine_threads_overlap() {
    for text in ["M48x1.5", "M64x1.5", "4-8 UN", "2-8 UN"] {
        let own = [
            ("thread", text),
            ("allowance", "standard"),
            ("nut_style", "own"),
            ("nut_height", "40"),
            ("nut_width", "150"),
            ("bolt_grade", "own"),
            ("nut_grade", "own"),
        ];
        findings(&own);
    }
    let bell = |thread: Thread| {
        let nut = overtap::nut(thread, Allowance::Standard).unwrap().limits;
        shear_area::bell_holds(&limits::bolt(thread, usual_bolt(thread)).unwrap(), &nut, thread.pitch())
    };
    // Every thread of the usual pitch has its bell-mouth.
    assert!(Thread::all().filter(|thread| thread.is_coarse()).all(bell));
    assert!(!bell(Designation::read("M48x1.5").unwrap().thread));
    assert!(!bell(Designation::read("4-8 UN").unwrap().thread));
}

/// Strength is judged at the minimum width across flats: 23.67 mm for M16 (ISO 4032, read).
#[test]
fn the_nut_is_as_narrow_as_its_standard_allows() {
    let report = evaluate("thread-strength", [("thread", "M16")]).unwrap();
    let width =
        report.sections.iter().flat_map(|section| &section.figures).find(|figure| figure.symbol == "s");
    assert_eq!(width.unwrap().value.to_string(), "23.670\u{a0}mm");
}

/// Every published pair keeps the least overlap; 1/4-20 by ASTM A563 keeps the least of them.
#[test]
fn the_least_overlap_is_that_of_published_pairs() {
    let share = |thread: Thread, allowance| {
        let bolt = limits::bolt(thread, usual_bolt(thread)).unwrap();
        let nut = overtap::nut(thread, allowance).ok()?;
        Some(fit::overlap(bolt.major.min, nut.limits.minor.max, thread.pitch()))
    };
    let mut least = f64::INFINITY;
    for thread in Thread::all().filter(|thread| thread.has_coarse_loads()) {
        let published: &[Allowance] = match thread.metric_key() {
            Some((8.., _)) => &[Allowance::Az, Allowance::Ax],
            Some(_) => &[],
            None => &[Allowance::A563],
        };
        for share in published.iter().filter_map(|allowance| share(thread, *allowance)) {
            assert!(fit::keeps_enough(share), "{thread}: {share}");
            least = least.min(share);
        }
    }
    let quarter = Designation::read("1/4-20 UNC").unwrap().thread;
    assert_eq!(share(quarter, Allowance::A563), Some(least));
    assert!((least - fit::LEAST_OVERLAP.value).abs() < 0.03, "{least}");
    let m5 = Thread::metric(5, None).unwrap();
    let left = share(m5, Allowance::Own(Length::from_mm(0.5))).unwrap();
    assert!(left < 0.0 && !fit::keeps_enough(left), "{left}");
}

/// ISO 4042:1999, Table 2: M10 x 40, 80 and 120 take 4 t, 5 t and 6 t of their allowance.
#[test]
fn a_longer_plated_bolt_takes_less_coat() {
    let m10 = Thread::metric(10, None).unwrap();
    let thickest = |mm: f64, position| {
        let class = ToleranceClass::bolt(6, position);
        coat_room::iso_4042_thickest(m10, class, Length::from_mm(mm)).unwrap().map(|found| found.value.um())
    };
    use BoltPosition::{E, G};
    assert_eq!(
        [40.0, 50.0, 80.0, 100.0, 120.0, 150.0].map(|mm| thickest(mm, G)),
        [8.0, 8.0, 5.0, 5.0, 5.0, 5.0].map(Some)
    );
    assert_eq!([40.0, 80.0, 120.0].map(|mm| thickest(mm, E)), [15.0, 12.0, 10.0].map(Some));
    let g = ToleranceClass::bolt(6, G);
    assert!(coat_room::iso_4042_thickest(m10, g, Length::from_mm(151.0)).is_err());
    assert!(
        coat_room::iso_4042_thickest(m10, ToleranceClass::bolt(6, BoltPosition::H), Length::from_mm(40.0))
            .is_err()
    );
}

/// Evenly distributed numbers from 0 to 1, the same in every run (splitmix64).
struct Dice(u64);

impl Dice {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((mixed ^ (mixed >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    /// A standard normal number (Box and Muller).
    fn normal(&mut self) -> f64 {
        let (radius, turn) = (1.0 - self.next(), self.next());
        (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * turn).cos()
    }

    fn draw(&mut self, spread: Spread) -> f64 {
        match spread {
            Spread::Even(limits) => limits.min.mm() + self.next() * (limits.max - limits.min).mm(),
            Spread::Own(mean, deviation) => mean.mm() + self.normal() * deviation.mm(),
            Spread::Bell(limits) => loop {
                let at = 0.5 + self.normal() / chance::SIGMAS.value;
                if (0.0..=1.0).contains(&at) {
                    return limits.min.mm() + at * (limits.max - limits.min).mm();
                }
            },
        }
    }
}

/// The share that binds by convolution against a million pairs drawn, for bolts of every kind of spread;
/// four and a half standard errors of the draws are allowed.
#[test]
fn the_chance_of_binding_is_that_of_a_million_draws() {
    const PAIRS: u32 = 1_000_000;
    let m16 = Thread::metric(16, None).unwrap();
    let bolt = limits::bolt(m16, usual_bolt(m16)).unwrap().pitch;
    let um = Length::from_um;
    let coat = |min: f64, max: f64| limits::Limits { min: um(min), max: um(max) };
    let az = overtap::nut(m16, Allowance::Az).unwrap().limits.pitch;
    let standard = overtap::nut(m16, Allowance::Standard).unwrap().limits.pitch;
    let cases = [
        (Spread::Bell(bolt), Spread::Bell(az), Spread::Bell(coat(60.0, 140.0)), 4.0),
        (Spread::Bell(bolt), Spread::Bell(az), Spread::Even(coat(90.0, 150.0)), 4.0),
        (Spread::Even(bolt), Spread::Even(standard), Spread::Even(coat(20.0, 60.0)), 4.0),
        (Spread::Bell(bolt), Spread::Even(standard), Spread::Own(um(35.0), um(9.0)), 6.0),
        (Spread::Own(um(14_580.0), um(20.0)), Spread::Bell(az), Spread::Bell(coat(100.0, 170.0)), 4.0),
    ];
    let mut dice = Dice(12);
    for (bolt, nut, coat, growth) in cases {
        let ours = chance::of_binding(bolt, nut, coat, growth);
        let binds = |dice: &mut Dice| dice.draw(nut) - dice.draw(bolt) - growth * dice.draw(coat) < 0.0;
        let drawn = (0..PAIRS).filter(|_| binds(&mut dice)).count() as f64 / f64::from(PAIRS);
        let error = (ours * (1.0 - ours) / f64::from(PAIRS)).sqrt();
        assert!(ours > 1e-4 && ours < 0.9999, "{ours} says little");
        assert!(
            (ours - drawn).abs() < 4.5 * error + 2e-5,
            "{ours} against {drawn} of {bolt:?} {nut:?} {coat:?}"
        );
    }
}

proptest! {
    /// A thicker coat never binds less; where the worst corner goes together nothing binds.
    #[test]
    fn the_chance_of_binding_grows_with_the_coat(thread in any_thread(), thin in 0.0..150.0, more in 0.0..50.0) {
        let bolt = limits::bolt(thread, usual_bolt(thread)).unwrap();
        let over = if thread.is_metric() { Allowance::Az } else { Allowance::A563 };
        let nut = overtap::nut(thread, over).or_else(|_| overtap::nut(thread, Allowance::Standard)).unwrap().limits;
        let at = |um: f64| {
            let coat = limits::Limits { min: Length::from_um(0.8 * um), max: Length::from_um(um) };
            chance::of_binding(Spread::Bell(bolt.pitch), Spread::Bell(nut.pitch), Spread::Bell(coat), 4.0)
        };
        let (less, greater) = (at(thin), at(thin + more));
        prop_assert!((0.0..=1.0 + 1e-9).contains(&less) && less <= greater + 1e-4, "{less} {greater}");
        let fit = fit(bolt, Coat::even(Length::from_um(0.8 * thin), Length::from_um(thin)), nut);
        if fit.pitch.min.mm() >= 0.0 {
            prop_assert!(less < 1e-4, "{less}");
        }
    }
}

#[test]
fn a_pair_without_enough_thread_is_ruled_out_by_every_calculator_that_knows_it() {
    for (thread, allowance) in [("M5", "2 mm"), ("M8", "2 mm"), ("M12", "2 mm")] {
        for id in ["oversize-tap", "gauges", "thread-strength"] {
            let pairs = [("thread", thread), ("allowance", "own"), ("own_allowance", allowance)];
            let report = kettle_barrel::calculator::evaluate(id, pairs).unwrap();
            assert_eq!(report.verdict, Some(kettle_barrel::calculator::Verdict::RuledOut), "{id} {thread}");
            assert!(report.headline.starts_with("Not like this: "), "{id} {thread}: {}", report.headline);
        }
    }
}
