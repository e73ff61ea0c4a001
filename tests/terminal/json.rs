//! The answers for programs keep the shape that the schema states.

use kettle_barrel::calculator::REGISTER;
use serde_json::Value;

use super::{ORDER, ends};

fn schema() -> Value {
    serde_json::from_str(&ends(&["schema"], 0).0).unwrap()
}

fn answer(arguments: &[&str], code: i32) -> Value {
    let arguments: Vec<&str> = ["--json"].iter().chain(arguments).copied().collect();
    let (out, err) = ends(&arguments, code);
    assert_eq!(err, "", "{arguments:?}");
    serde_json::from_str(&out).unwrap()
}

#[test]
fn every_answer_keeps_the_schema() {
    let schema = jsonschema::validator_for(&schema()).unwrap();
    let keeps = |answer: &Value| {
        let faults: Vec<String> =
            schema.iter_errors(answer).map(|fault| format!("{}: {fault}", fault.instance_path())).collect();
        assert!(faults.is_empty(), "{:#?}\n{answer:#}", faults);
    };
    keeps(&answer(&["order", ORDER], 0));
    keeps(&answer(&["order", "M20 x 90 hex bolt purple"], 1));
    keeps(&answer(&["order", "nothing at all"], 1));
    keeps(&answer(&["sheet", ORDER], 0));
    keeps(&answer(&["reply", ORDER], 0));
    keeps(&answer(&["coat", "coat=five"], 1));
    for level in ["one-step", "whole-task", "find-the-error"] {
        let fields = ["course", "number=3", "count=14", &format!("level={level}")];
        keeps(&answer(&fields, 0));
        keeps(&answer(&[&fields[..], &["--answers"]].concat(), 0));
    }
    keeps(&answer(&["course", "from=rust"], 1));
    keeps(&answer(&["course", "--lesson"], 0));
    keeps(&answer(&["sources"], 0));
    keeps(&answer(&["sources", "ASTM", "B695"], 0));
    keeps(&summary().0);
    keeps(&answer(&["course", "--lesson", "four-times"], 0));
    for entry in REGISTER {
        for example in entry.about.examples {
            let pairs = example.pairs.iter().map(|(name, text)| format!("{name}={text}"));
            let arguments: Vec<String> = [entry.about.id.to_owned()].into_iter().chain(pairs).collect();
            keeps(&answer(&arguments.iter().map(String::as_str).collect::<Vec<_>>(), 0));
        }
    }
}

#[test]
fn a_program_finds_what_the_text_says() {
    let answer = answer(&["order", &format!("{ORDER}, purple")], 1);
    assert_eq!(answer["format"], "kettle-barrel/1");
    assert_eq!(answer["not_used"][0]["text"], "purple");
    assert_eq!(answer["fields"]["thread"], "M20");
    let text = ends(&["order", ORDER], 0).0;
    for process in answer["order"]["processes"].as_array().unwrap() {
        let [name, verdict] = ["process", "verdict"].map(|key| process[key].as_str().unwrap());
        let name = match name {
            "hot-dip" => "Hot-dip",
            "mechanical" => "Mechanical",
            _ => "Electroplating",
        };
        let words = match verdict {
            "suits" => "suits",
            "on-conditions" => "suits on conditions",
            _ => "ruled out",
        };
        assert!(text.contains(&format!("\n{name}: {words}\n")), "{name}: {words}\n{text}");
    }
}

#[test]
fn a_sheet_of_exercises_is_data_and_keeps_its_answers_back() {
    let fields = ["course", "number=42", "from=coat life", "count=4"];
    let sheet = &answer(&fields, 0)["course"]["sheet"];
    let exercises = sheet["exercises"].as_array().unwrap();
    assert_eq!(exercises.len(), 4);
    assert!(exercises.iter().all(|exercise| exercise["questions"][0]["answer"].is_null()), "{sheet:#}");
    let text = ends(&[&fields[..], &["--answers"]].concat(), 0).0;
    let answers = answer(&[&fields[..], &["--answers"]].concat(), 0);
    for exercise in answers["course"]["sheet"]["exercises"].as_array().unwrap() {
        let question = &exercise["questions"][0];
        let line =
            format!("  Answer {}: {}\n", question["number"], question["answer"]["right"].as_str().unwrap());
        assert!(text.contains(&line), "{line}{text}");
    }
    let marked =
        super::program(&["--json", "course", "--mark", "-"]).write_stdin("KB2 | no line").assert().code(1);
    let marks: Value = serde_json::from_slice(&marked.get_output().stdout).unwrap();
    assert_eq!(marks["course"]["marks"][0]["line"], "unread");
}

#[test]
fn a_number_is_exact_and_as_it_is_shown() {
    let coat = answer(&["coat", "coat=50 µm", "factor=a123"], 0);
    let figures = coat["report"]["figures"].as_array().unwrap();
    let mass = figures.iter().find(|figure| figure["value"]["unit"] == "g/m²").unwrap();
    approx::assert_relative_eq!(mass["value"]["number"].as_f64().unwrap(), 353.35, max_relative = 1e-12);
    assert_eq!(mass["value"]["shown"], "353.4\u{a0}g/m²");
}

#[test]
fn what_is_wrong_is_told_by_field() {
    let coat = answer(&["coat", "coat=five"], 1);
    assert_eq!(coat["report"], Value::Null);
    assert_eq!(coat["problems"][0]["field"], "coat");
    assert!(coat["problems"][0]["text"].as_str().unwrap().contains("“five” is not a number"));
}

/// The summary of a list of three lines, and how the program ended.
fn summary() -> (Value, String) {
    let list = "part,thread,steel,quantity,remark\nhex bolt,M16,8.8,400,urgent\nhex bolt,M20,10.9,100,\nnothing,,,,\n";
    let mut program = super::program(&["--json", "list", "--summary", "-"]);
    let ended = program.write_stdin(list).assert().code(1);
    let [out, err] = [&ended.get_output().stdout, &ended.get_output().stderr];
    (serde_json::from_slice(out).unwrap(), String::from_utf8_lossy(err).into_owned())
}

#[test]
fn the_summary_of_a_list_is_data() {
    let (answer, err) = summary();
    assert_eq!(err, "");
    assert_eq!(answer["asked"]["summary"]["file"], "-");
    let summary = &answer["summary"];
    assert_eq!((summary["assessed"].as_u64(), summary["problems"].as_u64()), (Some(2), Some(1)));
    assert_eq!(summary["left_out"], serde_json::json!(["remark"]));
    let table = &summary["tables"][0];
    assert_eq!(table["heading"][1], "suits");
    assert_eq!(table["rows"].as_array().unwrap().len(), 3);
}

/// As data the sources say what they say as text.
#[test]
fn the_sources_are_data() {
    let all = answer(&["sources"], 0);
    let text = ends(&["sources"], 0).0;
    let all = all["sources"].as_array().unwrap();
    assert_eq!(all.len(), text.lines().count() - 2);
    let one = answer(&["sources", "ASTM B695"], 0);
    let one = &one["sources"][0];
    assert_eq!(one["document"], "ASTM B695");
    let text = ends(&["sources", "ASTM B695"], 0).0;
    let told = one["taken"].as_array().unwrap().len() + one["rules"].as_array().unwrap().len();
    assert_eq!(told, text.lines().count() - 2);
    assert!(told > 10);
}
