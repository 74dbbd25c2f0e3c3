//! A person with the program in hand: presses what a screen offers, by its key.

use drawwell_core::screen::shapes::Export;
use std::path::{Path, PathBuf};

use drawwell_core::{
    app::App,
    screen::shapes::{Action, Clock, Effect, Event, Frame, Opening, Part, Place, Screen, Update},
    time::{Instant, Moment, Span},
    trouble::{Kind, Trouble},
};
use serde_json::Value;
use tempfile::TempDir;

/// A person, their record, and the time it is for them.
pub struct Person {
    app: Option<App>,
    path: PathBuf,
    clock: Clock,
    screen: Option<Screen>,
    /// What the host was asked for, in order.
    pub effects: Vec<Effect>,
    /// How often they touched the screen.
    pub taps: u32,
    _folder: Option<TempDir>,
}

impl Person {
    /// A person with an empty record, at a moment such as
    /// `2026-03-01T02:00:00+01:00` in `Europe/Berlin`.
    pub fn at(moment: &str, zone: &str) -> Result<Self, Trouble> {
        let folder = tempfile::tempdir().map_err(|_| trouble("trouble-cannot-open"))?;
        let path = folder.path().join("record.drawwell");
        let mut person = Self::with_record(&path, moment, zone)?;
        person._folder = Some(folder);
        Ok(person)
    }

    /// A person who looks at the invented family's record, on its last day.
    pub fn of_the_invented_family() -> Result<Self, Trouble> {
        let mut person = Self::at("2026-08-14T12:40:00+02:00", "Europe/Berlin")?;
        let family =
            std::fs::read(crate::place::demo_data("family.jsonl")).map_err(|_| trouble("trouble-cannot-open"))?;
        person.import_file(&family)?;
        Ok(person)
    }

    /// A person with a record at a path.
    pub fn with_record(path: &Path, moment: &str, zone: &str) -> Result<Self, Trouble> {
        let at = Moment::from_parts(moment, zone).map_err(|_| trouble("bad-moment"))?;
        let clock =
            Clock { unix_milliseconds: at.instant().unix_milliseconds(), zone: zone.to_owned(), offset_seconds: None };
        let mut person =
            Self { app: None, path: path.to_owned(), clock, screen: None, effects: Vec::new(), taps: 0, _folder: None };
        person.open()?;
        Ok(person)
    }

    /// As [`Self::at`], past the first screen.
    pub fn welcomed(moment: &str, zone: &str) -> Result<Self, Trouble> {
        let mut person = Self::at(moment, zone)?;
        person.send(Event::SetUp { field: "welcomed".to_owned(), value: "true".to_owned() })?;
        person.taps = 0;
        Ok(person)
    }

    fn open(&mut self) -> Result<(), Trouble> {
        let opening = Opening { device: "thumb".to_owned(), language: "en".to_owned(), look_around: false };
        let mut app = App::open(self.path.clone(), opening, &self.clock)?;
        self.screen = Some(app.here(&self.clock)?);
        self.app = Some(app);
        Ok(())
    }

    /// The program is killed and opened again.
    pub fn killed_and_opened(&mut self) -> Result<(), Trouble> {
        drop(self.app.take());
        self.open()
    }

    /// Where the record lies.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Time passes.
    pub fn wait(&mut self, span: Span) -> Result<(), Trouble> {
        self.clock.unix_milliseconds += span.in_milliseconds();
        self.look()
    }

    /// The clock of their device shows another offset than its zone's data say.
    pub fn is_told(&mut self, offset_seconds: Option<i32>) -> Result<(), Trouble> {
        self.clock.offset_seconds = offset_seconds;
        self.look()
    }

    /// They travel.
    pub fn travel(&mut self, zone: &str) -> Result<(), Trouble> {
        self.clock.zone = zone.to_owned();
        self.look()
    }

    /// The time it is.
    pub fn now(&self) -> Instant {
        Instant::from_unix_milliseconds(self.clock.unix_milliseconds)
    }

    /// The clock as the host reads it.
    pub fn clock(&self) -> &Clock {
        &self.clock
    }

    /// The program itself.
    pub fn app(&mut self) -> Result<&mut App, Trouble> {
        self.app.as_mut().ok_or_else(|| trouble("trouble-fault"))
    }

    fn look(&mut self) -> Result<(), Trouble> {
        let clock = self.clock.clone();
        self.screen = Some(self.app()?.here(&clock)?);
        Ok(())
    }

    /// What they see.
    pub fn screen(&self) -> Result<&Screen, Trouble> {
        self.screen.as_ref().ok_or_else(|| trouble("trouble-fault"))
    }

    /// Opens a day, as the first screen and Supply lead to it.
    pub fn open_day(&mut self, days_back: u32) -> Result<(), Trouble> {
        self.send(Event::Go { place: Place::Day { days_back } })
    }

    /// Another place, without going there.
    pub fn show(&mut self, place: &Place) -> Result<Screen, Trouble> {
        let clock = self.clock.clone();
        self.app()?.show(place, &clock)
    }

    /// Sends an event, as a touch does.
    pub fn send(&mut self, event: Event) -> Result<(), Trouble> {
        let clock = self.clock.clone();
        let Update { screen, effects } = self.app()?.update(event, &clock)?;
        self.taps += 1;
        self.screen = Some(screen);
        self.effects.extend(effects);
        Ok(())
    }

