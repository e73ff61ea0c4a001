//! The shape of the tree, kept by a test: what each room must not know.

use std::collections::{BTreeMap, BTreeSet, VecDeque};
use std::fs;
use std::path::{Path, PathBuf};

/// Rooms from the bottom up; a file may name only rooms before its own, without exemption. Those that are
/// not built yet have their place already.
const ROOMS: [&str; 20] = [
    "sorting",
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
    "rule",
    "calculator",
    "order",
    "sheet",
    "course",
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

/// The code of a file, without its remarks and its own tests.
fn code(text: &str) -> String {
    let code = text.split("#[cfg(test)]\nmod tests").next().unwrap_or(text);
    code.lines().map(|line| line.split("//").next().unwrap_or(line)).collect::<Vec<_>>().join("\n")
}

/// A file as the path of its module: `order/line/fields.rs` is `order`, `line`, `fields`.
fn module(name: &str) -> Vec<String> {
    name.trim_end_matches(".rs").split('/').map(str::to_owned).collect()
}

/// The paths of a tree of imports: `a::{b, c::d}` is `a::b` and `a::c::d`.
fn paths(tree: &str) -> Vec<String> {
    let Some((before, within)) = tree.split_once('{') else { return vec![tree.trim().to_owned()] };
    let within = within.rsplit_once('}').map_or(within, |(within, _)| within);
    let mut depth = 0;
    let branches = within.split(|c: char| {
        depth += i32::from(c == '{') - i32::from(c == '}');
        c == ',' && depth == 0
    });
    branches
        .filter(|branch| !branch.trim().is_empty())
        .flat_map(|branch| paths(&format!("{}{}", before.trim(), branch.trim())))
        .collect()
}

/// The modules that a file names: in its imports, and in paths from `crate` or `super`.
fn named(own: &[String], text: &str, modules: &BTreeSet<Vec<String>>) -> BTreeSet<Vec<String>> {
    let code = code(text);
    let mut found = Vec::new();
    let mut rest = String::new();
    for statement in code.split_inclusive(';') {
        match statement.trim_start().split_once("use ") {
            Some((before, tree)) if before.lines().last().is_none_or(|line| line.trim().len() <= 12) => {
                found.extend(paths(tree.trim_end_matches(';')));
            }
            _ => rest.push_str(statement),
        }
    }
    found.extend(
        rest.split(|c: char| !(c.is_alphanumeric() || c == '_' || c == ':'))
            .filter(|path| path.starts_with("crate::") || path.starts_with("super::"))
            .map(str::to_owned),
    );
    let mut all = BTreeSet::new();
    for path in found {
        let mut steps = path.split("::").map(str::trim).peekable();
        let mut at: Vec<String> = match steps.peek() {
            Some(&"crate") if own[0] == "bin" => own[..2].to_vec(),
            Some(&"crate") => Vec::new(),
            Some(&"super") => own.to_vec(),
            _ => continue,
        };
        let mut best = None;
        for step in steps {
            match step {
                "crate" => {}
                "super" => drop(at.pop()),
                step => at.push(step.split_whitespace().next().unwrap_or(step).to_owned()),
            }
            if modules.contains(&at) {
                best = Some(at.clone());
            }
        }
        all.extend(best.filter(|best| best != own));
    }
    all
}

/// Whether one is the other's child, or a child's child.
fn related(one: &[String], other: &[String]) -> bool {
    one.starts_with(other) || other.starts_with(one)
}

/// Every file with what it names.
fn imports() -> BTreeMap<Vec<String>, BTreeSet<Vec<String>>> {
    let sources = sources();
    let modules: BTreeSet<Vec<String>> = sources.iter().map(|(name, _)| module(name)).collect();
    sources
        .iter()
        .map(|(name, text)| {
            let own = module(name);
            let named = named(&own, text, &modules);
            (own, named)
        })
        .collect()
}

/// What each module names of its siblings, itself or by one of its children: an import leads from one
/// sibling to the other where their paths part. Between a module and its own children none leads.
fn siblings(
    imports: &BTreeMap<Vec<String>, BTreeSet<Vec<String>>>,
) -> BTreeMap<Vec<String>, BTreeSet<Vec<String>>> {
    let mut siblings: BTreeMap<Vec<String>, BTreeSet<Vec<String>>> = BTreeMap::new();
    for (own, named) in imports {
        for other in named.iter().filter(|other| !related(own, other)) {
            let shared = own.iter().zip(other.iter()).take_while(|(one, other)| one == other).count();
            siblings.entry(own[..=shared].to_vec()).or_default().insert(other[..=shared].to_vec());
        }
    }
    siblings
}

/// The shortest way from a module along what it names back to itself; `None` where there is none.
fn circle<'n>(
    from: &'n Vec<String>,
    names: &'n BTreeMap<Vec<String>, BTreeSet<Vec<String>>>,
) -> Option<Vec<&'n Vec<String>>> {
    let mut came: BTreeMap<&Vec<String>, &Vec<String>> = BTreeMap::new();
    let mut next = VecDeque::from([from]);
    while let Some(at) = next.pop_front() {
        for other in names.get(at).into_iter().flatten() {
            if other == from {
                let mut way = vec![at];
                while let Some(before) = came.get(way[way.len() - 1]) {
                    way.push(before);
                }
                way.reverse();
                return Some(way);
            }
            if !came.contains_key(other) {
                came.insert(other, at);
                next.push_back(other);
            }
        }
    }
    None
}

