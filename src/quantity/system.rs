//! The units that a person is used to.
//!
//! A document prints in its own units. Whoever thinks in the other ones gets every number that is
//! shown converted from the exact number, with as many digits as say the same.

use std::borrow::Cow;

use super::{Dimension, Shown, Unit, unit};

/// The units of everything shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Units {
    /// As the documents print them: a metric thread in millimetres, an inch thread in inches.
    #[default]
    AsPrinted,
    /// Micrometres, millimetres, kilograms, degrees Celsius.
    Metric,
    /// Mils, inches, pounds, degrees Fahrenheit.
    Inch,
}

/// Metric units with the inch units that stand for them.
static PAIRS: [(&Unit, &Unit); 22] = [
    (&unit::UM, &unit::MIL),
    (&unit::MM, &unit::INCH),
    (&unit::M, &unit::FOOT),
    (&unit::G_M2, &unit::OZ_FT2),
    (&unit::G_M2_UM, &unit::OZ_FT2_MIL),
    (&unit::MM2, &unit::IN2),
    (&unit::CM2, &unit::IN2),
    (&unit::M2, &unit::FT2),
    (&unit::MM3, &unit::IN3),
    (&unit::CM3, &unit::IN3),
    (&unit::M3, &unit::FT3),
    (&unit::LITRE, &unit::FT3),
    (&unit::G, &unit::OZ),
    (&unit::KG, &unit::LB),
    (&unit::TONNE, &unit::LB),
    (&unit::CELSIUS, &unit::FAHRENHEIT),
    (&unit::DELTA_CELSIUS, &unit::DELTA_FAHRENHEIT),
    (&unit::MPA, &unit::KSI),
    (&unit::MPA, &unit::PSI),
    (&unit::KILONEWTON, &unit::LBF),
    (&unit::NEWTON, &unit::LBF),
    (&unit::UM_YEAR, &unit::MIL_YEAR),
];

impl Units {
    /// Every system, in the order they are offered.
    pub const ALL: [Self; 3] = [Self::AsPrinted, Self::Metric, Self::Inch];

