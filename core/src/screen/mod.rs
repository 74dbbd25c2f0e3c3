//! What each place shows: plain data, ready to draw.
//!
//! In: the record as it was gathered, and the words, together as a [`View`]. Out: a
//! [`shapes::Screen`]. Nothing is decided in the shell: words, units, heights
//! and what may be tapped are all settled here. Read [`shapes`] first; then a file or folder for
//! each place.

mod actions;
mod amounts;
mod asked;
pub(crate) mod caseload;
mod caution;
mod concurrent_text;
mod day;
mod entry;
mod erasing;
mod every_action;
mod family;
mod field_row;
mod frame;
mod just_pumped;
mod kept;
mod kit;
mod labels;
mod lead;
mod message;
mod plan;
mod readings;
mod ready;
mod recovery;
mod report;
mod running;
mod scale;
mod section;
pub mod shapes;
pub mod sheet;
mod sign;
mod signs_text;
mod starting;
mod strip;
mod supply;
mod tab;
mod term;
mod terms_there;
mod tonight;
mod trouble_words;
mod view;
mod visit;
mod waiting;
mod welcome;
mod words;

pub(crate) use caution::{over_text as caution_became, title as caution_title};
pub(crate) use every_action::HasActions;
pub use message::Message;
pub(crate) use recovery::RECOVERY_CODE;
pub(crate) use scale::{amount_of, field_of};
pub(crate) use starting::next as next_starting_question;
pub(crate) use tab::{Opens, SUPPLY_SPAN};
pub(crate) use tonight::reminder_words;
pub use trouble_words::words_of_trouble;
pub use view::{AlarmsAre, View};
pub(crate) use visit::{CARD, OPEN_PASSPHRASE, SEAL_PASSPHRASE};
pub use waiting::{About, Asked};
pub use words::Words;

use crate::trouble::Trouble;
use shapes::{Place, Screen};

/// A place as it stands.
///
/// # Errors
/// Where the place is gone, or the record can't be read.
pub fn show(view: &View<'_>, place: &Place) -> Result<Screen, Trouble> {
    match place {
        Place::Now => now(view),
        Place::Amounts { id } => amounts::show(view, &view.session(id)?, place),
        Place::JustPumped { minutes_ago } => just_pumped::show(view, *minutes_ago),
        Place::Starting { question } => starting::show(view, *question),
        Place::Day { days_back } => day::show(view, *days_back),
        Place::Tonight => tonight::show(view),
        Place::Entry { id } => entry::show(view, id),
        Place::Supply { days } => supply::show(view, *days),
        Place::SupplyMore { days } => supply::show_more(view, *days),
        Place::SupplyFigures { days } => supply::show_figures(view, *days),
        Place::Kept => kept::show(view),
        Place::Container { id } => kept::show_container(view, id),
        Place::UseFirst { milliliters } => kept::show_use_first(view, *milliliters),
        Place::Kit => kit::show(view),
        Place::Trace { id } => kit::show_trace(view, id),
        Place::Pump { id } => kit::show_pump(view, id),
        Place::Check { id } => kit::show_check(view, id),
        Place::Fit => kit::show_fit(view),
        Place::Term { word } => term::show(view, word),
        Place::Comfort => kit::show_comfort(view),
        Place::Letdown => kit::show_letdown(view),
        Place::Trial { id } => kit::show_trial(view, id),
        Place::Caution { key } => caution::show(view, key),
        Place::Cautions => caution::show_all(view),
        Place::Consultant { id } => visit::show_consultant(view, id),
        Place::Sharing => visit::show_sharing(view),
        Place::Sealed => visit::show_sealed(view),
        Place::Asked => asked::show(view),
        Place::Plan { id } => plan::show(view, id),
        Place::PlanRules { part } => plan::show_rules(view, part),
        Place::Erasing => erasing::show(view),
        Place::Recovery => recovery::show(view),
        Place::Compare { days } => supply::show_compared(view, *days),
        Place::Consent { scope } => visit::show_consent(view, scope.as_deref()),
        Place::Tables => visit::show_tables(view),
        Place::Desk => caseload::show_desk(view),
        Place::OwnCard => caseload::show_card(view),
        Place::Removing { id } => caseload::show_removing(view, id),
        Place::CaseFamily { id } => caseload::show_case(view, id),
        Place::Visit => visit::show(view),
        Place::Sheet => sheet::show(view),
        Place::Family => family::show(view),
        Place::Report => report::show(view),
    }
}

fn now(view: &View<'_>) -> Result<Screen, Trouble> {
    if let Some(row) = view.journal.running()? {
        return running::show(view, &row.subject);
    }
    if !view.look_around && !view.settings.welcomed && view.journal.is_empty()? {
        return welcome::show(view);
    }
    match crate::gather::asks::for_amounts_of(view)? {
        Some(session) => amounts::show(view, &session, &Place::Now),
        None => ready::show(view),
    }
}
