//! The size of a thread against its zinc.

use super::{Case, Choice, Instruction, Key, Offer, Phrase, Rule, Says, Test, Topic, Under, When};
use crate::coat::class;
use crate::part::{self, Form, Threaded};
use crate::process::Process::{Electroplated, HotDip};
use crate::quantity::{Length, Quantity, unit};
use crate::sentence::put;
use crate::source::{Document, Source, common_practice, document};
use crate::table::hotdip_process::LEAST_THREAD;
use crate::table::iso_4042_threads::TABLE_2_SOURCE;
use crate::table::iso_10684;
use crate::table::practice::{self, SMALL_INCH, WIPED_ROD_FROM};
use crate::thread::Thread;
use crate::thread::coat_room::iso_4042_column;
use crate::thread::overtap::{self, Allowance};
use crate::thread::pair::{Found, Room};
use crate::working::Mark;

const fn row(key: Key) -> Rule {
    Rule {
        key,
        topic: Topic::Fit,
        process: Some(HotDip),
        under: Under::Any,
        source: LEAST_THREAD.source,
        when: When::If(|case| threaded(case).is_some()),
        test: Test::Always,
        says: |_| Says::bar(),
        words: Phrase::NONE,
        why: Phrase::NONE,
        met: "",
        brief: Phrase::NONE,
    }
}

/// Metric below M8, and any pitch below 1.25 mm: the zinc fills the thread, and no tapped nut is
/// published. A threaded rod that an air ring wipes is done from about M6.
pub static BELOW_M8: Rule = Rule {
    test: Test::By(|case| {
        threaded(case).is_some_and(|thread| {
            let (diameter, pitch) = LEAST_THREAD.value;
            (thread.is_metric() && thread.diameter() < diameter) || thread.pitch() < pitch
        })
    }),
    says: |case| {
        let rod = case.part.is_some_and(|part| part.kind.is_rod());
        if rod && threaded(case).is_some_and(|thread| thread.diameter() >= WIPED_ROD_FROM.value) {
            Says::from(Mark::Condition, WIPED_ROD_FROM.source).asking(Instruction::AskThePlant)
        } else {
            Says::bar()
        }
    },
    words: Phrase::By(|_, says, text| {
        text.push_str(match says.mark {
            Mark::Bar => "hot-dip zinc fills such a thread, and no tapped nut is published",
            _ => "ask whether the rod is wiped by an air ring, and gauge a sample",
        });
    }),
    why: Phrase::By(|case, _, text| {
        let thread = threaded(case).map_or_else(String::new, |thread| thread.to_string());
        text.push_str(&thread);
        text.push_str(" is below M8 or a pitch of 1.25 mm");
    }),
    met: "the thread is large enough for hot-dip zinc",
    brief: Phrase::By(|_, says, text| {
        if says.mark == Mark::Bar {
            text.push_str("too thick for threads below M8 or 1.25 mm pitch");
        }
    }),
    ..row(Key::BelowM8)
};

/// ISO 10684 covers coarse threads; of an inch thread without a published allowance whose nut is tapped all
/// the same, by an allowance that was written, the same is agreed.
pub static FINE_PITCH: Rule = Rule {
    source: document::ISO_10684.read("scope"),
    when: When::If(|case| {
        threaded(case).is_some_and(|thread| is_dipped_metric(thread) || is_tapped_unpublished(case, thread))
    }),
    test: Test::By(|case| threaded(case).is_some_and(|thread| !thread.is_metric() || !thread.is_coarse())),
    says: |case| {
        let says = Says::condition().asking(Instruction::AgreeAllowance(None));
        let inch = threaded(case).is_some_and(|thread| !thread.is_metric());
        Says { source: inch.then(|| document::ASTM_A563.read("Table 5")), ..says }
    },
    why: Phrase::By(|case, _, text| {
        text.push_str(match threaded(case).is_some_and(|thread| thread.is_metric()) {
            true => "ISO 10684 covers coarse threads only",
            false => "no tapped nut is published for this thread",
        });
    }),
    words: Phrase::By(|case, says, text| {
        text.push_str(
            says.instruction.map_or_else(String::new, |asks| asks.words(case)).trim_end_matches('.'),
        );
    }),
    met: "a coarse thread, as ISO 10684 covers",
    ..row(Key::FinePitch)
};

