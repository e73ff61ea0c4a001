//! A part from its side, to scale, with its dimensions.

use super::measure::{LINE, width_of};
use super::{Anchor, Drawing, Shape};
use crate::calculator::size_shown;
use crate::part::{Outline, Place, Surface, Turned};
use crate::quantity::Unit;

/// The highest that a part is drawn.
const HIGHEST: f64 = 170.0;
/// Beside the part, for the sizes across it.
const SIDE: f64 = 26.0;
/// Below the part, for each size along it.
const ROW: f64 = LINE + 8.0;
/// How far a thread is cut in, of its diameter: a sign, and no size.
const CUT: f64 = 0.08;

/// The part with its axis across the picture.
pub fn part(outline: &Outline, unit: &'static Unit, width: f64) -> Drawing {
    let bodies = &outline.bodies;
    let (start, end) = bodies
        .iter()
        .fold((0.0_f64, 0.0_f64), |(start, end), body| (start.min(body.along.0), end.max(body.along.1)));
    let reach = |body: &Turned| body.across.0.max(body.across.1) + 2.0 * body.off.abs();
    let widest = bodies.iter().map(reach).fold(0.0, f64::max);
    let room = width - 2.0 * SIDE;
    let scale = (room / (end - start).max(0.1)).min(HIGHEST / widest.max(0.1));
    // In the middle of the picture, below a line for the sizes across.
    let left = (width - (end - start) * scale) / 2.0;
    let x = |along: f64| left + (along - start) * scale;
    let across = outline.sizes.iter().filter(|size| !matches!(size.place, Place::Along(..))).count();
    let top = across as f64 * LINE + 8.0;
    let axis = top + widest * scale / 2.0;
    let bottom = axis + widest * scale / 2.0;
    let mut shapes = Vec::new();
    for body in bodies {
        draw(body, (x(body.along.0), x(body.along.1)), axis + body.off * scale, scale, &mut shapes);
    }
    shapes.push(Shape::Line { class: "centre", from: (x(start) - 10.0, axis), to: (x(end) + 10.0, axis) });
    let mut texts = Vec::new();
    let (mut said, mut y) = (0, bottom + 6.0);
    for size in &outline.sizes {
        let text = format!("{} {}", size.symbol, size_shown(size.length, unit));
        let half = size.length.mm() * scale / 2.0;
        let mut line =
            |from: (f64, f64), to: (f64, f64)| shapes.push(Shape::Line { class: "size", from, to });
        match size.place {
            Place::Along(from, to) => {
                let (from, to) = (x(from), x(to));
                y += ROW;
                line((from, y), (to, y));
                for end in [from, to] {
                    line((end, y - 5.0), (end, y + 5.0));
                }
                let half = width_of(&text) / 2.0;
                let at = (f64::midpoint(from, to).max(half + 2.0).min(width - half - 2.0), y - 6.0);
                texts.push(Shape::Text { class: "name", at, anchor: Anchor::Middle, text });
            }
            Place::Front | Place::Back => {
                let front = size.place == Place::Front;
                let at = if front { x(start) - 14.0 } else { x(end) + 14.0 };
                line((at, axis - half), (at, axis + half));
                for end in [axis - half, axis + half] {
                    line((at - 5.0, end), (at + 5.0, end));
                }
                // Its name above, on a line of its own, led to it.
                said += 1;
                let foot = f64::from(said) * LINE - 5.0;
                line((at, foot + 4.0), (at, axis - half));
                let (anchor, at) = if front {
                    (Anchor::Start, (at - 6.0).max(2.0))
                } else {
                    (Anchor::End, (at + 6.0).min(width - 2.0))
                };
                texts.push(Shape::Text { class: "name", at: (at, foot), anchor, text });
            }
        }
    }
    shapes.append(&mut texts);
    Drawing { width, height: y + 12.0, shapes }
}

fn draw(body: &Turned, (from, to): (f64, f64), axis: f64, scale: f64, shapes: &mut Vec<Shape>) {
    let (begins, ends) = (body.across.0 * scale / 2.0, body.across.1 * scale / 2.0);
    match body.surface {
        Surface::Hole => {
            for side in [-begins, begins] {
                let y = axis + side;
                shapes.push(Shape::Line { class: "unseen", from: (from, y), to: (to, y) });
            }
        }
        Surface::Cap => shapes.push(Shape::Path {
            class: "body",
            outline: format!(
                "M{to:.1} {:.1}A{:.1} {ends:.1} 0 0 0 {to:.1} {:.1}z",
                axis - ends,
                to - from,
                axis + ends
            ),
        }),
        Surface::Eye => {
            // The rod of an eye is as thick all around.
            let (across, rod) = ((to - from) / 2.0, begins - ends);
            let middle = f64::midpoint(from, to);
            let oval = |along: f64, across: f64| {
                let (left, right) = (middle - along, middle + along);
                format!(
                    "M{left:.1} {axis:.1}A{along:.1} {across:.1} 0 0 1 {right:.1} {axis:.1}A{along:.1} {across:.1} 0 0 1 {left:.1} {axis:.1}z"
                )
            };
            shapes.push(Shape::Path { class: "body", outline: oval(across, begins) });
            shapes.push(Shape::Path { class: "air", outline: oval((across - rod).max(0.0), ends) });
        }
        Surface::Bow => {
            let rod = begins - ends;
            shapes.push(Shape::Path {
                class: "body",
                outline: format!(
                    "M{to:.1} {:.1}A{:.1} {begins:.1} 0 0 0 {to:.1} {:.1}V{:.1}A{:.1} {ends:.1} 0 0 1 {to:.1} {:.1}z",
                    axis - begins,
                    to - from,
                    axis + begins,
                    axis + ends,
                    to - from - rod,
                    axis - ends
                ),
            });
        }
        Surface::Plain | Surface::Thread => {
            shapes.push(Shape::Path {
                class: "body",
                outline: format!(
                    "M{from:.1} {:.1}L{to:.1} {:.1}L{to:.1} {:.1}L{from:.1} {:.1}z",
                    axis - begins,
                    axis - ends,
                    axis + ends,
                    axis + begins
                ),
            });
            if body.surface == Surface::Thread {
                for side in [-1.0, 1.0] {
                    let y = axis + side * begins * (1.0 - 2.0 * CUT);
                    shapes.push(Shape::Line { class: "thread", from: (from, y), to: (to, y) });
                }
            }
        }
    }
}
