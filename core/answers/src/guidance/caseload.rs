//! The rules of the caseload, typed.

use super::Rules;
use crate::quantity::Count;
use crate::time::Span;

/// When a family needs a look, beside its cautions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CaseloadRules {
    /// No session for this long, in a record that had some.
    pub look_after_gap: Span,
    /// A visit is due so many days before its date.
    pub visit_ahead: Count,
}

impl CaseloadRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        Self {
            look_after_gap: Span::minutes((rules.value("look_after_gap") * 60.0).round() as i64),
            visit_ahead: Count::new(rules.value("visit_ahead").floor() as u32),
        }
    }
}

impl Default for CaseloadRules {
    fn default() -> Self {
        Self::read(&Rules::default())
    }
}
