//! What lets the page work without a network after the first visit.

use std::path::{Path, PathBuf};

use serde_json::json;
use sha2::{Digest, Sha256};

use super::html::without_comments;
use super::run::{Done, read, read_text, top, write};

/// The name of the page as one file.
pub const ONE_FILE: &str = "kettle-and-barrel.html";

/// The service worker's file. Its name never changes: browsers ask for it again by its name.
pub const SERVICE_WORKER: &str = "service-worker.js";

/// What the service worker's source holds in place of the list of files.
const PLACE: &str = "\"what was built\"";

/// Writes the service worker with the list of the files in `dist` and a version made from them.
pub fn write_service_worker(dist: &Path) -> Done {
    let source = without_comments(&read_text(&source_of(SERVICE_WORKER))?);
    let mut version = Sha256::new_with_prefix(&source);
    let mut addresses = Vec::new();
    for file in files(dist)? {
        let address = file.strip_prefix(dist)?.to_string_lossy().replace('\\', "/");
        version.update(&address);
        version.update(read(&file)?);
        addresses.push(if address == "index.html" { "./".to_owned() } else { address });
    }
    let version: String = version.finalize().iter().take(8).map(|byte| format!("{byte:02x}")).collect();
    let list = json!({ "version": version, "files": addresses }).to_string();
    if source.matches(PLACE).count() != 1 {
        return Err(format!("{SERVICE_WORKER} must hold {PLACE} once").into());
    }
    write(&dist.join(SERVICE_WORKER), source.replace(PLACE, &list))
}

/// The source of the script that registers the service worker.
pub fn registration() -> PathBuf {
    source_of("offline.js")
}

/// The page with the script that registers the service worker.
pub fn with_registration(page: &str, script: &str) -> Done<String> {
    let (before, after) = page.rsplit_once("</body>").ok_or("index.html has no </body>")?;
    Ok(format!("{before}<script>{}</script></body>{after}", script.trim_end()))
}

/// The files a first visit brings to the device, apart from the service worker itself: all that
/// Trunk wrote. The whole page as one file, which may lie beside them, is not one of them.
pub fn files(dist: &Path) -> Done<Vec<PathBuf>> {
    let mut found = Vec::new();
    let mut folders = vec![dist.to_path_buf()];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(&folder)? {
            let path = entry?.path();
            if path.is_dir() {
                folders.push(path);
            } else if path != dist.join(SERVICE_WORKER) && path != dist.join(ONE_FILE) {
                found.push(path);
            }
        }
    }
    found.sort();
    Ok(found)
}

fn source_of(file: &str) -> PathBuf {
    top().join("src/page/static").join(file)
}
