//! Whether a comma is a decimal mark or stands between readings.
//!
//! Where the text itself shows which, it is taken so; where both make sense, it is refused.

use super::problem::PasteProblem;

/// What a comma without a space is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Comma {
    /// As the text shows.
    Decide,
    /// A decimal mark: `52,3` is one reading.
    Decimal,
    /// Between readings: `52,48` are two.
    Separator,
}

/// Decides what the commas without a space are.
pub fn decide(articles: &[&str], between_articles: bool) -> Result<Comma, PasteProblem> {
    let chunks = || articles.iter().flat_map(|article| tight_chunks(article));
    let Some(first) = chunks().next() else { return Ok(Comma::Separator) };
    let ambiguous = |text: &str| PasteProblem::Ambiguous { text: text.to_owned() };
    let commas = |chunk: &str| chunk.matches(',').count();
    if articles.iter().any(|article| article.contains('.')) {
        // `1,234.5` would be a grouped number, which no gauge shows; in `53,52 55.0` a space parts the readings, and what
        // the comma does nobody can tell.
        let cells =
            |article: &&str| article.split([' ', '\t', ';']).filter(|cell| starts_with_digit(cell)).count();
        let is_parted = articles.iter().any(|article| cells(article) > 1);
        let is_either = |chunk: &str| looks_grouped(chunk) || is_parted && !chunk.contains('.');
        return match chunks().find(|chunk| commas(chunk) == 1 && is_either(chunk)) {
            Some(either) => Err(ambiguous(either)),
            None => Ok(Comma::Separator),
        };
    }
    if chunks().any(|chunk| commas(chunk) > 1) {
        return match chunks().find(|chunk| looks_like_decimals(chunk)) {
            Some(decimals) => Err(ambiguous(decimals)),
            None => Ok(Comma::Separator),
        };
    }
    // From here on every such chunk holds one comma.
    let cells =
        || articles.iter().flat_map(|article| article.split([' ', '\t', ';'])).map(|c| c.trim_matches(','));
    if articles.iter().any(|article| has_spaced_comma(article)) {
        let all_tight = cells().filter(|cell| starts_with_digit(cell)).all(|cell| cell.contains(','));
        return if all_tight { Ok(Comma::Decimal) } else { Err(ambiguous(first)) };
    }
    let several_on_a_line =
        |article: &&str| article.split([' ', '\t', ';']).filter(|cell| starts_with_digit(cell)).count() > 1;
    if between_articles || articles.iter().any(several_on_a_line) {
        return Ok(Comma::Decimal);
    }
    // One comma a line: two readings of one article lie near each other, a decimal part does not.
    let far_apart = |chunk: &str| {
        let (whole, rest) = chunk.split_once(',').unwrap_or((chunk, ""));
        let (whole, rest) = (number(whole).unwrap_or(0.0), number(rest).unwrap_or(0.0));
        whole > 5.0 * rest || rest > 5.0 * whole
    };
    let no_reading = |chunk: &str| chunk.split_once(',').is_some_and(|(_, rest)| rest.starts_with('0'));
    if chunks().any(no_reading) || chunks().all(far_apart) {
        Ok(Comma::Decimal)
    } else {
        Err(ambiguous(first))
    }
}

/// Cells with a comma between two digits.
pub fn tight_chunks(article: &str) -> impl Iterator<Item = &str> {
    article
        .split([' ', '\t', ';'])
        .map(|cell| without_unit(cell.trim_matches(',')))
        .filter(|cell| cell.contains(','))
}

fn looks_grouped(chunk: &str) -> bool {
    let behind = chunk.split_once(',').map_or("", |(_, rest)| rest);
    behind.split('.').next().is_some_and(|group| group.len() == 3) && behind.contains('.')
}

/// `52,3,48,1`: a long and a short part in turn.
fn looks_like_decimals(chunk: &str) -> bool {
    let mut parts = chunk.split(',');
    let mut pairs = 0;
    while let (Some(whole), Some(rest)) = (parts.next(), parts.next()) {
        if whole.len() < 2 || rest.len() != 1 {
            return false;
        }
        pairs += 1;
    }
    pairs > 1 && chunk.split(',').count().is_multiple_of(2)
}

