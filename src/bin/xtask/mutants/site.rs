//! The places of a source file where a mutant can be put, and what is needed to put it there.
//!
//! They are those that cargo-mutants knows. A place is found again without a line number: by its
//! function, its genre, its text, and how many of the same text stand before it in that function.

use std::ops::Range;

use proc_macro2::LineColumn;
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{Attribute, BinOp, Block, Expr, Pat, ReturnType, Signature, UnOp};

use crate::xtask::run::Done;

/// One place.
pub struct Site {
    pub genre: Genre,
    /// As a path: `Thread::number`, `<impl Calculator for CoatRoom>::solve`.
    pub function: String,
    /// What would be replaced, in one line; of a function's body nothing.
    pub text: String,
    /// How many places of the same function, genre and text stand before this one.
    pub occurrence: usize,
    /// Where what would be replaced begins: the line from 1, the column from 1.
    pub at: (usize, usize),
    /// In bytes of the file.
    pub shape: Shape,
    /// Worked out by the compiler: no switch can stand here.
    pub constant: bool,
}

/// What kind of change is made, named as cargo-mutants does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Genre {
    FnValue,
    BinaryOperator,
    UnaryOperator,
    MatchArm,
    MatchArmGuard,
    StructField,
}

impl Genre {
    const ALL: [Self; 6] = [
        Self::FnValue,
        Self::BinaryOperator,
        Self::UnaryOperator,
        Self::MatchArm,
        Self::MatchArmGuard,
        Self::StructField,
    ];

    /// The name that cargo-mutants writes.
    pub fn name(self) -> &'static str {
        match self {
            Self::FnValue => "FnValue",
            Self::BinaryOperator => "BinaryOperator",
            Self::UnaryOperator => "UnaryOperator",
            Self::MatchArm => "MatchArm",
            Self::MatchArmGuard => "MatchArmGuard",
            Self::StructField => "StructField",
        }
    }

    /// The genre of this name.
    pub fn of(name: &str) -> Done<Self> {
        let found = Self::ALL.into_iter().find(|genre| genre.name() == name);
        found.ok_or_else(|| format!("no genre of mutants is called {name}").into())
    }
}

/// The pieces of the text around a place.
#[derive(Clone)]
pub enum Shape {
    /// A function's value: a return is put in here.
    Body {
        inside: usize,
    },
    Binary {
        whole: Range<usize>,
        left: Range<usize>,
        operator: Range<usize>,
        right: Range<usize>,
        /// A cast before `<` would be read as the arguments of its type.
        cast: bool,
    },
    Unary {
        whole: Range<usize>,
        inner: Range<usize>,
    },
    /// A guard is put in here, behind the pattern.
    Arm {
        behind: usize,
    },
    Guard {
        guard: Range<usize>,
        /// It binds names, so that nothing can stand in its place.
        binds: bool,
    },
    Field {
        whole: Range<usize>,
        field: Range<usize>,
    },
}

impl Shape {
    /// The struct that a field is of: its fields are asked for together.
    pub fn of_struct(&self) -> Option<Range<usize>> {
        match self {
            Self::Field { whole, .. } => Some(whole.clone()),
            _ => None,
        }
    }
}

/// All places of a file, in the order of its text.
pub fn sites(source: &str) -> Done<Vec<Site>> {
    let file = syn::parse_file(source)?;
    let mut finder =
        Finder { source, sites: Vec::new(), path: Vec::new(), functions: Vec::new(), constant: false };
    finder.visit_file(&file);
    let mut sites = finder.sites;
    for index in 0..sites.len() {
        let (before, rest) = sites.split_at_mut(index);
        if let Some(site) = rest.first_mut() {
            site.occurrence = before
                .iter()
                .filter(|other| {
                    other.genre == site.genre && other.function == site.function && other.text == site.text
                })
                .count();
        }
    }
    Ok(sites)
}

struct Finder<'a> {
    source: &'a str,
    sites: Vec<Site>,
    path: Vec<String>,
    functions: Vec<String>,
    constant: bool,
}

