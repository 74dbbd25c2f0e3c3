//! `cargo xtask pictures DIR`: every screen as a picture, without a display.
//! `cargo xtask pictures --docs`: those that the pages show, made anew.

use std::{collections::BTreeSet, fs, path::Path};

use crate::{
    keep,
    machine::{self, Tool},
    maven,
    place::{Build, Places},
    process, sheets, shell,
    stop::Stop,
};

/// The visit sheet is set, not drawn.
const SHEET: &str = "visit-sheet";

/// How the names of those begin that the phone draws.
const PHONE: &str = "android/";

/// Runs the shell's picture program over the real core.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    let [folder] = words else {
        return Err(Stop::new("cargo xtask pictures DIR | --docs"));
    };
    if folder == "--docs" {
        return shown(places);
    }
    let folder = std::path::absolute(folder).map_err(|error| Stop::new(format!("{folder}: {error}")))?;
    shell::build(places)?;
    draw(places, &folder, "")
}

/// Draws those of these names, parted by commas, or all.
pub(crate) fn draw(places: &Places, folder: &Path, names: &str) -> Result<(), Stop> {
    fs::create_dir_all(folder).map_err(|error| Stop::at(folder, &error))?;
    let mut draw = shell::program(places, &["-Djava.awt.headless=true"])?;
    draw.arg("--pictures").arg(folder);
    if !names.is_empty() {
        draw.args(["--only", names]);
    }
    process::run(&mut draw)
}

/// A visit sheet as the program sets it, and its first page as a picture.
pub(crate) fn sheet(places: &Places, pdf: &Path) -> Result<(), Stop> {
    let folder = pdf.parent().unwrap_or(pdf);
    sheets::of_the_family(places, folder, pdf)?;
    let mut page = process::command(places, "pdftoppm");
    page.args(["-png", "-r", "110", "-singlefile"]).arg(pdf).arg(pdf.with_extension(""));
    process::run(&mut page)
}

/// Every picture that a page names, and no other: what is not named any more goes.
fn shown(places: &Places) -> Result<(), Stop> {
    machine::need(places, &[shell::DRAWS, &[Tool::Poppler, Tool::Resources]].concat())?;
    shell::build(places)?;
    let named = named(places)?;
    let folder = places.shown();
    on_the_phone(places, &named)?;
    let drawn: Vec<&str> =
        named.iter().map(String::as_str).filter(|name| *name != SHEET && !name.starts_with(PHONE)).collect();
    draw(places, &folder, &drawn.join(","))?;
    let pdf = places.scratch().join(format!("{SHEET}.pdf"));
    sheet(places, &pdf)?;
    let page = pdf.with_extension("png");
    let to = folder.join(format!("{SHEET}.png"));
    fs::copy(&page, &to).map_err(|error| Stop::at(&to, &error))?;
    for name in &named {
        let file = folder.join(format!("{name}.png"));
        if !file.is_file() {
            return Err(Stop::new(format!("a page shows {}, and there is no such screen", file.display())));
        }
    }
    for file in keep::below(&folder, "png")? {
        let name = file.with_extension("").to_string_lossy().replace('\\', "/");
        if !named.contains(&name) {
            let path = folder.join(file);
            fs::remove_file(&path).map_err(|error| Stop::at(&path, &error))?;
        }
    }
    Ok(())
}

/// Those that Android draws itself, under Robolectric, by a test that keeps them.
fn on_the_phone(places: &Places, named: &BTreeSet<String>) -> Result<(), Stop> {
    crate::android::prepare(places)?;
    let mut draw = maven::command(places, Build::Debug)?;
    draw.args([
        "--quiet",
        "--projects",
        "android",
        "--also-make",
        "test",
        "-Dtest=PicturesTest",
        "-Ddrawwell.shown=none",
    ]);
    process::run(draw.arg("-Dsurefire.failIfNoSpecifiedTests=false"))?;
    let drawn = places.app_shell().join("android").join("target").join("pictures");
    for name in named.iter().filter_map(|name| name.strip_prefix(PHONE)) {
        let from = drawn.join(format!("{name}.png"));
        let bytes = fs::read(&from).map_err(|error| Stop::at(&from, &error))?;
        keep::write_if_changed(&places.shown().join(format!("{PHONE}{name}.png")), &bytes)?;
    }
    Ok(())
}

/// The names in `pictures/NAME.png` of every page.
fn named(places: &Places) -> Result<BTreeSet<String>, Stop> {
    let docs = places.root().join("docs");
    let mut pages: Vec<_> =
        ["README.md", "DEVELOPERS.md", "app-shell/android/README.md"].map(|page| places.root().join(page)).into();
    pages.extend(keep::below(&docs, "md")?.iter().map(|name| docs.join(name)));
    let mut names = BTreeSet::new();
    for page in pages {
        let text = fs::read_to_string(&page).map_err(|error| Stop::at(&page, &error))?;
        names.extend(names_in(&text).map(str::to_owned));
    }
    Ok(names)
}

fn names_in(text: &str) -> impl Iterator<Item = &str> {
    text.split("pictures/").skip(1).filter_map(|rest| {
        let name = rest.split(".png").next()?;
        (rest.len() > name.len() && name.chars().all(|c| c.is_ascii_alphanumeric() || "./-".contains(c)))
            .then_some(name)
    })
}

#[cfg(test)]
mod tests {
    use super::names_in;

    #[test]
    fn a_page_names_its_pictures() {
        let page = "![Now](docs/pictures/now-ready.light.png) and [night](pictures/tonight.night.png); `pictures/*.png`, pictures/ of all";
        assert_eq!(names_in(page).collect::<Vec<_>>(), ["now-ready.light", "tonight.night"]);
    }
}
