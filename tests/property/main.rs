//! What must hold for every input, and for the code as a whole.
#![cfg(not(target_arch = "wasm32"))]

mod architecture;
mod register;
mod working;
