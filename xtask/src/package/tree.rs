//! The tree that is installed: `bin`, `lib/drawwell`, `share`, under any prefix.

use std::{
    fs,
    hash::{DefaultHasher, Hash, Hasher},
    path::{Path, PathBuf},
};

use super::VERSION;
use crate::{java, keep, natives, place::Places, process, shell, stop::Stop};

/// Where it was laid out.
#[derive(Debug)]
pub(super) struct Tree {
    folder: PathBuf,
}

impl Tree {
    pub(super) fn folder(&self) -> &Path {
        &self.folder
    }

    pub(super) fn documents(&self) -> PathBuf {
        self.folder.join("share").join("doc").join("drawwell")
    }

    /// As one file, to be unpacked anywhere.
    pub(super) fn packed(&self) -> Result<PathBuf, Stop> {
        let name = format!("drawwell-{VERSION}-{}-{}.tar.gz", std::env::consts::OS, std::env::consts::ARCH);
        let file = self.folder.with_file_name(name);
        let parent = self.folder.parent().unwrap_or(&self.folder);
        let mut tar = std::process::Command::new("tar");
        tar.args(["--owner=0", "--group=0", "--numeric-owner", "--sort=name", "-czf"]).arg(&file);
        tar.arg("-C").arg(parent).arg(self.folder.file_name().unwrap_or_default());
        process::run(&mut tar)?;
        Ok(file)
    }
}

/// What the files of `app-shell/desktop/package` leave open.
pub(super) fn filled(text: &str, with: &[(&str, &str)]) -> String {
    with.iter().fold(text.to_owned(), |text, (name, value)| text.replace(&format!("@{name}@"), value))
}

/// The shape of a file that stands in the work tree.
pub(super) fn template(places: &Places, name: &str) -> Result<String, Stop> {
    let path = templates(places).join(name);
    fs::read_to_string(&path).map_err(|error| Stop::at(&path, &error))
}

fn templates(places: &Places) -> PathBuf {
    places.app_shell().join("desktop").join("package")
}

pub(super) fn lay_out(places: &Places, library: &Path) -> Result<Tree, Stop> {
    let folder = places.packages().join(format!("drawwell-{VERSION}"));
    let own = folder.join("lib").join("drawwell");
    let app = own.join("app");
    fs::create_dir_all(&app).map_err(|error| Stop::at(&app, &error))?;
    copy(library, &own.join(library.file_name().unwrap_or_default()))?;

    let jars = shell::jars(places)?;
    let mut names = Vec::new();
    for jar in &jars {
        let name = jar.file_name().unwrap_or_default();
        copy(jar, &app.join(name))?;
        names.push(name.to_string_lossy().into_owned());
    }
    natives::unpack(&jars, &own)?;
    runtime(places, &jars, &own.join("runtime"))?;
    launcher(places, &folder, &names, &jars)?;
    shared(places, &folder)?;
    let tree = Tree { folder };
    let documents = tree.documents();
    keep::write_if_changed(&documents.join("copyright"), template(places, "copyright.txt")?.as_bytes())?;
    copy(&places.root().join("LICENSE"), &documents.join("LICENSE"))?;
    fs::rename(own.join("runtime").join("legal"), documents.join("legal"))
        .map_err(|error| Stop::at(&documents.join("legal"), &error))?;
    Ok(tree)
}

/// Only those parts of Java that the jars ask for, by jdeps.
fn runtime(places: &Places, jars: &[PathBuf], to: &Path) -> Result<(), Stop> {
    let path = std::env::join_paths(jars).map_err(|error| Stop::new(error.to_string()))?;
    let mut asked = process::command(places, java::beside("jdeps"));
    asked.args(["--multi-release", "17", "--ignore-missing-deps", "--print-module-deps", "-cp"]).arg(&path).args(jars);
    let told = process::output(&mut asked)?;
    let modules = told.lines().rfind(|line| line.contains("java.base")).unwrap_or_default().trim().to_owned();
    if modules.is_empty() {
        return Err(Stop::new("jdeps did not say which parts of Java the shell needs"));
    }
    let mut link = process::command(places, java::beside("jlink"));
    link.args(["--add-modules", &modules, "--strip-debug", "--no-header-files", "--no-man-pages", "--compress=2"]);
    process::run(link.arg("--output").arg(to))?;
    // Its own classes, read ahead: what the launcher keeps of ours stands on it.
    let java = to.join("bin").join(format!("java{}", std::env::consts::EXE_SUFFIX));
    process::run(process::command(places, java).args(["-Xshare:dump", "-Xlog:disable", "-Xlog:all=error"]))
}

