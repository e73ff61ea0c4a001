//! The bytes of a list on their way to the reader of its cells.

use std::cell::Cell;
use std::io::{self, Read};
use std::rc::Rc;

/// The longest row, in bytes. One that is longer is held open by a quotation mark that nobody closed, and
/// would take all that follows into its cell.
const LONGEST_ROW: usize = 4 << 20;

/// Bytes that are passed on, with an eye on how many there are between two rows.
pub struct Watched<R> {
    input: R,
    watch: Rc<Watch>,
}

/// What is seen of the bytes.
pub struct Watch {
    left: Cell<usize>,
    last: Cell<u8>,
    at_end: Cell<bool>,
}

impl<R: Read> Watched<R> {
    /// The bytes of this input, and what is seen of them.
    pub fn new(input: R) -> (Self, Rc<Watch>) {
        let watch =
            Rc::new(Watch { left: Cell::new(LONGEST_ROW), last: Cell::new(b'\n'), at_end: Cell::new(false) });
        (Self { input, watch: Rc::clone(&watch) }, watch)
    }
}

impl Watch {
    /// A row was read to its end.
    pub fn row_ended(&self) {
        self.left.set(LONGEST_ROW);
    }

    /// Whether a row went on for so long that it was given up.
    pub fn is_too_long(&self) -> bool {
        self.left.get() == 0
    }

    /// Whether the bytes have ended, and not with the end of a line.
    pub fn ends_in_a_line(&self) -> bool {
        self.at_end.get() && !matches!(self.last.get(), b'\n' | b'\r')
    }
}

impl<R: Read> Read for Watched<R> {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        if self.watch.is_too_long() {
            return Err(io::Error::other("a row without an end"));
        }
        let read = self.input.read(into)?;
        self.watch.left.set(self.watch.left.get().saturating_sub(read));
        self.watch.at_end.set(read == 0 && !into.is_empty());
        if let Some(last) = into.get(..read).and_then(<[u8]>::last) {
            self.watch.last.set(*last);
        }
        Ok(read)
    }
}
