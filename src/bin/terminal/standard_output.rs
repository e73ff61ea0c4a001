//! Whether there was a standard output when the program was started.
//!
//! Before `main` the standard library puts the null device in the place of a standard output that is closed,
//! and everything written there seems to be written. So it is looked at earlier.

#[cfg(target_os = "linux")]
#[allow(
    unsafe_code,
    reason = "nothing of the standard library runs before it has repaired what is asked here"
)]
mod look {
    use std::ffi::c_int;
    use std::sync::atomic::{AtomicBool, Ordering};

    static IS_CLOSED: AtomicBool = AtomicBool::new(false);

    /// What POSIX calls `F_GETFD`, which changes nothing; its number is that of every Linux.
    const FLAGS: c_int = 1;
    const STANDARD_OUTPUT: c_int = 1;

    unsafe extern "C" {
        fn fcntl(file: c_int, command: c_int, ...) -> c_int;
    }

    extern "C" fn look() {
        // SAFETY: the call reads the flags of a number that may be no file, and has no argument.
        IS_CLOSED.store(unsafe { fcntl(STANDARD_OUTPUT, FLAGS) } == -1, Ordering::Relaxed);
    }

    // SAFETY: the loader calls what stands in this section before `main`, and `look` needs nothing made before.
    #[used]
    #[unsafe(link_section = ".init_array")]
    static LOOK: extern "C" fn() = look;

    pub fn is_closed() -> bool {
        IS_CLOSED.load(Ordering::Relaxed)
    }
}

/// Fails where the program was started with its standard output closed.
///
/// # Errors
/// Says so.
pub fn is_there() -> std::io::Result<()> {
    #[cfg(target_os = "linux")]
    if look::is_closed() {
        return Err(std::io::Error::other("standard output is closed"));
    }
    Ok(())
}
