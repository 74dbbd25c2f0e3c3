//! Words that are shown nowhere.

use serde::{Deserialize, Serialize};

/// A passphrase or a recovery code, as typed. It stands in no log: printed, it says nothing.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Secret {
    pub words: String,
}

impl std::fmt::Debug for Secret {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Secret")
    }
}
