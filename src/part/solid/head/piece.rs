//! Surface and volume of a head.

use std::f64::consts::PI;

use super::super::super::hexagon;
use super::super::{Measure, Piece, cap, cap_area, disc, frustum, measure};
use super::{Angle, Head, SEC_20, flange_cone};

impl Head {
    /// The head without the seat of the shank below it.
    pub(in super::super) fn piece(&self, d: f64) -> Option<Piece> {
        let seat = disc(d);
        Some(match self {
            Self::None | Self::Plain | Self::Bow { .. } => return None,
            Self::Hexagon { flats, height } => {
                let (s, k) = (flats.mm(), height.mm());
                Piece::new(
                    "hexagon head: two faces and six sides, less the chamfer and the seat of the shank",
                    measure(
                        "A_head",
                        "sqrt(3)·s^2 + 2·sqrt(3)·s·k − c_A·s^2 − π/4·d^2",
                        2.0 * hexagon::face(s) + hexagon::sides(s, k) - hexagon::CHAMFER_AREA * s * s - seat,
                    ),
                    measure(
                        "V_head",
                        "sqrt(3)/2·s^2·k − c_V·s^3",
                        hexagon::face(s) * k - hexagon::CHAMFER_VOLUME * s * s * s,
                    ),
                )
            }
            Self::Flange { flats, height, flange, rim } => {
                let (s, k, dc, c) = (flats.mm(), height.mm(), flange.mm(), rim.mm());
                let cone = flange_cone(dc, s);
                let hex = k - c - cone;
                Piece::new(
                    "hexagon on its flange: seat, rim, cone, six sides and the face",
                    measure(
                        "A_head",
                        "π/4·(dc^2 − d^2) + π·dc·c + 1.0642·π/4·(dc^2 − s^2) + 2·sqrt(3)·s·(k − c − h_f) + \
                         sqrt(3)/2·s^2 − c_A·s^2",
                        disc(dc) - seat
                            + PI * dc * c
                            + SEC_20 * (disc(dc) - disc(s))
                            + hexagon::sides(s, hex)
                            + hexagon::face(s)
                            - hexagon::CHAMFER_AREA * s * s,
                    ),
                    measure(
                        "V_head",
                        "π/4·dc^2·c + π/12·h_f·(dc^2 + dc·s + s^2) + sqrt(3)/2·s^2·(k − c − h_f) − c_V·s^3",
                        disc(dc) * c + frustum(dc, s, cone) + hexagon::face(s) * hex
                            - hexagon::CHAMFER_VOLUME * s * s * s,
                    ),
                )
            }
            Self::Socket { diameter, height, flats, depth } => {
                let (dk, k, s, t) = (diameter.mm(), height.mm(), flats.mm(), depth.mm());
                Piece::new(
                    "socket head: two faces, the side and the walls of the socket, less the seat of the shank",
                    measure(
                        "A_head",
                        "π/2·dk^2 + π·dk·k + 2·sqrt(3)·s·t − π/4·d^2",
                        2.0 * disc(dk) + PI * dk * k + hexagon::sides(s, t) - seat,
                    ),
                    measure("V_head", "π/4·dk^2·k − sqrt(3)/2·s^2·t", disc(dk) * k - hexagon::face(s) * t),
                )
            }
            Self::Countersunk { diameter, height, flats, depth, angle } => {
                let (dk, k, s, t) = (diameter.mm(), height.mm(), flats.mm(), depth.mm());
                let cone = (dk - d) / 2.0 * angle.cotangent();
                let of_area = match angle {
                    Angle::Ninety => "π/4·dk^2 + π·dk·(k − h_c) + sqrt(2)·π/4·(dk^2 − d^2) + 2·sqrt(3)·s·t",
                    Angle::EightyTwo => "π/4·dk^2 + π·dk·(k − h_c) + 1.5243·π/4·(dk^2 − d^2) + 2·sqrt(3)·s·t",
                };
                Piece::new(
                    "countersunk head: face, edge, cone and the walls of the socket",
                    measure(
                        "A_head",
                        of_area,
                        disc(dk)
                            + PI * dk * (k - cone)
                            + angle.cosecant() * (disc(dk) - seat)
                            + hexagon::sides(s, t),
                    ),
                    measure(
                        "V_head",
                        "π/4·dk^2·(k − h_c) + π/12·h_c·(dk^2 + dk·d + d^2) − sqrt(3)/2·s^2·t",
                        disc(dk) * (k - cone) + frustum(dk, d, cone) - hexagon::face(s) * t,
                    ),
                )
            }
            Self::Button { diameter, height, flats, depth } => {
                let (dk, k, s, t) = (diameter.mm(), height.mm(), flats.mm(), depth.mm());
                Piece::new(
                    "button head: seat, cap and the walls of the socket",
                    measure(
                        "A_head",
                        "π/2·dk^2 + π·k^2 + 2·sqrt(3)·s·t − π/4·d^2",
                        disc(dk) + cap_area(dk, k) + hexagon::sides(s, t) - seat,
                    ),
                    measure(
                        "V_head",
                        "π/24·k·(3·dk^2 + 4·k^2) − sqrt(3)/2·s^2·t",
                        cap(dk, k) - hexagon::face(s) * t,
                    ),
                )
            }
            Self::Round { diameter, height, square, depth } => {
                let (dk, k, v, f) = (diameter.mm(), height.mm(), square.mm(), depth.mm());
                Piece::new(
                    "round head and its square neck",
                    measure(
                        "A_head",
                        "π/2·dk^2 + π·k^2 + 4·v·f − π/4·d^2",
                        disc(dk) + cap_area(dk, k) + 4.0 * v * f - seat,
                    ),
                    measure("V_head", "π/24·k·(3·dk^2 + 4·k^2) + v^2·f", cap(dk, k) + v * v * f),
                )
            }
            Self::Pan { diameter, height } => {
                let (dk, k) = (diameter.mm(), height.mm());
                Piece::new(PAN, pan_area(dk, k, d), pan_volume(dk, k))
            }
            Self::Eye { diameter, hole, thickness } => {
                let (de, dh, s) = (diameter.mm(), hole.mm(), thickness.mm());
                Piece::new(
                    "eye: a ball flattened to its thickness, less the hole and the root of the shank",
                    measure(
                        "A_head",
                        "π/2·(d_e^2 − s^2 − d_h^2) + π·s·(d_e + d_h) − π/4·d^2",
                        PI / 2.0 * (de * de - s * s - dh * dh) + PI * s * (de + dh) - seat,
                    ),
                    measure(
                        "V_head",
                        "π/4·s·(d_e^2 − s^2/3 − d_h^2)",
                        PI / 4.0 * s * (de * de - s * s / 3.0 - dh * dh),
                    ),
                )
            }
        })
    }
}

pub(in super::super) const PAN: &str = "pan head: half of the height a cylinder, half a cap";

pub(in super::super) fn pan_area(dk: f64, k: f64, d: f64) -> Measure {
    let value = disc(dk) - disc(d) + PI * dk * k / 2.0 + cap_area(dk, k / 2.0);
    measure("A_head", "π/2·dk^2 + π/2·dk·k + π/4·k^2 − π/4·d^2", value)
}

pub(in super::super) fn pan_volume(dk: f64, k: f64) -> Measure {
    measure("V_head", "π/8·dk^2·k + π/48·k·(3·dk^2 + k^2)", disc(dk) * k / 2.0 + cap(dk, k / 2.0))
}
