//! An invented network whose truth is known: records in the exchange form, a folder a site, and
//! beside them what was put into them. The same seed writes the same bytes.

use std::fs;
use std::path::Path;

use chrono::{Days, NaiveDate};
use drawwell_core::time::{Instant, LocalDay, Moment, Span, Zone};
use serde::{Deserialize, Serialize};
use serde_json::{json, Value};

use crate::trouble::Stop;

/// What is true of an invented family.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Truth {
    /// Its name, as its file's.
    pub family: String,
    /// Its site.
    pub site: String,
    /// Completed days of gestation, where its record says them.
    pub gestation_days: Option<i64>,
    /// What it makes a day once it came to volume, in mL.
    pub plateau: i64,
    /// The day of life on which it did.
    pub comes_in: i64,
    /// Whole days of life that were followed.
    pub followed: i64,
    /// Sessions a day.
    pub sessions: i64,
    /// Of its sessions those whose amount is written as unknown.
    pub unknown: i64,
    /// What its pump is made for.
    pub grade: String,
    /// By how much its pump loses a month, in mmHg.
    pub wears: i64,
    /// Checks that were made.
    pub checks: i64,
    /// `yes`, `no`, `ended` or `withdrawn`.
    pub consent: String,
}

/// SplitMix64 (Steele, Lea and Flood 2014).
#[derive(Debug, Clone)]
pub struct Dice(u64);

impl Dice {
    /// From a seed.
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// One of so many, from 0.
    pub fn roll(&mut self, of: u64) -> i64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) % of.max(1)) as i64
    }

    fn one_in(&mut self, of: u64) -> bool {
        self.roll(of) == 0
    }
}

/// The last day that is known of any of them.
pub fn present() -> Instant {
    let day = NaiveDate::from_ymd_opt(2026, 9, 1).unwrap_or_default();
    LocalDay::on(day).begins(zone(), drawwell_core::time::DayStart::MIDNIGHT)
}

fn zone() -> Zone {
    Zone::named("Europe/Berlin").unwrap_or(Zone::UTC)
}

/// Writes so many families below a folder; says what is true of them, there too.
///
/// # Errors
/// Where the folder can't be written.
pub fn write(folder: &Path, seed: u64, families: u64) -> Result<Vec<Truth>, Stop> {
    let mut all = Vec::new();
    let mut lines = String::new();
    for number in 0..families {
        let (truth, record) = family(seed, number);
        let site = folder.join(&truth.site);
        fs::create_dir_all(&site).map_err(|why| Stop::file(&site, why))?;
        let path = site.join(format!("{}.jsonl", truth.family));
        fs::write(&path, record).map_err(|why| Stop::file(&path, why))?;
        let line = serde_json::to_string(&truth).map_err(|why| Stop::Json { what: "a truth", why })?;
        lines.push_str(&line);
        lines.push('\n');
        all.push(truth);
    }
    let path = folder.join("truth.jsonl");
    fs::write(&path, lines).map_err(|why| Stop::file(&path, why))?;
    Ok(all)
}

/// By how many minutes a session may be later than its place in the day.
const LATER: u64 = 20;

/// One family: what is true of it, and its record.
pub fn family(seed: u64, number: u64) -> (Truth, String) {
    let mut dice = Dice::new(seed ^ number.wrapping_mul(0x2545_f491_4f6c_dd1d));
    // Of a few sites one is much smaller than the others.
    let site = match dice.roll(20) {
        0 => "site-d",
        1..=4 => "site-c",
        5..=10 => "site-b",
        _ => "site-a",
    };
    let gestation = 161 + dice.roll(133);
    let mut truth = Truth {
        family: format!("heron{number:07}"),
        site: site.to_owned(),
        gestation_days: (!dice.one_in(20)).then_some(gestation),
        plateau: 300 + dice.roll(700),
        comes_in: 6 + dice.roll(9),
        followed: 12 + dice.roll(48),
        sessions: 5 + dice.roll(5),
        unknown: 0,
        grade: ["personal", "hospital", "hand"].get(dice.roll(3) as usize).copied().unwrap_or("hand").to_owned(),
        wears: dice.roll(9),
        checks: dice.roll(5),
        consent: match dice.roll(30) {
            0 => "no",
            1 => "ended",
            2 => "withdrawn",
            _ => "yes",
        }
        .to_owned(),
    };
    let record = record(&mut truth, &mut dice);
    (truth, record)
}

/// Lines of the exchange form.
struct Lines(String);

impl Lines {
    fn fact(&mut self, fact: &str, id: &str, fields: Value) {
        let mut line = json!({ "fact": fact, "id": id });
        if let (Some(line), Value::Object(fields)) = (line.as_object_mut(), fields) {
            line.extend(fields);
        }
        self.0.push_str(&line.to_string());
        self.0.push('\n');
    }
}

fn at(instant: Instant) -> Value {
    Moment::new(instant, zone()).to_json()
}

/// Tenths of a unit as a quantity that was typed.
fn typed(tenths: i64, unit: &str) -> Value {
    let typed = format!("{}.{}", tenths / 10, tenths % 10);
    json!({ "value": tenths as f64 / 10.0, "unit": unit, "typed": typed, "typed_unit": unit })
}

