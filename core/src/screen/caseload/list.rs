//! Families, those first that need a look first, each with its reasons in words.

use super::super::shapes::{Action, DeskEvent, Event, ListGroup, ListRow, ListScreen, Place, Screen, Sign, Weight};
use super::super::View;
use super::finding::Sought;
use super::row::Row;
use crate::gather::reasons::Reason;
use crate::quantity::Count;
use crate::time::{LocalDay, Moment};
use crate::trouble::Trouble;

/// Whose is what stands beside the list.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Chosen<'a> {
    /// The family, by its record on the desk; none where it is about no family.
    pub(crate) family: Option<&'a str>,
    /// Whether it is the desk's own: what the consultant keeps of that family.
    pub(crate) of_desk: bool,
}

/// The list as a screen; so many sealed files wait for their passphrase.
pub(crate) fn list(
    view: &View<'_>,
    all: &[Row],
    sought: &Sought,
    chosen: Chosen<'_>,
    waits: Count,
) -> Result<Screen, Trouble> {
    let words = view.words();
    let rows: Vec<&Row> = all.iter().filter(|row| sought.finds(row)).collect();
    let mut frame = view.frame(&Place::Desk, words.say("caseload-title"), count(view, rows.len(), all.len()))?;
    frame.places = Vec::new();
    frame.notices.clear();
    (frame.undo, frame.redo) = (None, None);
    let (needs, quiet): (Vec<&Row>, Vec<&Row>) = rows.iter().copied().partition(|row| !row.reasons.is_empty());
    let group = |key: &str, rows: &[&Row]| ListGroup {
        key: key.to_owned(),
        title: if rows.is_empty() { String::new() } else { words.say(&format!("caseload-{key}")) },
        rows: rows.iter().map(|row| drawn(view, row, chosen.family == Some(row.id.as_str()))).collect(),
        empty: String::new(),
        add: Vec::new(),
    };
    let mut groups = vec![group("needs-a-look", &needs), group("others", &quiet)];
    let pick = Action::new("pick-record", words.say("caseload-pick"), Event::PickRecord)
        .detail(words.say("caseload-pick-detail"))
        .sign(Sign::In)
        .weight(if all.is_empty() { Weight::Main } else { Weight::Plain });
    let sealed = (waits.get() > 0).then(|| {
        let label = words.with("caseload-waits", &[("count", i64::from(waits.get()).into())]);
        Action::new("open-sealed", label, Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Sealed } })
            .detail(words.say("caseload-waits-detail"))
            .sign(Sign::In)
    });
    let desk = Action::new(
        "open-desk",
        words.say("caseload-desk"),
        Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Desk } },
    )
    .detail(words.say("caseload-desk-detail"))
    .sign(Sign::Kit)
    .chosen(chosen.family.is_none());
    let notes = chosen.family.map(|id| {
        let place = Place::CaseFamily { id: id.to_owned() };
        Action::new("open-case", words.say("case-notes"), Event::OnDesk { event: DeskEvent::OpenDesk { place } })
            .detail(words.say("case-notes-detail"))
            .chosen(chosen.of_desk)
    });
    groups.push(ListGroup {
        key: "desk".to_owned(),
        title: String::new(),
        rows: Vec::new(),
        empty: match (all.is_empty(), rows.is_empty()) {
            (true, _) => words.say("caseload-none"),
            (false, true) => words.say("caseload-none-found"),
            (false, false) => String::new(),
        },
        add: sealed.into_iter().chain(notes).chain([pick, desk]).collect(),
    });
    let intro = if rows.is_empty() { String::new() } else { words.say("caseload-as-shared") };
    Ok(Screen::List { frame, list: ListScreen { intro, groups } })
}

/// How many families there are, and how many of them are seen where not all are.
fn count(view: &View<'_>, seen: usize, all: usize) -> String {
    let words = view.words();
    match seen == all {
        true => words.with("caseload-count", &[("count", (all as i64).into())]),
        false => words.with("caseload-found", &[("seen", (seen as i64).into()), ("count", (all as i64).into())]),
    }
}

fn drawn(view: &View<'_>, row: &Row, chosen: bool) -> ListRow {
    let words = view.words();
    let title = row.name.clone().unwrap_or_else(|| words.say("case-no-name"));
    let said: Vec<String> = row.reasons.iter().map(|reason| reason_text(view, reason)).collect();
    let shared = |key: &str| match &row.shared {
        Some(at) => {
            let date = words.short_date(LocalDay::of(at, view.settings.day_start));
            words.with(key, &[("date", date.into()), ("time", words.clock(at).into())])
        }
        None => words.say("case-never-shared"),
    };
    // The line over the list is far from a row that is listened to.
    let spoken = shared("case-shared-spoken");
    let all: Vec<&str> = said.iter().chain([&spoken]).map(String::as_str).collect();
    let mut list_row = view.text_row(title, all.join("\n"));
    (list_row.detail, list_row.aside) = (said.join("\n"), shared("case-shared"));
    let open = Event::OnDesk { event: DeskEvent::OpenFamily { family: row.id.clone() } };
    let sign = row.reasons.first().map_or(Sign::None, sign_of);
    // What can't wait is the strongest thing on the page.
    let weight = if row.is_urgent() { Weight::Main } else { Weight::Quiet };
    list_row.opens(format!("open-{}", row.id), open).sign(sign).weight(weight).chosen(chosen)
}

/// A caution has its sign to itself: a visit that is due is none, and neither is a gap.
fn sign_of(reason: &Reason) -> Sign {
    match reason {
        Reason::CannotBeRead(_) | Reason::Salvaged | Reason::Caution { .. } | Reason::PumpBelow { .. } => Sign::Caution,
        Reason::Gap { .. } | Reason::Was { .. } => Sign::Unknown,
        Reason::VisitDue(_) => Sign::Visit,
    }
}

/// A reason in words.
pub(super) fn reason_text(view: &View<'_>, reason: &Reason) -> String {
    let words = view.words();
    match reason {
        Reason::CannotBeRead(_) => words.say("reason-cannot-be-read"),
        Reason::Salvaged => words.say("reason-salvaged"),
        Reason::Caution { caution, title } => {
            let urgency = words.say(&format!("reason-{}", caution.urgency().name()));
            words.with("reason-caution", &[("urgency", urgency.into()), ("what", title.clone().into())])
        }
        Reason::Was { title, became } => {
            words.with("reason-was", &[("what", title.clone().into()), ("became", became.clone().into())])
        }
        Reason::PumpBelow { pump } => words.with("reason-pump-below", &[("pump", pump.clone().into())]),
        Reason::Gap { since, lasted } => {
            let day = LocalDay::of(&Moment::new(*since, view.zone), view.settings.day_start);
            words.with("reason-gap", &[("date", words.short_date(day).into()), ("span", words.span(*lasted).into())])
        }
        Reason::VisitDue(due) => match due.days_since(view.today()) {
            0 => words.say("reason-visit-today"),
            1 => words.say("reason-visit-tomorrow"),
            2.. => words.with("reason-visit-on", &[("date", words.short_date(*due).into())]),
            _ => words.with("reason-visit-past", &[("date", words.short_date(*due).into())]),
        },
    }
}
