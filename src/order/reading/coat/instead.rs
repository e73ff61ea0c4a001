//! A coat that is not judged here, or none: asked for all the same, and named.

use crate::order::reading::Became;
use crate::order::reading::items::{Item, Line};
use crate::order::reading::lexicon;
use crate::order::reading::what::What;
use crate::process::Process;
use crate::quantity::letters::lower;
use crate::sorting::sort_by_key;

/// A coat that is not judged here is asked for all the same, and named; where zinc is asked for as well, that
/// is judged.
pub(super) fn not_judged(line: &mut Line) {
    let is_plain = |item: &Item| {
        let left = match &item.became {
            None => true,
            Some(Became::NotUsed(why)) => why.is_empty() || why == lexicon::BARE,
            Some(_) => false,
        };
        left && item.what == What::Part("plain")
    };
    let mut named: Vec<(usize, &'static str)> = line
        .items
        .iter()
        .enumerate()
        .filter_map(|(at, item)| match item.what {
            What::Other(key) if item.is_free() => Some((at, key)),
            _ => is_plain(item).then_some((at, "bare")),
        })
        .collect();
    // `black phos` is a coat, and its colour.
    sort_by_key(&mut named, |(_, key)| *key == "bare");
    for (at, key) in named {
        let why = if key == "bare" { lexicon::BARE } else { lexicon::OTHER_COAT };
        if line.draft.get("asked").is_none_or(|asked| asked == key) {
            line.draft.set("asked", key);
            if let Some(item) = line.item(at) {
                // That there is none says the field itself.
                item.became = Some(Became::Used(vec!["asked"], Some(why.into()).filter(|_| key != "bare")));
            }
        } else {
            let says_none = key == "bare" && line.items.get(at).is_some_and(|item| says_no_coat(&item.text));
            line.not(
                at,
                match () {
                    () if INSTEAD.contains(&key) => WHICH_COAT,
                    () if says_none => NO_COAT_OR_ZINC,
                    () => why,
                },
            );
        }
    }
}

/// `electroplated Zn/Ni`, `Cd plated`, `zinc metallized`: how another coat is put on, or of what it is, and no zinc beside
/// it.
pub(super) fn plated_with_another(line: &mut Line) {
    let is_one_of = |at: Option<usize>, keys: &[&str]| {
        at.is_some_and(|at| matches!(line.what(at), Some(What::Other(key)) if keys.contains(key)))
    };
    let says_how = |at: usize| {
        line.items.get(at).is_some_and(|item| {
            let others: &[&str] = match lower(&item.text).as_str() {
                word if lexicon::PLATED.contains(&word) => PLATE,
                "zinc" | "zn" | "zink" | "zinco" => OF_ZINC,
                _ => return false,
            };
            item.is_free()
                && matches!(item.what, What::Process(Process::Electroplated, _))
                && (is_one_of(line.before(at), others) || is_one_of(line.behind(at), others))
        })
    };
    let found: Vec<usize> = (0..line.items.len()).filter(|at| says_how(*at)).collect();
    for at in found {
        line.binds(at);
    }
}

/// `uncoated`, `ohne Beschichtung`; black and plain are said of a chromate and of a shape as well.
fn says_no_coat(text: &str) -> bool {
    let text = lower(text);
    lexicon::NO_COAT.iter().any(|begin| text.starts_with(begin))
}

/// Why such a coat beside zinc is not used.
const WHICH_COAT: &str = "another coat than the zinc that is asked for: which of the two is wanted?";

/// Why words for no coat beside zinc are not used.
const NO_COAT_OR_ZINC: &str = "no zinc, or the zinc that stands beside it: which of the two?";

/// Coats that are not judged here and that stand instead of zinc, not on it.
const INSTEAD: &[&str] = &["zinc-flake", "zinc-alloy", "sherardized", "zinc-spray", "cadmium", "other-metal"];

/// Those of them that are of zinc all the same, put on by heat.
const OF_ZINC: &[&str] = &["sherardized", "zinc-spray"];

/// Those of them that are electroplated.
const PLATE: &[&str] = &["zinc-alloy", "cadmium", "other-metal"];
