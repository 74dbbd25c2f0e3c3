//! `cargo xtask network`: an invented network taken in, every report of it, and the same reports
//! from the Parquet files by pandas and NumPy, and by Apache Spark from the same SQL.

use std::{fs, path::Path, process::Command, time::Instant};

use crate::{
    machine::{self, Tool},
    place::{Build, Places},
    process, python,
    stop::Stop,
};

/// Families where no number is given.
const FAMILIES: &str = "20000";

/// Makes them all; a number in `words` is how many families there are.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    machine::need(places, &[Tool::Make, Tool::Python, Tool::Java])?;
    let families = words.first().map_or(FAMILIES, String::as_str);
    process::run(process::cargo(places).args(["build", "--release", "--package", "drawwell-network"]))?;
    let home = places.network().join("invented");
    if home.exists() {
        fs::remove_dir_all(&home).map_err(|error| Stop::at(&home, &error))?;
    }
    let (desks, store, reports, key) =
        (home.join("desks"), home.join("store"), home.join("reports"), home.join("network.key"));
    fs::create_dir_all(&reports).map_err(|error| Stop::at(&reports, &error))?;
    let program = || process::command(places, places.program(Build::Release, "drawwell-network"));
    let told = process::output(program().arg("invent").arg(&desks).arg(families))?;
    let present = told.split_whitespace().last().unwrap_or_default();
    process::run(program().arg("key").arg(&key))?;
    for site in ["site-a", "site-b", "site-c", "site-d"] {
        let desk = desks.join(site);
        if desk.is_dir() {
            let mut take = program();
            take.arg("take-in").arg(&store).arg("--key").arg(&key).args(["--site", site, "--at", present]).arg(&desk);
            timed(site, &mut take)?;
        }
    }
    timed("verify", program().arg("verify").arg(&store))?;
    for report in names(&places.root().join("network").join("reports"))? {
        for ending in ["csv", "svg"] {
            let out = reports.join(format!("{report}.{ending}"));
            let mut make = program();
            make.args(["report", &report]).arg(&store).arg("--out").arg(&out).args(["--at", present]);
            timed(&report, &mut make)?;
        }
    }
    again(places, "python", "by_pandas.py", &store, &reports)?;
    again(places, "spark", "reports.py", &store, &reports)
}

/// The reports of a store by other means, in an environment of their own: what they are made with
/// is asked for by nothing else.
fn again(places: &Places, by: &str, script: &str, store: &Path, reports: &Path) -> Result<(), Stop> {
    let scripts = places.root().join("network").join(by);
    let program = python::environment(places, &places.network().join(by), &scripts.join("requirements.txt"))?;
    timed(by, process::command(places, program).arg(scripts.join(script)).arg(store).arg(reports))
}

/// The reports, by their files.
fn names(folder: &Path) -> Result<Vec<String>, Stop> {
    let all = fs::read_dir(folder).and_then(|all| all.map(|entry| Ok(entry?.path())).collect::<Result<Vec<_>, _>>());
    let mut all = all.map_err(|error| Stop::at(folder, &error))?;
    all.sort();
    Ok(all.iter().filter_map(|path| Some(path.file_stem()?.to_str()?.to_owned())).collect())
}

fn timed(what: &str, command: &mut Command) -> Result<(), Stop> {
    let start = Instant::now();
    process::run(command)?;
    println!("{what}: {:.2} s", start.elapsed().as_secs_f64());
    Ok(())
}
