//! What a verb refuses, how far its words go, and what is no refusal.

use super::assert_takes;
use crate::order::reading::left_out::{
    all_but, by_a_verb, in_the_place, not_fit_for, not_so, not_that, refused,
};
use crate::order::reading::threads::{already_there, around_the_nut};
use crate::order::reading::what::What;

#[test]
fn a_verb_of_wishing_with_a_negation_refuses_what_follows() {
    assert_takes(
        by_a_verb,
        &[
            ("don't want HDG", "don't want"),
            ("dont want HDG", "dont want"),
            ("would not like to have any HDG", "would not like to have any"),
            ("cannot accept HDG", "cannot accept"),
            ("never takes HDG", "never takes"),
            ("do not supply with nuts", "do not supply with"),
            ("want HDG", ""),
            ("would like HDG", ""),
            ("do not stack HDG", ""),
        ],
    );
    assert_eq!(super::pieces(by_a_verb, "don't want HDG", 0)[0].1, What::Without);
    // A place is not used.
    assert_eq!(super::pieces(by_a_verb, "do not use C3", 0)[0].1, What::Excluded);
}

#[test]
fn a_modal_verb_refuses_what_stands_before() {
    assert_takes(
        by_a_verb,
        &[
            ("must not be used C3", "must not be used"),
            ("cannot be used", "cannot be used"),
            ("isn't allowed", "isn't allowed"),
            ("not an option", "not an option"),
            ("must be avoided", "must be avoided"),
            ("has been ruled out", "has been ruled out"),
            ("darf nicht verwendet werden, C3", "darf nicht verwendet werden"),
            ("ne doit pas être utilisé", "ne doit pas être utilisé"),
            ("mag niet worden toegepast", "mag niet worden toegepast"),
            ("must be used", ""),
            ("may be allowed", ""),
            ("must not be mixed", ""),
        ],
    );
    let what =
        |text: &str| super::pieces(by_a_verb, text, 0).into_iter().map(|(_, what)| what).collect::<Vec<_>>();
    assert_eq!(what("must not be used C3"), [What::Excluded]);
    assert_eq!(what("must be avoided"), [What::Excluded]);
    // Refused twice, or perhaps: the line asks.
    for text in ["is not excluded", "not forbidden"] {
        let at = usize::from(text.starts_with("is"));
        let found = super::pieces(by_a_verb, text, at);
        assert!(matches!(&found[0].1, What::Not(why) if why.contains("or not?")), "{text}: {found:?}");
    }
    let perhaps = what("might not be possible");
    assert!(matches!(perhaps.as_slice(), [What::Excluded, What::Not(_)]), "{perhaps:?}");
}

#[test]
fn a_refusal_of_one_use_is_none_of_the_finish() {
    let after =
        |text: &str, at: usize| super::pieces(by_a_verb, text, at).into_iter().next().map(|(_, what)| what);
    for text in [
        "HDG must not be used above 200 °C",
        "HDG must not be used on threads",
        "HDG must not be used for nuts",
    ] {
        let what = after(text, 1);
        assert!(matches!(&what, Some(What::Not(why)) if why.contains("altogether?")), "{text}: {what:?}");
    }
    assert_eq!(after("HDG must not be used on this job", 1), Some(What::Excluded));
    // How bolts are used, and no bolts.
    assert_eq!(after("bolts must not be used above 200 °C", 1), None);
    assert_eq!(after("nuts must not be used C3", 1), Some(What::Excluded));
    assert_eq!(after("bolts acid must not be used C3", 2), Some(What::Excluded));
}

