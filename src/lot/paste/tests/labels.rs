//! What names a reading or an article, and is none.

use super::*;

/// Numbers of articles beside five failing readings once were taken for readings, and the lot accepted.
#[test]
fn numbers_of_articles_are_no_readings() {
    let text = "No;µm\n101;36\n102;37\n103;38\n104;35\n105;36";
    assert_eq!(articles(text), Ok(vec![vec![36.0], vec![37.0], vec![38.0], vec![35.0], vec![36.0]]));
    assert_eq!(columns(text), ["left out: it numbers or names, and does not measure", "readings"]);
    // Without a heading it is asked, whatever stands between the numbers.
    for text in
        ["101 36\n102 37\n103 38", "101;36\n102;37\n103;38", "101\t36\n102\t37\n103\t38", "1 52\n2 48\n3 51"]
    {
        let asked = articles(text).unwrap_err();
        assert!(asked.starts_with("column 1 (1") && asked.contains("counts up"), "{text}: {asked}");
        assert!(asked.contains("choose the columns with readings"), "{asked}");
    }
    let asked = articles("501 36 38\n507 37 35").unwrap_err();
    assert!(asked.contains("lies far from the numbers of the other columns"), "{asked}");
    let told = read_with("101 36 38\n102 37 35", Comma::Decide, Some(&[2, 3])).unwrap();
    assert_eq!(values(&told), [[36.0, 38.0], [37.0, 35.0]]);
    assert_eq!(told.read_as.columns[0].usage, ColumnUse::LeftOut(Why::NotChosen));
    let beyond = read_with("101 36", Comma::Decide, Some(&[4])).unwrap_err();
    assert!(beyond.contains("no column 4"), "{beyond}");
}

/// A point behind a number in front is a mark of a list: asked, on one line as on many.
#[test]
fn marks_of_a_list_are_asked() {
    for text in ["1. 12", "1. 52.3 48\n2. 51 50", "1. 52; 2. 51", "1.\t52\n2.\t51", "7. 52\n9. 51"] {
        let asked = articles(text).unwrap_err();
        assert!(asked.contains("is written as the numbers of a list are"), "{text}: {asked}");
        assert!(asked.contains("choose the columns with readings"), "{asked}");
    }
    let told = read_with("1. 52\n2. 51", Comma::Decide, Some(&[2])).unwrap();
    assert_eq!(values(&told), [[52.0], [51.0]]);
    // Named, or readings that all carry the point.
    assert_eq!(articles("1) 52\n2) 51"), Ok(vec![vec![52.0], vec![51.0]]));
    assert_eq!(articles("52. 48."), Ok(vec![vec![52.0, 48.0]]));
    assert_eq!(articles("No;µm\n1.;52\n2.;51"), Ok(vec![vec![52.0], vec![51.0]]));
}

/// The minutes of a time of day once were taken for readings, with the reading before them as a label.
#[test]
fn a_time_of_day_behind_a_reading_is_no_reading() {
    let text = "52.3 µm 10:22\n53.1 µm 10:23\n54.0 µm 10:24";
    assert_eq!(articles(text), Ok(vec![vec![52.3], vec![53.1], vec![54.0]]));
    let asked = articles("1 52.3 µm 10:22\n2 53.1 µm 10:23\n3 54.0 µm 10:24").unwrap_err();
    assert!(asked.starts_with("column 1 (1, 2, 3) counts up"), "{asked}");
}

