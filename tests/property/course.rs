//! Exercises: drawn alike for everybody, with one answer, which the marker takes in every unit.

use kettle_barrel::calculator::REGISTER;
use kettle_barrel::course::handed_in::{self, State};
use kettle_barrel::course::mark::units;
use kettle_barrel::course::tolerance::{agrees, near};
use kettle_barrel::course::{Level, Marked, Question, Random, Setup, Sheet, Sought, Topic, mark, set};
use kettle_barrel::order;
use kettle_barrel::quantity::{Shown, Units};
use kettle_barrel::source::Basis;

/// Exercises drawn of each calculator and level.
fn each_exercise(count: u64, mut check: impl FnMut(&str, &Question)) {
    for entry in REGISTER {
        for (level, share) in [(Level::OneStep, 3), (Level::Whole, 3), (Level::Error, 1)] {
            let mut made = 0;
            for number in 0..count * share / 7 + 1 {
                let mut random = Random::new(number << 8 | share);
                let units = if number % 2 == 0 { Units::Metric } else { Units::Inch };
                let Some(exercise) = set(&Topic::Calculator(entry), level, units, &mut random) else {
                    continue;
                };
                made += 1;
                assert!(!exercise.scene.is_empty());
                exercise.questions.iter().for_each(|question| check(entry.about.id, question));
            }
            // A table read off has no sum in which anybody could slip.
            let may_be_empty = level == Level::Error;
            assert!(made > 0 || may_be_empty, "{} {level:?}", entry.about.id);
        }
    }
}

/// A figure written in another unit with as many digits as say the same, and two more.
fn written(right: Shown, unit: &'static kettle_barrel::quantity::Unit) -> Option<String> {
    let number = right.unit.convert(right.number, unit).or((unit == right.unit).then_some(right.number))?;
    let finer = (unit.factor / right.unit.factor).log10().ceil();
    let decimals = (f64::from(right.decimals) + finer + 2.0).clamp(0.0, 15.0) as u8;
    Some(format!("{} {}", Shown { number, unit, decimals }.digits(), unit.symbol))
}

fn a_question_is_sound(id: &str, question: &Question) {
    match &question.sought {
        Sought::Figure(right, slips) => {
            assert_eq!(mark(question, &right.to_string()), Marked::Right, "{id}: {}", question.text);
            for unit in units(right.unit) {
                let answer = written(*right, unit).unwrap();
                assert_eq!(mark(question, &answer), Marked::Right, "{id}: {} {answer}", question.text);
            }
            for slip in slips {
                let same = slip.value.unit == right.unit;
                assert!(!same || !near(*right, slip.value.number), "{id}: {} {slip:?}", question.text);
                let text = slip.value.to_string();
                // A slip that rounds to nothing cannot be told from nothing.
                if slip.value.rounded() != 0.0 && agrees(slip.value, slip.value.rounded()) {
                    assert!(
                        matches!(mark(question, &text), Marked::Slip(_)),
                        "{id}: {} {slip:?}",
                        question.text
                    );
                }
            }
            let wrong = Shown { number: right.number * 37.3 + 1000.0, ..*right };
            assert_ne!(mark(question, &wrong.to_string()), Marked::Right);
        }
        Sought::OneOf(options, right) => {
            assert!((1..=options.len()).contains(right), "{id}: {}", question.text);
            for number in 1..=options.len() {
                let marked = mark(question, &number.to_string());
                assert_eq!(marked == Marked::Right, number == *right, "{id}: {}", question.text);
            }
        }
    }
    assert!(!question.hint.is_empty() && !question.because.is_empty(), "{id}: {}", question.text);
    assert_eq!(mark(question, "  "), Marked::Open);
    assert!(matches!(mark(question, "so and so"), Marked::Unread(_)));
}

