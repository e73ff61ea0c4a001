//! Running other programs, and saying how long each step took.

use std::error::Error;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Instant;

/// What a task ends with. A problem is text for the person who ran the task.
pub type Done<T = ()> = Result<T, Box<dyn Error>>;

/// Does one step of a task, and prints its name and its seconds.
pub fn step<T>(what: &str, work: impl FnOnce() -> Done<T>) -> Done<T> {
    println!("   …       {what}");
    let start = Instant::now();
    let outcome = work();
    let mark = if outcome.is_ok() { "done" } else { "FAILED" };
    println!("{:>7.1} s  {what}: {mark}", start.elapsed().as_secs_f64());
    outcome
}

/// Runs a program to its end, its output shown as it comes.
pub fn run(command: &mut Command) -> Done {
    let status = command.status().map_err(|problem| format!("{}: {problem}", written(command)))?;
    if status.success() { Ok(()) } else { Err(format!("{} ended with {status}", written(command)).into()) }
}

/// Runs a program to its end and returns what it printed.
pub fn output_of(command: &mut Command) -> Done<String> {
    let output = command
        .stderr(Stdio::inherit())
        .output()
        .map_err(|problem| format!("{}: {problem}", written(command)))?;
    if !output.status.success() {
        return Err(format!("{} ended with {}", written(command), output.status).into());
    }
    Ok(String::from_utf8_lossy(&output.stdout).into_owned())
}

/// Cargo, the one that runs this task, in the top of the tree.
pub fn cargo() -> Command {
    let mut command = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.current_dir(top());
    command
}

/// The top of the tree.
pub fn top() -> PathBuf {
    // At run time where Cargo says it, so that a tree that was moved after a build is still found.
    std::env::var_os("CARGO_MANIFEST_DIR").map_or_else(|| env!("CARGO_MANIFEST_DIR").into(), PathBuf::from)
}

/// Where the program of this name is, if it is on `PATH`.
pub fn on_path(program: &str) -> Option<PathBuf> {
    let file = format!("{program}{}", std::env::consts::EXE_SUFFIX);
    std::env::split_paths(&std::env::var_os("PATH")?)
        .map(|folder| folder.join(&file))
        .find(|path| path.is_file())
}

/// Reads a file, its name in the problem if it cannot be read.
pub fn read(path: &Path) -> Done<Vec<u8>> {
    std::fs::read(path).map_err(|problem| format!("{}: {problem}", path.display()).into())
}

/// Reads a file of text.
pub fn read_text(path: &Path) -> Done<String> {
    Ok(String::from_utf8(read(path)?).map_err(|_| format!("{}: not UTF-8", path.display()))?)
}

/// Writes a file, making its folder where needed.
pub fn write(path: &Path, content: impl AsRef<[u8]>) -> Done {
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder)?;
    }
    std::fs::write(path, content).map_err(|problem| format!("{}: {problem}", path.display()).into())
}

fn written(command: &Command) -> String {
    let mut words = vec![command.get_program().to_string_lossy()];
    words.extend(command.get_args().map(|word| word.to_string_lossy()));
    words.join(" ")
}
