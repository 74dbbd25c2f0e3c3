//! What leaves as a file: the host is asked where it goes, and then it is written.

use std::io::Write;

use age::secrecy::SecretString;

use super::sheet_renderer;
use super::state::{App, Present};
use crate::screen::shapes::{Clock, Effect, Export, Paper, Secret, Tone, Update};
use crate::screen::{OPEN_PASSPHRASE, SEAL_PASSPHRASE};
use crate::share::sealed::passphrase;
use crate::share::{calendar, exchange, family_file, health_record, plan, spreadsheet};
use crate::time::Moment;
use crate::trouble::{Detail, Kind, Trouble};

/// Any program may carry what is sealed.
const SEALED_CONTENT_TYPE: &str = "application/octet-stream";

impl App {
    /// Asks the host where it goes, once it is sure that it can be written.
    pub(super) fn ask_where(&mut self, what: Export, present: Present) -> Result<Vec<Effect>, Trouble> {
        let day = self.read(present)?.today().date().format("%Y-%m-%d");
        let (file_name, content_type) = match &what {
            Export::Record => (format!("drawwell-{day}.jsonl"), exchange::CONTENT_TYPE),
            Export::Calendar => (format!("drawwell-plan-{day}.ics"), calendar::CONTENT_TYPE),
            Export::Sheet { .. } => (format!("drawwell-visit-{day}.pdf"), sheet_renderer::CONTENT_TYPE),
            Export::Choice { .. } => (format!("drawwell-which-pump-{day}.pdf"), sheet_renderer::CONTENT_TYPE),
            Export::Labels { .. } => (format!("drawwell-labels-{day}.pdf"), sheet_renderer::CONTENT_TYPE),
            Export::Table { table } => {
                (format!("drawwell-{}-{day}.csv", table_named(table)?.name()), spreadsheet::CONTENT_TYPE)
            }
            Export::TableSchema { table } => {
                (format!("drawwell-{}-{day}.schema.json", table_named(table)?.name()), spreadsheet::SCHEMA_CONTENT_TYPE)
            }
            Export::Tables => (format!("drawwell-tables-{day}.zip"), spreadsheet::ALL_CONTENT_TYPE),
            Export::HealthRecord => (format!("drawwell-health-record-{day}.json"), health_record::CONTENT_TYPE),
            // A sealed file's name says nothing.
            Export::SealedFor { consultant } => {
                self.sealing_key_of(consultant)?;
                (format!("{day}.{}", family_file::ENDING), SEALED_CONTENT_TYPE)
            }
            Export::SealedByPassphrase => (format!("{day}.{}", family_file::ENDING), SEALED_CONTENT_TYPE),
            Export::Plan { plan: id } => {
                self.plan_file(id, present)?;
                (format!("{day}.{}", plan::ENDING), SEALED_CONTENT_TYPE)
            }
        };
        Ok(vec![Effect::HandOver { what, file_name, content_type: content_type.to_owned() }])
    }

    /// Goes on with a passphrase that was asked for.
    pub(super) fn enter_secret(&mut self, id: &str, secret: &Secret, present: Present) -> Result<Vec<Effect>, Trouble> {
        match id {
            SEAL_PASSPHRASE => self.share_by_passphrase(&secret.words, present),
            OPEN_PASSPHRASE => self.open_sealed(&secret.words, present),
            _ => Err(Trouble::bad("id", "bad-field")),
        }
    }

    /// Asks where the record goes, sealed with a passphrase. It is kept until the file is
    /// written, and nowhere but in memory.
    fn share_by_passphrase(&mut self, typed: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.passphrase = Some(SecretString::from(passphrase::own(typed, SEAL_PASSPHRASE)?));
        self.ask_where(Export::SealedByPassphrase, present)
    }

