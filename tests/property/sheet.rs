//! The sheets of orders: everything the answer says is on them, and nothing else is said.

use std::fs;

use kettle_barrel::calculator::{Address, Draft, Mark, REGISTER, Verdict, find};
use kettle_barrel::order::{self, Assessed, reading};
use kettle_barrel::process::Process;
use kettle_barrel::quantity::Units;
use kettle_barrel::sheet::price::{By, Price};
use kettle_barrel::sheet::{
    Heading, JOB, Look, Prices, Row, Sheet, calculator_sheet, code, of_calculator, of_order, order_sheet,
    reply,
};

/// Every fourth of the kept orders, and sets, and what nobody understands.
fn orders() -> Vec<Assessed> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/property/golden.txt");
    let kept = fs::read_to_string(path).unwrap();
    let addresses = kept.lines().filter_map(|line| line.split_once(" order ")).step_by(4);
    let kept = addresses.map(|(_, address)| Address::read(address).0.draft);
    let written = [
        SET,
        "M24x3 stud foo bar",
        "M12 washer, 4.6, 20000 pcs, C3, 15 years",
        "M16 nut, class 8, C3, 500 pcs",
    ];
    let written = written.map(|line| order::reading::read(line).draft);
    kept.chain(written).map(|draft| order::assessed(&draft).unwrap()).collect()
}

const SET: &str = "500 sets 3/4-10 x 2-1/2 structural bolt, A325, with DH nut and F436 washer, C3, 15 years";

fn written(line: &str) -> Assessed {
    order::assessed(&order::reading::read(line).draft).unwrap()
}

fn heading(link: &str) -> Heading {
    Heading {
        number: "4711".into(),
        name: "Bridge".into(),
        date: "2026-03-01".into(),
        link: link.into(),
        ..Heading::default()
    }
}

fn job(assessed: &Assessed) -> Sheet {
    order_sheet(assessed, JOB, &heading(LINK)).unwrap()
}

const LINK: &str = "https://zinc.example/#1/order?part=bolt&thread=M16";

/// A text without the places it names in brackets: the sheet has them among its sources.
fn bare(text: &str) -> String {
    let mut bare = String::new();
    for piece in text.split_inclusive(']') {
        let whole = piece.split_once(" [").filter(|(_, source)| source.ends_with(")]"));
        bare.push_str(whole.map_or(piece, |(before, _)| before));
    }
    bare
}

fn rows(sheet: &Sheet) -> impl Iterator<Item = &Row> {
    sheet.blocks.iter().flat_map(|block| &block.rows)
}

#[test]
fn a_sheet_has_every_condition_and_every_term_of_what_it_recommends() {
    let (mut conditions, mut terms) = (0, 0);
    for assessed in orders() {
        let sheet = job(&assessed).on_paper();
        let taken = assessed.assessment.taken();
        for finding in taken.iter().flat_map(|taken| &taken.findings) {
            let text = bare(&finding.text);
            let row = rows(&sheet).find(|row| row.text == text && !row.may_go);
            match finding.mark {
                Mark::Condition | Mark::NotJudged => {
                    conditions += 1;
                    let row = row.unwrap_or_else(|| panic!("“{text}” is not on\n{sheet}"));
                    assert!(row.ticked && row.room == ["proved by", "on"], "no room for “{text}”");
                }
                Mark::Term => {
                    terms += 1;
                    assert!(row.is_some_and(|row| row.ticked), "“{text}” is not on\n{sheet}");
                }
                _ => {}
            }
        }
    }
    assert!(conditions > 40 && terms > 150, "{conditions} conditions and {terms} terms are too few to tell");
}

