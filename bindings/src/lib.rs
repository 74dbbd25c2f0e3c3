//! The surface: one object, a few questions, plain data in and out.
//!
//! What comes in: events and the present moment. What goes out: screens and
//! effects, declared in `drawwell_core::screen::shapes` and handed to UniFFI by
//! the build script. No decision is made here. Every call takes a lock of its
//! own; no panic crosses.

uniffi::setup_scaffolding!("drawwell");

mod press;
mod trouble;

use std::io::BufReader;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use drawwell_core::app::App;
use drawwell_core::caseload::Caseload;
use drawwell_core::private_file;
use drawwell_core::screen::shapes::*;
use drawwell_core::trouble as core_trouble;

pub use trouble::{Trouble, TroubleKind};

include!(concat!(env!("OUT_DIR"), "/shapes.rs"));

/// No file is longer that can be brought in, in bytes: a host that copies one first need not
/// copy more.
#[uniffi::export]
pub fn longest_file() -> u64 {
    drawwell_core::limits::UNPACKED
}

/// Makes the folder that a record is to lie in, and those it lies in, for the person alone; one
/// that is there stays as it is.
#[uniffi::export]
pub fn make_folder(path: String) {
    if !Path::new(&path).exists() {
        // Where it can't be made, opening the record says so.
        private_file::create_folder(Path::new(&path)).ok();
    }
}

/// A person's record, open.
#[derive(Debug, uniffi::Object)]
pub struct Drawwell {
    app: Mutex<App>,
}

impl Drawwell {
    fn app(&self) -> MutexGuard<'_, App> {
        self.app.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn with<T>(&self, deed: impl FnOnce(&mut App) -> Result<T, core_trouble::Trouble>) -> Result<T, Trouble> {
        let mut app = self.app();
        deed(&mut app).map_err(|trouble| Trouble::told(app.texts(), &trouble))
    }
}

fn opened(path: &str) -> Result<std::fs::File, core_trouble::Trouble> {
    private_file::open(Path::new(path))
}

#[uniffi::export]
impl Drawwell {
    /// Opens the record at a path, making it where there is none.
    #[uniffi::constructor]
    pub fn open(path: String, opening: Opening, now: Clock) -> Result<Self, Trouble> {
        let texts = drawwell_core::text::Texts::new(&opening.language);
        let app = App::open(PathBuf::from(path), opening, &now).map_err(|t| Trouble::told(&texts, &t))?;
        Ok(Self { app: Mutex::new(app.with_press(press::set)) })
    }

    /// One call per tap: what was done is on disk when it returns.
    pub fn update(&self, event: Event, now: Clock) -> Result<Update, Trouble> {
        self.with(|app| app.update(event, &now))
    }

    /// A place as it stands.
    pub fn show(&self, place: Place, now: Clock) -> Result<Screen, Trouble> {
        self.with(|app| app.show(&place, &now))
    }

    /// The place the person is in, as it stands.
    pub fn here(&self, now: Clock) -> Result<Screen, Trouble> {
        self.with(|app| app.here(&now))
    }

    /// Brings a file of the exchange form in.
    pub fn bring_in(&self, path: String, now: Clock) -> Result<Update, Trouble> {
        self.with(|app| app.bring_in(&mut BufReader::new(opened(&path)?), &now))
    }

    /// Writes what is to leave to a file. The file is
    /// whole or not there: it is written beside its place and then moved.
    pub fn export(&self, what: Export, path: String, now: Clock) -> Result<Update, Trouble> {
        self.with(|app| private_file::whole_or_not(Path::new(&path), |file| app.export(&what, file, &now)))
    }

    /// Backs up and checks the record; slow, so off the thread that draws. Other
    /// calls are answered meanwhile.
    pub fn tend(&self, now: Clock) -> Result<Update, Trouble> {
        let path = self.app().path().to_owned();
        let outcome = drawwell_core::app::look_after(&path, &now);
        self.with(|app| app.looked_after(outcome, &now))
    }
}

/// A consultant's desk with many families.
#[derive(Debug, uniffi::Object)]
pub struct Desk {
    caseload: Mutex<Caseload>,
}

impl Desk {
    fn with<T>(&self, deed: impl FnOnce(&mut Caseload) -> Result<T, core_trouble::Trouble>) -> Result<T, Trouble> {
        let mut caseload = self.caseload.lock().unwrap_or_else(PoisonError::into_inner);
        deed(&mut caseload).map_err(|trouble| Trouble::told(caseload.texts(), &trouble))
    }
}

#[uniffi::export]
impl Desk {
    /// Opens the caseload in a folder, making it where there is none.
    #[uniffi::constructor]
    pub fn open(folder: String, opening: Opening, now: Clock) -> Result<Self, Trouble> {
        let texts = drawwell_core::text::Texts::new(&opening.language);
        let caseload = Caseload::open(PathBuf::from(folder), opening, &now).map_err(|t| Trouble::told(&texts, &t))?;
        Ok(Self { caseload: Mutex::new(caseload.with_press(press::set)) })
    }

    /// One call per tap: what was done is on disk when it returns.
    pub fn update(&self, event: Event, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        self.with(|caseload| caseload.update(event, &now))
    }

    /// Both panes as they stand.
    pub fn here(&self, now: Clock) -> Result<CaseloadScreen, Trouble> {
        self.with(|caseload| caseload.here(&now))
    }

    /// Brings in what a family shared, and opens the family.
    pub fn bring_in(&self, path: String, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        self.with(|caseload| caseload.bring_in(&mut BufReader::new(opened(&path)?), &now))
    }

    /// Takes in what a family shared, and leaves open what is open.
    pub fn take_in(&self, path: String, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        self.with(|caseload| caseload.take_in(&mut BufReader::new(opened(&path)?), &now))
    }

    /// Writes what is to leave to a file, whole or not at all.
    pub fn export(&self, what: Export, path: String, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        self.with(|caseload| private_file::whole_or_not(Path::new(&path), |file| caseload.export(&what, file, &now)))
    }
}
