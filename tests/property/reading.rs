//! What people write in one line: every word is used or named, and nothing is read as what is next to it.
//!
//! The lines stand in tables beside this file, each with the fields it fills, the words that are not
//! used, and the words that ask: `given.tsv` as they came in, `understood.tsv` and
//! `not_understood.tsv` as others would write them.

mod by_chance;
mod table;
mod why;

use kettle_barrel::calculator::Draft;
use kettle_barrel::order::reading::lexicon::{self, Word};
use kettle_barrel::order::reading::{self, Became, Piece, Reading, Segment};
use kettle_barrel::site::Category;
use proptest::prelude::*;
use table::{GIVEN, NOT_UNDERSTOOD, UNDERSTOOD, fields, lines, written};

#[test]
fn the_lines_that_came_in_are_read_and_not_a_word_is_lost() {
    let mut all = 0;
    for line in lines(GIVEN) {
        let reading = reading::read(line.text);
        assert_covers(line.text, &reading);
        assert_eq!(written(&reading), line.expected, "{}\n{reading}", line.text);
        all += 1;
    }
    assert_eq!(all, 44);
}

/// What a line demands and no field takes keeps the answer from saying that nothing is to be proved.
#[test]
fn a_demand_that_no_field_takes_is_open() {
    for demand in [
        "no zinc on threads",
        "threads free of zinc",
        "HDG 85 µm min",
        "min 320 HV",
        "second hand",
        "HDG by others",
        "uncoated",
        "C3 min",
        "for stud bolts",
        "6 months",
    ] {
        let line = format!("M16 x 60 hex bolts 8.8 HDG, {demand}, 100 pcs");
        assert!(reading::read(&line).has_open_words(), "{line}");
    }
    for line in ["M16 x 60 hex bolts 8.8 HDG, 40 µm, C3, 15 years", "M16 x 60 hex bolts 8.8 unplated 100 pcs"]
    {
        assert!(!reading::read(line).has_open_words(), "{line}");
    }
}

#[test]
fn a_count_is_not_taken_together_with_the_number_before_it() {
    let quantity = |line: &str| reading::read(line).draft.get("quantity").map(str::to_owned);
    for line in ["class 55 250 pcs", "ISO 10684 250 pcs", "nut 8 250 pcs", "M16 x 60 250 pcs", "gr 5 250 pcs"]
    {
        assert_eq!(quantity(line).as_deref(), Some("250"), "{line}");
    }
    for line in ["1,200 pcs", "1.200 pcs", "1 200 pcs", "1'200 pcs", "1200 pcs", "1.2K", "100 dozen"] {
        assert_eq!(quantity(line).as_deref(), Some("1200"), "{line}");
    }
    for (line, meanings) in [
        ("1.250K", ["1250", "1250000"]),
        ("nut M16 8 500 pcs", ["8500", "class 8"]),
        ("bolt M20 x 90 1,234 kg", ["1.234", "1234"]),
    ] {
        let reading = reading::read(line);
        let why: String = reading.not_used().map(|(_, why)| why).collect();
        assert!(meanings.iter().all(|meaning| why.contains(meaning)), "{line}: {why}");
    }
}

#[test]
fn the_sentence_says_what_was_concluded_what_was_not_used_and_what_is_missing() {
    let sentence = reading::read("7/8 x 3 bolt A325 waxed coastal").sentence();
    let used = |name: &str| {
        sentence.iter().find_map(|segment| match segment {
            Segment::Used { field, text, note } if *field == name => Some(format!("{text} ({note})")),
            _ => None,
        })
    };
    assert_eq!(used("thread").as_deref(), Some("7/8-9 UNC (pitch taken from the size)"));
    assert!(used("part").unwrap().starts_with("heavy hex structural bolt (bolts of this steel"));
    assert!(sentence.contains(&Segment::NotUsed {
        text: "waxed".to_owned(),
        why: "a top coat is not judged".to_owned()
    }));
    let which = sentence.iter().any(|segment| matches!(segment, Segment::Which { text, offers, .. } if text == "coastal" && offers.len() == 2));
    assert!(which, "{sentence:?}");
    let not_said: Vec<&str> = sentence
        .iter()
        .filter_map(|segment| match segment {
            Segment::NotSaid { field, .. } => Some(*field),
            _ => None,
        })
        .collect();
    assert_eq!(not_said, ["quantity"]);
}

