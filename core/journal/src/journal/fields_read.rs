//! Fields, read as records.

use crate::record::Fields;
use crate::trouble::Trouble;

/// Records from rows of subject, field and value, in order of subjects.
pub(super) fn records(mut rows: rusqlite::Rows<'_>) -> Result<Vec<(String, Fields)>, Trouble> {
    let mut found: Vec<(String, Fields)> = Vec::new();
    while let Some(row) = rows.next()? {
        let text = |column: usize| row.get_ref(column)?.as_str().map_err(rusqlite::Error::from);
        let subject = text(0)?;
        if found.last().is_none_or(|(last, _)| last != subject) {
            found.push((subject.to_owned(), Fields::new()));
        }
        let value = serde_json::from_str::<serde_json::Value>(text(2)?).ok().filter(|value| !value.is_null());
        if let (Some((_, fields)), Some(value)) = (found.last_mut(), value) {
            fields.insert(text(1)?.to_owned(), value);
        }
    }
    Ok(found)
}