#[test]
fn every_exercise_has_one_answer_and_slips_that_are_told_from_it() {
    let mut met = std::collections::BTreeSet::new();
    each_exercise(70, |id, question| {
        a_question_is_sound(id, question);
        if let Sought::Figure(_, slips) = &question.sought {
            met.extend(slips.iter().map(|slip| slip.name));
        }
    });
    // What students do is met in the sheets that they get.
    for usual in [
        "the radius was put in for the diameter",
        "2 t was taken for 4 t",
        "°C was read as °F",
        "one side was taken for two",
        "the yield of the powder was forgotten",
        "the factor from thickness to mass is that of another standard",
        "the least was taken for the mean",
        "the number stands on another scale of hardness",
    ] {
        assert!(met.iter().any(|name| name.starts_with(usual)), "{usual}: {met:#?}");
    }
}

/// Ten thousand of each calculator take minutes: `cargo test --release --test property -- --ignored ten_thousand`.
#[test]
#[ignore = "takes minutes"]
fn ten_thousand_exercises_of_each_calculator() {
    each_exercise(10_000, a_question_is_sound);
}

fn setup(number: u32, level: Level, from: &str, count: u32) -> Setup {
    let (number, count) = (number.to_string(), count.to_string());
    let pairs =
        [("number", number.as_str()), ("level", level.key()), ("from", from), ("count", count.as_str())];
    Setup::read(&pairs.into_iter().collect()).unwrap()
}

#[test]
fn a_number_makes_one_sheet_and_a_longer_one_begins_with_it() {
    for level in Level::ALL {
        let short = Sheet::of(&setup(42, *level, "all", 5));
        let long = Sheet::of(&setup(42, *level, "all", 9));
        assert_eq!(short.exercises[..], long.exercises[..5]);
        assert_eq!((short.exercises.len(), long.exercises.len()), (5, 9));
        assert_eq!(short.to_string(), Sheet::of(&setup(42, *level, "all", 5)).to_string());
        assert_ne!(short.exercises, Sheet::of(&setup(43, *level, "all", 5)).exercises);
    }
}

#[test]
fn a_setup_is_written_as_it_is_read() {
    let setup = setup(2031, Level::Error, "Coat, life", 12);
    assert_eq!(setup.from(), "coat life");
    assert_eq!(Setup::read(&setup.write()), Ok(setup));
    let problems = Setup::read(&[("from", "coat, rust")].into_iter().collect()).unwrap_err();
    assert!(problems.to_string().contains("“rust” is not one of the choices"), "{problems}");
}

/// From a written line to the finish: the verdicts and the rules are those of the judged case.
#[test]
fn an_order_line_is_decided_step_by_step() {
    let sheet = Sheet::of(&setup(7, Level::Whole, "order", 20));
    assert_eq!(sheet.exercises.len(), 20);
    for exercise in &sheet.exercises {
        let (_, line) = &exercise.givens[0];
        let reading = kettle_barrel::order::reading::read(line);
        assert!(reading.is_understood(), "{line}");
        let assessed = kettle_barrel::order::assess(&reading.draft).unwrap();
        assert_eq!(exercise.questions.len(), 4);
        for (question, process) in exercise.questions.iter().zip(&assessed.processes) {
            assert!(question.right().ends_with(process.verdict.words()), "{line}: {}", question.right());
            assert!(question.because.contains("Rule "), "{line}: {}", question.because);
        }
        let taken = assessed.answer.recommended.map_or("None of the three", |process| process.name());
        assert!(exercise.questions[3].right().ends_with(taken), "{line}");
        exercise.questions.iter().for_each(|question| a_question_is_sound(line, question));
    }
}