fn launcher(places: &Places, folder: &Path, names: &[String], jars: &[PathBuf]) -> Result<(), Stop> {
    let mut hash = DefaultHasher::new();
    VERSION.hash(&mut hash);
    keep::fingerprint(jars)?.hash(&mut hash);
    let build = format!("{:016x}", hash.finish());
    let class_path = names.iter().map(|name| format!("$here/app/{name}")).collect::<Vec<_>>().join(":");
    let text = filled(
        &template(places, "drawwell.sh")?,
        &[
            ("BUILD", &build),
            ("CLASSPATH", &class_path),
            ("QUICK", &shell::QUICK.join(" ")),
            ("NATIVES", &natives::settings("$here").map(|setting| format!("\"{setting}\"")).join(" ")),
            ("MAIN", shell::MAIN),
        ],
    );
    let path = folder.join("bin").join("drawwell");
    keep::write_if_changed(&path, text.as_bytes())?;
    executable(&path)
}

#[cfg(unix)]
pub(super) fn executable(path: &Path) -> Result<(), Stop> {
    use std::os::unix::fs::PermissionsExt;
    fs::set_permissions(path, fs::Permissions::from_mode(0o755)).map_err(|error| Stop::at(path, &error))
}

#[cfg(not(unix))]
pub(super) fn executable(_: &Path) -> Result<(), Stop> {
    Ok(())
}

/// Menu, file types, icon, description: by the desktop's own standards.
fn shared(places: &Places, folder: &Path) -> Result<(), Stop> {
    let share = folder.join("share");
    for name in ["drawwell.desktop", "drawwell-caseload.desktop", "drawwell-record.desktop"] {
        keep::write_if_changed(&share.join("applications").join(name), template(places, name)?.as_bytes())?;
    }
    let types = share.join("mime").join("packages").join("drawwell.xml");
    keep::write_if_changed(&types, template(places, "drawwell.mime.xml")?.as_bytes())?;
    let date = date(places)?;
    let told = filled(&template(places, "drawwell.metainfo.xml")?, &[("VERSION", VERSION), ("DATE", &date)]);
    keep::write_if_changed(&share.join("metainfo").join("drawwell.metainfo.xml"), told.as_bytes())?;
    let mark = places.app_shell().join("desktop").join("src/main/resources/drawwell/mark.svg");
    copy(&mark, &share.join("icons/hicolor/scalable/apps/drawwell.svg"))
}

/// The day of the commit, so that a second build says the same.
fn date(places: &Places) -> Result<String, Stop> {
    let told = process::output(process::command(places, "git").args(["log", "-1", "--format=%cs"]))?;
    Ok(told.trim().to_owned())
}

fn copy(from: &Path, to: &Path) -> Result<(), Stop> {
    if let Some(folder) = to.parent() {
        fs::create_dir_all(folder).map_err(|error| Stop::at(folder, &error))?;
    }
    fs::copy(from, to)
        .map(|_| ())
        .map_err(|error| Stop::new(format!("{} to {}: {error}", from.display(), to.display())))
}

#[cfg(test)]
mod tests {
    use super::filled;

    #[test]
    fn what_is_left_open_is_filled_and_nothing_else() {
        assert_eq!(filled("a @VERSION@, @ARCH@ @ b", &[("VERSION", "1"), ("ARCH", "x")]), "a 1, x @ b");
    }
}
