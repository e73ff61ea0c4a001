//! An answer is written, or the program says that it was not.

use super::{ORDER, ends};

#[test]
fn there_is_no_colour_where_there_is_no_terminal() {
    for arguments in [&["order", ORDER][..], &["--help"], &["hydrogen"]] {
        assert!(!ends(arguments, 0).0.contains('\u{1b}'), "{arguments:?}");
    }
    assert!(!ends(&["roast"], 2).1.contains('\u{1b}'));
}

#[cfg(unix)]
mod unix {
    use std::ffi::OsStr;
    use std::fs::OpenOptions;
    use std::os::unix::ffi::OsStrExt;
    use std::process::{Command, Stdio};

    use super::super::ORDER;

    fn program() -> Command {
        Command::new(env!("CARGO_BIN_EXE_kettle-barrel"))
    }

    #[test]
    #[cfg(target_os = "linux")]
    fn a_full_disk_is_an_error() {
        for arguments in [&["order", ORDER][..], &["--json", "coat"], &["--help"], &["man"], &["schema"]] {
            let full = OpenOptions::new().write(true).open("/dev/full").unwrap();
            let output = program().args(arguments).stdout(full).output().unwrap();
            assert_eq!(output.status.code(), Some(3), "{arguments:?}");
            assert!(
                String::from_utf8_lossy(&output.stderr).contains("could not be written"),
                "{arguments:?}"
            );
        }
        // With nobody to tell it either, the code alone tells.
        let full = || OpenOptions::new().write(true).open("/dev/full").unwrap();
        let status = program().args(["order", ORDER]).stdout(full()).stderr(full()).status().unwrap();
        assert_eq!(status.code(), Some(3));
    }

    /// With nowhere to write to, an answer once counted as written.
    #[test]
    #[cfg(target_os = "linux")]
    fn a_closed_standard_output_is_an_error() {
        let closed = |arguments: &[&str]| {
            let output = Command::new("sh")
                .args(["-c", "exec \"$0\" \"$@\" >&-", env!("CARGO_BIN_EXE_kettle-barrel")])
                .args(arguments)
                .output()
                .unwrap();
            (output.status.code(), String::from_utf8(output.stderr).unwrap())
        };
        let list = ["list", "tests/terminal/written.rs"];
        for arguments in
            [&["order", ORDER][..], &["--json", "coat"], &["--help"], &list, &["list", "--heading"]]
        {
            let (code, problem) = closed(arguments);
            assert_eq!(code, Some(3), "{arguments:?}");
            assert!(problem.contains("could not be written: standard output is closed"), "{problem}");
        }
        // Where there is nothing to write nothing was lost: the call was wrong, and that is told.
        assert_eq!(closed(&["roast"]).0, Some(2));
    }

    #[test]
    fn a_reader_that_has_seen_enough_is_no_fault() {
        let mut child =
            program().args(["order", ORDER]).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
        drop(child.stdout.take());
        let output = child.wait_with_output().unwrap();
        assert_eq!((output.status.code(), output.stderr), (Some(0), Vec::new()));
    }

    #[test]
    fn arguments_that_are_no_text_are_refused() {
        let broken = OsStr::from_bytes(b"coat=\xff");
        for arguments in [&[OsStr::new("coat"), broken][..], &[broken], &[OsStr::new("order"), broken]] {
            let output = program().args(arguments).output().unwrap();
            assert_eq!(output.status.code(), Some(2), "{arguments:?}");
            assert!(!output.stderr.is_empty() && output.stdout.is_empty());
        }
    }
}
