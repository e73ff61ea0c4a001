//! The address holds what stands in the fields, and brings it back.

use crate::harness::{Outcome, everywhere};

#[test]
fn the_address_follows_what_is_typed_and_brings_it_back() -> Outcome {
    everywhere(|page| {
        page.open("#1/coat")?;
        page.fill("#field-coat", "2 1/2 mil")?;
        page.until("location.hash.includes('coat=2+1/2+mil')")?;
        page.reload()?;
        page.ready()?;
        page.until("document.querySelector('#field-coat').value === '2 1/2'")?;
        page.until("document.querySelector('select.units').value === 'mil'")
    })
}

#[test]
fn a_damaged_link_opens_what_it_can_and_says_what_it_could_not_read() -> Outcome {
    everywhere(|page| {
        page.open("#1/coat?coat=61+%C2%B5m&colour=yellow&factor=%ZZ")?;
        page.until("document.querySelector('#field-coat').value === '61'")?;
        page.text_holds(".notice", "colour")?;
        page.text_holds(".notice", "factor")?;
        page.click(".notice button")?;
        page.until("!document.querySelector('.notice')")?;
        page.open("#1/no-such-thing")?;
        page.text_becomes("h1", "Order line")?;
        page.text_holds(".notice", "no-such-thing")
    })
}

#[test]
fn the_way_back_of_the_browser_works() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.click("nav a[href='#1/calculators']")?;
        page.text_becomes("h1", "Calculators")?;
        page.click(".card a[href='#1/coat']")?;
        page.text_becomes("h1", "Coat thickness and mass")?;
        page.back()?;
        page.text_becomes("h1", "Calculators")?;
        page.back()?;
        page.text_becomes("h1", "Order line")
    })
}

#[test]
fn the_keyboard_reaches_the_content_first() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.press(&[crate::harness::key::TAB])?;
        page.until("document.activeElement.className === 'skip'")?;
        page.press(&[crate::harness::key::ENTER])?;
        page.until("document.activeElement.id === 'main'")?;
        page.press(&[crate::harness::key::TAB])?;
        page.until("document.activeElement.id === 'line'")
    })
}

#[test]
fn what_is_saved_stays_on_the_device_until_it_is_removed() -> Outcome {
    everywhere(|page| {
        page.open("#1/coat?coat=61+%C2%B5m&factor=a653")?;
        page.click(".tools button:nth-of-type(2)")?;
        page.text_holds(".tools [role=status]", "Kept")?;
        page.open("#1/saved")?;
        page.text_holds(".saved", "61 µm")?;
        page.click(".saved a")?;
        page.until("document.querySelector('#field-coat').value === '61'")?;
        page.open("#1/saved")?;
        page.click(".saved button")?;
        page.until("document.querySelectorAll('.saved li').length === 0")
    })
}

#[test]
fn removing_one_saved_item_leaves_the_others_as_they_are() -> Outcome {
    everywhere(|page| {
        for thickness in ["61", "62", "63"] {
            page.open(&format!("#1/coat?coat={thickness}+%C2%B5m"))?;
            page.click(".tools button:nth-of-type(2)")?;
            page.text_holds(".tools [role=status]", "Kept")?;
        }
        page.open("#1/saved")?;
        page.until("document.querySelectorAll('.saved li').length === 3")?;
        // The newest stands first; its element is marked, and the one in the middle goes.
        page.value("document.querySelector('.saved li').marked = true")?;
        page.click(".saved li:nth-child(2) button")?;
        page.until("document.querySelectorAll('.saved li').length === 2")?;
        page.until("document.querySelector('.saved li').marked === true")?;
        page.text_holds(".saved li:first-child", "63 µm")?;
        page.text_holds(".saved li:last-child", "61 µm")
    })
}
