//! Sizes of screws that form their own thread, by ISO 1478, by number, or by a diameter.

use crate::order::reading::diameter::of_diameter;
use crate::order::reading::items::Line;
use crate::order::reading::part::Scopes;
use crate::order::reading::what::Written;
use crate::part::{Kind, Threaded};
use crate::table::asme_b1_1::Series;
use crate::table::iso_1478;
use crate::thread::Thread;

/// Whether the part forms its own thread.
pub(super) fn is_one(scopes: &Scopes) -> bool {
    scopes.kind.is_some_and(|kind| kind.threaded() == Threaded::Forming)
}

pub(super) const NO_SIZE: &str =
    "no size is known here for it: #4 to #12, 1/4 in and above, or a diameter of a metric thread";

pub(super) const OWN_THREAD: &str = "the size of the screw, which forms its own thread";

/// Size and length of a screw that forms its own thread: `4.2 x 16` of ISO 1478, `10 x 80` in millimetres,
/// `8 x 2` by its number and in inches.
pub(super) fn settle(
    line: &mut Line,
    kind: Option<Kind>,
    at: usize,
    (first, second, is_mm): (&str, &str, bool),
    strong: &mut Vec<(usize, Written)>,
    lengths: &mut Vec<(usize, String)>,
) {
    let in_sheet = matches!(kind, Some(Kind::TappingScrew | Kind::DrywallScrew));
    let (size, length): (Option<f64>, Option<f64>) = (first.parse().ok(), second.parse().ok());
    let row = size.and_then(|st| iso_1478::ROWS.iter().find(|row| in_sheet && row.st == st));
    let is_long = size.zip(length).is_some_and(|(size, length)| length > size);
    let (thread, unit) = match row {
        Some(row) => {
            line.note("thread", format!("ST{} of ISO 1478 is the size #{}", row.st, row.number));
            (Thread::numbered(Series::Unc, row.number), "mm")
        }
        // So short a screw is written by its number, and in inches.
        None if !is_mm && !is_long => {
            (first.parse().ok().and_then(|it| Thread::numbered(Series::Unc, it)), "in")
        }
        None if in_sheet => (None, ""),
        None => (of_diameter(first), "mm"),
    };
    let Some(thread) = thread else {
        line.not(
            at,
            match in_sheet {
                true => "no size of a tapping screw is known here for it: #4 to #12, ST2.9 to ST5.5",
                false => NO_SIZE,
            },
        );
        return;
    };
    let text = thread.to_string();
    strong.push((at, Written { text, thread: Some(thread), of_size: false, pitched: false, weak: false }));
    lengths.push((at, format!("{second} {unit}")));
}

/// The number of a screw that forms its own thread is its size; the thread of that number stands for it.
pub(super) fn numbered(scopes: &Scopes, written: Written) -> Written {
    // Nor has what goes on a bolt, or what has no thread, a pitch.
    let has_none = scopes.kind.is_some_and(|kind| kind.threaded() == Threaded::Not);
    // `1/4-14`: behind the size its own threads per inch.
    let size = written.text.split_once('-').and_then(|(size, _)| size.split_once('/'));
    if let Some((above, below)) = size.filter(|_| is_one(scopes) && written.thread.is_none()) {
        let inches =
            above.parse().ok().zip(below.parse().ok()).map(|(above, below): (f64, f64)| above / below);
        let of_size = inches.map(|inches| super::size::of_size(inches, &written.text, Series::Unc, false));
        return of_size.filter(|written| written.thread.is_some()).unwrap_or(written);
    }
    let number =
        written.text.strip_prefix('#').filter(|_| (has_none || is_one(scopes)) && written.thread.is_none());
    // `#8-18`: behind the number its own threads per inch, which are no machine thread's.
    let number = number.and_then(|number| number.split(['-', ' ']).next());
    let Some(thread) = number.and_then(|number| Thread::numbered(Series::Unc, number.parse().ok()?)) else {
        return written;
    };
    Written { text: thread.to_string(), thread: Some(thread), ..written }
}
