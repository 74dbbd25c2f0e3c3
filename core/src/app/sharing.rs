//! Events of sharing: a consultant's keys in, the record out to her sealed, sealed files in.

use std::collections::BTreeSet;

use age::secrecy::ExposeSecret;
use serde_json::json;

use super::state::{buzz, App, Present};
use crate::journal::Change;
use crate::limits;
use crate::record::{text, Fields, Kind, SETTINGS};
use crate::screen::shapes::{Effect, Place};
use crate::screen::{OPEN_PASSPHRASE, SEAL_PASSPHRASE};
use crate::share::family_file::{self, FamilyFile, Header};
use crate::share::parts::{LeftOut, SharePart};
use crate::share::sealed::spoken::is_compared;
use crate::share::sealed::{self, OpenWith, SealFor, Sealed};
use crate::trouble::{Kind as TroubleKind, Trouble};

impl App {
    /// The record, sealed for a consultant.
    pub(super) fn sealed_for(&mut self, consultant: &str, present: Present) -> Result<Vec<u8>, Trouble> {
        let to = SealFor::Keys(vec![self.sealing_key_of(consultant)?]);
        sealed::seal(&self.family_file(present)?, &to)
    }

    /// The record, sealed with the passphrase that was entered last, which is forgotten then.
    pub(super) fn sealed_by_passphrase(&mut self, present: Present) -> Result<Vec<u8>, Trouble> {
        let kept = self.passphrase.take();
        let kept = kept.ok_or_else(|| Trouble::bad(SEAL_PASSPHRASE, "bad-passphrase-empty"))?;
        let to = SealFor::Passphrase(kept.expose_secret().to_owned());
        sealed::seal(&self.family_file(present)?, &to)
    }

    /// The record as a family file, signed and not sealed yet.
    fn family_file(&mut self, present: Present) -> Result<Vec<u8>, Trouble> {
        let family = self.family_name(present)?;
        let keys = self.own_keys()?;
        let settings = self.settings_fields()?;
        let left_out = LeftOut::read(&settings);
        let header = Header {
            family,
            made: self.view(present)?.present(),
            sealing_key: keys.sealing_key()?,
            signing_key: Some(keys.signing_key()?),
            next_signing_key: None,
            phones: self.phones()?,
            phones_open: self.phones_open()?,
            left_out: SharePart::ALL.iter().filter(|p| left_out.has(**p)).map(|p| p.name().to_owned()).collect(),
            says: self.texts.say("not-a-diagnosis-share"),
        };
        let mut plain = Vec::new();
        family_file::write(self.journal()?, &header, &left_out, &mut plain)?;
        family_file::sign(&plain, &header, &keys)
    }

    fn settings_fields(&self) -> Result<Fields, Trouble> {
        Ok(self.journal()?.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default())
    }

    /// What this family goes by among all; made where it is first asked for, and the same
    /// on every phone that shares the record.
    pub(super) fn family_name(&mut self, present: Present) -> Result<String, Trouble> {
        if let Some(name) = text(&self.settings_fields()?, "family") {
            return Ok(name.to_owned());
        }
        let device: String =
            self.journal()?.device().chars().filter(|c| c.is_ascii_alphanumeric() || *c == '_').collect();
        let name = format!("{device}-{}", present.now.unix_milliseconds());
        self.journal_mut()?.quiet_act(present.now, |w| {
            w.set(SETTINGS, "kind", &json!(Kind::Settings.name()))?;
            w.set(SETTINGS, "family", &json!(name))
        })?;
        Ok(name)
    }

    pub(super) fn sealing_key_of(&self, consultant: &str) -> Result<String, Trouble> {
        let missing = || Trouble::new(TroubleKind::Missing, "trouble-no-such-record");
        let (kind, fields) = self.journal()?.record(consultant)?.ok_or_else(missing)?;
        let key = text(&fields, "sealing_key").filter(|_| kind == Kind::Consultant);
        if key.is_some() && !is_compared(&fields) {
            return Err(Trouble::bad("sealing_key", "consultant-not-compared"));
        }
        key.map(str::to_owned).ok_or_else(|| Trouble::bad("sealing_key", "bad-sealing-key"))
    }

