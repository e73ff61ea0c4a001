//! Readings as people write them, as sheets save them, and as gauges write them out.

use super::super::Readings;
use super::*;
use crate::quantity::{Density, Length, unit};

static UNITS: [&Unit; 4] = [&unit::UM, &unit::MIL, &unit::MM, &unit::INCH];

fn read_with(text: &str, comma: Comma, columns: Option<&[usize]>) -> Result<Readings, String> {
    let how = Reading { units: &UNITS, comma, columns, per_article: None };
    Readings::read(text, &how, Density::from_g_cm3(7.2)).map_err(|problem| problem.to_string())
}

fn values(readings: &Readings) -> Vec<Vec<f64>> {
    let round = |value: &Length| (value.um() * 1e6).round() / 1e6;
    readings.articles().map(|article| article.iter().map(round).collect()).collect()
}

fn articles(text: &str) -> Result<Vec<Vec<f64>>, String> {
    read_with(text, Comma::Decide, None).map(|readings| values(&readings))
}

/// How each line was used, in words.
fn lines(text: &str) -> Vec<String> {
    let readings = read_with(text, Comma::Decide, None).unwrap();
    readings.read_as.lines.iter().map(|line| line.usage.to_string()).collect()
}

/// How each column was used, in words.
fn columns(text: &str) -> Vec<String> {
    let readings = read_with(text, Comma::Decide, None).unwrap();
    readings.read_as.columns.iter().map(|column| column.usage.to_string()).collect()
}

#[test]
fn readings_as_people_write_and_paste_them() {
    let rows = |rows: &[&[f64]]| Ok(rows.iter().map(|row| row.to_vec()).collect::<Vec<_>>());
    assert_eq!(articles("52"), rows(&[&[52.0]]));
    assert_eq!(articles("52 48 51"), rows(&[&[52.0, 48.0, 51.0]]));
    assert_eq!(articles("52 48; 51 50;"), rows(&[&[52.0, 48.0], &[51.0, 50.0]]));
    assert_eq!(articles("52\n48\r\n51\n"), rows(&[&[52.0], &[48.0], &[51.0]]));
    assert_eq!(articles("52,3; 48,1"), rows(&[&[52.3], &[48.1]]));
    assert_eq!(articles("52,3 48,1; 50,2 47"), rows(&[&[52.3, 48.1], &[50.2, 47.0]]));
    assert_eq!(articles("52,3\t48,1\n50,2\t47,9"), rows(&[&[52.3, 48.1], &[50.2, 47.9]]));
    assert_eq!(articles("52,3\n48,1\n50,2"), rows(&[&[52.3], &[48.1], &[50.2]]));
    assert_eq!(articles("8,05\n8,12"), rows(&[&[8.05], &[8.12]]));
    assert_eq!(articles("52,3, 48,1, 50,2"), rows(&[&[52.3, 48.1, 50.2]]));
    assert_eq!(articles("52, 48, 51"), rows(&[&[52.0, 48.0, 51.0]]));
    assert_eq!(articles("52,48,51\n50,49,47"), rows(&[&[52.0, 48.0, 51.0], &[50.0, 49.0, 47.0]]));
    assert_eq!(articles("52.3,48.1\n50.2,47.9"), rows(&[&[52.3, 48.1], &[50.2, 47.9]]));
    assert_eq!(articles("2.1 mil 1.9 mil"), rows(&[&[53.34, 48.26]]));
    assert_eq!(articles("0.0021 0.0019 in"), rows(&[&[53.34, 48.26]]));
    assert_eq!(articles("52µm 48"), rows(&[&[52.0, 48.0]]));
}

