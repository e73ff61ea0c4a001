//! What an entry is called, what its line was, what it answers.

use super::Entry;
use crate::order;
use crate::process::Process;

fn of(address: &str) -> Entry {
    Entry { name: String::new(), saved: String::new(), verdicts: Vec::new(), address: address.to_owned() }
}

const WHOLE: &str =
    "1/order?part=hex-bolt&thread=M16&length=60+mm&quantity=100&steel=8.8&place=C3&years=15+years";

#[test]
fn an_entry_is_called_by_its_name_then_by_its_line_then_by_its_fields() {
    let named = Entry { name: "Bridge".to_owned(), ..of("1/order?line=M16+x+60") };
    assert_eq!(named.title(), "Bridge");
    let written = of("1/order?line=M16+x+60");
    assert_eq!((written.title().as_str(), written.line().as_deref()), ("M16 x 60", Some("M16 x 60")));
    for no_line in ["1/order?line=+", "1/order?line=", "1/order"] {
        assert_eq!(of(no_line).line(), None, "{no_line}");
        assert_eq!(of(no_line).title(), order::ABOUT.title, "{no_line}");
    }
    let fields = of(WHOLE).title();
    // The bath is the usual one, and nobody has said so.
    assert!(fields.contains("M16") && fields.contains("60 mm") && !fields.contains("°F"), "{fields}");
    assert_eq!(of("1/no-such-view?x=1").title(), "no-such-view");
    assert_eq!(of("1/order").kind(), order::ABOUT.title);
    assert_eq!(of("1/no-such-view").kind(), "");
}

/// The answer is that of the order: what to take first.
#[test]
fn an_entry_answers_by_the_rules_of_today() {
    let answer = of(WHOLE).answer().expect("a whole order");
    assert_eq!(answer.recommended, Some(Process::HotDip));
    assert!(answer.text.starts_with("Take hot-dip to ISO 10684"), "{}", answer.text);
    let solved = of("1/coat?coat=50+%C2%B5m").answer().expect("a coat");
    assert!(solved.recommended.is_none() && solved.text == solved.order && solved.text.starts_with("50.0"));
    for missing in ["1/order?thread=x", "1/coat?coat=x", "1/no-such-view"] {
        assert!(of(missing).answer().is_none(), "{missing}");
    }
}

#[test]
fn the_sheets_of_a_calculation_name_it() {
    assert_eq!(of("1/order?thread=M16").sheets(), "1/sheet?thread=M16");
    assert_eq!(of("1/coat?coat=50").sheets(), "1/sheet?of=coat&coat=50");
    assert_eq!(of("1/coat").sheets(), "1/sheet?of=coat&");
}
