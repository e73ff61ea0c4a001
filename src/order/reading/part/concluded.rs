//! What a line does not name and its other pieces say: the part by its steel, the steel by the part.

use super::{BySteel, Scopes, is_heavy};
use crate::order::reading::Became;
use crate::order::reading::either::asks_which;
use crate::order::reading::items::{Item, Line};
use crate::order::reading::left_out;
use crate::order::reading::lexicon;
use crate::order::reading::steel;
use crate::order::reading::what::{SteelWord, What};
use crate::part::{Kind, UsualSteel};
use crate::quantity::letters::lower;
use crate::steel::Grade;
use crate::thread::Designation;

/// Steels whose document is that of one kind of part.
const OF_ONE_KIND: &[(&str, &str)] = &[
    ("f1554", "anchor-rod"),
    ("a325", "structural-bolt"),
    ("a490", "structural-bolt"),
    ("a574", "socket-screw"),
    ("45h", "set-screw"),
    ("a193-b7", "stud"),
    ("f1852", "other"),
    ("f2280", "other"),
    ("iso-2702", "tapping-screw"),
];

/// What is concluded from a line without a part.
pub(in crate::order::reading) const NO_PART: &str = "taken as a hex bolt: the line names no part";

/// What is concluded from a bolt without more.
pub(in crate::order::reading) const A_BOLT: &str = "a bolt without more is taken for a hex bolt";

const TWIST_OFF: &str =
    "a twist-off bolt, taken as another part: its head and spline are not known here, nor is its fit judged";
/// A twist-off bolt has the grade of its own that is of the strength of A325 or A490.
fn twist_off(line: &mut Line, steel: &str) {
    line.note("part", TWIST_OFF);
    let own = match steel {
        "a325" | "a325m" => Grade::F1852,
        "a490" | "a490m" => Grade::F2280,
        _ => return,
    };
    line.draft.set("steel", own.key());
    line.note("steel", "the twist-off bolt of that strength");
    for item in &mut line.items {
        if item.what == What::Steel(SteelWord::Grade(own)) {
            item.became = None;
            item.used("steel");
        }
    }
}

/// A set screw of a bolt's class or grade is the hexagon one that is threaded to the head: the classes of those
/// without a head are others (ISO 898-5).
fn is_hex_set_screw(line: &Line, steel: &str) -> bool {
    let is_headless = line.items.iter().any(|item| {
        let text = lower(&item.text);
        item.what == What::PartStandard("set-screw")
            || lexicon::HEADLESS.iter().any(|word| text.contains(word))
    });
    let is_class = steel.split_once('.').is_some_and(|(strength, _)| strength.parse::<u8>().is_ok());
    (is_class || steel.starts_with("j429")) && !is_headless
}

/// What is concluded from `sets` beside a size, which no number counts.
const SETS: &str = "sets beside a size are taken as hex screws, set screws in British trade: write 200 sets, or “with nuts”, for bolts with their nuts";

/// `sets M16x60`, `M16 x 60 sets 8.8`: the word beside a size or a length, where no number counts it.
fn set_screws(line: &Line) -> Option<usize> {
    let is_size = |at: Option<usize>| {
        at.and_then(|at| line.what(at)).is_some_and(|what| matches!(what, What::Thread(_) | What::Length(_)))
    };
    let counts_sets =
        line.items.iter().any(|item| matches!(&item.what, What::Count(counted) if counted.sets));
    let found = line.free(|what| (*what == What::Set).then_some(()));
    let is_one = |at: &usize| {
        line.items.get(*at).is_some_and(|item| lower(&item.text) == "sets")
            && (is_size(line.before(*at)) || is_size(line.behind(*at)))
    };
    found.into_iter().map(|(at, ())| at).find(is_one).filter(|_| !counts_sets)
}

/// Whether a grade of bolts is one of several of which the line is asked.
fn is_asked_steel(item: &Item) -> bool {
    let is_of_bolt = match &item.what {
        // A325 is that of another part.
        What::Steel(SteelWord::Grade(grade)) => {
            steel::DOTTED.contains(&grade.key()) || grade.key().starts_with("j429")
        }
        What::Steel(SteelWord::Number(_)) => true,
        _ => false,
    };
    is_of_bolt && matches!(&item.became, Some(Became::NotUsed(why)) if asks_which(why))
}

