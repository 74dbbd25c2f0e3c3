//! The bundle: entries written one after the other, so that a long record needs no room.

use super::makes::Makes;
use std::collections::BTreeSet;
use std::io::Write;

use serde_json::{json, Value};

use super::{birth, check, device, feed, fit, ids, life, people, session, sheet, sign, system, weight};
use crate::journal::Journal;
use crate::record::{moment, text, Fields, Kind, Session, SETTINGS};
use crate::share::parts::LeftOut;
use crate::text::Texts;
use crate::time::Moment;
use crate::trouble::{Kind as TroubleKind, Trouble};

/// In this order: people and devices stand before what names them.
const ORDER: &[Kind] = &[
    Kind::Child,
    Kind::Pump,
    Kind::Gauge,
    Kind::Session,
    Kind::Feed,
    Kind::Sign,
    Kind::Fit,
    Kind::Weight,
    Kind::Check,
    Kind::LifeEvent,
    Kind::Note,
    Kind::Question,
];

/// Writes the bundle. `sheet` is the visit sheet as PDF, where there is one.
///
/// # Errors
/// Where the record can't be read or the file can't be written.
pub fn write(
    journal: &Journal,
    left_out: &LeftOut,
    texts: &Texts,
    sheet: Option<&[u8]>,
    now: &Moment,
    out: &mut dyn Write,
) -> Result<u64, Trouble> {
    let named = |kind: Kind| -> Result<Vec<String>, Trouble> {
        let all = if left_out.lets_any(kind) { journal.of_kind(kind)? } else { Vec::new() };
        Ok(all.into_iter().map(|row| row.subject).collect())
    };
    let mut makes =
        Makes { left_out, texts, children: named(Kind::Child)?.into_iter().collect(), devices: BTreeSet::new() };
    for kind in [Kind::Pump, Kind::Gauge] {
        makes.devices.extend(named(kind)?.into_iter().map(|id| (kind, id)));
    }
    let mut entries = Entries::begin(out, now)?;
    let settings = journal.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
    entries.put(people::parent(&makes, &settings))?;
    let mut latest_feed = None;
    for kind in ORDER.iter().filter(|kind| left_out.lets_any(**kind)) {
        for row in journal.of_kind(*kind)? {
            let Some((_, fields)) = journal.record(&row.subject)? else { continue };
            if *kind == Kind::Session && text(&fields, "method") == Some("at_breast") {
                let ended = !Session::read(&row.subject, &fields).is_running();
                latest_feed =
                    moment(&fields, "started").filter(|_| ended).map(|at| (row.subject.clone(), at)).or(latest_feed);
            }
            for entry in resources(&makes, *kind, &row.subject, &fields) {
                entries.put(entry)?;
            }
        }
    }
    if let Some(entry) = session::feeding_status(&makes, latest_feed.as_ref(), now.instant()) {
        entries.put(entry)?;
    }
    if let Some(pdf) = sheet {
        entries.put(sheet::document(&makes, pdf, now))?;
    }
    entries.put(system::system(texts))?;
    entries.end()
}

fn resources(makes: &Makes<'_>, kind: Kind, record: &str, fields: &Fields) -> Vec<(String, Value)> {
    match kind {
        Kind::Child => {
            std::iter::once(people::child(makes, record, fields)).chain(birth::write(makes, record, fields)).collect()
        }
        Kind::Pump | Kind::Gauge => vec![device::device(makes, kind, record, fields)],
        Kind::Session => session::write(makes, record, fields),
        Kind::Feed => vec![feed::write(makes, record, fields)],
        Kind::Sign => sign::write(makes, record, fields),
        Kind::Fit => fit::write(makes, record, fields).into_iter().collect(),
        Kind::Weight => vec![weight::write(makes, record, fields)],
        Kind::Check => check::write(makes, record, fields),
        Kind::LifeEvent => life::event(makes, record, fields).into_iter().collect(),
        Kind::Note => life::note(makes, record, fields).into_iter().collect(),
        Kind::Question => life::question(makes, record, fields).into_iter().collect(),
        // A pump that is only offered, and what is wanted of one, are no part of a person's health record; how
        // fast a pump was counted to run is a figure of its dial, not of a session.
        _ => Vec::new(),
    }
}

/// The entries of a bundle.
struct Entries<'o> {
    out: &'o mut dyn Write,
    written: u64,
}

impl<'o> Entries<'o> {
    fn begin(out: &'o mut dyn Write, now: &Moment) -> Result<Self, Trouble> {
        // By hand, so that `resourceType` stands first: readers tell a file by it.
        let head = format!(
            "{{\"resourceType\":\"Bundle\",\"id\":{},\"type\":\"collection\",\"timestamp\":{},\"entry\":[",
            json!(ids::id("bundle", "", &now.to_rfc3339())),
            json!(now.to_rfc3339()),
        );
        out.write_all(head.as_bytes()).map_err(|_| full())?;
        Ok(Self { out, written: 0 })
    }

    fn put(&mut self, (url, resource): (String, Value)) -> Result<(), Trouble> {
        let apart = if self.written == 0 { "\n" } else { ",\n" };
        self.written += 1;
        write!(self.out, "{apart}{}", json!({ "fullUrl": url, "resource": resource })).map_err(|_| full())
    }

    fn end(self) -> Result<u64, Trouble> {
        self.out.write_all(b"\n]}\n").and_then(|()| self.out.flush()).map_err(|_| full())?;
        Ok(self.written)
    }
}

fn full() -> Trouble {
    Trouble::new(TroubleKind::Full, "trouble-cannot-write-file")
}
