//! Readings as people write them, as sheets save them, and as gauges write them out.

mod columns;
mod labels;

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
        ("50, 55, -60", Some("“-60” on line 1")),
        ("50\t55\t>60\n52\t53\t>61", Some("“>60” on line 1")),
        ("50\t55\tx20\n52\t53\tx20", Some("“x20” on line 1")),
        ("50\t55\tbare\n52\t53\tok", Some("“bare” on line 1")),
        ("B-12\t50\t55\nB-13\t52\t53", None),
        ("12-1\t50\t55\n12-2\t52\t53", None),
        ("µm\tµm\tDelta\n50\t55\t-5\n53\t52\t+1", None),
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
