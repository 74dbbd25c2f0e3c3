//! A record in a folder of its own, filled from the exchange form.

use drawwell_core::{
    journal::Journal,
    share::exchange::{export, import, Report},
    time::Instant,
};
use drawwell_tests::demo_family::present;
use tempfile::TempDir;

/// An empty record; its file goes when this does.
pub(crate) struct Record {
    journal: Journal,
    _folder: TempDir,
}

impl Record {
    pub(crate) fn empty() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let journal = Journal::open(&folder.path().join("journal.drawwell"), "test", now()).unwrap().journal;
        Self { journal, _folder: folder }
    }

    pub(crate) fn import(&mut self, file: &str) -> Report {
        import(&mut self.journal, &mut file.as_bytes(), now()).unwrap()
    }

    pub(crate) fn journal(&mut self) -> &mut Journal {
        &mut self.journal
    }

    pub(crate) fn export(&self) -> String {
        let mut out = Vec::new();
        export(&self.journal, &mut out).unwrap();
        String::from_utf8(out).unwrap()
    }
}

fn now() -> Instant {
    present().instant()
}
