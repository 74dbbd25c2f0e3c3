//! What can go wrong over many families. Nothing of any one of them is said.

use std::path::PathBuf;

/// Why something could not be done.
#[derive(Debug, thiserror::Error)]
pub enum Stop {
    /// A file or folder can't be read or written.
    #[error("{}: {why}", path.display())]
    File {
        /// Where.
        path: PathBuf,
        /// What the system says.
        why: std::io::Error,
    },
    /// The store's files can't be reached.
    #[error("the store: {0}")]
    Objects(#[from] datafusion::object_store::Error),
    /// A table can't be written or read.
    #[error("a table: {0}")]
    Parquet(#[from] datafusion::parquet::errors::ParquetError),
    /// Columns that don't fit their table.
    #[error("a table: {0}")]
    Arrow(#[from] datafusion::arrow::error::ArrowError),
    /// A report can't be worked out.
    #[error("the report: {0}")]
    Query(#[from] datafusion::error::DataFusionError),
    /// What is kept as JSON is not what it should be.
    #[error("{what} can't be read: {why}")]
    Json {
        /// What it is.
        what: &'static str,
        /// Why.
        why: serde_json::Error,
    },
    /// A file of the store is not as it was written.
    #[error("{file} is not as it was written: {why}")]
    Damaged {
        /// Which.
        file: String,
        /// What differs.
        why: &'static str,
    },
    /// The store was written by a newer version, or with another key, or is in the way.
    #[error("{0}")]
    Refused(String),
    /// A record can't be read.
    #[error("{}", .0.key)]
    Record(#[from] drawwell_core::trouble::Trouble),
}

impl Stop {
    /// A file that can't be read or written.
    pub fn file(path: impl Into<PathBuf>, why: std::io::Error) -> Self {
        Self::File { path: path.into(), why }
    }

    /// What can't be done, in words.
    pub fn refused(why: impl Into<String>) -> Self {
        Self::Refused(why.into())
    }
}
