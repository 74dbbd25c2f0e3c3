//! All tables in one file: a Data Package (Frictionless Data, Data Package 1.0), zipped.

use std::io::Write;

use serde_json::{json, Value};
use zip::write::SimpleFileOptions;
use zip::ZipWriter;

use super::{schema, write, Table, CONTENT_TYPE};
use crate::journal::Journal;
use crate::share::parts::LeftOut;
use crate::text::Texts;
use crate::trouble::{Kind as TroubleKind, Trouble};

/// What says how the tables of a package are to be read; its name is the standard's.
const DESCRIPTOR: &str = "datapackage.json";

/// Writes every table that is not left out, and what their columns hold. The same record
/// gives the same bytes.
///
/// # Errors
/// Where the record can't be read or the file can't be written.
pub fn write_all(journal: &Journal, left_out: &LeftOut, texts: &Texts, out: &mut dyn Write) -> Result<u64, Trouble> {
    let mut file = ZipWriter::new_stream(out);
    let begin = SimpleFileOptions::default();
    let mut resources: Vec<Value> = Vec::new();
    let mut written = 0;
    for table in Table::ALL.iter().copied().filter(|table| table.goes(left_out)) {
        let path = format!("{}.csv", table.name());
        file.start_file(path.as_str(), begin).map_err(full)?;
        written += write(journal, table, left_out, &mut file)?;
        resources.push(json!({
            "profile": "tabular-data-resource",
            "name": table.name(),
            "title": texts.say(&format!("table-{}", table.name())),
            "path": path,
            "mediatype": CONTENT_TYPE,
            "encoding": "utf-8",
            "schema": schema(table, left_out, texts),
        }));
    }
    let package = json!({
        "profile": "tabular-data-package",
        "name": "drawwell-tables",
        "description": texts.say("not-a-diagnosis-share"),
        "resources": resources,
    });
    file.start_file(DESCRIPTOR, begin).map_err(full)?;
    writeln!(file, "{package:#}").map_err(full)?;
    file.finish().map_err(full)?.flush().map_err(full)?;
    Ok(written)
}

fn full<E>(_: E) -> Trouble {
    Trouble::new(TroubleKind::Full, "trouble-cannot-write-file")
}
