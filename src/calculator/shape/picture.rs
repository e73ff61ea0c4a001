//! A picture described as data, in a report's own numbers. The page draws it; the text says the same.

use std::borrow::Cow;

use super::Verdict;
use crate::quantity::{Shown, Unit};

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
    /// What it shows, in one sentence.
    pub fn title(&self) -> &str {
        match self {
            Self::Scale { title, .. }
            | Self::Bars { title, .. }
            | Self::ThreadFit { title, .. }
            | Self::Dots { title, .. } => title,
        }
    }

    /// The picture in words, for who cannot see it.
    pub fn text(&self) -> String {
        let mut text = String::new();
        match self {
            Self::Scale { title, bands, marks } => {
                text.push_str(title);
                for band in bands {
                    text.push_str(&format!(" {}: {} to {}.", band.label, band.from, band.to));
                }
                for mark in marks {
                    text.push_str(&format!(" {}: {}.", mark.label, mark.at));
                }
            }
            Self::Bars { title, bars, line, .. } => {
                text.push_str(title);
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
            Self::ThreadFit { title, corners, .. } => {
                text.push_str(title);
                for corner in corners {
                    let [major, pitch, minor] = corner.room.map(|mm| format!("{mm:.3}"));
                    let [crest, flank, root] =
                        [corner.crest, corner.coat, corner.root].map(|mm| format!("{:.0}", mm * 1000.0));
                    text.push_str(&format!(
                        " At the {} corner, with a coat of {crest} µm on the crest, {flank} µm on the flanks \
                         and {root} µm in the root, the room is {major} mm on the major diameter, \
                         {pitch} mm on the pitch diameter and {minor} mm on the minor diameter.",
                        corner.label,
                    ));
                }
            }
            Self::Dots { title, dots, limits, marks } => {
                text.push_str(title);
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
        }
        text
    }
}