    /// Its key in the store.
    pub fn key(self) -> &'static str {
        match self {
            Self::AsPrinted => "printed",
            Self::Metric => "metric",
            Self::Inch => "inch",
        }
    }

    /// What it is called.
    pub fn label(self) -> &'static str {
        match self {
            Self::AsPrinted => "As the documents",
            Self::Metric => "Metric",
            Self::Inch => "Inch",
        }
    }

    /// The system of that key; the documents' where there is none.
    pub fn of_key(key: &str) -> Self {
        Self::ALL.into_iter().find(|units| units.key() == key).unwrap_or_default()
    }

    /// The unit that stands for another one in this system: itself where it belongs to the system or
    /// to none, as a hardness or a number of years.
    pub fn unit(self, unit: &'static Unit) -> &'static Unit {
        let other = match self {
            Self::AsPrinted => None,
            Self::Metric => PAIRS.iter().find(|(_, inch)| *inch == unit).map(|(metric, _)| *metric),
            Self::Inch => PAIRS.iter().find(|(metric, _)| *metric == unit).map(|(_, inch)| *inch),
        };
        other.filter(|other| other.dimension == unit.dimension).unwrap_or(unit)
    }

    /// Of the units that a field offers, the one that it starts with.
    pub fn among(self, offered: &[&'static Unit]) -> Option<&'static Unit> {
        let first = offered.first().copied()?;
        let own = self.unit(first);
        Some(if offered.contains(&own) { own } else { first })
    }

    /// A number in the unit of this system, from the exact number.
    pub fn show(self, shown: Shown) -> Shown {
        let to = self.unit(shown.unit);
        if to == shown.unit {
            return shown;
        }
        let Some(number) = shown.unit.convert(shown.number, to) else { return shown };
        let decimals = decimals(shown, to);
        let in_other = |decimals| Shown { number, unit: to, decimals };
        // A number of one digit may be far from what it says in the other unit.
        let off = |shown: &Shown| (shown.rounded() - number).abs() > MOST_OFF * number.abs();
        let fits = shown.rounded() == 0.0 || !off(&in_other(decimals));
        in_other(if fits { decimals } else { decimals.saturating_add(1).min(9) })
    }

    /// A name or a number in words, with its numbers in the units of this system.
    ///
    /// A [`Shown`] sets a space that does not break before its unit, and so does what is made of them;
    /// other numbers are left alone: what a document calls its classes stays as it is printed.
    pub fn text(self, text: &str) -> Cow<'_, str> {
        self.rewritten(text, false)
    }

    /// A sentence with its numbers in the units of this system, also those that stand in its words; of a
    /// number that is printed in both systems, `177 to 232 °C (350 to 450 °F)`, the one of this system.
    pub fn sentence(self, text: &str) -> Cow<'_, str> {
        self.rewritten(text, true)
    }

    fn rewritten(self, text: &str, in_words: bool) -> Cow<'_, str> {
        if self == Self::AsPrinted {
            return Cow::Borrowed(text);
        }
        let mut made = String::new();
        let mut done = 0;
        for (at, space) in text.char_indices() {
            let breaks = space == ' ';
            if at < done || !(space == '\u{a0}' || in_words && breaks) {
                continue;
            }
            let behind = at + space.len_utf8();
            let number = text.get(done..at).and_then(number_at_the_end);
            // In words, a letter alone may be anything, and `in` a preposition.
            let unit = text
                .get(behind..)
                .and_then(unit_at_the_start)
                .filter(|unit| !breaks || unit.symbol.len() > 1 && *unit != &unit::INCH);
            if let (Some((head, number)), Some(unit)) = (number, unit) {
                done = behind + unit.symbol.len();
                let other = text.get(done..).and_then(|rest| printed_otherwise(rest, unit));
                self.write_number(&mut made, head, number, unit, other.map(|(inside, _)| inside));
                done += other.map_or(0, |(_, length)| length);
            }
        }
        if done == 0 {
            return Cow::Borrowed(text);
        }
        made.push_str(text.get(done..).unwrap_or_default());
        Cow::Owned(made)
    }

    /// Writes a number in this system's unit behind what stands before it, which may end in the
    /// beginning of a range: `54 to`; or what is printed of it in the other system, if that is this one.
    fn write_number(
        self,
        into: &mut String,
        head: &str,
        number: Shown,
        unit: &'static Unit,
        other: Option<&str>,
    ) {
        let end = self.show(Shown { unit, ..number });
        let range = head.strip_suffix(" to ").and_then(number_at_the_end);
        into.push_str(range.map_or(head, |(head, _)| head));
        match (other.filter(|_| end.unit != unit), range) {
            (Some(other), _) => return into.push_str(other),
            (None, Some((_, start))) => {
                into.push_str(&self.show(Shown { unit, ..start }).digits());
                into.push_str(" to ");
            }
            (None, None) => {}
        }
        into.push_str(&end.to_string());
    }
}

/// The same number printed in brackets in a unit of the other system, and how long that is: ` (860 °F)`.
fn printed_otherwise<'a>(rest: &'a str, unit: &'static Unit) -> Option<(&'a str, usize)> {
    let (inside, _) = rest.strip_prefix(" (")?.split_once(')')?;
    let (numbers, symbol) = inside.rsplit_once([' ', '\u{a0}'])?;
    let are_numbers = numbers.split(" to ").all(|number| number.parse::<f64>().is_ok());
    let is_pair = PAIRS.iter().any(|(metric, inch)| {
        *metric == unit && inch.symbol == symbol || *inch == unit && metric.symbol == symbol
    });
    (are_numbers && is_pair).then(|| (inside, " ()".len() + inside.len()))
}

