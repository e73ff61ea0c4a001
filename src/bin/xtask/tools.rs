//! The tools that make and test the page, and try the tests, in a cache of the user's keyed by their version.
//!
//! Every clone and every run shares them. A tool is installed beside its place and then renamed
//! into it, so that an install that was cut short is never taken for a finished one.

use std::ffi::OsString;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::{Path, PathBuf};
use std::process::Command;

use super::run::{Done, on_path, output_of, read_text, run, step, top, write};

/// The newest Trunk that builds with the Rust version of `Cargo.toml`.
const TRUNK: &str = "0.21.14";
/// The npm package that ships wasm-opt; older than 117 cannot read what Rust writes today.
const BINARYEN: &str = "132";
/// What makes the script of wasm-bindgen shorter, which Trunk's minifier cannot read.
const TERSER: &str = "5.51.4";
/// The accessibility rules that the tests run in the page.
const AXE: &str = "4.14.1";
/// What lists the mutants.
const CARGO_MUTANTS: &str = "27.1.0";
/// The driver of Firefox.
const GECKODRIVER: &str = "0.37.1";

/// What the page is built with.
pub struct Tools {
    /// `PATH` with the tools in front.
    pub path: OsString,
    /// Whether there is a wasm-opt.
    pub wasm_opt: bool,
    /// The minifier of scripts, where there is one.
    pub terser: Option<PathBuf>,
    /// The folder of wasm-bindgen and its test runner.
    pub wasm_bindgen: PathBuf,
}

/// Finds or brings everything the page is built with.
pub fn tools() -> Done<Tools> {
    wasm_target()?;
    let version = locked_version("wasm-bindgen")?;
    // At the same time: neither keeps all cores busy to its end.
    let (trunk, wasm_bindgen) = std::thread::scope(|scope| {
        let trunk = scope.spawn(|| {
            // A problem passes from one thread to the other as its text.
            cargo_tool("trunk", TRUNK, "trunk", &["--locked", "--no-default-features"])
                .map_err(|problem| problem.to_string())
        });
        // Without --locked: the lock file that comes with wasm-bindgen-cli names withdrawn crates.
        let wasm_bindgen = cargo_tool("wasm-bindgen-cli", &version, "wasm-bindgen", &[]);
        (trunk.join().unwrap_or_else(|_| Err("the install of Trunk broke off".into())), wasm_bindgen)
    });
    let (trunk, wasm_bindgen) = (trunk?, wasm_bindgen?);
    let mut folders = vec![trunk, wasm_bindgen.clone()];
    let wasm_opt = npm_tool("binaryen", BINARYEN, ".bin/wasm-opt")?;
    match &wasm_opt {
        Some(program) => folders.extend(program.parent().map(Path::to_path_buf)),
        None => println!("No npm on this machine: the page is built without wasm-opt, and is larger for it."),
    }
    let terser = npm_tool("terser", TERSER, ".bin/terser")?;
    folders.extend(std::env::split_paths(&std::env::var_os("PATH").unwrap_or_default()));
    Ok(Tools { path: std::env::join_paths(folders)?, wasm_opt: wasm_opt.is_some(), terser, wasm_bindgen })
}

/// The axe-core script, which reads a page for what keeps people from using it.
pub fn axe_core() -> Done<PathBuf> {
    npm_tool("axe-core", AXE, "axe-core/axe.min.js")?
        .ok_or_else(|| "axe-core needs npm; on Debian: apt-get install nodejs npm".into())
}

/// The driver of Firefox, which Debian has no package of.
pub fn gecko_driver() -> Done<PathBuf> {
    let folder = cargo_tool("geckodriver", GECKODRIVER, "geckodriver", &["--locked"])?;
    Ok(folder.join(format!("geckodriver{}", std::env::consts::EXE_SUFFIX)))
}

/// What lists the mutants of a source.
pub fn cargo_mutants() -> Done<Command> {
    let program = format!("cargo-mutants{}", std::env::consts::EXE_SUFFIX);
    let found = match on_path("cargo-mutants") {
        Some(found) => found,
        None => cargo_tool("cargo-mutants", CARGO_MUTANTS, "cargo-mutants", &["--locked"])?.join(program),
    };
    Ok(Command::new(found))
}

/// Sees to it that these programs are here: finds them, or installs their packages where that is
/// possible, or ends with the command that installs them.
pub fn programs(programs: &[&str], packages: &[&str]) -> Done {
    let missing =
        || programs.iter().copied().filter(|program| on_path(program).is_none()).collect::<Vec<_>>();
    if missing().is_empty() {
        return Ok(());
    }
    install(&missing().join(", "), packages)?;
    match missing().as_slice() {
        [] => Ok(()),
        names => Err(format!("still not on this machine: {}", names.join(", ")).into()),
    }
}

/// Installs packages of Debian where that is possible, or ends with the command that does.
fn install(missing: &str, packages: &[&str]) -> Done {
    let advice = format!("apt-get update && apt-get install -y {}", packages.join(" "));
    if !debian_as_root() {
        return Err(format!("not on this machine: {missing}. On Debian this installs it: {advice}").into());
    }
    step(&format!("install {}", packages.join(", ")), || {
        run(Command::new("apt-get").args(["-q", "update"]))?;
        run(Command::new("apt-get")
            .args(["-q", "install", "-y", "--no-install-recommends"])
            .args(packages)
            .env("DEBIAN_FRONTEND", "noninteractive"))
    })
}

