//! What an order asks for: advice, a process, a document, or a class of a document.

use crate::calculator::{Choice, choices};
use crate::coat::Process::{Electroplated, HotDip, Mechanical};
use crate::coat::{CoatClass, Process, class};
use crate::source::Document;
use crate::source::document;

/// The coat that an order asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Asked {
    /// A process, of whatever class.
    Process(Process),
    /// A coat that is not judged here, by its name.
    Other(&'static str),
    /// A document, which has a class for the size or for the years.
    Document(&'static Document),
    /// One class.
    Class(&'static Keyed),
    /// One of two processes.
    Either(Either),
}

/// Two processes of which one will do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Either {
    /// The one that is named first.
    pub first: Process,
    /// The one that is named behind it.
    pub second: Process,
    /// Whether the second is wanted only where the first does not suit.
    pub in_order: bool,
}

impl Asked {
    /// The process that gives it, of two the one that is wanted first; `None` where both are wanted alike, for a
    /// document that no class is known of, and for a coat that is not judged here.
    pub fn process(&self) -> Option<Process> {
        match self {
            Self::Process(process) => Some(*process),
            Self::Other(_) => None,
            Self::Document(document) => class::of(document).first().map(|class| class.process),
            Self::Class(keyed) => keyed.class().map(|class| class.process),
            Self::Either(either) => either.in_order.then_some(either.first),
        }
    }

    /// Whether it names the process as one of two.
    pub fn is_either(&self, process: Process) -> bool {
        matches!(self, Self::Either(either) if either.first == process || either.second == process)
    }

    /// Its key among [`CHOICES`].
    pub fn key(&self) -> &'static str {
        match self {
            Self::Class(keyed) => keyed.key,
            // Whatever is asked for came from a key.
            whole => WHOLE.iter().find(|(_, asked)| asked == whole).map_or(ADVISE, |(choice, _)| choice.key),
        }
    }
}

choices! {
    /// The processes that an order leaves out.
    pub enum LeftOut {
        Nothing: "none", "Nothing";
        HotDip: "kettle", "Hot-dip";
        Mechanical: "barrel", "Mechanical";
        Electroplated: "cell", "Electroplated";
        HotDipAndMechanical: "kettle-barrel", "Hot-dip and mechanical";
        HotDipAndElectroplated: "kettle-cell", "Hot-dip and electroplated";
        MechanicalAndElectroplated: "barrel-cell", "Mechanical and electroplated";
    }
}

impl LeftOut {
    /// Whether the process is one of them.
    pub fn holds(self, process: Process) -> bool {
        self.key().split('-').any(|key| key == process.key())
    }

    /// The one that holds these and no others; `None` where none would be left.
    pub fn of(processes: &[Process]) -> Option<Self> {
        let same = |left: &Self| Process::ALL.iter().all(|one| left.holds(*one) == processes.contains(one));
        Self::ALL.iter().copied().find(same)
    }
}

/// A class that an order can ask for, by its key.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Keyed {
    /// Stable key for links.
    pub key: &'static str,
    /// As the user sees it.
    pub label: &'static str,
    document: &'static Document,
    class: &'static str,
}

impl Keyed {
    /// The class, from the table of its standard.
    pub fn class(&self) -> Option<&'static CoatClass> {
        class::all().find(|class| class.document == self.document && class.name == self.class)
    }
}

/// The key of an order that asks for nothing.
pub const ADVISE: &str = "advise";

