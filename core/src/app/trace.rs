//! Events of traces.

use std::io::BufRead;

use serde_json::{json, Value};

use super::kit::of_kind;
use super::state::{buzz, App, Present};
use crate::answer::trace::{findings, CannotTell};
use crate::quantity::Unit;
use crate::record::Kind;
use crate::screen::shapes::{Effect, Place};
use crate::share::trace_file;
use crate::trouble::Trouble;

/// How much of a file is looked at to tell what it is.
const TELLS: usize = 40;

impl App {
    /// Writes a trace down, and opens it.
    pub(super) fn begin_trace(&mut self, pump: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        of_kind(&self.read(present)?, pump, Kind::Pump)?;
        self.add_trace(Some(pump), present)?;
        Ok(vec![buzz("add")])
    }

    fn add_trace(&mut self, pump: Option<&str>, present: Present) -> Result<String, Trouble> {
        let at = self.read(present)?.present().to_json();
        let id = self.journal_mut()?.act("add", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::Trace.name()))?;
            w.set(&id, "at", &at)?;
            if let Some(pump) = pump {
                w.set(&id, "pump", &json!(pump))?;
            }
            Ok(id)
        })?;
        self.go(Place::Trace { id: id.clone() });
        Ok(id)
    }

    /// Asks for the file of a trace.
    pub(super) fn pick_trace(&mut self, trace: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        of_kind(&self.read(present)?, trace, Kind::Trace)?;
        self.awaits = Some(trace.to_owned());
        Ok(vec![Effect::PickFile {
            key: "trace".to_owned(),
            content_types: ["text/csv", "text/plain", "text/comma-separated-values", "*/*"].map(str::to_owned).to_vec(),
        }])
    }

    /// Whether a file is a trace and no record: figures in columns, and no JSON.
    pub(super) fn is_trace(&self, file: &mut dyn BufRead) -> bool {
        let Ok(head) = file.fill_buf() else { return false };
        // A file in UTF-16 is the same figures with zeros between.
        let text = String::from_utf8_lossy(head).replace('\0', "");
        let mut lines = text.trim_start_matches('\u{feff}').lines().map(str::trim).filter(|line| !line.is_empty());
        let Some(first) = lines.next() else { return false };
        if first.starts_with('{') {
            return false;
        }
        self.awaits.is_some() || std::iter::once(first).chain(lines).take(TELLS).any(in_columns)
    }

    /// Brings the file of a trace in: to the one it was asked for, to the latest that
    /// still has none, or to a new one.
    pub(super) fn import_trace(&mut self, file: &mut dyn BufRead, present: Present) -> Result<(), Trouble> {
        let read = trace_file::read(file)?;
        let findings = findings(&read).map_err(|why| {
            Trouble::bad(
                "findings",
                match why {
                    CannotTell::NoCycles => "bad-trace-no-cycles",
                    CannotTell::TooFewCycles => "bad-trace-few-cycles",
                    CannotTell::SampledTooSlowly => "bad-trace-slow",
                },
            )
        })?;
        let record = self.read(present)?;
        let waiting = |id: &str| -> Result<bool, Trouble> {
            Ok(record.journal.record(id)?.is_some_and(|(kind, f)| kind == Kind::Trace && !f.contains_key("findings")))
        };
        let asked = self.awaits.clone().filter(|id| record.journal.record(id).is_ok_and(|found| found.is_some()));
        let latest = record.journal.of_kind(Kind::Trace)?.into_iter().rev().map(|row| row.subject);
        let mut target = asked;
        for id in latest {
            if target.is_none() && waiting(&id)? {
                target = Some(id);
            }
        }
        let pump = match record.journal.of_kind(Kind::Pump)?.as_slice() {
            [only] => Some(only.subject.clone()),
            _ => record.settings.next_pump.clone(),
        };
        let id = match target {
            Some(id) => id,
            None => self.add_trace(pump.as_deref(), present)?,
        };
        let (kind, fields) = self.read(present)?.record(&id)?;
        let mut values = vec![("findings".to_owned(), findings.to_json()), ("unit_is_right".to_owned(), Value::Null)];
        if let Some(unit) = read.unit {
            values.push(("unit".to_owned(), json!(unit.ucum())));
        }
        self.set_fields(&id, kind, fields, values, "trace-in", present)?;
        self.awaits = None;
        self.go(Place::Trace { id });
        Ok(())
    }
}

/// Two figures or more beside each other.
fn in_columns(line: &str) -> bool {
    let figure = |cell: &str| {
        let cell = cell.trim().trim_matches('"');
        !cell.is_empty() && cell.replace(',', ".").parse::<f64>().is_ok()
    };
    let apart = |by: &[char]| line.split(by).filter(|cell| figure(cell)).count() >= 2;
    apart(&[';', '\t']) || apart(&[',']) || apart(&[' '])
}
