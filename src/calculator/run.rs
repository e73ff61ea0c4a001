//! The steps of a run, as an operator does them: what, with which figures, and when.
//!
//! A calculator makes them from what it solved, the sheet room makes a sheet of them, and until then
//! they stand in the report as a section.

use std::borrow::Cow;

use super::{Figure, Finding, Mark, Section};
use crate::quantity::{Quantity, Shown, Time, unit};
use crate::source::Source;

/// One step of a run, with a box to tick.
#[derive(Debug, Clone, PartialEq)]
pub struct RunStep {
    /// What is done, as an instruction.
    pub what: Cow<'static, str>,
    /// With which figures, each with its unit and where it is known from.
    pub figures: Vec<Figure>,
    /// When it begins, counted from the start of the run; none where no time is known.
    pub at: Option<Time>,
    /// Where the step is known from.
    pub source: Source,
}

/// A time of day to count from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Clock {
    /// Minutes after midnight.
    minutes: u32,
}

impl RunStep {
    /// A step.
    pub fn new(what: impl Into<Cow<'static, str>>, source: Source) -> Self {
        Self { what: what.into(), figures: Vec::new(), at: None, source }
    }

    /// With a figure.
    #[must_use]
    pub fn with(mut self, figure: Figure) -> Self {
        self.figures.push(figure);
        self
    }

    /// With the time at which it begins, and the time it takes added for the next step.
    #[must_use]
    pub fn timed(mut self, clock: &mut Time, takes: Time) -> Self {
        self.at = Some(*clock);
        *clock = *clock + takes;
        self
    }
}

/// The only line of a sheet for what may not be run: the first rule that bars it.
pub fn ban(findings: &[Finding], vessel: &str) -> Option<RunStep> {
    let bar = findings.iter().find(|finding| finding.mark == Mark::Bar)?;
    Some(RunStep::new(format!("Not into the {vessel}: {}", bar.text), bar.source))
}

/// The steps as a section of a report.
pub fn section(title: String, steps: &[RunStep], start: Option<Clock>) -> Section {
    let mut figures = Vec::new();
    for (number, step) in steps.iter().enumerate() {
        let name = format!("☐ {}. {}", number + 1, step.what);
        let when = step.at.map_or_else(|| "to be ticked".to_owned(), |at| when(at, start));
        figures.push(Figure::words(name, when).source(step.source));
        figures.extend(step.figures.iter().cloned());
    }
    Section { title: title.into(), figures }
}

/// Minutes after the start, with the time of day where the start is known.
pub fn when(at: Time, start: Option<Clock>) -> String {
    let minutes = at.show(&unit::MINUTE, 0);
    match start {
        Some(clock) => format!("at {} ({minutes} after the start)", clock.after(at)),
        None => format!("at {minutes}"),
    }
}

impl Clock {
    /// Reads `7:30`, `07.30`, `19h05`.
    ///
    /// # Errors
    /// What is no time of day, with what would be.
    pub fn read(text: &str) -> Result<Self, String> {
        let problem = || format!("“{text}” is no time of day; write for example 7:30");
        let (hours, minutes) = text.trim().split_once([':', '.', 'h']).ok_or_else(problem)?;
        let number = |text: &str, end: u32| {
            let digits = (1..=2).contains(&text.len()) && text.bytes().all(|b| b.is_ascii_digit());
            text.parse::<u32>().ok().filter(|&number| digits && number < end)
        };
        let (hours, minutes) = number(hours, 24).zip(number(minutes, 60)).ok_or_else(problem)?;
        Ok(Self { minutes: hours * 60 + minutes })
    }

    /// The time of day so long after it.
    pub fn after(self, time: Time) -> Self {
        // Time does not run backwards.
        let minutes = f64::from(self.minutes) + time.minute().round().max(0.0);
        Self { minutes: (minutes % (24.0 * 60.0)) as u32 }
    }
}

impl std::fmt::Display for Clock {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:02}:{:02}", self.minutes / 60, self.minutes % 60)
    }
}

/// A figure of a time.
pub fn minutes(name: &'static str, time: Time) -> Figure {
    Figure::one("", name, shown_minutes(time))
}

/// A time in minutes and tenths.
pub fn shown_tenths(time: Time) -> Shown {
    time.show(&unit::MINUTE, 1)
}

/// A time in minutes.
pub fn shown_minutes(time: Time) -> Shown {
    time.show(&unit::MINUTE, if time.minute().fract() == 0.0 { 0 } else { 1 })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_clock_is_read_and_runs_over_midnight() {
        assert_eq!(Clock::read("7:30").unwrap().to_string(), "07:30");
        assert_eq!(Clock::read("23.50").unwrap().after(Time::from_minute(25.0)).to_string(), "00:15");
        assert_eq!(Clock::read("7:30").unwrap().after(Time::from_hour(49.0)).to_string(), "08:30");
        for text in ["24:00", "7", "7:60", "soon", "7:5x", "+7:30", "007:30", "7:005", ":30", "7:"] {
            assert!(Clock::read(text).unwrap_err().contains("no time of day"), "{text}");
        }
    }
}
