//! The keys that the file is written in.

use kettle_barrel::calculator::{Mark, Verdict};
use kettle_barrel::coat::CoatClass;
use kettle_barrel::order::{Judged, asked};
use kettle_barrel::rule::Offer;
use kettle_barrel::thread::overtap::Allowance;
use kettle_barrel::thread::pair::{Found, Room};

/// `40.0-60.0 iso10684`: least and greatest in µm, and the class.
pub fn coat(offer: &Offer) -> String {
    let class = offer.class;
    let is_class = |other: &CoatClass| (other.document, other.name) == (class.document, class.name);
    let asked = asked::ALL.iter().find(|asked| asked.class().is_some_and(is_class));
    let named = || format!("{} {}", class.document.name, class.name).replace(char::is_whitespace, "_");
    let key = asked.map_or_else(named, |asked| asked.key.to_owned());
    format!("{:.1}-{:.1} {key}", offer.min.um(), offer.max.um())
}

/// Where the room for the coat is made.
pub fn room(judged: &Judged) -> String {
    let made = |room: Room| match room {
        Room::Ordered => "ordered".to_owned(),
        Room::NutG => "6G".to_owned(),
        Room::Bolt(position) => format!("6{}", position.letter()),
        Room::Tapped(nut) => allowance(nut).to_owned(),
        Room::Smaller(by) => format!("smaller-{:.0}um", by.um()),
    };
    match &judged.fit {
        None => "-".to_owned(),
        Some(Found::Takes(mated)) => made(mated.pair.room),
        Some(Found::Binds(mated)) => format!("beyond-{}", made(mated.pair.room)),
        Some(Found::NotPublished(needed, _)) => format!("needs-{:.0}um", needed.um()),
        Some(Found::Unknown(_)) => "unknown".to_owned(),
    }
}

fn allowance(allowance: Allowance) -> &'static str {
    match allowance {
        Allowance::Az => "az",
        Allowance::Ax => "ax",
        Allowance::A563 => "a563",
        Allowance::A563M => "a563m",
        Allowance::Own(_) => "own",
        Allowance::Standard => "standard",
    }
}

pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Suits => "suits",
        Verdict::OnConditions => "on-conditions",
        Verdict::RuledOut => "ruled-out",
    }
}

/// The key of a mark, the commonest shortened: the file would grow by a tenth.
pub fn severity(mark: Mark) -> &'static str {
    match mark {
        Mark::Condition => "ask",
        other => other.key(),
    }
}
