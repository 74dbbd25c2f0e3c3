//! `cargo xtask bench`: the benchmarks, which stand in `tests/benches`.

use crate::{place::Places, process, python, stop::Stop};

/// Runs them; what is given goes on to Criterion, such as `--quick` or a name.
/// `statistics` alone runs those, and then times their peers in the same run.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    if let [only] = words {
        if only == "statistics" {
            benches(places, "statistics", &[])?;
            process::run(process::cargo(places).args(["build", "--release", "--bin", "drawwell-headless"]))?;
            python::prepare(places)?;
            return python::time_statistics(places);
        }
    }
    benches(places, "*", words)
}

fn benches(places: &Places, name: &str, words: &[String]) -> Result<(), Stop> {
    let mut bench = process::cargo(places);
    bench.args(["bench", "-p", "drawwell-tests", "--bench", name, "--"]).args(words);
    process::run(&mut bench)
}
