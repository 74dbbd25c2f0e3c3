//! `cargo xtask bench`: the benchmarks, which stand in `tests/benches`.

use crate::{place::Places, process, stop::Stop};

/// Runs them; what is given goes on to Criterion, such as `--quick` or a name.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    let mut bench = process::cargo(places);
    bench.args(["bench", "-p", "drawwell-tests", "--bench", "*", "--"]).args(words);
    process::run(&mut bench)
}
