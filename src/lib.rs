//! Zinc on threaded steel fasteners.
#![cfg_attr(test, allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing))]

pub mod quantity;
pub mod source;
pub mod table;
pub mod working;
