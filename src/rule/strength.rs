//! What bolt and nut carry together.

use super::bolt_and_nut::{BoltAndNut, Carried, Carries, Model};
use super::{Case, Key, Part, Phrase, Rule, Says, Test, Topic, Under, When};
use crate::part::Kind;
use crate::process::Process;
use crate::quantity::Shown;
use crate::sentence::{put, worded};
use crate::source::{Source, document};
use crate::table::nut_style::Style;
use crate::table::pairing::Nut;
use crate::thread::ToleranceClass;
use crate::thread::load::{self, Load, Loads};
use crate::thread::overtap::Allowance;
use crate::thread::pair::{Found, Room};
use crate::thread::strength::{Failure, MODEL};
use crate::working::Mark;

const fn row(key: Key, source: Source) -> Rule {
    Rule {
        key,
        topic: Topic::Strength,
        process: None,
        under: Under::Any,
        source,
        when: When::If(|case| case.pair.is_some()),
        test: Test::Always,
        says: |_| Says::MET,
        words: Phrase::NONE,
        why: Phrase::NONE,
        met: "",
        brief: Phrase::NONE,
    }
}

/// Whether the pair carries the bolt: what a document says comes before the model, and where no document
/// says it and a thread may strip first, somebody has to prove it.
pub static CARRIES: Rule = Rule {
    // What M8 and M10 lose is a rule of its own.
    when: When::If(|case| case.pair.is_some() && reduced(case).is_none()),
    says: |case| match case.pair {
        // With the nut that is ordered in its place the pair carries: that is asked already.
        Some(of) if is_mended(case, of) => Says::from(Mark::Note, MODEL),
        Some(of) => says(of),
        None => Says::MET,
    },
    words: Phrase::By(|case, _, text| {
        if let Some(pair) = case.pair {
            text.push_str(&words(pair));
        }
    }),
    why: Phrase::By(|case, _, text| match case.pair {
        Some(Carried { pair, carries: Carries::Model(model) })
            if !model.bolt_breaks() && !model.loses_little() =>
        {
            put(text, format_args!("{}{}", unsaid(pair), modelled(pair, model)));
        }
        Some(Carried { pair, carries: Carries::Unknown(refusal) }) => {
            put(text, format_args!("{}{refusal}", unsaid(pair)));
        }
        _ => {}
    }),
    brief: Phrase::By(|case, says, text| {
        if let Some(of) = case.pair.filter(|_| says.mark >= Mark::Condition) {
            text.push_str(&brief(of));
        }
    }),
    ..row(Key::Carries, MODEL)
};

/// M8 and M10 carry the reduced loads of ISO 10684, Annex A, whatever coat the room was made for. Under that
/// document the design has to agree; a barrel's order tells it.
pub static REDUCED_LOADS: Rule = Rule {
    when: When::If(|case| {
        let loads = case
            .part
            // A set screw is pressed, and pulls at no thread.
            .filter(|part| part.kind.has_mate() && part.kind != Kind::SetScrew)
            .and_then(|part| part.thread)
            .and_then(load::hot_dip);
        match loads {
            Some(Loads::Reduced) => case.process == Process::HotDip || is_cut_for_zinc(case),
            Some(Loads::Full) => case.process == Process::HotDip || case.part.is_some_and(is_undercut),
            None => false,
        }
    }),
    test: Test::By(|case| case.thread().and_then(load::hot_dip) == Some(Loads::Reduced)),
    says: |case| match case.process {
        Process::HotDip => Says::condition(),
        _ if case.part.is_some_and(is_undercut) => Says::condition(),
        _ => Says::term(),
    },
    words: Phrase::By(|case, _, text| {
        let thread = case.thread().map_or_else(String::new, |thread| thread.to_string());
        put(text, format_args!("have the design use the reduced loads of ISO 10684, Annex A, for {thread}"));
        if let Some(Carried { pair, carries: Carries::Reduced(load) }) = case.pair {
            let whose = if pair.is_undercut() { "the bolt" } else { "the nut" };
            put(text, format_args!(": a proof load of {} for {whose}", pair.shown(load.force)));
        }
    }),
    met: "no reduced loads from M12 on",
    brief: Phrase::Text("design with the reduced loads of ISO 10684"),
    ..row(Key::ReducedLoads, document::ISO_10684.read("7 and Annex A"))
};

/// Whether the nut that is named does not go on the bolt, and one that does carries it: both ask for that one.
fn is_mended(case: &Case<'_>, of: &Carried) -> bool {
    let is_other =
        case.nuts.zip(case.part.and_then(|part| part.nut)).map(|(nuts, named)| nuts.takes(named, None));
    is_other == Some(Some(false)) && says(of).mark == Mark::Condition && of.pair.better().is_some()
}

/// The load that ISO 10684 reduces the pair of the case to, if it does.
fn reduced<'a>(case: &Case<'a>) -> Option<&'a Load> {
    match &case.pair?.carries {
        Carries::Reduced(load) => Some(load),
        _ => None,
    }
}

/// Whether the nut is tapped to 6AZ or 6AX, or the bolt cut under to 6az.
fn is_cut_for_zinc(case: &Case<'_>) -> bool {
    let tapped = match case.fit {
        Some(Found::Takes(mated) | Found::Binds(mated)) => {
            matches!(mated.pair.room, Room::Tapped(Allowance::Az | Allowance::Ax))
        }
        _ => false,
    };
    tapped || reduced(case).is_some() || case.part.is_some_and(is_undercut)
}

fn is_undercut(part: &Part) -> bool {
    part.bolt_class.is_some_and(ToleranceClass::is_undercut)
}

