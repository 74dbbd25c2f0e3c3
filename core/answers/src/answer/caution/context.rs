//! What the entries are read beside.

use super::life::Track;
use super::{Births, Dealt};
use crate::guidance::CautionRules;
use crate::time::Instant;

/// What the entries are read beside.
pub struct Context<'a> {
    /// The present.
    pub now: Instant,
    /// The rules.
    pub rules: &'a CautionRules,
    /// When the children were born.
    pub births: &'a Births,
    /// What was dealt with.
    pub dealt: &'a [Dealt],
}

impl<'a> Context<'a> {
    pub(super) fn track(&self, key: &str) -> Option<Track<'a>> {
        Track::new(key, self.dealt, self.rules.signs_hold)
    }
}
