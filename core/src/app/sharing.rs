//! Events of sharing: a consultant's keys in, the record out to her sealed, sealed files in.

use std::io::Write;

use serde_json::json;

use super::{buzz, App, Present};
use crate::record::{text, Fields, Kind, SETTINGS};
use crate::screen::shapes::{Effect, Place, Tone};
use crate::screen::{OPEN_PASSPHRASE, SEAL_PASSPHRASE};
use crate::share::family_file::{self, FamilyFile, Header};
use crate::share::parts::{LeftOut, SharePart};
use crate::share::sealed::{self, card::Card, own_keys::OwnKeys, OpenWith, SealFor, Sealed};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// The key of a sealed family file begins so; behind it stands for whom.
const FAMILY: &str = "family:";
/// What is sealed with a passphrase is for nobody in particular.
const BY_PASSPHRASE: &str = "passphrase";
/// Any program may carry it.
const CONTENT_TYPE: &str = "application/octet-stream";
/// Names under which own secrets are kept.
const OPENS: &str = "opens";
const SIGNS: &str = "signs";

impl App {
    /// Takes in a consultant's card: one more consultant, or a new name for one that is known.
    pub(super) fn take_card_in(&mut self, typed: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let card = Card::read(typed)?;
        let today = self.view(present)?.today().date().format("%Y-%m-%d").to_string();
        let known = self.consultant_with(&card.sealing_key)?;
        let id = self.journal_mut()?.act("card-in", "", present.now, |w| {
            let id = known.unwrap_or_else(|| w.new_id());
            w.set(&id, "kind", &json!(Kind::Consultant.name()))?;
            w.set(&id, "name", &json!(card.name))?;
            w.set(&id, "sealing_key", &json!(card.sealing_key))?;
            w.set(&id, "signing_key", &json!(card.signing_key))?;
            w.set(&id, "taken_in", &json!(today))?;
            Ok(id)
        })?;
        self.go(Place::Consultant { id });
        Ok(vec![buzz("card-in")])
    }

    fn consultant_with(&self, sealing_key: &str) -> Result<Option<String>, Trouble> {
        let all = self.journal()?.of_kind(Kind::Consultant)?;
        for row in all {
            let fields = self.journal()?.record(&row.subject)?.map(|(_, fields)| fields).unwrap_or_default();
            if text(&fields, "sealing_key") == Some(sealing_key) {
                return Ok(Some(row.subject));
            }
        }
        Ok(None)
    }

    /// Asks where the record goes, sealed for a consultant.
    pub(super) fn share_with(&mut self, consultant: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.sealing_key_of(consultant)?;
        self.ask_where_sealed(consultant, present)
    }

    /// Asks where the record goes, sealed with a passphrase. It is kept until the file is
    /// written, and nowhere but in memory.
    pub(super) fn share_by_passphrase(&mut self, typed: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let passphrase = passphrase(typed, SEAL_PASSPHRASE)?;
        self.passphrase = Some(passphrase);
        self.ask_where_sealed(BY_PASSPHRASE, present)
    }

    fn ask_where_sealed(&mut self, to: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let day = self.view(present)?.today().date().format("%Y-%m-%d");
        Ok(vec![Effect::HandOver {
            key: format!("{FAMILY}{to}"),
            file_name: format!("{day}.{}", family_file::ENDING),
            content_type: CONTENT_TYPE.to_owned(),
        }])
    }

    /// Writes the sealed record for whom a key of [`Effect::HandOver`] names; none where
    /// the key is another's.
    pub(super) fn take_family_out(
        &mut self,
        key: &str,
        file: &mut dyn Write,
        present: Present,
    ) -> Result<Option<()>, Trouble> {
        let Some(to) = key.strip_prefix(FAMILY) else { return Ok(None) };
        let to = match to {
            BY_PASSPHRASE => SealFor::Passphrase(
                self.passphrase.take().ok_or_else(|| Trouble::bad(SEAL_PASSPHRASE, "bad-passphrase-empty"))?,
            ),
            consultant => SealFor::Keys(vec![self.sealing_key_of(consultant)?]),
        };
        let plain = self.family_file(present)?;
        let sealed = sealed::seal(&plain, &to)?;
        let told = |_| Trouble::new(TroubleKind::Full, "trouble-cannot-write-file");
        file.write_all(&sealed).and_then(|()| file.flush()).map_err(told)?;
        self.tell("family-handed-over", Tone::Quiet);
        Ok(Some(()))
    }

