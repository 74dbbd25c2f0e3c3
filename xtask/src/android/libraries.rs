//! AndroidX comes in archives that hold a jar, resources and a manifest.
//! Their classes go together into one folder that Maven makes a jar of, their
//! resources are compiled one by one, and the packages that want names for
//! their resources are written down.

use std::{
    collections::{btree_map::Entry as Slot, BTreeMap, BTreeSet},
    fs,
    path::Path,
};

use super::{archive, resources, room};
use crate::{
    keep, maven,
    place::{Build, Places},
    process,
    stop::Stop,
};

/// Fetches and lays out both modules. What is laid out already stays.
pub(crate) fn lay_out(places: &Places) -> Result<(), Stop> {
    let mut stale = Vec::new();
    for module in [room::LIBRARIES, room::TEST_LIBRARIES] {
        if !is_laid_out(places, module)? {
            room::fresh(&room::target(places, module))?;
            stale.push(module);
        }
    }
    if stale.is_empty() {
        return Ok(());
    }
    let mut fetch = maven::command(places, Build::Debug)?;
    process::run(fetch.args(["--quiet", "--projects", &stale.join(","), "initialize"]))?;
    for module in stale {
        lay_together(&room::target(places, module))?;
        keep::write_if_changed(&stamp(places, module), made_from(places, module)?.as_bytes())?;
    }
    Ok(())
}

fn is_laid_out(places: &Places, module: &str) -> Result<bool, Stop> {
    let now = made_from(places, module)?;
    Ok(fs::read_to_string(stamp(places, module)).is_ok_and(|then| then == now))
}

fn stamp(places: &Places, module: &str) -> std::path::PathBuf {
    room::target(places, module).join("made-from.txt")
}

/// The two files that name every archive and its version.
fn made_from(places: &Places, module: &str) -> Result<String, Stop> {
    let shell = places.app_shell();
    keep::fingerprint(&[shell.join("pom.xml"), shell.join(module).join("pom.xml")])
}

fn lay_together(target: &Path) -> Result<(), Stop> {
    let mut classes = BTreeMap::new();
    let mut packages = BTreeSet::new();
    for path in room::within(&target.join("archives"))? {
        let name = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let files = archive::entries(&path)?;
        if path.extension().is_some_and(|it| it == "jar") {
            gather(&mut classes, files)?;
            continue;
        }
        packages.extend(named(&files));
        for (file, bytes) in files {
            if file == "classes.jar" || (file.starts_with("libs/") && file.ends_with(".jar")) {
                gather(&mut classes, archive::entries_in(&file, bytes)?)?;
            } else if file.starts_with("jni/") {
                keep::write_if_changed(&target.join(&file), &bytes)?;
            } else if let Some(resource) = file.strip_prefix("res/") {
                keep::write_if_changed(&target.join("res").join(&name).join(resource), &bytes)?;
            }
        }
        resources::compile(&target.join("res").join(&name), &target.join("compiled").join(format!("{name}.flata")))?;
    }
    for (file, bytes) in &classes {
        keep::write_if_changed(&target.join("classes").join(file), bytes)?;
    }
    let packages: Vec<String> = packages.into_iter().collect();
    keep::write_if_changed(&target.join("packages.txt"), packages.join(":").as_bytes()).map(|_| ())
}

/// Takes in what a jar holds. Lists of services are joined; a class is in one jar.
fn gather(classes: &mut BTreeMap<String, Vec<u8>>, files: Vec<archive::Entry>) -> Result<(), Stop> {
    for (name, bytes) in files {
        if name.ends_with("module-info.class") {
            continue;
        }
        match classes.entry(name) {
            Slot::Vacant(slot) => {
                slot.insert(bytes);
            }
            Slot::Occupied(mut slot) if slot.key().starts_with("META-INF/services/") => {
                slot.get_mut().push(b'\n');
                slot.get_mut().extend(bytes);
            }
            Slot::Occupied(slot) if slot.key().ends_with(".class") => {
                return Err(Stop::new(format!("two archives hold {}", slot.key())));
            }
            Slot::Occupied(_) => {}
        }
    }
    Ok(())
}

/// The package of an archive that has names for resources.
fn named(files: &[archive::Entry]) -> Option<String> {
    let text = |wanted: &str| files.iter().find(|(name, _)| name == wanted).map(|(_, it)| String::from_utf8_lossy(it));
    text("R.txt").filter(|names| !names.is_empty())?;
    let manifest = text("AndroidManifest.xml")?;
    manifest.split("package=\"").nth(1)?.split('"').next().map(str::to_owned)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(name: &str, text: &str) -> archive::Entry {
        (name.to_owned(), text.as_bytes().to_vec())
    }

    #[test]
    fn an_archive_is_named_where_it_names_resources() {
        let manifest = file("AndroidManifest.xml", "<manifest a=\"b\" package=\"some.part\" >");
        assert_eq!(named(&[manifest.clone(), file("R.txt", "int id x 0x0")]), Some("some.part".into()));
        assert_eq!(named(&[manifest, file("R.txt", "")]), None);
        assert_eq!(named(&[file("R.txt", "int id x 0x0")]), None);
    }

    #[test]
    fn lists_of_services_are_joined_and_a_class_is_not_taken_twice() {
        let mut classes = BTreeMap::new();
        gather(&mut classes, vec![file("META-INF/services/it", "one"), file("a/module-info.class", "x")]).unwrap();
        gather(&mut classes, vec![file("META-INF/services/it", "two"), file("a/A.class", "a")]).unwrap();
        assert!(gather(&mut classes, vec![file("a/A.class", "a")]).is_err());
        let all: Vec<_> = classes.into_iter().collect();
        assert_eq!(all, vec![file("META-INF/services/it", "one\ntwo"), file("a/A.class", "a")]);
    }
}
