//! The exchange form: JSON lines, one fact a line.
//!
//! The first line is `{"drawwell":"exchange","version":1}`. Every other line is
//! one record: `fact` is its kind, `id` its id, the rest are its fields, sorted
//! by name; a session's marks stand together under `marks`. What was taken out
//! is in it with `"taken_out":true`. Fields that this version does not know
//! are kept and written out again. `demo-data/README.md` explains it with
//! examples, `demo-data/exchange.schema.json` is its JSON Schema.

mod line;
mod read;
mod write;

pub use read::{begin_with, import, look_at, look_in, Report, WrongLine, MOST_WRONG_LINES_TOLD};
pub use write::export;

/// A record as a line of the exchange form.
pub(crate) fn write_line(id: &str, kind: crate::record::Kind, fields: &crate::record::Fields) -> String {
    line::write(id, kind, fields)
}

/// A line of the exchange form as a record: its kind, its id, its fields.
pub(crate) fn read_line(
    text: &str,
) -> Result<(crate::record::Kind, String, crate::record::Fields), crate::trouble::Trouble> {
    line::read(text).map(|line| (line.kind, line.id, line.fields))
}

/// The version this program reads and writes.
pub const VERSION: u64 = 1;
/// Content type of a file in the exchange form.
pub const CONTENT_TYPE: &str = "application/x-ndjson";
