//! Figures and moments, as the person reads them.

use chrono::{Datelike, Timelike};

use crate::guidance::Rule;
use crate::quantity::{
    say_decimal, Drift, DriftUnit, Entered, Production, ProductionUnit, Quantity, Rounding, Share, Unit, Vacuum,
    VacuumUnit, Volume, VolumeUnit, Wear, WearUnit,
};
use crate::record::{Amount, Settings};
use crate::text::{Need, Texts};
use crate::time::{LocalDay, Moment, Span};
use crate::trouble::Detail;

/// Says things in the person's language and units.
#[derive(Clone, Copy)]
pub struct Words<'a> {
    texts: &'a Texts,
    settings: &'a Settings,
    rounding: Rounding,
}

impl<'a> Words<'a> {
    /// Words in a language, by settings.
    pub fn new(texts: &'a Texts, settings: &'a Settings) -> Self {
        Self { texts, settings, rounding: Rounding::Nearest }
    }

    /// Words for the lower end of a range: figures are rounded down.
    #[must_use]
    pub fn low(self) -> Self {
        Self { rounding: Rounding::Down, ..self }
    }

    /// Words for the upper end of a range, or for an error: figures are rounded up.
    #[must_use]
    pub fn high(self) -> Self {
        Self { rounding: Rounding::Up, ..self }
    }

    /// A sentence that needs nothing.
    pub fn say(&self, key: &str) -> String {
        self.texts.say(key)
    }

