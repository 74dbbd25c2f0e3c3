//! Visit sheets, set by the program and judged by veraPDF.

use std::{fs, path::Path, path::PathBuf};

use crate::{
    maven,
    place::{Build, Places},
    process,
    stop::Stop,
};

/// The moment at which the invented family is looked at, and its zone.
const AT: (&str, &str) = ("2026-08-14T12:40:00+02:00", "Europe/Berlin");

/// Names that are no harm as data: markup, scripts from the right and with no letters of
/// ours, and three hundred signs without a place to break.
fn awkward() -> Vec<(&'static str, String)> {
    vec![
        ("markup", "#eval(\"1\") *a* _b_ $x^2$ <c> @d \\ // = [".to_owned()),
        ("right-to-left", "\u{5e0}\u{5d5}\u{5e2}\u{5d4} \u{644}\u{64a}\u{644}\u{649} \u{202e}abc".to_owned()),
        ("emoji", "\u{1f469}\u{200d}\u{1f37c} \u{7f8e}\u{54b2} Zo\u{eb}".to_owned()),
        ("long", "Wolkenstein".repeat(28).chars().take(300).collect()),
    ]
}

/// PDF/UA-1 of both papers, an empty record, awkward names, and little that goes out.
pub(crate) fn accessible(places: &Places) -> Result<(), Stop> {
    let folder = set(places)?;
    let mut judge = maven::alone(places, &places.tests_with("pdf"))?;
    judge.arg(format!("-Ddrawwell.sheets={}", folder.display()));
    process::run(judge.arg("verify"))
}

/// The invented family's sheet alone.
pub(crate) fn of_the_family(places: &Places, folder: &Path, pdf: &Path) -> Result<(), Stop> {
    fs::create_dir_all(folder).map_err(|error| Stop::at(folder, &error))?;
    let family = folder.join("sheet-of.drawwell");
    for ending in ["", "-wal", "-shm"] {
        let _ = fs::remove_file(folder.join(format!("sheet-of.drawwell{ending}")));
    }
    run(places, &family, "import", places.root().join("demo-data").join("family.jsonl").as_os_str())?;
    run(places, &family, "sheet", pdf.as_os_str())?;
    for ending in ["", "-wal", "-shm"] {
        let _ = fs::remove_file(folder.join(format!("sheet-of.drawwell{ending}")));
    }
    Ok(())
}

/// Sets them anew, so that none is left of an older program.
fn set(places: &Places) -> Result<PathBuf, Stop> {
    let folder = places.sheets();
    if folder.exists() {
        fs::remove_dir_all(&folder).map_err(|error| Stop::at(&folder, &error))?;
    }
    fs::create_dir_all(&folder).map_err(|error| Stop::at(&folder, &error))?;
    let family = folder.join("family.drawwell");
    let demo = places.root().join("demo-data").join("family.jsonl");
    run(places, &family, "import", demo.as_os_str())?;
    page(places, &family, "sheet", "family-a4")?;
    page(places, &family, "sheet-letter", "family-letter")?;
    page(places, &family, "choice-page", "family-choice")?;
    page(places, &family, "labels", "family-labels")?;
    let empty = folder.join("empty.drawwell");
    page(places, &empty, "choice-page", "empty-choice")?;
    page(places, &empty, "sheet", "empty-a4")?;
    page(places, &empty, "sheet-letter", "empty-letter")?;
    for (name, typed) in awkward() {
        let event = serde_json_text(&typed);
        run(places, &family, "tap", event.as_ref())?;
        page(places, &family, "sheet", &format!("family-{name}"))?;
    }
    run(places, &family, "tap", r#"{"LeaveOut":{"part":"supply","out":true}}"#.as_ref())?;
    page(places, &family, "sheet", "family-without-supply")?;
    Ok(folder)
}

/// The event that gives the sheet its name. Quotes and backslashes are all that JSON asks
/// for in these names.
fn serde_json_text(typed: &str) -> String {
    let typed = typed.replace('\\', "\\\\").replace('"', "\\\"");
    format!(r#"{{"Enter":{{"id":"settings","field":"sheet_name","typed":"{typed}"}}}}"#)
}

fn page(places: &Places, record: &Path, paper: &str, name: &str) -> Result<(), Stop> {
    run(places, record, paper, places.sheets().join(format!("{name}.pdf")).as_os_str())
}

fn run(places: &Places, record: &Path, what: &str, with: &std::ffi::OsStr) -> Result<(), Stop> {
    let mut runner = process::command(places, places.program(Build::Debug, "drawwell-headless"));
    runner.arg("--journal").arg(record).args(["--at", AT.0, "--zone", AT.1]).arg(what).arg(with);
    process::run(runner.stdout(std::process::Stdio::null()))
}
