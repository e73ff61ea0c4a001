//! Which crate, and which room of ours, the program's code comes from.

use std::collections::BTreeMap;
use std::path::Path;

use wasmparser::{KnownCustom, Name, Parser, Payload, TypeRef};

use super::run::{Done, read, top};

/// How many crates and rooms are listed by name.
const LISTED: usize = 24;

/// Prints the code of the program as Cargo made it, by crate, and by room where the crate is ours.
///
/// Before wasm-opt, which drops the names: so these are shares, and not what is transferred.
pub fn by_room() -> Done {
    let sizes = sizes(&top().join("target/wasm32-unknown-unknown/release/page.wasm"))?;
    let all: usize = sizes.values().sum();
    let mut rooms: Vec<(&String, &usize)> = sizes.iter().collect();
    rooms.sort_by_key(|(_, size)| std::cmp::Reverse(**size));
    println!("Code by crate and room, before wasm-opt: {:.0} kB", all as f64 / 1e3);
    let (named, rest) = rooms.split_at(rooms.len().min(LISTED));
    for (room, size) in named {
        println!("{:>9} B {:>5.1} %  {room}", size, **size as f64 / all as f64 * 100.0);
    }
    println!("{:>9} B          {} others", rest.iter().map(|(_, size)| **size).sum::<usize>(), rest.len());
    Ok(())
}

fn sizes(file: &Path) -> Done<BTreeMap<String, usize>> {
    let content = read(file)?;
    let mut imported = 0_u32;
    let mut bodies = Vec::new();
    let mut names = BTreeMap::new();
    for payload in Parser::new(0).parse_all(&content) {
        match payload? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    imported += u32::from(matches!(import?.ty, TypeRef::Func(_)));
                }
            }
            Payload::CodeSectionEntry(body) => bodies.push(body.range().len()),
            Payload::CustomSection(section) => {
                let KnownCustom::Name(section) = section.as_known() else { continue };
                for subsection in section {
                    let Name::Function(functions) = subsection? else { continue };
                    for function in functions {
                        let function = function?;
                        names.insert(function.index, function.name.to_owned());
                    }
                }
            }
            _ => {}
        }
    }
    let mut sizes = BTreeMap::new();
    for (index, size) in (imported..).zip(bodies) {
        let room = names.get(&index).map_or_else(|| "without a name".to_owned(), |name| room(name));
        *sizes.entry(room).or_default() += size;
    }
    Ok(sizes)
}

/// The crate of a function, and the room where the crate is ours. Code of others that was made for a type
/// of ours counts as ours.
fn room(symbol: &str) -> String {
    const OURS: &str = "kettle_barrel::";
    let name = format!("{:#}", rustc_demangle::demangle(symbol));
    let word =
        |text: &str| -> String { text.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect() };
    if let Some((_, behind)) = name.split_once(OURS) {
        return format!("{OURS}{}", word(behind));
    }
    let name = name.trim_start_matches(|c: char| !c.is_alphanumeric() && c != '_');
    word(name.strip_prefix("dyn ").unwrap_or(name))
}

#[cfg(test)]
mod tests {
    use super::room;

    #[test]
    fn a_function_has_a_room() {
        assert_eq!(room("_ZN13kettle_barrel6thread3fit17h0123456789abcdefE"), "kettle_barrel::thread");
        assert_eq!(room("_ZN4core3fmt5write17h0123456789abcdefE"), "core");
    }
}
