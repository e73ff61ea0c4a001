//! What is kept on a device: nothing of it is lost, whatever the device does and whatever a file holds.

mod device;

use kettle_barrel::calculator::Verdict;
use kettle_barrel::order::saved::{
    Drawer, Entry, Fault, File, Import, Opening, Others, Shelf, Store, Unread, save,
};

pub(crate) use device::Device;

const OLD: &str = "kettle-and-barrel saved 1";
const ORDER: &str =
    "1/order?part=hex-bolt&thread=M16&length=60+mm&quantity=400&steel=8.8&place=C3&years=15+years";

pub(crate) fn entry(pieces: u32) -> Entry {
    Entry::new(&ORDER.replace("400", &pieces.to_string()), "2026-11-25T20:08:53Z")
}

/// A file of what a device keeps: these addresses.
pub fn kept(addresses: &[&str]) -> String {
    let device = Device::default();
    for address in addresses {
        save(&device, &Entry::new(address, "2026-11-25T20:08:53Z")).unwrap();
    }
    device.open().0.file()
}

fn addresses(shelf: &Shelf) -> Vec<&str> {
    let mut addresses: Vec<&str> = shelf.found("").iter().map(|(_, entry)| entry.address.as_str()).collect();
    addresses.sort_unstable();
    addresses
}

#[test]
fn an_entry_keeps_its_name_its_date_and_its_verdict() {
    let device = Device::default();
    let mut shelf = Shelf::default();
    save(&device, &entry(400)).unwrap();
    let place = device.texts.borrow().keys().next().unwrap().clone();
    assert!(shelf.heard(&device, &place, device.get(&place).as_deref()));
    shelf.rename(&device, &place, "Pipe rack, north side").unwrap();
    let (again, fault) = device.open();
    assert_eq!((&again, fault), (&shelf, None));
    let found = again.found("north");
    let [(_, kept)] = found.as_slice() else { panic!("{found:?}") };
    assert_eq!(kept.name, "Pipe rack, north side");
    assert_eq!(kept.saved, "2026-11-25T20:08:53Z");
    assert_eq!(kept.verdicts.len(), 3);
    assert_eq!(kept.address, ORDER);
    assert_eq!(kept.kind(), "Order line");
    assert_eq!(again.found("south"), []);
}

#[test]
fn what_came_of_a_file_is_told_in_numbers() {
    let from = Device::default();
    for pieces in 1..=3 {
        save(&from, &entry(pieces)).unwrap();
    }
    let file = from.open().0.file();
    let (device, mut shelf) = (Device::default(), Shelf::default());
    assert_eq!(device.take_in(&mut shelf, &file), "3 new taken in.");
    assert_eq!(device.take_in(&mut shelf, &file), "0 new taken in, 3 were here already.");

    // The device goes away behind the second of them: the third is still to come.
    let (device, mut shelf) = (Device::default(), Shelf::default());
    let mut import = Import::of(File::read(&file).unwrap());
    assert_eq!(import.progress(), (0, 3));
    assert!(import.step(&device, &mut shelf, 2));
    device.forbidden.set(true);
    assert!(!import.step(&device, &mut shelf, 2));
    assert_eq!(import.progress(), (2, 3));
    let told = import.to_string();
    assert!(
        told.starts_with("2 new taken in. 1 of the file were not taken in. This browser keeps nothing"),
        "{told}"
    );

    let bad = file.replacen("1/order", "7/nowhere", 1);
    let one = Import::of(File::read(&bad).unwrap()).to_string();
    assert!(one.contains(" 1 in the file cannot be opened by this page and was left out."), "{one}");
    let two = Import::of(File::read(&bad.replacen("1/order", "7/nowhere", 1)).unwrap()).to_string();
    assert!(two.contains(" 2 in the file cannot be opened by this page and were left out."), "{two}");
}

#[test]
fn a_fault_of_the_store_names_the_remedy() {
    for (fault, remedy) in [
        (Fault::Forbidden, "Copy the link instead"),
        (Fault::Full, "Export what is saved as a file"),
        (Fault::NotKept, "Copy the link, or export a file"),
    ] {
        assert!(fault.to_string().contains(remedy), "{fault}");
    }
    // A drawer has no clock, and shows no time that nobody read from one.
    assert_eq!(Drawer::default().local_time("2026-11-25T20:08:53Z"), None);
}

