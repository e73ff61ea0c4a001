//! What stands in the fields of a form: texts as typed, and the unit chosen beside each.
//!
//! A draft carries the unit in the text (`50 µm`); a form shows the two side by side. A unit typed
//! behind a number wins over the one chosen.

use super::{Draft, Example, FieldAbout, Kind, Reader};
use crate::quantity::number::{self, Reading};
use crate::quantity::{Unit, Units, unit};

/// The fields of a form with what stands in them.
#[derive(Debug, Clone)]
pub struct Form {
    fields: &'static [FieldAbout],
    entries: Vec<Filled>,
}

/// What stands in one field.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Filled {
    /// The text as typed; nothing changes it but the person who types, or who chooses another unit.
    pub text: String,
    /// The unit chosen beside it; `None` for what has no unit.
    pub unit: Option<&'static Unit>,
    /// What stood here before another unit was chosen, for as long as nothing else is typed.
    pub converted: Option<Converted>,
}

/// A number and its unit, from which a field was converted.
#[derive(Debug, Clone, PartialEq)]
pub struct Converted {
    /// The text as it was typed, without a unit.
    pub text: String,
    /// Its unit.
    pub unit: &'static Unit,
}

impl PartialEq for Form {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.fields, other.fields) && self.entries == other.entries
    }
}

impl Form {
    /// A form filled from a draft; a field that the draft leaves out takes its default.
    pub fn new(fields: &'static [FieldAbout], draft: &Draft) -> Self {
        let entries = fields
            .iter()
            .map(|field| Filled::of(field, field.text_in(draft).unwrap_or(field.default)))
            .collect();
        Self { fields, entries }
    }

    /// A form filled with a worked example.
    pub fn example(fields: &'static [FieldAbout], example: &Example) -> Self {
        Self::new(fields, &example.pairs.iter().copied().collect())
    }

    /// A form in which nothing is filled in. Choices are at their defaults, and so are numbers whose
    /// default is published or marked as assumed: they are constants of the method.
    pub fn cleared(fields: &'static [FieldAbout]) -> Self {
        let emptied =
            fields.iter().filter(|field| !matches!(field.kind, Kind::Choice(_)) && field.source.is_none());
        Self::new(fields, &emptied.map(|field| (field.key, "")).collect())
    }

    /// The fields with what stands in each.
    pub fn entries(&self) -> impl Iterator<Item = (&'static FieldAbout, &Filled)> {
        self.fields.iter().zip(&self.entries)
    }

    /// What was typed into a field. A unit typed behind the number becomes the unit chosen.
    pub fn write(&mut self, name: &str, text: &str) {
        if let Some((field, entry)) = self.entry_mut(name) {
            entry.text = text.to_owned();
            entry.converted = None;
            if let Some(written) = written_unit(field, text) {
                entry.unit = Some(written);
            }
        }
    }

    /// Chooses the unit of a field by its symbol: the number that stands there is converted. Where
    /// none stands there, or the units do not convert by a factor, only the unit changes.
    pub fn choose_unit(&mut self, name: &str, symbol: &str) {
        if let Some((field, entry)) = self.entry_mut(name)
            && let Some(chosen) = field.units().iter().copied().find(|unit| unit.symbol == symbol)
        {
            entry.convert(field, chosen);
        }
    }

    /// Sets the unit of every empty field to the one that somebody used to these units would choose.
    pub fn prefer(&mut self, units: Units) {
        for (field, entry) in self.fields.iter().zip(&mut self.entries) {
            if entry.text.trim().is_empty() {
                entry.unit = units.among(field.units());
            }
        }
    }

    /// The texts with their units, as a calculator reads them.
    pub fn draft(&self) -> Draft {
        let mut draft = Draft::default();
        for (field, entry) in self.entries() {
            draft.set(field.key, entry.with_unit());
        }
        draft
    }

    /// Whether both forms of the same fields say the same, so that their drafts are equal.
    pub fn says_the_same(&self, other: &Self) -> bool {
        self.entries.iter().zip(&other.entries).all(|(one, other)| one.with_unit() == other.with_unit())
    }

