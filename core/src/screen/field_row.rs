//! A field of a record as a row of a form.

use serde_json::Value;

use super::shapes::{Action, Event, FieldKind, FieldRow, Sign, Weight};
use super::View;
use crate::guidance::Rules;
use crate::quantity::{
    AirPressure, AirPressureUnit, Altitude, AltitudeUnit, Entered, Length, LengthUnit, Mass, Quantity, Speed,
    SpeedUnit, Temperature, Vacuum, Volume,
};
use crate::record::{vacuum_unit, Amount, FieldSpec, FieldType, Fields, Kind, Sizes, DATE_OF};
use crate::time::Moment;
use crate::trouble::Trouble;

/// The rows of a field: one, or two for a moment (time and date).
pub(super) fn rows(
    view: &View<'_>,
    id: &str,
    kind: Kind,
    spec: &FieldSpec,
    fields: &Fields,
) -> Result<Vec<FieldRow>, Trouble> {
    let row = Row { view, id, kind, spec, value: fields.get(spec.key) };
    let vacuum = vacuum_unit(&view.settings, kind, fields);
    Ok(match spec.field_type {
        FieldType::Moment => row.moment(),
        FieldType::Choice(words) => vec![row.choice(words)],
        FieldType::Flag => vec![row.flag()],
        FieldType::Amount => vec![row.amount()],
        FieldType::Refers(to) => row.reference(to)?,
        FieldType::Text { most } => vec![row.text(if most > 200 { FieldKind::LongText } else { FieldKind::Text })],
        FieldType::Zone | FieldType::Phone => vec![row.text(FieldKind::Text)],
        FieldType::Date => vec![row.date()],
        FieldType::Whole { .. } => vec![row.whole()],
        FieldType::Span { .. } => vec![row.span()],
        FieldType::ClockTime => vec![row.clock_time()],
        FieldType::Number { .. } => vec![row.number()],
        FieldType::Volume { .. } => vec![row.quantity::<Volume>(view.settings.volume)],
        FieldType::Vacuum { .. } => vec![row.quantity::<Vacuum>(vacuum)],
        FieldType::Speed { .. } => vec![row.quantity::<Speed>(SpeedUnit::PerMinute)],
        FieldType::AirPressure { .. } => vec![row.quantity::<AirPressure>(AirPressureUnit::Hectopascal)],
        FieldType::Altitude { .. } => vec![row.quantity::<Altitude>(AltitudeUnit::Meter)],
        FieldType::Sizes { .. } => vec![row.sizes()],
        FieldType::Findings => Vec::new(),
        FieldType::Length { .. } => vec![row.quantity::<Length>(LengthUnit::Millimeter)],
        FieldType::Mass { .. } => vec![row.quantity::<Mass>(view.settings.mass)],
        FieldType::Temperature { .. } => vec![row.quantity::<Temperature>(view.settings.temperature)],
    })
}

struct Row<'r, 'v> {
    view: &'r View<'v>,
    id: &'r str,
    kind: Kind,
    spec: &'r FieldSpec,
    value: Option<&'r Value>,
}

impl Row<'_, '_> {
    fn key(&self) -> String {
        self.spec.key.replace('_', "-")
    }

    fn label(&self) -> String {
        let words = self.view.words();
        let own = format!("field-{}-{}", self.kind.name(), self.key());
        if words.has(&own) {
            words.say(&own)
        } else {
            words.say(&format!("field-{}", self.key()))
        }
    }

    fn hint(&self) -> String {
        let words = self.view.words();
        let own = format!("hint-{}", self.key());
        if words.has(&own) {
            words.say(&own)
        } else {
            String::new()
        }
    }

    fn row(&self, kind: FieldKind, value: String, unit: String) -> FieldRow {
        let words = self.view.words();
        let label = self.label();
        let said = match value.is_empty() {
            true => words.say("field-says-nothing"),
            false => words.figure_with(value.clone(), &unit),
        };
        let clear = Action::new(
            format!("clear-{}", self.spec.key),
            words.say("clear"),
            Event::Clear { id: self.id.to_owned(), field: self.spec.key.to_owned() },
        )
        .spoken(words.with("clear-spoken", &[("field", label.clone().into())]))
        .weight(Weight::Quiet);
        FieldRow {
            id: self.id.to_owned(),
            field: self.spec.key.to_owned(),
            spoken: words.with("field-spoken", &[("field", label.clone().into()), ("value", said.into())]),
            label,
            kind,
            value,
            unit,
            hint: self.hint(),
            options: Vec::new(),
            less: None,
            more: None,
            // A choice of settings always says something.
            clear: (self.value.is_some() && (self.kind != Kind::Settings || kind != FieldKind::Choice))
                .then_some(clear),
            done: None,
        }
    }