#[test]
fn all_but_one_finish_and_no_other_than_one() {
    assert_takes(
        all_but,
        &[
            ("any coating but HDG", "any coating but"),
            ("alles außer feuerverzinkt", "alles außer"),
            ("tout sauf galvanisé", "tout sauf"),
            ("no coating other than HDG", "no coating other than"),
            ("any zinc but electroplate", "any zinc but"),
            ("any galvanizing except mechanical", "any galvanizing except"),
            ("no zinc except mechanical", "no zinc except"),
            ("any zinc", ""),
            ("any coating", ""),
            ("all bolts but HDG", ""),
            ("no nuts but HDG", ""),
            ("no plating but HDG", ""),
        ],
    );
    assert_eq!(super::pieces(all_but, "any coating but HDG", 0)[0].1, What::Without);
    // The finish that is preferred, that of the nuts, or the one of none: the line asks.
    for text in ["no coating but HDG", "any zinc but HDG is preferred", "any zinc but HDG nuts"] {
        assert!(matches!(super::pieces(all_but, text, 0)[0].1, What::Not(_)), "{text}");
    }
}

#[test]
fn what_is_not_fit_for_a_finish_or_forbids_it_refuses_it() {
    assert_takes(
        not_fit_for,
        &[
            ("not suitable for hot dip", "not suitable for"),
            ("ungeeignet zum Feuerverzinken", "ungeeignet zum"),
            ("not suitable for HDG bolts", ""),
            ("suitable for hot dip", ""),
        ],
    );
    assert_takes(
        refused,
        &[
            ("forbids hot dip", "forbids"),
            ("interdit la galvanisation à chaud", "interdit la"),
            ("forbids 10.9", ""),
            ("forbids it", ""),
        ],
    );
    // `galvanisé à chaud interdit` speaks of what stands before.
    assert_eq!(super::pieces(refused, "galvanisé à chaud interdit zingué", 3), []);
    assert_takes(
        not_so,
        &[
            ("not mechanically)", "not | mechanically"),
            ("pas à chaud, C3", "pas à | chaud"),
            ("not mechanically tested", ""),
        ],
    );
}

#[test]
fn a_tapped_hole_is_there_by_a_word_in_front_or_behind() {
    assert_takes(
        already_there,
        &[
            ("existing tapped hole", "existing tapped hole"),
            ("existing uncoated tapped hole", "existing | uncoated | tapped hole"),
            ("existing M16 threaded hole", "existing | M16 | threaded hole"),
            ("tapped holes already made", "tapped holes already"),
            ("tapped hole in the existing casting", "tapped hole in the existing"),
            ("Gewindebohrung bereits vorhanden", "Gewindebohrung bereits vorhanden"),
            ("tapped hole", ""),
            ("existing bolts, tapped hole", ""),
            ("tapped hole, existing bolts", ""),
        ],
    );
}

#[test]
fn a_nut_is_tapped_over_by_words_around_its_name() {
    assert_takes(
        around_the_nut,
        &[
            ("tap nuts over", "tap | nuts | over"),
            ("tap the nuts oversize", "tap | the | nuts | oversize"),
            ("tap nuts", ""),
            ("tap bolts over", ""),
        ],
    );
}

#[test]
fn a_finish_stands_in_the_place_of_another_by_a_noun_and_its_word_or_by_a_verb() {
    assert_takes(
        in_the_place,
        &[
            ("substitute for HDG", "substitute for"),
            ("substituted for the HDG", "substituted for the"),
            ("substitution of HDG by plating", "substitution of"),
            ("substitute HDG with plating", "substitute"),
            ("replacement for HDG", "replacement for"),
            ("Ersatz für Feuerverzinkung", "Ersatz für"),
            ("replacement for rejected bolts", ""),
            ("replacement HDG", ""),
            ("substitutes ok", ""),
            ("HDG", ""),
        ],
    );
}

#[test]
fn what_stands_in_brackets_is_of_the_finish_that_is_refused() {
    for text in ["nicht (thermisch) verzinkt", "not (galvanisch) verzinkt"] {
        let found = super::pieces(not_that, text, 0);
        let [(not, What::Without), (finish, What::Process(..))] = found.as_slice() else {
            panic!("{text}: {found:?}")
        };
        assert!(!not.contains('(') && finish.starts_with('('), "{text}: {found:?}");
    }
}
