//! Arranges the answer: headline, figures, notes and the picture.

use super::{Input, NutBody, Outcome, working};
use crate::calculator::thread_fields::{self, Ruler};
use crate::calculator::{Bar, Caution, Figure, Note, Picture, Report, ScaleMark, Section, Verdict};
use crate::quantity::{Area, Force, Length, Quantity, Shown, unit};
use crate::rule::bolt_and_nut::{Model, Pair};
use crate::source::document;
use crate::table::Refusal;
use crate::thread::load::{Load, Way};
use crate::thread::strength::{MODEL, Strength, nut_height, shear_area};
use crate::thread::undersize;

mod finding;

pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let findings = finding::all(input, outcome);
    Report {
        verdict: Some(Verdict::of(&findings)),
        headline: thread_fields::not_like_this(&findings).unwrap_or_else(|| headline(input, outcome)),
        figures: figures(input, outcome),
        sections: sections(input, outcome, Ruler::of(input.thread)),
        findings,
        working: working::working(input, outcome),
        cautions: vec![Caution::NotReused, Caution::StandardFirst],
        notes: notes(),
        picture: outcome.model.as_ref().ok().map(|model| picture(input, model)),
    }
}

fn headline(input: &Input, outcome: &Outcome) -> String {
    let model = match &outcome.model {
        Ok(model) if outcome.stated.is_none() => model,
        _ => return finding::carries(input, outcome).text.into_owned(),
    };
    let (failure, load) = model.pair.min.first();
    let cost = if model.lost.newton() > 0.0 {
        format!(
            "the thread strips {} ({}) sooner than in a standard pair",
            force(model.lost, input),
            Shown::percent(model.lost_share, 0)
        )
    } else {
        "the thread strips no sooner than in a standard pair".to_owned()
    };
    format!("At least material {} first, at {}; {cost}.", failure.words(), force(load, input))
}

fn figures(input: &Input, outcome: &Outcome) -> Vec<Figure> {
    let model = match &outcome.model {
        Ok(model) => model,
        Err(refusal) => {
            return vec![
                Figure::words("Gives way first, by the model", refusal.to_string()).source(refusal.source()),
            ];
        }
    };
    let min = &model.pair.min;
    let mut figures = vec![
        Figure::words("Gives way first, by the model", min.first().0.words()),
        Figure::one("F", "At a load of", force(min.first().1, input)).source(MODEL),
        Figure::one(
            "",
            "Stripping above breaking; below zero the thread strips first",
            Shown::percent(min.margin(), 0),
        ),
        Figure::one("", "Stripping strength lost against a standard pair", force(model.lost, input)),
        Figure::one("", "As a share", Shown::percent(model.lost_share, 1)),
    ];
    if input.is_undercut() {
        figures.push(
            Figure::one("", "Breaking load lost with the stress area", force(model.breaking_lost, input))
                .source(undersize::STRESS_AREA),
        );
    }
    figures
}

fn sections(input: &Input, outcome: &Outcome, ruler: Ruler) -> Vec<Section> {
    let mut sections: Vec<Section> = of_standards(input, outcome).into_iter().collect();
    if let Ok(model) = &outcome.model {
        sections.extend([
            loads("This pair at least material", &model.pair, &model.pair.min, input),
            loads("This pair with every size in the middle", &model.pair, &model.pair.nominal, input),
            loads("Usual bolt in a standard nut, at least material", &model.plain, &model.plain.min, input),
        ]);
    }
    let style = match input.body {
        NutBody::Style(style) => style.name(),
        NutBody::Own(..) => "own",
    };
    let mut nut = vec![Figure::words("Style", style)];
    if let Ok(model) = &outcome.model {
        nut.extend(body(model, ruler));
    }
    sections.push(Section { title: "The nut".into(), figures: nut });
    sections.extend(outcome.model.as_ref().ok().map(|model| h28(input, model, ruler)));
    sections
}

/// The sizes of the nut, and the strength of its steel.
fn body(model: &Model, ruler: Ruler) -> [Figure; 5] {
    let body = model.body;
    let length = |symbol, name, length: Length| Figure::one(symbol, name, ruler.size(length));
    let width = if body.is_least_width {
        "Minimum width across flats"
    } else {
        "Width across flats, basic; the minimum is not known here"
    };
    [
        length("m", "Minimum height", body.height).source(body.height_source),
        length("s", width, body.across_flats).source(body.width_source),
        length("hc", "Depth of a countersink", model.countersink).source(nut_height::COUNTERSINK),
        length("m_eff", "Height that carries", model.pair.joint.engagement).source(nut_height::EFFECTIVE),
        Figure::one("Rmn", "Tensile strength", model.nut_tensile.show(&unit::MPA, 0)),
    ]
}

