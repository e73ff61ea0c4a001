//! From a written line to the three verdicts, to the calculator behind a reason, and back.

use crate::harness::{Outcome, everywhere};

#[test]
fn one_written_line_fills_the_fields_and_is_assessed() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.type_into("#line", "M24 x 120 hex bolt, 12.9, 96 pcs, C3, by Friday")?;
        page.until("document.querySelector('#field-thread').value === 'M24'")?;
        page.until("document.querySelector('#field-length').value === '120'")?;
        page.until("document.querySelector('#field-quantity').value === '96'")?;
        page.until("document.querySelector('#field-steel').value === '12.9'")?;
        page.until("document.querySelector('#field-place').value === 'C3'")?;
        page.text_holds("#line-read .problem", "Friday")?;
        page.text_holds("#line-read .silent", "Zinc bath 860 °F")?;
        page.text_holds(".process .verdict.out", "Ruled out")
    })
}

#[test]
fn a_line_asks_for_what_it_does_not_say_and_taken_back_gives_the_fields_back() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.fill("#field-quantity", "77")?;
        page.fill("#line", "M24 x 120 hex bolt, C3")?;
        page.until("document.querySelector('#field-quantity').value === ''")?;
        page.until("document.querySelector('#field-steel').value === ''")?;
        page.fill("#line", "")?;
        page.until("document.querySelector('#field-quantity').value === '77'")?;
        page.until("document.querySelector('#field-steel').value === '10.9'")?;
        page.until("document.querySelector('#field-thread').value === 'M20'")
    })
}

#[test]
fn a_reason_opens_the_calculator_behind_it_and_the_way_back_leads_to_the_reason() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.fill("#field-quantity", "77")?;
        page.wait_for("#kettle-0")?;
        let reason = "[...document.querySelectorAll('.finding a')].find(a => a.closest('.process'))";
        let id = page.value(&format!("{reason}.id"))?;
        page.value(&format!("{reason}.click()"))?;
        page.until("document.querySelector('h1').textContent !== 'Order line'")?;
        page.until("document.activeElement.id === 'title'")?;
        page.until("location.hash.includes('?')")?;
        page.click(".back")?;
        page.text_becomes("h1", "Order line")?;
        page.until(&format!("document.activeElement.id === {id}"))?;
        page.until("document.querySelector('#field-quantity').value === '77'")?;
        page.back()?;
        page.until("document.querySelector('h1').textContent !== 'Order line'")?;
        page.back()?;
        page.until("document.querySelector('#field-quantity').value === '77'")
    })
}

#[test]
fn every_link_to_a_calculator_fills_it_without_a_complaint() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.wait_for("#example")?;
        let examples = page.count("#example option")?;
        let mut links = Vec::new();
        for example in 0..examples - 1 {
            page.choose("#example", &example.to_string())?;
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
