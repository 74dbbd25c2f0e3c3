//! The project's commands: `cargo xtask NAME`.
//!
//! In comes a command line, out goes an exit code. Each command is a file;
//! what they share lies beside them: `place` (where things are), `tool` (what
//! must be on the machine), `process` (running another program), `library`,
//! `generate`, `python`, `java`, `maven`, `shell` (the app as a program), `keep`
//! (not touching what has not changed), `android` (what Maven can't do for the
//! Android host). Read `test` first: it runs everything the others do.

#![forbid(unsafe_code)]

mod android;
mod app;
mod bench;
mod demo;
mod for_others;
mod generate;
mod java;
mod keep;
mod library;
mod maven;
mod pictures;
mod place;
mod process;
mod python;
mod sheets;
mod shell;
mod step;
mod stop;
mod supply;
mod surface;
mod test;
mod tool;
mod traces;

use std::process::ExitCode;

use place::Places;
use stop::Stop;

const HELP: &str = "\
cargo xtask app [ARGS]        build everything and open the app
cargo xtask app --caseload      the consultant's window instead
cargo xtask apk               the package for a phone
cargo xtask android           what Maven needs to build the Android host by hand
cargo xtask test              every check there is
cargo xtask test --only STEP  one of them, with what it needs
cargo xtask test --list       their names
cargo xtask surface [kotlin]  write the Kotlin and Python faces of the core
cargo xtask pictures DIR      every screen as a picture
cargo xtask bench [ARGS]      the benchmarks; `statistics` beside SciPy
cargo xtask demo              write the invented family anew
cargo xtask supply            docs/supply.md: Supply on families with known truth
cargo xtask traces            the tables of docs/kit.md: traces with known truth
";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match run(&words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(stop) => {
            eprintln!("{stop}");
            ExitCode::FAILURE
        }
    }
}

fn run(words: &[String]) -> Result<(), Stop> {
    let Some((command, rest)) = words.split_first() else {
        return Err(Stop::new(HELP));
    };
    let places = Places::find()?;
    match command.as_str() {
        "android" => android::run(&places, rest),
        "apk" => android::apk::run(&places, rest),
        "app" => app::run(&places, rest),
        "bench" => bench::run(&places, rest),
        "demo" => demo::run(&places, rest),
        "pictures" => pictures::run(&places, rest),
        "supply" => supply::run(&places, rest),
        "surface" => surface::run(&places, rest),
        "test" => test::run(&places, rest),
        "traces" => traces::run(&places, rest),
        "help" | "--help" | "-h" => {
            print!("{HELP}");
            Ok(())
        }
        other => Err(Stop::new(format!("there is no command {other}\n\n{HELP}"))),
    }
}
