//! Erasing the person's own record from this device.

use super::state::{App, Present};
use crate::journal::{files, Journal};
use crate::screen::shapes::{Effect, Place, Tone};
use crate::trouble::Trouble;

impl App {
    /// Erases the record with its copies and everything that was set aside, and begins an
    /// empty one. What was handed out before is beyond reach, and the page said so.
    pub(super) fn erase(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        drop(self.journal.take());
        let erased = files::erase(&self.path);
        let device = if self.named_by_key { "" } else { self.opening.device.as_str() };
        // The code went with the record. Where the host may keep no key, nothing would open the next.
        if std::mem::take(&mut self.key_by_code) {
            self.key = None;
        }
        // Whatever could not be removed, there is a record to go on with.
        let mut journal = Journal::open_with_key(&self.path, device, self.key.as_ref(), present.now)?.journal;
        // What was erased had its numbers: others may know them.
        if !self.named_by_key {
            journal.write_under_a_new_name(&self.opening.device, present.now)?;
        }
        self.journal = Some(journal);
        if self.named_by_key {
            // Its keys went with it, and its name with them.
            self.opening.device.clear();
            self.name_by_key(false, present.now)?;
        }
        erased?;
        self.places = vec![Place::Now];
        (self.report, self.awaits, self.passphrase, self.waits) = (None, None, None, None);
        (self.offered, self.waiting) = (None, None);
        self.messages.clear();
        self.tell("record-erased", Tone::Quiet);
        // Nothing calls any more: an empty record wants no alarm.
        let mut effects = vec![Effect::ForgetFiles];
        effects.extend(self.session_effects(present)?);
        effects.extend(self.reminder_effects(present)?);
        Ok(effects)
    }
}
