//! Cautions: one calm line on every screen, a page for each, and where each comes from.
//!
//! What stands is handed in; [`line`] is the notice, [`page`] what it opens to, [`call`]
//! the way to call, [`words`] says what was seen and what became of it.

mod call;
mod line;
mod page;
mod words;

pub(super) use line::line;
pub(super) use page::{group, show, show_all, source_text};
pub(super) use words::{became, because, heading};
pub(crate) use words::{over_text, title};
