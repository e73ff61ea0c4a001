//! Coursework: sheets, answers, lessons, and the lines of a class.

use super::{ends, program};

#[test]
fn a_sheet_is_printed_and_its_answers_beside_it() {
    let fields = ["course", "number=42", "from=coat life", "count=4", "level=whole-task"];
    let (sheet, err) = ends(&fields, 0);
    assert!(sheet.starts_with("Sheet 42: 4 exercises, a whole task, from coat life, metric\n"), "{sheet}");
    assert_eq!(sheet.matches("  Question ").count(), 4, "{sheet}");
    assert_eq!((ends(&fields, 0).0, err.as_str()), (sheet.clone(), ""));
    let (answers, _) = ends(&[&fields[..], &["--answers"]].concat(), 0);
    assert_eq!(answers.matches("  Answer ").count(), 4, "{answers}");
    // The system is a part of the sheet: by the option or by its field the same, and the field counts.
    let field = ends(&[&fields[..], &["units=inch"]].concat(), 0).0;
    assert!(field.starts_with("Sheet 42: 4 exercises, a whole task, from coat life, inch\n"), "{field}");
    assert_eq!(ends(&[&["--units", "inch"], &fields[..]].concat(), 0).0, field);
    assert_eq!(ends(&[&["--units", "inch"], &fields[..], &["units=metric"]].concat(), 0).0, sheet);
    let (_, err) = ends(&["course", "from=rust"], 1);
    assert!(err.contains("“rust” is not one of the choices"), "{err}");
    let (_, err) = ends(&["course", "colour=red"], 2);
    assert!(err.contains("is no field of a sheet"), "{err}");
}

#[test]
fn lessons_are_listed_and_printed() {
    let (names, _) = ends(&["course", "--lesson"], 0);
    assert!(names.contains("  four-times: Why four times"), "{names}");
    let (lesson, _) = ends(&["course", "--lesson", "four-times"], 0);
    assert!(lesson.contains("14.653") && !lesson.contains('{'), "{lesson}");
    assert!(ends(&["course", "--lesson", "rust"], 2).1.contains("There is no lesson"));
}

#[test]
fn the_lines_of_a_class_are_marked() {
    use kettle_barrel::course::{Question, Setup, Sheet, handed_in};
    let draft = [("number", "9"), ("from", "coat"), ("count", "3")].into_iter().collect();
    let sheet = Sheet::of(&Setup::read(&draft).unwrap());
    let right: Vec<String> = sheet.questions().map(Question::right).collect();
    let line = handed_in::line(&sheet, "B. Dipper", right.iter().map(String::as_str));
    let marked =
        program(&["course", "--mark", "-"]).write_stdin(line.clone()).assert().code(0).get_output().clone();
    let table = String::from_utf8(marked.stdout).unwrap();
    assert!(table.ends_with("B. Dipper\t9, one-step, coat, 3, metric\t3/3\t3/3\tintact\n"), "{table}");
    let changed = line.replace("B. Dipper", "C. Dipper");
    let marked =
        program(&["course", "--mark", "-"]).write_stdin(changed).assert().code(1).get_output().clone();
    assert!(String::from_utf8(marked.stdout).unwrap().ends_with("changed\n"));
}
