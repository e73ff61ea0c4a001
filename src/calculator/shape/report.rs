//! What a calculator answers.

use std::borrow::Cow;
use std::rc::Rc;

use serde::{Serialize, Serializer};

use super::{Link, Picture};
use crate::quantity::Shown;
use crate::sorting::sort_by_key;
use crate::source::Source;
use crate::working::{Mark, Working};

/// The answer of a calculator, as data. The page, the terminal and the sheet each set it.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Report {
    /// The verdict, where there is one.
    pub verdict: Option<Verdict>,
    /// The answer in one sentence.
    pub headline: String,
    /// The figures that answer the question.
    pub figures: Vec<Figure>,
    /// Further figures, in groups with a title.
    pub sections: Vec<Section>,
    /// Rule by rule: what is met, what is asked, what rules out.
    pub findings: Vec<Finding>,
    /// How the figures came about.
    pub working: Working,
    /// Cautions that go with the work.
    pub cautions: Vec<Caution>,
    /// What the reader should know besides.
    pub notes: Vec<Note>,
    /// One picture, described as data. What it shows stands in the figures: programs do without it.
    #[serde(skip)]
    pub picture: Option<Picture>,
}

/// The three verdicts, in the same words everywhere; the order is from best to worst.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// Nothing stands against it.
    Suits,
    /// It suits if what is asked is done.
    OnConditions,
    /// It must not be done.
    RuledOut,
}

/// A named value.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Figure {
    /// Its symbol, or empty.
    pub symbol: &'static str,
    /// Its name in words.
    pub name: Cow<'static, str>,
    /// Its value.
    pub value: Value,
    /// Where it is published, if it was not computed here.
    pub source: Option<Source>,
}

/// A value: one number, a range, or words.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Value {
    /// One number with its unit.
    One(Shown),
    /// From the least to the greatest.
    Range(Shown, Shown),
    /// Words.
    Words(Cow<'static, str>),
}

/// A group of figures.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Section {
    /// What they have in common.
    pub title: Cow<'static, str>,
    /// The figures.
    pub figures: Vec<Figure>,
}

/// What one rule says of the case.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Finding {
    /// What it means for the verdict.
    pub mark: Mark,
    /// In words; a condition is said as an instruction.
    pub text: Cow<'static, str>,
    /// The rule.
    pub source: Source,
    /// Further places that say the same.
    pub also: Vec<Source>,
    /// The calculator behind it, filled in; many rules of one calculator share it.
    pub opens: Option<Rc<Link>>,
}

/// A note, with the source it rests on if it states a fact.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Note {
    /// The note.
    pub text: Cow<'static, str>,
    /// Its source.
    pub source: Option<Source>,
}

/// Cautions of the trade, said in the same words everywhere.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Caution {
    /// Molten zinc.
    MoltenZinc,
    /// Pickling acid.
    Acid,
    /// Hydrogen gas over acid and zinc powder.
    HydrogenGas,
    /// Zinc dust.
    ZincDust,
    /// Delayed fracture by hydrogen.
    DelayedFracture,
    /// Structural bolts are not used again.
    NotReused,
    /// The standard comes first.
    StandardFirst,
}

impl Verdict {
    /// The verdict's words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Suits => "Suits",
            Self::OnConditions => "Suits on conditions",
            Self::RuledOut => "Ruled out",
        }
    }

    /// The verdict that findings lead to.
    pub fn of(findings: &[Finding]) -> Self {
        Self::of_marks(findings.iter().map(|finding| finding.mark))
    }

    /// The verdict that marks lead to: the worst of them.
    pub fn of_marks(marks: impl Iterator<Item = Mark>) -> Self {
        match marks.max() {
            Some(Mark::Bar) => Self::RuledOut,
            Some(Mark::Condition | Mark::NotJudged) => Self::OnConditions,
            Some(Mark::Met | Mark::Note | Mark::Term) | None => Self::Suits,
        }
    }
}

impl Figure {
    /// A single number.
    pub fn one(symbol: &'static str, name: impl Into<Cow<'static, str>>, value: Shown) -> Self {
        Self { symbol, name: name.into(), value: Value::One(value), source: None }
    }

    /// A range.
    pub fn range(symbol: &'static str, name: impl Into<Cow<'static, str>>, min: Shown, max: Shown) -> Self {
        Self { symbol, name: name.into(), value: Value::Range(min, max), source: None }
    }

