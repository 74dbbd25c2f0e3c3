//! What is said of now: after a drop, with a nightly gap, with doubles, and of refilling where
//! milk is left behind. Sentences that once misled, each asserted as it is seen.

use drawwell_core::screen::shapes::{Place, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use drawwell_tests::written::milliliters as amount;
use serde_json::json;

use crate::supply::{before, berlin, every_three_hours, go, person, supply};

/// A little more and less each day, by up to 12 %, and by session.
fn lived(day: i64, n: i64) -> f64 {
    let of_day = [0.0, 0.08, -0.06, 0.12, -0.1, 0.03, -0.07, 0.05, -0.03, 0.1, -0.12][day.rem_euclid(11) as usize];
    45.0 * (1.0 + of_day) + [0.0, 3.0, -2.0, 4.0, -4.0, 1.0, -2.0][n.rem_euclid(7) as usize]
}

/// Sixty days, of which the last so many gave a quarter less: 540 mL a day in place of 720.
fn dropped(days_ago: i64) -> Person {
    let mut person = person();
    let drop = 60 - days_ago;
    let written = every_three_hours(&person, 60, |day, n| lived(day, n) * if day < drop { 1.0 } else { 0.75 });
    person.import_file(&written.file()).unwrap();
    person
}

fn milliliters(said: &str) -> f64 {
    said.split(' ').find_map(|word| word.replace(',', "").parse().ok()).unwrap()
}

#[test]
fn seven_days_after_a_quarter_less_the_figure_is_what_is_made_now_on_every_span() {
    let mut person = dropped(7);
    for days in [7, 14, 28, 0] {
        let told = supply(&mut person, days);
        let figure = milliliters(&told.figure.replace("about ", ""));
        assert!((500.0..=590.0).contains(&figure), "{days}: {}", told.figure);
        if days != 7 {
            assert!(told.headline.starts_with("Less since about 1"), "{days}: {}", told.headline);
            assert!(told.caption.contains(" since 1"), "{days}: {}", told.caption);
            assert!(told.lines.iter().any(|line| line.starts_with("Before that, about ")), "{days}: {:?}", told.lines);
        }
        assert!(!told.headline.contains("Steady"), "{days}");
    }
}

#[test]
fn thirty_days_after_it_all_says_the_level_since_and_what_was_before() {
    let mut person = dropped(30);
    let told = supply(&mut person, 0);
    assert!(told.headline.starts_with("Less since about 2") || told.headline.starts_with("Less since about 1"));
    let figure = milliliters(&told.figure.replace("about ", ""));
    assert!((510.0..=570.0).contains(&figure), "{}", told.figure);
    let line = told.lines.iter().find(|line| line.starts_with("Before that, about ")).unwrap();
    assert!((650.0..=760.0).contains(&milliliters(&line.replace("Before that, about ", ""))), "{line}");
    let change = told.changes.first().unwrap();
    assert!(change.title.contains("less since"), "{}", change.title);
    assert!(!change.detail.contains("second test"), "{}", change.detail);
}

#[test]
fn an_aim_that_was_met_before_a_drop_is_not_said_to_be_met() {
    let mut person = dropped(7);
    go(&mut person, Place::Entry { id: "settings".to_owned() });
    person.enter("aim", "600").unwrap();
    let told = supply(&mut person, 28);
    let aim = told.against.rows.iter().find(|row| row.title == "Your goal").unwrap();
    assert!(!aim.detail.contains("It is met"), "{}", aim.detail);
    assert!(aim.detail.contains("Now 9") || aim.detail.contains("Now 8"), "{}", aim.detail);
}

#[test]
fn nothing_is_promised_of_days_that_can_t_come() {
    let mut person = person();
    let written =
        every_three_hours(&person, 40, |day, n| lived(day * 7, n) * (1.0 + 0.25 * ((day * 5 % 9) as f64 - 4.0) / 4.0));
    person.import_file(&written.file()).unwrap();
    for days in [7, 14, 28, 0] {
        let told = supply(&mut person, days);
        let said = told.lines.join(" ");
        assert!(!said.contains("would tell"), "{days}: {said}");
    }
}

#[test]
fn one_session_written_down_twice_counts_once_and_is_asked_about() {
    let mut person = person();
    let mut written = every_three_hours(&person, 20, |_, n| 45.0 + (n % 3) as f64);
    // Every session of the last two days a second time, as another phone has it.
    for n in 0..16 {
        let ended = before(&person, Span::minutes(30 + n * 180));
        let same = 45.0 + ((20 * 8 - 1 - n) % 3) as f64;
        written.both(&format!("again-{n:02}"), ended.plus(Span::minutes(2)), same, same);
    }
    person.import_file(&written.file()).unwrap();
    let told = supply(&mut person, 28);
    assert_eq!(told.figure, "about 735 mL a day");
    let asked = told.asks.iter().find(|notice| notice.key == "asks-double-again-00").unwrap();
    assert!(asked.text.contains("may be the same one, logged twice. They count as one"), "{}", asked.text);
    let bars = told.weeks.bars.clone();
    go(&mut person, Place::Supply { days: 28 });
    person.press("double-is-two").unwrap();
    let two = supply(&mut person, 28);
    assert!(two.asks.iter().all(|notice| notice.key != "asks-double-again-00"));
    person.press("undo").unwrap();
    assert_eq!(supply(&mut person, 28).weeks.bars, bars);
    go(&mut person, Place::Supply { days: 28 });
    person.press("double-is-one").unwrap();
    assert!(supply(&mut person, 28).asks.iter().all(|notice| notice.key != "asks-double-again-00"));
}

#[test]
fn sessions_that_overlap_on_one_side_count_once_and_are_asked_about() {
    let mut person = person();
    let mut written = every_three_hours(&person, 20, |_, n| 45.0 + (n % 3) as f64);
    // It began ten minutes before the last one ended, and went on for half an hour; less came.
    let ended = before(&person, Span::minutes(10));
    let started = written.moment(ended.minus(Span::minutes(30)));
    let amounts = [("amount_left", amount(30.0)), ("amount_right", amount(28.0))];
    let times = [("started", started), ("ended", written.moment(ended)), ("settled", json!(true))];
    let how = [("method", json!("electric_pump")), ("sides", json!("both"))];
    written.fact("session", "over", &[&times[..], &amounts[..], &how[..]].concat());
    person.import_file(&written.file()).unwrap();
    let told = supply(&mut person, 28);
    assert_eq!(told.figure, "about 735 mL a day");
    let asked = told.asks.iter().find(|notice| notice.key == "asks-double-over").unwrap();
    assert!(asked.text.contains("overlap. Only the first counts until you say."), "{}", asked.text);
    go(&mut person, Place::Supply { days: 28 });
    person.press("double-is-two").unwrap();
    assert!(supply(&mut person, 28).asks.iter().all(|notice| notice.key != "asks-double-over"));
}

/// Seven sessions a day from 07:00 to 01:00, and none that was ever written down before 07:00.
fn with_a_nightly_gap() -> Person {
    let mut person = person();
    let mut written = berlin();
    for day in 0..20 {
        for nth in 0..7 {
            // Noon is 12:30: from 01:00 of that day back to 07:00 of the day before.
            let ended = before(&person, Span::minutes(day * 24 * 60 + 11 * 60 + 30 + nth * 180));
            written.both(&format!("s-{day:02}-{nth}"), ended, 45.0 + (nth % 3) as f64, 45.0 + (day % 2) as f64);
        }
    }
    person.import_file(&written.file()).unwrap();
    person
}

#[test]
fn a_gap_at_the_same_hours_every_night_is_what_the_figure_rests_on_and_is_asked_about_once() {
    let mut person = with_a_nightly_gap();
    let told = supply(&mut person, 28);
    assert!(told.lines.iter().any(|line| line.starts_with("This assumes no session between 0")), "{:?}", told.lines);
    let asked: Vec<_> = told.asks.iter().filter(|notice| notice.key.starts_with("asks-quiet")).collect();
    assert_eq!(asked.len(), 1);
    assert!(asked[0].text.starts_with("Do you have a session between"), "{}", asked[0].text);
    go(&mut person, Place::Supply { days: 28 });
    person.press("quiet-is-whole").unwrap();
    let told = supply(&mut person, 28);
    assert!(told.asks.iter().all(|notice| !notice.key.starts_with("asks-quiet")), "it is not asked again");
    assert!(told.lines.iter().all(|line| !line.starts_with("This assumes")), "{:?}", told.lines);
}

#[test]
fn where_a_session_is_done_every_night_and_not_logged_the_figure_says_so_and_nothing_is_asked_again() {
    let mut person = with_a_nightly_gap();
    go(&mut person, Place::Supply { days: 28 });
    person.press("quiet-hides-one").unwrap();
    let told = supply(&mut person, 28);
    assert!(told.asks.is_empty(), "{:?}", told.asks);
    let says = |line: &String| line.ends_with("isn’t logged, so you make more than this.");
    assert_eq!(told.lines.iter().filter(|line| says(line)).count(), 1, "{:?}", told.lines);
    person.press("undo").unwrap();
    let told = supply(&mut person, 28);
    assert!(told.asks.iter().any(|notice| notice.key.starts_with("asks-quiet")), "it is asked again");
}

/// About 670 mL a day for two weeks, then a quarter less every week; days differ.
fn who_began_to_make_less() -> Person {
    let mut person = person();
    let mut written = berlin();
    for day in 0..28_i64 {
        // The oldest day is 27.
        let differs = [1.0, 1.05, 0.96, 1.02, 0.97, 1.04, 0.96][day as usize % 7];
        let share = 0.955_f64.powi((17 - day).max(0) as i32) * differs;
        for nth in 0..8 {
            let ended = before(&person, Span::minutes(day * 24 * 60 + 30 + nth * 180));
            let each = (40.0 + ((day * 8 + nth) * 7 % 5) as f64) * share;
            written.both(&format!("s-{day:02}-{nth}"), ended, each, each);
        }
    }
    person.import_file(&written.file()).unwrap();
    person
}

#[test]
fn where_it_falls_the_day_on_which_it_began_is_told_with_its_range() {
    let mut person = who_began_to_make_less();
    let told = supply(&mut person, 28);
    assert_eq!(told.headline, "Falling", "{:?}", told.lines);
    assert!(told.lines.iter().any(|line| line.starts_with("It began about")), "{:?}", told.lines);
}

/// A fifth is left behind at each session and comes with the next; each breast makes 20 mL an
/// hour and never flattens below 200 mL.
#[test]
fn where_milk_is_left_behind_no_level_is_told() {
    let mut person = person();
    let mut written = berlin();
    let gaps = [3.0, 2.5, 3.5, 4.0, 3.0, 8.0];
    let (mut left, mut ended) = (0.0, before(&person, Span::hours(24 * 40)));
    for n in 0..240_usize {
        let gap = gaps[n % 6];
        ended = ended.plus(Span::minutes((gap * 60.0) as i64));
        let held = 200.0 * (1.0 - f64::exp(-20.0 * gap / 200.0)) + left;
        let noise = 1.0 + 0.08 * ([0.3, -1.1, 0.8, -0.2, 1.4, -0.9, 0.1, -0.4][n * 5 % 8]);
        let gave = 0.8 * held * noise;
        left = held - 0.8 * held;
        if ended <= person.now() {
            written.session(
                &format!("s-{n:03}"),
                ended,
                &[
                    ("amount_left", drawwell_tests::written::milliliters(gave)),
                    ("amount_right", drawwell_tests::written::milliliters(gave)),
                ],
            );
        }
    }
    person.import_file(&written.file()).unwrap();
    let Screen::Tonight { tonight, .. } = person.show(&Place::Tonight).unwrap() else { panic!("tonight") };
    let refill = tonight.sections.iter().find(|section| section.key == "refill").unwrap();
    assert!(!refill.rows.is_empty());
    for row in &refill.rows {
        assert!(!row.detail.contains("levels off at"), "{}", row.detail);
    }
    let milk = tonight.figures.iter().find(|figure| figure.key == "milk").unwrap();
    assert!(milk.detail.contains("session on"), "{}", milk.detail);
}