#[test]
fn what_is_recommended_names_process_standard_class_and_nut_and_is_never_ruled_out() {
    for assessed in orders() {
        let sheet = job(&assessed);
        let lead = sheet.blocks.iter().find(|block| block.look == Look::Lead).unwrap();
        let Some(taken) = assessed.assessment.taken() else {
            assert!(lead.title.contains("No finish"), "{}", lead.title);
            continue;
        };
        assert_ne!(taken.verdict, Verdict::RuledOut, "{sheet}");
        let judged =
            assessed.judgement.processes.iter().find(|judged| judged.process == taken.process).unwrap();
        let class = judged.offer.as_ref().unwrap().class;
        let order = &lead.rows[0].text;
        let process = match taken.process {
            Process::HotDip => "Hot-dip zinc coating",
            Process::Mechanical => "Mechanically deposited zinc coating",
            Process::Electroplated => "Electroplated zinc coating",
        };
        for part in [process, class.document.name, class.name] {
            assert!(order.contains(part), "“{part}” is not in “{order}”");
        }
        for (mark, said) in [("6AZ marked Z", "6AZ, marked Z"), ("6AX marked X", "6AX, marked X")] {
            assert!(!assessed.assessment.answer.order.contains(mark) || order.contains(said), "{order}");
        }
        // The others stand below with their verdicts.
        for process in &assessed.assessment.processes {
            let verdict = format!("{}: {}", process.process.name(), process.verdict.words().to_lowercase());
            let other = rows(&sheet).any(|row| row.name == verdict && !row.text.is_empty());
            assert_eq!(other, process.process != taken.process, "{verdict}\n{sheet}");
        }
    }
}

/// Numbers with what stands around them, as a person would look for them.
/// What goes into a tapped hole takes no nut, and none is ordered.
#[test]
fn nobody_orders_nuts_for_a_tapped_hole() {
    let said = |line: &str| job(&written(line)).to_string();
    let set = said("M12 x 30 hex screws 8.8 HDG with nuts C3 100 pcs");
    let hole = said("M12 x 30 hex screws 8.8 HDG into tapped holes C3 100 pcs");
    assert!(set.contains("nuts of class 8"), "{set}");
    assert!(!hole.contains("nuts of class") && hole.contains("Tap the hole over to 6AZ"), "{hole}");
}

fn numbers(text: &str) -> impl Iterator<Item = &str> {
    let words = text.split(|c: char| c.is_whitespace() || "();,“”".contains(c));
    words.map(|word| word.trim_end_matches('.')).filter(|word| word.contains(|c: char| c.is_ascii_digit()))
}

#[test]
fn every_number_of_the_answer_stays_on_the_page() {
    for assessed in orders() {
        let text = job(&assessed).on_paper().to_string();
        let assessment = &assessed.assessment;
        let mut asked = assessment.answer.text.clone() + " " + &assessment.answer.order;
        for figure in assessment.taken().iter().flat_map(|taken| &taken.figures) {
            asked.push_str(&format!(" {}", figure.value));
        }
        for number in numbers(&asked) {
            assert!(text.contains(number), "{number} is not on\n{text}");
        }
    }
}

#[test]
fn a_page_that_is_full_lets_only_sources_and_the_like_go_and_says_how_many() {
    let mut full = 0;
    for assessed in orders() {
        let whole = job(&assessed);
        let paper = whole.clone().on_paper();
        let may_not_go: Vec<&Row> = rows(&whole).filter(|row| !row.may_go).collect();
        let stays: Vec<&Row> =
            rows(&paper).filter(|row| !row.text.ends_with("more, behind the link")).collect();
        assert!(may_not_go.iter().all(|row| stays.contains(row)), "{paper}");
        let gone = rows(&whole).count() - stays.len();
        let said = rows(&paper)
            .filter_map(|row| row.text.strip_prefix("and ")?.split(' ').next()?.parse::<usize>().ok());
        assert_eq!(said.sum::<usize>(), gone, "{paper}");
        full += usize::from(gone > 0);
        let documents = |sheet: &Sheet| -> Vec<String> {
            let small = sheet.blocks.iter().find(|block| block.title.starts_with("Sources"));
            let texts = small.into_iter().flat_map(|block| &block.rows).map(|row| &row.text);
            texts.map(|text| text.split([',', '(']).next().unwrap_or_default().trim().to_owned()).collect()
        };
        assert_eq!(documents(&whole), documents(&paper), "each document stands on the paper\n{paper}");
    }
    println!("{full} sheets let something go");
}

#[test]
fn a_set_has_all_its_parts() {
    let assessed = written(SET);
    let text = job(&assessed).to_string();
    for part in ["heavy hex nuts of ASTM A563 grade DH", "washers with the same coat", "F436", "500 pcs"] {
        assert!(text.contains(part), "{part} is not on\n{text}");
    }
    let runs: Vec<String> = of_order(&assessed).into_iter().map(|offered| offered.label).collect();
    for run in ["kettle: heavy hex structural bolt", "kettle: heavy hex nut", "barrel: plain washer"] {
        assert!(runs.iter().any(|label| label.ends_with(run)), "{run}: {runs:?}");
    }
}

