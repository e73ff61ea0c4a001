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
    /// Whether its heading speaks of classes, as metric parts have them.
    of_classes: bool,
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
            "class",
            "klasse",
            "steel class",
            "strength class",
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
    (Says::Nut, &["nut", "nuts", "nut grade", "nut class", "mutter", "muttern"]),
    (Says::Washer, &["washer", "washers", "washer grade", "washer class", "scheibe", "scheiben"]),
];

impl Layout {
    /// The layout of a list by its first line. Where the line is no heading it is an order line itself. What
    /// stands between the cells may have been named before it.
    pub fn of(first: &str, named: Option<u8>) -> Self {
        let laid_out = |separator: u8| {
            let cells = cells(first, separator);
            let cells: Vec<&str> = cells.iter().map(String::as_str).collect();
            let layout = Self::under(&cells, separator);
            (layout.known(), layout)
        };
        // A heading names nothing but columns: most of them are known.
        [b',', b';', b'\t', named.unwrap_or(b'\t')]
            .into_iter()
            .map(laid_out)
            .max_by_key(|(known, _)| *known)
            .filter(|(known, layout)| *known > 0 && 2 * known >= layout.columns().min(4))
            .map_or(Self::Lines, |(_, layout)| layout)
    }

    /// The layout under a heading with these cells.
    pub fn under(heading: &[&str], separator: u8) -> Self {
        Self::Columns { separator, columns: heading.iter().map(|cell| column(cell)).collect() }
    }

    /// How many columns there are; none for written lines.
    pub fn columns(&self) -> usize {
        match self {
            Self::Lines => 0,
            Self::Columns { columns, .. } => columns.len(),
        }
    }

    fn known(&self) -> usize {
        match self {
            Self::Lines => 0,
            Self::Columns { columns, .. } => columns.iter().flatten().count(),
        }
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

    /// The cells of a row that stand under no heading.
    pub fn beyond<'a>(&self, record: &[&'a str]) -> Vec<&'a str> {
        match self {
            Self::Lines => Vec::new(),
            Self::Columns { columns, .. } => record
                .iter()
                .skip(columns.len())
                .map(|cell| cell.trim())
                .filter(|cell| !cell.is_empty())
                .collect(),
        }
    }

    /// The order line that the cells of a row make together, as a person would write it.
    pub fn line(&self, record: &[&str]) -> String {
        let Self::Columns { columns, .. } = self else { return record.join(", ") };
        let cells = || {
            let filled = record.iter().zip(columns).map(|(cell, column)| (cell.trim(), column.as_ref()));
            filled.filter_map(|(cell, column)| Some((cell, column?))).filter(|(cell, _)| !cell.is_empty())
        };
        let names_size = |column: &Column| matches!(column.says, Says::Thread | Says::Line | Says::Part);
        let sizes = cells().filter(|(_, column)| names_size(column));
        let in_inches = sizes.filter_map(|(cell, _)| is_inch(cell)).next();
        let said = cells().map(|(cell, column)| column.written(cell, in_inches));
        said.filter(|said| !said.is_empty()).collect::<Vec<_>>().join(", ")
    }
}

impl Column {
    /// A cell in words that stand for themselves; a bare number is what it is beside such a thread.
    fn written(&self, cell: &str, in_inches: Option<bool>) -> String {
        let is_number = cell.starts_with(|c: char| c.is_ascii_digit())
            && !cell.contains(|c: char| c.is_alphabetic() || matches!(c, '"' | '\'' | '°'));
        let unit = self.unit.as_deref();
        // A fraction is never one of a millimetre.
        let length_in = || if in_inches == Some(true) || cell.contains('/') { "in" } else { "mm" };
        let class = if self.of_classes || in_inches == Some(false) { "class" } else { "grade" };
        let with = |noun: &str| {
            let small = lower(cell);
            match small.as_str() {
                small if NONE.contains(&small) => String::new(),
                small if YES.contains(&small) => format!("with {noun}"),
                small if small.contains(noun) => cell.to_owned(),
                _ if is_number => format!("with {class} {cell} {noun}"),
                _ => format!("with {cell} {noun}"),
            }
        };
        match self.says {
            Says::Quantity if is_number => format!("{cell} pcs"),
            Says::Years if is_number => format!("{cell} years"),
            Says::Length if is_number => format!("length {cell} {}", unit.unwrap_or(length_in())),
            Says::Length => format!("length {cell}"),
            Says::Coat if is_number => match unit {
                Some(unit) => format!("{cell} {unit}"),
                None => format!("coat {cell}"),
            },
            Says::Steel if is_number => format!("{class} {cell}"),
            Says::Nut => with("nut"),
            Says::Washer => with("washer"),
            _ => cell.to_owned(),
        }
    }
}

/// What people write into a cell where there is none, and where there is one.
const NONE: [&str; 13] =
    ["-", "–", "—", "--", "0", "no", "none", "n/a", "na", "without", "nein", "keine", "ohne"];
