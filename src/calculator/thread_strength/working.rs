//! The working of the strength, in mm, MPa and N whatever the thread.

use super::{Input, Outcome};
use crate::quantity::{Area, Force, Length, Quantity, Shown, unit};
use crate::rule::bolt_and_nut::Model;
use crate::source::document;
use crate::thread::strength::factor::{self, EVEN, RIGID};
use crate::thread::strength::{MODEL, SHEAR_SHARE, nut_height, shear_area};
use crate::working::{Term, Working};

pub(super) fn working(input: &Input, outcome: &Outcome) -> Working {
    let Ok(model) = &outcome.model else { return Working::default() };
    let (pair, plain) = (&model.pair, &model.plain);
    let (joint, sizes, min) = (&pair.joint, pair.sizes, &pair.min);
    let mut working = Working::default();
    working.topic("Nut and threads");
    if let Some(converted) = model.converted {
        working
            .table("", "Rmn", model.nut_tensile.show(&unit::MPA, 0), converted.source)
            .said(format!("tensile strength of the nut's steel, from {}", converted.from.show()));
    }
    working
        .step(
            "height of the nut that carries",
            "m_eff",
            "m − 0.6 · n · hc",
            mm(joint.engagement),
            nut_height::EFFECTIVE,
        )
        .published("m", mm(model.body.height), model.body.height_source)
        .given("n", Shown::plain(f64::from(input.countersunk_ends), 0))
        .published("hc", mm(model.countersink), nut_height::COUNTERSINK);
    let p = Term::given("P", mm4(sizes.pitch));
    let engagement = Term::given("m_eff", mm(joint.engagement));
    let (d1, d2) = (sizes.nut_minor, sizes.bolt_pitch);
    let straight = model.straight;
    working
        .step(
            "shear area of the bolt's thread in a straight nut",
            "AS1",
            "π · m_eff / P · D1 · (P / 2 + (d2 − D1) / sqrt(3))",
            mm2(straight),
            shear_area::H28,
        )
        .term(engagement)
        .term(p)
        .given("D1", mm4(d1))
        .given("d2", mm4(d2));
    if joint.is_bell && !shear_area::opens_past(sizes) {
        working
        .step(
            "shear area of the bolt's thread in a nut that opens like a bell, Dm = 1.026 D1 over 0.4 of it",
            "ASb",
            "0.6 · AS1 + 0.4 · π · m_eff / P · 1.026 · D1 · (P / 2 + (d2 − 1.026 · D1) / sqrt(3))",
            mm2(min.bolt_area),
            MODEL,
        )
        .given("AS1", mm2(straight))
        .term(engagement)
        .term(p)
        .given("D1", mm4(d1))
        .given("d2", mm4(d2));
    } else {
        let (meaning, formula) = if joint.is_bell {
            (
                "shear area of the bolt's thread; over 0.4 of its height the nut opens past the bolt and carries nothing",
                "0.6 · AS1",
            )
        } else {
            ("shear area of the bolt's thread; so fine a thread is reckoned in a straight nut", "AS1")
        };
        working.step(meaning, "ASb", formula, mm2(min.bolt_area), MODEL).given("AS1", mm2(straight));
    }
    working
        .step(
            "shear area of the nut's thread",
            "ASn",
            "π · m_eff / P · d · (P / 2 + (d − D2) / sqrt(3))",
            mm2(min.nut_area),
            shear_area::H28,
        )
        .term(engagement)
        .term(p)
        .given("d", mm4(sizes.bolt_major))
        .given("D2", mm4(sizes.nut_pitch));
    let (rm, rm_source) = (joint.bolt_tensile.show(&unit::MPA, 1), model.bolt_tensile.1);
    let rmn = Term::given("Rmn", model.nut_tensile.show(&unit::MPA, 1));
    let (asb, asn) = (Term::given("ASb", mm2(min.bolt_area)), Term::given("ASn", mm2(min.nut_area)));
    working.topic("How nut and threads give way");
    working
        .step("strength ratio", "Rs", "Rmn · ASn / (Rm · ASb)", Shown::plain(min.ratio, 4), MODEL)
        .term(rmn)
        .term(asn)
        .known("Rm", rm, rm_source)
        .term(asb);
    factors(&mut working, model);
    let share = Shown::plain(SHEAR_SHARE, 1);
    let c1 = Term::given("C1", Shown::plain(min.c1, 4));
    working.topic("What breaks or strips first");
    working
        .step("the bolt breaks", "FBb", "Rm · As", newton(min.bolt_breaks), MODEL)
        .known("Rm", rm, rm_source)
        .given("As", mm2(joint.stress_area));
    working
        .step("the bolt's thread strips", "FSb", "k · Rm · ASb · C1 · C2", newton(min.bolt_strips), MODEL)
        .published("k", share, MODEL)
        .known("Rm", rm, rm_source)
        .term(asb)
        .term(c1)
        .given("C2", Shown::plain(min.c2, 4));
    working
        .step("the nut's thread strips", "FSn", "k · Rmn · ASn · C1 · C3", newton(min.nut_strips), MODEL)
        .published("k", share, MODEL)
        .term(rmn)
        .term(asn)
        .term(c1)
        .given("C3", Shown::plain(min.c3, 4));
    let (here, standard) = (min.strips().1, plain.min.strips().1);
    working
        .step(
            "stripping strength lost against a usual bolt in a standard nut",
            "loss",
            "F_standard − F",
            newton(model.lost),
            document::ARITHMETIC.computed("difference of two loads"),
        )
        .given("F_standard", newton(standard))
        .given("F", newton(here));
    working
}

/// C1, C2 and C3, by their polynomials inside the ranges and by their bounds at the ends.
fn factors(working: &mut Working, model: &Model) {
    let (joint, min) = (&model.pair.joint, &model.pair.min);
    let ratio = Shown::plain(min.ratio, 4);
    let c1 = Shown::plain(min.c1, 4);
    if joint.across_flats / joint.diameter >= RIGID {
        let meaning = "the nut is wide enough not to open: s/D of 1.8 or more";
        working.table(meaning, "C1", c1, factor::SOURCE);
    } else {
        working
            .step("the nut opens", "C1", "3.8 · s / D − (s / D)^2 − 2.6", c1, factor::SOURCE)
            .given("s", mm(joint.across_flats))
            .given("D", mm(joint.diameter));
    }
    let c2 = Shown::plain(min.c2, 4);
    if min.ratio <= EVEN {
        working.table("the bolt's threads bend: Rs of 1 or less", "C2", c2, factor::SOURCE);
    } else {
        let formula = "5.594 − 13.682 · Rs + 14.107 · Rs^2 − 6.057 · Rs^3 + 0.9353 · Rs^4";
        working.step("the bolt's threads bend", "C2", formula, c2, factor::SOURCE).given("Rs", ratio);
    }
    let c3 = Shown::plain(min.c3, 4);
    if min.ratio >= EVEN {
        working.table("the nut's threads bend: Rs of 1 or more", "C3", c3, factor::SOURCE);
    } else {
        let formula = "0.728 + 1.769 · Rs − 2.896 · Rs^2 + 1.296 · Rs^3";
        working.step("the nut's threads bend", "C3", formula, c3, factor::SOURCE).given("Rs", ratio);
    }
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