/// One line of the sheet is not that of the order, and it is the one that is named.
#[test]
fn a_job_sheet_has_one_fault() {
    let mut planted = std::collections::BTreeSet::new();
    for number in 0..60 {
        let exercise = set(&Topic::Order, Level::Error, Units::Metric, &mut Random::new(number)).unwrap();
        let question = &exercise.questions[0];
        a_question_is_sound("job sheet", question);
        let line = &exercise.givens[0].1;
        let reading = kettle_barrel::order::reading::read(line);
        let assessed = kettle_barrel::order::assessed(&reading.draft).unwrap();
        let heading = kettle_barrel::sheet::Heading { units: Units::Metric, ..Default::default() };
        let sheet = kettle_barrel::sheet::order_sheet(&assessed, "job", &heading).unwrap();
        let rows: Vec<_> = sheet.blocks.iter().flat_map(|block| &block.rows).collect();
        let Sought::OneOf(options, right) = &question.sought else { panic!("{line}: {}", question.text) };
        assert_eq!(options.len(), exercise.paper.len());
        for (place, (name, text)) in exercise.paper.iter().enumerate() {
            let is_of_the_order = rows
                .iter()
                .any(|row| row.text == *text && (row.name.is_empty() || name.ends_with(&*row.name)));
            assert_eq!(is_of_the_order, place + 1 != *right, "{line}: {name}: {text}");
        }
        assert!(question.because.contains("rightly "), "{line}");
        // A rule is named with its own source and no other: a figure of its own document is behind none.
        if let Some((_, named)) = question.because.split_once("Rule ") {
            let (key, source) = named.split_once(": ").unwrap();
            let judgement = &assessed.judgement;
            let says_so = |judged: &order::Judged| {
                let mut rulings = judged.rulings.iter().filter(|(_, ruling)| ruling.rule.key.key() == key);
                rulings.any(|(place, ruling)| {
                    let case = judgement.case(judged, *place).unwrap();
                    source == format!("{}.", ruling.source(&case))
                })
            };
            assert!(judgement.processes.iter().any(says_so), "{}", question.because);
        }
        // The two figures are of one unit: grams are not planted for kilograms.
        let unit = |text: &str| text.rsplit(['\u{a0}', ' ']).next().unwrap_or_default().to_owned();
        let wrong = &exercise.paper[right - 1];
        let row = rows.iter().find(|row| !row.name.is_empty() && wrong.0.ends_with(&*row.name));
        if let Some(row) = row.filter(|row| row.text.contains(" to ") && row.text.split(' ').count() < 5) {
            assert_eq!(unit(&row.text), unit(&wrong.1), "{line}: {wrong:?}");
        }
        planted.insert(exercise.paper[right - 1].0.split(':').next().unwrap().to_owned());
    }
    // Not always the same line: the coat, its class, the life, the zinc, the gauges.
    assert!(planted.len() >= 6, "{planted:?}");
}

#[test]
fn a_line_that_was_changed_is_found() {
    let sheet = Sheet::of(&setup(5, Level::OneStep, "coat life tempering", 4));
    let mut answers: Vec<String> = sheet.questions().map(Question::right).collect();
    answers[1] = "12 | 13 µm".to_owned();
    let line = handed_in::line(&sheet, "A. Learner", answers.iter().map(String::as_str));
    assert!(line.contains("| 3/4 |"), "{line}");
    let read = |text: &str| handed_in::read(text).pop().unwrap();
    let intact = read(&line);
    assert_eq!(
        (intact.name.as_str(), intact.score, intact.state),
        ("A. Learner", Some((3, 4)), State::Intact)
    );
    // What mail does to spaces changes nothing.
    assert_eq!(read(&format!("  {}  ", line.replace(" | ", "  |  "))).state, State::Intact);
    let boasted = read(&line.replace("| 3/4 |", "| 4/4 |"));
    assert_eq!(
        (boasted.state, boasted.stated.as_str(), boasted.score),
        (State::Changed, "4/4", Some((3, 4)))
    );
    let signs = line.char_indices().filter(|(_, c)| c.is_ascii_digit());
    for (at, digit) in signs {
        let other = if digit == '7' { "8" } else { "7" };
        let mut changed = line.clone();
        changed.replace_range(at..=at, other);
        assert_ne!(read(&changed).state, State::Intact, "{changed}");
    }
    assert_eq!(read("Dear all, here is my line").state, State::Unread);
    assert_eq!(handed_in::read(&format!("{line}\n\n{line}\n")).len(), 2);
}

/// What is planted is seen, and what is called wrong is not what stands there.
#[test]
fn a_planted_fault_differs_from_what_is_right() {
    for (number, from) in [(11, "coat"), (222, "coat"), (3333, "coat"), (3333, "kettle"), (7, "all")] {
        for exercise in Sheet::of(&setup(number, Level::Error, from, 30)).exercises {
            let question = &exercise.questions[0];
            let (Sought::OneOf(_, place), Some(right)) = (&question.sought, question.working.first()) else {
                continue;
            };
            let shown = exercise.shown[place - 1].result;
            let number = shown.unit.convert(shown.rounded(), right.result.unit).unwrap_or(shown.number);
            assert!(!near(right.result, number), "{from} {number}: {}", question.because);
        }
    }
}

