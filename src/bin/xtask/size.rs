//! What the page costs to load.

use std::path::Path;

use super::offline::{SERVICE_WORKER, files};
use super::run::{Done, read};

/// What a first visit may transfer, compressed by brotli at its best.
const FIRST_LOAD: Budget = Budget { what: "first load", goal: 400_000, reached: 868_300 };

/// A size that is watched, in bytes.
#[derive(Debug, Clone, Copy)]
pub struct Budget {
    /// What is measured.
    pub what: &'static str,
    /// What it may come to.
    pub goal: usize,
    /// What it came to when it was last looked at; the goal where it was less.
    pub reached: usize,
}

/// Prints what a first visit transfers, file by file, and holds the sum against its budget.
///
/// The service worker fetches every file of the page, so every file counts.
pub fn first_load(dist: &Path) -> Done {
    println!("First load, brotli -q 11:");
    FIRST_LOAD.hold(transferred(dist)?)
}

/// Prints every file of a page with what it transfers, and returns the sum.
pub fn transferred(dist: &Path) -> Done<usize> {
    let mut sum = 0;
    let worker = Some(dist.join(SERVICE_WORKER)).filter(|file| file.exists());
    for file in files(dist)?.into_iter().chain(worker) {
        let content = read(&file)?;
        let transferred = brotli(&content)?;
        sum += transferred;
        let name = file.strip_prefix(dist)?.display();
        println!("{transferred:>9} B of {:>9} B  {name}", content.len());
    }
    Ok(sum)
}

impl Budget {
    /// Prints a size beside its goal, and ends the task where it has grown by more than a twentieth over
    /// what was reached.
    ///
    /// Where the goal is not met yet, what was reached keeps the size from growing until it is.
    pub fn hold(self, size: usize) -> Done {
        let Self { what, goal, reached } = self;
        let missed = if size > goal { ": NOT met" } else { "" };
        println!("{what}: {:.1} kB, budget {:.0} kB{missed}", kilo(size), kilo(goal));
        let most = reached.max(goal) + if reached > goal { reached / 20 } else { 0 };
        if size <= most {
            return Ok(());
        }
        Err(format!("{what} has grown to {:.1} kB, over {:.1} kB", kilo(size), kilo(most)).into())
    }
}

fn kilo(bytes: usize) -> f64 {
    bytes as f64 / 1e3
}

/// As `brotli -q 11` packs a file: it knows how long the file is before it begins.
fn brotli(content: &[u8]) -> Done<usize> {
    let options = brotli::enc::BrotliEncoderParams {
        quality: 11,
        lgwin: 22,
        size_hint: content.len(),
        ..Default::default()
    };
    let mut packed = Vec::new();
    Ok(brotli::BrotliCompress(&mut &content[..], &mut packed, &options)?)
}
