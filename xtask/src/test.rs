//! `cargo xtask test`: every check there is.

use crate::{
    android, for_others,
    machine::Tool,
    maven, package,
    place::{Build, Places},
    process, python, rooms, sheets, shell,
    step::{self, Step},
    stop::Stop,
    surface,
};

/// In this order: what is quick to fail comes first, and `build` makes what
/// all the later steps share, with one set of features, so that nothing is
/// compiled twice.
const STEPS: &[Step] = &[
    Step { name: "format", tools: &[Tool::Formatter], after: &[], act: format },
    Step { name: "rooms", tools: &[], after: &[], act: rooms::run },
    Step { name: "licences", tools: &[Tool::Deny], after: &[], act: licences },
    Step { name: "lints", tools: &[Tool::Linter, Tool::Make], after: &[], act: lints },
    Step { name: "build", tools: &[Tool::Make], after: &[], act: build },
    Step { name: "rust", tools: &[Tool::Age, Tool::Minisign, Tool::Codes], after: &["build"], act: rust },
    Step { name: "surface", tools: &[], after: &["build"], act: faces },
    Step { name: "python", tools: &[Tool::Python, Tool::Poppler, Tool::Codes], after: &["surface"], act: in_python },
    Step { name: "units", tools: &[Tool::Node], after: &["build"], act: for_others::units },
    Step {
        name: "health-record",
        tools: &[Tool::Java, Tool::Maven],
        after: &["build"],
        act: for_others::health_records,
    },
    Step { name: "sheet", tools: &[Tool::Java, Tool::Maven], after: &["build"], act: sheets::accessible },
    Step {
        name: "shell",
        tools: &[Tool::Java, Tool::Maven, Tool::Drawing, Tool::Fonts, Tool::Resources],
        after: &["surface"],
        act: shell,
    },
    Step {
        name: "package-without-core",
        tools: &[Tool::Alignment, Tool::Signature],
        after: &["shell"],
        act: android::apk::without_core,
    },
    Step { name: "network", tools: &[Tool::Linter, Tool::Make], after: &[], act: network },
    Step { name: "package", tools: shell::DRAWS, after: &["surface"], act: package::tried::run },
];

/// Runs all of them, or one with what it needs.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    match words.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        [] => step::run(places, "test", &STEPS.iter().collect::<Vec<_>>()),
        ["--only", name] => match step::only(STEPS, name) {
            Some(steps) => step::run(places, "test", &steps),
            None => Err(Stop::new(format!("there is no step {name}; there are {}", names()))),
        },
        ["--list"] => {
            println!("{}", names());
            Ok(())
        }
        _ => Err(Stop::new("cargo xtask test [--only STEP | --list]")),
    }
}

fn names() -> String {
    STEPS.iter().map(|step| step.name).collect::<Vec<_>>().join(", ")
}

fn format(places: &Places) -> Result<(), Stop> {
    process::run(process::cargo(places).args(["fmt", "--all", "--check"]))
}

/// Advisories stand in a database from outside. Where that can't be reached, it is said, and the
/// rest is checked all the same.
fn licences(places: &Places) -> Result<(), Stop> {
    let deny = |checks: &[&str]| {
        let mut command = process::cargo(places);
        command.args(["deny", "--workspace", "check", "--hide-inclusion-graph"]).args(checks);
        command
    };
    process::run(&mut deny(&["bans", "licenses", "sources"]))?;
    let fetched = process::cargo(places).args(["deny", "fetch", "db"]).output();
    if !fetched.is_ok_and(|done| done.status.success()) {
        println!("advisories were not checked: their database cannot be reached from here");
        return Ok(());
    }
    process::run(deny(&["--disable-fetch"]).arg("advisories"))
}

/// The crate over the engine for many families: building that takes longer than all the rest, so
/// it is a step of its own.
const NETWORK: &str = "drawwell-network";

/// Without the generator: it is one call, and what it calls takes minutes to check.
fn lints(places: &Places) -> Result<(), Stop> {
    let mut clippy = process::cargo(places);
    clippy.args(["clippy", "--workspace", "--exclude", "drawwell-generator", "--exclude", NETWORK]);
    process::run(clippy.args(["--all-targets", "--", "-D", "warnings"]))
}

fn build(places: &Places) -> Result<(), Stop> {
    process::run(process::cargo(places).args(["build", "--workspace", "--exclude", NETWORK, "--all-targets"]))
}

fn rust(places: &Places) -> Result<(), Stop> {
    process::run(process::cargo(places).args(["test", "--workspace", "--exclude", NETWORK]))
}

/// The lints that are denied come with the build, as `clippy-driver` compiles our own crates: so the
/// engine is built once and not checked as well, which would take half as long again.
fn network(places: &Places) -> Result<(), Stop> {
    let mut test = process::cargo(places);
    process::run(test.env("RUSTC_WORKSPACE_WRAPPER", "clippy-driver").args(["test", "--package", NETWORK]))
}

fn faces(places: &Places) -> Result<(), Stop> {
    surface::kotlin(places, Build::Debug)?;
    surface::python(places)
}

fn in_python(places: &Places) -> Result<(), Stop> {
    python::prepare(places)?;
    python::tests(places)
}

/// Desk and phone. Not quiet: Maven's own count of tests is part of what this prints.
fn shell(places: &Places) -> Result<(), Stop> {
    android::prepare(places)?;
    process::run(maven::command(places, Build::Debug)?.arg("verify"))
}
