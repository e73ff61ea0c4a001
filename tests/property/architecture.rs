//! The shape of the tree, kept by a test: what each room must not know.

use std::fs;
use std::path::{Path, PathBuf};

/// Rooms from the bottom up; a file may name only rooms before its own.
const ROOMS: [&str; 16] = [
    "quantity",
    "source",
    "working",
    "process",
    "sentence",
    "table",
    "thread",
    "steel",
    "part",
    "coat",
    "site",
    "lot",
    "calculator",
    "order",
    "page",
    "bin",
];

/// By the beginning of their names.
const BROWSER_CRATES: [&str; 5] = ["yew", "web_sys", "js_sys", "wasm_bindgen", "gloo"];

fn files(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files(&path, found);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push(path);
        }
    }
}

fn sources() -> Vec<(String, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut found = Vec::new();
    files(&root, &mut found);
    found
        .into_iter()
        .map(|path| {
            let name = path.strip_prefix(&root).unwrap().to_string_lossy().replace('\\', "/");
            (name, fs::read_to_string(&path).unwrap())
        })
        .collect()
}

fn room(name: &str) -> Option<usize> {
    let first = name.split(['/', '.']).next()?;
    ROOMS.iter().position(|room| *room == first)
}

#[test]
fn no_file_outside_the_page_names_a_browser_crate() {
    for (name, text) in sources() {
        if name.starts_with("page") || name.starts_with("bin/") {
            continue;
        }
        for browser in BROWSER_CRATES {
            let named = text
                .lines()
                .any(|line| line.trim_start().starts_with("use ") && line.contains(&format!("{browser}::")));
            assert!(!named, "{name} names {browser}");
        }
    }
}

#[test]
fn arrows_point_one_way() {
    for (name, text) in sources() {
        let Some(own) = room(&name) else { continue };
        for (other, word) in ROOMS.iter().enumerate().filter(|(other, _)| *other > own) {
            // The table room holds the coat room's own rows: types, no rules.
            if ROOMS[own] == "table" && ROOMS[other] != "calculator" && ROOMS[other] != "order" {
                continue;
            }
            let named = text.lines().any(|line| {
                !line.trim_start().starts_with("//") && line.contains(&format!("crate::{word}::"))
            });
            assert!(!named, "{name} names the room {word}, which stands above it");
        }
    }
}

#[test]
fn the_native_build_has_no_web_crate() {
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".into());
    let tree = std::process::Command::new(cargo)
        .args(["tree", "--edges", "normal", "--prefix", "none", "--offline"])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .unwrap();
    assert!(tree.status.success(), "{}", String::from_utf8_lossy(&tree.stderr));
    for line in String::from_utf8(tree.stdout).unwrap().lines() {
        assert!(!BROWSER_CRATES.iter().any(|browser| line.replace('-', "_").starts_with(browser)), "{line}");
    }
}
