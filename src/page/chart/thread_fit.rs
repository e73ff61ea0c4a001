//! A coated bolt thread in its nut: an axial section of one ridge, to scale.

use super::measure::{LINE, heavy, width_of, wrap};
use super::{Anchor, Drawing, Shape};
use crate::calculator::{ThreadCorner, coat_shown};
use crate::quantity::Unit;

/// tan 30°: half the angle of the flanks of ISO and unified threads.
const TAN_30: f64 = 0.577_350_269_189_625_8;
/// Pitches that are shown on either side of the middle of the ridge.
const SIDE: f64 = 0.65;
/// The narrowest section whose names have room.
const NARROW: f64 = 228.0;
/// Between two corners.
const GAP: f64 = 20.0;

/// One section for each corner, with the room left named where it is.
pub fn thread_fit(pitch: f64, corners: &[ThreadCorner], unit: &'static Unit, width: f64) -> Drawing {
    let columns = (((width + GAP) / (NARROW + GAP)) as usize).clamp(1, corners.len().max(1));
    let each = (width - GAP * (columns as f64 - 1.0)) / columns as f64;
    let mut shapes = Vec::new();
    let mut height: f64 = 0.0;
    let mut top = 0.0;
    for (place, corner) in corners.iter().enumerate() {
        let column = place % columns;
        if column == 0 && place > 0 {
            top = height + GAP;
        }
        let origin = (column as f64 * (each + GAP), top);
        height = height.max(top + section(pitch, corner, unit, each, origin, &mut shapes));
    }
    Drawing { width, height, shapes }
}

/// Where things of one section stand.
struct Sheet {
    left: f64,
    top: f64,
    width: f64,
    /// Pixels to a millimetre.
    scale: f64,
    /// The radius at the upper edge and the place along the axis at the left edge, in millimetres.
    outer: f64,
    start: f64,
}

impl Sheet {
    fn at(&self, along: f64, radius: f64) -> (f64, f64) {
        let x = self.left + (along - self.start) * self.scale;
        (x.clamp(self.left, self.left + self.width), self.top + (self.outer - radius) * self.scale)
    }
}

fn section(
    pitch: f64,
    corner: &ThreadCorner,
    unit: &'static Unit,
    width: f64,
    (left, top): (f64, f64),
    shapes: &mut Vec<Shape>,
) -> f64 {
    let [_, _, minor] = corner.bolt;
    let [nut_major, nut_middle, nut_minor] = corner.nut;
    let [room_major, room_middle, room_minor] = corner.room;
    // The coated bolt is the nut less the room left, whatever the coat on crest, flank and root.
    let coated = [nut_major - room_major, nut_middle - room_middle, nut_minor - room_minor];
    let scale = width / (2.0 * SIDE * pitch);
    // Room for two lines of text above the crest and three below the root.
    let outer = nut_major.max(coated[0]) / 2.0 + (2.0 * LINE + 8.0) / scale;
    let inner = minor / 2.0 - (3.0 * LINE + 4.0) / scale;
    let mut y = top;
    for line in wrap(&corner_name(corner), heavy(width)) {
        y += LINE;
        shapes.push(Shape::Text {
            class: "name strong",
            at: (left, y - 5.0),
            anchor: Anchor::Start,
            text: line,
        });
    }
    let sheet = Sheet { left, top: y + 4.0, width, scale, outer, start: -SIDE * pitch };
    let bottom = sheet.at(0.0, inner).1;
    let area =
        |class, diameters, edge| Shape::Path { class, outline: outline(&sheet, pitch, diameters, edge) };
    shapes.push(Shape::Box { class: "air", at: (left, sheet.top), size: (width, bottom - sheet.top) });
    shapes.push(area("nut", corner.nut, outer));
    shapes.push(area("zinc", coated, inner));
    shapes.push(area("bolt", corner.bolt, inner));
    let show = |millimetres: f64| coat_shown(millimetres, unit);
    let right = left + width;
    let mut say = |text: String, at: (f64, f64), anchor, tight: bool| {
        // A text keeps inside its own section.
        let (before, behind) = match anchor {
            Anchor::Start => (0.0, width_of(&text)),
            Anchor::Middle => (width_of(&text) / 2.0, width_of(&text) / 2.0),
            Anchor::End => (width_of(&text), 0.0),
        };
        let x = at.0.max(left + 2.0 + before).min(right - 2.0 - behind);
        let class = if tight { "over tight" } else { "over" };
        shapes.push(Shape::Text { class, at: (x, at.1), anchor, text });
    };
    let room = |name: &str, room: f64| match room < 0.0 {
        true => format!("{name} {} too tight", show(-room)),
        false => format!("{name} {}", show(room)),
    };
    let crest = sheet.at(0.0, nut_major.max(coated[0]) / 2.0);
    say(room("major", room_major), (crest.0, crest.1 - 8.0), Anchor::Middle, room_major < 0.0);
    let flank = sheet.at(0.0, nut_middle / 2.0);
    say(room("pitch", room_middle), (flank.0, flank.1 + 5.0), Anchor::Middle, room_middle < 0.0);
    let root = sheet.at(pitch / 2.0, minor / 2.0);
    say(room("minor", room_minor), (right, root.1 + LINE), Anchor::End, room_minor < 0.0);
    say(format!("zinc {}", show(corner.coat)), (left, root.1 + LINE), Anchor::Start, false);
    say("Nut".to_owned(), (left + 6.0, sheet.top + LINE - 4.0), Anchor::Start, false);
    say("Bolt".to_owned(), (right - 6.0, bottom - 8.0), Anchor::End, false);
    // A round length to measure by.
    let bar = scale_bar(pitch);
    let from = (left + 6.0, bottom - 6.0);
    shapes.push(Shape::Line { class: "measure", from, to: (from.0 + bar * scale, from.1) });
    let at = (from.0, from.1 - 6.0);
    shapes.push(Shape::Text {
        class: "over",
        at,
        anchor: Anchor::Start,
        text: coat_shown(bar, unit).to_string(),
    });
    bottom - top
}