/// A slip that is named is made in the step that is asked: what it changes goes into that step.
#[test]
fn a_slip_is_named_only_where_it_can_be_made() {
    for number in 1..8 {
        for exercise in Sheet::of(&setup(number, Level::Error, "all", 14)).exercises {
            let because = &exercise.questions[0].because;
            let Some(right) = exercise.questions[0].working.first() else { continue };
            let units: Vec<&str> = right.terms.iter().map(|term| term.value.unit.symbol).collect();
            let heat = ["°C", "°F", "K"];
            if because.contains("°C was read as °F") || because.contains("°F was read as °C") {
                assert!(units.iter().any(|unit| heat.contains(unit)), "{because}");
            }
            if because.contains("one side was taken for two") {
                assert!(right.symbol.starts_with('A') && right.symbol != "As", "{because}");
            }
            if because.contains("2 t was taken for 4 t") {
                assert!(!right.formula.contains('π'), "{because}");
            }
        }
    }
}

/// What nobody can look up is given: the program's own assumptions are not guessed.
#[test]
fn a_whole_task_gives_what_only_the_program_assumes() {
    let mut with = 0;
    for number in 1..10 {
        for exercise in Sheet::of(&setup(number, Level::Whole, "powder tempering kettle", 6)).exercises {
            let question = &exercise.questions[0];
            let asked = question.working.last().unwrap();
            for step in &question.working {
                let chosen = |basis| matches!(basis, Basis::Assumed | Basis::CommonPractice);
                let terms = step.terms.iter().filter(|term| term.source.is_some_and(|it| chosen(it.basis)));
                for term in terms.filter(|term| term.symbol != asked.symbol) {
                    let name = format!("{},", term.name());
                    assert!(
                        exercise.givens.iter().any(|(given, _)| given.starts_with(&name)),
                        "{name} {exercise:?}"
                    );
                    with += 1;
                }
            }
        }
    }
    assert!(with > 0);
}

/// Every topic has something to ask at every level, and a sheet asks nothing twice.
#[test]
fn a_topic_is_asked_for_itself_and_a_sheet_repeats_nothing() {
    for topic in Topic::all().filter(|topic| *topic != Topic::Order) {
        for level in Level::ALL {
            let exercises = Sheet::of(&setup(11, *level, topic.key(), 3)).exercises;
            assert!(!exercises.is_empty(), "{} {level:?}", topic.key());
            assert!(exercises.iter().all(|exercise| exercise.topic == topic), "{} {level:?}", topic.key());
        }
    }
    let exercises = Sheet::of(&setup(222, Level::OneStep, "coat", 20)).exercises;
    for (at, one) in exercises.iter().enumerate() {
        assert!(!exercises[..at].iter().any(|other| one.asks_the_same(other)), "{at}");
    }
}

/// One in the last place asked is right on either side alike.
#[test]
fn the_edge_of_what_is_right_is_the_same_on_both_sides() {
    let question = |number: f64| Question {
        text: String::new(),
        sought: Sought::Figure(
            Shown { number, unit: &kettle_barrel::quantity::unit::UM, decimals: 2 },
            Vec::new(),
        ),
        hint: String::new(),
        working: Vec::new(),
        because: String::new(),
    };
    let right = |number, answer: &str| mark(&question(number), answer) == Marked::Right;
    assert!(right(55.6436, "55.65 µm") && right(55.6436, "55.63 µm") && right(55.6436, "= 55.64 um"));
    assert!(!right(55.6436, "55.66 µm") && !right(55.6436, "55.62 µm"));
}

