//! What every calculator of the register owes its user, checked for all of them alike.

use kettle_barrel::calculator::{Draft, Fault, FieldAbout, Kind, REGISTER, evaluate};
use kettle_barrel::source::document;
use proptest::prelude::*;

#[test]
fn ids_and_field_names_are_unique_and_fit_a_link() {
    let plain =
        |key: &str| key.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b"_.-".contains(&b));
    for (at, entry) in REGISTER.iter().enumerate() {
        assert!(plain(entry.about.id), "{}", entry.about.id);
        assert!(REGISTER[..at].iter().all(|other| other.about.id != entry.about.id), "{}", entry.about.id);
        for (place, field) in entry.about.fields.iter().enumerate() {
            assert!(plain(field.key), "{}", field.key);
            assert!(entry.about.fields[..place].iter().all(|other| other.key != field.key), "{}", field.key);
            if let Kind::Choice(choices) = field.kind {
                assert!(
                    choices.iter().all(|choice| plain(&choice.key.to_ascii_lowercase())),
                    "{}",
                    field.key
                );
            }
        }
    }
}

#[test]
fn every_calculator_has_text_sources_and_worked_examples() {
    for entry in REGISTER {
        let about = entry.about;
        assert!(!about.title.is_empty() && about.answers.ends_with('.'), "{}", about.id);
        assert!(about.examples.len() >= 2, "{}: too few examples", about.id);
        for example in about.examples {
            let report = evaluate(about.id, example.pairs.iter().copied())
                .unwrap_or_else(|problems| panic!("{}: “{}”: {problems}", about.id, example.title));
            assert!(!report.headline.is_empty(), "{}: “{}” says nothing", about.id, example.title);
            assert!(!report.sources().is_empty(), "{}: “{}” has no source", about.id, example.title);
            for (name, _) in example.pairs {
                assert!(about.fields.iter().any(|field| field.key == *name), "{}: no field {name}", about.id);
            }
        }
    }
}

#[test]
fn every_choice_is_understood() {
    for entry in REGISTER {
        for field in entry.about.fields {
            let Kind::Choice(choices) = field.kind else { continue };
            for choice in choices {
                if let Err(problems) = evaluate(entry.about.id, [(field.key, choice.key)]) {
                    let refused = problems
                        .iter()
                        .any(|p| p.field == field.key && matches!(p.fault, Fault::NotAChoice { .. }));
                    assert!(!refused, "{}: {}", entry.about.id, problems);
                }
            }
        }
    }
}

#[test]
fn a_problem_names_a_field_that_exists_and_all_are_told_at_once() {
    for entry in REGISTER {
        let numbers: Vec<&FieldAbout> = entry
            .about
            .fields
            .iter()
            .filter(|field| {
                matches!(field.kind, Kind::Quantity { .. })
                    && field.when == kettle_barrel::calculator::When::Always
            })
            .collect();
        let draft: Draft = numbers.iter().map(|field| (field.key, "five apples")).collect();
        if numbers.is_empty() {
            continue;
        }
        let problems = entry.evaluate(&draft).unwrap_err();
        for field in numbers {
            assert!(problems.of(field.key).is_some(), "{}: nothing said of {}", entry.about.id, field.key);
        }
    }
}

#[test]
fn every_document_is_named_once() {
    for (at, one) in document::ALL.iter().enumerate() {
        assert!(document::ALL[..at].iter().all(|other| other.name != one.name), "{}", one.name);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Any text in any field gives an answer or a problem, and never a panic.
    #[test]
    fn any_text_in_any_field_is_borne(
        calculator in 0..REGISTER.len(),
        texts in proptest::collection::vec(text(), 24),
        spoilt in proptest::collection::vec(any::<bool>(), 24),
    ) {
        let about = REGISTER[calculator].about;
        let mut draft = Draft::default();
        for ((field, text), spoil) in about.fields.iter().zip(&texts).zip(&spoilt) {
            if *spoil {
                draft.set(field.key, text.as_str());
            }
        }
        match REGISTER[calculator].evaluate(&draft) {
            Ok(report) => prop_assert!(!report.headline.is_empty()),
            Err(problems) => prop_assert!(problems.iter().next().is_some() && !problems.to_string().is_empty()),
        }
    }
}

/// Texts from the plausible to the absurd.
pub(crate) fn text() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        "[0-9]{1,4}([.,][0-9]{1,3})? ?(µm|mm|mil|in|g/m²|kg|°C|HRC|HV|MPa|h|%)?",
        "-?[0-9]{1,12}(e[0-9]{1,3})?",
        "M[0-9]{1,2}(x[0-9]\\.?[0-9]?)?(-[0-9][a-zA-Z]{1,2})?",
        "[0-9] ?[0-9]?/[0-9]{1,2}-[0-9]{1,2} UN[CF]?(-[123][AB])?",
        Just(String::new()),
        Just("0".to_owned()),
        Just("1e308".to_owned()),
        Just("-1".to_owned()),
    ]
}