const YES: [&str; 6] = ["x", "yes", "y", "1", "ja", "with"];

/// Whether a size that is written so is one of an inch thread, of a metric one, or none.
fn is_inch(text: &str) -> Option<bool> {
    let digit = |text: &str| text.starts_with(|c: char| c.is_ascii_digit());
    text.split([' ', ',', ';']).find_map(|word| {
        let small = lower(word);
        if small.strip_prefix('m').is_some_and(digit) {
            return Some(false);
        }
        let parts = || word.split(['/', '-']);
        let fraction = digit(word) && parts().count() > 1 && parts().all(digit);
        let numbered = word.strip_prefix('#').is_some_and(digit);
        let named = ["unc", "unf", "un"].contains(&small.as_str()) || digit(word) && word.ends_with('"');
        (fraction || numbered || named).then_some(true)
    })
}

fn column(heading: &str) -> Option<Column> {
    let heading = lower(heading.trim().trim_start_matches('\u{feff}'));
    let (name, unit) = match heading.split_once(['(', '[', '/']) {
        Some((name, unit)) => (name, Some(unit.trim_end_matches([')', ']']).trim())),
        None => (heading.as_str(), None),
    };
    let name = name.trim().trim_end_matches([':', '.']).replace(['_', '-'], " ");
    let (says, _) = HEADINGS.iter().find(|(_, names)| names.contains(&name.as_str()))?;
    let of_classes = name.contains("class") || name.contains("klasse");
    Some(Column { says: *says, of_classes, unit: unit.filter(|unit| !unit.is_empty()).map(str::to_owned) })
}

/// What stands between the cells, where a first line such as `sep=;` names it.
pub(super) fn separator_named(line: &[u8]) -> Option<u8> {
    let line = line.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(line).trim_ascii_end();
    match line.strip_prefix(b"sep=")? {
        [separator] => Some(*separator),
        // The tab itself ends where spaces are cut off.
        [] => Some(b'\t'),
        _ => None,
    }
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

    /// A bare number once was millimetres on an inch thread, and a cell that says “none” put a nut on the bolt.
    #[test]
    fn a_cell_says_what_it_says_beside_its_thread() {
        let said = |heading: &str, cells: &str| {
            let layout = Layout::of(heading, None);
            layout.line(&cells.split(',').collect::<Vec<_>>())
        };
        let lengths = "part,thread,length";
        assert_eq!(said(lengths, "hex bolt,3/4-10,3"), "hex bolt, 3/4-10, length 3 in");
        assert_eq!(said(lengths, "hex bolt,M20,3-1/2"), "hex bolt, M20, length 3-1/2 in");
        assert_eq!(said(lengths, "hex bolt,M20 x 1.5,60"), "hex bolt, M20 x 1.5, length 60 mm");
        assert_eq!(said("part,thread,length (mm)", "hex bolt,3/4-10,76"), "hex bolt, 3/4-10, length 76 mm");
        for none in NONE {
            assert_eq!(said("thread,nut,washer", &format!("M16,{none},{none}")), "M16", "{none}");
        }
        assert_eq!(said("thread,nut,washer", "M16,8,x"), "M16, with class 8 nut, with washer");
        assert_eq!(said("thread,nut", "3/4-10,2H"), "3/4-10, with 2H nut");
        assert_eq!(said("thread,steel", "M16,8"), "M16, class 8");
        assert_eq!(said("thread,property class", "M16,8.8"), "M16, class 8.8");
        assert_eq!(said("thread,steel", "3/4-10,8"), "3/4-10, grade 8");
    }

    #[test]
    fn a_heading_is_told_from_a_line() {
        assert_eq!(Layout::of("M16 x 60 hex bolt, 8.8, C3, 15 years", None), Layout::Lines);
        assert_eq!(Layout::of("500 ea 3/4-10 x 4 HHCS; gr 8; HDG", None), Layout::Lines);
        for heading in ["Part;Thread;Length [mm]", "part,thread,length (mm)", "Teil\tGewinde\tLänge/mm"] {
            let layout = Layout::of(heading, None);
            assert!(layout.has_heading(), "{heading}");
            let separator = char::from(layout.separator()).to_string();
            let cells: Vec<&str> = "hex bolt|M16|60".split('|').collect();
            assert_eq!(layout.line(&cells), "hex bolt, M16, length 60 mm", "{heading}");
            assert!(heading.contains(&separator));
        }
        let layout = Layout::of("Pos,Customer,Description,Qty", None);
        assert_eq!(layout.left_out(&["Pos", "Customer", "Description", "Qty"]), ["Pos", "Customer"]);
        assert_eq!(
            layout.line(&["10", "North yard", "M16 x 60 hex bolt 8.8", "400"]),
            "M16 x 60 hex bolt 8.8, 400 pcs"
        );
    }
}
