//! A link brings back what was typed, whatever it was.

use kettle_barrel::calculator::{Address, Draft, Form, REGISTER, find};
use kettle_barrel::order;
use proptest::prelude::*;

/// A link of version 1, opened as the page opens it.
fn opened(text: &str) -> (String, Draft) {
    let (mut address, damage) = Address::read(text);
    assert!(damage.is_empty(), "{text}: {damage:?}");
    let fields = match find(&address.view) {
        Some(entry) => entry.about.fields,
        None if address.view == "order" => order::ABOUT.fields,
        None => panic!("{text}: no such view"),
    };
    assert_eq!(address.keep_only(fields), [], "{text}");
    (address.view, address.draft)
}

#[test]
fn links_of_version_1_go_on_opening_and_mean_the_same() {
    let lines = include_str!("version_1.txt").lines();
    let links: Vec<&str> = lines.filter(|line| !line.is_empty() && !line.starts_with('#')).collect();
    assert!(links.len() >= 100, "{} links are left", links.len());
    for pair in links.chunks(2) {
        let [link, in_full] = pair else { panic!("a link without its meaning: {pair:?}") };
        let ((view, draft), (_, meant)) = (opened(link), opened(in_full));
        match find(&view) {
            Some(entry) => {
                entry.link(&draft).unwrap_or_else(|problems| panic!("{link}: {problems}"));
                assert!(entry.reads_alike(&draft, &meant), "{link}");
            }
            None => {
                let read = order::read(&draft).unwrap_or_else(|problems| panic!("{link}: {problems}"));
                assert_eq!(Ok(read), order::read(&meant), "{link}");
            }
        }
    }
}

proptest! {
    /// Any view and any texts come back from the link as they were.
    #[test]
    fn a_link_brings_back_any_text(
        view in any::<String>(),
        pairs in proptest::collection::vec((any::<String>(), any::<String>()), 0..8),
    ) {
        let mut draft = Draft::default();
        for (name, text) in &pairs {
            draft.set(name, text.as_str());
        }
        let address = Address::new(view, draft);
        let text = address.to_string();
        prop_assert!(text.is_ascii() && !text.contains([' ', '#', '"', '<']), "{text}");
        prop_assert_eq!(Address::read(&text), (address, Vec::new()));
    }

    /// Any text behind `#` opens without a panic.
    #[test]
    fn any_text_is_borne_as_a_link(text in any::<String>()) {
        let (mut address, _) = Address::read(&text);
        for entry in REGISTER {
            address.keep_only(entry.about.fields);
        }
    }

    /// What a link keeps of a form gives the form back, as far as a calculator can tell.
    #[test]
    fn a_form_comes_back_from_its_link(
        calculator in 0..REGISTER.len(),
        texts in proptest::collection::vec(crate::register::text(), 24),
        spoilt in proptest::collection::vec(any::<bool>(), 24),
    ) {
        let fields = REGISTER[calculator].about.fields;
        let mut form = Form::new(fields, &Draft::default());
        for ((field, text), spoil) in fields.iter().zip(&texts).zip(&spoilt) {
            if *spoil {
                form.write(field.key, text);
            }
        }
        let back = Form::new(fields, &form.to_keep());
        prop_assert_eq!(REGISTER[calculator].evaluate(&back.draft()), REGISTER[calculator].evaluate(&form.draft()));
    }
}
