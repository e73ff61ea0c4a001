//! The keys that the file is written in.

use kettle_barrel::calculator::{Mark, Verdict};
use kettle_barrel::coat::CoatClass;
use kettle_barrel::order::{Reason, asked, offer::Offer};
use kettle_barrel::thread::overtap::Allowance;

/// The key of a reason's rule.
pub fn rule(reason: &Reason) -> String {
    let key = match reason {
        Reason::Rule(ruling) => ruling.rule.key.key(),
        Reason::BelowIso10684 => "iso10684-below-m8",
        Reason::FinePitch => "iso10684-fine-pitch",
        Reason::BelowThreeEighths => "below-three-eighths",
        Reason::ReducedLoads => "iso10684-reduced-loads",
        Reason::WashersStick => "washers-stick",
        Reason::BeadsPart => "beads-part",
        Reason::WashersNest => "washers-nest",
        Reason::Heavy(_) => "heavy",
        Reason::LongForBarrel => "long-for-barrel",
        Reason::LongForKettle => "long-for-kettle",
        Reason::Fits(..) => "fit",
        Reason::NoNut(_) => "no-nut",
        Reason::FitRefused(_) => "fit-refused",
        Reason::TappedAfter(_) => "tapped-after",
        Reason::BothCoated(..) => "both-coated",
        Reason::Life(..) => "life",
        Reason::Needs(_) => "needs",
        Reason::AskedOther => "asked-other",
        Reason::ClassForPlace => "class-for-place",
    };
    key.to_owned()
}

/// `40.0-60.0 iso10684`: least and greatest in µm, and the class.
pub fn coat(offer: &Offer) -> String {
    let class = offer.class;
    let is_class = |other: &CoatClass| (other.document, other.name) == (class.document, class.name);
    let asked = asked::ALL.iter().find(|asked| asked.class().is_some_and(is_class));
    let named = || format!("{} {}", class.document.name, class.name).replace(char::is_whitespace, "_");
    let key = asked.map_or_else(named, |asked| asked.key.to_owned());
    format!("{:.1}-{:.1} {key}", offer.min.um(), offer.max.um())
}

/// The nut that the coat is answered with, or the widest that does not take it.
pub fn nut(reasons: &[Reason]) -> String {
    let nut = reasons.iter().find_map(|reason| match reason {
        Reason::Fits(nut, _) | Reason::BothCoated(nut, _) | Reason::TappedAfter(nut) => {
            Some(allowance(*nut).to_owned())
        }
        Reason::NoNut(Some((nut, _))) => Some(format!("beyond-{}", allowance(*nut))),
        Reason::NoNut(None) => Some("none".to_owned()),
        _ => None,
    });
    nut.unwrap_or_else(|| "-".to_owned())
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
