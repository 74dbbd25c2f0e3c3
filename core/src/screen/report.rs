//! What came of the last file that was brought in.

use super::shapes::{ListGroup, ListRow, ListScreen, Place, Screen};
use super::View;
use crate::trouble::Trouble;

/// The report as a screen; without one, the family place.
pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let Some(report) = view.report else { return super::family::show(view) };
    let mut frame = view.frame(&Place::Report, words.say("report-title"), String::new())?;
    frame.back = Some(view.back());
    let plain = |title: String| ListRow {
        spoken: title.clone(),
        title,
        detail: String::new(),
        aside: String::new(),
        open: None,
    };
    let mut taken = vec![plain(words.with("report-taken", &[("count", (report.taken as i64).into())]))];
    if report.unchanged > 0 {
        taken.push(plain(words.with("report-unchanged", &[("count", (report.unchanged as i64).into())])));
    }
    for (key, count) in [
        ("report-kept-back", report.kept_back),
        ("report-other", report.other),
        ("report-erased", report.erased),
        ("report-ahead", report.ahead),
    ] {
        if count > 0 {
            taken.push(plain(words.with(key, &[("count", (count as i64).into())])));
        }
    }
    let mut groups = vec![ListGroup {
        key: "taken".to_owned(),
        title: words.say("report-group-taken"),
        rows: taken,
        empty: String::new(),
        add: Vec::new(),
    }];
    if report.wrong_count > 0 {
        let mut rows: Vec<ListRow> = report
            .wrong
            .iter()
            .map(|wrong| {
                let title = words.with("report-line", &[("line", wrong.line.to_string().into())]);
                let detail = super::words_of_trouble(view.texts, &wrong.why).0;
                let spoken =
                    words.with("row-spoken", &[("title", title.clone().into()), ("detail", detail.clone().into())]);
                ListRow { title, detail, aside: String::new(), spoken, open: None }
            })
            .collect();
        let more = report.wrong_count.saturating_sub(report.wrong.len() as u64);
        if more > 0 {
            rows.push(plain(words.with("report-more", &[("count", (more as i64).into())])));
        }
        groups.push(ListGroup {
            key: "wrong".to_owned(),
            title: words.with("report-group-wrong", &[("count", (report.wrong_count as i64).into())]),
            rows,
            empty: String::new(),
            add: Vec::new(),
        });
    }
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("report-intro"), groups } })
}
