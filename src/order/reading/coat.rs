//! The coat that the line asks for: a process, a document, or a class.

mod instead;

use super::part::{self, Scopes};
use super::{Became, either, left_out, token};
use crate::quantity::letters::lower;
use std::cmp::Reverse;

use super::items::{Item, Line};
use super::lexicon;
use super::nouns::{BOLTS, is_named};
use super::wanted::Wanted;
use super::what::{Family, What};
use crate::order;
use crate::order::asked::{self, Asked, LeftOut};
use crate::order::offer::offer;
use crate::process::Process;
use crate::quantity::{Length, Quantity, unit};
use crate::sorting::sort_by_key;
use crate::source::{self, document};
use crate::steel::Grade;
use crate::table::coat_class::CoatClass;
use crate::thread::Designation;
use instead::{not_judged, plated_with_another};

/// What a piece says of the coat.
struct Said {
    at: usize,
    key: String,
    /// What of it is not judged.
    left: Option<&'static str>,
    /// The process it may belong to, where its word is used of several.
    may_be: &'static [Process],
}

const NO_SUCH_CODE: &str =
    "no class of this thickness is judged here, only the process; nor is the letter for its chromate";

/// The coat asked for.
pub(super) fn settle(line: &mut Line, scopes: &Scopes, text: &str) {
    of_mates(line, scopes, text);
    plated_with_another(line);
    type_left_open(line);
    without_zinc(line);
    let said = said(line);
    // What says most stands first: a class, then a document, then a process, then a word that other things than a coat
    // may have (`mechanical seal, HDG`), then a word used of several.
    let mut order: Vec<&Said> = said.iter().collect();
    sort_by_key(&mut order, |said| {
        Reverse((said.may_be.is_empty(), !is_of_a_thing(line, said.at, text), rank(&said.key)))
    });
    // Of one of two finishes no class is asked for.
    let asks = line.draft.get("asked").and_then(asked::from_key);
    let of_two = asks.filter(|asks| matches!(asks, Asked::Either(_)));
    let mut chosen: Option<&Said> = None;
    for said in order {
        let process = asked::from_key(&said.key).and_then(|asked| asked.process());
        let agrees = chosen.is_none_or(|chosen| {
            let own = asked::from_key(&chosen.key).and_then(|asked| asked.process());
            let fits = own == process || own.is_some_and(|own| said.may_be.contains(&own));
            let says_no_other = rank(&chosen.key) > rank(&said.key) || chosen.key == said.key;
            fits && (says_no_other || !said.may_be.is_empty())
        });
        let Some(item) = line.item(said.at) else { continue };
        if let Some(of_two) = of_two {
            // `zinc (HDG or mech galv)`: a word that is used of every process says no other.
            let may_be = || said.may_be.iter().any(|process| of_two.is_either(*process));
            match process.filter(|process| of_two.is_either(*process) || may_be()) {
                Some(_) if rank(&said.key) > 0 => item.not(either::CLASS_OF_SEVERAL),
                Some(_) => item.became = Some(Became::Used(vec!["asked"], said.left.map(Into::into))),
                None => {
                    let of = label(of_two.key()).unwrap_or_default();
                    item.not(format!("contradicts the coat asked for: {of}"));
                }
            }
        } else if agrees {
            item.became = Some(Became::Used(vec!["asked"], said.left.map(Into::into)));
            chosen = chosen.or(Some(said));
        } else {
            let of = chosen.and_then(|chosen| label(&chosen.key)).unwrap_or_default();
            item.not(format!("contradicts the coat asked for: {of}"));
        }
    }
    if let Some(chosen) = chosen {
        let key = chosen.key.clone();
        line.draft.set("asked", key);
        let stretch = |said: &Said| line.items.get(said.at).map(|item| item.stretch);
        let own = asked::from_key(&chosen.key).and_then(|asked| asked.process());
        let is_apart = |said: &&Said| {
            said.may_be.len() == Process::ALL.len()
                && stretch(said) != stretch(chosen)
                && asked::from_key(&said.key).and_then(|asked| asked.process()) != own
        };
        if said.iter().any(|said| is_apart(&said)) {
            line.note("asked", ONE_ZINC);
        }
    }
    not_wanted(line);
    only(line);
    not_judged(line);
    let is_any_zinc = chosen.and_then(|chosen| line.items.get(chosen.at)).is_some_and(|item| {
        matches!(lower(&item.text).as_str(), "zinc" | "zn" | "verzinkt" | "vz" | "verz" | "vzk")
    });
    thicknesses(line, is_any_zinc);
}

