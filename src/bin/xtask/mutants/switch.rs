//! Which mutant is on. This text is put into the copy of the library that the mutants are tried in.

use std::fs::OpenOptions;
use std::io::Write;
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering::Relaxed};

/// No mutant has this number or a greater one.
const NONE: u32 = u32::MAX - 2;
const COVER: u32 = u32::MAX - 1;
const UNREAD: u32 = u32::MAX;

static ACTIVE: AtomicU32 = AtomicU32::new(UNREAD);
static TOUCHED: [AtomicBool; 32_768] = [const { AtomicBool::new(false) }; 32_768];

/// Whether none of `count` mutants from `first` on is on.
pub const fn off(first: u32, count: u32) -> bool {
    // What the compiler works out is never changed.
    std::intrinsics::const_eval_select((first, count), unchanged, none_on)
}

/// Whether this mutant is on; asked only where one of its place is.
pub const fn on(number: u32) -> bool {
    std::intrinsics::const_eval_select((number,), never, is_on)
}

const fn unchanged(_: u32, _: u32) -> bool {
    true
}

const fn never(_: u32) -> bool {
    false
}

fn is_on(number: u32) -> bool {
    ACTIVE.load(Relaxed) == number
}

fn none_on(first: u32, count: u32) -> bool {
    let active = ACTIVE.load(Relaxed);
    if active.wrapping_sub(first) < count {
        return false;
    }
    active < COVER || asked(first, count)
}

#[cold]
fn asked(first: u32, count: u32) -> bool {
    if ACTIVE.load(Relaxed) == UNREAD {
        let number = std::env::var("KETTLE_BARREL_MUTANT").ok().and_then(|number| number.parse().ok());
        let covers = std::env::var_os("KETTLE_BARREL_TOUCHED").is_some();
        ACTIVE.store(number.unwrap_or(if covers { COVER } else { NONE }), Relaxed);
        return none_on(first, count);
    }
    let seen = TOUCHED.get(first as usize).is_none_or(|seen| seen.swap(true, Relaxed));
    if !seen && let Some(path) = std::env::var_os("KETTLE_BARREL_TOUCHED") {
        // Opened for each, so that the program may end in any way and its children may write as well.
        let file = OpenOptions::new().create(true).append(true).open(path);
        let _ = file.and_then(|mut file| file.write_all(format!("{first}\n").as_bytes()));
    }
    true
}
