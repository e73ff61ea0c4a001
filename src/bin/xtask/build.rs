//! The page, as a folder of files for any static host.

use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;

use super::run::{Done, output_of, read_text, run, step, top, write};
use super::tools::{Tools, tools};
use super::{html, offline};

/// Builds the page with Trunk, and finishes it. Returns the folder it is in.
pub fn build() -> Done<PathBuf> {
    build_with(&tools()?)
}

/// Builds the page with these tools.
pub fn build_with(tools: &Tools) -> Done<PathBuf> {
    let dist = top().join("dist");
    step("build the page", || {
        run(trunk(tools).arg("build").arg("--dist").arg(&dist))?;
        finish(tools, &dist)
    })?;
    Ok(dist)
}

/// Builds the yardstick of the page's speed, with the same tools and flags. Returns its folder.
pub fn yardstick(tools: &Tools) -> Done<PathBuf> {
    let dist = top().join("target/yardstick");
    step("build the yardstick", || {
        run(trunk(tools)
            .args(["build", "tests/speed/yardstick.html", "--html-output", "index.html", "--dist"])
            .arg(&dist))
    })?;
    Ok(dist)
}

/// A script with everything left out that only people read; without Node, its remarks at least.
fn shortened(tools: &Tools, script: &Path, options: &[&str]) -> Done<String> {
    let Some(terser) = &tools.terser else { return Ok(html::without_comments(&read_text(script)?)) };
    // The oldest browsers that the page is for know all of ECMAScript 2020; the worker of the list calls this function by its
    // name (`page::worker::start`).
    let usual =
        ["--ecma", "2020", "--compress", "passes=3,unsafe_arrows=true", "--mangle", "reserved=[initSync]"];
    output_of(Command::new(terser).arg(script).args(options).args(usual))
}

fn trunk(tools: &Tools) -> Command {
    let mut trunk = Command::new("trunk");
    trunk
        .current_dir(top())
        .env("PATH", &tools.path)
        // Everything it needs is on the path: it must not fetch, nor ask whether there is a newer one.
        .env("TRUNK_OFFLINE", "true")
        .env("TRUNK_SKIP_VERSION_CHECK", "true")
        // Trunk takes this for a flag of its own, and refuses the value 1 that people give it.
        .env_remove("NO_COLOR");
    if std::env::var_os("RUSTFLAGS").is_none() {
        trunk.env("CARGO_ENCODED_RUSTFLAGS", without_registry());
    }
    if !tools.wasm_opt {
        // Trunk calls wasm-opt for a release only, so this is a release by the Cargo profile alone.
        trunk.env("TRUNK_BUILD_RELEASE", "false").env("TRUNK_BUILD_CARGO_PROFILE", "release");
        trunk.env("TRUNK_BUILD_MINIFY", "true");
    }
    trunk
}

/// The flags that leave the folder of the registry out of the addresses of sources, which a panic names: every
/// library would carry this machine's into the page, some three kilobytes in all.
fn without_registry() -> OsString {
    let cargo = std::env::var_os("CARGO_HOME").map(PathBuf::from);
    let home = cargo.or_else(|| Some(std::env::home_dir()?.join(".cargo")));
    let registries = home.and_then(|home| home.join("registry/src").read_dir().ok());
    let mut flags = OsString::new();
    for registry in registries.into_iter().flatten().flatten() {
        if !flags.is_empty() {
            flags.push("\u{1f}");
        }
        flags.push("--remap-path-prefix=");
        flags.push(registry.path());
        flags.push("=");
    }
    flags
}

/// What Trunk cannot do, because it needs the files as they were built: the script of wasm-bindgen
/// made shorter, the service worker with the list of files, its registration, and the policy
/// with the hashes of the scripts in the page.
///
/// A page from `trunk serve` works without all that, and is the better for it: a page that is being
/// changed must not come from a cache.
fn finish(tools: &Tools, dist: &Path) -> Done {
    let index = dist.join("index.html");
    let page =
        offline::with_registration(&read_text(&index)?, &shortened(tools, &offline::registration(), &[])?)?;
    let page = html::with_policy(
        &page,
        &["'self'", "'wasm-unsafe-eval'"],
        "connect-src 'self'; img-src 'self' data:; manifest-src 'self'; worker-src 'self' blob:",
    )?;
    write(&index, page)?;
    // Trunk's minifier cannot read the script of wasm-bindgen and leaves it as it is.
    for glue in offline::files(dist)?.iter().filter(|file| file.extension().is_some_and(|it| it == "js")) {
        write(glue, shortened(tools, glue, &["--module"])?)?;
    }
    offline::write_service_worker(dist)
}

#[cfg(test)]
mod tests {
    use super::super::html::elements;
    use super::*;

    #[test]
    fn the_yardstick_is_built_with_the_flags_of_the_page() {
        let flags = |file: &str| {
            let page = read_text(&top().join(file)).unwrap();
            let links = elements(&page, "link").unwrap();
            let program = links.iter().find(|link| link.has("rel", "rust")).unwrap();
            ["data-wasm-opt", "data-wasm-opt-params"].map(|name| program.attribute(name).unwrap().to_owned())
        };
        assert_eq!(flags("tests/speed/yardstick.html"), flags("index.html"));
    }
}
