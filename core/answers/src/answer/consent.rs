//! Whether a network of units may count a family, for what and until when. Nobody is counted
//! who did not say so.

use chrono::NaiveDate;

use crate::record::{flag, moment, text, ConsentScope, Fields};
use crate::time::Instant;

/// A consent as it was given.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Consent {
    /// Its record.
    pub id: String,
    /// When it was given.
    pub at: Instant,
    /// For what.
    pub scope: ConsentScope,
    /// The last day it holds on; until it is withdrawn where there is none.
    pub until: Option<NaiveDate>,
}

impl Consent {
    /// The consent that holds on a day, of all that were ever given. A withdrawal ends every
    /// one that was given before it, also one that another phone had not seen.
    pub fn holding<'a>(
        all: impl IntoIterator<Item = (&'a str, &'a Fields)> + Clone,
        now: Instant,
        today: NaiveDate,
    ) -> Option<Self> {
        let last_withdrawn = withdrawn_last(all.clone());
        all.into_iter()
            .filter(|(_, fields)| !flag(fields, "taken_out") && !fields.contains_key("withdrawn"))
            .filter_map(|(id, fields)| Self::read(id, fields))
            .filter(|given| given.at <= now && last_withdrawn.is_none_or(|withdrawn| given.at > withdrawn))
            .filter(|given| given.until.is_none_or(|until| today <= until))
            .max_by_key(|given| given.at)
    }

    fn read(id: &str, fields: &Fields) -> Option<Self> {
        Some(Self {
            id: id.to_owned(),
            at: moment(fields, "at")?.instant(),
            scope: text(fields, "consent_scope").and_then(ConsentScope::named)?,
            until: match fields.get("consent_until") {
                // An end that can't be read is no consent without one.
                Some(until) => Some(until.as_str()?.parse().ok()?),
                None => None,
            },
        })
    }
}

/// When a consent was withdrawn last, of all that were ever given.
pub fn withdrawn_last<'a>(all: impl IntoIterator<Item = (&'a str, &'a Fields)>) -> Option<Instant> {
    all.into_iter().filter_map(|(_, fields)| moment(fields, "withdrawn")).map(|at| at.instant()).max()
}
