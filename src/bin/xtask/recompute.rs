//! The numbers a second time: `tests/recompute`, written in Python from the documents.

use std::ffi::OsStr;
use std::process::Command;

use super::run::{Done, cargo, run, step, top};
use super::tools::python;

/// Puts random inputs to the terminal and to Python, and fails where they do not agree.
///
/// `options` are those of the script: `--inputs N`, `--seed N`, `--only CALCULATOR`.
pub fn recompute(options: &[impl AsRef<OsStr>]) -> Done {
    let folder = top().join("tests/recompute");
    let python = python("recompute", &folder.join("requirements.txt"))?;
    // With the features of this task, so that nothing is built a second time.
    run(cargo().args(["build", "--quiet", "--features", "tasks", "--bin", "kettle-barrel"]))?;
    let terminal =
        std::env::current_exe()?.with_file_name(format!("kettle-barrel{}", std::env::consts::EXE_SUFFIX));
    step("the numbers again in Python", || {
        run(Command::new(python).arg("-B").arg(&folder).arg("--program").arg(&terminal).args(options))
    })
}
