//! What leaves as a file, and what is left out of it.

use std::io::Write;

use serde_json::json;

use super::{buzz, App, Present};
use crate::record::{kinds::PAPERS, Kind, SETTINGS};
use crate::screen::shapes::Effect;
use crate::share::parts::{LeftOut, SharePart};
use crate::share::sheet;
use crate::trouble::{Kind as TroubleKind, Trouble};

impl App {
    /// Leaves a part out of whatever is shared, or takes it in again.
    pub(super) fn leave_out(&mut self, part: &str, out: bool, present: Present) -> Result<Vec<Effect>, Trouble> {
        let part = SharePart::named(part).ok_or_else(|| {
            let all: Vec<_> = SharePart::ALL.iter().map(|p| p.name()).collect();
            Trouble::bad("part", "bad-choice").with("words", all.join(", "))
        })?;
        let fields = self.journal()?.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        let mut left_out = LeftOut::read(&fields);
        left_out.set(part, out);
        let value = Some(left_out.write()).filter(|text| !text.is_empty());
        self.journal_mut()?.act(if out { "leave-out" } else { "take-in" }, SETTINGS, present.now, |w| {
            w.set(SETTINGS, "kind", &json!(Kind::Settings.name()))?;
            w.set(SETTINGS, "left_out", &json!(value))
        })?;
        Ok(vec![buzz("leave-out")])
    }

    /// Asks where the visit sheet goes.
    pub(super) fn hand_over_sheet(&mut self, paper: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        if !PAPERS.contains(&paper) {
            return Err(Trouble::bad("paper", "bad-choice").with("words", PAPERS.join(", ")));
        }
        self.ask_where(&format!("sheet-{paper}"), "visit", "pdf", "application/pdf", present)
    }

    /// Writes the visit sheet, on the paper of a key.
    pub(super) fn take_sheet_out(&mut self, key: &str, file: &mut dyn Write, present: Present) -> Result<(), Trouble> {
        let paper = sheet::paper_of(key).ok_or_else(|| Trouble::bad("key", "bad-choice").with("words", "sheet"))?;
        let page = sheet::set(&self.view(present)?, paper, self.press)?;
        file.write_all(&page).map_err(|_| Trouble::new(TroubleKind::Full, "trouble-cannot-write-file"))
    }

    /// Asks where a table of the record goes.
    pub(super) fn hand_over_spreadsheet(&mut self, table: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.ask_where(&format!("csv-{table}"), table, "csv", "text/csv", present)
    }

    /// Asks where the health record goes.
    pub(super) fn hand_over_health_record(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.ask_where("health-record", "health-record", "json", "application/fhir+json", present)
    }

    fn ask_where(
        &self,
        key: &str,
        name: &str,
        ending: &str,
        content_type: &str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let day = self.view(present)?.today().date().format("%Y-%m-%d");
        Ok(vec![Effect::HandOver {
            key: key.to_owned(),
            file_name: format!("drawwell-{name}-{day}.{ending}"),
            content_type: content_type.to_owned(),
        }])
    }
}
