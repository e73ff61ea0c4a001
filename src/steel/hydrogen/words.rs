//! The rulings in words: the comparison first, then what follows from it. Nothing is judged here.

use std::borrow::Cow;

use super::super::state::{Compared, Over};
use super::super::{Converted, Grade, Level, Standing};
use super::{Assessment, Cleaning, Rule, Ruling};
use crate::quantity::{Quantity, unit};
use crate::sentence::capital;
use crate::table::astm_b850;
use crate::table::steel_row::Treatment;

impl Assessment {
    /// A ruling in words; a condition is said as an instruction.
    pub fn text(&self, ruling: &Ruling) -> String {
        let by_case = ruling.rule == Rule::F1941Cleaning && self.state.case_hardened;
        let compared = self.compared(ruling.rule);
        let consequence = self.consequence(ruling);
        // Room for the longest of them.
        let mut text = String::with_capacity(320);
        match &compared {
            // The case decides, whatever the hardness.
            Some(_) if by_case => text.push_str("The part is case-hardened: "),
            Some(compared) => {
                compare(&mut text, ruling.rule, compared);
                text.push_str(": ");
            }
            None => {}
        }
        match &compared {
            Some(_) => text.push_str(&consequence),
            None => text.push_str(&capital(&consequence)),
        }
        if compared.is_some_and(|compared| self.only_at_the_hard_end(&compared)) {
            text.push_str(if ruling.rule == Rule::F2329Risk {
                ". The document counts from the least hardness specified, which is below; the hardest end is \
                 taken to be safe"
            } else {
                ". Only the hardest end of the grade gets there; the lot's own hardness may not"
            });
        }
        text
    }

