//! A source file with many mutants in it, each behind a switch.
//!
//! Where a mutant can be, the text asks whether it is on; what is not changed keeps its own text,
//! so that the size of the file grows with the number of mutants and not with its product.

use std::ops::Range;

use super::site::{Shape, Site};

/// A file as it is built.
pub struct Rewritten {
    pub text: String,
    /// Where the text of one mutant stands, and its number.
    pub arms: Vec<(Range<usize>, u32)>,
    /// What asks for these numbers, with all that is in it.
    pub groups: Vec<(Range<usize>, Range<u32>)>,
}

/// A place with what is to be put there.
pub struct Change<'a> {
    pub site: &'a Site,
    /// Each is on where its number is: they are counted from `first`.
    pub replacements: Vec<&'a str>,
    pub first: u32,
}

/// Puts the changes in. Places of one and the same expression must stand beside each other.
pub fn rewrite(source: &str, changes: &[Change<'_>]) -> Rewritten {
    let mut spots: Vec<Spot<'_>> = Vec::new();
    for change in changes {
        match (&change.site.shape, spots.last_mut()) {
            // Fields of one struct are asked for together.
            (Shape::Field { whole, .. }, Some(last)) if last.is_struct() && last.range == *whole => {
                last.changes.push(change);
            }
            _ => spots.push(Spot { range: change.range(), changes: vec![change] }),
        }
    }
    spots.sort_by_key(|spot| {
        let inner = !matches!(spot.shape(), Some(Shape::Guard { .. }));
        (spot.range.start, std::cmp::Reverse(spot.range.end), inner)
    });
    let done = Rewritten { text: String::with_capacity(source.len() * 3), arms: vec![], groups: vec![] };
    let mut writer = Writer { source, done };
    writer.write(0..source.len(), &spots);
    writer.done
}

struct Spot<'a> {
    range: Range<usize>,
    changes: Vec<&'a Change<'a>>,
}

impl Spot<'_> {
    fn shape(&self) -> Option<&Shape> {
        self.changes.first().map(|change| &change.site.shape)
    }

    fn is_struct(&self) -> bool {
        matches!(self.shape(), Some(Shape::Field { .. }))
    }
}

impl Change<'_> {
    fn range(&self) -> Range<usize> {
        match &self.site.shape {
            Shape::Body { inside } => *inside..*inside,
            Shape::Arm { behind } => *behind..*behind,
            Shape::Binary { whole, .. } | Shape::Unary { whole, .. } | Shape::Field { whole, .. } => {
                whole.clone()
            }
            Shape::Guard { guard, .. } => guard.clone(),
        }
    }

    fn count(&self) -> u32 {
        u32::try_from(self.replacements.len()).unwrap_or(u32::MAX)
    }
}

struct Writer<'a> {
    source: &'a str,
    done: Rewritten,
}

impl Writer<'_> {
    /// The text of a range with the spots inside it.
    fn write(&mut self, range: Range<usize>, spots: &[Spot<'_>]) {
        let mut at = range.start;
        let mut rest = spots;
        while let Some((spot, others)) = rest.split_first() {
            let inside = others.iter().take_while(|other| other.range.end <= spot.range.end).count();
            // What only inserts has nothing inside it.
            let inside = if spot.range.is_empty() { 0 } else { inside };
            let (inner, others) = others.split_at(inside);
            rest = others;
            self.copy(at..spot.range.start);
            let start = self.done.text.len();
            let numbers = self.spot(spot, inner);
            self.done.groups.push((start..self.done.text.len(), numbers));
            at = spot.range.end;
        }
        self.copy(at..range.end);
    }

    /// The spots of `inner` that lie in a range, with its text.
    fn part(&mut self, range: Range<usize>, inner: &[Spot<'_>]) {
        let start = inner.iter().take_while(|spot| spot.range.start < range.start).count();
        let (_, inner) = inner.split_at(start);
        let count = inner.iter().take_while(|spot| spot.range.end <= range.end).count();
        let (inner, _) = inner.split_at(count);
        self.write(range, inner);
    }

    fn copy(&mut self, range: Range<usize>) {
        self.done.text.push_str(self.source.get(range).unwrap_or_default());
    }

    fn original(&self, range: Range<usize>) -> &str {
        self.source.get(range).unwrap_or_default()
    }

    fn push(&mut self, text: &str) {
        self.done.text.push_str(text);
    }

    fn arm(&mut self, number: u32, text: &str) {
        let start = self.done.text.len();
        self.push(text);
        self.done.arms.push((start..self.done.text.len(), number));
    }

    fn spot(&mut self, spot: &Spot<'_>, inner: &[Spot<'_>]) -> Range<u32> {
        let Some(change) = spot.changes.first() else { return 0..0 };
        let first = change.first;
        let count: u32 = spot.changes.iter().map(|change| change.count()).sum();
        let off = format!("crate::mutant::off({first}, {count})");
        match &change.site.shape {
            Shape::Body { .. } => {
                self.push(&format!(" if !{off} {{"));
                for (number, text) in (first..).zip(&change.replacements) {
                    self.push(&format!(" if crate::mutant::on({number}) {{ return "));
                    self.arm(number, text);
                    self.push("; }");
                }
                self.push(" }");
            }
            Shape::Arm { .. } => self.arm(first, &format!(" if {off}")),
            Shape::Guard { guard, binds: true } => {
                self.arm(first, &format!("{off} && "));
                self.part(guard.clone(), inner);
            }
            Shape::Guard { guard, .. } => {
                self.push(&format!("(if {off} {{ ("));
                self.part(guard.clone(), inner);
                self.push(") }");
                self.choices((first..).zip(change.replacements.iter().map(|&text| text.to_owned())));
            }
            Shape::Unary { whole, inner: operand } => {
                self.push(&format!("(if {off} {{ ("));
                self.copy(whole.start..operand.start);
                self.part(operand.clone(), inner);
                self.push(") }");
                let text = self.original(operand.clone()).to_owned();
                self.choices(std::iter::once((first, text)));
            }
            Shape::Binary { left, operator, right, cast, .. } => {
                self.push(&format!("(if {off} {{ ("));
                self.part(left.clone(), inner);
                self.copy(left.end..right.start);
                self.part(right.clone(), inner);
                self.push(") }");
                let left_text = self.original(left.clone());
                let left_text = if *cast { format!("({left_text})") } else { left_text.to_owned() };
                let before = self.original(left.end..operator.start).to_owned();
                let right_text = self.original(operator.end..right.end).to_owned();
                let texts = change.replacements.iter();
                let texts = texts.map(|by| format!("{left_text}{before}{by}{right_text}"));
                self.choices((first..).zip(texts));
            }
            Shape::Field { whole, .. } => {
                self.push(&format!("(if {off} {{ ("));
                self.part(whole.clone(), inner);
                self.push(") }");
                let fields = spot.changes.iter().filter_map(|change| match &change.site.shape {
                    Shape::Field { field, .. } => Some((
                        change.first,
                        self.original(whole.start..field.start).to_owned()
                            + self.original(field.end..whole.end),
                    )),
                    _ => None,
                });
                let fields: Vec<_> = fields.collect();
                self.choices(fields.into_iter());
            }
        }
        first..first + count
    }

    /// The texts of the mutants of an expression, each behind its number.
    fn choices(&mut self, texts: impl Iterator<Item = (u32, String)>) {
        let mut texts = texts.peekable();
        while let Some((number, text)) = texts.next() {
            if texts.peek().is_some() {
                self.push(&format!(" else if crate::mutant::on({number}) {{ ("));
            } else {
                self.push(" else { (");
            }
            self.arm(number, &text);
            self.push(") }");
        }
        self.push(")");
    }
}

