//! Cautions: one calm line on every screen, a page for each, and where each comes from.
//!
//! [`gathered`] reads the record, [`line`] is the notice, [`page`] what it opens to,
//! [`words`] says what was seen.

mod gathered;
mod line;
mod page;
mod words;

pub(crate) use gathered::standing;
pub(super) use line::line;
pub(super) use page::{group, show, show_all};
pub(super) use words::because;
pub(crate) use words::title;
