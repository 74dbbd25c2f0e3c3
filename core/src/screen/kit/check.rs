//! A check with a gauge, led step by step.

use super::{dial, pump, pump_words};
use crate::answer::pump::next_place::{next_place, READINGS_A_SIDE};
use crate::gather::kit::{gauge_of, CheckInputs, PumpInputs};
use crate::quantity::{say_decimal, Quantity, Vacuum, VacuumUnit};
use crate::record::gauge::Connected;
use crate::record::{Fields, Gauge, GaugeCheck, Kind, Reading, ReadingPlace, Sides, READINGS};
use crate::screen::shapes::{
    Action, CheckScreen, ChoiceRow, Event, FieldKind, FieldRow, ListGroup, Notice, Place, Screen, Sign, Tone, Weight,
};
use crate::screen::{field_row, View};
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Checks before this one that figures are offered from.
const NEAR: u32 = 4;
/// More levels than this are not offered one by one.
const MOST_LEVELS: u32 = 24;
/// Where the first figures lie that are offered, where nothing is known of a pump.
const FIRST_FIGURE: f64 = 250.0;
/// Fields of the set-up, as they stand under the guide.
const SET_UP: [&str; 5] = ["gauge", "connected", "sides_at_once", "ran_on", "set_vacuum"];

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (_, fields) = view.record(id)?;
    let check = GaugeCheck::read(id, &fields);
    let gauge = gauge_of(view, &check)?;
    let look = check.pump.as_deref().map(|pump| PumpInputs::over_latest(view, pump, NEAR)).transpose();
    // A pump that is gone leaves the check as it is.
    let look = look.ok().flatten();
    let title = match check.pump.as_deref() {
        Some(pump) => view.name_of_id(pump)?.unwrap_or_else(|| words.say("kind-check")),
        None => words.say("kind-check"),
    };
    let subtitle = check.at.as_ref().map_or_else(String::new, |at| {
        words.with("check-on", &[("date", words.date(LocalDay::of(at, view.settings.day_start)).into())])
    });
    let mut frame = view.frame(&Place::Check { id: id.to_owned() }, title, subtitle)?;
    frame.back = Some(view.back());
    let guide = Guide { view, id, check: &check, fields: &fields, gauge, look: look.as_ref() };
    let (place, count) = next_place(&check, &fields);
    let headline = guide.headline(place, count);
    let steps = guide.steps(place, count);
    let reading = guide.reading(place);
    let spoken = std::iter::once(headline.clone()).chain(steps.iter().cloned()).collect::<Vec<_>>().join(" ");
    Ok(Screen::Check {
        frame,
        check: CheckScreen {
            near_label: words.say("check-near"),
            near: guide.near(place),
            dial: guide.dial(place),
            asks: guide.asks()?,
            at: guide.at(place),
            readings: guide.readings(),
            set_up: guide.set_up()?,
            done: guide.done(count >= READINGS_A_SIDE),
            headline,
            steps,
            reading,
            spoken,
        },
    })
}

struct Guide<'g, 'v> {
    view: &'g View<'v>,
    id: &'g str,
    check: &'g GaugeCheck,
    fields: &'g Fields,
    gauge: Option<Gauge>,
    look: Option<&'g PumpInputs>,
}

impl Guide<'_, '_> {
    fn unit(&self) -> VacuumUnit {
        self.gauge.and_then(|gauge| gauge.reads_in).unwrap_or(self.view.settings.vacuum)
    }

    fn levels(&self) -> Option<u32> {
        self.look.and_then(|look| look.levels).map(|levels| levels.get())
    }

    fn level_text(&self, place: ReadingPlace) -> String {
        let words = self.view.words();
        match (place.level, self.levels()) {
            (Some(level), _) => words.with("level-one", &[("level", level.get().into())]),
            (None, Some(last)) => words.with("level-highest-of", &[("level", last.into())]),
            (None, None) => words.say("the-highest"),
        }
    }

    fn level_to_set(&self, place: ReadingPlace) -> String {
        match (place.level, self.levels()) {
            (None, Some(last)) => self.view.words().with("the-highest-of", &[("level", last.into())]),
            _ => self.level_text(place),
        }
    }

    fn headline(&self, place: ReadingPlace, count: usize) -> String {
        let words = self.view.words();
        if count >= READINGS_A_SIDE {
            return words.say("check-all-read");
        }
        words.with(
            "check-headline",
            &[
                ("side", pump_words::side_text(self.view, place.side).into()),
                ("level", self.level_text(place).into()),
                ("number", (count as i64 + 1).into()),
                ("of", (READINGS_A_SIDE as i64).into()),
            ],
        )
    }

