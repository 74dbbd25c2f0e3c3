//! Stamps and names of the year 2200.

use drawwell_core::journal::{Change, Dot, Journal, Stamp, KEPT_BACKUPS};
use drawwell_core::time::{Instant, Span};
use serde_json::json;

use super::NOW;

const CENTURY: Span = Span::hours(24 * 365 * 174);

fn change(at: Instant) -> Change {
    Change {
        dot: Dot { device: "two".to_owned(), sequence: 1 },
        stamp: Stamp::at(at),
        subject: "n".to_owned(),
        field: "text".to_owned(),
        value: "\"theirs\"".to_owned(),
        replaces: Vec::new(),
    }
}

fn note(journal: &mut Journal, text: &str, now: Instant) {
    journal.act("enter", "n", now, |w| w.set("n", "text", &json!(text))).unwrap();
}

#[test]
fn a_foreign_stamp_more_than_a_day_ahead_waits_and_one_of_a_day_does_not() {
    for (ahead, taken) in [(Span::hours(24), 1), (Span::milliseconds(24 * 3_600_000 + 1), 0), (CENTURY, 0)] {
        let folder = tempfile::tempdir().unwrap();
        let mut journal = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
        let changes = [change(NOW.plus(ahead))];
        let merged = journal.merge(&changes, NOW).unwrap();
        assert_eq!((merged.taken, merged.ahead), (taken, 1 - taken));
        // By then it comes in.
        let merged = journal.merge(&changes, NOW.plus(ahead)).unwrap();
        assert_eq!((merged.taken, merged.ahead), (1 - taken, 0));
    }
}

/// An own clock that was wrong once.
#[test]
fn an_own_stamp_of_the_year_2200_is_not_followed_and_is_said_again() {
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
    note(&mut journal, "ahead", NOW.plus(CENTURY));
    journal.act("enter", "m", NOW, |w| w.set("m", "text", &json!("today"))).unwrap();
    let changes = journal.changes().unwrap();
    let sane = changes.iter().filter(|change| change.stamp.instant() <= NOW.plus(Span::hours(24))).count();
    assert_eq!((changes.len(), sane), (3, 2), "said again once");
    // What another phone says without knowing of it, by a right clock and later, wins.
    let mut theirs = change(NOW.plus(Span::hours(25)));
    theirs.stamp = Stamp::at(NOW.plus(Span::hours(25)));
    journal.merge(&[theirs], NOW.plus(Span::hours(26))).unwrap();
    let value: String = journal
        .connection()
        .query_row("SELECT value FROM field WHERE subject = 'n' AND field = 'text'", [], |r| r.get(0))
        .unwrap();
    assert_eq!(value, "\"theirs\"");
}

/// Seen: every later safety copy was deleted as it was made.
#[test]
fn copies_named_ahead_of_now_count_as_the_oldest_and_the_new_one_is_never_deleted() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    note(&mut journal, "x", NOW);
    for n in 0..KEPT_BACKUPS as i64 + 1 {
        let name = format!("j.backup-{}", NOW.plus(CENTURY).plus(Span::hours(n)).unix_milliseconds());
        std::fs::write(folder.path().join(name), b"from a wrong clock").unwrap();
    }
    for n in 0..3 {
        let made = journal.back_up(NOW.plus(Span::hours(7 * n))).unwrap().unwrap();
        assert!(made.exists(), "{n}");
        assert_eq!(journal.backups().len(), KEPT_BACKUPS);
    }
    let honest = journal.backups().iter().filter(|p| std::fs::read(p).unwrap() != b"from a wrong clock").count();
    assert_eq!(honest, 3);
}

#[test]
fn a_record_reopened_under_another_name_follows_no_stamp_that_is_far_ahead() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    note(&mut journal, "ahead", NOW.plus(CENTURY));
    drop(journal);
    let mut journal = Journal::open(&path, "two", NOW).unwrap().journal;
    note(&mut journal, "today", NOW);
    let last = journal.changes().unwrap().into_iter().rfind(|change| change.dot.device == "two").unwrap();
    assert!(last.stamp.instant() <= NOW.plus(Span::hours(24)).plus(Span::seconds(1)));
}
