//! The surface: one object, three questions, plain data in and out.

uniffi::setup_scaffolding!("drawwell");

use drawwell_core::screen::shapes::*;
include!(concat!(env!("OUT_DIR"), "/shapes.rs"));

/// What kind of trouble it is; stable, for programs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Enum)]
pub enum TroubleKind {
    /// What was given cannot be taken as it is.
    BadInput,
    /// Another program has the record open.
    Busy,
    /// The record may not be written here.
    ReadOnly,
    /// There is no room on the disk.
    Full,
    /// The record was written by a newer version.
    Newer,
    /// The file was damaged; it was set aside and what could be read was kept.
    Damaged,
    /// The file is not there, or may not be read.
    Missing,
    /// A fault of the program itself.
    Fault,
}

/// Why something could not be done: what, where, and what to do.
#[derive(Debug, Clone, PartialEq, thiserror::Error, uniffi::Error)]
pub enum Trouble {
    /// The only kind: it tells its own story.
    #[error("{what} {what_to_do}")]
    Told {
        /// Stable kind.
        kind: TroubleKind,
        /// The field it is about, or empty.
        field: String,
        /// What is the matter, in the person's language.
        what: String,
        /// What the person can do.
        what_to_do: String,
    },
}

/// The one object.
#[derive(uniffi::Object)]
pub struct Drawwell {}

#[uniffi::export]
impl Drawwell {
    /// Opens the record at a path, making it where there is none.
    #[uniffi::constructor]
    pub fn open(path: String, opening: Opening, now: Clock) -> Result<Self, Trouble> { let _ = (path, opening, now); Ok(Self {}) }
    /// One call per tap: what was done is on disk when it returns.
    pub fn update(&self, event: Event, now: Clock) -> Result<Update, Trouble> { let _ = (event, now); unreachable!() }
    /// A place as it stands now.
    pub fn show(&self, place: Place, now: Clock) -> Result<Screen, Trouble> { let _ = (place, now); unreachable!() }
    /// The place the person is in, as it stands now.
    pub fn here(&self, now: Clock) -> Result<Screen, Trouble> { let _ = now; unreachable!() }
    /// Brings a file of the exchange form in.
    pub fn bring_in(&self, path: String, now: Clock) -> Result<Update, Trouble> { let _ = (path, now); unreachable!() }
    /// Writes the whole record to a file, in the exchange form.
    pub fn take_out(&self, path: String, now: Clock) -> Result<Update, Trouble> { let _ = (path, now); unreachable!() }
    /// Backs up and checks the record; slow, so off the thread that draws.
    pub fn tend(&self, now: Clock) -> Result<Update, Trouble> { let _ = now; unreachable!() }
}
