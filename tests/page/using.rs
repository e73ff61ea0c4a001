//! The page in use: a written line, a reason opened, bad input, a link, a keyboard.

use crate::harness::{Outcome, everywhere, key};

#[test]
fn a_written_line_is_spread_and_assessed() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.fill("#line", "M24 x 120 hex bolt, 12.9, 96 pcs, C3, 10 years, blue")?;
        page.press(&[key::ENTER])?;
        page.text_holds("#answer", "Ruled out: Hot-dip")?;
        page.text_holds("#line-read", "blue")?;
        page.until("document.getElementById('field-thread').value === 'M24'")?;
        page.console_is_quiet()
    })
}

#[test]
fn a_touch_on_a_reason_opens_the_calculator_behind_it_filled_in_and_back_returns() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.wait_for(".finding a[href*='oversize-tap']")?;
        page.click(".finding a[href*='oversize-tap']")?;
        page.text_holds("#title", "Oversize tap")?;
        page.until("document.getElementById('field-thread').value === 'M20'")?;
        page.text_holds("#answer", "18.726")?;
        page.back()?;
        page.text_holds("#title", "Order line")?;
        page.text_holds("#answer", "Suits on conditions")
    })
}

#[test]
fn bad_input_is_named_with_its_remedy_and_what_was_typed_stays() -> Outcome {
    everywhere(|page| {
        page.open("#1/coat")?;
        page.text_holds("#answer", "50.0 µm")?;
        page.fill("#field-coat", "1,234")?;
        page.text_holds("#field-coat-problem", "could mean 1.234 or 1234")?;
        page.until("!document.getElementById('answer').innerText.includes('mil')")?;
        page.until("document.getElementById('field-coat').value === '1,234'")?;
        page.fill("#field-coat", "2,1 mil")?;
        page.text_holds("#answer", "53.3 µm")?;
        page.console_is_quiet()
    })
}

#[test]
fn a_damaged_link_opens_what_it_can_and_says_what_it_could_not_read() -> Outcome {
    everywhere(|page| {
        page.open("#1/coat?coat=53+%C2%B5m&colour=blue")?;
        page.text_holds("#answer", "2.087 mil")?;
        page.text_holds("body", "colour")?;
        page.open("#1/nowhere")?;
        page.text_holds("body", "nowhere")?;
        page.text_holds("#title", "Order line")
    })
}

/// A field that is typed in must stay the same element, or the caret is lost.
#[test]
fn a_field_keeps_its_element_its_focus_and_its_text_while_problems_come_and_go() -> Outcome {
    everywhere(|page| {
        page.open("#1/coat")?;
        page.wait_for("#field-coat")?;
        page.script(
            "window.before = document.getElementById('field-coat'); return true;",
            serde_json::json!([]),
        )?;
        for text in ["", "x", "53", "1,234", "53"] {
            page.fill("#field-coat", text)?;
            page.until("window.before === document.getElementById('field-coat')")?;
            page.until("document.activeElement === window.before")?;
        }
        page.text_holds("#answer", "53.0 µm")
    })
}

#[test]
fn the_unit_shown_is_the_unit_computed() -> Outcome {
    everywhere(|page| {
        page.open("#1/coat?coat=50+%C2%B5m")?;
        page.text_holds("#answer", "353.4 g/m²")?;
        page.choose("select.units", "mil")?;
        page.text_holds("#answer", "1270.0 µm")
            .or_else(|_| page.text_holds("#field-coat-problem", "at most"))?;
        page.until("document.querySelector('select.units').selectedOptions[0].text.includes('mil')")
    })
}

#[test]
fn it_fits_a_phone() -> Outcome {
    everywhere(|page| {
        for width in [320, 360, 768] {
            page.size(width, 900)?;
            page.open("")?;
            page.text_holds("#answer", "Suits")?;
            page.until("document.documentElement.scrollWidth <= document.documentElement.clientWidth + 1")?;
        }
        Ok(())
    })
}
