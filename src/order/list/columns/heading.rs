//! What the heading of a column says: of which field its cells speak, and in which unit.

use crate::quantity::letters::lower;
use crate::quantity::{Dimension, Unit, unit};

/// What a column says.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    pub says: Says,
    /// Whether its heading speaks of classes, as metric parts have them.
    pub of_classes: bool,
    /// What its heading says of bare numbers below it.
    pub numbers: Numbers,
}

/// What a bare number below a heading is.
#[derive(Debug, Clone, PartialEq)]
pub enum Numbers {
    /// Whatever is usual in such a column.
    Usual,
    /// In this unit.
    In(&'static str),
    /// Something that no field takes, as its heading says: kilograms of pieces.
    Other,
}

/// What a heading can say of its column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Says {
    Line,
    Part,
    Thread,
    Diameter,
    Class,
    Length,
    Steel,
    Hardness,
    Tensile,
    Quantity,
    Place,
    Years,
    Coat,
    Nut,
    Washer,
}

/// The words of headings, in small letters, without marks ([`folded`]), dots, strokes and what stands in brackets.
/// English first, then German, French, Spanish, Italian.
const HEADINGS: [(Says, &str); 15] = [
    (
        Says::Line,
        "line|order line|description|item description|text|bezeichnung|benennung|artikel|artikelbezeichnung|\
         designation|article|descripcion|denominacion|articulo|descrizione|denominazione|articolo",
    ),
    (
        Says::Part,
        "part|part type|kind|type|product|item|fastener|teil|teileart|bauteil|piece|produit|pieza|producto|\
         pezzo|prodotto",
    ),
    (
        Says::Thread,
        "thread|size|thread size|nominal size|gewinde|gewindegroesse|nenngroesse|abmessung|groesse|filetage|taille|\
         rosca|filettatura",
    ),
    (
        Says::Diameter,
        "diameter|dia|diam|d|ø|nominal diameter|bolt diameter|thread diameter|durchmesser|nenndurchmesser|\
         gewindedurchmesser|diametre|diametro",
    ),
    (
        Says::Class,
        "thread class|tolerance|tolerance class|toleranz|toleranzklasse|toleranzfeld|tolerancia|tolleranza",
    ),
    (Says::Length, "length|l|len|lg|nominal length|laenge|nennlaenge|longueur|longitud|largo|lunghezza"),
    (
        Says::Steel,
        "steel|grade|material|material grade|steel grade|property class|class|steel class|strength class|strength|\
         klasse|festigkeitsklasse|festigkeit|werkstoff|guete|stahl|stahlguete|stahlsorte|acier|nuance|matiere|\
         materiau|classe de qualite|acero|clase de resistencia|acciaio|materiale|classe di resistenza",
    ),
    (Says::Hardness, "hardness|haerte|durete|dureza|durezza"),
    (
        Says::Tensile,
        "tensile strength|tensile|uts|rm|zugfestigkeit|resistance a la traction|resistencia a la traccion|\
         resistenza a trazione",
    ),
    (
        Says::Quantity,
        "quantity|qty|pcs|pieces|count|number of pieces|no of pieces|order quantity|order qty|lot size|menge|\
         bestellmenge|stueck|stueckzahl|stk|anzahl|losgroesse|quantite|qte|cantidad|cant|quantita|qta",
    ),
    (
        Says::Place,
        "place|environment|category|corrosivity|corrosivity category|corrosion category|exposure|location|site|\
         umgebung|ort|standort|einsatzort|aufstellort|korrosivitaet|korrosivitaetskategorie|environnement|\
         emplacement|ambiente|entorno|luogo",
    ),
    (
        Says::Years,
        "years|life|service life|design life|life time|lifetime|years wanted|jahre|lebensdauer|nutzungsdauer|\
         standzeit|schutzdauer|duree de vie|vida util|durata|vita utile",
    ),
    (
        Says::Coat,
        "coat|coating|finish|surface|surface finish|surface treatment|plating|zinc|zinc coating|beschichtung|\
         ueberzug|oberflaeche|oberflaechenbehandlung|verzinkung|revetement|traitement|finition|recubrimiento|\
         acabado|rivestimento|finitura",
    ),
    (Says::Nut, "nut|nuts|nut grade|nut class|mutter|muttern|ecrou|ecrous|tuerca|tuercas|dado|dadi"),
    (
        Says::Washer,
        "washer|washers|washer grade|washer class|scheibe|scheiben|unterlegscheibe|rondelle|rondelles|arandela|\
         arandelas|rondella|rondelle",
    ),
];

/// What stands in brackets, behind a stroke or at the end of a heading and is a unit there; the others are those of
/// [`unit::ALL`].
const UNITS: [(&[Says], &str, &str); 7] = [
    (&[Says::Length, Says::Diameter], "mm", "millimeter|millimeters|millimetres"),
    (&[Says::Length, Says::Diameter], "cm", "cm|centimetre|centimetres|centimeter|centimeters|zentimeter"),
    (&[Says::Length, Says::Diameter], "m", "meter|meters|metre|metres"),
    (&[Says::Length, Says::Diameter], "in", "zoll|pouce|pouces|pulgada|pulgadas|pollice|pollici"),
    (&[Says::Coat], "µm", "my|mikrometer|micrometer|micrometers|microns"),
    (
        &[Says::Quantity],
        "pcs",
        "pc|piece|pce|pces|ea|each|st|stk|stck|stueck|units|no|nos|pz|pzs|pza|pezzi|piezas",
    ),
    (&[Says::Years], "years", "jahre|jahr|j|ans|annees|anos|anni"),
];

