//! Writes into a folder what other programs are to judge: `health-record/*.json`,
//! `units.json` with every unit we write, and a sealed record for a desktop to open.

use std::fs;
use std::path::PathBuf;
use std::process::ExitCode;

use drawwell_core::screen::shapes::{Event, Secret};
use drawwell_tests::{handed_over, person::Person, visiting};

fn main() -> ExitCode {
    let Some(folder) = std::env::args_os().nth(1).map(PathBuf::from) else {
        eprintln!("files-for-others FOLDER");
        return ExitCode::from(2);
    };
    match write(&folder) {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("{why}");
            ExitCode::FAILURE
        }
    }
}

fn write(folder: &std::path::Path) -> Result<(), Box<dyn std::error::Error>> {
    let records = folder.join("health-record");
    fs::create_dir_all(&records)?;
    for (name, file) in handed_over::health_records()? {
        fs::write(records.join(format!("{name}.json")), file)?;
    }
    fs::write(folder.join("units.json"), serde_json::to_vec_pretty(&handed_over::units())?)?;
    fs::write(folder.join("shared.drawwell-family"), sealed()?)?;
    Ok(())
}

/// The invented family's record, sealed with a passphrase.
fn sealed() -> Result<Vec<u8>, drawwell_core::trouble::Trouble> {
    let secret = Secret { words: "seven wells stand by the mill and the meadow".to_owned() };
    let event = Event::EnterSecret { id: "seal-passphrase".to_owned(), secret };
    visiting::takes(&mut Person::of_the_invented_family()?, event)
}
