//! Imports a file: tells what it is, and hands it to what takes it.

use std::io::BufRead;

use super::state::{buzz, App, Present};
use crate::limits;
use crate::screen::shapes::{Clock, Effect, Update};
use crate::share::sealed::{self, card::Card};
use crate::share::{exchange, file_kind};
use crate::trouble::Trouble;

impl App {
    /// Brings a file in and shows what came of it: one of the exchange form, or a
    /// trace of pressure over time.
    ///
    /// # Errors
    /// Where it is no file of ours, or nothing of it can be taken.
    pub fn import_file(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<Update, Trouble> {
        self.not_locked()?;
        self.clear_messages();
        // What a file changed can be taken back from anywhere.
        self.acted_at = None;
        if self.opening.look_around {
            return self.begin_to_look_around(file, clock);
        }
        let (present, _) = Present::read(clock);
        if is_card(file) {
            let mut card = String::new();
            let cannot = |_| Trouble::new(crate::trouble::Kind::Missing, "trouble-cannot-read-file");
            std::io::Read::read_to_string(&mut std::io::Read::take(file, 4096), &mut card).map_err(cannot)?;
            let effects = self.recovering(present, |app| app.import_card(&card, present))?;
            return Ok(Update { screen: self.here(clock)?, effects });
        }
        if is_signed(file) {
            let whole = sealed::read_whole(file)?;
            let effects = self.recovering(present, |app| app.import_opened(&whole, present))?;
            return Ok(Update { screen: self.here(clock)?, effects });
        }
        if is_sealed(file) {
            let whole = sealed::read_whole(file)?;
            let effects = self.recovering(present, |app| app.import_sealed(whole, present))?;
            return Ok(Update { screen: self.here(clock)?, effects });
        }
        let is = file_kind::detect(file.fill_buf().unwrap_or_default());
        if let Some(why) = is.refused() {
            return Err(why);
        }
        if self.is_trace(file) {
            self.recovering(present, |app| app.import_trace(file, present))?;
            return Ok(Update { screen: self.here(clock)?, effects: vec![buzz("bring-in")] });
        }
        if is == file_kind::FileKind::Text {
            return Err(Trouble::bad("file", "bad-file-unknown"));
        }
        let effects = self.recovering(present, |app| app.import_plain(file, present))?;
        Ok(Update { screen: self.here(clock)?, effects })
    }

    /// A file that nobody signed. Into a record that is not empty it comes after a question.
    fn import_plain(&mut self, file: &mut dyn BufRead, present: Present) -> Result<Vec<Effect>, Trouble> {
        let whole = sealed::read_to(file, limits::UNPACKED)?;
        if self.journal()?.is_empty()? {
            let report = exchange::import(self.journal_mut()?, &mut &*whole, present.now)?;
            return self.report_import(report, present);
        }
        let (report, differences) = exchange::look_at(self.journal_mut()?, &mut &*whole, present.now)?;
        if differences.is_empty() {
            return self.report_import(report, present);
        }
        Ok(self.ask_about_plain(whole, differences))
    }

    /// The invented family's record, which begins with a file and takes no other: one that
    /// comes is meant for the person's own.
    fn begin_to_look_around(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<Update, Trouble> {
        let (present, _) = Present::read(clock);
        self.not_in_the_invented()?;
        let report = self.recovering(present, |app| exchange::begin_with(app.journal_mut()?, file, present.now))?;
        self.report = Some(report);
        let mut effects = self.session_effects(present)?;
        effects.extend(self.reminder_effects(present)?);
        effects.push(Effect::Maintain);
        Ok(Update { screen: self.here(clock)?, effects })
    }

    /// Refuses what is meant for the person's own record while the invented one is looked at.
    pub(super) fn not_in_the_invented(&self) -> Result<(), Trouble> {
        match self.opening.look_around && !self.journal()?.is_empty()? {
            true => Err(Trouble::bad("file", "trouble-invented")),
            false => Ok(()),
        }
    }

    /// What came of the last file that was brought in.
    pub fn report(&self) -> Option<&exchange::Report> {
        self.report.as_ref()
    }
}

fn is_sealed(file: &mut dyn BufRead) -> bool {
    file.fill_buf().is_ok_and(sealed::is_sealed)
}

fn is_signed(file: &mut dyn BufRead) -> bool {
    file.fill_buf().is_ok_and(sealed::signed::is_signed)
}

fn is_card(file: &mut dyn BufRead) -> bool {
    file.fill_buf().is_ok_and(|head| std::str::from_utf8(head).is_ok_and(Card::is_card))
}