    /// What a link must hold to bring this form back: all that is asked, and what is not asked but
    /// was changed.
    pub fn to_keep(&self) -> Draft {
        let draft = self.draft();
        let reader = Reader::new(self.fields, &draft);
        let mut kept = Draft::default();
        for (field, entry) in self.entries() {
            let text = entry.with_unit();
            let changed = text != Filled::of(field, field.default).with_unit();
            if changed || (reader.asked(field) && !text.is_empty()) {
                kept.set(field.key, text);
            }
        }
        kept
    }

    /// The fields that are asked, given the others, with what stands in each.
    pub fn asked(&self) -> Vec<(&'static FieldAbout, &Filled)> {
        let draft = self.draft();
        let reader = Reader::new(self.fields, &draft);
        self.entries().filter(|(field, _)| reader.asked(field)).collect()
    }

    fn entry_mut(&mut self, name: &str) -> Option<(&'static FieldAbout, &mut Filled)> {
        self.fields.iter().zip(&mut self.entries).find(|(field, _)| field.key == name)
    }
}

impl Filled {
    /// A text with its unit, taken apart.
    fn of(field: &'static FieldAbout, text: &str) -> Self {
        let first = field.units().first().copied();
        match written_unit(field, text) {
            Some(unit) => {
                Self { text: number::split_unit(text).0.to_owned(), unit: Some(unit), converted: None }
            }
            None => Self { text: text.to_owned(), unit: first, converted: None },
        }
    }

    fn convert(&mut self, field: &FieldAbout, chosen: &'static Unit) {
        let typed = written_unit(field, &self.text).is_some();
        let text = if typed { number::split_unit(&self.text).0.to_owned() } else { self.text.clone() };
        let before = self.converted.take();
        let from = self.unit.replace(chosen);
        self.text.clone_from(&text);
        // Taken back, the number is again what was typed, to the last digit.
        if let Some(before) = before
            && before.unit == chosen
        {
            self.text = before.text;
            return;
        }
        let one_number = matches!(field.kind, Kind::Quantity { .. });
        let number = number::read(&text, &[]).map(|reading| reading.number);
        if let (true, Some(from), Ok(number)) = (one_number && from != self.unit, from, number)
            && let Some(number) = from.convert(number, chosen)
        {
            self.text = significant(number);
            self.converted = Some(Converted { text, unit: from });
        }
    }

    /// The text with its unit behind it, unless one is typed there.
    pub fn with_unit(&self) -> String {
        let text = self.text.trim();
        match self.unit {
            Some(unit) if !text.is_empty() && number::split_unit(text).1.is_empty() => {
                format!("{text} {}", unit.symbol).trim_end().to_owned()
            }
            _ => self.text.clone(),
        }
    }

    /// What stands here as one reads it: a choice by its label, a number with its unit.
    pub fn shown(&self, field: &FieldAbout) -> String {
        let chosen = match field.kind {
            Kind::Choice(choices) => choices.iter().find(|choice| choice.key == self.text),
            _ => None,
        };
        match (chosen, field.kind) {
            (Some(choice), _) => choice.label.to_owned(),
            (None, Kind::Quantity { units, .. }) => self.rounded(units).unwrap_or_else(|| self.with_unit()),
            (None, _) => self.with_unit(),
        }
    }

    /// A number that only a computer would write, with nine decimals: a link carries all its bits, so that
    /// what it opens computes with the same number, and half of 79.5 more comes to 119.24999999999999.
    fn rounded(&self, offered: &[&'static Unit]) -> Option<String> {
        let Reading { number, unit } = number::read(&self.text, offered).ok()?;
        let plain = (number * 1e9).round() / 1e9;
        let symbol = unit.or(self.unit).map_or("", |unit| unit.symbol);
        let is_long = plain != number && plain.to_string().len() + 3 < number.to_string().len();
        is_long.then(|| format!("{plain} {symbol}").trim_end().to_owned())
    }

    /// How a number was read, where it is written otherwise than a machine would: `1 1/8` as 1.125.
    pub fn read_as(&self, field: &FieldAbout) -> Option<String> {
        let offered = match field.kind {
            Kind::Quantity { units, .. } => units,
            Kind::Count { .. } => &[&unit::PIECES],
            _ => return None,
        };
        let Reading { number, unit } = number::read(&self.text, offered).ok()?;
        let digits = number::split_unit(&self.text).0;
        if number::plain_number(digits).is_some_and(|plain| plain == number) {
            return None;
        }
        let symbol = unit.or(self.unit).map_or("", |unit| unit.symbol);
        Some(format!("{number} {symbol}").trim_end().to_owned())
    }
}

/// A number with six digits that count: more than anybody measures, and few enough to be read.
fn significant(number: f64) -> String {
    const DIGITS: i32 = 6;
    if number == 0.0 {
        return "0".to_owned();
    }
    let before_point = number.abs().log10().floor() as i32 + 1;
    let decimals = (DIGITS - before_point).clamp(0, 15);
    let scale = 10f64.powi(decimals);
    ((number * scale).round() / scale).to_string()
}

/// The unit typed behind a number, if the field offers it.
fn written_unit(field: &FieldAbout, text: &str) -> Option<&'static Unit> {
    let (digits, written) = number::split_unit(text);
    if digits.is_empty() || written.is_empty() {
        return None;
    }
    field.units().iter().copied().find(|unit| unit.is_written(written))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calculator::Bound;
    use crate::quantity::Shown;

