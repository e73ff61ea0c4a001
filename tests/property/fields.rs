//! What is read can be written, and what is written reads to the same input.

use kettle_barrel::calculator::{
    Bound, Draft, Entry, Fault, FieldAbout, Form, Kind, Problem, REGISTER, When,
};
use kettle_barrel::order;
use kettle_barrel::quantity::{Shown, Unit, unit};
use proptest::prelude::*;

/// Whether the draft, if it reads, is written in the fields' own keys and reads back the same.
fn comes_back(entry: &Entry, draft: &Draft) -> Result<(), String> {
    let Ok(link) = entry.link(draft) else { return Ok(()) };
    let id = entry.about.id;
    for (at, (key, text)) in link.pairs.iter().enumerate() {
        if !entry.about.fields.iter().any(|field| field.key == *key) {
            return Err(format!("{id} writes {key}, which it does not ask"));
        }
        if link.pairs[..at].iter().any(|(other, _)| other == key) {
            return Err(format!("{id} writes {key} twice: {text}"));
        }
    }
    let written = Draft::from(&link);
    if entry.reads_alike(draft, &written) {
        return Ok(());
    }
    let back = entry.link(&written).map(|link| link.pairs).map_err(|problems| problems.to_string());
    Err(format!("{id}: {draft:?} is written as {:?}, which reads as {back:?}", link.pairs))
}

#[test]
fn every_worked_example_is_written_back() {
    for entry in REGISTER {
        for example in entry.about.examples {
            let draft = example.pairs.iter().copied().collect();
            comes_back(entry, &draft).unwrap_or_else(|why| panic!("“{}”: {why}", example.title));
        }
    }
}

/// Inputs that differ in a field do not pass for the same: without that nothing above could fail.
#[test]
fn different_inputs_are_not_alike() {
    for entry in REGISTER {
        let drafts = || entry.about.examples.iter().map(|example| example.pairs.iter().copied().collect());
        let drafts: Vec<Draft> = drafts().collect();
        for (at, one) in drafts.iter().enumerate() {
            for other in &drafts[..at] {
                let links = [one, other].map(|draft| entry.link(draft).unwrap().pairs);
                assert_eq!(
                    entry.reads_alike(one, other),
                    links[0] == links[1],
                    "{}: {links:?}",
                    entry.about.id
                );
            }
        }
    }
}

/// Own limits and chosen columns of a lot come back as they were written.
#[test]
fn own_limits_and_columns_are_written_back() {
    let entry = REGISTER.iter().find(|entry| entry.about.id == "lot").unwrap();
    let draft: Draft = [
        ("standard", "own"),
        ("own_mean", "2.1 mil"),
        ("own_article", "45 µm"),
        ("own_reading", "40.5 µm"),
        ("own_greatest", "0.08 mm"),
        ("readings", "1 52 48 51\n2 50 49 55\n3 51 52 53"),
        ("columns", "2-4"),
        ("lot", "100"),
        ("agreed", "3"),
    ]
    .into_iter()
    .collect();
    comes_back(entry, &draft).unwrap();
    let link = entry.link(&draft).unwrap();
    for pair in [
        ("own_mean", "2.1 mil"),
        ("own_article", "45 µm"),
        ("own_reading", "40.5 µm"),
        ("own_greatest", "0.08 mm"),
        ("columns", "2, 3, 4"),
    ] {
        assert!(link.pairs.iter().any(|(key, text)| (*key, &**text) == pair), "{pair:?}: {:?}", link.pairs);
    }
}

/// A grade that stands beside an actual temper is kept, and none is taken that nobody said.
#[test]
fn a_grade_beside_an_actual_temper_is_kept() {
    let entry = REGISTER.iter().find(|entry| entry.about.id == "tempering").unwrap();
    let draft = |pairs: &[(&str, &str)]| -> Draft {
        [("known", "temper"), ("temper", "500 °C")].iter().chain(pairs).copied().collect()
    };
    for key in ["grade", "of_grade"] {
        let named = draft(&[(key, "10.9"), ("diameter", "30 mm"), ("bath", "545 °C")]);
        comes_back(entry, &named).unwrap();
        let link = entry.link(&named).unwrap();
        assert!(link.pairs.contains(&("grade", "10.9".into())), "{:?}", link.pairs);
        assert!(link.pairs.iter().any(|(key, text)| *key == "temper" && text.starts_with("500")));
    }
    let alone = entry.link(&draft(&[])).unwrap();
    assert!(alone.pairs.iter().all(|(key, _)| *key != "grade"), "{:?}", alone.pairs);
}

#[test]
fn a_bound_holds_in_every_unit_of_its_field() {
    for entry in REGISTER {
        for field in entry.about.fields {
            let Kind::Quantity { units, bounds } = field.kind else { continue };
            for unit in units {
                let ends = bounds.ends(unit);
                let (id, key, unit) = (entry.about.id, field.key, unit.symbol);
                assert!(ends.is_some_and(|ends| ends.max.is_some()), "{id}: {key} has no bound in {unit}");
            }
        }
    }
}

