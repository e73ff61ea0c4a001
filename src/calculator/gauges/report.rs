//! Arranges the answer.

use super::{Input, Outcome, working};
use crate::calculator::thread_fields::{self, Ruler, thickness};
use crate::calculator::{
    Caution, Figure, Finding, Mark, Note, Picture, Report, ScaleBand, ScaleMark, Section, Verdict,
};
use crate::quantity::Length;
use crate::source::{Sourced, common_practice, document};
use crate::table::asme_b94_9;
use crate::thread::fit::GROWTH;
use crate::thread::limits::Limits;
use crate::thread::overtap::Allowance;
use crate::thread::tap::{self, Making};
use crate::thread::{coat_room, gauge};

pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let ruler = Ruler::of(input.thread);
    let mut findings = vec![after_coat(input, outcome)];
    findings.extend(tap_found(outcome));
    findings.extend(hole(input, outcome, ruler));
    findings.extend(nut_coat(input, outcome));
    findings.extend(thread_fields::mating(input.thread, input.bolt_class, input.allowance));
    findings.extend(thread_fields::overlap(input.thread, input.bolt_class, input.allowance));
    let pitch = outcome.nut.limits.pitch;
    let mut headline = format!(
        "GO plug for the nut {}, NOT-GO {}, on the pitch diameter",
        ruler.size(pitch.min),
        ruler.size(pitch.max)
    );
    if let Ok(tap) = &outcome.tap {
        headline.push_str(&format!("; tap {}", tap.name.words(|length| ruler.size(length))));
    }
    headline.push('.');
    Report {
        verdict: Some(Verdict::of(&findings)),
        headline: thread_fields::not_like_this(&findings).unwrap_or(headline),
        figures: figures(input, outcome, ruler),
        sections: sections(input, outcome, ruler),
        findings: Finding::worst_first(findings),
        working: working::working(input, outcome, ruler),
        cautions: vec![Caution::StandardFirst],
        notes: notes(input),
        picture: Some(picture(input, outcome, ruler)),
    }
}

/// What the coated bolt is gauged with.
fn after_coat(input: &Input, outcome: &Outcome) -> Finding {
    let max = thickness(input.coat.max, input.coat_unit);
    let quarter = thickness(outcome.quarter, input.coat_unit);
    let basic = if input.thread.is_metric() { "6h" } else { "3A" };
    if input.coat.max.mm() <= outcome.quarter.mm() + 1e-9 {
        let text = format!("A coat of {max} stays within {quarter}: gauge the coated bolt with GO {basic}.");
        return Finding::new(Mark::Met, text, gauge::after_plating(input.thread));
    }
    if input.allowance == Allowance::Standard {
        let text = format!(
            "A coat of {max} passes {quarter}, a quarter of the allowance: the coated bolt does not pass GO \
             {basic}. Cut it smaller before the coat, or make room in the nut."
        );
        return Finding::new(Mark::Condition, text, gauge::after_plating(input.thread));
    }
    let text = format!(
        "A coat of {max} does not pass GO {basic}, and need not: the bolt goes into a wider nut. Try it \
         in its nuts, or in a ring gauge made to the nut's least sizes."
    );
    Finding::new(Mark::Note, text, GROWTH)
}

/// Whether a tap is known that leaves a margin.
fn tap_found(outcome: &Outcome) -> Option<Finding> {
    let refusal = outcome.tap.as_ref().err()?;
    Some(Finding::new(Mark::Note, format!("No tap is named: {refusal}."), refusal.source()))
}

/// Whether the hole leaves the nut's minor diameter within its plain gauges.
fn hole(input: &Input, outcome: &Outcome, ruler: Ruler) -> Option<Finding> {
    let Limits { min, max } = outcome.nut_before.minor;
    // The minor diameter of a formed thread is made by the forming, from a larger hole.
    if input.making == Making::Formed || !outcome.nut_before.stands() {
        return None;
    }
    let hole = outcome.hole.diameter;
    // A hundredth of a micrometre decides nothing.
    let rounding = Length::from_um(0.01);
    let source = outcome.nut.limits.minor_tolerance.source;
    let (hole_shown, min_shown, max_shown) = (ruler.size(hole), ruler.size(min), ruler.size(max));
    Some(if hole > max + rounding {
        let text = format!(
            "The hole of {hole_shown} lies above the plain NOT-GO plug of {max_shown} before the coat: drill it smaller, \
             {} to {max_shown}.",
            min_shown.digits()
        );
        Finding::new(Mark::Condition, text, source)
    } else if hole < min - rounding {
        let text = format!(
            "The hole of {hole_shown} lies below the plain GO plug of {min_shown}: drill it larger, {} to {max_shown}, or \
             the tap cuts its crests.",
            min_shown.digits()
        );
        Finding::new(Mark::Condition, text, source)
    } else {
        let text = format!(
            "The hole of {hole_shown} lies between the plain plugs, {} to {max_shown}.",
            min_shown.digits()
        );
        Finding::new(Mark::Met, text, source)
    })
}

