//! Streams a trace of so many rows through the reader and the findings, and says how
//! long that took and how much memory the process came to: `rows seconds kilobytes cycles`.
//!
//! `cargo run --release -p drawwell-tests --bin long-trace -- 10000000`; a path in place
//! of the number reads that file.

use std::io::{BufRead, BufReader, Read, Write};
use std::process::ExitCode;
use std::time::Instant;

use drawwell_core::answer::trace::findings;
use drawwell_core::share::trace_file::read;

/// Rows a second, so that ten million of them last 2 h 46 min.
const RATE: u64 = 1_000;

/// A file that is made as it is read.
struct Made {
    rows: u64,
    next: u64,
    text: Vec<u8>,
    taken: usize,
}

impl Made {
    fn row(&mut self) {
        self.text.clear();
        self.taken = 0;
        let at = self.next as f64 / RATE as f64;
        let pressure = 125.0 - 125.0 * (std::f64::consts::TAU * at).cos();
        // Noise that is the same every time: a linear congruential generator (Knuth, MMIX).
        let mixed = self.next.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        let noise = (mixed >> 40) as f64 / (1_u64 << 24) as f64 - 0.5;
        let written = match self.next {
            0 => writeln!(self.text, "time (s),vacuum (mmHg)"),
            _ => Ok(()),
        };
        if written.and_then(|()| writeln!(self.text, "{at:.3},{:.2}", pressure + noise)).is_err() {
            self.text.clear();
        }
        self.next += 1;
    }
}

impl Read for Made {
    fn read(&mut self, buffer: &mut [u8]) -> std::io::Result<usize> {
        let mut filled = 0;
        while filled < buffer.len() {
            if self.taken == self.text.len() {
                if self.next == self.rows {
                    break;
                }
                self.row();
            }
            let (Some(there), Some(room)) = (self.text.get(self.taken..), buffer.get_mut(filled..)) else { break };
            let length = there.len().min(room.len());
            if let (Some(room), Some(there)) = (room.get_mut(..length), there.get(..length)) {
                room.copy_from_slice(there);
            }
            self.taken += length;
            filled += length;
        }
        Ok(filled)
    }
}

fn main() -> ExitCode {
    let Some(which) = std::env::args().nth(1) else { return ExitCode::from(2) };
    let mut file: Box<dyn BufRead> = match (which.parse(), std::fs::File::open(&which)) {
        (Ok(rows), _) => {
            let made = Made { rows, next: 0, text: Vec::new(), taken: 0 };
            Box::new(BufReader::with_capacity(1 << 16, made))
        }
        (_, Ok(file)) => Box::new(BufReader::with_capacity(1 << 16, file)),
        _ => return ExitCode::from(2),
    };
    let started = Instant::now();
    let trace = match read(&mut *file) {
        Ok(trace) => trace,
        Err(trouble) => {
            eprintln!("{trouble}");
            return ExitCode::FAILURE;
        }
    };
    let found = match findings(&trace) {
        Ok(found) => found,
        Err(why) => {
            eprintln!("{why}");
            return ExitCode::FAILURE;
        }
    };
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let most = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap_or("0 kB");
    let kilobytes = most.trim().trim_end_matches(" kB");
    let seconds = started.elapsed().as_secs_f64();
    println!("{} {seconds:.2} {kilobytes} {}", trace.notes.rows.get(), found.overall.count.get());
    ExitCode::SUCCESS
}
