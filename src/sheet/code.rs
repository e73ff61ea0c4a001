//! The link of a sheet as a QR code, made on the device.

use std::fmt::Write;

use qrcodegen::{QrCode, QrCodeEcc};

/// A QR code, as an outline for a picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Code {
    /// Squares along an edge, the quiet zone of four on each side included.
    pub size: u32,
    /// The dark squares as an SVG path, one square a unit.
    pub path: String,
}

/// The quiet zone around a code, in squares: what ISO/IEC 18004 asks for.
const QUIET: i32 = 4;

/// Beyond so many squares along an edge a code of 35 mm is too fine for a phone's camera.
const FINEST: i32 = 97;

/// What stands in the place of a code that is not there.
pub const NO_CODE: &str =
    "The link is too long for a code that a phone reads from paper: copy it, or type what this sheet says.";

/// The code of a link, with as much correction as leaves its squares coarse; `None` for a link too long
/// to be read from paper.
pub fn code(link: &str) -> Option<Code> {
    // The level is raised by the encoder wherever that costs no finer squares.
    let code = QrCode::encode_text(link, QrCodeEcc::Low).ok().filter(|code| code.size() <= FINEST)?;
    let mut path = String::new();
    for y in 0..code.size() {
        let mut x = 0;
        while x < code.size() {
            let from = x;
            while x < code.size() && code.get_module(x, y) {
                x += 1;
            }
            if x > from {
                let length = x - from;
                // Writing to a string does not fail.
                let _ = write!(path, "M{} {}h{length}v1h-{length}z", from + QUIET, y + QUIET);
            }
            x += 1;
        }
    }
    Some(Code { size: u32::try_from(code.size() + 2 * QUIET).ok()?, path })
}
