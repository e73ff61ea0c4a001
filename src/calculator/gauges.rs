//! Gauges and taps: what to gauge before and after the coat, which tap to order, which hole to make.

use super::thread_fields::{self, Ruler, thickness};
use super::{
    About, Calculator, Caution, Example, FieldAbout as Field, Figure, Finding, Mark, Missed, Note, Picture,
    Problem, Reader, Report, ScaleBand, ScaleMark, Section, Verdict,
};
use crate::quantity::{Length, Shown, Unit};
use crate::source::document;
use crate::table::Refusal;
use crate::thread::fit::{Coat, GROWTH};
use crate::thread::gauge::{self, BeforeCoat};
use crate::thread::limits::{self, BoltLimits, Limits};
use crate::thread::overtap::{self, Allowance, Nut};
use crate::thread::{Thread, ToleranceClass, coat_room, tap};
use crate::working::Working;

/// The calculator.
#[derive(Debug)]
pub struct Gauges;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// The thread.
    pub thread: Thread,
    /// The class of the bolt before its coat.
    pub bolt_class: ToleranceClass,
    /// How the nut is tapped.
    pub allowance: Allowance,
    /// The coat.
    pub coat: Coat,
    /// The unit in which coats are shown.
    pub coat_unit: &'static Unit,
}

/// What it finds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    /// The bolt before its coat.
    pub bolt: BoltLimits,
    /// The nut.
    pub nut: Nut,
    /// The thread without allowance, 6h or 3A.
    pub basic: BoltLimits,
    /// The thickest coat after which the bolt still passes a GO gauge of basic size.
    pub quarter: Length,
    /// What to cut the bolt to so that the coated thread lies within 6h or 3A.
    pub before: Option<BeforeCoat>,
    /// H numbers of inch taps inside the nut's limits.
    pub h_numbers: Option<(u32, u32)>,
}

static FIELDS: [Field; 6] = [
    thread_fields::THREAD.about,
    thread_fields::BOLT_CLASS.about,
    thread_fields::ALLOWANCE.about,
    thread_fields::OWN_ALLOWANCE.about,
    thread_fields::COAT_MIN.about,
    thread_fields::COAT_MAX.about,
];

impl Calculator for Gauges {
    const ABOUT: About = About {
        id: "gauges",
        title: "Gauges and taps",
        answers: "Gives GO and NOT-GO limits before and after the coat, the tap to order and the hole before it.",
        fields: &FIELDS,
        examples: &[
            Example { title: "M16 hot-dip, nut 6AZ", pairs: &[("thread", "M16")] },
            Example {
                title: "1/2-13 UNC, nut tapped to ASTM A563: H number of the tap",
                pairs: &[("thread", "1/2-13 UNC-2A"), ("coat_least", "2 mil"), ("coat_greatest", "3 mil")],
            },
            Example {
                title: "M12 plated 5 to 8 µm, standard nut: 6h after the coat",
                pairs: &[
                    ("thread", "M12"),
                    ("allowance", "standard"),
                    ("coat_least", "5"),
                    ("coat_greatest", "8"),
                ],
            },
        ],
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        reader.by_name(|reader| {
            let bolt = thread_fields::read_bolt(reader);
            let allowance = thread_fields::read_allowance(reader, bolt.map(|(thread, _)| thread));
            let coat = thread_fields::read_even_coat(reader);
            let (thread, bolt_class) = bolt.ok()?;
            let (coat, coat_unit) = coat.ok()?;
            Some(Input { thread, bolt_class, allowance: allowance.ok()?, coat, coat_unit })
        })
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let refused = |name: &'static str| {
            let label = FIELDS.iter().find(|field| field.key == name).map_or("", |field| field.label);
            move |refusal: Refusal| Problem::refused(name, label, refusal)
        };
        let thread = input.thread;
        let bolt = limits::bolt(thread, input.bolt_class).map_err(refused("bolt_class"))?;
        let nut = overtap::nut(thread, input.allowance).map_err(refused("allowance"))?;
        let basic = gauge::basic(thread).map_err(refused("thread"))?;
        let quarter = coat_room::quarter(thread, input.bolt_class).map_err(refused("bolt_class"))?;
        let before = gauge::before_coat(basic.major, basic.pitch, input.coat);
        let inch = !thread.is_metric();
        let h_numbers = inch.then(|| tap::h_numbers(thread.pitch_diameter(), nut.limits.pitch)).flatten();
        Ok(Outcome { bolt, nut, basic, quarter, before, h_numbers })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        let ruler = Ruler::of(input.thread);
        let findings = vec![after_coat(input, outcome)];
        let pitch = outcome.nut.limits.pitch;
        let mut headline = format!(
            "GO plug for the nut {}, NOT-GO {}, on the pitch diameter",
            ruler.size(pitch.min),
            ruler.size(pitch.max)
        );
        if let Some((first, last)) = outcome.h_numbers {
            headline.push_str(&format!("; taps H{first} to H{last}"));
        }
        headline.push('.');
        Report {
            verdict: Some(Verdict::of(&findings)),
            headline,
            figures: figures(outcome, ruler),
            sections: sections(input, outcome, ruler),
            findings,
            working: working(input, outcome, ruler),
            cautions: vec![Caution::StandardFirst],
            notes: notes(input),
            picture: Some(picture(input, outcome, ruler)),
        }
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
        "A coat of {max} does not pass GO {basic}, and need not: the bolt goes into a nut tapped over. Try it \
         in its nuts, or in a ring gauge made to the nut's least sizes."
    );
    Finding::new(Mark::Note, text, GROWTH)
}

