//! What happens to the page, tried without one.

use super::*;
use crate::order::reading::Segment;

fn opened(address: &str) -> State {
    State::at(address, Settings::default())
}

fn text<'a>(state: &'a State, name: &str) -> &'a str {
    let desk = state.desk().unwrap();
    &desk.form.entries().find(|(field, _)| field.key == name).unwrap().1.text
}

fn typed(line: &str) -> State {
    opened("").after(Action::WriteLine(line.to_owned()))
}

/// The words of the line that were not used.
fn not_used(state: &State) -> Vec<&str> {
    fn of(segment: &Segment) -> Option<&str> {
        match segment {
            Segment::NotUsed { text, .. } => Some(text),
            _ => None,
        }
    }
    state.line.sentence.iter().filter_map(of).collect()
}

#[test]
fn it_opens_on_an_order_line_in_which_nothing_stands() {
    let state = opened("");
    assert_eq!(state.view, View::Order);
    assert!(!state.order.is_touched());
    for name in ["part", "thread", "length", "quantity", "steel", "place", "years"] {
        assert_eq!(text(&state, name), "", "{name}");
    }
    assert_eq!(state.address().to_string(), "1/order");
    assert!(state.notice.is_empty());
}

#[test]
fn a_source_leads_to_its_document_and_an_unknown_one_is_named() {
    let one = opened("1/sources?of=ASTM+B695");
    assert_eq!(
        (one.view.title(), one.address().to_string().as_str()),
        ("ASTM B695", "1/sources?of=ASTM+B695")
    );
    assert!(one.notice.is_empty());
    let unknown = opened("1/sources?of=ASTM+B6950");
    assert_eq!((unknown.view, unknown.notice.is_empty()), (View::Sources(None), false));
    assert!(unknown.notice.words.iter().any(|word| word.contains("ASTM B6950")), "{:?}", unknown.notice);
    for document in document::ALL {
        let draft = [(OF, document.name)].into_iter().collect();
        assert_eq!(opened(&Address::new("sources", draft).to_string()).view.document(), Some(*document));
    }
}

#[test]
fn every_example_line_is_read_whole_and_is_assessed() {
    for line in EXAMPLES {
        let state = typed(line);
        assert_eq!(not_used(&state), [""; 0], "{line}");
        let assessment = order::assess(&state.order.form.draft());
        assert!(assessment.is_ok(), "{line}: {assessment:?}");
    }
}

#[test]
fn a_line_asks_for_what_it_does_not_say_and_taken_back_gives_the_fields_back() {
    let state = opened("").after(Action::Write("quantity", "77".to_owned()));
    let state = state.after(Action::WriteLine("M24 x 120 hex bolt, C3".to_owned()));
    assert_eq!((text(&state, "thread"), text(&state, "quantity")), ("M24", ""));
    let state = state.after(Action::WriteLine(String::new()));
    assert_eq!((text(&state, "thread"), text(&state, "quantity")), ("", "77"));
}

#[test]
fn a_link_brings_back_the_line_and_the_fields_that_were_changed_after_it() {
    let state = typed("M24 x 120 hex bolt, 12.9, 96 pcs, C3, by Friday");
    let state = state.after(Action::Write("quantity", "97".to_owned()));
    let again = opened(&format!("#{}", state.address()));
    assert_eq!(again.line.text, "M24 x 120 hex bolt, 12.9, 96 pcs, C3, by Friday");
    assert_eq!(not_used(&again), ["by", "Friday"]);
    assert_eq!(text(&again, "quantity"), "97");
    assert_eq!(again.order.form.draft(), state.order.form.draft());
    assert!(again.notice.is_empty());
    assert_eq!(again.address(), state.address());
}

#[test]
fn a_bare_name_opens_a_calculator_without_a_complaint_and_without_a_result() {
    for address in ["#coat", "coat", "#1/coat"] {
        let state = opened(address);
        assert_eq!(state.view.key(), "coat", "{address}");
        assert!(state.notice.is_empty(), "{address}");
        assert!(!state.desk().unwrap().is_touched(), "{address}");
    }
}

#[test]
fn words_of_a_link_are_never_said_by_the_page() {
    let lies = [
        "#1/Call+us+at+once",
        "#1/coat?Call+us+at+once=now",
        "#Call%20us%20at%20once/coat?coat=1",
        "#1/coat?coat=Call+us+at+once&coat=1+mil",
        "#1/coat?Call+us+at+once%ZZ=2",
        "#1/coat?coat=%ZZ",
    ];
    for address in lies {
        let notice = opened(address).notice;
        assert!(!notice.is_empty(), "{address}");
        let said = notice.said.join(" ");
        assert!(!said.contains("Call") && !said.contains("once"), "{address}: {said}");
        assert_eq!(notice.words.is_empty(), !address.contains("Call"), "{address}");
    }
}

