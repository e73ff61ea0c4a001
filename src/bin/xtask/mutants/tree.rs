//! The copy of the project that is built with the mutants in it.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Stdio;

use serde::Deserialize;

use super::plan::Rendered;
use crate::xtask::run::{Done, cargo, read_text, top, write};

/// What is not copied: what is made, and what no test reads.
const LEFT_OUT: [&str; 4] = ["target", "dist", ".git", "node_modules"];
/// The programs that no test of the core starts.
const WITHOUT: [&str; 3] = ["name = \"page\"", "name = \"yardstick\"", "name = \"xtask\""];

/// A copy of the project.
pub struct Tree {
    folder: PathBuf,
    /// Where it is built.
    target: PathBuf,
    features: &'static str,
}

/// Where and how a copy is made, its folders in `target`.
pub struct Made {
    pub folder: &'static str,
    pub target: &'static str,
    pub features: &'static str,
    /// Put at the end of its Cargo.toml.
    pub profile: &'static str,
}

/// A program of tests.
#[derive(Debug, Clone)]
pub struct Binary {
    pub name: String,
    pub path: PathBuf,
}

/// An error of the compiler, by the positions it names: the most telling first.
pub struct Broken {
    pub places: Vec<(String, usize)>,
    pub text: String,
}

impl Tree {
    /// Copies the project but the files with mutants, with `profile` at the end of its Cargo.toml.
    pub fn copy(made: &Made, files: impl Iterator<Item = String>) -> Done<Self> {
        let folder = top().join("target").join(made.folder);
        let own = ["Cargo.toml", "Cargo.lock", "src/lib.rs", "src/mutant.rs", "compiler.sh"];
        let own = own.map(str::to_owned).into_iter().chain(files).map(|file| folder.join(file));
        copy(&top(), &folder, &own.collect::<Vec<_>>())?;
        // A test writes the texts that it has read there.
        fs::create_dir_all(folder.join("target"))?;
        let manifest = read_text(&top().join("Cargo.toml"))?;
        let blocks = manifest.split("\n\n");
        let blocks = blocks.filter(|block| !WITHOUT.iter().any(|name| block.contains(name)));
        let manifest = blocks.collect::<Vec<_>>().join("\n\n");
        write_changed(&folder.join("Cargo.toml"), &format!("{manifest}\n{}", made.profile))?;
        write_changed(&folder.join("Cargo.lock"), &read_text(&top().join("Cargo.lock"))?)?;
        let library = read_text(&top().join("src/lib.rs"))?;
        let library = library.replacen(
            "\n#![",
            "\n#![feature(core_intrinsics, const_eval_select)]\n#![allow(internal_features, warnings)]\n#![",
            1,
        );
        write_changed(&folder.join("src/lib.rs"), &format!("{library}\npub mod mutant;\n"))?;
        write_changed(&folder.join("src/mutant.rs"), include_str!("switch.rs"))?;
        // A switch in a constant function asks for an intrinsic that only this package is allowed. Other shells
        // lose variables whose names have a hyphen.
        let compiler = folder.join("compiler.sh");
        write_changed(&compiler, "#!/usr/bin/env bash\nRUSTC_BOOTSTRAP=1 exec \"$@\"\n")?;
        executable(&compiler)?;
        Ok(Self { folder, target: top().join("target").join(made.target), features: made.features })
    }

    /// Its top.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Puts the sources with the mutants in.
    pub fn put(&self, rendered: &Rendered) -> Done {
        for (name, file) in &rendered.files {
            write_changed(&self.folder.join(name), &file.text)?;
        }
        Ok(())
    }

    /// What the compiler has against the library.
    pub fn check(&self) -> Done<Vec<Broken>> {
        let lines = self.cargo(&["check", "--lib"])?.0;
        Ok(lines.into_iter().filter_map(|line| line.message?.broken()).collect())
    }

    /// Builds the programs of tests.
    pub fn build(&self) -> Done<Vec<Binary>> {
        let tests = ["test", "--no-run", "--lib", "--test", "published", "--test", "property", "--test"];
        let (lines, well) = self.cargo(&[&tests[..], &["terminal"]].concat())?;
        if !well {
            let broken = lines.into_iter().filter_map(|line| line.message?.broken());
            let texts: Vec<_> = broken.map(|broken| broken.text).collect();
            return Err(format!("the copy does not build:\n{}", texts.join("\n")).into());
        }
        let binaries = lines.into_iter().filter_map(|line| {
            let is_test = line.profile.as_ref().is_some_and(|profile| profile.test);
            Some(Binary { name: line.target?.name, path: line.executable.filter(|_| is_test)? })
        });
        Ok(binaries.collect())
    }

