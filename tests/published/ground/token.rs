//! The code of a file in pieces, as far as reading its sources needs them.

/// A piece of code.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Token {
    /// A word.
    Name(String),
    /// A text between quotes.
    Text(String),
    /// A number.
    Number(String),
    /// Anything else, sign by sign.
    Sign(char),
    /// A line of a description, without its slashes.
    Description(String),
}

/// The pieces of a file, without its remarks.
pub fn tokens(code: &str) -> Vec<Token> {
    let mut tokens = Vec::new();
    let mut rest = code;
    while let Some(first) = rest.chars().next() {
        let length = if let Some(line) = rest.strip_prefix("//") {
            let end = line.find('\n').unwrap_or(line.len());
            if let Some(words) = line[..end].strip_prefix('/') {
                tokens.push(Token::Description(words.trim().to_owned()));
            }
            end + 2
        } else if first == '"' {
            let (text, length) = text(rest);
            tokens.push(Token::Text(text));
            length
        } else if first == '\'' {
            letter(rest)
        } else if first.is_ascii_digit() {
            let length = run(rest, |c| c.is_ascii_alphanumeric() || c == '_' || c == '.');
            // `0..9` is two numbers.
            let length = rest[..length].find("..").unwrap_or(length);
            tokens.push(Token::Number(rest[..length].to_owned()));
            length
        } else if first.is_alphabetic() || first == '_' {
            let length = run(rest, |c| c.is_alphanumeric() || c == '_');
            tokens.push(Token::Name(rest[..length].to_owned()));
            length
        } else {
            if !first.is_whitespace() {
                tokens.push(Token::Sign(first));
            }
            first.len_utf8()
        };
        rest = &rest[length..];
    }
    tokens
}

fn run(text: &str, belongs: fn(char) -> bool) -> usize {
    text.find(|c| !belongs(c)).unwrap_or(text.len())
}

/// What stands between the quotes, and how long it is with them; a line that goes on is one line.
fn text(rest: &str) -> (String, usize) {
    let (mut text, mut letters) = (String::new(), rest.char_indices().skip(1).peekable());
    while let Some((at, letter)) = letters.next() {
        match letter {
            '"' => return (text, at + 1),
            '\\' => match letters.next() {
                Some((_, '\n')) => while letters.next_if(|(_, c)| c.is_whitespace()).is_some() {},
                Some((_, other)) => text.push(other),
                None => {}
            },
            other => text.push(other),
        }
    }
    (text, rest.len())
}

/// How long a letter between quotes is, or the name of a lifetime.
fn letter(rest: &str) -> usize {
    let mut letters = rest.char_indices().skip(1);
    match (letters.next(), letters.next(), letters.next()) {
        (Some((_, '\\')), _, _) => rest[2..].find('\'').map_or(rest.len(), |end| end + 3),
        (Some(_), Some((at, '\'')), _) => at + 1,
        _ => 1,
    }
}
