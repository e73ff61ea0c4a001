//! Sheets of paper, as a browser prints them: one page, all of the answer, the code read back.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use kettle_barrel::calculator::Address;
use kettle_barrel::order;
use kettle_barrel::sheet::{Heading, JOB, order_sheet};

use crate::harness::{Done, Page, in_chromium, in_every_engine};
use crate::xtask::run::top;

/// In centimetres.
const A4: (f64, f64) = (21.0, 29.7);
/// 8.5 by 11 in.
const LETTER: (f64, f64) = (21.59, 27.94);

const ORDERS: [&str; 6] = [
    "M20 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years",
    "500 sets 3/4-10 x 2-1/2 structural bolt, A325, with DH nut and F436 washer, C3, 15 years",
    "M24x3 stud foo bar",
    "M12 washer, 4.6, 20000 pcs, C3, 15 years",
    "3/4-10 structural bolt, A490, 100 pcs",
    "M10 x 1.25 hex bolt, 10.9, 4000 pcs, C5, 20 years, HDG",
];

fn sheet_of(line: &str, which: &str) -> String {
    let pairs = [("line", line), ("number", "4711"), ("name", "Bridge"), ("which", which)];
    format!("#{}", Address::new("sheet", pairs.into_iter().collect()))
}

/// The sheet on paper, as a file.
fn printed(page: &Page, name: &str, size: (f64, f64)) -> Done<PathBuf> {
    let file = top().join("target/page").join(format!("{name}.pdf"));
    crate::xtask::run::write(&file, page.print(size)?)?;
    Ok(file)
}

/// What a program says of a file.
fn said(program: &str, arguments: &[&str], file: &Path) -> Done<Vec<u8>> {
    let output = Command::new(program).args(arguments).arg(file).arg("-").output();
    let output = output.map_err(|problem| format!("{program}: {problem}; it is of poppler-utils"))?;
    if output.status.success() { Ok(output.stdout) } else { Err(format!("{program} failed").into()) }
}

/// The text on it, in one line, and its pages: each ends with a form feed.
fn text(file: &Path) -> Done<(String, usize)> {
    let text = String::from_utf8(said("pdftotext", &["-raw"], file)?)?;
    let pages = text.matches('\u{c}').count();
    Ok((plain(&text), pages))
}

/// Letters without the spaces that lines are cut at.
fn plain(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace() && *c != '\u{a0}').collect()
}

fn whole(what: bool, say: impl FnOnce() -> String) -> Done {
    if what { Ok(()) } else { Err(say().into()) }
}

#[test]
fn an_order_prints_on_one_page_with_all_its_answer() -> Done {
    in_chromium(|page| {
        for (at, line) in ORDERS.into_iter().enumerate() {
            page.open(&sheet_of(line, ""))?;
            page.wait_for(".sheet .code")?;
            let assessed = order::assessed(&order::reading::read(line).draft)
                .map_err(|problems| problems.to_string())?;
            let heading = Heading { line: line.to_owned(), ..Heading::default() };
            let sheet = order_sheet(&assessed, JOB, &heading).map_err(|problems| problems.to_string())?;
            for (name, size) in [("a4", A4), ("letter", LETTER)] {
                let file = printed(page, &format!("sheet-{at}-{name}"), size)?;
                let (text, pages) = text(&file)?;
                whole(pages == 1, || format!("{line} takes {pages} pages of {name}"))?;
                // All that may not give way is there, to be selected as text, and nothing else of the page.
                for row in sheet.blocks.iter().flat_map(|block| &block.rows).filter(|row| !row.may_go) {
                    let (name, said) = (plain(&row.name), plain(&row.text));
                    whole(text.contains(&name) && text.contains(&said), || {
                        format!("“{row}” is not on {file:?}")
                    })?;
                }
                for part in ["4711", "Bridge"] {
                    whole(text.contains(part), || format!("{part} is not on {file:?}"))?;
                }
                for other in ["Copythereply", "Ownprices", "Everythingiscomputed", "Backto"] {
                    whole(!text.contains(other), || format!("“{other}” is printed on {file:?}"))?;
                }
            }
        }
        Ok(())
    })
}

