//! One record, field by field.

use serde::{Deserialize, Serialize};

use super::{Action, Notice, Strip};

/// A record, field by field.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FormScreen {
    pub id: String,
    pub strip: Option<Strip>,
    /// Words of care, such as an overlap or an edit on another device.
    pub notices: Vec<Notice>,
    pub groups: Vec<FieldGroup>,
    pub actions: Vec<Action>,
}

/// Fields that belong together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FieldGroup {
    pub key: String,
    pub title: String,
    pub rows: Vec<FieldRow>,
}

/// One field.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FieldRow {
    pub id: String,
    pub field: String,
    pub label: String,
    pub kind: FieldKind,
    /// What stands in it, as typed.
    pub value: String,
    /// The unit behind it, or empty.
    pub unit: String,
    /// Said where nothing stands in it, or what may be typed.
    pub hint: String,
    /// For choices: one may be chosen, or several where it says so. For text: what may be
    /// taken instead of typed.
    pub options: Vec<Action>,
    pub less: Option<Action>,
    pub more: Option<Action>,
    pub clear: Option<Action>,
    /// The word with which it is sent, where it is not sent by being left. What was typed is sent as
    /// [`Event::Enter`], and then let go.
    pub done: Option<Action>,
    pub spoken: String,
}

impl FieldRow {
    /// A field with nothing in it: no choices, steps or hint.
    pub fn bare(id: impl Into<String>, field: impl Into<String>, label: impl Into<String>, kind: FieldKind) -> Self {
        let label = label.into();
        Self {
            id: id.into(),
            field: field.into(),
            spoken: label.clone(),
            label,
            kind,
            value: String::new(),
            unit: String::new(),
            hint: String::new(),
            options: Vec::new(),
            less: None,
            more: None,
            clear: None,
            done: None,
        }
    }
}

/// How a field is filled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum FieldKind {
    Choice,
    Number,
    Time,
    /// A day: chosen, or moved by its steps.
    Day,
    Text,
    LongText,
    /// Typed as it is, learned by no keyboard and kept by nothing.
    Secret,
    /// Told, not asked.
    Fact,
}