/// What is chosen in the fields is said like what was written; what says that there is nothing is not said.
#[test]
fn what_stands_in_the_fields_is_said_in_words() {
    let said = |pairs: &[(&str, &str)]| -> Vec<String> {
        let draft: Draft = pairs.iter().copied().collect();
        let used = |segment: Segment| match segment {
            Segment::Used { text, .. } => Some(text),
            _ => None,
        };
        reading::said(&draft).into_iter().filter_map(used).collect()
    };
    for (field, text, words) in [
        ("part", "hex-bolt", Some("hex bolt")),
        ("part", "sprocket", Some("sprocket")),
        ("quantity", "400", Some("400 pcs")),
        ("steel", "hardness", None),
        ("steel", "tensile", None),
        ("tensile", "900 MPa", Some("900 MPa of tensile strength")),
        ("case", "yes", Some("case-hardened")),
        ("case", "no", None),
        ("left", "no", None),
        ("patch", "no", None),
        ("cold", "no", None),
        ("cold", "machined", Some("machined or ground after heat treatment")),
        ("cold", "yes", Some("formed cold after heat treatment")),
        ("temper", "500 °C", Some("tempered at 500 °C")),
        ("nut", "none", None),
        ("washer", "none", None),
        ("nut", "standard", Some("with the nut that the standards ask for")),
        ("washer", "hardness", Some("with a washer known by its hardness")),
        ("washer_hardness", "300 HV", Some("its hardness 300 HV")),
        ("nuts", "2", None),
        ("nut_class", "6AZ", Some("nut thread 6AZ")),
        ("most", "30 µm", Some("a coat of 30 µm at most")),
        ("own_allowance", "0.5 mm", Some("nut tapped over by 0.5 mm")),
        ("asked", "advise", None),
        ("left_out", "none", None),
        ("left_out", "kettle", Some("not hot-dip")),
        ("bath", "455 °C", Some("zinc bath 455 °C")),
        ("surroundings", "air", None),
        ("heat", "250 °C", Some("250 °C in service")),
        ("place", "C3", Some("C3")),
    ] {
        let words: Vec<String> = words.into_iter().map(str::to_owned).collect();
        assert_eq!(said(&[(field, text)]), words, "{field}={text}");
    }
    assert_eq!(said(&[("nut", "a563-dh"), ("nuts", "2")]), ["with 2 × ASTM A563 grade DH nut"]);
    assert_eq!(said(&[("part", "retaining-ring"), ("thread", "20 mm")]), ["retaining ring", "20 mm"]);
}

/// Every character stands in exactly one piece, or is a space or punctuation between them.
fn assert_covers(line: &str, reading: &Reading) {
    let mut end = 0;
    for piece in &reading.pieces {
        assert!(piece.span.start >= end && piece.span.end > piece.span.start, "{line:?}: {piece:?}");
        assert_eq!(line.get(piece.span.clone()), Some(piece.text.as_str()), "{line:?}");
        assert_between(line, &line[end..piece.span.start]);
        end = piece.span.end;
    }
    assert_between(line, &line[end..]);
}

fn assert_between(line: &str, between: &str) {
    let is_separator =
        |c: char| c.is_whitespace() || c.is_ascii_punctuation() || "–—‑·•…“”„’‘×✕″′®«»".contains(c);
    assert!(between.chars().all(is_separator), "{line:?}: {between:?} is in no piece");
}

/// The work of a text and of the same text twice as often.
fn work(text: &str, times: usize) -> (usize, usize) {
    let of = |times: usize| reading::read(&text.repeat(times)).looked_at;
    (of(times), of(2 * times))
}

