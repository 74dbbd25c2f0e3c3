//! Java's own archive of loaded classes: with it the window is there in a third of the time.
//!
//! The first start writes it when the window closes, later ones read it. Java checks that it
//! fits the jars and the Java that wrote it, and starts without it where it does not.

use std::{fs, path::PathBuf};

use crate::place::Places;

/// What a start is given, and what is to be done when it has ended.
#[derive(Debug)]
pub(crate) struct Archive {
    kept: PathBuf,
    written: Option<PathBuf>,
}

impl Archive {
    /// The one that was kept, or one to be written.
    pub(crate) fn of(places: &Places) -> Self {
        let kept = kept(places);
        let written = (!kept.is_file()).then(|| kept.with_extension(format!("{}.fresh", std::process::id())));
        Self { kept, written }
    }

    /// Settings for Java.
    pub(crate) fn settings(&self) -> Vec<String> {
        let how = match &self.written {
            Some(fresh) => format!("-XX:ArchiveClassesAtExit={}", fresh.display()),
            None => format!("-XX:SharedArchiveFile={}", self.kept.display()),
        };
        // What Java has to say of classes it leaves out is for nobody here.
        vec![how, "-Xlog:cds=off".to_owned(), "-Xlog:cds+dynamic=off".to_owned()]
    }

    /// Kept only when the program has ended by itself: one that was killed may have left half of one.
    pub(crate) fn keep(&self, ended_well: bool) {
        if let Some(fresh) = &self.written {
            let _ = if ended_well { fs::rename(fresh, &self.kept) } else { fs::remove_file(fresh) };
        }
    }
}

/// Another shell was built: its classes are read anew.
pub(crate) fn forget(places: &Places) {
    let _ = fs::remove_file(kept(places));
}

fn kept(places: &Places) -> PathBuf {
    places.scratch().join("classes.jsa")
}