#[cfg(test)]
mod tests {
    use super::{Change, rewrite};
    use crate::xtask::mutants::site::{Genre, sites};

    /// The text with one replacement at every place of a genre.
    fn with(source: &str, genre: Genre, by: &str) -> String {
        let sites = sites(source).unwrap();
        let changes = sites.iter().filter(|site| site.genre == genre && !site.constant);
        let changes = changes.zip(0..).map(|(site, first)| Change { site, replacements: vec![by], first });
        rewrite(source, &changes.collect::<Vec<_>>()).text
    }

    #[test]
    fn a_sum_inside_a_sum_is_switched_by_itself() {
        assert_eq!(
            with("fn f() -> i32 { a - (b - c) }", Genre::BinaryOperator, "+"),
            "fn f() -> i32 { (if crate::mutant::off(0, 1) { (a - ((if crate::mutant::off(1, 1) { (b - c) } else \
             { (b + c) }))) } else { (a + (b - c)) }) }"
        );
    }

    #[test]
    fn a_value_is_returned_before_anything_is_done() {
        assert_eq!(
            with("fn f() -> i32 { a }", Genre::FnValue, "0"),
            "fn f() -> i32 { if !crate::mutant::off(0, 1) { if crate::mutant::on(0) { return 0; } } a }"
        );
    }

    #[test]
    fn what_the_compiler_works_out_keeps_its_text() {
        let source = "const A: f64 = 1.0 - 2.0; fn f() { let a = [0; 3 - 1]; }";
        assert_eq!(with(source, Genre::BinaryOperator, "+"), source);
        let rows = "static ROWS: [fn(f64) -> bool; 1] = [|x| !is(x)];";
        assert!(with(rows, Genre::UnaryOperator, "").contains("off(0, 1)"));
    }

    #[test]
    fn an_arm_less_needs_one_that_takes_what_it_took() {
        let arms = |last| format!("fn f() {{ match x {{ 1 => a(), {last} => b() }} }}");
        assert!(with(&arms("_"), Genre::MatchArm, "").contains("1 if crate::mutant::off(0, 1) => a()"));
        assert_eq!(with(&arms("_ if c"), Genre::MatchArm, ""), arms("_ if c"));
        assert_eq!(
            with(&arms("_ if c"), Genre::MatchArmGuard, "true"),
            arms("_ if (if crate::mutant::off(0, 1) { (c) } else { (true) })")
        );
    }

    #[test]
    fn a_place_is_found_again_by_the_texts_before_it() {
        let found = sites("impl A { fn f() { a + b; c + d } fn g() { e + f } }").unwrap();
        let sums: Vec<_> = found
            .iter()
            .filter(|site| site.genre == Genre::BinaryOperator)
            .map(|site| (site.function.as_str(), site.text.as_str(), site.occurrence))
            .collect();
        assert_eq!(sums, [("A::f", "+", 0), ("A::f", "+", 1), ("A::g", "+", 0)]);
    }
}