#[test]
fn a_name_given_twice_is_said() {
    let state = opened("#1/coat?coat=50+%C2%B5m&factor=a123&coat=1+mil");
    assert_eq!(text(&state, "coat"), "1");
    assert_eq!(state.notice.said.len(), 1);
    assert!(state.notice.said[0].contains("stands twice"), "{:?}", state.notice.said);
    assert_eq!(state.notice.words, ["coat: 50 µm"]);
}

#[test]
fn the_way_back_leads_to_the_reason_once() {
    let state = typed(EXAMPLES[0]).after(Action::LeaveAt("hot-dip-0".to_owned()));
    let state = state.after(Action::Open("#1/coat?coat=50+%C2%B5m".to_owned()));
    assert_eq!(state.left_at.as_deref(), Some("hot-dip-0"));
    let back = state.address_of(View::Order).to_string();
    let state = state.after(Action::Open(format!("#{back}")));
    assert_eq!(state.left_at.as_deref(), Some("hot-dip-0"));
    assert_eq!(state.line.text, EXAMPLES[0]);
    let state = state.after(Action::Open("#1/calculators".to_owned()));
    assert_eq!(state.left_at, None);
}

#[test]
fn an_example_is_chosen_and_cleared() {
    let state = opened("#coat").after(Action::TakeExample(0));
    assert!(state.desk().unwrap().is_touched());
    assert_eq!(state.desk().unwrap().example, Some(0));
    let state = state.after(Action::Clear);
    assert!(!state.desk().unwrap().is_touched());
}

#[test]
fn units_once_chosen_are_those_of_the_empty_fields() {
    let state = opened("#coat").after(Action::Use(Units::Inch));
    let unit = |state: &State| {
        let desk = state.desk().unwrap();
        desk.form.entries().find(|(field, _)| field.key == "coat").unwrap().1.unit.unwrap().symbol
    };
    assert_eq!(unit(&state), "mil");
    let state = state.after(Action::Write("coat", "2".to_owned())).after(Action::Use(Units::Metric));
    assert_eq!(unit(&state), "mil", "what was typed keeps its unit");
    assert!(!opened("").after(Action::Use(Units::Inch)).order.is_touched());
}

#[test]
fn the_line_as_read_follows_the_fields() {
    let read = |state: &State| {
        let segments = state.line.as_read(&state.order.form);
        let said = segments.iter().map(|segment| match segment {
            Segment::Used { text, .. } => text.clone(),
            Segment::NotUsed { text, .. } => format!("-{text}"),
            Segment::Which { text, .. } => format!("?{text}"),
            Segment::NotSaid { label, .. } => format!("!{label}"),
        });
        said.collect::<Vec<_>>().join(", ")
    };
    let state = typed("M16x60 hex bolt, 8.8, 400 pcs, frobnicated, coast");
    assert_eq!(read(&state), "-frobnicated, ?coast, 400 pcs, hex bolt, M16, 60 mm, class 8.8, C4 or C5");
    let state = state.after(Action::Write("quantity", "12".to_owned()));
    let state =
        state.after(Action::Write("place", "C4".to_owned())).after(Action::Write("steel", String::new()));
    assert_eq!(read(&state), "-frobnicated, 12 pcs, hex bolt, M16, 60 mm, C4, !Steel");
}

#[test]
fn a_sheet_keeps_the_order_its_number_and_its_name_in_its_link_and_in_that_of_the_order() {
    let line = "M16 x 60 hex bolt, 8.8, 400 pcs, C3";
    let mut state = typed(line).after(Action::Note(Written::Number, "4711".to_owned()));
    for (part, text) in [(Written::Name, "Bridge"), (Written::Which, "record")] {
        state = state.after(Action::Note(part, text.to_owned()));
    }
    for view in [View::Sheet(None), View::Order] {
        let again = opened(&state.address_of(view).to_string());
        assert_eq!((again.view, again.line.text.as_str()), (view, line));
        assert_eq!((again.paper.number.as_str(), again.paper.name.as_str()), ("4711", "Bridge"));
        assert_eq!(again.paper.which, if view == View::Order { "" } else { "record" });
        assert_eq!(text(&again, "thread"), "M16");
        assert!(again.notice.is_empty());
    }
    // Another order has another number.
    let other = state.clone().after(Action::Open(typed("M20 stud").address().to_string()));
    assert_eq!(other.paper, Paper::default());
    assert_eq!(state.after(Action::Clear).paper, Paper::default());
}

