//! Rows, written one after the other.

use std::collections::BTreeMap;
use std::io::Write;

use serde_json::{json, Value};

use super::cell::Cell;
use super::column::{Column, From};
use super::Table;
use crate::journal::Journal;
use crate::quantity::{AirPressure, Altitude, Entered, Length, Mass, Quantity, Speed, Temperature, Vacuum, Volume};
use crate::record::{moment, text, Amount, FieldType, Fields, Session, Sizes};
use crate::share::parts::LeftOut;
use crate::trouble::{Kind as TroubleKind, Trouble};

/// First in a file: without it, a spreadsheet reads letters beyond ASCII wrongly.
const BYTE_ORDER_MARK: &str = "\u{feff}";

/// A row before it is cells.
struct Row<'r> {
    id: &'r str,
    member: &'r str,
    fields: &'r Fields,
}

/// Writes a table: what was not taken out, by time and id. The same record gives the
/// same bytes.
///
/// # Errors
/// Where the record can't be read or the file can't be written.
pub fn write(journal: &Journal, table: Table, left_out: &LeftOut, out: &mut dyn Write) -> Result<u64, Trouble> {
    let columns = table.columns(left_out);
    out.write_all(BYTE_ORDER_MARK.as_bytes()).map_err(|_| full())?;
    let mut file = lines(out);
    file.write_record(columns.iter().map(|column| column.name.as_str())).map_err(|_| full())?;
    let mut names = Names { journal, known: BTreeMap::new() };
    let mut written = 0;
    let rows = if table.goes(left_out) { journal.of_kind(table.kind())? } else { Vec::new() };
    for row in rows {
        let Some((_, fields)) = journal.record(&row.subject)? else { continue };
        let mut put = |row: &Row<'_>| {
            written += 1;
            let cells = columns.iter().map(|column| Ok(cell(column, row, &mut names)?.text()));
            file.write_record(cells.collect::<Result<Vec<String>, Trouble>>()?).map_err(|_| full())
        };
        match (table.members(), table.kind().members()) {
            (Some(_), Some((prefix, _))) => {
                for (member, value) in fields.range(prefix.to_owned()..) {
                    let Some(member) = member.strip_prefix(prefix) else { break };
                    put(&Row { id: &row.subject, member, fields: &member_fields(value) })?;
                }
            }
            _ => put(&Row { id: &row.subject, member: "", fields: &with_settings(table, &row.subject, fields) })?,
        }
    }
    file.flush().map_err(|_| full())?;
    Ok(written)
}

/// One row of text as it stands in a file; for whoever tries what cells do.
#[doc(hidden)]
pub fn write_row(texts: &[&str]) -> Vec<u8> {
    let mut out = Vec::new();
    let mut file = lines(&mut out);
    // Memory takes what is written to it.
    file.write_record(texts.iter().map(|text| Cell::Typed((*text).to_owned()).text())).ok();
    drop(file);
    out
}

fn lines<W: Write>(out: W) -> csv::Writer<W> {
    csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(out)
}

fn full() -> Trouble {
    Trouble::new(TroubleKind::Full, "trouble-cannot-write-file")
}

/// What records are called, each looked up once.
struct Names<'j> {
    journal: &'j Journal,
    known: BTreeMap<String, Option<String>>,
}

impl Names<'_> {
    fn of(&mut self, id: &str) -> Result<Option<String>, Trouble> {
        if let Some(known) = self.known.get(id) {
            return Ok(known.clone());
        }
        let found = self.journal.record(id)?.and_then(|(_, fields)| text(&fields, "name").map(str::to_owned));
        self.known.insert(id.to_owned(), found.clone());
        Ok(found)
    }
}

/// A member's own fields, its time as other records have it.
fn member_fields(value: &Value) -> Fields {
    let mut fields: Fields =
        value.as_object().map(|map| map.iter().map(|(k, v)| (k.clone(), v.clone())).collect()).unwrap_or_default();
    if let (Some(at), Some(zone)) = (value.get("at"), value.get("zone")) {
        fields.insert("at".to_owned(), json!({ "at": at, "zone": zone }));
    }
    fields
}