#[test]
fn headings_labels_and_sheets_saved_as_csv() {
    let two = Ok(vec![vec![52.3, 48.1], vec![50.2, 47.9]]);
    assert_eq!(articles("article;reading 1;reading 2\nA1;52,3;48,1\nA2;50,2;47,9"), two);
    assert_eq!(articles("Article,µm,µm\nA1,52.3,48.1\nA2,50.2,47.9"), two);
    assert_eq!(
        articles("\"Article\",\"µm\",\"µm\"\n\"A1\",\"52,3\",\"48,1\"\n\"A2\",\"50,2\",\"47,9\""),
        two
    );
    assert_eq!(articles("A1 52.3 48.1\nA2 50.2 47.9"), two);
    assert_eq!(articles("bolt 1: 52.3 48.1; bolt 2: 50.2 47.9"), two);
    assert_eq!(articles("bolt 1: 52.3, 48.1\nbolt 2: 50.2, 47.9"), two);
    assert_eq!(articles("thickness in mil\n2\n2"), Ok(vec![vec![50.8], vec![50.8]]));
    assert_eq!(articles("first;second\n52,3;48,1"), Ok(vec![vec![52.3, 48.1]]));
    assert_eq!(articles("Units: mil\n2 2.1\n2 2.2"), Ok(vec![vec![50.8, 53.34], vec![50.8, 55.88]]));
}

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

/// What a gauge writes out: particulars above, dates and times, a summary below.
#[test]
fn the_export_of_a_gauge_is_taken_apart() {
    let text = "Operator;R. Quill\nBatch;4711\nNo;Date;Time;Thickness (µm);Thickness (µm);Mean;Temp (°C);Remark\n\
                1;2025-03-04;10:52;52,3;48,1;50,2;21;\n2;2025-03-04;10:53;50,2;47,9;49,1;21;rough\n\
                Mean;;;51,3;48,0;49,6;;\nStd. Dev.;;;1,5;0,1;0,8;;\nMin;;;50,2;47,9;49,1;;";
    assert_eq!(articles(text), Ok(vec![vec![52.3, 48.1], vec![50.2, 47.9]]));
    let used = columns(text);
    for (at, part) in [
        (0, "numbers or names"),
        (1, "dates"),
        (2, "times"),
        (3, "readings"),
        (5, "condenses"),
        (6, "something else"),
        (7, "words"),
    ] {
        assert!(used[at].contains(part), "{at}: {}", used[at]);
    }
    let lines = lines(text);
    for (at, part) in [
        (0, "says what was measured"),
        (1, "says what was measured"),
        (2, "a heading"),
        (3, "article 1"),
        (5, "“Mean”"),
        (6, "“Std. Dev.”"),
        (7, "“Min”"),
    ] {
        assert!(lines[at].contains(part), "{at}: {}", lines[at]);
    }
    assert_eq!(
        articles("52 48\n51 50\nMean 50.25\nStd Dev 1.7\nn = 4"),
        Ok(vec![vec![52.0, 48.0], vec![51.0, 50.0]])
    );
    assert_eq!(articles("52 48\nMean: 50"), Ok(vec![vec![52.0, 48.0]]));
    assert_eq!(articles("01.03.2025 10:52 52,3 48,1"), Ok(vec![vec![52.3, 48.1]]));
    assert_eq!(articles("10:52 52.3"), Ok(vec![vec![52.3]]));
}

