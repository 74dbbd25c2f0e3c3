//! Opening a journal.

use super::press::Press;
use super::state::{App, For, Present};
use crate::journal::Journal;
use crate::screen::shapes::{Clock, Opening, Place};
use crate::screen::AlarmsAre;
use crate::text::Texts;
use crate::time::Instant;
use crate::trouble::Trouble;
use std::path::PathBuf;

impl App {
    /// Opens a journal, making it where there is none.
    ///
    /// # Errors
    /// Where the journal can't be opened, or a table of rules can't be read.
    pub fn open(path: PathBuf, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        crate::guidance::check()?;
        let (present, _) = Present::read(clock);
        let opened = Journal::open(&path, &opening.device, present.now)?;
        let mut app = Self {
            journal: Some(opened.journal),
            path,
            texts: Texts::new(&opening.language),
            opening,
            places: vec![Place::Now],
            said: Vec::new(),
            report: None,
            awaits: None,
            purpose: For::default(),
            passphrase: None,
            offered: None,
            waiting: None,
            waits: None,
            alarms: AlarmsAre::default(),
            press: None,
            worked_out: Vec::new(),
        };
        app.name_by_key(present.now)?;
        if let Some(salvaged) = opened.salvaged {
            app.tell_salvaged(&salvaged);
        }
        Ok(app)
    }

    /// Names this device where the host named none: after the key that signs, so that nobody can
    /// foresee its numbers or take them for their own.
    fn name_by_key(&mut self, now: Instant) -> Result<(), Trouble> {
        if !self.opening.device.is_empty() {
            return Ok(());
        }
        if !self.journal()?.is_named() && !self.journal()?.is_read_only() {
            let name = self.own_keys()?.device_name()?;
            self.journal_mut()?.name_device(&name, now)?;
        }
        self.opening.device = self.journal()?.device_base().to_owned();
        Ok(())
    }

    /// The same, with what sets the visit sheet: see [`crate::app::press`].
    #[must_use]
    pub fn with_press(self, press: Press) -> Self {
        Self { press: Some(press), ..self }
    }
}
