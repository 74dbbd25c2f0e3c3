//! A session's fields, read as a session.

use super::mark::{Mark, MarkKind, Phase};
use super::{flag, moment, text, Amount, Fields, MARKS};
use crate::quantity::{Count, Entered, Level, Score, Speed, Vacuum};
use crate::time::{Instant, Moment};

/// The fields that hold pain as it was said afterwards, with their side and phase.
pub const PAINS: &[(&str, Sides, Phase)] = &[
    ("pain_left_letdown", Sides::Left, Phase::Letdown),
    ("pain_left_expression", Sides::Left, Phase::Expression),
    ("pain_right_letdown", Sides::Right, Phase::Letdown),
    ("pain_right_expression", Sides::Right, Phase::Expression),
];

/// Which sides took part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sides {
    /// Left alone.
    Left,
    /// Right alone.
    Right,
    /// Both.
    Both,
}

impl Sides {
    /// The sides of this name; both where nothing was said.
    pub fn named(name: Option<&str>) -> Self {
        match name {
            Some("left") => Self::Left,
            Some("right") => Self::Right,
            _ => Self::Both,
        }
    }
    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
            Self::Both => "both",
        }
    }
    /// Whether the left side took part.
    pub const fn left(self) -> bool {
        matches!(self, Self::Left | Self::Both)
    }
    /// Whether the right side took part.
    pub const fn right(self) -> bool {
        matches!(self, Self::Right | Self::Both)
    }
    /// Whether two sessions share a side.
    pub const fn meets(self, other: Self) -> bool {
        (self.left() && other.left()) || (self.right() && other.right())
    }
}

/// What the pump is set to; each part is known or not.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Setting {
    /// The level on the dial.
    pub level: Option<Level>,
    /// The vacuum as the pump shows it.
    pub vacuum: Option<Entered<Vacuum>>,
    /// Cycles per minute.
    pub cycles: Option<Entered<Speed>>,
}

/// What the dials show, each with whether it was only carried over from last time.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Dials {
    /// The level on the dial.
    pub level: Option<(Level, bool)>,
    /// The vacuum as the pump shows it.
    pub vacuum: Option<(Entered<Vacuum>, bool)>,
    /// Cycles per minute.
    pub cycles: Option<(Entered<Speed>, bool)>,
}

/// A setting that was written at the very instant a phase began was carried over: before
/// marks said so themselves, the program wrote it there, and no hand is that quick.
fn tell_carried(marks: &mut [(String, Mark)], fields: &Fields) {
    let begins: Vec<Instant> = marks
        .iter()
        .filter(|(_, mark)| matches!(mark.kind, MarkKind::Phase(_)))
        .map(|(_, mark)| mark.at.instant())
        .collect();
    for (key, mark) in marks {
        let at = mark.at.instant();
        if let MarkKind::Setting { carried, for_discomfort: false, .. } = &mut mark.kind {
            let open = fields.get(key).is_some_and(super::mark::leaves_open_if_carried);
            *carried |= open && begins.contains(&at);
        }
    }
}

/// A session as it was recorded.
#[derive(Debug, Clone, PartialEq)]
pub struct Session {
    /// Its id.
    pub id: String,
    /// When it started, if that can be read.
    pub started: Option<Moment>,
    /// When it ended.
    pub ended: Option<Moment>,
    /// How: one of [`super::choices::METHODS`].
    pub method: Option<String>,
    /// Which sides.
    pub sides: Sides,
    /// The pump, if one was used.
    pub pump: Option<String>,
    /// What came from the left.
    pub left: Option<Amount>,
    /// What came from the right.
    pub right: Option<Amount>,
    /// What came from both, measured in one container.
    pub together: Option<Amount>,
    /// The amounts are as they should be, or left for later.
    pub settled: bool,
    /// Written down afterwards: without an end it is not running.
    pub afterwards: bool,
    /// Its marks, by time.
    pub marks: Vec<(String, Mark)>,
}

impl Session {
    /// Reads a session. Marks that cannot be read are passed over.
    pub fn read(id: &str, fields: &Fields) -> Self {
        let amount = |key: &str| fields.get(key).and_then(Amount::from_json);
        let mut marks: Vec<(String, Mark)> = fields
            .range(MARKS.to_owned()..)
            .take_while(|(key, _)| key.starts_with(MARKS))
            .filter_map(|(key, value)| Some((key.clone(), Mark::from_json(key, value).ok()?)))
            .collect();
        marks.sort_by(|a, b| (a.1.at.instant(), &a.0).cmp(&(b.1.at.instant(), &b.0)));
        tell_carried(&mut marks, fields);
        Self {
            id: id.to_owned(),
            started: moment(fields, "started"),
            ended: moment(fields, "ended"),
            method: text(fields, "method").map(str::to_owned),
            sides: Sides::named(text(fields, "sides")),
            pump: text(fields, "pump").map(str::to_owned),
            left: amount("amount_left"),
            right: amount("amount_right"),
            together: amount("amount_together"),
            settled: flag(fields, "settled"),
            afterwards: flag(fields, "afterwards"),
            marks,
        }
    }

    /// Whether it still runs.
    pub fn is_running(&self) -> bool {
        self.started.is_some() && self.ended.is_none() && !self.afterwards
    }

    /// Whether it yields milk into a container.
    pub fn collects(&self) -> bool {
        self.method.as_deref() != Some("at_breast")
    }

