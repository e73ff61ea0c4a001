//! A part whose sizes are still to be given: for kinds and threads that no table here has.

use crate::part::{
    Angle, Bolt, CotterPin, Head, Kind, Nut, NutBody, Profile, Ring, SetScrew, Shape, Size, Solid, SpringPin,
    SpringWasher, TappingHead, TappingScrew, Washer,
};
use crate::quantity::Length;

/// The shape of a kind with its thread and length and no other size; `None` where a kind has no shape.
pub(in crate::part) fn template(kind: Kind, profile: Profile, length: Option<Length>) -> Option<Shape> {
    const X: Size = Size::missing();
    let length = length.map_or(X, Size::own);
    let bolt = |head| Solid::Bolt(Bolt { head, profile, length, thread_length: X, shank: None });
    let nut = |body| Solid::Nut(Nut { profile, body, flats: X, height: X, countersink: X, tapped: true });
    let tapping = |head| Solid::Tapping(TappingScrew { head, major: X, core: X, pitch: X, length, point: X });
    let ring = |internal| Solid::Ring(Ring { internal, free: X, thickness: X, width: X });
    let angle = if profile.is_metric { Angle::Ninety } else { Angle::EightyTwo };
    let solid = match kind {
        Kind::HexBolt | Kind::HexScrew | Kind::StructuralBolt | Kind::HrBolt | Kind::HeavyHexBolt => {
            bolt(Head::Hexagon { flats: X, height: X })
        }
        Kind::FlangeBolt => bolt(Head::Flange { flats: X, height: X, flange: X, rim: X }),
        Kind::CarriageBolt => bolt(Head::Round { diameter: X, height: X, square: X, depth: X }),
        Kind::EyeBolt => bolt(Head::Eye { diameter: X, hole: X, thickness: X }),
        Kind::UBolt => bolt(Head::Bow { width: X }),
        Kind::SocketScrew => bolt(Head::Socket { diameter: X, height: X, flats: X, depth: X }),
        Kind::CountersunkScrew => {
            bolt(Head::Countersunk { diameter: X, height: X, flats: X, depth: X, angle })
        }
        Kind::ButtonScrew => bolt(Head::Button { diameter: X, height: X, flats: X, depth: X }),
        Kind::MachineScrew => bolt(Head::Pan { diameter: X, height: X }),
        Kind::Rod | Kind::Stud => {
            Solid::Bolt(Bolt { head: Head::None, profile, length, thread_length: length, shank: None })
        }
        Kind::AnchorRod => bolt(Head::Plain),
        Kind::SetScrew => Solid::SetScrew(SetScrew { profile, length, point: X, flats: X, depth: X }),
        Kind::TappingScrew => tapping(TappingHead::Pan { diameter: X, height: X }),
        Kind::DrywallScrew => tapping(TappingHead::Bugle { diameter: X }),
        Kind::HexNut | Kind::HeavyHexNut => nut(NutBody::Hexagon),
        Kind::FlangeNut => nut(NutBody::Flange { flange: X, rim: X }),
        Kind::SquareNut => nut(NutBody::Square { circle: X }),
        Kind::LockNut => nut(NutBody::Collar { overall: X }),
        Kind::Washer | Kind::WideWasher | Kind::NarrowWasher | Kind::ConicalWasher | Kind::ToothedWasher => {
            Solid::Washer(Washer { inside: X, outside: X, thickness: X })
        }
        Kind::SpringWasher => Solid::SpringWasher(SpringWasher { inside: X, width: X, thickness: X }),
        Kind::RetainingRing | Kind::SnapRing => ring(false),
        Kind::InternalRing => ring(true),
        Kind::CotterPin => {
            Solid::CotterPin(CotterPin { diameter: X, length, long_end: X, eye_length: X, eye_width: X })
        }
        Kind::SpringPin => Solid::SpringPin(SpringPin { diameter: X, wall: X, length }),
        // Their sizes are not asked one by one: by its area and its mass such a part is judged.
        Kind::FormingScrew
        | Kind::LagScrew
        | Kind::WoodScrew
        | Kind::ChipboardScrew
        | Kind::ConcreteScrew
        | Kind::HangerBolt
        | Kind::SquareBolt
        | Kind::DoubleEndStud
        | Kind::BentAnchor
        | Kind::OtherBolt
        | Kind::ThinNut
        | Kind::CouplingNut
        | Kind::OtherNut
        | Kind::OtherWasher
        | Kind::ClevisPin
        | Kind::ParallelPin
        | Kind::Other => return None,
    };
    Some(solid.into())
}
