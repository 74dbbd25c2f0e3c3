//! The step that keeps the house in one direction.
//!
//! In: the picture in DEVELOPERS.md and the sources of core. Out: nothing, or every import that
//! points back and every circle of files, with both ends. [`picture`] says what may stand on
//! what, [`source`] reads one file, [`house`] puts them together, [`check`] tells what is wrong.

mod check;
mod house;
mod picture;
mod source;

use std::{
    fs,
    path::{Path, PathBuf},
};

use crate::{place::Places, stop::Stop, workspace};
use house::House;
use picture::Picture;

/// Fails where an arrow points back or files run in a circle.
pub(crate) fn run(places: &Places) -> Result<(), Stop> {
    let page = read(&places.root().join("DEVELOPERS.md"))?;
    let picture = Picture::read(&page).map_err(|why| Stop::new(format!("DEVELOPERS.md: {why}")))?;
    let mut house = House::default();
    for (name, folder) in crates(&places.root().join("core"))? {
        walk(places.root(), &folder, &mut vec![name], &mut house)?;
    }
    let mut faults = check::faults(&house, &picture);
    let there =
        |room: &str| house.files.iter().any(|file| file.room() == Some(room)) || places.root().join(room).is_dir();
    faults.extend(
        picture.rooms().filter(|room| !there(room)).map(|room| format!("the picture shows {room}, which is not there")),
    );
    faults
        .extend(stores(places)?.map(|store| format!("{WITHOUT_A_STORE} is built of {store}, and is to need no store")));
    if faults.is_empty() {
        println!("{} files, in one direction; {WITHOUT_A_STORE} without a store", house.files.len());
        return Ok(());
    }
    Err(Stop::new(format!("{}\n{} in all", faults.join("\n"), faults.len())))
}

/// The crate of the answers: what stands on it for many records needs no store.
const WITHOUT_A_STORE: &str = "drawwell-answers";

/// Stores that the answers would be built of.
fn stores(places: &Places) -> Result<impl Iterator<Item = String>, Stop> {
    Ok(workspace::built_of(places, WITHOUT_A_STORE)?.into_iter().filter(|name| name.contains("sqlite")))
}

/// The crates that core is made of: their names as code writes them, and their sources.
fn crates(core: &Path) -> Result<Vec<(String, PathBuf)>, Stop> {
    let mut found = Vec::new();
    let mut folders = vec![core.to_path_buf()];
    folders.extend(entries(core)?.into_iter().filter(|path| path.is_dir()));
    for folder in folders {
        let manifest = folder.join("Cargo.toml");
        if !manifest.is_file() {
            continue;
        }
        let text = read(&manifest)?;
        let name = text.lines().find_map(|line| line.strip_prefix("name = ")).unwrap_or_default();
        found.push((name.trim_matches('"').replace('-', "_"), folder.join("src")));
    }
    Ok(found)
}

fn walk(root: &Path, folder: &Path, path: &mut Vec<String>, house: &mut House) -> Result<(), Stop> {
    for entry in entries(folder)? {
        let stem = entry.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
        if entry.is_dir() {
            path.push(stem);
            walk(root, &entry, path, house)?;
            path.pop();
        } else if entry.extension().is_some_and(|it| it == "rs") {
            let mut module = path.clone();
            if stem != "mod" && stem != "lib" {
                module.push(stem);
            }
            let name = entry.strip_prefix(root).unwrap_or(&entry).display().to_string();
            house.add(&name, module, &read(&entry)?).map_err(Stop::new)?;
        }
    }
    Ok(())
}

fn entries(folder: &Path) -> Result<Vec<PathBuf>, Stop> {
    let all = fs::read_dir(folder).and_then(|all| all.map(|entry| Ok(entry?.path())).collect::<Result<Vec<_>, _>>());
    let mut all = all.map_err(|error| Stop::at(folder, &error))?;
    all.sort();
    Ok(all)
}