fn loads(title: &'static str, pair: &Pair, strength: &Strength, input: &Input) -> Section {
    Section {
        title: title.into(),
        figures: vec![
            Figure::one("FBb", "The bolt breaks", force(strength.bolt_breaks, input)),
            Figure::one("FSb", "The bolt's thread strips", force(strength.bolt_strips, input)),
            Figure::one("FSn", "The nut's thread strips", force(strength.nut_strips, input)),
            Figure::one("As", "Stress area", area(pair.joint.stress_area, input)),
            Figure::one("ASb", "Shear area of the bolt's thread", area(strength.bolt_area, input)),
            Figure::one("ASn", "Shear area of the nut's thread", area(strength.nut_area, input)),
            Figure::one("Rs", "Strength ratio, nut to bolt thread", Shown::plain(strength.ratio, 3)),
        ],
    }
}

/// The loads that the standards give the bolt and the nut.
fn of_standards(input: &Input, outcome: &Outcome) -> Option<Section> {
    let mut figures = Vec::new();
    if let Some(loads) = &outcome.bolt_loads {
        figures.push(load("Bolt, minimum ultimate load", &loads.ultimate, input));
        figures.push(load("Bolt, proof load", &loads.proof, input));
    }
    if let Some(found) = &outcome.standard_nut_load {
        figures.push(load("Nut not tapped over, proof load", found, input));
    }
    if let Some(found) = &outcome.nut_load {
        figures.push(load("This nut, proof load", found, input));
    }
    (!figures.is_empty()).then(|| Section { title: "What the standards give".into(), figures })
}

/// A load as its table prints it, or the product it is, or why there is none.
fn load(name: &'static str, found: &Result<Load, Refusal>, input: &Input) -> Figure {
    match found {
        Err(refusal) => Figure::words(name, refusal.to_string()).source(refusal.source()),
        Ok(load) => {
            let shown = if input.thread.is_metric() {
                load.force.show(&unit::NEWTON, 0)
            } else {
                load.force.show(&unit::LBF, 0)
            };
            let name = match load.way {
                Way::Printed => name.to_owned(),
                Way::Product { stress, area } => format!(
                    "{name}, not printed: {} × {}",
                    if input.thread.is_metric() {
                        stress.value.show(&unit::MPA, 0)
                    } else {
                        stress.value.show(&unit::KSI, 0)
                    },
                    if input.thread.is_metric() {
                        area.value.show(&unit::MM2, if area.value.mm2() < 100.0 { 1 } else { 0 })
                    } else {
                        area.value.show(&unit::IN2, 4)
                    },
                ),
            };
            Figure::one("", name, shown).source(load.stress_source())
        }
    }
}

fn h28(input: &Input, model: &Model, ruler: Ruler) -> Section {
    let (pair, required) = (&model.pair, model.required);
    let mut figures = vec![
        Figure::one("ASn", "Nut thread, least material", area(pair.min.nut_area, input))
            .source(shear_area::H28),
        Figure::one("ASs", "Bolt thread, least material", area(model.straight, input))
            .source(shear_area::H28),
        Figure::one("ASn", "Nut thread, simplified", area(model.simple.nut, input))
            .source(shear_area::H28_SIMPLE),
        Figure::one("ASs", "Bolt thread, simplified", area(model.simple.bolt, input))
            .source(shear_area::H28_SIMPLE),
    ];
    figures.push(
        Figure::one("LE", "Engagement at which the bolt breaks first", ruler.size(required.governing))
            .source(shear_area::H28_ENGAGEMENT),
    );
    Section { title: "By FED-STD-H28".into(), figures }
}

fn notes() -> Vec<Note> {
    vec![
        Note::sourced(
            "The loads are those of Alexander's model at the least strength of bolt and nut. A bolt stronger \
             than its least strength breaks later, and then the thread may strip first.",
            MODEL,
        ),
        Note::plain(
            "Least material means the smallest bolt in the widest nut that their limits allow; few pairs are \
             that loose. The middle of all limits is shown beside it.",
        ),
        Note::sourced(
            "6AZ and 6AX nuts must not be put on 6az bolts: too little thread is left, and it may strip.",
            document::ISO_965_5.read("clause 1"),
        ),
    ]
}

fn picture(input: &Input, model: &Model) -> Picture {
    let bar = |label: &'static str, load: Force, marked| Bar {
        label: label.into(),
        from: Shown { number: 0.0, ..force(load, input) },
        to: force(load, input),
        marked,
    };
    let (pair, plain) = (&model.pair.min, &model.plain.min);
    Picture::Bars {
        title: format!("Loads at which bolt and thread of {} give way, at least material.", input.thread)
            .into(),
        bars: vec![
            bar("The bolt's thread strips", pair.bolt_strips, true),
            bar("The nut's thread strips", pair.nut_strips, true),
            bar("The same in a standard pair: bolt's thread", plain.bolt_strips, false),
            bar("The same in a standard pair: nut's thread", plain.nut_strips, false),
        ],
        line: Some(ScaleMark { label: "The bolt breaks".into(), at: force(pair.bolt_breaks, input) }),
        logarithmic: false,
    }
}

fn force(load: Force, input: &Input) -> Shown {
    input.shown(load)
}

fn area(area: Area, input: &Input) -> Shown {
    if input.thread.is_metric() { area.show(&unit::MM2, 1) } else { area.show(&unit::IN2, 4) }
}
