//! The page opens on an order line assessed, and asks nobody for anything.

use crate::harness::{Outcome, everywhere};

#[test]
fn it_opens_on_an_order_line_assessed() -> Outcome {
    everywhere(|page| {
        page.open("")?;
        page.text_holds("#answer", "Suits on conditions: Hot-dip and Mechanical")?;
        page.text_holds("#answer", "Ruled out: Electroplating")?;
        page.text_holds("main", "tapped over to 6AZ, marked Z")?;
        page.console_is_quiet()?;
        page.asked_nobody_else()
    })
}

#[test]
fn it_opens_from_disk_as_one_file() -> Outcome {
    everywhere(|page| {
        page.open_from_disk("#1/coat?coat=50+%C2%B5m")?;
        page.text_holds("#answer", "1.969 mil")?;
        page.console_is_quiet()
    })
}

#[test]
fn it_is_accessible() -> Outcome {
    everywhere(|page| {
        for view in ["", "#1/coat", "#1/oversize-tap", "#1/powder", "#1/lot"] {
            page.open(view)?;
            page.wait_for("#answer")?;
            page.is_accessible().map_err(|problem| format!("“{view}”: {problem}"))?;
        }
        Ok(())
    })
}
