//! Sentences: looked up in `core/locales`, one Fluent file a language.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

const ENGLISH: &str = include_str!("../locales/en.ftl");

/// The sentences of one language.
pub struct Texts {
    bundle: FluentBundle<FluentResource>,
}

impl std::fmt::Debug for Texts {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Texts").field("language", &self.bundle.locales).finish()
    }
}

/// What a sentence needs: a name and a word or number.
pub type Need<'a> = (&'static str, FluentValue<'a>);

impl Texts {
    /// Sentences for a language; English where there are none in it.
    pub fn new(language: &str) -> Self {
        let _ = language;
        let english: LanguageIdentifier = "en".parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![english]);
        bundle.set_use_isolating(false);
        let resource = FluentResource::try_new(ENGLISH.to_owned()).unwrap_or_else(|(partly, _)| partly);
        bundle.add_resource_overriding(resource);
        Self { bundle }
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
        let mut args = FluentArgs::with_capacity(needs.len());
        for (name, value) in needs {
            args.set(*name, value.clone());
        }
        let mut errors = Vec::new();
        self.bundle.format_pattern(pattern, Some(&args), &mut errors).into_owned()
    }
}
