//! A list of orders: nothing of it is lost, and its sums are those of the calculators.

use std::io::{BufReader, Cursor, Read};

use kettle_barrel::calculator::kettle_pickup::KettlePickup;
use kettle_barrel::calculator::powder_mass::PowderMass;
use kettle_barrel::calculator::{Calculator, Draft, behind, parse};
use kettle_barrel::coat::Process;
use kettle_barrel::order::list::{HEADING, List, Row, Unread, row};
use kettle_barrel::order::{self, reading};
use kettle_barrel::page::state::EXAMPLES;
use kettle_barrel::quantity::Units;
use kettle_barrel::rule::Topic;

fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

fn rows(list: impl Into<Vec<u8>>) -> Result<Vec<Row>, Unread> {
    let mut list = List::open(Box::new(Cursor::new(list.into())), text)?;
    let reads = list.reads().clone();
    let mut rows = Vec::new();
    loop {
        let records = list.take(7)?;
        if records.is_empty() {
            return Ok(rows);
        }
        rows.extend(records.iter().map(|record| reads.row(record)));
    }
}

fn cell(row: &Row, name: &str) -> String {
    let cells = HEADING.into_iter().zip(row.record(Units::default()));
    cells.into_iter().find(|(heading, _)| *heading == name).map(|(_, cell)| cell).unwrap()
}

/// The zinc out of the kettle and the powder into the barrel, as the run sheets of the same order have them.
#[test]
fn pick_up_and_powder_are_those_of_the_calculators() {
    let mut compared = [0; 2];
    for line in EXAMPLES.iter().copied().chain([
        "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs, with nut and washer",
        "M12 x 40 hex bolt 8.8, mechanical zinc, C3, 900 pcs, with nut",
        "M10 spring washer, C3, 20000 pcs",
        "1/2-13 hex nut, grade 5, HDG, 3000 pcs",
    ]) {
        let row = row(line);
        let Ok(assessed) = &row.result else { continue };
        let Some(take) = &assessed.take else { continue };
        if assessed.quantity.is_none() || assessed.weight.is_none() {
            continue;
        }
        let read = order::read(&reading::read(line).draft).unwrap();
        let judgement = order::judge(&read);
        let judged = judgement.processes.iter().find(|judged| judged.process == take.process).unwrap();
        let of_runs = (0..judgement.items.len()).map(|place| {
            let link = behind(&judgement.case(judged, place).unwrap(), Topic::Load).unwrap();
            let draft = Draft::from(&link);
            match take.process {
                Process::HotDip => {
                    KettlePickup::solve(&parse::<KettlePickup>(&draft).unwrap()).unwrap().zinc.fed.kg()
                }
                Process::Mechanical => {
                    PowderMass::solve(&parse::<PowderMass>(&draft).unwrap()).unwrap().powder.kg()
                }
                Process::Electroplated => 0.0,
            }
        });
        let shared = take.shared.unwrap();
        let (place, here) = match take.process {
            Process::HotDip => (0, shared.pick_up.unwrap().kg()),
            Process::Mechanical => (1, shared.powder.unwrap().kg()),
            Process::Electroplated => continue,
        };
        let there: f64 = of_runs.sum();
        assert!((here - there).abs() < 1e-6 * there, "{line}: {here} kg here, {there} kg on the run sheets");
        compared[place] += 1;
    }
    assert!(compared[0] > 2 && compared[1] > 1, "{compared:?}");
}

#[test]
fn a_row_that_is_cut_off_is_told_and_not_read_as_another_order() {
    let heading = "part,thread,length,steel,quantity\n";
    let whole = rows(format!("{heading}hex bolt,M16,60,8.8,400\nhex bolt,M16,60,8.8,400")).unwrap();
    assert!(whole.iter().all(|row| row.result.is_ok()), "{whole:?}");
    // Cut in 8.8, which would be another steel.
    let cut = rows(format!("{heading}hex bolt,M16,60,8.8,400\nhex bolt,M16,60,8")).unwrap();
    assert_eq!(cut.len(), 2);
    assert!(cut[0].result.is_ok());
    assert!(cut[1].result.as_ref().is_err_and(|problem| problem.contains("cut off")), "{cut:?}");
    // A quotation mark that is not closed.
    let open = rows(format!("{heading}hex bolt,M16,60,8.8,400\n\"hex bolt,M16,60,8.8,400\n")).unwrap();
    assert!(open[1].result.is_err() && open[1].line.contains("M16"), "{open:?}");
}

#[test]
fn nothing_of_a_list_is_lost() {
    let list = "\u{feff}sep=;\nPart;Thread;\"Length\n(mm)\";Steel;Remark\nhex bolt;M16;60;8.8;urgent;and more\n;;;;\n\nhex bolt;M20;60;8.8;\n";
    let mut read = List::open(Box::new(Cursor::new(list)), text).unwrap();
    assert_eq!(read.left_out(), ["Remark"]);
    let records = read.take(10).unwrap();
    // As a spreadsheet counts them: the heading is the first, and an empty one says nothing.
    assert_eq!(records.iter().map(|record| record.row).collect::<Vec<_>>(), [2, 4]);
    let row = read.reads().row(&records[0]);
    assert_eq!(row.line, "hex bolt, M16, length 60 mm, class 8.8");
    assert_eq!(row.not_used, "and more (no heading stands above it)");
    let long = "x".repeat(1 << 20);
    let rows = rows(format!("part,thread\nhex bolt,M16\n{long},M16\nhex bolt,M20\n")).unwrap();
    assert_eq!(rows.len(), 3);
    assert!(rows[1].result.as_ref().is_err_and(|problem| problem.contains("1048581 bytes")));
    assert!(cell(&rows[1], "line").starts_with(&long));
}