/// A fault once stood in the last step of every working of four calculators.
#[test]
fn a_fault_stands_where_nobody_guesses_it() {
    for entry in REGISTER {
        let id = entry.about.id;
        let (mut of_all, mut last, mut first) = (0_usize, 0_usize, 0_usize);
        let (mut by_place, mut lengths) = (std::collections::BTreeMap::new(), 0_usize);
        for number in 0..48 {
            let exercise =
                set(&Topic::Calculator(entry), Level::Error, Units::Metric, &mut Random::new(number))
                    .unwrap();
            let Sought::OneOf(options, place) = &exercise.questions[0].sought else { panic!("{id}") };
            assert_eq!(options.len(), exercise.shown.len(), "{id}");
            of_all += 1;
            lengths += options.len();
            last += usize::from(*place == options.len());
            first += usize::from(*place == 1);
            *by_place.entry(*place).or_insert(0_usize) += 1;
            one_step_is_wrong(id, &exercise);
        }
        let most = by_place.values().max().unwrap();
        println!(
            "{id}: {last} of {of_all} last, {first} first, by place {by_place:?}, {} steps",
            lengths / of_all
        );
        // No better than a guess among two.
        assert!(
            5 * last <= 3 * of_all && 5 * first <= 3 * of_all && 5 * most <= 3 * of_all,
            "{id}: {by_place:?}"
        );
        assert!(by_place.len() > 1, "{id}: {by_place:?}");
    }
}

/// Every sum but the one at fault comes out of the numbers that it shows; a result that goes into a later step
/// stands there as it came out.
fn one_step_is_wrong(id: &str, exercise: &kettle_barrel::course::Exercise) {
    let Sought::OneOf(_, place) = &exercise.questions[0].sought else { panic!("{id}") };
    for (at, step) in
        exercise.shown.iter().enumerate().filter(|(at, step)| at + 1 != *place && !step.formula.is_empty())
    {
        let put_in = |symbol: &str| {
            step.terms.iter().find(|term| term.symbol == symbol).map(|term| term.value.displayed())
        };
        let pieces = step.segments();
        let Some(sum) = kettle_barrel::working::tree(&pieces).and_then(|tree| tree.value(&put_in)) else {
            continue;
        };
        let half = 0.5 * 10f64.powi(-i32::from(step.result.decimals));
        let result = step.result.displayed();
        assert!(
            (sum - result).abs() <= half * 1.000_001 + 1e-12 * result.abs(),
            "{id}: step {}: {step}",
            at + 1
        );
    }
    let fault = &exercise.shown[place - 1];
    for step in exercise.shown.iter().skip(*place) {
        for term in step.terms.iter().filter(|term| term.symbol == fault.symbol && term.index == fault.index)
        {
            let number = fault
                .result
                .unit
                .convert(fault.result.number, term.value.unit)
                .unwrap_or(fault.result.number);
            let is_same = (number - term.value.number).abs() <= 1e-9 * number.abs();
            assert!(is_same, "{id}: {step} does not go on with {fault}");
        }
    }
}

/// What a fault of a job sheet says is a line of a sheet: a figure with its unit.
#[test]
fn a_fault_of_a_sheet_is_told_as_a_line_of_it() {
    for number in 0..40 {
        let exercise = set(&Topic::Order, Level::Error, Units::Metric, &mut Random::new(number)).unwrap();
        let because = &exercise.questions[0].because;
        let quoted: Vec<&str> = because.split(['“', '”']).skip(1).step_by(2).take(2).collect();
        let Sought::OneOf(_, place) = &exercise.questions[0].sought else { panic!("{because}") };
        let line = &exercise.paper[place - 1].1;
        assert!(
            quoted.len() == 2 && line.contains(quoted[1]) && !line.contains(quoted[0]),
            "{line}: {because}"
        );
        assert!(!because.contains("Weight"), "no rule is behind a weight: {because}");
        let is_bare = |text: &str| text.chars().all(|c| c.is_ascii_digit() || ".,".contains(c));
        assert!(!is_bare(quoted[0]) || line == quoted[1], "{because}");
    }
}