#[test]
fn the_code_on_paper_opens_the_order_again() -> Done {
    in_chromium(|page| {
        for line in &ORDERS[..2] {
            page.open(&sheet_of(line, ""))?;
            page.wait_for(".sheet .code")?;
            let file = printed(page, "sheet-code", A4)?;
            // The corner of the paper that a camera is held to.
            let picture = file.with_extension("");
            let mut raster = Command::new("pdftoppm");
            raster
                .args(["-gray", "-r", "300", "-x", "1900", "-W", "580", "-H", "640", "-singlefile"])
                .arg(&file)
                .arg(&picture);
            whole(raster.status()?.success(), || "pdftoppm failed".to_owned())?;
            let picture = fs::read(file.with_extension("pgm"))?;
            let link = decoded(&picture)?;
            page.visit(&link[link.find('#').ok_or("the code holds no address")?..])?;
            page.ready()?;
            page.until(&format!(
                "document.querySelector('#line')?.value === {}",
                serde_json::to_string(line)?
            ))?;
            page.until("location.hash.includes('number=4711')")?;
        }
        Ok(())
    })
}

/// The text of the one code on a picture in the portable grey format.
fn decoded(picture: &[u8]) -> Done<String> {
    let mut head = picture.splitn(4, |byte| *byte == b'\n' || *byte == b' ');
    let mut next = || head.next().ok_or("no picture");
    let (_, width, height, rest) = (next()?, next()?, next()?, next()?);
    let number = |bytes: &[u8]| -> Done<usize> { Ok(std::str::from_utf8(bytes)?.parse()?) };
    let (width, height) = (number(width)?, number(height)?);
    let pixels = rest.splitn(2, |byte| *byte == b'\n').nth(1).ok_or("no pixels")?;
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(width, height, |x, y| pixels[y * width + x]);
    let grids = image.detect_grids();
    let grid = grids.first().ok_or("no code was found on the paper")?;
    Ok(grid.decode()?.1)
}

#[test]
fn further_sheets_of_an_order_and_of_a_calculator_print_on_their_pages() -> Done {
    in_chromium(|page| {
        for (which, most, holds) in [
            ("record", 1, "Inspectionrecord"),
            ("run-barrel", 2, "addition1of"),
            ("run-kettle", 2, "Dipuntil"),
            ("working-oversize-tap", 2, "Stepbystep"),
        ] {
            page.open(&sheet_of(ORDERS[0], which))?;
            page.wait_for(".sheet .code")?;
            for (name, size) in [("a4", A4), ("letter", LETTER)] {
                let (text, pages) = text(&printed(page, &format!("{which}-{name}"), size)?)?;
                whole(pages <= most, || format!("{which} takes {pages} pages of {name}"))?;
                let is_on = text.to_lowercase().contains(&holds.to_lowercase());
                whole(is_on && text.contains("4711"), || format!("{holds} is not on {which}: {text}"))?;
            }
        }
        page.open("#1/powder?thread=M12&pieces=5000&length=60")?;
        page.click(".tools a.button")?;
        page.text_becomes("#sheet-title", "Run sheet of the barrel")?;
        page.choose("#which", "working")?;
        page.text_holds("#sheet-title", "Working")
    })
}

#[test]
fn one_touch_leads_from_the_answer_to_its_sheet_and_own_prices_stay_on_the_device() -> Done {
    in_every_engine(|page| {
        page.open("")?;
        page.fill("#line", ORDERS[0])?;
        page.wait_for(".tools a.button")?;
        page.until("location.hash.includes('12+years')")?;
        page.click(".tools a.button")?;
        page.text_becomes("#sheet-title", "Job sheet")?;
        page.fill("#sheet-number", "4711")?;
        page.text_holds(".sheet", "4711")?;
        page.click(".sheet-form summary")?;
        page.fill("#price-barrel", "1.5")?;
        page.text_holds(".sheet", "Cost by the own price")?;
        page.until("location.hash.includes('number=4711') && !location.hash.includes('1.5')")?;
        page.reload()?;
        page.ready()?;
        page.text_holds(".sheet", "Cost by the own price")?;
        page.text_holds(".sheet", "4711")?;
        page.click(".back")?;
        page.text_becomes("h1", "Order line")?;
        page.until("document.querySelector('#line').value.startsWith('M20 x 90')")
    })
}
