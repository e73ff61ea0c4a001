//! A coated bolt thread in its nut: an axial section through two pitches, to scale.

use crate::calculator::ThreadCorner;
use crate::page::element::{Element, element};

/// tan 30°: half the angle of the flanks of ISO and unified threads.
const TAN_30: f64 = 0.577_350_269_189_625_8;

/// One section for each corner, with its clearances marked and dimensioned under it.
pub fn thread_fit(into: Element, pitch: f64, corners: &[ThreadCorner], text: String) -> Element {
    let drawn = element("div").class("corners").with("role", "img").set("aria-label", text);
    let sign =
        |(class, says): (&'static str, &'static str)| element("li").put(element("i").class(class)).say(says);
    let signs = [("swatch steel", "Bolt"), ("swatch zinc", "Zinc"), ("swatch nut", "Nut")].map(sign);
    let legend = element("div").class("legend").with("aria-hidden", "true");
    into.put(drawn.each(corners.iter().map(|corner| section(pitch, corner))))
        .put(legend.put(element("ul").each(signs)))
}

fn section(pitch: f64, corner: &ThreadCorner) -> Element {
    let [_, _, minor] = corner.bolt;
    let [nut_major, nut_middle, nut_minor] = corner.nut;
    let [room_major, room_middle, room_minor] = corner.room;
    // The coated bolt is the nut less the room left, whatever the coat on crest, flank and root.
    let coated = [nut_major - room_major, nut_middle - room_middle, nut_minor - room_minor];
    let outer = nut_major.max(coated[0]) / 2.0 + 0.1 * pitch;
    let inner = minor / 2.0 - 0.12 * pitch;
    let view = [-pitch, -outer, 2.0 * pitch, outer - inner].map(on_paper).join(" ");
    let solid = |diameters| area(&profile(pitch, diameters), pitch, inner);
    let nut = area(&profile(pitch, corner.nut), pitch, outer);
    let said = |room: f64| {
        if room < 0.0 {
            format!("{:.0} µm too tight", -room * 1000.0)
        } else {
            format!("{:.0} µm clear", room * 1000.0)
        }
    };
    // Crest, flank and root of the ridge in the middle, each with a bar over the room at its place.
    let bands = [
        ("major", 0.0, coated[0], nut_major, room_major),
        ("pitch", pitch / 4.0, coated[1], nut_middle, room_middle),
        ("minor", pitch / 2.0, coated[2], nut_minor, room_minor),
    ];
    let bar = |along: f64, from: f64, to: f64| {
        let tick = 0.03 * pitch;
        let [start, middle, width, from, to] =
            [along - tick, along, 2.0 * tick, -from / 2.0, -to / 2.0].map(on_paper);
        format!("M{start} {from}h{width}M{middle} {from}V{to}M{start} {to}h{width}")
    };
    let path = |class: &'static str, d: String| element("path").class(class).set("d", d);
    let bars = bands.iter().map(|&(_, along, from, to, _)| path("room", bar(along, from, to)));
    let drawn = element("svg")
        .class("fit")
        .set("viewBox", view)
        .put(path("nut", nut))
        .put(path("zinc", solid(coated)))
        .put(path("steel", solid(corner.bolt)))
        .each(bars);
    let rooms = bands.iter().map(|&(name, .., room)| {
        let value = element("span").class(if room < 0.0 { "tight" } else { "" }).text(said(room));
        element("p").say(name).say(" diameter: ").put(value)
    });
    element("div")
        .class("corner")
        .with("aria-hidden", "true")
        .put(drawn)
        .put(element("p").put(element("b").say(corner.label)))
        .each(rooms)
}

/// A place in the drawing, in millimetres, as fine as anybody can see.
fn on_paper(place: f64) -> String {
    format!("{place:.4}")
}

/// The outline of a thread over two pitches: places along the axis with radii. For a nut it is the
/// outline of the space in it.
fn profile(pitch: f64, [major, middle, minor]: [f64; 3]) -> Vec<(f64, f64)> {
    // At the pitch diameter ridge and groove are equally wide.
    let half = |diameter: f64| (pitch / 4.0 - (diameter - middle) / 2.0 * TAN_30).max(0.0).min(pitch / 2.0);
    let (crest, root) = (half(major), half(minor));
    let mut points = Vec::with_capacity(13);
    for centre in [-pitch, 0.0, pitch] {
        points.extend([
            (centre - root, minor / 2.0),
            (centre - crest, major / 2.0),
            (centre + crest, major / 2.0),
            (centre + root, minor / 2.0),
        ]);
    }
    points
}

/// The area between an outline and a straight line, as a path.
fn area(outline: &[(f64, f64)], pitch: f64, line: f64) -> String {
    let [left, right, line] = [-2.0 * pitch, 2.0 * pitch, -line].map(on_paper);
    let mut path = format!("M{left} {line}");
    for (along, radius) in outline {
        path.push_str(&format!("L{} {}", on_paper(*along), on_paper(-radius)));
    }
    path.push_str(&format!("L{right} {line}z"));
    path
}
