//! Trouble as it crosses: few kinds, told in the person's language.

use drawwell_core::screen::words_of_trouble;
use drawwell_core::text::Texts;
use drawwell_core::trouble as inside;
use serde::Serialize;

/// What kind of trouble it is; stable, for programs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, uniffi::Enum)]
pub enum TroubleKind {
    /// What was given cannot be taken as it is.
    BadInput,
    /// Another program has the record open.
    Busy,
    /// The record may not be written here.
    ReadOnly,
    /// There is no room on the disk.
    Full,
    /// The record was written by a newer version.
    Newer,
    /// The file was damaged; it was set aside and what could be read was kept.
    Damaged,
    /// The record is sealed, and not with the key that was given. It lies where it lay.
    Locked,
    /// The file is not there, or may not be read.
    Missing,
    /// A fault of the program itself.
    Fault,
}

/// Why something could not be done: what, where, and what to do.
#[derive(Debug, Clone, PartialEq, Serialize, thiserror::Error, uniffi::Error)]
pub enum Trouble {
    /// The only kind: it tells its own story.
    #[error("{what} {what_to_do}")]
    Told {
        /// Stable kind.
        kind: TroubleKind,
        /// The field it is about, or empty.
        field: String,
        /// What is the matter, in the person's language.
        what: String,
        /// What the person can do.
        what_to_do: String,
    },
}

impl Trouble {
    /// Tells a trouble from inside.
    pub(crate) fn render(texts: &Texts, trouble: &inside::Trouble) -> Self {
        let (what, what_to_do) = words_of_trouble(texts, trouble);
        let kind = match trouble.kind {
            inside::Kind::BadInput => TroubleKind::BadInput,
            inside::Kind::Busy => TroubleKind::Busy,
            inside::Kind::ReadOnly => TroubleKind::ReadOnly,
            inside::Kind::Full => TroubleKind::Full,
            inside::Kind::Newer => TroubleKind::Newer,
            inside::Kind::Damaged => TroubleKind::Damaged,
            inside::Kind::Locked => TroubleKind::Locked,
            inside::Kind::Missing => TroubleKind::Missing,
            inside::Kind::Fault => TroubleKind::Fault,
        };
        Self::Told { kind, field: trouble.field.clone(), what, what_to_do }
    }
}