/// A field that may be empty says nothing for one reason alone: what stands in it and cannot be read is a
/// problem of it, and an empty one is none.
#[test]
fn an_optional_field_is_silent_only_where_it_is_empty() {
    let mut fields = 0;
    for entry in REGISTER {
        for example in entry.about.examples {
            let form = Form::example(entry.about.fields, example);
            let asked: Vec<&str> = form.asked().into_iter().map(|(field, _)| field.key).collect();
            let is_optional = |field: &&FieldAbout| {
                field.optional && asked.contains(&field.key) && matches!(field.kind, Kind::Quantity { .. })
            };
            for field in entry.about.fields.iter().filter(is_optional) {
                let with = |text: &str| {
                    let mut draft = form.draft();
                    draft.set(field.key, text);
                    entry.link(&draft)
                };
                let (id, key) = (entry.about.id, field.key);
                let spoilt = with("five apples").unwrap_err();
                assert!(spoilt.of(key).is_some() && spoilt.iter().count() > 0, "{id}: {key}: {spoilt}");
                let unreadable = |problem: &&Problem| matches!(problem.fault, Fault::Unreadable(_));
                let empty = with("").err().and_then(|problems| problems.of(key).cloned());
                assert!(empty.iter().all(|problem| !unreadable(&problem)), "{id}: {key}: {empty:?}");
                fields += 1;
            }
        }
    }
    assert!(fields > 20, "only {fields} optional fields");
}

/// 350 on the Rockwell scale, and less than nothing on any, are problems with limit and remedy.
#[test]
fn a_hardness_on_the_wrong_scale_is_told_the_right_one() {
    let mut fields = 0;
    for entry in REGISTER {
        let takes_hardness = |field: &&FieldAbout| field.units().contains(&&unit::HRC);
        for field in entry.about.fields.iter().filter(takes_hardness) {
            let told = |text: &str| {
                let mut draft: Draft = [(field.key, text)].into_iter().collect();
                if let When::Is(other, keys) = field.when {
                    draft.set(other, keys[0]);
                }
                let problems = entry.evaluate(&draft).unwrap_err();
                problems
                    .of(field.key)
                    .unwrap_or_else(|| panic!("{problems}"))
                    .to_string()
                    .replace('\u{a0}', " ")
            };
            let too_hard = told("350 HRC");
            assert!(too_hard.contains("350 HRC must be at most 68 HRC"), "{too_hard}");
            assert!(too_hard.ends_with("if HV was meant, write 350 HV"), "{too_hard}");
            let below = told("-5 HV");
            assert!(below.contains("−5 HV must be at least 80 HV"), "{below}");
            fields += 1;
        }
    }
    assert!(fields >= 2, "only {fields} fields take a hardness");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// What is wrong is always in sight: a problem names a field that the form shows.
    #[test]
    fn a_problem_is_of_a_field_that_is_asked(seed in any::<u64>(), spoilt in any::<u32>()) {
        for entry in REGISTER {
            let fields = entry.about.fields;
            let mut draft = drawn(fields, &mut Dice(seed));
            for (at, field) in fields.iter().enumerate().filter(|(at, _)| spoilt >> (at % 32) & 3 == 3) {
                draft.set(field.key, if at % 2 == 0 { "five apples" } else { "" });
            }
            let Err(problems) = entry.link(&draft) else { continue };
            let form = Form::new(fields, &draft);
            let asked: Vec<_> = form.asked().into_iter().map(|(field, _)| field.key).collect();
            for problem in problems.iter() {
                prop_assert!(
                    asked.contains(&problem.field), "{}: {}, not asked: {:?}", entry.about.id, problem, draft
                );
            }
        }
    }

    /// An order line, too, is written back: what its fields say is said again.
    #[test]
    fn an_order_line_is_written_back(seed in any::<u64>()) {
        let draft = drawn_order(seed);
        if let Ok(line) = order::read(&draft) {
            let written = order::write(&line);
            prop_assert_eq!(order::read(&written), Ok(line), "{:?} is written as {:?}", draft, written);
            for (key, _) in written.pairs() {
                prop_assert!(order::FIELDS.iter().any(|field| field.key == key), "{}", key);
            }
        }
    }

    /// Drafts drawn over all the fields of every calculator; those that read are written back.
    #[test]
    fn what_is_read_is_written_back(seed in any::<u64>()) {
        for entry in REGISTER {
            let mut dice = Dice(seed);
            let draft = drawn(entry.about.fields, &mut dice);
            if let Err(why) = comes_back(entry, &draft) {
                prop_assert!(false, "{}", why);
            }
        }
    }
}

