//! How a family is found among many: by its name, and by why it needs a look.

use super::super::shapes::{Action, DeskEvent, Event, FieldKind, FieldRow, Sign, Weight};
use super::super::View;
use super::row::Row;
use crate::gather::reasons::{About, Reason};

/// Where a name to look for is typed: no record has this id.
pub(crate) const FIND: &str = "find-family";
/// The field in which it is typed, and that of the reason.
const NAME: &str = "find_name";
const REASON: &str = "find_reason";
/// So many families are seen at a glance, and need nothing to be found by.
const AT_A_GLANCE: usize = 4;
/// No name of a family is longer.
const LONGEST_NAME: usize = 200;

/// What the list is narrowed to.
#[derive(Debug, Clone, Default)]
pub(crate) struct Sought {
    /// A part of the name, as typed.
    name: String,
    /// Why a look is needed.
    pub(crate) about: Option<About>,
}

impl Sought {
    /// Looks for this part of a name; for any where it is empty.
    pub(crate) fn call_name(&mut self, typed: &str) {
        self.name = typed.trim().chars().take(LONGEST_NAME).collect();
    }

    /// Whether this family is among those that are looked for. One that can't wait is never hidden:
    /// what came in while the list was narrowed has to be seen.
    pub(super) fn finds(&self, row: &Row) -> bool {
        if row.is_urgent() {
            return true;
        }
        let name = row.name.as_deref().unwrap_or_default().to_lowercase();
        name.contains(&self.name.to_lowercase()) && self.about.is_none_or(|about| is_about(row, about))
    }

    fn is_nothing(&self) -> bool {
        self.name.is_empty() && self.about.is_none()
    }
}

fn is_about(row: &Row, about: About) -> bool {
    row.reasons.iter().map(Reason::about).any(|own| own == about)
}

/// The rows by which families are found, where there are many or some are hidden.
pub(crate) fn finding(view: &View<'_>, rows: &[Row], sought: &Sought) -> Vec<FieldRow> {
    if rows.len() <= AT_A_GLANCE && sought.is_nothing() {
        return Vec::new();
    }
    vec![by_name(view, sought), by_reason(view, rows, sought)]
}

fn by_name(view: &View<'_>, sought: &Sought) -> FieldRow {
    let words = view.words();
    let label = words.say("caseload-find-name");
    let clear = Event::Clear { id: FIND.to_owned(), field: NAME.to_owned() };
    let clear = Action::new("clear-find-name", words.say("clear"), clear)
        .spoken(words.with("clear-spoken", &[("field", label.clone().into())]))
        .weight(Weight::Quiet);
    FieldRow {
        value: sought.name.clone(),
        hint: words.say("caseload-find-name-hint"),
        clear: (!sought.name.is_empty()).then_some(clear),
        ..FieldRow::bare(FIND, NAME, label, FieldKind::Text)
    }
}

fn by_reason(view: &View<'_>, rows: &[Row], sought: &Sought) -> FieldRow {
    let words = view.words();
    let option = |about: Option<About>| {
        let name = about.map(About::name).unwrap_or_default();
        let key = if name.is_empty() { "all" } else { name };
        let event = Event::OnDesk { event: DeskEvent::OnlyReason { reason: name.to_owned() } };
        Action::new(format!("only-{key}"), words.say(&format!("caseload-find-{key}")), event)
            .sign(Sign::None)
            .chosen(sought.about == about)
    };
    let there = |about: &About| sought.about == Some(*about) || rows.iter().any(|row| is_about(row, *about));
    let options = std::iter::once(None).chain(About::ALL.into_iter().filter(there).map(Some)).map(option).collect();
    let label = words.say("caseload-find-reason");
    FieldRow { options, ..FieldRow::bare(FIND, REASON, label, FieldKind::Choice) }
}
