//! Sentences: looked up in `core/locales`, a folder of Fluent files a language, a file a room.

use std::collections::{BTreeMap, BTreeSet};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast;
use unic_langid::{CharacterDirection, LanguageIdentifier};

const ENGLISH: [&str; 21] = [
    include_str!("../locales/en/caseload.ftl"),
    include_str!("../locales/en/cautions.ftl"),
    include_str!("../locales/en/choices.ftl"),
    include_str!("../locales/en/comfort.ftl"),
    include_str!("../locales/en/kept.ftl"),
    include_str!("../locales/en/day.ftl"),
    include_str!("../locales/en/fields.ftl"),
    include_str!("../locales/en/figures.ftl"),
    include_str!("../locales/en/files.ftl"),
    include_str!("../locales/en/frame.ftl"),
    include_str!("../locales/en/kinds.ftl"),
    include_str!("../locales/en/kit.ftl"),
    include_str!("../locales/en/now.ftl"),
    include_str!("../locales/en/plan.ftl"),
    include_str!("../locales/en/sealed.ftl"),
    include_str!("../locales/en/sheet.ftl"),
    include_str!("../locales/en/supply.ftl"),
    include_str!("../locales/en/tonight.ftl"),
    include_str!("../locales/en/trace.ftl"),
    include_str!("../locales/en/trouble.ftl"),
    include_str!("../locales/en/visit.ftl"),
];

/// The sentences of one language.
pub struct Texts {
    bundle: FluentBundle<FluentResource>,
    /// What sentences choose their words by as a number: of each key, the names.
    counts: BTreeMap<String, BTreeSet<String>>,
}

impl std::fmt::Debug for Texts {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Texts").field("language", &self.bundle.locales).finish()
    }
}

/// What a sentence needs: a name and a word or number.
pub type Need<'a> = (&'static str, FluentValue<'a>);

impl Texts {
    /// Whether they are read from right to left.
    pub fn is_right_to_left(&self) -> bool {
        self.bundle.locales.iter().any(|shown| shown.character_direction() == CharacterDirection::RTL)
    }

    /// Sentences for a language; English where there are none in it.
    pub fn new(language: &str) -> Self {
        let _ = language;
        let english: LanguageIdentifier = "en".parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![english]);
        bundle.set_use_isolating(false);
        let mut counts = BTreeMap::new();
        for room in ENGLISH {
            let resource = FluentResource::try_new(room.to_owned()).unwrap_or_else(|(partly, _)| partly);
            counts.extend(resource.entries().filter_map(counts_in));
            bundle.add_resource_overriding(resource);
        }
        Self { bundle, counts }
    }

    /// Every sentence that chooses its words by a number, with the names of what it chooses by.
    pub fn that_count(&self) -> impl Iterator<Item = (&str, &BTreeSet<String>)> {
        self.counts.iter().map(|(key, names)| (key.as_str(), names))
    }

    /// The language the sentences are in.
    pub fn language(&self) -> String {
        self.bundle.locales.first().map(|language| language.language.to_string()).unwrap_or_default()
    }

    /// Whether there is a sentence of this key.
    pub fn has(&self, key: &str) -> bool {
        self.bundle.has_message(key)
    }

    /// A sentence that needs nothing.
    pub fn say(&self, key: &str) -> String {
        self.say_with(key, &[])
    }

    /// A sentence with what it needs. A key without a sentence is said as it
    /// is, so that the gap is seen.
    pub fn say_with(&self, key: &str, needs: &[Need<'_>]) -> String {
        let Some(pattern) = self.bundle.get_message(key).and_then(|m| m.value()) else {
            return format!("\u{27e8}{key}\u{27e9}");
        };
        let counts = self.counts.get(key);
        let mut args = FluentArgs::with_capacity(needs.len());
        for (name, value) in needs {
            let counted = counts.is_some_and(|counts| counts.contains(*name));
            args.set(*name, if counted { as_number(value) } else { value.clone() });
        }
        let mut errors = Vec::new();
        self.bundle.format_pattern(pattern, Some(&args), &mut errors).into_owned()
    }
}

/// A figure that came as text, as the number that words are chosen by: `1` is one of it.
fn as_number<'a>(value: &FluentValue<'a>) -> FluentValue<'a> {
    match value {
        FluentValue::String(text) => text.parse::<f64>().map_or_else(|_| value.clone(), FluentValue::from),
        _ => value.clone(),
    }
}

/// A sentence's key, and the names that its selectors take a number of: those with a plural
/// form or a figure among their choices.
fn counts_in(entry: &ast::Entry<&str>) -> Option<(String, BTreeSet<String>)> {
    let ast::Entry::Message(message) = entry else { return None };
    let mut names = BTreeSet::new();
    counts_of(message.value.as_ref()?, &mut names);
    (!names.is_empty()).then(|| (message.id.name.to_owned(), names))
}

fn counts_of(pattern: &ast::Pattern<&str>, names: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        let ast::PatternElement::Placeable { expression: ast::Expression::Select { selector, variants } } = element
        else {
            continue;
        };
        let plural = |key: &ast::VariantKey<&str>| match key {
            ast::VariantKey::NumberLiteral { .. } => true,
            ast::VariantKey::Identifier { name } => ["zero", "one", "two", "few", "many"].contains(name),
        };
        if let ast::InlineExpression::VariableReference { id } = selector {
            if variants.iter().any(|variant| plural(&variant.key)) {
                names.insert(id.name.to_owned());
            }
        }
        for variant in variants {
            counts_of(&variant.value, names);
        }
    }
}
