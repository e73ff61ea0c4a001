//! What the page costs to load.

use std::io::Write;
use std::path::Path;

use super::offline::{SERVICE_WORKER, files};
use super::run::{Done, read};

/// What a first visit may transfer, in bytes, compressed by brotli at its best.
const FIRST_LOAD: usize = 400_000;

/// Prints what a first visit transfers, file by file, and holds the sum against its budget.
///
/// The service worker fetches every file of the page, so every file counts.
pub fn first_load(dist: &Path) -> Done {
    println!("First load, brotli -q 11:");
    let mut sum = 0;
    for file in files(dist)?.into_iter().chain([dist.join(SERVICE_WORKER)]) {
        let content = read(&file)?;
        let transferred = brotli(&content)?;
        sum += transferred;
        let name = file.strip_prefix(dist)?.display();
        println!("{transferred:>9} B of {:>9} B  {name}", content.len());
    }
    within("first load", sum, FIRST_LOAD)
}

/// Prints a size beside its budget, and ends the task where it is passed.
pub fn within(what: &str, size: usize, budget: usize) -> Done {
    let line = format!("{what}: {:.1} kB, budget {:.0} kB", kilo(size), kilo(budget));
    println!("{line}");
    if size <= budget { Ok(()) } else { Err(format!("over budget: {line}").into()) }
}

fn kilo(bytes: usize) -> f64 {
    bytes as f64 / 1e3
}

fn brotli(content: &[u8]) -> Done<usize> {
    let mut packed = Vec::new();
    let mut writer = brotli::CompressorWriter::new(&mut packed, 65_536, 11, 22);
    writer.write_all(content)?;
    writer.flush()?;
    drop(writer);
    Ok(packed.len())
}
