//! Rows as a Parquet file with zstd, and back.

use std::sync::Arc;

use datafusion::arrow::array::{ArrayRef, AsArray, Int64Array, RecordBatch, StringArray};
use datafusion::arrow::datatypes::{DataType, Field, Int64Type, Schema, SchemaRef};
use datafusion::parquet::arrow::arrow_reader::ParquetRecordBatchReaderBuilder;
use datafusion::parquet::arrow::ArrowWriter;
use datafusion::parquet::basic::{Compression, ZstdLevel};
use datafusion::parquet::file::properties::WriterProperties;

use crate::table::{Cell, Column, Holds, Row, Table};
use crate::trouble::Stop;

/// Of zstd's 22: a fifth slower than the first and a quarter smaller.
const LEVEL: i32 = 3;
/// Rows that become one batch.
const BATCH: usize = 64 * 1024;

/// The columns of a table as Arrow has them.
pub fn schema(table: &Table) -> SchemaRef {
    let field = |column: &Column| {
        let holds = match column.holds {
            Holds::Whole => DataType::Int64,
            Holds::Text => DataType::Utf8,
        };
        Field::new(column.name, holds, column.may_lack)
    };
    Arc::new(Schema::new(table.columns.iter().map(field).collect::<Vec<_>>()))
}

/// Rows of a table as one batch.
///
/// # Errors
/// Where a row does not fit the table.
pub fn batch(table: &Table, rows: &[Row]) -> Result<RecordBatch, Stop> {
    if rows.iter().any(|row| row.len() != table.columns.len()) {
        return Err(Stop::refused(format!("a row does not fit {}", table.name)));
    }
    let column = |(at, column): (usize, &Column)| -> ArrayRef {
        let cells = rows.iter().map(|row| row.get(at));
        match column.holds {
            Holds::Whole => Arc::new(cells.map(|cell| cell.and_then(Cell::whole)).collect::<Int64Array>()),
            Holds::Text => Arc::new(cells.map(|cell| cell.and_then(Cell::text)).collect::<StringArray>()),
        }
    };
    let columns = table.columns.iter().enumerate().map(column).collect();
    Ok(RecordBatch::try_new(schema(table), columns)?)
}

/// Rows as the bytes of a file. The same rows are the same bytes.
///
/// # Errors
/// Where a row does not fit the table.
pub fn write(table: &Table, rows: &[Row]) -> Result<Vec<u8>, Stop> {
    let properties = WriterProperties::builder()
        .set_compression(Compression::ZSTD(ZstdLevel::try_new(LEVEL)?))
        .set_created_by("drawwell-network".to_owned())
        .build();
    let mut bytes = Vec::new();
    let mut writer = ArrowWriter::try_new(&mut bytes, schema(table), Some(properties))?;
    for some in rows.chunks(BATCH) {
        writer.write(&batch(table, some)?)?;
    }
    writer.close()?;
    Ok(bytes)
}

/// The rows of a file.
///
/// # Errors
/// Where it is none of this table.
pub fn read(table: &Table, bytes: Vec<u8>) -> Result<Vec<Row>, Stop> {
    let reader = ParquetRecordBatchReaderBuilder::try_new(bytes::Bytes::from(bytes))?.build()?;
    let mut rows = Vec::new();
    for batch in reader {
        rows.extend(rows_of(table, &batch?)?);
    }
    Ok(rows)
}

/// The rows of a batch.
fn rows_of(table: &Table, batch: &RecordBatch) -> Result<Vec<Row>, Stop> {
    let other = || Stop::refused(format!("a file is none of {}", table.name));
    if batch.num_columns() != table.columns.len() {
        return Err(other());
    }
    let mut rows: Vec<Row> = (0..batch.num_rows()).map(|_| Vec::with_capacity(table.columns.len())).collect();
    for (column, array) in table.columns.iter().zip(batch.columns()) {
        match column.holds {
            Holds::Whole => {
                let array = array.as_primitive_opt::<Int64Type>().ok_or_else(other)?;
                rows.iter_mut().zip(array.iter()).for_each(|(row, cell)| row.push(cell.into()));
            }
            Holds::Text => {
                let array = array.as_string_opt::<i32>().ok_or_else(other)?;
                rows.iter_mut().zip(array.iter()).for_each(|(row, cell)| row.push(cell.into()));
            }
        }
    }
    Ok(rows)
}