/// Kept late in the evening east of Greenwich, an order was once found under a day that the page never showed.
#[test]
fn an_entry_is_found_by_the_date_that_is_shown() {
    let device = Device::default();
    device.clock.set(Some(|time| time.replace("2026-11-25T20", "2026-11-26 04")));
    save(&device, &entry(400)).unwrap();
    let (shelf, _) = device.open();
    assert_eq!(shelf.found("2026-11-26 04:08").len(), 1);
    assert_eq!(shelf.found("2026-11-25"), []);
}

#[test]
fn a_verdict_is_that_of_the_calculator() {
    let bar = Entry::new("1/hydrogen?known=hardness&hardness=45+HRC&process=kettle", "");
    assert_eq!(bar.verdicts, [Verdict::RuledOut]);
    assert_eq!(Entry::new("1/coat?coat=50+%C2%B5m&factor=a123", "").verdicts, []);
    assert_eq!(Entry::new("1/coat?coat=five", "").verdicts, []);
}

#[test]
fn what_version_1_has_kept_is_moved_and_nothing_of_it_is_lost() {
    let list = format!("# a remark\n{ORDER}\n1/coat?coat=50+%C2%B5m\n\nnot an address\n1/no-such-view\n");
    let device = Device::holding(&[(OLD, &list), ("of another site", "untouched")]);
    let (shelf, fault) = device.open();
    assert_eq!(fault, None);
    assert_eq!(addresses(&shelf), ["1/coat?coat=50+%C2%B5m", ORDER]);
    let order = shelf.found("M16");
    assert_eq!(order[0].1.verdicts.len(), 3, "the verdict of today");
    assert_eq!(order[0].1.saved, "", "no date was written down");
    assert_eq!(device.get(OLD).as_deref(), Some("not an address\n1/no-such-view\n"));
    assert_eq!(shelf.others(), Others { old_lines: 2, ..Others::default() });
    assert_eq!(device.get("of another site").as_deref(), Some("untouched"));
    // Opened again, and opened by a window that was half-way through the same list.
    assert_eq!(device.open().0, shelf);
    device.texts.borrow_mut().insert(OLD.to_owned(), list);
    assert_eq!(device.open().0, shelf);
}