    /// Brings a sealed file in. One with a passphrase waits until it is typed.
    pub(super) fn import_sealed(&mut self, file: Vec<u8>, present: Present) -> Result<Vec<Effect>, Trouble> {
        match sealed::how(&file)? {
            Sealed::WithPassphrase => {
                self.waits = Some(file);
                self.go(Place::Sealed);
                Ok(vec![buzz("sealed")])
            }
            Sealed::ForKeys => {
                let keys = self.own_keys()?;
                let plain = sealed::open(&file, &OpenWith::Keys(vec![keys.opens().to_owned()]))?;
                self.import_opened(&plain, present)
            }
        }
    }

    /// Opens the file that waits for its passphrase.
    pub(super) fn open_sealed(&mut self, typed: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        // What others sealed with may be any passphrase.
        let passphrase = Some(typed.trim()).filter(|typed| !typed.is_empty());
        let passphrase = passphrase.ok_or_else(|| Trouble::bad(OPEN_PASSPHRASE, "bad-passphrase-empty"))?;
        let file = self.waits.as_ref().ok_or_else(|| Trouble::bad(OPEN_PASSPHRASE, "sealed-nothing-waits"))?;
        let plain = sealed::open(file, &OpenWith::Passphrase(passphrase.to_owned()))?;
        let effects = self.import_opened(&plain, present)?;
        self.waits = None;
        Ok(effects)
    }

    /// Takes in what was sealed or signed: a plan of a consultant's, or changes of the family's
    /// own phones. Into a record that is not empty they come after a question.
    pub(super) fn import_opened(&mut self, plain: &[u8], present: Present) -> Result<Vec<Effect>, Trouble> {
        if sealed::signed::is_signed(plain) && !family_file::is_one(plain) {
            let text = std::str::from_utf8(plain).map_err(|_| Trouble::bad("", "signed-not-readable"))?;
            return self.import_plan(text, present);
        }
        let FamilyFile { header, changes } = family_file::read(plain)?;
        let changes = self.without_consultants(changes)?;
        let own = text(&self.settings_fields()?, "family").map(str::to_owned);
        if header.made.instant().since(present.now) > limits::AHEAD {
            return Err(Trouble::bad("", "family-file-ahead"));
        }
        if self.journal()?.is_empty()? {
            let merged = self.journal_mut()?.begin_with(&changes, present.now)?;
            if let Some(key) = &header.signing_key {
                self.know_phone(key, &header.sealing_key)?;
            }
            return self.report_merged(merged, present);
        }
        if own.as_deref() != Some(header.family.as_str()) {
            return Err(Trouble::bad("", "family-file-of-another"));
        }
        let key = header.signing_key.ok_or_else(|| Trouble::bad("", "family-file-unsigned"))?;
        if self.own_keys()?.signing_key()? != key {
            if !self.phones()?.contains(&key) {
                return Err(Trouble::bad("", "family-file-stranger"));
            }
            // A phone that was known before phones said what they open with.
            self.know_phone(&key, &header.sealing_key)?;
        }
        let (merged, differences) = self.journal_mut()?.would_merge(&changes, present.now)?;
        if differences.is_empty() {
            return self.report_merged(merged, present);
        }
        Ok(self.ask_about_changes(changes, differences))
    }

    /// Whom to trust is said on this phone alone: no consultant comes in with a record.
    fn without_consultants(&self, mut changes: Vec<Change>) -> Result<Vec<Change>, Trouble> {
        let is_one = json!(Kind::Consultant.name()).to_string();
        let mut of_one: BTreeSet<String> =
            changes.iter().filter(|change| change.value == is_one).map(|change| change.subject.clone()).collect();
        let subjects: BTreeSet<&str> = changes.iter().map(|change| change.subject.as_str()).collect();
        for subject in subjects {
            if self.journal()?.row(subject)?.is_some_and(|row| row.kind == Kind::Consultant) {
                of_one.insert(subject.to_owned());
            }
        }
        changes.retain(|change| !of_one.contains(&change.subject));
        Ok(changes)
    }
}
