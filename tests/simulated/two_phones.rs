//! Two phones that did not know of each other.

use drawwell_core::journal::Journal;
use drawwell_core::time::{Instant, Span};
use serde_json::{json, Value};
use tempfile::TempDir;

const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);

struct Phone(Journal, #[allow(dead_code)] TempDir);

impl Phone {
    fn new(name: &str) -> Self {
        let folder = tempfile::tempdir().unwrap();
        Self(Journal::open(&folder.path().join("j"), name, NOW).unwrap().journal, folder)
    }
    fn write(&mut self, field: &str, value: Value, after: Span) {
        self.0.act("enter", "s", NOW.plus(after), |w| w.set("s", field, &value)).unwrap();
    }
    fn hear(&mut self, other: &Self) {
        self.0.merge(&other.0.changes().unwrap(), NOW).unwrap();
    }
    fn reads(&self, field: &str) -> Option<Value> {
        self.0.record("s").unwrap().unwrap().1.get(field).cloned()
    }
}

fn pair() -> (Phone, Phone) {
    let (mut one, mut two) = (Phone::new("one"), Phone::new("two"));
    one.write("kind", json!("note"), Span::seconds(0));
    one.write("text", json!("first"), Span::seconds(1));
    two.hear(&one);
    (one, two)
}

#[test]
fn two_edits_of_one_field_are_both_kept_and_the_later_is_shown() {
    let (mut one, mut two) = pair();
    one.write("text", json!("from one"), Span::seconds(10));
    two.write("text", json!("from two"), Span::seconds(20));
    one.hear(&two);
    two.hear(&one);
    for phone in [&one, &two] {
        assert_eq!(phone.reads("text").unwrap(), "from two");
        let others = phone.0.other_values("s").unwrap();
        assert_eq!(
            others.iter().map(|h| (h.value.as_str(), h.device.as_str())).collect::<Vec<_>>(),
            [("\"from one\"", "one")]
        );
    }
}

#[test]
fn an_edit_made_after_seeing_both_settles_them() {
    let (mut one, mut two) = pair();
    one.write("text", json!("from one"), Span::seconds(10));
    two.write("text", json!("from two"), Span::seconds(20));
    one.hear(&two);
    one.write("text", json!("settled"), Span::seconds(30));
    two.hear(&one);
    assert_eq!(two.reads("text").unwrap(), "settled");
    assert!(two.0.other_values("s").unwrap().is_empty());
}

#[test]
fn an_edit_that_meets_a_delete_is_kept_and_shown() {
    let (mut one, mut two) = pair();
    one.write("taken_out", json!(true), Span::seconds(10));
    two.write("text", json!("still wanted"), Span::seconds(20));
    one.hear(&two);
    assert_eq!(one.reads("taken_out").unwrap(), true);
    assert_eq!(one.reads("text").unwrap(), "still wanted");
    assert_eq!(one.0.late_edit("s").unwrap().unwrap().device, "two");
}

/// A stamp of the next century must not win for a century: what carries it waits until then.
#[test]
fn what_a_clock_far_ahead_says_waits_and_is_shown() {
    let (mut one, mut two) = pair();
    let century = Span::hours(24 * 365 * 100);
    two.write("text", json!("from the future"), century);
    let before = one.reads("text");
    one.hear(&two);
    assert_eq!(one.reads("text"), before);
    assert!(one.0.clock_ahead().unwrap().unwrap() > Span::hours(24 * 365 * 99));
    one.write("text", json!("from today"), Span::seconds(60));
    let last = one.0.changes().unwrap().into_iter().rfind(|c| c.dot.device == "one").unwrap();
    assert_eq!(last.stamp.instant(), NOW.plus(Span::seconds(60)), "our own clock did not follow it");
}

/// The phone whose clock was wrong says it again once the clock is right: then it comes along,
/// and wins over nothing by its old stamp.
#[test]
fn a_phone_whose_clock_was_set_right_says_again_what_it_said_ahead() {
    let (mut one, mut two) = pair();
    two.write("text", json!("from the future"), Span::hours(24 * 365 * 100));
    two.write("note", json!("today"), Span::seconds(5));
    one.hear(&two);
    assert_eq!(one.reads("text").unwrap(), "from the future");
    one.write("text", json!("from today"), Span::seconds(60));
    two.hear(&one);
    assert_eq!(two.reads("text").unwrap(), "from today");
    assert!(two.0.other_values("s").unwrap().is_empty());
    assert!(two.0.changes().unwrap().iter().filter(|c| c.stamp.instant() > NOW.plus(Span::hours(24))).count() == 1);
}

#[test]
fn a_clock_a_little_ahead_is_followed() {
    let (mut one, mut two) = pair();
    two.write("text", json!("an hour ahead"), Span::hours(1));
    one.hear(&two);
    assert_eq!(one.0.clock_ahead().unwrap(), None);
    one.write("text", json!("after it"), Span::seconds(60));
    assert!(one.0.changes().unwrap().pop().unwrap().stamp.instant() >= NOW.plus(Span::hours(1)));
}
