//! `cargo xtask traces`: what is said of traces with known truth, written into `docs/kit.md`.

use crate::{page_part, place::Places, process, stop::Stop};

/// Makes the table; a number in `words` is how many traces a row has.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    let mut tables = process::cargo(places);
    tables.args(["run", "--quiet", "--release", "-p", "drawwell-tests", "--bin", "trace-tables", "--"]).args(words);
    page_part::make(places, &mut tables, "traces", "kit.md")
}
