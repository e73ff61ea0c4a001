//! Where everything in a picture stands. No browser: tests measure every picture at every width.
//!
//! A picture is laid out for the width it has, so that letters keep their size; names stand at what
//! they name, and run over several lines or rows where there is no room beside each other.

mod axis;
mod dots;
mod label;
mod measure;
mod part;
mod rulers;
mod scale;
mod svg;
mod thread_fit;

pub use measure::{LINE, width_of};

use crate::calculator::Picture;

/// A picture, laid out.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawing {
    /// Its width in pixels.
    pub width: f64,
    /// Its height in pixels.
    pub height: f64,
    /// What is drawn, the lowest first.
    pub shapes: Vec<Shape>,
}

/// Something drawn, in pixels from the upper left corner. The class says what it is.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// A straight line.
    Line {
        /// What it is.
        class: &'static str,
        /// One end.
        from: (f64, f64),
        /// The other end.
        to: (f64, f64),
    },
    /// A rectangle.
    Box {
        /// What it is.
        class: &'static str,
        /// Its upper left corner.
        at: (f64, f64),
        /// Width and height.
        size: (f64, f64),
    },
    /// A round mark.
    Dot {
        /// What it is.
        class: &'static str,
        /// Its centre.
        at: (f64, f64),
        /// Its radius.
        radius: f64,
    },
    /// Any outline.
    Path {
        /// What it is.
        class: &'static str,
        /// The outline, as a browser takes it.
        outline: String,
    },
    /// One line of text.
    Text {
        /// What it is.
        class: &'static str,
        /// The foot of its beginning, middle or end.
        at: (f64, f64),
        /// Which of these.
        anchor: Anchor,
        /// The text.
        text: String,
    },
}

/// Which part of a text stands at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// The narrowest picture: a phone of 320 px less its margins.
pub const NARROWEST: f64 = 260.0;
/// A wider one says no more.
pub const WIDEST: f64 = 760.0;

/// Lays a picture out for so many pixels of width.
pub fn lay_out(picture: &Picture, width: f64) -> Drawing {
    let width = width.clamp(NARROWEST, WIDEST);
    match picture {
        Picture::Scale { bands, marks, .. } => scale::scale(bands, marks, width),
        Picture::Bars { bars, line, logarithmic, .. } => {
            scale::bars(bars, line.as_ref(), *logarithmic, width)
        }
        Picture::Dots { dots, limits, marks, .. } => dots::dots(dots, limits, marks, width),
        Picture::ThreadFit { pitch, corners, unit, .. } => {
            thread_fit::thread_fit(*pitch, corners, unit, width)
        }
        Picture::Rulers { rows, marks, .. } => rulers::rulers(rows, marks, width),
        Picture::Part { outline, unit, .. } => part::part(outline, unit, width),
    }
}

impl Shape {
    /// What a text covers: left, top, right, bottom; `None` for anything else.
    pub fn text_box(&self) -> Option<(f64, f64, f64, f64)> {
        let Self::Text { at: (x, y), anchor, text, .. } = self else { return None };
        let width = width_of(text);
        let left = match anchor {
            Anchor::Start => *x,
            Anchor::Middle => x - width / 2.0,
            Anchor::End => x - width,
        };
        Some((left, y - measure::ABOVE, left + width, y + measure::BELOW))
    }
}

#[cfg(test)]
mod tests;