/// Most of what is drawn should read, or the test above says little.
#[test]
fn drafts_that_are_drawn_often_read() {
    for entry in REGISTER {
        let read = (0..200).filter(|seed| entry.link(&drawn(entry.about.fields, &mut Dice(*seed))).is_ok());
        let read = read.count();
        assert!(read >= 20, "{}: only {read} of 200 drafts read", entry.about.id);
    }
}

#[test]
fn order_lines_that_are_drawn_often_read() {
    let read = (0..400).filter(|seed| order::read(&drawn_order(*seed)).is_ok()).count();
    assert!(read >= 40, "only {read} of 400 order lines read");
}

/// Every example of the order line comes back, and every coat that it can ask for.
#[test]
fn what_an_order_asks_for_is_written_back() {
    for example in order::ABOUT.examples {
        let line = order::read(&example.pairs.iter().copied().collect()).unwrap();
        assert_eq!(order::read(&order::write(&line)), Ok(line), "“{}”", example.title);
    }
    for choice in &order::asked::CHOICES {
        let draft = [("part", "hex-bolt"), ("thread", "M20"), ("asked", choice.key)].into_iter().collect();
        assert_eq!(order::write(&order::read(&draft).unwrap()).get("asked"), Some(choice.key));
    }
}

/// An order line with a part and a thread.
fn drawn_order(seed: u64) -> Draft {
    let mut dice = Dice(seed);
    let mut draft = drawn(&order::FIELDS, &mut dice);
    for field in order::FIELDS.iter().filter(|field| matches!(field.key, "part" | "thread")) {
        if let Some(text) = answer(field, &mut dice) {
            draft.set(field.key, text);
        }
    }
    draft
}

/// A small generator of numbers (xorshift), so that a draft follows from its seed.
pub(crate) struct Dice(pub(crate) u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A whole number below the end.
    pub(crate) fn below(&mut self, end: usize) -> usize {
        (self.next() % end as u64) as usize
    }

    /// From 0 to below 1.
    pub(crate) fn share(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1u64 << 53) as f64
    }

    /// A number that lies like a bell about naught, one standard deviation wide.
    pub(crate) fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.share()).ln()).sqrt();
        radius * (std::f64::consts::TAU * self.share()).cos()
    }
}

/// A draft with something in about half of the fields.
pub(crate) fn drawn(fields: &[FieldAbout], dice: &mut Dice) -> Draft {
    let mut draft = Draft::default();
    for field in fields {
        if dice.below(2) == 0
            && let Some(text) = answer(field, dice)
        {
            draft.set(field.key, text);
        }
    }
    draft
}

/// Something that the field takes.
fn answer(field: &FieldAbout, dice: &mut Dice) -> Option<String> {
    match field.kind {
        Kind::Choice(choices) => Some(choices[dice.below(choices.len())].key.to_owned()),
        Kind::Quantity { units, bounds } => {
            let unit = units[dice.below(units.len())];
            let number = within(bounds, unit, dice)?;
            Some(format!("{number:.*} {}", dice.below(5), unit.symbol))
        }
        Kind::Count { min, max } => {
            let most = max.min(min.saturating_add(5000));
            Some((min + dice.below((most - min) as usize + 1) as u32).to_string())
        }
        Kind::Text => {
            let texts = known_texts(field.key);
            Some(texts.get(dice.below(texts.len().max(1)))?.to_string())
        }
        Kind::Readings { .. } => Some("52 57 59 55 60\n63 58 54 56 57\n61 60 58 57 62".to_owned()),
    }
}

/// A number in the lower part of what is admitted, where most of what is typed lies.
fn within(bounds: Bound, unit: &'static Unit, dice: &mut Dice) -> Option<f64> {
    let ends = bounds.ends(unit)?;
    let in_unit =
        |shown: Shown| (shown.number * shown.unit.factor + shown.unit.offset - unit.offset) / unit.factor;
    let (min, max) = (in_unit(ends.min), in_unit(ends.max?));
    let part = if dice.below(2) == 0 { 0.1 } else { 1.0 };
    Some(min + (max - min) * part * dice.share())
}

/// Texts that fields of that key take.
fn known_texts(key: &str) -> &'static [&'static str] {
    match key {
        "thread" => &[
            "M8",
            "M10",
            "M12",
            "M16x1.5",
            "M20",
            "M24",
            "M30-6g",
            "3/8-16 UNC",
            "1/2-13 UNC-2A",
            "3/4-10 UNC",
            "1-8 UNC",
            "1 1/8-8 UN",
            "1/2-20 UNF",
        ],
        "nut_class" => &["6H", "6AZ", "6AX", "2B", ""],
        "bolt_class" => &["6g", "6h", "6e", "6f", "8g", "5g6g", "2A", "3A", "1A", ""],
        "grade" => &["8.8", "10.9", "4.6", "grade 5", "A325", ""],
        _ => &[""],
    }
}
