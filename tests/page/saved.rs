//! What is kept on the device: it stays, comes from earlier versions, and is told where it cannot.

use serde_json::json;

use crate::harness::{Done, in_chromium, in_every_engine};

const ORDER: &str =
    "1/order?part=hex-bolt&thread=M16&length=60+mm&quantity=400&steel=8.8&place=C3&years=15+years";

#[test]
fn what_is_saved_has_a_name_a_date_and_its_verdict_and_stays_until_it_is_removed() -> Done {
    in_every_engine(|page| {
        page.open(&format!("#{ORDER}"))?;
        page.click(".tools button:nth-of-type(2)")?;
        page.text_holds(".tools [role=status]", "Kept")?;
        page.open("#1/saved")?;
        page.text_holds(".saved h2", "M16")?;
        page.until("document.querySelectorAll('.saved .verdict').length === 3")?;
        page.until("/20\\d\\d-\\d\\d-\\d\\d/.test(document.querySelector('.saved .when').textContent)")?;
        page.click(".saved .rename summary")?;
        page.type_into(".saved .rename input", "Pipe rack, north")?;
        page.click(".saved .rename button")?;
        page.text_becomes(".saved h2", "Pipe rack, north")?;
        page.reload()?;
        page.text_becomes(".saved h2", "Pipe rack, north")?;
        page.click(".saved h2 a")?;
        page.until("document.querySelector('#field-thread').value === 'M16'")?;
        page.open("#1/saved")?;
        page.click(".saved .buttons button[aria-label^=Remove]")?;
        page.until("document.querySelectorAll('.saved > li').length === 0")?;
        page.click(".tools [role=status] button")?;
        page.text_becomes(".saved h2", "Pipe rack, north")
    })
}

#[test]
fn a_kept_order_says_what_to_order_and_is_found_copied_and_printed() -> Done {
    in_chromium(|page| {
        let line = "M16+x+60+hex+bolt%2C+8.8%2C+C3%2C+15+years%2C+400+pcs";
        for address in [format!("#1/order?line={line}"), "#1/coat?coat=61+%C2%B5m".to_owned()] {
            page.open(&address)?;
            page.click(".tools button:nth-of-type(2)")?;
            page.text_holds(".tools [role=status]", "Kept")?;
        }
        page.open("#1/saved")?;
        page.until("document.querySelectorAll('.saved > li').length === 2")?;
        page.text_holds(".saved > li:last-child", "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs")?;
        page.text_holds(".saved > li:last-child .to-order", "To order: hot-dip to ISO 10684")?;
        page.is_accessible()?;
        // A few are seen at a glance; a search by line and by date finds among many.
        page.click(".saved > li:last-child a.button")?;
        page.text_becomes("h1", "Sheets to print")?;
        page.text_holds(".sheet", "To order: hot-dip")?;
        page.back()?;
        page.click(".saved > li:last-child .buttons button")?;
        page.until("document.querySelector('.saved > li:last-child [role=status]').innerText.includes('Take hot-dip') || \
                    document.querySelector('.saved > li:last-child [role=status]').innerText.includes('copied')")?;
        page.console_is_quiet()
    })
}

#[test]
fn what_was_exported_comes_back_whole_after_everything_is_wiped() -> Done {
    in_chromium(|page| {
        page.open("#1/saved")?;
        page.text_holds("main", "Nothing is kept yet")?;
        let take = "const lines = Array.from({ length: 120 }, (_, at) => arguments[0].replace('400', at + 1)); \
                    const file = new DataTransfer(); file.items.add(new File([lines.join('\\n')], 'saved.txt')); \
                    const input = document.querySelector('input[type=file]'); input.files = file.files; \
                    input.dispatchEvent(new Event('change', { bubbles: true }))";
        page.script(take, json!([ORDER]))?;
        page.text_holds(".tools", "120 new taken in")?;
        page.value("(window.before = JSON.stringify(Object.entries(localStorage).filter(([name]) => name.startsWith('kb2/')).sort()), true)")?;
        page.value("(URL.createObjectURL = (blob) => { window.saved = blob; return '#'; }, true)")?;
        page.click(".tools button")?;
        page.value("(localStorage.clear(), true)")?;
        page.value("dispatchEvent(new StorageEvent('storage', { key: null }))")?;
        page.text_holds("main", "Nothing is kept yet")?;
        let take = "const file = new DataTransfer(); file.items.add(new File([window.saved], 'saved.json')); \
                    const input = document.querySelector('input[type=file]'); input.files = file.files; \
                    input.dispatchEvent(new Event('change', { bubbles: true }))";
        page.script(take, json!([]))?;
        page.text_holds(".tools", "120 new taken in")?;
        page.until("window.before === JSON.stringify(Object.entries(localStorage).filter(([name]) => name.startsWith('kb2/')).sort())")
    })
}

