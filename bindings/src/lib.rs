//! The surface: one object, a few questions, plain data in and out.
//!
//! What comes in: events and the present moment. What goes out: screens and
//! effects, declared in `drawwell_core::screen::shapes` and handed to UniFFI by
//! the build script. No decision is made here. Every call takes a lock of its
//! own; no panic crosses.

uniffi::setup_scaffolding!("drawwell");

mod trouble;

use std::io::{BufReader, BufWriter};
use std::path::PathBuf;
use std::sync::{Mutex, MutexGuard, PoisonError};

use drawwell_core::app::App;
use drawwell_core::screen::shapes::*;
use drawwell_core::trouble as core_trouble;

pub use trouble::{Trouble, TroubleKind};

include!(concat!(env!("OUT_DIR"), "/shapes.rs"));

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

#[uniffi::export]
impl Drawwell {
    /// Opens the record at a path, making it where there is none.
    #[uniffi::constructor]
    pub fn open(path: String, opening: Opening, now: Clock) -> Result<Self, Trouble> {
        let texts = drawwell_core::text::Texts::new(&opening.language);
        let app = App::open(PathBuf::from(path), opening, &now).map_err(|t| Trouble::told(&texts, &t))?;
        Ok(Self { app: Mutex::new(app) })
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
        self.with(|app| {
            let file = std::fs::File::open(&path)
                .map_err(|_| core_trouble::Trouble::new(core_trouble::Kind::Missing, "trouble-cannot-read-file"))?;
            app.bring_in(&mut BufReader::new(file), &now)
        })
    }

    /// Writes what was asked for under a key (`record`, `calendar`) to a file. The file is
    /// whole or not there: it is written beside its place and then moved.
    pub fn take_out(&self, key: String, path: String, now: Clock) -> Result<Update, Trouble> {
        self.with(|app| {
            let failed = |_| core_trouble::Trouble::new(core_trouble::Kind::Full, "trouble-cannot-write-file");
            let half_made = PathBuf::from(format!("{path}.part"));
            let mut file = BufWriter::new(std::fs::File::create(&half_made).map_err(failed)?);
            let written = app
                .take_out(&key, &mut file, &now)
                .and_then(|update| file.get_ref().sync_all().map_err(failed).map(|()| update))
                .and_then(|update| std::fs::rename(&half_made, &path).map_err(failed).map(|()| update));
            if written.is_err() {
                std::fs::remove_file(&half_made).ok();
            }
            written
        })
    }

    /// Backs up and checks the record; slow, so off the thread that draws. Other
    /// calls are answered meanwhile.
    pub fn tend(&self, now: Clock) -> Result<Update, Trouble> {
        let path = self.app().path().to_owned();
        let outcome = drawwell_core::app::look_after(&path, &now);
        self.with(|app| app.looked_after(outcome, &now))
    }
}
