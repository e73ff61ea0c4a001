//! A list of orders in the page: the same results as in the terminal, beside a page that answers.

use std::fmt::Write;
use std::process::{Command, Stdio};
use std::time::Instant;

use kettle_barrel::page::state::EXAMPLES;
use serde_json::{Value, json};
use sha2::{Digest, Sha256};

use crate::harness::{Done, Page, in_chromium, in_every_engine};

/// So many lines, of which some cannot be assessed or hold words that mean nothing.
fn lines(count: usize) -> String {
    let kinds =
        EXAMPLES.iter().copied().chain(["a song of praise", "M10 x 40 socket screw, 12.9, C3, for Peter"]);
    let kinds: Vec<&str> = kinds.collect();
    let mut lines = String::new();
    for (at, line) in kinds.iter().cycle().take(count).enumerate() {
        let _ = writeln!(lines, "{line}, item {at}");
    }
    lines
}

/// What the terminal makes of a list.
fn in_terminal(list: &[u8]) -> Done<Vec<u8>> {
    use std::io::Write;
    let program = env!("CARGO_BIN_EXE_kettle-barrel");
    let mut terminal = Command::new(program)
        .args(["list", "-"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()?;
    let mut input = terminal.stdin.take().ok_or("no way in")?;
    let list = list.to_vec();
    let writer = std::thread::spawn(move || input.write_all(&list));
    let output = terminal.wait_with_output()?;
    writer.join().map_err(|_| "the list was not written")??;
    Ok(output.stdout)
}

fn digest(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// Gives the page a file, made in the page by a script that has these arguments.
fn choose(page: &Page, content: &str, arguments: Value) -> Done {
    let script = format!(
        "const file = new DataTransfer(); file.items.add(new File([{content}], 'list.csv')); \
         const input = document.querySelector('input[type=file]'); input.files = file.files; \
         input.dispatchEvent(new Event('change', {{ bubbles: true }}))"
    );
    page.script(&script, arguments).map(drop)
}

/// Waits for the results: as long as it says how far it is, it is under way.
fn wait(page: &Page) -> Done {
    page.until("document.querySelector('progress, .outcome') !== null")?;
    while page.count("progress")? > 0 {
        std::thread::sleep(std::time::Duration::from_millis(100));
    }
    page.wait_for(".outcome")
}

/// The digest of the results that the page saves.
fn saved(page: &Page) -> Done<String> {
    let make = "window.make = URL.createObjectURL; URL.createObjectURL = (blob) => { window.saved = blob; return '#'; }";
    page.script(make, json!([]))?;
    page.click(".outcome .tools button")?;
    page.script("URL.createObjectURL = window.make", json!([]))?;
    let digest = "return window.saved.arrayBuffer().then((bytes) => crypto.subtle.digest('SHA-256', bytes)).then((digest) => \
                  [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join(''))";
    Ok(page.script(digest, json!([]))?.as_str().unwrap_or_default().to_owned())
}

/// `KETTLE_BARREL_LIST=100000` has the list that long.
#[test]
fn a_list_has_the_results_of_the_terminal_and_the_page_answers_meanwhile() -> Done {
    let count = std::env::var("KETTLE_BARREL_LIST").ok().and_then(|count| count.parse().ok()).unwrap_or(3000);
    let list = lines(count);
    let expected = digest(&in_terminal(list.as_bytes())?);
    in_chromium(|page| {
        page.open("#1/list")?;
        let start = Instant::now();
        // A part of the text at a time: it goes through the driver.
        page.value("(window.parts = [], true)")?;
        let bytes = list.as_bytes();
        for part in bytes.chunks(1 << 20) {
            page.script("window.parts.push(arguments[0])", json!([String::from_utf8_lossy(part)]))?;
        }
        println!("{count} lines, {} bytes, in the page after {:.1?}", bytes.len(), start.elapsed());
        let start = Instant::now();
        choose(page, "...window.parts", json!([]))?;
        page.wait_for("progress")?;
        let mut slowest: f64 = 0.0;
        let answer = "const began = performance.now(); document.querySelector('.settings > summary').click(); \
                      return new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(performance.now() - began))))";
        while page.count("progress")? > 0 {
            slowest = slowest.max(page.script(answer, json!([]))?.as_f64().unwrap_or_default());
            std::thread::sleep(std::time::Duration::from_millis(20));
        }
        println!("assessed in {:.1?}; the slowest answer to a click took {slowest:.0} ms", start.elapsed());
        page.text_holds(".outcome", "lines assessed")?;
        assert_eq!(saved(page)?, expected, "the results differ from the terminal's");
        page.text_holds(".outcome", "What can share a bath or a barrel")?;
        page.console_is_quiet()
    })
}

#[test]
fn a_list_is_assessed_in_every_browser_from_a_host_and_from_disk() -> Done {
    let list = lines(40);
    let expected = digest(&in_terminal(list.as_bytes())?);
    in_every_engine(|page| {
        for from_disk in [false, true] {
            if from_disk {
                page.open_from_disk("#1/list")?
            } else {
                page.open("#1/list")?
            }
            choose(page, "arguments[0]", json!([list]))?;
            wait(page)?;
            // A page from disk is no safe origin in every browser, and has no digest there.
            if !from_disk {
                assert_eq!(saved(page)?, expected);
            }
            if from_disk && page.browser.name == "WebKit" {
                page.text_holds("form [role=status]", "this browser needs it from a host")?;
            } else {
                page.text_holds(".outcome", "lines assessed")?;
            }
            page.console_is_quiet()?;
        }
        Ok(())
    })
}

#[test]
fn what_spreadsheets_write_is_read_as_in_the_terminal() -> Done {
    let list =
        "sep=;\nTeil;Gewinde;Länge (mm);Güte;Stück\nhex bolt;M16;63,5;8.8;400\nhex bolt;M20;60;10.9;\n;;;;\n";
    let windows: Vec<u8> = list.chars().filter_map(|letter| u8::try_from(u32::from(letter)).ok()).collect();
    let wide: Vec<u8> =
        [0xFF, 0xFE].into_iter().chain(list.encode_utf16().flat_map(u16::to_le_bytes)).collect();
    let cut = "part,thread,length,steel,quantity\nhex bolt,M16,60,8.8,400\nhex bolt,M16,60,8";
    let open = "part,thread,length,steel\nhex bolt,M16,60,8.8\n\"hex bolt,M16,60,8.8\nhex bolt,M16,60,8.8\n";
    let long = format!("part,thread\nhex bolt,M16\n{},M16\n", "x".repeat(1 << 20));
    let cases = [list.as_bytes().to_vec(), windows, wide, cut.into(), open.into(), long.into()];
    in_chromium(|page| {
        page.open("#1/list")?;
        for (at, case) in cases.iter().enumerate() {
            let text = "Uint8Array.from(atob(arguments[0]), (letter) => letter.charCodeAt(0))";
            choose(
                page,
                text,
                json!([base64::Engine::encode(&base64::engine::general_purpose::STANDARD, case)]),
            )?;
            wait(page)?;
            assert_eq!(saved(page)?, digest(&in_terminal(case)?), "case {at}");
        }
        // Nothing, and what is no text.
        for (content, said) in [("''", "its first line is empty"), ("'PK\\0\\0'", "it is no text")] {
            choose(page, content, json!([]))?;
            page.text_holds("form [role=status]", said)?;
        }
        page.console_is_quiet()
    })
}

#[test]
fn a_pasted_list_goes_on_behind_another_view_and_ends_when_it_is_cancelled() -> Done {
    in_chromium(|page| {
        page.open("#1/list")?;
        page.script(
            "document.querySelector('#list').value = arguments[0]",
            json!([
                "part\tthread\tlength\tsteel\tcolour\nhex bolt\tM16\t60\t8.8\tred\nhex bolt\tM21\t60\t8.8\t\n"
            ]),
        )?;
        page.click("form button[type=submit]")?;
        wait(page)?;
        page.text_holds(
            ".outcome",
            "Columns left out, because their headings say nothing of an order: colour",
        )?;
        page.text_holds(".outcome", "1 line assessed, 1 with a problem")?;
        page.is_accessible()?;
        // An order line of it opens, and the way back leads to the results.
        page.click(".outcome th a")?;
        page.until("document.querySelector('#line')?.value.includes('M21') ?? false")?;
        page.back()?;
        page.text_holds(".outcome", "1 line assessed, 1 with a problem")?;
        page.text_becomes("h1", "Order list")?;
        // One that takes long is given up.
        choose(page, "(arguments[0] + '\\n').repeat(200000)", json!([EXAMPLES[0]]))?;
        page.wait_for("progress")?;
        page.click("nav a[href='#1/calculators']")?;
        page.text_becomes("h1", "Calculators")?;
        page.click("nav a[href='#1/list']")?;
        page.text_becomes("h1", "Order list")?;
        page.until("parseInt(document.querySelector('form .tools p')?.innerText) > 0")?;
        page.click("form .tools:last-child button")?;
        page.text_holds("form [role=status]", "Cancelled")?;
        page.until("!document.querySelector('progress')")?;
        page.console_is_quiet()
    })
}
