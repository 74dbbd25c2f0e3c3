//! A part of a page that a program makes, between two marks.

use std::process::Command;

use crate::{keep, place::Places, process, stop::Stop};

const ENDS: &str = "<!-- made until here -->\n";

/// Runs a program that writes tables and puts what it says into a page of `docs`, where it says that `command` makes
/// it. A bar that is not met is bold there, and stops it after the page was written.
pub(crate) fn make(places: &Places, program: &mut Command, command: &str, page: &str) -> Result<(), Stop> {
    let told = process::output(program)?;
    let begins = format!("<!-- made by `cargo xtask {command}` -->\n");
    let path = places.root().join("docs").join(page);
    let text = std::fs::read_to_string(&path).map_err(|error| Stop::new(format!("{}: {error}", path.display())))?;
    let parts = text.split_once(&begins).and_then(|(before, rest)| Some((before, rest.split_once(ENDS)?.1)));
    let Some((before, after)) = parts else {
        return Err(Stop::new(format!("{} has no place for what {command} makes", path.display())));
    };
    keep::write_if_changed(&path, format!("{before}{begins}\n{told}\n{ENDS}{after}").as_bytes())?;
    match told.contains("**") {
        true => Err(Stop::new(format!("a bar is not met: see what is bold in docs/{page}"))),
        false => Ok(()),
    }
}