/// Whether the coat inside the nut leaves it a tolerance.
fn nut_coat(input: &Input, outcome: &Outcome) -> Option<Finding> {
    if input.inside == 0.0 {
        return None;
    }
    let basis = gauge::BEFORE_COAT;
    Some(if outcome.nut_before.stands() {
        let text =
            "Gauge the nut before its coat to the limits before the coat, and with its own plugs afterwards.";
        Finding::new(Mark::Term, text, basis)
    } else {
        let text = "The coat inside the nut varies by more than its tolerance: tap the nut after its coat.";
        Finding::new(Mark::Bar, text, basis)
    })
}

fn figures(input: &Input, outcome: &Outcome, ruler: Ruler) -> Vec<Figure> {
    let nut = outcome.nut.limits;
    let mut figures = vec![
        Figure::one("", "GO plug for the nut, pitch diameter", ruler.size(nut.pitch.min)),
        Figure::one("", "NOT-GO plug for the nut, pitch diameter", ruler.size(nut.pitch.max)),
        Figure::one("", "Tap over size by", ruler.size(outcome.nut.allowance.value))
            .source(outcome.nut.allowance.source),
    ];
    figures.push(match &outcome.tap {
        Ok(tap) => Figure::words("Tap", tap.name.words(|length| ruler.size(length))).source(tap.source),
        Err(refusal) => Figure::words("Tap", refusal.to_string()).source(refusal.source()),
    });
    let hole = outcome.hole;
    let name = match (hole.name, input.making) {
        (Some(name), _) if hole.diameter == hole.standard.value => format!("Drill, {name}"),
        // The drill that is named makes the hole of a standard nut: it is not the one to take.
        (Some(name), _) => {
            let what = match outcome.nut_before.minor_larger > Length::ZERO {
                true => "room for the nut's own coat",
                false => "the allowance",
            };
            let standard = ruler.size(hole.standard.value);
            format!("Hole before the tap, larger than drill {name} ({standard}) by {what}")
        }
        (None, Making::Cut) => "Hole before the tap".to_owned(),
        (None, Making::Formed) => "Hole before the forming tap".to_owned(),
    };
    figures.push(Figure::one("", name, ruler.size(hole.diameter)).source(hole.standard.source));
    figures
}

fn range(symbol: &'static str, name: &'static str, limits: Limits, ruler: Ruler) -> Figure {
    Figure::range(symbol, name, ruler.size(limits.min), ruler.size(limits.max))
}

