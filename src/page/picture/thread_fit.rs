//! A coated bolt thread in its nut: an axial section through two pitches, to scale.

use crate::calculator::ThreadCorner;
use yew::prelude::*;

/// tan 30°: half the angle of the flanks of ISO and unified threads.
const TAN_30: f64 = 0.577_350_269_189_625_8;

/// One section for each corner, with the clearance on the pitch diameter under it.
pub fn thread_fit(pitch: f64, corners: &[ThreadCorner], text: &str) -> Html {
    html! {
        <>
            <div class="corners" role="img" aria-label={text.to_owned()}>
                { for corners.iter().map(|corner| section(pitch, corner)) }
            </div>
            <div class="legend" aria-hidden="true"><ul>
                <li><i class="swatch steel"></i>{ "Bolt" }</li>
                <li><i class="swatch zinc"></i>{ "Zinc" }</li>
                <li><i class="swatch nut"></i>{ "Nut" }</li>
            </ul></div>
        </>
    }
}

fn section(pitch: f64, corner: &ThreadCorner) -> Html {
    let [major, middle, minor] = corner.bolt;
    // Normal to a 60° flank, a coat of t moves the pitch diameter by 4 t, crest and root by 2 t.
    let coated = [major + 2.0 * corner.coat, middle + 4.0 * corner.coat, minor + 2.0 * corner.coat];
    let [nut_major, nut_middle, _] = corner.nut;
    let clearance = nut_middle - (middle + 4.0 * corner.coat);
    let outer = nut_major.max(coated[0]) / 2.0 + 0.1 * pitch;
    let inner = minor / 2.0 - 0.12 * pitch;
    let view = format!("{} {} {} {}", -pitch, -outer, 2.0 * pitch, outer - inner);
    let solid = |diameters| area(&profile(pitch, diameters), pitch, inner);
    let nut = area(&profile(pitch, corner.nut), pitch, outer);
    let said = if clearance < 0.0 {
        format!("{:.0} µm too tight", -clearance * 1000.0)
    } else {
        format!("{:.0} µm clear", clearance * 1000.0)
    };
    html! {
        <div class="corner" aria-hidden="true">
            <svg viewBox={view} class="fit">
                <path class="nut" d={nut} />
                <path class="zinc" d={solid(coated)} />
                <path class="steel" d={solid(corner.bolt)} />
            </svg>
            <p><b>{ corner.label }</b>{ ": " }<span class={classes!((clearance < 0.0).then_some("tight"))}>{ said }</span></p>
        </div>
    }
}

/// The outline of a thread over two pitches: places along the axis with radii. For a nut it is the
/// outline of the space in it.
fn profile(pitch: f64, [major, middle, minor]: [f64; 3]) -> Vec<(f64, f64)> {
    // At the pitch diameter ridge and groove are equally wide.
    let half = |diameter: f64| (pitch / 4.0 - (diameter - middle) / 2.0 * TAN_30).clamp(0.0, pitch / 2.0);
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
    let mut path = format!("M{:.4} {:.4}", -2.0 * pitch, -line);
    for (along, radius) in outline {
        path.push_str(&format!("L{along:.4} {:.4}", -radius));
    }
    path.push_str(&format!("L{:.4} {:.4}z", 2.0 * pitch, -line));
    path
}
