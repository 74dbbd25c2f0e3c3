//! The whole record, out.

use std::io::Write;

use super::{line, VERSION};
use crate::journal::Journal;
use crate::trouble::{Kind, Trouble};

/// Writes every record, taken out ones included. The same record gives the
/// same bytes.
///
/// # Errors
/// Where the store can't be read, or the file can't be written.
pub fn export(journal: &Journal, out: &mut dyn Write) -> Result<u64, Trouble> {
    let failed = |_| Trouble::new(Kind::Full, "trouble-cannot-write-file");
    writeln!(out, "{{\"drawwell\":\"exchange\",\"version\":{VERSION}}}").map_err(failed)?;
    let mut written = 0;
    journal.each_record(|id, kind, fields| {
        written += 1;
        writeln!(out, "{}", line::write(id, kind, &fields)).map_err(failed)
    })?;
    out.flush().map_err(failed)?;
    Ok(written)
}
