//! Files for other programs, made for those programs to judge: health records of the
//! invented family and of a record with every kind of fact in it, and every unit we write.

use drawwell_core::journal::Journal;
use drawwell_core::quantity::{
    AirPressureUnit, AltitudeUnit, DriftUnit, LeakUnit, LengthUnit, MassUnit, ProductionUnit, SpeedUnit,
    TemperatureUnit, Unit, VacuumUnit, VolumeUnit, WearUnit,
};
use drawwell_core::share::health_record;
use drawwell_core::share::parts::{LeftOut, SharePart};
use drawwell_core::text::Texts;
use drawwell_core::time::Moment;
use drawwell_core::trouble::Trouble;
use serde_json::{json, Value};

use crate::place;

/// A record by hand, with every kind of fact, every way to say an amount, text in several
/// scripts, and units other than our own. Its moments lie before [`NOW`].
pub const EVERY_KIND: &str = include_str!("../fixtures/every-kind.jsonl");

/// The present of these files.
pub const NOW: (&str, &str) = ("2026-08-14T12:40:00+02:00", "Europe/Berlin");

/// A page that stands for the visit sheet.
pub const PAGE: &[u8] = b"%PDF-1.7\n% a page\n%%EOF\n";

fn moment() -> Result<Moment, Trouble> {
    Moment::from_parts(NOW.0, NOW.1).map_err(|_| Trouble::bad("", "bad-moment"))
}

/// A health record of a record in the exchange form.
///
/// # Errors
/// Where the record can't be brought in or written.
pub fn health_record(record: &[u8], left_out: &[SharePart], sheet: Option<&[u8]>) -> Result<Vec<u8>, Trouble> {
    let folder = tempfile::tempdir().map_err(|_| Trouble::bad("", "trouble-cannot-open"))?;
    let now = moment()?;
    let mut journal = Journal::open(&folder.path().join("record.drawwell"), "hand", now.instant())?.journal;
    drawwell_core::share::exchange::begin_with(&mut journal, &mut &*record, now.instant())?;
    let mut parts = LeftOut::default();
    for part in left_out {
        parts.set(*part, true);
    }
    let mut out = Vec::new();
    health_record::write(&journal, &parts, &Texts::new("en"), sheet, &now, &mut out)?;
    Ok(out)
}

/// Health records by name: of every kind, of nothing, with parts left out, of the family.
///
/// # Errors
/// As [`health_record`].
pub fn health_records() -> Result<Vec<(String, Vec<u8>)>, Trouble> {
    let family =
        std::fs::read(place::demo_data("family.jsonl")).map_err(|_| Trouble::bad("", "trouble-cannot-open"))?;
    let every = EVERY_KIND.as_bytes();
    let mut files = vec![
        ("every-kind".to_owned(), health_record(every, &[], Some(PAGE))?),
        ("nothing".to_owned(), health_record(b"", &[], None)?),
        ("all-left-out".to_owned(), health_record(every, SharePart::ALL, None)?),
        ("family".to_owned(), health_record(&family, &[], None)?),
    ];
    for part in SharePart::ALL {
        files.push((format!("without-{}", part.name()), health_record(every, &[*part], Some(PAGE))?));
    }
    Ok(files)
}

/// One conversion for every unit we write: so much of it, and how much that is in the
/// canonical unit of its dimension.
pub fn units() -> Vec<Value> {
    fn of<U: Unit>() -> Vec<Value> {
        let Some(canonical) = U::ALL.first() else { return Vec::new() };
        let one = |unit: &U| {
            let (factor, zero) = unit.factor_and_zero();
            json!({ "unit": unit.ucum(), "value": 12.5, "in": canonical.ucum(), "is": 12.5 * factor + zero })
        };
        U::ALL.iter().map(one).collect()
    }
    let mut all = [
        of::<VolumeUnit>(),
        of::<VacuumUnit>(),
        of::<WearUnit>(),
        of::<LeakUnit>(),
        of::<AirPressureUnit>(),
        of::<AltitudeUnit>(),
        of::<SpeedUnit>(),
        of::<MassUnit>(),
        of::<TemperatureUnit>(),
        of::<LengthUnit>(),
        of::<ProductionUnit>(),
        of::<DriftUnit>(),
    ]
    .concat();
    all.extend(["{score}", "min", "1"].map(|unit| json!({ "unit": unit, "value": 3.0, "in": unit, "is": 3.0 })));
    all
}
