//! The table of rules as shipped, and what was set instead.

use super::tables::Tables;
use super::Rule;

/// The rules as shipped, and what was set instead.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Rules {
    set: std::collections::BTreeMap<String, f64>,
}

impl Rules {
    /// Every rule as it is shipped, in the order of the tables.
    pub fn shipped() -> &'static [Rule] {
        &Tables::shipped().rules
    }

    /// The rule of a name, as it is shipped.
    pub fn named(key: &str) -> Option<&'static Rule> {
        Self::shipped().iter().find(|r| r.key == key)
    }

    /// The value a rule is shipped with.
    pub fn shipped_value(key: &str) -> Option<f64> {
        Self::named(key).map(|r| r.value)
    }

    /// The rules, as set in the record of them.
    pub fn read(fields: &crate::record::Fields) -> Self {
        let mut rules = Self::default();
        for rule in Self::shipped() {
            if let Some(value) = fields.get(&rule.key).and_then(serde_json::Value::as_f64) {
                rules.set(&rule.key, value);
            }
        }
        rules
    }

    /// Sets a rule to another value, within its bounds; others are passed over.
    pub fn set(&mut self, key: &str, value: f64) {
        if Self::named(key).is_some_and(|r| (r.least..=r.most).contains(&value)) {
            self.set.insert(key.to_owned(), value);
        }
    }

    /// What was set instead of the shipped value.
    pub fn set_to(&self, key: &str) -> Option<f64> {
        self.set.get(key).copied()
    }

    /// The value that holds.
    pub(super) fn value(&self, key: &str) -> f64 {
        self.set_to(key).or_else(|| Self::shipped_value(key)).unwrap_or(f64::NAN)
    }
}
