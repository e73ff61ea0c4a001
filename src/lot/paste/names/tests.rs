//! What every question about a name answers, beside the names that are nearest to it and are answered
//! otherwise. The words are common practice of gauges and of those who type.

use super::*;

/// Asks one question of names that are to be so, and of names that are not.
fn ask(question: fn(&str) -> bool, so: &[&str], not: &[&str]) {
    for name in so {
        assert!(question(name), "{name}");
    }
    for name in not {
        assert!(!question(name), "{name}");
    }
}

#[test]
fn numbers_and_units_are_no_part_of_a_name() {
    assert_eq!(bare("Thickness 3 (µm)"), "thickness");
    assert_eq!(bare("Min mil 2"), "min");
    assert_eq!(bare("Temp (°C)"), "temp °c");
    assert_eq!(stem("R12"), "r");
    assert_eq!(stem("Spot 2 head 3"), "spot head");
    assert_eq!(stem("7"), "");
    ask(|other| differ("R1", other), &["x1", "head", ""], &["R1", "R12", "r 3"]);
}

#[test]
fn a_summary_is_told_from_a_heading_with_its_limit() {
    ask(
        is_summary,
        &[
            "Std. Dev.",
            "Mean 12 µm",
            "max. reading",
            "local minimum",
            "Lowest",
            "n",
            "Average of 5",
            "thickness mean",
        ],
        &["Thickness (min 43 µm)", "Thickness", "reading 3", "", "bolt", "n 1 head"],
    );
    // The limit of what is no reading names nothing that holds readings.
    ask(is_summary, &["Width min 3", "thickness min"], &["width"]);
    ask(is_no_article, &["Mean", "Operator"], &["bolt 3", ""]);
    ask(is_mean, &["Mean:", "ø", "Mittelwert"], &["max", "mean 3", ""]);
    ask(is_count, &["n", "Count =", "No. of readings"], &["mean", "no", ""]);
}

#[test]
fn what_stands_above_readings_is_known_by_its_name() {
    ask(is_particular, &["Operator", "Serial no.", "Los"], &["reading", "mean", ""]);
    ask(is_known, &["Batch", "bolt no", "Reading", "Thickness"], &["torque", "", "quill"]);
    ask(is_known, &["head 2", "face"], &["thickness rough", "reading table"]);
    ask(is_place, &["Head", "shank 2", "face3"], &["header", "", "r1"]);
    ask(is_unit_line, &["Units:", "Einheit", "unit"], &["unity", "µm", ""]);
    ask(is_unit, &["µm", "mil", "g/m²", "inch"], &["kg", "°C", "hrs", ""]);
    ask(is_identity, &["No", "bolt no.", "Bolt 3", "heat #", "line no"], &["torque", "reading", "", "north"]);
    ask(is_article, &["Bolt", "Mutter"], &["thread", "bolt 3", ""]);
    ask(is_moment, &["Date", "Uhrzeit", "date/time"], &["dated", "reading", ""]);
    ask(counts_off, &["bolt", "Reading"], &["torque", "head", "", "quill"]);
}

#[test]
fn a_heading_says_readings_the_surer_the_more_stand_beside_it() {
    let all = ["R1", "R2", "x1", "head", "shank", "Thickness", "value", "1", "2", "torque 1", "torque 2"];
    for (heading, said) in [
        ("R1", Some(Says::Series)),
        ("x1", None),
        ("head", Some(Says::Series)),
        ("Thickness", Some(Says::Thickness)),
        ("value", Some(Says::Reading)),
        ("1", Some(Says::Series)),
        ("torque 1", None),
    ] {
        assert_eq!(says(heading, &all), said, "{heading}");
    }
    assert_eq!(says("head", &["head", "R1"]), None);
    assert_eq!(says("r", &["r", "r"]), None);
    assert_eq!(says("Reading 1", &["Reading 1", "Thickness 1"]), Some(Says::Reading));
}

#[test]
fn words_name_columns_or_are_a_sentence() {
    let name =
        |words: &[&str]| name_columns(&words.iter().map(|word| (*word).to_owned()).collect::<Vec<_>>());
    for words in [
        &["No", "µm"][..],
        &["colour", "mean"],
        &["colour", "torque"],
        &["R1", "R2"],
        &["head", "shank"],
        &["reading", "thickness"],
        &["reading"],
    ] {
        assert!(name(words), "{words:?}");
    }
    for words in [
        &["colour", "reading"][..],
        &["thickness", "of", "bolt"],
        &["bolt", "in", "mil"],
        &["readings", "for", "thickness"],
        &["R1", "colour"],
        &["head", "colour"],
    ] {
        assert!(!name(words), "{words:?}");
    }
}

#[test]
fn the_unit_of_a_heading_stands_in_brackets_first() {
    static UNITS: [&Unit; 3] = [&unit::UM, &unit::MIL, &unit::INCH];
    for (heading, found) in [
        ("Thickness (µm)", Some(&unit::UM)),
        ("Thickness [ mil ]", Some(&unit::MIL)),
        ("mil (µm)", Some(&unit::UM)),
        ("µm", Some(&unit::UM)),
        ("Thickness, mil", Some(&unit::MIL)),
        ("in", None),
        ("Thickness (in)", Some(&unit::INCH)),
        ("thickness in mil", Some(&unit::MIL)),
        ("Thickness )µm(", Some(&unit::UM)),
        ("thickness", None),
        ("", None),
    ] {
        assert_eq!(unit_in(heading, &UNITS), found, "{heading}");
    }
    ask(
        measures_something_else,
        &["Torque 1", "Temp. (°C)", "head (kg)", "surface temperature", "load of pair"],
        &["Thickness (µm)", "head", "coat (g/m²)", "", "reading (kg", "the torque of it", "head (x)"],
    );
}

#[test]
fn a_label_ends_at_its_mark() {
    for (line, cut) in [
        ("A1 52 48", (Some("A1"), "52 48")),
        ("#3 52", (Some("#3"), "52")),
        ("2) 52", (Some("2)"), "52")),
        ("(12) 52", (Some("(12)"), "52")),
        ("b] 52", (Some("b]"), "52")),
        ("bolt 1: 52 48", (Some("bolt 1"), "52 48")),
        ("Mean = 52", (Some("Mean "), "52")),
        ("head: 52", (Some("head"), "52")),
        // No labels.
        ("1 52", (None, "1 52")),
        ("bolt 52", (None, "bolt 52")),
        ("A1 rough", (None, "A1 rough")),
        ("A1,2 52", (None, "A1,2 52")),
        ("ab) 52", (None, "ab) 52")),
        ("123456) 52", (None, "123456) 52")),
        (") 52", (None, ") 52")),
        ("52", (None, "52")),
        // A time of day ends none, and neither does a number.
        ("10:52 48", (None, "10:52 48")),
        ("1:52 3", (None, "1:52 3")),
        ("at 10:52, 48", (None, "at 10:52, 48")),
        ("bolt at 10:52: 48", (Some("bolt at 10:52"), "48")),
        ("57: 52", (Some("57"), "52")),
        ("#3 52", (Some("#3"), "52")),
        ("<3 52", (None, "<3 52")),
        ("a, b: 52", (None, "a, b: 52")),
        ("a; b: 52", (None, "a; b: 52")),
    ] {
        assert_eq!(label(line), cut, "{line}");
    }
}