/// Whether a word for a process says what kind of thing something is: a word that is no coat stands right behind it
/// (`mechanical seal`).
fn is_of_a_thing(line: &Line, at: usize, text: &str) -> bool {
    let Some(item) = line.items.get(at) else { return false };
    let end = item.spans.last().map_or(0, |span| span.end);
    let has_a_coat = line.items.get(at + 1).is_some_and(|behind| {
        let gap = behind.spans.first().map(|next| next.start.saturating_sub(end));
        gap.is_some_and(|gap| gap <= 1) && matches!(behind.what, What::Process(..) | What::Coat(_))
    });
    let has_a_word = text
        .get(end..)
        .and_then(|rest| rest.strip_prefix(' '))
        .is_some_and(|rest| rest.starts_with(char::is_alphabetic));
    lexicon::BARE_PROCESS.contains(&lower(&item.text).as_str()) && has_a_word && !has_a_coat
}

/// What is concluded where zinc by itself stands beside a process.
const ONE_ZINC: &str = "“zinc” and the process beside it are taken for one coat";

/// `bolts HDG, nuts plain`, `bolts zinc plated and HDG nuts`: another finish, or none, of what comes with a part whose own is
/// said.
fn of_mates(line: &mut Line, scopes: &Scopes, text: &str) {
    // `bolts HDG nuts black`: right behind their name, with no comma between.
    let is_behind = |at: usize| {
        line.before(at).is_some_and(|before| scopes.nut.contains(&before) || scopes.washer.contains(&before))
            && matches!(line.what(at), Some(What::Other(_)))
    };
    let mates: Vec<bool> = (0..line.items.len())
        .map(|at| {
            scopes.family == part::Family::Bolt && (scopes.beside(at) != part::Scope::Part || is_behind(at))
        })
        .collect();
    let is_mate = |at: usize| mates.get(at) == Some(&true);
    let own = (0..line.items.len())
        .filter(|at| !is_mate(*at))
        .filter_map(|at| line.items.get(at).filter(|item| item.is_free()))
        .find_map(|item| Some((either::process(&item.what)?, either::may_be(&item.text))));
    let Some((first, first_may_be)) = own else { return of_mates_alone(line, scopes, &mates, text) };
    // `mech galv, galvanized nuts`; zinc by itself says no more than that it is zinc.
    let holds =
        |may_be: &[Process], process: Process| may_be.len() < Process::ALL.len() && may_be.contains(&process);
    for at in (0..line.items.len()).filter(|at| is_mate(*at)) {
        let Some(item) = line.item(at) else { continue };
        let is_bare = match &item.what {
            What::Other(_) => item.is_free(),
            What::Not(why) => why == lexicon::BARE,
            What::Part("plain") => item.became == Some(Became::NotUsed(lexicon::BARE.into())),
            _ => false,
        };
        let is_gone = left_out::is_finish(&item.what) && left_out::is_gone(&item.became);
        let is_other = item.is_free()
            && either::process(&item.what).is_some_and(|process| {
                process != first && !holds(either::may_be(&item.text), first) && !holds(first_may_be, process)
            });
        if is_bare || is_gone || is_other {
            item.not(left_out::OF_A_MATE);
        }
    }
}

