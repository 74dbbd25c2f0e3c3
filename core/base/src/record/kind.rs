//! The kinds of record there are.

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
    /// A gauge that pumps are checked with.
    Gauge,
    /// A check of a pump with a gauge.
    Check,
    /// A trace of pressure over time.
    Trace,
    /// Nipples measured, and signs of how a flange fits.
    Fit,
    /// A session: expressing, or a feed at the breast.
    Session,
    /// How sessions are to fall over a day, and sleep with them: one record.
    Rhythm,
    /// A point of the day that stands: a shift, a break, a care time, a feed.
    FixedPoint,
    /// A planned session that was moved, left out, or put off.
    PlanChange,
    /// A guided search for a comfortable setting, in one session.
    Search,
    /// A comparison of two ways of doing it, in drawn order.
    Trial,
    /// Milk given by bottle, tube or cup.
    Feed,
    /// A container of milk that is kept.
    Container,
    /// Something that happened to one.
    MilkEvent,
    /// The rules by which milk is kept: one record.
    Keeping,
    /// Parts that were cleaned.
    Cleaning,
    /// Temperature and signs at the breast.
    Sign,
    /// A child's weight.
    Weight,
    /// Something that changed in life, from a day on.
    LifeEvent,
    /// A free note.
    Note,
    /// A visit with the consultant, that was or is to be.
    Visit,
    /// A question for the consultant.
    Question,
    /// The consultant whose keys were taken in.
    Consultant,
    /// That a network of units may count this family, for what and until when.
    Consent,
    /// A caution that was dealt with.
    CautionDealt,
    /// A plan from the consultant: what belongs to all of it.
    Plan,
    /// One part of a plan, which is accepted or left by itself.
    PlanPart,
    /// A family on the consultant's desk.
    CaseFamily,
}

impl Kind {
    /// Every kind, in the order of the exchange form.
    pub const ALL: &'static [Self] = &[
        Self::Settings,
        Self::Rules,
        Self::Child,
        Self::Pump,
        Self::Part,
        Self::Flange,
        Self::Gauge,
        Self::Check,
        Self::Trace,
        Self::Fit,
        Self::Rhythm,
        Self::FixedPoint,
        Self::Trial,
        Self::Session,
        Self::Search,
        Self::PlanChange,
        Self::Feed,
        Self::Keeping,
        Self::Container,
        Self::MilkEvent,
        Self::Cleaning,
        Self::Sign,
        Self::Weight,
        Self::LifeEvent,
        Self::Note,
        Self::Visit,
        Self::Question,
        Self::Consultant,
        Self::Consent,
        Self::CautionDealt,
        Self::Plan,
        Self::PlanPart,
        Self::CaseFamily,
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
            Self::Gauge => "gauge",
            Self::Check => "check",
            Self::Trace => "trace",
            Self::Fit => "fit",
            Self::Session => "session",
            Self::Rhythm => "rhythm",
            Self::FixedPoint => "fixed_point",
            Self::PlanChange => "plan_change",
            Self::Search => "search",
            Self::Trial => "trial",
            Self::Feed => "feed",
            Self::Container => "container",
            Self::MilkEvent => "milk_event",
            Self::Keeping => "keeping",
            Self::Cleaning => "cleaning",
            Self::Sign => "sign",
            Self::Weight => "weight",
            Self::LifeEvent => "life_event",
            Self::Note => "note",
            Self::Visit => "visit",
            Self::Question => "question",
            Self::Consultant => "consultant",
            Self::Consent => "consent",
            Self::CautionDealt => "caution_dealt",
            Self::Plan => "plan",
            Self::PlanPart => "plan_part",
            Self::CaseFamily => "case_family",
        }
    }

    /// The kind of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|k| k.name() == name)
    }

    /// The id of its one record, for kinds of which there is one.
    pub const fn only(self) -> Option<&'static str> {
        match self {
            Self::Settings => Some(super::SETTINGS),
            Self::Rules => Some(super::RULES),
            Self::Rhythm => Some(super::RHYTHM),
            Self::Keeping => Some(super::KEEPING),
            _ => None,
        }
    }

    /// The kind of which this is the one record.
    pub fn of_only(subject: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.only() == Some(subject))
    }

    /// What the names of its members begin with, where it holds any number of
    /// them, and under which word the exchange form gathers them.
    pub const fn members(self) -> Option<(&'static str, &'static str)> {
        match self {
            Self::Session => Some((super::MARKS, "marks")),
            Self::Check => Some((super::READINGS, "readings")),
            _ => None,
        }
    }

    /// The field that says when it was, for kinds that stand in a day.
    pub const fn time_field(self) -> Option<&'static str> {
        match self {
            Self::Session => Some("started"),
            Self::Check
            | Self::Trace
            | Self::Fit
            | Self::Feed
            | Self::Container
            | Self::MilkEvent
            | Self::Cleaning
            | Self::Sign
            | Self::Weight
            | Self::LifeEvent
            | Self::PlanChange
            | Self::Search
            | Self::Trial
            | Self::Note
            | Self::Visit
            | Self::Question
            | Self::Consent
            | Self::CautionDealt
            | Self::Plan => Some("at"),
            Self::Settings
            | Self::Rules
            | Self::Rhythm
            | Self::Keeping
            | Self::FixedPoint
            | Self::Child
            | Self::Pump
            | Self::Part
            | Self::Flange
            | Self::Gauge
            | Self::Consultant
            | Self::PlanPart
            | Self::CaseFamily => None,
        }
    }
}
