//! Opening a journal.

use super::recovery;
use super::sheet_renderer::SheetRenderer;
use super::state::{App, Present, Purpose};
use crate::gather::Watched;
use crate::journal::{Journal, Key};
use crate::screen::shapes::{Clock, Opening, Place};
use crate::screen::AlarmsAre;
use crate::text::Texts;
use crate::time::Instant;
use crate::trouble::{Kind, Trouble};
use std::path::PathBuf;

impl App {
    /// Opens a journal that is not sealed, making it where there is none.
    ///
    /// # Errors
    /// Those of [`Self::open_with_key`].
    pub fn open(path: PathBuf, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        Self::open_with_key(path, None, opening, clock)
    }

    /// Opens a journal with the key it is sealed with, making it where there is none.
    ///
    /// # Errors
    /// Those of [`Journal::open_with_key`].
    pub fn open_with_key(path: PathBuf, key: Option<Key>, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        crate::guidance::check()?;
        let (present, _) = Present::read(clock);
        let opened = match Journal::open_with_key(&path, &opening.device, key.as_ref(), present.now) {
            Err(trouble) if trouble.kind == Kind::Locked && recovery::is_there(&path) => {
                return Self::locked(path, opening, clock);
            }
            opened => opened?,
        };
        let texts = Texts::new(&opening.language);
        let mut app = Self::with_journal(opened.journal, path, key, opening, texts);
        app.name_by_key(opened.salvaged.is_some(), present.now)?;
        if let Some(salvaged) = opened.salvaged {
            app.tell_salvaged(&salvaged);
        }
        if opened.sealed_now {
            app.tell_sealed();
        }
        Ok(app)
    }

    /// The page that asks for the recovery code of a record.
    fn locked(path: PathBuf, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        let (present, _) = Present::read(clock);
        let journal = Journal::stand_in(&path, present.now)?;
        let texts = Texts::new(&opening.language);
        let mut app = Self::with_journal(journal, path, None, opening, texts);
        app.locked = true;
        app.places = vec![Place::Recovery];
        Ok(app)
    }

    fn with_journal(journal: Journal, path: PathBuf, key: Option<Key>, opening: Opening, texts: Texts) -> Self {
        Self {
            journal: Some(journal),
            locked: false,
            key_by_code: false,
            path,
            key,
            texts,
            named_by_key: opening.device.is_empty(),
            opening,
            places: vec![Place::Now],
            messages: Vec::new(),
            report: None,
            awaits: None,
            purpose: Purpose::default(),
            passphrase: None,
            offered: None,
            waiting: None,
            waits: None,
            alarms: AlarmsAre::default(),
            renderer: None,
            worked_out: Vec::new(),
            watched: Watched::default(),
        }
    }

    /// Names this device where the host named none: after the key that signs, so that nobody can
    /// foresee its numbers or take them for their own.
    pub(super) fn name_by_key(&mut self, salvaged: bool, now: Instant) -> Result<(), Trouble> {
        if !self.opening.device.is_empty() {
            return Ok(());
        }
        if !self.journal()?.is_named() && !self.journal()?.is_read_only() {
            let name = self.own_keys()?.device_name()?;
            match salvaged {
                // Its keys were kept, and some of its numbers may be lost.
                true => self.journal_mut()?.write_under_a_new_name(&name, now)?,
                false => self.journal_mut()?.name_device(&name, now)?,
            }
        }
        self.opening.device = self.journal()?.device_base().to_owned();
        Ok(())
    }

    /// The same, with what sets the visit sheet: see [`crate::app::sheet_renderer`].
    #[must_use]
    pub fn with_sheet_renderer(self, renderer: SheetRenderer) -> Self {
        Self { renderer: Some(renderer), ..self }
    }
}