    static LENGTHS: [&Unit; 3] = [&unit::UM, &unit::MIL, &unit::INCH];
    static FIELDS: [FieldAbout; 1] = [FieldAbout::quantity(
        "coat",
        "Coat",
        &LENGTHS,
        Bound::PositiveTo(
            Shown { number: 0.01, unit: &unit::UM, decimals: 2 },
            Shown { number: 1.0, unit: &unit::MM, decimals: 0 },
            "",
        ),
        "50 µm",
    )];

    fn typed(text: &str) -> Form {
        let mut form = Form::new(&FIELDS, &Draft::default());
        form.write("coat", text);
        form
    }

    fn only(form: &Form) -> &Filled {
        &form.entries[0]
    }

    #[test]
    fn a_unit_typed_behind_the_number_becomes_the_unit_chosen() {
        let form = typed("2 mil");
        assert_eq!((only(&form).text.as_str(), only(&form).unit), ("2 mil", Some(&unit::MIL)));
        assert_eq!(form.draft().get("coat"), Some("2 mil"));
    }

    #[test]
    fn another_unit_converts_what_stands_there_and_taken_back_gives_it_back() {
        let mut form = typed("2,50 mil");
        form.choose_unit("coat", "µm");
        assert_eq!(form.draft().get("coat"), Some("63.5 µm"));
        assert_eq!(only(&form).converted, Some(Converted { text: "2,50".into(), unit: &unit::MIL }));
        form.choose_unit("coat", "mil");
        assert_eq!(form.draft().get("coat"), Some("2,50 mil"));
        form.choose_unit("coat", "in");
        form.write("coat", "1");
        assert_eq!(only(&form).converted, None);
        for text in ["", "many"] {
            let mut form = typed(text);
            form.choose_unit("coat", "mil");
            assert_eq!((only(&form).text.as_str(), only(&form).unit), (text, Some(&unit::MIL)));
        }
    }

    /// Choosing the unit that stands there changes nothing, and a list of readings is not converted as one number.
    #[test]
    fn only_another_unit_of_one_number_converts_it() {
        let mut form = typed("2,50 mil");
        form.choose_unit("coat", "mil");
        assert_eq!((only(&form).text.as_str(), &only(&form).converted), ("2,50", &None));
        static READINGS: [FieldAbout; 1] = [FieldAbout::readings("readings", "Readings", &LENGTHS, "")];
        let mut form = Form::new(&READINGS, &Draft::default());
        form.write("readings", "2.5");
        form.choose_unit("readings", "mil");
        assert_eq!((only(&form).text.as_str(), only(&form).unit), ("2.5", Some(&unit::MIL)));
    }

    /// Forms are alike that ask the same and hold the same.
    #[test]
    fn forms_are_compared_by_what_stands_in_them() {
        static OTHERS: [FieldAbout; 1] = [FieldAbout::readings("coat", "Coat", &LENGTHS, "50 µm")];
        assert_eq!(typed("2 mil"), typed("2 mil"));
        assert_ne!(typed("2 mil"), typed("3 mil"));
        assert_ne!(Form::new(&FIELDS, &Draft::default()), Form::new(&OTHERS, &Draft::default()));
        // A link holds what is asked, whether it was changed or not, and not what is empty by itself.
        let kept = |form: &Form| form.to_keep().get("coat").map(str::to_owned);
        assert_eq!(kept(&Form::new(&FIELDS, &Draft::default())).as_deref(), Some("50 µm"));
        assert_eq!(kept(&typed("2 mil")).as_deref(), Some("2 mil"));
        assert_eq!(kept(&typed("")).as_deref(), Some(""));
        static EMPTY: [FieldAbout; 1] = [FieldAbout::text("coat", "Coat", "")];
        assert_eq!(kept(&Form::new(&EMPTY, &Draft::default())), None);
    }

