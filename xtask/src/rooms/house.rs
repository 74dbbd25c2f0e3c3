//! All modules of the house, and which file imports which.

use std::collections::{BTreeMap, BTreeSet};

use super::source::{self, Module, Used, Words};

/// A source file: where it lies, for people, and which module it is.
#[derive(Debug, Clone)]
pub(super) struct File {
    pub(super) name: String,
    pub(super) path: Words,
}

impl File {
    /// The room: the first folder or file below the crate's root, none for the root itself.
    pub(super) fn room(&self) -> Option<&str> {
        self.path.get(1).map(String::as_str)
    }
}

/// One file imports something of another.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Arrow {
    pub(super) from: usize,
    pub(super) to: usize,
    /// What, as it is written there.
    pub(super) what: String,
}

/// Files with their modules.
#[derive(Debug, Default)]
pub(super) struct House {
    pub(super) files: Vec<File>,
    modules: Vec<Module>,
    by_path: BTreeMap<Words, usize>,
}

/// Names that lead on to other names lead no further than this.
const FAR: usize = 32;

impl House {
    /// Takes a file in: `path` is its module, the crate first.
    pub(super) fn add(&mut self, name: &str, path: Words, text: &str) -> Result<(), String> {
        let modules = source::read(text, path.clone(), self.files.len()).map_err(|error| format!("{name}: {error}"))?;
        for module in modules {
            self.by_path.insert(module.path.clone(), self.modules.len());
            self.modules.push(module);
        }
        self.files.push(File { name: name.to_owned(), path });
        Ok(())
    }

    /// Every import of a file from another, once each.
    pub(super) fn arrows(&self) -> Vec<Arrow> {
        let far = self.methods();
        let mut seen = BTreeSet::new();
        let mut arrows = Vec::new();
        for module in &self.modules {
            for used in &module.used {
                let (to, what) = match used {
                    Used::Path(words) => (self.file_of(module, words, 0), words.join("::")),
                    Used::Name(name) => (self.file_of_name(module, name), name.clone()),
                    Used::Method(of, name) => (self.file_of_method(module, of.as_ref(), name, &far), name.clone()),
                };
                if let Some(to) = to.filter(|to| *to != module.file) {
                    if seen.insert((module.file, to)) {
                        arrows.push(Arrow { from: module.file, to, what });
                    }
                }
            }
        }
        arrows
    }

    /// The files in which a method of a name is written, and its types' modules and names.
    fn methods(&self) -> BTreeMap<&str, Vec<(Words, usize)>> {
        let mut found: BTreeMap<&str, Vec<(Words, usize)>> = BTreeMap::new();
        for module in &self.modules {
            for (of, name) in &module.methods {
                let whole = self.whole(module, of, 0).unwrap_or_else(|| of.clone());
                found.entry(name).or_default().push((whole, module.file));
            }
        }
        found
    }

    /// A method by its type, or by its name where only one is called so and nothing but ours is.
    fn file_of_method(
        &self,
        module: &Module,
        of: Option<&Words>,
        name: &str,
        far: &BTreeMap<&str, Vec<(Words, usize)>>,
    ) -> Option<usize> {
        let all = far.get(name)?;
        if let Some(of) = of {
            let whole = self.whole(module, of, 0)?;
            return all.iter().find(|(it, _)| *it == whole).map(|(_, file)| *file);
        }
        // Without the type only a file that names it is taken to mean it: others have methods called so.
        let [(whole, file)] = all.as_slice() else { return None };
        self.named(module, whole).then_some(*file)
    }

    /// Whether a module names a thing.
    fn named(&self, module: &Module, whole: &Words) -> bool {
        let is = |words: &Words| self.whole(module, words, 0).as_ref() == Some(whole);
        module.names.values().any(|(words, _)| is(words)) || module.methods.iter().any(|(of, _)| is(of))
    }

    /// A name alone, unless it is a module's: that is a variable's then.
    fn file_of_name(&self, module: &Module, name: &str) -> Option<usize> {
        let (path, _) = module.names.get(name)?;
        let whole = self.whole(module, path, 0)?;
        (!self.by_path.contains_key(&whole)).then(|| self.file_at(&whole))?
    }

    fn file_of(&self, module: &Module, words: &[String], depth: usize) -> Option<usize> {
        self.file_at(&self.whole(module, words, depth)?)
    }

    /// The file of the longest module that a whole path begins with.
    fn file_at(&self, whole: &[String]) -> Option<usize> {
        let module = (1..=whole.len()).rev().find_map(|len| self.module(whole.get(..len)?))?;
        Some(module.file)
    }

    /// A path from the crate's root to where the thing is declared, re-exports followed.
    fn whole(&self, module: &Module, words: &[String], depth: usize) -> Option<Words> {
        let (first, rest) = words.split_first()?;
        if depth > FAR {
            return None;
        }
        let here = &module.path;
        let mut start: Words = match first.as_str() {
            "crate" => here.get(..1)?.to_vec(),
            "self" => here.clone(),
            "super" => here.get(..here.len().checked_sub(1)?)?.to_vec(),
            name if self.by_path.contains_key([name.to_owned()].as_slice()) && !module.names.contains_key(name) => {
                vec![name.to_owned()]
            }
            name => return self.follow(module, name, rest, depth),
        };
        let mut rest = rest;
        while let Some((_, further)) = rest.split_first().filter(|(word, _)| *word == "super") {
            start.pop()?;
            rest = further;
        }
        self.descend(start, rest, depth)
    }

    fn module(&self, path: &[String]) -> Option<&Module> {
        self.modules.get(*self.by_path.get(path)?)
    }

    /// From a module on, word by word.
    fn descend(&self, start: Words, rest: &[String], depth: usize) -> Option<Words> {
        let module = self.module(&start)?;
        match rest.split_first() {
            None => Some(start),
            Some((name, rest)) => self.follow(module, name, rest, depth + 1).or_else(|| {
                // Something of a macro, or of a kind that is not read: it is of this module.
                let mut whole = start.clone();
                whole.push(name.clone());
                whole.extend(rest.iter().cloned());
                Some(whole)
            }),
        }
    }

    /// A name as a module knows it: a module inside it, something declared in it, something
    /// brought in.
    fn follow(&self, module: &Module, name: &str, rest: &[String], depth: usize) -> Option<Words> {
        if depth > FAR {
            return None;
        }
        let mut child = module.path.clone();
        child.push(name.to_owned());
        if self.by_path.contains_key(&child) {
            return self.descend(child, rest, depth + 1);
        }
        if module.items.contains(name) {
            child.extend(rest.iter().cloned());
            return Some(child);
        }
        if let Some((path, _)) = module.names.get(name) {
            let whole = if path.first().is_some_and(|first| first == name) && path.len() == 1 {
                None
            } else {
                self.whole(module, path, depth + 1)
            }?;
            return if self.by_path.contains_key(&whole) {
                self.descend(whole, rest, depth + 1)
            } else {
                let mut whole = whole;
                whole.extend(rest.iter().cloned());
                Some(whole)
            };
        }
        for (path, _) in &module.globs {
            let Some(of) = self.whole(module, path, depth + 1) else { continue };
            let Some(of) = self.module(&of) else { continue };
            if let Some(found) = self.follow(of, name, rest, depth + 1) {
                return Some(found);
            }
        }
        None
    }
}
