//! A moment as a fact keeps it: instant, offset and zone.

use chrono::{DateTime, FixedOffset, NaiveDateTime, SecondsFormat};
use serde_json::{json, Value};
use thiserror::Error;

use super::{Instant, Zone};

/// When a fact happened, and where on the clock the person then was.
///
/// The instant stands whatever happens to clocks. The wall is the one that the zone's data
/// show today: what was kept under older data is shown by the newer. The offset it was kept
/// with goes out again as it came in, and stands for the wall where the zone is not known.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Moment {
    instant: Instant,
    kept_offset_seconds: i32,
    offset_seconds: i32,
    zone: String,
}

/// Why a stored moment cannot be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[error("not a moment: an RFC 3339 time with its offset, and a zone name")]
pub struct NotAMoment;

impl Moment {
    /// An instant as it stands on the wall in a zone.
    pub fn new(instant: Instant, zone: Zone) -> Self {
        let offset_seconds = zone.offset_seconds(instant);
        let zone = zone.kept_at(instant).name().to_owned();
        Self { instant, kept_offset_seconds: offset_seconds, offset_seconds, zone }
    }

    /// The instant.
    pub fn instant(&self) -> Instant {
        self.instant
    }

    /// Seconds east of UTC then and there, by the wall.
    pub fn offset_seconds(&self) -> i32 {
        self.offset_seconds
    }

    /// The zone's name as it was recorded.
    pub fn zone_name(&self) -> &str {
        &self.zone
    }

    /// The zone, where the program's data knows it.
    pub fn zone(&self) -> Option<Zone> {
        Zone::named(&self.zone).ok()
    }

    /// The date and time on the wall.
    pub fn on_the_wall(&self) -> NaiveDateTime {
        let shifted = self.instant.unix_milliseconds() + i64::from(self.offset_seconds) * 1000;
        DateTime::from_timestamp_millis(shifted).map_or(NaiveDateTime::MIN, |d| d.naive_utc())
    }

    /// `{"at": RFC 3339 with milliseconds and offset, "zone": IANA name}`, with the offset it
    /// was kept with.
    pub fn to_json(&self) -> Value {
        json!({ "at": self.with_offset(self.kept_offset_seconds), "zone": self.zone })
    }

    /// RFC 3339 with milliseconds and the wall's offset.
    pub fn to_rfc3339(&self) -> String {
        self.with_offset(self.offset_seconds)
    }

    fn with_offset(&self, seconds: i32) -> String {
        let offset = FixedOffset::east_opt(seconds);
        let utc = DateTime::from_timestamp_millis(self.instant.unix_milliseconds());
        match (utc, offset) {
            (Some(utc), Some(offset)) => utc.with_timezone(&offset).to_rfc3339_opts(SecondsFormat::Millis, false),
            _ => String::new(),
        }
    }

    /// Reads `at` and `zone`; a zone that is not known here is kept by name.
    ///
    /// # Errors
    /// [`NotAMoment`] where `at` is no time with its offset.
    pub fn from_parts(at: &str, zone: &str) -> Result<Self, NotAMoment> {
        let parsed = DateTime::parse_from_rfc3339(at).map_err(|_| NotAMoment)?;
        let clean = !zone.is_empty()
            && zone.len() <= 64
            && zone.chars().all(|c| c.is_ascii_alphanumeric() || "/_+-".contains(c));
        if !clean {
            return Err(NotAMoment);
        }
        let instant = Instant::from_unix_milliseconds(parsed.timestamp_millis());
        let kept_offset_seconds = parsed.offset().local_minus_utc();
        let offset_seconds = Zone::named(zone).map_or(kept_offset_seconds, |zone| zone.offset_seconds(instant));
        Ok(Self { instant, kept_offset_seconds, offset_seconds, zone: zone.to_owned() })
    }

    /// Reads the stored form.
    ///
    /// # Errors
    /// [`NotAMoment`] where it is none.
    pub fn from_json(value: &Value) -> Result<Self, NotAMoment> {
        let text = |key: &str| value.get(key).and_then(Value::as_str).ok_or(NotAMoment);
        Self::from_parts(text("at")?, text("zone")?)
    }
}
