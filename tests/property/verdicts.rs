//! Orders with a verdict for each process as a specialist of the trade would give it.
//!
//! Common practice, with no published source: `verdicts.tsv` beside this file. Each line on which the
//! answer differs stands in [`DIFFER`] with its reason.

use kettle_barrel::order::{self, judge};

/// Why nuts of a grade by a number alone differ.
const J995: &str =
    "SAE J995, which a grade of nuts by a number is of, is not among the steels yet: the steel is asked for";

/// Order, process (0 hot-dip, 1 mechanical, 2 electroplated), why the answer differs.
const DIFFER: &[(&str, usize, &str)] = &[
    ("1/2-13 hex nut, grade 5, 1000 pcs, C3", 0, J995),
    ("1/2-13 hex nut, grade 5, 1000 pcs, C3", 1, J995),
    ("1/2-13 hex nut, grade 2, 1000 pcs, C3", 0, J995),
    ("1/2-13 hex nut, grade 2, 1000 pcs, C3", 1, J995),
    ("1/4-20 hex nut, grade 5, 1000 pcs, C1", 1, J995),
    ("1/4-20 hex nut, grade 5, 1000 pcs, C1", 2, J995),
    (
        "M36 hex nut, class 8, 100 pcs, C3, 15 years",
        2,
        "12 µm goes into the pair as ordered and may last 21 years: a question of the place, as it is for the bolt",
    ),
    (
        "1-8 washer, F436, 5000 pcs, C4, 12 years",
        2,
        "ASTM F1941, under which plated inch parts stand, ends at 12 µm; ASTM B633 goes on and was not asked for",
    ),
];

#[test]
fn the_answers_are_a_specialists() {
    let mut agree = [0; 3];
    let mut lines = 0;
    let mut wrong = Vec::new();
    for row in include_str!("verdicts.tsv").lines().skip(1) {
        let cells: Vec<&str> = row.split('\t').collect();
        let [text, expected @ ..] = &cells[..] else { panic!("{row}") };
        lines += 1;
        let draft = order::reading::read(text).draft;
        let line = match order::read(&draft) {
            Ok(line) => line,
            Err(problems) => {
                wrong.push(format!("{text}: {problems}"));
                continue;
            }
        };
        for (place, judged) in judge(&line).processes.iter().enumerate() {
            let verdict = judged.verdict().words();
            if verdict.eq_ignore_ascii_case(expected[place]) {
                agree[place] += 1;
            } else if !DIFFER.iter().any(|(order, process, _)| (order, *process) == (text, place)) {
                let keys: Vec<String> = judged
                    .rulings
                    .iter()
                    .filter(|(_, ruling)| ruling.says.mark > kettle_barrel::calculator::Mark::Note)
                    .map(|(_, ruling)| format!("{}:{}", ruling.rule.key.key(), ruling.says.mark.key()))
                    .collect();
                wrong.push(format!(
                    "{text} | {place}: {verdict}, not {}: {}",
                    expected[place],
                    keys.join(" ")
                ));
            }
        }
    }
    println!(
        "agreement of {lines} orders: hot-dip {}, mechanical {}, electroplated {}",
        agree[0], agree[1], agree[2]
    );
    assert!(wrong.is_empty(), "{agree:?} of {lines}\n{}", wrong.join("\n"));
    for agree in agree {
        assert!(agree * 10 >= lines * 9, "{agree} of {lines}");
    }
}
