//! The record as HL7 FHIR R4 (4.0.1): one Bundle of type `collection`, in JSON.
//!
//! In: a journal, which parts are left out, and the visit sheet where there is one. Out: the
//! parent and the children as Patients, without a name unless one was given and left in;
//! pumps and gauges as Devices; everything else as Observations with UCUM units. LOINC
//! where it has a code, our own code system (the last entry) where we found none. An
//! amount that nobody knows has a `dataAbsentReason` and no value: never 0 mL. The same
//! record at the same moment gives the same bytes, and a record keeps its id from one file
//! to the next. `docs/files.md` has examples. Read [`codes`] first, then [`write`]; [`makes`] is what entries are made with.

mod birth;
mod bundle;
mod check;
mod codes;
mod component;
mod device;
mod feed;
mod fit;
mod ids;
mod life;
mod makes;
mod observation;
mod people;
mod session;
mod sheet;
mod sign;
mod system;
mod value;
mod weight;

pub use bundle::write;
pub use codes::{LOINC, OWN};

/// Content type of the file.
pub const CONTENT_TYPE: &str = "application/fhir+json";
