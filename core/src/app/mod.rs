//! The one reducer: an event and the present in, a screen and effects out.
//!
//! A tap that was answered is on disk. What went wrong is a
//! [`Trouble`](crate::trouble::Trouble), and the record is as it was. [`state`] is what it
//! holds, [`react`] leads an event to its deed, [`showing`] shows where the person then is. One file
//! a family of events: [`session`] while one runs, [`amounts`] after it,
//! [`enter`] for fields, [`kit`] for checks, [`comfort`] for searches and comparisons, [`trace`] for traces, [`import`] for files that
//! come in, [`undo`], and [`maintenance`] for copies and damage.

mod amounts;
mod asked;
mod caution;
mod changes;
mod closing;
mod comfort;
mod consent;
mod desk;
mod enter;
mod erase;
mod export;
mod fields;
mod files;
mod import;
mod just_pumped;
mod keeping;
mod keys;
mod kit;
mod locked;
mod maintenance;
mod open;
mod plan;
mod react;
pub mod recovery;
mod report;
mod session;
mod sharing;
pub mod sheet_renderer;
mod showing;
mod so_far;
mod starting;
mod state;
mod step;
mod supply;
mod tonight;
mod trace;
mod trial_place;
mod undo;

pub use maintenance::maintain;
pub use sheet_renderer::SheetRenderer;
pub use state::App;
pub(crate) use state::Present;
