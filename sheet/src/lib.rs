//! Sets the visit sheet: data in, a tagged PDF out.
//!
//! In: the sheet as JSON, as `drawwell_core::screen::sheet` writes it, every word of
//! it in the person's language. Out: the bytes of a PDF that keeps to PDF/UA-1. No
//! word, number or decision is made here; what a page looks like stands in `typ`.
//! It is a crate of its own because the typesetter takes minutes to build, and core
//! seconds. [`letters`] says which signs can be drawn, [`world`] is what the
//! typesetter reads from: its files, its letters, and nothing of the machine.

#![forbid(unsafe_code)]

mod letters;
mod world;

use serde_json::Value;
use typst::foundations::{Datetime, Smart};
use typst::layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};

/// When a sheet is made, on the clock on the wall.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Made {
    /// The year.
    pub year: i32,
    /// The month, from 1.
    pub month: u8,
    /// The day of the month, from 1.
    pub day: u8,
    /// The hour.
    pub hour: u8,
    /// The minute.
    pub minute: u8,
    /// The second.
    pub second: u8,
    /// Minutes that the clock on the wall is ahead of universal time.
    pub offset_minutes: i32,
}

/// Why a sheet was not set. It names no word of the record.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NotSet {
    /// The data is no JSON object.
    Data,
    /// The typesetter stopped: its own words, which are about the page and not the record.
    Page(Vec<String>),
}

impl std::fmt::Display for NotSet {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Data => f.write_str("the data of the sheet is no JSON object"),
            Self::Page(why) => write!(f, "the page could not be set: {}", why.join("; ")),
        }
    }
}

impl std::error::Error for NotSet {}

/// Sets a sheet. The same data and the same moment give the same bytes.
///
/// # Errors
/// [`NotSet`] where the data is not what `drawwell_core::screen::sheet` writes.
pub fn set(data: &str, made: Made) -> Result<Vec<u8>, NotSet> {
    let mut data: Value = serde_json::from_str(data).map_err(|_| NotSet::Data)?;
    if !data.is_object() {
        return Err(NotSet::Data);
    }
    letters::only_what_can_be_drawn(&mut data);
    let mut document = page(&data)?;
    if document.pages.len() > 1 {
        // Set closer where that saves a page: one is read in a minute.
        with(&mut data, "close", Value::Bool(true));
        let closer = page(&data)?;
        if closer.pages.len() < document.pages.len() {
            document = closer;
        }
    }
    // What was kept of earlier sheets is let go: a phone has no use for it.
    typst::comemo::evict(1);
    let standards = PdfStandards::new(&[PdfStandard::Ua_1]).map_err(|why| NotSet::Page(vec![why.to_string()]))?;
    let options =
        PdfOptions { ident: Smart::Custom(IDENT), timestamp: timestamp(made), standards, ..Default::default() };
    typst_pdf::pdf(&document, &options).map_err(not_set)
}

fn page(data: &Value) -> Result<PagedDocument, NotSet> {
    typst::compile(&world::SheetWorld::with(data)).output.map_err(not_set)
}

fn with(data: &mut Value, name: &str, value: Value) {
    if let Some(object) = data.as_object_mut() {
        object.insert(name.to_owned(), value);
    }
}

/// Tells documents of this kind from others, so that the same data gives the same bytes.
const IDENT: &str = "drawwell-visit-sheet";

fn timestamp(made: Made) -> Option<Timestamp> {
    let at = Datetime::from_ymd_hms(made.year, made.month, made.day, made.hour, made.minute, made.second)?;
    Timestamp::new_local(at, made.offset_minutes)
}

fn not_set(why: impl IntoIterator<Item = typst::diag::SourceDiagnostic>) -> NotSet {
    NotSet::Page(why.into_iter().map(|one| one.message.to_string()).collect())
}