    /// What to say beside the rules.
    pub fn remarks(&self) -> Vec<&'static str> {
        let mut remarks = Vec::new();
        let grade = self.state.grade().map(|properties| properties.grade);
        if self.state.case_hardened {
            remarks.push(
                "A case is harder than its core: give the hardness of the surface. No document read here sets \
                 a limit for case-hardened parts in the barrel.",
            );
            if matches!(grade, Some(Grade::Class10_9 | Grade::Class12_9 | Grade::Class12_9Underlined)) {
                remarks.push(
                    "ISO 898-1 accepts no surface harder than 390 HV on class 10.9 and 435 HV on class 12.9: \
                     check what was ordered.",
                );
            }
        }
        remarks
    }

    /// Whether a grade passes a limit at its hardest end while its least hardness stays below.
    fn only_at_the_hard_end(&self, compared: &Compared) -> bool {
        let Some(grade) = self.state.grade() else { return false };
        let min = match compared.limit {
            Level::Hardness(limit) => {
                grade.limits(limit.scale).and_then(|limits| limits.min).map(Level::Hardness)
            }
            Level::Tensile(_) => grade.row.tensile_min.map(|min| Level::Tensile(min.value)),
        };
        compared.passed && min.is_some_and(|min| min.number() < compared.limit.number())
    }

    fn consequence(&self, ruling: &Ruling) -> Cow<'static, str> {
        let met = ruling.standing == Standing::Met;
        let washer = self.state.grade().is_some_and(|properties| properties.grade == Grade::F436);
        let text = match ruling.rule {
            Rule::F2329Ban if met => "no ban on hot-dip coating",
            Rule::F2329Ban if washer => {
                "ASTM F2329 bans hot-dip coating from there, but ASTM F436 provides for it on washers: order \
                 the washer as hot-dip zinc coated, 26 to 45 HRC after coating"
            }
            Rule::F2329Ban => "ASTM F2329 forbids hot-dip coating; take the barrel or zinc flake",
            Rule::F2329CaseHardened => "ASTM F2329 forbids hot-dip coating of case-hardened fasteners",
            Rule::PracticeKettle if met => "common practice does not advise against hot-dip",
            Rule::PracticeKettle if washer => {
                "common practice hot-dips nothing harder, washers of ASTM F436 excepted: have the hardness \
                 read after coating"
            }
            Rule::PracticeKettle => "common practice hot-dips nothing harder",
            Rule::Iso10684Scope if met => "ISO 10684 covers this class",
            Rule::Iso10684Scope => "ISO 10684 covers bolts up to class 10.9 only, and not this class",
            Rule::F3125Kettle => {
                "ASTM F3125 does not allow grade A490 to be hot-dip galvanized; it lists zinc flake instead"
            }
            Rule::F2329Risk if met => "no risk of hydrogen embrittlement by ASTM F2329",
            Rule::F2329Risk => return self.descale_or_bake().into(),
            Rule::A143Strength if met => "hydrogen is usually of no concern by ASTM A143",
            Rule::A143Strength => match self.cleaning {
                Cleaning::Mechanical => {
                    "hydrogen is of concern by ASTM A143; blast clean as chosen, then flash pickle only"
                }
                _ => "hydrogen is of concern by ASTM A143; blast clean, then flash pickle only",
            },
            Rule::Iso10684Cleaning if met => "ISO 10684 asks for no special cleaning",
            Rule::Iso10684Cleaning => match self.cleaning {
                Cleaning::Acid => {
                    "clean in inhibited acid, alkaline or mechanically instead of plain acid, and keep the time \
                     in acid as short as possible"
                }
                Cleaning::InhibitedAcid => {
                    "keep to inhibited acid as chosen, for the shortest time that cleans"
                }
                Cleaning::Alkaline => {
                    "keep to alkaline cleaning as chosen, with the shortest time in acid after it"
                }
                Cleaning::Mechanical => {
                    "keep to mechanical cleaning as chosen, with the shortest time in acid after it"
                }
            },
            Rule::A143Bend => return self.bend().into(),
            Rule::MakersAdvice => {
                "bolt makers advise against galvanizing this grade: have the purchaser agree to it in writing"
            }
            Rule::F3125Barrel => {
                "ASTM F3125 does not allow grade A490 to be mechanically coated; it lists zinc flake instead"
            }
            Rule::B695Relief if met => "ASTM B695 asks for no stress relief",
            Rule::B695Relief => {
                "relieve the stress of machined, ground or cold-formed parts before cleaning, at about 190 °C for \
                 3 h or longer; check temperature and time in ASTM B695, 6.2.1"
            }
            Rule::B695Cleaning => match ruling.standing {
                Standing::Met => "the cleaning chosen is one that ASTM B695 prefers",
                Standing::Note => "plain acid adds hydrogen; a steel this soft stands it",
                _ => {
                    "plain acid adds hydrogen: clean alkaline without current or anodic, in inhibited acid, or mechanically"
                }
            },
            Rule::BarrelHydrogen if met => "no concern in the barrel",
            Rule::BarrelHydrogen => {
                "the barrel is the process chosen to avoid embrittlement here: no current and so no hydrogen \
                 from plating, yet cleaning and the acid tumble leave some possible"
            }
            Rule::BarrelPractice if met => "parts as hard are plated in barrels by common practice",
            Rule::BarrelPractice => {
                "common practice plates parts of 45 HRC, and spring parts above 50 HRC: agree a test for \
                 embrittlement on the plated lot"
            }
            Rule::A490Cell => {
                "ASTM A490 allows no coating; ASTM F3125 later lists zinc flake, and no plating"
            }
            Rule::Iso2081Strength if met => "electroplating is not ruled out by strength",
            Rule::Iso2081Strength => "conventional zinc electroplating should not be used",
            Rule::B849Relief if met => "ASTM B849 asks for no stress relief",
            Rule::B849Relief => {
                "relieve stress at 190 to 230 °C or hotter, below the temper, before cleaning and plating"
            }
            Rule::B633Relief if met => "ASTM B633 asks for no stress relief",
            Rule::B633Relief => "relieve the stress of machined, ground or cold-formed parts before cleaning",
            Rule::F1941Cleaning if met => "ASTM F1941 asks for no special cleaning",
            Rule::F1941Cleaning if self.cleaning == Cleaning::Mechanical => {
                "keep to abrasive cleaning as chosen"
            }
            Rule::F1941Cleaning if self.cleaning == Cleaning::Alkaline => {
                "clean abrasively; alkaline cleaning stays without cathodic current"
            }
            Rule::F1941Cleaning => {
                "clean abrasively; use inhibited acid, and alkaline without cathodic current"
            }
            Rule::B850Bake if met => "ASTM B850 asks for no bake",
            Rule::B850Bake => return self.bake_by_b850().into(),
            Rule::B633Bake if met => "ASTM B633 asks for no bake",
            Rule::B633Bake => "bake after plating",
            Rule::F1941Bake | Rule::F1941BakeEarlier if met => "no bake by this edition of ASTM F1941",
            Rule::F1941Bake | Rule::F1941BakeEarlier => {
                "bake at 177 to 232 °C (350 to 450 °F), begun within 4 h; ASTM F1941 sets no hours, 2 to 24 may suit"
            }
            Rule::Iso4042Bake if met => "ISO 4042:2018 asks for no bake",
            Rule::Iso4042Bake => "settle with the purchaser whether and how to bake",
            Rule::Iso4042Investigate if met => "the earlier ISO 4042 asked for no process test",
            Rule::Iso4042Investigate => {
                "the earlier ISO 4042 asked for a test of the process, and for a bake where it found embrittlement"
            }
            Rule::Iso4042Agree if met => "the earlier ISO 4042 asked for no agreement",
            Rule::Iso4042Agree => "the earlier ISO 4042 asked for a written agreement on the risk",
        };
        text.into()
    }

    fn descale_or_bake(&self) -> String {
        let descale = match self.cleaning {
            Cleaning::Mechanical => "descale mechanically, as chosen",
            _ => "descale mechanically",
        };
        format!(
            "risk of hydrogen embrittlement by ASTM F2329; {descale}, or bake after pickling and before \
             galvanizing, because the coat keeps hydrogen in"
        )
    }

    fn bend(&self) -> String {
        let first = "make cold bends with an inside radius of at least three times the section; ";
        let treatment = self.state.grade().map(|properties| properties.treatment());
        let tighter = match treatment {
            Some(Treatment::NotHeatTreated) => {
                "relieve a tighter bend at 595 °C (1100 °F), one hour per inch of section, before pickling"
            }
            Some(Treatment::QuenchedTempered) => {
                "a tighter bend would need 595 °C for an hour per inch, which takes this steel's temper: bend it hot, \
                 before heat treatment"
            }
            Some(Treatment::NotKnown) | None => {
                "relieve a tighter bend at 595 °C (1100 °F), one hour per inch of section, before pickling, unless \
                 the steel is quenched and tempered: that heat takes its temper"
            }
        };
        format!("{first}{tighter}")
    }

    fn bake_by_b850(&self) -> String {
        let (low, high) = astm_b850::TEMPERATURE;
        let within = format!(
            "begun within {} of plating, better within {}",
            astm_b850::WITHIN.0.show(&unit::HOUR, 0),
            astm_b850::PREFERABLY_WITHIN.show(&unit::HOUR, 0)
        );
        match super::bake(&self.state) {
            Ok(Some(bake)) => format!(
                "bake at {} to {} for at least {}, {within}",
                low.show(&unit::CELSIUS, 0).digits(),
                high.show(&unit::CELSIUS, 0),
                bake.row.hours.show(&unit::HOUR, 0)
            ),
            Ok(None) => "no bake".to_owned(),
            Err(refusal) => format!("a bake is needed, {within}; its hours are not in the table: {refusal}"),
        }
    }
}

/// `39 HRC (382 HV) reaches 33 HRC`, behind a text.
fn compare(text: &mut String, rule: Rule, compared: &Compared) {
    let over = rule.limit().map_or(Over::AtLeast, |limit| limit.over);
    level(text, compared.value, compared.converted);
    text.push_str(match (over, compared.passed) {
        (Over::AtLeast, true) => " reaches ",
        (Over::AtLeast, false) => " stays below ",
        (Over::Above, true) => " is above ",
        (Over::Above, false) => " is not above ",
    });
    level(text, compared.limit, compared.limit_converted);
}

/// A level, and in brackets what it was converted from.
fn level(text: &mut String, level: Level, converted: Option<Converted>) {
    text.push_str(&level.show().to_string());
    if let Some(converted) = converted {
        text.push_str(" (");
        text.push_str(&converted.from.show().to_string());
        text.push(')');
    }
}
