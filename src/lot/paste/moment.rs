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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_and_times_are_told_from_readings() {
        for date in [
            "2025-03-01",
            "1.3.2025",
            "03/01/25",
            "12/31/2025",
            "31.12.25",
            "2026-11-03T14:22:05Z",
            "2026-11-03T14:22:05.123+01:00",
            "2026-11-03T14:22:05,5-0100",
            "2026-11-03T14:22",
        ] {
            assert!(is_date(date), "{date}");
        }
        for no_date in [
            "52.3.48",
            "13.14.2025",
            "1.3",
            "1.3.2025.4",
            "1-3/2025",
            "0.0.0",
            "12345-1-2",
            "1..2025",
            "a-1-2",
            "2026-11-03T",
            "2026-11-03T14",
            "2026-11-03T14:22:05+01:000",
            "2026-11-03T14:22:05.1x",
            "2026-11-03T14:22:05+1h",
            "50T10:52",
            "1-32-33",
        ] {
            assert!(!is_date(no_date), "{no_date}");
        }
        for (text, is) in [
            ("10:52", true),
            ("1:5:03", true),
            ("10", false),
            ("10:", false),
            ("100:52", false),
            ("1:2:3:4", false),
        ] {
            assert_eq!(is_time(text), is, "{text}");
        }
    }
}