/// Coarse inch threads below 3/8 in take the coat less well.
pub static BELOW_THREE_EIGHTHS: Rule = Rule {
    source: SMALL_INCH.source,
    when: When::If(|case| threaded(case).is_some_and(|thread| !thread.is_metric())),
    test: Test::By(|case| {
        // A thousandth of a millimetre covers the rounding of inches.
        threaded(case).is_some_and(|thread| thread.diameter() < SMALL_INCH.value - Length::from_mm(0.001))
    }),
    says: |_| Says::condition().asking(Instruction::AskThePlant),
    why: Phrase::Text("below 3/8 in a thread takes hot-dip zinc less well"),
    words: Phrase::Text("have a sample dipped and gauged first"),
    brief: Phrase::Text("have a sample dipped and gauged"),
    met: "large enough to take the coat well",
    ..row(Key::BelowThreeEighths)
};

/// A class of ASTM A153 or F2329 is one of a size, and ISO 10684 and ISO 4042 are for metric machine threads: on
/// another it is agreed, and what fits is named.
pub static CLASS_OF_ANOTHER_SIZE: Rule = Rule {
    topic: Topic::Class,
    process: None,
    source: document::ASTM_A153.read("Table 1"),
    when: When::If(|case| fitting(case).is_some()),
    says: |case| Says { source: fitting(case).map(|fitting| fitting.source), ..Says::condition() },
    why: Phrase::By(|case, _, text| {
        if let Some(Fitting { asked, is_for, .. }) = fitting(case) {
            put(text, format_args!("{asked} is for {is_for}"));
        }
    }),
    words: Phrase::By(agree_what_fits),
    brief: Phrase::By(agree_what_fits),
    ..row(Key::ClassOfAnotherSize)
};

/// What fits the part, where a class or a document for others was asked for.
struct Fitting {
    take: &'static str,
    asked: &'static str,
    is_for: &'static str,
    source: Source,
}

fn fitting(case: &Case<'_>) -> Option<Fitting> {
    let (offer, part) = (case.offer?, case.part?);
    let (class, thread) = (offer.class, part.thread?);
    let of = class.document;
    let is_forming = part.kind.threaded() == Threaded::Forming;
    let is_inch = part.kind.has_mate() && !thread.is_metric();
    let metric = FOR_METRIC.iter().find(|(asked, ..)| *asked == of);
    if let Some((_, inch, forming, source)) = metric {
        let take = if is_inch { inch } else { forming.as_ref().filter(|_| is_forming)? };
        return Some(Fitting {
            take: take.name,
            asked: of.name,
            is_for: "metric machine threads",
            source: *source,
        });
    }
    if offer.choice != Choice::Asked || ![&document::ASTM_A153, &document::ASTM_F2329].contains(&of) {
        return None;
    }
    let washer = part::thickness_of_washer(part.kind, thread);
    let take = class::of_size(class::of(of), thread.diameter(), washer)?.name;
    let source = class.source(class.single.as_ref()?);
    (take != class.name).then_some(Fitting { take, asked: class.name, is_for: class.applies, source })
}

/// What is for metric threads, what is for inch ones instead, and for screws that form their own.
static FOR_METRIC: [(&Document, &Document, Option<&Document>, Source); 2] = [
    (&document::ISO_10684, &document::ASTM_F2329, Some(&document::ISO_1461), iso_10684::SCOPE),
    (&document::ISO_4042_1999, &document::ASTM_F1941, None, TABLE_2_SOURCE),
];

fn agree_what_fits(case: &Case<'_>, _: Says, text: &mut String) {
    if let Some(Fitting { take, asked, .. }) = fitting(case) {
        put(text, format_args!("agree “{take}” instead of “{asked}”"));
    }
}

/// A greatest thickness that is taken: a class that begins above it is ruled out, and one that may end above it
/// is agreed.
pub static AT_MOST: Rule = Rule {
    topic: Topic::Class,
    process: None,
    source: common_practice("a greatest thickness is held against that of the class"),
    when: When::If(|case| at_most(case).is_some()),
    says: |case| match at_most(case) {
        Some((offer, most)) if offer.min.exceeds(most) => Says::bar(),
        Some((offer, most)) if offer.max.exceeds(most) => Says::condition(),
        _ => Says::MET,
    },
    words: Phrase::By(|case, says, text| {
        let Some((offer, most)) = at_most(case) else { return };
        let [min, max, most] = [offer.min, offer.max, most].map(|coat| coat.show(&unit::UM, 0));
        text.push_str(&match says.mark {
            Mark::Bar => format!("the coat is {min} or more, and {most} at most are taken"),
            _ => format!("agree {most} at most: the coat is {} to {max}", min.digits()),
        });
    }),
    met: "no thicker than is taken",
    brief: Phrase::By(|case, says, text| {
        let Some((offer, most)) = at_most(case) else { return };
        let [min, most] = [offer.min, most].map(|coat| coat.show(&unit::UM, 0));
        text.push_str(&match says.mark {
            Mark::Bar => format!("{min} or more, {most} at most taken"),
            _ => format!("agree a coat of {most} at most"),
        });
    }),
    ..row(Key::AtMost)
};

