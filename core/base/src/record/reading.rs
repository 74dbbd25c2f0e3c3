//! What a gauge showed.

use serde_json::{json, Map, Value};

use super::choices::SIDES;
use super::field_type::{within, FieldType};
use super::Sides;
use crate::quantity::{Entered, Level, Vacuum};
use crate::time::Moment;
use crate::trouble::Trouble;

/// More than air can press with anywhere, in mmHg: 1100 hPa.
pub const MOST_VACUUM: f64 = 825.0;

/// Where a gauge was read: at which level, on which side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Place {
    /// The level on the dial; none is the highest there is.
    pub level: Option<Level>,
    /// The side; both where the pump has one port.
    pub side: Sides,
}

/// One reading.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// When.
    pub at: Moment,
    /// At which level, on which side.
    pub place: Place,
    /// The highest vacuum that the gauge showed, as typed.
    pub vacuum: Entered<Vacuum>,
    /// What the pump says it was set to, where it says a vacuum.
    pub set: Option<Entered<Vacuum>>,
}

impl Reading {
    /// The stored form. Other members of `beside` are kept as they are.
    pub fn to_json(&self, beside: Option<&Value>) -> Value {
        let mut map: Map<String, Value> = beside.and_then(Value::as_object).cloned().unwrap_or_default();
        let mut put = |key: &str, value: Option<Value>| match value {
            Some(value) => drop(map.insert(key.to_owned(), value)),
            None => drop(map.remove(key)),
        };
        put("at", Some(json!(self.at.to_rfc3339())));
        put("zone", Some(json!(self.at.zone_name())));
        put("level", self.place.level.map(|level| json!(level.get())));
        put("side", Some(json!(self.place.side.name())));
        put("vacuum", Some(self.vacuum.to_json()));
        put("set", self.set.as_ref().map(Entered::to_json));
        Value::Object(map)
    }

    /// Reads the stored form; the error names the reading's field.
    ///
    /// # Errors
    /// Where it is no reading.
    pub fn from_json(field: &str, value: &Value) -> Result<Self, Trouble> {
        let bad = || Trouble::bad(field, "bad-reading");
        let get = |key: &str| value.get(key).and_then(Value::as_str);
        let at = Moment::from_parts(get("at").ok_or_else(bad)?, get("zone").ok_or_else(bad)?)
            .map_err(|_| Trouble::bad(field, "bad-moment"))?;
        let side = get("side").filter(|side| SIDES.contains(side)).ok_or_else(bad)?;
        let level = match value.get("level") {
            None | Some(Value::Null) => None,
            Some(level) => {
                FieldType::Whole { least: 0, most: 99 }.check(field, level)?;
                level.as_u64().and_then(|n| u32::try_from(n).ok()).map(Level::new)
            }
        };
        let vacuum = |found: &Value| {
            let entered = Entered::<Vacuum>::from_json(found).ok_or_else(|| Trouble::bad(field, "bad-quantity"))?;
            within(field, &entered, 0.0, MOST_VACUUM)?;
            Ok::<_, Trouble>(entered)
        };
        Ok(Self {
            at,
            place: Place { level, side: Sides::named(Some(side)) },
            vacuum: vacuum(value.get("vacuum").ok_or_else(bad)?)?,
            set: value.get("set").filter(|set| !set.is_null()).map(vacuum).transpose()?,
        })
    }
}
