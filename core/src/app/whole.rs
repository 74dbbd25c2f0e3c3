//! The record as a whole: undo, out, in, kept safe.

use std::io::BufRead;
use std::path::Path;

use super::state::{buzz, App, Present};
use crate::journal::{self, Health, Key};
use crate::limits;
use crate::screen::shapes::{Clock, Effect, Tone, Update};
use crate::share::sealed::{self, card::Card};
use crate::share::{exchange, incoming};
use crate::trouble::Trouble;

impl App {
    pub(super) fn undo(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        if self.journal_mut()?.undo(present.now)?.is_none() {
            self.tell("nothing-to-undo", Tone::Quiet);
            return Ok(Vec::new());
        }
        let mut effects = self.session_effects(present)?;
        effects.push(buzz("undo"));
        Ok(effects)
    }

    pub(super) fn redo(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        if self.journal_mut()?.redo(present.now)?.is_none() {
            self.tell("nothing-to-redo", Tone::Quiet);
            return Ok(Vec::new());
        }
        let mut effects = self.session_effects(present)?;
        effects.push(buzz("redo"));
        Ok(effects)
    }

    /// Brings a file in and shows what came of it: one of the exchange form, or a
    /// trace of pressure over time.
    ///
    /// # Errors
    /// Where it is no file of ours, or nothing of it can be taken.
    pub fn bring_in(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<Update, Trouble> {
        self.not_locked()?;
        self.let_go_of_what_was_said();
        if self.opening.look_around {
            return self.begin_to_look_around(file, clock);
        }
        let (present, _) = Present::read(clock);
        if is_card(file) {
            let mut card = String::new();
            let cannot = |_| Trouble::new(crate::trouble::Kind::Missing, "trouble-cannot-read-file");
            std::io::Read::read_to_string(&mut std::io::Read::take(file, 4096), &mut card).map_err(cannot)?;
            let effects = self.mended(present, |app| app.take_card_in(&card, present))?;
            return Ok(Update { screen: self.here(clock)?, effects });
        }
        if is_signed(file) {
            let whole = sealed::read_whole(file)?;
            let effects = self.mended(present, |app| app.bring_opened_in(&whole, present))?;
            return Ok(Update { screen: self.here(clock)?, effects });
        }
        if is_sealed(file) {
            let whole = sealed::read_whole(file)?;
            let effects = self.mended(present, |app| app.bring_sealed_in(whole, present))?;
            return Ok(Update { screen: self.here(clock)?, effects });
        }
        let is = incoming::tell(file.fill_buf().unwrap_or_default());
        if let Some(why) = is.refused() {
            return Err(why);
        }
        if self.is_trace(file) {
            self.mended(present, |app| app.bring_trace_in(file, present))?;
            return Ok(Update { screen: self.here(clock)?, effects: vec![buzz("bring-in")] });
        }
        if is == incoming::FileIs::Text {
            return Err(Trouble::bad("file", "bad-file-unknown"));
        }
        let effects = self.mended(present, |app| app.bring_plain_in(file, present))?;
        Ok(Update { screen: self.here(clock)?, effects })
    }

    /// A file that nobody signed. Into a record that is not empty it comes after a question.
    fn bring_plain_in(&mut self, file: &mut dyn BufRead, present: Present) -> Result<Vec<Effect>, Trouble> {
        let whole = sealed::read_to(file, limits::UNPACKED)?;
        if self.journal()?.is_empty()? {
            let report = exchange::bring_in(self.journal_mut()?, &mut &*whole, present.now)?;
            return self.report_brought_in(report, present);
        }
        let (report, differences) = exchange::look_at(self.journal_mut()?, &mut &*whole, present.now)?;
        if differences.is_empty() {
            return self.report_brought_in(report, present);
        }
        Ok(self.ask_about_plain(whole, differences))
    }

    /// The invented family's record, which begins with a file and takes no other: one that
    /// comes is meant for the person's own.
    fn begin_to_look_around(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<Update, Trouble> {
        let (present, _) = Present::read(clock);
        self.not_in_the_invented()?;
        let report = self.mended(present, |app| exchange::begin_with(app.journal_mut()?, file, present.now))?;
        self.report = Some(report);
        let mut effects = self.session_effects(present)?;
        effects.extend(self.reminder_effects(present)?);
        effects.push(Effect::Tend);
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

    /// Backs the record up and looks for damage. Slow with a long record: a
    /// host that must not wait calls [`look_after`] by itself and brings what
    /// came of it to [`Self::looked_after`].
    ///
    /// # Errors
    /// As [`look_after`].
    pub fn tend(&mut self, clock: &Clock) -> Result<Update, Trouble> {
        if self.is_locked() {
            return Ok(Update { screen: self.here(clock)?, effects: Vec::new() });
        }
        let outcome = look_after(&self.path, self.key_in_use().as_ref(), clock);
        self.looked_after(outcome, clock)
    }

    /// Where the record lies.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Mends what [`look_after`] found.
    ///
    /// # Errors
    /// What was found, where it is damage: it is mended then, and told.
    pub fn looked_after(&mut self, outcome: Result<Health, Trouble>, clock: &Clock) -> Result<Update, Trouble> {
        let (present, _) = Present::read(clock);
        if self.is_locked() {
            return Ok(Update { screen: self.here(clock)?, effects: Vec::new() });
        }
        match self.mended(present, |_| outcome)? {
            Health::ProjectionWrong => self.journal_mut()?.rebuild()?,
            Health::Sound | Health::Damaged => {}
        }
        Ok(Update { screen: self.here(clock)?, effects: Vec::new() })
    }
}

/// Backs a record up if its last copy is old enough, and then looks for damage.
/// Reads through connections of its own, so that taps go on meanwhile.
///
/// # Errors
/// Where the copy can't be made, or the record is damaged.
pub fn look_after(path: &Path, key: Option<&Key>, clock: &Clock) -> Result<Health, Trouble> {
    let (present, _) = Present::read(clock);
    if journal::backup::back_up(path, key, present.now)?.is_none() {
        return Ok(Health::Sound);
    }
    match journal::verify(path, key)? {
        Health::Damaged => Err(Trouble::new(crate::trouble::Kind::Damaged, "trouble-damaged")),
        other => Ok(other),
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