#[test]
fn removing_one_saved_item_leaves_the_others_as_they_are() -> Done {
    in_chromium(|page| {
        for thickness in ["61", "62", "63"] {
            page.open(&format!("#1/coat?coat={thickness}+%C2%B5m"))?;
            page.click(".tools button:nth-of-type(2)")?;
            page.text_holds(".tools [role=status]", "Kept")?;
        }
        page.open("#1/saved")?;
        page.until("document.querySelectorAll('.saved > li').length === 3")?;
        // The newest stands first; its element is marked, and the one in the middle goes.
        page.value("document.querySelector('.saved > li').marked = true")?;
        page.click(".saved > li:nth-child(2) .buttons button[aria-label^=Remove]")?;
        page.until("document.querySelectorAll('.saved > li').length === 2")?;
        page.until("document.querySelector('.saved > li').marked === true")?;
        page.text_holds(".saved > li:first-child", "63 µm")?;
        page.text_holds(".saved > li:last-child", "61 µm")
    })
}

#[test]
fn what_an_earlier_version_has_kept_is_shown_and_another_version_is_left_alone() -> Done {
    in_chromium(|page| {
        page.open("#1/calculators")?;
        let old = format!("# a remark\n{ORDER}\n1/coat?coat=50+%C2%B5m\n");
        let put = "localStorage.setItem('kettle-and-barrel saved 1', arguments[0]); localStorage.setItem('kb3/1', 'of tomorrow')";
        page.script(put, json!([old]))?;
        page.open("#1/saved")?;
        page.until("document.querySelectorAll('.saved > li').length === 2")?;
        page.text_holds("main", "1 entries were saved by another version")?;
        page.until("localStorage.getItem('kb3/1') === 'of tomorrow'")?;
        page.until("localStorage.getItem('kettle-and-barrel saved 1') === null")?;
        page.console_is_quiet()
    })
}

#[test]
fn another_window_shows_what_this_one_saves() -> Done {
    in_chromium(|page| {
        page.open("#1/saved")?;
        page.text_holds("main", "Nothing is kept yet")?;
        // What a browser tells this window when another one has put something into the store.
        let save = "const entry = JSON.stringify({ name: 'From the other window', address: arguments[0] }); \
                    localStorage.setItem('kb2/0123456789abcdef', entry); \
                    dispatchEvent(new StorageEvent('storage', { key: 'kb2/0123456789abcdef', newValue: entry }))";
        page.script(save, json!([ORDER]))?;
        page.text_holds(".saved", "From the other window")
    })
}

#[test]
fn twenty_thousand_entries_are_taken_in_and_open_again() -> Done {
    in_chromium(|page| {
        page.open("#1/saved")?;
        page.text_holds("main", "Nothing is kept yet")?;
        let take = "const lines = Array.from({ length: 20000 }, (_, at) => arguments[0].replace('400', at + 1)); \
                    const file = new DataTransfer(); file.items.add(new File([lines.join('\\n')], 'saved.txt')); \
                    const input = document.querySelector('input[type=file]'); input.files = file.files; \
                    input.dispatchEvent(new Event('change', { bubbles: true }))";
        page.script(take, json!([ORDER]))?;
        page.wait_for("progress")?;
        // As long as it says how far it is, it is under way.
        while page.count("progress")? > 0 {
            std::thread::sleep(std::time::Duration::from_millis(200));
        }
        page.text_holds(".tools", "20000 new taken in")?;
        page.until("document.querySelectorAll('.saved > li').length === 50")?;
        page.reload()?;
        page.ready()?;
        while page.count("progress")? > 0 {
            std::thread::sleep(std::time::Duration::from_millis(200));
        }
        page.text_holds("main", "Find among 20000")?;
        page.fill("#search", "quantity=19999")?;
        page.until("document.querySelectorAll('.saved > li').length === 1")?;
        // By what is written in it, however the address writes it.
        page.fill("#search", "hex-bolt 60 mm 15 years 8.8")?;
        page.text_holds("main", "50 of 20000 are shown")?;
        page.console_is_quiet()
    })
}

#[test]
fn a_store_that_is_full_or_forbidden_is_told_and_the_page_goes_on() -> Done {
    in_chromium(|page| {
        page.open("#1/coat?coat=61+%C2%B5m")?;
        page.value(
            "Storage.prototype.setItem = () => { throw new DOMException('', 'QuotaExceededError'); }",
        )?;
        page.click(".tools button:nth-of-type(2)")?;
        page.text_holds(".tools [role=status]", "The room that this browser gives the page is full")?;
        page.value("Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('', 'SecurityError'); } })")?;
        page.click(".tools button:nth-of-type(2)")?;
        page.text_holds(".tools [role=status]", "This browser keeps nothing for this page")?;
        page.fill("#field-coat", "50")?;
        page.text_holds("#answer", "353.4")?;
        page.click("nav a[href='#1/saved']")?;
        page.text_holds("main", "This browser keeps nothing for this page")
    })
}
