//! Running another program, with its output left where the person can read it.

use std::{
    ffi::OsStr,
    process::{Command, ExitStatus},
};

use crate::{place::Places, stop::Stop};

/// A command that starts in the work tree's root.
pub(crate) fn command(places: &Places, program: impl AsRef<OsStr>) -> Command {
    let mut command = Command::new(program);
    command.current_dir(places.root());
    // Cargo told these to this program; another Cargo would take them for its own.
    for (name, _) in std::env::vars_os() {
        let told = name.to_str().is_some_and(|name| {
            ["CARGO_PKG_", "CARGO_MANIFEST_", "CARGO_BIN_", "CARGO_CRATE_"].iter().any(|it| name.starts_with(it))
        });
        if told {
            command.env_remove(name);
        }
    }
    // A program that takes the environment for ASCII can't name a folder with an umlaut.
    let locale =
        ["LC_ALL", "LC_CTYPE", "LANG"].iter().filter_map(|name| std::env::var(name).ok()).find(|it| !it.is_empty());
    if cfg!(unix) && !locale.is_some_and(|locale| speaks_utf8(&locale)) {
        command.env("LC_ALL", "C.UTF-8");
    }
    command
}

fn speaks_utf8(locale: &str) -> bool {
    let locale = locale.to_lowercase();
    locale.contains("utf-8") || locale.contains("utf8")
}

/// Cargo, the one that started this program.
pub(crate) fn cargo(places: &Places) -> Command {
    command(places, std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
}

/// Runs to the end; anything but success stops the work, with the command in the message.
pub(crate) fn run(command: &mut Command) -> Result<(), Stop> {
    let status = status(command)?;
    if status.success() {
        Ok(())
    } else {
        Err(Stop::new(format!("{}: {status}", line(command))))
    }
}

/// Runs to the end and tells how it ended.
pub(crate) fn status(command: &mut Command) -> Result<ExitStatus, Stop> {
    command.status().map_err(|error| Stop::new(format!("{}: {error}", line(command))))
}

/// Runs to the end and gives what it wrote; what it complains of is left where it is read.
pub(crate) fn output(command: &mut Command) -> Result<String, Stop> {
    let told = command.stderr(std::process::Stdio::inherit()).output();
    let told = told.map_err(|error| Stop::new(format!("{}: {error}", line(command))))?;
    if !told.status.success() {
        return Err(Stop::new(format!("{}: {}", line(command), told.status)));
    }
    Ok(String::from_utf8_lossy(&told.stdout).into_owned())
}

/// What a person would type to run it.
fn line(command: &Command) -> String {
    let mut words = vec![command.get_program().to_string_lossy().into_owned()];
    words.extend(command.get_args().map(|word| word.to_string_lossy().into_owned()));
    words.join(" ")
}
