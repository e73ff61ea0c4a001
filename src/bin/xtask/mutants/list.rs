//! The mutants that cargo-mutants knows of the rooms that compute and judge.

use serde::Deserialize;

use super::plan::{Mutant, Plan};
use super::site::Genre;
use crate::xtask::run::{Done, output_of, top};
use crate::xtask::tools;

/// The rooms whose numbers and verdicts people rely on.
pub const ROOMS: [&str; 10] =
    ["rule", "thread", "coat", "lot", "site", "steel", "quantity", "part", "calculator", "order"];

#[derive(Deserialize)]
struct Listed {
    file: String,
    genre: String,
    replacement: String,
    span: Span,
}

#[derive(Deserialize)]
struct Span {
    start: Point,
}

#[derive(Deserialize)]
struct Point {
    line: usize,
    column: usize,
}

/// What is listed of these files; how many were left out because they cannot compile: another operator in a
/// condition with `let`, an arm less where nothing catches what it took.
pub fn listed(files: &[String]) -> Done<(Plan, usize)> {
    let mut command = tools::cargo_mutants()?;
    command.current_dir(top()).args(["mutants", "--list", "--json"]);
    for file in files {
        command.args(["--file", file]);
    }
    let listed: Vec<Listed> = serde_json::from_str(&output_of(&mut command)?)?;
    let mut plan = Plan::default();
    let mut impossible = 0;
    for Listed { file, genre, replacement, span } in listed {
        let genre = Genre::of(&genre)?;
        let at = (span.start.line, span.start.column);
        let sites = &plan.file(&top(), &file)?.sites;
        let site = sites.iter().find(|site| site.genre == genre && site.at == at);
        match site {
            Some(site) => {
                let (function, text, occurrence) =
                    (site.function.clone(), site.text.clone(), site.occurrence);
                plan.mutants.push(Mutant { file, function, genre, text, occurrence, replacement });
            }
            None if genre == Genre::BinaryOperator && replacement == "||" => impossible += 1,
            None if genre == Genre::MatchArm => impossible += 1,
            None => return Err(format!("{file}:{}:{}: no {genre:?} was found here", at.0, at.1).into()),
        }
    }
    Ok((plan, impossible))
}
