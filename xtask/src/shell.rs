//! The shell's desktop host as a program: built by Maven, run by Java.

use std::{
    ffi::OsString,
    fs,
    path::{Path, PathBuf},
    process::Command,
};

use crate::{
    class_archive, java, keep,
    machine::Tool,
    maven, natives,
    place::{Build, Places},
    process,
    step::{self, Step},
    stop::Stop,
    surface,
};

/// Drawing needs all of these; opening a window another Java may be missing for.
pub(crate) const DRAWS: &[Tool] = &[Tool::Make, Tool::Java, Tool::Maven, Tool::Drawing, Tool::Fonts];

/// Everything the window needs, from the core on, in the profile that the tests are built
/// in too: what one of them built, the other has.
const STEPS: &[Step] = &[
    Step { name: "core", tools: &[], after: &[], act: surface::build },
    Step { name: "face", tools: &[], after: &["core"], act: |places| surface::kotlin(places, Build::Debug) },
    Step { name: "shell", tools: DRAWS, after: &["face"], act: compile },
];

/// Builds what changed; what is there already stays.
pub(crate) fn build(places: &Places) -> Result<(), Stop> {
    step::run(places, "app", &STEPS.iter().collect::<Vec<_>>())
}

/// The program with settings for Java, ready to be given words.
pub(crate) fn program(places: &Places, settings: &[&str]) -> Result<Command, Stop> {
    let mut library = OsString::from("-Djna.library.path=");
    library.push(places.library_folder(Build::Debug));
    let mut java = process::command(places, java::program());
    java.args(QUICK).args(natives::settings(&natives::folder(places).to_string_lossy()));
    java.args(settings).arg(library).arg("-cp").arg(class_path(places)?).arg(MAIN);
    Ok(java)
}

/// The class that begins.
pub(crate) const MAIN: &str = "drawwell.desktop.MainKt";

/// A window is there sooner with the quick compiler alone and the small collector: measured
/// in DEVELOPERS.md.
pub(crate) const QUICK: &[&str] = &["-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"];

/// Jars, each by name: Java keeps the classes of a list of jars ready, not those of a folder.
pub(crate) fn jars(places: &Places) -> Result<Vec<PathBuf>, Stop> {
    let target = target(places);
    let mut jars = vec![jar(places)];
    jars.extend(keep::below(&target.join("libraries"), "jar")?.iter().map(|name| target.join("libraries").join(name)));
    Ok(jars)
}

fn class_path(places: &Places) -> Result<OsString, Stop> {
    std::env::join_paths(jars(places)?).map_err(|error| Stop::new(error.to_string()))
}

fn target(places: &Places) -> PathBuf {
    places.app_shell().join("desktop").join("target")
}

fn jar(places: &Places) -> PathBuf {
    target(places).join("desktop-0.1.0.jar")
}

/// Maven, unless nothing it reads has changed since it last went through.
fn compile(places: &Places) -> Result<(), Stop> {
    let now = made_from(places)?;
    let stamp = places.scratch().join("shell-made-from.txt");
    let same = fs::read_to_string(&stamp).is_ok_and(|then| then == now);
    let there = jar(places).is_file() && target(places).join("libraries").is_dir() && natives::folder(places).is_dir();
    if same && there {
        println!("unchanged");
        return Ok(());
    }
    let _ = fs::remove_file(&stamp);
    // What the poms name was fetched once: Maven need not ask for it again.
    let fetched = places.scratch().join("shell-fetched.txt");
    let poms = keep::fingerprint(&poms(places)?)?;
    let offline = fs::read_to_string(&fetched).is_ok_and(|then| then == poms);
    let package = |offline: bool| {
        let mut maven = maven::command(places, Build::Debug)?;
        maven.args(["--quiet", "--projects", "desktop", "--also-make", "package", "-Dmaven.test.skip=true"]);
        // A compiler that stays behind as a daemon outlives the command.
        maven.arg("-Dkotlin.compiler.daemon=false");
        if std::env::var_os("MAVEN_OPTS").is_none() {
            maven.env("MAVEN_OPTS", QUICK.join(" "));
        }
        if offline {
            maven.arg("--offline");
        }
        process::run(&mut maven)
    };
    if !offline || package(true).is_err() {
        package(false)?;
    }
    natives::unpack(&jars(places)?, &natives::folder(places))?;
    keep::write_if_changed(&fetched, poms.as_bytes())?;
    keep::write_if_changed(&stamp, now.as_bytes())?;
    class_archive::forget(places);
    Ok(())
}

/// All that Maven reads for the window.
fn made_from(places: &Places) -> Result<String, Stop> {
    let shell = places.app_shell();
    let mut files = poms(places)?;
    files.extend(all_below(&places.kotlin_surface(), "kt")?);
    for folder in [shell.join("ui").join("src").join("main"), shell.join("desktop").join("src").join("main")] {
        for ending in ["kt", "svg", "ttf", "txt"] {
            files.extend(all_below(&folder, ending)?);
        }
    }
    files.push(shell.join("ui").join("stability.txt"));
    files.extend(all_below(&places.root().join("demo-data"), "jsonl")?);
    files.extend(all_below(&places.root().join("demo-data"), "clock")?);
    keep::fingerprint(&files)
}

fn poms(places: &Places) -> Result<Vec<PathBuf>, Stop> {
    let shell = places.app_shell();
    let own = ["surface", "ui", "desktop"].map(|module| shell.join(module).join("pom.xml"));
    Ok(std::iter::once(shell.join("pom.xml")).chain(own).collect())
}

fn all_below(folder: &Path, ending: &str) -> Result<Vec<PathBuf>, Stop> {
    Ok(keep::below(folder, ending)?.iter().map(|name| folder.join(name)).collect())
}