/// A session's fields, with what was set in each phase where it was marked while it ran.
fn with_settings(table: Table, id: &str, mut fields: Fields) -> Fields {
    if table == Table::Sessions {
        for (key, value) in Session::read(id, &fields).settings_as_fields() {
            fields.entry(key.to_owned()).or_insert(value);
        }
    }
    fields
}

fn cell(column: &Column, row: &Row<'_>, names: &mut Names<'_>) -> Result<Cell, Trouble> {
    let fields = row.fields;
    Ok(match column.from {
        From::Id => Cell::Own(row.id.to_owned()),
        From::Member => Cell::Own(row.member.to_owned()),
        From::Zone(key) => Cell::own(moment(fields, key).map(|at| at.zone_name().to_owned())),
        From::Said(key) => Cell::own(fields.get(key).and_then(Amount::from_json).map(|amount| match amount {
            Amount::Known(_) => "known",
            Amount::Unknown => "unknown",
            Amount::Later => "later",
        })),
        From::NameOf(key) => match text(fields, key) {
            Some(id) => names.of(id)?.map_or(Cell::Blank, Cell::Typed),
            None => Cell::Blank,
        },
        From::Lasted => match (moment(fields, "started"), moment(fields, "ended")) {
            (Some(started), Some(ended)) => {
                Cell::Figure(ended.instant().since(started.instant()).in_milliseconds() as f64 / 60_000.0)
            }
            _ => Cell::Blank,
        },
        From::HighestPain => match Session::read(row.id, fields).highest_pain(fields) {
            Some(score) => Cell::Figure(f64::from(score.get())),
            None => Cell::Blank,
        },
        From::Field(key) => {
            fields.get(key).and_then(|value| field_cell(column.field_type, value)).unwrap_or(Cell::Blank)
        }
    })
}

fn field_cell(field_type: FieldType, value: &Value) -> Option<Cell> {
    fn measured<Q: Quantity>(value: &Value) -> Option<Cell> {
        Entered::<Q>::from_json(value).map(|entered| Cell::Figure(entered.quantity().canonical()))
    }
    let word = || value.as_str().map(str::to_owned);
    match field_type {
        FieldType::Moment => crate::time::Moment::from_json(value).ok().map(|at| Cell::Own(at.to_rfc3339())),
        FieldType::Amount => Amount::from_json(value)?.known().map(|volume| Cell::Figure(volume.canonical())),
        FieldType::Volume { .. } => measured::<Volume>(value),
        FieldType::Vacuum { .. } => measured::<Vacuum>(value),
        FieldType::Speed { .. } => measured::<Speed>(value),
        FieldType::AirPressure { .. } => measured::<AirPressure>(value),
        FieldType::Altitude { .. } => measured::<Altitude>(value),
        FieldType::Length { .. } => measured::<Length>(value),
        FieldType::Mass { .. } => measured::<Mass>(value),
        FieldType::Temperature { .. } => measured::<Temperature>(value),
        FieldType::Number { .. } | FieldType::Whole { .. } | FieldType::Span { .. } => value.as_f64().map(Cell::Figure),
        FieldType::Flag => value.as_bool().map(|yes| Cell::Own(yes.to_string())),
        FieldType::Text { .. } | FieldType::Phone => word().map(Cell::Typed),
        FieldType::Date | FieldType::Choice(_) | FieldType::ClockTime | FieldType::Zone | FieldType::Refers(_) => {
            word().map(Cell::Own)
        }
        FieldType::Sizes { .. } => {
            let sizes = Sizes::from_json(value)?;
            let said = sizes.lengths().iter().map(|size| crate::quantity::say_decimal(size.canonical(), 1));
            Some(Cell::Own(said.collect::<Vec<_>>().join(" ")))
        }
        FieldType::Findings => None,
    }
}
