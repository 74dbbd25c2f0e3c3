//! How settings felt, as rows.

use std::collections::BTreeMap;

use drawwell_core::answer::comfort::Felt;
use drawwell_core::answer::supply::Side;
use drawwell_core::gather::comfort::ComfortInputs;
use drawwell_core::gather::Record;
use drawwell_core::quantity::{Entered, Length};
use drawwell_core::record::{moment, text, Kind};
use drawwell_core::time::Instant;
use drawwell_core::trouble::Trouble;

use super::figures::tenths;
use super::life::Life;
use super::names::side_name;
use super::sessions::Over;
use crate::table::Comfort;

/// The rows of comfort.
pub(super) fn rows(record: &Record<'_>, life: &Life, family: &str, sessions: &[Over]) -> Result<Vec<Comfort>, Trouble> {
    let fits = Fits::of(record, sessions)?;
    let felt = ComfortInputs::read(record)?.felt;
    let row = |(number, felt): (i64, &Felt)| {
        let at = life.at(felt.at);
        let vacuum = felt.strength.vacuum.map(|vacuum| tenths(vacuum.value)).ok_or("no_check");
        let over = fits.over(felt);
        Comfort {
            family: family.to_owned(),
            number,
            day: at.day.ok(),
            day_why: at.day.err(),
            side: side_name(felt.side),
            phase: felt.phase.name(),
            vacuum_tenths: vacuum.ok(),
            vacuum_tenths_why: vacuum.err(),
            comfortable: i64::from(felt.comfortable),
            flange_over_tenths: over.ok(),
            flange_over_tenths_why: over.err(),
        }
    };
    Ok((1..).zip(&felt).map(row).collect())
}

/// How wide flanges and nipples were.
struct Fits {
    /// Tenths of mm, by flange.
    flanges: BTreeMap<String, i64>,
    /// The flange of each side, by session.
    used: BTreeMap<String, [Option<String>; 2]>,
    /// Tenths of mm before a session, by when they were measured, a side each.
    nipples: [Vec<(Instant, i64)>; 2],
}

impl Fits {
    fn of(record: &Record<'_>, sessions: &[Over]) -> Result<Self, Trouble> {
        let width = |fields: &drawwell_core::record::Fields, key: &str| {
            fields.get(key).and_then(Entered::<Length>::from_json).map(|width| tenths(width.quantity()))
        };
        let mut flanges = BTreeMap::new();
        for (id, fields) in record.journal.fields_of_kind(Kind::Flange)? {
            flanges.extend(width(&fields, "size").map(|size| (id, size)));
        }
        let flange = |over: &Over, key: &str| text(&over.fields, key).map(str::to_owned);
        let used = |over: &Over| (over.session.id.clone(), [flange(over, "flange_left"), flange(over, "flange_right")]);
        let mut nipples = [Vec::new(), Vec::new()];
        for (_, fields) in record.journal.fields_of_kind(Kind::Fit)? {
            let Some(at) = moment(&fields, "at").map(|at| at.instant()) else { continue };
            for (side, key) in nipples.iter_mut().zip(["nipple_left_before", "nipple_right_before"]) {
                side.extend(width(&fields, key).map(|width| (at, width)));
            }
        }
        Ok(Self { flanges, used: sessions.iter().map(used).collect(), nipples })
    }

    fn over(&self, felt: &Felt) -> Result<i64, &'static str> {
        let of = |sides: &[Option<String>; 2]| {
            let [left, right] = sides;
            if felt.side == Side::Left {
                left.clone()
            } else {
                right.clone()
            }
        };
        let flange = self.used.get(&felt.session).and_then(of);
        let flange = flange.and_then(|flange| self.flanges.get(&flange)).ok_or("no_flange")?;
        let [left, right] = &self.nipples;
        let measured = if felt.side == Side::Left { left } else { right };
        let nipple = measured.iter().rfind(|(at, _)| *at <= felt.at).ok_or("no_measure")?;
        Ok(flange - nipple.1)
    }
}
