//! Counting while readings are taken: which article and which reading comes next, and taking the
//! last one back.
//!
//! The text of the readings is all there is: it survives a reload, goes into a link, and reads as it
//! looks. An article is a line, or what stands between `;` where all stand on one.

use std::fmt;

/// Where the next reading belongs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Place {
    /// The article, from 1.
    pub article: usize,
    /// The reading on it, from 1.
    pub reading: usize,
    /// Readings on each article; none where each stands for an article of its own.
    pub of: Option<usize>,
}

/// Where the next reading belongs, behind those in the text.
///
/// With so many readings to an article, what stands on a line, or behind the last `;`, is one article until it is full.
pub fn next_place(text: &str, per_article: Option<u32>) -> Place {
    let of = per_article.and_then(|count| usize::try_from(count).ok()).filter(|&count| count > 1);
    let parts = text.split(joint(text)).filter(|part| !part.trim().is_empty());
    let (articles, on_last) = parts.fold((0, 0), |(articles, _), part| (articles + 1, words(part)));
    match of {
        Some(of) if on_last > 0 && on_last < of => {
            Place { article: articles, reading: on_last + 1, of: Some(of) }
        }
        _ => Place { article: articles + 1, reading: 1, of },
    }
}

/// The text with the next reading in its place.
pub fn with_next(text: &str, reading: &str, per_article: Option<u32>) -> String {
    let joint = joint(text);
    let (text, reading) = (ended(text, joint), reading.split_whitespace().collect::<Vec<_>>().join(" "));
    if text.is_empty() || reading.is_empty() {
        return format!("{text}{reading}");
    }
    let between = match joint {
        _ if next_place(text, per_article).reading != 1 => " ",
        ';' => "; ",
        _ => "\n",
    };
    format!("{text}{between}{reading}")
}

/// The text without its last reading, and that reading; none where there is nothing to take back.
pub fn without_last(text: &str) -> Option<(String, String)> {
    let joint = joint(text);
    let text = ended(text, joint);
    let at = text.rfind(|c: char| c.is_whitespace() || c == joint).map_or(0, |at| at + first_char(text, at));
    let (rest, last) = text.split_at_checked(at)?;
    (!last.is_empty()).then(|| (ended(rest, joint).to_owned(), last.to_owned()))
}

/// What stands between articles: `;` where one line holds them all, else the end of the line.
fn joint(text: &str) -> char {
    let text = text.trim_end();
    if text.contains(';') && !text.contains('\n') { ';' } else { '\n' }
}

/// A text without what stands behind its last reading.
fn ended(text: &str, joint: char) -> &str {
    text.trim_end_matches(|c: char| c.is_whitespace() || c == joint)
}

fn first_char(text: &str, at: usize) -> usize {
    text.get(at..).and_then(|rest| rest.chars().next()).map_or(1, char::len_utf8)
}

/// Readings on a line that was typed one after the other; a unit with a space before it is none.
fn words(line: &str) -> usize {
    line.split_whitespace().filter(|word| word.starts_with(|c: char| c.is_ascii_digit() || c == '.')).count()
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.of {
            Some(of) => write!(f, "article {}, reading {} of {of}", self.article, self.reading),
            None => write!(f, "article {}", self.article),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_are_counted_article_by_article() {
        let mut text = String::new();
        let mut said = Vec::new();
        for reading in ["52", "48", "51", "50,5", "49"] {
            said.push(next_place(&text, Some(2)).to_string());
            text = with_next(&text, reading, Some(2));
        }
        assert_eq!(text, "52 48\n51 50,5\n49");
        assert_eq!(said[2], "article 2, reading 1 of 2");
        assert_eq!(said[4], "article 3, reading 1 of 2");
        assert_eq!(next_place(&text, Some(2)).to_string(), "article 3, reading 2 of 2");
        assert_eq!(next_place("52\n48", None).to_string(), "article 3");
        assert_eq!(next_place("52 48 50 51 53 ", Some(5)).to_string(), "article 2, reading 1 of 5");
    }

    #[test]
    fn the_last_reading_is_taken_back_and_named() {
        let (text, last) = without_last("52 48\n51 50,5\n").unwrap();
        assert_eq!((text.as_str(), last.as_str()), ("52 48\n51", "50,5"));
        let (text, last) = without_last(&text).unwrap();
        assert_eq!((text.as_str(), last.as_str()), ("52 48", "51"));
        assert_eq!(without_last("52"), Some((String::new(), "52".to_owned())));
        assert_eq!(without_last("52\u{3000}48"), Some(("52".to_owned(), "48".to_owned())));
        assert_eq!(without_last(" \n"), None);
    }

    /// Adding and taking back undo each other, whatever was there.
    #[test]
    fn adding_and_taking_back_undo_each_other() {
        for text in ["", "52", "52 48", "A1: 52 48\n51", "52 48; 51", "52 48; 51 50", "A1;52;48\nA2;51;50"] {
            for per_article in [None, Some(1), Some(2), Some(5)] {
                let more = with_next(text, "49.5", per_article);
                assert_eq!(without_last(&more), Some((text.to_owned(), "49.5".to_owned())));
            }
        }
    }

    /// Articles on one line stay on it: a line with `;` beside one without says two things.
    #[test]
    fn articles_between_semicolons_go_on_between_semicolons() {
        assert_eq!(next_place("47 51; 46 49; 52 48", None).to_string(), "article 4");
        assert_eq!(next_place("47 51; 46", Some(2)).to_string(), "article 2, reading 2 of 2");
        assert_eq!(with_next("47 51; 46 49;", "52", Some(2)), "47 51; 46 49; 52");
        assert_eq!(with_next("47 51; 46", "49", Some(2)), "47 51; 46 49");
        assert_eq!(without_last("47 51; 46"), Some(("47 51".to_owned(), "46".to_owned())));
        assert_eq!(without_last("47;51;"), Some(("47".to_owned(), "51".to_owned())));
    }

    /// A name alone on a line is no reading of an article, and one reading on each needs no number.
    #[test]
    fn only_readings_are_counted() {
        assert_eq!(next_place("head", Some(2)).to_string(), "article 2, reading 1 of 2");
        assert_eq!(next_place(".5 µm", Some(2)).to_string(), "article 1, reading 2 of 2");
        assert_eq!(next_place("52 µm", Some(3)).to_string(), "article 1, reading 2 of 3");
        assert_eq!(next_place("52\n51", Some(1)).to_string(), "article 3");
    }
}
