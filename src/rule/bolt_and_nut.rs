//! A bolt in its nut: what the documents say of its load, and what the model says.

use crate::quantity::{Force, Length, Quantity, Shown, Stress, unit};
use crate::steel::pairing::{self, BoltToPair, Nuts};
use crate::steel::{self, Grade, Level};
use crate::table::Refusal;
use crate::table::en_14399_loads::System;
use crate::table::iso_898_2_pairing;
use crate::table::nut_grade::NutGrade;
use crate::table::nut_style::{self, Tapping};
use crate::table::pairing::Nut;
use crate::thread::load::{self, BoltLoads, Load, Loads};
use crate::thread::overtap::{self, Allowance};
use crate::thread::strength::nut_height::Style;
use crate::thread::{Thread, ToleranceClass};

mod model;

pub use model::{LITTLE_LOST, Model, Pair, Threads};

/// A bolt in its nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoltAndNut {
    /// The thread.
    pub thread: Thread,
    /// The class of the bolt before its coat; a bolt cut under has position az.
    pub bolt_class: ToleranceClass,
    /// How the nut is tapped.
    pub allowance: Allowance,
    /// The bolt's grade, or its tensile strength.
    pub bolt: BoltSteel,
    /// The nut's grade, or its own level.
    pub nut: NutSteel,
    /// The nut's body.
    pub body: NutBody,
    /// How many ends of the nut are countersunk.
    pub countersunk_ends: u8,
}

/// The steel of the bolt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BoltSteel {
    /// By its grade, at the least strength of it.
    Grade(Grade),
    /// By its own tensile strength.
    Tensile(Stress),
}

/// The steel of the nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NutSteel {
    /// By its grade, at the least hardness of it.
    Grade(Grade),
    /// By its own hardness or tensile strength.
    Level(Level),
}

/// The body of the nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NutBody {
    /// Of a standard.
    Style(Style),
    /// Its own height and width across flats.
    Own(Length, Length),
}

/// A pair, and what it carries: found once, because documents and the model are asked for it.
#[derive(Debug, Clone, PartialEq)]
pub struct Carried {
    /// The pair.
    pub pair: BoltAndNut,
    /// What it carries.
    pub carries: Carries,
}

/// What the pair carries, as far as anybody says.
#[derive(Debug, Clone, PartialEq)]
pub enum Carries {
    /// ISO 10684 leaves the loads of ISO 898 as they are.
    FullLoads,
    /// ISO 10684 reduces the load of M8 and M10 to this.
    Reduced(Load),
    /// A document gives the nut this proof load, tapped as it is, and it carries the bolt.
    Proof(Load),
    /// No document says it; the model does.
    Model(Box<Model>),
    /// No document says it, and the model does not reach the pair.
    Unknown(Refusal),
}

/// Which part of the pair a refusal is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Blame {
    /// The thread.
    Thread,
    /// The class of the bolt.
    BoltClass,
    /// The steel of the bolt.
    Bolt,
    /// How the nut is tapped.
    Allowance,
    /// The steel of the nut.
    Nut,
    /// The body of the nut.
    Body,
    /// Its countersinks.
    Countersunk,
}

impl BoltAndNut {
    /// Whether the bolt is cut under, however that was written.
    pub fn is_undercut(&self) -> bool {
        self.bolt_class.is_undercut()
    }

    /// Whether room is made for zinc: the nut tapped over or the bolt cut under.
    pub fn is_for_zinc(&self) -> bool {
        self.is_undercut() || self.allowance != Allowance::Standard
    }

    /// What the standards give the bolt, where its grade is known.
    pub fn bolt_loads(&self) -> Option<BoltLoads> {
        let BoltSteel::Grade(grade) = self.bolt else { return None };
        let strength = steel::load::bolt(grade, self.thread.diameter()).ok()?;
        Some(load::bolt(self.thread, &strength, self.is_undercut()))
    }

    /// What they give the nut as it is tapped, where its grade and style are known.
    pub fn nut_load(&self) -> Option<Result<Load, Refusal>> {
        self.load_of_nut(|nut| self.tapping(nut))
    }

