//! The README's table of calculators is the register's, and its totals are those of the sources.

use kettle_barrel::calculator::REGISTER;
use kettle_barrel::source::ground;

const BEGIN: &str = "<!-- calculators: kept true by tests/property/readme.rs -->\n";
const END: &str = "<!-- end of calculators -->";

#[test]
fn the_table_of_calculators_is_that_of_the_register() {
    let readme = include_str!("../../README.md");
    let (_, rest) = readme.split_once(BEGIN).expect("the README has lost the beginning of its table");
    let (table, _) = rest.split_once(END).expect("the README has lost the end of its table");
    let mut register = String::from("| calculator | answers | in the terminal |\n| --- | --- | --- |\n");
    for entry in REGISTER {
        let about = entry.about;
        register
            .push_str(&format!("| {} | {} | `cargo run -- {}` |\n", about.title, about.answers, about.id));
    }
    assert!(table == register, "put this between the two marks of the README:\n{register}");
}

#[test]
fn the_totals_are_those_of_what_the_numbers_rest_on() {
    let told = ground::totals_told(ground::totals());
    assert!(
        include_str!("../../README.md").contains(&told),
        "the README should say:\n{told}\nRenew it with: KETTLE_BARREL_RENEW=ground cargo test --test published ground"
    );
}
