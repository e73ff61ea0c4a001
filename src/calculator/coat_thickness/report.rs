//! The outcome arranged into a report.

use super::working::working;
use super::{Input, Outcome, Stated};
use crate::calculator::{Figure, MarkRow, Note, Picture, Report, ScaleMark, Section, Written};
use crate::coat::{CoatClass, ThicknessLimit, class, factor};
use crate::quantity::{Density, Dimension, Length, Quantity, Shown, Unit, unit};
use crate::source::document;
use crate::table::astm_b695;

/// The report.
pub(super) fn report(input: &Input, outcome: &Outcome) -> Report {
    let thickness = |unit, decimals| range("t", unit_name(unit), outcome.thickness, unit, decimals);
    let mass = |unit, decimals| range("m", unit_name(unit), outcome.mass, unit, decimals);
    let (um, mil, g_m2, oz_ft2) =
        (thickness(&unit::UM, 1), thickness(&unit::MIL, 3), mass(&unit::G_M2, 1), mass(&unit::OZ_FT2, 3));
    let headline = format!("{} = {} = {} = {}", um.value, mil.value, g_m2.value, oz_ft2.value);
    let figures = vec![um, mil, thickness(&unit::MM, 4), thickness(&unit::INCH, 5), g_m2, oz_ft2];
    Report {
        headline,
        figures,
        sections: classes(input),
        working: working(input, outcome),
        notes: vec![
            Note::plain(
                "Limits are compared without rounding, in the column that the standard prints for the unit given; a \
                 mass without such a column by the factor of that standard. A single value is one article or one \
                 place; the average is over the articles of a batch.",
            ),
            Note::sourced(
                "The classes of ISO 12683 (mechanical zinc) were not found in a public copy; open the \
                 standard for them.",
                document::ISO_12683.read("class table not seen"),
            ),
            Note::sourced(astm_b695::DISAGREEMENT.value, astm_b695::DISAGREEMENT.source),
        ],
        picture: Some(picture(input, outcome)),
        ..Report::default()
    }
}

/// The classes of every standard as rulers, with the coat on them.
fn picture(input: &Input, outcome: &Outcome) -> Picture {
    let um = |length: Length| length.show(&unit::UM, 1);
    let mut rows: Vec<MarkRow> = Vec::new();
    for class in class::all() {
        let Some(limit) = class.single.or(class.average) else { continue };
        // What all classes of a standard begin with, and what stands in brackets, its marks go without.
        let kinds = ["class ", "nominal ", "Fe/Zn "];
        let name = kinds.iter().find_map(|kind| class.name.strip_prefix(kind)).unwrap_or(class.name);
        let name = name.split_once(" (").map_or(name, |(name, _)| name);
        let mark = ScaleMark { label: name.into(), at: um(limit.thickness) };
        let (worst, _, min) = compared(&limit, input, class);
        let mark = (mark, class::reaches(worst, min));
        let label = format!("{}, {}", class.document.name, class.process.name());
        match rows.last_mut() {
            Some(last) if last.label == label => last.marks.push(mark),
            _ => rows.push(MarkRow { label: label.into(), marks: vec![mark] }),
        }
    }
    let (thinnest, thickest) = outcome.thickness;
    let mark = |label: &'static str, at| ScaleMark { label: label.into(), at: um(at) };
    let marks = if thinnest == thickest {
        vec![mark("coat", thinnest)]
    } else {
        vec![mark("thinnest", thinnest), mark("thickest", thickest)]
    };
    Picture::Rulers {
        title: "The coat beside the least single value of every class; heavy lines are reached.".into(),
        rows,
        marks,
    }
}

fn unit_name(unit: &Unit) -> String {
    let what = if unit.dimension == Dimension::ArealMass { "Mass" } else { "Thickness" };
    format!("{what}, {}", unit.name)
}

/// A figure that is one number where both ends are the same.
fn range<Q: Quantity + PartialEq>(
    symbol: &'static str,
    name: String,
    (min, max): (Q, Q),
    unit: &'static Unit,
    decimals: u8,
) -> Figure {
    if min == max {
        Figure::one(symbol, name, min.show(unit, decimals))
    } else {
        Figure::range(symbol, name, min.show(unit, decimals), max.show(unit, decimals))
    }
}

/// The classes of every standard, with what the coat is to each.
fn classes(input: &Input) -> Vec<Section> {
    let mut sections: Vec<Section> = Vec::new();
    for class in class::all() {
        let title = format!("{}, {}", class.document.name, class.process);
        let limits = [("single value", &class.single, None), ("average", &class.average, class.average_max)];
        let words = limits.map(|(name, limit, max)| match limit {
            Some(limit) if name == "average" => {
                format!("as an average {}", judged(limit, input, class, max.as_ref()))
            }
            Some(limit) => format!("as a single value {}", judged(limit, input, class, None)),
            None => format!("no {name} is asked"),
        });
        let words = words.join("; ");
        let limit = class.single.or(class.average);
        let mut figure = Figure::words(format!("{}: {}", class.name, class.applies), words);
        figure.source = limit.map(|limit| class.source(&limit));
        match sections.last_mut() {
            Some(last) if last.title == title => last.figures.push(figure),
            _ => sections.push(Section { title: title.into(), figures: vec![figure] }),
        }
    }
    sections
}

/// What the coat is to one limit, in words: in the column printed for its unit, and a mass without
/// such a column by the factor of the class's own standard.
fn judged(limit: &ThicknessLimit, input: &Input, class: &CoatClass, max: Option<&ThicknessLimit>) -> String {
    let compare = |limit| compared(limit, input, class);
    let (worst, _, min) = compare(limit);
    let met = class::reaches(worst, min);
    match max.map(compare) {
        Some((_, most, max)) if met && !class::reaches(max, most) => format!("too thick (at most {max})"),
        _ if met => format!("met (least {min})"),
        _ => format!("short (least {min})"),
    }
}

/// The least and the most that the coat can be, beside the limit it is compared with.
fn compared(limit: &ThicknessLimit, input: &Input, class: &CoatClass) -> (Shown, Shown, Shown) {
    let column = |unit| limit.column(unit);
    match input.coat {
        Stated::Thickness(Written { quantity, unit }) => {
            let coat = quantity.show(unit, 6);
            (coat, coat, column(unit).unwrap_or(limit.printed))
        }
        Stated::Mass(Written { quantity, unit }) => match column(unit) {
            Some(printed) => {
                let coat = quantity.show(unit, 6);
                (coat, coat, printed)
            }
            None => {
                let own = factor::of_class(class);
                let coat = |density: Density| (quantity / density).show(&unit::UM, 6);
                (coat(own.max), coat(own.min), limit.printed)
            }
        },
    }
}
