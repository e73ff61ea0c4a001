//! Ranges and values on one axis.

use super::axis::{Axis, FOOT};
use super::label::{Named, names};
use super::measure::{LINE, heavy, width_of, wrap};
use super::{Anchor, Drawing, Shape};
use crate::calculator::{Bar, ScaleBand, ScaleMark, Verdict};
use crate::quantity::{Shown, Unit, unit};

/// The height of a range.
const THICK: f64 = 16.0;
/// Between one range and the name of the next.
const GAP: f64 = 10.0;

/// A range under its name.
struct Lane {
    name: String,
    value: String,
    from: f64,
    to: f64,
    class: &'static str,
    strong: bool,
}

/// Ranges with the values that stand among them.
pub fn scale(bands: &[ScaleBand], marks: &[ScaleMark], width: f64) -> Drawing {
    let ends = bands.iter().flat_map(|band| [band.from, band.to]);
    let all: Vec<Shown> = ends.chain(marks.iter().map(|mark| mark.at)).collect();
    let axis = axis(&all, false, width);
    let lane = |band: &ScaleBand| Lane {
        name: capital(&band.label),
        value: span(band.from, band.to),
        from: band.from.number,
        to: band.to.number,
        class: tone(band.verdict),
        strong: false,
    };
    chart(&axis, &bands.iter().map(lane).collect::<Vec<_>>(), &lines(&axis, marks, "limit"), width)
}

/// Named values or ranges, one below the other, with a value to compare them with.
pub fn bars(bars: &[Bar], line: Option<&ScaleMark>, logarithmic: bool, width: f64) -> Drawing {
    let ends = bars.iter().flat_map(|bar| [bar.from, bar.to]);
    let mut all: Vec<Shown> = ends.chain(line.map(|line| line.at)).collect();
    if !logarithmic {
        all.extend(all.first().map(|first| Shown { number: 0.0, ..*first }));
    }
    let axis = axis(&all, logarithmic, width);
    let lane = |bar: &Bar| Lane {
        name: bar.label.to_string(),
        value: if bar.from.number == 0.0 { bar.to.to_string() } else { span(bar.from, bar.to) },
        from: bar.from.number,
        to: bar.to.number,
        class: if bar.marked { "bar marked" } else { "bar" },
        strong: bar.marked,
    };
    let line: Vec<ScaleMark> = line.cloned().into_iter().collect();
    chart(&axis, &bars.iter().map(lane).collect::<Vec<_>>(), &lines(&axis, &line, "limit"), width)
}

/// An axis over numbers that all have one unit.
pub fn axis(all: &[Shown], logarithmic: bool, width: f64) -> Axis {
    let unit: &'static Unit = all.first().map_or(&unit::ONE, |first| first.unit);
    let numbers: Vec<f64> = all.iter().map(|shown| shown.number).collect();
    Axis::over(&numbers, unit, logarithmic, width)
}

/// Values as lines with their names and numbers.
pub fn lines(axis: &Axis, marks: &[ScaleMark], class: &'static str) -> Vec<Named> {
    let named = |mark: &ScaleMark| Named {
        x: axis.at(mark.at.number),
        name: format!("{} {}", capital(&mark.label), mark.at),
        class,
    };
    marks.iter().map(named).collect()
}

fn chart(axis: &Axis, lanes: &[Lane], named: &[Named], width: f64) -> Drawing {
    let drawn: Vec<(Vec<Shape>, f64)> = lanes.iter().map(|lane| lane.draw(axis, width)).collect();
    let height: f64 = drawn.iter().map(|(_, height)| height).sum::<f64>().max(THICK);
    let (names, top) = names(named, width, height);
    let bottom = top + height;
    let mut shapes = axis.grid(top, bottom);
    let mut texts = Vec::new();
    let mut y = top;
    for (mut lane, height) in drawn {
        lane.iter_mut().for_each(|shape| shape.lower(y));
        let (words, bars): (Vec<_>, Vec<_>) =
            lane.into_iter().partition(|one| matches!(one, Shape::Text { .. }));
        shapes.extend(bars);
        texts.extend(words);
        y += height;
    }
    shapes.extend(names);
    shapes.extend(texts);
    shapes.extend(axis.foot(bottom));
    Drawing { width, height: bottom + FOOT, shapes }
}

impl Lane {
    /// The range under its name, from the top of the lane, and the height of the lane. Its value
    /// stands at its end, or before its beginning, or behind its name, wherever there is room.
    fn draw(&self, axis: &Axis, width: f64) -> (Vec<Shape>, f64) {
        let (from, to) = (axis.at(self.from), axis.at(self.to));
        let (from, to) = (from.min(to), to.max(from));
        let to = to.max(from + 3.0);
        let needs = width_of(&self.value) + 8.0;
        let beside = to + needs <= width || from - needs >= 0.0;
        let name = if beside { self.name.clone() } else { format!("{}: {}", self.name, self.value) };
        let words = if self.strong { "name strong" } else { "name" };
        let mut shapes = Vec::new();
        let mut y = GAP;
        let room = if self.strong { heavy(width - 4.0) } else { width - 4.0 };
        for line in wrap(&name, room) {
            y += LINE;
            shapes.push(Shape::Text { class: words, at: (2.0, y - 5.0), anchor: Anchor::Start, text: line });
        }
        shapes.push(Shape::Box { class: self.class, at: (from, y), size: (to - from, THICK) });
        if beside {
            let behind = to + needs <= width;
            let (x, anchor) = if behind { (to + 6.0, Anchor::Start) } else { (from - 6.0, Anchor::End) };
            shapes.push(Shape::Text { class: "value", at: (x, y + 13.0), anchor, text: self.value.clone() });
        }
        (shapes, y + THICK + 2.0)
    }
}

impl Shape {
    /// Moves it down.
    pub(super) fn lower(&mut self, by: f64) {
        match self {
            Self::Line { from, to, .. } => (from.1, to.1) = (from.1 + by, to.1 + by),
            Self::Box { at, .. } | Self::Dot { at, .. } | Self::Text { at, .. } => at.1 += by,
            Self::Path { .. } => {}
        }
    }
}

/// The class of a range that stands for a verdict.
fn tone(verdict: Option<Verdict>) -> &'static str {
    match verdict {
        Some(Verdict::Suits) => "band suits",
        Some(Verdict::OnConditions) => "band conditions",
        Some(Verdict::RuledOut) => "band out",
        None => "band neutral",
    }
}

fn span(from: Shown, to: Shown) -> String {
    if from.to_string() == to.to_string() {
        to.to_string()
    } else if from.unit == to.unit {
        format!("{} to {to}", from.digits())
    } else {
        format!("{from} to {to}")
    }
}

/// Names begin with a capital, as headings do.
pub fn capital(text: &str) -> String {
    crate::sentence::capital(text)
}
