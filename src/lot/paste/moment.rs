//! Dates and times of day, which are no readings.

/// A date, or one with its time in one word, `2026-11-03T14:22:05Z`, as ISO 8601 writes it.
pub fn is_date(text: &str) -> bool {
    match text.split_once('T') {
        Some((day, time)) => is_day(day) && is_clock(time),
        None => is_day(text),
    }
}

/// A time behind its `T`: with parts of a second, and how far it is from that of Greenwich.
fn is_clock(text: &str) -> bool {
    let digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit() || b == b':');
    let (time, offset) = match text.strip_suffix('Z') {
        Some(time) => (time, ""),
        None => text.rsplit_once(['+', '-']).unwrap_or((text, "")),
    };
    let (time, parts) = time.split_once(['.', ',']).unwrap_or((time, ""));
    is_time(time) && digits(parts) && digits(offset) && offset.len() <= 5
}

/// `2025-03-01`, `1.3.2025`, `03/01/25`: three numbers with the same mark between them, of which one can be
/// a month and another a day.
fn is_day(text: &str) -> bool {
    ['-', '.', '/'].into_iter().any(|mark| {
        let parts: Vec<&str> = text.split(mark).collect();
        let digits = |part: &&str| (1..=4).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
        let up_to = |most: u32| {
            parts
                .iter()
                .filter(|part| part.parse().is_ok_and(|number: u32| (1..=most).contains(&number)))
                .count()
        };
        parts.len() == 3 && parts.iter().all(digits) && up_to(12) > 0 && up_to(31) > 1
    })
}

/// `10:52` or `10:52:03`.
pub fn is_time(text: &str) -> bool {
    let parts: Vec<&str> = text.split(':').collect();
    let digits = |part: &&str| (1..=2).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
    (2..=3).contains(&parts.len()) && parts.iter().all(digits)
}