    fn stepped(&self, mut row: FieldRow) -> FieldRow {
        let words = self.view.words();
        let step = |key: &str, steps: i32, sign: Sign, row: &FieldRow| {
            Action::new(
                format!("{key}-{}", row.field),
                words.say(&format!("step-{key}")),
                Event::Step { id: row.id.clone(), field: row.field.clone(), steps },
            )
            .spoken(words.with(&format!("step-{key}-spoken"), &[("field", row.label.clone().into())]))
            .sign(sign)
        };
        row.less = Some(step("less", -1, Sign::Softer, &row).open(self.value.is_some()));
        row.more = Some(step("more", 1, Sign::Stronger, &row));
        row
    }

    fn option(&self, value: &str, label: String, chosen: bool) -> Action {
        let event = Event::Enter { id: self.id.to_owned(), field: self.spec.key.to_owned(), typed: value.to_owned() };
        let event = if chosen && self.kind != Kind::Settings {
            Event::Clear { id: self.id.to_owned(), field: self.spec.key.to_owned() }
        } else {
            event
        };
        Action::new(format!("{}-{value}", self.spec.key), label, event).chosen(chosen)
    }

    fn choice(&self, options: &[&str]) -> FieldRow {
        let words = self.view.words();
        let chosen = self.value.and_then(Value::as_str);
        let name = |option: &str| {
            let own = format!("choice-{}-{}", self.key(), option_key(option));
            let plain = match self.spec.group {
                "breast" => format!("choice-breast-{option}"),
                _ => own.clone(),
            };
            words.say(if words.has(&own) { &own } else { &plain })
        };
        let mut row = self.row(FieldKind::Choice, chosen.map(&name).unwrap_or_default(), String::new());
        let default = (self.kind == Kind::Settings && chosen.is_none())
            .then(|| self.view.settings.default_of(self.spec.key).or_else(|| options.first().copied()))
            .flatten();
        row.options = options
            .iter()
            .map(|option| self.option(option, name(option), chosen == Some(option) || default == Some(option)))
            .collect();
        row
    }

    fn flag(&self) -> FieldRow {
        let words = self.view.words();
        let said = self.value.and_then(Value::as_bool);
        let name = |yes: bool| words.say(if yes { "yes" } else { "no" });
        let mut row = self.row(FieldKind::Choice, said.map(name).unwrap_or_default(), String::new());
        row.options =
            [true, false].map(|yes| self.option(if yes { "yes" } else { "no" }, name(yes), said == Some(yes))).to_vec();
        row
    }

    fn amount(&self) -> FieldRow {
        let words = self.view.words();
        let unit = self.view.settings.volume;
        let amount = self.value.and_then(Amount::from_json);
        let shown = match &amount {
            Some(Amount::Known(entered)) => entered.say_in(unit),
            _ => String::new(),
        };
        let mut row = self.row(FieldKind::Number, shown, words.unit(unit));
        if row.value.is_empty() {
            row.hint = words.amount(amount.as_ref());
            row.spoken =
                words.with("field-spoken", &[("field", row.label.clone().into()), ("value", row.hint.clone().into())]);
        }
        row.options = [("unknown", Amount::Unknown), ("later", Amount::Later)]
            .map(|(word, means)| {
                self.option(word, words.say(&format!("amount-say-{word}")), amount.as_ref() == Some(&means))
            })
            .to_vec();
        let has_figure = matches!(amount, Some(Amount::Known(_)));
        let mut row = self.stepped(row);
        row.less = row.less.map(|a| a.open(has_figure));
        row
    }

    fn reference(&self, to: Kind) -> Result<Vec<FieldRow>, Trouble> {
        let known = self.view.named(to)?;
        let chosen = self.value.and_then(Value::as_str);
        if known.is_empty() && chosen.is_none() {
            return Ok(Vec::new());
        }
        let name = chosen.map(|id| self.view.name_of_id(id)).transpose()?.flatten();
        let mut row = self.row(FieldKind::Choice, name.unwrap_or_default(), String::new());
        row.options = known.into_iter().map(|(id, name)| self.option(&id, name, chosen == Some(&id))).collect();
        Ok(vec![row])
    }

    fn text(&self, kind: FieldKind) -> FieldRow {
        self.row(kind, self.value.and_then(Value::as_str).unwrap_or_default().to_owned(), String::new())
    }

    fn sizes(&self) -> FieldRow {
        let value = self.value.and_then(Sizes::from_json).map(|sizes| sizes.say()).unwrap_or_default();
        self.row(FieldKind::Text, value, self.view.words().unit(LengthUnit::Millimeter))
    }