    /// A sentence with what it needs.
    pub fn with(&self, key: &str, needs: &[Need<'_>]) -> String {
        self.texts.say_with(key, needs)
    }

    /// Whether there is a sentence of this key.
    pub fn has(&self, key: &str) -> bool {
        self.texts.has(key)
    }

    /// The time of day.
    pub fn clock(&self, moment: &Moment) -> String {
        self.wall_time(moment.on_the_wall().time())
    }

    /// A time of day that stands every day.
    pub fn clock_time(&self, time: crate::time::ClockTime) -> String {
        self.wall_time(time.0)
    }

    fn wall_time(&self, wall: chrono::NaiveTime) -> String {
        if self.settings.twelve_hours {
            let (pm, hour) = wall.hour12();
            let key = if pm { "clock-pm" } else { "clock-am" };
            self.with(key, &[("time", format!("{hour}:{:02}", wall.minute()).into())])
        } else {
            format!("{:02}:{:02}", wall.hour(), wall.minute())
        }
    }

    /// An hour of the day in a sentence.
    pub fn full_hour(&self, hour: u32) -> String {
        self.wall_time(chrono::NaiveTime::from_hms_opt(hour % 24, 0, 0).unwrap_or_default())
    }

    /// An hour of the day along an axis.
    pub fn hour(&self, hour: u32) -> String {
        if self.settings.twelve_hours {
            let key = if hour % 24 >= 12 { "clock-pm" } else { "clock-am" };
            let shown = (hour + 11) % 12 + 1;
            self.with(key, &[("time", shown.to_string().into())])
        } else {
            format!("{:02}", hour % 24)
        }
    }

    /// A date with its weekday.
    pub fn date(&self, day: LocalDay) -> String {
        let date = day.date();
        let weekday = self.say(&format!("weekday-{}", date.weekday().number_from_monday()));
        let month = self.say(&format!("month-{}", date.month()));
        self.with(
            "date-long",
            &[("weekday", weekday.into()), ("day", date.day().to_string().into()), ("month", month.into())],
        )
    }

    /// Today, yesterday, or the date: with its year where that is another.
    pub fn day(&self, day: LocalDay, today: LocalDay) -> String {
        match today.days_since(day) {
            0 => self.say("today"),
            1 => self.say("yesterday"),
            _ if day.date().year() != today.date().year() => self.plain_date(day.date()),
            _ => self.date(day),
        }
    }

    /// A date as `3 March 2026`.
    pub fn plain_date(&self, date: chrono::NaiveDate) -> String {
        let month = self.say(&format!("month-{}", date.month()));
        self.with(
            "date-plain",
            &[
                ("day", date.day().to_string().into()),
                ("month", month.into()),
                ("year", date.year().to_string().into()),
            ],
        )
    }

    /// A length of time: `12 min`, `3 h 10 min`, `2 days`.
    pub fn span(&self, span: Span) -> String {
        let minutes = span.in_minutes().max(0);
        match minutes {
            0..60 => self.with("span-minutes", &[("minutes", minutes.into())]),
            60..2880 if minutes % 60 == 0 => self.with("span-hours", &[("hours", (minutes / 60).into())]),
            60..2880 => {
                self.with("span-hours-minutes", &[("hours", (minutes / 60).into()), ("minutes", (minutes % 60).into())])
            }
            _ => self.with("span-days", &[("days", (minutes / 1440).into())]),
        }
    }

    /// A running time: `04:09`, `1:04:09`.
    pub fn running(&self, span: Span) -> String {
        let seconds = span.in_seconds().max(0);
        let (hours, minutes, rest) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
        match hours {
            0 => format!("{minutes:02}:{rest:02}"),
            _ => format!("{hours}:{minutes:02}:{rest:02}"),
        }
    }

    /// A volume with its unit, in the unit that was chosen.
    pub fn volume(&self, volume: Volume) -> String {
        let unit = self.settings.volume;
        let places = if volume.in_unit(unit).abs() < 10.0 { unit.places().max(1) } else { unit.places() };
        self.with_unit(self.rounding.say(volume.in_unit(unit), places), unit)
    }

    /// A production, as a volume that stands for a day.
    pub fn production(&self, production: Production) -> String {
        self.with_unit(self.production_figure(production), self.settings.volume)
    }

    /// The bare figure of a production, rounded to what is worth reading.
    pub fn production_figure(&self, production: Production) -> String {
        let (value, places) = self.daily(production);
        say_decimal(value, places)
    }

    fn daily(&self, production: Production) -> (f64, usize) {
        match self.settings.volume {
            VolumeUnit::Milliliter => {
                let value = production.in_unit(ProductionUnit::MilliliterPerDay);
                let step = if value.abs() < 100.0 { 1.0 } else { 5.0 };
                (self.rounding.to_step(value, step), 0)
            }
            VolumeUnit::FluidOunce => {
                (self.rounding.to_step(production.in_unit(ProductionUnit::FluidOuncePerDay), 0.1), 1)
            }
        }
    }

    /// The bare figure of a vacuum in the unit that was chosen.
    pub fn vacuum_figure(&self, vacuum: Vacuum) -> String {
        let unit = self.settings.vacuum;
        self.rounding.say(vacuum.in_unit(unit), unit.places())
    }

    /// A vacuum with its unit.
    pub fn vacuum(&self, vacuum: Vacuum) -> String {
        self.with_unit(self.vacuum_figure(vacuum), self.settings.vacuum)
    }

    /// The range of an estimated vacuum, with its unit.
    pub fn vacuum_range(&self, low: Vacuum, high: Vacuum) -> String {
        self.between(self.low().vacuum_figure(low), self.high().vacuum_figure(high))
    }

    /// From one vacuum to another that were written down, such as a maker's limits.
    pub fn vacuums_between(&self, low: Vacuum, high: Vacuum) -> String {
        self.between(self.vacuum_figure(low), self.vacuum_figure(high))
    }

    fn between(&self, low: String, high: String) -> String {
        let unit = self.unit(self.settings.vacuum);
        self.with("range", &[("low", low.into()), ("high", high.into()), ("unit", unit.into())])
    }

    /// How a vacuum changes by the month, without its sign.
    pub fn wear(&self, wear: Wear) -> String {
        let (value, places) = self.monthly(wear);
        self.with_unit(self.rounding.say(value.abs(), places), self.settings.vacuum)
    }

    /// The same with its sign.
    pub fn signed_wear(&self, wear: Wear) -> String {
        let (value, places) = self.monthly(wear);
        self.with_unit(self.signed_figure(value, places), self.settings.vacuum)
    }

    fn monthly(&self, wear: Wear) -> (f64, usize) {
        match self.settings.vacuum {
            VacuumUnit::Kilopascal => (wear.in_unit(WearUnit::KilopascalPerMonth), 2),
            _ => (wear.in_unit(WearUnit::MillimeterOfMercuryPerMonth), 1),
        }
    }

    /// The range of a volume, with its unit; below nothing with a true minus.
    pub fn volume_range(&self, low: Volume, high: Volume) -> String {
        let unit = self.settings.volume;
        let places = if high.in_unit(unit).abs() < 10.0 { unit.places().max(1) } else { unit.places() };
        let figure = |v: Volume, rounding: Rounding| {
            let value = rounding.to_step(v.in_unit(unit), 10_f64.powi(-(places as i32)));
            let size = say_decimal(value.abs(), places);
            if value < 0.0 && size != "0" {
                format!("\u{2212}{size}")
            } else {
                size
            }
        };
        let unit = self.unit(unit);
        self.with(
            "range",
            &[
                ("low", figure(low, Rounding::Down).into()),
                ("high", figure(high, Rounding::Up).into()),
                ("unit", unit.into()),
            ],
        )
    }

    /// A chance in per cent; never all, never none.
    pub fn chance(&self, share: Share) -> String {
        match share.fraction() * 100.0 {
            percent if percent > 99.0 => self.say("chance-most"),
            percent if percent < 1.0 => self.say("chance-least"),
            percent => self.with("chance", &[("percent", say_decimal(percent, 0).into())]),
        }
    }

    /// A difference of productions, with its sign.
    pub fn signed_production(&self, production: Production) -> String {
        let (value, places) = self.daily(production);
        self.with_unit(self.signed_figure(value, places), self.settings.volume)
    }

    /// How a production changes by the week, with its sign.
    pub fn signed(&self, drift: Drift) -> String {
        let (value, places) = match self.settings.volume {
            VolumeUnit::Milliliter => (drift.in_unit(DriftUnit::MilliliterPerDayPerWeek), 0),
            VolumeUnit::FluidOunce => (drift.in_unit(DriftUnit::FluidOuncePerDayPerWeek), 1),
        };
        self.with_unit(self.signed_figure(value, places), self.settings.volume)
    }

    /// A figure with its sign: a true minus, and a plus.
    pub fn signed_figure(&self, value: f64, places: usize) -> String {
        match self.rounding {
            Rounding::Nearest => with_sign(value, places),
            ends => with_sign(ends.to_step(value, 10_f64.powi(-(places as i32))), places),
        }
    }

    /// A production by the hour, in the unit that is read.
    pub fn hourly(&self, production: Production) -> (f64, usize) {
        match self.settings.volume {
            VolumeUnit::Milliliter => (production.in_unit(ProductionUnit::MilliliterPerHour), 0),
            VolumeUnit::FluidOunce => (production.in_unit(ProductionUnit::FluidOuncePerDay) / 24.0, 2),
        }
    }

    /// A production by the hour with its unit.
    pub fn by_the_hour(&self, production: Production) -> String {
        let (value, places) = self.hourly(production);
        let figure = self.with_unit(self.rounding.say(value, places), self.settings.volume);
        self.with("by-the-hour", &[("volume", figure.into())])
    }

    /// A date without its year, as `3 March`.
    pub fn short_date(&self, day: LocalDay) -> String {
        let month = self.say(&format!("month-{}", day.date().month()));
        self.with("date-short", &[("day", day.date().day().to_string().into()), ("month", month.into())])
    }

    /// What a rule is set to, with its unit.
    pub fn rule_value(&self, rule: &Rule, value: f64) -> String {
        let figure = crate::quantity::say_decimal(value, 3);
        self.figure_with(figure, &self.rule_unit(&rule.unit))
    }

    /// A figure with a unit as it is written; a per cent sign has no space before it.
    pub fn figure_with(&self, figure: String, unit: &str) -> String {
        match unit {
            "" => figure,
            "%" => self.with("chance", &[("percent", figure.into())]),
            unit => self.with("quantity", &[("figure", figure.into()), ("unit", unit.into())]),
        }
    }

    /// What a sentence needs.
    pub fn detail(&self, detail: &Detail) -> String {
        match detail {
            Detail::Text(text) => text.clone(),
            Detail::Choices(names) => names.join(", "),
            Detail::Count(count) => count.to_string(),
            Detail::Figure { value, places, rounding } => rounding.say(*value, *places),
            Detail::Unit(ucum) => self.rule_unit(ucum),
            Detail::Span(span) => self.span(*span),
            Detail::Date(date) => self.plain_date(*date),
        }
    }

    /// The unit of a rule as it is written.
    pub fn rule_unit(&self, ucum: &str) -> String {
        let name: String = ucum.chars().filter(char::is_ascii_alphanumeric).collect();
        match ucum {
            "" => String::new(),
            "%" => "%".to_owned(),
            // A speed is said as so many a minute.
            "min" => self.say("unit-minutes"),
            _ => self.say(&format!("unit-{name}")),
        }
    }

    /// What a rule is shipped with, and where that comes from.
    pub fn as_shipped(&self, rule: &Rule) -> String {
        self.with(
            if rule.from_memory { "rule-shipped-from-memory" } else { "rule-shipped" },
            &[
                ("value", self.rule_value(rule, rule.value).into()),
                ("source", rule.source.as_str().into()),
                ("year", rule.year.to_string().into()),
            ],
        )
    }

    /// An entered quantity with its unit: as typed where it was typed in it.
    pub fn entered<Q: Quantity>(&self, entered: &Entered<Q>, unit: Q::Unit) -> String {
        self.with_unit(entered.say_in(unit), unit)
    }

    /// A figure with its unit.
    pub fn with_unit<U: Unit>(&self, figure: String, unit: U) -> String {
        self.figure_with(figure, &self.unit(unit))
    }

    /// A unit as it is written.
    pub fn unit<U: Unit>(&self, unit: U) -> String {
        self.say(&format!("unit-{}", self.unit_key(unit)))
    }

    /// A unit's name within a key of a sentence.
    pub fn unit_key<U: Unit>(&self, unit: U) -> String {
        unit.ucum().chars().filter(char::is_ascii_alphanumeric).collect()
    }

    /// An amount, or what is not known of it.
    pub fn amount(&self, amount: Option<&Amount>) -> String {
        match amount {
            Some(Amount::Known(entered)) => self.entered(entered, self.settings.volume),
            Some(Amount::Unknown) => self.say("amount-unknown"),
            Some(Amount::Later) => self.say("amount-later"),
            None => self.say("amount-unsaid"),
        }
    }
}

/// A figure with its sign: a true minus, and a plus.
pub(super) fn with_sign(value: f64, places: usize) -> String {
    let figure = say_decimal(value.abs(), places);
    match value {
        _ if figure == "0" => figure,
        v if v < 0.0 => format!("\u{2212}{figure}"),
        _ => format!("+{figure}"),
    }
}
