//! `cargo xtask pictures DIR`: every screen as a picture, without a display.

use crate::{
    app, maven,
    place::{Build, Places},
    process,
    stop::Stop,
    tool::{self, Tool},
};

/// Runs the shell's picture program over the real core.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    let [folder] = words else {
        return Err(Stop::new("cargo xtask pictures DIR"));
    };
    let here = std::env::current_dir().map_err(|error| Stop::new(error.to_string()))?;
    let folder = here.join(folder);
    std::fs::create_dir_all(&folder).map_err(|error| Stop::at(&folder, &error))?;
    tool::need(places, &[Tool::Java, Tool::Maven])?;
    app::build(places)?;
    let words = [folder.display().to_string()];
    process::run(&mut maven::start(places, Build::Release, "drawwell.desktop.PicturesKt", &words)?)
}