fn has_spaced_comma(article: &str) -> bool {
    article.split([' ', '\t']).any(|cell| cell.starts_with(',') || cell.ends_with(','))
}

/// The number at the beginning of a cell.
fn without_unit(cell: &str) -> &str {
    let end = cell.find(|c: char| !c.is_ascii_digit() && !matches!(c, '.' | ',')).unwrap_or(cell.len());
    cell.get(..end).unwrap_or(cell)
}

/// A plain decimal number; grouped digits, signs and exponents are no gauge readings.
pub fn number(digits: &str) -> Option<f64> {
    let plain = digits.replacen(',', ".", 1);
    let good = plain.bytes().all(|b| b.is_ascii_digit() || b == b'.') && plain.len() <= 18;
    if good { plain.parse().ok() } else { None }
}

pub fn starts_with_digit(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_digit())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_reading_is_digits_with_one_mark() {
        for (text, is) in [
            ("52", Some(52.0)),
            ("52,3", Some(52.3)),
            ("52.3", Some(52.3)),
            ("123456789012345678", Some(123_456_789_012_345_680.0)),
            ("1234567890123456789", None),
            ("", None),
            ("5e3", None),
            ("-5", None),
            ("5.1.2", None),
            ("5,1,2", None),
        ] {
            assert_eq!(number(text), is, "{text}");
        }
        assert!(starts_with_digit("5 µm") && !starts_with_digit("µm 5") && !starts_with_digit(""));
    }

    #[test]
    fn a_comma_is_seen_where_it_stands_between_digits() {
        let tight = |article: &'static str| tight_chunks(article).collect::<Vec<_>>();
        assert_eq!(tight("52,3 48, 51;,50 49,1µm"), ["52,3", "49,1"]);
        assert_eq!(tight("52 48"), [""; 0]);
        for (article, spaced) in [("52, 48", true), ("52 ,48", true), ("52,48", false), ("52\t,48", true)] {
            assert_eq!(has_spaced_comma(article), spaced, "{article}");
        }
        for (chunk, grouped) in
            [("1,234.5", true), ("1,23.5", false), ("1,234", false), ("1234.5", false), ("1,2345.6", false)]
        {
            assert_eq!(looks_grouped(chunk), grouped, "{chunk}");
        }
        for (chunk, decimals) in [
            ("52,3,48,1", true),
            ("52,3", false),
            ("52,3,48", false),
            ("5,3,48,1", false),
            ("52,30,48,1", false),
            ("52,3,48,1,50,2", true),
            ("52,,48,1", false),
        ] {
            assert_eq!(looks_like_decimals(chunk), decimals, "{chunk}");
        }
    }

    #[test]
    fn what_shows_the_meaning_of_a_comma_decides() {
        let of = |articles: &[&str]| decide(articles, false).map_err(|problem| problem.to_string());
        for (articles, comma) in [
            (&["52 48"][..], Comma::Separator),
            (&["52.3,48.1"], Comma::Separator),
            (&["52,48,51"], Comma::Separator),
            (&["52,3, 48,1"], Comma::Decimal),
            (&["52,3 48,1"], Comma::Decimal),
            // One a line: a part far from the whole, or one with a nought in front.
            (&["52,3", "48,1"], Comma::Decimal),
            (&["8,05", "8,07"], Comma::Decimal),
            (&["51,10"], Comma::Decimal),
        ] {
            assert_eq!(of(articles), Ok(comma), "{articles:?}");
        }
        // A whole five times its part may be two readings; so may what is near it on one line of several.
        for articles in [
            &["50,10"][..],
            &["52,48"],
            &["10,50"],
            &["52,48", "52,3"],
            &["52,3,48,1"],
            &["1,234.5"],
            &["52,3, 48"],
            &["53,52 55.0 54,61"],
            &["53,5 54.0", "55 56"],
        ] {
            assert!(of(articles).is_err(), "{articles:?}: {:?}", of(articles));
        }
        assert_eq!(decide(&["52,48"], true), Ok(Comma::Decimal));
    }
}