/// What a remark in brackets may say of a number without changing it.
const REMARKS: &str = "nominal|ordered|order|wanted|required|under head|total|min|minimum|at least|nenn|bestellt|\
                       gesamt|mindestens";

/// What a heading says; `None` where it says nothing of an order.
pub fn read(heading: &str) -> Option<Column> {
    let heading = folded(heading.trim().trim_start_matches('\u{feff}'));
    let (name, behind) = match heading.split_once(['(', '[', '/', ',']) {
        Some((name, behind)) => (name, Some(behind.trim_end_matches([')', ']']).trim())),
        None => (heading.as_str(), None),
    };
    let name = plain(name);
    let (says, behind) = match named(&name) {
        Some(says) => (says, behind),
        // `Länge in mm`, `Length mm`: the last word is its unit.
        None => {
            let (name, last) = name.rsplit_once(' ').filter(|_| behind.is_none())?;
            let says = named(name.strip_suffix(" in").unwrap_or(name))?;
            in_unit(says, last)?;
            (says, Some(last))
        }
    };
    let behind = behind.filter(|behind| !behind.is_empty());
    let column = |says, numbers| {
        let of_classes = ["class", "klasse", "clase"].iter().any(|word| name.contains(word));
        Some(Column { says, of_classes, numbers })
    };
    let Some(behind) = behind else { return column(says, Numbers::Usual) };
    if let Some(unit) = in_unit(says, behind) {
        return column(says, Numbers::In(unit));
    }
    match named(&plain(behind)) {
        Some(other) if other == says => column(says, Numbers::Usual),
        // `Size/Length`, `Nut/Washer`: two things in one cell, as a person writes them.
        Some(_) => column(Says::Line, Numbers::Usual),
        None if listed(REMARKS, behind) => column(says, Numbers::Usual),
        None => column(says, Numbers::Other),
    }
}

fn named(name: &str) -> Option<Says> {
    HEADINGS.iter().find(|(_, names)| listed(names, name)).map(|(says, _)| *says)
}

/// The unit of a column of this kind, as it is written in an order line.
fn in_unit(says: Says, text: &str) -> Option<&'static str> {
    let dimensions: &[Dimension] = match says {
        Says::Length | Says::Diameter => &[Dimension::Length],
        Says::Years => &[Dimension::Time],
        Says::Coat => &[Dimension::Length, Dimension::ArealMass],
        Says::Steel => &[Dimension::Hardness, Dimension::Stress],
        Says::Hardness => &[Dimension::Hardness],
        Says::Tensile => &[Dimension::Stress],
        Says::Quantity => &[],
        _ => return None,
    };
    let text = text.trim_end_matches('.');
    let own = UNITS.iter().find(|(of, _, names)| of.contains(&says) && listed(names, text));
    let is_count = says == Says::Quantity && unit::PIECES.is_written(text);
    let scales = [&unit::HRC, &unit::HRB, &unit::HV, &unit::HB];
    let units = unit::ALL.iter().copied().chain(scales);
    let mut units = units.filter(|unit| dimensions.contains(&unit.dimension));
    // Headings are read in small letters.
    let is_written = |unit: &Unit| {
        unit.is_written(text) || [unit.symbol].iter().chain(unit.also).any(|written| lower(written) == text)
    };
    own.map(|(_, unit, _)| *unit)
        .or_else(|| units.find(|unit| is_written(unit)).map(|unit| unit.symbol))
        .or(is_count.then_some(unit::PIECES.symbol))
}

fn listed(words: &str, word: &str) -> bool {
    words.split('|').any(|listed| listed == word)
}

/// A name without what goes between its words.
fn plain(name: &str) -> String {
    let name = name.replace(['_', '-', '.', ':'], " ");
    name.split(' ').filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ")
}

/// Small letters of which the marks are taken away, as they are written where a keyboard has none.
fn folded(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    for letter in lower(text).chars() {
        match letter {
            'ä' => folded.push_str("ae"),
            'ö' => folded.push_str("oe"),
            'ü' => folded.push_str("ue"),
            'ß' => folded.push_str("ss"),
            'à' | 'á' | 'â' => folded.push('a'),
            'é' | 'è' | 'ê' => folded.push('e'),
            'í' | 'ì' | 'î' => folded.push('i'),
            'ó' | 'ò' | 'ô' => folded.push('o'),
            'ú' | 'ù' | 'û' => folded.push('u'),
            'ñ' => folded.push('n'),
            // A cell of the heading may go on for several lines.
            '\n' | '\r' | '\u{a0}' | '\t' => folded.push(' '),
            letter => folded.push(letter),
        }
    }
    folded
}
