//! What can be asked.

use std::ffi::OsString;
use std::process::ExitCode;

use clap::builder::PossibleValuesParser;
use clap::{Arg, ArgAction, ArgMatches, Command, value_parser};
use clap_complete::Shell;
use kettle_barrel::calculator::{About, Draft, Entry, FieldAbout, REGISTER, Reader, When, find};
use kettle_barrel::order;
use kettle_barrel::quantity::Units;
use kettle_barrel::sheet::{self, Heading, JOB};

use super::answer::{self, Answer, NotUsed, Request};
use super::course;
use super::input::{help, standard_input};
use super::list;
use super::output::{self, Output};
use super::sources;

/// Answers the arguments of the program, and says how it ends.
pub fn run(arguments: impl IntoIterator<Item = OsString>) -> ExitCode {
    let mut command = command();
    match command.try_get_matches_from_mut(arguments) {
        Ok(matches) => match matches.subcommand() {
            // A list is written as it is read; every other answer is whole before it is written.
            Some(("list", asked)) => list::run(asked, matches.get_flag("json"), units(&matches)),
            _ => output::write(answer(&mut command, &matches)),
        },
        Err(error) => {
            let text = error.render().ansi().to_string();
            output::write(if error.use_stderr() { Output::misused(text) } else { Output::answer(text) })
        }
    }
}

fn answer(command: &mut Command, matches: &ArgMatches) -> Output {
    match answered(command, matches) {
        Ok(output) => output,
        Err(problem) => Output::misused(format!("{problem}\n")),
    }
}

fn units(matches: &ArgMatches) -> Units {
    Units::of_key(matches.get_one::<String>("units").map_or("", String::as_str))
}

fn answered(command: &mut Command, matches: &ArgMatches) -> Result<Output, String> {
    let Some((name, asked)) = matches.subcommand() else {
        return Ok(Output::answer(command.render_help().ansi().to_string()));
    };
    let json = matches.get_flag("json");
    let units = units(matches);
    let words = || asked.get_many::<String>("words").unwrap_or_default().map(String::as_str);
    match name {
        "order" => Ok(order_line(words().collect::<Vec<_>>())?.in_units(units).output(json)),
        "sheet" | "reply" => Ok(paper(name, asked, words().collect(), units)?.output(json)),
        "course" => course::run(asked, json, units),
        "sources" if json => {
            let (document, rests) = sources::rests(words())?;
            let answer = Answer::to(Request::Sources { document }, Draft::default());
            Ok(Answer { sources: Some(rests), ..answer }.output(true))
        }
        "sources" => sources::run(words()),
        "schema" => Ok(Output::answer(answer::SCHEMA.to_owned())),
        "completions" => {
            let shell = *asked.get_one::<Shell>("shell").ok_or("Name a shell.")?;
            let mut script = Vec::new();
            clap_complete::generate(shell, command, NAME, &mut script);
            Ok(Output::answer(String::from_utf8_lossy(&script).into_owned()))
        }
        "man" => {
            let page = match asked.get_one::<String>("command") {
                Some(name) => command.find_subcommand(name).ok_or("There is no such command.")?.clone(),
                None => command.clone(),
            };
            let mut text = Vec::new();
            clap_mangen::Man::new(page).render(&mut text).map_err(|problem| problem.to_string())?;
            Ok(Output::answer(String::from_utf8_lossy(&text).into_owned()))
        }
        _ => {
            let entry = find(name).ok_or_else(|| format!("There is no calculator “{name}”."))?;
            Ok(calculator(entry, words())?.in_units(units).output(json))
        }
    }
}

/// Assesses one written order line; `-` reads it from standard input.
fn order_line(words: Vec<&str>) -> Result<Answer, String> {
    let is_option = |word: &&&str| {
        word.strip_prefix("--").is_some_and(|name| name.starts_with(|c: char| c.is_ascii_alphabetic()))
    };
    if let Some(option) = words.iter().find(is_option) {
        return Err(format!(
            "“{option}” stands behind the line, whose words are the order; write it before the line."
        ));
    }
    let line = if words == ["-"] { standard_input()? } else { words.join(" ") };
    let reading = order::reading::read(&line);
    let (order, problems) = match order::assess_written(&reading.draft, reading.has_open_words()) {
        Ok(order) => (Some(order), None),
        Err(problems) => (None, Some(problems)),
    };
    let not_used = reading.not_used();
    let not_used =
        not_used.map(|(text, why)| NotUsed { text: text.to_owned(), why: why.to_owned() }).collect();
    let read = Some(reading.to_string());
    Ok(Answer { order, problems, not_used, read, ..Answer::to(Request::Order { line }, reading.draft) })
}

/// A sheet of one written order line, or the reply to whoever wrote it.
fn paper(name: &str, asked: &ArgMatches, words: Vec<&str>, units: Units) -> Result<Answer, String> {
    let mut answer = order_line(words)?;
    let Request::Order { line } = &answer.request else { return Ok(answer) };
    let text = |name: &str| asked.try_get_one::<String>(name).ok().flatten().cloned().unwrap_or_default();
    let heading = Heading {
        number: text("number"),
        name: text("name"),
        date: text("date"),
        line: line.clone(),
        units,
        ..Heading::default()
    };
    answer.order = None;
    let has_open_words = order::reading::read(line).has_open_words();
    let Ok(assessed) = order::assessed_written(&answer.fields, has_open_words) else { return Ok(answer) };
    if name == "reply" {
        answer.reply = Some(sheet::reply::reply(&assessed, &heading));
        return Ok(answer);
    }
    let key = text("which");
    let offered = sheet::of_order(&assessed);
    if !offered.iter().any(|offered| offered.key == key) {
        let keys: Vec<&str> = offered.iter().map(|offered| offered.key.as_str()).collect();
        return Err(format!("The order has no sheet “{key}”; it has {}.", keys.join(", ")));
    }
    match sheet::order_sheet(&assessed, &key, &heading) {
        Ok(sheet) => answer.sheet = Some(sheet),
        Err(problems) => answer.problems = Some(problems),
    }
    Ok(answer)
}

