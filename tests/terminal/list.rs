//! A list of order lines, as a process.

use super::{ends, program};

const LINES: [&str; 6] = [
    "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs",
    "500 ea 3/4-10 x 4 HHCS; gr 8; HDG",
    "M10 x 40 socket screw, 12.9, C3",
    "A325 7/8 x 3-1/2 w/ DH nut & F436, C4",
    "M12 washers, 4.6, 20000, C3, 15 years",
    "a song of praise",
];

fn heading() -> String {
    ends(&["list", "--heading"], 0).0
}

fn listed(input: impl Into<Vec<u8>>, arguments: &[&str]) -> (String, String) {
    let output =
        program(&["list", "-"]).args(arguments).write_stdin(input.into()).assert().get_output().clone();
    (String::from_utf8(output.stdout).unwrap(), String::from_utf8(output.stderr).unwrap())
}

/// The column of this name in the results, line by line.
fn column(results: &str, name: &str) -> Vec<String> {
    let mut reader = csv::Reader::from_reader(results.as_bytes());
    let place = reader.headers().unwrap().iter().position(|heading| heading == name).unwrap();
    reader.records().map(|record| record.unwrap()[place].to_owned()).collect()
}

#[test]
fn a_line_of_a_list_is_the_order_line_itself() {
    let (results, _) = listed(LINES.join("\n"), &[]);
    assert_eq!(column(&results, "line"), LINES);
    for (line, verdict) in LINES.iter().zip(column(&results, "hot-dip")).take(5) {
        let (order, _) = ends(&["order", line], 0);
        assert!(
            order.contains(&format!("\nHot-dip: {}\n", verdict.to_lowercase())),
            "{line}: {verdict}\n{order}"
        );
    }
    assert!(!column(&results, "problem")[5].is_empty());
}

#[test]
fn columns_in_any_order_say_what_a_line_says() {
    let (written, _) = listed("M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs\n", &[]);
    let heading = "Pos;Menge;Gewinde;Länge (mm);Teil;Festigkeitsklasse;Ort;Jahre\n";
    let cells = "10;400;M16;60;hex bolt;8.8;C3;15\n";
    let (columns, left_out) = listed(format!("{heading}{cells}"), &[]);
    for name in ["hot-dip", "order", "zinc max (kg)", "years min", "weight (kg)"] {
        assert_eq!(column(&columns, name), column(&written, name), "{name}");
    }
    assert!(left_out.contains("Pos"), "{left_out}");
    // A unit in the heading, or in the cell; a decimal comma beside a semicolon.
    for (heading, cell) in [("length (in)", "2,5"), ("length", "2.5 in"), ("length", "63,5")] {
        let (results, _) = listed(format!("part;thread;{heading};steel\nhex bolt;M16;{cell};8.8\n"), &[]);
        assert_eq!(column(&results, "problem"), [""], "{heading} {cell}");
        assert_eq!(column(&results, "weight (kg)").len(), 1);
    }
}

#[test]
fn every_encoding_of_a_spreadsheet_says_the_same() {
    let list = "Teil;Gewinde;Länge;Güte\nhex bolt;M16;60;8.8\n";
    let (expected, _) = listed(list, &[]);
    let sixteen = |unit: fn(u16) -> [u8; 2], mark: [u8; 2]| {
        mark.into_iter().chain(list.encode_utf16().flat_map(unit)).collect::<Vec<u8>>()
    };
    let windows = list.chars().map(|c| u8::try_from(u32::from(c)).unwrap()).collect();
    let marked = format!("\u{feff}{list}").into_bytes();
    for input in
        [sixteen(u16::to_le_bytes, [0xFF, 0xFE]), sixteen(u16::to_be_bytes, [0xFE, 0xFF]), windows, marked]
    {
        assert_eq!(listed(input, &[]).0, expected);
    }
}

#[test]
fn parts_of_a_list_put_together_are_the_list() {
    let lines: Vec<&str> = LINES.iter().cycle().take(5000).copied().collect();
    let (whole, _) = listed(lines.join("\n"), &[]);
    let parts: Vec<String> =
        lines.chunks(1250).map(|part| listed(part.join("\n"), &["--no-heading"]).0).collect();
    assert!(whole == heading() + &parts.concat(), "the parts differ from the whole");
}