/// What a size with its length and a bolt's grade most often is, where the line names no part; said in sight.
pub(in crate::order::reading) fn by_default(line: &mut Line, scopes: &Scopes) {
    let says = |name: &str| line.draft.get(name).is_some_and(|text| !text.is_empty());
    let of_bolt = line
        .draft
        .get("steel")
        .and_then(Grade::of_key)
        .is_some_and(|grade| !grade.is_nut() && !grade.is_washer() && !grade.is_spring())
        || says("tensile")
        // `8.8 or 10.9`: a bolt whichever it is.
        || line.items.iter().any(is_asked_steel);
    if scopes.by_steel != Some(BySteel::Nothing)
        || says("part")
        || !(says("thread") && says("length") && of_bolt)
    {
        return;
    }
    // `not fully threaded`.
    let is_full = |item: &Item| item.what == What::Part("full-thread") && !left_out::is_gone(&item.became);
    let sets = set_screws(line);
    if let Some(at) = sets.filter(|_| !(scopes.with.0 || scopes.with.1)) {
        line.draft.set("part", Kind::HexScrew.key());
        line.note("part", SETS);
        line.used(at, "part");
        return;
    }
    let (kind, note) = match line.items.iter().any(is_full) {
        true => (Kind::HexScrew, "taken as a hex screw: the line names no part, and a full thread"),
        false => (Kind::HexBolt, NO_PART),
    };
    line.draft.set("part", kind.key());
    line.note("part", note);
    for at in 0..line.items.len() {
        if let Some(item) = line.item(at).filter(|item| {
            matches!(item.what, What::Part("hex" | "head" | "hex head" | "full-thread" | "part-thread"))
                && !left_out::is_gone(&item.became)
        }) {
            item.became = None;
            item.used("part");
        }
    }
}

/// The steel that such a part usually has, where the line says no other: a skin that is hardened, or the
/// spring steel of its standard.
pub(in crate::order::reading) fn usual_steel(line: &mut Line) {
    let Some(kind) = line.draft.get("part").and_then(Kind::from_key) else { return };
    let says_one = |item: &Item| matches!(item.what, What::Steel(_) | What::Hardness(..));
    if line.draft.get("steel").is_some() || line.items.iter().any(says_one) {
        return;
    }
    let found = match kind.usual_steel() {
        UsualSteel::ByGrade => is_clip(line, kind).then_some((Grade::Din471, OF_RINGS)),
        UsualSteel::CaseHardened => {
            Some((Grade::Iso2702, "case-hardened, as such screws usually are: the line says no steel"))
        }
        UsualSteel::Spring => of_standard(line, kind),
    };
    if let Some((grade, note)) = found {
        line.draft.set("steel", grade.key());
        line.note("steel", note);
    }
}

const OF_ITS_STANDARD: &str = "the steel of its standard: the line says no other";
const OF_INCH_SIZES: &str = "the steel of its standard, which is for inch sizes: agree which washer is meant";
const OF_METRIC_SIZES: &str =
    "the steel of its standard, which is for metric sizes: agree which washer is meant";
const OF_RINGS: &str =
    "spring steel, taken as that of the rings of DIN 471: the hardness of its own standard is not known here";
const OF_THE_SAME_KIND: &str =
    "spring steel, taken as that of parts of its kind: the hardness of its own standard is not known here";

/// Standards of the same kind of part whose steel is not known here.
const OF_OTHER_STEEL: &[&str] = &["2093", "13337", "7346"];

/// Whether another part is a clip that springs over a shaft.
fn is_clip(line: &Line, kind: Kind) -> bool {
    matches!(kind, Kind::Other | Kind::OtherWasher)
        && line.items.iter().any(|item| {
            let is_name = matches!(item.what, What::Part("?") | What::PartStandard(""));
            is_name && lexicon::CLIPS.iter().any(|clip| lower(&item.text).contains(clip))
        })
}

