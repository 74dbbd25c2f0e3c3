//! Whether a gauge's calibration was good on the day it was read.
//!
//! A calibration says what a gauge showed on the day it was done. How long that is relied on is for whoever owns
//! the gauge to set, and no certificate says it unasked (ISO/IEC 17025:2017, 7.8.4.3; from memory).

use chrono::NaiveDate;

use crate::record::Gauge;

/// The day on which it was due, where that had passed on the day of a reading.
pub fn past_due(gauge: &Gauge, on: NaiveDate) -> Option<NaiveDate> {
    gauge.calibration_due.filter(|due| on > *due)
}
