//! The surface: one object, a few questions, plain data in and out.
//!
//! What comes in: events and the present moment. What goes out: screens and
//! effects, declared in `drawwell_core::screen::shapes` and handed to UniFFI by
//! the build script. No decision is made here. Every call takes a lock of its
//! own; no panic crosses.

uniffi::setup_scaffolding!("drawwell");

mod key_store;
mod sheet_renderer;
mod trouble;

use std::io::BufReader;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, MutexGuard, PoisonError};

use drawwell_core::app::{recovery, App};
use drawwell_core::caseload::Caseload;
use drawwell_core::journal::Key;
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

/// A new key for a record: 32 random bytes, for the host to keep.
#[uniffi::export]
pub fn new_key(language: &str) -> Result<Vec<u8>, Trouble> {
    let texts = drawwell_core::text::Texts::new(language);
    Key::make().map(|key| key.bytes().to_vec()).map_err(|t| Trouble::render(&texts, &t))
}

/// The key of the record at a path out of the platform's own store: see `key_store`. None where
/// the platform has none; a phone wraps its key itself.
#[uniffi::export]
pub fn platform_key(path: &str) -> Option<Vec<u8>> {
    key_store::key_of(Path::new(path)).map(|key| key.bytes().to_vec())
}

/// Keeps a key that was recovered in the platform's own store; whether that could be.
#[uniffi::export]
pub fn keep_platform_key(key: Vec<u8>) -> bool {
    Key::from_bytes(&key).is_ok_and(|key| key_store::keep(&key))
}

/// Where in a folder a consultant's desk keeps its own journal, which its key is found by.
#[uniffi::export]
pub fn desk_record(folder: &str) -> String {
    drawwell_core::caseload::desk_record(Path::new(folder)).to_string_lossy().into_owned()
}

/// Whether the record at a path is sealed, so that it wants a key.
#[uniffi::export]
pub fn is_sealed(path: &str) -> bool {
    recovery::is_sealed(Path::new(path))
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
        deed(&mut app).map_err(|trouble| Trouble::render(app.texts(), &trouble))
    }
}

fn read(key: Option<&[u8]>) -> Result<Option<Key>, core_trouble::Trouble> {
    key.map(Key::from_bytes).transpose()
}

fn opened(path: &str) -> Result<std::fs::File, core_trouble::Trouble> {
    private_file::open(Path::new(path))
}

#[uniffi::export]
impl Drawwell {
    /// Opens the record at a path, making it where there is none; with the 32 bytes it is sealed
    /// with, where the host keeps a key. One that is not sealed yet is moved under the key.
    #[uniffi::constructor(default(key = None))]
    pub fn open(path: String, opening: Opening, now: Clock, key: Option<Vec<u8>>) -> Result<Self, Trouble> {
        let texts = drawwell_core::text::Texts::new(&opening.language);
        let app = read(key.as_deref())
            .and_then(|key| App::open_with_key(PathBuf::from(path), key, opening, &now))
            .map_err(|t| Trouble::render(&texts, &t))?;
        Ok(Self { app: Mutex::new(app.with_sheet_renderer(sheet_renderer::set)) })
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
    pub fn import_file(&self, path: String, now: Clock) -> Result<Update, Trouble> {
        self.with(|app| app.import_file(&mut BufReader::new(opened(&path)?), &now))
    }

    /// Writes what is to leave to a file. The file is
    /// whole or not there: it is written beside its place and then moved.
    pub fn export(&self, what: Export, path: String, now: Clock) -> Result<Update, Trouble> {
        self.with(|app| private_file::whole_or_not(Path::new(&path), |file| app.export(&what, file, &now)))
    }

    /// The key that the record is open with, for the host to keep.
    pub fn key(&self) -> Option<Vec<u8>> {
        self.app().key_in_use().map(|key| key.bytes().to_vec())
    }

    /// Backs up and checks the record; slow, so off the thread that draws. Other
    /// calls are answered meanwhile.
    pub fn maintain(&self, now: Clock) -> Result<Update, Trouble> {
        let (path, key) = {
            let app = self.app();
            (app.path().to_owned(), app.key_in_use())
        };
        let outcome = drawwell_core::app::maintain(&path, key.as_ref(), &now);
        self.with(|app| app.finish_maintenance(outcome, &now))
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
        deed(&mut caseload).map_err(|trouble| Trouble::render(caseload.texts(), &trouble))
    }
}

#[uniffi::export]
impl Desk {
    /// Opens the caseload in a folder, making it where there is none; with the 32 bytes that all
    /// in it is sealed with, where the host keeps a key.
    #[uniffi::constructor(default(key = None))]
    pub fn open(folder: String, opening: Opening, now: Clock, key: Option<Vec<u8>>) -> Result<Self, Trouble> {
        let texts = drawwell_core::text::Texts::new(&opening.language);
        let caseload = read(key.as_deref())
            .and_then(|key| Caseload::open_with_key(PathBuf::from(folder), key, opening, &now))
            .map_err(|t| Trouble::render(&texts, &t))?;
        Ok(Self { caseload: Mutex::new(caseload.with_sheet_renderer(sheet_renderer::set)) })
    }

    /// One call per tap: what was done is on disk when it returns.
    pub fn update(&self, event: Event, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        self.with(|caseload| caseload.update(event, &now))
    }

    /// Both panes as they stand.
    pub fn here(&self, now: Clock) -> Result<CaseloadScreen, Trouble> {
        self.with(|caseload| caseload.here(&now))
    }

    /// Backs up and checks the desk's own record and its families'; slow, so off the thread that
    /// draws. Other calls are answered meanwhile.
    pub fn maintain(&self, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        let mut maintenance = None;
        self.with(|caseload| {
            maintenance = Some(caseload.maintenance()?);
            Ok(())
        })?;
        match maintenance {
            Some(maintenance) => {
                let maintained = maintenance.run(&now);
                self.with(|caseload| caseload.finish_maintenance(maintained, &now))
            }
            None => self.with(|caseload| Ok(CaseloadUpdate { caseload: caseload.here(&now)?, effects: Vec::new() })),
        }
    }

    /// The key that the desk is open with, for the host to keep.
    pub fn key(&self) -> Option<Vec<u8>> {
        let caseload = self.caseload.lock().unwrap_or_else(PoisonError::into_inner);
        caseload.key_in_use().map(|key| key.bytes().to_vec())
    }

    /// Brings in what a family shared, and opens the family.
    pub fn import_file(&self, path: String, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        self.with(|caseload| caseload.import_file(&mut BufReader::new(opened(&path)?), &now))
    }

    /// Takes in what a family shared, and leaves open what is open.
    pub fn import_quietly(&self, path: String, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        self.with(|caseload| caseload.import_quietly(&mut BufReader::new(opened(&path)?), &now))
    }

    /// Writes what is to leave to a file, whole or not at all.
    pub fn export(&self, what: Export, path: String, now: Clock) -> Result<CaseloadUpdate, Trouble> {
        self.with(|caseload| private_file::whole_or_not(Path::new(&path), |file| caseload.export(&what, file, &now)))
    }
}
