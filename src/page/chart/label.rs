//! Names over a chart, each above the line that it names.

use super::measure::{LINE, width_of, wrap};
use super::{Anchor, Shape};
use crate::sorting::sort_by;

/// A line over the whole chart with its name at its head.
#[derive(Debug, Clone)]
pub struct Named {
    /// Its place.
    pub x: f64,
    /// What stands there.
    pub name: String,
    /// A limit is drawn heavier than a value.
    pub class: &'static str,
}

/// The widest a name becomes before it runs over another line.
const WIDEST: f64 = 300.0;
/// Between a line and its name.
const GAP: f64 = 6.0;

#[derive(Debug)]
struct Placed {
    lines: Vec<String>,
    left: f64,
    right: f64,
    anchor: Anchor,
    x: f64,
    class: &'static str,
    /// Rows between the name and the chart.
    row: usize,
}

/// Sets the names in rows over the chart so that none covers another and, where that can be, no line
/// passes behind another's name. Returns the shapes for a chart that ends at `bottom` below the rows,
/// and the height of the rows.
pub fn names(named: &[Named], width: f64, height_below: f64) -> (Vec<Shape>, f64) {
    let mut order: Vec<&Named> = named.iter().collect();
    // From the middle outwards: whoever stands further out has the name above.
    sort_by(&mut order, |one, other| {
        middle(one, width).total_cmp(&middle(other, width)).then(one.x.total_cmp(&other.x))
    });
    let mut placed: Vec<Placed> = Vec::new();
    for named in order {
        let one = place(named, width, &placed);
        placed.push(one);
    }
    let rows = placed.iter().map(|one| one.row + one.lines.len()).max().unwrap_or(0);
    let top = rows as f64 * LINE + if rows > 0 { 6.0 } else { 0.0 };
    let mut lines = Vec::new();
    let mut texts = Vec::new();
    for one in placed {
        let foot = top - 6.0 - one.row as f64 * LINE;
        let head = foot - one.lines.len() as f64 * LINE;
        lines.push(Shape::Line {
            class: one.class,
            from: (one.x, head + 3.0),
            to: (one.x, top + height_below),
        });
        let x = if one.anchor == Anchor::Start { one.x + GAP } else { one.x - GAP };
        for (at, text) in one.lines.into_iter().enumerate() {
            let y = head + (at + 1) as f64 * LINE - 5.0;
            texts.push(Shape::Text { class: "name", at: (x, y), anchor: one.anchor, text });
        }
    }
    lines.append(&mut texts);
    (lines, top)
}

/// How far a line stands from the side that its name runs to, from the middle of the picture.
fn middle(named: &Named, width: f64) -> f64 {
    (named.x - width / 2.0).abs()
}

fn place(named: &Named, width: f64, placed: &[Placed]) -> Placed {
    let rightwards = named.x <= width / 2.0;
    let room = if rightwards { width - named.x } else { named.x } - GAP;
    let lines = wrap(&named.name, room.min(WIDEST));
    let widest = lines.iter().map(|line| width_of(line)).fold(0.0, f64::max) + GAP;
    let (left, right, anchor) = if rightwards {
        (named.x, named.x + widest, Anchor::Start)
    } else {
        (named.x - widest, named.x, Anchor::End)
    };
    // Above every name whose line this one would cover, then in the first row that is free.
    let covered = placed.iter().filter(|other| (left - 3.0..=right + 3.0).contains(&other.x));
    let mut row = covered.map(|other| other.row + other.lines.len()).max().unwrap_or(0);
    let clash = |row: usize| {
        placed.iter().find(|other| {
            let beside = other.right + 8.0 < left || right + 8.0 < other.left;
            let apart = other.row + other.lines.len() <= row || row + lines.len() <= other.row;
            !beside && !apart
        })
    };
    while let Some(other) = clash(row) {
        row = other.row + other.lines.len();
    }
    Placed { lines, left, right, anchor, x: named.x, class: named.class, row }
}
