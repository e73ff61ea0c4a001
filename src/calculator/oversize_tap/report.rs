//! The outcome arranged into a report.

use super::{Input, Outcome, Sizes, Way, working};
use crate::calculator::thread_fields::{self, Ruler, thickness};
use crate::calculator::{Caution, Figure, Finding, Note, Picture, Report, Section, Verdict};
use crate::quantity::{Quantity, Shown, unit};
use crate::source::document;
use crate::table::iso_10684_annex_a;
use crate::thread::chance::SIGMAS;
use crate::thread::fit::{self, Assembly};
use crate::thread::limits::Limits;
use crate::thread::overtap::Allowance;
use crate::thread::undersize;

mod finding;

/// The report.
pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let ruler = Ruler::of(input.thread);
    let findings = finding::all(input, outcome);
    Report {
        verdict: Some(Verdict::of(&findings)),
        headline: headline(input, outcome, &findings, ruler),
        figures: figures(input, outcome, ruler),
        sections: sections(input, outcome, ruler),
        findings,
        working: working::working(input, outcome, ruler),
        cautions: vec![Caution::StandardFirst],
        notes: notes(input),
        picture: Some(picture(input, outcome)),
    }
}

/// What to tap or cut to; of a pair that is ruled out, why it is, and no advice.
fn headline(input: &Input, outcome: &Outcome, findings: &[Finding], ruler: Ruler) -> String {
    if let Some(told) = thread_fields::not_like_this(findings) {
        return told;
    }
    let thickest = thickness(outcome.fit.worst.thickest_even, input.coat_unit);
    let pitch = outcome.nut.limits.pitch;
    let (min, max) = (ruler.size(pitch.min).digits(), ruler.size(pitch.max));
    let what = match input.way {
        Way::Over => format!("Tap the {} nut to a pitch diameter of {min} to {max}", input.thread),
        Way::Under => {
            let bolt = outcome.fit.bare.pitch;
            format!(
                "Cut the {} bolt to a pitch diameter of {} to {} before the coat",
                input.thread,
                ruler.size(bolt.min).digits(),
                ruler.size(bolt.max)
            )
        }
    };
    let goes = match outcome.fit.assembly {
        Assembly::Assembles => "goes together",
        Assembly::OnlyEven => "goes together if it is even",
        Assembly::Binds => "does not always go together",
    };
    format!("{what}; the coat stated {goes}. An even coat of at most {thickest} assembles.")
}

fn figures(input: &Input, outcome: &Outcome, ruler: Ruler) -> Vec<Figure> {
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
            format!("Thickest even coat that assembles, set by the {}", fit.worst.governs.name()),
            thickness(fit.worst.thickest_even, input.coat_unit),
        ),
        Figure::one(
            "t_max",
            format!(
                "Thickest coat that assembles with {} unevenness",
                Shown::percent(input.coat.unevenness, 0)
            ),
            thickness(fit.worst.thickest, input.coat_unit),
        ),
        Figure::range(
            "",
            "Clearance on the pitch diameter, coated: worst to best corner",
            ruler.size(fit.pitch.min),
            ruler.size(fit.pitch.max),
        ),
    ];
    let spread = match input.sizes {
        Sizes::Bell => "Pairs that bind, if sizes and coat are spread like a bell over their limits",
        Sizes::Even => "Pairs that bind, if sizes and coat are spread evenly over their limits",
        Sizes::Own { .. } => "Pairs that bind, by the standard deviations given",
    };
    let binding = Figure::one("", spread, Shown::percent(outcome.chance, 2));
    figures.push(match input.sizes {
        Sizes::Bell => binding.source(SIGMAS.source),
        _ => binding.source(document::OWN.computed("spread of sizes and coat")),
    });
    figures.push(match input.way {
        Way::Over => Figure::one(
            "",
            "Thread left in the nut at least material, of what a standard nut has",
            Shown::percent(outcome.overlap / outcome.standard_overlap, 0),
        ),
        Way::Under => Figure::one(
            "As",
            format!("Stress area of the bolt cut under, in place of {}", ruler.area(outcome.standard_area)),
            ruler.area(outcome.stress_area),
        )
        .source(undersize::STRESS_AREA),
    });
    figures
}

fn sections(input: &Input, outcome: &Outcome, ruler: Ruler) -> Vec<Section> {
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
                one("D", "Major diameter, minimum", nut.major_min),
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
                one("d1", "Minor diameter, maximum", bare.minor_max),
                one("es", "Below the basic size", bare.allowance()).source(bare.deviation.source),
            ],
        },
        Section {
            title: "Bolt after the coat".into(),
            figures: vec![
                range("d", "Major diameter", coated.major),
                range("d2", "Pitch diameter", coated.pitch),
                one("d1", "Minor diameter, maximum", coated.minor_max),
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
                Figure::one("As", "Stress area of the bolt", ruler.area(outcome.stress_area)),
                Figure::one("", "Stress area of a bolt of standard size", ruler.area(outcome.standard_area))
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
        Allowance::Own(_) => format!("{standard} with own allowance"),
        Allowance::Standard => standard.to_owned(),
        other => other.to_string(),
    }
}

fn notes(input: &Input) -> Vec<Note> {
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
    notes.push(thread_fields::engagement(input.thread));
    if input.thread.is_metric() {
        notes.push(Note::sourced(
            "M8 and M10 carry reduced loads with 6AZ, 6AX or 6az; from M12 up the full loads hold.",
            document::ISO_10684.read("clause 7 and Annex A"),
        ));
    }
    notes
}

fn picture(input: &Input, outcome: &Outcome) -> Picture {
    let title =
        format!("{} bolt {} with its coat in the nut {}.", input.thread, input.bolt_class, nut_class(input));
    let corners = fit::corners(outcome.fit.bare, input.coat, outcome.fit.nut);
    Picture::thread_fit(title, input.thread.pitch(), &corners)
}
