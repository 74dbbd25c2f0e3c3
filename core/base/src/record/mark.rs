//! What was marked while a session ran.

use serde_json::{json, Map, Value};

use super::choices::SIDES;
use super::field_type::{within, FieldType, MOST_AMOUNT_MILLILITERS};
use crate::quantity::{Entered, Level, Score, Speed, Vacuum, Volume};
use crate::time::Moment;
use crate::trouble::{Detail, Trouble};

/// The member of a setting that says whether it was carried over.
const CARRIED: &str = "carried";

/// Whether a stored mark does not say if its setting was carried over: those of before this
/// was told apart.
pub(super) fn leaves_open_if_carried(value: &Value) -> bool {
    value.get("does").and_then(Value::as_str) == Some("setting") && value.get(CARRIED).is_none()
}

/// The same mark, said to have been touched. A mark that took the place of an earlier value
/// was set by a hand.
pub fn as_touched(json: &str) -> Option<String> {
    let mut value: Value = serde_json::from_str(json).ok()?;
    if !leaves_open_if_carried(&value) {
        return None;
    }
    value.as_object_mut()?.insert(CARRIED.to_owned(), json!(false));
    Some(value.to_string())
}

/// The phases of a session.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Phase {
    /// Fast and light, until milk lets down.
    Letdown,
    /// Slower, while milk flows.
    Expression,
    /// The pump rests.
    Rest,
}

impl Phase {
    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Letdown => "letdown",
            Self::Expression => "expression",
            Self::Rest => "rest",
        }
    }

    fn named(name: &str) -> Option<Self> {
        [Self::Letdown, Self::Expression, Self::Rest].into_iter().find(|p| p.name() == name)
    }
}

/// What a mark says.
#[derive(Debug, Clone, PartialEq)]
pub enum MarkKind {
    /// A phase began.
    Phase(Phase),
    /// The pump was set: what of it is said holds from here on.
    Setting {
        /// The level on the pump's dial.
        level: Option<Level>,
        /// The vacuum, where the pump shows it.
        vacuum: Option<Entered<Vacuum>>,
        /// Cycles per minute.
        cycles: Option<Entered<Speed>>,
        /// Turned down because it hurt.
        for_discomfort: bool,
        /// Set by the program as it was last time, and touched by nobody: what the dial is
        /// taken to show, and no fact. Nothing that is worked out counts it as used.
        carried: bool,
    },
    /// A letdown was seen or felt.
    Letdown,
    /// The other side from here on: the mark's side says which.
    OtherSide,
    /// It was comfortable as it was set. Nothing said of pain is not this.
    Comfortable,
    /// It hurt; the score may not have been said.
    Pain {
        /// 0 to 10.
        score: Option<Score>,
    },
    /// So much had come by then, from all sides together.
    SoFar {
        /// What the containers held.
        amount: Entered<Volume>,
    },
}

impl MarkKind {
    /// The stable names of all kinds, as the stored form says them.
    pub const NAMES: &[&str] = &["phase", "setting", "letdown", "other_side", "comfortable", "pain", "so_far"];

    /// Its stable name.
    pub const fn name(&self) -> &'static str {
        match self {
            Self::Phase(_) => "phase",
            Self::Setting { .. } => "setting",
            Self::Letdown => "letdown",
            Self::OtherSide => "other_side",
            Self::Comfortable => "comfortable",
            Self::Pain { .. } => "pain",
            Self::SoFar { .. } => "so_far",
        }
    }
}

/// One mark of a session.
#[derive(Debug, Clone, PartialEq)]
pub struct Mark {
    /// When.
    pub at: Moment,
    /// `left`, `right` or `both`, where it was said.
    pub side: Option<String>,
    /// What it says.
    pub kind: MarkKind,
}

