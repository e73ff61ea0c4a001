//! A link brings back what was typed, whatever it was.

use kettle_barrel::calculator::shape::address::{read_list, write_list};
use kettle_barrel::calculator::{Address, Draft, Form, REGISTER};
use proptest::prelude::*;

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

    /// A list of addresses comes back from its file, each once.
    #[test]
    fn a_file_brings_back_every_address(
        views in proptest::collection::btree_set("[a-z]{1,8}", 0..6), text in any::<String>(), remark in any::<String>(),
    ) {
        let draft: Draft = [("text", text.as_str())].into_iter().collect();
        let addresses: Vec<_> = views.into_iter().map(|view| Address::new(view, draft.clone())).collect();
        prop_assert_eq!(read_list(&write_list(&remark, &addresses)), (addresses, Vec::new()));
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