    /// What they give it in its standard class.
    pub fn standard_nut_load(&self) -> Option<Result<Load, Refusal>> {
        self.load_of_nut(|_| Tapping::Standard)
    }

    fn load_of_nut(&self, tapping: impl Fn(NutGrade) -> Tapping) -> Option<Result<Load, Refusal>> {
        let (NutSteel::Grade(grade), NutBody::Style(style)) = (self.nut, self.body) else { return None };
        let of = |nut| load::nut(self.thread, nut, style.of_loads(), tapping(nut));
        Some(steel::load::nut(grade).and_then(of))
    }

    /// The nuts that the standards put on the bolt, where its grade is known.
    pub fn nuts(&self) -> Option<Result<Nuts, Refusal>> {
        let BoltSteel::Grade(grade) = self.bolt else { return None };
        Some(pairing::nuts(BoltToPair {
            grade,
            diameter: self.thread.diameter(),
            is_coarse: self.thread.has_coarse_loads(),
            is_zinc_coated: self.is_for_zinc() && !self.is_undercut(),
            system: self.system(),
        }))
    }

    /// The pair with what it carries.
    pub fn carried(self) -> Carried {
        Carried { carries: self.carries(), pair: self }
    }

    /// What the pair carries: by a document where one says it, else by the model.
    fn carries(&self) -> Carries {
        if let Some(stated) = self.stated() {
            return stated;
        }
        match self.threads().and_then(|threads| self.model(&threads)) {
            Ok(model) => Carries::Model(Box::new(model)),
            Err((_, refusal)) => Carries::Unknown(refusal),
        }
    }

    /// What a document says of the load of the pair; `None` where none does.
    ///
    /// A nut counts as tapped by a document where it is no wider than that makes it. The standards have to
    /// put the two together, or the nut has to prove at least what the bolt breaks at.
    pub fn stated(&self) -> Option<Carries> {
        let NutSteel::Grade(grade) = self.nut else { return None };
        let nut = steel::load::known_nut(grade)?;
        let style = match self.body {
            NutBody::Style(style) => style.of_loads(),
            NutBody::Own(..) => return None,
        };
        let goes = self.nuts()?.is_ok_and(|nuts| nuts.takes(grade, Some(style)) == Some(true));
        let is_iso = matches!(nut, NutGrade::Iso898_2(_));
        let tapping = self.tapping(nut);
        // The document ends at class 10.9: of 12.9 in a nut tapped over nobody says a load.
        let ends = matches!(self.bolt, BoltSteel::Grade(bolt) if bolt.in_iso_10684() == Some(false));
        if is_iso && ends && self.is_for_zinc() {
            return None;
        }
        if is_iso && goes && (self.is_undercut() || matches!(tapping, Tapping::Az | Tapping::Ax)) {
            return Some(match load::hot_dip(self.thread)? {
                Loads::Full => Carries::FullLoads,
                // A nut of 6G is not one of 6AZ: what it loses is told by the model.
                Loads::Reduced if self.loses_little() => return None,
                Loads::Reduced if self.is_undercut() => Carries::Reduced(self.bolt_loads()?.proof.ok()?),
                Loads::Reduced => Carries::Reduced(self.nut_load()?.ok()?),
            });
        }
        // Of a nut tapped by an allowance of no document none says a load, and nobody reads why.
        if self.is_undercut() || tapping == Tapping::Own {
            return None;
        }
        let proof = load::nut(self.thread, nut, style, tapping).ok()?;
        let breaks = self.bolt_loads().and_then(|loads| loads.ultimate.ok());
        (goes || breaks.is_some_and(|breaks| proof.force >= breaks.force)).then_some(Carries::Proof(proof))
    }

    /// Whether a nut of an allowance of its own loses too little against a standard one to matter.
    fn loses_little(&self) -> bool {
        let model = || self.threads().and_then(|threads| self.model(&threads));
        matches!(self.allowance, Allowance::Own(_)) && model().is_ok_and(|model| model.loses_little())
    }