fn figures(outcome: &Outcome, ruler: Ruler) -> Vec<Figure> {
    let nut = outcome.nut.limits;
    let mut figures = vec![
        Figure::one("", "GO plug for the nut, pitch diameter", ruler.size(nut.pitch.min)),
        Figure::one("", "NOT-GO plug for the nut, pitch diameter", ruler.size(nut.pitch.max)),
        range("", "Hole before tapping", nut.minor, ruler).source(nut.minor_tolerance.source),
        Figure::one("", "Tap over size by", ruler.size(outcome.nut.allowance.value))
            .source(outcome.nut.allowance.source),
    ];
    if let Some((first, last)) = outcome.h_numbers {
        figures.push(
            Figure::words(
                "Inch taps whose band lies inside the nut's limits",
                format!("H{first} to H{last}"),
            )
            .source(tap::STEP.source),
        );
    }
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
                one("Ring of the nut's least size, pitch diameter", nut.pitch.min),
                one("Ring of the nut's least size, minor diameter", nut.minor.min),
            ],
        },
        Section {
            title: "Nut, after tapping".into(),
            figures: vec![
                one("GO plug, pitch diameter", nut.pitch.min).source(nut.deviation.source),
                one("GO plug, major diameter", nut.major_min),
                one("NOT-GO plug, pitch diameter", nut.pitch.max).source(nut.pitch_tolerance.source),
                one("Plain GO plug, minor diameter", nut.minor.min),
                one("Plain NOT-GO plug, minor diameter", nut.minor.max).source(nut.minor_tolerance.source),
            ],
        },
    ];
    sections.push(Section {
        title: "To end within 6h or 3A after the coat, cut the bolt to".into(),
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
    if let Some((first, last)) = outcome.h_numbers {
        let band = |number| tap::h_limits(input.thread.pitch_diameter(), number);
        sections.push(Section {
            title: "Pitch diameter of the taps".into(),
            figures: vec![
                range("", "The smallest tap", band(first), ruler).source(tap::STEP.source),
                range("", "The largest tap", band(last), ruler).source(tap::STEP.source),
            ],
        });
    }
    sections
}

fn working(input: &Input, outcome: &Outcome, ruler: Ruler) -> Working {
    let (nut, bolt) = (outcome.nut.limits, outcome.bolt);
    let sum = document::ARITHMETIC.computed("sums and differences of limits");
    let mut working = Working::default();
    working
        .step("GO plug for the nut", "D2min", "D2 + EI", ruler.size(nut.pitch.min), sum)
        .given("D2", ruler.size(input.thread.pitch_diameter()))
        .published("EI", ruler.exact(nut.deviation.value), nut.deviation.source);
    working
        .step(
            "thickest coat that passes a GO ring of basic size",
            "t_go",
            "a / 4",
            ruler.fine(outcome.quarter),
            coat_room::quarter_source(input.thread),
        )
        .published("a", ruler.exact(bolt.allowance()), bolt.deviation.source);
    if let Some(before) = outcome.before {
        working
            .step(
                "greatest pitch diameter before the coat",
                "d2before",
                "d2after − 4 · t",
                ruler.size(before.pitch.max),
                gauge::BEFORE_COAT,
            )
            .given("d2after", ruler.size(outcome.basic.pitch.max))
            .given("t", ruler.fine(input.coat.max));
        working
            .step(
                "least pitch diameter before the coat",
                "d2least",
                "d2after − 4 · t",
                ruler.size(before.pitch.min),
                gauge::BEFORE_COAT,
            )
            .given("d2after", ruler.size(outcome.basic.pitch.min))
            .given("t", ruler.fine(input.coat.min));
    }
    if let Some((first, _)) = outcome.h_numbers {
        let band = tap::h_limits(input.thread.pitch_diameter(), first);
        working
            .step(
                "least pitch diameter of the smallest tap",
                "D2tap",
                "D2 + (n − 1) · w",
                ruler.size(band.min),
                tap::STEP.source,
            )
            .given("D2", ruler.size(input.thread.pitch_diameter()))
            .given("n", Shown::plain(f64::from(first), 0))
            .published("w", ruler.exact(tap::STEP.value), tap::STEP.source);
    }
    working
}

fn notes(input: &Input) -> Vec<Note> {
    let mut notes = vec![
        Note::sourced(
            "Where only the nominal or the least thickness of a coat is known, take half as much again for the \
             greatest.",
            gauge::BEFORE_COAT,
        ),
        Note::sourced(
            "The nut is coated as a blank and tapped afterwards, never tapped again; gauge it after tapping.",
            document::AS_NZS_1214.read("5.7"),
        ),
        Note::plain(
            "A tap cuts a little larger than it measures and wears smaller: prove the first nuts with both plugs.",
        ),
    ];
    if !input.thread.is_metric() {
        notes.push(Note::sourced(
            "The number behind H counts half-thousandths of an inch above the basic pitch diameter, to the upper \
             end of the tap's band.",
            tap::STEP.source,
        ));
    }
    notes
}

fn picture(input: &Input, outcome: &Outcome, ruler: Ruler) -> Picture {
    let band = |label: &'static str, limits: Limits| ScaleBand {
        label: label.into(),
        from: ruler.size(limits.min),
        to: ruler.size(limits.max),
        verdict: None,
    };
    Picture::Scale {
        title: format!("Pitch diameters of {}.", input.thread).into(),
        bands: vec![band("Bolt before the coat", outcome.bolt.pitch), band("Nut", outcome.nut.limits.pitch)],
        marks: vec![ScaleMark { label: "Basic size".into(), at: ruler.size(input.thread.pitch_diameter()) }],
    }
}
