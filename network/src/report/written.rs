//! A published report as a file: CSV, Parquet, JSON lines, a picture.

use std::sync::Arc;

use datafusion::arrow::array::{ArrayRef, Int64Array, RecordBatch, StringArray};
use datafusion::arrow::datatypes::{DataType, Field, Schema};
use datafusion::parquet::arrow::ArrowWriter;
use datafusion::parquet::basic::{Compression, ZstdLevel};
use datafusion::parquet::file::properties::WriterProperties;

use super::{picture, Published, Report};
use crate::table::{Cell, Row};
use crate::trouble::Stop;

/// How a report is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum As {
    /// Comma-separated (RFC 4180).
    Csv,
    /// Parquet.
    Parquet,
    /// An object a line.
    JsonLines,
    /// SVG.
    Picture,
}

impl As {
    /// By how a file's name ends.
    pub fn by_ending(name: &str) -> Option<Self> {
        Some(match name.rsplit('.').next()? {
            "csv" => Self::Csv,
            "parquet" => Self::Parquet,
            "jsonl" | "ndjson" => Self::JsonLines,
            "svg" => Self::Picture,
            _ => return None,
        })
    }
}

/// The bytes of a file.
///
/// # Errors
/// Where it can't be written so.
pub fn write(report: &Report, published: &Published, how: As) -> Result<Vec<u8>, Stop> {
    match how {
        As::Csv => Ok(csv(published)),
        As::Parquet => parquet(published),
        As::JsonLines => json_lines(published),
        As::Picture => picture::draw(report, published).map(String::into_bytes),
    }
}

fn csv(published: &Published) -> Vec<u8> {
    let quoted = |text: &str| match text.contains([',', '"', '\n', '\r']) {
        true => format!("\"{}\"", text.replace('"', "\"\"")),
        false => text.to_owned(),
    };
    let line = |cells: Vec<String>| cells.join(",") + "\r\n";
    let cell = |cell: &Cell| match cell {
        Cell::Null => String::new(),
        Cell::Whole(whole) => whole.to_string(),
        Cell::Text(text) => quoted(text),
    };
    let mut text = line(published.columns.iter().map(|name| quoted(name)).collect());
    for row in &published.rows {
        text.push_str(&line(row.iter().map(cell).collect()));
    }
    text.into_bytes()
}

fn json_lines(published: &Published) -> Result<Vec<u8>, Stop> {
    let mut text = Vec::new();
    for row in &published.rows {
        let members = published.columns.iter().zip(row).map(|(name, cell)| {
            let value = match cell {
                Cell::Null => serde_json::Value::Null,
                Cell::Whole(whole) => (*whole).into(),
                Cell::Text(text) => text.clone().into(),
            };
            (name.clone(), value)
        });
        let object: serde_json::Map<String, serde_json::Value> = members.collect();
        serde_json::to_writer(&mut text, &object).map_err(|why| Stop::Json { what: "a row", why })?;
        text.push(b'\n');
    }
    Ok(text)
}

fn parquet(published: &Published) -> Result<Vec<u8>, Stop> {
    let is_text = |at: usize| published.rows.iter().any(|row| row.get(at).and_then(Cell::text).is_some());
    let column = |at: usize| -> ArrayRef {
        let cells = published.rows.iter().map(|row: &Row| row.get(at));
        match is_text(at) {
            true => Arc::new(cells.map(|cell| cell.and_then(Cell::text)).collect::<StringArray>()),
            false => Arc::new(cells.map(|cell| cell.and_then(Cell::whole)).collect::<Int64Array>()),
        }
    };
    let field = |(at, name): (usize, &String)| {
        Field::new(name, if is_text(at) { DataType::Utf8 } else { DataType::Int64 }, true)
    };
    let schema = Arc::new(Schema::new(published.columns.iter().enumerate().map(field).collect::<Vec<_>>()));
    let columns = (0..published.columns.len()).map(column).collect();
    let batch = RecordBatch::try_new(Arc::clone(&schema), columns)?;
    let properties = WriterProperties::builder().set_compression(Compression::ZSTD(ZstdLevel::try_new(3)?)).build();
    let mut bytes = Vec::new();
    let mut writer = ArrowWriter::try_new(&mut bytes, schema, Some(properties))?;
    writer.write(&batch)?;
    writer.close()?;
    Ok(bytes)
}
