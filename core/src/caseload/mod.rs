//! The caseload: a consultant's desk with many families.
//!
//! In: events, the present, files that families shared. Out: two panes, the list of
//! families on one side and what is open on the other. Each family is a journal of its
//! own, which the desk only reads and merges into; what the consultant herself keeps
//! (gauges, pumps, flanges, notes, plans) is one more journal, the desk's. [`families`]
//! keeps the files, [`reasons`] says who needs a look, [`take_in`] opens what came.

mod families;
mod own_card;
mod reasons;
mod take_in;

use std::collections::{BTreeMap, VecDeque};
use std::io::Write;
use std::path::{Path, PathBuf};

use crate::app::{App, Present};
use crate::gather::Shared;
use crate::private_file;
use crate::quantity::Count;
use crate::record::{Kind, NAME_OF_CASE};
use crate::screen::shapes::{CaseloadScreen, CaseloadUpdate, Clock, Effect, Event, Opening, Place, Screen};
use crate::screen::{caseload as drawn, View};
use crate::share::sheet::Press;
use crate::text::Texts;
use crate::time::{Instant, Moment, Zone};
use crate::trouble::{Kind as TroubleKind, Trouble};

pub use crate::gather::reasons::{Rank, Reason};
pub use families::erase_files;

/// The name of the desk's own journal in the caseload's folder.
const DESK: &str = "desk.drawwell";

/// Which pane was touched last, and where events go.
#[derive(Debug, Clone, PartialEq, Eq)]
enum Beside {
    /// What the consultant keeps herself.
    Desk,
    /// A family, by its record on the desk.
    Family(String),
}

/// A family whose journal is open.
#[derive(Debug)]
struct Opened {
    id: String,
    app: App,
}

/// The program over many journals.
#[derive(Debug)]
pub struct Caseload {
    folder: PathBuf,
    opening: Opening,
    desk: App,
    beside: Beside,
    opened: Option<Opened>,
    /// What was found of each family, until its record or the day changes.
    found: BTreeMap<String, families::Found>,
    /// What the desk kept for all when that was found.
    found_with: Shared,
    /// Sealed files that wait for their passphrase, the next one first.
    waits: VecDeque<Vec<u8>>,
    /// What sets the visit sheet, where there is one.
    press: Option<Press>,
    /// The name of the folder that the host watches, or empty.
    watched: String,
}

impl Caseload {
    /// Opens the caseload in a folder, making it where there is none.
    ///
    /// # Errors
    /// Where the folder can't be written or the desk's journal can't be opened.
    pub fn open(folder: PathBuf, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        let closed = private_file::create_folder(&folder);
        closed
            .and_then(|()| private_file::create_folder(&folder.join(families::FOLDER)))
            .map_err(|_| Trouble::new(TroubleKind::ReadOnly, "trouble-read-only"))?;
        let desk = App::open_desk(folder.join(DESK), opening.clone(), clock)?;
        let opening = Opening { device: desk.device().to_owned(), ..opening };
        Ok(Self {
            folder,
            opening,
            desk,
            beside: Beside::Desk,
            opened: None,
            found: BTreeMap::new(),
            found_with: Shared::default(),
            waits: VecDeque::new(),
            press: None,
            watched: String::new(),
        })
    }

    /// The same, with what sets the visit sheet of a family.
    #[must_use]
    pub fn with_press(self, press: Press) -> Self {
        Self { press: Some(press), ..self }
    }

    /// The sentences, to tell trouble in.
    pub fn texts(&self) -> &Texts {
        self.desk.texts()
    }

    /// Does what an event asks for and shows both panes.
    pub fn update(&mut self, event: Event, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        let effects = match event {
            Event::OpenFamily { family } => {
                self.open_family(&family, clock)?;
                Vec::new()
            }
            Event::OpenDesk { place } => {
                self.beside = Beside::Desk;
                self.desk.update(Event::Go { place }, clock)?;
                Vec::new()
            }
            Event::RemoveFamily { family } => {
                self.remove(&family, clock)?;
                Vec::new()
            }
            Event::Enter { id, typed, .. } if id == crate::screen::OPEN_PASSPHRASE => {
                self.open_waiting(&typed, clock)?;
                Vec::new()
            }
            Event::LeaveSealed => {
                self.waits.pop_front();
                self.ask_for_passphrase(clock)?;
                Vec::new()
            }
            Event::WritePlan { family } => {
                self.beside = Beside::Desk;
                self.desk.write_plan(&family, clock)?
            }
            // The list offers this also where a family is open that is only read.
            Event::PickRecord => self.desk.update(Event::PickRecord, clock)?.effects,
            Event::WatchFolder => vec![Effect::PickFolder],
            Event::LeaveFolder => vec![Effect::LeaveFolder],
            Event::FolderIs { name } => {
                self.watched = name;
                Vec::new()
            }
            event => self.beside_app().update(event, clock)?.effects,
        };
        Ok(CaseloadUpdate { caseload: self.here(clock)?, effects })
    }

