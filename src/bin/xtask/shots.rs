//! Pictures of the page: to look at while working on it, and one for the README.

use std::path::Path;

use serde_json::json;

use super::browser::CHROMIUM;
use super::run::{Done, step, top, write};
use super::server::Server;
use super::webdriver::Session;

/// A phone, a tablet upright, a desk: width and height in CSS pixels.
const SIZES: [(u32, u32); 3] = [(360, 740), (768, 1024), (1280, 800)];

/// Takes the whole page at each address (`#…`; the bare page where none is given), at every size,
/// light and dark, into `target/shots/`.
pub fn shots(dist: &Path, addresses: &[String]) -> Done {
    let bare = [String::new()];
    let addresses = if addresses.is_empty() { &bare } else { addresses };
    let folder = top().join("target/shots");
    CHROMIUM.ensure()?;
    step("take pictures", || {
        let server = Server::start(dist, 0)?;
        let session = Session::open(&CHROMIUM)?;
        for address in addresses {
            for (width, height) in SIZES {
                for scheme in ["light", "dark"] {
                    let picture = take(&session, &server, address, (width, height), scheme)?;
                    let file = folder.join(format!("{}-{width}-{scheme}.png", file_name(address)));
                    write(&file, picture)?;
                    println!("{}", file.display());
                }
            }
        }
        Ok(())
    })
}

/// Takes the README's picture. It lies with what belongs to the page, but no file of the page names
/// it, so that nobody loads it with the page.
pub fn picture(dist: &Path, address: &str) -> Done {
    CHROMIUM.ensure()?;
    step("take the README's picture", || {
        let server = Server::start(dist, 0)?;
        let session = Session::open(&CHROMIUM)?;
        session.size(1280, 900)?;
        look(&session, &server, address, "light")?;
        write(&top().join("src/page/static/picture.png"), session.screenshot()?)
    })
}

fn take(session: &Session, server: &Server, address: &str, size: (u32, u32), scheme: &str) -> Done<Vec<u8>> {
    session.size(size.0, size.1)?;
    look(session, server, address, scheme)?;
    session.full_page()
}

fn look(session: &Session, server: &Server, address: &str, scheme: &str) -> Done {
    let features = json!({ "features": [
        { "name": "prefers-color-scheme", "value": scheme },
        { "name": "prefers-reduced-motion", "value": "reduce" },
    ] });
    session.devtools("Emulation.setEmulatedMedia", features)?;
    // By way of an empty page: where only the part after # differs the browser would not load anew.
    session.go("about:blank")?;
    session.go(&format!("{}{address}", server.address()))?;
    session.until(
        "document.getElementById('page').childElementCount > 0 && document.fonts.status === 'loaded'",
    )?;
    // Headlines are filled in after a short pause.
    std::thread::sleep(std::time::Duration::from_millis(600));
    Ok(())
}

/// A file name for an address: its letters and digits, the rest as dashes.
fn file_name(address: &str) -> String {
    let name: String =
        address.chars().map(|letter| if letter.is_alphanumeric() { letter } else { '-' }).collect();
    let name: String = name.trim_matches('-').chars().take(60).collect();
    if name.is_empty() { "page".into() } else { name }
}