/// What is asked for by a process or a document alone.
static WHOLE: [(Choice, Asked); 28] = [
    (Choice::new("kettle", "Hot-dip, of whatever class"), Asked::Process(HotDip)),
    (Choice::new("barrel", "Mechanical, of whatever class"), Asked::Process(Mechanical)),
    (Choice::new("cell", "Electroplated, of whatever class"), Asked::Process(Electroplated)),
    (Choice::new("a153", "ASTM A153, hot-dip, class by size"), Asked::Document(&document::ASTM_A153)),
    (Choice::new("by-f2329", "ASTM F2329, hot-dip, class by size"), Asked::Document(&document::ASTM_F2329)),
    (Choice::new("b695", "ASTM B695, mechanical, of whatever class"), Asked::Document(&document::ASTM_B695)),
    (
        Choice::new("b633", "ASTM B633, electroplated, of whatever class"),
        Asked::Document(&document::ASTM_B633),
    ),
    (
        Choice::new("f1941", "ASTM F1941, electroplated, of whatever class"),
        Asked::Document(&document::ASTM_F1941),
    ),
    (
        Choice::new("iso4042", "ISO 4042, electroplated, of whatever class"),
        Asked::Document(&document::ISO_4042_1999),
    ),
    either("kettle-or-barrel", "Hot-dip or mechanical", HotDip, Mechanical),
    either("kettle-or-cell", "Hot-dip or electroplated", HotDip, Electroplated),
    either("barrel-or-cell", "Mechanical or electroplated", Mechanical, Electroplated),
    rather("kettle-else-barrel", "Hot-dip, else mechanical", HotDip, Mechanical),
    rather("kettle-else-cell", "Hot-dip, else electroplated", HotDip, Electroplated),
    rather("barrel-else-kettle", "Mechanical, else hot-dip", Mechanical, HotDip),
    rather("barrel-else-cell", "Mechanical, else electroplated", Mechanical, Electroplated),
    rather("cell-else-kettle", "Electroplated, else hot-dip", Electroplated, HotDip),
    rather("cell-else-barrel", "Electroplated, else mechanical", Electroplated, Mechanical),
    other("bare", "No zinc, not judged here", "A part without zinc"),
    other("zinc-flake", "Zinc flake, not judged here", "Zinc flake"),
    other("zinc-alloy", "Plated zinc alloy, not judged here", "A plated zinc alloy"),
    other("sherardized", "Sherardized, not judged here", "Sherardizing"),
    other("zinc-spray", "Sprayed zinc, not judged here", "Sprayed zinc"),
    other("zinc-paint", "Zinc-rich paint, not judged here", "Zinc-rich paint"),
    other("cadmium", "Cadmium, not judged here", "Cadmium"),
    other("other-metal", "Nickel, chrome, tin, copper …, not judged here", "A coat of another metal"),
    other("phosphate", "Phosphate or black oxide, not judged here", "Phosphate or black oxide"),
    other("organic", "Paint, powder, PTFE …, not judged here", "An organic coat"),
];

const fn either(key: &'static str, label: &'static str, first: Process, second: Process) -> (Choice, Asked) {
    (Choice::new(key, label), Asked::Either(Either { first, second, in_order: false }))
}

const fn rather(key: &'static str, label: &'static str, first: Process, second: Process) -> (Choice, Asked) {
    (Choice::new(key, label), Asked::Either(Either { first, second, in_order: true }))
}

const fn other(key: &'static str, label: &'static str, name: &'static str) -> (Choice, Asked) {
    (Choice::new(key, label), Asked::Other(name))
}

macro_rules! asked {
    ($($key:literal, $label:literal, $document:ident, $class:literal;)+) => {
        /// Every class that can be asked for.
        pub static ALL: &[Keyed] = &[
            $(Keyed { key: $key, label: $label, document: &document::$document, class: $class }),+
        ];
    };
}

/// The choices of the field: advice first, then processes and documents, then classes.
#[allow(
    clippy::indexing_slicing,
    reason = "evaluated when it is compiled: a place beyond the end is no build"
)]
pub static CHOICES: [Choice; 1 + WHOLE.len() + ALL.len()] = {
    let mut choices = [Choice::new(ADVISE, "Advise me"); 1 + WHOLE.len() + ALL.len()];
    let mut at = 0;
    while at < WHOLE.len() {
        choices[1 + at] = WHOLE[at].0;
        at += 1;
    }
    let mut at = 0;
    while at < ALL.len() {
        choices[1 + WHOLE.len() + at] = Choice::new(ALL[at].key, ALL[at].label);
        at += 1;
    }
    choices
};

