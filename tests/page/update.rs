//! A new version waits until the person at the page asks for it.

use std::path::{Path, PathBuf};

use crate::harness::{Done, KEPT};
use crate::xtask::browser::{BROWSERS, Browser};
use crate::xtask::run::{read_text, top, write};
use crate::xtask::server::Server;
use crate::xtask::webdriver::Session;

#[test]
fn a_new_version_is_told_of_and_comes_when_it_is_asked_for() -> Done {
    BROWSERS.iter().try_for_each(new_version)
}

fn new_version(browser: &'static Browser) -> Done {
    let folder = copy_of_dist(&format!("update/{}", browser.name))?;
    let server = Server::start(&folder, 0)?;
    let session = Session::open(browser)?;
    session.go(&server.address())?;
    session.until(KEPT)?;

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

/// Two tabs, of which one has a clock that stands in another century: both learn of the new version and go on
/// with the old one until each is asked, and neither loads half of one and half of the other.
#[test]
fn two_tabs_take_a_new_version_each_when_it_is_asked_whatever_the_clock_shows() -> Done {
    BROWSERS.iter().try_for_each(two_tabs)
}

fn two_tabs(browser: &'static Browser) -> Done {
    let folder = copy_of_dist(&format!("two-tabs/{}", browser.name))?;
    let server = Server::start(&folder, 0)?;
    let session = Session::open(browser)?;
    let is_new = |session: &Session| session.value("document.documentElement.hasAttribute('data-new')");
    session.go(&server.address())?;
    session.until(KEPT)?;
    session.another_tab()?;
    session.go(&server.address())?;
    session.until(KEPT)?;

    change(&folder.join("index.html"), "<html ", "<html data-new ")?;
    change(&folder.join("service-worker.js"), "\"version\":\"", "\"version\":\"new-")?;
    // The page asks once an hour at most, by the device's clock: set to another time it asks at once.
    for (tab, year) in [(1, 1970), (0, 2099)] {
        session.tab(tab)?;
        session.value(&format!(
            "(Date.now = () => Date.UTC({year}, 0, 1), document.dispatchEvent(new Event('visibilitychange')), true)"
        ))?;
        session.until("!document.getElementById('new-version').hidden")?;
        assert_eq!(is_new(&session)?, false);
    }
    session.click("#new-version button")?;
    session.until("document.documentElement.hasAttribute('data-new')")?;
    // The other one stays as it is, works on, and comes after when it is asked.
    session.tab(1)?;
    assert_eq!(is_new(&session)?, false);
    session.value("(location.hash = '#coat', true)")?;
    session.until("document.querySelector('h1')?.innerText === 'Coat thickness and mass'")?;
    session.click("#new-version button")?;
    session.until("document.documentElement.hasAttribute('data-new')")?;
    session.until("document.querySelector('h1')?.innerText === 'Coat thickness and mass'")?;
    let caches = session.value("caches.keys().then(names => names.length)")?;
    if caches == 1 { Ok(()) } else { Err(format!("{caches} caches are left").into()) }
}

/// One file is missing at the first visit, as on a poor network: nothing is kept then, and as soon as
/// the file comes the page is kept without being loaded again.
#[test]
fn a_first_keeping_that_broke_off_is_tried_again() -> Done {
    BROWSERS.iter().try_for_each(first_keeping)
}

fn first_keeping(browser: &'static Browser) -> Done {
    let folder = copy_of_dist(&format!("first-keeping/{}", browser.name))?;
    let (icon, aside) = (folder.join("icon-512.png"), folder.join("aside"));
    std::fs::rename(&icon, &aside)?;
    let server = Server::start(&folder, 0)?;
    let session = Session::open(browser)?;
    session.go(&server.address())?;
    session.until("navigator.serviceWorker.getRegistration().then(it => it?.installing === null)")?;
    assert_eq!(session.value(KEPT)?, false);
    std::fs::rename(&aside, &icon)?;
    session.until(KEPT)
}

fn change(file: &Path, old: &str, new: &str) -> Done {
    let text = read_text(file)?;
    if !text.contains(old) {
        return Err(format!("{} does not hold {old}", file.display()).into());
    }
    write(file, text.replacen(old, new, 1))
}

/// The built page in a folder of its own, which a test may change.
fn copy_of_dist(name: &str) -> Done<PathBuf> {
    let folder = top().join("target/page").join(name);
    if folder.exists() {
        std::fs::remove_dir_all(&folder)?;
    }
    std::fs::create_dir_all(&folder)?;
    for entry in std::fs::read_dir(top().join("dist"))? {
        let entry = entry?;
        std::fs::copy(entry.path(), folder.join(entry.file_name()))?;
    }
    Ok(folder)
}
