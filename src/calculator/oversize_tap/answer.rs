//! The figures, the working, the notes and the picture of the answer.

use super::{Input, Outcome, Way};
use crate::calculator::thread_fields::{Ruler, thickness};
use crate::calculator::{Figure, Note, Picture, Section, ThreadCorner};
use crate::quantity::{Area, Length, Quantity, Shown, Unit, unit};
use crate::source::{Source, document};
use crate::table::iso_10684_annex_a;
use crate::thread::fit::{self, Corner, Diameter};
use crate::thread::limits::Limits;
use crate::thread::{Thread, undersize};
use crate::working::Working;

const ADDITION: Source = document::ARITHMETIC.computed("sums and differences of limits");

pub(super) fn figures(input: &Input, outcome: &Outcome, ruler: Ruler) -> Vec<Figure> {
    let fit = &outcome.fit;
    let range = |symbol, name, limits: Limits| {
        Figure::range(symbol, name, ruler.size(limits.min), ruler.size(limits.max))
    };
    let nut = outcome.nut.limits;
    let mut figures = vec![
        range("D2", "Nut, pitch diameter", nut.pitch),
        range("D1", "Nut, minor diameter", nut.minor),
        Figure::one(
            "t_even",
            format!("Thickest even coat that assembles, set by the {}", fit.governs.name()),
            thickness(fit.thickest_even, input.coat_unit),
        ),
        Figure::one(
            "t_max",
            format!(
                "Thickest coat that assembles with {} unevenness",
                Shown::percent(input.coat.unevenness, 0)
            ),
            thickness(fit.thickest, input.coat_unit),
        ),
        Figure::range(
            "",
            "Clearance on the pitch diameter, coated: worst to best corner",
            ruler.size(fit.pitch.min),
            ruler.size(fit.pitch.max),
        ),
    ];
    figures.push(match input.way {
        Way::Over => Figure::one(
            "",
            "Thread left in the nut at least material, of what a standard nut has",
            Shown::percent(outcome.overlap / outcome.standard_overlap, 0),
        ),
        Way::Under => Figure::one(
            "As",
            format!(
                "Stress area of the bolt cut under, in place of {}",
                area(outcome.standard_area, input.thread)
            ),
            area(outcome.stress_area, input.thread),
        )
        .source(undersize::STRESS_AREA),
    });
    figures
}

pub(super) fn sections(input: &Input, outcome: &Outcome, ruler: Ruler) -> Vec<Section> {
    let fit = &outcome.fit;
    let range = |symbol, name, limits: Limits| {
        Figure::range(symbol, name, ruler.size(limits.min), ruler.size(limits.max))
    };
    let one = |symbol, name, length| Figure::one(symbol, name, ruler.size(length));
    let (nut, bare, coated) = (outcome.nut.limits, fit.bare, fit.coated);
    let mut sections = vec![
        Section {
            title: format!("Nut {}: tap and gauge to", nut_class(input)).into(),
            figures: vec![
                one("D", "Major diameter, least", nut.major_min),
                range("D2", "Pitch diameter", nut.pitch).source(nut.pitch_tolerance.source),
                range("D1", "Minor diameter", nut.minor).source(nut.minor_tolerance.source),
                one("EI", "Above the basic size", nut.deviation.value).source(nut.deviation.source),
            ],
        },
        Section {
            title: format!("Bolt {} before the coat", input.bolt_class).into(),
            figures: vec![
                range("d", "Major diameter", bare.major).source(bare.major_tolerance.source),
                range("d2", "Pitch diameter", bare.pitch).source(bare.pitch_tolerance.source),
                one("d1", "Minor diameter, greatest", bare.minor_max),
                one("es", "Below the basic size", bare.allowance()).source(bare.deviation.source),
            ],
        },
        Section {
            title: "Bolt after the coat".into(),
            figures: vec![
                range("d", "Major diameter", coated.major),
                range("d2", "Pitch diameter", coated.pitch),
                one("d1", "Minor diameter, greatest", coated.minor_max),
            ],
        },
        Section {
            title: "Clearance of the coated bolt in the nut".into(),
            figures: vec![
                range("", "Pitch diameter, worst to best corner", fit.pitch),
                one("", "Pitch diameter, everything in the middle", fit.pitch_nominal),
                one("", "Major diameter, worst corner", fit.major_min),
                one("", "Minor diameter, worst corner", fit.minor_min),
            ],
        },
        Section {
            title: "What it costs".into(),
            figures: vec![
                Figure::one("As", "Stress area of the bolt", area(outcome.stress_area, input.thread)),
                Figure::one(
                    "",
                    "Stress area of a bolt of standard size",
                    area(outcome.standard_area, input.thread),
                )
                .source(input.thread.stress_area_source()),
                Figure::one(
                    "",
                    "Depth of thread in contact at least material, of 5/8 H",
                    Shown::percent(outcome.overlap, 0),
                ),
                Figure::one(
                    "",
                    "The same with a standard bolt and nut",
                    Shown::percent(outcome.standard_overlap, 0),
                ),
            ],
        },
    ];
    if input.way == Way::Over {
        sections.extend(reduced_loads(input));
    }
    sections
}

