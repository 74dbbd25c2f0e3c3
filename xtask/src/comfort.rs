//! `cargo xtask comfort`: what Comfort makes of families with known truth, written into
//! `docs/comfort.md`.

use crate::{page_part, place::Places, process, stop::Stop};

/// Makes the tables; a number in `words` is how many families a row has.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    let mut tables = process::cargo(places);
    tables.args(["run", "--quiet", "--release", "-p", "drawwell-tests", "--bin", "comfort-tables", "--"]).args(words);
    page_part::make(places, &mut tables, "comfort", "comfort.md")
}