fn record(truth: &mut Truth, dice: &mut Dice) -> String {
    let present = present();
    let last = LocalDay::of(&Moment::new(present, zone()), drawwell_core::time::DayStart::MIDNIGHT);
    // The last whole day is the day before the present, less a silence of up to two weeks.
    let silent = dice.roll(14).min(dice.roll(14));
    let birth = last.earlier_by((truth.followed + 1 + silent) as u32);
    let day = |of_life: i64| {
        let date = birth.date().checked_add_days(Days::new(of_life.max(0) as u64)).unwrap_or(birth.date());
        LocalDay::on(date).begins(zone(), drawwell_core::time::DayStart::MIDNIGHT)
    };
    let iso = |day: LocalDay| day.date().format("%Y-%m-%d").to_string();
    let mut lines = Lines("{\"drawwell\":\"exchange\",\"version\":1}\n".to_owned());
    lines.fact("settings", "settings", json!({ "zone": zone().name(), "day_start": 0 }));
    let mut child = json!({ "birth": iso(birth) });
    if let (Some(child), Some(days)) = (child.as_object_mut(), truth.gestation_days) {
        child.insert("gestation_weeks".to_owned(), json!(days / 7));
        child.insert("gestation_days".to_owned(), json!(days % 7));
    }
    lines.fact("child", "child", child);
    let used = birth.earlier_by(30);
    let grade = truth.grade.as_str();
    lines.fact("pump", "pump", json!({ "grade": grade, "levels": 9, "in_use_since": iso(used) }));
    lines.fact("flange", "flange", json!({ "size": typed(190 + 20 * dice.roll(3), "mm") }));
    lines.fact(
        "fit",
        "fit",
        json!({ "at": at(day(0)), "nipple_left_before": typed(170, "mm"), "nipple_right_before": typed(180, "mm") }),
    );
    checks(&mut lines, truth, dice, &day);
    sessions(&mut lines, truth, dice, &day);
    consent(&mut lines, truth, &day, birth);
    lines.0
}

fn checks(lines: &mut Lines, truth: &Truth, dice: &mut Dice, day: &dyn Fn(i64) -> Instant) {
    lines.fact(
        "gauge",
        "gauge",
        json!({ "span": typed(4500, "mm[Hg]"), "reads_in": "mm[Hg]", "accuracy_class": "0.6", "resolution": typed(10, "mm[Hg]") }),
    );
    for number in 0..truth.checks {
        let when = number * truth.followed / truth.checks.max(1);
        let began = day(when).plus(Span::hours(10));
        let pulls = 10 * (260 - dice.roll(20)) - 10 * truth.wears * when / 30;
        let mut readings = serde_json::Map::new();
        for reading in 0..3 {
            let vacuum = typed((pulls + 10 * (dice.roll(3) - 1)).max(0), "mm[Hg]");
            let mut fields = at(began.plus(Span::minutes(1 + reading)));
            if let Some(fields) = fields.as_object_mut() {
                fields.insert("side".to_owned(), json!("left"));
                fields.insert("vacuum".to_owned(), vacuum);
            }
            readings.insert(format!("{reading:03}"), fields);
        }
        lines.fact(
            "check",
            &format!("check-{number}"),
            json!({ "at": at(began), "pump": "pump", "gauge": "gauge", "connected": "dead_headed",
                "ran_on": "mains", "sides_at_once": "one", "readings": readings }),
        );
    }
}

fn sessions(lines: &mut Lines, truth: &mut Truth, dice: &mut Dice, day: &dyn Fn(i64) -> Instant) {
    let gap = 1440 / truth.sessions;
    // None of a day ends in the next.
    let shift = dice.roll(gap as u64 - LATER);
    for number in 0..(truth.followed + 1) * truth.sessions {
        let (on, place) = (number / truth.sessions, number % truth.sessions);
        let ended = day(on).plus(Span::minutes(place * gap + shift + dice.roll(LATER)));
        let made = truth.plateau * on.min(truth.comes_in) / truth.comes_in;
        let tenths = 10 * made / truth.sessions * (85 + dice.roll(31)) / 100;
        let left = tenths * (40 + dice.roll(21)) / 100;
        let unknown = dice.one_in(40);
        truth.unknown += i64::from(unknown);
        let amount = |tenths: i64| if unknown { json!({ "said": "unknown" }) } else { typed(tenths, "mL") };
        let vacuum = 1200 + 10 * dice.roll(120);
        let mut session = json!({
            "started": at(ended.minus(Span::minutes(15))), "ended": at(ended), "settled": true,
            "method": "electric_pump", "sides": "both", "pump": "pump",
            "flange_left": "flange", "flange_right": "flange",
            "amount_left": amount(left), "amount_right": amount(tenths - left),
        });
        if let Some(session) = session.as_object_mut().filter(|_| dice.one_in(3)) {
            // It hurts the more, the stronger it is.
            let pain = if dice.roll(2400) < vacuum - 1200 { 4 + dice.roll(5) } else { dice.roll(3) };
            session.insert("vacuum_expression".to_owned(), typed(vacuum, "mm[Hg]"));
            session.insert("pain_left_expression".to_owned(), json!(pain));
            session.insert("pain_right_expression".to_owned(), json!(pain));
        }
        lines.fact("session", &format!("session-{number}"), session);
    }
}

fn consent(lines: &mut Lines, truth: &Truth, day: &dyn Fn(i64) -> Instant, birth: LocalDay) {
    let given = at(day(1).plus(Span::hours(12)));
    let fields = match truth.consent.as_str() {
        "yes" => json!({ "at": given, "consent_scope": "network", "consent_until": "2027-08-31" }),
        "ended" => {
            let until = birth.date().checked_add_days(Days::new(5)).unwrap_or(birth.date());
            json!({ "at": given, "consent_scope": "research", "consent_until": until.format("%Y-%m-%d").to_string() })
        }
        "withdrawn" => {
            json!({ "at": given, "consent_scope": "network", "withdrawn": at(day(3).plus(Span::hours(12))) })
        }
        _ => return,
    };
    lines.fact("consent", "consent", fields);
}
