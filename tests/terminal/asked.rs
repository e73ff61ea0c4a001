//! What can be asked, and what is said where a call is wrong.

use kettle_barrel::calculator::REGISTER;

use super::{ORDER, ends, program};

#[test]
fn an_order_line_is_answered() {
    let (out, err) = ends(&["order", ORDER], 0);
    // Programs read these lines.
    assert!(out.contains("\nHot-dip: suits on conditions\n"), "{out}");
    assert!(out.contains("1200 pcs"), "{out}");
    assert_eq!(err, "");
}

#[test]
fn an_order_line_may_come_from_standard_input_or_in_pieces() {
    let (quoted, _) = ends(&["order", ORDER], 0);
    let piped =
        program(&["order", "-"]).write_stdin(format!("{ORDER}\n")).assert().code(0).get_output().clone();
    assert_eq!(String::from_utf8(piped.stdout).unwrap(), quoted);
    let pieces: Vec<&str> = ["order"].into_iter().chain(ORDER.split(' ')).collect();
    assert_eq!(ends(&pieces, 0).0, quoted);
}

#[test]
fn what_was_not_understood_stands_in_the_output_and_sets_the_code() {
    let (out, _) = ends(&["order", &format!("{ORDER}, purple")], 1);
    assert!(out.contains("Not used: “purple”"), "{out}");
    assert!(out.contains("Hot-dip: "), "{out}");
}

#[test]
fn a_field_may_come_from_standard_input() {
    let readings = "54\n56\n58\n59\n57\n";
    let piped = program(&["lot", "readings=-"]).write_stdin(readings).assert().code(0).get_output().clone();
    let (written, _) = ends(&["lot", "readings=54\n56\n58\n59\n57"], 0);
    assert_eq!(String::from_utf8(piped.stdout).unwrap(), written);
}

#[test]
fn every_calculator_answers_and_tells_its_fields() {
    for entry in REGISTER {
        let id = entry.about.id;
        let example = entry.about.examples[0].pairs.iter().map(|(name, text)| format!("{name}={text}"));
        let arguments: Vec<String> = [id.to_owned()].into_iter().chain(example).collect();
        let (out, err) = ends(&arguments.iter().map(String::as_str).collect::<Vec<_>>(), 0);
        assert!(!out.is_empty() && err.is_empty(), "{id}: {err}");
        let (help, _) = ends(&[id, "--help"], 0);
        for field in entry.about.fields {
            assert!(help.contains(&format!("  {} ({})", field.key, field.label)), "{id}: {}", field.key);
        }
    }
}

#[test]
fn a_field_that_is_wrong_ends_with_one_and_a_call_that_is_wrong_with_two() {
    let (out, err) = ends(&["coat", "coat=five"], 1);
    assert!(out.is_empty() && err.contains("“five” is not a number"), "{err}");
    for (arguments, says) in [
        (&["coat", "colour=red"][..], "“colour=red” is no field of coat"),
        (&["coat", "coat=1 mil", "coat=2 mil"], "“coat” is given twice"),
        (&["roast"], "unrecognized subcommand 'roast'"),
        (&["order"], "required"),
        (&["coat", "--colour"], "unexpected argument"),
    ] {
        let (out, err) = ends(arguments, 2);
        assert!(out.is_empty() && err.contains(says), "{arguments:?}: {err}");
    }
}

#[test]
fn help_version_completions_and_manual_are_printed() {
    let (help, err) = ends(&["--help"], 0);
    assert!(help.contains("order") && help.contains("salt-spray") && err.is_empty(), "{help}");
    assert_eq!(ends(&[], 0).0, help);
    assert_eq!(ends(&["--version"], 0).0, format!("kettle-barrel {}\n", env!("CARGO_PKG_VERSION")));
    for shell in ["bash", "zsh", "fish", "powershell", "elvish"] {
        assert!(ends(&["completions", shell], 0).0.contains("salt-spray"), "{shell}");
    }
    assert!(ends(&["man"], 0).0.contains(".TH kettle-barrel"));
    assert!(ends(&["man", "lot"], 0).0.contains("readings"));
}

#[test]
fn standard_input_that_is_no_text_is_refused() {
    for (bytes, says) in [(vec![0xff, 0xfe], "not UTF-8"), (vec![b'a'; 2 << 20], "longer than")] {
        let output = program(&["order", "-"]).write_stdin(bytes).assert().code(2).get_output().clone();
        assert!(String::from_utf8_lossy(&output.stderr).contains(says));
    }
}
