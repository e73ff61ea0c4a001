//! Dates and times of day, which are no readings.

/// `2025-03-01`, `1.3.2025`, `03/01/25`: three numbers with the same mark between them, of which one can be
/// a month and another a day.
pub fn is_date(text: &str) -> bool {
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
