//! Why a command went no further, in words for the person at the keyboard.

use std::{fmt, io, path::Path};

/// The one error here: what to print before leaving.
#[derive(Debug)]
pub(crate) struct Stop(String);

impl Stop {
    pub(crate) fn new(why: impl Into<String>) -> Self {
        Self(why.into())
    }

    /// A file that could not be read or written.
    pub(crate) fn at(path: &Path, error: &io::Error) -> Self {
        Self(format!("{}: {error}", path.display()))
    }
}

impl fmt::Display for Stop {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(self.0.trim_end())
    }
}
