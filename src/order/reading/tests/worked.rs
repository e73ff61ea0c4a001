//! What was done to a part after its heat treatment.

use super::{assert_finds, assert_takes};
use crate::order::reading::what::What;
use crate::order::reading::worked::after_hardening;

#[test]
fn what_is_formed_cold_after_hardening_is_told_from_what_is_machined() {
    assert_finds(
        after_hardening,
        &[
            ("bent after heat treatment", What::Yes("cold")),
            ("cold formed after quenching and tempering", What::Yes("cold")),
            ("threads rolled after the heat treatment", What::Yes("cold")),
            ("nach dem Vergüten gebogen", What::Yes("cold")),
        ],
    );
    assert_finds(
        after_hardening,
        &[
            ("ground after heat treatment", What::Machined),
            ("machined after hardening", What::Machined),
            ("nach dem Härten geschliffen", What::Machined),
        ],
    );
    assert_takes(
        after_hardening,
        &[
            // Of nothing that hardens, and of nothing that is done to it.
            ("bent", ""),
            ("bent after coating", ""),
            ("after heat treatment", ""),
            ("bent before heat treatment", ""),
        ],
    );
}