asked! {
    "iso10684", "ISO 10684, hot-dip, M8 to M64", ISO_10684, "M8 to M64";
    "a153-c", "ASTM A153 class C, hot-dip, over 3/8 in", ASTM_A153, "class C";
    "a153-d", "ASTM A153 class D, hot-dip, 3/8 in and under", ASTM_A153, "class D";
    "f2329", "ASTM F2329, hot-dip, over 3/8 in", ASTM_F2329, "over 3/8 in";
    "f2329-small", "ASTM F2329, hot-dip, 3/8 in and under", ASTM_F2329, "3/8 in and under";
    "iso1461", "ISO 1461, hot-dip, spun, threads over 6 mm", ISO_1461, "threads over 6 mm";
    "b695-5", "ASTM B695 class 5, mechanical", ASTM_B695, "class 5";
    "b695-8", "ASTM B695 class 8, mechanical", ASTM_B695, "class 8";
    "b695-12", "ASTM B695 class 12, mechanical", ASTM_B695, "class 12";
    "b695-25", "ASTM B695 class 25, mechanical", ASTM_B695, "class 25";
    "b695-40", "ASTM B695 class 40, mechanical", ASTM_B695, "class 40";
    "b695-50", "ASTM B695 class 50, mechanical", ASTM_B695, "class 50";
    "b695-55", "ASTM B695 class 55, mechanical", ASTM_B695, "class 55";
    "b695-65", "ASTM B695 class 65, mechanical", ASTM_B695, "class 65";
    "b695-70", "ASTM B695 class 70, mechanical", ASTM_B695, "class 70";
    "b695-80", "ASTM B695 class 80, mechanical", ASTM_B695, "class 80";
    "b695-110", "ASTM B695 class 110, mechanical", ASTM_B695, "class 110";
    "b633-5", "ASTM B633 Fe/Zn 5, electroplated", ASTM_B633, "Fe/Zn 5 (SC 1, mild)";
    "b633-8", "ASTM B633 Fe/Zn 8, electroplated", ASTM_B633, "Fe/Zn 8 (SC 2, moderate)";
    "b633-12", "ASTM B633 Fe/Zn 12, electroplated", ASTM_B633, "Fe/Zn 12 (SC 3, severe)";
    "b633-25", "ASTM B633 Fe/Zn 25, electroplated", ASTM_B633, "Fe/Zn 25 (SC 4, very severe)";
    "f1941-3", "ASTM F1941 Fe/Zn 3, electroplated", ASTM_F1941, "Fe/Zn 3";
    "f1941-5", "ASTM F1941 Fe/Zn 5, electroplated", ASTM_F1941, "Fe/Zn 5";
    "f1941-8", "ASTM F1941 Fe/Zn 8, electroplated", ASTM_F1941, "Fe/Zn 8";
    "f1941-12", "ASTM F1941 Fe/Zn 12, electroplated", ASTM_F1941, "Fe/Zn 12";
    "iso4042-3", "ISO 4042 nominal 3, electroplated", ISO_4042_1999, "nominal 3";
    "iso4042-5", "ISO 4042 nominal 5, electroplated", ISO_4042_1999, "nominal 5";
    "iso4042-8", "ISO 4042 nominal 8, electroplated", ISO_4042_1999, "nominal 8";
    "iso4042-10", "ISO 4042 nominal 10, electroplated", ISO_4042_1999, "nominal 10";
    "iso4042-12", "ISO 4042 nominal 12, electroplated", ISO_4042_1999, "nominal 12";
    "iso4042-15", "ISO 4042 nominal 15, electroplated", ISO_4042_1999, "nominal 15";
    "iso4042-20", "ISO 4042 nominal 20, electroplated", ISO_4042_1999, "nominal 20";
    "iso4042-25", "ISO 4042 nominal 25, electroplated", ISO_4042_1999, "nominal 25";
    "iso4042-30", "ISO 4042 nominal 30, electroplated", ISO_4042_1999, "nominal 30";
}

/// The key of one of two processes: `in_order` where the second is wanted only if the first does not suit.
pub fn either_key(first: Process, second: Process, in_order: bool) -> Option<&'static str> {
    let is_it = |asked: &Asked| match asked {
        Asked::Either(either) if either.in_order == in_order => {
            (either.first, either.second) == (first, second)
                || !in_order && (either.first, either.second) == (second, first)
        }
        _ => false,
    };
    WHOLE.iter().find(|(_, asked)| is_it(asked)).map(|(choice, _)| choice.key)
}

/// What is asked for by that key; [`ADVISE`] is nothing.
pub fn from_key(key: &str) -> Option<Asked> {
    let whole = WHOLE.iter().find(|(choice, _)| choice.key == key).map(|(_, asked)| *asked);
    whole.or_else(|| ALL.iter().find(|asked| asked.key == key).map(Asked::Class))
}
