//! Own keys, and those of the family's other phones.

use super::state::App;
use crate::limits;
use crate::share::sealed::own_keys::OwnKeys;
use crate::trouble::Trouble;

/// Names under which own secrets are kept.
const OPENS: &str = "opens";

const SIGNS: &str = "signs";

/// And those of the family's other phones, which are public.
const PHONES: &str = "phones";

/// And what they open with.
const PHONES_OPEN: &str = "phones-open";

impl App {
    /// Own keys, made where they are first asked for.
    pub(crate) fn own_keys(&mut self) -> Result<OwnKeys, Trouble> {
        let journal = self.journal_mut()?;
        if let (Some(opens), Some(signs)) = (journal.secret(OPENS)?, journal.secret(SIGNS)?) {
            return OwnKeys::read(&opens, &signs);
        }
        let keys = OwnKeys::make()?;
        journal.keep_secrets(&[(OPENS, keys.opens()), (SIGNS, keys.signs())])?;
        Ok(keys)
    }

    /// The signing keys of this family's other phones, as far as they were compared here.
    pub(super) fn phones(&self) -> Result<Vec<String>, Trouble> {
        let kept = self.journal()?.secret(PHONES)?.unwrap_or_default();
        Ok(kept.split_whitespace().map(str::to_owned).collect())
    }

    /// What the family's other phones open with, so that a plan opens on each of them.
    pub(super) fn phones_open(&self) -> Result<Vec<String>, Trouble> {
        let kept = self.journal()?.secret(PHONES_OPEN)?.unwrap_or_default();
        Ok(kept.split_whitespace().map(str::to_owned).collect())
    }

    /// From here on files that a phone signed are the family's own, and plans are sealed for it.
    pub(super) fn know_phone(&mut self, signing_key: &str, sealing_key: &str) -> Result<(), Trouble> {
        let mut open = self.phones_open()?;
        if !open.iter().any(|known| known == sealing_key) && open.len() < limits::PHONES {
            open.push(sealing_key.to_owned());
            self.journal_mut()?.set_secret(PHONES_OPEN, &open.join(" "))?;
        }
        let mut phones = self.phones()?;
        if !phones.iter().any(|known| known == signing_key) {
            phones.push(signing_key.to_owned());
            phones.truncate(limits::PHONES);
            self.journal_mut()?.set_secret(PHONES, &phones.join(" "))?;
        }
        Ok(())
    }
}
