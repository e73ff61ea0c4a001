//! From a written line to the three verdicts, to the calculator behind a reason, and back.

use kettle_barrel::calculator::Address;
use kettle_barrel::page::state::EXAMPLES;

use crate::harness::{Done, in_chromium, in_every_engine};

#[test]
fn one_written_line_fills_the_fields_and_is_assessed() -> Done {
    in_chromium(|page| {
        page.open("")?;
        page.type_into("#line", "M24 x 120 hex bolt, 12.9, 96 pcs, C3, by Friday")?;
        page.until("document.querySelector('#field-thread').value === 'M24'")?;
        page.until("document.querySelector('#field-length').value === '120'")?;
        page.until("document.querySelector('#field-quantity').value === '96'")?;
        page.until("document.querySelector('#field-steel').value === '12.9'")?;
        page.until("document.querySelector('#field-place').value === 'C3'")?;
        page.text_holds("#line-read .problem", "Friday")?;
        page.click("#line-read .silent summary")?;
        page.text_holds("#line-read .silent", "Zinc bath 860 °F")?;
        page.until("[...document.querySelectorAll('.pieces a')].map(a => a.textContent).join(', ') === '96 pcs, hex bolt, M24, 120 mm, class 12.9, C3'")?;
        page.click(".pieces a")?;
        page.until("document.activeElement.id === 'field-quantity'")?;
        page.text_holds(".process .verdict.out", "Ruled out")
    })
}

#[test]
fn a_line_asks_for_what_it_does_not_say_and_taken_back_gives_the_fields_back() -> Done {
    in_chromium(|page| {
        page.open("")?;
        page.click(".fold-form > summary")?;
        page.fill("#field-quantity", "77")?;
        page.fill("#line", "M24 x 120 hex bolt, C3")?;
        page.until("document.querySelector('#field-quantity').value === ''")?;
        page.until("document.querySelector('#field-thread').value === 'M24'")?;
        page.fill("#line", "")?;
        page.until("document.querySelector('#field-quantity').value === '77'")?;
        page.until("document.querySelector('#field-thread').value === ''")
    })
}

#[test]
fn the_answer_has_the_thread_and_the_life_of_what_to_take_as_pictures() -> Done {
    in_chromium(|page| {
        page.size(320, 640)?;
        page.open(&format!("#{}", Address::new("order", [("line", EXAMPLES[1])].into_iter().collect())))?;
        page.until("document.querySelectorAll('.pictures svg[role=img]').length === 2")?;
        // Below the screen the browser has not laid it out yet: the letters are there all the same.
        for text in ["Worst corner: assembles", "logarithmic scale"] {
            page.until(&format!("document.querySelector('.pictures').textContent.includes('{text}')"))?;
        }
        page.until("[...document.querySelectorAll('.pictures svg')].every(svg => svg.getAttribute('aria-label').length > 100)")?;
        page.until("[...document.querySelectorAll('.pictures svg')].every(svg => svg.getBoundingClientRect().right <= 320)")
    })
}

#[test]
fn a_place_in_words_is_asked_for_and_chosen_with_one_touch() -> Done {
    in_chromium(|page| {
        page.open("")?;
        page.type_into("#line", "M16x60 hex bolt, 8.8, 400 pcs, coast")?;
        page.text_holds("#line-read .which", "Which place is “coast”?")?;
        page.click("#line-read .which button")?;
        page.until("document.querySelector('#field-place').value !== ''")?;
        page.until("!document.querySelector('#line-read .which')")
    })
}

#[test]
fn a_link_brings_the_line_back() -> Done {
    in_every_engine(|page| {
        page.open("")?;
        page.type_into("#line", "M24 x 120 hex bolt, 12.9, 96 pcs, C3, by Friday")?;
        page.until("location.hash.includes('by+Friday')")?;
        page.reload()?;
        page.ready()?;
        page.until("document.querySelector('#line').value.endsWith('by Friday')")?;
        page.text_holds("#line-read .problem", "Friday")?;
        page.until("document.querySelectorAll('.process .verdict').length === 3")
    })
}