/// `black bolts with HDG nuts`: the bolts have no zinc.
fn of_mates_alone(line: &mut Line, scopes: &Scopes, mates: &[bool], text: &str) {
    let is_mate = |at: usize| mates.get(at) == Some(&true);
    let is_named = |at: usize| scopes.nut.contains(&at) || scopes.washer.contains(&at);
    let is_bare = line.items.iter().enumerate().any(|(at, item)| {
        !is_mate(at)
            && match &item.what {
                What::Other("bare") => item.is_free(),
                // `plain shank bolts`: of the shape.
                What::Part("plain") => {
                    item.became == Some(Became::NotUsed(lexicon::BARE.into())) && is_of_bolts(line, text, at)
                }
                _ => false,
            }
    });
    // `black bolts with nuts HDG` may be of all of them.
    let is_its_own = |line: &Line, at: usize| {
        line.behind(at).is_some_and(is_named)
            || line.before(at).is_some_and(|name| is_named(name) && line.before(name).is_none())
    };
    for at in (0..line.items.len()).filter(|at| is_bare && is_mate(*at)) {
        if is_its_own(line, at)
            && line.items.get(at).is_some_and(|item| item.is_free() && either::process(&item.what).is_some())
        {
            line.not(at, left_out::OF_A_MATE);
        }
    }
}

/// Whether the name of a bolt stands right beside a word.
fn is_of_bolts(line: &Line, text: &str, at: usize) -> bool {
    let is_next = |one: Option<usize>, other: Option<usize>| {
        let (one, other) = (one?, other?);
        let gap = line.between(text, one, other)?;
        let is_name = |at| line.what(at).is_some_and(|what| is_named(what, BOLTS));
        Some(gap == " " && (is_name(one) || is_name(other)))
    };
    // `bolts plain shank`: of the shape.
    let behind = line.end(at).and_then(|end| text.get(end..)).unwrap_or_default();
    let next = line.behind(at).and_then(|next| line.start(next)).zip(line.end(at));
    let until = next.map_or_else(|| behind.find(token::is_break), |(start, end)| start.checked_sub(end));
    let says_more =
        behind.get(..until.unwrap_or(behind.len())).is_some_and(|gap| gap.contains(char::is_alphabetic));
    !says_more
        && (is_next(Some(at), line.behind(at)) == Some(true)
            || is_next(line.before(at), Some(at)) == Some(true))
}

/// `zinc, type to be advised`, `zinc tbd`: no process is asked for.
fn type_left_open(line: &mut Line) {
    for at in 1..line.items.len() {
        let is_open = line.what(at) == Some(&What::Not(lexicon::LEFT_OPEN.into()));
        let is_zinc = line.items.get(at - 1).is_some_and(|item| {
            item.is_free()
                && matches!(item.what, What::Process(..))
                && either::may_be(&item.text).len() == Process::ALL.len()
        });
        if is_open && is_zinc {
            line.not(at - 1, lexicon::ANY_ZINC);
        }
    }
}

/// `without zinc`, `not galvanized`: where the line asks for no finish, a part without zinc.
fn without_zinc(line: &mut Line) {
    let is_gone = |item: &Item| item.became == Some(Became::NotUsed(left_out::WHY.into()));
    let is_any_zinc = |item: &Item| match &item.what {
        // `nicht galv.` is electroplated alone in German.
        What::Process(process, _) => {
            let text = lower(&item.text);
            let meant = either::may_be(&text);
            !text.starts_with("plat") && meant.len() > 1 && meant.contains(process)
        }
        What::Not(why) => why == lexicon::ANY_ZINC,
        _ => false,
    };
    let is_finish = |item: &Item| left_out::is_finish(&item.what) || matches!(item.what, What::Class(_));
    // What is named besides, wanted or not, says more.
    let is_zinc = |item: &Item| is_any_zinc(item) || is_plated_zinc(&item.text);
    let is_all = line.items.iter().all(|item| !is_finish(item) || is_gone(item) && is_zinc(item));
    let gone = |item: &&mut Item| is_gone(item) && is_zinc(item);
    if !is_all
        || line.draft.get("asked").is_some()
        || !line.items.iter().any(|item| is_gone(item) && is_any_zinc(item))
    {
        return;
    }
    line.draft.set("asked", "bare");
    for item in line.items.iter_mut().filter(gone) {
        item.became = Some(Became::Used(vec!["asked"], None));
    }
}

