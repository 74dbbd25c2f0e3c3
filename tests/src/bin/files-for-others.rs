//! Writes into a folder what other programs are to judge: `health-record/*.json`, and
//! `units.json` with every unit we write.

use std::fs;
use std::path::PathBuf;
use std::process::ExitCode;

use drawwell_tests::handed_over;

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
    Ok(())
}
