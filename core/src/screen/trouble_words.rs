//! Trouble, in words.

use crate::text::Texts;
use crate::trouble::Trouble;

/// What is the matter, and what to do about it.
pub fn words_of_trouble(texts: &Texts, trouble: &Trouble) -> (String, String) {
    let mut needs: Vec<_> = trouble.needs.iter().map(|(name, value)| (*name, value.as_str().into())).collect();
    let field = field_words(texts, &trouble.field);
    needs.push(("field", field.as_str().into()));
    (texts.say_with(trouble.key, &needs), texts.say_with(&format!("{}-do", trouble.key), &needs))
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
