//! After one visit the page needs no network.

use crate::harness::{Done, KEPT, in_chromium, in_every_engine};

#[test]
fn it_works_without_its_server_after_one_visit() -> Done {
    in_every_engine(|page| {
        page.open("")?;
        page.until(KEPT)?;
        page.cut_off();
        page.open("#1/coat?coat=1+mil&factor=a123")?;
        page.fill("#field-coat", "50 µm")?;
        page.text_holds("#answer", "353.4")?;
        page.console_is_quiet()
    })
}

#[test]
fn nothing_leaves_the_page_even_if_it_tried() -> Done {
    in_chromium(|page| {
        page.open("")?;
        // A host that does not exist by the rules of names, so that no answer can come either way.
        let refused = "new Promise(tell => { addEventListener('securitypolicyviolation', e => \
                       tell(e.effectiveDirective === 'connect-src')); fetch('https://host.invalid/').catch(() => {}); })";
        page.until(refused)
    })
}
