//! Rulers one below the other, with values that run over all of them.

use super::axis::FOOT;
use super::label::{Named, names};
use super::measure::{LINE, heavy, wrap};
use super::scale::{axis, capital, lines};
use super::{Anchor, Drawing, Shape};
use crate::calculator::{MarkRow, ScaleMark};
use crate::quantity::Shown;

/// The height of a mark on a ruler below its name.
const MARK: f64 = 12.0;
/// Between a ruler and the title of the next.
const GAP: f64 = 8.0;

/// Each ruler under its title; a mark that is reached is heavier than one that is not.
pub fn rulers(rows: &[MarkRow], values: &[ScaleMark], width: f64) -> Drawing {
    let of_rows = rows.iter().flat_map(|row| &row.marks).map(|(mark, _)| mark);
    let all: Vec<Shown> = of_rows.chain(values).map(|mark| mark.at).collect();
    let axis = axis(&all, true, width);
    let mut below = Vec::new();
    let mut height = 0.0;
    for row in rows {
        height += GAP;
        for text in wrap(&row.label, heavy(width - 4.0)) {
            height += LINE;
            let at = (2.0, height - 5.0);
            below.push(Shape::Text { class: "name strong", at, anchor: Anchor::Start, text });
        }
        let named = |(mark, reached): &(ScaleMark, bool)| Named {
            x: axis.at(mark.at.number),
            name: capital(&mark.label),
            class: if *reached { "limit" } else { "mark" },
        };
        let marks: Vec<Named> = row.marks.iter().map(named).collect();
        let (mut shapes, top) = names(&marks, width, MARK);
        shapes.iter_mut().for_each(|shape| shape.lower(height));
        below.append(&mut shapes);
        height += top + MARK;
        below.push(Shape::Line { class: "axis", from: (6.0, height), to: (width - 6.0, height) });
    }
    let (mut shapes, top) = names(&lines(&axis, values, "value-line"), width, height);
    below.iter_mut().for_each(|shape| shape.lower(top));
    let bottom = top + height;
    let mut drawn = axis.grid(top, bottom);
    drawn.append(&mut shapes);
    drawn.append(&mut below);
    drawn.extend(axis.foot(bottom));
    Drawing { width, height: bottom + FOOT, shapes: drawn }
}
