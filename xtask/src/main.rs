//! The project's commands: `cargo xtask NAME`.
//!
//! In comes a command line, out goes an exit code. Each command is a file;
//! what they share lies beside them: `place` (where things are), `machine` (what
//! must be on it, and how it comes there), `process` (running another program), `library`,
//! `generate`, `python`, `java`, `maven`, `shell` (the app as a program), `keep`
//! (not touching what has not changed), `android` (what Maven can't do for the
//! Android host). Read `test` first: it runs everything the others do.

#![forbid(unsafe_code)]

mod android;
mod app;
mod bench;
mod class_archive;
mod comfort;
mod demo;
mod disk;
mod display;
mod for_others;
mod generate;
mod java;
mod keep;
mod library;
mod machine;
mod maven;
mod natives;
mod network;
mod package;
mod page_part;
mod pictures;
mod place;
mod process;
mod proxy;
mod python;
mod rooms;
mod sheets;
mod shell;
mod step;
mod stop;
mod supply;
mod surface;
mod test;
mod took;
mod tour;
mod traces;
mod workspace;

use std::process::ExitCode;

use machine::Consent;
use place::Places;
use stop::Stop;

const HELP: &str = "\
cargo xtask app [ARGS]        build everything and open the app
cargo xtask app --caseload      the consultant's window instead
cargo xtask tour              a day of the invented family as pictures, without a display
cargo xtask apk               the package for a phone
cargo xtask android           what Maven needs to build the Android host by hand
cargo xtask test              every check there is
cargo xtask test --only STEP  one of them, with what it needs
cargo xtask test --list       their names
cargo xtask surface [kotlin]  write the Kotlin and Python faces of the core
cargo xtask pictures DIR      every screen as a picture
cargo xtask pictures --docs   those that the pages show, made anew
cargo xtask package           what people install, with licences and an SBOM
cargo xtask bench [ARGS]      the benchmarks; `statistics` beside SciPy
cargo xtask demo              write the invented family anew
cargo xtask supply            docs/supply.md: Supply on families with known truth
cargo xtask traces            the tables of docs/kit.md: traces with known truth
cargo xtask network [N]       an invented network of N families (20,000): taken in, reported, held to pandas
cargo xtask comfort           the tables of docs/comfort.md: comfort and trials with known truth

What is missing on the machine is named, with the command that brings it. At a terminal
it is run after one question; without one, or with --yes, at once. With --no-install never.
";

fn main() -> ExitCode {
    let mut words: Vec<String> = std::env::args().skip(1).collect();
    let consent = machine::consent::read(&mut words);
    match run(&words, consent) {
        Ok(()) => ExitCode::SUCCESS,
        Err(stop) => {
            eprintln!("{stop}");
            ExitCode::FAILURE
        }
    }
}

fn run(words: &[String], consent: Consent) -> Result<(), Stop> {
    let Some((command, rest)) = words.split_first() else {
        return Err(Stop::new(HELP));
    };
    let places = Places::find(consent)?;
    match command.as_str() {
        "android" => android::run(&places, rest),
        "apk" => android::apk::run(&places, rest),
        "app" => app::run(&places, rest),
        "bench" => bench::run(&places, rest),
        "comfort" => comfort::run(&places, rest),
        "demo" => demo::run(&places, rest),
        "network" => network::run(&places, rest),
        "package" => package::run(&places, rest),
        "pictures" => pictures::run(&places, rest),
        "supply" => supply::run(&places, rest),
        "surface" => surface::run(&places, rest),
        "test" => test::run(&places, rest),
        "tour" => tour::run(&places, rest),
        "traces" => traces::run(&places, rest),
        "help" | "--help" | "-h" => {
            print!("{HELP}");
            Ok(())
        }
        other => Err(Stop::new(format!("there is no command {other}\n\n{HELP}"))),
    }
}
