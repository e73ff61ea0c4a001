//! The salt spray, arranged for its reader.

use super::Outcome;
use crate::calculator::{Bar, Caution, Figure, Finding, Link, Mark, Note, Picture, Report, Section};
use crate::quantity::{Shown, unit};
use crate::sentence::capital;
use crate::site::salt_spray::{self, Finish, Hours};
use crate::source::Source;
use crate::table::Refusal;
use crate::table::salt_spray::{self as table, Chromate, HoursUntil, ROWS};

const WHITE: &str = "white corrosion";
const RED: &str = "red rust";

pub(super) fn report(finish: Finish, outcome: &Outcome) -> Report {
    let mut report = Report {
        sections: vec![beside()],
        cautions: vec![Caution::StandardFirst],
        notes: vec![Note::sourced(
            "Hours in the salt spray compare one batch with another of the same finish; they do not convert into years, \
             and alone have seldom foretold service.",
            table::TEST,
        )],
        picture: Some(picture(finish)),
        ..Report::default()
    };
    match outcome {
        Outcome::NoMeasure => {
            report.headline = "Hot-dip: hours are not given; see its years by place.".to_owned();
            report.findings = vec![
                Finding::new(Mark::Note, salt_spray::WHY_NOT_HOT_DIP, salt_spray::HOT_DIP)
                    .opens(Link { calculator: "life", pairs: vec![("thickness", "50 µm".into())] }),
            ];
        }
        Outcome::Stated(hours) => state(&mut report, finish, *hours),
    }
    report
}

fn state(report: &mut Report, finish: Finish, hours: Hours) {
    let said: Vec<String> = [(hours.white, WHITE), (hours.red, RED)]
        .into_iter()
        .filter_map(|((asked, _), until)| in_words(asked, until))
        .collect();
    report.headline = if said.is_empty() {
        format!("{} asks for no hours with this finish", hours.white.1.document.name)
    } else {
        format!("{}: {}", capital(&finish.name()), said.join(", "))
    };
    for ((asked, source), until) in [(hours.white, WHITE), (hours.red, RED)] {
        report.figures.push(figure(asked, source, until));
        if let Some(number) = asked.hours() {
            report.working.table("hours as the source states them", "h", shown(number), source);
        }
        if asked == HoursUntil::NotFound {
            let refusal = Refusal::blank(&format!("hours to {until}"), source);
            report.findings.push(Finding::new(Mark::Note, refusal.to_string(), refusal.source()));
        }
    }
    if let Finish::Iso2081(um, chromate, _) = finish {
        report.notes.extend(beside_iso_4042(um, chromate, hours));
    }
}

/// How the hours to red rust remembered of ISO 2081 stand to those read in ISO 4042.
fn beside_iso_4042(um: u32, chromate: Chromate, hours: Hours) -> Option<Note> {
    let read = salt_spray::hours(Finish::Iso4042(um, chromate)).ok().and_then(|other| other.red.0.hours());
    let text = match (read, hours.red.0.hours()?) {
        (None, _) => {
            "ISO 4042 has no hours to red rust for this coat, and those remembered of ISO 2081 stand alone: check them \
             before promising."
                .to_owned()
        }
        (Some(read), own) if own != read => format!(
            "The hours to red rust remembered of ISO 2081 lie {} the {} read in ISO 4042: check them before promising.",
            if own > read { "above" } else { "below" },
            shown(read)
        ),
        _ => return None,
    };
    Some(Note::sourced(text, table::ISO_2081_RED_TABLE))
}

/// `at least 96 h to white corrosion`, `about 36 h …`; nothing where there is no number.
fn in_words(asked: HoursUntil, until: &str) -> Option<String> {
    let how = match asked {
        HoursUntil::AtLeast(_) => "at least ",
        HoursUntil::About(_) => "about ",
        HoursUntil::Listed(_) | HoursUntil::Nothing | HoursUntil::NotFound => "",
    };
    let hours = shown(asked.hours()?);
    Some(match asked {
        // The source says not to what.
        HoursUntil::About(_) => format!("{how}{hours} in the spray"),
        _ => format!("{how}{hours} to {until}"),
    })
}

fn figure(asked: HoursUntil, source: Source, until: &'static str) -> Figure {
    let figure = match asked {
        HoursUntil::AtLeast(hours) => Figure::one("", format!("Hours to {until}, at least"), shown(hours)),
        HoursUntil::Listed(hours) => Figure::one("", format!("Hours to {until}, as listed"), shown(hours)),
        HoursUntil::About(hours) => {
            Figure::one("", "Hours in the spray, about; to white or to red is not said", shown(hours))
        }
        HoursUntil::Nothing => Figure::words(format!("Hours to {until}"), "none stated"),
        HoursUntil::NotFound => Figure::words(format!("Hours to {until}"), "not known here"),
    };
    figure.source(source)
}

fn shown(hours: u32) -> Shown {
    Shown { number: f64::from(hours), unit: &unit::HOUR, decimals: 0 }
}

/// What is said of other finishes, to compare.
fn beside() -> Section {
    let thin = ROWS.iter().filter(|row| matches!(row.white, HoursUntil::About(_))).filter_map(|row| {
        Some(Figure::words(capital(row.name), in_words(row.white, WHITE)?).source(row.source))
    });
    let others = table::BESIDE.iter().map(|&(name, white, red, source)| {
        let said: Vec<String> = [(white, WHITE), (red, RED)]
            .into_iter()
            .filter_map(|(hours, until)| in_words(HoursUntil::Listed(hours?), until))
            .collect();
        Figure::words(capital(name), said.join(", ")).source(source)
    });
    Section { title: "Beside it, to compare".into(), figures: thin.chain(others).collect() }
}

/// Hours to white corrosion that are known, side by side: the finishes listed by themselves, and those
/// of the same standard.
fn picture(finish: Finish) -> Picture {
    let all = ROWS.iter().map(Finish::Listed).chain(finish.family());
    let bars = all.filter_map(|other| {
        let (asked, _) = salt_spray::hours(other).ok()?.white;
        if matches!(asked, HoursUntil::About(_)) {
            return None;
        }
        Some(Bar {
            label: capital(&other.name()).into(),
            from: shown(0),
            to: shown(asked.hours()?),
            marked: other == finish,
        })
    });
    Picture::Bars {
        title: "Hours to white corrosion in the salt spray, by finish.".into(),
        bars: bars.collect(),
        line: None,
        logarithmic: false,
    }
}
