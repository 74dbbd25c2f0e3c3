//! Classes in the form that a phone runs. Those of others are translated once
//! and kept: that takes a minute, ours seconds.

use std::{
    fs,
    path::{Path, PathBuf},
    process::Command,
};

use super::{
    archive::{self, Entry},
    room,
};
use crate::{java, keep, place::Places, process, stop::Stop};

/// Written by us, or made from what is.
const OURS: [&str; 2] = ["surface", "android"];

/// Every class the package needs, and the lists by which services are found.
pub(crate) fn translate(places: &Places) -> Result<Vec<Entry>, Stop> {
    let folder = room::packages(places);
    fs::create_dir_all(&folder).map_err(|error| Stop::at(&folder, &error))?;
    let others = others(places, &folder)?;
    let ours: Vec<PathBuf> = OURS.iter().map(|module| jar(places, module)).collect();

    let translated = folder.join("others.zip");
    let (stamp, now) = (folder.join("others.txt"), keep::fingerprint(&others)?);
    if !translated.is_file() || !fs::read_to_string(&stamp).is_ok_and(|then| then == now) {
        process::run(d8(places).arg("--output").arg(&translated).args(&others))?;
        keep::write_if_changed(&stamp, now.as_bytes())?;
    }
    let own = folder.join("own.zip");
    let mut translate = d8(places);
    for jar in &others {
        translate.arg("--classpath").arg(jar);
    }
    process::run(translate.arg("--output").arg(&own).args(&ours))?;

    let mut entries = numbered(archive::entries(&own)?.into_iter().chain(archive::entries(&translated)?));
    for jar in others.iter().chain(&ours) {
        entries.extend(archive::entries(jar)?.into_iter().filter(|(name, _)| name.starts_with("META-INF/services/")));
    }
    Ok(entries)
}

fn jar(places: &Places, module: &str) -> PathBuf {
    room::target(places, module).join(format!("{module}-{}.jar", env!("CARGO_PKG_VERSION")))
}

/// What Maven found that the host runs on, and JNA as it is made for phones.
fn others(places: &Places, folder: &Path) -> Result<Vec<PathBuf>, Stop> {
    let jna = folder.join("jna.jar");
    let classes = archive::entries(&room::tool(places, "jna.aar"))?.into_iter().find(|(name, _)| name == "classes.jar");
    let (_, classes) = classes.ok_or_else(|| Stop::new("JNA's archive holds no classes"))?;
    keep::write_if_changed(&jna, &classes)?;
    let mut found = room::within(&room::target(places, "android").join("libraries"))?;
    found.retain(|path| !OURS.iter().any(|ours| jar(places, ours).file_name() == path.file_name()));
    found.push(jna);
    Ok(found)
}

fn d8(places: &Places) -> Command {
    let mut d8 = process::command(places, java::program());
    d8.arg("-cp").arg(room::tool(places, "r8.jar")).arg("com.android.tools.r8.D8");
    d8.args(["--release", "--min-api", "26", "--lib"]).arg(room::tool(places, "framework.jar"));
    d8
}

/// A phone reads `classes.dex`, `classes2.dex` and so on, up to the first that is not there.
fn numbered(entries: impl Iterator<Item = Entry>) -> Vec<Entry> {
    let classes = entries.filter(|(name, _)| name.ends_with(".dex")).enumerate();
    classes
        .map(|(before, (_, bytes))| match before {
            0 => ("classes.dex".to_owned(), bytes),
            _ => (format!("classes{}.dex", before + 1), bytes),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::numbered;

    #[test]
    fn classes_are_numbered_without_a_gap() {
        let entries = ["classes.dex", "notes.txt", "classes.dex", "classes2.dex"].map(|name| (name.to_owned(), vec![]));
        let names: Vec<String> = numbered(entries.into_iter()).into_iter().map(|(name, _)| name).collect();
        assert_eq!(names, ["classes.dex", "classes2.dex", "classes3.dex"]);
    }
}
