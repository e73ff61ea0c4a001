//! What was done to a part after its heat treatment.

use super::{assert_finds, assert_takes};
use crate::order::reading::what::What;
use crate::order::reading::worked::after_hardening;
use crate::steel::Worked;

#[test]
fn what_is_formed_cold_after_hardening_is_told_from_what_is_machined() {
    assert_finds(
        after_hardening,
        &[
            ("bent after heat treatment", What::Worked(Worked::Formed)),
            ("cold formed after quenching and tempering", What::Worked(Worked::Formed)),
            ("threads rolled after the heat treatment", What::Worked(Worked::Formed)),
            ("nach dem Vergüten gebogen", What::Worked(Worked::Formed)),
        ],
    );
    assert_finds(
        after_hardening,
        &[
            ("ground after heat treatment", What::Worked(Worked::Machined)),
            ("machined after hardening", What::Worked(Worked::Machined)),
            ("nach dem Härten geschliffen", What::Worked(Worked::Machined)),
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