/// `not galvanized, not zinc plated`: beside the other word it refuses zinc, however it is put on.
fn is_plated_zinc(text: &str) -> bool {
    let text = lower(text);
    ["zinc plat", "zingué"].iter().any(|begin| text.starts_with(begin))
}

/// What is left out (`no HDG`), beside what is asked for; where the same is asked for, or nothing would be
/// left, it stays named.
fn not_wanted(line: &mut Line) {
    let left_out: Vec<(usize, Process)> = line
        .items
        .iter()
        .enumerate()
        .filter(|(_, item)| item.became == Some(Became::NotUsed(left_out::WHY.into())))
        .filter_map(|(at, item)| match item.what {
            // A word for zinc alone does not say which.
            What::Process(..) if matches!(lower(&item.text).as_str(), "zinc" | "zn") => None,
            What::Process(process, _) => Some((at, process)),
            What::Coat(key) => Some((at, asked::from_key(key)?.process()?)),
            _ => None,
        })
        .collect();
    let processes: Vec<Process> = left_out.iter().map(|(_, process)| *process).collect();
    let asked = line.draft.get("asked").and_then(asked::from_key).and_then(|asked| asked.process());
    let Some(all) = LeftOut::of(&processes).filter(|all| asked.is_none_or(|asked| !all.holds(asked))) else {
        return;
    };
    if all != LeftOut::Nothing {
        line.draft.set("left_out", all.key());
    }
    // What is left where all others are left out is asked for; words for zinc, whichever, name no other.
    let names_a_process = |at: &usize| {
        line.items.get(*at).is_some_and(|item| {
            either::may_be(&item.text).is_empty() || lower(&item.text).starts_with("plat")
        })
    };
    let is_named = left_out.iter().all(|(at, _)| names_a_process(at));
    let open: Vec<Process> = Process::ALL.into_iter().filter(|process| !all.holds(*process)).collect();
    if let ([only], None, true) = (open.as_slice(), line.draft.get("asked"), is_named) {
        line.draft.set("asked", only.key());
    }
    for (at, _) in left_out {
        if let Some(item) = line.item(at) {
            item.became = None;
            item.used("left_out");
        }
    }
}

/// `HDG only`, `only mech galv`: that process and none of the others.
fn only(line: &mut Line) {
    let words = line.free(|what| (*what == What::Filler).then_some(()));
    let is_only = |text: &str| {
        matches!(lower(text).as_str(), "only" | "nur" | "exclusively" | "solely" | "ausschließlich")
    };
    for (at, ()) in words {
        if !line.items.get(at).is_some_and(|item| is_only(&item.text)) {
            continue;
        }
        let beside = |forward: bool| {
            let mut place = at;
            loop {
                place = if forward { line.behind(place)? } else { line.before(place)? };
                match line.what(place)? {
                    What::Filler => {}
                    What::Process(..) | What::Coat(_) | What::Class(_) => return Some(place),
                    _ => return None,
                }
            }
        };
        // `HDG only 500 pcs` is of the pieces.
        let is_last = line.behind(at).is_none();
        let Some(coat) = beside(true).or_else(|| beside(false).filter(|_| is_last)) else { continue };
        let is_asked = line.items.get(coat).is_some_and(
            |item| matches!(&item.became, Some(Became::Used(fields, _)) if fields.contains(&"asked")),
        );
        let asked = line.draft.get("asked").and_then(asked::from_key).filter(|_| is_asked);
        let asked = asked.filter(|asked| !matches!(asked, Asked::Either(_)));
        let Some(process) = asked.and_then(|asked| asked.process()) else { continue };
        let others: Vec<Process> = Process::ALL.into_iter().filter(|other| *other != process).collect();
        if let Some(all) = LeftOut::of(&others) {
            line.draft.set("left_out", all.key());
            line.used(at, "left_out");
        }
    }
}

