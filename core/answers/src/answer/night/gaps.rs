//! Gaps between sessions, whichever side: from the end of one session or feed to the end of
//! the next. A side by itself may rest longer; that is Supply's to say.

use std::collections::BTreeMap;

use crate::answer::supply::intervals::LONGEST_INTERVAL;
use crate::record::Row;
use crate::time::{DayStart, LocalDay, Moment, Span, Zone};

/// The longest gap that ended on each day. `rows` are the sessions by time, from a day before
/// the first day on. So long a silence as no session is apart looks the same as sessions that
/// were not written down: it is no gap.
pub fn longest_by_day(rows: &[Row], zone: Zone, start: DayStart) -> BTreeMap<LocalDay, Span> {
    let mut ends: Vec<_> = rows.iter().filter(|row| !row.running).filter_map(|row| row.until.or(row.at)).collect();
    ends.sort();
    let mut longest = BTreeMap::new();
    for (from, until) in ends.iter().zip(ends.iter().skip(1)) {
        let gap = until.since(*from);
        if gap <= LONGEST_INTERVAL {
            let day = LocalDay::of(&Moment::new(*until, zone), start);
            let known = longest.entry(day).or_insert(gap);
            *known = gap.max(*known);
        }
    }
    longest
}