#[test]
fn a_sheet_of_a_calculator_names_it_and_fills_it() {
    let state = opened("1/powder?thread=M12&pieces=50");
    let View::Calculator(place) = state.view else { panic!("{:?}", state.view) };
    let link = state.address_of(View::Sheet(Some(place))).to_string();
    let again = opened(&link);
    assert_eq!(again.view, View::Sheet(Some(place)), "{link}");
    assert_eq!((text(&again, "thread"), text(&again, "pieces")), ("M12", "50"));
    assert_eq!(again.address_of(again.view.behind()).to_string(), state.address().to_string());
    assert!(again.notice.is_empty());
}

#[test]
fn a_sheet_of_exercises_opens_from_its_link_and_the_bare_way_leads_to_the_lessons() {
    let link = "1/course?room=sheet&number=42&count=4&level=whole-task&from=coat+life&units=inch";
    let state = opened(link);
    assert_eq!(
        (text(&state, "room"), text(&state, "number"), text(&state, "from")),
        ("sheet", "42", "coat life")
    );
    assert_eq!(state.address().to_string(), link);
    let state = state.after(Action::Write("count", "9".to_owned()));
    assert!(state.address().to_string().contains("count=9"));
    let state = state.after(Action::Open("1/course".to_owned()));
    assert_eq!((state.view, text(&state, "room"), text(&state, "count")), (View::Course, "lessons", "6"));
    // A link without a system is of a sheet in metric units, whoever opens it; a new sheet is of one's own.
    let inch = |link: &str| opened("").after(Action::Use(Units::Inch)).after(Action::Open(link.to_owned()));
    assert_eq!(text(&inch("1/course?room=sheet&number=42"), "units"), "metric");
    let own = inch("1/course");
    assert_eq!(text(&own, "units"), "inch");
    assert!(own.after(Action::Write("number", "7".to_owned())).address().to_string().contains("units=inch"));
}

#[test]
fn the_readings_of_an_example_are_never_judged_as_those_of_the_user() {
    let example = opened("lot").after(Action::TakeExample(0));
    assert_ne!(text(&example, "readings"), "");
    assert!(!example.takes_readings());
    let other = example.clone().after(Action::Write("standard", "iso1461".to_owned()));
    assert_eq!(text(&other, "readings"), "");
    let own = example.after(Action::Write("readings", "52 48".to_owned()));
    assert_eq!(text(&own, "readings"), "52 48");
    let own = own.after(Action::Write("standard", "iso1461".to_owned()));
    assert_eq!(text(&own, "readings"), "52 48");
}

#[test]
fn readings_are_found_again_after_the_window_was_closed() {
    let state = opened("lot").after(Action::Write("readings", "52\n48".to_owned()));
    assert!(state.takes_readings());
    assert_eq!(text(&opened(&state.address().to_string()), "readings"), "52\n48");
    assert!(!opened("lot").takes_readings());
    assert!(!opened("").after(Action::WriteLine("M16".to_owned())).takes_readings());
}

#[test]
fn a_page_that_opens_shows_the_line_of_its_link_and_reads_it_behind_its_first_picture() {
    let line = "1/order?line=hex+bolt+M20x90+10.9+C4+12+years";
    let opening = State::opening(line, Settings::default());
    assert_eq!(opening.line.text, "hex bolt M20x90 10.9 C4 12 years");
    assert!(opening.line.is_unread() && !opening.order.is_touched());
    assert_eq!(opening.address().to_string(), line);
    let read = opening.after(Action::Read);
    assert_eq!(text(&read, "thread"), "M20");
    assert_eq!(text(&read, "years"), "12");
    // As if it had been written there, so that an emptied line takes back what it filled.
    assert_eq!(read.line, typed("hex bolt M20x90 10.9 C4 12 years").line);
    assert_eq!(read.clone().after(Action::Read), read);

    // Beside fields it says where they came from, and fills none.
    let both = format!("{}", read.after(Action::Write("thread", "M24".to_owned())).address());
    let opening = State::opening(&both, Settings::default());
    assert!(opening.line.is_unread() && opening.line.has_open_words && opening.order.is_touched());
    let read = opening.after(Action::Read);
    assert_eq!((text(&read, "thread"), read.line.is_unread()), ("M24", false));
    assert_eq!(read.line.filled.get("thread"), None);
    assert_eq!(read.line.filled.get("steel"), Some("10.9"));
}