/// A thickness asks for the thinnest class of its document that has about that much everywhere; hot-dip has one
/// class for a size.
fn thicknesses(line: &mut Line, is_any_zinc: bool) {
    let found = line.free(|what| match what {
        What::Thickness(wanted) => Some(*wanted),
        _ => None,
    });
    for (at, wanted) in found {
        let shown = wanted.show();
        let key = line.draft.get("asked").unwrap_or_default().to_owned();
        let document = match asked::from_key(&key) {
            // The word for zinc is that of plate, and so thick no plate is made.
            Some(_) if is_any_zinc && wanted.solid() > THICKEST_PLATE => {
                too_thick_for_plate(line);
                line.not(at, format!("zinc of {shown} is hot-dip or mechanical: write which"));
                continue;
            }
            Some(Asked::Class(keyed)) => {
                if keyed.class().is_some_and(|class| {
                    is_enough(class, wanted)
                        || class.process == Process::HotDip && has_on_average(class, wanted)
                }) {
                    line.used(at, "asked");
                    line.note("asked", format!("which has the {shown} that are asked for"));
                } else {
                    line.not(at, format!("the class asked for has less than {shown}: which of the two?"));
                }
                continue;
            }
            Some(Asked::Process(Process::Mechanical)) => "b695-",
            Some(Asked::Process(Process::Electroplated)) if is_iso(line) => "iso4042-",
            Some(Asked::Process(Process::Electroplated)) => "f1941-",
            Some(Asked::Document(document)) if document == &document::ASTM_B695 => "b695-",
            Some(Asked::Document(document)) if document == &document::ASTM_B633 => "b633-",
            Some(Asked::Document(document)) if document == &document::ASTM_F1941 => "f1941-",
            Some(Asked::Document(document)) if document == &document::ISO_4042_1999 => "iso4042-",
            Some(asked) if asked.process() == Some(Process::HotDip) => {
                of_hot_dip(line, at, wanted);
                continue;
            }
            Some(Asked::Other(_) | Asked::Document(_) | Asked::Process(_)) => {
                line.not(at, "agree the thickness with whoever applies that coat");
                continue;
            }
            Some(Asked::Either(_)) | None => {
                line.not(at, "of which coat? Write hot-dip, mechanical or electroplated beside it");
                continue;
            }
        };
        let has = |keyed: &&asked::Keyed| {
            keyed.key.starts_with(document) && keyed.class().is_some_and(|class| is_enough(class, wanted))
        };
        let min = |keyed: &asked::Keyed| {
            keyed.class().and_then(|class| class.single).map_or(f64::INFINITY, |limit| limit.thickness.um())
        };
        match asked::ALL.iter().filter(has).min_by(|one, other| min(one).total_cmp(&min(other))) {
            Some(keyed) => {
                line.draft.set("asked", keyed.key);
                line.note("asked", format!("the thinnest class of about {shown} or more"));
                line.used(at, "asked");
            }
            None => line.not(at, format!("no class asks for {shown} there: agree it with the plater")),
        }
    }
}

/// The thickest class that any document of plate here has.
const THICKEST_PLATE: Length = Length::from_um(30.0);

/// Whether a class has this much at every place, by the column of its document in that unit; classes are named
/// in round numbers of either.
fn is_enough(class: &CoatClass, wanted: Wanted) -> bool {
    let Some(single) = class.single else { return false };
    let thickness = wanted.in_the_zinc_of(class);
    let is_inch = matches!(wanted, Wanted::Inch(_));
    match single.printed_inch.filter(|printed| is_inch && printed.unit == &unit::INCH) {
        Some(printed) => printed.number >= thickness.inch() - 1e-9,
        None => single.thickness.um() >= thickness.um() * if wanted.is_in_inches() { 0.94 } else { 0.98 },
    }
}

/// The average of a class: who asks for one may mean that of a batch or that of the whole lot.
fn greatest_average(class: &CoatClass) -> Option<Length> {
    let averages = [class.average, class.lot_average].into_iter().flatten().map(|limit| limit.thickness);
    averages.max_by(|one, other| one.um().total_cmp(&other.um()))
}

