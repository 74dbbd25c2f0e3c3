//! `cargo xtask app`: everything from the core to the open window.

use crate::{
    class_archive::Archive,
    display,
    machine::{self, Tool},
    place::Places,
    process, shell,
    stop::Stop,
    tour,
};

/// Builds core, surface and shell, and opens the shell with the words given. Where no window
/// can be opened it takes the tour instead.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    if !display::is_there() {
        println!("There is no display here (DISPLAY and WAYLAND_DISPLAY are empty): a tour is drawn instead.");
        return tour::run(places, &[]);
    }
    machine::need(places, &[shell::DRAWS, &[Tool::Window]].concat())?;
    shell::build(places)?;
    let archive = Archive::of(places);
    let settings = archive.settings();
    let settings: Vec<&str> = settings.iter().map(String::as_str).collect();
    let mut window = shell::program(places, &settings)?;
    // Files are named from where the person stands.
    let ended = process::status(window.args(words).current_dir("."))?;
    archive.keep(ended.success());
    match ended.code() {
        Some(0) => Ok(()),
        Some(display::NO_WINDOW) => {
            println!("A tour is drawn instead.");
            tour::run(places, &[])
        }
        _ => Err(Stop::new(format!("Drawwell: {ended}"))),
    }
}