/// The loads that ISO 10684 lowers for the two smallest sizes.
fn reduced_loads(input: &Input) -> Option<Section> {
    let (_, coarse) = input.thread.metric_key()?;
    let rows = iso_10684_annex_a::rows(input.thread.diameter().mm());
    let figures = rows
        .iter()
        .map(|row| {
            let name = format!("Proof load of the {} nut of class {}", input.thread, row.class.name());
            Figure::one("", name, row.proof_load.show(&unit::NEWTON, 0)).source(iso_10684_annex_a::SOURCE)
        })
        .collect();
    (coarse && !rows.is_empty())
        .then(|| Section { title: "Reduced loads of ISO 10684, Annex A, for 6AZ and 6AX".into(), figures })
}

/// How the nut is called.
fn nut_class(input: &Input) -> String {
    let standard = if input.thread.is_metric() { "6H" } else { "2B" };
    match input.allowance {
        crate::thread::overtap::Allowance::Own(_) => format!("{standard} with own allowance"),
        crate::thread::overtap::Allowance::Standard => standard.to_owned(),
        other => other.to_string(),
    }
}

pub(super) fn working(input: &Input, outcome: &Outcome, ruler: Ruler) -> Working {
    let fit = &outcome.fit;
    let (nut, bare) = (fit.nut, fit.bare);
    let growth = fit::GROWTH;
    let widest = input.coat.max * (1.0 + input.coat.unevenness);
    let mut working = Working::default();
    working
        .step(
            "greatest pitch diameter of the bolt before the coat",
            "d2max",
            "d2 − a",
            ruler.size(bare.pitch.max),
            ADDITION,
        )
        .given("d2", ruler.size(input.thread.pitch_diameter()))
        .published("a", ruler.exact(bare.allowance()), bare.deviation.source);
    working
        .step("least pitch diameter of the nut", "D2min", "D2 + EI", ruler.size(nut.pitch.min), ADDITION)
        .given("D2", ruler.size(input.thread.pitch_diameter()))
        .published("EI", ruler.exact(nut.deviation.value), nut.deviation.source);
    working
        .step(
            "greatest pitch diameter of the nut",
            "D2max",
            "D2min + TD2",
            ruler.size(nut.pitch.max),
            ADDITION,
        )
        .given("D2min", ruler.size(nut.pitch.min))
        .published("TD2", ruler.exact(nut.pitch_tolerance.value), nut.pitch_tolerance.source);
    working
        .step("greatest coat on the flanks", "t_flank", "t · (1 + u)", ruler.fine(widest), ADDITION)
        .given("t", ruler.fine(input.coat.max))
        .given("u", Shown::plain(input.coat.unevenness, 3));
    working
        .step(
            "greatest pitch diameter of the bolt after the coat",
            "d2c",
            "d2max + 4 · t_flank",
            ruler.size(fit.coated.pitch.max),
            growth,
        )
        .given("d2max", ruler.size(bare.pitch.max))
        .given("t_flank", ruler.fine(widest));
    working
        .step(
            "greatest major diameter of the bolt after the coat",
            "d_c",
            "d_max + 2 · t",
            ruler.size(fit.coated.major.max),
            growth,
        )
        .given("d_max", ruler.size(bare.major.max))
        .given("t", ruler.fine(input.coat.max));
    working
        .step(
            "clearance on the pitch diameter at the worst corner",
            "c2",
            "D2min − d2c",
            ruler.size(fit.pitch.min),
            ADDITION,
        )
        .given("D2min", ruler.size(nut.pitch.min))
        .given("d2c", ruler.size(fit.coated.pitch.max));
    thickest(&mut working, outcome, ruler);
    if input.way == Way::Under {
        undercut_area(&mut working, input, outcome, ruler);
    }
    working
}

