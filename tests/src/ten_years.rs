//! A journal of ten years: 30,000 sessions, about 150,000 changes.

use std::path::Path;

use drawwell_core::app::App;
use drawwell_core::journal::{Change, Dot, Key, Stamp};
use drawwell_core::screen::shapes::{Clock, Opening};
use drawwell_core::time::{Instant, Moment, Span, Zone};
use drawwell_core::trouble::Trouble;
use serde_json::{json, Value};

/// A clock that stands at an instant.
pub fn clock(at: Instant) -> Clock {
    Clock { unix_milliseconds: at.unix_milliseconds(), zone: "UTC".to_owned(), offset_seconds: None }
}

/// The program over a record, as the benchmarks open it.
pub fn open(path: &Path) -> Result<App, Trouble> {
    let opening = Opening { device: "bench".to_owned(), language: "en".to_owned(), look_around: false };
    App::open(path.to_owned(), opening, &clock(END))
}

/// The same over a record that is sealed, or moved under its key now.
pub fn open_with_key(path: &Path, key: Option<&Key>) -> Result<App, Trouble> {
    let opening = Opening { device: "bench".to_owned(), language: "en".to_owned(), look_around: false };
    App::open_with_key(path.to_owned(), key.cloned(), opening, &clock(END))
}

/// When the ten years end.
pub const END: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);
/// How many sessions there are.
pub const SESSIONS: i64 = 30_000;

/// The fields of one session: five changes.
fn session(number: i64) -> (String, [(&'static str, Value); 5]) {
    let apart = Span::minutes(10 * 365 * 24 * 60 / SESSIONS);
    let before_end = Span::milliseconds((SESSIONS - number) * apart.in_milliseconds());
    let started = END.minus(before_end);
    let at = |instant: Instant| Moment::new(instant, Zone::UTC).to_json();
    let amount = |ml: i64| json!({ "value": ml, "unit": "mL", "typed": ml.to_string(), "typed_unit": "mL" });
    let fields = [
        ("kind", json!("session")),
        ("started", at(started)),
        ("ended", at(started.plus(Span::minutes(18)))),
        ("amount_left", amount(40 + number % 37)),
        ("amount_right", amount(30 + number % 41)),
    ];
    (format!("s-{number:08}"), fields)
}

/// Every change, as another phone would send them.
pub fn changes() -> Vec<Change> {
    let mut all = Vec::new();
    for number in 0..SESSIONS {
        let (subject, fields) = session(number);
        for (field, value) in fields {
            let sequence = all.len() as i64 + 1;
            all.push(Change {
                dot: Dot { device: "ten".to_owned(), sequence },
                stamp: Stamp::at(END.minus(Span::milliseconds(200_000 - sequence))),
                subject: subject.clone(),
                field: field.to_owned(),
                value: value.to_string(),
                replaces: Vec::new(),
            });
        }
    }
    all
}

/// The same ten years in the exchange form.
pub fn exchange_file() -> String {
    let mut out = "{\"drawwell\":\"exchange\",\"version\":1}\n".to_owned();
    for number in 0..SESSIONS {
        let (id, fields) = session(number);
        let mut line = serde_json::Map::new();
        line.insert("fact".to_owned(), json!("session"));
        line.insert("id".to_owned(), json!(id));
        line.extend(fields.into_iter().filter(|(key, _)| *key != "kind").map(|(key, value)| (key.to_owned(), value)));
        out.push_str(&Value::Object(line).to_string());
        out.push('\n');
    }
    out
}