/// A sheet once said forty exercises above fifteen.
#[test]
fn the_title_says_how_many_follow() {
    for (from, level) in
        [("salt-spray", Level::OneStep), ("coat", Level::OneStep), ("hydrogen", Level::Whole)]
    {
        let sheet = Sheet::of(&setup(3, level, from, 40));
        let title = sheet.title();
        let follow = sheet.exercises.len();
        assert!(title.contains(&format!("Sheet 3: {follow} exercise")), "{title}");
        assert_eq!(title.contains("40 were asked for"), follow < 40, "{title}");
        for (at, one) in sheet.exercises.iter().enumerate() {
            assert!(!sheet.exercises[..at].iter().any(|other| one.asks_the_same(other)), "{title}: {at}");
        }
    }
    assert!(Sheet::of(&setup(3, Level::OneStep, "salt-spray", 40)).exercises.len() < 40);
}

/// The system is a part of the sheet: its figures are of it, on every device, and its lines are marked in it.
#[test]
fn a_sheet_is_given_and_asked_in_its_units() {
    let sheet = |units: &str, level: Level| {
        let pairs =
            [("number", "31"), ("count", "30"), ("level", level.key()), ("from", "all"), ("units", units)];
        Sheet::of(&Setup::read(&pairs.into_iter().collect()).unwrap())
    };
    for level in [Level::OneStep, Level::Whole] {
        let (metric, inch) = (sheet("metric", level), sheet("inch", level));
        assert_ne!(metric.exercises, inch.exercises);
        assert!(metric.title().ends_with("metric") && inch.title().ends_with("inch"), "{}", inch.title());
        for (sheet, system, other) in
            [(&metric, Units::Metric, Units::Inch), (&inch, Units::Inch, Units::Metric)]
        {
            for question in sheet.questions() {
                let Sought::Figure(right, _) = &question.sought else { continue };
                assert_eq!(system.unit(right.unit), right.unit, "{}", question.text);
                a_question_is_sound("units", question);
                // What the working shows is right in its own unit.
                let shown = question.working.last().unwrap().result;
                let own = Shown { number: shown.rounded(), ..shown };
                let marked = mark(question, &own.to_string());
                assert_eq!(marked, Marked::Right, "{} {own}", question.text);
            }
            let answers: Vec<String> = sheet.questions().map(Question::right).collect();
            let line = handed_in::line(sheet, "A. Learner", answers.iter().map(String::as_str));
            let read = handed_in::read(&line).pop().unwrap();
            assert_eq!(read.score, Some((answers.len(), answers.len())), "{line}");
            let changed = line.replace(system.key(), other.key());
            assert_eq!(handed_in::read(&changed).pop().unwrap().state, State::Changed);
        }
    }
    let unsaid = Setup::read(&[("number", "31")].into_iter().collect()).unwrap();
    assert_eq!(unsaid.units, Units::Metric);
}

/// Heat in °F and a hardness on another scale are given, and who takes them for °C or does not convert them is told so.
#[test]
fn figures_in_the_units_of_others_are_drawn_and_their_slips_are_named() {
    let (mut heat, mut scale) = (0, 0);
    for number in 0..160 {
        for id in ["tempering", "hydrogen", "kettle"] {
            let entry = REGISTER.iter().find(|entry| entry.about.id == id).unwrap();
            let topic = Topic::Calculator(entry);
            let exercise = set(&topic, Level::Whole, Units::Metric, &mut Random::new(number)).unwrap();
            let question = &exercise.questions[0];
            let Sought::Figure(right, slips) = &question.sought else { continue };
            let given = |of: &[&str]| {
                exercise.givens.iter().any(|(_, text)| of.iter().any(|unit| text.ends_with(unit)))
            };
            for slip in slips {
                let named = matches!(mark(question, &slip.value.to_string()), Marked::Slip(name) if name == slip.name);
                if slip.name == "°F was read as °C" && given(&["°F"]) {
                    heat += 1;
                    assert!(named, "{}", question.text);
                }
                if slip.name.contains("was not converted") && slip.value.unit == right.unit {
                    scale += 1;
                    assert!(named && given(&["HRC", "HV", "HB", "HRB"]), "{}", question.text);
                }
            }
        }
    }
    println!("{heat} with °F, {scale} on another scale");
    assert!(heat > 5 && scale > 5, "{heat} {scale}");
}
