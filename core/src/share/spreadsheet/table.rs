//! The tables there are.

use super::column::{Column, From};
use crate::record::choices::SIDES;
use crate::record::field_type::MOST_AMOUNT_MILLILITERS;
use crate::record::{FieldSpec, FieldType, Kind, MarkKind};
use crate::share::parts::LeftOut;

/// A table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Table {
    /// A row a session.
    Sessions,
    /// A row for each thing marked while a session ran.
    Marks,
    /// A row for each guided search.
    Searches,
    /// A row for each trial of two ways.
    Trials,
    /// A row for each time milk was given.
    Feeds,
    /// A row for each time signs were written down.
    Signs,
    /// A row for each time a child was weighed.
    Weights,
    /// A row a check of a pump.
    Checks,
    /// A row for each reading of a check.
    Readings,
    /// A row for each time nipples were measured.
    Fits,
    /// A row for each change in life.
    LifeEvents,
    /// A row a note.
    Notes,
    /// A row a question for the consultant.
    Questions,
    /// A row a child.
    Children,
    /// A row a pump.
    Pumps,
    /// A row for each part that wears.
    Parts,
    /// A row a flange.
    Flanges,
    /// A row a gauge.
    Gauges,
    /// A row a container of milk.
    Containers,
    /// A row for each thing that happened to one.
    MilkEvents,
    /// A row for each time parts were cleaned.
    Cleanings,
}

const fn spec(key: &'static str, field_type: FieldType) -> FieldSpec {
    FieldSpec { key, field_type, group: "" }
}

const WHEN: FieldSpec = spec("at", FieldType::Moment);
const SIDE: FieldSpec = spec("side", FieldType::Choice(SIDES));
const LEVEL: FieldSpec = spec("level", FieldType::Whole { least: 0, most: 99 });
const VACUUM: FieldType = FieldType::Vacuum { least: 0.0, most: crate::record::reading::MOST_VACUUM };

/// What a mark says; see [`crate::record::Mark`].
const MARK: &[FieldSpec] = &[
    WHEN,
    spec("does", FieldType::Choice(MarkKind::NAMES)),
    SIDE,
    spec("phase", FieldType::Choice(&["letdown", "expression", "rest"])),
    LEVEL,
    spec("vacuum", VACUUM),
    spec("cycles", FieldType::Speed { least: 1.0, most: 240.0 }),
    spec("for_discomfort", FieldType::Flag),
    spec("carried", FieldType::Flag),
    spec("score", FieldType::Whole { least: 0, most: 10 }),
    spec("amount", FieldType::Volume { least: 0.0, most: MOST_AMOUNT_MILLILITERS }),
];

/// What a gauge showed; see [`crate::record::Reading`].
const READING: &[FieldSpec] = &[WHEN, LEVEL, SIDE, spec("vacuum", VACUUM), spec("set", VACUUM)];