    /// Writes what an [`Effect::HandOver`] asked a place for.
    ///
    /// # Errors
    /// `trouble-cannot-write-file` where the file takes no more, `bad-choice` for a table that
    /// there is none of, `trouble-no-press` for a sheet where no renderer was handed in, and what
    /// sealing refuses.
    pub fn export(&mut self, what: &Export, file: &mut dyn Write, clock: &Clock) -> Result<Update, Trouble> {
        self.not_locked()?;
        let (present, _) = Present::read(clock);
        self.recovering(present, |app| app.write(what, file, present))?;
        self.tell(
            match what {
                Export::Record => "record-handed-over",
                Export::Calendar => "calendar-handed-over",
                Export::Sheet { .. } => "sheet-handed-over",
                Export::Choice { .. } => "choice-handed-over",
                Export::Labels { .. } => "labels-handed-over",
                Export::Table { .. } | Export::TableSchema { .. } | Export::Tables => "table-handed-over",
                Export::HealthRecord => "health-record-handed-over",
                Export::SealedFor { .. } | Export::SealedByPassphrase => "family-handed-over",
                Export::Plan { .. } => "plan-handed-over",
            },
            Tone::Quiet,
        );
        Ok(Update { screen: self.here(clock)?, effects: Vec::new() })
    }

    fn write(&mut self, what: &Export, file: &mut dyn Write, present: Present) -> Result<(), Trouble> {
        match what {
            Export::Record => exchange::export(self.journal()?, file).map(drop),
            Export::Calendar => self.write_calendar(file, present),
            Export::Sheet { paper } => {
                let page = sheet_renderer::set(&self.view(present)?, *paper, self.renderer)?;
                all(&page, file)
            }
            Export::Choice { paper } => {
                let page = sheet_renderer::set_choice(&self.view(present)?, *paper, self.renderer)?;
                all(&page, file)
            }
            Export::Labels { on, container } => {
                let page = sheet_renderer::set_labels(&self.view(present)?, *on, container, self.renderer)?;
                all(&page, file)
            }
            Export::Table { table } => {
                spreadsheet::write(self.journal()?, table_named(table)?, &self.left_out()?, file).map(drop)
            }
            Export::TableSchema { table } => {
                let schema = spreadsheet::schema(table_named(table)?, &self.left_out()?, &self.texts);
                all(format!("{schema:#}\n").as_bytes(), file)
            }
            Export::Tables => spreadsheet::write_all(self.journal()?, &self.left_out()?, &self.texts, file).map(drop),
            Export::HealthRecord => self.write_health_record(file, present),
            Export::SealedFor { consultant } => {
                let sealed = self.sealed_for(consultant, present)?;
                all(&sealed, file)
            }
            Export::SealedByPassphrase => {
                let sealed = self.sealed_by_passphrase(present)?;
                all(&sealed, file)
            }
            Export::Plan { plan } => {
                let sealed = self.plan_file(plan, present)?;
                all(&sealed, file)?;
                self.was_sent(plan, present)
            }
        }
    }

    /// The record as a health record, with the visit sheet where there is a press.
    fn write_health_record(&self, file: &mut dyn Write, present: Present) -> Result<(), Trouble> {
        let view = self.view(present)?;
        let now = Moment::new(present.now, view.zone);
        let page = match self.renderer {
            Some(_) => Some(sheet_renderer::set(&view, Paper::A4, self.renderer)?),
            None => None,
        };
        health_record::write(self.journal()?, &self.left_out()?, &self.texts, page.as_deref(), &now, file).map(drop)
    }
}

fn all(bytes: &[u8], file: &mut dyn Write) -> Result<(), Trouble> {
    let told = |_| Trouble::new(Kind::Full, "trouble-cannot-write-file");
    file.write_all(bytes).and_then(|()| file.flush()).map_err(told)
}

fn table_named(name: &str) -> Result<spreadsheet::Table, Trouble> {
    spreadsheet::Table::named(name).ok_or_else(|| {
        Trouble::bad("table", "bad-choice")
            .with("words", Detail::choices(spreadsheet::Table::ALL.iter().map(|table| table.name())))
    })
}
