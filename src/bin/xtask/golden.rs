//! The verdicts of 400 orders, written anew.

use super::run::{Done, cargo, run};

/// Lets the test that compares the file write it instead.
pub fn renew() -> Done {
    run(cargo()
        .args(["test", "--quiet", "--test", "property", "golden::golden"])
        .env("KETTLE_BARREL_RENEW", "golden"))
}