    fn steps(&self, place: ReadingPlace, count: usize) -> Vec<String> {
        let words = self.view.words();
        if count >= READINGS_A_SIDE {
            return vec![words.say("check-step-enough"), words.say("check-step-levels")];
        }
        let at = words.say(match place.side {
            Sides::Left => "at-left",
            Sides::Right => "at-right",
            Sides::Both => "at-one-port",
        });
        let connect = match (count, self.check.set_up.connected) {
            (0, Some(Connected::DeadHeaded)) => "check-step-connect-closed",
            (0, Some(Connected::WithFlange)) => "check-step-connect-flange",
            (0, None) => "check-step-connect",
            _ => "check-step-again",
        };
        vec![
            words.with(connect, &[("where", at.into())]),
            words.with("check-step-level", &[("level", self.level_to_set(place).into())]),
            words.say("check-step-wait"),
            words.say("check-step-read"),
        ]
    }

    fn reading(&self, place: ReadingPlace) -> FieldRow {
        let words = self.view.words();
        let label = words.with(
            "check-reading",
            &[
                ("unit", words.unit(self.unit()).into()),
                ("side", pump_words::side_text(self.view, place.side).into()),
                ("level", self.level_text(place).into()),
            ],
        );
        FieldRow {
            id: self.id.to_owned(),
            field: format!("{READINGS}next"),
            kind: FieldKind::Number,
            value: String::new(),
            unit: words.unit(self.unit()),
            hint: String::new(),
            options: Vec::new(),
            less: None,
            more: None,
            clear: None,
            done: None,
            spoken: words.with(
                "field-spoken",
                &[("field", label.clone().into()), ("value", words.say("field-says-nothing").into())],
            ),
            label,
        }
    }

    /// Figures around where the needle is likely to stand.
    fn near(&self, place: ReadingPlace) -> Vec<Action> {
        let words = self.view.words();
        let unit = self.unit();
        let of = |wanted: &dyn Fn(&Reading) -> bool| {
            self.check.readings.iter().rev().map(|(_, r)| r).find(|r| wanted(r)).map(|r| r.vacuum.quantity())
        };
        let here = of(&|reading| reading.place == place);
        let same_level = of(&|reading| reading.place.level == place.level);
        let before = self.look.and_then(|look| {
            let others = look.checks.iter().rev().filter(|looked| looked.check.id != self.id);
            others
                .flat_map(|looked| looked.check.readings.iter().rev())
                .map(|(_, r)| r)
                .find(|r| r.place == place)
                .map(|r| r.vacuum.quantity())
        });
        // A level whose neighbours nothing is known of: no figure is likelier than another.
        if here.or(same_level).or(before).is_none() && place.level.is_some() {
            return Vec::new();
        }
        let fine = self.gauge.and_then(|gauge| gauge.resolution).map_or(fine_step(unit), |r| r.in_unit(unit));
        let (anchor, step) = match (here, same_level.or(before)) {
            (Some(here), _) => (here, fine),
            (None, Some(near)) => (near, coarse_step(fine)),
            (None, None) => (self.middle_of_range(), coarse_step(coarse_step(fine))),
        };
        let anchor = (anchor.in_unit(unit) / step).round() * step;
        let span = self.gauge.and_then(|gauge| gauge.span).map(|span| span.in_unit(unit));
        (-2..=2)
            .map(|n| anchor + f64::from(n) * step)
            .filter(|value| *value >= 0.0 && span.is_none_or(|span| *value <= span + 1e-9))
            .map(|value| {
                let figure = say_decimal(value, 2);
                let event =
                    Event::Enter { id: self.id.to_owned(), field: format!("{READINGS}next"), typed: figure.clone() };
                let spoken =
                    words.with("check-near-spoken", &[("value", words.with_unit(figure.clone(), unit).into())]);
                Action::new(format!("near-{}", figure.replace('.', "-")), figure, event).spoken(spoken)
            })
            .collect()
    }

    fn middle_of_range(&self) -> Vacuum {
        let limits = self.look.map(|look| look.limits);
        match limits.and_then(|limits| limits.low.zip(limits.high.or(limits.usually_to))) {
            Some((low, high)) => Vacuum::from_canonical((low.canonical() + high.canonical()) / 2.0),
            None => Vacuum::from_canonical(FIRST_FIGURE),
        }
    }

    fn dial(&self, place: ReadingPlace) -> Option<crate::screen::shapes::DialPicture> {
        let of_place: Vec<(Sides, Vacuum)> = self
            .check
            .readings
            .iter()
            .filter(|(_, reading)| reading.place.level == place.level)
            .map(|(_, reading)| (reading.place.side, reading.vacuum.quantity()))
            .collect();
        let span = self.gauge.and_then(|gauge| gauge.span);
        // One hand a side, the latest: more lie on one another.
        let latest: Vec<(Sides, Vacuum)> = [Sides::Left, Sides::Right, Sides::Both]
            .into_iter()
            .filter_map(|side| of_place.iter().rev().find(|(s, _)| *s == side).copied())
            .collect();
        (!latest.is_empty()).then(|| dial::of_readings(self.view, &latest, span, self.unit()))
    }