    /// Words.
    pub fn words(name: impl Into<Cow<'static, str>>, words: impl Into<Cow<'static, str>>) -> Self {
        Self { symbol: "", name: name.into(), value: Value::Words(words.into()), source: None }
    }

    /// With the place where it is published.
    #[must_use]
    pub fn source(mut self, source: Source) -> Self {
        self.source = Some(source);
        self
    }
}

impl Finding {
    /// A finding.
    pub fn new(mark: Mark, text: impl Into<Cow<'static, str>>, source: Source) -> Self {
        Self { mark, text: text.into(), source, also: Vec::new(), opens: None }
    }

    /// The worst first: what rules out, what is not judged, what is to be done; then the rest as it stands.
    pub fn worst_first(mut findings: Vec<Self>) -> Vec<Self> {
        // What touches no verdict keeps its order among itself.
        sort_by_key(&mut findings, |finding| std::cmp::Reverse(finding.mark.max(Mark::Term)));
        findings
    }

    /// With the calculator behind it.
    #[must_use]
    pub fn opens(mut self, link: impl Into<Rc<Link>>) -> Self {
        self.opens = Some(link.into());
        self
    }
}

impl Note {
    /// A note that states no fact of its own.
    pub fn plain(text: impl Into<Cow<'static, str>>) -> Self {
        Self { text: text.into(), source: None }
    }

    /// A note with its source.
    pub fn sourced(text: impl Into<Cow<'static, str>>, source: Source) -> Self {
        Self { text: text.into(), source: Some(source) }
    }
}

impl Caution {
    /// The caution in words.
    pub fn words(self) -> &'static str {
        match self {
            Self::MoltenZinc => {
                "Molten zinc burns, and it explodes on water: only dry, vented work goes into the bath, \
                 handled by trained people behind a shield."
            }
            Self::Acid => {
                "Pickling acid burns skin and eyes: gloves, face shield, acid into water, ventilation."
            }
            Self::HydrogenGas => {
                "Hydrogen gas forms over acid and zinc powder: ventilate, and keep every source of \
                 ignition away."
            }
            Self::ZincDust => "Fine zinc dust burns and explodes near flame or sparks; do not blow it about.",
            Self::DelayedFracture => {
                "Hydrogen can break a hard bolt days after it was tightened, without warning; \
                 baking lowers the risk and does not end it."
            }
            Self::NotReused => {
                "Do not reuse or re-tighten a galvanized structural bolt on the strength of a calculator."
            }
            Self::StandardFirst => {
                "These figures support the standard named, the purchaser's specification, local codes \
                 and licensed engineering practice; they never replace them."
            }
        }
    }
}

impl Serialize for Caution {
    /// As its words.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.words())
    }
}

impl Report {
    /// Every source the report rests on, each once, in the order met.
    pub fn sources(&self) -> Vec<Source> {
        let mut sources = Vec::new();
        let mut add = |source: Source| {
            if !sources.contains(&source) {
                sources.push(source);
            }
        };
        let in_sections = self.sections.iter().flat_map(|section| &section.figures);
        self.figures.iter().chain(in_sections).filter_map(|figure| figure.source).for_each(&mut add);
        self.findings.iter().map(|finding| finding.source).for_each(&mut add);
        for step in self.working.steps() {
            step.terms.iter().filter_map(|term| term.source).for_each(&mut add);
            add(step.source);
        }
        self.notes.iter().filter_map(|note| note.source).for_each(&mut add);
        sources
    }
}

impl std::fmt::Display for Value {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::One(shown) => write!(f, "{shown}"),
            Self::Range(min, max) if min.unit == max.unit => {
                write!(f, "{} to {max}", min.digits())
            }
            Self::Range(min, max) => write!(f, "{min} to {max}"),
            Self::Words(words) => f.write_str(words),
        }
    }
}

impl std::fmt::Display for Verdict {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.words())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::unit;

    /// A unit is said once where it is the same at both ends.
    #[test]
    fn a_range_says_its_units() {
        let of = |number, unit| Shown { number, unit, decimals: 0 };
        let range = |from, to| Value::Range(from, to).to_string().replace('\u{a0}', " ");
        assert_eq!(range(of(2.0, &unit::MM), of(3.0, &unit::MM)), "2 to 3 mm");
        assert_eq!(range(of(900.0, &unit::UM), of(1.0, &unit::MM)), "900 µm to 1 mm");
    }
}
