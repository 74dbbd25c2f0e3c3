//! What the family agreed on with its consultant for days and nights.

use drawwell_core::record::{Kind, RHYTHM};

use super::fact::Fact;

/// The rhythm, and what stands in the day.
pub(super) fn facts() -> Vec<Fact> {
    let point = |id: &str, what: &str, from: &str, until: &str| {
        Fact::new(Kind::FixedPoint, id)
            .says("what", what)
            .says("from", from)
            .says("until", until)
            .says("days", "monday_to_friday")
    };
    vec![
        Fact::new(Kind::Rhythm, RHYTHM)
            .says("sessions_a_day", 7)
            .says("longest_interval", 480)
            .says("shortest_interval", 60)
            .says("sleep_from", "22:45")
            .says("sleep_until", "05:45")
            .says("sleep_stretch", 360)
            .says("reminders", "sound")
            .says("night_reminders", "quiet")
            .says("lead_time", 10),
        point("point-shift", "shift", "08:30", "16:30"),
        point("point-morning-break", "break", "09:30", "10:00"),
        point("point-midday-break", "break", "12:30", "13:15"),
    ]
}
