//! A load, arranged for its reader.

use super::{Load, Stated, System};
use crate::calculator::{Figure, Finding, Note, Section};
use crate::quantity::{Area, Quantity, Shown, unit};
use crate::rule::{Case, Ruling};
use crate::source::{common_practice, document};
use crate::table::mechanical_process as practice;

/// What rules say of a case, told as everywhere.
pub fn told(case: &Case<'_>, rulings: impl IntoIterator<Item = Ruling>) -> Vec<Finding> {
    let told = |ruling: Ruling| Finding::new(ruling.mark, ruling.text(case), ruling.source(case));
    rulings.into_iter().map(told).collect()
}

impl Load {
    /// Area, weight and pieces.
    pub fn figures(&self, stated: &Stated) -> Vec<Figure> {
        let system = stated.system();
        let mut figures = vec![Figure::one("A", "Area of the load", system.area(self.area))];
        if let Some(mass) = self.mass {
            figures.push(Figure::one("M", "Weight of the load", system.weight(mass)));
            figures.push(match system {
                System::Metric => {
                    let each = Area::from_m2(self.area.m2() / mass.kg());
                    Figure::one("", "Area of one kilogram", each.show(&unit::M2, 4))
                }
                System::Inch => {
                    let each = Area::from_ft2(self.area.ft2() / mass.lb());
                    Figure::one("", "Area of one pound", each.show(&unit::FT2, 3))
                }
            });
        }
        if let Some(pieces) = self.pieces {
            figures.push(Figure::one("n", "Pieces", Shown::pieces(pieces)));
        }
        figures
    }

    /// The sizes of the part with their sources, its area and its mass.
    pub fn section(&self) -> Option<Section> {
        let piece = self.piece.as_ref()?;
        let mut figures: Vec<Figure> = piece
            .shape
            .dimensions()
            .into_iter()
            .map(|own| {
                let mut figure = Figure::one(own.symbol, own.name, own.size.length.show(&unit::MM, 2));
                figure.source = own.size.source;
                figure
            })
            .collect();
        figures.push(Figure::one(
            "A_1",
            "Surface of one, threads developed",
            piece.shape.surface().show(&unit::CM2, 2),
        ));
        figures.push(Figure::one("m_1", "Mass of one", piece.shape.mass().show(&unit::G, 1)));
        Some(Section { title: format!("Sizes of the {}", piece.kind).into(), figures })
    }

    /// What the area rests on.
    pub fn notes(&self, stated: &Stated) -> Vec<Note> {
        let text = match stated {
            Stated::Count(..) | Stated::Weight(..) => {
                return vec![Note::sourced(
                    "Sizes are nominal, which for most is the greatest the standard allows; threads count with \
                     both flanks. Own sizes replace those of the standard.",
                    document::ARITHMETIC.computed("geometry of the solid"),
                )];
            }
            Stated::Area(..) => {
                return vec![Note::sourced(
                    "An area that nobody knows is found by weight: weigh the load and measure a part, or strip or \
                     coat a few parts and weigh the zinc on them.",
                    common_practice("area by weight"),
                )];
            }
            Stated::Measured(..) => {
                "A bar or a plate without its ends and edges stands for the part: short parts, heads and holes have \
                 more area. A trial that is stripped and weighed is surer."
            }
            Stated::Trial(..) => {
                "The trial stands for the load: the same parts, and the gauge on as many places as it takes for a \
                 mean."
            }
        };
        vec![Note::sourced(text, practice::THREADED_AREA.source)]
    }
}
