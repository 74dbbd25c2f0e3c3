//! Tonight: what the night asks, moved, left out and put off with one thumb.

use drawwell_core::screen::shapes::{Effect, Event, Export, Palette, Place, Screen, TonightScreen};
use drawwell_core::time::{Instant, Moment, Span, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::written::Written;
use serde_json::json;

fn berlin() -> Zone {
    Zone::named("Europe/Berlin").unwrap()
}

fn at(text: &str) -> Instant {
    Moment::from_parts(text, "Europe/Berlin").unwrap().instant()
}

/// A parent with a rhythm whose sessions of the day ended at these times on 3 June 2026,
/// looking at Tonight at a time of that day or the next.
fn parent(rhythm: &[(&str, serde_json::Value)], ended: &[&str], now: &str) -> Person {
    let mut written = Written::within(berlin());
    if !rhythm.is_empty() {
        written.fact("rhythm", "rhythm", rhythm);
    }
    for (i, time) in ended.iter().enumerate() {
        written.both(&format!("s{i}"), at(&format!("2026-06-03T{time}:00+02:00")), 50.0, 60.0);
    }
    let mut person = Person::at(now, "Europe/Berlin").unwrap();
    person.import_file(&written.file()).unwrap();
    person.send(Event::Go { place: Place::Tonight }).unwrap();
    person
}

fn eight() -> Vec<(&'static str, serde_json::Value)> {
    vec![
        ("sessions_a_day", json!(8)),
        ("longest_interval", json!(300)),
        ("shortest_interval", json!(90)),
        ("sleep_from", json!("22:30")),
        ("sleep_until", json!("06:30")),
        ("reminders", json!("sound")),
        ("night_reminders", json!("quiet")),
    ]
}

const DAY: [&str; 6] = ["07:00", "09:30", "12:00", "14:30", "17:00", "19:45"];

fn tonight(person: &Person) -> TonightScreen {
    match person.screen().unwrap() {
        Screen::Tonight { tonight, .. } => tonight.clone(),
        other => panic!("{other:?}"),
    }
}

fn times(person: &Person) -> Vec<String> {
    tonight(person).times.rows.iter().map(|r| r.title.split(',').next().unwrap().to_owned()).collect()
}

fn minutes(time: &str) -> i64 {
    let (h, m) = time.split_once(':').unwrap();
    h.parse::<i64>().unwrap() * 60 + m.parse::<i64>().unwrap()
}

/// Times as minutes that go on growing over midnight.
fn running(times: &[String]) -> Vec<i64> {
    let mut last = 0;
    times
        .iter()
        .map(|t| {
            let mut at = minutes(t);
            while at < last {
                at += 24 * 60;
            }
            last = at;
            at
        })
        .collect()
}

#[test]
fn the_first_thing_asked_is_how_many_and_one_tap_makes_the_plan() {
    let mut person = parent(&[], &[], "2026-06-03T20:00:00+02:00");
    let before = tonight(&person);
    assert!(before.night.is_none() && before.times.rows.is_empty());
    assert!(person.reads().unwrap().contains("Lai et al."), "the evidence is told with its sources");
    person.press("sessions-8").unwrap();
    let after = tonight(&person);
    assert!(after.night.is_some() && !after.figure.is_empty());
    assert!(
        after.asks.iter().any(|a| a.text.contains("These times come from your settings")),
        "it says that it goes by the frame alone"
    );
}

#[test]
fn the_night_of_a_parent_as_it_is_read() {
    let person = parent(&eight(), &DAY, "2026-06-03T20:10:00+02:00");
    insta::assert_snapshot!("tonight_as_read", person.reads().unwrap());
}

#[test]
fn no_gap_of_a_plan_is_longer_than_what_was_set_nor_shorter() {
    let person = parent(&eight(), &DAY, "2026-06-03T20:10:00+02:00");
    let all = running(&times(&person));
    // Sessions of a quarter of an hour, from the end at 19:45 on.
    let ends: Vec<i64> = std::iter::once(19 * 60 + 45).chain(all.iter().map(|t| t + 15)).collect();
    for two in ends.windows(2) {
        assert!((90..=300).contains(&(two[1] - two[0])), "{two:?} in {:?}", times(&person));
    }
    assert!(all.len() >= 8, "{all:?}");
}

#[test]
fn the_plan_stands_still_while_nothing_happens() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let before = times(&person);
    for _ in 0..8 {
        person.wait(Span::minutes(13)).unwrap();
        assert_eq!(times(&person), before);
    }
}

