//! Rules and thresholds as data: value, unit, source, year.
//!
//! In: the tables that are shipped, and what the consultant changed. Out: the
//! rules an answer goes by, typed. Nothing is decided in here. Wording stands
//! in `core/locales` under `field-<key>`.

mod caseload;
mod cautions;
mod comfort;
mod intake;
mod keeping;
mod kit;
mod night;
mod rows;
mod rules;
mod supply;
mod tables;
mod terms;

pub use caseload::CaseloadRules;
pub use cautions::CautionRules;
pub use comfort::ComfortRules;
pub use keeping::KeepingRules;
pub use kit::{CycleRange, FitRules, KitRules, MONTH_HOURS};
pub use night::{NightRules, RefillRules};
pub use rows::{
    Advice, CautionSource, Cited, EachKilogram, Evidence, IntakeRange, PublishedIntake, Rule, Term, Urgency,
};
pub use rules::Rules;
pub use supply::SupplyRules;
pub use tables::check;
pub use terms::Word;
