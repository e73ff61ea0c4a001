//! The sheets of an order line and the reply to it.

use super::{ORDER, ends};

#[test]
fn a_sheet_is_printed_with_its_number_and_room_to_sign() {
    let (out, err) = ends(&["sheet", "--number", "4711", "--date", "2026-03-01", ORDER], 0);
    for part in
        ["Job sheet", "Number: 4711", "Date: 2026-03-01", "To order: mechanical, suits", "Threads and gauges"]
    {
        assert!(out.contains(part), "{part}\n{out}");
    }
    assert!(out.contains("Inspected: name __________ date __________"), "{out}");
    assert_eq!(err, "");
}

#[test]
fn further_sheets_are_asked_for_by_name() {
    let (out, _) = ends(&["sheet", "--which", "run-barrel", ORDER], 0);
    assert!(out.contains("Run sheet of the barrel"), "{out}");
    let (out, _) = ends(&["sheet", "--which", "record", ORDER], 0);
    assert!(out.contains("Inspection record") && out.contains("Article 10: 1 __________"), "{out}");
    let (_, err) = ends(&["sheet", "--which", "flag", ORDER], 2);
    assert!(
        err.contains("The order has no sheet “flag”; it has job, run-kettle, run-barrel, record"),
        "{err}"
    );
}

#[test]
fn a_line_that_is_not_understood_ends_with_one() {
    let (out, _) = ends(&["sheet", &format!("{ORDER}, purple")], 1);
    assert!(out.contains("Not understood or not used: “purple”"), "{out}");
    let (out, err) = ends(&["sheet", "nothing at all"], 1);
    assert!(out.starts_with("Not used: ") && !out.contains("Job sheet") && !err.is_empty(), "{out}\n{err}");
}

#[test]
fn a_reply_is_a_letter() {
    let (out, _) = ends(&["reply", "--number", "4711", ORDER], 0);
    assert!(out.starts_with("Dear customer,\n\nThank you for your enquiry (number 4711)."), "{out}");
    assert!(
        out.contains("We recommend this finish: Mechanically deposited zinc coating to ASTM B695, class 55"),
        "{out}"
    );
}
