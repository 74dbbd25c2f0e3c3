//! The table of every kind of record and every field it may have.

use super::Takes;

/// The kinds of record.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// How the person wants things: one record.
    Settings,
    /// Rules that were set to another value: one record.
    Rules,
    /// A child.
    Child,
    /// A pump.
    Pump,
    /// A part of a pump that wears.
    Part,
    /// A flange.
    Flange,
    /// A session: expressing, or a feed at the breast.
    Session,
    /// Milk given by bottle, tube or cup.
    Feed,
    /// Temperature and signs at the breast.
    Sign,
    /// A child's weight.
    Weight,
    /// Something that changed in life, from a day on.
    LifeEvent,
    /// A free note.
    Note,
}

/// A field: its name, what it takes, and the group it is shown in.
#[derive(Debug, Clone, Copy)]
pub struct Spec {
    /// Stable name.
    pub key: &'static str,
    /// What it takes.
    pub takes: Takes,
    /// The group of the form it stands in; `""` is not shown.
    pub group: &'static str,
}

const fn spec(key: &'static str, takes: Takes, group: &'static str) -> Spec {
    Spec { key, takes, group }
}

/// Sides of the body, as a field says them.
pub const SIDES: &[&str] = &["left", "right", "both"];
/// How milk is expressed or fed.
pub const METHODS: &[&str] = &["electric_pump", "hand_pump", "by_hand", "at_breast"];
/// Where a session took place.
pub const WHERE: &[&str] = &["home", "work", "neonatal_unit", "on_the_way"];
const GRADES: &[&str] = &["personal", "hospital", "hand"];
const POWERS: &[&str] = &["mains", "battery", "both"];
const PARTS: &[&str] = &["valve", "membrane", "tubing", "connector", "bottle_seal", "other"];
const SEXES: &[&str] = &["girl", "boy"];
const WAYS: &[&str] = &["bottle", "tube", "cup", "spoon_or_syringe"];
const MILKS: &[&str] = &["own_fresh", "own_stored", "donor", "formula"];
const FELT: &[&str] = &["seen_or_felt", "not_felt"];
const WHERE_ON_BODY: &[&str] = &["left", "right", "both", "neither"];

/// What can change in life.
pub const LIFE_EVENTS: &[&str] =
    &["medicine", "illness", "periods_back", "back_to_work", "journey", "solid_food", "other"];

const NOTE: Takes = Takes::Text { most: 4000 };
const NAME: Takes = Takes::Text { most: 80 };
const PAIN: Takes = Takes::Whole { least: 0, most: 10 };
const VACUUM: Takes = Takes::Vacuum { least: 0.0, most: 760.0 };
const SPEED: Takes = Takes::Speed { least: 1.0, most: 240.0 };
const LEVEL: Takes = Takes::Whole { least: 0, most: 99 };
const FLANGE: Takes = Takes::Length { least: 8.0, most: 45.0 };
const CHILD_MASS: Takes = Takes::Mass { least: 200.0, most: 30_000.0 };

const SESSION: &[Spec] = &[
    spec("started", Takes::Moment, "when"),
    spec("ended", Takes::Moment, "when"),
    spec("amount_left", Takes::Amount, "amount"),
    spec("amount_right", Takes::Amount, "amount"),
    spec("amount_together", Takes::Amount, "amount"),
    spec("weight_before", CHILD_MASS, "weighing"),
    spec("weight_after", CHILD_MASS, "weighing"),
    spec("child", Takes::Refers(Kind::Child), "weighing"),
    spec("method", Takes::Choice(METHODS), "how"),
    spec("sides", Takes::Choice(SIDES), "how"),
    spec("pump", Takes::Refers(Kind::Pump), "how"),
    spec("flange_left", Takes::Refers(Kind::Flange), "how"),
    spec("flange_right", Takes::Refers(Kind::Flange), "how"),
    spec("where", Takes::Choice(WHERE), "how"),
    spec("hands_on", Takes::Flag, "how"),
    spec("letdowns", Takes::Whole { least: 0, most: 20 }, "letdown"),
    spec("letdown_felt", Takes::Choice(FELT), "letdown"),
    spec("pain_left_letdown", PAIN, "comfort"),
    spec("pain_left_expression", PAIN, "comfort"),
    spec("pain_right_letdown", PAIN, "comfort"),
    spec("pain_right_expression", PAIN, "comfort"),
    spec("turned_down", Takes::Whole { least: 0, most: 50 }, "comfort"),
    spec("level_letdown", LEVEL, "setting"),
    spec("vacuum_letdown", VACUUM, "setting"),
    spec("cycles_letdown", SPEED, "setting"),
    spec("level_expression", LEVEL, "setting"),
    spec("vacuum_expression", VACUUM, "setting"),
    spec("cycles_expression", SPEED, "setting"),
    spec("note", NOTE, "note"),
    spec("gap_before", Takes::Choice(&["whole"]), ""),
    spec("amount_is_right", Takes::Flag, ""),
    spec("settled", Takes::Flag, ""),
    spec("afterwards", Takes::Flag, ""),
    spec("asked", Takes::Moment, ""),
];