/// A Python with the packages of a list, whose lines name a version each.
pub fn python(name: &str, requirements: &Path) -> Done<PathBuf> {
    programs(&["python3"], &["python3", "python3-venv"])?;
    // Debian has Python without what makes an environment.
    let makes_environments = Command::new("python3").args(["-c", "import venv, ensurepip"]).output()?;
    if !makes_environments.status.success() {
        install("python3-venv", &["python3-venv"])?;
    }
    // Named by the list, so that another list makes another environment.
    let mut hasher = DefaultHasher::new();
    read_text(requirements)?.hash(&mut hasher);
    cached(&format!("{name}-{:016x}", hasher.finish()), Path::new("bin/python"), |folder| {
        run(Command::new("python3").args(["-m", "venv"]).arg(folder))?;
        run(Command::new(folder.join("bin/python"))
            .args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--requirement"])
            .arg(requirements))
    })
}

fn debian_as_root() -> bool {
    Path::new("/etc/debian_version").exists()
        && output_of(Command::new("id").arg("-u")).is_ok_and(|user| user.trim() == "0")
}

fn wasm_target() -> Done {
    const TARGET: &str = "wasm32-unknown-unknown";
    let rustc = std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    let folder = output_of(Command::new(&rustc).current_dir(top()).args([
        "--print",
        "target-libdir",
        "--target",
        TARGET,
    ]));
    if folder.is_ok_and(|folder| Path::new(folder.trim()).is_dir()) {
        return Ok(());
    }
    if on_path("rustup").is_none() {
        return Err(
            format!("Rust's {TARGET} target is missing, and there is no rustup to add it with").into()
        );
    }
    step(&format!("add Rust's {TARGET} target"), || {
        run(Command::new("rustup").current_dir(top()).args(["target", "add", TARGET]))
    })
}

/// The folder with a program that Cargo installs.
///
/// Built without optimisation, in a quarter less time: the tools run for seconds, and most of what they
/// do is to call others and to copy files.
fn cargo_tool(package: &str, version: &str, program: &str, how: &[&str]) -> Done<PathBuf> {
    let file = Path::new("bin").join(format!("{program}{}", std::env::consts::EXE_SUFFIX));
    let found = cached(&format!("{program}-{version}"), &file, |folder| {
        run(Command::new("cargo")
            .args(["install", package, "--version", version, "--root"])
            .arg(folder)
            .args(how)
            .env("CARGO_PROFILE_RELEASE_LTO", "off")
            .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "0")
            .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")
            .env("CARGO_PROFILE_RELEASE_DEBUG", "0"))
    })?;
    Ok(found.parent().map(Path::to_path_buf).unwrap_or_default())
}

/// A file of an npm package; none where it is not cached and there is no npm.
fn npm_tool(package: &str, version: &str, file: &str) -> Done<Option<PathBuf>> {
    let name = format!("{package}-{version}");
    let file = Path::new("node_modules").join(file);
    // What npm brings runs on Node as well: with Node gone, a cached script is of no use.
    if on_path("npm").is_none() || on_path("node").is_none() {
        return Ok(None);
    }
    let npm = if cfg!(windows) { "npm.cmd" } else { "npm" };
    cached(&name, &file, |folder| {
        write(&folder.join("package.json"), "{\"private\": true}\n")?;
        run(Command::new(npm)
            .args(["install", "--no-audit", "--no-fund", "--ignore-scripts", "--prefix"])
            .arg(folder)
            .arg(format!("{package}@{version}")))
    })
    .map(Some)
}

/// A file in the cache, its folder filled by `install` if it is not there.
fn cached(name: &str, file: &Path, install: impl FnOnce(&Path) -> Done) -> Done<PathBuf> {
    let folder = cache()?.join(name);
    let found = folder.join(file);
    if found.exists() {
        return Ok(found);
    }
    let unfinished = cache()?.join(format!(".{name}-{}", std::process::id()));
    std::fs::create_dir_all(&unfinished)?;
    let outcome =
        step(&format!("bring {name} into {}", folder.display()), || install(&unfinished)).and_then(|()| {
            // Another run may have been quicker; its folder is as good as ours.
            if found.exists() {
                return Ok(());
            }
            if folder.exists() {
                std::fs::remove_dir_all(&folder)?;
            }
            Ok(std::fs::rename(&unfinished, &folder)?)
        });
    if unfinished.exists() {
        std::fs::remove_dir_all(&unfinished)?;
    }
    outcome?;
    if found.exists() {
        Ok(found)
    } else {
        Err(format!("{} is not in what was installed", found.display()).into())
    }
}

/// The cache of this user.
fn cache() -> Done<PathBuf> {
    let variable = |name| std::env::var_os(name).filter(|value| !value.is_empty()).map(PathBuf::from);
    variable("XDG_CACHE_HOME")
        .or_else(|| variable("HOME").or_else(|| variable("USERPROFILE")).map(|home| home.join(".cache")))
        .map(|folder| folder.join("kettle-barrel"))
        .ok_or_else(|| "no folder for a cache: set XDG_CACHE_HOME or HOME".into())
}

/// The version of a package in the lock file.
fn locked_version(package: &str) -> Done<String> {
    let lock = read_text(&top().join("Cargo.lock"))?;
    version_in(&lock, package).ok_or_else(|| format!("Cargo.lock does not name {package}").into())
}

fn version_in(lock: &str, package: &str) -> Option<String> {
    let mut lines = lock.lines();
    lines.find(|line| *line == format!("name = \"{package}\""))?;
    let version = lines.next()?.strip_prefix("version = \"")?.strip_suffix('"')?;
    Some(version.to_owned())
}

#[cfg(test)]
mod tests {
    use super::version_in;

    #[test]
    fn the_lock_file_names_a_version() {
        let lock = "[[package]]\nname = \"wasm-bindgen-macro\"\nversion = \"1.0.0\"\n\n\
                    [[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\n";
        assert_eq!(version_in(lock, "wasm-bindgen").as_deref(), Some("0.2.130"));
        assert_eq!(version_in(lock, "trunk"), None);
    }
}
