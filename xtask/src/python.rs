//! The Python that the surface is tried in: one of the project's own, so that
//! nothing depends on what else the machine has.

use std::{
    path::{Path, PathBuf},
    process::Command,
};

use crate::{
    keep,
    place::{Build, Places},
    process,
    stop::Stop,
};

/// What the machine calls its own Python.
pub(crate) const SYSTEM: &str = if cfg!(windows) { "python" } else { "python3" };

/// Where tests and timings find the headless runner.
const RUNNER: &str = "DRAWWELL_HEADLESS";

/// Makes it where it is not, and installs what the tests ask for when that changed.
pub(crate) fn prepare(places: &Places) -> Result<(), Stop> {
    environment(places, &places.python_home(), &places.python_tests().join("requirements.txt")).map(|_| ())
}

/// An environment that holds what a file asks for; its Python.
pub(crate) fn environment(places: &Places, home: &Path, wanted: &Path) -> Result<PathBuf, Stop> {
    let now = keep::fingerprint(&[wanted.to_path_buf()])?;
    let stamp = home.join("made-from.txt");
    let program = program_in(home);
    if std::fs::read_to_string(&stamp).is_ok_and(|then| then == now) {
        return Ok(program);
    }
    process::run(process::command(places, SYSTEM).args(["-m", "venv", "--clear"]).arg(home))?;
    let mut install = process::command(places, &program);
    install.args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--requirement"]);
    process::run(install.arg(wanted))?;
    keep::write_if_changed(&stamp, now.as_bytes())?;
    Ok(program)
}

/// pytest over the tests of the surface, which it finds on the module path.
pub(crate) fn tests(places: &Places) -> Result<(), Stop> {
    let mut pytest: Command = process::command(places, program(places));
    pytest.args(["-m", "pytest", "-p", "no:cacheprovider", "--rootdir"]).arg(places.root());
    pytest.arg(places.python_tests());
    pytest.env("PYTHONPATH", places.python_surface()).env("PYTHONDONTWRITEBYTECODE", "1");
    pytest.env(RUNNER, places.program(Build::Debug, "drawwell-headless"));
    // Zones as the pinned tzdata has them, not as this machine does.
    pytest.env("PYTHONTZPATH", "");
    process::run(&mut pytest)
}

/// The program's statistics, of the release build, timed beside those of the libraries.
pub(crate) fn time_statistics(places: &Places) -> Result<(), Stop> {
    let mut time = process::command(places, program(places));
    time.arg(places.python_tests().join("time_statistics.py"));
    process::run(time.env(RUNNER, places.program(Build::Release, "drawwell-headless")))
}

fn program(places: &Places) -> PathBuf {
    program_in(&places.python_home())
}

fn program_in(home: &Path) -> PathBuf {
    let folder = if cfg!(windows) { "Scripts" } else { "bin" };
    home.join(folder).join(format!("python{}", std::env::consts::EXE_SUFFIX))
}
