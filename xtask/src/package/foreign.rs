//! What jpackage makes on macOS (`.dmg`) and Windows (`.msi`). Not tried: there was no such
//! machine where this was written.

use std::{
    fs,
    path::{Path, PathBuf},
};

use super::VERSION;
use crate::{java, natives, place::Places, process, shell, stop::Stop};

/// File types by their endings, as `app-shell/desktop/package/drawwell.mime.xml` names them.
const OPENED: [(&str, &str); 3] =
    [("drawwell", "record"), ("drawwell-family", "record sealed for a consultant"), ("drawwell-plan", "plan")];

pub(super) fn make(places: &Places, library: &Path) -> Result<Vec<PathBuf>, Stop> {
    let input = places.packages().join("input");
    fs::create_dir_all(&input).map_err(|error| Stop::at(&input, &error))?;
    let mut files = shell::jars(places)?;
    files.push(library.to_path_buf());
    for file in &files {
        let to = input.join(file.file_name().unwrap_or_default());
        fs::copy(file, &to).map_err(|error| Stop::at(&to, &error))?;
    }
    let main = files.first().and_then(|jar| jar.file_name()).unwrap_or_default();
    let kind = if cfg!(windows) { "msi" } else { "dmg" };
    let mut pack = process::command(places, java::beside("jpackage"));
    pack.args(["--type", kind, "--name", "Drawwell", "--app-version", VERSION, "--main-class", shell::MAIN]);
    pack.arg("--input").arg(&input).arg("--main-jar").arg(main).arg("--dest").arg(places.packages());
    pack.args(["--license-file"]).arg(places.root().join("LICENSE"));
    natives::unpack(&shell::jars(places)?, &input)?;
    let found = ["-Djna.library.path=$APPDIR".to_owned()].into_iter().chain(natives::settings("$APPDIR"));
    for setting in shell::QUICK.iter().map(|&it| it.to_owned()).chain(found) {
        pack.args(["--java-options", &setting]);
    }
    for (ending, told) in OPENED {
        let file = places.packages().join(format!("{ending}.properties"));
        let text = format!("extension={ending}\nmime-type=application/x-{ending}\ndescription=Drawwell {told}\n");
        fs::write(&file, text).map_err(|error| Stop::at(&file, &error))?;
        pack.arg("--file-associations").arg(&file);
    }
    process::run(&mut pack)?;
    let made = fs::read_dir(places.packages()).map_err(|error| Stop::at(&places.packages(), &error))?;
    Ok(made.flatten().map(|entry| entry.path()).filter(|path| path.extension().is_some_and(|it| it == kind)).collect())
}