/// Whether a class has this much on average; ounces are rounded.
fn has_on_average(class: &CoatClass, wanted: Wanted) -> bool {
    let rounded = if matches!(wanted, Wanted::Ounces(_)) { 0.94 } else { 0.98 };
    let least = rounded * wanted.in_the_zinc_of(class).um();
    greatest_average(class).is_some_and(|average| average.um() >= least)
}

/// A thickness beside hot-dip: that of the class for the size, at one place or on average, or a question.
fn of_hot_dip(line: &mut Line, at: usize, wanted: Wanted) {
    let class = order::read(&line.draft)
        .ok()
        .and_then(|read| offer(&read, None, Process::HotDip))
        .map(|offer| offer.class)
        .filter(|_| line.draft.get("thread").is_some());
    let average = class.and_then(greatest_average);
    // `min 45 µm local`: said of each place, the mean of the batch does not answer it.
    let says_local = line.items.iter().enumerate().any(|(other, item)| {
        other.abs_diff(at) <= 2
            && item.what == What::Filler
            && matches!(
                lower(&item.text).as_str(),
                "local" | "lokal" | "örtlich" | "at any point" | "at one place"
            )
    });
    let is_average = !says_local && class.is_some_and(|class| has_on_average(class, wanted));
    match class {
        Some(class) if is_average || is_enough(class, wanted) => {
            line.used(at, "asked");
            let single = class.single.map_or_else(String::new, |limit| limit.printed.to_string());
            let average =
                average.map_or_else(String::new, |it| format!(", {} on average", it.show(&unit::UM, 0)));
            let shown = wanted.show();
            let name = class.document.name;
            line.note("asked", format!("for the {shown} asked for, {name}: {single} at one place{average}"));
        }
        Some(CoatClass { single: Some(single), document, .. }) => line.not(
            at,
            format!(
                "hot-dip has one class for a size ({}: {} at one place); agree another thickness with the galvanizer",
                document.name, single.printed
            ),
        ),
        _ => line.not(at, "hot-dip has one class for a size; agree another thickness with the galvanizer"),
    }
}

/// The word for zinc asks for no plate, then, and leaves plate out.
fn too_thick_for_plate(line: &mut Line) {
    line.take_back(&["asked"]);
    line.draft.set("left_out", LeftOut::Electroplated.key());
    line.note("left_out", "plate is not made so thick");
    for item in &mut line.items {
        if matches!(&item.became, Some(Became::Used(fields, _)) if fields.contains(&"asked")) {
            item.became = None;
            item.used("left_out");
        }
    }
}

/// As the field shows it.
fn label(key: &str) -> Option<&'static str> {
    asked::CHOICES.iter().find(|choice| choice.key == key).map(|choice| choice.label)
}

fn rank(key: &str) -> u8 {
    match asked::from_key(key) {
        Some(Asked::Class(_)) => 2,
        Some(Asked::Document(_)) => 1,
        _ => 0,
    }
}

