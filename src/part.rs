//! Parts: the shape of a fastener, its surface with the developed area of the thread, its volume
//! and its mass.
//!
//! [`standard`] gives the shape of a standard part with a source for each size; every size can be
//! overwritten ([`Shape::resized`]) and what results is checked ([`Shape::check`]). The room knows
//! nothing of steels, coats or places.

mod explain;
mod hexagon;
mod kind;
mod own;
mod pieces;
mod profile;
mod shape;
mod standard;

pub use explain::working;
pub use kind::{Form, Kind, Threaded, Unknown, UsualSteel};
pub use own::OwnSizeError;
pub use profile::Profile;
pub use shape::{Bolt, Dimension, Head, Nut, Shape, Size, Unsound, Washer};
pub use standard::{covered, standard};

use crate::quantity::Density;
use crate::source::{Sourced, common_practice};

/// Density of the steel of fasteners: 7850 kg/m³.
pub const STEEL: Sourced<Density> =
    common_practice("carbon steel, 7850 kg/m³").gives(Density::from_g_m2_um(7.85));
