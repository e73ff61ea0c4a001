//! The shelf, and the list of version 1 on its way to it, in a store that does what it is told.

use super::opening::Old;
use super::{Drawer, Entry, Opening, Shelf, Store, version_one};

fn entry(um: u32, saved: &str) -> Entry {
    Entry::new(&format!("1/coat?coat={um}+%C2%B5m"), saved)
}

#[test]
fn what_is_removed_is_given_back_and_can_be_put_back() {
    let (store, mut shelf) = (Drawer::default(), Shelf::default());
    assert!(shelf.is_empty());
    shelf.put_back(&store, entry(50, "2026-11-25T20:08:53Z")).unwrap();
    assert!(!shelf.is_empty());
    let place = shelf.found("")[0].0.to_owned();
    let removed = shelf.remove(&store, &place).unwrap();
    assert!(shelf.is_empty() && store.names().unwrap().is_empty());
    shelf.put_back(&store, removed.expect("the entry")).unwrap();
    assert_eq!(shelf.found("")[0].1, &entry(50, "2026-11-25T20:08:53Z"));
    // What is not understood is removed as well, and is no entry.
    shelf.take(&store, "kb2/x".to_owned(), "of another version".to_owned());
    assert_eq!(shelf.remove(&store, "kb2/x").unwrap(), None);
}

#[test]
fn of_two_entries_of_one_name_the_newer_date_stays() {
    let (store, mut shelf) = (Drawer::default(), Shelf::default());
    let dates = ["2026-11-25", "2026-11-25", "2026-11-24", "2026-11-26"];
    let new: Vec<bool> = dates.map(|date| shelf.add(&store, entry(50, date)).unwrap()).to_vec();
    assert_eq!(new, [true, false, false, false]);
    assert_eq!(shelf.found("")[0].1.saved, "2026-11-26");
}

#[test]
fn an_opening_tells_how_many_are_done_of_how_many() {
    let (store, mut shelf) = (Drawer::default(), Shelf::default());
    for um in [50, 60, 70] {
        shelf.add(&store, entry(um, "2026-11-25")).unwrap();
    }
    store.put(version_one::NAME, "1/coat?coat=80+%C2%B5m\n1/coat?coat=90+%C2%B5m\n").unwrap();
    store.put("of another site", "untouched").unwrap();
    let mut opening = Opening::begin(&store).unwrap();
    assert_eq!(opening.progress(), (0, 5));
    assert!(opening.step(&store, 2));
    assert_eq!(opening.progress(), (2, 5));
    while opening.step(&store, 1) {}
    assert_eq!(opening.progress(), (5, 5));
    assert_eq!(opening.finish().0.len(), 5);
    assert_eq!(store.text(version_one::NAME).unwrap(), None);
}

/// An eighth of eighty letters is ten.
#[test]
fn the_old_list_is_written_each_time_an_eighth_of_it_has_gone() {
    for (at, written, worth) in
        [(9, 0, false), (10, 0, true), (19, 10, false), (20, 10, true), (79, 75, false), (80, 75, true)]
    {
        let old = Old { text: "x".repeat(80), at, written, left: Vec::new() };
        assert_eq!(old.is_worth_writing(), worth, "{at} of which {written} are written");
    }
}

#[test]
fn the_old_list_is_read_line_by_line() {
    let old = |at| Old { text: "a\nb\n# c\nd".to_owned(), at, written: 0, left: Vec::new() };
    assert_eq!(old(0).next(1), (vec!["a".to_owned()], 2));
    assert_eq!(old(2).next(1), (vec!["b".to_owned()], 4));
    // A remark is no line.
    assert_eq!(old(4).next(1), (vec!["d".to_owned()], 9));
    assert_eq!(old(0).next(2), (vec!["a".to_owned(), "b".to_owned()], 4));
    assert_eq!(old(9).next(1), (Vec::new(), 9));
}
