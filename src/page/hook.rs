//! Hooks: what components have in common that is not seen.

mod address;
mod kept;
mod painted;
mod pause;
mod wide;

pub use address::use_address;
pub use kept::use_kept;
pub use painted::{use_drawn, use_painted};
pub use pause::use_pause;
pub use wide::use_wide;