/// What rounding may take from a number, or add to it, as a share of it.
const MOST_OFF: f64 = 0.03;

/// Decimals with which a number says as much in another unit as it does in its own.
fn decimals(shown: Shown, to: &Unit) -> u8 {
    let finer = (to.factor / shown.unit.factor).log10().round();
    (f64::from(shown.decimals) + finer).clamp(0.0, 9.0) as u8
}

/// The number that a text ends with, and what stands before it.
fn number_at_the_end(text: &str) -> Option<(&str, Shown)> {
    let in_number = |c: char| c.is_ascii_digit() || c == '.';
    let digits = text.trim_end_matches(in_number);
    // A sign belongs to the number where nothing else can stand before it.
    let start = match digits.strip_suffix('−') {
        Some(before) if before.is_empty() || before.ends_with([' ', '(', '\u{a0}']) => before,
        _ => digits,
    };
    let written = text.get(start.len()..)?;
    let number: f64 = written.replace('−', "-").parse().ok()?;
    // Behind a letter it is a name: M16, AZ2.
    if start.ends_with(char::is_alphanumeric) {
        return None;
    }
    let decimals = written.split_once('.').map_or(0, |(_, rest)| rest.len());
    Some((start, Shown { number, unit: &unit::ONE, decimals: u8::try_from(decimals).ok()? }))
}

