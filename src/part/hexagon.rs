//! A hexagon with its corners turned off at 30°, as heads and nuts have them.

use crate::source::{Source, document};

/// The circle where the chamfer begins, as a share of the width across flats.
pub(super) const CHAMFER_CIRCLE: f64 = 0.95;
/// Where the circle is published.
pub(super) const CHAMFER_SOURCE: Source =
    document::ASME_B18_2_2.read("chamfer circle: 95 per cent of the width across flats");

/// `∫ sec³` from 0° to 30°: `1/3 + ln 3 / 4`.
const SEC_CUBED: f64 = 1.0 / 3.0 + 1.098_612_288_668_109_8 / 4.0;
const ROOT_3: f64 = 1.732_050_807_568_877_2;
/// Radius of the circle for a width across flats of 1.
const R: f64 = CHAMFER_CIRCLE / 2.0;

/// What one chamfer takes from the area of a hexagon, in squares of its width across flats: the
/// corners of the sides are lost, and the face outside the circle is tilted by 30°.
pub(super) const CHAMFER_AREA: f64 = {
    let sides = 2.0 * ROOT_3 * (SEC_CUBED / 2.0 - R / ROOT_3);
    let outside = ROOT_3 / 2.0 - std::f64::consts::PI * R * R;
    sides - (2.0 / ROOT_3 - 1.0) * outside
};

/// What one chamfer takes from the volume of a hexagon, in cubes of its width across flats.
pub(super) const CHAMFER_VOLUME: f64 =
    4.0 * ROOT_3 * (SEC_CUBED / 24.0 - R / (8.0 * ROOT_3) + std::f64::consts::PI * R * R * R / 36.0);

/// Width across flats for a width across corners of 1: `cos 30°`.
pub(super) const COS_30: f64 = ROOT_3 / 2.0;

/// Depth of the chamfer at a corner, in widths across flats.
pub(super) const CHAMFER_DEPTH: f64 = (1.0 / ROOT_3 - R) / ROOT_3;

/// Area of a hexagonal face.
pub(super) fn face(flats: f64) -> f64 {
    ROOT_3 / 2.0 * flats * flats
}

/// Area of the six sides.
pub(super) fn sides(flats: f64, height: f64) -> f64 {
    2.0 * ROOT_3 * flats * height
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The same by summing thin strips of one corner of the hexagon.
    #[test]
    fn the_chamfer_agrees_with_a_sum_over_strips() {
        let tilt = (std::f64::consts::PI / 6.0).tan();
        let (mut volume, mut sides) = (0.0, 0.0);
        let strips = 200_000;
        for strip in 0..strips {
            let step = std::f64::consts::PI / 6.0 / f64::from(strips);
            let edge = 0.5 / (step * (f64::from(strip) + 0.5)).cos();
            volume += 12.0 * tilt * step * (edge.powi(3) / 3.0 - R * edge * edge / 2.0 + R.powi(3) / 6.0);
            sides += 12.0 * tilt * (edge - R) * step * 2.0 * edge * edge;
        }
        let outside = face(1.0) - std::f64::consts::PI * R * R;
        let area = sides - (1.0 / (std::f64::consts::PI / 6.0).cos() - 1.0) * outside;
        assert!((volume - CHAMFER_VOLUME).abs() < 1e-9, "{volume} {CHAMFER_VOLUME}");
        assert!((area - CHAMFER_AREA).abs() < 1e-8, "{area} {CHAMFER_AREA}");
    }
}
