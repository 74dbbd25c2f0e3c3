//! Writes the invented family anew into `demo-data`.

use std::{fs, io};

use drawwell_tests::{demo_family, place};

fn main() -> io::Result<()> {
    fs::write(place::demo_data("family.jsonl"), demo_family::file(demo_family::facts()))?;
    fs::write(place::demo_data("family.clock"), demo_family::clock())
}
