//! A sheet as plain text, for the terminal.

use std::fmt;

use super::{Block, Look, Row, Sheet, TICK};

impl fmt::Display for Sheet {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}", self.title)?;
        self.blocks.iter().try_for_each(|block| write!(f, "\n{block}"))
    }
}

impl fmt::Display for Block {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.title.is_empty() {
            writeln!(f, "{}", self.title)?;
        }
        let indent = if self.title.is_empty() || self.look == Look::Signatures { "" } else { "  " };
        self.rows.iter().try_for_each(|row| writeln!(f, "{indent}{row}"))
    }
}

impl fmt::Display for Row {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.ticked {
            f.write_str("[ ] ")?;
        }
        f.write_str(&self.name)?;
        let follows = !self.text.is_empty() || !self.room.is_empty();
        if follows && !self.name.is_empty() && !self.name.ends_with('.') {
            f.write_str(":")?;
        }
        if !self.name.is_empty() && !self.text.is_empty() {
            f.write_str(" ")?;
        }
        f.write_str(&self.text)?;
        for room in self.room {
            match room.strip_prefix(TICK) {
                Some(label) => write!(f, " [ ]{label}")?,
                None if room.is_empty() => f.write_str(" __________")?,
                None => write!(f, " {room} __________")?,
            }
        }
        Ok(())
    }
}
