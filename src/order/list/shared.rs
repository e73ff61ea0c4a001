//! What a line goes through that others of a list may go through with it: the bath of a kettle, the load
//! of a barrel.

use std::fmt;
use std::sync::LazyLock;

use crate::calculator::powder_mass;
use crate::coat::{CoatClass, Process, kettle};
use crate::order::arrange;
use crate::order::{Judged, Judgement, OrderLine};
use crate::quantity::{Area, Length, Mass, Quantity, unit};
use crate::rule::Offer;
use crate::steel::tempering::Bath;
use crate::table::astm_b695;

/// What a line goes through, and what it takes of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shared {
    /// What others may share.
    pub through: Through,
    /// Zinc out of the kettle, without dross and ash, which belong to the plant; where the shape is known.
    pub pick_up: Option<Mass>,
    /// Zinc powder to weigh into the barrel; where the shape is known.
    pub powder: Option<Mass>,
}

/// What lines of a list can share.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Through {
    /// The class that the coat is ordered by.
    pub class: &'static CoatClass,
    /// Of the kettle: the bath, and how the zinc is taken off.
    kettle: Option<(Bath, kettle::Wiping)>,
}

impl Shared {
    /// What a line goes through in a process; `None` where that offers no coat.
    pub(super) fn of(line: &OrderLine, judgement: &Judgement, judged: &Judged) -> Option<Self> {
        let offer = judged.offer.as_ref()?;
        let class = offer.class;
        // Of a lot of which nobody says how many pieces there are, nothing is known.
        let is_known = line.quantity.is_some();
        Some(match judged.process {
            Process::HotDip => {
                let length = judgement.main().and_then(|main| main.shape()?.ok()?.overall_length());
                let wiping = kettle::wiping(length.unwrap_or(Length::from_mm(0.0)), None);
                let area = arrange::coated_area(line, judgement, judged.process);
                Self {
                    through: Through { class, kettle: Some((Bath::of(line.bath), wiping)) },
                    pick_up: area.filter(|_| is_known).map(|area| pick_up(offer, area)),
                    powder: None,
                }
            }
            Process::Mechanical => {
                let area = arrange::coated_area(line, judgement, judged.process);
                let powder = area.filter(|_| is_known).and_then(|area| powder(offer, area));
                Self { through: Through { class, kettle: None }, pick_up: None, powder }
            }
            Process::Electroplated => {
                Self { through: Through { class, kettle: None }, pick_up: None, powder: None }
            }
        })
    }
}

fn pick_up(offer: &Offer, area: Area) -> Mass {
    kettle::pick_up(area, offer.mean_of_a_load(), offer.factor().min, 0.0, 0.0).fed
}

/// The powder by what the calculator of the barrel has where nothing else is said.
fn powder(offer: &Offer, area: Area) -> Option<Mass> {
    /// For a square metre: the powder goes by the area and by nothing else.
    static OF_CLASS: LazyLock<Vec<(&str, Mass)>> = LazyLock::new(|| {
        let classes = astm_b695::CLASSES.iter();
        let charge = |class: &'static CoatClass| {
            let least = class.single?.thickness;
            Some((class.name, powder_mass::usual_powder(Area::from_m2(1.0), least)?))
        };
        classes.filter_map(charge).collect()
    });
    let (_, powder) = OF_CLASS.iter().find(|(name, _)| *name == offer.class.name)?;
    Some(*powder * area.m2())
}

impl fmt::Display for Through {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let CoatClass { process, document, name, .. } = self.class;
        write!(f, "{}: {}, {name}", process.vessel(), document.name)?;
        let Some((bath, wiping)) = self.kettle else { return Ok(()) };
        let (min, max) = bath.range();
        let [min, max] = [min, max].map(|end| end.map(|end| end.show(&unit::CELSIUS, 0)));
        match (min, max) {
            (Some(min), Some(max)) => write!(f, ", bath of {} to {max}", min.digits())?,
            (Some(min), None) => write!(f, ", bath above {min}")?,
            (None, Some(max)) => write!(f, ", bath below {max}")?,
            (None, None) => {}
        }
        f.write_str(match wiping {
            kettle::Wiping::Spin => ", spun",
            kettle::Wiping::AskBasket => ", spun in a large basket",
            kettle::Wiping::AirRing => ", wiped one by one",
            kettle::Wiping::TooLong => ", longer than what is said to be processed",
        })
    }
}