#[test]
fn what_was_not_understood_or_not_said_is_on_the_sheet() {
    let line = "M24x3 stud foo bar";
    let sheet =
        order_sheet(&written(line), JOB, &Heading { line: line.into(), ..Heading::default() }).unwrap();
    let said = |name: &str| rows(&sheet).find(|row| row.name == name).map(|row| row.text.to_string());
    assert_eq!(said("As written").unwrap(), line);
    assert_eq!(said("As read").unwrap(), "stud; M24");
    assert_eq!(said("Not understood or not used").unwrap(), "“foo”; “bar”");
    assert_eq!(said("Not said").unwrap(), "length, quantity, steel, place");
    // The number, the name and the date are written by hand.
    assert_eq!(rows(&sheet).filter(|row| row.room == [""]).count(), 3);
}

#[test]
fn a_blank_of_the_tables_stays_a_blank_with_the_document_to_open() {
    let sheet = job(&written("M20 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years"));
    let articles = rows(&sheet).find(|row| row.name == "Articles").unwrap();
    assert!(articles.text.contains("not known here; open ASTM B602"), "{}", articles.text);
    // ASTM F2329-05, sampling of a batch: of 501 to 1200 pieces 5 are measured.
    let lot = job(&written("5/8-11 x 4 stud, B7, two 2H nuts, 800 pcs, C3, 15 years"));
    let articles = rows(&lot).find(|row| row.name == "Articles").unwrap();
    assert!(articles.text.contains(" of 800"), "{}", articles.text);
}

#[test]
fn every_sheet_of_every_order_is_made() {
    let mut made = 0;
    for assessed in orders() {
        for offered in of_order(&assessed) {
            let made_of =
                offered.link.as_ref().and_then(|link| Some((find(link.calculator)?, Draft::from(link))));
            let sheet = match order_sheet(&assessed, &offered.key, &heading(LINK)) {
                Ok(sheet) => sheet,
                // A calculator that has no answer has no sheet, and says why.
                Err(problems) => {
                    assert_eq!(
                        made_of.and_then(|(entry, draft)| entry.evaluate(&draft).err()),
                        Some(problems)
                    );
                    continue;
                }
            };
            let text = sheet.clone().on_paper().to_string();
            assert!(
                text.contains("4711") && text.contains("Kettle & Barrel") && text.contains(LINK),
                "{text}"
            );
            assert!(sheet.pages <= 2, "{}", sheet.title);
            made += 1;
        }
    }
    println!("{made} sheets");
    for entry in REGISTER {
        for example in entry.about.examples {
            let draft: Draft = example.pairs.iter().copied().collect();
            for offered in of_calculator(entry) {
                let sheet = calculator_sheet(entry, &draft, &offered.key, &heading(LINK)).unwrap();
                let report = entry.evaluate(&draft).unwrap();
                assert!(
                    sheet.to_string().contains(&report.headline),
                    "{}: {}",
                    entry.about.id,
                    example.title
                );
            }
        }
    }
}

#[test]
fn a_run_sheet_has_the_numbers_of_the_order_and_is_not_made_up_without_a_quantity() {
    let line = "M20 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years";
    let sheet = order_sheet(&written(line), "run-barrel", &heading(LINK)).unwrap();
    let text = sheet.to_string();
    assert!(
        text.contains("Run sheet of the barrel") && text.contains("Zinc powder, addition 1 of"),
        "{text}"
    );
    assert!(rows(&sheet).filter(|row| row.ticked).all(|row| row.room == ["done at", "measured"]), "{text}");
    let silent = order_sheet(&written("M20 x 90 hex bolt, 10.9, C4"), "run-barrel", &heading(LINK)).unwrap();
    assert!(silent.to_string().contains("does not say how many"), "{silent}");
    assert!(!silent.to_string().contains("Zinc powder, addition"), "{silent}");
}

#[test]
fn own_prices_put_a_cost_beside_each_finish() {
    let assessed = written("M16x60 hex bolt, 8.8, 400 pcs, C3, 15 years");
    let kg = assessed.judgement.items[0].mass().unwrap().kg() * 400.0;
    let price = |text: &str, by| Price { text: text.into(), by };
    let prices = Prices([price("1,25", By::Kilogram), price("0.20", By::Piece), price("", By::Piece)]);
    assert_eq!(Prices::read(&prices.to_string()), prices);
    let sheet = order_sheet(&assessed, JOB, &Heading { prices, ..heading(LINK) }).unwrap();
    let text = sheet.to_string();
    assert!(text.contains(&format!("Cost by the own price: {:.2} (1,25 a kilogram", 1.25 * kg)), "{text}");
    assert!(text.contains("80.00 (0.20 a piece, 400 pcs)"), "{text}");
    assert_eq!(text.matches("own price").count(), 2, "{text}");
}