#[test]
fn what_is_no_list_is_told() {
    assert!(matches!(rows(""), Err(Unread::Empty)));
    assert!(matches!(rows("\n\n"), Err(Unread::Empty)));
    assert!(matches!(rows(b"PK\x03\x04\0\0\0".to_vec()), Err(Unread::NotText)));
    // A quotation mark in the middle of a long list takes the rest into its cell; what stands before it is
    // assessed, and memory stays bounded.
    let mut list = List::open(
        Box::new(Cursor::new(format!(
            "part,thread\nhex bolt,M16\n\"hex bolt,M16\n{}",
            "hex bolt,M16\n".repeat(1 << 19)
        ))),
        text,
    )
    .unwrap();
    assert_eq!(list.take(100).unwrap().len(), 1);
    let ended = list.take(100).unwrap_err();
    assert!(matches!(ended, Unread::Endless(3)), "{ended}");
}

/// The longest row is counted from row to row, and not over the whole list.
#[test]
fn a_list_may_be_longer_than_its_longest_row() {
    let remark = "x".repeat(1 << 20);
    let list = format!("part,remark\n{}", format!("hex bolt,{remark}\n").repeat(9));
    assert_eq!(List::open(Box::new(Cursor::new(list)), text).unwrap().take(100).unwrap().len(), 9);
}

/// A device that fails is not taken for a quotation mark that nobody closed, and what was read before it is given away.
#[test]
fn what_a_device_says_is_told() {
    struct Pulled(Cursor<Vec<u8>>);
    impl Read for Pulled {
        fn read(&mut self, into: &mut [u8]) -> std::io::Result<usize> {
            match self.0.read(into)? {
                0 => Err(std::io::Error::other("the stick was pulled")),
                read => Ok(read),
            }
        }
    }
    let begun = Pulled(Cursor::new(b"part,thread\nhex bolt,M16\nhex bolt,M2".to_vec()));
    let mut list = List::open(Box::new(BufReader::new(begun)), text).unwrap();
    assert_eq!(list.take(100).unwrap().len(), 1);
    let ended = list.take(100).unwrap_err();
    assert!(
        matches!(&ended, Unread::Device(problem) if problem.to_string() == "the stick was pulled"),
        "{ended}"
    );
}

/// A file may end with its last row or with the end of a line, and a row may be shorter than the heading.
#[test]
fn a_short_row_is_whole_where_a_line_ends_behind_it() {
    let heading = "part,thread,length,steel,quantity,place\n";
    let row = "hex bolt,M16,60,8.8,400";
    for end in ["\n", "\r\n", "\r"] {
        let rows = rows(format!("{heading}{row}{end}")).unwrap();
        assert!(rows.len() == 1 && rows[0].result.is_ok(), "{end:?}: {rows:?}");
    }
    let rows = rows(format!("{heading}{row}\n{row}")).unwrap();
    assert!(rows[0].result.is_ok() && rows[1].result.is_err(), "{rows:?}");
}

/// Columns that nobody here knows once were named only in one line beside the results.
#[test]
fn a_cell_under_an_unknown_heading_is_named_in_its_row() {
    let list =
        "Pos;Description;Remark;Length (mm)\n10;M16 hex bolt 8.8;urgent;2-1/4\n20;M16 hex bolt 8.8;;60\n";
    let rows = rows(list).unwrap();
    assert_eq!(
        cell(&rows[0], "not used"),
        "2-1/4 (under “Length (mm)”: a fraction is in inches, and the heading says otherwise: write the unit in \
         the cell); 10 (under “Pos”); urgent (under “Remark”)"
    );
    assert!(!rows[0].is_whole() && rows[0].wrong().is_some_and(|wrong| !wrong.contains("urgent")));
    // A column that no list of orders needs is no reason to look at each of its rows.
    assert_eq!(cell(&rows[1], "not used"), "20 (under “Pos”)");
    assert!(rows[1].is_whole() && rows[1].wrong().is_none());
}

/// A quantity of -5 once was read as five pieces, and “100 a” as a hundred years.
#[test]
fn a_sign_and_a_letter_stay_with_the_number_of_their_column() {
    let list = "Part;Length;Qty;Coat µm\nM16 hex bolt 8.8 HDG;60;-5;\nM16 hex bolt 8.8 HDG;-60;100 a;-50\n";
    let rows = rows(list).unwrap();
    assert_eq!(cell(&rows[0], "problem"), "Quantity: −5 must be at least 1");
    let not_used = cell(&rows[1], "not used");
    for named in
        ["-60 (under “Length”: less than", "100 a (under “Qty”: pieces, or years?", "-50 (under “Coat µm”"]
    {
        assert!(not_used.contains(named), "{named}: {not_used}");
    }
}

/// An M20 of 3 mm once was judged and weighed.
#[test]
fn a_bolt_shorter_than_it_is_thick_is_asked() {
    for (line, asked) in [
        ("M20 hex bolt, length 3 mm, 8.8, C3, 400 pcs", true),
        ("M20 x 20 hex bolt, 8.8, C3, 400 pcs", false),
        ("M20 x 25 hex bolt, 8.8, C3, 400 pcs", false),
        ("3/4-10 x 1/2 hex bolt, grade 5, C3, 400 pcs", true),
        ("3/4-10 x 1 hex bolt, grade 5, C3, 400 pcs", false),
        // A set screw has no head, and may be as short as this.
        ("M10 x 8 set screw, 14H, C1, 400 pcs", false),
    ] {
        let row = row(line);
        let first = cell(&row, "first");
        assert_eq!(first.contains("ay the length again, with its unit"), asked, "{line}: {first}");
        if asked {
            assert_ne!(cell(&row, "hot-dip"), "Suits", "{line}");
        }
    }
}
