//! What the program over one journal holds, and what every deed needs of it.

use super::sheet_renderer::SheetRenderer;
use crate::gather::Shared;
use crate::gather::{Record, Watched};
use crate::journal::Change;
use crate::journal::{Journal, KeptDay, Key, Salvaged};
use crate::screen::shapes::{Clock, Effect, Opening, Place, Tone};
use crate::screen::Asked;
use crate::screen::Opens;
use crate::screen::{AlarmsAre, Message, View};
use crate::share::exchange::Report;
use crate::share::sealed::card::Card;
use crate::text::Texts;
use crate::time::{Instant, Zone};
use crate::trouble::{Kind, Trouble};
use age::secrecy::{ExposeSecret, SecretString};
use std::path::PathBuf;

/// The program over one journal.
#[derive(Debug)]
pub struct App {
    /// None only after a damaged file could not be set aside.
    pub(super) journal: Option<Journal>,
    pub(super) path: PathBuf,
    /// What the record is sealed with, as the host keeps it.
    pub(super) key: Option<Key>,
    /// Its key came by a code: the host may have none.
    pub(super) key_by_code: bool,
    pub(super) opening: Opening,
    /// It waits for its recovery code.
    pub(super) locked: bool,
    /// The host named no device: it is named after its key.
    pub(super) named_by_key: bool,
    pub(super) texts: Texts,
    /// Where the person is; the last is shown, the ones before lead back.
    pub(super) places: Vec<Place>,
    pub(super) messages: Vec<Message>,
    pub(super) report: Option<Report>,
    /// The trace whose file was asked for.
    pub(super) awaits: Option<String>,
    /// For whom it is open.
    pub(super) purpose: Purpose,
    /// To seal with, until the file is written or something else is done; nowhere but here.
    pub(super) passphrase: Option<SecretString>,
    /// A passphrase that was made up to be offered.
    pub(super) offered: Option<SecretString>,
    /// What waits for a yes.
    pub(super) waiting: Option<Waiting>,
    /// A sealed file that waits for its passphrase.
    pub(super) waits: Option<Vec<u8>>,
    /// How the host can call, as it said last.
    pub(super) alarms: AlarmsAre,
    /// What sets the visit sheet, where there is one.
    pub(super) renderer: Option<SheetRenderer>,
    /// Days that had to be worked out for what was shown last.
    pub(super) worked_out: Vec<KeptDay>,
    /// What the watch said last.
    pub(super) watched: Watched,
}

/// The present, as one call sees it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Present {
    pub(crate) now: Instant,
    pub(crate) zone: Zone,
}

impl Present {
    /// The host's own clock goes before the zone's data. A zone that is not known here stands
    /// for universal time, and is said.
    pub(crate) fn read(clock: &Clock) -> (Self, bool) {
        let now = Instant::from_unix_milliseconds(clock.unix_milliseconds);
        let named = Zone::named(&clock.zone);
        let known = named.is_ok();
        let zone = named.unwrap_or(Zone::UTC);
        (Self { now, zone: clock.offset_seconds.map_or(zone, |told| zone.with_host_offset(told, now)) }, known)
    }
}

/// Key of the notice about a salvaged file.
pub(super) const SALVAGED: &str = "salvaged";
/// Key of the notice that the record was moved under its key.
pub(super) const SEALED_NOW: &str = "sealed-now";

pub(super) fn buzz(key: &str) -> Effect {
    Effect::Buzz { key: key.to_owned() }
}

/// What a journal is opened for.
#[derive(Debug, Clone, PartialEq, Default)]
pub(super) enum Purpose {
    /// The person whose record it is.
    #[default]
    Own,
    /// The consultant's desk.
    Desk,
    /// A consultant who reads a family's record, with what her desk keeps for all.
    Reading(Shared),
}

/// What waits, and what is asked about it.
#[derive(Debug)]
pub(super) struct Waiting {
    pub(super) asked: Asked,
    pub(super) what: What,
}

#[derive(Debug)]
pub(super) enum What {
    Card(Card),
    Changes(Vec<Change>),
    Plain(Vec<u8>),
}

