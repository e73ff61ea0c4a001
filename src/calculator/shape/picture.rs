//! A picture described as data, in a report's own numbers. The page draws it; the text says the same.

use std::borrow::Cow;

use super::Verdict;
use crate::part::Outline;
use crate::quantity::{Length, Quantity, Shown, Unit, unit};
use crate::thread::fit::Corner;

/// A picture.
#[derive(Debug, Clone, PartialEq)]
pub enum Picture {
    /// One axis with bands and marks: the bath on the temper scale, readings against limits.
    Scale {
        /// What the picture shows, in one sentence.
        title: Cow<'static, str>,
        /// Ranges on the axis.
        bands: Vec<ScaleBand>,
        /// Single values on the axis; all in one unit with the bands.
        marks: Vec<ScaleMark>,
    },
    /// Named values or ranges beside each other: the coat after each addition, years by place.
    Bars {
        /// What the picture shows, in one sentence.
        title: Cow<'static, str>,
        /// The bars, all in one unit.
        bars: Vec<Bar>,
        /// A value to compare them all with.
        line: Option<ScaleMark>,
        /// Whether the axis is logarithmic.
        logarithmic: bool,
    },
    /// A coated bolt thread in its nut, drawn to scale on one flank pair.
    ThreadFit {
        /// What the picture shows, in one sentence.
        title: Cow<'static, str>,
        /// Pitch, in millimetres.
        pitch: f64,
        /// The corners to draw: worst, nominal, best.
        corners: Vec<ThreadCorner>,
        /// The unit of coats and clearances.
        unit: &'static Unit,
    },
    /// Many readings as dots, with the limits they are held against.
    Dots {
        /// What the picture shows, in one sentence.
        title: Cow<'static, str>,
        /// The readings, all in one unit.
        dots: Vec<Shown>,
        /// The limits.
        limits: Vec<ScaleMark>,
        /// What the readings come to: their mean, a bound on it.
        marks: Vec<ScaleMark>,
    },
    /// Rulers one below the other, and values on all of them: a coat on the classes of the standards.
    Rulers {
        /// What the picture shows, in one sentence.
        title: Cow<'static, str>,
        /// The rulers, all in one unit.
        rows: Vec<MarkRow>,
        /// The values.
        marks: Vec<ScaleMark>,
    },
    /// A part from its side, to scale, with its dimensions.
    Part {
        /// What the picture shows, in one sentence.
        title: Cow<'static, str>,
        /// What it looks like.
        outline: Outline,
        /// The unit of its dimensions.
        unit: &'static Unit,
    },
}

/// A ruler with a name and its marks.
#[derive(Debug, Clone, PartialEq)]
pub struct MarkRow {
    /// Its name.
    pub label: Cow<'static, str>,
    /// Its marks, and whether each is reached.
    pub marks: Vec<(ScaleMark, bool)>,
}

/// A range on an axis.
#[derive(Debug, Clone, PartialEq)]
pub struct ScaleBand {
    /// What the range is.
    pub label: Cow<'static, str>,
    /// Its beginning.
    pub from: Shown,
    /// Its end.
    pub to: Shown,
    /// The verdict it stands for, if any.
    pub verdict: Option<Verdict>,
}

/// A value on an axis.
#[derive(Debug, Clone, PartialEq)]
pub struct ScaleMark {
    /// What the value is.
    pub label: Cow<'static, str>,
    /// The value.
    pub at: Shown,
}

/// One bar.
#[derive(Debug, Clone, PartialEq)]
pub struct Bar {
    /// What it stands for.
    pub label: Cow<'static, str>,
    /// Its beginning; zero where it is not a range.
    pub from: Shown,
    /// Its end.
    pub to: Shown,
    /// Whether it is the case in hand.
    pub marked: bool,
}

/// One corner of the tolerance field, diameters in millimetres.
#[derive(Debug, Clone, PartialEq)]
pub struct ThreadCorner {
    /// `worst`, `nominal` or `best`.
    pub label: &'static str,
    /// Bolt before the coat: major, pitch, minor.
    pub bolt: [f64; 3],
    /// Coat thickness on the flanks.
    pub coat: f64,
    /// Coat thickness on the crest.
    pub crest: f64,
    /// Coat thickness in the root.
    pub root: f64,
    /// Nut: major, pitch, minor.
    pub nut: [f64; 3],
    /// Room left on major, pitch and minor diameter; below zero where they bind.
    pub room: [f64; 3],
}

