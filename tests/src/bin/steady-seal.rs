//! Moves a record under a key, for the test that kills it meanwhile: says when it begins.

use std::io::Write;
use std::process::ExitCode;

use drawwell_core::journal::{Journal, Key};
use drawwell_core::time::Instant;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let (Some(path), Some(figures)) = (arguments.next(), arguments.next()) else {
        return ExitCode::from(2);
    };
    let Ok(key) = Key::from_figures(&figures) else { return ExitCode::from(2) };
    let mut out = std::io::stdout();
    if writeln!(out, "begun").and_then(|()| out.flush()).is_err() {
        return ExitCode::from(2);
    }
    let now = Instant::from_unix_milliseconds(1_772_000_000_000);
    match Journal::open_with_key(std::path::Path::new(&path), "one", Some(&key), now) {
        Ok(_) => ExitCode::SUCCESS,
        Err(trouble) => {
            eprintln!("{trouble}");
            ExitCode::FAILURE
        }
    }
}