#[test]
fn no_modules_import_each_other_in_a_circle_but_one_and_its_children() {
    let imports = imports();
    let named: usize = imports.values().map(BTreeSet::len).sum();
    assert!(named > 1_000, "only {named} imports were read");
    let siblings = siblings(&imports);
    let mut circles = BTreeSet::new();
    for from in siblings.keys() {
        let Some(mut way) = circle(from, &siblings) else { continue };
        // The same circle from wherever it is entered.
        let first = (0..way.len()).min_by_key(|at| way[*at]).unwrap();
        way.rotate_left(first);
        circles.insert(way.iter().map(|one| one.join("/")).collect::<Vec<_>>().join(" → "));
    }
    assert!(circles.is_empty(), "modules that import each other: {circles:#?}");
}

/// A circle of three is found, one through the children of two modules as well, and none between a module
/// and its own child.
#[test]
fn a_circle_of_any_length_is_found() {
    let imports: BTreeMap<_, _> = [
        ("a/one.rs", &["a/two.rs"][..]),
        ("a/two.rs", &["a/three.rs"]),
        ("a/three.rs", &["a/one.rs"]),
        ("b.rs", &["b/child.rs", "a/one.rs"]),
        ("b/child.rs", &["b.rs"]),
        ("c/left/report.rs", &["c/right.rs"]),
        ("c/right/report.rs", &["c/left.rs"]),
    ]
    .into_iter()
    .map(|(own, named)| (module(own), named.iter().map(|name| module(name)).collect::<BTreeSet<_>>()))
    .collect();
    let siblings = siblings(&imports);
    let length = |from: &str| circle(&module(from), &siblings).map(|way| way.len());
    assert_eq!(length("a/two.rs"), Some(3));
    assert_eq!(length("c/left.rs"), Some(2));
    assert_eq!(length("b.rs"), None);
}

#[test]
fn every_room_has_its_floor() {
    for (name, _) in sources() {
        assert!(name == "lib.rs" || room(&name).is_some(), "{name} stands in no room of the list");
    }
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

/// Its tables of the letters of all the world would go over the wire with the page.
#[test]
fn the_page_makes_letters_small_by_its_own_rules() {
    for (name, text) in sources() {
        let code = code(&text);
        let calls = ["to_lowercase", "to_uppercase"].into_iter().any(|call| code.contains(call));
        assert!(!calls || name.starts_with("bin/"), "{name}: use `quantity::letters`");
    }
}

#[test]
fn arrows_point_one_way() {
    let up: Vec<String> = imports()
        .iter()
        .flat_map(|(own, named)| named.iter().map(move |other| (own, other)))
        .filter(|(own, other)| room(&own[0]) < room(&other[0]))
        .map(|(own, other)| format!("{} names {}", own.join("/"), other.join("/")))
        .collect();
    assert!(up.is_empty(), "arrows up: {up:#?}");
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