#[test]
fn a_session_done_as_planned_leaves_the_rest_as_it_was() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let planned = times(&person);
    let first = at(&format!("2026-06-03T{}:00+02:00", planned[0]));
    person.wait(first.since(person.now())).unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(15)).unwrap();
    person.press("finish").unwrap();
    person.send(Event::Go { place: Place::Tonight }).unwrap();
    assert_eq!(times(&person), planned[1..]);
}

#[test]
fn a_late_session_moves_the_rest_and_nothing_is_made_up_for() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let planned = times(&person);
    let first = at(&format!("2026-06-03T{}:00+02:00", planned[0]));
    person.wait(first.since(person.now())).unwrap();
    person.wait(Span::minutes(70)).unwrap();
    let late = tonight(&person);
    assert_eq!(late.headline, "Planned for");
    assert_eq!(late.figure, planned[0]);
    assert_eq!(late.caption, "1 h 10 min ago");
    let rest = running(&times(&person));
    assert!(rest.windows(2).all(|two| two[1] - two[0] >= 90), "{rest:?}");
    assert!(rest.len() <= planned.len(), "none is added for what did not come");
    assert!(!person.reads().unwrap().to_lowercase().contains("missed"));
}

#[test]
fn earlier_and_later_move_the_next_by_a_quarter_and_undo_brings_it_back() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let planned = times(&person);
    person.press("plan-later").unwrap();
    assert_eq!(minutes(&tonight(&person).figure), minutes(&planned[0]) + 15);
    assert_eq!(tonight(&person).why, "You moved it here.");
    person.press("plan-later").unwrap();
    assert_eq!(minutes(&tonight(&person).figure), minutes(&planned[0]) + 30);
    person.press("plan-earlier").unwrap();
    person.press("undo").unwrap();
    person.press("undo").unwrap();
    person.press("undo").unwrap();
    assert_eq!(times(&person), planned);
}

#[test]
fn one_left_out_is_not_made_up_for() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let planned = times(&person);
    person.press("plan-skip").unwrap();
    let after = times(&person);
    assert!(minutes(&after[0]) > minutes(&planned[0]) + 60 || minutes(&after[0]) < minutes(&planned[0]), "{after:?}");
    assert!(after.len() <= planned.len(), "{planned:?} {after:?}");
    person.press("undo").unwrap();
    assert_eq!(times(&person), planned);
}

#[test]
fn one_left_out_lets_no_gap_be_longer_than_it_must() {
    // A shift begins at seven: the time before it is kept, though it is near what was left out.
    let mut written = Written::within(berlin());
    let mut rhythm = eight();
    rhythm.retain(|(key, _)| *key != "longest_interval");
    rhythm.push(("longest_interval", json!(480)));
    written.fact("rhythm", "rhythm", &rhythm);
    let shift = [("what", json!("shift")), ("from", json!("07:00")), ("until", json!("15:00"))];
    written.fact("fixed_point", "shift", &shift);
    written.both("s0", at("2026-06-04T02:35:00+02:00"), 50.0, 60.0);
    let mut person = Person::at("2026-06-04T02:40:00+02:00", "Europe/Berlin").unwrap();
    person.import_file(&written.file()).unwrap();
    person.send(Event::Go { place: Place::Tonight }).unwrap();
    let planned = times(&person);
    person.press("plan-skip").unwrap();
    let after = times(&person);
    assert_ne!(after[0], planned[0]);
    assert!(minutes(&after[0]) + 15 <= 7 * 60, "{planned:?} {after:?}");
}