impl App {
    /// The record as this call sees it.
    pub(super) fn read(&self, present: Present) -> Result<Record<'_>, Trouble> {
        let mut record = Record::new(self.journal()?, present.now, present.zone)?;
        record.watched = Some(&self.watched);
        if let Purpose::Reading(shared) = &self.purpose {
            record.shared = Some(shared);
        }
        Ok(record)
    }

    /// The sentences, to tell trouble in.
    pub fn texts(&self) -> &Texts {
        &self.texts
    }

    /// What this device is called in the record.
    pub(crate) fn device(&self) -> &str {
        &self.opening.device
    }

    pub(super) fn journal(&self) -> Result<&Journal, Trouble> {
        self.journal.as_ref().ok_or_else(|| Trouble::new(Kind::Damaged, "trouble-damaged"))
    }

    pub(super) fn journal_mut(&mut self) -> Result<&mut Journal, Trouble> {
        self.journal.as_mut().ok_or_else(|| Trouble::new(Kind::Damaged, "trouble-damaged"))
    }

    pub(super) fn view(&self, present: Present) -> Result<View<'_>, Trouble> {
        let mut view = View::new(self.read(present)?, &self.texts);
        view.look_around = self.opening.look_around;
        view.messages = &self.messages;
        view.report = self.report.as_ref();
        view.alarms = self.alarms;
        view.asked = self.waiting.as_ref().map(|waiting| &waiting.asked);
        view.offered = self.offered.as_ref().map(|words| words.expose_secret());
        view.desk = self.purpose == Purpose::Desk;
        Ok(view)
    }

    /// Where the person is.
    pub(crate) fn place(&self) -> Place {
        self.places.last().cloned().unwrap_or(self.first_place())
    }

    /// Runs something; where the file turns out to be damaged it is set aside,
    /// salvaged, and the trouble tells so.
    pub(super) fn recovering<T>(
        &mut self,
        present: Present,
        deed: impl FnOnce(&mut Self) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        match deed(self) {
            Err(trouble) if trouble.kind == Kind::Damaged && !self.locked => {
                let salvaged = self.recover(present.now)?;
                self.tell_salvaged(&salvaged);
                Err(Trouble::new(Kind::Damaged, "trouble-damaged-mended"))
            }
            other => other,
        }
    }

    pub(super) fn recover(&mut self, now: Instant) -> Result<Salvaged, Trouble> {
        drop(self.journal.take());
        let opened = Journal::recover_with_key(&self.path, &self.opening.device, self.key.as_ref(), now)?;
        self.journal = Some(opened.journal);
        opened.salvaged.ok_or_else(|| Trouble::new(Kind::Fault, "trouble-fault"))
    }

    /// What was said after the last event; what was found in the opening stays until it is
    /// put away.
    pub(crate) fn clear_messages(&mut self) {
        self.messages.retain(|said| [SALVAGED, SEALED_NOW].contains(&said.key));
    }

    pub(super) fn tell(&mut self, key: &'static str, tone: Tone) {
        self.messages.push(Message { key, tone, needs: Vec::new(), leads_to: None });
    }

    /// From now on a lost key is a lost record: a code can be made before that.
    pub(super) fn tell_sealed(&mut self) {
        let leads_to = Some(("make-recovery", Place::Recovery));
        self.messages.push(Message { key: SEALED_NOW, tone: Tone::Asks, needs: Vec::new(), leads_to });
    }

    pub(super) fn tell_salvaged(&mut self, salvaged: &Salvaged) {
        let name = salvaged.set_aside.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
        self.messages.push(Message {
            key: SALVAGED,
            tone: Tone::Caution,
            needs: vec![
                ("kept", salvaged.from_file.into()),
                ("backup", salvaged.from_backup.into()),
                ("name", name.into()),
            ],
            leads_to: None,
        });
    }

    /// A record or a report is opened over where the person is; the places at
    /// the foot of the screen begin anew.
    pub(super) fn go(&mut self, place: Place) {
        match Opens::of(&place) {
            Opens::Anew => self.places = vec![place],
            Opens::OverTab(tab) => self.places = vec![tab.place(), place],
            Opens::WithinTab(tab) if !self.places.contains(&tab.place()) => self.places = vec![tab.place(), place],
            Opens::WithinTab(_) | Opens::Over => {
                if self.places.last() != Some(&place) {
                    self.places.push(place);
                }
            }
        }
    }

    /// Where somebody is who has gone nowhere.
    pub(super) fn first_place(&self) -> Place {
        match self.purpose {
            Purpose::Own => Place::Now,
            Purpose::Desk => Place::Desk,
            Purpose::Reading(_) => Place::Supply { days: crate::screen::SUPPLY_SPAN },
        }
    }

    /// Whether it waits for its recovery code.
    pub fn is_locked(&self) -> bool {
        self.locked
    }

    /// Refuses what a record does that is not open.
    pub(crate) fn not_locked(&self) -> Result<(), Trouble> {
        match self.locked {
            true => Err(Trouble::new(Kind::Locked, "trouble-no-key")),
            false => Ok(()),
        }
    }

    /// What the record is sealed with as it is open now.
    pub fn key_in_use(&self) -> Option<Key> {
        self.journal.as_ref().and_then(|journal| journal.key().cloned())
    }
}
