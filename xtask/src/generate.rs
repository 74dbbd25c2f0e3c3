//! Asking the generator for the surface in another language.

use std::{
    fs, io,
    path::{Path, PathBuf},
};

use crate::{
    keep,
    place::{Build, Places},
    process,
    stop::Stop,
};

/// A language that the surface is spoken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Language {
    Kotlin,
    Python,
}

impl Language {
    fn name(self) -> &'static str {
        match self {
            Self::Kotlin => "kotlin",
            Self::Python => "python",
        }
    }

    fn ending(self) -> &'static str {
        match self {
            Self::Kotlin => "kt",
            Self::Python => "py",
        }
    }

    fn folder(self, places: &Places) -> PathBuf {
        match self {
            Self::Kotlin => places.kotlin_surface(),
            Self::Python => places.python_surface(),
        }
    }
}

/// Writes one face of the surface from a library that is built already.
/// Nothing is touched where the library, its settings and the generator are
/// those of the last time.
pub(crate) fn write(places: &Places, build: Build, language: Language) -> Result<(), Stop> {
    let (library, config) = (places.library(build), places.surface_config());
    let generator = places.program(Build::Debug, "drawwell-generator");
    let (folder, ending) = (language.folder(places), language.ending());
    let now = keep::fingerprint(&[library.clone(), config.clone(), generator.clone()])?;
    let stamp = folder.join("made-from.txt");
    if fs::read_to_string(&stamp).is_ok_and(|then| then == now) && !keep::below(&folder, ending)?.is_empty() {
        return Ok(());
    }
    let fresh = places.scratch().join(language.name());
    empty(&fresh)?;
    let mut generator = process::command(places, generator);
    generator.arg("generate").arg(library).args(["--language", language.name(), "--no-format"]);
    generator.arg("--metadata-no-deps").arg("--out-dir").arg(&fresh).arg("--config").arg(config);
    process::run(&mut generator)?;
    let touched = keep::mirror(&fresh, &folder, ending)?;
    keep::write_if_changed(&stamp, now.as_bytes())?;
    println!("{} surface: {}", language.name(), if touched == 0 { "unchanged" } else { "written" });
    Ok(())
}

fn empty(folder: &Path) -> Result<(), Stop> {
    match fs::remove_dir_all(folder) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(Stop::at(folder, &error)),
        _ => fs::create_dir_all(folder).map_err(|error| Stop::at(folder, &error)),
    }
}