/// Every piece that says something of the coat; numbers of classes are those of the document in the line.
fn said(line: &mut Line) -> Vec<Said> {
    let of_plate = |item: &Item| match item.what {
        What::Coat(key) => Some(key).filter(|key| ["b633", "f1941", "iso4042"].contains(key)),
        _ => None,
    };
    let plated: Vec<_> = line.items.iter().filter_map(of_plate).collect();
    let is_mechanical = plated.is_empty()
        && line.items.iter().any(|item| {
            item.is_free()
                && matches!(item.what, What::Process(Process::Mechanical, _) | What::Coat("barrel"))
        });
    let exists = |key: &str| asked::ALL.iter().any(|asked| asked.key == key);
    let mut said = Vec::new();
    let found = line.free(|what| Some(what.clone()));
    for (at, what) in found {
        let colour = |tinted: bool| tinted.then_some(lexicon::COLOUR);
        let (key, may_be, left): (String, &'static [Process], _) = match what {
            What::Process(process, tinted) => {
                let text = line.items.get(at).map_or("", |item| &item.text);
                (process.key().to_owned(), either::may_be(text), colour(tinted))
            }
            What::Coat(key) => {
                let text = line.items.get(at).map_or("", |item| &item.text);
                (key.to_owned(), &[], judged_by(key).or_else(|| edition(key, text)))
            }
            What::Class(number) if exists(&format!("b695-{number}")) => (format!("b695-{number}"), &[], None),
            What::HighBath if is_hot_dip(line, at) => (Process::HotDip.key().to_owned(), &[], None),
            What::Zinc(um, family, tinted) if is_mechanical && exists(&format!("b695-{um}")) => {
                let left = colour(tinted).or(judged_by("barrel").filter(|_| family == Family::FeZn));
                (format!("b695-{um}"), &[], left)
            }
            What::Zinc(um, family, tinted) => {
                let usual = match family {
                    Family::Iso4042 => "iso4042",
                    Family::B633 => "b633",
                    Family::Zn => "iso4042",
                    Family::FeZn if is_iso(line) => "iso4042",
                    Family::FeZn => "f1941",
                };
                // A code is that of its document alone, and a class that of a document that is written.
                let is_code = family == Family::Iso4042;
                let written = plated.iter().copied().filter(|_| !is_code);
                let other = [usual, if is_code { usual } else { "b633" }].into_iter();
                let other = other.filter(|_| is_code || plated.is_empty());
                match written.chain(other).map(|of| format!("{of}-{um}")).find(|key| exists(key)) {
                    Some(key) => (key, &[], colour(tinted)),
                    None if family == Family::Iso4042 => (usual.to_owned(), &[], Some(NO_SUCH_CODE)),
                    None => {
                        let why = match plated.is_empty() {
                            true => format!("no class of {um} µm is known here for plate"),
                            false => format!("its document has no class of {um} µm: agree which is meant"),
                        };
                        line.not(at, why);
                        continue;
                    }
                }
            }
            _ => continue,
        };
        said.push(Said { at, key, left, may_be });
    }
    said
}

/// By which documents a coat is judged that is asked for by another.
fn judged_by(key: &str) -> Option<&'static str> {
    match key {
        "kettle" => Some("judged by ISO 10684 or ASTM F2329"),
        "barrel" => Some("judged by the classes of ASTM B695"),
        "cell" => Some("judged by ISO 4042 or ASTM F1941"),
        _ => None,
    }
}

/// By which edition a coat is judged that is asked for by another.
fn edition(key: &str, text: &str) -> Option<&'static str> {
    let year = text.split_once(':').map(|(_, year)| year.trim())?.get(..4)?;
    let (own, why) = match key.split('-').next()? {
        "iso10684" => ("2004", "judged by the edition of 2004"),
        "iso1461" => ("2009", "judged by the edition of 2009"),
        "iso4042" => {
            ("1999", "its thickness is judged by the tables of 1999, its hydrogen by the edition of 2018")
        }
        _ => return None,
    };
    (year != own && year.bytes().all(|figure| figure.is_ascii_digit())).then_some(why)
}

/// Whether words for zinc at a high temperature are of hot-dip: beside its name, or by their own.
pub(super) fn is_hot_dip(line: &Line, at: usize) -> bool {
    let names_it = |text: &str| lower(text).contains("verzink");
    line.items.get(at).is_some_and(|item| names_it(&item.text))
        || line.items.iter().any(|item| matches!(item.what, What::Process(Process::HotDip, _)))
}

/// Whether the order is one of metric parts whose steel is none of ASTM or SAE: ISO 4042 writes its coats
/// with the same letters as ASTM F1941.
fn is_iso(line: &Line) -> bool {
    let thread = line.draft.get("thread").and_then(|text| Designation::read(text).ok());
    let steel = line.draft.get("steel").and_then(Grade::of_key);
    thread.is_some_and(|written| written.thread.is_metric())
        && steel.is_none_or(|grade| grade.document().family != source::Family::Astm)
}
