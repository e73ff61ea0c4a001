//! How an answer is written, and how the program ends.

use std::io::{self, ErrorKind, Write};
use std::process::ExitCode;

use anstream::AutoStream;
use anstyle::{AnsiColor, Style};
use kettle_barrel::calculator::{Mark, Verdict};
use kettle_barrel::quantity::letters::lower;

use super::standard_output::is_there;

/// What the program writes.
#[derive(Debug)]
pub struct Output {
    /// On standard output.
    pub text: String,
    /// On standard error.
    pub problems: String,
    /// How it ends.
    pub code: Code,
}

/// How the program ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Code {
    /// Everything was understood and answered.
    Answered = 0,
    /// Something was not understood, or cannot be answered.
    NotUnderstood = 1,
    /// It was called wrongly.
    Misused = 2,
    /// The answer could not be written.
    Unwritten = 3,
}

impl Output {
    /// A whole answer.
    pub fn answer(text: String) -> Self {
        Self { text, problems: String::new(), code: Code::Answered }
    }

    /// What was wrong with the call.
    pub fn misused(problems: String) -> Self {
        Self { text: String::new(), problems, code: Code::Misused }
    }
}

/// What is said where nothing but text is written.
pub fn no_json(what: &str) -> String {
    format!("There is no JSON of {what}; leave --json out.")
}

/// Writes an answer, coloured where a terminal shows it, and says how the program ends.
pub fn write(output: Output) -> ExitCode {
    let mut code = output.code;
    let written = if output.text.is_empty() { Ok(()) } else { written(&output.text) };
    let mut problems = output.problems;
    match written {
        Ok(()) => {}
        // A reader that has seen enough, such as `head`, is no fault.
        Err(error) if error.kind() == ErrorKind::BrokenPipe => {}
        Err(error) => {
            problems.push_str(&format!("The answer could not be written: {error}.\n"));
            code = Code::Unwritten;
        }
    }
    // Where there is nobody to be told, the code alone tells.
    drop(AutoStream::auto(io::stderr().lock()).write_all(problems.as_bytes()));
    ExitCode::from(code as u8)
}

fn written(text: &str) -> io::Result<()> {
    is_there()?;
    let mut stdout = AutoStream::auto(io::stdout().lock());
    stdout.write_all(coloured(text).as_bytes())?;
    stdout.flush()
}

/// The text with its verdicts and marks in colour; the words say the same without it.
fn coloured(text: &str) -> String {
    text.split_inclusive('\n').map(|line| coloured_line(line).unwrap_or_else(|| line.to_owned())).collect()
}

fn coloured_line(line: &str) -> Option<String> {
    let verdict = |color: AnsiColor| color.on_default().bold();
    let end = line.strip_suffix('\n')?;
    for (words, style) in [
        (Verdict::RuledOut.words(), verdict(AnsiColor::Red)),
        (Verdict::OnConditions.words(), verdict(AnsiColor::Yellow)),
        (Verdict::Suits.words(), verdict(AnsiColor::Green)),
    ] {
        // Behind the name of a process in small letters, by itself with a capital.
        for words in [words.to_owned(), lower(words)] {
            if let Some(process) = end.strip_suffix(&words)
                && (process.is_empty() || process.ends_with(": "))
            {
                return Some(format!("{process}{style}{words}{style:#}\n"));
            }
        }
    }
    let (mark, rest) = line.strip_prefix("  ")?.split_once(':')?;
    let style: Style = match Mark::ALL.into_iter().find(|one| one.words() == mark)? {
        Mark::Bar => AnsiColor::Red.on_default(),
        Mark::Condition | Mark::NotJudged => AnsiColor::Yellow.on_default(),
        Mark::Met => AnsiColor::Green.on_default(),
        Mark::Note | Mark::Term => Style::new().dimmed(),
    };
    Some(format!("  {style}{mark}{style:#}:{rest}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn colour_changes_no_word() {
        let text = "Hot-dip: suits on conditions\n  Rules it out: 40 HRC: no\n  years: 12\nSuits\nend";
        let made = coloured(text);
        assert!(made.contains("\u{1b}["), "{made}");
        assert_eq!(anstream::adapter::strip_str(&made).to_string(), text);
    }
}
