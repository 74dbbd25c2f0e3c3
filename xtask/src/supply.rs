//! `cargo xtask supply`: what Supply makes of families with known truth, written
//! to `docs/supply.md`.

use crate::{keep, place::Places, process, stop::Stop};

/// Makes the tables; a number in `words` is how many families a row has.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    let mut tables = process::cargo(places);
    tables.args(["run", "--quiet", "--release", "-p", "drawwell-tests", "--bin", "supply-tables", "--"]).args(words);
    let told = process::output(&mut tables)?;
    keep::write_if_changed(&places.root().join("docs").join("supply.md"), told.as_bytes()).map(|_| ())
}
