//! The parent's questions that nobody has answered.

use super::section::{of_rows, row};
use crate::screen::shapes::SheetSection;
use crate::screen::visit::open_questions;
use crate::screen::View;
use crate::trouble::Trouble;

pub(super) fn render(view: &View<'_>) -> Result<Option<SheetSection>, Trouble> {
    let asked = open_questions(view)?.into_iter().map(|(_, question)| question).filter(|q| !q.is_empty());
    Ok(of_rows(view, "questions", asked.map(|question| row(question, "", "")).collect()))
}
