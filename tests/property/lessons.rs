//! Lessons: every number is found when it is shown, and none is written by hand.

use kettle_barrel::calculator::{Draft, find};
use kettle_barrel::course::lesson::{Block, LESSONS};

/// Names of standards, of classes of thread and of property classes: no calculator gives them.
const NAMES: [&str; 7] = ["6AZ", "6AX", "8.8", "10.9", "A153", "B633", "10684"];

#[test]
fn a_lesson_is_whole() {
    assert!(LESSONS.len() >= 12);
    for lesson in &LESSONS {
        let page = lesson.page();
        assert_eq!(page.missing, [""; 0], "{}", lesson.key);
        assert!(page.picture.is_some(), "{}", lesson.key);
        assert_eq!(
            page.exercise.as_ref().map(|exercise| exercise.questions.is_empty()),
            Some(false),
            "{}",
            lesson.key
        );
        assert!(page.blocks.iter().any(|block| matches!(block, Block::Step(_))), "{}", lesson.key);
        assert!(!page.opens.is_empty());
        for link in &page.opens {
            let entry = find(link.calculator).unwrap();
            assert!(entry.evaluate(&Draft::from(link)).is_ok(), "{}: {link:?}", lesson.key);
        }
        // Five minutes: a student reads some two hundred words a minute, and looks at numbers for longer.
        let words = page.to_string().split_whitespace().count();
        assert!((200..900).contains(&words), "{}: {words} words", lesson.key);
    }
}

#[test]
fn no_lesson_states_a_number_by_hand() {
    for lesson in &LESSONS {
        let mut outside = String::new();
        for (at, piece) in lesson.body().split('{').enumerate() {
            let written = if at == 0 { piece } else { piece.split_once('}').unwrap().1 };
            outside.push_str(written);
        }
        for line in outside.lines().filter(|line| !line.starts_with("= ")) {
            for word in line.split_whitespace().filter(|word| word.contains(|c: char| c.is_ascii_digit())) {
                let bare = word.trim_matches(|c: char| !c.is_alphanumeric());
                assert!(NAMES.contains(&bare), "{}: “{word}” stands in: {line}", lesson.key);
            }
        }
    }
}
