//! Damaged links, damaged files and devices that fail: nothing is lost, nothing is thrown.

use kettle_barrel::calculator::{Address, REGISTER};
use kettle_barrel::order;
use kettle_barrel::order::saved::{Entry, Fault, File, save};
use kettle_barrel::page::state::{Settings, State};
use kettle_barrel::quantity::number::split_unit;

use crate::fields::Dice;
use crate::saved::{Device, entry};

/// Links of every view, whole.
fn links() -> Vec<String> {
    let examples = REGISTER.iter().flat_map(|entry| {
        let address = |pairs: &[(&str, &str)]| {
            Address::new(entry.about.id, pairs.iter().copied().collect()).to_string()
        };
        entry.about.examples.iter().map(move |example| address(example.pairs))
    });
    let orders = order::ABOUT
        .examples
        .iter()
        .map(|example| Address::new("order", example.pairs.iter().copied().collect()).to_string());
    let lines = ["M20 x 90 hex bolt, 10.9, 1200 pcs, C4, 12 years", "500 ea 3/4-10 x 4 HHCS gr 8 HDG, C3"];
    let lines = lines.map(|line| Address::new("order", [("line", line)].into_iter().collect()).to_string());
    examples.chain(orders).chain(lines).collect()
}

/// The text with one to three faults: cut, doubled, swapped, left out, or a sign that does not belong there.
fn damaged(text: &str, dice: &mut Dice) -> String {
    let mut bytes = text.as_bytes().to_vec();
    for _ in 0..=dice.below(3) {
        if bytes.len() < 2 {
            break;
        }
        let at = dice.below(bytes.len() - 1);
        match dice.below(7) {
            0 => bytes.truncate(at),
            1 => bytes.insert(at, bytes[at]),
            2 => bytes.swap(at, at + 1),
            3 => drop(bytes.remove(at)),
            4 => bytes[at] = b"%&=?#+/\"{}[],:\\ \0"[dice.below(17)],
            5 => drop(bytes.splice(at..at, *b"%")),
            _ => drop(bytes.splice(at..at, b"%C3%".iter().copied())),
        }
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

#[test]
fn a_thousand_damaged_links_lose_nothing_that_can_be_read() {
    let links = links();
    let mut dice = Dice(7);
    let mut told = 0;
    for round in 0..1000 {
        let link = damaged(&links[round % links.len()], &mut dice);
        let (address, damage) = Address::read(&link);
        let state = State::at(&link, Settings::default());
        // What can be read stands in the form or is shown as words of the link.
        let kept = state.address().draft;
        for (name, text) in address.draft.pairs() {
            // The form adds a unit that was left out, and keeps number and unit apart.
            let number = split_unit(text).0.trim();
            let in_form = kept.get(name).is_some_and(|kept| {
                kept.trim().starts_with(if number.is_empty() { text.trim() } else { number })
            });
            let shown: String = text.chars().take(60).collect();
            let in_sight = state.notice.words.iter().any(|word| word.contains(shown.trim()));
            let is_empty = text.trim().is_empty();
            // The number by which a field stands at its default is its default.
            let is_default =
                state.view.fields().iter().any(|field| field.key == name && field.default == text);
            let is_renamed = state.view.fields().iter().any(|field| {
                field.aliases.contains(&name)
                    && kept.get(field.key).is_some_and(|kept| kept.trim() == text.trim())
            });
            assert!(
                in_form || in_sight || is_empty || is_default || is_renamed,
                "{link}\n{name}={text} is lost: kept {kept:?}, told {:?}",
                state.notice
            );
        }
        // Its own address brings all of it back.
        let again = State::at(&state.address().to_string(), Settings::default()).address();
        assert_eq!(again.view, state.address().view, "{link}");
        for (name, text) in kept.pairs() {
            assert_eq!(again.draft.get(name), Some(text), "{link}: {name}");
        }
        // An empty link opens the page.
        if !damage.is_empty() && !link.is_empty() {
            assert!(!state.notice.is_empty(), "{link}: {damage:?} and nothing is told");
            told += 1;
        }
        if let Some(desk) = state.desk() {
            let draft = desk.form.draft();
            match state.view.calculator() {
                Some(entry) => drop(entry.evaluate(&draft)),
                None => drop(order::assess(&draft)),
            }
        }
    }
    assert!(told > 300, "only {told} links are told to be damaged");
}

#[test]
fn a_thousand_damaged_files_lose_nothing_that_is_kept() {
    let device = Device::default();
    let mut shelf = device.open().0;
    let list: String = (1..=6).map(|pieces| entry(pieces).address + "\n").collect();
    device.take_in(&mut shelf, &list);
    let file = shelf.file();
    let sound: Vec<Entry> = File::read(&file).unwrap().entries;
    let mut dice = Dice(8);
    let (mut read, mut refused) = (0, 0);
    for _ in 0..1000 {
        let text = match dice.below(6) {
            // A field of another type, a version of another kind.
            0 => file.replacen(
                "\"version\":2",
                [
                    "\"version\":\"2\"",
                    "\"version\":-1",
                    "\"version\":2.5",
                    "\"version\":null",
                    "\"version\":99",
                ][dice.below(5)],
                1,
            ),
            1 => file.replacen(
                "\"address\":\"",
                ["\"address\":7,\"x\":\"", "\"address\":null,\"x\":\"", "\"adress\":\""][dice.below(3)],
                1 + dice.below(6),
            ),
            2 => file.replacen("\"verdicts\":[", "\"verdicts\":[7,", 1 + dice.below(3)),
            _ => damaged(&file, &mut dice),
        };
        let target = Device::default();
        save(&target, &entry(99)).unwrap();
        let mut shelf = target.open().0;
        match File::read(&text) {
            Ok(found) => {
                read += 1;
                assert!(!text.contains("\"version\":99"));
                // Every entry that is whole in the text is taken, and none that nobody wrote but by its own fault.
                let whole = sound.iter().filter(|entry| {
                    text.lines()
                        .any(|line| Entry::read(line.trim().trim_end_matches(',')).as_ref() == Some(*entry))
                });
                let taken = found.entries.clone();
                whole.for_each(|entry| {
                    assert!(taken.contains(entry), "{text}\n{entry:?} is whole and not taken")
                });
                assert!(!target.take_in(&mut shelf, &text).is_empty());
            }
            Err(why) => {
                refused += 1;
                assert!(why.to_string().contains("nothing was taken in"), "{why}");
            }
        }
        let kept = target.open().0;
        assert!(kept.found("").iter().any(|(_, kept)| kept.address == entry(99).address), "{text}");
        assert_eq!(kept.len(), shelf.len(), "what is shown is what is kept: {text}");
        // What was taken in can be taken out again.
        assert_eq!(File::read(&kept.file()).unwrap().entries.len(), kept.len());
    }
    assert!(read > 200 && refused > 100, "{read} read, {refused} refused");
}

/// The store fails at one call, or at every call from then on: what was kept before is kept after.
#[test]
fn a_store_that_fails_at_any_call_loses_nothing() {
    let old: String = (1..=5).map(|pieces| entry(pieces).address + "\n").collect();
    let more: String = (6..=9).map(|pieces| entry(pieces).address + "\n").collect();
    let before: Vec<String> = (1..=5).map(|pieces| entry(pieces).address).collect();
    let mut failed = 0;
    for forever in [false, true] {
        for call in 0..50 {
            let device = Device::holding(&[("kettle-and-barrel saved 1", &old)]);
            device.fails_at(call, forever);
            // Opened, moved on from version 1, saved to, imported into, changed: whatever of it fails, it says so.
            let work = || -> Result<(), Fault> {
                let (mut shelf, fault) = device.try_open()?;
                let said = device.take_in(&mut shelf, &more);
                assert!(!said.is_empty());
                save(&device, &entry(10))?;
                if let Some((place, _)) = shelf.found("").first() {
                    let place = (*place).to_owned();
                    shelf.rename(&device, &place, "another name")?;
                }
                fault.map_or(Ok(()), Err)
            };
            failed += usize::from(work().is_err());
            device.mends();
            let kept = device.open().0;
            for address in &before {
                assert!(
                    kept.found("").iter().any(|(_, entry)| entry.address == *address),
                    "failing at {call} ({forever}) has lost {address}"
                );
            }
        }
    }
    assert!(failed > 40, "only {failed} of 100 fail");
}
