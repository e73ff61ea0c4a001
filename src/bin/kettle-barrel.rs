//! The calculators in a terminal.
//!
//! `kettle-barrel` lists them; `kettle-barrel coat coat="50 µm" factor=a123` runs one.

use std::io::Write;
use std::process::ExitCode;

use kettle_barrel::calculator::{self, Draft, FieldAbout, Kind, REGISTER};
use kettle_barrel::order;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let Some(id) = arguments.next() else {
        list();
        return ExitCode::SUCCESS;
    };
    if id == "order" {
        return order_line(&arguments.collect::<Vec<_>>().join(" "));
    }
    let Some(entry) = calculator::find(&id) else {
        eprintln!("There is no calculator “{id}”.\n");
        list();
        return ExitCode::FAILURE;
    };
    let mut draft = Draft::default();
    for argument in arguments {
        match argument.split_once('=') {
            Some((name, text)) if entry.about.fields.iter().any(|field| field.key == name) => {
                draft.set(name, text)
            }
            _ => {
                eprintln!("“{argument}” is no field of {id}; write name=text with one of:");
                entry.about.fields.iter().for_each(|field| eprintln!("  {}", help(field)));
                return ExitCode::FAILURE;
            }
        }
    }
    match entry.evaluate(&draft) {
        Ok(report) => {
            // A reader that closes early, such as `head`, is no fault.
            let _ = write!(std::io::stdout(), "{report}");
            ExitCode::SUCCESS
        }
        Err(problems) => {
            eprintln!("{problems}");
            ExitCode::FAILURE
        }
    }
}

/// Assesses one written order line: `kettle-barrel order "M20 x 90 hex bolt, 10.9, 1200 pcs, C4"`.
fn order_line(line: &str) -> ExitCode {
    let reading = order::reading::read(line);
    // A reader that closes early, such as `head`, is no fault.
    let _ = writeln!(std::io::stdout(), "{reading}\n");
    match order::assess(&reading.draft) {
        Ok(assessment) => {
            let _ = write!(std::io::stdout(), "{assessment}");
            // An answer to a line that was not read whole may be the answer to another order.
            if reading.is_understood() { ExitCode::SUCCESS } else { ExitCode::FAILURE }
        }
        Err(problems) => {
            eprintln!("{problems}");
            ExitCode::FAILURE
        }
    }
}

fn list() {
    println!("kettle-barrel CALCULATOR [FIELD=TEXT ...]");
    println!("kettle-barrel order \"M20 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years\"\n");
    for entry in REGISTER {
        println!("{}: {}", entry.about.id, entry.about.answers);
        entry.about.fields.iter().for_each(|field| println!("    {}", help(field)));
    }
}

fn help(field: &FieldAbout) -> String {
    let takes = match field.kind {
        Kind::Choice(choices) => choices.iter().map(|choice| choice.key).collect::<Vec<_>>().join(" | "),
        _ => field.units().iter().map(|unit| unit.symbol).collect::<Vec<_>>().join(", "),
    };
    format!("{} ({}) [{takes}] = {}", field.key, field.label, field.default)
}
