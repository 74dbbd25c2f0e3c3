//! Fields of a record, set together.

use super::state::{App, Present};
use crate::record::{check, text, whole_number, Fields, Kind, READINGS};
use crate::trouble::Trouble;
use serde_json::{json, Value};

/// New values of fields, by name; null makes one say nothing.
pub(super) type NewValues = Vec<(String, Value)>;

/// The field of the reading that is written down next.
pub(super) const NEXT: &str = "readings/next";

impl App {
    /// Sets fields of a record after checking that the whole still holds.
    pub(super) fn set_fields(
        &mut self,
        id: &str,
        kind: Kind,
        mut fields: Fields,
        values: NewValues,
        name: &str,
        present: Present,
    ) -> Result<(), Trouble> {
        for (field, value) in &values {
            check::field(kind, field, value)?;
            match value {
                Value::Null => drop(fields.remove(field)),
                _ => drop(fields.insert(field.clone(), value.clone())),
            }
        }
        let levels = match text(&fields, "pump") {
            Some(pump) => self.journal()?.record(pump)?.and_then(|(_, f)| whole_number(&f, "levels")),
            None => None,
        };
        check::whole_record(kind, &fields, Some(present.now), levels)?;
        self.journal_mut()?.act(name, id, present.now, |w| {
            if kind.only().is_some() {
                w.set(id, "kind", &json!(kind.name()))?;
            }
            for (field, value) in &values {
                match field == NEXT {
                    true => w.set(id, &format!("{READINGS}{}", w.new_id()), value)?,
                    false => w.set(id, field, value)?,
                }
            }
            Ok(())
        })
    }
}