    fn date(&self) -> FieldRow {
        let words = self.view.words();
        let date = self.value.and_then(Value::as_str).unwrap_or_default();
        let mut row = self.row(FieldKind::Text, date.to_owned(), String::new());
        row.hint = match chrono::NaiveDate::parse_from_str(date, "%Y-%m-%d") {
            Ok(date) => words.plain_date(date),
            Err(_) => words.say("hint-date"),
        };
        self.stepped(row)
    }

    fn span(&self) -> FieldRow {
        let words = self.view.words();
        let minutes = self.value.and_then(Value::as_u64).and_then(|n| u32::try_from(n).ok());
        let mut row =
            self.row(FieldKind::Time, minutes.map(crate::time::say_minutes).unwrap_or_default(), String::new());
        if let Some(minutes) = minutes {
            let said = words.span(crate::time::Span::minutes(i64::from(minutes)));
            row.spoken = words.with("field-spoken", &[("field", row.label.clone().into()), ("value", said.into())]);
        } else if row.hint.is_empty() {
            row.hint = words.say("hint-length-of-time");
        }
        self.stepped(row)
    }

    fn clock_time(&self) -> FieldRow {
        let time = self.value.and_then(Value::as_str).and_then(crate::time::parse_clock_time);
        let shown = time.map(|t| self.view.words().clock_time(t)).unwrap_or_default();
        let mut row = self.stepped(self.row(FieldKind::Time, shown, String::new()));
        row.less = row.less.map(|a| a.open(true));
        row
    }

    fn whole(&self) -> FieldRow {
        let value = self.value.and_then(Value::as_u64).map(|n| n.to_string()).unwrap_or_default();
        self.stepped(self.row(FieldKind::Number, value, String::new()))
    }

    /// A rule's number; where it was not set, what is shipped and its source.
    fn number(&self) -> FieldRow {
        let words = self.view.words();
        let value = self.value.and_then(Value::as_f64).map(|n| crate::quantity::say_decimal(n, 3)).unwrap_or_default();
        let Some(rule) = Rules::named(self.spec.key) else {
            return self.stepped(self.row(FieldKind::Number, value, String::new()));
        };
        let mut row = self.row(FieldKind::Number, value, words.rule_unit(&rule.unit));
        row.hint = words.as_shipped(rule);
        if row.value.is_empty() {
            row.spoken =
                words.with("field-spoken", &[("field", row.label.clone().into()), ("value", row.hint.clone().into())]);
        }
        let mut row = self.stepped(row);
        row.less = row.less.map(|a| a.open(true));
        row
    }

    fn quantity<Q: Quantity>(&self, unit: Q::Unit) -> FieldRow {
        let value = self.value.and_then(Entered::<Q>::from_json).map(|e| e.say_in(unit)).unwrap_or_default();
        let unit = self.view.words().unit(unit);
        self.stepped(self.row(FieldKind::Number, value, unit))
    }

    fn moment(&self) -> Vec<FieldRow> {
        let words = self.view.words();
        let moment = self.value.and_then(|v| Moment::from_json(v).ok());
        let shown = moment.as_ref().map(|m| words.clock(m)).unwrap_or_default();
        let mut time = self.stepped(self.row(FieldKind::Time, shown, String::new()));
        let here = self.view.present();
        let elsewhere = |zone: &&str| ![self.view.zone.name(), here.zone_name()].contains(zone);
        if let Some(zone) = moment.as_ref().map(Moment::zone_name).filter(elsewhere) {
            time.hint = words.with("in-zone", &[("zone", zone.into())]);
        }
        let Some(moment) = moment else { return vec![time] };
        let wall = moment.on_the_wall().date();
        // By the wall: a day that begins at four is another one.
        let today = here.on_the_wall().date();
        let name = |date| words.day(crate::time::LocalDay::on(date), crate::time::LocalDay::on(today));
        let mut date = self.row(FieldKind::Day, name(wall), String::new());
        date.field = format!("{}{DATE_OF}", self.spec.key);
        date.label = words.with("date-of", &[("field", self.label().into())]);
        date.hint = String::new();
        date.spoken =
            words.with("field-spoken", &[("field", date.label.clone().into()), ("value", date.value.clone().into())]);
        date.options = [Some(today), today.pred_opt()]
            .into_iter()
            .flatten()
            .map(|day| {
                let typed = day.format("%Y-%m-%d").to_string();
                let event = Event::Enter { id: self.id.to_owned(), field: date.field.clone(), typed: typed.clone() };
                Action::new(format!("{}-{typed}", date.field), name(day), event).chosen(day == wall)
            })
            .collect();
        date.clear = None;
        if self.spec.key != "ended" {
            time.clear = None;
        }
        vec![time, self.stepped(date)]
    }
}

/// A choice's word as part of a sentence's key.
fn option_key(option: &str) -> String {
    option.chars().filter(|c| c.is_ascii_alphanumeric() || *c == '_').collect()
}