/// Runs a calculator with `name=text`; the text `-` is read from standard input.
fn calculator<'a>(entry: &Entry, words: impl Iterator<Item = &'a str>) -> Result<Answer, String> {
    let fields = entry.about.fields;
    let mut draft = Draft::default();
    for word in words {
        let pair = word.split_once('=').filter(|(name, _)| fields.iter().any(|field| field.key == *name));
        let Some((name, text)) = pair else {
            let id = entry.about.id;
            return Err(format!(
                "“{word}” is no field of {id}; write name=text with one of:\n{}",
                help(fields)
            ));
        };
        if draft.get(name).is_some() {
            return Err(format!("“{name}” is given twice; give it once."));
        }
        if text == "-" {
            draft.set(name, standard_input()?);
        } else {
            draft.set(name, text);
        }
    }
    let (report, problems) = match entry.evaluate(&draft) {
        Ok(report) => (Some(report), None),
        Err(problems) => (None, Some(problems)),
    };
    let not_used = not_asked(fields, &draft);
    Ok(Answer { report, problems, not_used, ..Answer::to(Request::Calculator { id: entry.about.id }, draft) })
}

/// The fields that were given and are not asked, as the others stand: they change nothing, and that is said.
fn not_asked(fields: &'static [FieldAbout], draft: &Draft) -> Vec<NotUsed> {
    let reader = Reader::new(fields, draft);
    let given = fields.iter().filter_map(|field| Some((field, draft.get(field.key)?)));
    given
        .filter(|(field, _)| !reader.asked(field))
        .map(|(field, text)| {
            let why = match field.when {
                When::Always => String::new(),
                When::Is(key, keys) => format!("asked only with {key}={}", keys.join(" or ")),
            };
            NotUsed { text: format!("{}={text}", field.key), why }
        })
        .collect()
}

const NAME: &str = "kettle-barrel";

fn command() -> Command {
    let words = |name: &'static str, help: &'static str| {
        Arg::new("words").value_name(name).help(help).num_args(0..).action(ArgAction::Append)
    };
    let line = || {
        words("LINE", "The line as it is written, or - to read it from standard input")
            .required(true)
            .allow_hyphen_values(true)
    };
    let order = Command::new("order")
        .about(order::ABOUT.answers)
        .arg(line())
        .after_help("kettle-barrel order \"M20 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years\"");
    let said = |name: &'static str, help: &'static str| {
        Arg::new(name).long(name).value_name("TEXT").help(help).default_value("")
    };
    let sheet = Command::new("sheet")
        .about("Prints a sheet of an order line: what to order, what to prove, what to gauge and to measure")
        .arg(
            said("which", "Which sheet of the order: job, record, run-barrel, run-kettle, working-…")
                .default_value(JOB),
        )
        .arg(said("number", "The number of the order"))
        .arg(said("name", "The name of the order"))
        .arg(said("date", "The date of the sheet"))
        .arg(line());
    let reply = Command::new("reply")
        .about("Prints the reply to whoever sent an order line, in plain sentences")
        .arg(said("number", "The number of the order"))
        .arg(line());
    let calculators = REGISTER.iter().map(|Entry { about, .. }: &Entry| {
        let About { id, answers, fields, .. } = *about;
        Command::new(id)
            .about(answers)
            .arg(words("FIELD=TEXT", "A field and what stands in it; the text - is read from standard input"))
            .after_help(format!("Fields, with what they take and their default:\n{}", help(fields)))
    });
    let names = ["order", "list", "sheet", "reply", "course", "sources"]
        .into_iter()
        .chain(REGISTER.iter().map(|entry| entry.about.id));
    let page = Arg::new("command")
        .help("The command it is about; none for the program")
        .value_parser(PossibleValuesParser::new(names));
    Command::new(NAME)
        .version(env!("CARGO_PKG_VERSION"))
        .about("Which zinc finish suits threaded fasteners, what fits, and how every number came about")
        .disable_help_subcommand(true)
        .arg(
            Arg::new("json")
                .long("json")
                .global(true)
                .action(ArgAction::SetTrue)
                .help("Answers in JSON, in the shape that the command schema prints"),
        )
        .arg(
            Arg::new("units")
                .long("units")
                .global(true)
                .value_name("SYSTEM")
                .value_parser(PossibleValuesParser::new(Units::ALL.map(Units::key)))
                .default_value(Units::default().key())
                .help("Units of everything shown but the working, which keeps those of its formulas"),
        )
        .subcommand(order)
        .subcommand(sheet)
        .subcommand(reply)
        .subcommand(list::command())
        .subcommands(calculators)
        .subcommand(course::command())
        .subcommand(sources::command())
        .subcommand(Command::new("schema").about("Prints the JSON schema of an answer"))
        .subcommand(
            Command::new("completions")
                .about("Prints a script that completes commands in a shell")
                .arg(Arg::new("shell").required(true).value_parser(value_parser!(Shell))),
        )
        .subcommand(Command::new("man").about("Prints a manual page").arg(page))
        .after_help(
            "It ends with 0 where everything was understood and answered, with 1 where something was not, with 2 \
             where it was called wrongly, and with 3 where the answer could not be written.",
        )
}

#[cfg(test)]
mod tests {
    #[test]
    fn the_commands_agree_with_each_other() {
        super::command().debug_assert();
    }
}
