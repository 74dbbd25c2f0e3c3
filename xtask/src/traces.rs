//! `cargo xtask traces`: what is said of traces with known truth, written into `docs/kit.md`.

use crate::{keep, place::Places, process, stop::Stop};

/// Between these lines of the page stands what is made.
const BEGINS: &str = "<!-- made by `cargo xtask traces` -->\n";
const ENDS: &str = "<!-- made until here -->\n";

/// Makes the table; a number in `words` is how many traces a row has. A bar that is not met stops it,
/// after the table was written.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    let mut tables = process::cargo(places);
    tables.args(["run", "--quiet", "--release", "-p", "drawwell-tests", "--bin", "trace-tables", "--"]).args(words);
    let told = process::output(&mut tables)?;
    let page = places.root().join("docs").join("kit.md");
    let text = std::fs::read_to_string(&page).map_err(|error| Stop::new(format!("{}: {error}", page.display())))?;
    let parts = text.split_once(BEGINS).and_then(|(before, rest)| Some((before, rest.split_once(ENDS)?.1)));
    let Some((before, after)) = parts else {
        return Err(Stop::new(format!("{} has no place for the table of traces", page.display())));
    };
    keep::write_if_changed(&page, format!("{before}{BEGINS}\n{told}\n{ENDS}{after}").as_bytes())?;
    match told.contains("**") {
        true => Err(Stop::new("a bar of the traces is not met: see the bold figures in docs/kit.md")),
        false => Ok(()),
    }
}
