//! The page always says something: where it cannot start, and where it has stopped.

use std::path::Path;

use crate::harness::{Done, in_chromium_with};
use crate::xtask::run::{read, read_text, top, write};

/// A copy of the page that something was done to.
fn copy(name: &str, spoil: impl Fn(&Path) -> Done) -> Done<std::path::PathBuf> {
    let folder = top().join("target/page").join(name);
    if folder.exists() {
        std::fs::remove_dir_all(&folder)?;
    }
    std::fs::create_dir_all(&folder)?;
    for entry in std::fs::read_dir(top().join("dist"))? {
        let entry = entry?;
        std::fs::copy(entry.path(), folder.join(entry.file_name()))?;
    }
    spoil(&folder)?;
    Ok(folder)
}

/// The one file of the folder whose name ends so.
fn file(folder: &Path, ending: &str) -> Done<std::path::PathBuf> {
    let found = std::fs::read_dir(folder)?.filter_map(Result::ok).map(|entry| entry.path());
    let mut found = found.filter(|path| path.to_string_lossy().ends_with(ending));
    found.next().ok_or_else(|| format!("no file ends in {ending}").into())
}

/// Before the page, a script that takes something away.
fn with_script(folder: &Path, script: &str) -> Done {
    let index = folder.join("index.html");
    let page = read_text(&index)?;
    let (policy, hash) = ("script-src ", crate::xtask::html::policy_hash(script));
    let page = page.replacen(policy, &format!("{policy}{hash} "), 1);
    let (before, after) = page.split_once("<script").ok_or("no script")?;
    write(&index, format!("{before}<script>{script}</script><script{after}"))
}

#[test]
fn a_page_that_cannot_start_says_why_in_a_plain_sentence() -> Done {
    type Spoil = fn(&Path) -> Done;
    let cases: [(&str, Spoil, &str); 6] = [
        ("no-webassembly", |folder| with_script(folder, "delete window.WebAssembly"), "has no WebAssembly"),
        ("no-program", |folder| Ok(std::fs::remove_file(file(folder, ".wasm")?)?), "missing or damaged"),
        (
            "cut-program",
            |folder| {
                let program = file(folder, ".wasm")?;
                let half = read(&program)?.len() / 2;
                write(&program, &read(&program)?[..half])
            },
            "missing or damaged",
        ),
        ("wrong-program", |folder| write(&file(folder, ".wasm")?, "<!DOCTYPE html>"), "missing or damaged"),
        ("no-glue", |folder| Ok(std::fs::remove_file(file(folder, ".js")?)?), "missing or damaged"),
        (
            "forbidden",
            |folder| {
                let index = folder.join("index.html");
                write(&index, read_text(&index)?.replacen("'wasm-unsafe-eval'", "", 1))
            },
            "forbids WebAssembly",
        ),
    ];
    for (name, spoil, says) in cases {
        let folder = copy(name, |folder| {
            // The worker would fail for the same reason and is not what is tried here.
            std::fs::remove_file(folder.join("service-worker.js"))?;
            spoil(folder)
        })?;
        in_chromium_with(&folder, |page| {
            page.visit("#1/coat?coat=61+%C2%B5m")?;
            page.text_holds("#stopped", says).map_err(|why| format!("{name}: {why}"))?;
            page.until("location.hash.includes('coat=61')")?;
            page.wait_for("#stopped-export")
        })?;
    }
    Ok(())
}

#[test]
fn without_scripts_one_sentence_stays() -> Done {
    let folder = copy("no-scripts", |folder| {
        let index = folder.join("index.html");
        write(&index, read_text(&index)?.replacen("script-src ", "script-src 'none'; old-src ", 1))
    })?;
    in_chromium_with(&folder, |page| {
        page.visit("")?;
        page.text_holds("#waiting", "with scripts and WebAssembly")
    })
}

#[test]
fn a_page_in_a_frame_does_not_run_and_says_so() -> Done {
    let folder = copy("framed", |folder| write(&folder.join("around.html"), "<iframe src=\"./\"></iframe>"))?;
    in_chromium_with(&folder, |page| {
        // The server itself lets nobody frame the page; a host that does not is told by the page.
        page.visit("around.html")?;
        page.until("frames.length === 1 && document.querySelector('iframe').contentDocument === null")?;
        page.visit("")?;
        let framed = "const frame = document.createElement('iframe'); document.body.append(frame); \
                      frame.contentDocument.write(arguments[0]); frame.contentDocument.close();";
        page.script(framed, serde_json::json!([read_text(&folder.join("index.html"))?]))?;
        page.until(
            "frames[0].document.getElementById('stopped')?.innerText.includes('inside another page')",
        )?;
        page.until("frames[0].document.getElementById('page').childElementCount === 0")
    })
}

#[test]
fn a_program_that_has_stopped_is_told_and_what_is_saved_can_be_exported() -> Done {
    let folder = copy("stopped", |_| Ok(()))?;
    in_chromium_with(&folder, |page| {
        page.open("#1/coat?coat=61+%C2%B5m")?;
        page.click(".tools button:nth-of-type(2)")?;
        page.text_holds(".tools [role=status]", "Kept")?;
        page.fill("#field-coat", "62")?;
        page.until("location.hash.includes('coat=62')")?;
        // What a fault of the program throws.
        page.value(
            "dispatchEvent(new ErrorEvent('error', { error: new WebAssembly.RuntimeError('unreachable') }))",
        )?;
        page.text_holds("#stopped", "stopped for a fault of its own")?;
        page.until("location.hash.includes('coat=62')")?;
        page.value(
            "URL.createObjectURL = blob => { blob.text().then(text => window.exported = text); return '#'; }",
        )?;
        page.click("#stopped-export")?;
        page.until("JSON.parse(window.exported ?? '{}').entries?.[0].address.includes('coat=61')")
    })
}
