//! The consultant's window.

use serde::{Deserialize, Serialize};

use super::{Action, Effect, FieldRow, Screen};

/// The consultant's window: the families, and beside them what is open.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CaseloadScreen {
    /// The list of families.
    pub families: Screen,
    /// By what families are found in it, where there are many.
    pub finding: Vec<FieldRow>,
    /// A family, only to be read, or the consultant's own desk.
    pub beside: Screen,
    pub menu: Menu,
}

/// What a window offers in its menu.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Menu {
    pub label: String,
    pub actions: Vec<Action>,
}

/// The answer to an event in the consultant's window.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CaseloadUpdate {
    pub caseload: CaseloadScreen,
    pub effects: Vec<Effect>,
}
