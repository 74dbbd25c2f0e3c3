//! What must be on the machine, and how it comes there.
//!
//! `tool` knows what is asked for and whether it is there, `packages` is the one table of
//! how each is called by whom, `manager` the machine's own package manager, `consent` who
//! may be asked, `install` does it.

pub(crate) mod consent;
mod install;
mod manager;
mod packages;
mod tool;

pub(crate) use consent::Consent;
pub(crate) use install::need;
pub(crate) use manager::on_path;
pub(crate) use tool::{answers, Tool};
