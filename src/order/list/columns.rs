//! How a list is laid out: which column says what, and the written line that a row makes.

use crate::quantity::letters::lower;

/// A list that shows how: a heading and three lines.
pub const TEMPLATE: &str = "\
part,thread,length (mm),steel,quantity,place,years,coat,nut,washer
hex bolt,M16,60,8.8,400,C3,15,,,
hex bolt,M20,90,10.9,1200,C4,12,mechanical,,
stud,5/8-11,102,B7,250,C3,15,hot-dip,2H,
";

/// How a list is laid out.
#[derive(Debug, Clone, PartialEq)]
pub enum Layout {
    /// One written line a row.
    Lines,
    /// Cells in columns, under a heading.
    Columns {
        /// What stands between the cells.
        separator: u8,
        /// What each column says; `None` for one whose heading says nothing of an order.
        columns: Vec<Option<Column>>,
    },
}

/// What a column says.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    says: Says,
    /// The unit of its bare numbers, as its heading names it.
    unit: Option<String>,
}

/// What a heading can say of its column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Says {
    Line,
    Part,
    Thread,
    Class,
    Length,
    Steel,
    Quantity,
    Place,
    Years,
    Coat,
    Nut,
    Washer,
}

/// The headings, in small letters and without what stands in brackets.
const HEADINGS: [(Says, &[&str]); 12] = [
    (
        Says::Line,
        &["line", "order line", "description", "item description", "text", "bezeichnung", "artikel"],
    ),
    (Says::Part, &["part", "kind", "type", "product", "teil", "teileart"]),
    (Says::Thread, &["thread", "size", "thread size", "gewinde", "abmessung"]),
    (Says::Class, &["thread class", "tolerance", "tolerance class", "toleranz"]),
    (Says::Length, &["length", "l", "länge", "laenge"]),
    (
        Says::Steel,
        &[
            "steel",
            "grade",
            "material",
            "property class",
            "strength",
            "festigkeitsklasse",
            "werkstoff",
            "güte",
        ],
    ),
    (Says::Quantity, &["quantity", "qty", "pcs", "pieces", "count", "menge", "stück", "stueck", "anzahl"]),
    (Says::Place, &["place", "environment", "category", "corrosivity", "site", "umgebung", "ort"]),
    (Says::Years, &["years", "life", "service life", "years wanted", "jahre", "lebensdauer"]),
    (Says::Coat, &["coat", "coating", "finish", "zinc", "beschichtung", "überzug", "oberfläche"]),
    (Says::Nut, &["nut", "nuts", "nut grade", "mutter", "muttern"]),
    (Says::Washer, &["washer", "washers", "washer grade", "scheibe", "scheiben"]),
];

impl Layout {
    /// The layout of a list by its first line. Where the line is no heading it is an order line itself.
    pub fn of(first: &str) -> Self {
        let laid_out = |separator: u8| {
            let cells = cells(first, separator);
            let columns: Vec<_> = cells.iter().map(|cell| column(cell)).collect();
            let known = columns.iter().flatten().count();
            (known, Self::Columns { separator, columns })
        };
        // A heading names nothing but columns: most of them are known.
        [b'\t', b';', b',']
            .map(laid_out)
            .into_iter()
            .rev()
            .max_by_key(|(known, _)| *known)
            .filter(|(known, layout)| match layout {
                Self::Columns { columns, .. } => *known > 0 && 2 * known >= columns.len().min(4),
                Self::Lines => false,
            })
            .map_or(Self::Lines, |(_, layout)| layout)
    }

    /// What stands between the cells of a row. A written line is one cell, whatever stands in it.
    pub fn separator(&self) -> u8 {
        match self {
            // The separator of units in ASCII, which nobody types.
            Self::Lines => 0x1F,
            Self::Columns { separator, .. } => *separator,
        }
    }

    /// Whether the first row is a heading.
    pub fn has_heading(&self) -> bool {
        matches!(self, Self::Columns { .. })
    }