#[test]
fn eleven_faults_of_a_store_lose_nothing_and_are_said() {
    let kept =
        |device: &Device| addresses(&device.open().0).into_iter().map(str::to_owned).collect::<Vec<_>>();

    // 1. Nothing may be read.
    let device = Device::default();
    device.forbidden.set(true);
    assert_eq!(Opening::begin(&device).unwrap_err(), Fault::Forbidden);
    // 2. Nothing may be written.
    assert_eq!(save(&device, &entry(1)), Err(Fault::Forbidden));

    // 3. No room for one more.
    let device = Device::default();
    save(&device, &entry(1)).unwrap();
    device.room.set(Some(300));
    assert_eq!(save(&device, &entry(2)), Err(Fault::Full));
    assert_eq!(kept(&device), [entry(1).address]);

    // 4. The room ends in the middle of a file: what is shown is what is stored.
    let device = Device::default();
    let mut shelf = Shelf::default();
    device.room.set(Some(1000));
    let file: String = (1..=9).map(|pieces| entry(pieces).address + "\n").collect();
    let said = device.take_in(&mut shelf, &file);
    assert!(shelf.len() > 1 && shelf.len() < 9, "{}", shelf.len());
    assert!(said.contains(&format!("{} new taken in", shelf.len())), "{said}");
    assert!(said.contains(&format!("{} of the file were not taken in", 9 - shelf.len())), "{said}");
    assert_eq!(device.open().0, shelf);

    // 5. The room ends while a list of version 1 is moved: the rest stays in the list.
    let device = Device::holding(&[(OLD, &file)]);
    device.room.set(Some(file.len() + 500));
    let (shelf, fault) = device.open();
    assert_eq!(fault, Some(Fault::Full));
    let left = shelf.others().old_lines;
    assert!(left > 0, "the room was enough");
    assert_eq!(shelf.len() + left, 9);
    let file_again = File::read(&shelf.file()).unwrap();
    assert_eq!(file_again.entries.len(), 9, "all nine go into the exported file");

    // 6. The device says yes and keeps nothing.
    let device = Device::default();
    device.deaf.set(true);
    assert_eq!(save(&device, &entry(1)), Err(Fault::NotKept));
    // 7. It says yes and removes nothing.
    let device = Device::default();
    save(&device, &entry(1)).unwrap();
    let (mut shelf, _) = device.open();
    let place = shelf.found("")[0].0.to_owned();
    device.deaf.set(true);
    assert_eq!(shelf.remove(&device, &place), Err(Fault::NotKept));
    assert_eq!(shelf.len(), 1);

    // 8. A damaged entry, and one that is no entry at all.
    let device = Device::holding(&[
        ("kb2/1", "{\"address\":\"1/coa"),
        ("kb2/2", "7"),
        ("kb2/3", "{\"address\":\"1/nowhere\"}"),
    ]);
    save(&device, &entry(1)).unwrap();
    let (shelf, _) = device.open();
    assert_eq!(shelf.len(), 1);
    assert_eq!(shelf.others(), Others { damaged: 3, ..Others::default() });
    assert_eq!(device.get("kb2/2").as_deref(), Some("7"), "kept as it is");
    assert!(shelf.file().contains("1/coa"), "and exported");

    // 9. Entries of another version: kept, counted, exported, and put back on another device.
    let device = Device::holding(&[("kb3/1", "of tomorrow"), ("kb", "not ours"), ("kbx/1", "not ours")]);
    let (shelf, _) = device.open();
    assert_eq!(shelf.others(), Others { of_another_version: 1, ..Others::default() });
    let elsewhere = Device::default();
    let mut other_shelf = Shelf::default();
    elsewhere.take_in(&mut other_shelf, &shelf.file());
    assert_eq!(elsewhere.get("kb3/1").as_deref(), Some("of tomorrow"));
    assert_eq!(other_shelf, shelf);

    // 10. Another window adds, renames and removes between reading and writing.
    let device = Device::default();
    save(&device, &entry(1)).unwrap();
    save(&device, &entry(2)).unwrap();
    let (mut here, _) = device.open();
    let (mut there, _) = device.open();
    let place = there.found("quantity=1&")[0].0.to_owned();
    there.remove(&device, &place).unwrap();
    save(&device, &entry(3)).unwrap();
    let place = here.found("quantity=2&")[0].0.to_owned();
    here.rename(&device, &place, "renamed here").unwrap();
    assert_eq!(kept(&device), [entry(2).address, entry(3).address]);
    // What the browser tells brings the window up to date.
    for place in ["quantity=1&", "quantity=3&"].map(|words| {
        let shelf = if words == "quantity=1&" { here.clone() } else { device.open().0 };
        shelf.found(words)[0].0.to_owned()
    }) {
        assert!(here.heard(&device, &place, device.get(&place).as_deref()));
    }
    assert_eq!(here, device.open().0);
    assert!(!here.heard(&device, "of another site", Some("text")));

    // 11. An entry goes between the list of names and its turn.
    let device = Device::default();
    save(&device, &entry(1)).unwrap();
    save(&device, &entry(2)).unwrap();
    let mut opening = Opening::begin(&device).unwrap();
    let gone = device.texts.borrow().keys().next().unwrap().clone();
    device.texts.borrow_mut().remove(&gone);
    while opening.step(&device, 1) {}
    assert_eq!(opening.finish().0.len(), 1);
}