#[test]
fn copy_save_and_print_come_next_after_the_answer_and_the_answer_before_the_form() -> Done {
    in_chromium(|page| {
        page.size(360, 740)?;
        page.open("")?;
        page.click(".examples button")?;
        page.wait_for(".tools")?;
        let order = "['#answer', '.tools', '.fold-form', '.detail'].map(css => document.querySelector(css).getBoundingClientRect().top)";
        page.until(&format!("(tops => tops.every((top, at) => at === 0 || tops[at - 1] < top))({order})"))?;
        page.value("document.querySelector('.chips li:last-child a').focus()")?;
        for says in ["Copy", "Save", "Print"] {
            page.press(&[crate::harness::key::TAB])?;
            page.until(&format!("document.activeElement.textContent === '{says}'"))?;
        }
        Ok(())
    })
}

#[test]
fn a_reason_opens_the_calculator_behind_it_and_the_way_back_leads_to_the_reason() -> Done {
    in_every_engine(|page| {
        page.open("")?;
        page.type_into("#line", "M20 x 90 hex bolt, 10.9, 77 pcs, C4, 12 years")?;
        page.wait_for(".process .finding a")?;
        // The address follows a moment later.
        page.until("location.hash.includes('12+years')")?;
        let reason = "document.querySelector('.process .finding a')";
        let id = page.value(&format!("{reason}.id"))?;
        page.value(&format!("{reason}.click()"))?;
        page.until("document.querySelector('h1').textContent !== 'Order line'")?;
        page.until("document.activeElement.id === 'title'")?;
        page.until("location.hash.includes('?')")?;
        page.click(".back")?;
        page.text_becomes("h1", "Order line")?;
        page.until(&format!("document.activeElement.id === {id}"))?;
        page.until("document.querySelector('#field-quantity').value === '77'")?;
        page.until("document.querySelector('#line').value.startsWith('M20 x 90')")?;
        page.back()?;
        page.until("document.querySelector('h1').textContent !== 'Order line'")?;
        page.back()?;
        page.until("document.querySelector('#field-quantity').value === '77'")
    })
}

/// Zinc that nobody asked for is told apart from what may be ordered, by its words and by its sign.
#[test]
fn the_tiles_say_what_is_not_asked_for_and_what_is_left_out() -> Done {
    let aside = |count: usize| {
        format!(
            "document.querySelectorAll('.chips a.aside').length === {count} && \
             document.querySelectorAll('.process .verdict.aside').length === {count}"
        )
    };
    in_chromium(|page| {
        page.open("")?;
        page.fill("#line", "M16 x 60 hex bolt, 8.8, C3, unplated")?;
        page.until(&aside(3))?;
        page.text_holds(".chips a.aside", "Suits, not asked for")?;
        page.until("!document.querySelector('.verdict.suits')")?;
        page.fill("#line", "M16 x 60 hex bolt, 8.8, C3, no HDG")?;
        page.until(&aside(1))?;
        page.text_holds(".chips a.aside", "Suits, left out by the order")
    })
}

#[test]
fn every_link_to_a_calculator_fills_it_without_a_complaint() -> Done {
    in_chromium(|page| {
        let mut links = Vec::new();
        for line in EXAMPLES {
            let order = Address::new("order", [("line", line)].into_iter().collect());
            page.open(&format!("#{order}"))?;
            page.until("document.querySelectorAll('.process').length === 3")?;
            let found = page.value(
                "[...document.querySelectorAll('.finding a')].map(a => a.getAttribute('href')).join(' ')",
            )?;
            links.extend(found.as_str().unwrap_or_default().split(' ').map(str::to_owned));
        }
        links.sort();
        links.dedup();
        for link in links {
            page.open(&link)?;
            page.until("!document.querySelector('.notice')").map_err(|why| format!("{link}: {why}"))?;
            page.until("!document.querySelector('.problems')").map_err(|why| format!("{link}: {why}"))?;
        }
        Ok(())
    })
}