fn alarms(person: &Person) -> Vec<(String, i64, bool)> {
    person
        .effects
        .iter()
        .filter_map(|e| match e {
            Effect::SetAlarm { key, unix_milliseconds, quiet, slot, .. } if slot == "tonight" => {
                Some((key.clone(), *unix_milliseconds, *quiet))
            }
            _ => None,
        })
        .collect()
}

#[test]
fn reminders_are_to_set_up_when_due_and_when_late_each_once() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let due = at(&format!("2026-06-03T{}:00+02:00", tonight(&person).figure)).unix_milliseconds();
    let minute = 60_000;
    person.send(Event::Wake).unwrap();
    let first = alarms(&person);
    assert_eq!(
        first,
        [
            ("tonight-set-up".to_owned(), due - 10 * minute, false),
            ("tonight-due".to_owned(), due, false),
            ("tonight-late".to_owned(), due + 15 * minute, false)
        ]
    );
    // Asked again at the same moment they are the same; in another life of the program too.
    person.effects.clear();
    person.killed_and_opened().unwrap();
    person.send(Event::Wake).unwrap();
    assert_eq!(alarms(&person), first);
}

#[test]
fn reminders_are_quiet_in_the_sleep_window_and_none_where_none_are_wanted() {
    let day: Vec<&str> = DAY.iter().copied().chain(["22:15"]).collect();
    let mut person = parent(&eight(), &day, "2026-06-03T22:30:00+02:00");
    person.send(Event::Wake).unwrap();
    let all = alarms(&person);
    assert!(all.len() == 3 && all.iter().all(|a| a.2), "{all:?}");
    person.effects.clear();
    person
        .send(Event::Enter { id: "rhythm".to_owned(), field: "night_reminders".to_owned(), typed: "none".to_owned() })
        .unwrap();
    assert!(alarms(&person).is_empty());
    assert!(person.effects.contains(&Effect::ClearAlarm { key: "tonight-due".to_owned() }));
}

#[test]
fn a_running_session_needs_no_reminder_and_its_end_sets_the_next() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    person.press("start").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Running { .. }), "it runs in the first place");
    assert!(alarms(&person).is_empty());
    person.wait(Span::minutes(15)).unwrap();
    person.press("finish").unwrap();
    assert_eq!(alarms(&person).len(), 3);
}

#[test]
fn putting_off_moves_the_reminder_and_not_the_plan() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let planned = times(&person);
    let due = at(&format!("2026-06-03T{}:00+02:00", planned[0]));
    person.wait(due.since(person.now())).unwrap();
    person.effects.clear();
    person.press("plan-snooze").unwrap();
    assert_eq!(times(&person), planned);
    let all = alarms(&person);
    assert_eq!(all[0], ("tonight-due".to_owned(), due.plus(Span::minutes(10)).unix_milliseconds(), false));
}

#[test]
fn a_host_that_cannot_call_on_the_minute_is_told_of() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    person.send(Event::AlarmsAre { exact: false, shown: true }).unwrap();
    assert!(person.reads().unwrap().contains("by a few minutes"));
    person.send(Event::AlarmsAre { exact: true, shown: false }).unwrap();
    assert!(person.reads().unwrap().contains("Notifications are off"));
    person.send(Event::AlarmsAre { exact: true, shown: true }).unwrap();
    assert!(!person.reads().unwrap().contains("by a few minutes"));
}

#[test]
fn in_the_sleep_window_every_place_is_in_the_night_palette_unless_another_was_chosen() {
    for (now, palette) in [
        ("2026-06-03T22:29:00+02:00", Palette::AsDevice),
        ("2026-06-03T22:30:00+02:00", Palette::Night),
        ("2026-06-04T06:29:00+02:00", Palette::Night),
        ("2026-06-04T06:30:00+02:00", Palette::AsDevice),
    ] {
        let mut person = parent(&eight(), &DAY, now);
        assert_eq!(person.frame().unwrap().look.palette, palette, "{now}");
        assert_eq!(person.show(&Place::Kit).unwrap().frame().look.palette, palette, "{now}");
    }
    let mut person = parent(&eight(), &DAY, "2026-06-03T23:30:00+02:00");
    person
        .send(Event::Enter { id: "settings".to_owned(), field: "palette".to_owned(), typed: "light".to_owned() })
        .unwrap();
    assert_eq!(person.frame().unwrap().look.palette, Palette::Light);
}

