//! Many readings as dots over the limits that they are held against.

use super::axis::FOOT;
use super::label::names;
use super::measure::LINE;
use super::scale::{axis, lines};
use super::{Anchor, Drawing, Shape};
use crate::calculator::ScaleMark;
use crate::quantity::Shown;

const RADIUS: f64 = 4.5;
/// Dots in a column; where there are more, a dot stands for several readings.
const HIGHEST: usize = 12;

/// Readings stacked where they are alike, the limits over the whole height, and what they come to.
pub fn dots(dots: &[Shown], limits: &[ScaleMark], marks: &[ScaleMark], width: f64) -> Drawing {
    let all: Vec<Shown> =
        dots.iter().copied().chain(limits.iter().chain(marks).map(|mark| mark.at)).collect();
    let axis = axis(&all, false, width);
    // Columns as wide as a dot.
    let mut columns: Vec<(i64, usize)> = Vec::new();
    for dot in dots {
        let column = (axis.at(dot.number) / (2.0 * RADIUS)).round() as i64;
        match columns.iter_mut().find(|(known, _)| *known == column) {
            Some((_, count)) => *count += 1,
            None => columns.push((column, 1)),
        }
    }
    let highest = columns.iter().map(|(_, count)| *count).max().unwrap_or(1);
    let each = highest.div_ceil(HIGHEST).max(1);
    let rows = highest.div_ceil(each);
    let said = (each > 1).then(|| format!("One dot: up to {each} readings"));
    let height = rows as f64 * 2.0 * RADIUS + 12.0 + if said.is_some() { LINE } else { 0.0 };
    let mut named = lines(&axis, limits, "limit");
    named.extend(lines(&axis, marks, "mark"));
    let (names, top) = names(&named, width, height);
    let bottom = top + height;
    let mut shapes = axis.grid(top, bottom);
    shapes.extend(names);
    for (column, count) in columns {
        for row in 0..count.div_ceil(each) {
            let at = (column as f64 * 2.0 * RADIUS, bottom - (row as f64 * 2.0 + 1.0) * RADIUS - 1.0);
            shapes.push(Shape::Dot { class: "reading", at, radius: RADIUS - 0.5 });
        }
    }
    if let Some(text) = said {
        shapes.push(Shape::Text { class: "value", at: (2.0, top + LINE - 4.0), anchor: Anchor::Start, text });
    }
    shapes.extend(axis.foot(bottom));
    Drawing { width, height: bottom + FOOT, shapes }
}