    /// Presses the action of a key on the screen they see.
    pub fn press(&mut self, key: &str) -> Result<(), Trouble> {
        let action = self.find(key)?.ok_or_else(|| trouble("bad-field").with("field", key))?;
        if !action.open {
            return Err(trouble("bad-choice").with("words", format!("{key} can't be tapped")));
        }
        self.send(action.event)
    }

    /// The action of a key on the screen they see.
    pub fn find(&self, key: &str) -> Result<Option<Action>, Trouble> {
        Ok(offered(self.screen()?, key))
    }

    /// Everything that can be read on the screen they see.
    pub fn reads(&self) -> Result<String, Trouble> {
        let value = serde_json::to_value(self.screen()?).map_err(|_| trouble("trouble-fault"))?;
        let mut out = Vec::new();
        collect_texts(&value, &mut out);
        Ok(out.join("\n"))
    }

    /// Draws the line of a column to a height, and lets go at what it reads there.
    pub fn draws(&mut self, part: Part, height: f32) -> Result<(), Trouble> {
        let nothing = || Trouble::new(Kind::Missing, "trouble-no-such-record");
        let Screen::Amounts { amounts, .. } = self.screen()? else { return Err(nothing()) };
        let column = amounts.columns.iter().find(|column| column.column.part == part).ok_or_else(nothing)?;
        let apart = |at: f32| (at - height).abs();
        let reading = column.readings.iter().min_by(|a, b| apart(a.at).total_cmp(&apart(b.at))).ok_or_else(nothing)?;
        let (session, typed, unit) = (amounts.session.clone(), reading.typed.clone(), column.unit.clone());
        self.send(Event::DrawAmount { session, part, typed, unit })
    }

    /// The frame of the screen they see.
    pub fn frame(&self) -> Result<&Frame, Trouble> {
        Ok(self.screen()?.frame())
    }

    /// Fills a field of the entry they have open.
    pub fn enter(&mut self, field: &str, typed: &str) -> Result<(), Trouble> {
        let id = self.opened()?;
        self.send(Event::Enter { id, field: field.to_owned(), typed: typed.to_owned() })
    }

    /// The id of the entry they have open.
    pub fn opened(&self) -> Result<String, Trouble> {
        match self.screen()? {
            Screen::Form { form, .. } => Ok(form.id.clone()),
            _ => Err(trouble("trouble-no-such-record")),
        }
    }

    /// The whole record in the exchange form.
    pub fn record(&mut self) -> Result<String, Trouble> {
        let clock = self.clock.clone();
        let mut out = Vec::new();
        self.app()?.export(&Export::Record, &mut out, &clock)?;
        String::from_utf8(out).map_err(|_| trouble("trouble-fault"))
    }

    /// Brings a text of the exchange form in.
    pub fn import_file(&mut self, text: &[u8]) -> Result<(), Trouble> {
        self.opens(text)?;
        match self.find("take-asked")? {
            Some(_) => self.press("take-asked"),
            None => Ok(()),
        }
    }

    /// Opens a file, and answers nothing that is asked about it.
    pub fn opens(&mut self, text: &[u8]) -> Result<(), Trouble> {
        let clock = self.clock.clone();
        let update = self.app()?.import_file(&mut &*text, &clock)?;
        self.screen = Some(update.screen);
        Ok(())
    }

    /// The one record of a kind, as JSON.
    pub fn only(&mut self, fact: &str) -> Result<Value, Trouble> {
        let record = self.record()?;
        let mut found = record
            .lines()
            .filter_map(|line| serde_json::from_str::<Value>(line).ok())
            .filter(|line| line.get("fact").and_then(Value::as_str) == Some(fact));
        let first = found.next().ok_or_else(|| trouble("trouble-no-such-record"))?;
        match found.next() {
            None => Ok(first),
            Some(_) => Err(trouble("bad-choice")),
        }
    }
}

fn trouble(key: &'static str) -> Trouble {
    Trouble::bad("", key)
}

/// The action of a key on a screen.
pub fn offered(screen: &Screen, key: &str) -> Option<Action> {
    find_action(&serde_json::to_value(screen).ok()?, key)
}

fn find_action(value: &Value, key: &str) -> Option<Action> {
    match value {
        Value::Object(map) => {
            if map.get("key").and_then(Value::as_str) == Some(key) && map.contains_key("event") {
                return serde_json::from_value(value.clone()).ok();
            }
            map.values().find_map(|v| find_action(v, key))
        }
        Value::Array(all) => all.iter().find_map(|v| find_action(v, key)),
        _ => None,
    }
}

fn collect_texts(value: &Value, out: &mut Vec<String>) {
    match value {
        Value::Object(map) => {
            for (key, inner) in map {
                match inner {
                    Value::String(text) if !matches!(key.as_str(), "key" | "id" | "field" | "event") => {
                        out.push(text.clone());
                    }
                    _ if key == "event" => {}
                    _ => collect_texts(inner, out),
                }
            }
        }
        Value::Array(all) => {
            for inner in all {
                match inner {
                    Value::String(line) => out.push(line.clone()),
                    _ => collect_texts(inner, out),
                }
            }
        }
        _ => {}
    }
}