#[test]
fn after_two_days_of_silence_the_times_begin_from_now() {
    let person = parent(&eight(), &DAY, "2026-06-05T20:00:00+02:00");
    let shown = tonight(&person);
    assert!(shown.asks.iter().any(|a| a.text.starts_with("Nothing logged for 2 days")), "{:?}", shown.asks);
    assert!(running(&times(&person)).windows(2).all(|two| two[1] - two[0] >= 90), "nothing is made up for");
    assert_eq!(minutes(&shown.figure), 20 * 60, "one may be due now");
}

#[test]
fn a_clock_that_was_set_back_three_hours_takes_the_last_session_as_just_now() {
    let person = parent(&eight(), &DAY, "2026-06-03T16:50:00+02:00");
    let shown = tonight(&person);
    assert!(minutes(&shown.figure) >= 16 * 60 + 50 + 90 - 15, "{}", shown.figure);
}

#[test]
fn a_flight_across_zones_changes_the_clock_and_not_the_gap() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let before = tonight(&person);
    person.travel("America/New_York").unwrap();
    let after = tonight(&person);
    // The sleep window moves with the wall; the limits hold by elapsed time.
    let next = minutes(&after.figure);
    let since = next + 6 * 60 - (19 * 60 + 45) + 15;
    assert!((90..=300).contains(&since), "{} {}", before.figure, after.figure);
}

#[test]
fn what_cannot_be_is_told_where_and_what_to_do_and_changes_nothing() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let before = person.record().unwrap();
    for (field, typed, key) in [
        ("sleep_until", "21:30", "bad-sleep-window"),
        ("sessions_a_day", "0", "bad-range"),
        ("sessions_a_day", "40", "bad-range"),
        ("longest_interval", "1:00", "bad-order"),
        ("shortest_interval", "13:00", "bad-span-range"),
        ("sleep_stretch", "soon", "bad-span"),
        ("sleep_from", "25:00", "bad-time"),
    ] {
        let event = Event::Enter { id: "rhythm".to_owned(), field: field.to_owned(), typed: typed.to_owned() };
        let why = person.send(event).unwrap_err();
        assert_eq!((why.key, why.field.as_str()), (key, field), "{typed}");
    }
    let not_planned = person.now().plus(Span::minutes(7)).unix_milliseconds();
    assert_eq!(person.send(Event::SkipPlanned { unix_milliseconds: not_planned }).unwrap_err().key, "bad-not-planned");
    assert_eq!(person.record().unwrap(), before);
}

#[test]
fn fixed_points_closer_than_the_shortest_gap_are_kept_and_what_gives_way_is_told() {
    let mut written = Written::within(berlin());
    written.fact("rhythm", "rhythm", &eight());
    for (id, from, until) in [("p1", "21:00", "21:20"), ("p2", "21:45", "22:10")] {
        let fields = [
            ("what", json!("care_time")),
            ("from", json!(from)),
            ("until", json!(until)),
            ("days", json!("every_day")),
        ];
        written.fact("fixed_point", id, &fields);
    }
    written.both("s0", at("2026-06-03T19:15:00+02:00"), 50.0, 60.0);
    let mut person = Person::at("2026-06-03T19:30:00+02:00", "Europe/Berlin").unwrap();
    person.import_file(&written.file()).unwrap();
    person.send(Event::Go { place: Place::Tonight }).unwrap();
    let all = times(&person);
    assert!(all.contains(&"21:00".to_owned()) && all.contains(&"21:45".to_owned()), "{all:?}");
    assert!(tonight(&person).asks.iter().any(|a| a.text.contains("under your shortest gap")));
}

