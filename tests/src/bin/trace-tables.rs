//! Writes what is said of traces with known truth: `cargo xtask traces`.

use drawwell_tests::simulated_pump::tables::{drift_held, rows, told_up_to, Row, DRIFT_HELD, LEAST_RIGHT};

/// A share in 100; bold where it misses its bar.
fn said(share: Option<f64>, holds: impl Fn(f64) -> bool) -> String {
    match share {
        None => String::new(),
        Some(share) if holds(share) => format!("{:.1}", 100.0 * share),
        Some(share) => format!("**{:.1}**", 100.0 * share),
    }
}

fn line(row: &Row) -> String {
    let cells = row.figures().map(|(_, right, least)| said(right.share(), |share| share >= least));
    format!("| {} | {} |", row.name, cells.join(" | "))
}

fn main() {
    let traces = std::env::args().nth(1).and_then(|n| n.parse().ok()).unwrap_or(200);
    let (rows, all) = rows(traces);
    println!("{traces} traces a row, in 100; the worst rows first. A figure that misses its bar is bold.\n");
    println!("| traces | {} |", all.figures().map(|(what, ..)| what).join(" | "));
    println!("|---|{}", "---|".repeat(all.figures().len()));
    let bars = all.figures().map(|(.., least)| format!("{:.0}", 100.0 * least));
    println!("| asked | {} |", bars.join(" | "));
    for row in rows.iter().chain([&all]) {
        println!("{}", line(row));
    }
    println!("\nHow often the range of a drift holds it ({} traces each; asked: 88 to 93 in 100):\n", 5 * traces);
    println!("| noise of the gauge | 25 readings a second | 50 readings a second |");
    println!("|---|---|---|");
    for noise in [0.0, 1.0, 2.0] {
        let cells = [25.0, 50.0]
            .map(|readings| said(drift_held(noise, readings, 5 * traces).share(), |share| DRIFT_HELD.contains(&share)));
        println!("| {noise} mmHg | {} |", cells.join(" | "));
    }
    println!("\nFrom which rate on a file cannot tell, and how often no cycle is lost just below it:\n");
    println!("| readings a second | said: cannot tell above | cycles all found at 85 to 97 % of that |");
    println!("|---|---|---|");
    for readings in [8.0, 10.0, 12.5, 16.0] {
        let (fastest, right) = told_up_to(readings, traces);
        println!("| {readings} | {fastest:.0} a minute | {} |", said(right.share(), |share| share >= LEAST_RIGHT));
    }
}