/// The coat on offer and the greatest that is taken, where one is.
fn at_most<'a>(case: &Case<'a>) -> Option<(&'a Offer, Length)> {
    case.offer.zip(case.site?.most)
}

/// A long part is plated thicker at its ends: Table 2 of ISO 4042 ends at 15 diameters.
pub static BEYOND_TABLE_2: Rule = Rule {
    process: Some(Electroplated),
    under: Under::Iso4042,
    source: TABLE_2_SOURCE,
    when: When::If(|case| {
        let length = case.part.and_then(|part| part.length);
        threaded(case)
            .zip(length)
            .is_some_and(|(thread, length)| thread.is_metric() && iso_4042_column(thread, length).is_err())
    }),
    says: |_| Says::condition(),
    why: Phrase::Text("longer than 15 diameters, where ISO 4042's thicknesses for threads end"),
    words: Phrase::Text("agree the thickness, and where it is measured, with the plater"),
    brief: Phrase::Text("agree the thickness on so long a part"),
    ..row(Key::BeyondTable2)
};

/// Nobody said the size: the room for the coat, and what the kettle does to a small thread, hang on it. What
/// has no thread is judged without it but for the kettle, whose coats go by size.
pub static SIZE_NOT_SAID: Rule = Rule {
    source: practice::SIZE_FIRST,
    process: None,
    when: When::If(|case| case.part.is_some_and(|part| part.thread.is_none())),
    test: Test::By(|case| case.process == HotDip || case.part.is_some_and(|part| part.kind.has_mate())),
    says: |_| Says::only(Mark::NotJudged),
    words: Phrase::By(|case, _, text| {
        text.push_str(match case.part.map(|part| part.kind) {
            Some(kind) if kind.has_mate() => {
                "say the thread: the room for the coat, and the nut that takes it, follow from it"
            }
            // Of another part no size is taken but a thread.
            Some(part::Kind::Other) => "agree the class of hot-dip with the galvanizer: it goes by size",
            _ => "say the size: hot-dip has its coats by size",
        });
    }),
    met: "no thread has to take the coat",
    brief: Phrase::By(|case, _, text| {
        text.push_str(match case.part.map(|part| part.kind) {
            Some(kind) if kind.has_mate() => "say the thread",
            Some(part::Kind::Other) => "agree the class of hot-dip with the galvanizer",
            _ => "say the size",
        });
    }),
    ..row(Key::SizeNotSaid)
};

/// A bolt shorter under its head than it is thick: inches read as millimetres look so, and its weight and area
/// would be another bolt's.
pub static LENGTH_UNLIKELY: Rule = Rule {
    topic: Topic::Load,
    process: None,
    source: practice::LONGER_THAN_THICK,
    when: When::If(|case| bolt_and_length(case).is_some_and(|(thread, length)| length < thread.diameter())),
    says: |_| Says::only(Mark::NotJudged),
    words: Phrase::By(|case, _, text| {
        if let Some((thread, length)) = bolt_and_length(case) {
            let [length, diameter] = [length, thread.diameter()].map(|size| case.size(size, 1));
            put(
                text,
                format_args!(
                    "say the length again, with its unit: {length} is less than the {diameter} of the thread"
                ),
            );
        }
    }),
    brief: Phrase::Text("say the length again, with its unit"),
    ..row(Key::LengthUnlikely)
};

/// The thread and the length of what has its length under a head.
fn bolt_and_length(case: &Case<'_>) -> Option<(Thread, Length)> {
    let part = case.part.filter(|part| part.kind.form() == Form::Bolt)?;
    threaded(case).zip(part.length)
}

/// The machine thread of the part, where it has one and it is known.
fn threaded(case: &Case<'_>) -> Option<Thread> {
    case.part.filter(|part| part.kind.has_mate())?.thread
}

/// Whether the nut of an inch thread is tapped over though no allowance is published for it.
fn is_tapped_unpublished(case: &Case<'_>, thread: Thread) -> bool {
    let is_tapped = matches!(
        case.fit,
        Some(Found::Takes(mated) | Found::Binds(mated))
            if matches!(mated.pair.room, Room::Tapped(Allowance::Own(_)))
    );
    !thread.is_metric() && is_tapped && overtap::allowance(thread, Allowance::A563).is_err()
}

/// Whether a thread is one of the metric ones that ISO 10684 has hot-dipped.
fn is_dipped_metric(thread: Thread) -> bool {
    let (diameter, pitch) = LEAST_THREAD.value;
    thread.is_metric() && thread.diameter() >= diameter && thread.pitch() >= pitch
}