/// What an order leaves out was offered in its reply, and where nothing else suited the reply said that none does.
#[test]
fn a_reply_offers_nothing_that_the_order_leaves_out() {
    let of = |line: &str| {
        let assessed = order::assessed(&order::reading::read(line).draft).unwrap();
        reply::reply(&assessed, &heading(LINK))
    };
    let one = of("M12x60 hex bolt 8.8, anything but hot-dip, C3, 10 years, 1000 pcs");
    assert!(one.contains("- Hot-dip would suit as well, had the order not left it out:"), "{one}");
    let two = of("M12x60 hex bolt 8.8, no hot-dip, no mechanical, C3, 10 years, 1000 pcs");
    assert!(two.contains("None of the finishes that your order leaves open suits it"), "{two}");
}

/// The sheet of a bolt without zinc once said “To order: hot-dip, suits”, with terms and gauges.
#[test]
fn no_paper_orders_zinc_that_is_not_asked_for() {
    let bolt = "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs";
    for (coat, name) in [
        ("unplated", "A part without zinc"),
        ("zinc flake", "Zinc flake"),
        ("black oxide", "Phosphate or black oxide"),
        ("plain finish", "A part without zinc"),
    ] {
        let assessed = written(&format!("{bolt}, {coat}"));
        let first = format!("{name} is asked for, and is not judged here");
        assert!(assessed.assessment.answer.text.starts_with(&first), "{coat}");
        let sheet = job(&assessed);
        let lead = sheet.blocks.iter().find(|block| block.look == Look::Lead).unwrap();
        assert_eq!(lead.title, first);
        let text = sheet.to_string();
        for no in ["To order", "Terms of the order", "Nothing has to be proved", "gauge", "Zinc on the lot"] {
            assert!(!text.contains(no), "“{no}” on\n{text}");
        }
        assert!(text.contains("Zinc, which is not asked for"), "{text}");
        let offered = of_order(&assessed);
        assert!(offered.iter().all(|sheet| !sheet.key.starts_with("run")), "{offered:?}");
        let record = order_sheet(&assessed, "record", &heading(LINK)).unwrap().to_string();
        assert!(record.contains("there is no coat to inspect"), "{record}");
        let reply = reply::reply(&assessed, &heading(LINK));
        assert!(reply.contains(&first) && reply.contains("- Hot-dip would suit:"), "{reply}");
        for no in ["We recommend", "goes on the order", "has to be proved"] {
            assert!(!reply.contains(no), "“{no}” in\n{reply}");
        }
    }
    let left_out = written(&format!("{bolt}, no HDG"));
    let text = job(&left_out).to_string();
    assert!(text.contains("Hot-dip: suits, left out by the order"), "{text}");
    let keys: Vec<String> = of_order(&left_out).into_iter().map(|sheet| sheet.key).collect();
    assert!(keys.contains(&"run-barrel".to_owned()) && !keys.contains(&"run-kettle".to_owned()), "{keys:?}");
}

#[test]
fn a_reply_says_what_the_answer_says() {
    for assessed in orders() {
        let reply = reply::reply(&assessed, &heading(LINK));
        assert!(
            reply.starts_with("Dear customer,") && reply.contains("4711") && reply.contains(LINK),
            "{reply}"
        );
        assert!(!reply.contains("..") && !reply.contains('\u{a0}'), "{reply}");
        for process in &assessed.assessment.processes {
            let taken = Some(process.process) == assessed.assessment.answer.recommended;
            assert!(taken || reply.contains(&format!("- {} w", process.process.name())), "{reply}");
            for finding in process.findings.iter().filter(|_| taken) {
                if matches!(finding.mark, Mark::Condition | Mark::NotJudged | Mark::Term) {
                    assert!(reply.contains(&bare(&finding.text).replace('\u{a0}', " ")), "{reply}");
                }
            }
        }
    }
}

