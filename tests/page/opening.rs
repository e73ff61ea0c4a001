//! The page opens on a worked order line, answers, and asks nobody for anything.

use kettle_barrel::calculator::REGISTER;

use crate::harness::{Outcome, everywhere};

/// Every view with its first worked example, and some that have something to complain about.
fn views() -> Vec<String> {
    let mut views: Vec<String> = [
        "",
        "#1/calculators",
        "#1/saved",
        "#7/nowhere?a=%ZZ",
        "#1/order?thread=M21&quantity=many",
        "#1/coat?coat=5+apples",
    ]
    .map(str::to_owned)
    .into();
    views.extend(REGISTER.iter().map(|entry| format!("#1/{}", entry.about.id)));
    views
}

#[test]
fn it_opens_on_a_worked_order_line_with_the_three_processes_assessed() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.text_becomes("h1", "Order line")?;
        page.until("document.querySelectorAll('.process .verdict').length === 3")?;
        page.until("document.querySelectorAll('.chips .verdict').length === 3")?;
        page.until("document.title.startsWith('Order line')")?;
        page.text_holds("main", "tapped over to 6AZ, marked Z")?;
        page.console_is_quiet()?;
        page.asked_nobody_else()
    })
}

#[test]
fn it_opens_from_disk_as_one_file() -> Outcome {
    everywhere(|page| {
        page.open_from_disk("#1/coat?coat=50+mil&factor=a123")?;
        page.choose("select.units", "µm")?;
        page.text_holds("#answer", "353.4")?;
        page.console_is_quiet()
    })
}

#[test]
fn every_view_is_accessible_and_silent_in_the_console() -> Outcome {
    everywhere(|page| {
        for view in views() {
            page.open(&view)?;
            page.is_accessible().map_err(|found| format!("{view}: {found}"))?;
            page.console_is_quiet()?;
        }
        Ok(())
    })
}

#[test]
fn every_view_fits_a_narrow_screen_and_a_gloved_finger() -> Outcome {
    everywhere(|page| {
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