#[test]
fn a_shift_without_a_break_lets_the_longest_gap_give_way_and_says_by_how_much() {
    let mut written = Written::within(berlin());
    written.fact("rhythm", "rhythm", &eight());
    let shift = [("what", json!("shift")), ("from", json!("08:00")), ("until", json!("18:00"))];
    written.fact("fixed_point", "shift", &shift);
    written.both("s0", at("2026-06-03T07:30:00+02:00"), 50.0, 60.0);
    let mut person = Person::at("2026-06-03T07:35:00+02:00", "Europe/Berlin").unwrap();
    person.import_file(&written.file()).unwrap();
    person.send(Event::Go { place: Place::Tonight }).unwrap();
    let all = times(&person);
    assert!(all.iter().all(|t| !(minutes("07:46")..minutes("18:00")).contains(&minutes(t))), "{all:?}");
    let told = tonight(&person).asks.iter().map(|a| a.text.clone()).find(|t| t.contains("over your longest gap"));
    assert!(told.is_some_and(|t| t.starts_with("07:")), "{:?}", tonight(&person).asks);
}

#[test]
fn sessions_fall_away_slowly_where_expressing_is_to_end() {
    let planned = |day: &str| {
        let mut rhythm = eight();
        rhythm.extend([("fewer_from", json!("2026-06-10")), ("fewer_every", json!(3)), ("fewer_until", json!(0))]);
        let mut written = Written::within(berlin());
        written.fact("rhythm", "rhythm", &rhythm);
        written.both("s0", at(&format!("{day}T06:40:00+02:00")), 50.0, 60.0);
        let mut person = Person::at(&format!("{day}T06:45:00+02:00"), "Europe/Berlin").unwrap();
        person.import_file(&written.file()).unwrap();
        person.send(Event::Go { place: Place::Tonight }).unwrap();
        times(&person).len()
    };
    let counts: Vec<usize> =
        ["2026-06-03", "2026-06-12", "2026-06-18", "2026-06-24", "2026-07-20"].map(planned).to_vec();
    assert!(counts.windows(2).all(|two| two[0] > two[1]), "{counts:?}");
    assert_eq!(counts.last(), Some(&0), "none is left");
}

#[test]
fn a_block_of_repeated_short_sessions_is_one_long_peg_at_its_time() {
    let mut rhythm = eight();
    rhythm.extend([
        ("block_at", json!("21:00")),
        ("block_sessions", json!(3)),
        ("block_express", json!(10)),
        ("block_rest", json!(10)),
    ]);
    let person = parent(&rhythm, &DAY, "2026-06-03T20:00:00+02:00");
    let shown = tonight(&person);
    assert_eq!(shown.figure, "21:00");
    assert_eq!(shown.why, "You set power pumping for this time.");
    let night = shown.night.unwrap();
    let peg = night.pegs.iter().find(|p| p.label == "21:00").unwrap();
    // 50 minutes of the twelve hours drawn.
    assert!((peg.until - peg.at - 50.0 / 720.0).abs() < 0.002, "{peg:?}");
}

#[test]
fn every_place_of_the_nights_picture_lies_within_it() {
    let mut person = Person::of_the_invented_family().unwrap();
    for _ in 0..30 {
        let Screen::Tonight { tonight, .. } = person.show(&Place::Tonight).unwrap() else { panic!() };
        let night = tonight.night.unwrap();
        let unit = 0.0..=1.0;
        assert!(night.pegs.iter().all(|p| unit.contains(&p.at) && unit.contains(&p.until) && p.at <= p.until));
        assert!(night.stretches.iter().all(|s| unit.contains(&s.from) && unit.contains(&s.to) && s.from <= s.to));
        assert!(night.water.iter().all(|w| [w.at, w.low, w.middle, w.high].iter().all(|v| unit.contains(v))));
        assert!(night.water.windows(2).all(|two| two[0].at <= two[1].at));
        person.wait(Span::minutes(53)).unwrap();
    }
}

fn calendar(person: &mut Person) -> String {
    let clock = person.clock().clone();
    let mut out = Vec::new();
    person.app().unwrap().export(&Export::Calendar, &mut out, &clock).unwrap();
    String::from_utf8(out).unwrap()
}

fn values<'a>(calendar: &'a str, name: &str) -> Vec<&'a str> {
    calendar.lines().filter_map(|l| l.strip_prefix(name)).collect()
}

