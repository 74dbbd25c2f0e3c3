//! Times and dates as people type them.

use chrono::{NaiveDate, NaiveTime};

/// A time of day as typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ClockTime(pub NaiveTime);

/// Reads `7:40`, `07.40`, `0740`, `7:40 pm`. None where it is no time of day.
pub fn parse_clock_time(text: &str) -> Option<ClockTime> {
    let lower = text.trim().to_ascii_lowercase().replace(' ', "");
    let (digits, half) = if let Some(d) = lower.strip_suffix("pm") {
        (d, Some(12))
    } else if let Some(d) = lower.strip_suffix("am") {
        (d, Some(0))
    } else {
        (lower.as_str(), None)
    };
    let (hour, minute) = match digits.split_once([':', '.']) {
        Some((h, m)) if m.len() == 2 => (h, m),
        Some(_) => return None,
        None if digits.len() == 4 || digits.len() == 3 => digits.split_at_checked(digits.len() - 2)?,
        None => (digits, "00"),
    };
    let plain = |s: &str| s.len() <= 2 && s.chars().all(|c| c.is_ascii_digit());
    if !plain(hour) || !plain(minute) {
        return None;
    }
    let hour: u32 = hour.parse().ok()?;
    let minute: u32 = minute.parse().ok()?;
    let hour = match half {
        None => hour,
        Some(_) if hour == 0 || hour > 12 => return None,
        Some(base) => hour % 12 + base,
    };
    NaiveTime::from_hms_opt(hour, minute, 0).map(ClockTime)
}

/// Reads a date as `2026-03-01` or `1.3.2026`; day comes before month.
pub fn parse_date(text: &str) -> Option<NaiveDate> {
    let parts: Vec<&str> = text.trim().split(['-', '.', '/', ' ']).filter(|p| !p.is_empty()).collect();
    let [first, second, third] = parts.as_slice() else { return None };
    let all: Option<Vec<u32>> = [first, second, third]
        .iter()
        .map(|p| if p.len() <= 4 && p.chars().all(|c| c.is_ascii_digit()) { p.parse().ok() } else { None })
        .collect();
    let numbers = all?;
    let [a, b, c] = numbers.as_slice() else { return None };
    let (year, month, day) = match (first.len(), third.len()) {
        (4, _) => (*a, *b, *c),
        (_, 4) => (*c, *b, *a),
        _ => return None,
    };
    NaiveDate::from_ymd_opt(i32::try_from(year).ok()?, month, day).filter(|_| (1900..2200).contains(&year))
}
