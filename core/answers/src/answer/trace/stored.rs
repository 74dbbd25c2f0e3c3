//! Findings as a journal keeps them: JSON, under 30 kB, `"way": 2`.
//!
//! What can't be read back whole is none: findings are worked out anew from the file.

use serde_json::{Map, Value};

use super::close::MOST_SAMPLES;
use super::collapse::MOST as MOST_COLLAPSES;
use super::phases::{Pattern, MOST_SEGMENTS};
use super::{
    AsRead, AsReadPerMinute, AsReadPerSecond, Clipped, CloseUp, Collapse, Column, Cycles, Findings, Notes, Offset,
    Seconds, Segment, Spread, TimeUnit, MOST_COLUMNS,
};
use crate::answer::Estimate;
use crate::quantity::{Count, Quantity, Share, Speed};
use crate::record::mark::Phase;

/// The way these findings are worked out and written.
const WAY: u64 = 2;
/// The ways that are read. In the first nobody looked for lone bad readings, a pull that was lost, or a
/// zero that moved, nor asked which rate is the fastest: none of them stands there.
const WAYS: std::ops::RangeInclusive<u64> = 1..=WAY;

impl Findings {
    /// What is kept.
    pub fn to_json(&self) -> Value {
        let mut kept = self.keep();
        if let Some(object) = kept.as_object_mut() {
            object.insert("way".to_owned(), Value::from(WAY));
        }
        kept
    }

    /// Reads what was kept; None where it is not whole, or of another way.
    pub fn from_json(value: &Value) -> Option<Self> {
        let found = WAYS.contains(&value.get("way")?.as_u64()?).then(|| Self::read(value)).flatten()?;
        let sound = !found.segments.is_empty()
            && found.segments.len() <= MOST_SEGMENTS
            && found.switches.len() < found.segments.len()
            && found.picture.len() <= MOST_COLUMNS
            && found.close.values.len() <= MOST_SAMPLES
            && found.collapses.as_ref().is_none_or(|collapses| collapses.len() <= MOST_COLLAPSES);
        sound.then_some(found)
    }
}

trait Stored: Sized {
    fn keep(&self) -> Value;
    fn read(value: &Value) -> Option<Self>;
}

macro_rules! stored_number {
    ($($name:ident: $of:expr, $get:expr;)+) => {
        $(impl Stored for $name {
            fn keep(&self) -> Value {
                let get: fn(Self) -> f64 = $get;
                Value::from(get(*self))
            }
            fn read(value: &Value) -> Option<Self> { value.as_f64().map($of) }
        })+
    };
}

stored_number! {
    AsRead: Self::new, Self::get;
    AsReadPerMinute: Self::new, Self::get;
    AsReadPerSecond: Self::new, Self::get;
    Seconds: Self::new, Self::get;
    Share: Self::of, Self::fraction;
    Speed: Self::from_canonical, Self::canonical;
}

macro_rules! stored_fields {
    ($($name:ident { $($field:ident),+ $(,)? })+) => {
        $(impl Stored for $name {
            fn keep(&self) -> Value {
                let mut object = Map::new();
                $(object.insert(stringify!($field).to_owned(), self.$field.keep());)+
                Value::Object(object)
            }
            fn read(value: &Value) -> Option<Self> {
                Some(Self { $($field: Stored::read(value.get(stringify!($field)).unwrap_or(&Value::Null))?),+ })
            }
        })+
    };
}

stored_fields! {
    Findings {
        duration, overall, segments, pattern, switches, noise, offset, clipped, collapses, zero, rest_rises,
        fastest, unread, notes, picture, close,
    }
    CloseUp { from, step, values }
    Segment { from, to, phase, cycles }
    Cycles {
        count, missed, stops, missed_share, weak_share, rate, peak, highest, rest, at_vacuum, rise, release, peak_drift,
        rest_drift, leak,
    }
    Clipped { at, share }
    Collapse { from, to, before, after }
    Notes {
        rows, passed_over, first_passed_over, dropouts, dropped, spikes, native_step, sign_turned, time_unit_assumed,
        times_spread, at_extreme,
    }
}

macro_rules! stored_words {
    ($($name:ident { $($variant:ident = $word:literal),+ $(,)? })+) => {
        $(impl Stored for $name {
            fn keep(&self) -> Value {
                Value::from(match self { $(Self::$variant => $word),+ })
            }
            fn read(value: &Value) -> Option<Self> {
                match value.as_str()? { $($word => Some(Self::$variant),)+ _ => None }
            }
        })+
    };
}

stored_words! {
    Pattern { One = "one", LetdownAndExpression = "letdown-and-expression", Changing = "changing" }
    Phase { Letdown = "letdown", Expression = "expression", Rest = "rest" }
    TimeUnit { Second = "s", Millisecond = "ms", Microsecond = "us", Minute = "min" }
}

impl Stored for bool {
    fn keep(&self) -> Value {
        Value::from(*self)
    }
    fn read(value: &Value) -> Option<Self> {
        value.as_bool()
    }
}

impl Stored for Count {
    fn keep(&self) -> Value {
        Value::from(self.get())
    }
    fn read(value: &Value) -> Option<Self> {
        value.as_u64().and_then(|count| u32::try_from(count).ok()).map(Self::new)
    }
}

impl<K: Stored> Stored for Option<K> {
    fn keep(&self) -> Value {
        self.as_ref().map_or(Value::Null, K::keep)
    }
    fn read(value: &Value) -> Option<Self> {
        match value {
            Value::Null => Some(None),
            there => K::read(there).map(Some),
        }
    }
}

impl<K: Stored> Stored for Vec<K> {
    fn keep(&self) -> Value {
        self.iter().map(K::keep).collect()
    }
    fn read(value: &Value) -> Option<Self> {
        value.as_array()?.iter().map(K::read).collect()
    }
}

/// Figures that stand together, in a fixed order.
fn figures<K: Stored, const N: usize>(value: &Value) -> Option<[K; N]> {
    Vec::read(value)?.try_into().ok()
}

impl<K: Stored> Stored for Estimate<K> {
    fn keep(&self) -> Value {
        [&self.value, &self.low, &self.high].into_iter().map(K::keep).collect()
    }
    fn read(value: &Value) -> Option<Self> {
        let [value, low, high] = figures(value)?;
        Some(Self { value, low, high })
    }
}

impl<K: Stored> Stored for Spread<K> {
    fn keep(&self) -> Value {
        [&self.usual, &self.low, &self.high].into_iter().map(K::keep).collect()
    }
    fn read(value: &Value) -> Option<Self> {
        let [usual, low, high] = figures(value)?;
        Some(Self { usual, low, high })
    }
}

impl Stored for Column {
    fn keep(&self) -> Value {
        [self.low, self.high].iter().map(Stored::keep).collect()
    }
    fn read(value: &Value) -> Option<Self> {
        let [low, high] = figures(value)?;
        Some(Self { low, high })
    }
}

impl Stored for Offset {
    fn keep(&self) -> Value {
        let (word, by) = match self {
            Self::Still(by) => ("still", by),
            Self::AboveAmbient(by) => ("above-ambient", by),
        };
        Value::Object(Map::from_iter([(word.to_owned(), by.keep())]))
    }
    fn read(value: &Value) -> Option<Self> {
        let of = |word: &str| value.get(word).and_then(AsRead::read);
        of("still").map(Self::Still).or_else(|| of("above-ambient").map(Self::AboveAmbient))
    }
}
