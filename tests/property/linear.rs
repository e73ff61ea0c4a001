//! Whatever is typed, pasted or linked is read in a time that grows with its length, and no faster.
//!
//! Eight times the text may take 24 times the time: what is quadratic takes 64 times.

use std::hint::black_box;
use std::time::Duration;

use cpu_time::ThreadTime;
use kettle_barrel::calculator::{Address, Draft, Form, REGISTER, evaluate};
use kettle_barrel::quantity::{number, unit};

const GROWTH: usize = 8;
const BOUND: f64 = 24.0;

/// The least time that the processor spent on it in several runs: what else the machine does adds to it.
fn least(work: impl Fn()) -> Duration {
    (0..3)
        .map(|_| {
            let start = ThreadTime::now();
            work();
            start.elapsed()
        })
        .min()
        .unwrap()
}

/// Fails where reading a text of `length` repetitions grows faster than its length.
fn grows_with_its_length(what: &str, length: usize, text: impl Fn(usize) -> String, read: impl Fn(&str)) {
    let (short, long) = (text(length), text(length * GROWTH));
    let [short, long] = [&short, &long].map(|text| least(|| read(black_box(text))));
    // Below a tenth of a millisecond the clock measures itself.
    let ratio = long.as_secs_f64() / short.as_secs_f64().max(1e-4);
    assert!(
        ratio < BOUND,
        "{what}: {GROWTH} times the text takes {ratio:.0} times the time ({short:?}, {long:?})"
    );
}

#[test]
fn a_number_with_its_unit() {
    for piece in ["1", "m2", "1e", "e+1", ",1", " 111", "µ", "1/", "^2", "1.", "−"] {
        let text = |times| piece.repeat(times);
        grows_with_its_length(&format!("split {piece}"), 4_000, text, |text| {
            black_box(number::split_unit(text));
        });
        grows_with_its_length(&format!("read {piece}"), 4_000, text, |text| {
            black_box(number::read(text, &[&unit::UM, &unit::MIL]).is_ok());
        });
        grows_with_its_length(
            &format!("digits behind x, {piece}"),
            4_000,
            |times| format!("x{}", piece.repeat(times)),
            |text| {
                black_box(number::split_unit(text));
            },
        );
    }
}

#[test]
fn a_link() {
    let names = |times: usize| {
        let pairs: Vec<String> = (0..times).map(|at| format!("name{at}=text%20{at}")).collect();
        format!("1/coat?{}", pairs.join("&"))
    };
    grows_with_its_length("many names", 500, names, |link| {
        let (mut address, damage) = Address::read(link);
        black_box((address.keep_only(REGISTER[0].about.fields), damage));
    });
    grows_with_its_length(
        "one long text",
        4_000,
        |times| format!("1/coat?coat={}", "%2B1".repeat(times)),
        |link| {
            black_box(Address::read(link));
        },
    );
    grows_with_its_length(
        "a name again and again",
        2000,
        |times| format!("1/coat?{}", "coat=1&".repeat(times)),
        |link| {
            black_box(Address::read(link));
        },
    );
}

#[test]
fn a_draft() {
    let names: Vec<String> = (0..500 * GROWTH).map(|at| format!("name{at}")).collect();
    grows_with_its_length(
        "a draft",
        500,
        |times| "x".repeat(times),
        |text| {
            let mut draft = Draft::default();
            for name in names.iter().take(text.len()) {
                draft.set(name, "text");
            }
            black_box(draft);
        },
    );
}

#[test]
fn every_field_of_every_calculator() {
    for entry in REGISTER {
        for field in entry.about.fields {
            let name = format!("{} {}", entry.about.id, field.key);
            grows_with_its_length(
                &name,
                1000,
                |times| "1 ".repeat(times),
                |text| {
                    let draft: Draft = [(field.key, text)].into_iter().collect();
                    black_box(entry.evaluate(&draft).is_ok());
                    black_box(Form::new(entry.about.fields, &draft).draft());
                },
            );
        }
    }
}

#[test]
fn readings_that_are_pasted() {
    for piece in ["54 ", "54\n", "54;", "54,1\n", "a 54 µm\n", "54\t55\n"] {
        grows_with_its_length(
            &format!("readings {piece:?}"),
            1000,
            |times| piece.repeat(times),
            |text| {
                black_box(evaluate("lot", [("readings", text)]).is_ok());
            },
        );
    }
}

#[test]
fn a_text_too_long_for_its_field_is_told_so() {
    let long = "5".repeat(5000);
    for (id, field) in [("coat", "coat"), ("oversize-tap", "thread")] {
        let problems = evaluate(id, [(field, long.as_str())]).unwrap_err().to_string();
        assert!(problems.contains("5000 characters are too many; write at most 200"), "{problems}");
    }
}