impl Picture {
    /// A coated bolt in its nut: the worst corner, then the nominal, then the best, as many as there are.
    pub fn thread_fit(title: String, pitch: Length, corners: &[Corner]) -> Self {
        let labels = ["worst", "nominal", "best"];
        let drawn = |(label, corner): (&'static str, &Corner)| {
            let mm = |lengths: [Length; 3]| lengths.map(Length::mm);
            let [crest, coat, root] = mm(corner.coat);
            let [bolt, nut, room] = [corner.bolt, corner.nut, corner.room].map(mm);
            ThreadCorner { label, bolt, coat, crest, root, nut, room }
        };
        Self::ThreadFit {
            title: title.into(),
            pitch: pitch.mm(),
            corners: labels.into_iter().zip(corners).map(drawn).collect(),
            unit: &unit::UM,
        }
    }

    /// What it shows, in one sentence.
    pub fn title(&self) -> &str {
        match self {
            Self::Scale { title, .. }
            | Self::Bars { title, .. }
            | Self::ThreadFit { title, .. }
            | Self::Dots { title, .. }
            | Self::Rulers { title, .. }
            | Self::Part { title, .. } => title,
        }
    }

    /// The picture in words, for who cannot see it.
    pub fn text(&self) -> String {
        let mut text = self.title().to_owned();
        match self {
            Self::Scale { bands, marks, .. } => {
                for band in bands {
                    text.push_str(&format!(" {}: {} to {}.", band.label, band.from, band.to));
                }
                for mark in marks {
                    text.push_str(&format!(" {}: {}.", mark.label, mark.at));
                }
            }
            Self::Bars { bars, line, .. } => {
                for bar in bars {
                    if bar.from.number == 0.0 {
                        text.push_str(&format!(" {}: {}.", bar.label, bar.to));
                    } else {
                        text.push_str(&format!(" {}: {} to {}.", bar.label, bar.from, bar.to));
                    }
                }
                if let Some(line) = line {
                    text.push_str(&format!(" {}: {}.", line.label, line.at));
                }
            }
            Self::ThreadFit { corners, unit, .. } => {
                let show = |mm: f64| coat_shown(mm, unit);
                for corner in corners {
                    let [major, pitch, minor] = corner.room.map(show);
                    let [crest, flank, root] = [corner.crest, corner.coat, corner.root].map(show);
                    text.push_str(&format!(
                        " At the {} corner, with a coat of {crest} on the crest, {flank} on the flanks and \
                         {root} in the root, the room is {major} on the major diameter, {pitch} on the pitch \
                         diameter and {minor} on the minor diameter.",
                        corner.label,
                    ));
                }
            }
            Self::Dots { dots, limits, marks, .. } => {
                text.push_str(&format!(" {} readings", dots.len()));
                let by_size = |one: &&Shown, other: &&Shown| one.number.total_cmp(&other.number);
                if let (Some(least), Some(greatest)) =
                    (dots.iter().min_by(by_size), dots.iter().max_by(by_size))
                {
                    text.push_str(&format!(" from {least} to {greatest}"));
                }
                text.push('.');
                for mark in limits.iter().chain(marks) {
                    text.push_str(&format!(" {}: {}.", mark.label, mark.at));
                }
            }
            Self::Rulers { rows, marks, .. } => {
                for mark in marks {
                    text.push_str(&format!(" {}: {}.", mark.label, mark.at));
                }
                for row in rows {
                    let reached = row.marks.iter().filter(|(_, reached)| *reached);
                    let reached: Vec<&str> = reached.map(|(mark, _)| mark.label.as_ref()).collect();
                    let reached = if reached.is_empty() { "none".to_owned() } else { reached.join(", ") };
                    text.push_str(&format!(" {}, reached: {reached}.", row.label));
                }
            }
            Self::Part { outline, unit, .. } => {
                for size in &outline.sizes {
                    text.push_str(&format!(" {} {}.", size.symbol, size_shown(size.length, unit)));
                }
            }
        }
        text
    }
}

/// A size of a part: to a tenth of a millimetre where it is not a whole number, or to a thousandth of
/// an inch.
pub fn size_shown(length: Length, unit: &'static Unit) -> Shown {
    let number = length.in_unit(unit);
    let whole = (number - number.round()).abs() < 0.05;
    length.show(unit, if *unit == unit::INCH { 3 } else { u8::from(!whole) })
}

/// A coat or a clearance in millimetres as a picture shows it: to a micrometre, or to a tenth of a mil.
pub fn coat_shown(mm: f64, unit: &'static Unit) -> Shown {
    Length::from_mm(mm).show(unit, if *unit == unit::UM { 0 } else { 1 })
}
