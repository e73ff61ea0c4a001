//! What stands in columns: readings, numbers of articles, means, limits.

use super::*;

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
