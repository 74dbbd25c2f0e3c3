//! What a source file says of others: its modules, the names it brings in, the paths it uses.

use std::collections::{BTreeMap, BTreeSet};

use proc_macro2::{TokenStream, TokenTree};
use syn::visit::{self, Visit};

/// A path as written, in its parts.
pub(super) type Words = Vec<String>;

/// One module of a file: the file's own, or one written inside it.
#[derive(Debug, Default)]
pub(super) struct Module {
    /// Where it stands: the crate first.
    pub(super) path: Words,
    /// The file it is written in, as an index.
    pub(super) file: usize,
    /// Names brought in, with what they stand for, and whether others see them.
    pub(super) names: BTreeMap<String, (Words, bool)>,
    /// What all is brought in of.
    pub(super) globs: Vec<(Words, bool)>,
    /// What is declared in it.
    pub(super) items: BTreeSet<String>,
    /// Methods given to types, by the type's name as written.
    pub(super) methods: Vec<(Words, String)>,
    /// Paths used, with what the file says there.
    pub(super) used: Vec<Used>,
}

/// A use of something.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Used {
    /// A path, in a body, a signature or a `use` that others don't see.
    Path(Words),
    /// A name alone where a value may stand: it may be a variable.
    Name(String),
    /// A method called on a value, with the type where it is the type's own code.
    Method(Option<Words>, String),
}

/// Reads a file as the module of a path, with the modules written inside it.
pub(super) fn read(text: &str, path: Words, file: usize) -> Result<Vec<Module>, syn::Error> {
    let parsed = syn::parse_file(text)?;
    let mut read = Reading { module: Module { path, file, ..Module::default() }, inner: Vec::new(), of: None };
    for item in &parsed.items {
        read.visit_item(item);
    }
    read.inner.push(read.module);
    Ok(read.inner)
}

struct Reading {
    /// The module that is read.
    module: Module,
    /// Those inside it that were.
    inner: Vec<Module>,
    /// The type whose own code is read.
    of: Option<Words>,
}

/// What is there for tests alone may look anywhere.
fn for_tests(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        attribute.path().is_ident("test")
            || attribute.path().is_ident("cfg")
                && attribute.meta.require_list().is_ok_and(|list| list.tokens.to_string() == "test")
    })
}

fn words_of(path: &syn::Path) -> Words {
    path.segments.iter().map(|segment| segment.ident.to_string()).collect()
}

fn attributes_of(item: &syn::Item) -> &[syn::Attribute] {
    match item {
        syn::Item::Const(it) => &it.attrs,
        syn::Item::Enum(it) => &it.attrs,
        syn::Item::Fn(it) => &it.attrs,
        syn::Item::Impl(it) => &it.attrs,
        syn::Item::Macro(it) => &it.attrs,
        syn::Item::Mod(it) => &it.attrs,
        syn::Item::Static(it) => &it.attrs,
        syn::Item::Struct(it) => &it.attrs,
        syn::Item::Trait(it) => &it.attrs,
        syn::Item::Type(it) => &it.attrs,
        syn::Item::Use(it) => &it.attrs,
        _ => &[],
    }
}

impl Reading {
    fn declare(&mut self, ident: &syn::Ident) {
        self.module.items.insert(ident.to_string());
    }

    fn bring_in(&mut self, tree: &syn::UseTree, before: &Words, seen: bool) {
        let mut path = before.clone();
        match tree {
            syn::UseTree::Path(it) => {
                path.push(it.ident.to_string());
                self.bring_in(&it.tree, &path, seen);
            }
            syn::UseTree::Name(it) if it.ident == "self" => {
                if let Some(name) = path.last().cloned() {
                    self.name(name, path, seen);
                }
            }
            syn::UseTree::Name(it) => {
                path.push(it.ident.to_string());
                self.name(it.ident.to_string(), path, seen);
            }
            syn::UseTree::Rename(it) => {
                if it.ident != "self" {
                    path.push(it.ident.to_string());
                }
                self.name(it.rename.to_string(), path, seen);
            }
            syn::UseTree::Glob(_) => {
                if !seen {
                    self.module.used.push(Used::Path(path.clone()));
                }
                self.module.globs.push((path, seen));
            }
            syn::UseTree::Group(it) => {
                for tree in &it.items {
                    self.bring_in(tree, &path, seen);
                }
            }
        }
    }

    fn name(&mut self, name: String, path: Words, seen: bool) {
        if !seen {
            self.module.used.push(Used::Path(path.clone()));
        }
        self.module.names.insert(name, (path, seen));
    }

