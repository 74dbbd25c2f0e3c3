//! Writes what Supply makes of families with known truth: `cargo xtask supply`.

use drawwell_tests::simulated_family::tables::{found, production, watched};
use drawwell_tests::simulated_family::Family;

fn percent(share: f64) -> String {
    format!("{:.0} %", share * 100.0)
}

fn main() {
    let families = std::env::args().nth(1).and_then(|n| n.parse().ok()).unwrap_or(200);
    println!("# Supply, tried on families with known truth\n");
    println!("Made by `cargo xtask supply`, {families} families a row; not written by hand.");
    println!("The families are invented (`tests/src/simulated_family`): each side fills ever slower");
    println!("towards its capacity, a session removes most but not all, amounts are read to 5 mL,");
    println!("days differ by 15 % and are a little like the day before (0.2), and a session that is");
    println!("not written down removes milk all the same.\n");
    println!("## How much a day, over 28 days\n");
    println!("Bias is the mean of estimate over truth where a level was told. A range is to hold the");
    println!("truth nine times in ten. The slope's truth is none.\n");
    println!("| sessions a day | night gap | capacity | not written down | at the breast, half weighed | bias | told | \"too much is missing\" | level held | slope held |");
    println!("|---|---|---|---|---|---|---|---|---|---|");
    for sessions in [4, 6, 8, 10, 12] {
        for night in [5.0, 8.0] {
            for (capacity, at_breast) in [(180.0, 0.0), (110.0, 0.0), (350.0, 0.0), (180.0, 0.25)] {
                for unlogged in [0.0, 0.1, 0.3, 0.5] {
                    if unlogged == 0.5 && (capacity != 180.0 || at_breast > 0.0) {
                        continue;
                    }
                    let family =
                        Family { sessions, night, capacity, unlogged, at_breast, weighed: 0.5, ..Family::USUAL };
                    let row = production(&family, families);
                    println!(
                        "| {sessions} | {night} h | {capacity} mL | {} | {} | {:+.1} % | {} | {} | {} | {} |",
                        percent(unlogged),
                        percent(at_breast),
                        row.bias * 100.0,
                        percent(row.told),
                        percent(row.too_much),
                        percent(row.level_held),
                        percent(row.slope_held)
                    );
                }
            }
        }
    }
    println!("\n## The watch\n");
    println!("Eight sessions a day, a night gap of 5 h. False alarms in 100 quiet days; days until a");
    println!("lasting drop is noticed, in the middle and for nine in ten families.\n");
    println!("| drop | spread of days | like the day before | not written down | false alarms in 100 days | noticed after | nine in ten within |");
    println!("|---|---|---|---|---|---|---|");
    for drop in [0.15, 0.25, 0.4] {
        for (day_spread, day_memory) in [(0.08, 0.0), (0.15, 0.0), (0.15, 0.3), (0.25, 0.0)] {
            for unlogged in [0.0, 0.1, 0.2] {
                let family = Family { unlogged, day_spread, day_memory, ..Family::USUAL };
                let row = watched(&family, 1.0 - drop, families);
                let days = |delay: Option<i64>| delay.map_or("not in 50 days".to_owned(), |d| format!("{d} days"));
                println!(
                    "| {} | {} | {day_memory} | {} | {:.2} | {} | {} |",
                    percent(drop),
                    percent(day_spread),
                    percent(unlogged),
                    row.false_alarms,
                    days(row.delay),
                    days(row.late)
                );
            }
        }
    }
    println!("\n## Since when\n");
    println!("A change 40 days in, looked at 30 days later; and quiet families of 60 days.\n");
    println!("| becomes | like the day before | not written down | quiet families told of a change | found | dates held the day | range held the size |");
    println!("|---|---|---|---|---|---|---|");
    for becomes in [0.6, 0.75, 1.3] {
        for day_memory in [0.0, 0.3] {
            for unlogged in [0.0, 0.1] {
                let row = found(&Family { unlogged, day_memory, ..Family::USUAL }, becomes, families);
                println!(
                    "| {} | {day_memory} | {} | {} | {} | {} | {} |",
                    percent(becomes),
                    percent(unlogged),
                    percent(row.false_changes),
                    percent(row.found),
                    percent(row.date_held),
                    percent(row.size_held)
                );
            }
        }
    }
}
