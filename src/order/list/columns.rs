//! How a list is laid out: which column says what, and the written line that a row makes.

mod cell;
mod heading;

use cell::Cell;
use heading::Column;

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
        /// The columns.
        columns: Vec<Head>,
    },
}

/// What stands above a column.
#[derive(Debug, Clone, PartialEq)]
pub struct Head {
    written: String,
    /// What it says; `None` where that is nothing of an order.
    column: Option<Column>,
}

/// What the cells of a row say.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Said {
    /// The order line that they make together, as a person would write it.
    pub line: String,
    /// Cells that are not used though their heading is known, and why.
    pub not_used: Vec<String>,
    /// Cells under headings that say nothing of an order.
    pub left_out: Vec<String>,
}

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
    pub fn under(cells: &[&str], separator: u8) -> Self {
        let head = |cell: &&str| Head { written: cell.trim().to_owned(), column: heading::read(cell) };
        Self::Columns { separator, columns: cells.iter().map(head).collect() }
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
            Self::Columns { columns, .. } => columns.iter().filter(|head| head.column.is_some()).count(),
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
    pub fn left_out(&self) -> Vec<String> {
        let Self::Columns { columns, .. } = self else { return Vec::new() };
        let unknown = columns.iter().filter(|head| head.column.is_none() && !head.written.is_empty());
        unknown.map(|head| head.written.clone()).collect()
    }

    /// What the cells of a row say together.
    pub fn said(&self, record: &[&str]) -> Said {
        let Self::Columns { columns, .. } = self else {
            return Said { line: record.join(", "), ..Said::default() };
        };
        let filled =
            || record.iter().map(|cell| cell.trim()).enumerate().filter(|(_, cell)| !cell.is_empty());
        let known = |at: usize| columns.get(at).and_then(|head: &Head| head.column.as_ref());
        let in_inches = filled().find_map(|(at, cell)| known(at)?.is_in_inches(cell));
        let mut said = Said::default();
        for (at, cell) in filled() {
            let above = columns.get(at).map_or("", |head| &head.written);
            match known(at).map(|column| column.cell(cell, in_inches)) {
                Some(Cell::Said(words)) if words.is_empty() => {}
                Some(Cell::Said(words)) => {
                    said.line.push_str(if said.line.is_empty() { "" } else { ", " });
                    said.line.push_str(&words);
                }
                Some(Cell::LeftOut(why)) => said.not_used.push(format!("{cell} (under “{above}”: {why})")),
                None if !above.is_empty() => {
                    said.left_out.push(format!("{cell} (under “{above}”)"));
                }
                None => said.not_used.push(format!("{cell} (no heading stands above it)")),
            }
        }
        said
    }
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
            layout.said(&cells.split(',').collect::<Vec<_>>()).line
        };
        let lengths = "part,thread,length";
        assert_eq!(said(lengths, "hex bolt,3/4-10,3"), "hex bolt, 3/4-10, length 3 in");
        assert_eq!(said(lengths, "hex bolt,M20,3-1/2"), "hex bolt, M20, length 3-1/2 in");
        assert_eq!(said(lengths, "hex bolt,M20 x 1.5,60"), "hex bolt, M20 x 1.5, length 60 mm");
        assert_eq!(said("part,thread,length (mm)", "hex bolt,3/4-10,76"), "hex bolt, 3/4-10, length 76 mm");
        for none in ["-", "none", "ohne", "0", "N/A"] {
            assert_eq!(said("thread,nut,washer", &format!("M16,{none},{none}")), "M16", "{none}");
        }
        assert_eq!(said("thread,nut,washer", "M16,8,x"), "M16, with class 8 nut, with washer");
        assert_eq!(said("thread,nut", "3/4-10,2H"), "3/4-10, with 2H nut");
        assert_eq!(said("thread,steel", "M16,8"), "M16, class 8");
        assert_eq!(said("thread,property class", "M16,8.8"), "M16, class 8.8");
        assert_eq!(said("thread,steel", "3/4-10,8"), "3/4-10, grade 8");
        // Each way to write an inch thread by itself; a bare size is none.
        for thread in ["#10-24", "1\"", "UNC 1", "3/4"] {
            assert_eq!(said("thread,length", &format!("{thread},3")), format!("{thread}, length 3 in"));
        }
        assert_eq!(said("thread,length", "16 x 2,60"), "16 x 2, length 60 mm");
        // The unit of the diameter is that of the length.
        let of_both = |unit| said(&format!("part,diameter ({unit}),length"), "hex bolt,1,3");
        assert_eq!(of_both("in"), "hex bolt, diameter 1 in, length 3 in");
        assert_eq!(of_both("mm"), "hex bolt, diameter 1 mm, length 3 mm");
        assert_eq!(said("diameter,length", "16 mm,60"), "diameter 16 mm, length 60 mm");
        assert_eq!(said("diameter,length", "3/4-10 UNC,3"), "3/4-10 UNC, length 3 in");
        assert_eq!(said("diameter,length", "8x1 mm,20"), "8x1 mm, length 20 mm");
        // A size below the name of no part is one.
        assert_eq!(said("description,steel", "3/4-10,5"), "3/4-10, grade 5");
    }

    /// An order of a sheet with nothing but numbers in it, heading by heading.
    #[test]
    fn bare_numbers_are_what_their_heading_makes_of_them() {
        let said = |heading: &str, cell: &str| Layout::under(&[heading], b';').said(&[cell]).line;
        assert_eq!(said("Coat", "50"), "coat 50");
        assert_eq!(said("Steel (HRC)", "32"), "32 HRC");
        for heading in ["Qty (ea)", "Qty (nos)", "Qty/pce", "Qty (piece)", "Qty (pc)"] {
            assert_eq!(said(heading, "400"), "400 pcs", "{heading}");
        }
        for heading in ["Length/Len", "Length (nominal)", "Length (under head)"] {
            assert_eq!(said(heading, "60"), "length 60 mm", "{heading}");
        }
        // A cell for either is no nut by its heading.
        assert_eq!(said("Nut/Washer", "2H"), "2H");
        assert_eq!(said("Nut/Mutter", "2H"), "with 2H nut");
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
            assert_eq!(layout.said(&cells).line, "hex bolt, M16, length 60 mm", "{heading}");
            assert!(heading.contains(&separator));
        }
        let layout = Layout::of("Pos,Customer,Description,Qty", None);
        assert_eq!(layout.left_out(), ["Pos", "Customer"]);
        let said = layout.said(&["10", "North yard", "M16 x 60 hex bolt 8.8", "400"]);
        assert_eq!(said.line, "M16 x 60 hex bolt 8.8, 400 pcs");
        // A row names what of it was not looked at.
        assert_eq!(said.left_out, ["10 (under “Pos”)", "North yard (under “Customer”)"]);
    }

    /// Headings as people write them, each above a cell that is bare, and what the cell says there.
    #[test]
    fn headings_are_known_in_the_words_of_the_trade() {
        let rows = [
            ("Item|Part|Product|Bauteil|pieza|prodotto", "stud", "stud"),
            ("Bezeichnung|Artikel|Désignation|descripción|denominazione|Article", "M16 stud", "M16 stud"),
            (
                "Diameter (mm)|Dia mm|Ø/mm|Durchmesser [mm]|Diamètre (mm)|diametro in mm|d, mm",
                "16",
                "diameter 16 mm",
            ),
            ("Diameter|Dia.|DIA|Nenndurchmesser", "16", "diameter 16 mm"),
            ("Diameter (in)|Dia (inches)|Durchmesser/Zoll", "3/4", "diameter 3/4 in"),
            ("Diameter|dia.", "M16", "M16"),
            ("Size|Gewinde|Abmessung|filetage|rosca|filettatura|Größe", "M16 x 60", "M16 x 60"),
            (
                "Length (mm)|Länge/mm|LAENGE [mm]|Länge in mm|Length mm|Longueur (mm)|lunghezza (mm)",
                "60",
                "length 60 mm",
            ),
            (
                "Length (in)|length [inches]|Length in|Länge (Zoll)|longueur (pouces)",
                "2-1/2",
                "length 2-1/2 in",
            ),
            (
                "Life (years)|Design life|Service life|Nutzungsdauer|Standzeit (Jahre)|durée de vie|vida útil (años)|durata",
                "15",
                "15 years",
            ),
            (
                "Stückzahl|Menge|Qty.|Quantity (pcs)|Menge/Stk|quantité|Cantidad|quantità|No. of pieces",
                "400",
                "400 pcs",
            ),
            ("Werkstoff|Güte|Steel|Steel/Grade|acier|acero|acciaio", "A325", "A325"),
            ("Festigkeitsklasse|Property class|classe de qualité|clase de resistencia", "8.8", "class 8.8"),
            ("Hardness (HRC)|Härte [HRC]|dureté/HRC", "32", "32 HRC"),
            ("Tensile strength (MPa)|Zugfestigkeit [N/mm²]|Rm (MPa)", "830", "830 MPa"),
            ("Umgebung|Standort|Environment|Corrosivity category|environnement|ambiente", "C3", "C3"),
            (
                "Finish|Coating|Surface treatment|Oberfläche|revêtement|recubrimiento|rivestimento",
                "HDG",
                "HDG",
            ),
            ("Coat (µm)|Beschichtung [um]", "50", "50 µm"),
        ];
        for (headings, cell, says) in rows {
            for heading in headings.split('|') {
                let layout = Layout::under(&[heading], b';');
                assert_eq!(layout.said(&[cell]).line, says, "{heading}");
            }
        }
    }

    /// A fraction under millimetres once was read as millimetres, and kilograms as pieces.
    #[test]
    fn what_contradicts_its_heading_is_asked() {
        for (heading, cell) in [
            ("Length (mm)", "3 1/2"),
            ("length in mm", "2-1/4"),
            ("Länge/mm", "5/8"),
            ("Diameter (mm)", "3/4"),
            ("Quantity (kg)", "25"),
            ("Menge (Tsd.)", "4"),
            ("Qty (1000)", "4"),
            ("Length (kg)", "60"),
            ("Life (months)", "180"),
            ("Diameter", "1"),
            ("Diameter", "6"),
            ("Hardness", "32"),
            ("Tensile strength", "830"),
            ("Length (pcs)", "60"),
            ("Item", "10"),
            ("Artikel", "4711"),
        ] {
            let said = Layout::under(&["thread", heading], b';').said(&["M20", cell]);
            assert_eq!(said.line, "M20", "{heading}");
            assert_eq!(said.not_used.len(), 1, "{heading}");
            assert!(said.not_used[0].starts_with(&format!("{cell} (under “{heading}”: ")), "{said:?}");
        }
        // The unit of a cell outranks its heading, and a fraction of an inch stays one.
        let said = |cell| Layout::under(&["Length (mm)"], b';').said(&[cell]).line;
        assert_eq!(said("3 1/2 in"), "length 3 1/2 in");
        assert_eq!(said("2-1/4\""), "length 2-1/4\"");
    }

    #[test]
    fn a_heading_of_two_things_is_read_as_it_is_written() {
        let layout = Layout::under(&["Size/Length", "Part no.", "Item No", "Order number"], b';');
        let said = layout.said(&["M16 x 60", "17", "4", "99"]);
        assert_eq!((said.line.as_str(), said.left_out.len()), ("M16 x 60", 3));
    }
}
