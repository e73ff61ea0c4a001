//! What a process is to an order is said in the same words wherever it is said.

use kettle_barrel::calculator::{Address, Verdict};
use kettle_barrel::coat::Process;
use kettle_barrel::order::saved::Entry;
use kettle_barrel::order::{self, Aside, Standing, list, reading};
use kettle_barrel::quantity::Units;
use kettle_barrel::quantity::letters::lower;
use kettle_barrel::sheet::{self, Heading};

/// Standings of hot-dip, mechanical and electroplated, as far as they are no bare verdicts.
const LINES: &[(&str, [Option<Aside>; 3])] = &[
    ("M16 x 60 hex bolt, 8.8, C3, 15 years", [None; 3]),
    ("M16 x 60 hex bolt, 8.8, C3, unplated", [Some(Aside::NotAskedFor); 3]),
    ("M16 x 60 hex bolt, 8.8, C3, zinc flake", [Some(Aside::NotAskedFor); 3]),
    // What is ruled out is ruled out whatever is asked for.
    ("M6 x 20 hex screw, 8.8, C1, unplated", [None, Some(Aside::NotAskedFor), Some(Aside::NotAskedFor)]),
    ("M16 x 60 hex bolt, 8.8, C3, no HDG", [Some(Aside::LeftOut), None, None]),
    ("M6 x 20 hex screw, 8.8, C1, no HDG", [None; 3]),
    ("M16 x 60 hex bolt, 8.8, C3, no HDG, unplated", [Some(Aside::NotAskedFor); 3]),
];

#[test]
fn page_paper_list_and_terminal_say_one_thing() {
    for (line, expected) in LINES {
        let read = reading::read(line);
        let assessed = order::assessed_written(&read.draft, read.has_open_words()).unwrap();
        let standings = assessed.assessment.processes.each_ref().map(|process| process.standing());
        assert_eq!(standings.map(|standing| standing.aside), *expected, "{line}");
        let of_line = assessed.judgement.processes.each_ref().map(|it| Standing::of(&assessed.line, it));
        assert_eq!(of_line, standings, "{line}");

        let row = list::row(line).told(Units::default());
        let told = assessed.assessment.to_string();
        let heading = Heading { line: (*line).to_owned(), ..Heading::default() };
        let paper = sheet::order_sheet(&assessed, "job", &heading).unwrap().to_string();
        let taken = assessed.assessment.answer.recommended;
        for ((process, standing), cell) in Process::ALL.into_iter().zip(standings).zip(&row) {
            let (name, words) = (process.name(), standing.words());
            assert_eq!(*cell, words, "{line}");
            assert!(told.contains(&format!("\n{name}: {}\n", lower(&words))), "{line}: {told}");
            let headline = &assessed.assessment.headline;
            let part = headline.split(". ").find(|part| part.contains(name)).unwrap_or_default();
            assert!(part.starts_with(&format!("{words}: ")), "{line}: {headline}");
            // What is taken has a title of its own.
            let on_paper = format!("  {name}: {}: ", lower(&words));
            assert!(taken == Some(process) || paper.contains(&on_paper), "{line}: {on_paper}{paper}");
        }

        let address = Address::new("order", read.draft.clone()).to_string();
        assert_eq!(Entry::new(&address, "").standings(), standings, "{line}: {address}");
    }
}

#[test]
fn what_is_kept_of_a_calculation_has_its_verdict_alone() {
    let kept = Entry::new("1/hydrogen?known=hardness&hardness=45+HRC&process=kettle", "");
    assert_eq!(kept.standings(), [Standing { verdict: Verdict::RuledOut, aside: None }]);
}
