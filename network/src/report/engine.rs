//! The embedded engine (DataFusion) over the store's files.

use std::sync::Arc;

use datafusion::arrow::array::{Array, AsArray, RecordBatch};
use datafusion::arrow::compute::cast;
use datafusion::arrow::datatypes::{DataType, Int64Type};
use datafusion::arrow::util::pretty::pretty_format_batches;
use datafusion::datasource::MemTable;
use datafusion::prelude::{ParquetReadOptions, SessionConfig, SessionContext};
use url::Url;

use crate::store::{file, Store};
use crate::table::{Cell, Row, TABLES};
use crate::trouble::Stop;

/// Where the engine finds the store's files.
const PLACE: &str = "network://store/";

/// What a query found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// The names of its columns.
    pub columns: Vec<String>,
    /// Its rows, in order.
    pub rows: Vec<Row>,
}

/// The engine, with every table of a store.
pub struct Engine<'s> {
    context: SessionContext,
    store: &'s Store,
    /// Files and bytes that the tables are.
    pub size: (u64, u64),
}

impl<'s> Engine<'s> {
    /// Over a store, each file of which is held to what was written.
    ///
    /// # Errors
    /// [`Stop::Damaged`], or where it can't be read.
    pub fn over(store: &'s Store) -> Result<Self, Stop> {
        Self::with_partitions(store, None)
    }

    /// The same, working on so many parts at once.
    ///
    /// # Errors
    /// As [`Self::over`].
    pub fn with_partitions(store: &'s Store, partitions: Option<usize>) -> Result<Self, Stop> {
        let mut config = SessionConfig::new();
        if let Some(partitions) = partitions {
            config = config.with_target_partitions(partitions);
        }
        let context = SessionContext::new_with_config(config);
        let place = Url::parse(PLACE).map_err(|_| Stop::refused("the store has no place"))?;
        context.register_object_store(&place, store.objects().inner());
        let mut engine = Self { context, store, size: (0, 0) };
        for table in TABLES {
            let parts = store.files_of(table)?;
            engine.size.0 += parts.len() as u64;
            engine.size.1 += parts.iter().map(|part| part.bytes).sum::<u64>();
            let paths: Vec<String> = parts.into_iter().map(|part| part.path).collect();
            engine.register(table.name, &paths, &file::schema(table))?;
        }
        Ok(engine)
    }

    /// Gives files of the store a name.
    ///
    /// # Errors
    /// Where they can't be read.
    pub fn register(
        &self,
        name: &str,
        paths: &[String],
        schema: &datafusion::arrow::datatypes::SchemaRef,
    ) -> Result<(), Stop> {
        let found = if paths.is_empty() {
            let empty = MemTable::try_new(Arc::clone(schema), vec![vec![RecordBatch::new_empty(Arc::clone(schema))]])?;
            self.context.read_table(Arc::new(empty))?
        } else {
            let urls: Vec<String> = paths.iter().map(|path| format!("{PLACE}{path}")).collect();
            let options = ParquetReadOptions::default().schema(schema);
            self.store.objects().runtime().block_on(self.context.read_parquet(urls, options))?
        };
        self.context.register_table(name, found.into_view())?;
        Ok(())
    }

    /// Gives rows a name.
    ///
    /// # Errors
    /// Where they don't fit together.
    pub fn register_rows(&self, name: &str, batch: RecordBatch) -> Result<(), Stop> {
        self.context.register_table(name, Arc::new(MemTable::try_new(batch.schema(), vec![vec![batch]])?))?;
        Ok(())
    }

    /// What a query gives, as it comes.
    ///
    /// # Errors
    /// Where it can't be worked out.
    pub fn batches(&self, sql: &str) -> Result<Vec<RecordBatch>, Stop> {
        let work = async { self.context.sql(sql).await?.collect().await };
        Ok(self.store.objects().runtime().block_on(work)?)
    }

    /// Runs a query.
    ///
    /// # Errors
    /// Where it can't be worked out, or gives something other than whole numbers and words.
    pub fn run(&self, sql: &str) -> Result<Found, Stop> {
        let batches = self.batches(sql)?;
        let schema = batches.first().map(RecordBatch::schema);
        let columns = schema.map_or_else(Vec::new, |s| s.fields().iter().map(|field| field.name().clone()).collect());
        let mut rows = Vec::new();
        for batch in &batches {
            rows.extend(rows_of(batch)?);
        }
        Ok(Found { columns, rows })
    }

    /// How a query is worked out.
    ///
    /// # Errors
    /// Where it can't be.
    pub fn explain(&self, sql: &str) -> Result<String, Stop> {
        let work = async { self.context.sql(sql).await?.explain(false, true)?.collect().await };
        let batches = self.store.objects().runtime().block_on(work)?;
        let (files, bytes) = self.size;
        Ok(format!("{}\n{files} files, {bytes} bytes", pretty_format_batches(&batches)?))
    }
}

fn rows_of(batch: &RecordBatch) -> Result<Vec<Row>, Stop> {
    let mut rows: Vec<Row> = (0..batch.num_rows()).map(|_| Vec::with_capacity(batch.num_columns())).collect();
    for array in batch.columns() {
        let is_text = matches!(array.data_type(), DataType::Utf8 | DataType::Utf8View | DataType::LargeUtf8);
        let array = cast(array, if is_text { &DataType::Utf8 } else { &DataType::Int64 })?;
        let cells: Vec<Cell> = if is_text {
            array.as_string::<i32>().iter().map(Into::into).collect()
        } else {
            array.as_primitive::<Int64Type>().iter().map(Into::into).collect()
        };
        rows.iter_mut().zip(cells).for_each(|(row, cell)| row.push(cell));
    }
    Ok(rows)
}