    fn asks(&self) -> Result<Vec<Notice>, Trouble> {
        let words = self.view.words();
        let mut asks = Vec::new();
        if self.view.journal.of_kind(Kind::Gauge)?.is_empty() {
            let text = words.say("check-needs-gauge");
            let add = Event::Add { kind: Kind::Gauge.name().to_owned(), days_back: 0 };
            asks.push(Notice {
                key: "needs-gauge".to_owned(),
                tone: Tone::Asks,
                spoken: text.clone(),
                text,
                actions: vec![Action::new("add-gauge", words.say("add-gauge"), add).sign(Sign::Add)],
            });
        }
        if let Some(look) = self.look {
            let own = CheckInputs::at(self.view, self.check.clone(), look.levels)?;
            asks.extend(pump::asks(self.view, look, &own));
        }
        Ok(asks)
    }

    fn at(&self, place: ReadingPlace) -> Vec<ChoiceRow> {
        let words = self.view.words();
        let read_at = |level: Option<u32>, side: Sides| Event::ReadAt {
            check: self.id.to_owned(),
            level,
            side: side.name().to_owned(),
        };
        let level = place.level.map(|level| level.get());
        let sides = [Sides::Left, Sides::Right, Sides::Both]
            .map(|side| {
                Action::new(
                    format!("side-{}", side.name()),
                    pump_words::side_text(self.view, side),
                    read_at(level, side),
                )
                .chosen(side == place.side)
            })
            .to_vec();
        let highest =
            Action::new("level-highest", words.say("level-highest"), read_at(None, place.side)).chosen(level.is_none());
        let last = self.levels().unwrap_or(0).min(MOST_LEVELS);
        let mut levels = vec![highest];
        levels.extend((1..last).rev().map(|n| {
            Action::new(format!("level-{n}"), n.to_string(), read_at(Some(n), place.side))
                .spoken(words.with("setting-level", &[("level", n.into())]))
                .chosen(level == Some(n))
        }));
        vec![
            ChoiceRow { key: "side".to_owned(), label: words.say("field-side"), options: sides },
            ChoiceRow { key: "level".to_owned(), label: words.say("field-level"), options: levels },
        ]
    }

    fn readings(&self) -> ListGroup {
        let words = self.view.words();
        let unit = self.unit();
        let rows = self
            .check
            .readings
            .iter()
            .rev()
            .map(|(_, reading)| {
                let title = words.entered(&reading.vacuum, unit);
                let mut parts =
                    vec![pump_words::side_text(self.view, reading.place.side), self.level_text(reading.place)];
                if let Some(set) = &reading.set {
                    parts.push(words.with("reading-set", &[("set", words.entered(set, unit).into())]));
                }
                parts.push(words.clock(&reading.at));
                self.view.text_row(title, parts.join(" \u{b7} "))
            })
            .collect::<Vec<_>>();
        let open = Event::Go { place: Place::Entry { id: self.id.to_owned() } };
        let add = vec![Action::new("correct", words.say("check-correct"), open)
            .detail(words.say("check-correct-detail"))
            .weight(Weight::Quiet)];
        ListGroup {
            key: "readings".to_owned(),
            title: words.say("check-readings"),
            empty: if rows.is_empty() { words.say("check-no-readings") } else { String::new() },
            rows,
            add,
        }
    }

    fn set_up(&self) -> Result<Vec<FieldRow>, Trouble> {
        let mut rows = Vec::new();
        for key in SET_UP {
            if let Some(spec) = Kind::Check.field(key) {
                rows.extend(field_row::rows(self.view, self.id, Kind::Check, spec, self.fields)?);
            }
        }
        Ok(rows)
    }

    /// It is the main thing to do once there are readings enough.
    fn done(&self, enough: bool) -> Action {
        let words = self.view.words();
        let place = match &self.check.pump {
            Some(pump) => Place::Pump { id: pump.clone() },
            None => Place::Kit,
        };
        Action::new("done", words.say("check-done"), Event::Go { place })
            .weight(if enough { Weight::Main } else { Weight::Plain })
            .open(!self.check.readings.is_empty())
    }
}

/// The finest step that is read off a face, where the gauge's own was not said.
fn fine_step(unit: VacuumUnit) -> f64 {
    match unit {
        VacuumUnit::Kilopascal => 0.2,
        _ => 2.0,
    }
}

/// Five times as coarse.
fn coarse_step(step: f64) -> f64 {
    step * 5.0
}
