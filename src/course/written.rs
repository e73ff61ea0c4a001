//! Order lines as they are written, drawn from what is made and sold.

use super::random::Random;

/// Parts as they are written, each with grades it is made in.
const PARTS: [(&[&str], &str, &[&str]); 6] = [
    (
        &["M8 x 30", "M10 x 40", "M12 x 50", "M16 x 60", "M20 x 80", "M24 x 100"],
        "hex bolt",
        &["4.6", "5.8", "8.8", "10.9"],
    ),
    (&["M6 x 20", "M8 x 25", "M10 x 40", "M12 x 60"], "socket head cap screw", &["8.8", "12.9"]),
    (
        &["3/8-16 x 1 1/2", "1/2-13 x 2", "5/8-11 x 2 1/2", "3/4-10 x 3"],
        "hex bolt",
        &["A307", "SAE J429 grade 5"],
    ),
    (&["5/8-11 x 2 1/2", "3/4-10 x 2 1/2", "7/8-9 x 3", "1-8 x 4"], "structural bolt", &["A325", "A490"]),
    (&["M12", "M16", "M20", "M24"], "hex nut", &["8", "10"]),
    (&["M10", "M12", "M16", "M20"], "flat washer", &["200 HV", "300 HV"]),
];
const PIECES: [&str; 5] = ["250 pcs", "400 pcs", "1200 pcs", "5000 pcs", "20000 pcs"];
const PLACES: [&str; 5] = ["C1", "C2", "C3", "C4", "C5"];
const YEARS: [&str; 5] = ["5 years", "10 years", "12 years", "15 years", "25 years"];

/// An order line in its pieces.
#[derive(Debug, Clone, Copy)]
pub struct Written {
    part: &'static str,
    /// Size, grade, pieces, place and years, each with what might stand there instead.
    said: [(&'static str, &'static [&'static str]); 5],
}

impl Written {
    /// Draws a line.
    pub fn draw(random: &mut Random) -> Option<Self> {
        let &(sizes, part, grades) = random.pick(&PARTS)?;
        let mut said = [("", sizes), ("", grades), ("", &PIECES[..]), ("", &PLACES[..]), ("", &YEARS[..])];
        for (text, of) in &mut said {
            *text = random.pick(of)?;
        }
        Some(Self { part, said })
    }

    /// As it comes in by mail.
    pub fn text(&self) -> String {
        let [size, grade, pieces, place, years] = self.said.map(|(text, _)| text);
        format!("{size} {}, {grade}, {pieces}, {place}, {years}", self.part)
    }

    /// The lines that say one thing otherwise, each with what it says.
    pub fn others(&self) -> Vec<(Self, &'static str)> {
        let mut others = Vec::new();
        for (at, (text, of)) in self.said.iter().enumerate() {
            for other in of.iter().filter(|other| *other != text) {
                let mut changed = *self;
                if let Some(said) = changed.said.get_mut(at) {
                    said.0 = other;
                }
                others.push((changed, *other));
            }
        }
        others
    }
}
