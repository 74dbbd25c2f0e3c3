//! How fast each side fills again, week by week, as rows.

use drawwell_core::answer::refill::{Flattens, Well, WellOf};
use drawwell_core::answer::supply::Calendar;
use drawwell_core::gather::refill::curves;
use drawwell_core::gather::Record;
use drawwell_core::trouble::Trouble;

use super::figures::Tenths;
use super::life::Life;
use super::names::side_name;
use crate::table::Refills;

/// Weeks of life that are looked at: every second, since a curve looks back over six.
const WEEKS: [i64; 6] = [2, 4, 6, 8, 10, 12];

/// The rows of refills.
pub(super) fn rows(record: &Record<'_>, life: &Life, family: &str) -> Result<Vec<Refills>, Trouble> {
    let mut rows = Vec::new();
    for week in WEEKS {
        let Some(ends) = life.week_ends(week).filter(|ends| *ends <= record.now) else { continue };
        let then = Record::new(record.journal, ends, record.zone)?;
        let calendar = Calendar { start: then.settings.day_start, zone: then.zone };
        rows.extend(curves(&then, calendar, None)?.wells.iter().map(|well| row(family, week, well)));
    }
    Ok(rows)
}

fn row(family: &str, week: i64, well: &Well) -> Refills {
    let rate = Tenths::from(well.rate);
    let flattens = match well.flattens {
        Flattens::At(volume) => Ok(Tenths::from(volume).value),
        Flattens::NoSignUpTo(_) => Err("no_sign"),
        Flattens::CannotTellYet => Err("cannot_tell"),
    };
    Refills {
        family: family.to_owned(),
        week,
        side: match well.of {
            WellOf::Side(side) => side_name(side),
            WellOf::Together => "together",
        },
        rate_tenths: rate.value,
        rate_low: rate.low,
        rate_high: rate.high,
        slows: flattens.map_or_else(|why| why, |_| "yes"),
        flattens_tenths: flattens.ok(),
        flattens_tenths_why: flattens.err(),
        intervals: i64::from(well.intervals.get()),
    }
}