/// The spring steel of the standard of a part, and how it is known.
fn of_standard(line: &Line, kind: Kind) -> Option<(Grade, &'static str)> {
    let written = line.draft.get("thread").and_then(|text| Designation::read(text).ok());
    let standards = || line.items.iter().filter(|item| matches!(item.what, What::PartStandard(_)));
    let is_metric = written.map_or_else(|| standards().next().is_some(), |it| it.thread.is_metric());
    let is_other = standards().any(|item| OF_OTHER_STEEL.iter().any(|other| item.text.contains(other)));
    let of = |grade: Grade| (grade, if is_other { OF_THE_SAME_KIND } else { OF_ITS_STANDARD });
    match kind {
        // Without a size nobody knows whether it is metric.
        Kind::SpringWasher => (is_metric || written.is_some()).then(|| spring_washer(line, is_metric)),
        Kind::ConicalWasher if is_metric => Some(of(Grade::Din6796)),
        Kind::RetainingRing if is_metric => Some(of(Grade::Din471)),
        Kind::SpringPin if is_metric => Some(of(Grade::Iso8752)),
        Kind::ConicalWasher => Some((Grade::Din6796, OF_THE_SAME_KIND)),
        Kind::SpringPin => Some((Grade::Iso8752, OF_THE_SAME_KIND)),
        _ => Some((Grade::Din471, OF_RINGS)),
    }
}

/// The steel of the spring washers of the standard that is written, else of the one for such sizes.
pub(in crate::order::reading) fn spring_washer(line: &Line, is_metric: bool) -> (Grade, &'static str) {
    let is_named = |id: &str| {
        let is_it = |item: &Item| {
            matches!(item.what, What::PartStandard(_) | What::PartDocument(_))
                && lower(&item.text).contains(id)
        };
        line.items.iter().any(is_it)
    };
    match is_metric {
        true if is_named("b18.21") => (Grade::B18_21_1, OF_INCH_SIZES),
        true => (Grade::Din127, OF_ITS_STANDARD),
        false if is_named("127") => (Grade::Din127, OF_METRIC_SIZES),
        false => (Grade::B18_21_1, OF_ITS_STANDARD),
    }
}

/// What only the steel says of the part.
pub(in crate::order::reading) fn by_steel(line: &mut Line, scopes: &Scopes) {
    let steel = line.draft.get("steel").unwrap_or_default().to_owned();
    let is_structural = ["a325", "a490"].iter().any(|grade| steel.starts_with(grade));
    if scopes.kind == Some(Kind::Other) {
        if line.items.iter().any(|item| matches!(item.what, What::Part(words) if words.contains("twist-off")))
        {
            twist_off(line, &steel);
        }
        return;
    }
    let of_one_kind = || {
        let row = OF_ONE_KIND.iter().find(|(grade, _)| steel.starts_with(grade));
        row.map(|(grade, key)| {
            let note = if *grade == "a193-b7" {
                "taken as a stud: the line names no part, and this steel is that of studs"
            } else {
                "this steel is made for no other part"
            };
            (*key, note)
        })
    };
    let (key, note) = match scopes.by_steel {
        Some(BySteel::Bolt | BySteel::StructuralHex | BySteel::HeavyHex | BySteel::Nothing)
            if matches!(steel.as_str(), "f1852" | "f2280") =>
        {
            ("other", TWIST_OFF)
        }
        Some(BySteel::Bolt | BySteel::StructuralHex) if is_structural => {
            ("structural-bolt", "bolts of this steel are heavy hex structural bolts")
        }
        Some(BySteel::Bolt) => ("hex-bolt", A_BOLT),
        Some(BySteel::StructuralHex) => {
            ("hex-bolt", "a hexagon bolt: structural ones are heavy hex, HR or HV, or of A325 or A490")
        }
        Some(BySteel::HeavyHex) if is_structural => {
            ("structural-bolt", "heavy hex bolts of this steel are structural bolts")
        }
        Some(BySteel::CapScrew) if ["j429", "a449", "a354"].iter().any(|grade| steel.starts_with(grade)) => {
            ("hex-bolt", "a cap screw of this steel is the hexagon one")
        }
        Some(BySteel::CapScrew) if steel == "a574" => {
            ("socket-screw", "a cap screw of this steel is the socket head one")
        }
        _ if scopes.kind == Some(Kind::SetScrew) && is_hex_set_screw(line, &steel) => {
            ("hex-screw", "a set screw of this steel is the hexagon one, threaded to the head")
        }
        Some(BySteel::Nut) if is_heavy(&steel) => ("heavy-hex-nut", "nuts of this steel are heavy hex nuts"),
        Some(BySteel::Nothing) => match of_one_kind() {
            Some(found) => found,
            None => return,
        },
        _ => return,
    };
    line.draft.set("part", key);
    line.note("part", note);
    for at in &scopes.names {
        // Plain is a finish, where it is none of the part.
        if let Some(item) = line.item(*at).filter(|item| item.what != What::Part("plain")) {
            item.became = None;
            item.used("part");
        }
    }
}
