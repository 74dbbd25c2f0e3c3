//! What the caseload holds, and the present of what is open in it.

use crate::app::SheetRenderer;
use crate::app::{App, Present};
use crate::gather::reasons::Reason;
use crate::gather::Shared;
use crate::journal::Key;
use crate::screen::caseload::Sought;
use crate::screen::shapes::{Clock, Opening};
use crate::text::Texts;
use crate::time::{Instant, Moment, Zone};
use std::collections::{BTreeMap, VecDeque};
use std::path::{Path, PathBuf};

/// The name of the desk's own journal in the caseload's folder.
pub(super) const DESK: &str = "desk.drawwell";

/// Which pane was touched last, and where events go.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Pane {
    /// What the consultant keeps herself.
    Desk,
    /// A family, by its record on the desk.
    Family(String),
}

/// A family whose journal is open.
#[derive(Debug)]
pub(super) struct Opened {
    pub(super) id: String,
    pub(super) app: App,
}

/// The program over many journals.
#[derive(Debug)]
pub struct Caseload {
    pub(super) folder: PathBuf,
    /// What the desk's journal and the families' are sealed with.
    pub(super) key: Option<Key>,
    pub(super) opening: Opening,
    pub(super) desk: App,
    pub(super) active: Pane,
    pub(super) opened: Option<Opened>,
    /// What was found of each family, until its record or the day changes.
    pub(super) found: BTreeMap<String, Found>,
    /// What the desk kept for all when that was found.
    pub(super) found_with: Shared,
    /// Sealed files that wait for their passphrase, the next one first.
    pub(super) waits: VecDeque<Vec<u8>>,
    /// What sets the visit sheet, where there is one.
    pub(super) renderer: Option<SheetRenderer>,
    /// What the list is narrowed to.
    pub(super) sought: Sought,
    /// The name of the folder that the host watches, or empty.
    pub(super) watched: String,
}

pub(super) fn present(clock: &Clock) -> (Instant, Zone) {
    let (Present { now, zone }, _) = Present::read(clock);
    (now, zone)
}

/// The present of a record that ends with what was shared last.
pub(super) fn as_of(clock: &Clock, shared: Option<&Moment>) -> Clock {
    match shared {
        Some(at) if at.instant().unix_milliseconds() < clock.unix_milliseconds => {
            let unix_milliseconds = at.instant().unix_milliseconds();
            Clock { unix_milliseconds, zone: at.zone_name().to_owned(), offset_seconds: None }
        }
        _ => clock.clone(),
    }
}

/// Where the families' journals lie in the caseload's folder.
pub(super) const FOLDER: &str = "families";

/// What was found when a family was looked at last.
#[derive(Debug, Clone)]
pub(super) struct Found {
    /// When its record was shared last.
    pub(super) shared: Option<Moment>,
    /// Why it needs a look.
    pub(super) reasons: Vec<Reason>,
    /// The minute for which that holds: the same as of a record that ends.
    pub(super) as_of: i64,
}

impl Caseload {
    /// The sentences, to tell trouble in.
    pub fn texts(&self) -> &Texts {
        self.desk.texts()
    }

    pub(super) fn active_app(&mut self) -> &mut App {
        match (&self.active, &mut self.opened) {
            (Pane::Family(id), Some(opened)) if opened.id == *id => &mut opened.app,
            _ => &mut self.desk,
        }
    }

    /// The clock as it stood when the open family last shared: nothing later is known of it.
    pub(super) fn active_clock(&self, clock: &Clock) -> Clock {
        let shared = match &self.active {
            Pane::Family(id) => self.found.get(id).and_then(|found| found.shared.clone()),
            Pane::Desk => None,
        };
        as_of(clock, shared.as_ref())
    }

    /// Where the families lie.
    pub fn folder(&self) -> &Path {
        &self.folder
    }
}
