//! The page opens on an empty order line, answers, and asks nobody for anything.

use kettle_barrel::calculator::{Address, REGISTER};
use kettle_barrel::page::state::EXAMPLES;
use serde_json::json;

use crate::harness::{Done, in_chromium, in_every_engine};

/// Every view, empty and with its first worked example, and some that have something to complain about.
fn views() -> Vec<String> {
    let mut views: Vec<String> = [
        "",
        "#1/calculators",
        "#1/saved",
        "#1/sources",
        "#1/sources?of=ISO+10684:2004",
        "#1/list",
        "#1/course",
        "#1/course?lesson=four-times",
        "#1/course?room=sheet&number=3&count=4&level=whole-task",
        "#1/course?room=answers&number=3&count=4&level=find-the-error",
        "#1/course?room=handed-in",
        "#7/nowhere?a=%ZZ",
        "#1/order?thread=M21&quantity=many",
        "#1/coat?coat=5+apples",
    ]
    .map(str::to_owned)
    .into();
    for entry in REGISTER {
        views.push(format!("#{}", entry.about.id));
        let example = entry.about.examples[0].pairs.iter().copied().collect();
        views.push(format!("#{}", Address::new(entry.about.id, example)));
    }
    views.push(format!("#{}", order()));
    views.push(format!("#{}", Address { view: "sheet".to_owned(), ..order() }));
    views
}

/// The address of the first example line.
fn order() -> Address {
    Address::new("order", [("line", EXAMPLES[0])].into_iter().collect())
}

#[test]
fn it_opens_empty_with_the_keyboard_in_the_line_and_assesses_nothing_that_nobody_asked_for() -> Done {
    in_every_engine(|page| {
        page.open("")?;
        page.text_becomes("h1", "Order line")?;
        page.until("document.title.startsWith('Order line')")?;
        page.until("document.activeElement.id === 'line'")?;
        page.until("!document.querySelector('.verdict') && !document.querySelector('#answer')")?;
        page.until(&format!("document.querySelectorAll('.examples button').length === {}", EXAMPLES.len()))?;
        page.click(".examples button")?;
        page.until("document.querySelectorAll('.process .verdict').length === 3")?;
        page.until("document.querySelectorAll('.chips .verdict').length === 3")?;
        page.until("document.activeElement.id === 'line'")?;
        page.until("!document.querySelector('.examples')")?;
        page.console_is_quiet()?;
        page.asked_nobody_else()
    })
}

#[test]
fn it_opens_from_disk_as_one_file() -> Done {
    in_every_engine(|page| {
        page.open_from_disk("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.text_holds("#answer", "353.4")?;
        page.fill("#field-coat", "54")?;
        page.text_holds("#answer", "381.6")?;
        page.console_is_quiet()
    })
}

#[test]
fn every_view_is_accessible_and_silent_in_the_console() -> Done {
    in_chromium(|page| {
        for view in views() {
            page.open(&view)?;
            page.is_accessible().map_err(|found| format!("{view}: {found}"))?;
            page.console_is_quiet()?;
        }
        Ok(())
    })
}

#[test]
fn every_view_is_accessible_in_the_dark_and_in_forced_colours() -> Done {
    in_chromium(|page| {
        if !page.browser.devtools {
            return Ok(());
        }
        for (name, value) in [("prefers-color-scheme", "dark"), ("forced-colors", "active")] {
            let feature = json!({ "features": [{ "name": name, "value": value }] });
            page.devtools("Emulation.setEmulatedMedia", feature)?;
            for view in views() {
                page.open(&view)?;
                page.is_accessible().map_err(|found| format!("{name}, {view}: {found}"))?;
            }
        }
        Ok(())
    })
}

#[test]
fn every_view_fits_letters_of_twice_the_size() -> Done {
    in_chromium(|page| {
        for width in [640, 320] {
            page.size(width, 800)?;
            for view in views() {
                page.open(&view)?;
                page.value("document.documentElement.style.fontSize = '200%'")?;
                // What is folded away must fit as well.
                page.value("document.querySelectorAll('details').forEach(part => part.open = true)")?;
                page.until(&format!("document.documentElement.scrollWidth <= {width}"))
                    .map_err(|found| format!("{view} at {width} px: {found}"))?;
            }
        }
        Ok(())
    })
}

#[test]
fn the_foot_says_the_version_and_leads_to_the_documents_and_so_does_every_source() -> Done {
    in_chromium(|page| {
        page.open("")?;
        page.text_holds(".foot", env!("CARGO_PKG_VERSION"))?;
        page.click(".foot a[href='#1/sources']")?;
        page.text_becomes("h1", "What the numbers rest on")?;
        page.text_holds("#main", "ISO 10684:2004")?;
        page.open("#1/coat?coat=50+%C2%B5m&factor=a123")?;
        page.value("document.querySelector('.source a').click()")?;
        page.text_holds("#main", "rows compared")?;
        page.console_is_quiet()
    })
}

#[test]
fn every_view_fits_a_narrow_screen_and_a_gloved_finger() -> Done {
    in_chromium(|page| {
        page.size(320, 640)?;
        for view in views() {
            page.open(&view)?;
            page.until("document.documentElement.scrollWidth <= 320")
                .map_err(|found| format!("{view}: {found}"))?;
            // Links inside a sentence may be smaller; what fills its row may not.
            let small = "[...document.querySelectorAll('button, select, input, textarea, summary, .chips a, .finding, nav a')] \
                         .filter(e => e.offsetParent && !e.closest('.hidden')).filter(e => e.getBoundingClientRect().height < 44) \
                         .map(e => e.outerHTML.slice(0, 90)).join('; ')";
            let small = page.value(small)?;
            if small != "" {
                return Err(format!("{view}: lower than 44 px: {small}").into());
            }
        }
        Ok(())
    })
}