    fn beside_app(&mut self) -> &mut App {
        match (&self.beside, &mut self.opened) {
            (Beside::Family(id), Some(opened)) if opened.id == *id => &mut opened.app,
            _ => &mut self.desk,
        }
    }

    /// The clock as it stood when the open family last shared: nothing later is known of it.
    fn clock_beside(&self, clock: &Clock) -> Clock {
        let shared = match &self.beside {
            Beside::Family(id) => self.found.get(id).and_then(|found| found.shared.clone()),
            Beside::Desk => None,
        };
        as_of(clock, shared.as_ref())
    }

    /// Both panes as they stand.
    pub fn here(&mut self, clock: &Clock) -> Result<CaseloadScreen, Trouble> {
        self.look_at_all(clock)?;
        let families = self.list(clock)?;
        let beside = self.show_beside(None, clock)?;
        let (now, zone) = present(clock);
        let menu = drawn::menu(&self.desk.desk_view(now, zone)?, &self.watched);
        Ok(CaseloadScreen { families, beside, menu })
    }

    /// A place of what is open beside the list.
    pub fn show(&mut self, place: &Place, clock: &Clock) -> Result<Screen, Trouble> {
        self.show_beside(Some(place), clock)
    }

    /// A place of what is open beside the list, or where it stands. A plan is shown for the
    /// family that it is written for.
    fn show_beside(&mut self, place: Option<&Place>, clock: &Clock) -> Result<Screen, Trouble> {
        if let Beside::Family(_) = self.beside {
            let at = self.clock_beside(clock);
            return match place {
                Some(place) => self.beside_app().show(place, &at),
                None => self.beside_app().here(&at),
            };
        }
        let planned = self.open_family_at(place.unwrap_or(&self.desk.place()), clock)?;
        let mut family = match (planned, &self.opened) {
            (Some(at), Some(opened)) => {
                let (now, zone) = present(&at);
                opened.app.desk_view(now, zone).ok()
            }
            _ => None,
        };
        if let Some(family) = &mut family {
            let (now, zone) = present(clock);
            family.record.settings = family.record.settings.clone().said_as(&self.desk.desk_view(now, zone)?.settings);
        }
        match place {
            Some(place) => self.desk.show_for(family.as_ref(), place, clock),
            None => self.desk.here_for(family.as_ref(), clock),
        }
    }

    fn list(&self, clock: &Clock) -> Result<Screen, Trouble> {
        let (now, zone) = present(clock);
        let view = self.desk.desk_view(now, zone)?;
        let (family, of_desk) = match &self.beside {
            Beside::Family(id) => (Some(id.clone()), false),
            Beside::Desk => (self.family_at(&self.desk.place())?, true),
        };
        let chosen = drawn::Chosen { family: family.as_deref(), of_desk };
        drawn::list(&view, &self.in_order(&view)?, chosen, Count::new(self.waits.len() as u32))
    }

    /// Families, those first that need a look first.
    fn in_order(&self, view: &View<'_>) -> Result<Vec<drawn::Row>, Trouble> {
        let mut rows = Vec::new();
        for row in view.journal.of_kind(Kind::CaseFamily)? {
            let (_, fields) = view.record(&row.subject)?;
            let name = crate::record::text(&fields, NAME_OF_CASE).map(str::to_owned);
            let Some(found) = self.found.get(&row.subject) else { continue };
            let mut reasons = found.reasons.clone();
            reasons.extend(crate::gather::reasons::visit_due(&fields, view.today(), &self.found_with.rules));
            reasons.sort_by_key(Reason::rank);
            rows.push(drawn::Row { id: row.subject, name, shared: found.shared.clone(), reasons });
        }
        let no_reason = Rank::NONE;
        rows.sort_by(|a, b| {
            let rank = |row: &drawn::Row| row.reasons.first().map_or(no_reason, Reason::rank);
            (rank(a), std::cmp::Reverse(a.shared.as_ref().map(Moment::instant)), &a.name, &a.id).cmp(&(
                rank(b),
                std::cmp::Reverse(b.shared.as_ref().map(Moment::instant)),
                &b.name,
                &b.id,
            ))
        });
        Ok(rows)
    }

    /// Writes what was asked for under a key of [`Effect::HandOver`].
    pub fn take_out(&mut self, key: &str, file: &mut dyn Write, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        let at = self.clock_beside(clock);
        self.beside_app().take_out(key, file, &at)?;
        Ok(CaseloadUpdate { caseload: self.here(clock)?, effects: Vec::<Effect>::new() })
    }

    /// Where the families lie.
    pub fn folder(&self) -> &Path {
        &self.folder
    }
}

fn present(clock: &Clock) -> (Instant, Zone) {
    let (Present { now, zone }, _) = Present::read(clock);
    (now, zone)
}

/// The present of a record that ends with what was shared last.
fn as_of(clock: &Clock, shared: Option<&Moment>) -> Clock {
    match shared {
        Some(at) if at.instant().unix_milliseconds() < clock.unix_milliseconds => {
            let unix_milliseconds = at.instant().unix_milliseconds();
            Clock { unix_milliseconds, zone: at.zone_name().to_owned(), offset_seconds: None }
        }
        _ => clock.clone(),
    }
}