fn read(path: &Path) -> Result<String, Stop> {
    fs::read_to_string(path).map_err(|error| Stop::at(path, &error))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PICTURE: &str = "## The rooms\n```\ncellar → hall → attic\n```";

    fn faults(files: &[(&str, &str)]) -> Vec<String> {
        let mut house = House::default();
        for (name, text) in files {
            let path = name.trim_end_matches(".rs").trim_end_matches("/mod");
            let words = ["house"].into_iter().chain(path.split('/').filter(|word| *word != "lib"));
            house.add(name, words.map(str::to_owned).collect(), text).unwrap();
        }
        check::faults(&house, &Picture::read(PICTURE).unwrap())
    }

    #[test]
    fn what_looks_down_is_well() {
        let files = [
            ("lib.rs", "pub mod cellar; pub mod hall; pub mod attic;"),
            ("cellar.rs", "pub struct Wine;"),
            ("hall/mod.rs", "mod door; pub use door::open; pub use crate::cellar::Wine;"),
            ("hall/door.rs", "pub fn open() -> crate::cellar::Wine { crate::cellar::Wine }"),
            ("attic.rs", "use crate::hall::{open, Wine}; fn look() -> Wine { open() }"),
        ];
        assert_eq!(faults(&files), [""; 0]);
    }

    #[test]
    fn an_arrow_that_points_back_is_found_in_a_use_in_a_body_in_a_macro_and_behind_a_re_export() {
        for text in [
            "use crate::attic::Bat;",
            "fn look() { if true { let _ = crate::attic::Bat; } }",
            "fn look() { println!(\"{}\", crate::attic::Bat) }",
            "use super::hall; fn look() -> hall::Bat { todo() }",
        ] {
            let files = [
                ("lib.rs", ""),
                ("cellar.rs", text),
                ("hall.rs", "pub use crate::attic::Bat;"),
                ("attic.rs", "pub struct Bat;"),
            ];
            let found = faults(&files);
            assert!(found.iter().any(|fault| fault.starts_with("back: cellar.rs → attic.rs")), "{text}: {found:?}");
        }
    }

    #[test]
    fn tests_may_look_anywhere() {
        let files =
            [("cellar.rs", "#[cfg(test)] mod tests { use crate::attic::Bat; }"), ("attic.rs", "pub struct Bat;")];
        assert_eq!(faults(&files), [""; 0]);
    }

    #[test]
    fn files_in_a_circle_are_found_with_all_their_ends() {
        let files = [
            ("hall/mod.rs", "mod door; mod lamp;"),
            ("hall/door.rs", "pub struct Key; fn see() { super::lamp::light() }"),
            ("hall/lamp.rs", "pub fn light() { let _: super::door::Key; }"),
        ];
        let found = faults(&files);
        assert_eq!(found.len(), 1, "{found:?}");
        assert!(found[0].contains("hall/door.rs → hall/lamp.rs") && found[0].contains("hall/lamp.rs → hall/door.rs"));
    }

    #[test]
    fn a_parent_and_a_child_that_use_each_other_are_a_circle_and_handing_on_is_none() {
        let child = "pub fn open(_: super::Key) {}";
        let circle =
            [("hall/mod.rs", "mod door; pub struct Key; pub fn enter() { door::open(Key) }"), ("hall/door.rs", child)];
        assert_eq!(faults(&circle).len(), 1);
        let handed = [("hall/mod.rs", "mod door; pub use door::open; pub struct Key;"), ("hall/door.rs", child)];
        assert_eq!(faults(&handed), [""; 0]);
    }

    #[test]
    fn a_type_whose_code_stands_in_a_file_of_its_own_is_a_circle_with_it() {
        let files = [
            ("hall/mod.rs", "mod door; pub struct Hall; impl Hall { pub fn enter(&self) { self.open() } }"),
            ("hall/door.rs", "use super::Hall; impl Hall { pub(super) fn open(&self) {} }"),
        ];
        assert_eq!(faults(&files).len(), 1);
    }

    #[test]
    fn a_room_that_is_not_drawn_is_told() {
        assert_eq!(faults(&[("shed.rs", "")]), ["the room shed is not in the picture"]);
    }
}
