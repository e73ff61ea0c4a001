//! The bytes of a file, a slice at a time, and the encodings of spreadsheets.

use std::cell::Cell;
use std::io::{self, Read};
use std::rc::Rc;

use js_sys::Uint8Array;
use wasm_bindgen::JsValue;
use web_sys::{Blob, FileReaderSync, TextDecodeOptions, TextDecoder};

/// Bytes that are taken out of the file at a time.
const SLICE: f64 = 262_144.0;

/// The bytes of a file. What begins with the mark of UTF-16 becomes UTF-8; anything else passes as it is.
pub struct Bytes {
    file: Blob,
    reader: FileReaderSync,
    wide: Option<TextDecoder>,
    held: io::Cursor<Vec<u8>>,
    read: Rc<Cell<f64>>,
}

impl Bytes {
    /// The bytes of a file, and how many of them were read so far.
    pub fn of(file: Blob) -> io::Result<(Self, Rc<Cell<f64>>)> {
        let read = Rc::new(Cell::new(0.0));
        let reader = FileReaderSync::new().map_err(unreadable)?;
        let bytes = Self { file, reader, wide: None, held: io::Cursor::default(), read: Rc::clone(&read) };
        Ok((bytes, read))
    }

    fn fill(&mut self) -> io::Result<()> {
        let from = self.read.get();
        let to = (from + SLICE).min(self.file.size());
        let slice = self.file.slice_with_f64_and_f64(from, to).map_err(unreadable)?;
        let buffer = self.reader.read_as_array_buffer(&slice).map_err(unreadable)?;
        let mut bytes = Uint8Array::new(&buffer).to_vec();
        if from == 0.0 {
            self.wide = match bytes.as_slice() {
                [0xFF, 0xFE, ..] => TextDecoder::new_with_label("utf-16le").ok(),
                [0xFE, 0xFF, ..] => TextDecoder::new_with_label("utf-16be").ok(),
                _ => None,
            };
        }
        if let Some(decoder) = &self.wide {
            let options = TextDecodeOptions::new();
            options.set_stream(to < self.file.size());
            let text = decoder.decode_with_buffer_source_and_options(&buffer, &options);
            bytes = text.map_err(unreadable)?.into_bytes();
        }
        self.read.set(to);
        self.held = io::Cursor::new(bytes);
        Ok(())
    }
}

impl Read for Bytes {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        // A slice may hold less than a letter.
        while self.held.position() == self.held.get_ref().len() as u64 && self.read.get() < self.file.size() {
            self.fill()?;
        }
        self.held.read(into)
    }
}

/// Bytes that are not UTF-8 come from a spreadsheet that writes Windows-1252.
pub fn text(bytes: &[u8]) -> String {
    thread_local! {
        static WINDOWS: Option<TextDecoder> = TextDecoder::new_with_label("windows-1252").ok();
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => text.to_owned(),
        Err(_) => WINDOWS
            .with(|decoder| decoder.as_ref()?.decode_with_js_u8_array(&Uint8Array::from(bytes)).ok())
            .unwrap_or_else(|| String::from_utf8_lossy(bytes).into_owned()),
    }
}

fn unreadable(_: JsValue) -> io::Error {
    // WebKit gives none to the worker of a page from disk.
    io::Error::other(
        "the browser does not give the file: it was changed or moved, or the page was opened from disk, and \
                      this browser needs it from a host",
    )
}
