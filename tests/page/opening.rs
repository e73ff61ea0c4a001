//! The page opens, answers, and asks nobody for anything.

use crate::harness::{Outcome, everywhere};

#[test]
fn it_opens_and_answers() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.type_into("#text", "M16")?;
        page.text_becomes("output", "M16")?;
        page.console_is_quiet()?;
        page.asked_nobody_else()
    })
}

#[test]
fn it_opens_from_disk_as_one_file() -> Outcome {
    everywhere(|page| {
        page.open_from_disk("")?;
        page.fill("#text", "M20")?;
        page.text_becomes("output", "M20")?;
        page.console_is_quiet()
    })
}

#[test]
fn it_is_accessible() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.is_accessible()
    })
}