/// `nitrided`, `350 °C` once stood beside “Nothing to prove”; what is settled, as a price, moves nothing.
#[test]
fn nothing_is_promised_of_words_that_nobody_knows() {
    let nothing = |line: &str| {
        let reading = reading::read(line);
        let assessed = order::assessed_written(&reading.draft, reading.has_open_words()).unwrap();
        let heading = Heading { line: line.to_owned(), ..heading(LINK) };
        let job = order_sheet(&assessed, JOB, &heading).unwrap().to_string();
        [assessed.assessment.answer.text.clone(), reply::reply(&assessed, &heading), job]
    };
    let line = "M20 x 80 hex bolt 8.8, HDG, 100 pcs, C3, 15 years";
    for told in nothing(line).iter().chain(&nothing(&format!("{line}, price 0.45, PO 4711"))) {
        assert!(told.contains("Nothing ") && !told.contains("change nothing"), "{told}");
    }
    for open in ["nitrided", "flange at 350 °C", "min zork"] {
        for told in nothing(&format!("{line}, {open}")) {
            assert!(told.contains(" change nothing."), "{open}: {told}");
        }
    }
}

#[test]
fn inch_units_reach_every_row_but_the_working() {
    let assessed = written("M20 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years");
    let heading = Heading { units: Units::Inch, ..heading(LINK) };
    let text = order_sheet(&assessed, JOB, &heading).unwrap().to_string();
    let reply = reply::reply(&assessed, &heading);
    for metric in ["\u{a0}µm", "\u{a0}mm", "\u{a0}kg"] {
        assert!(!text.contains(metric) && !reply.contains(metric), "{metric}\n{text}\n{reply}");
    }
}

/// The squares of a code, read back by a decoder that knows nothing of the encoder.
#[test]
fn a_code_reads_back_to_its_link() {
    let long = format!("{LINK}&line={}", "M16+x+60+hex+bolt%2C+8.8+".repeat(18));
    for link in [LINK, &long] {
        let code = code::code(link).unwrap();
        let size = code.size as usize;
        let mut dark = vec![false; size * size];
        for run in code.path.split('M').filter(|run| !run.is_empty()) {
            let (place, rest) = run.split_once('h').unwrap();
            let (x, y) = place.split_once(' ').unwrap();
            let (x, y): (usize, usize) = (x.parse().unwrap(), y.parse().unwrap());
            let length: usize = rest.split_once('v').unwrap().0.parse().unwrap();
            dark[y * size + x..y * size + x + length].fill(true);
        }
        let scale = 4;
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(size * scale, size * scale, |x, y| {
            if dark[y / scale * size + x / scale] { 0 } else { 255 }
        });
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1, "{link}");
        assert_eq!(grids[0].decode().unwrap().1, link);
    }
    assert_eq!(code::code(&"x".repeat(2000)), None);
}

fn block<'a>(sheet: &'a Sheet, title: &str) -> Vec<&'a str> {
    let block = sheet.blocks.iter().find(|block| block.title == title);
    block.map_or_else(Vec::new, |block| block.rows.iter().map(|row| row.text.as_ref()).collect())
}

/// By the masses that the order has for one of each: 124.5 g for the bolt alone.
#[test]
fn what_a_piece_and_the_lot_weigh_is_on_the_sheet() {
    let said = |line: &str| {
        let sheet = job(&written(line)).on_paper();
        rows(&sheet).find(|row| row.name.starts_with("Weight")).map(|row| row.text.to_string()).unwrap()
    };
    assert_eq!(said("M16 x 60 hex bolt, 8.8, C3, HDG, 400 pcs"), "125\u{a0}g a piece, 49.8\u{a0}kg in all");
    assert_eq!(said("M16 x 60 hex bolt, 8.8, C3, HDG"), "125\u{a0}g a piece");
    let set = said("500 sets M16 x 60 hex bolt, 8.8, with nut and washer, C3, HDG");
    assert!(set.contains("g a set, ") && set.ends_with("kg in all"), "{set}");
    let zinc = job(&written("M16 x 60 hex bolt, 8.8, C3, HDG, 400 pcs"));
    assert!(rows(&zinc).any(|row| row.name == "Zinc on the lot"));
}