    fn cargo(&self, arguments: &[&str]) -> Done<(Vec<Line>, bool)> {
        let output = cargo()
            .current_dir(&self.folder)
            .env("CARGO_TARGET_DIR", &self.target)
            .env("RUSTC_WORKSPACE_WRAPPER", self.folder.join("compiler.sh"))
            .args(arguments)
            .args(["--quiet", "--features", self.features, "--message-format", "json"])
            .stderr(Stdio::inherit())
            .output()?;
        let text = String::from_utf8_lossy(&output.stdout);
        let lines = text.lines().filter_map(|line| serde_json::from_str(line).ok()).collect();
        Ok((lines, output.status.success()))
    }
}

#[derive(Deserialize)]
struct Line {
    message: Option<Message>,
    executable: Option<PathBuf>,
    target: Option<Target>,
    profile: Option<Profile>,
}

#[derive(Deserialize)]
struct Target {
    name: String,
}

#[derive(Deserialize)]
struct Profile {
    test: bool,
}

#[derive(Deserialize)]
struct Message {
    level: String,
    spans: Vec<Span>,
    rendered: Option<String>,
    #[serde(default)]
    children: Vec<Message>,
}

#[derive(Deserialize)]
struct Span {
    file_name: String,
    byte_start: usize,
    is_primary: bool,
    expansion: Option<Expansion>,
}

#[derive(Deserialize)]
struct Expansion {
    span: Box<Span>,
}

impl Message {
    fn broken(self) -> Option<Broken> {
        // The last error only counts the others.
        if self.level != "error" || self.spans.is_empty() {
            return None;
        }
        let mut places = Vec::new();
        for primary in [true, false] {
            self.spans
                .iter()
                .filter(|span| span.is_primary == primary)
                .for_each(|span| span.tell(&mut places));
        }
        self.children.iter().flat_map(|child| &child.spans).for_each(|span| span.tell(&mut places));
        Some(Broken { places, text: self.rendered.unwrap_or_default() })
    }
}

impl Span {
    /// This position, and those of the macros that it comes from.
    fn tell(&self, places: &mut Vec<(String, usize)>) {
        places.push((self.file_name.clone(), self.byte_start));
        if let Some(expansion) = &self.expansion {
            expansion.span.tell(places);
        }
    }
}

/// A file is written only where it changed: what did not is not built again.
fn write_changed(path: &Path, content: &str) -> Done {
    if fs::read_to_string(path).is_ok_and(|old| old == content) { Ok(()) } else { write(path, content) }
}

/// Copies what changed, and takes away what is no longer there; what `own` names is left as it is.
fn copy(from: &Path, to: &Path, own: &[PathBuf]) -> Done {
    fs::create_dir_all(to)?;
    let mut kept = BTreeSet::new();
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let (path, copied) = (entry.path(), to.join(entry.file_name()));
        if LEFT_OUT.iter().any(|name| entry.file_name() == *name) {
            continue;
        }
        kept.insert(copied.clone());
        if entry.file_type()?.is_dir() {
            copy(&path, &copied, own)?;
        } else if !own.contains(&copied) && fs::read(&path)? != fs::read(&copied).unwrap_or_default() {
            fs::copy(&path, &copied)?;
        }
    }
    for entry in fs::read_dir(to)? {
        let path = entry?.path();
        if kept.contains(&path) || own.contains(&path) || LEFT_OUT.iter().any(|name| path.ends_with(name)) {
            continue;
        }
        if path.is_dir() { fs::remove_dir_all(&path)? } else { fs::remove_file(&path)? }
    }
    Ok(())
}

#[cfg(unix)]
fn executable(path: &Path) -> Done {
    use std::os::unix::fs::PermissionsExt;
    Ok(fs::set_permissions(path, fs::Permissions::from_mode(0o755))?)
}

#[cfg(not(unix))]
fn executable(_: &Path) -> Done {
    Err("mutants are tried on Unix only: their time and memory are held by its shell".into())
}