    #[test]
    fn units_once_chosen_are_those_of_the_empty_fields() {
        let mut form = typed("");
        form.prefer(Units::Inch);
        assert_eq!(only(&form).unit, Some(&unit::MIL));
        form.write("coat", "2");
        form.prefer(Units::Metric);
        assert_eq!(only(&form).unit, Some(&unit::MIL));
    }

    #[test]
    fn how_a_number_was_read_is_told_only_where_it_could_surprise() {
        let read_as = |text| only(&typed(text)).read_as(&FIELDS[0]);
        assert_eq!(read_as("53"), None);
        assert_eq!(read_as("53.50 µm"), None);
        assert_eq!(read_as("2,5 mil").as_deref(), Some("2.5 mil"));
        assert_eq!(read_as("1 1/8 in").as_deref(), Some("1.125 in"));
        assert_eq!(read_as("five"), None);
    }

    #[test]
    fn an_empty_field_has_no_unit_in_the_draft() {
        assert_eq!(typed("").draft().get("coat"), Some(""));
    }

    #[test]
    fn a_number_that_only_a_computer_writes_is_shown_short() {
        for (text, shown) in [
            ("119.24999999999999 µm", "119.25 µm"),
            ("119.25 µm", "119.25 µm"),
            ("50", "50 µm"),
            ("0.30000000000000004 mil", "0.3 mil"),
            // Four digits shorter is short, three are not.
            ("0.123456789012 mil", "0.123456789012 mil"),
            ("0.1234567890123 mil", "0.123456789 mil"),
            // Two digits less are no gain.
            ("0.12345678912", "0.12345678912 µm"),
            ("many", "many"),
        ] {
            assert_eq!(
                only(&Form::new(&FIELDS, &[("coat", text)].into_iter().collect())).shown(&FIELDS[0]),
                shown
            );
        }
    }

    #[test]
    fn a_converted_number_has_six_digits_that_count() {
        for (number, text) in [
            (0.0, "0"),
            (1.0, "1"),
            (1.968_503_937, "1.9685"),
            (0.001_968_503_937, "0.0019685"),
            (1_234_567.8, "1234568"),
            (999_999.95, "1000000"),
            (123_456.78, "123457"),
            (99_999.96, "100000"),
            (-2.345_678_9, "-2.34568"),
            (10.0, "10"),
        ] {
            assert_eq!(significant(number), text);
        }
    }

    /// What is published stays, what the user fills goes.
    #[test]
    fn clearing_leaves_the_choices_and_what_is_published() {
        for entry in crate::calculator::REGISTER {
            for (field, filled) in Form::cleared(entry.about.fields).entries() {
                let stays = matches!(field.kind, Kind::Choice(_)) || field.source.is_some();
                let default = Filled::of(field, field.default);
                let expected = if stays { default.text } else { String::new() };
                assert_eq!(filled.text, expected, "{}: {}", entry.about.id, field.key);
            }
        }
    }

    #[test]
    fn a_count_is_told_as_it_was_read() {
        let read_as = |kind: fn(&Kind) -> bool, text: &str| {
            let fields = crate::calculator::REGISTER.iter().flat_map(|entry| entry.about.fields);
            let field = fields.into_iter().find(|field| kind(&field.kind)).unwrap();
            Filled { text: text.to_owned(), unit: None, converted: None }.read_as(field)
        };
        let is_count = |kind: &Kind| matches!(kind, Kind::Count { .. });
        assert_eq!(read_as(is_count, "1 200 pcs").as_deref(), Some("1200 pcs"));
        assert_eq!(read_as(is_count, "1200"), None);
        assert_eq!(read_as(|kind| matches!(kind, Kind::Choice(_)), "1 200"), None);
    }
}