/// One reading a row, and a column that says to which article it belongs.
#[test]
fn a_list_of_readings_is_told_apart_by_its_articles() {
    let text = "Article;Reading;µm\n7;1;52\n7;2;48\n8;1;51\n8;2;50";
    // Beside a column named by its unit, no other one holds the readings.
    let two = Ok(vec![vec![52.0, 48.0], vec![51.0, 50.0]]);
    assert_eq!(articles("Article;Run;µm\n7;1;52\n7;2;48\n8;1;51\n8;2;50"), two);
    assert_eq!(articles(text), two);
    assert_eq!(columns(text)[1], "left out: another column is named as the readings");
    let text = "Article;Reading no;µm\n7;1;52\n7;2;48\n8;1;51\n8;2;50";
    assert_eq!(articles(text), Ok(vec![vec![52.0, 48.0], vec![51.0, 50.0]]));
    assert_eq!(columns(text)[0], "tells the articles apart");
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

/// The head of a printed form: the numbers of the readings are no readings.
#[test]
fn a_heading_may_number_its_columns() {
    let text = "Bolt;1;2;3;Mean\n101;60;61;62;61\n102;58;59;60;59\n103;57;59;58;58";
    assert_eq!(
        articles(text),
        Ok(vec![vec![60.0, 61.0, 62.0], vec![58.0, 59.0, 60.0], vec![57.0, 59.0, 58.0]])
    );
    assert_eq!(lines(text)[0], "left out: a heading");
    assert_eq!(columns(text)[4], "left out: it condenses or limits readings");
}

/// A mean that nobody named once counted as a reading of its article.
#[test]
fn a_column_of_means_without_a_heading_is_asked() {
    let asked = articles("52 55 57 54.7\n60 58 59 59.0").unwrap_err();
    assert!(asked.starts_with("column 4 (54.7, 59.0) is the mean of the other columns"), "{asked}");
    // One line, or readings that are all the same, prove nothing; neither do readings near their mean.
    assert!(articles("52 55 57 54.7").is_ok());
    assert!(articles("60 60 60 60.0\n60 60 60 60.0").is_ok());
    assert!(articles("52 54 53\n57 55 56\n58 60 59").is_ok());
}

/// What stands in a column named a mean is left out, and where nothing else is there that is said.
#[test]
fn where_all_is_left_out_the_column_is_named() {
    let problem = articles("Article;Mean (µm)\nA1;52\nA2;53").unwrap_err();
    assert!(
        problem.contains("column 2, “Mean (µm)”, is left out") && problem.contains("choose"),
        "{problem}"
    );
    let problem = articles("Mean;Max;Min\n52;60;48\n53;61;47").unwrap_err();
    assert!(problem.contains("column 1, “Mean”"), "{problem}");
    assert_eq!(articles("Article;Thickness (µm), min 43\nA1;52\nA2;53"), Ok(vec![vec![52.0], vec![53.0]]));
}

/// What is asked is shown in its table, with the column in question marked.
#[test]
fn the_table_is_there_before_the_question_is_answered() {
    let how = Reading { units: &UNITS, comma: Comma::Decide, columns: None, per_article: None };
    let table = as_read("101 36\n102 37\n103 38", &how).unwrap();
    assert_eq!(table.columns[0].usage, ColumnUse::Unclear(Looks::Counts));
    assert_eq!(
        table.columns[0].usage.to_string(),
        "are these readings? It counts up, as numbers of articles do"
    );
    assert_eq!(table.columns[1].usage, ColumnUse::Readings);
    assert_eq!(table.lines[2].cells, ["103", "38"]);
    assert_eq!(table.lines[2].usage.to_string(), "article 3");
    // Answered, it is the table that counts.
    let told = Reading { columns: Some(&[2]), ..how };
    let counted = read_with("101 36\n102 37\n103 38", Comma::Decide, Some(&[2])).unwrap();
    assert_eq!(as_read("101 36\n102 37\n103 38", &told), Some(counted.read_as));
    let mixed = as_read("µm;µm\n52;five\n48;47", &how).unwrap();
    assert_eq!(mixed.columns[1].usage, ColumnUse::Unclear(Looks::Mixed));
}

#[test]
fn lines_that_repeat_are_marked() {
    let used = lines("52 48 51\n50 49 47\n52 48 51");
    assert!(used[2].ends_with("the same as line 1"), "{}", used[2]);
    assert!(lines("52 48\n52 48").iter().all(|line| !line.contains("the same")));
}

#[test]
fn what_could_mean_two_things_is_refused_and_can_be_told() {
    for text in ["52,48", "52,48\n51,50", "8,3\n8,5", "52, 48,51", "52,3,48,1", "1,234.5"] {
        let problem = articles(text).unwrap_err();
        assert!(problem.contains("could be one reading or two"), "{text}: {problem}");
    }
    let told = |comma| read_with("52,48", comma, None).unwrap().values().len();
    assert_eq!((told(Comma::Decimal), told(Comma::Separator)), (1, 2));
    let mixed = articles("No;µm;mil\n1;52;2.05\n2;48;1.89").unwrap_err();
    assert!(mixed.contains("choose the columns of one unit"), "{mixed}");
    let mixed = articles("µm;µm\n52;five\n48;47").unwrap_err();
    assert!(mixed.contains("column 2 holds numbers, and “five” on line 2"), "{mixed}");
}

#[test]
fn what_is_no_reading_is_refused_with_the_remedy() {
    for (text, part) in [
        ("", "no reading"),
        (" ; ;", "no reading"),
        ("52 five", "“five” on line 1"),
        ("bolt 1 52 48", "colon behind a label"),
        ("52 µm 2 mil", "mixed"),
        ("thickness µm\n2 mil", "mixed"),
        ("52 -3", "“-3”"),
        ("52 0", "reading 2 is"),
        ("52 5200", "check the unit"),
        ("52;48\n51", "some lines hold"),
        ("52 1e3", "“1e3”"),
        ("52 48 kg", "“kg”"),
    ] {
        let problem = articles(text).unwrap_err();
        assert!(problem.contains(part), "{text}: {problem}");
    }
    for (text, columns) in
        [("2-4, 6", Some(vec![2, 3, 4, 6])), ("x", None), ("4-2", None), ("", None), ("0", None)]
    {
        assert_eq!(chosen_columns(text).ok(), columns, "{text}");
    }
}

/// Whatever stands above a column that counts, it holds no readings.
#[test]
fn a_column_that_counts_is_no_readings_whatever_its_heading() {
    let five = Ok([30.0, 31.0, 32.0, 33.0, 29.0].map(|um| vec![um]).to_vec());
    for heading in ["Reading;Value", "Measurement;Value", "Messung;Wert", "Value;Reading"] {
        let (one, next) = heading.split_once(';').unwrap();
        let text = format!("{one};{next}\n101;30\n102;31\n103;32\n104;33\n105;29");
        assert_eq!(articles(&text), five, "{heading}");
        assert_eq!(columns(&text)[0], "left out: it counts up, as numbers of articles do", "{heading}");
    }
    assert_eq!(articles("Reading;Thickness\n31;30\n32;31"), Ok(vec![vec![30.0], vec![31.0]]));
    assert_eq!(
        articles("Reading Value\n101 30\n102 31\n103 32"),
        Ok(vec![vec![30.0], vec![31.0], vec![32.0]])
    );
    // Numbered columns measure side by side, even where one of them counts by chance.
    assert!(articles("R1;R2\n50;52\n51;51\n52;53").is_ok());
}

/// Columns that nobody named, or whose names are not known, are no readings by default.
#[test]
fn a_column_of_an_unknown_name_is_left_out_or_asked() {
    let three = Ok(vec![vec![30.0], vec![31.0], vec![29.0]]);
    assert_eq!(articles("Batch,Heat,Thickness\n88,71,30\n88,64,31\n88,69,29"), three);
    // Left out, readings of a place that no list knows once accepted a lot: what may be readings is asked.
    for text in ["Foo;Thickness\n88;30\n71;31\n64;29", "Foo;R1;R2\n55;30;31\n56;29;33"] {
        let asked = articles(text).unwrap_err();
        assert!(asked.starts_with("column 1") && asked.contains("choose the columns"), "{text}: {asked}");
    }
    assert_eq!(articles("Foo;Thickness\n1004;30\n1017;31\n1011;29"), three);
    assert_eq!(articles("Batch Heat Thickness\n88 71 30\n88 64 31\n88 69 29"), three);
    let text = "Humidity;R1;R2;R3\n55;30;31;32\n56;29;33;30";
    assert_eq!(articles(text), Ok(vec![vec![30.0, 31.0, 32.0], vec![29.0, 33.0, 30.0]]));
    assert_eq!(columns(text)[0], "left out: it measures something else");
    assert_eq!(articles("Feuchte;Schichtdicke\n55;30\n56;31\n54;29"), three);
    for text in
        ["Foo;Bar\n52;48\n51;50", "Thickness;Coat\n52;48\n51;50", "88 30\n71 31\n93 32", "88;30\n71;31"]
    {
        let asked = articles(text).unwrap_err();
        assert!(asked.starts_with("column 1") && asked.contains("choose the columns"), "{text}: {asked}");
    }
    assert!(articles("head;shank\n52;48\n51;50").is_ok());
    assert!(articles("60 45\n58 47\n61 44").is_ok());
}

/// Means and limits in the languages that gauges write; what no list knows is asked.
#[test]
fn limits_and_means_are_no_articles_in_any_language() {
    for name in [
        "Sollwert",
        "Grenzwert",
        "Mittelwert",
        "Mittel",
        "Standardabweichung",
        "Min",
        "Max",
        "Anzahl",
        "Streuung",
        "s",
        "x̄",
        "Toleranz",
        "Untere Grenze",
        "Mindestwert",
        "Std.-Abw.",
        "Moyenne",
        "Écart-type",
        "Limite inférieure",
        "Media",
        "Desviación estándar",
        "Gemiddelde",
        "Nominal",
        "Target",
        "Ø",
    ] {
        // What contradicts the readings would be asked: as many as there are, or their mean.
        let says = if name == "Anzahl" { 3 } else { 49 };
        for (head, between) in [("Nr;Wert\n1;48\n2;49\n3;50\n", ";"), ("1: 48\n2: 49\n3: 50\n", ": ")] {
            let text = format!("{head}{name}{between}{says}");
            assert_eq!(articles(&text), Ok(vec![vec![48.0], vec![49.0], vec![50.0]]), "{text}");
        }
    }
    for text in ["Nr;Wert\n1;48\n2;49\n3;50\nKeskiarvo;100", "48\n49\n50\nKeskiarvo: 100"] {
        let asked = articles(text).unwrap_err();
        assert!(asked.contains("is called “Keskiarvo”"), "{text}: {asked}");
    }
    assert!(articles("head: 52\nshank: 48\nnut: 51").is_ok());
    assert_eq!(articles("Nr;Soll;Ist\n1;50;48\n2;50;49"), Ok(vec![vec![48.0], vec![49.0]]));
    assert_eq!(articles("Nr;Dicke;Dicke Mittel\n1;50;49\n2;52;49"), Ok(vec![vec![50.0], vec![52.0]]));
}

/// The mark of a list once swallowed the reading behind it.
#[test]
fn the_mark_of_a_list_is_a_label() {
    let three = Ok(vec![vec![12.0], vec![60.0], vec![61.0]]);
    for text in ["1) 12; 60; 61", "1) 12\n2) 60\n3) 61", "(1) 12; (2) 60; (3) 61", "a) 12; b) 60; c) 61"] {
        assert_eq!(articles(text), three, "{text}");
    }
}

/// A heading that is split by commas splits its rows too: `1,60` once was read as 1.6.
#[test]
fn a_heading_tells_what_the_commas_below_it_are() {
    let two = Ok(vec![vec![60.0], vec![61.0]]);
    assert_eq!(articles("Piece,Thickness (µm)\n1,60\n2,61"), two);
    assert_eq!(articles("No, µm\n1,60\n2,61"), two);
    assert_eq!(articles("Thickness, µm\n52,05\n48,01"), Ok(vec![vec![52.05], vec![48.01]]));
    for text in ["Piece Thickness\n1,60\n2,61", "Piece\tThickness\n1,60\n2,61", "Piece;Thickness\n1,60\n2,61"]
    {
        assert!(articles(text).is_err(), "{text}");
    }
}

/// A damaged reading on a line of its own was left out, and the rest of the lot accepted.
#[test]
fn a_line_that_may_be_a_reading_is_asked_and_never_left_out() {
    for token in [
        "<30", "25*", "~25", "25±2", "25-30", "-5", "2.1e1", "x25", "bare", "OL", "A2: <30", "57/30/58",
        "---", "(25)", "2S", "over", "25?", "≈25", "A2: bare", "no zinc",
    ] {
        for text in
            [format!("60\n{token}\n62\n63"), format!("60; {token}; 62; 63"), format!("60 61\n{token}\n62 63")]
        {
            let asked = articles(&text).expect_err(&text);
            let word = token.trim_start_matches("A2: ");
            assert!(asked.contains(word) || asked.contains("is not a reading"), "{text}: {asked}");
        }
    }
    // In front and behind as well, and in the rows of a sheet.
    for text in [
        "<30\n60\n61",
        "x25\n60\n61",
        "bare\n60\n61",
        "60\n61\n<30",
        "60\n61\nx25",
        "60\n61\nbare",
        "60 61\n57/30/58",
        "µm;\n60;\n<30;\n62;",
        "Part;µm\nA1;60\nA2;<30\nA3;62",
        "Part;µm\nA1;60\nA2;61\nA3;bare",
        "Part,µm\nA1,60\nA2,rust\nA3,61",
        "A1 60\nA2 <30\nA3 61",
    ] {
        assert!(articles(text).is_err(), "{text}");
    }
    // Names of what follows, dates, places that were not measured, and what is written below.
    for text in [
        "Head\n60\n61\nShank\n55\n56",
        "Bolts of Monday:\n60 61\nBolts of Tuesday:\n55 56",
        "60\n2025-03-04\n61\n55\n56",
        "60\n-\n61\n55\n56",
        "60\n61\n55\n56\nmeasured on the flats by hand",
        "Bolts M16x60 of the second order\n60\n61\n55\n56",
    ] {
        assert_eq!(articles(text).map(|all| all.concat().len()), Ok(4), "{text}");
    }
}

/// What an export says of its readings is the cheapest guard against one that was lost.
#[test]
fn a_summary_that_the_readings_do_not_bear_out_is_asked() {
    for text in
        ["60 61 62\nMin 25\nMean 52", "60\n61\n62\nn = 4", "No;µm\n1;60\n2;61\nMittelwert;55", "60 61\nØ 40"]
    {
        let asked = articles(text).expect_err(text);
        assert!(asked.contains("give") && asked.contains("take the line out"), "{text}: {asked}");
    }
    for text in [
        "60 61 62\nMean 61\nn = 3",
        "60 61\n63 64\nn = 2",
        "60 62\nMean 61\n50 52\nMean 51",
        "60.3\n61.4\nMean 60.8",
        "60 61 62\nMin 43\nMax 90\nMean min 53",
        "60 µm\n61 µm\nMean 2.38 mil",
    ] {
        assert!(articles(text).is_ok(), "{text}: {:?}", articles(text));
    }
}

/// A place on the article that no list knew was left out where another was known, and the lot accepted.
#[test]
fn no_column_of_readings_is_left_out_for_another_that_is_better_known() {
    let least = |text: &str| articles(text).map(|all| all.concat().into_iter().fold(f64::INFINITY, f64::min));
    for text in [
        "Part,Head,Shank,End\n1,55,58,25\n2,57,60,26\n3,56,59,24",
        "Teil;Kopf;Schaft;Ende\n1;55;58;25\n2;57;60;26\n3;56;59;24",
        "Part,Head 1,Head 2,Washer face\n1,55,58,25\n2,57,60,26\n3,56,59,24",
        "Part,Flats,End of bolt,Bearing face\n1,55,58,25\n2,57,60,26\n3,56,59,24",
        "Teil;Stelle 1;Stelle 2;Stelle 3;Mittelwert\n1;55;58;25;46\n2;57;60;26;48\n3;56;59;24;46",
    ] {
        assert_eq!(least(text), Ok(24.0), "{text}");
    }
    for text in [
        "Thickness,Recheck\n55,25\n57,26\n56,24",
        "Part,Head,Shank,Tip\n1,55,58,25\n2,57,60,26\n3,56,59,24",
        "Part,Tip,Head,Shank\n1,25,55,58\n2,26,57,60\n3,27,56,59",
        "Part,µm,Tip\n1,55,3\n2,57,2\n3,56,4",
        "Part,Thickness,Measured\n1,55,25\n2,57,24\n3,56,26",
        "Part,Coat,Face 2,Face 3\n1,50,60,61\n2,51,58,62\n3,52,62,63",
        "Part,Head,Shank,Nut\n1,55,58,25\n2,57,60,24\n3,56,59,26",
    ] {
        let asked = articles(text).unwrap_err();
        assert!(asked.contains("has a heading that does not say"), "{text}: {asked}");
    }
    // What can be no reading goes unasked.
    let three = Ok(vec![vec![55.0], vec![57.0], vec![56.0]]);
    for text in [
        "Foo,Thickness\n1,55\n2,57\n3,56",
        "Foo,Thickness\n4711,55\n4790,57\n4712,56",
        ",Thickness\n31,55\n32,57\n33,56",
        "Nut,Thickness\n7,55\n9,57\n12,56",
    ] {
        assert_eq!(articles(text), three, "{text}");
    }
}

/// What an export says of itself above its readings is no damaged reading, whatever marks stand in it.
#[test]
fn dates_and_numbers_of_orders_above_the_readings_are_left_out() {
    for head in [
        "Date: 2026-11-28",
        "Datum: 28.11.2026",
        "Date 28/11/2026",
        "Gauge no. 0815-3",
        "Order no.: 4711-2",
        "Part no.: 88.12.3",
        "Tel. 0711/12345",
    ] {
        let text = format!("{head}\n60\n61\n62");
        assert_eq!(articles(&text).map(|all| all.len()), Ok(3), "{text}");
    }
    assert!(articles("head: <30\n60\n61").is_err() && articles("A1: <30\n60\n61").is_err());
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

/// Names that count off are labels, a heading may be said twice, and cells of a sheet may hold several readings.
#[test]
fn lines_of_a_gauge_are_taken_apart() {
    for (text, read) in [
        ("R1 R2\n50 51\nR1 R2\n52 53", vec![vec![50.0, 51.0], vec![52.0, 53.0]]),
        ("reading 1 50\nreading 2 51\nreading 3 52", vec![vec![50.0], vec![51.0], vec![52.0]]),
        ("reading 1 50 52\nreading 2 51 53", vec![vec![50.0, 52.0], vec![51.0, 53.0]]),
        ("No;1;2;3\n1;50;51;52\n2;53;54;55", vec![vec![50.0, 51.0, 52.0], vec![53.0, 54.0, 55.0]]),
        ("\"50 51 52\"\t\"53\"\n54\t55", vec![vec![50.0, 51.0, 52.0, 53.0], vec![54.0, 55.0]]),
        ("52 µm 53 µm\n54 55", vec![vec![52.0, 53.0], vec![54.0, 55.0]]),
        ("Thickness, µm\n50,5\n51,5", vec![vec![50.5], vec![51.5]]),
        ("No, µm\n1,50\n2,51", vec![vec![50.0], vec![51.0]]),
        ("Batch 7\nµm\n50 51\n52 53", vec![vec![50.0, 51.0], vec![52.0, 53.0]]),
    ] {
        assert_eq!(articles(text), Ok(read), "{text}");
    }
    for (text, asked) in [
        // On one line alone the number could be a reading.
        ("reading 1 50 52", "“reading” on line 1 is not a reading"),
        ("reading 2 50\nreading 1 51", "lies far from the numbers of the other columns"),
        ("a;b\n50,5\n51,5", "some lines hold “;” and others do not"),
    ] {
        let told = articles(text).unwrap_err();
        assert!(told.contains(asked), "{text}: {told}");
    }
}

/// What stands behind a name, or in the place of a reading, is asked; a note below them is not.
#[test]
fn a_word_in_the_place_of_a_reading_is_asked() {
    for (text, asked) in [
        ("x1\t<30\n50\t51\n52\t53", Some("“<30” on line 1")),
        ("50\t51\n52\t53\nA7\trough", Some("“rough” on line 3")),
        ("50\t51\nrough\n52\t53", Some("“rough” on line 2")),
        ("50\t51\n52\t53\nrough", None),
        ("50 51\n52 53\nbolt rough", None),
    ] {
        let told = articles(text).err();
        match asked {
            Some(asked) => {
                assert!(told.as_ref().is_some_and(|told| told.contains(asked)), "{text}: {told:?}")
            }
            None => assert_eq!(told, None, "{text}"),
        }
    }
}

/// A mean is borne out to its last digit, by all the readings or by those since the last mean; numbers that are
/// no readings are not counted among them.
#[test]
fn a_mean_is_that_of_the_readings_before_it() {
    let blocks = "No\tR1\tR2\n1\t50\t51\n2\t52\t53\nMean\t\t51.5\n3\t60\t61\n4\t62\t63\nMean\t\t61.5";
    assert_eq!(articles(blocks).map(|articles| articles.len()), Ok(4));
    for (mean, borne_out) in
        [("52.5", true), ("52.59", true), ("52.6", true), ("52.8", false), ("53.4", false)]
    {
        let text = format!("R1 R2\n52.0 53.0\nMean {mean}");
        // Three digits say more than two.
        let borne_out = borne_out && !mean.ends_with('9');
        assert_eq!(articles(&text).is_ok(), borne_out, "{mean}: {:?}", articles(&text));
    }
}

/// Nothing is to be looked at where every line and column was taken, but for a column that is empty.
#[test]
fn what_was_read_plainly_needs_no_look() {
    let is_plain = |text: &str, columns: Option<&[usize]>| {
        read_with(text, Comma::Decide, columns).unwrap().read_as.is_plain()
    };
    assert!(is_plain("50 52\n51 53", None));
    assert!(is_plain("50\t\t52\n51\t\t53", None));
    assert!(!is_plain("1\t50\n2\t51\n3\t58", Some(&[2])));
    assert!(!is_plain("R1 R2\n50 52\n51 53", None));
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

/// What a gauge stores before each reading: a counter, a date and a time, in one word or in two.
#[test]
fn when_something_was_measured_is_no_reading() {
    let two = Ok(vec![vec![52.0, 48.0], vec![51.0, 49.0]]);
    for text in [
        "2026-11-03T14:22 52 48\n2026-11-03T14:23 51 49",
        "2026-11-03T14:22:05Z;52;48\n2026-11-03T14:23:11Z;51;49",
        "2026-11-03T14:22:05.123+01:00\t52\t48\n2026-11-03T14:23:11.000+01:00\t51\t49",
        "1 2026-11-03 14:22 52 48\n2 2026-11-03 14:23 51 49",
        "1;2026-11-03;14:22;52;48\n2;2026-11-03;14:23;51;49",
        "17;2026-11-03T14:22;52;48\n18;2026-11-03T14:23;51;49",
        "Date;Time;1;2\n2026-11-03;14:22;52;48\n2026-11-03;14:23;51;49",
        "No;Date;Time;1;2\n1;2026-11-03;14:22;52;48\n2;2026-11-03;14:23;51;49",
        "Datum;Uhrzeit;1;2\n3.11.2026;14:22;52;48\n3.11.2026;14:23;51;49",
        "Timestamp,1,2\n2026-11-03T14:22,52,48\n2026-11-03T14:23,51,49",
    ] {
        assert_eq!(articles(text), two, "{text}");
    }
    assert_eq!(articles("1 2026-11-03 14:22 52\n2 2026-11-03 14:23 51"), Ok(vec![vec![52.0], vec![51.0]]));
    // Without a date behind it a counter may be a reading.
    assert!(articles("1 52\n2 48\n3 50").is_err());
}

/// A text of two columns once was told to choose the columns 2-6.
#[test]
fn a_hint_names_columns_that_are_there() {
    for (text, example) in [
        ("101 36\n102 37\n103 38", "for example 2, or"),
        ("101 36 38\n102 37 35\n103 38 36", "for example 2-3, or"),
        ("µm;µm;µm\n52;five;51\n48;47;50", "for example 1, 3"),
    ] {
        let asked = articles(text).unwrap_err();
        assert!(asked.contains(example), "{asked}");
    }
}