fn uids(calendar: &str) -> Vec<&str> {
    values(calendar, "UID:").into_iter().filter(|u| u.starts_with("session-")).collect()
}

#[test]
fn a_calendar_taken_in_again_shows_nothing_twice() {
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    person.press("hand-over-calendar").unwrap();
    assert!(person.effects.iter().any(|e| matches!(e, Effect::HandOver { what: Export::Calendar, content_type, .. }
        if content_type == "text/calendar")));
    let first = calendar(&mut person);
    let again = calendar(&mut person);
    assert_eq!(uids(&first), uids(&again));
    assert!(values(&again, "SEQUENCE:").iter().all(|s| *s == "0"), "nothing changed");
    assert_eq!(values(&first, "STATUS:").len(), uids(&first).len());
    person.send(Event::Go { place: Place::Tonight }).unwrap();
    person.press("plan-later").unwrap();
    let moved = calendar(&mut person);
    assert_eq!(uids(&first)[0], uids(&moved)[0], "it is the same session");
    assert_eq!(values(&moved, "SEQUENCE:")[0], "1", "and it changed");
    person.press("plan-skip").unwrap();
    let skipped = calendar(&mut person);
    let live = values(&skipped, "STATUS:").iter().filter(|s| **s == "CONFIRMED").count();
    assert_eq!(live, times(&person).len(), "as many as are planned");
    let (all, once): (Vec<_>, std::collections::BTreeSet<_>) = (uids(&skipped), uids(&skipped).into_iter().collect());
    assert_eq!(all.len(), once.len());
}

#[test]
fn a_calendar_keeps_to_the_form() {
    // RFC 5545 3.1: lines end in CRLF and have no more than 75 octets; 3.6.1: UID and
    // DTSTAMP once in each event; no end before its start.
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    let text = calendar(&mut person);
    assert!(text.ends_with("END:VCALENDAR\r\n"));
    for line in text.split_terminator("\r\n") {
        assert!(line.len() <= 75 && !line.contains('\n') && !line.contains('\r'), "{line}");
    }
    assert_eq!(text.matches("PRODID:").count(), 1);
    assert_eq!(text.matches("VERSION:2.0").count(), 1);
    let (starts, ends) = (values(&text, "DTSTART:"), values(&text, "DTEND:"));
    assert!(starts.len() == ends.len() && starts.iter().zip(&ends).all(|(s, e)| s < e && s.ends_with('Z')));
    assert!(!text.contains("RRULE") && !text.contains("TZID"), "explicit instants alone");
    // The same record at the same moment writes the same file: no clock, no dice.
    assert_eq!(calendar(&mut person), calendar(&mut person));
}

/// At noon the next one is today; late in the evening the one at three is tomorrow's; what is
/// further off has its date.
#[test]
fn the_next_session_says_its_day_where_that_is_not_today() {
    let head = |now: &str| {
        let shown = tonight(&parent(&eight(), &DAY, now));
        (shown.headline, shown.figure)
    };
    let (headline, _) = head("2026-06-03T20:00:00+02:00");
    assert_eq!(headline, "Next session");
    let mut person = parent(&eight(), &DAY, "2026-06-03T20:00:00+02:00");
    for _ in 0..8 {
        let shown = tonight(&person);
        if minutes(&shown.figure) < 12 * 60 {
            assert_eq!(shown.headline, "Next session, tomorrow", "{}", shown.figure);
            return;
        }
        assert_eq!(shown.headline, "Next session", "{}", shown.figure);
        person.press("plan-skip").unwrap();
    }
    panic!("no session after midnight");
}

#[test]
fn the_legend_is_seen_at_once_until_the_reminders_are_chosen() {
    let mut rhythm = eight();
    rhythm.retain(|(key, _)| *key != "reminders");
    let mut person = parent(&rhythm, &DAY, "2026-06-03T20:00:00+02:00");
    let night = tonight(&person).night.unwrap();
    assert!(night.legend_open && !night.legend.is_empty());
    person.press("reminders-sound").unwrap();
    let night = tonight(&person).night.unwrap();
    assert!(!night.legend_open && !night.legend.is_empty(), "and later on a tap");
}
