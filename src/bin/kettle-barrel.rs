//! Placeholder binary.
fn main() {}
