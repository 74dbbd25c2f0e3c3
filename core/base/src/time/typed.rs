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

impl ClockTime {
    /// As it is stored: `22:30`.
    pub fn say(self) -> String {
        self.0.format("%H:%M").to_string()
    }

    /// Minutes since midnight on the wall.
    pub fn minutes(self) -> u32 {
        use chrono::Timelike;
        self.0.hour() * 60 + self.0.minute()
    }
}

/// A length of time in whole minutes as `h:mm`.
pub fn say_minutes(minutes: u32) -> String {
    format!("{}:{:02}", minutes / 60, minutes % 60)
}

/// Reads a length of time as whole minutes: `3:30`, `3 h 30`, `3 h`, `90 min`, `1.5 h`. A
/// bare figure up to 24 is taken as hours, above that as minutes.
pub fn parse_minutes(text: &str) -> Option<u32> {
    let lower = text.trim().to_ascii_lowercase().replace(' ', "").replace(',', ".");
    let lower = lower.strip_suffix("utes").unwrap_or(&lower);
    let whole = |s: &str| -> Option<u32> {
        (!s.is_empty() && s.len() <= 4 && s.chars().all(|c| c.is_ascii_digit())).then(|| s.parse().ok()).flatten()
    };
    let hours = |s: &str| -> Option<u32> {
        let (before, after) = s.split_once('.').unwrap_or((s, "0"));
        let plain = |s: &str| s.len() <= 2 && s.chars().all(|c| c.is_ascii_digit());
        if before.is_empty() || after.is_empty() || !plain(before) || !plain(after) {
            return None;
        }
        let value: f64 = s.parse().ok()?;
        Some((value * 60.0).round() as u32)
    };
    if let Some((h, m)) = lower.split_once(':') {
        return Some(whole(h)? * 60 + whole(m).filter(|m| *m < 60)?);
    }
    if let Some(m) = lower.strip_suffix("min") {
        return match m.split_once('h') {
            Some((h, m)) => Some(whole(h)? * 60 + whole(m).filter(|m| *m < 60)?),
            None => whole(m),
        };
    }
    if let Some((h, m)) = lower.split_once('h') {
        return match m {
            "" => hours(h),
            m => Some(whole(h)? * 60 + whole(m).filter(|m| *m < 60)?),
        };
    }
    match whole(lower) {
        Some(bare) if bare <= 24 => Some(bare * 60),
        Some(bare) => Some(bare),
        None => hours(lower),
    }
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