fn sections(input: &Input, outcome: &Outcome, ruler: Ruler) -> Vec<Section> {
    let one = |name: &'static str, length: Length| Figure::one("", name, ruler.size(length));
    let (bolt, nut, basic) = (outcome.bolt, outcome.nut.limits, outcome.basic);
    let mut sections = vec![
        Section {
            title: format!("Bolt {} before the coat", input.bolt_class).into(),
            figures: vec![
                one("GO ring, pitch diameter", bolt.pitch.max).source(bolt.deviation.source),
                one("NOT-GO ring, pitch diameter", bolt.pitch.min).source(bolt.pitch_tolerance.source),
                one("GO ring, minor diameter", bolt.minor_max),
                range("d", "Major diameter, plain", bolt.major, ruler).source(bolt.major_tolerance.source),
            ],
        },
        Section {
            title: "Bolt after the coat".into(),
            figures: vec![
                one("GO ring of basic size (6h, 3A), pitch diameter", basic.pitch.max)
                    .source(gauge::after_plating(input.thread)),
                Figure::one(
                    "",
                    "Thickest coat that passes it, a quarter of the allowance",
                    thickness(outcome.quarter, input.coat_unit),
                )
                .source(coat_room::quarter_source(input.thread)),
                one("Ring of the nut's minimum size, pitch diameter", nut.pitch.min),
                one("Ring of the nut's minimum size, minor diameter", nut.minor.min),
            ],
        },
        Section {
            title: "Nut as it is mated".into(),
            figures: vec![
                one("GO plug, pitch diameter", nut.pitch.min).source(nut.deviation.source),
                one("GO plug, major diameter", nut.major_min),
                one("NOT-GO plug, pitch diameter", nut.pitch.max).source(nut.pitch_tolerance.source),
                one("Plain GO plug, minor diameter", nut.minor.min),
                one("Plain NOT-GO plug, minor diameter", nut.minor.max).source(nut.minor_tolerance.source),
            ],
        },
    ];
    if !input.thread.is_metric() {
        let not_go = one("NOT-GO ring, as before the coat, pitch diameter", bolt.pitch.min);
        if let Some(after) = sections.get_mut(1) {
            after.figures.push(not_go.source(gauge::after_plating(input.thread)));
        }
    }
    if input.inside > 0.0 && outcome.nut_before.stands() {
        sections.push(Section {
            title: "Nut before its own coat".into(),
            figures: vec![
                range("D2", "Pitch diameter", outcome.nut_before.pitch, ruler).source(gauge::BEFORE_COAT),
                range("D1", "Minor diameter", outcome.nut_before.minor, ruler).source(gauge::BEFORE_COAT),
            ],
        });
    }
    if let Ok(tap) = &outcome.tap {
        sections.push(Section {
            title: "The tap".into(),
            figures: vec![
                range("", "Its pitch diameter", tap.pitch, ruler).source(tap.source),
                one("Room above it, for what it cuts larger", tap.above),
                one("Room below it, for its wear", tap.below),
                match input.making {
                    Making::Cut => one("What ground taps cut larger, up to", tap::CUTS_LARGER.value)
                        .source(tap::CUTS_LARGER.source),
                    Making::Formed => {
                        Figure::words("Its numbers", "Gn ends n steps of .0005 in above the basic size")
                            .source(asme_b94_9::FORMING_STEP)
                    }
                },
            ],
        });
    }
    sections.push(Section {
        title: "To keep its class and pass GO of basic size (6h, 3A) after the coat, cut the bolt to".into(),
        figures: match outcome.before {
            Some(before) => vec![
                range("d2", "Pitch diameter", before.pitch, ruler).source(gauge::BEFORE_COAT),
                range("d", "Major diameter", before.major, ruler).source(gauge::BEFORE_COAT),
            ],
            None => vec![
                Figure::words(
                    "Pitch diameter",
                    "the coat varies by more than the tolerance: no limits before it would do",
                )
                .source(gauge::BEFORE_COAT),
            ],
        },
    });
    let of_gauges = gauge::of_gauges(input.thread);
    sections.push(Section {
        title: "The gauges themselves".into(),
        figures: vec![Figure::words("Tolerance and wear", of_gauges.to_string()).source(of_gauges.source())],
    });
    sections
}

fn notes(input: &Input) -> Vec<Note> {
    let Sourced { value: turns, source: turns_source } = gauge::turns(input.thread);
    let Sourced { value: dispute, source: dispute_source } = gauge::dispute(input.thread);
    vec![
        Note::sourced(
            "Where only the nominal or the minimum thickness of a coat is known, take half as much again for the \
             maximum.",
            gauge::BEFORE_COAT,
        ),
        Note::sourced(
            "A hot-dip nut is coated as a blank and tapped afterwards, never tapped again; gauge it after tapping.",
            document::AS_NZS_1214.read("5.7"),
        ),
        Note::sourced(
            "The thread of a dipped bolt cannot be proved by stripping the zinc and gauging, for the bath dissolves \
             steel: gauge it before the bath.",
            document::AS_NZS_1214.read("6.1"),
        ),
        Note::sourced(
            "At the plater use GO rings worn within their limit: a new one is smaller than the upper limit of the \
             thread.",
            document::GAUGE_MAKERS_TEXT.read("gauging of coated threads"),
        ),
        Note::sourced(
            format!("A NOT-GO gauge may enter by hand, by no more than {turns} turns."),
            turns_source,
        ),
        Note::sourced(dispute, dispute_source),
        match input.making {
            Making::Cut => Note::sourced(
                "A tap cuts a little larger than it measures and wears smaller: prove the first nuts with both plugs.",
                tap::CUTS_LARGER.source,
            ),
            Making::Formed => Note::sourced(
                "What a forming tap presses springs back, and its minor diameter comes of the hole: prove the first nuts \
                 with both plugs and the plain ones.",
                common_practice("forming of threads"),
            ),
        },
        thread_fields::engagement(input.thread),
    ]
}

fn picture(input: &Input, outcome: &Outcome, ruler: Ruler) -> Picture {
    let band = |label: &'static str, limits: Limits| ScaleBand {
        label: label.into(),
        from: ruler.size(limits.min),
        to: ruler.size(limits.max),
        verdict: None,
    };
    let mut bands =
        vec![band("Bolt before the coat", outcome.bolt.pitch), band("Nut", outcome.nut.limits.pitch)];
    bands.extend(outcome.tap.as_ref().ok().map(|tap| band("Tap", tap.pitch)));
    Picture::Scale {
        title: format!("Pitch diameters of {}.", input.thread).into(),
        bands,
        marks: vec![ScaleMark { label: "Basic size".into(), at: ruler.size(input.thread.pitch_diameter()) }],
    }
}
