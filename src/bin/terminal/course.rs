//! Coursework in the terminal: a sheet, its answers, lessons, and the result lines of a class.

use clap::{Arg, ArgAction, ArgMatches, Command};
use kettle_barrel::calculator::Draft;
use kettle_barrel::course::handed_in::{self, State};
use kettle_barrel::course::lesson::{LESSONS, lesson_of};
use kettle_barrel::course::{self, ABOUT, SHEET_FIELDS, Setup, Sheet};
use kettle_barrel::quantity::Units;

use super::answer::{Answer, Request};
use super::coursework::Coursework;
use super::input::{help, standard_input};
use super::output::{Code, Output};

/// The command.
pub fn command() -> Command {
    Command::new(ABOUT.id)
        .about("Prints a sheet of exercises or its answers, a lesson, or the marks of a class")
        .arg(
            Arg::new("words")
                .value_name("FIELD=TEXT")
                .help("A field of the sheet and what stands in it")
                .num_args(0..)
                .action(ArgAction::Append),
        )
        .arg(
            Arg::new("answers")
                .long("answers")
                .action(ArgAction::SetTrue)
                .help("Prints the answers with their workings instead of the sheet"),
        )
        .arg(
            Arg::new("mark")
                .long("mark")
                .value_name("FILE")
                .conflicts_with_all(["answers", "lesson"])
                .help("Marks the result lines in a file, or in standard input with -"),
        )
        .arg(
            Arg::new("lesson")
                .long("lesson")
                .value_name("LESSON")
                .num_args(0..=1)
                .default_missing_value("")
                .conflicts_with("answers")
                .help("Prints a lesson; without a name, their names"),
        )
        .after_help(format!(
            "The same fields make the same sheet everywhere. Fields, with what they take and their default:\n{}",
            help(&SHEET_FIELDS)
        ))
}

/// Answers the command.
///
/// # Errors
/// What was wrong with the call.
pub fn run(asked: &ArgMatches, json: bool, units: Units) -> Result<Output, String> {
    if let Some(file) = asked.get_one::<String>("mark") {
        let text = if file == "-" {
            standard_input()?
        } else {
            std::fs::read_to_string(file).map_err(|problem| format!("“{file}” cannot be read: {problem}."))?
        };
        return Ok(marks(&text, json));
    }
    if let Some(name) = asked.get_one::<String>("lesson") {
        let names = || LESSONS.iter().map(|lesson| format!("  {}: {}\n", lesson.key, lesson.title()));
        let as_json = |course| {
            let lesson = Some(name.clone()).filter(|name| !name.is_empty());
            let asked = Request::Course { lesson };
            Answer { course: Some(course), ..Answer::to(asked, Draft::default()) }.output(true)
        };
        if name.is_empty() && json {
            return Ok(as_json(Coursework::lessons()));
        }
        if name.is_empty() {
            return Ok(Output::answer(names().collect()));
        }
        let lesson = lesson_of(name).ok_or_else(|| {
            format!("There is no lesson “{name}”. The lessons:\n{}", names().collect::<String>())
        })?;
        if json {
            return Ok(as_json(Coursework::lesson(lesson)));
        }
        return Ok(Output::answer(lesson.page().to_string()));
    }
    let mut draft = Draft::default();
    for word in asked.get_many::<String>("words").unwrap_or_default() {
        let pair =
            word.split_once('=').filter(|(name, _)| SHEET_FIELDS.iter().any(|field| field.key == *name));
        let Some((name, text)) = pair else {
            return Err(format!(
                "“{word}” is no field of a sheet; write name=text with one of:\n{}",
                help(&SHEET_FIELDS)
            ));
        };
        draft.set(name, text);
    }
    // What is written in the field counts.
    if units != Units::AsPrinted && draft.get("units").is_none() {
        draft.set("units", units.key());
    }
    let setup = course::read(&draft);
    if json {
        let answers = asked.get_flag("answers");
        let course = setup.as_ref().ok().map(|setup| Coursework::sheet(&Sheet::of(setup), answers));
        let fields = setup.as_ref().map_or(draft, Setup::write);
        let answer = Answer::to(Request::Course { lesson: None }, fields);
        return Ok(Answer { course, problems: setup.err(), ..answer }.output(true));
    }
    match setup {
        Ok(setup) => {
            let sheet = Sheet::of(&setup);
            let text = if asked.get_flag("answers") { sheet.answers() } else { sheet.to_string() };
            Ok(Output::answer(text))
        }
        Err(problems) => {
            Ok(Output { text: String::new(), problems: format!("{problems}\n"), code: Code::NotUnderstood })
        }
    }
}

/// One line a student; a line that was changed, or is none, sets the code.
fn marks(text: &str, json: bool) -> Output {
    let lines = handed_in::read(text);
    let row = |line: &handed_in::HandedIn| {
        let marked = line.score.map_or_else(|| "-".to_owned(), |(right, of)| format!("{right}/{of}"));
        format!("{}\t{}\t{}\t{marked}\t{}\n", line.name, line.sheet, line.stated, line.state.words())
    };
    let table = lines.iter().map(row).collect::<String>();
    let whole = lines.iter().all(|line| line.state == State::Intact);
    let code = if whole { Code::Answered } else { Code::NotUnderstood };
    if json {
        let answer = Answer::to(Request::Course { lesson: None }, Draft::default());
        let output = Answer { course: Some(Coursework::marks(&lines)), ..answer }.output(true);
        return Output { code, ..output };
    }
    let text = format!("name\tsheet\tstated\tmarked anew\tline\n{table}");
    Output { text, problems: String::new(), code }
}