/// The thickest even coat, on the diameter that sets it.
fn thickest(working: &mut Working, outcome: &Outcome, ruler: Ruler) {
    let fit = &outcome.fit;
    let (formula, nut, bolt) = match fit.governs {
        Diameter::Pitch => {
            ("(D2min − d2max) / 4", ("D2min", fit.nut.pitch.min), ("d2max", fit.bare.pitch.max))
        }
        Diameter::Major => {
            ("(D_min − d_max) / 2", ("D_min", fit.nut.major_min), ("d_max", fit.bare.major.max))
        }
        Diameter::Minor => {
            ("(D1min − d1max) / 2", ("D1min", fit.nut.minor.min), ("d1max", fit.bare.minor_max))
        }
    };
    working
        .step("", "t_even", formula, ruler.fine(fit.thickest_even), fit::GROWTH)
        .said(format!("thickest even coat, set by the {}", fit.governs.name()))
        .given(nut.0, ruler.size(nut.1))
        .given(bolt.0, ruler.size(bolt.1));
}

fn undercut_area(working: &mut Working, input: &Input, outcome: &Outcome, ruler: Ruler) {
    let Ok(bolt) = undersize::bolt(input.thread) else { return };
    working
        .step(
            "stress area of the bolt cut under",
            "As",
            "π / 4 · ((d2az + d3az) / 2)^2",
            area(outcome.stress_area, input.thread),
            undersize::STRESS_AREA,
        )
        .given("d2az", ruler.size(bolt.pitch_diameter))
        .given("d3az", ruler.size(bolt.root_diameter));
}

pub(super) fn notes(input: &Input) -> Vec<Note> {
    let mut notes = vec![
        Note::sourced(
            "A coat t on flanks of 60° widens the pitch diameter by 4 t, the major and minor diameter by 2 t.",
            fit::GROWTH,
        ),
        Note::sourced(
            "The nut for a hot-dip bolt is coated as a blank and tapped afterwards, never tapped again; its \
             bare thread is protected by the zinc of the bolt.",
            document::AS_NZS_1214.read("5.7"),
        ),
        Note::sourced(
            "6AZ and 6AX nuts must not be put on 6az bolts: too little thread is left, and it may strip.",
            document::ISO_965_5.read("clause 1"),
        ),
        Note::sourced(
            "How unevenly zinc lies on a thread was not found in print; measure your own parts and replace \
             the default.",
            fit::DEFAULT_UNEVENNESS.source,
        ),
    ];
    if input.thread.is_metric() {
        notes.push(Note::sourced(
            "M8 and M10 carry reduced loads with 6AZ, 6AX or 6az; from M12 up the full loads hold.",
            document::ISO_10684.read("clause 7 and Annex A"),
        ));
    }
    notes
}

pub(super) fn picture(input: &Input, outcome: &Outcome) -> Picture {
    let corners = fit::corners(outcome.fit.bare, input.coat, outcome.fit.nut);
    let labels = ["worst", "nominal", "best"];
    Picture::ThreadFit {
        title: format!(
            "{} bolt {} with its coat in the nut {}.",
            input.thread,
            input.bolt_class,
            nut_class(input)
        )
        .into(),
        pitch: input.thread.pitch().mm(),
        corners: labels.into_iter().zip(corners).map(|(label, corner)| drawn(label, corner)).collect(),
    }
}

fn drawn(label: &'static str, corner: Corner) -> ThreadCorner {
    let mm = |lengths: [Length; 3]| lengths.map(Length::mm);
    let [crest, coat, root] = mm(corner.coat);
    ThreadCorner {
        label,
        bolt: mm(corner.bolt),
        coat,
        crest,
        root,
        nut: mm(corner.nut),
        room: mm(corner.room),
    }
}

/// A stress area in the unit and digits of the thread's standard.
pub(super) fn area(area: Area, thread: Thread) -> Shown {
    let (unit, decimals): (&'static Unit, u8) =
        if thread.is_metric() { (&unit::MM2, 1) } else { (&unit::IN2, 4) };
    area.show(unit, decimals)
}