#[cfg(feature = "tasks")]
#[test]
fn gnu_parallel_gives_the_same_byte_for_byte() {
    use std::io::Write;
    use std::process::{Command, Stdio};

    let lines: Vec<&str> = LINES.iter().cycle().take(2000).copied().collect();
    let (whole, _) = listed(lines.join("\n"), &["--no-heading"]);
    let program = assert_cmd::cargo::cargo_bin("kettle-barrel");
    let command = format!("{} list - --no-heading || test $? = 1", program.display());
    let mut parallel = Command::new("parallel")
        .args(["--pipe", "--keep-order", "-N500", "-j2", &command])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("GNU parallel; on Debian: apt-get install parallel");
    let mut input = parallel.stdin.take().unwrap();
    let text = lines.join("\n") + "\n";
    let writer = std::thread::spawn(move || input.write_all(text.as_bytes()).unwrap());
    let output = parallel.wait_with_output().unwrap();
    writer.join().unwrap();
    assert!(output.status.success());
    assert!(String::from_utf8(output.stdout).unwrap() == whole, "four slices differ from the whole");
}

#[test]
fn a_list_that_is_none_is_told() {
    let long = "M".repeat(1 << 20);
    for input in ["", "\n\n", &format!("{long}\n")] {
        let output = program(&["list", "-"]).write_stdin(input).assert().get_output().clone();
        assert!(!output.status.success(), "{} bytes", input.len());
    }
    let (_, problem) = ends(&["list", "no-such-list.csv"], 2);
    assert!(problem.contains("no-such-list.csv"));
}

#[test]
fn nothing_in_the_results_runs_in_a_spreadsheet() {
    let (results, _) = listed("=1+1 hex bolt\n+49 M16 hex bolt\n@M16\n", &[]);
    for record in csv::Reader::from_reader(results.as_bytes()).records() {
        for cell in &record.unwrap() {
            assert!(!cell.starts_with(['=', '+', '-', '@']), "{cell}");
        }
    }
}

#[test]
fn a_list_in_json_has_the_same_cells() {
    let (csv, _) = listed(LINES.join("\n"), &[]);
    let (json, _) = listed(LINES.join("\n"), &["--json"]);
    let first: serde_json::Value = serde_json::from_str(json.lines().next().unwrap()).unwrap();
    assert_eq!(first["order"], column(&csv, "order")[0].as_str());
    assert_eq!(json.lines().count(), LINES.len());
}

#[test]
fn the_template_is_read_whole() {
    let (template, _) = ends(&["list", "--template"], 0);
    let (results, left_out) = listed(template, &[]);
    assert_eq!(left_out, "");
    assert!(column(&results, "not used").iter().all(String::is_empty), "{results}");
    assert!(column(&results, "problem").iter().all(String::is_empty), "{results}");
}

#[test]
fn a_summary_counts_the_lines() {
    let (summary, _) = listed(LINES.join("\n"), &["--summary"]);
    assert!(summary.starts_with("5 lines assessed, 1 with a problem"), "{summary}");
    assert!(summary.contains("What can share a bath or a barrel") && summary.contains("In all"), "{summary}");
}

#[test]
fn what_stands_before_a_row_without_an_end_is_assessed_and_told() {
    let long = "hex bolt,M16\n".repeat(1 << 19);
    let list = format!("part,thread,length\nhex bolt,M16,60\n\"hex bolt,M16,60\n{long}");
    let output = program(&["list", "-"]).write_stdin(list).assert().get_output().clone();
    assert_eq!(output.status.code(), Some(2));
    let (results, problem) =
        (String::from_utf8(output.stdout).unwrap(), String::from_utf8(output.stderr).unwrap());
    assert_eq!(column(&results, "line"), ["hex bolt, M16, length 60 mm"]);
    assert!(problem.contains("row 3 does not end"), "{problem}");
}
