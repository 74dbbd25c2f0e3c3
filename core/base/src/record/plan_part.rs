//! What a part of a plan may set, and the name under which it is kept as it was.

/// The fields of the rhythm that a plan may set.
pub const OF_RHYTHM: &[&str] =
    &["sessions_a_day", "longest_interval", "shortest_interval", "sleep_stretch", "night_sessions"];

/// The fields of a comparison that a plan may set up; it is begun by who compares.
pub const OF_TRIAL: &[&str] = &["way_a", "way_b", "differs", "trial_design", "outcome", "trial_sessions"];

/// The record in which an answered part is kept as it was before a later plan changed it.
pub fn part_before(part: &str) -> String {
    format!("{part}-before")
}

/// Whether a record is such a part.
pub fn is_part_before(part: &str) -> bool {
    part.ends_with("-before")
}