impl Mark {
    /// The stored form. Other members of `beside` are kept as they are.
    pub fn to_json(&self, beside: Option<&Value>) -> Value {
        let mut map: Map<String, Value> = beside.and_then(Value::as_object).cloned().unwrap_or_default();
        let mut put = |key: &str, value: Option<Value>| match value {
            Some(value) => drop(map.insert(key.to_owned(), value)),
            None => drop(map.remove(key)),
        };
        put("at", Some(json!(self.at.to_rfc3339())));
        put("zone", Some(json!(self.at.zone_name())));
        put("side", self.side.as_ref().map(|s| json!(s)));
        match &self.kind {
            MarkKind::Phase(phase) => put("phase", Some(json!(phase.name()))),
            MarkKind::Setting { level, vacuum, cycles, for_discomfort, carried } => {
                put("level", level.map(|l| json!(l.get())));
                put("vacuum", vacuum.as_ref().map(Entered::to_json));
                put("cycles", cycles.as_ref().map(Entered::to_json));
                put("for_discomfort", for_discomfort.then(|| json!(true)));
                put(CARRIED, Some(json!(carried)));
            }
            MarkKind::Letdown | MarkKind::OtherSide | MarkKind::Comfortable => {}
            MarkKind::Pain { score } => put("score", score.map(|s| json!(s.get()))),
            MarkKind::SoFar { amount } => put("amount", Some(amount.to_json())),
        }
        put("does", Some(json!(self.kind.name())));
        Value::Object(map)
    }

    /// Reads the stored form; the error names the mark's field.
    ///
    /// # Errors
    /// Where it is no mark.
    pub fn from_json(field: &str, value: &Value) -> Result<Self, Trouble> {
        let bad = || Trouble::bad(field, "bad-mark");
        let get = |key: &str| value.get(key).and_then(Value::as_str);
        let at = Moment::from_parts(get("at").ok_or_else(bad)?, get("zone").ok_or_else(bad)?)
            .map_err(|_| Trouble::bad(field, "bad-moment"))?;
        let side = get("side").map(str::to_owned);
        if side.as_deref().is_some_and(|s| !SIDES.contains(&s)) {
            return Err(Trouble::bad(field, "bad-choice").with("words", Detail::choices(SIDES.iter().copied())));
        }
        let kind = match get("does").ok_or_else(bad)? {
            "phase" => MarkKind::Phase(get("phase").and_then(Phase::named).ok_or_else(bad)?),
            "letdown" => MarkKind::Letdown,
            "other_side" if get("side").is_some_and(|side| side != "both") => MarkKind::OtherSide,
            "comfortable" => MarkKind::Comfortable,
            "pain" => MarkKind::Pain { score: whole(field, value, "score", 10)?.map(Score::new) },
            "so_far" => MarkKind::SoFar {
                amount: quantity(field, value, "amount", |e| within::<Volume>(field, e, 0.0, MOST_AMOUNT_MILLILITERS))?
                    .ok_or_else(bad)?,
            },
            "setting" => MarkKind::Setting {
                level: whole(field, value, "level", 99)?.map(Level::new),
                vacuum: quantity(field, value, "vacuum", |e| within::<Vacuum>(field, e, 0.0, 760.0))?,
                cycles: quantity(field, value, "cycles", |e| within::<Speed>(field, e, 1.0, 240.0))?,
                for_discomfort: value.get("for_discomfort").and_then(Value::as_bool).unwrap_or(false),
                carried: value.get(CARRIED).and_then(Value::as_bool).unwrap_or(false),
            },
            _ => return Err(bad()),
        };
        Ok(Self { at, side, kind })
    }
}

fn whole(field: &str, value: &Value, key: &str, most: u32) -> Result<Option<u32>, Trouble> {
    match value.get(key) {
        None => Ok(None),
        Some(found) => {
            FieldType::Whole { least: 0, most }.check(field, found)?;
            Ok(found.as_u64().and_then(|n| u32::try_from(n).ok()))
        }
    }
}

fn quantity<Q: crate::quantity::Quantity>(
    field: &str,
    value: &Value,
    key: &str,
    check: impl Fn(&Entered<Q>) -> Result<(), Trouble>,
) -> Result<Option<Entered<Q>>, Trouble> {
    match value.get(key) {
        None => Ok(None),
        Some(found) => {
            let entered = Entered::from_json(found).ok_or_else(|| Trouble::bad(field, "bad-quantity"))?;
            check(&entered)?;
            Ok(Some(entered))
        }
    }
}