impl Table {
    /// Every table, in the order they are offered.
    pub const ALL: &'static [Self] = &[
        Self::Sessions,
        Self::Marks,
        Self::Searches,
        Self::Trials,
        Self::Feeds,
        Self::Signs,
        Self::Weights,
        Self::Checks,
        Self::Readings,
        Self::Fits,
        Self::LifeEvents,
        Self::Notes,
        Self::Questions,
        Self::Children,
        Self::Pumps,
        Self::Parts,
        Self::Flanges,
        Self::Gauges,
        Self::Containers,
        Self::MilkEvents,
        Self::Cleanings,
    ];

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Sessions => "sessions",
            Self::Marks => "marks",
            Self::Searches => "searches",
            Self::Trials => "trials",
            Self::Feeds => "feeds",
            Self::Signs => "signs",
            Self::Weights => "weights",
            Self::Checks => "checks",
            Self::Readings => "readings",
            Self::Fits => "fits",
            Self::LifeEvents => "life-events",
            Self::Notes => "notes",
            Self::Questions => "questions",
            Self::Children => "children",
            Self::Pumps => "pumps",
            Self::Parts => "parts",
            Self::Flanges => "flanges",
            Self::Gauges => "gauges",
            Self::Containers => "containers",
            Self::MilkEvents => "milk-events",
            Self::Cleanings => "cleanings",
        }
    }

    /// The table of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|table| table.name() == name)
    }

    /// The kind of record its rows come from.
    pub const fn kind(self) -> Kind {
        match self {
            Self::Sessions | Self::Marks => Kind::Session,
            Self::Searches => Kind::Search,
            Self::Trials => Kind::Trial,
            Self::Feeds => Kind::Feed,
            Self::Signs => Kind::Sign,
            Self::Weights => Kind::Weight,
            Self::Checks | Self::Readings => Kind::Check,
            Self::Fits => Kind::Fit,
            Self::LifeEvents => Kind::LifeEvent,
            Self::Notes => Kind::Note,
            Self::Questions => Kind::Question,
            Self::Children => Kind::Child,
            Self::Pumps => Kind::Pump,
            Self::Parts => Kind::Part,
            Self::Flanges => Kind::Flange,
            Self::Gauges => Kind::Gauge,
            Self::Containers => Kind::Container,
            Self::MilkEvents => Kind::MilkEvent,
            Self::Cleanings => Kind::Cleaning,
        }
    }

    /// The fields of its rows where a row is a member of a record.
    pub(super) const fn members(self) -> Option<&'static [FieldSpec]> {
        match self {
            Self::Marks => Some(MARK),
            Self::Readings => Some(READING),
            _ => None,
        }
    }

    /// The columns that tell its rows apart.
    pub(super) fn key(self) -> &'static [&'static str] {
        match self {
            Self::Marks => &["session", "mark"],
            Self::Readings => &["check", "reading"],
            _ => &["id"],
        }
    }

    /// The table whose first line this is, also after a spreadsheet wrote it with another
    /// mark between its cells.
    pub fn of_header(line: &str) -> Option<Self> {
        let names: Vec<&str> =
            line.split([',', ';', '\t']).map(|name| name.trim_matches(['"', ' ', '\r', '\u{feff}'])).collect();
        let known = |table: &Self| {
            let columns = table.columns(&LeftOut::default());
            names.iter().all(|name| columns.iter().any(|column| column.name == *name))
        };
        let begins_so = |table: &Self| names.len() > 1 && names.starts_with(table.key());
        Self::ALL.iter().copied().filter(begins_so).find(known)
    }

    /// Whether it has rows: not where the time of them, or what they are about, is left out.
    pub(super) fn goes(self, left_out: &LeftOut) -> bool {
        let members = match (self.members(), self.kind().members()) {
            (Some(_), Some((prefix, _))) => left_out.lets(self.kind(), prefix),
            _ => true,
        };
        members && left_out.lets_any(self.kind())
    }

    /// Its columns in order, without what is left out.
    pub(super) fn columns(self, left_out: &LeftOut) -> Vec<Column> {
        let mut columns = match self.key() {
            [of, member] => vec![Column::id(of), Column::member(member)],
            _ => vec![Column::id("id")],
        };
        let shown = |spec: &&FieldSpec| !spec.group.is_empty();
        match self.members() {
            Some(members) => columns.extend(members.iter().flat_map(Column::of)),
            None => columns.extend(self.kind().fields().iter().filter(shown).flat_map(Column::of)),
        }
        if self == Self::Sessions {
            let place = columns.iter().position(|c| c.from == From::Zone("ended")).map_or(columns.len(), |at| at + 1);
            columns.insert(place, Column::lasted());
            let place = columns.iter().position(|c| c.from == From::Field("pain_left_letdown"));
            columns.insert(place.unwrap_or(columns.len()), Column::highest_pain());
        }
        let kind = self.kind();
        let lets = |field: &str| match (self.members(), kind.members()) {
            (Some(_), Some((prefix, _))) => left_out.lets(kind, prefix),
            _ => left_out.lets(kind, field),
        };
        columns.retain(|column| {
            column.field().is_none_or(lets) && column.names().is_none_or(|named| left_out.lets(named, "name"))
        });
        columns
    }
}