#[test]
fn twice_as_long_a_text_is_twice_the_work() {
    let mut texts: Vec<String> =
        lines(UNDERSTOOD).step_by(10).map(|line| format!("{} ", line.text)).collect();
    texts.extend(
        [
            "hex ", "1 000 ", "1a", "M20", "w/ nut ", "bolt ", "1/2 ", "A325/", "1,", "qqq ", "8-", "PO 1-",
            "x 1 ", "C4 C5 ", "(", "½",
        ]
        .map(str::to_owned),
    );
    for text in texts {
        // Twenty kilobytes and half of it.
        let times = 10_000 / text.len() + 1;
        let (once, twice) = work(&text, times);
        assert!(twice <= once * 21 / 10 + 100, "{text:?}: {once}, then {twice}");
    }
}

/// One of several is asked with a few names, however many there are.
#[test]
fn what_is_said_of_a_text_is_in_proportion_to_its_length() {
    for text in [
        "8.8 or 10.9 ",
        "8.8/10.9/",
        "class 8 or 10 ",
        "grade 5 or 8 ",
        "A325 or A490 ",
        "300 HV or 320 HV ",
        "HDG or zinc ",
        "B695 class 50 or 55 ",
        "M16 or M20 ",
        "M16x60 or M20x80 ",
        "60 or 70 mm ",
        "C3 or C4 ",
        "10 or 15 years ",
        "100 or 200 pcs ",
        "bolt or nut ",
        "8-12 µm or 12-15 µm ",
        "qqq or HDG, ",
    ] {
        let said = |times: usize| reading::read(&text.repeat(times)).to_string().len();
        let (once, twice) = (said(50), said(100));
        assert!(twice <= once * 21 / 10, "{text:?}: {once}, then {twice}");
    }
    let said = reading::read("M16 bolts 8.8 or 10.9 or 8.8").to_string();
    assert!(said.contains("one of two: 8.8 or 10.9?"), "{said}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    /// Whatever is written again and again is read in proportion to its length: twice as much costs at most twice the
    /// work, or, where some of it begins only behind so many words, as much more each time.
    #[test]
    fn any_text_is_read_in_proportion_to_its_length(line in prop_oneof![any::<String>(), words()]) {
        let text = format!("{line} ");
        let (once, twice) = work(&text, 20);
        let is_twice = twice <= once * 21 / 10 + 1000;
        if !is_twice {
            let thrice = reading::read(&text.repeat(60)).looked_at;
            let (second, third) = (twice - once, thrice.saturating_sub(twice));
            prop_assert!(third <= second * 11 / 10 + 1000, "{line:?}: {once}, {twice}, then {thrice}");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// Any text is covered by its pieces, and said as a sentence.
    #[test]
    fn any_text_is_covered(line in prop_oneof![any::<String>(), some_line(), words()]) {
        let reading = reading::read(&line);
        assert_covers(&line, &reading);
        prop_assert!(!reading.to_string().is_empty());
    }

    /// A word that means nothing changes no field, wherever it stands.
    #[test]
    fn a_word_without_meaning_changes_nothing(line in some_line(), word in "[bcdfghjkq]{5,9}", place in any::<prop::sample::Index>()) {
        let is_digit = |c: Option<char>| c.is_some_and(|c| c.is_ascii_digit());
        // Between two figures it would part a number; and beside a number by itself nobody can tell it from
        // a product with its number, or from a unit, so the number goes with it; so it is in front of figures
        // that a space groups.
        let plain = reading::read(&line);
        let owns = |at: usize| plain.pieces.iter().any(|piece| {
            let before = line[..piece.span.start].trim_end().len()..=piece.span.start;
            let behind = piece.span.end..=line.len() - line[piece.span.end..].trim_start().len();
            let is_grouped = piece.rule == "quantity" && {
                let mut words = piece.text.split(' ');
                let figures = |word: Option<&str>| word.is_some_and(|word| word.bytes().all(|c| c.is_ascii_digit()));
                figures(words.next()) && figures(words.next())
            };
            // Beside a mild place it may be what makes it harsher: `indoors in an aquarium`.
            let is_mild = matches!(&piece.became, Became::Asked(offers) if offers.first().is_some_and(|it| *it <= Category::C3));
            if is_mild && !line[at.min(piece.span.end)..at.max(piece.span.start)].contains([',', ';']) {
                return true;
            }
            // Behind a `not` at the end it is what is not wanted: `HDG not salt`.
            let is_not = ["not", "nicht"].contains(&piece.text.as_str());
            if is_not && piece.span.end == line.trim_end().len() && behind.contains(&at) {
                return true;
            }
            // Behind any other, or within, it may be what is not wanted, so that the line asks: `without delay HDG`.
            let of_a_finish = ["not, in front of a finish", "refused finish", "refused by a verb", "all but a finish", "not fit for a finish", "not by a process", "put in the place of a finish"];
            let is_no = of_a_finish.contains(&piece.rule) || std::iter::once(piece.text.as_str())
                .chain(piece.text.split(' '))
                .any(|words| lexicon::means(&words.to_lowercase(), Word::Without));
            let is_next = |gap: std::ops::Range<usize>| {
                !line[gap.clone()].contains([',', ';'])
                    && plain.pieces.iter().all(|other| other.became == Became::Binds || !gap.contains(&other.span.start))
            };
            let is_of_a_part = |other: &Piece| match &other.became {
                Became::Used(fields, _) => fields.iter().all(|field| ["part", "nut", "washer", "steel"].contains(field)),
                _ => true,
            };
            let is_refused = |other: &Piece| match &other.became {
                Became::Used(fields, _) => fields.contains(&"left_out"),
                Became::NotUsed(why) => why.contains("wanted, or not?"),
                _ => false,
            };
            // Beside the parts for which a finish is refused it may say which of them: `no zork bolts in HDG`, `HDG not for zork bolts`,
            // `no bolts in HDG zorks`.
            let names_parts = piece.span.end <= at
                && plain.pieces.iter().any(is_refused)
                && plain.pieces.iter().all(|other| is_of_a_part(other) || is_refused(other) || !(piece.span.end..at).contains(&other.span.start));
            if is_no && names_parts {
                return true;
            }
            if is_no && piece.span.start < at && (at < piece.span.end || is_next(piece.span.end..at)) {
                return true;
            }
            // Behind what a verb refuses it may say which of it, `we don't want HDG delivered late`, and behind what all others
            // are refused for, or not, it may be what refuses: `everything but HDG rejected`.
            let is_verb = ["refused by a verb", "all but a finish"].contains(&piece.rule);
            if is_verb && piece.span.end <= at && !line[piece.span.end..at].contains([',', ';']) {
                return true;
            }
            // In front of what refuses, or within, it may be what is not wanted: `HDG zork not allowed`.
            let refuses = piece.rule == "refused by a verb"
                || [Word::Excluded, Word::Refused].iter().any(|word| lexicon::means(&piece.text.to_lowercase(), *word));
            let is_open = |other: &Piece| {
                other.became == Became::Binds || matches!(&other.became, Became::NotUsed(why) if why.is_empty())
            };
            let is_in_front = at <= piece.span.start && !line[at..piece.span.start].contains([',', ';'])
                && plain.pieces.iter().all(|other| is_open(other) || !(at..piece.span.start).contains(&other.span.start));
            // In front of the parts of which a finish is refused it may say which of them: `HDG of zork bolts, nuts and washers`,
            // `plated zork bolts and HDG bolts`.
            let is_of_parts = at <= piece.span.start
                && plain.pieces.iter().any(|other| is_refused(other) && other.span.start < at)
                && plain.pieces.iter().all(|other| is_of_a_part(other) || is_refused(other) || !(at..piece.span.start).contains(&other.span.start));
            if refuses && (piece.span.start < at && at <= piece.span.end || is_in_front || is_of_parts) {
                return true;
            }
            // In front of a temperature it may be what is as hot: `HDG valve at 450 °C`.
            if piece.rule == "temperature" && at <= piece.span.start && is_next(at..piece.span.start) {
                return true;
            }
            // Beside the name of a thing that the part is for it may be what the thing is: `bolts for stud wall`, `flange width`.
            let is_for = matches!(&piece.became, Became::NotUsed(why) if why.contains("what it is for") || why.contains("the flange that it joins"));
            if is_for && (before.contains(&at) || behind.contains(&at)) {
                return true;
            }
            // Beside another metal than the order's steel it may be what is of it: `8.8 zorks, stainless zork`.
            let is_of_two = matches!(&piece.became, Became::NotUsed(why) if why.contains("no zinc goes on the other metal"));
            let is_beside = at <= piece.span.start && is_next(at..piece.span.start)
                || piece.span.end <= at && is_next(piece.span.end..at);
            if is_of_two && is_beside {
                return true;
            }
            // Beside a greatest thickness it may be what is so thick, `HDG, zork 6-10 µm`, and beside one of two lives what
            // has it: `25 years, zork life 10 years`.
            let lives = plain.pieces.iter().filter(|other| other.rule == "years").count();
            let may_be_of_it = ["thickness", "thickness behind a word"].contains(&piece.rule) || piece.rule == "years" && lives > 1;
            if may_be_of_it && !line[at.min(piece.span.end)..at.max(piece.span.start)].contains([',', ';']) {
                return true;
            }
            // Beside the class of a thread that may be hours it may be what lasts so long: `zork 4h`.
            if piece.rule == "class of a thread" && is_beside {
                return true;
            }
            // Behind the comma as well it may be what becomes of what is thinner: `below 45 µm, zork`.
            let is_below = piece.rule == "thickness behind a word" && piece.span.end <= at;
            if is_below && line[piece.span.end..at].matches([',', ';']).count() < 2 {
                return true;
            }
            // Between a letter and the figure behind its dash it parts what may be one name: `C - 3`.
            let is_letter = piece.text.chars().count() == 1 && line[piece.span.end..].trim_start().starts_with(['-', '–']);
            if is_letter && piece.span.end <= at && line[piece.span.end..at].chars().all(|c| matches!(c, ' ' | '-' | '–')) {
                return true;
            }
            // Within a coat with its brackets it parts the one from the other: `zinc zork plated (mechanically)`.
            let has_brackets = piece.rule == "word for a coat, and how in brackets";
            if has_brackets && piece.span.start < at && at < piece.span.end {
                return true;
            }
            // Behind `in` it may be what something is in: `M20 x 18 in bags`.
            if piece.text.ends_with(" in") && piece.span.end <= at && is_next(piece.span.end..at) {
                return true;
            }
            // Between a comma and an `or` it may be one of several, `HDG, zork or zinc plated`, and in front of an `if`
            // what is wanted then: `zinc, zork if HDG too thick`.
            let first = piece.text.split(' ').next().unwrap_or_default().to_lowercase();
            let is_if = ["if", "wenn", "falls", "si", "als"].contains(&first.as_str());
            let is_or = is_if || lexicon::means(&piece.text.to_lowercase(), Word::Or);
            // In front of a `not` it may be what is not: `8.8, zorks not available`.
            if ["not", "nicht"].contains(&first.as_str()) && at <= piece.span.start && is_next(at..piece.span.start) {
                return true;
            }
            // Behind it, it may be what the condition is of: `zinc, if zork HDG too thick`.
            if is_if && piece.span.start < at && (at < piece.span.end || is_next(piece.span.end..at)) {
                return true;
            }
            if is_or && line[..piece.span.start].trim_end().ends_with(',') && before.contains(&at) {
                return true;
            }
            // Half a word for a coat says how what follows is done: `mechanisch gesichert`.
            if piece.rule == "half a word for a coat" && behind.contains(&at) {
                return true;
            }
            (piece.rule == "number" || is_grouped) && (before.contains(&at) || behind.contains(&at))
        });
        let places: Vec<usize> = line
            .char_indices()
            .filter(|(at, c)| *c == ' ' && !(is_digit(line[..*at].chars().next_back()) && is_digit(line[at + 1..].chars().next())))
            .map(|(at, _)| at)
            .chain([0, line.len()])
            .filter(|at| !owns(*at))
            .collect();
        prop_assume!(!places.is_empty());
        let at = places[place.index(places.len())];
        let with = format!("{} {word} {}", &line[..at], &line[at..]);
        let more = reading::read(&with);
        prop_assert_eq!(fields(&plain.draft), fields(&more.draft), "{}", with);
        prop_assert!(more.not_used().any(|(text, _)| text == word), "{}", with);
    }

    /// The order of the pieces between commas changes nothing, whatever kind of part the order is for.
    #[test]
    fn the_order_of_the_pieces_does_not_matter(line in pieces(), order in any::<u64>()) {
        let mut other = line.clone();
        shuffle(&mut other, order);
        let (one, other) = (line.join(", "), other.join(", "));
        let (first, second) = (reading::read(&one), reading::read(&other));
        prop_assert_eq!(fields(&first.draft), fields(&second.draft), "{} / {}", one, other);
        let names = |reading: &Reading| {
            let mut names: Vec<String> = reading.not_used().map(|(text, why)| format!("{text}: {why}")).collect();
            names.sort();
            names
        };
        prop_assert_eq!(names(&first), names(&second), "{} / {}", one, other);
        assert_covers(&one, &first);
    }

    /// A word that means nothing changes no field of a drawn line either, nor loses another word.
    #[test]
    fn a_word_without_meaning_between_the_pieces_changes_nothing(line in pieces(), word in "[bcdfghjkq]{5,9}", place in any::<prop::sample::Index>()) {
        let mut with = line.clone();
        with.insert(place.index(line.len() + 1), word.clone());
        let (plain, more) = (reading::read(&line.join(", ")), reading::read(&with.join(", ")));
        prop_assert_eq!(fields(&plain.draft), fields(&more.draft), "{}", with.join(", "));
        let names = |reading: &Reading| -> Vec<String> { reading.not_used().map(|(text, _)| text.to_owned()).collect() };
        let mut named = names(&more);
        named.retain(|text| *text != word);
        prop_assert_eq!(named, names(&plain), "{}", with.join(", "));
    }
}

/// Puts the pieces in another order, drawn from a number.
fn shuffle(pieces: &mut [String], mut seed: u64) {
    for at in (1..pieces.len()).rev() {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        pieces.swap(at, (seed >> 33) as usize % (at + 1));
    }
}

/// The pieces of a line for one of many kinds of parts, some of them left out.
fn pieces() -> impl Strategy<Value = Vec<String>> {
    let kind = (0..KINDS.len() + 3).prop_map(|at| at.saturating_sub(3));
    let drawn = (
        kind,
        prop::collection::vec(any::<prop::sample::Index>(), 12),
        prop::collection::vec(prop::bool::weighted(0.2), 12),
    );
    drawn.prop_map(|(kind, choices, left_out)| {
        let rows = KINDS[kind].iter().chain(COMMON);
        let chosen = rows.zip(choices).zip(left_out).filter(|(_, left_out)| !left_out);
        chosen.map(|((row, at), _)| row[at.index(row.len())].to_owned()).collect()
    })
}

/// What an order says of its part, piece by piece, for bolts, nuts, washers and so on.
const KINDS: &[&[&[&str]]] = &[
    // Bolts, with what comes with them.
    &[
        &[
            "M20 x 90",
            "3/4-10 x 4",
            "7/8 x 3-1/2",
            "M16x1.5-6g x 60",
            "M12x50",
            "1-1/8-7 x 5",
            "M16, length 60 mm",
        ],
        &[
            "hex bolt",
            "HHCS",
            "SHCS",
            "bolts",
            "Sechskantschraube",
            "carriage bolts",
            "lag screws",
            "DIN 933",
            "studs",
            "HR bolts",
            "penta head bolts",
            "hanger bolts",
        ],
        &[
            "10.9",
            "gr 5",
            "A325 type 1",
            "A193 B7",
            "class 8.8",
            "36 HRC",
            "35 ± 3 HRC",
            "stainless",
            "B16",
            "1040 MPa",
        ],
        &[
            "with class 10 nut",
            "w/ 2 DH nuts each",
            "heavy hex nuts A194 2H",
            "without nuts",
            "with nylock nuts",
        ],
        &["& F436 washers", "flat washers", "with 2 washers", "with spring washers"],
    ],
    // Nuts.
    &[
        &["M20", "3/4-10", "7/8-9 UNC", "M24x2", "1-1/8-7"],
        &[
            "heavy hex nuts",
            "hex nuts",
            "nuts",
            "flange nuts",
            "lock nuts",
            "DIN 934",
            "wing nuts",
            "square nuts",
        ],
        &["A563 DH", "A194 2H", "2H", "A194-7", "10S", "grade C", "250 HV", "A194 8M"],
        &["6AZ", "2B", "tapped over by .020 in"],
    ],
    // Washers.
    &[
        &["M16", "3/4", "1/2", "M10"],
        &[
            "flat washers",
            "F436 washers",
            "ISO 7089",
            "spring washers",
            "DIN 127 B",
            "fender washers",
            "beveled washers",
        ],
        &["300 HV", "hardened", "38-45 HRC", "OD 30 mm"],
    ],
    // Rings and pins.
    &[
        &[
            "DIN 471 - 20",
            "ISO 8752 6x30",
            "cotter pins 4x40",
            "circlips for shafts, M25",
            "clevis pins M12 x 40",
        ],
        &["50 HRC", "spring steel", "480 HV"],
    ],
    // Screws that form their own thread.
    &[
        &[
            "ST4.2 x 16 tapping screws",
            "#8 x 1 wood screws",
            "lag screws 1/2 x 4",
            "deck screws 5x80",
            "drywall screws 3.5 x 35 mm",
            "M5 x 12 thread-forming screws",
        ],
        &["case hardened", "A307", "4.6", "450 HV"],
    ],
    // Rods.
    &[
        &["M16 x 1000", "3/4-10 x 36", "M20 x 2.5 m", "1/2 x 12 ft"],
        &["threaded rod", "ATR", "Gewindestange", "anchor bolts", "DIN 976"],
        &["4.6", "F1554 gr 55", "B7", "8.8"],
    ],
];

/// What any order says besides.
const COMMON: &[&[&str]] = &[
    &["1200 pcs", "5,000 ea", "qty 40", "12 dozen", "500 Stk", "2.5K"],
    &["C4", "coastal", "indoors", "C3-C4"],
    &["25 years", "12,5 years", "15a"],
    &[
        "HDG",
        "mech galv",
        "B695 class 55",
        "class 55",
        "zinc yellow",
        "zinc flake",
        "ISO 10684",
        "A153",
        "zinc .0003 thick",
        "mech zinc 40 µm",
        "no HDG",
        "HDG, no mech galv",
        "HDG or mech galv",
        "B695 - 55",
    ],
    &[
        "RoHS",
        "waxed",
        "PO 4711",
        "frobnicated",
        "max 12 µm",
        "thread length 38 mm",
        "drawing C4-102",
        "AISI 4140",
        "wk 32",
    ],
];

fn some_line() -> impl Strategy<Value = String> {
    let all: Vec<&'static str> =
        lines(GIVEN).chain(lines(UNDERSTOOD)).chain(lines(NOT_UNDERSTOOD)).map(|line| line.text).collect();
    prop::sample::select(all).prop_map(str::to_owned)
}

/// Words of the lines in any order and with anything between them.
fn words() -> impl Strategy<Value = String> {
    let words: Vec<&'static str> = lines(GIVEN)
        .chain(lines(UNDERSTOOD))
        .chain(lines(NOT_UNDERSTOOD))
        .flat_map(|line| line.text.split(' '))
        .collect();
    let between = prop::sample::select(vec![" ", " ", " ", ", ", "-", "/", "", "\n", "(", ") ", "; "]);
    prop::collection::vec((prop::sample::select(words), between), 0..14)
        .prop_map(|words| words.into_iter().map(|(word, between)| format!("{word}{between}")).collect())
}