#[test]
fn eighteen_bad_files_are_each_told_what_they_are() {
    let mut shelf = Shelf::default();
    let device = Device::default();
    for pieces in 1..=3 {
        save(&device, &entry(pieces)).unwrap();
    }
    shelf.clone_from(&device.open().0);
    let good = shelf.file();
    let refused = [
        ("nothing at all", String::new(), Unread::Empty),
        ("only a mark of byte order", "\u{feff}\n".to_owned(), Unread::Empty),
        ("a picture", "\u{fffd}PNG\r\n\u{1a}\n\0\0\0\rIHDR".to_owned(), Unread::NotOurs),
        ("a page of the web", "<!DOCTYPE html><title>Orders</title>".to_owned(), Unread::NotOurs),
        ("a list of words", "bolts\nnuts\nwashers\n".to_owned(), Unread::NotOurs),
        ("an array", "[1, 2, 3]".to_owned(), Unread::NotOurs),
        ("an object of another program", "{\"orders\": [], \"version\": 2}".to_owned(), Unread::NotOurs),
        ("brackets without end", "{\"a\":".repeat(100_000), Unread::NotOurs),
        ("a newer version", good.replacen("\"version\":2", "\"version\":3", 1), Unread::Newer),
        (
            "a version before the first of this form",
            good.replacen("\"version\":2", "\"version\":1", 1),
            Unread::Damaged,
        ),
        ("no version", good.replacen("\"version\":2,", "", 1), Unread::Damaged),
        ("a version in words", good.replacen("\"version\":2", "\"version\":\"two\"", 1), Unread::Damaged),
        (
            "entries that are no list",
            "{\"format\":\"kettle-and-barrel saved\",\"version\":2,\"entries\":7}".to_owned(),
            Unread::Damaged,
        ),
        ("cut in its first entry", good[..120].to_owned(), Unread::Damaged),
    ];
    for (what, text, why) in &refused {
        assert_eq!(File::read(text).as_ref(), Err(why), "{what}");
        assert!(why.to_string().contains("nothing was taken in"), "{why}");
    }

    let taken = |text: &str| File::read(text).map(|file| (file.entries.len(), file.bad, file.cut));
    let cut = good.lines().take(3).collect::<Vec<_>>().join("\n");
    assert_eq!(taken(&cut), Ok((2, 0, true)), "cut behind its second entry");
    let bad = good.replacen("1/order", "7/nowhere", 1).replacen("\"verdict\":\"", "\"verdict\":\"?", 1);
    assert_eq!(taken(&bad), Ok((2, 1, false)), "an address that leads nowhere");
    let lines = format!("\u{feff}# a remark\r\n#{ORDER}\r\nbolts\r\n{ORDER}\r\n");
    assert_eq!(taken(&lines), Ok((2, 1, false)), "a list of version 1 with a line that is none");
    let long = format!("1/coat?coat={}\n{ORDER}", "5".repeat(1_000_000));
    assert_eq!(taken(&long), Ok((1, 1, false)), "a line of a million letters");
    assert_eq!(refused.len() + 4, 18);

    // What is here already, or twice in the file, is not taken twice.
    assert!(device.take_in(&mut shelf, &good).starts_with("0 new taken in, 3 were here already"));
    assert!(
        device.take_in(&mut shelf, &lines).starts_with("1 new taken in, 1 was here already. 1 in the file")
    );
}

#[test]
fn twenty_thousand_entries_cost_twice_as_much_as_ten_thousand() {
    let work = |count: u32| {
        let list: String = (1..=count).map(|pieces| entry(pieces).address + "\n").collect();
        let device = Device::default();
        let mut shelf = Shelf::default();
        device.take_in(&mut shelf, &list);
        assert_eq!(shelf.len(), count as usize);
        assert_eq!(device.open().0, shelf);
        assert_eq!(File::read(&shelf.file()).unwrap().entries.len(), count as usize);
        (device.calls.get() as f64, device.letters.get() as f64)
    };
    let (half, whole) = (work(300), work(600));
    for ratio in [whole.0 / half.0, whole.1 / half.1] {
        assert!(ratio < 2.1, "{ratio}");
    }
    // What a browser gives a site: five million letters.
    let entry = serde_json::to_string(&entry(12_345)).unwrap();
    let place = "kb2/0123456789abcdef";
    assert!((entry.len() + place.len()) * 20_000 < 5_000_000, "{entry}");
}

#[test]
fn a_list_of_version_1_is_moved_in_time_in_line_with_its_length() {
    let work = |count: u32| {
        let list: String = (1..=count).map(|pieces| entry(pieces).address + "\n").collect();
        let device = Device::holding(&[(OLD, &list)]);
        assert_eq!(device.open().0.len(), count as usize);
        assert_eq!(device.get(OLD), None);
        device.letters.get() as f64
    };
    let ratio = work(1_200) / work(600);
    assert!(ratio < 2.2, "{ratio}");
}
