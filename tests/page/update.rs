//! A new version waits until the person at the page asks for it.

use std::path::Path;

use crate::harness::Done;
use crate::xtask::browser::CHROMIUM;
use crate::xtask::run::{read_text, top, write};
use crate::xtask::server::Server;
use crate::xtask::webdriver::Session;

/// In Chromium alone: the driver of Firefox does not always see a service worker come to be ready.
#[test]
fn a_new_version_is_told_of_and_comes_when_it_is_asked_for() -> Done {
    let browser = &CHROMIUM;
    let folder = top().join("target/page/update").join(browser.name);
    copy(&top().join("dist"), &folder)?;
    let server = Server::start(&folder, 0)?;
    let session = Session::open(browser)?;
    session.go(&server.address())?;
    session.until("navigator.serviceWorker.ready.then(() => navigator.serviceWorker.controller !== null)")?;

    change(&folder.join("index.html"), "<html ", "<html data-new ")?;
    change(&folder.join("service-worker.js"), "\"version\":\"", "\"version\":\"new-")?;
    // Not the driver's own reload: Firefox's goes by the service worker, as a forced reload does.
    let again = || {
        session.value("(document.body.dataset.before = true, location.reload())")?;
        session.until("document.readyState === 'complete' && !document.body.dataset.before")
    };
    again()?;
    session.until("!document.getElementById('new-version').hidden")?;
    again()?;
    session
        .until("!document.getElementById('new-version').hidden && !document.documentElement.hasAttribute('data-new')")?;
    session.click("#new-version button")?;
    session.until(
        "document.documentElement.hasAttribute('data-new') && document.getElementById('new-version').hidden",
    )?;
    let caches = session.value("caches.keys().then(names => names.length)")?;
    if caches == 1 { Ok(()) } else { Err(format!("{caches} caches are left, the old one with them").into()) }
}

fn change(file: &Path, old: &str, new: &str) -> Done {
    let text = read_text(file)?;
    if !text.contains(old) {
        return Err(format!("{} does not hold {old}", file.display()).into());
    }
    write(file, text.replacen(old, new, 1))
}

/// Copies a folder of plain files.
fn copy(from: &Path, to: &Path) -> Done {
    std::fs::create_dir_all(to)?;
    for entry in std::fs::read_dir(from)? {
        let entry = entry?;
        std::fs::copy(entry.path(), to.join(entry.file_name()))?;
    }
    Ok(())
}