fn says(of: &Carried) -> Says {
    match &of.carries {
        Carries::FullLoads => Says::from(Mark::Met, document::ISO_10684.read("clause 7")),
        Carries::Proof(proof) | Carries::Reduced(proof) => Says::from(Mark::Met, proof.stress_source()),
        Carries::Model(model) if model.bolt_breaks() || model.loses_little() => Says::MET,
        Carries::Model(_) => Says::condition(),
        Carries::Unknown(refusal) => Says::from(Mark::Condition, refusal.source()),
    }
}

fn words(of: &Carried) -> String {
    let pair = &of.pair;
    let breaks = pair.bolt_loads().and_then(|loads| loads.proof.or(loads.ultimate).ok());
    let of_bolt = breaks
        .map_or_else(String::new, |load| worded(format_args!("; the bolt's is {}", pair.shown(load.force))));
    match &of.carries {
        Carries::FullLoads | Carries::Reduced(_) => worded(format_args!(
            "ISO 10684 gives 6AZ and 6AX nuts and 6az bolts from M12 up the full loads of ISO 898{}",
            of_bolt.replacen("the bolt's is", "the bolt's proof load is", 1)
        )),
        Carries::Proof(proof) => {
            let plain = pair.standard_nut_load().and_then(Result::ok);
            let proof = proof.force;
            match plain.filter(|plain| plain.force > proof) {
                Some(plain) => worded(format_args!(
                    "tapped over, the proof load of the nut falls from {} to {}{of_bolt}",
                    pair.shown(plain.force).digits(),
                    pair.shown(proof)
                )),
                None => worded(format_args!("the nut has a proof load of {}{of_bolt}", pair.shown(proof))),
            }
        }
        Carries::Model(model) if model.bolt_breaks() => modelled(pair, model),
        Carries::Model(model) if model.loses_little() => worded(format_args!(
            "the pair loses {} of its stripping strength against a standard one, which is little",
            Shown::percent(model.lost_share.max(0.0), 1)
        )),
        Carries::Model(model) => remedy(pair, Some(model)),
        Carries::Unknown(_) => remedy(pair, None),
    }
}

/// Why no document says what the nut carries.
fn unsaid(pair: &BoltAndNut) -> String {
    match pair.nut_load() {
        Some(Err(refusal)) => worded(format_args!("{refusal}; ")),
        _ => String::new(),
    }
}

/// What gives way first by the model, and with which margin.
pub fn modelled(pair: &BoltAndNut, model: &Model) -> String {
    let (failure, load) = model.pair.min.first();
    let margin = Shown::percent(model.pair.min.margin().abs(), 0);
    let load = pair.shown(load);
    if failure == Failure::BoltBreaks {
        return worded(format_args!(
            "by the model of ISO/TR 16224, at least material, the bolt breaks first, at {load}; the threads would hold \
             {margin} more"
        ));
    }
    let middle = match model.pair.nominal.first().0 {
        Failure::BoltBreaks => "with every size in the middle the bolt breaks first",
        _ => "with every size in the middle the thread strips first as well",
    };
    let proof = pair.bolt_loads().and_then(|loads| loads.proof.ok());
    let short =
        proof.filter(|proof| model.pair.min.first().1 < proof.force).map_or_else(String::new, |proof| {
            worded(format_args!(" and short of its proof load of {}", pair.shown(proof.force)))
        });
    worded(format_args!(
        "by the model of ISO/TR 16224, at least material, {} first, at {load}, {margin} below the breaking of the \
         bolt{short}, which may stay unseen at assembly; {middle}",
        failure.words()
    ))
}

/// What to do about a pair that nobody vouches for.
fn remedy(pair: &BoltAndNut, model: Option<&Model>) -> String {
    let other = match (pair.better(), model.map(|model| model.pair.min.first().0)) {
        (Some(nut), _) => worded(format_args!("order {} nuts, whose load is published", named(nut))),
        (None, Some(Failure::BoltStrips)) => "take a higher nut".to_owned(),
        (None, Some(_)) => "take a harder or a higher nut".to_owned(),
        (None, None) => return "prove the pair by a proof load test".to_owned(),
    };
    match (model.is_some_and(|model| would_fail(pair, model)), pair.better()) {
        (true, Some(_)) => other,
        (true, None) => worded(format_args!("{other}, and prove the pair by a proof load test")),
        (false, _) => worded(format_args!("{other}, or prove the pair by a proof load test")),
    }
}

/// Whether the proof load test of an average pair would fail: with every size in the middle the thread strips
/// before the proof load of the bolt.
fn would_fail(pair: &BoltAndNut, model: &Model) -> bool {
    let proof = pair.bolt_loads().and_then(|loads| loads.proof.ok());
    proof.is_some_and(|proof| model.pair.nominal.first().1 < proof.force)
}

fn brief(Carried { pair, carries }: &Carried) -> String {
    let fails = matches!(carries, Carries::Model(model) if would_fail(pair, model));
    match (pair.better(), fails) {
        (Some(nut), true) => worded(format_args!("order {} nuts", named(nut))),
        (Some(nut), false) => worded(format_args!("order {} nuts, or prove the load of these", named(nut))),
        (None, true) => "take a higher nut, proof-loaded".to_owned(),
        (None, false) => "proof-load the pair".to_owned(),
    }
}

/// `heavy hex A563 DH`, without the publisher.
fn named(nut: Nut) -> String {
    let grade = nut.grade.to_string().replace("ASTM ", "").replace("grade ", "");
    match nut.style {
        Style::HeavyHex => worded(format_args!("heavy hex {grade}")),
        _ => grade,
    }
}
