//! Every check, in one run.

use super::browser::BROWSERS;
use super::run::{Done, cargo, run, step};
use super::tools::{axe_core, programs, tools};
use super::{build, bundle, mutants, recompute, size};

/// How much is checked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Extent {
    /// Everything; what is missing for it is brought or named, and never passed over.
    Everything,
    /// What needs neither wasm32 nor a browser.
    HostOnly,
}

const WASM: &str = "wasm32-unknown-unknown";

/// Runs the checks, the quick ones first.
pub fn test(extent: Extent) -> Done {
    step("format", || run(cargo().args(["fmt", "--check"])))?;
    step("clippy", || {
        run(cargo().args(["clippy", "--quiet", "--all-targets", "--all-features", "--"]).args(DENY))
    })?;
    programs(&["parallel"], &["parallel"])?;
    step("tests on this machine", || run(cargo().args(["test", "--quiet", "--features", "tasks"])))?;
    step("a sample of mutants", || {
        mutants::sample::sample(std::thread::available_parallelism().map_or(1, usize::from))
    })?;
    recompute::recompute(&["--inputs", "500", "--binding", "3"])?;
    if extent == Extent::HostOnly {
        println!("\nAll well on this machine. Left out: wasm32, the page, and the browsers.");
        return Ok(());
    }

    // The published checks run in Node as well, and axe-core comes by npm.
    programs(&["node", "npm"], &["nodejs", "npm"])?;
    // They read the sheets that browsers print.
    programs(&["pdfinfo", "pdftotext", "pdftoppm"], &["poppler-utils"])?;
    for browser in BROWSERS {
        browser.ensure()?;
    }
    let tools = tools()?;
    axe_core()?;
    step("clippy for wasm32", || {
        let mut clippy = cargo();
        clippy.args([
            "clippy",
            "--quiet",
            "--target",
            WASM,
            "--lib",
            "--bin",
            "page",
            "--test",
            "published",
            "--",
        ]);
        run(clippy.args(DENY))
    })?;
    step("published checks in wasm32", || {
        let runner = tools.wasm_bindgen.join("wasm-bindgen-test-runner");
        run(cargo()
            .args(["test", "--target", WASM, "--test", "published"])
            .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", runner))
    })?;
    let dist = build::build_with(&tools)?;
    size::first_load(&dist)?;
    bundle::bundle(&dist)?;
    let names: Vec<&str> = BROWSERS.iter().map(|browser| browser.name).collect();
    step(&format!("the page in {}", names.join(", ")), || {
        run(cargo().args(["test", "--quiet", "--features", "page-tests", "--test", "page"]))
    })?;
    println!("\nAll well: on this machine, in wasm32, and in {}.", names.join(", "));
    Ok(())
}

const DENY: [&str; 2] = ["-D", "warnings"];
