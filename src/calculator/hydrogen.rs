//! Hydrogen risk: which documents' limits a steel meets or passes, what each asks for, and the verdict.

use super::steel_fields::{DIAMETER, GRADE};
use super::{About, Calculator, Missed, Problem, Reader, Report, Writer};
use crate::coat::Process;
use crate::quantity::{Hardness, Length, Scale, Stress};
use crate::rule::case::{USUAL_BATH, USUAL_DIP};
use crate::rule::{self, Case, Cleaning, Key, Ruling, SteelFacts, Topic};
use crate::steel::bake::{self, Bake};
use crate::steel::tempering::{self, Dip, Effect};
use crate::steel::{Grade, Hardest, Level, Measure, State, Steel, Worked};
use crate::table::{Refusal, iso_2081};
use crate::working::Mark;

mod fields;
mod report;
mod working;

/// The calculator.
#[derive(Debug)]
pub struct HydrogenRisk;

/// What it needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// How the steel is known.
    pub steel: Known,
    /// Whether its surface was hardened apart from its core.
    pub case_hardened: bool,
    /// What was done to it after any heat treatment.
    pub worked: Worked,
    /// The process asked about.
    pub process: Process,
    /// How the steel is cleaned.
    pub cleaning: Cleaning,
}

/// How the steel is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Known {
    /// By its grade and nominal diameter.
    Grade(Grade, Length),
    /// By its greatest hardness.
    Hardness(Hardness),
    /// By its greatest tensile strength.
    Tensile(Stress),
}

/// What it finds.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// The steel, as the rules judge it.
    pub steel: SteelFacts,
    /// The hardest end in HRC, HV and MPa; a refusal where no table leads there.
    pub hardest: [Result<Hardest, Refusal>; 3],
    /// The bake after electroplating by ASTM B850.
    pub bake: Result<Option<Bake>, Refusal>,
    /// The bake of the earlier ISO 2081, for a bolt whose section is known.
    pub bake_by_section: Option<&'static iso_2081::Row>,
    /// A usual dip, where the grade is known.
    pub dip: Option<Dip>,
    /// What it does to the temper of a grade; `None` where only a hardness is known.
    pub heat: Option<Result<Effect, Refusal>>,
    /// Its nominal diameter, where the grade is known.
    pub diameter: Option<Length>,
}

impl Calculator for HydrogenRisk {
    const ABOUT: About = About {
        id: "hydrogen",
        title: "Hydrogen risk",
        answers: "Says, rule by rule, whether hydrogen stands against a zinc coat on this steel, and what to do.",
        fields: &fields::FIELDS,
        examples: &fields::EXAMPLES,
    };
    type Input = Input;
    type Outcome = Outcome;

    fn read(reader: &mut Reader<'_>) -> Result<Input, Missed> {
        fields::read(reader)
    }

    fn write(input: &Input, writer: &mut Writer) {
        fields::write(input, writer);
    }

    const EXPLAINS: &'static [Topic] = &[Topic::Hydrogen];

    fn fill(case: &Case<'_>, writer: &mut Writer) -> Option<()> {
        let steel = case.steel?;
        fields::write(
            &Input {
                steel: match steel.state.steel {
                    Steel::Grade(properties) => Known::Grade(properties.grade, case.diameter?),
                    Steel::Hardness(hardness) => Known::Hardness(hardness),
                    Steel::Tensile(tensile) => Known::Tensile(tensile),
                },
                case_hardened: steel.state.case_hardened,
                worked: steel.state.worked,
                process: case.process,
                cleaning: steel.cleaning,
            },
            writer,
        );
        Some(())
    }

    fn solve(input: &Input) -> Result<Outcome, Problem> {
        let steel = match input.steel {
            Known::Grade(grade, diameter) => {
                Steel::grade(grade, diameter).map_err(|refusal| DIAMETER.refused(refusal))?
            }
            Known::Hardness(hardness) => Steel::Hardness(hardness),
            Known::Tensile(tensile) => Steel::Tensile(tensile),
        };
        let state = State { steel, case_hardened: input.case_hardened, worked: input.worked };
        let steel = SteelFacts::new(state, input.cleaning);
        if let Err(refusal) = &*steel.levels {
            let refusal = refusal.clone();
            return Err(match input.steel {
                Known::Grade(..) => GRADE.refused(refusal),
                Known::Hardness(_) => fields::HARDNESS.refused(refusal),
                Known::Tensile(_) => fields::TENSILE.refused(refusal),
            });
        }
        let hardest = [Measure::Scale(Scale::Hrc), Measure::Scale(Scale::Hv), Measure::Tensile]
            .map(|measure| state.hardest(measure));
        let [_, _, tensile] = &hardest;
        let bake_by_section = match (input.steel, tensile) {
            (Known::Grade(grade, diameter), Ok(Hardest { level: Level::Tensile(tensile), .. }))
                if !grade.is_nut() && !grade.is_washer() =>
            {
                bake::by_section(*tensile, diameter)
            }
            _ => None,
        };
        let (dip, diameter) = match input.steel {
            Known::Grade(_, diameter) => {
                let dip = Dip { grade: state.grade(), temper: None, bath: USUAL_BATH, time: USUAL_DIP };
                (Some(dip), Some(diameter))
            }
            Known::Hardness(_) | Known::Tensile(_) => (None, None),
        };
        let heat = dip.as_ref().map(tempering::effect);
        Ok(Outcome { steel, hardest, bake: bake::by_b850(&state), bake_by_section, dip, heat, diameter })
    }

    fn explain(input: &Input, outcome: &Outcome) -> Report {
        report::report(input, outcome)
    }
}

impl Outcome {
    /// The case of the steel in a process, every document judged by itself.
    fn case(&self, process: Process) -> Case<'_> {
        Case { heat: self.heat.as_ref(), diameter: self.diameter, ..self.steel.alone(process) }
    }

    /// The rules of hydrogen, and what the heat of a usual bath or the product standard rules out.
    fn rulings(&self, process: Process) -> Vec<Ruling> {
        let case = self.case(process);
        let product =
            rule::rule(Key::StructuralCoating).judge(&case).filter(|ruling| ruling.mark == Mark::Bar);
        let hydrogen = rule::judge_topic(&case, Topic::Hydrogen);
        hydrogen.chain(rule::bars(&case, Topic::Heat)).chain(product).collect()
    }
}
