//! The outcome arranged into a report.

use super::working::{self, shown};
use super::{Input, Outcome};
use crate::calculator::steel_fields;
use crate::calculator::{
    Caution, Figure, Finding, Mark, Note, Picture, Report, ScaleBand, ScaleMark, Section, Verdict, behind,
};
use crate::process::Process;
use crate::quantity::{Quantity, Shown, Temperature, unit};
use crate::rule::heat::in_the_bath;
use crate::rule::{self, Case, Cleaning, Ruling, SteelFacts, Topic};
use crate::source::document;
use crate::steel::tempering::{self, HIGH, NORMAL, ONE_HOUR_ASSUMED, PARAMETER_SOURCE};
use crate::steel::{State, Steel};

/// The report.
pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let heat = &outcome.heat;
    let findings = findings(input, outcome);
    let verdict = Verdict::of(&findings);
    let mut sections = Vec::new();
    if let Some(properties) = outcome.properties {
        sections.push(Section {
            title: format!("What {} asks for", properties.grade.name()).into(),
            figures: steel_fields::properties(&properties),
        });
    }
    Report {
        verdict: Some(verdict),
        headline: headline(input, outcome, verdict),
        figures: figures(input, heat),
        sections,
        findings,
        working: working::working(input, heat),
        cautions: vec![Caution::MoltenZinc, Caution::StandardFirst],
        notes: notes(heat),
        picture: Some(picture(input, heat)),
    }
}

fn headline(input: &Input, outcome: &Outcome, verdict: Verdict) -> String {
    let heat = &outcome.heat;
    let dip = format!(
        "{} at {} is like one hour at {}",
        in_the_bath(input.dip),
        celsius(input.bath),
        celsius(heat.dip_one_hour)
    );
    match heat.temper {
        Some(against) => {
            let margin = against.margin.kelvin();
            // A margin that shows as nothing has no side.
            let side = if margin.round() == 0.0 {
                "as hot as the temper".to_owned()
            } else {
                let side = if margin > 0.0 { "below" } else { "above" };
                format!("{:.0}\u{a0}°C {side} the temper", margin.abs())
            };
            format!("{verdict}: the bath is {side}; {dip}.")
        }
        None => format!("{verdict}: the steel is not tempered; {dip}."),
    }
}

/// The rulings, the worst first, and the way to the other question of heat and acid.
fn findings(input: &Input, outcome: &Outcome) -> Vec<Finding> {
    let steel = outcome
        .properties
        .map(|properties| SteelFacts::new(State::of(Steel::Grade(properties)), Cleaning::Acid));
    let heat = Ok(outcome.heat);
    let case = Case {
        steel: steel.as_ref(),
        heat: Some(&heat),
        diameter: input.grade.map(|(_, diameter)| diameter),
        ..Case::of(Process::HotDip)
    };
    let finding = |ruling: Ruling| Finding::new(ruling.mark, ruling.text(&case), ruling.source(&case));
    let heat = rule::judge_topic(&case, Topic::Heat);
    let mut findings =
        Finding::worst_first(heat.chain(rule::bars(&case, Topic::Hydrogen)).map(finding).collect());
    if let Some(link) = behind(&case, Topic::Hydrogen) {
        let text = "Heat is one question; hydrogen and the classes a standard covers are another";
        findings.push(Finding::new(Mark::Note, text, document::ASTM_F2329.read("7")).opens(link));
    }
    findings
}

fn figures(input: &Input, heat: &tempering::Effect) -> Vec<Figure> {
    let mut figures = Vec::new();
    if let Some(against) = heat.temper {
        let difference = |value: crate::quantity::TemperatureDifference| value.show(&unit::DELTA_CELSIUS, 0);
        let name = match against.temper.least_of {
            Some(_) => "Temper, the least of the standard (assumed)",
            None => "Temper, as given",
        };
        let temper = Figure::one("T_temper", name, against.temper.temperature.show(&unit::CELSIUS, 0));
        figures.push(match against.temper.least_of {
            Some(source) => temper.source(source),
            None => temper,
        });
        figures.push(Figure::one("", "Margin: temper less bath", difference(against.margin)));
        figures.push(Figure::one(
            "",
            "The same as one-hour tempers: what the dip leaves",
            difference(against.one_hour_margin),
        ));
        figures.push(Figure::one("P_temper", "Tempering parameter of the temper", shown(against.parameter)));
    }
    figures.push(Figure::one("P_dip", "Tempering parameter of the dip", shown(heat.dip_parameter)));
    figures.push(Figure::one(
        "T_1h",
        "One-hour temper to which the dip is equal",
        heat.dip_one_hour.show(&unit::CELSIUS, 0),
    ));
    if let Some(against) = heat.temper {
        figures.push(Figure::one(
            "",
            "Hottest bath in which so long a dip is no stronger than the temper",
            against.hottest_bath.show(&unit::CELSIUS, 0),
        ));
    }
    figures.push(Figure::one("", "Bath", input.bath.show(&unit::CELSIUS, 0)));
    figures.push(Figure::one("", "Bath in °F", input.bath.show(&unit::FAHRENHEIT, 0)));
    figures
}

fn notes(heat: &tempering::Effect) -> Vec<Note> {
    let mut notes = vec![
        Note::sourced(
            "Heat and time count together by T · (20 + log10 t). How much a steel softens is not computed: no \
             table for it was found.",
            PARAMETER_SOURCE,
        ),
        Note::sourced(
            "The constant 20 is the one in general use; for 0.15 to 0.45 % carbon 19.5 was first proposed.",
            document::HOLLOMON_JAFFE.memory("constant by carbon"),
        ),
        Note::sourced(
            "No mechanical test has to be repeated after a bath cooler than the temper.",
            tempering::NO_RETEST_SOURCE,
        ),
        Note::sourced(
            "After galvanizing the fastener must still have the properties of its class.",
            tempering::STILL_MET_SOURCE,
        ),
    ];
    if heat.temper.is_some_and(|against| against.temper.least_of.is_some()) {
        notes.push(Note::sourced(
            "The standard sets only the least tempering temperature, and no time: one hour is assumed. The part \
             may have been tempered hotter.",
            ONE_HOUR_ASSUMED,
        ));
    }
    notes
}

/// The bath on the temper scale.
fn picture(input: &Input, heat: &tempering::Effect) -> Picture {
    let at = |temperature: Temperature| temperature.show(&unit::CELSIUS, 0);
    let band = |label: &'static str, from, to, verdict| ScaleBand {
        label: label.into(),
        from: at(from),
        to: at(to),
        verdict,
    };
    let mut marks = vec![
        ScaleMark { label: "bath".into(), at: at(input.bath) },
        ScaleMark { label: "the dip as a one-hour temper".into(), at: at(heat.dip_one_hour) },
    ];
    if let Some(against) = heat.temper {
        let label = match against.temper.least_of {
            Some(_) => "least temper of the standard",
            None => "actual temper",
        };
        marks.push(ScaleMark { label: label.into(), at: at(against.temper.temperature) });
    }
    Picture::Scale {
        title: "The bath on the temper scale.".into(),
        bands: vec![
            band("normal bath", NORMAL.0, NORMAL.1, None),
            band("no bath", NORMAL.1, HIGH.0, Some(Verdict::RuledOut)),
            band("high-temperature bath", HIGH.0, HIGH.1, None),
        ],
        marks,
    }
}

fn celsius(temperature: Temperature) -> Shown {
    temperature.show(&unit::CELSIUS, 0)
}