impl Finder<'_> {
    fn add(&mut self, genre: Genre, at: LineColumn, text: Range<usize>, shape: Shape) {
        let text = if genre == Genre::FnValue { "" } else { self.source.get(text).unwrap_or_default() };
        self.sites.push(Site {
            genre,
            function: self.functions.last().cloned().unwrap_or_default(),
            text: text.split_whitespace().collect::<Vec<_>>().join(" "),
            occurrence: 0,
            at: (at.line, at.column + 1),
            shape,
            constant: self.constant,
        });
    }

    fn function(&mut self, signature: &Signature, block: &Block, inner: impl FnOnce(&mut Self)) {
        let (Some(first), Some(last)) = (block.stmts.first(), block.stmts.last()) else { return };
        self.path.push(signature.ident.to_string());
        self.functions.push(self.path.join("::"));
        let outer = std::mem::replace(&mut self.constant, false);
        // What is returned as `impl Trait` is of one type, which a replacement is not.
        let opaque = match &signature.output {
            ReturnType::Type(_, kind) => {
                self.source.get(kind.span().byte_range()).unwrap_or_default().contains("impl ")
            }
            ReturnType::Default => false,
        };
        self.constant = opaque;
        let body = first.span().byte_range().start..last.span().byte_range().end;
        let inside = block.brace_token.span.open().byte_range().end;
        self.add(Genre::FnValue, first.span().start(), body, Shape::Body { inside });
        self.constant = false;
        inner(self);
        self.constant = outer;
        self.functions.pop();
        self.path.pop();
    }

    fn within(&mut self, name: String, inner: impl FnOnce(&mut Self)) {
        self.path.push(name);
        inner(self);
        self.path.pop();
    }

    fn constantly(&mut self, inner: impl FnOnce(&mut Self)) {
        let outer = std::mem::replace(&mut self.constant, true);
        inner(self);
        self.constant = outer;
    }

    fn words(&self, spanned: &impl Spanned) -> String {
        let text = self.source.get(spanned.span().byte_range()).unwrap_or_default();
        text.split_whitespace().collect::<Vec<_>>().join(" ")
    }
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_item_mod(&mut self, item: &'ast syn::ItemMod) {
        if !left_out(&item.attrs) {
            self.within(item.ident.to_string(), |finder| visit::visit_item_mod(finder, item));
        }
    }

    fn visit_item_impl(&mut self, item: &'ast syn::ItemImpl) {
        if left_out(&item.attrs) {
            return;
        }
        let of = self.words(&*item.self_ty);
        let name = match &item.trait_ {
            Some((_, path, _)) if path.segments.last().is_some_and(|last| last.ident == "Default") => return,
            Some((_, path, _)) => format!("<impl {} for {of}>", self.words(path)),
            None => of,
        };
        self.within(name, |finder| visit::visit_item_impl(finder, item));
    }

    fn visit_item_trait(&mut self, item: &'ast syn::ItemTrait) {
        if !left_out(&item.attrs) {
            self.within(item.ident.to_string(), |finder| visit::visit_item_trait(finder, item));
        }
    }

    fn visit_item_fn(&mut self, item: &'ast syn::ItemFn) {
        if !left_out(&item.attrs) {
            self.function(&item.sig, &item.block, |finder| visit::visit_item_fn(finder, item));
        }
    }

    fn visit_impl_item_fn(&mut self, item: &'ast syn::ImplItemFn) {
        if !left_out(&item.attrs) && item.sig.ident != "new" {
            self.function(&item.sig, &item.block, |finder| visit::visit_impl_item_fn(finder, item));
        }
    }

    fn visit_trait_item_fn(&mut self, item: &'ast syn::TraitItemFn) {
        if let Some(block) = item.default.as_ref().filter(|_| !left_out(&item.attrs)) {
            self.function(&item.sig, block, |finder| visit::visit_trait_item_fn(finder, item));
        }
    }

    fn visit_item_const(&mut self, item: &'ast syn::ItemConst) {
        self.constantly(|finder| visit::visit_item_const(finder, item));
    }

    fn visit_impl_item_const(&mut self, item: &'ast syn::ImplItemConst) {
        self.constantly(|finder| visit::visit_impl_item_const(finder, item));
    }

    fn visit_trait_item_const(&mut self, item: &'ast syn::TraitItemConst) {
        self.constantly(|finder| visit::visit_trait_item_const(finder, item));
    }

    fn visit_item_static(&mut self, item: &'ast syn::ItemStatic) {
        self.constantly(|finder| visit::visit_item_static(finder, item));
    }

    fn visit_variant(&mut self, variant: &'ast syn::Variant) {
        self.constantly(|finder| visit::visit_variant(finder, variant));
    }

    fn visit_expr_const(&mut self, block: &'ast syn::ExprConst) {
        self.constantly(|finder| visit::visit_expr_const(finder, block));
    }

    fn visit_expr_repeat(&mut self, repeat: &'ast syn::ExprRepeat) {
        self.visit_expr(&repeat.expr);
        self.constantly(|finder| finder.visit_expr(&repeat.len));
    }

    fn visit_type(&mut self, kind: &'ast syn::Type) {
        self.constantly(|finder| visit::visit_type(finder, kind));
    }

    fn visit_generic_argument(&mut self, argument: &'ast syn::GenericArgument) {
        self.constantly(|finder| visit::visit_generic_argument(finder, argument));
    }

    fn visit_pat(&mut self, pattern: &'ast Pat) {
        self.constantly(|finder| visit::visit_pat(finder, pattern));
    }

    fn visit_expr_closure(&mut self, closure: &'ast syn::ExprClosure) {
        // Called when the program runs, wherever it is written.
        let outer = std::mem::replace(&mut self.constant, false);
        visit::visit_expr_closure(self, closure);
        self.constant = outer;
    }

    fn visit_expr_binary(&mut self, binary: &'ast syn::ExprBinary) {
        let operator = binary.op.span();
        // A condition that binds names takes no other operator.
        let lets = matches!(binary.op, BinOp::And(_)) && (has_let(&binary.left) || has_let(&binary.right));
        if !lets {
            let shape = Shape::Binary {
                whole: binary.span().byte_range(),
                left: binary.left.span().byte_range(),
                operator: operator.byte_range(),
                right: binary.right.span().byte_range(),
                cast: matches!(*binary.left, Expr::Cast(_)),
            };
            self.add(Genre::BinaryOperator, operator.start(), operator.byte_range(), shape);
        }
        visit::visit_expr_binary(self, binary);
    }

    fn visit_expr_unary(&mut self, unary: &'ast syn::ExprUnary) {
        if matches!(unary.op, UnOp::Not(_) | UnOp::Neg(_)) {
            let whole = unary.span().byte_range();
            let shape = Shape::Unary { whole: whole.clone(), inner: unary.expr.span().byte_range() };
            self.add(Genre::UnaryOperator, unary.op.span().start(), whole, shape);
        }
        visit::visit_expr_unary(self, unary);
    }

    fn visit_expr_match(&mut self, matched: &'ast syn::ExprMatch) {
        // A guarded `_` takes nothing in for the others: without one of them nothing compiles.
        let catches = |arm: &syn::Arm| matches!(arm.pat, Pat::Wild(_)) && arm.guard.is_none();
        let open = matched.arms.iter().any(catches);
        for arm in &matched.arms {
            let pattern = arm.pat.span().byte_range();
            match &arm.guard {
                Some((_, guard)) => {
                    let range = guard.span().byte_range();
                    let shape = Shape::Guard { guard: range.clone(), binds: has_let(guard) };
                    self.add(Genre::MatchArmGuard, guard.span().start(), range, shape);
                }
                None if open && !matches!(arm.pat, Pat::Wild(_)) => {
                    let shape = Shape::Arm { behind: pattern.end };
                    self.add(Genre::MatchArm, arm.span().start(), pattern, shape);
                }
                None => {}
            }
        }
        visit::visit_expr_match(self, matched);
    }

    fn visit_expr_struct(&mut self, made: &'ast syn::ExprStruct) {
        if made.rest.is_some() {
            for pair in made.fields.pairs() {
                let value = pair.value().span().byte_range();
                let end = pair.punct().map_or(value.end, |comma| comma.span().byte_range().end);
                let shape = Shape::Field { whole: made.span().byte_range(), field: value.start..end };
                self.add(Genre::StructField, pair.value().span().start(), value, shape);
            }
        }
        visit::visit_expr_struct(self, made);
    }
}

/// Whether a condition binds names: not inside brackets, where `let` cannot stand.
fn has_let(condition: &Expr) -> bool {
    match condition {
        Expr::Let(_) => true,
        Expr::Binary(binary) => {
            matches!(binary.op, BinOp::And(_)) && (has_let(&binary.left) || has_let(&binary.right))
        }
        _ => false,
    }
}

/// Whether it is a test, or for tests only.
fn left_out(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        let path = attribute.path();
        let mut is_test = path.segments.last().is_some_and(|last| last.ident == "test");
        if path.is_ident("cfg") {
            // What cannot be read as a list of names is no `cfg(test)`.
            let _ = attribute.parse_nested_meta(|meta| {
                is_test |= meta.path.is_ident("test");
                Ok(())
            });
        }
        is_test
    })
}