    /// Inside a macro there are only words: those that stand as a path are taken for one.
    fn in_macro(&mut self, tokens: TokenStream) {
        let all: Vec<TokenTree> = tokens.into_iter().collect();
        let is = |at: usize, sign: char| matches!(all.get(at), Some(TokenTree::Punct(it)) if it.as_char() == sign);
        let mut at = 0;
        while let Some(token) = all.get(at) {
            match token {
                TokenTree::Group(group) => self.in_macro(group.stream()),
                TokenTree::Ident(ident) => {
                    let mut path = vec![ident.to_string()];
                    let of_a_value = at > 0 && is(at - 1, '.');
                    while is(at + 1, ':') && is(at + 2, ':') {
                        let Some(TokenTree::Ident(next)) = all.get(at + 3) else { break };
                        path.push(next.to_string());
                        at += 3;
                    }
                    let used = match (path.len(), of_a_value) {
                        (1, true) => Used::Method(None, path.remove(0)),
                        (1, false) => Used::Name(path.remove(0)),
                        _ => Used::Path(path),
                    };
                    self.module.used.push(used);
                }
                _ => {}
            }
            at += 1;
        }
    }
}

impl<'a> Visit<'a> for Reading {
    fn visit_item(&mut self, item: &'a syn::Item) {
        if for_tests(attributes_of(item)) {
            return;
        }
        match item {
            syn::Item::Const(it) => self.declare(&it.ident),
            syn::Item::Enum(it) => self.declare(&it.ident),
            syn::Item::Fn(it) => self.declare(&it.sig.ident),
            syn::Item::Static(it) => self.declare(&it.ident),
            syn::Item::Struct(it) => self.declare(&it.ident),
            syn::Item::Trait(it) => self.declare(&it.ident),
            syn::Item::Type(it) => self.declare(&it.ident),
            syn::Item::Macro(it) => {
                if let Some(ident) = &it.ident {
                    self.declare(ident);
                }
            }
            _ => {}
        }
        visit::visit_item(self, item);
    }

    fn visit_item_mod(&mut self, it: &'a syn::ItemMod) {
        let Some((_, items)) = &it.content else { return };
        let mut path = self.module.path.clone();
        path.push(it.ident.to_string());
        let inside = Module { path, file: self.module.file, ..Module::default() };
        let outside = std::mem::replace(&mut self.module, inside);
        for item in items {
            self.visit_item(item);
        }
        self.inner.push(std::mem::replace(&mut self.module, outside));
    }

    fn visit_item_use(&mut self, it: &'a syn::ItemUse) {
        let seen = !matches!(it.vis, syn::Visibility::Inherited);
        self.bring_in(&it.tree, &Words::new(), seen);
    }

    fn visit_item_impl(&mut self, it: &'a syn::ItemImpl) {
        let of = match &*it.self_ty {
            syn::Type::Path(of) if it.trait_.is_none() => Some(words_of(&of.path)),
            _ => None,
        };
        if let Some(of) = &of {
            for inner in &it.items {
                if let syn::ImplItem::Fn(method) = inner {
                    let name = method.sig.ident.to_string();
                    self.module.methods.push((of.clone(), name));
                }
            }
        }
        let back = self.of.take();
        self.of = of;
        visit::visit_item_impl(self, it);
        self.of = back;
    }

    fn visit_impl_item_fn(&mut self, it: &'a syn::ImplItemFn) {
        if !for_tests(&it.attrs) {
            visit::visit_impl_item_fn(self, it);
        }
    }

    fn visit_expr_method_call(&mut self, it: &'a syn::ExprMethodCall) {
        let own = matches!(&*it.receiver, syn::Expr::Path(of) if of.path.is_ident("self"));
        let of = if own { self.of.clone() } else { None };
        let name = it.method.to_string();
        self.module.used.push(Used::Method(of, name));
        visit::visit_expr_method_call(self, it);
    }

    fn visit_path(&mut self, it: &'a syn::Path) {
        let words = words_of(it);
        match (words.as_slice(), &self.of) {
            ([own, name], Some(of)) if own == "Self" => {
                let used = Used::Method(Some(of.clone()), name.clone());
                self.module.used.push(used);
            }
            ([name], _) => {
                let used = Used::Name(name.clone());
                self.module.used.push(used);
            }
            _ => self.module.used.push(Used::Path(words)),
        }
        visit::visit_path(self, it);
    }

    fn visit_visibility(&mut self, _: &'a syn::Visibility) {}

    fn visit_attribute(&mut self, _: &'a syn::Attribute) {}

    fn visit_macro(&mut self, it: &'a syn::Macro) {
        visit::visit_path(self, &it.path);
        let words = words_of(&it.path);
        self.module.used.push(Used::Path(words));
        self.in_macro(it.tokens.clone());
    }
}