    /// The record as a family file, not sealed yet.
    fn family_file(&mut self, present: Present) -> Result<Vec<u8>, Trouble> {
        let family = self.family_name(present)?;
        let keys = self.own_keys()?;
        let settings = self.settings_fields()?;
        let left_out = LeftOut::read(&settings);
        let header = Header {
            family,
            made: self.view(present)?.present(),
            sealing_key: keys.sealing_key()?,
            left_out: SharePart::ALL.iter().filter(|p| left_out.has(**p)).map(|p| p.name().to_owned()).collect(),
            says: self.texts.say("not-a-diagnosis-share"),
        };
        let mut plain = Vec::new();
        family_file::write(self.journal()?, &header, &left_out, &mut plain)?;
        Ok(plain)
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

    fn sealing_key_of(&self, consultant: &str) -> Result<String, Trouble> {
        let missing = || Trouble::new(TroubleKind::Missing, "trouble-no-such-record");
        let (kind, fields) = self.journal()?.record(consultant)?.ok_or_else(missing)?;
        let key = text(&fields, "sealing_key").filter(|_| kind == Kind::Consultant);
        key.map(str::to_owned).ok_or_else(|| Trouble::bad("sealing_key", "bad-sealing-key"))
    }

    /// Brings a sealed file in. One with a passphrase waits until it is typed.
    pub(super) fn bring_sealed_in(&mut self, file: Vec<u8>, present: Present) -> Result<Vec<Effect>, Trouble> {
        match sealed::how(&file)? {
            Sealed::WithPassphrase => {
                self.waits = Some(file);
                self.go(Place::Sealed);
                Ok(vec![buzz("sealed")])
            }
            Sealed::ForKeys => {
                let keys = self.own_keys()?;
                let plain = sealed::open(&file, &OpenWith::Keys(vec![keys.opens().to_owned()]))?;
                self.bring_opened_in(&plain, present)
            }
        }
    }

    /// Opens the file that waits for its passphrase.
    pub(super) fn open_sealed(&mut self, typed: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let passphrase = passphrase(typed, OPEN_PASSPHRASE)?;
        let file = self.waits.as_ref().ok_or_else(|| Trouble::bad(OPEN_PASSPHRASE, "sealed-nothing-waits"))?;
        let plain = sealed::open(file, &OpenWith::Passphrase(passphrase))?;
        let effects = self.bring_opened_in(&plain, present)?;
        self.waits = None;
        Ok(effects)
    }

    pub(super) fn bring_opened_in(&mut self, plain: &[u8], present: Present) -> Result<Vec<Effect>, Trouble> {
        if sealed::signed::is_signed(plain) {
            let text = std::str::from_utf8(plain).map_err(|_| Trouble::bad("", "signed-not-readable"))?;
            return self.take_plan_in(text, present);
        }
        let FamilyFile { header, changes } = family_file::read(plain)?;
        let own = text(&self.settings_fields()?, "family").map(str::to_owned);
        // Another phone of this family, or a record that is begun anew with its own copy.
        if own.as_deref() != Some(header.family.as_str()) && !self.journal()?.is_empty()? {
            return Err(Trouble::bad("", "family-file-of-another"));
        }
        let merged = self.journal_mut()?.merge(&changes, present.now)?;
        self.report = Some(crate::share::exchange::Report {
            taken: merged.taken,
            unchanged: merged.known,
            ..crate::share::exchange::Report::default()
        });
        self.go(Place::Report);
        let mut effects = self.session_effects(present)?;
        effects.extend(self.reminder_effects(present)?);
        effects.extend([buzz("bring-in"), Effect::Tend]);
        Ok(effects)
    }
}

fn passphrase(typed: &str, field: &'static str) -> Result<String, Trouble> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Err(Trouble::bad(field, "bad-passphrase-empty"));
    }
    Ok(typed.to_owned())
}
