//! The table of every kind of record and every field it may have: a file for each place.

mod body;
mod comfort;
mod day;
mod field_spec;
mod kept;
mod kit;
mod night;
mod people;
mod plan;
mod rules;
mod session;
mod settings;

pub use field_spec::FieldSpec;
pub use rules::{rule_of_a_family, DESK_RULES};

use super::Kind;

impl Kind {
    /// Its fields, in the order they are shown.
    pub const fn fields(self) -> &'static [FieldSpec] {
        match self {
            Self::Settings => settings::SETTINGS,
            Self::Rules => rules::RULES_FIELDS,
            Self::Child => people::CHILD,
            Self::Pump => kit::PUMP,
            Self::Part => kit::PART,
            Self::Flange => kit::FLANGES,
            Self::Gauge => kit::GAUGE,
            Self::Check => kit::CHECK,
            Self::Trace => kit::TRACE,
            Self::Fit => kit::FIT,
            Self::Session => session::SESSION,
            Self::Rhythm => night::RHYTHM,
            Self::FixedPoint => night::FIXED_POINT,
            Self::PlanChange => night::PLAN_CHANGE,
            Self::Search => comfort::SEARCH,
            Self::Trial => comfort::TRIAL,
            Self::Feed => day::FEED,
            Self::Container => kept::CONTAINER,
            Self::MilkEvent => kept::MILK_EVENT,
            Self::Keeping => kept::KEEPING,
            Self::Cleaning => kept::CLEANING,
            Self::Sign => body::SIGN,
            Self::Weight => day::WEIGHT,
            Self::LifeEvent => day::LIFE_EVENT,
            Self::Note => day::NOTES,
            Self::Visit => people::VISIT,
            Self::Question => people::QUESTION,
            Self::Consultant => people::CONSULTANT,
            Self::Consent => people::CONSENT,
            Self::CautionDealt => body::CAUTION_DEALT,
            Self::Plan => plan::PLAN,
            Self::PlanPart => plan::PLAN_PART,
            Self::CaseFamily => people::CASE_FAMILY,
        }
    }

    /// The field of this name.
    pub fn field(self, key: &str) -> Option<&'static FieldSpec> {
        self.fields().iter().find(|s| s.key == key)
    }
}
