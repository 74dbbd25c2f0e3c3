//! Consent to be counted by a network, given and withdrawn.

use chrono::Months;
use serde_json::json;

use super::state::{buzz, App, Present};
use crate::gather::consent::holding;
use crate::record::choices::CONSENT_SCOPES;
use crate::record::{ConsentScope, Kind};
use crate::screen::shapes::{Effect, Place};
use crate::trouble::{Detail, Trouble};

/// No consent is asked for longer: it would be forgotten.
const MOST_MONTHS: u32 = 36;

impl App {
    /// Writes down for what the person may be counted, and until when.
    pub(super) fn give_consent(
        &mut self,
        scope: &str,
        months: Option<u32>,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        self.not_in_the_invented()?;
        let words = || Detail::choices(CONSENT_SCOPES.iter().copied());
        let scope = ConsentScope::named(scope)
            .ok_or_else(|| Trouble::bad("consent_scope", "bad-choice").with("words", words()))?;
        let record = self.read(present)?;
        let (at, today) = (record.present(), record.today().date());
        let until = months
            .map(|months| {
                Some(months)
                    .filter(|months| (1..=MOST_MONTHS).contains(months))
                    .and_then(|months| today.checked_add_months(Months::new(months)))
                    .ok_or_else(|| Trouble::bad("consent_until", "bad-date"))
            })
            .transpose()?;
        self.journal_mut()?.act("give-consent", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::Consent.name()))?;
            w.set(&id, "at", &at.to_json())?;
            w.set(&id, "consent_scope", &json!(scope.name()))?;
            match until {
                Some(until) => w.set(&id, "consent_until", &json!(until.format("%Y-%m-%d").to_string())),
                None => Ok(()),
            }
        })?;
        // The questions are answered.
        self.places.retain(|place| !matches!(place, Place::Consent { .. }));
        Ok(vec![buzz("give-consent")])
    }

    /// Withdraws the consent that holds.
    pub(super) fn withdraw_consent(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let at = record.present();
        let Some(given) = holding(&record)? else { return Ok(Vec::new()) };
        self.journal_mut()?
            .act("withdraw-consent", &given.id, present.now, |w| w.set(&given.id, "withdrawn", &at.to_json()))?;
        Ok(vec![buzz("withdraw-consent")])
    }
}