/// A bolt that was ordered smaller for its coat once was told to be cut smaller for it, by a quarter of the
/// allowance of its class alone.
#[test]
fn a_thread_that_was_ordered_for_its_coat_is_not_judged_again() {
    let mut made_smaller = 0;
    for line in [
        "3/8-16 x 2 hex bolt, grade 5, B633 SC3, C2, 100 pcs",
        "1/4-20 x 1 hex bolt, grade 5, F1941 Fe/Zn 12, C2, 100 pcs",
        "3/4-10 x 3 hex bolt, grade 5, B633 SC4, C2, 100 pcs",
        "M8 x 30 hex bolt, 8.8, ISO 4042 20 µm, 100 pcs, C2",
        "M12 x 60 hex bolt, 8.8, ISO 4042 8 µm thread 6e, C2, 400 pcs",
        "M5 x 16 hex bolt 8.8, electroplated 12 µm, C2, 100 pcs",
    ] {
        let sheet = job(&written(line));
        let text = sheet.to_string();
        assert!(!text.contains("Cut it smaller") && !text.contains("does not pass GO"), "{text}");
        assert!(text.contains("gauge the coated bolt with GO"), "{text}");
        made_smaller += usize::from(text.contains("made smaller by"));
        let lead = &sheet.blocks.iter().find(|block| block.look == Look::Lead).unwrap().rows[0].text;
        assert!(lead.matches("before the coat").count() < 3 && lead.matches("6e").count() < 2, "{lead}");
    }
    assert!(made_smaller > 2);
}

/// Agreeing something once stood beside a sentence by which nothing has to be agreed.
#[test]
fn what_is_to_be_agreed_does_not_stand_beside_nothing() {
    let mut agreed = 0;
    for line in [
        "1/2-13 x 3 hex bolt, grade 5, mechanical zinc class 12, C3, 400 pcs",
        "M12 x 60 hex bolt 8.8, 6e, mechanical class 12, C2, 200 pcs",
        "M16 x 60 hex bolt, 8.8, C3, 15 years, 400 pcs, HDG",
    ] {
        let assessed = written(line);
        let sheet = job(&assessed);
        let reply = reply::reply(&assessed, &heading(LINK));
        let answer = &assessed.assessment.answer.text;
        let first = block(&sheet, "First to prove or agree");
        let terms = block(&sheet, "Terms of the order");
        let is_agreed = first.iter().chain(&terms).any(|text| text.starts_with("Agree"));
        agreed += usize::from(is_agreed);
        assert_eq!(is_agreed, first.iter().any(|text| text.starts_with("Agree")), "{sheet}");
        assert_eq!(first.iter().any(|text| text.contains("or agreed before")), !is_agreed, "{sheet}");
        assert_eq!(reply.contains("or agreed first"), !is_agreed, "{reply}");
        assert_eq!(answer.contains("Nothing to prove"), !is_agreed, "{answer}");
        assert_eq!(answer.contains("To agree: the nuts"), is_agreed, "{answer}");
    }
    assert_eq!(agreed, 2);
}

/// B633 and B850 once asked for two bakes.
#[test]
fn one_bake_is_asked_for() {
    for line in [
        "1/2-13 x 3 hex bolt, grade 8, electroplated to B633, C2, 400 pcs",
        "M12 x 60 hex bolt, 12.9, electroplated to B633, C2, 400 pcs",
    ] {
        let sheet = order_sheet(&written(line), JOB, &heading(LINK)).unwrap();
        let bakes = block(&sheet, "Terms of the order").into_iter().filter(|text| text.contains("ake"));
        let bakes: Vec<&str> = bakes.collect();
        assert!(bakes.len() < 2, "{bakes:?}");
        assert!(
            bakes.iter().all(|bake| bake.contains("190 to 220") && bake.contains("\u{a0}h, begun within")),
            "{bakes:?}"
        );
        let bake = rows(&sheet).find(|row| row.name == "Bake").unwrap();
        assert!(bake.text.matches("ake").count() < 2, "{}", bake.text);
    }
}

/// A letter promises no more years than the harshest place allows that it may be, and none where no place is known.
/// C4 takes 2.1 to 4.2 µm a year (ISO 9223, Table 2): the least coat of ISO 10684, 40 µm, is sure of 9.5 years there.
#[test]
fn the_letter_promises_the_years_of_the_harshest_place() {
    let letter = |line: &str| reply::reply(&written(line), &heading(LINK));
    let ranged = letter("M20 x 80 hex bolt, 8.8, HDG, C3-C4");
    assert!(ranged.contains("In C4 the zinc lasts 9.5 to"), "{ranged}");
    assert!(!ranged.contains("In C3"), "{ranged}");
    for placeless in ["M20 x 80 hex bolt, 8.8, HDG", "M20 x 80 hex bolt, 8.8, HDG, buried"] {
        let letter = letter(placeless);
        assert!(!letter.contains("lasts") && !letter.contains("Life in"), "{letter}");
    }
}
