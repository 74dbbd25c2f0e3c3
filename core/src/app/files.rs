//! What leaves as a file, and what is left out of it.

use std::io::Write;

use serde_json::json;

use super::press as sheet;
use super::state::{buzz, App, Present};
use crate::record::{choices::PAPERS, Kind, SETTINGS};
use crate::screen::shapes::Effect;
use crate::share::parts::{LeftOut, SharePart};
use crate::share::{health_record, spreadsheet};
use crate::time::Moment;
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
        if table == spreadsheet::ALL_TABLES {
            return self.ask_where("csv-all", "tables", "zip", spreadsheet::ALL_CONTENT_TYPE, present);
        }
        let table = table_named(table)?.name();
        self.ask_where(&format!("csv-{table}"), table, "csv", spreadsheet::CONTENT_TYPE, present)
    }

    /// Asks where the health record goes.
    pub(super) fn hand_over_health_record(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.ask_where("health-record", "health-record", "json", health_record::CONTENT_TYPE, present)
    }

    fn ask_where(
        &self,
        key: &str,
        name: &str,
        ending: &str,
        content_type: &str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let day = self.read(present)?.today().date().format("%Y-%m-%d");
        Ok(vec![Effect::HandOver {
            key: key.to_owned(),
            file_name: format!("drawwell-{name}-{day}.{ending}"),
            content_type: content_type.to_owned(),
        }])
    }

    /// What the person leaves out of whatever is shared.
    fn left_out(&self) -> Result<LeftOut, Trouble> {
        Ok(LeftOut::read(&self.journal()?.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default()))
    }

    /// Writes a table, or with `-schema` behind its name what its columns hold; or all of them.
    pub(super) fn take_table_out(&self, name: &str, file: &mut dyn Write) -> Result<(), Trouble> {
        let left_out = self.left_out()?;
        if name == spreadsheet::ALL_TABLES {
            return spreadsheet::write_all(self.journal()?, &left_out, &self.texts, file).map(drop);
        }
        match name.strip_suffix("-schema") {
            Some(name) => {
                let schema = spreadsheet::schema(table_named(name)?, &left_out, &self.texts);
                writeln!(file, "{schema:#}").and_then(|()| file.flush()).map_err(|_| full())
            }
            None => spreadsheet::write(self.journal()?, table_named(name)?, &left_out, file).map(drop),
        }
    }

    /// Writes the record as a health record, with the visit sheet where there is a press.
    pub(super) fn take_health_record_out(&self, file: &mut dyn Write, present: Present) -> Result<(), Trouble> {
        let view = self.view(present)?;
        let now = Moment::new(present.now, view.zone);
        let page = match self.press {
            Some(_) => Some(sheet::set(&view, PAPERS.first().copied().unwrap_or_default(), self.press)?),
            None => None,
        };
        health_record::write(self.journal()?, &self.left_out()?, &self.texts, page.as_deref(), &now, file).map(drop)
    }
}

fn table_named(name: &str) -> Result<spreadsheet::Table, Trouble> {
    spreadsheet::Table::named(name).ok_or_else(|| {
        let all: Vec<_> = spreadsheet::Table::ALL.iter().map(|table| table.name()).collect();
        Trouble::bad("table", "bad-choice").with("words", all.join(", "))
    })
}

fn full() -> Trouble {
    Trouble::new(crate::trouble::Kind::Full, "trouble-cannot-write-file")
}