/// A name that counts off line after line is a label; on one line alone its number could be a reading.
#[test]
fn names_that_count_off_are_labels() {
    let text = "Reading 1 52.3 µm\nReading 2 53.1 µm\nReading 3 54.0 µm\nMean 53.1 µm\nSD 0.7 µm\nCoV 1.3 %\n\
                Max. 54 µm\nHigh limit 100\nx̄=53.1\nGroup mean 53\nUpper spec 80 µm\nTol. 5\nn=3";
    assert_eq!(articles(text), Ok(vec![vec![52.3], vec![53.1], vec![54.0]]));
    let used = lines(text);
    assert_eq!(used[1], "article 2, called “Reading 2”");
    for (at, name) in [
        (3, "Mean"),
        (5, "CoV"),
        (6, "Max."),
        (7, "High limit"),
        (8, "x̄"),
        (9, "Group mean"),
        (10, "Upper spec"),
        (11, "Tol."),
        (12, "n"),
    ] {
        assert_eq!(used[at], format!("left out: “{name}” condenses or limits readings"));
    }
    assert_eq!(articles("Bolt 3 52 53\nBolt 7 54 55"), Ok(vec![vec![52.0, 53.0], vec![54.0, 55.0]]));
    assert!(articles("bolt 1 52 48").is_err());
}

/// The mark of a list once swallowed the reading behind it.
#[test]
fn the_mark_of_a_list_is_a_label() {
    let three = Ok(vec![vec![12.0], vec![60.0], vec![61.0]]);
    for text in ["1) 12; 60; 61", "1) 12\n2) 60\n3) 61", "(1) 12; (2) 60; (3) 61", "a) 12; b) 60; c) 61"] {
        assert_eq!(articles(text), three, "{text}");
    }
}

/// Names over readings written one by one once were left out, and every reading became an article.
#[test]
fn names_over_readings_one_by_one_are_asked() {
    for text in ["Bolt 1:\n60\n61\n62\nBolt 2:\n60\n61\n63", "A:\n60\n61\nB:\n62\n63"] {
        let asked = articles(text).unwrap_err();
        assert!(asked.contains("stands over readings"), "{text}: {asked}");
    }
}

/// Each name is an article where it stands over one reading, or where its readings stand on lines; so are the
/// blocks of a gauge that end with their mean.
#[test]
fn names_that_say_nothing_of_single_readings_are_not_asked() {
    for (text, count) in [
        ("Bolt 1:\n50 51\n52 53\nBolt 2:\n54 55\n56 57", 4),
        ("Bolt 1:\n50\n57\nBolt 2:\n52\n58\n54 55", 5),
        ("Bolt 1:\nhead: 50\nshank: 57\nBolt 2:\nhead: 52\nshank: 58", 4),
        ("Bolt 1:\n50\nBolt 2:\n51\nBolt 3:\n52", 3),
        ("Bolt 1:\n50\n51\nBolt 2:\n52", 3),
        ("Bolt 1:\n50\n51\n52", 3),
        ("50\n51\nMean 50.5\n52\n53\nMean 52.5\n54\n55\nMean 54.5", 6),
    ] {
        assert_eq!(articles(text).map(|articles| articles.len()), Ok(count), "{text}");
    }
}

/// Names over readings once were asked even where it was said how many readings there are on an article.
#[test]
fn names_over_readings_count_off_where_their_number_is_said() {
    let counted = |text: &str, per_article| {
        let how =
            Reading { units: &UNITS, comma: Comma::Decide, columns: None, per_article: Some(per_article) };
        let readings = Readings::read(text, &how, Density::from_g_cm3(7.2));
        readings.map(|readings| values(&readings)).map_err(|problem| problem.to_string())
    };
    let text = "Bolt 1:\n60\n61\n62\nBolt 2:\n60\n61\n63\nBolt 3:\n58\n";
    let read = vec![vec![60.0, 61.0, 62.0], vec![60.0, 61.0, 63.0], vec![58.0]];
    assert_eq!(counted(text, 3), Ok(read));
    let few = counted("A:\n60\n61\nB:\n62\nC:\n60\n61", 2).unwrap_err();
    assert!(few.contains("article 2 has 1 reading, and 2 were set"), "{few}");
    let uneven = counted("A:\n60\n61\nB:\n62\n63\n64\nC:\n60\n61", 2).unwrap_err();
    assert!(uneven.contains("article 2 has 3 readings, and 2 were set"), "{uneven}");
    let asked = articles(text).unwrap_err();
    assert!(asked.contains("or say how many there are on each article"), "{asked}");
}
