//! A thumb that taps without end, for the test that kills it: each tap that was
//! answered is told on standard output, as its number.

use std::io::Write;
use std::process::ExitCode;

use drawwell_core::journal::Journal;
use drawwell_core::time::Instant;
use drawwell_core::trouble::Trouble;
use serde_json::json;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let (Some(path), Some(from)) = (arguments.next(), arguments.next().and_then(|n| n.parse().ok())) else {
        return ExitCode::from(2);
    };
    match tap_without_end(&path, from) {
        Ok(()) => ExitCode::SUCCESS,
        Err(trouble) => {
            eprintln!("{trouble}");
            ExitCode::FAILURE
        }
    }
}

fn tap_without_end(path: &str, from: u64) -> Result<(), Trouble> {
    let start = Instant::from_unix_milliseconds(1_772_000_000_000);
    let mut journal = Journal::open(std::path::Path::new(path), "thumb", start)?.journal;
    let mut out = std::io::stdout();
    for tap in from.. {
        let now = Instant::from_unix_milliseconds(1_772_000_000_000 + tap as i64);
        journal.act("letdown", "s", now, |w| {
            w.set("s", "kind", &json!("session"))?;
            w.set("s", "taps", &json!(tap))?;
            w.set(
                "s",
                &format!("marks/{tap:08}"),
                &json!({ "at": "2026-02-25T07:13:20+01:00", "zone": "Europe/Berlin", "does": "letdown" }),
            )
        })?;
        if writeln!(out, "{tap}").and_then(|()| out.flush()).is_err() {
            return Ok(());
        }
    }
    Ok(())
}
