//! One cell: a number, or a time of one of the ways to write it.

use chrono::NaiveDate;

/// A longer cell is no figure.
const LONGEST_CELL: usize = 48;
/// A larger number is no pressure and no time.
const LARGEST: f64 = 1e15;

/// What parts the cells of a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Separator {
    Tab,
    Semicolon,
    Comma,
    Spaces,
}

impl Separator {
    /// In the order in which they are tried: a comma may be a decimal comma.
    pub(super) const ALL: [Self; 4] = [Self::Tab, Self::Semicolon, Self::Comma, Self::Spaces];

    const fn character(self) -> char {
        match self {
            Self::Tab => '\t',
            Self::Semicolon => ';',
            Self::Comma => ',',
            Self::Spaces => ' ',
        }
    }

    /// The cells of a row, without their quotes.
    pub(super) fn cells(self, row: &str) -> Cells<'_> {
        let rest = if self == Self::Spaces { row.trim() } else { row };
        Cells { separator: self, rest: Some(rest) }
    }
}

/// The cells of a row.
pub(super) struct Cells<'r> {
    separator: Separator,
    rest: Option<&'r str>,
}

impl<'r> Iterator for Cells<'r> {
    type Item = &'r str;

    fn next(&mut self) -> Option<&'r str> {
        let rest = self.rest?;
        let character = self.separator.character();
        let start = rest.trim_start_matches([' ', '\u{feff}']);
        let (cell, after) = match start.strip_prefix('"').and_then(|quoted| quoted.split_once('"')) {
            Some((cell, after)) => (cell, after.split_once(character).map(|(_, after)| after)),
            None => match rest.split_once(character) {
                Some((cell, after)) => (cell, Some(after)),
                None => (rest, None),
            },
        };
        self.rest = if self.separator == Separator::Spaces { after.map(str::trim_start) } else { after };
        Some(cell.trim())
    }
}

/// A decimal number with a point or a comma; what groups thousands is taken away where the
/// other mark comes after it.
pub(super) fn number(cell: &str) -> Option<f64> {
    // Words that are numbers to a computer, such as "inf", are none here.
    if !cell.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '-' | '+' | '.' | ',' | '\u{2212}')) {
        return None;
    }
    let number = match cell.parse::<f64>() {
        Ok(number) => number,
        Err(_) => of_another_kind(cell)?,
    };
    (number.is_finite() && number.abs() <= LARGEST).then_some(number)
}

fn of_another_kind(cell: &str) -> Option<f64> {
    if cell.len() > LONGEST_CELL || !cell.bytes().any(|byte| byte.is_ascii_digit()) {
        return None;
    }
    let plain = cell.replace('\u{2212}', "-");
    let text = match (plain.rfind(','), plain.rfind('.')) {
        (Some(comma), Some(point)) if comma < point => plain.replace(',', ""),
        (Some(_), Some(_)) => plain.replace('.', "").replacen(',', ".", 1),
        _ => plain.replacen(',', ".", 1),
    };
    text.parse().ok().filter(|number: &f64| number.is_finite())
}

/// A time as it was written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Time {
    /// A number of some unit.
    Number(f64),
    /// A clock time, in seconds, and after how many seconds it begins anew.
    Clock {
        /// Since midnight, or the full hour where no hour was written.
        seconds: f64,
        /// A day, or an hour.
        around: f64,
    },
    /// A date and a clock time, in seconds since 1970.
    Date(f64),
}

const DAY: f64 = 86_400.0;
const HOUR: f64 = 3_600.0;

/// A number, a clock time (`07:40:00.02`, `40:00.02`) or a date with one.
pub(super) fn time(cell: &str) -> Option<Time> {
    if !cell.contains(':') {
        return number(cell).map(Time::Number);
    }
    if cell.len() > LONGEST_CELL {
        return None;
    }
    let (date, clock) = match cell.split_once(['T', 't', ' ']) {
        Some((date, clock)) if date.contains(['-', '/', '.']) => (Some(date), clock.trim()),
        _ => (None, cell),
    };
    let (clock, ahead) = zone(clock);
    let lower = clock.to_ascii_lowercase();
    let (clock, half) = match (lower.strip_suffix("am"), lower.strip_suffix("pm")) {
        (Some(clock), _) => (clock.trim(), Some(0.0)),
        (_, Some(clock)) => (clock.trim(), Some(12.0)),
        _ => (lower.as_str(), None),
    };
    let mut parts = [0.0; 3];
    let mut count = 0;
    for part in clock.split(':') {
        *parts.get_mut(count)? = number(part).filter(|part| *part >= 0.0)?;
        count += 1;
    }
    let [mut hours, minutes, seconds] = match (count, parts) {
        (3, parts) => parts,
        (2, [minutes, seconds, _]) if half.is_none() && date.is_none() => {
            return (seconds < 60.0).then_some(Time::Clock { seconds: minutes * 60.0 + seconds, around: HOUR })
        }
        _ => return None,
    };
    if minutes >= 60.0 || seconds >= 61.0 {
        return None;
    }
    if let Some(half) = half {
        hours = hours % 12.0 + half;
    }
    let seconds = hours * HOUR + minutes * 60.0 + seconds;
    match date.and_then(days) {
        Some(days) if hours < 25.0 => Some(Time::Date(days * DAY + seconds - ahead)),
        // A date whose day and month cannot be told apart: the clock alone says enough.
        _ => Some(Time::Clock { seconds, around: DAY }),
    }
}

/// A clock time without its zone, and how many seconds that is ahead.
fn zone(clock: &str) -> (&str, f64) {
    if let Some(clock) = clock.strip_suffix(['Z', 'z']) {
        return (clock, 0.0);
    }
    let Some(at) = clock.rfind(['+', '-']) else { return (clock, 0.0) };
    let (Some(before), Some(offset)) = (clock.get(..at), clock.get(at..)) else { return (clock, 0.0) };
    let digits: String = offset.chars().filter(char::is_ascii_digit).collect();
    let sign = if offset.starts_with('-') { -1.0 } else { 1.0 };
    let ahead = match (digits.len(), digits.parse::<u32>()) {
        (2, Ok(hours)) => f64::from(hours) * HOUR,
        (4, Ok(both)) => f64::from(both / 100) * HOUR + f64::from(both % 100) * 60.0,
        _ => return (clock, 0.0),
    };
    (before.trim_end(), sign * ahead)
}

/// Days since 1970 of a date that begins with its year.
fn days(date: &str) -> Option<f64> {
    let mut parts = date.split(['-', '/', '.']);
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    if year.len() != 4 || parts.next().is_some() {
        return None;
    }
    let date = NaiveDate::from_ymd_opt(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?)?;
    let start = NaiveDate::from_ymd_opt(1970, 1, 1)?;
    Some(date.signed_duration_since(start).num_days() as f64)
}
