//! What each place shows: plain data, ready to draw.
//!
//! In: the journal and the present moment, together as a [`View`]. Out: a
//! [`shapes::Screen`]. Nothing is decided in the shell: words, units, heights
//! and what may be tapped are all settled here. Read [`shapes`] first; then one
//! file a place.

mod actions;
mod amounts;
mod asked;
pub(crate) mod caseload;
mod caution;
mod day;
mod entry;
mod erasing;
mod family;
mod field_row;
mod frame;
mod kit;
mod labels;
mod plan;
mod readings;
mod ready;
mod report;
mod running;
mod scale;
pub mod shapes;
pub mod sheet;
mod sign;
mod signs_said;
mod strip;
mod supply;
mod tonight;
mod trouble_words;
mod view;
mod visit;
mod welcome;
mod words;

pub use asked::{About, Asked};
pub(crate) use caution::{
    over_said as caution_became, standing as standing_cautions, title as caution_title, urgent_since as cautions_since,
};
pub(crate) use field_row::{typed_unit, DATE_OF};
pub use frame::Said;
pub(crate) use frame::SUPPLY_SPAN;
pub(crate) use kit::below_its_range;
pub(crate) use kit::next_place;
pub(crate) use plan::parts_of_plan;
pub(crate) use ready::SetUp;
pub(crate) use scale::amount_of;
pub use scale::{AmountScale, FineStep};
pub(crate) use tonight::{reminder_words, Look, PUT_OFF};
pub use trouble_words::words_of_trouble;
pub use view::{AlarmsAre, Shared, View};
pub(crate) use visit::{CARD, OPEN_PASSPHRASE, SEAL_PASSPHRASE};
pub use words::Words;

use crate::time::Span;
use crate::trouble::Trouble;
use shapes::{Place, Screen};

/// How long after a session its amounts are asked for on the first screen.
pub const ASKS_FOR_AMOUNTS: Span = Span::minutes(30);
/// A session that ran this long is asked about.
pub const ASKS_ABOUT_LONG: Span = Span::hours(2);

/// A place as it stands. `report` is what came of the last file brought in.
pub fn show(view: &View<'_>, place: &Place) -> Result<Screen, Trouble> {
    match place {
        Place::Now => now(view),
        Place::Day { days_back } => day::show(view, *days_back),
        Place::Tonight => tonight::show(view),
        Place::Entry { id } => entry::show(view, id),
        Place::Supply { days } => supply::show(view, *days),
        Place::SupplyFigures { days } => supply::show_figures(view, *days),
        Place::Kit => kit::show(view),
        Place::Trace { id } => kit::show_trace(view, id),
        Place::Pump { id } => kit::show_pump(view, id),
        Place::Check { id } => kit::show_check(view, id),
        Place::Fit => kit::show_fit(view),
        Place::Caution { key } => caution::show(view, key),
        Place::Cautions => caution::show_all(view),
        Place::Consultant { id } => visit::show_consultant(view, id),
        Place::Sharing => visit::show_sharing(view),
        Place::Sealed => visit::show_sealed(view),
        Place::Asked => asked::show(view),
        Place::Plan { id } => plan::show(view, id),
        Place::PlanRules { part } => plan::show_rules(view, part),
        Place::Erasing => erasing::show(view),
        Place::Compare { days } => supply::show_compared(view, *days),
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
    match amounts::to_ask(view)? {
        Some(session) => amounts::show(view, &session),
        None => ready::show(view),
    }
}
