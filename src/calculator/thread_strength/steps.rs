//! The working of the strength, in mm, MPa and N whatever the thread.

use super::{Input, Outcome};
use crate::quantity::{Area, Force, Length, Quantity, Shown, unit};
use crate::source::{Source, document};
use crate::thread::strength::factor::{self, EVEN, RIGID};
use crate::thread::strength::{MODEL, SHEAR_SHARE, nut_height, shear_area};
use crate::working::{Step, Term};

pub(super) fn working(input: &Input, outcome: &Outcome) -> Vec<Step> {
    let (pair, plain) = (&outcome.pair, &outcome.plain);
    let (joint, sizes, least) = (&pair.joint, pair.sizes, &pair.least);
    let mut steps = Vec::with_capacity(14);
    if let Some(converted) = outcome.converted {
        steps.push(Step::from_table(
            format!("tensile strength of the nut's steel, from {}", converted.from.show()),
            "Rmn",
            outcome.nut_tensile.show(&unit::MPA, 0),
            converted.source,
        ));
    }
    steps.push(step(
        "height of the nut that carries",
        "m_eff",
        "m − 0.6 · n · hc",
        vec![
            Term::published("m", mm(outcome.body.height), outcome.body.height_source),
            Term::given("n", Shown::plain(f64::from(input.countersunk_ends), 0)),
            Term::published("hc", mm(outcome.countersink), nut_height::COUNTERSINK),
        ],
        mm(joint.engagement),
        nut_height::EFFECTIVE,
    ));
    let p = Term::given("P", mm4(sizes.pitch));
    let engagement = Term::given("m_eff", mm(joint.engagement));
    let (d1, d2) = (sizes.nut_minor, sizes.bolt_pitch);
    let straight = outcome.straight;
    steps.push(step(
        "shear area of the bolt's thread in a straight nut",
        "AS1",
        "π · m_eff / P · D1 · (P / 2 + (d2 − D1) / sqrt(3))",
        vec![engagement, p, Term::given("D1", mm4(d1)), Term::given("d2", mm4(d2))],
        mm2(straight),
        shear_area::H28,
    ));
    steps.push(step(
        "shear area of the bolt's thread in a nut that opens like a bell, Dm = 1.026 D1 over 0.4 of it",
        "ASb",
        "0.6 · AS1 + 0.4 · π · m_eff / P · 1.026 · D1 · (P / 2 + (d2 − 1.026 · D1) / sqrt(3))",
        vec![
            Term::given("AS1", mm2(straight)),
            engagement,
            p,
            Term::given("D1", mm4(d1)),
            Term::given("d2", mm4(d2)),
        ],
        mm2(least.bolt_area),
        MODEL,
    ));
    steps.push(step(
        "shear area of the nut's thread",
        "ASn",
        "π · m_eff / P · d · (P / 2 + (d − D2) / sqrt(3))",
        vec![engagement, p, Term::given("d", mm4(sizes.bolt_major)), Term::given("D2", mm4(sizes.nut_pitch))],
        mm2(least.nut_area),
        shear_area::H28,
    ));
    let rm =
        Term { symbol: "Rm", value: joint.bolt_tensile.show(&unit::MPA, 1), source: outcome.bolt_tensile.1 };
    let rmn = Term::given("Rmn", outcome.nut_tensile.show(&unit::MPA, 1));
    let (asb, asn) = (Term::given("ASb", mm2(least.bolt_area)), Term::given("ASn", mm2(least.nut_area)));
    steps.push(step(
        "strength ratio",
        "Rs",
        "Rmn · ASn / (Rm · ASb)",
        vec![rmn, asn, rm, asb],
        Shown::plain(least.ratio, 4),
        MODEL,
    ));
    steps.extend(factors(outcome));
    let share = Term::published("k", Shown::plain(SHEAR_SHARE, 1), MODEL);
    let c1 = Term::given("C1", Shown::plain(least.c1, 4));
    steps.push(step(
        "the bolt breaks",
        "FBb",
        "Rm · As",
        vec![rm, Term::given("As", mm2(joint.stress_area))],
        newton(least.bolt_breaks),
        MODEL,
    ));
    steps.push(step(
        "the bolt's thread strips",
        "FSb",
        "k · Rm · ASb · C1 · C2",
        vec![share, rm, asb, c1, Term::given("C2", Shown::plain(least.c2, 4))],
        newton(least.bolt_strips),
        MODEL,
    ));
    steps.push(step(
        "the nut's thread strips",
        "FSn",
        "k · Rmn · ASn · C1 · C3",
        vec![share, rmn, asn, c1, Term::given("C3", Shown::plain(least.c3, 4))],
        newton(least.nut_strips),
        MODEL,
    ));
    let (here, standard) = (least.strips().1, plain.least.strips().1);
    steps.push(step(
        "stripping strength lost against a usual bolt in a standard nut",
        "loss",
        "F_standard − F",
        vec![Term::given("F_standard", newton(standard)), Term::given("F", newton(here))],
        newton(outcome.lost),
        document::ARITHMETIC.computed("difference of two loads"),
    ));
    steps
}

/// C1, C2 and C3, by their polynomials inside the ranges and by their bounds at the ends.
fn factors(outcome: &Outcome) -> Vec<Step> {
    let (joint, least) = (&outcome.pair.joint, &outcome.pair.least);
    let ratio = Term::given("Rs", Shown::plain(least.ratio, 4));
    let bound = |meaning: &'static str, symbol, value| {
        Step::from_table(meaning, symbol, Shown::plain(value, 4), factor::SOURCE)
    };
    let c1 = if joint.across_flats.mm() / joint.diameter.mm() >= RIGID {
        bound("the nut is wide enough not to open: s/D of 1.8 or more", "C1", least.c1)
    } else {
        step(
            "the nut opens",
            "C1",
            "3.8 · s / D − (s / D)^2 − 2.6",
            vec![Term::given("s", mm(joint.across_flats)), Term::given("D", mm(joint.diameter))],
            Shown::plain(least.c1, 4),
            factor::SOURCE,
        )
    };
    let c2 = if least.ratio <= EVEN {
        bound("the bolt's threads bend: Rs of 1 or less", "C2", least.c2)
    } else {
        step(
            "the bolt's threads bend",
            "C2",
            "5.594 − 13.682 · Rs + 14.107 · Rs^2 − 6.057 · Rs^3 + 0.9353 · Rs^4",
            vec![ratio],
            Shown::plain(least.c2, 4),
            factor::SOURCE,
        )
    };
    let c3 = if least.ratio >= EVEN {
        bound("the nut's threads bend: Rs of 1 or more", "C3", least.c3)
    } else {
        step(
            "the nut's threads bend",
            "C3",
            "0.728 + 1.769 · Rs − 2.896 · Rs^2 + 1.296 · Rs^3",
            vec![ratio],
            Shown::plain(least.c3, 4),
            factor::SOURCE,
        )
    };
    vec![c1, c2, c3]
}

fn step(
    meaning: &'static str,
    symbol: &'static str,
    formula: &'static str,
    terms: Vec<Term>,
    result: Shown,
    source: Source,
) -> Step {
    Step { meaning: meaning.into(), symbol, formula, terms, result, source }
}

fn mm(length: Length) -> Shown {
    length.show(&unit::MM, 3)
}

/// One more place, which inch sizes need.
fn mm4(length: Length) -> Shown {
    length.show(&unit::MM, 4)
}

fn mm2(area: Area) -> Shown {
    area.show(&unit::MM2, 2)
}

fn newton(force: Force) -> Shown {
    force.show(&unit::NEWTON, 0)
}
