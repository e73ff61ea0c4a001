//! The address holds what stands in the fields, and brings it back.

use crate::harness::{Done, in_chromium, in_every_engine};

#[test]
fn the_address_follows_what_is_typed_and_brings_it_back() -> Done {
    in_every_engine(|page| {
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
fn a_damaged_link_opens_what_it_can_and_says_what_it_could_not_read() -> Done {
    in_chromium(|page| {
        page.open("#1/coat?coat=61+%C2%B5m&colour=yellow&factor=%ZZ")?;
        page.until("document.querySelector('#field-coat').value === '61'")?;
        page.text_holds(".notice", "One thing in this link is not asked here")?;
        page.text_holds(".notice", "“Thickness to mass by” is damaged")?;
        page.click(".notice summary")?;
        page.text_holds(".notice .quoted", "colour: yellow")?;
        page.click(".notice > button")?;
        page.until("!document.querySelector('.notice')")?;
        page.open("#1/Call+us+at+once")?;
        page.text_becomes("h1", "Order line")?;
        page.text_holds(".notice", "names a view that is not here")?;
        page.until("!document.querySelector('.notice').innerText.includes('Call us')")
    })
}

#[test]
fn a_short_name_opens_a_calculator() -> Done {
    in_chromium(|page| {
        page.open("#coat")?;
        page.text_becomes("h1", "Coat thickness and mass")?;
        page.until("!document.querySelector('.notice') && !document.querySelector('#answer')")
    })
}

#[test]
fn the_way_back_of_the_browser_works() -> Done {
    in_every_engine(|page| {
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
fn the_keyboard_reaches_the_content_first() -> Done {
    in_chromium(|page| {
        page.open("#coat")?;
        page.press(&[crate::harness::key::TAB])?;
        page.until("document.activeElement.className === 'skip'")?;
        page.press(&[crate::harness::key::ENTER])?;
        page.until("document.activeElement.id === 'main'")?;
        page.press(&[crate::harness::key::TAB])?;
        page.until("document.activeElement.id === 'example'")
    })
}
