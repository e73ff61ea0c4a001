//! Editing for a day leaves nothing behind.

use crate::harness::{Done, in_chromium};
use crate::xtask::edits::{ORDER, before_and_after};

#[test]
fn edits_leave_no_element_no_listener_and_no_memory_behind() -> Done {
    in_chromium(|page| {
        let [before, after] = before_and_after(page, || page.visit(ORDER), 600)?;
        assert_eq!(before.nodes, after.nodes);
        assert_eq!(before.listeners, after.listeners);
        assert_eq!(before.program, after.program);
        // The browser keeps a little of its own; a leak of a kilobyte an edit would be ten times that.
        assert!(after.script - before.script < 60e3, "{before:?}, {after:?}");
        page.console_is_quiet()
    })
}
