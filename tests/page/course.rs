//! The course: lessons that lead to their calculators, answers that are marked and kept, lines of a class.

use kettle_barrel::course::{Question, Setup, Sheet};

use crate::harness::{Done, in_chromium, in_every_engine};

const SHEET: &str = "#1/course?room=sheet&number=7&count=3&level=one-step&from=coat";

/// The right answer to the first question of [`SHEET`], as it is shown.
fn right() -> String {
    let draft = [("number", "7"), ("count", "3"), ("from", "coat")].into_iter().collect();
    let sheet = Setup::read(&draft).map(|setup| Sheet::of(&setup)).ok();
    sheet.and_then(|sheet| sheet.questions().next().map(Question::right)).unwrap_or_default()
}

#[test]
fn an_answer_is_marked_and_stays_and_the_line_says_so() -> Done {
    in_every_engine(|page| {
        page.open(SHEET)?;
        page.until("document.querySelectorAll('.exercise').length === 3")?;
        page.until("document.querySelectorAll('.question details').length === 3")?;
        page.fill("#answer-1", "1 m")?;
        page.click(".exercise h2")?;
        page.text_holds(".exercise .mark", "✗")?;
        page.fill("#answer-1", &right())?;
        page.click(".exercise h2")?;
        page.text_holds(".exercise .mark", "✓ right")?;
        page.text_holds(".hand-in h2", "1 of 3 right")?;
        page.reload()?;
        page.text_holds(".exercise .mark", "✓ right")?;
        page.text_holds(".hand-in code", "| 1/3 |")?;
        page.console_is_quiet()
    })
}

#[test]
fn a_lesson_opens_the_calculator_at_its_numbers() -> Done {
    in_chromium(|page| {
        page.open("#1/course")?;
        page.until("document.querySelectorAll('.cards a').length === 12")?;
        page.open("#1/course?lesson=mass")?;
        page.text_becomes("h1", "Mass and thickness")?;
        page.text_holds(".lesson", "530.0")?;
        page.wait_for(".lesson svg")?;
        page.wait_for(".lesson math")?;
        page.click(".lesson ul a")?;
        page.text_holds("#answer", "530.0")
    })
}

#[test]
fn the_lines_of_a_class_are_marked_anew() -> Done {
    in_chromium(|page| {
        page.open("#1/course?room=handed-in")?;
        page.fill("#lines", "KB2 | 7 | one-step | coat | 3 | metric | A. Learner | | | | 3/3 | 22222222")?;
        page.text_holds("tbody", "changed")?;
        page.text_holds("tbody", "0/3")
    })
}
