//! Parts: the shape of a fastener, its surface with the developed area of the thread, its volume
//! and its mass.
//!
//! [`standard()`] gives the shape of a standard part with a source for each size; [`shape()`] takes the
//! user's own sizes as well, and what results is checked ([`Shape::check`]). The room knows nothing of
//! steels, coats or places.

mod hexagon;
mod kind;
mod outline;
mod own;
mod profile;
mod shape;
mod solid;
mod standard;

pub use kind::{Form, Kind, Threaded, UsualSteel};
pub use outline::{Drawn, Outline, Place, Surface, Turned};
pub use own::{OwnSizeError, ShapeError, shape};
pub use profile::Profile;
pub use shape::{Dimension, Listed, Shape, Size, Solid, Unsound, working};
pub use solid::bolt::Bolt;
pub use solid::head::{Angle, Head};
pub use solid::nut::{Nut, NutBody};
pub use solid::pin::{CotterPin, SpringPin};
pub use solid::ring::Ring;
pub use solid::set_screw::SetScrew;
pub use solid::tapping::{TappingHead, TappingScrew};
pub use solid::washer::{SpringWasher, Washer};
pub use standard::{covered, standard, thickness_of_washer};

use crate::quantity::Density;
use crate::source::{Sourced, common_practice};

/// Density of the steel of fasteners: 7850 kg/m³.
pub const STEEL: Sourced<Density> =
    common_practice("carbon steel, 7850 kg/m³").gives(Density::from_g_m2_um(7.85));
