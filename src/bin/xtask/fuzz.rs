//! Spoilt texts in every entry: `tests/property/fuzz.rs`, as long as one likes.

use super::run::{Done, cargo, run, step, top};

/// The entries that the texts are shared among.
const ENTRIES: u32 = 8;

/// Puts `cases` texts to the entries, fast and with overflow checks on.
pub fn fuzz(cases: u32) -> Done {
    let cases = cases.div_ceil(ENTRIES).to_string();
    step("spoilt texts", || {
        run(cargo()
            .args(["test", "--release", "--quiet", "--test", "property", "fuzz::"])
            // Apart from the page's, whose release is small and not fast.
            .arg("--target-dir")
            .arg(top().join("target/fuzz"))
            .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "2")
            .env("CARGO_PROFILE_RELEASE_LTO", "off")
            .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")
            .env("CARGO_PROFILE_RELEASE_OVERFLOW_CHECKS", "true")
            .env("CARGO_PROFILE_RELEASE_DEBUG_ASSERTIONS", "true")
            .env("KETTLE_BARREL_FUZZ", cases))
    })
}
