//! Trouble, in words.

use crate::record::{Fields, Settings};
use crate::screen::words::Words;
use crate::text::Texts;
use crate::trouble::{Detail, Trouble};

/// What is the matter, and what to do about it.
pub fn words_of_trouble(texts: &Texts, trouble: &Trouble) -> (String, String) {
    // Trouble can come before any settings are read; nothing in it hangs on them.
    let settings = Settings::read(&Fields::new());
    let words = Words::new(texts, &settings);
    let mut needs = trouble.needs.clone();
    needs.push(("field", field_words(texts, &trouble.field).into()));
    (render(words, trouble.key, &needs), render(words, &format!("{}-do", trouble.key), &needs))
}

/// A sentence with what it needs, rendered.
pub(super) fn render(words: Words<'_>, key: &str, needs: &[(&'static str, Detail)]) -> String {
    let needs: Vec<_> = needs.iter().map(|(name, detail)| (*name, words.detail(detail).into())).collect();
    words.with(key, &needs)
}

fn field_words(texts: &Texts, field: &str) -> String {
    let plain = field.split('/').next().unwrap_or_default().replace('_', "-");
    let key = format!("field-{plain}");
    if texts.has(&key) {
        texts.say(&key)
    } else {
        field.to_owned()
    }
}
