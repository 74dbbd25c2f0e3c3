//! How Maven is asked to do something.

use std::{
    fs,
    path::{Path, PathBuf},
    process::Command,
};

use crate::{
    android, java,
    place::{Build, Places},
    process, proxy,
    stop::Stop,
};

/// Maven itself, or the wrapper that stands in `app-shell`.
pub(crate) fn program(app_shell: &Path) -> Option<PathBuf> {
    let (wrapper, installed) = if cfg!(windows) { ("mvnw.cmd", "mvn.cmd") } else { ("mvnw", "mvn") };
    let wrapper = app_shell.join(wrapper);
    if wrapper.is_file() {
        return Some(wrapper);
    }
    // Looked for, not asked: it can't answer where Java is missing, and that is another line.
    let path = std::env::var_os("PATH")?;
    std::env::split_paths(&path).map(|folder| folder.join(installed)).find(|program| program.is_file())
}

/// Maven on the whole of `app-shell`, knowing where the native library lies.
pub(crate) fn command(places: &Places, build: Build) -> Result<Command, Stop> {
    let mut command = alone(places, &places.app_shell())?;
    command.arg(format!("-Ddrawwell.library={}", places.library_folder(build).display()));
    command.arg(format!("-Dlinked={}", android::linked(places).display()));
    Ok(command)
}

/// Maven on a folder that stands by itself.
pub(crate) fn alone(places: &Places, folder: &Path) -> Result<Command, Stop> {
    let program = program(&places.app_shell()).ok_or_else(|| Stop::new("Maven is missing"))?;
    let mut command = process::command(places, program);
    command.args(["--batch-mode", "--no-transfer-progress", "--file"]).arg(folder.join("pom.xml"));
    if let Some(home) = java::home() {
        command.env("JAVA_HOME", home);
    }
    if let Some(elsewhere) = own_repository(places) {
        command.arg(format!("-Dmaven.repo.local={}", elsewhere.display()));
    }
    command.args(proxy::for_java());
    Ok(command)
}

/// Where Maven keeps what it fetched, when the home can't be written to.
fn own_repository(places: &Places) -> Option<PathBuf> {
    let home = PathBuf::from(std::env::var_os(if cfg!(windows) { "USERPROFILE" } else { "HOME" })?);
    let usual = home.join(".m2").join("repository");
    let tried = usual.join(format!("drawwell-{}.tmp", std::process::id()));
    let written = fs::create_dir_all(&usual).and_then(|()| fs::write(&tried, b""));
    let _ = fs::remove_file(&tried);
    written.is_err().then(|| places.scratch().join("maven"))
}