/// The unit that a text begins with: the longest that fits.
fn unit_at_the_start(text: &str) -> Option<&'static Unit> {
    let in_pairs = PAIRS.iter().flat_map(|(metric, inch)| [*metric, *inch]);
    let fits = in_pairs.filter(|unit| {
        text.strip_prefix(unit.symbol).is_some_and(|behind| !behind.starts_with(char::is_alphanumeric))
    });
    // A temperature and a difference of temperatures are written alike: a sentence means the first.
    fits.filter(|unit| unit.dimension != Dimension::TemperatureDifference)
        .max_by_key(|unit| unit.symbol.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shown(number: f64, unit: &'static Unit, decimals: u8) -> Shown {
        Shown { number, unit, decimals }
    }

    #[test]
    fn a_number_says_as_much_in_the_other_unit() {
        let cases = [
            (shown(50.0, &unit::UM, 0), "2.0\u{a0}mil"),
            (shown(15.041, &unit::MM, 3), "0.5922\u{a0}in"),
            (shown(381.4, &unit::G_M2, 1), "1.250\u{a0}oz/ft²"),
            (shown(450.0, &unit::CELSIUS, 0), "842\u{a0}°F"),
            (shown(12.4, &unit::KG, 1), "27.3\u{a0}lb"),
            (shown(35.0, &unit::HRC, 0), "35\u{a0}HRC"),
            (shown(6.0, &unit::UM, 0), "0.24\u{a0}mil"),
            (shown(12.0, &unit::UM, 0), "0.47\u{a0}mil"),
            (shown(12.0, &unit::YEAR, 0), "12\u{a0}years"),
        ];
        for (number, text) in cases {
            assert_eq!(Units::Inch.show(number).to_string(), text);
            assert_eq!(Units::AsPrinted.show(number), number);
        }
        assert_eq!(Units::Metric.show(shown(2.0, &unit::MIL, 1)).to_string(), "51\u{a0}µm");
    }

    #[test]
    fn the_numbers_of_a_sentence_are_converted_and_nothing_else() {
        let cases = [
            ("The coat is 50\u{a0}µm thick.", "The coat is 2.0\u{a0}mil thick."),
            ("50 to 85\u{a0}µm on M16", "2.0 to 3.3\u{a0}mil on M16"),
            ("at most −40\u{a0}°C", "at most −40\u{a0}°F"),
            ("381.4\u{a0}g/m² each", "1.250\u{a0}oz/ft² each"),
            ("35\u{a0}HRC and class 55", "35\u{a0}HRC and class 55"),
            ("M16\u{a0}mm", "M16\u{a0}mm"),
            ("at 450 °C in a kettle of 3 m", "at 450 °C in a kettle of 3 m"),
            ("", ""),
        ];
        for (text, inch) in cases {
            assert_eq!(Units::Inch.text(text), inch);
            assert_eq!(Units::AsPrinted.text(text), text);
        }
    }

    #[test]
    fn a_sentence_is_converted_in_its_words() {
        let cases = [
            ("not above 200 °C.", "not above 392\u{a0}°F.", "not above 200\u{a0}°C."),
            (
                "at 177 to 232 °C (350 to 450 °F), soon",
                "at 350 to 450 °F, soon",
                "at 177 to 232\u{a0}°C, soon",
            ),
            ("over 6.5 mm thick", "over 0.26\u{a0}in thick", "over 6.5\u{a0}mm thick"),
            ("2 in 5 weigh 3 g", "2 in 5 weigh 3 g", "2 in 5 weigh 3 g"),
            ("above 33 HRC (327 HV)", "above 33 HRC (327 HV)", "above 33 HRC (327 HV)"),
        ];
        for (text, inch, metric) in cases {
            assert_eq!(Units::Inch.sentence(text), inch);
            assert_eq!(Units::Metric.sentence(text), metric);
        }
    }

    #[test]
    fn what_belongs_to_no_system_stays() {
        for unit in unit::ALL {
            for units in Units::ALL {
                let own = units.unit(unit);
                assert_eq!(own.dimension, unit.dimension, "{}", unit.symbol);
                assert_eq!(units.unit(own), own, "{}", unit.symbol);
            }
        }
    }

    /// What stands in brackets behind a number is the same in the other system only where it is numbers and
    /// the unit of its pair.
    #[test]
    fn what_is_printed_in_both_systems_is_a_pair() {
        for (rest, unit, inside) in [
            (" (860 °F) then", &unit::CELSIUS, Some("860 °F")),
            (" (350 to 450\u{a0}°F)", &unit::CELSIUS, Some("350 to 450\u{a0}°F")),
            (" (80 µm), or", &unit::MIL, Some("80 µm")),
            (" (2.2 lb)", &unit::KG, Some("2.2 lb")),
            (" (3 mil)", &unit::UM, Some("3 mil")),
            (" (3 mil)", &unit::CELSIUS, None),
            (" (3 mil)", &unit::MM, None),
            (" (3 mil)", &unit::MIL, None),
            (" (80 µm)", &unit::UM, None),
            (" (80 µm)", &unit::INCH, None),
            (" (80 HRC)", &unit::UM, None),
            (" (about 3 mil)", &unit::UM, None),
            (" (3 mil", &unit::UM, None),
            ("(3 mil)", &unit::UM, None),
            (" (mil)", &unit::UM, None),
        ] {
            let found = printed_otherwise(rest, unit);
            assert_eq!(found.map(|(inside, _)| inside), inside, "{rest} behind {}", unit.symbol);
            if let (Some((inside, length)), Some(at)) = (found, rest.find(')')) {
                assert_eq!(length, at + 1, "{inside}");
            }
        }
    }

    #[test]
    fn a_sign_is_of_the_number_where_nothing_else_stands_before_it() {
        for (text, head, number) in [
            ("at −20", "at ", -20.0),
            ("(−5.5", "(", -5.5),
            ("−3", "", -3.0),
            ("M16−2", "M16−", 2.0),
            ("5−3", "5−", 3.0),
            ("of\u{a0}−1", "of\u{a0}", -1.0),
        ] {
            let found = number_at_the_end(text).map(|(head, shown)| (head, shown.number));
            assert_eq!(found, Some((head, number)), "{text}");
        }
        for name in ["M16", "AZ2", "none", "", "−", "."] {
            assert_eq!(number_at_the_end(name), None, "{name}");
        }
    }
}