    /// The headings of the columns that say nothing of an order, which are left out.
    pub fn left_out<'a>(&self, heading: &[&'a str]) -> Vec<&'a str> {
        match self {
            Self::Lines => Vec::new(),
            Self::Columns { columns, .. } => heading
                .iter()
                .zip(columns)
                .filter(|(cell, column)| column.is_none() && !cell.trim().is_empty())
                .map(|(cell, _)| *cell)
                .collect(),
        }
    }

    /// The order line that the cells of a row make together, as a person would write it.
    pub fn line(&self, record: &[&str]) -> String {
        let Self::Columns { columns, .. } = self else { return record.join(", ") };
        let said = record.iter().zip(columns).filter_map(|(cell, column)| {
            let (cell, column) = (cell.trim(), column.as_ref()?);
            (!cell.is_empty()).then(|| column.written(cell))
        });
        said.collect::<Vec<_>>().join(", ")
    }
}

impl Column {
    /// A cell in words that stand for themselves.
    fn written(&self, cell: &str) -> String {
        let is_number = cell.starts_with(|c: char| c.is_ascii_digit())
            && !cell.contains(|c: char| c.is_alphabetic() || matches!(c, '"' | '\'' | '°'));
        let unit = self.unit.as_deref();
        match self.says {
            Says::Quantity if is_number => format!("{cell} pcs"),
            Says::Years if is_number => format!("{cell} years"),
            Says::Length if is_number => format!("length {cell} {}", unit.unwrap_or("mm")),
            Says::Length => format!("length {cell}"),
            Says::Coat if is_number => match unit {
                Some(unit) => format!("{cell} {unit}"),
                None => format!("coat {cell}"),
            },
            Says::Steel if is_number => format!("grade {cell}"),
            Says::Nut if !lower(cell).contains("nut") => format!("with {cell} nut"),
            Says::Washer if !lower(cell).contains("washer") => format!("with {cell} washer"),
            Says::Class if is_number => cell.to_owned(),
            _ => cell.to_owned(),
        }
    }
}

fn column(heading: &str) -> Option<Column> {
    let heading = lower(heading.trim().trim_start_matches('\u{feff}'));
    let (name, unit) = match heading.split_once(['(', '[', '/']) {
        Some((name, unit)) => (name, Some(unit.trim_end_matches([')', ']']).trim())),
        None => (heading.as_str(), None),
    };
    let name = name.trim().trim_end_matches([':', '.']).replace(['_', '-'], " ");
    let (says, _) = HEADINGS.iter().find(|(_, names)| names.contains(&name.as_str()))?;
    Some(Column { says: *says, unit: unit.filter(|unit| !unit.is_empty()).map(str::to_owned) })
}

fn cells(line: &str, separator: u8) -> Vec<String> {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(separator)
        .from_reader(line.as_bytes());
    let mut record = csv::StringRecord::new();
    match reader.read_record(&mut record) {
        Ok(true) => record.iter().map(str::to_owned).collect(),
        _ => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_heading_is_told_from_a_line() {
        assert_eq!(Layout::of("M16 x 60 hex bolt, 8.8, C3, 15 years"), Layout::Lines);
        assert_eq!(Layout::of("500 ea 3/4-10 x 4 HHCS; gr 8; HDG"), Layout::Lines);
        for heading in ["Part;Thread;Length [mm]", "part,thread,length (mm)", "Teil\tGewinde\tLänge/mm"] {
            let layout = Layout::of(heading);
            assert!(layout.has_heading(), "{heading}");
            let separator = char::from(layout.separator()).to_string();
            let cells: Vec<&str> = "hex bolt|M16|60".split('|').collect();
            assert_eq!(layout.line(&cells), "hex bolt, M16, length 60 mm", "{heading}");
            assert!(heading.contains(&separator));
        }
        let layout = Layout::of("Pos,Customer,Description,Qty");
        assert_eq!(layout.left_out(&["Pos", "Customer", "Description", "Qty"]), ["Pos", "Customer"]);
        assert_eq!(
            layout.line(&["10", "North yard", "M16 x 60 hex bolt 8.8", "400"]),
            "M16 x 60 hex bolt 8.8, 400 pcs"
        );
    }
}