    /// Whether an amount that could be written down has not been: nothing said
    /// of it, or left for later. One that is unknown for good is not waited for.
    pub fn lacks_amount(&self) -> bool {
        if !self.collects() {
            return false;
        }
        let waits = |a: &Option<Amount>| matches!(a, None | Some(Amount::Later));
        match &self.together {
            Some(together) => matches!(together, Amount::Later),
            None => (self.sides.left() && waits(&self.left)) || (self.sides.right() && waits(&self.right)),
        }
    }

    /// The phase at an instant, and when it began.
    pub fn phase_at(&self, at: Instant) -> Option<(Phase, Instant)> {
        self.phases().into_iter().take_while(|(_, from)| *from <= at).last()
    }

    /// The phases in order, each with when it began.
    pub fn phases(&self) -> Vec<(Phase, Instant)> {
        self.marks
            .iter()
            .filter_map(|(_, mark)| match mark.kind {
                MarkKind::Phase(phase) => Some((phase, mark.at.instant())),
                _ => None,
            })
            .collect()
    }

    /// What the dials show at an instant, also where it was only carried over from last time.
    pub fn setting_at(&self, at: Instant) -> Setting {
        let shown = self.dials_at(at);
        let value = |shown: Dials| Setting {
            level: shown.level.map(|(level, _)| level),
            vacuum: shown.vacuum.map(|(vacuum, _)| vacuum),
            cycles: shown.cycles.map(|(cycles, _)| cycles),
        };
        value(shown)
    }

    /// What somebody set or confirmed, at an instant. What was only carried over is not in it.
    pub fn used_at(&self, at: Instant) -> Setting {
        fn fact<T>(shown: Option<(T, bool)>) -> Option<T> {
            shown.and_then(|(value, carried)| (!carried).then_some(value))
        }
        let Dials { level, vacuum, cycles } = self.dials_at(at);
        Setting { level: fact(level), vacuum: fact(vacuum), cycles: fact(cycles) }
    }

    /// What the dials show, each with whether it was only carried over.
    pub fn dials_at(&self, at: Instant) -> Dials {
        let mut now = Dials::default();
        for (_, mark) in self.marks.iter().take_while(|(_, m)| m.at.instant() <= at) {
            if let MarkKind::Setting { level, vacuum, cycles, carried, .. } = &mark.kind {
                now.level = level.map(|level| (level, *carried)).or(now.level);
                now.vacuum = vacuum.clone().map(|vacuum| (vacuum, *carried)).or(now.vacuum);
                now.cycles = cycles.clone().map(|cycles| (cycles, *carried)).or(now.cycles);
            }
        }
        now
    }

    /// What was used when a phase was over, the last time it was in it; nothing where the
    /// phase was not marked.
    pub fn used_in(&self, phase: Phase) -> Setting {
        let phases = self.phases();
        let Some(place) = phases.iter().rposition(|(of, _)| *of == phase) else { return Setting::default() };
        let over = match (phases.get(place + 1), &self.ended) {
            (Some((_, next)), _) => next.minus(crate::time::Span::milliseconds(1)),
            (None, Some(ended)) => ended.instant(),
            (None, None) => Instant::from_unix_milliseconds(i64::MAX),
        };
        self.used_at(over)
    }

    /// What was used in each phase, as the fields of a session written down afterwards say it.
    pub fn settings_as_fields(&self) -> Vec<(&'static str, serde_json::Value)> {
        let mut found = Vec::new();
        for (phase, [level, vacuum, cycles]) in [
            (Phase::Letdown, ["level_letdown", "vacuum_letdown", "cycles_letdown"]),
            (Phase::Expression, ["level_expression", "vacuum_expression", "cycles_expression"]),
        ] {
            let set = self.used_in(phase);
            found.extend(set.level.map(|set| (level, serde_json::json!(set.get()))));
            found.extend(set.vacuum.map(|set| (vacuum, set.to_json())));
            found.extend(set.cycles.map(|set| (cycles, set.to_json())));
        }
        found
    }

    /// The highest pain that was said of it, while it ran or afterwards.
    pub fn highest_pain(&self, fields: &Fields) -> Option<Score> {
        let marked = self.marks.iter().filter_map(|(_, mark)| match mark.kind {
            MarkKind::Pain { score } => score,
            _ => None,
        });
        let afterwards = PAINS.iter().filter_map(|(key, _, _)| super::whole_number(fields, key)).map(Score::new);
        marked.chain(afterwards).max()
    }

    /// The side it is on at a moment, where it changed from one to the other on the way.
    pub fn side_at(&self, at: Instant) -> Option<&str> {
        let mut changes = self.marks.iter().filter(|(_, mark)| mark.kind == MarkKind::OtherSide).peekable();
        // Before the first change it was on the other one.
        let before = changes.peek().and_then(|(_, first)| first.side.as_deref()).and_then(opposite);
        let last = changes.take_while(|(_, mark)| mark.at.instant() <= at).last();
        last.map_or(before, |(_, mark)| mark.side.as_deref())
    }

    /// Letdowns marked; none marked is not none had.
    pub fn letdowns_marked(&self) -> Count {
        Count::new(self.marks.iter().filter(|(_, m)| m.kind == MarkKind::Letdown).count() as u32)
    }

    /// The marks of one kind of deed, with their field.
    pub fn last_mark(&self, wanted: impl Fn(&MarkKind) -> bool) -> Option<&(String, Mark)> {
        self.marks.iter().rev().find(|(_, m)| wanted(&m.kind))
    }
}

/// The other of two sides.
pub fn opposite(side: &str) -> Option<&'static str> {
    match side {
        "left" => Some("right"),
        "right" => Some("left"),
        _ => None,
    }
}
