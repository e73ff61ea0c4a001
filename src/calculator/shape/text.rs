//! A report as plain text, for the terminal and for anybody who copies it into a letter.

use std::fmt;

use super::{Figure, Finding, Report};

impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(verdict) = self.verdict {
            writeln!(f, "{verdict}")?;
        }
        writeln!(f, "{}", self.headline)?;
        heading(f, "Figures", self.figures.len())?;
        self.figures.iter().try_for_each(|figure| writeln!(f, "  {figure}"))?;
        for section in &self.sections {
            heading(f, &section.title, section.figures.len())?;
            section.figures.iter().try_for_each(|figure| writeln!(f, "  {figure}"))?;
        }
        heading(f, "Rule by rule", self.findings.len())?;
        self.findings.iter().try_for_each(|finding| writeln!(f, "  {finding}"))?;
        if let Some(picture) = &self.picture {
            writeln!(f, "\nPicture\n  {}", picture.text())?;
        }
        heading(f, "Working", self.working.steps().len())?;
        let mut topic = "";
        for step in self.working.steps() {
            if step.topic != topic {
                topic = step.topic;
                writeln!(f, "  {topic}")?;
            }
            writeln!(f, "  {}: {step}\n      {}", step.meaning, step.source)?;
            for term in &step.terms {
                if let Some(source) = term.source {
                    writeln!(f, "      {} = {}: {source}", term.name(), term.value)?;
                }
            }
        }
        heading(f, "Notes", self.notes.len())?;
        for note in &self.notes {
            match note.source {
                Some(source) => writeln!(f, "  {} [{source}]", note.text)?,
                None => writeln!(f, "  {}", note.text)?,
            }
        }
        heading(f, "Cautions", self.cautions.len())?;
        self.cautions.iter().try_for_each(|caution| writeln!(f, "  {}", caution.words()))
    }
}

fn heading(f: &mut fmt::Formatter<'_>, title: &str, lines: usize) -> fmt::Result {
    if lines == 0 { Ok(()) } else { writeln!(f, "\n{title}") }
}

impl fmt::Display for Figure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.name)?;
        if !self.symbol.is_empty() {
            write!(f, " {}", self.symbol)?;
        }
        write!(f, ": {}", self.value)?;
        match self.source {
            Some(source) => write!(f, " [{source}]"),
            None => Ok(()),
        }
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {} [{}", self.mark.words(), self.text, self.source)?;
        self.also.iter().try_for_each(|source| write!(f, "; {source}"))?;
        f.write_str("]")
    }
}