fn corner_name(corner: &ThreadCorner) -> String {
    let tight = corner.room.iter().any(|room| *room < 0.0);
    format!(
        "{} corner: {}",
        crate::sentence::capital(corner.label),
        if tight { "binds" } else { "assembles" }
    )
}

/// A round length of a quarter of the pitch at most.
fn scale_bar(pitch: f64) -> f64 {
    [0.05, 0.1, 0.2, 0.5, 1.0, 2.0].into_iter().rfind(|length| *length <= pitch / 4.0).unwrap_or(0.02)
}

/// The area between the outline of a thread and a straight edge. For a nut it is the outline of the
/// space in it.
fn outline(sheet: &Sheet, pitch: f64, [major, middle, minor]: [f64; 3], edge: f64) -> String {
    // At the pitch diameter ridge and groove are equally wide.
    let half = |diameter: f64| (pitch / 4.0 - (diameter - middle) / 2.0 * TAN_30).clamp(0.0, pitch / 2.0);
    let (crest, root) = (half(major), half(minor));
    let end = SIDE * pitch;
    let mut points = vec![(-end, edge)];
    for centre in [-pitch, 0.0, pitch] {
        points.extend([
            (centre - root, minor / 2.0),
            (centre - crest, major / 2.0),
            (centre + crest, major / 2.0),
            (centre + root, minor / 2.0),
        ]);
    }
    points.push((end, edge));
    // Cut at the edges of the section.
    let mut path = String::new();
    let mut last: Option<(f64, f64)> = None;
    for point in points {
        if let Some(before) = last {
            for side in [-end, end] {
                if (before.0 < side) != (point.0 < side) && (before.0 > side) != (point.0 > side) {
                    let share = (side - before.0) / (point.0 - before.0);
                    push(&mut path, sheet.at(side, before.1 + share * (point.1 - before.1)));
                }
            }
        }
        if point.0.abs() <= end {
            push(&mut path, sheet.at(point.0, point.1));
        }
        last = Some(point);
    }
    path.push('z');
    path
}

fn push(path: &mut String, (x, y): (f64, f64)) {
    let step = if path.is_empty() { 'M' } else { 'L' };
    path.push_str(&format!("{step}{x:.2} {y:.2}"));
}
