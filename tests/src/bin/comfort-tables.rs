//! Writes what Comfort makes of families with known truth: `cargo xtask comfort`.
use drawwell_tests::comfort_family::ceiling::{row, Limit};
fn main() {
    let n = std::env::args().nth(1).and_then(|n| n.parse().ok()).unwrap_or(200);
    for (name, base) in [
        ("fine", Limit::FINE),
        ("fine+gauge", Limit { gauge: 12.0, ..Limit::FINE }),
        ("levels", Limit::BY_LEVELS),
        ("levels only", Limit { in_vacuum: false, ..Limit::BY_LEVELS }),
    ] {
        for sessions in [15, 40, 100] {
            for spread in [6.0, 12.0, 20.0] {
                let r = row(&Limit { sessions, spread, ..base }, n);
                println!("{name} {sessions} {spread}: told {:.2} off {:.1} bias {:+.1} ten {:.2} level {:.2} high {:.3} held {:.2}", r.told,r.off,r.bias,r.within_ten,r.within_level,r.too_high,r.held);
            }
        }
    }
}
