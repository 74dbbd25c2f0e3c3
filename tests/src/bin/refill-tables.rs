//! Writes how often the refill curve is right, with families of known truth: `cargo run
//! --release -p drawwell-tests --bin refill-tables 400`.

use drawwell_tests::refilling_family::tables::{Row, Share, Sort};
use drawwell_tests::simulated_family::Simulator;

fn percent(share: Share) -> String {
    share.part().map_or_else(String::new, |part| format!("{:.0} %", part * 100.0))
}

fn main() {
    let families = std::env::args().nth(1).and_then(|n| n.parse().ok()).unwrap_or(1000);
    println!("{families} families a row, two breasts each.\n");
    println!("| simulator | families | days | rate told | within 10 % | held | level told | within 20 % | held | no sign | night's milk off | held | difference told | held |");
    println!("|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    for by in Simulator::BOTH {
        for sort in Sort::ALL {
            let name = match sort {
                Sort::Flatten => "flatten",
                Sort::Straight => "straight",
                Sort::NoLongGaps => "flatten, no long gaps",
                Sort::LittleLeftBehind => "flatten, 8 % left behind",
                Sort::LeftBehind => "flatten, 20 % left behind",
            };
            for days in [14, 28, 42] {
                let row = Row::of(by, sort, days, families);
                let rate = [row.rate_told, row.rate_near, row.rate_held].map(percent).join(" | ");
                let level = [row.level_told, row.level_near, row.level_held, row.no_sign].map(percent).join(" | ");
                let night = format!("{:+.1} % | {}", row.night_bias() * 100.0, percent(row.night_held));
                let less = [row.less_told, row.less_held].map(percent).join(" | ");
                println!("| {} | {name} | {days} | {rate} | {level} | {night} | {less} |", by.name());
            }
        }
    }
}