    /// A nut for the same bolt, tapped alike, to which a document gives a load that carries it.
    pub fn better(&self) -> Option<Nut> {
        let nuts = self.nuts()?.ok()?;
        nuts.find(|nut| {
            let Some(grade) = steel::load::grade_of_nut(nut.grade) else { return false };
            let Some(style) = Style::of(nut.style, self.thread) else { return false };
            let other = Self { nut: NutSteel::Grade(grade), body: NutBody::Style(style), ..*self };
            matches!(other.stated(), Some(Carries::FullLoads | Carries::Proof(_)))
        })
    }

    /// How the tables of loads call the nut of a grade, tapped as it is: a nut that is no wider than its
    /// document makes it counts as tapped by that.
    fn tapping(&self, nut: NutGrade) -> Tapping {
        if self.allowance == Allowance::Standard {
            return Tapping::Standard;
        }
        let is_iso = matches!(nut, NutGrade::Iso898_2(_) | NutGrade::En14399(_));
        // What is tapped to 6AZ counts as that, and is told without its limits.
        if is_iso && self.allowance == Allowance::Az {
            return Tapping::Az;
        }
        let Ok(by) = overtap::allowance(self.thread, self.allowance) else { return self.allowance.tapping() };
        // A hundredth of a micrometre decides nothing.
        let by = by.value - Length::from_um(0.01);
        let within = |of| overtap::allowance(self.thread, of).is_ok_and(|most| by <= most.value);
        match nut {
            _ if is_iso && load::hot_dip(self.thread).is_some() => {
                [Allowance::Az, Allowance::Ax].into_iter().find(|of| within(*of))
            }
            NutGrade::A563M(_) | NutGrade::A194(_) if self.thread.is_metric() && self.thread.is_coarse() => {
                Some(Allowance::A563M).filter(|of| within(*of))
            }
            NutGrade::A563(_) | NutGrade::A194(_) | NutGrade::J995(_) => {
                Some(Allowance::A563).filter(|of| within(*of))
            }
            _ => None,
        }
        .unwrap_or(self.allowance)
        .tapping()
    }

    /// A nut of EN 14399 says of which system its bolt is.
    fn system(&self) -> Option<System> {
        let NutSteel::Grade(grade) = self.nut else { return None };
        match steel::load::known_nut(grade)? {
            NutGrade::En14399(class) => Some(class.system()),
            _ => None,
        }
    }

    /// The style that a nut of its grade has in this size: that which the standards put on the bolt, where
    /// they name one; of ISO 898-2 the lowest in which the class exists.
    pub fn usual_style(&self) -> Style {
        let usual = if self.thread.is_metric() { Style::Iso4032 } else { Style::HeavyHex };
        let NutSteel::Grade(grade) = self.nut else { return usual };
        let Some(nut) = steel::load::known_nut(grade) else { return usual };
        let style = match nut {
            NutGrade::Iso898_2(class) => {
                let d = self.thread.diameter().mm();
                iso_898_2_pairing::style_of(class, d, self.thread.has_coarse_loads())
            }
            NutGrade::J995(_) => Some(nut_style::Style::Hex),
            NutGrade::A563M(_) | NutGrade::En14399(_) => Some(nut_style::Style::HeavyHex),
            NutGrade::A563(_) | NutGrade::A194(_) => {
                let nuts = self.nuts().and_then(Result::ok);
                nuts.and_then(|nuts| nuts.find(|other| other.grade == nut)).map(|nut| nut.style)
            }
        };
        style.and_then(|style| Style::of(style, self.thread)).unwrap_or(usual)
    }

    /// The style of the nut, as the tables of loads call it.
    pub fn style(&self) -> Option<nut_style::Style> {
        match self.body {
            NutBody::Style(style) => Some(style.of_loads()),
            NutBody::Own(..) => None,
        }
    }

    /// A load in kilonewtons, or in pounds-force for an inch thread.
    pub fn shown(&self, load: Force) -> Shown {
        if self.thread.is_metric() { load.show(&unit::KILONEWTON, 1) } else { load.show(&unit::LBF, 0) }
    }
}

#[cfg(test)]
mod tests;
