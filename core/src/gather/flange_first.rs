//! Whether the flange is to be looked at before the vacuum.

use super::flange_fit::FitLook;
use super::Record;
use crate::answer::comfort::{self, FlangeFirst};
use crate::answer::flange_fit::{stands, InUse, Sign};
use crate::guidance::ComfortRules;
use crate::quantity::Level;
use crate::record::{whole_number, Fields, MarkKind, Session};
use crate::trouble::Trouble;

/// Sessions that are read, for each that is looked for: many say no level.
const READ_FOR_EACH: u32 = 4;

/// Looks at the latest sessions of the pump that is used now, and at how the flange fits.
///
/// # Errors
/// Where the store can't be read.
pub fn flange_first(record: &Record<'_>) -> Result<Option<FlangeFirst>, Trouble> {
    let rules = ComfortRules::read(record.rules()?);
    let most = rules.suspect_of.get().saturating_mul(READ_FOR_EACH);
    let mut pump: Option<String> = None;
    let mut strongest = Vec::new();
    for row in record.journal.latest_sessions(record.now, most)?.into_iter().filter(|row| !row.running) {
        let (_, fields) = record.record(&row.subject)?;
        let session = Session::read(&row.subject, &fields);
        let Some(own) = session.pump.clone() else { continue };
        if *pump.get_or_insert_with(|| own.clone()) == own {
            strongest.extend(strongest_level(&session, &fields));
        }
    }
    let Some(pump) = pump else { return Ok(None) };
    let top = record.journal.record(&pump)?.and_then(|(_, fields)| whole_number(&fields, "levels")).map(Level::new);
    let look = FitLook::over(record)?;
    let of_side = |side: &str| {
        let size = look.in_use.iter().find(|(of, _)| of == side || of == "both").map(|(_, size)| *size)?;
        Some(stands(size, &look.candidates(side)?))
    };
    let sides = ["left", "right"];
    let too_wide = sides.iter().any(|side| of_side(side) == Some(InUse::Larger));
    let mut signs: Vec<Sign> = Vec::new();
    for sign in sides.iter().filter_map(|side| look.latest(side)).flat_map(|measured| measured.signs) {
        if !signs.contains(&sign) {
            signs.push(sign);
        }
    }
    Ok(comfort::flange_first(&strongest, top, too_wide.then_some(InUse::Larger), &signs, &rules))
}

/// The strongest level that a hand set in a session.
fn strongest_level(session: &Session, fields: &Fields) -> Option<Level> {
    let marked = session.marks.iter().filter_map(|(_, mark)| match &mark.kind {
        MarkKind::Setting { level, carried: false, .. } => *level,
        _ => None,
    });
    let written = ["level_letdown", "level_expression"].into_iter().filter_map(|key| whole_number(fields, key));
    marked.chain(written.map(Level::new)).max()
}
