//! How Maven is asked to do something.

use std::{
    path::{Path, PathBuf},
    process::Command,
};

use crate::{
    place::{Build, Places},
    process,
    stop::Stop,
    tool::Tool,
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
    Ok(command)
}

/// Maven on a folder that stands by itself.
pub(crate) fn alone(places: &Places, folder: &Path) -> Result<Command, Stop> {
    let program = program(&places.app_shell()).ok_or_else(|| Stop::new(Tool::Maven.missing()))?;
    let mut command = process::command(places, program);
    command.args(["--batch-mode", "--no-transfer-progress", "--file"]).arg(folder.join("pom.xml"));
    Ok(command)
}
