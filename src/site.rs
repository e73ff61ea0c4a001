//! Where the part will stand, how fast the air there takes zinc, and how long a coat lasts.
//!
//! [`Category`] is the corrosivity of a place, [`Categories`] what it may be; [`dose_response`] estimates the first year's loss from
//! its climate; [`life`] turns a thickness and a loss into years and back; [`surroundings`] says
//! where none of this holds; [`salt_spray`] knows the hours that a standard states, and no others.

mod categories;
mod category;
mod climate;
pub mod life;
pub mod salt_spray;
pub mod surroundings;

pub use categories::Categories;
pub use category::{Category, Rates};
pub use climate::{Climate, FirstYear, SO2_IN_AIR, dose_response};
pub use surroundings::Surroundings;