const FEED: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("amount", Takes::Amount, "amount"),
    spec("way", Takes::Choice(WAYS), "how"),
    spec("milk", Takes::Choice(MILKS), "how"),
    spec("child", Takes::Refers(Kind::Child), "how"),
    spec("note", NOTE, "note"),
];

const SIGN: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("temperature", Takes::Temperature { least: 30.0, most: 45.0 }, "body"),
    spec("redness", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("heat", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("lump", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("swelling", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("nipple_damage", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("shivering", Takes::Flag, "body"),
    spec("note", NOTE, "note"),
];

const WEIGHT: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("weight", CHILD_MASS, "weighing"),
    spec("child", Takes::Refers(Kind::Child), "weighing"),
    spec("note", NOTE, "note"),
];

const LIFE_EVENT: &[Spec] =
    &[spec("at", Takes::Moment, "when"), spec("what", Takes::Choice(LIFE_EVENTS), "what"), spec("note", NOTE, "note")];

const fn percent(key: &'static str, least: f64, most: f64) -> Spec {
    spec(key, Takes::Number { least, most }, "supply-rules")
}

/// A field a rule, named as in the tables of [`crate::guidance`].
const RULES_FIELDS: &[Spec] = &[
    percent("complete_day", 30.0, 100.0),
    percent("bears_doubt", 5.0, 100.0),
    percent("least_complete", 1.0, 100.0),
    percent("band_a_week", 1.0, 30.0),
    percent("watched_day", 20.0, 100.0),
    spec("watch_reference", Takes::Number { least: 0.1, most: 3.0 }, "supply-rules"),
    spec("watch_decision", Takes::Number { least: 0.5, most: 20.0 }, "supply-rules"),
    spec("fever", Takes::Number { least: 36.0, most: 42.0 }, "supply-rules"),
    spec("volume_day", Takes::Number { least: 1.0, most: 60.0 }, "volume-rules"),
    spec("volume_reached", Takes::Number { least: 50.0, most: 2000.0 }, "volume-rules"),
    spec("volume_between", Takes::Number { least: 50.0, most: 2000.0 }, "volume-rules"),
    spec("need_a_kilogram", Takes::Number { least: 50.0, most: 250.0 }, "volume-rules"),
    spec("preterm_below", Takes::Number { least: 20.0, most: 44.0 }, "volume-rules"),
];

const NOTES: &[Spec] = &[spec("at", Takes::Moment, "when"), spec("text", NOTE, "note")];

const CHILD: &[Spec] = &[
    spec("name", NAME, "who"),
    spec("birth", Takes::Date, "who"),
    spec("gestation_weeks", Takes::Whole { least: 20, most: 44 }, "who"),
    spec("gestation_days", Takes::Whole { least: 0, most: 6 }, "who"),
    spec("sex", Takes::Choice(SEXES), "who"),
    spec("birth_weight", CHILD_MASS, "who"),
];

const PUMP: &[Spec] = &[
    spec("name", NAME, "what"),
    spec("grade", Takes::Choice(GRADES), "what"),
    spec("power", Takes::Choice(POWERS), "what"),
    spec("levels", Takes::Whole { least: 1, most: 99 }, "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("maximum_vacuum_low", VACUUM, "maker"),
    spec("maximum_vacuum_high", VACUUM, "maker"),
    spec("cycles_low", SPEED, "maker"),
    spec("cycles_high", SPEED, "maker"),
    spec("note", NOTE, "note"),
];

const PART: &[Spec] = &[
    spec("part", Takes::Choice(PARTS), "what"),
    spec("pump", Takes::Refers(Kind::Pump), "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("until", Takes::Date, "what"),
    spec("note", NOTE, "note"),
];

const FLANGES: &[Spec] = &[
    spec("size", FLANGE, "what"),
    spec("side", Takes::Choice(SIDES), "what"),
    spec("name", NAME, "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("note", NOTE, "note"),
];

const SETTINGS: &[Spec] = &[
    spec("hand", Takes::Choice(&["right", "left"]), "look"),
    spec("palette", Takes::Choice(&["as_device", "light", "night"]), "look"),
    spec("hour_clock", Takes::Choice(&["24", "12"]), "look"),
    spec("volume_unit", Takes::Choice(&["mL", "[foz_us]"]), "units"),
    spec("vacuum_unit", Takes::Choice(&["mm[Hg]", "kPa"]), "units"),
    spec("temperature_unit", Takes::Choice(&["Cel", "[degF]"]), "units"),
    spec("mass_unit", Takes::Choice(&["g", "kg", "[lb_av]"]), "units"),
    spec("day_start", Takes::Whole { least: 0, most: 12 }, "time"),
    spec("zone", Takes::Zone, "time"),
    spec("aim", Takes::Volume { least: 10.0, most: 5000.0 }, "aims"),
    spec("next_method", Takes::Choice(METHODS), ""),
    spec("next_sides", Takes::Choice(SIDES), ""),
    spec("next_pump", Takes::Refers(Kind::Pump), ""),
    spec("next_where", Takes::Choice(WHERE), ""),
    spec("drop_seen", Takes::Date, ""),
    spec("welcomed", Takes::Flag, ""),
];

impl Kind {
    /// Every kind, in the order of the exchange form.
    pub const ALL: &'static [Self] = &[
        Self::Settings,
        Self::Rules,
        Self::Child,
        Self::Pump,
        Self::Part,
        Self::Flange,
        Self::Session,
        Self::Feed,
        Self::Sign,
        Self::Weight,
        Self::LifeEvent,
        Self::Note,
    ];

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Settings => "settings",
            Self::Rules => "rules",
            Self::Child => "child",
            Self::Pump => "pump",
            Self::Part => "part",
            Self::Flange => "flange",
            Self::Session => "session",
            Self::Feed => "feed",
            Self::Sign => "sign",
            Self::Weight => "weight",
            Self::LifeEvent => "life_event",
            Self::Note => "note",
        }
    }

    /// The kind of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|k| k.name() == name)
    }

    /// Its fields, in the order they are shown.
    pub const fn fields(self) -> &'static [Spec] {
        match self {
            Self::Settings => SETTINGS,
            Self::Rules => RULES_FIELDS,
            Self::Child => CHILD,
            Self::Pump => PUMP,
            Self::Part => PART,
            Self::Flange => FLANGES,
            Self::Session => SESSION,
            Self::Feed => FEED,
            Self::Sign => SIGN,
            Self::Weight => WEIGHT,
            Self::LifeEvent => LIFE_EVENT,
            Self::Note => NOTES,
        }
    }

    /// The id of its one record, for kinds of which there is one.
    pub const fn only(self) -> Option<&'static str> {
        match self {
            Self::Settings => Some(super::SETTINGS),
            Self::Rules => Some(super::RULES),
            _ => None,
        }
    }

    /// The field of this name.
    pub fn field(self, key: &str) -> Option<&'static Spec> {
        self.fields().iter().find(|s| s.key == key)
    }

    /// The field that says when it was, for kinds that stand in a day.
    pub const fn time_field(self) -> Option<&'static str> {
        match self {
            Self::Session => Some("started"),
            Self::Feed | Self::Sign | Self::Weight | Self::LifeEvent | Self::Note => Some("at"),
            Self::Settings | Self::Rules | Self::Child | Self::Pump | Self::Part | Self::Flange => None,
        }
    }
}
