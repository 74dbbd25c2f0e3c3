//! Where in a day a session that was not logged is likeliest to have been.

use super::Record;
use crate::record::Kind;
use crate::time::{Instant, LocalDay, Span};
use crate::trouble::Trouble;

/// A form begins at a time that reads as about so, in minutes.
const STEP: i64 = 5;

/// The middle of the longest time without a session that has its middle in this day. Ends of
/// the day stand for sessions where the days around it hold none.
pub(crate) fn middle_of_longest_gap(record: &Record<'_>, day: LocalDay) -> Result<Instant, Trouble> {
    let start = record.settings.day_start;
    let begins = day.begins(record.zone, start);
    let ends = begins.plus(day.lasts(record.zone, start));
    let after = LocalDay::on(day.date().succ_opt().unwrap_or_else(|| day.date()));
    // Of each session its beginning and its end, by time: those of the days around bound it.
    let mut sessions = Vec::new();
    for near in [day.earlier_by(1), day, after] {
        let rows = record.journal.of_day(near)?;
        let rows = rows.into_iter().filter(|row| row.kind == Kind::Session && !row.taken_out);
        sessions.extend(rows.filter_map(|row| row.at.map(|at| (at, row.until.unwrap_or(at)))));
    }
    if !sessions.iter().any(|(_, until)| *until <= begins) {
        sessions.push((begins, begins));
    }
    if !sessions.iter().any(|(at, _)| *at >= ends) {
        sessions.push((ends, ends));
    }
    sessions.sort_unstable();
    let mut longest = (Span::milliseconds(0), begins.plus(Span::hours(12)));
    let mut quiet_since = None;
    for (at, until) in sessions {
        if let Some(since) = quiet_since {
            let gap = at.since(since);
            let middle = since.plus(half_in_steps(gap));
            if gap > longest.0 && middle >= begins && middle < ends {
                longest = (gap, middle);
            }
        }
        quiet_since = quiet_since.max(Some(until));
    }
    Ok(longest.1)
}

fn half_in_steps(gap: Span) -> Span {
    let half = gap.in_minutes() / 2;
    Span::minutes(half - half % STEP)
}
