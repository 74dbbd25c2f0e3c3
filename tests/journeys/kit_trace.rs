//! A digital manometer's file, brought in.

use drawwell_core::screen::shapes::{Effect, Event, FindingsScreen, Place, Screen};
use drawwell_tests::person::Person;

const KIT: &str = r#"{"fact":"pump","id":"p","name":"Marl"}"#;

fn person() -> Person {
    let mut person = Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap();
    person.import_file(KIT.as_bytes()).unwrap();
    person.press("place-kit").unwrap();
    person
}

fn begun() -> Person {
    let mut person = person();
    person.press("open-p").unwrap();
    person.press("trace").unwrap();
    person
}

fn file(name: &str) -> Vec<u8> {
    std::fs::read(std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("vectors/traces").join(name)).unwrap()
}

/// Trapezoids of a height, a second each, under a heading.
fn made(heading: &str, top: f64) -> Vec<u8> {
    let mut text = format!("{heading}\n");
    for n in 0..600 {
        let share = f64::from(n % 20) / 20.0;
        let height = (share * 4.0).min(1.0).min((1.0 - share) * 4.0).max(0.0);
        text.push_str(&format!("{:.2},{:.2}\n", f64::from(n) * 0.05, top * height));
    }
    text.into_bytes()
}

fn findings(person: &Person) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("findings: {:?}", person.screen()) };
    findings.clone()
}

#[test]
fn a_trace_is_begun_its_file_asked_for_and_what_it_shows_is_said() {
    let mut person = begun();
    assert_eq!(findings(&person).headline, "No file yet");
    person.press("pick").unwrap();
    assert!(matches!(person.effects.last(), Some(Effect::PickFile { key, .. }) if key == "trace"));
    person.import_file(&file("two-phases.csv")).unwrap();
    let found = findings(&person);
    assert_eq!(found.headline, "Within the usual 40 to 70 cycles per minute");
    assert!(found.caption.starts_with("52 cycles per minute · 2"), "{}", found.caption);
    let shows = &found.sections.iter().find(|s| s.key == "trace-shows").unwrap().lines;
    assert!(shows[0].starts_with("Two patterns: fast and light, then slow and strong"), "{shows:?}");
    let sections: Vec<&str> = found.sections.iter().map(|s| s.key.as_str()).collect();
    assert_eq!(sections, ["trace-picture", "trace-close", "trace-shows", "trace-phases", "trace-set-up"]);
    // It stands with its pump, and in its day.
    person.press("back").unwrap();
    assert!(person.reads().unwrap().contains("Traces"));
    person.press("undo").unwrap();
    assert!(person.only("trace").unwrap().get("findings").is_none(), "bringing it in is one act");
}

/// 58 cycles a minute, 25 rows a second, that fall from one height to another between two seconds.
fn falling(from: f64, to: f64, between: (f64, f64)) -> Vec<u8> {
    let mut text = "time (s),pressure (mmHg)\n".to_owned();
    for row in 0..3_000 {
        let at = f64::from(row) * 0.04;
        let gone = ((at - between.0) / (between.1 - between.0)).clamp(0.0, 1.0);
        let wave = (1.0 - (std::f64::consts::TAU * at * 0.97).cos()) / 2.0;
        text.push_str(&format!("{at:.2},{:.1}\n", (from + (to - from) * gone) * wave));
    }
    text.into_bytes()
}

#[test]
fn a_pull_that_is_lost_is_the_first_thing_said() {
    let mut person = begun();
    person.import_file(&falling(240.0, 120.0, (50.0, 60.0))).unwrap();
    let found = findings(&person);
    assert!(found.headline.starts_with("The pull dropped from 240 mmHg to 120 mmHg within "), "{}", found.headline);
    assert!(found.headline.ends_with("at 00:50") || found.headline.ends_with("at 00:49"), "{}", found.headline);
    assert!(found.spoken.starts_with(&found.headline));
    assert!(found.figure.is_empty(), "one headline: {}", found.figure);
    assert!(found.caption.starts_with("58 cycles per minute"), "the rate stays: {}", found.caption);
    let shows = &found.sections.iter().find(|s| s.key == "trace-shows").unwrap().lines;
    assert!(shows[0].starts_with("Was it turned down, or did the flange let air in?"), "{shows:?}");
    assert!(shows[1].starts_with("One pattern"), "a fall is no other pattern: {shows:?}");
}

#[test]
fn a_pull_that_is_lost_slowly_is_told_as_one_that_sinks() {
    let mut person = begun();
    person.import_file(&falling(240.0, 120.0, (0.0, 120.0))).unwrap();
    let found = findings(&person);
    assert_eq!(found.headline, "Within the usual 40 to 70 cycles per minute");
    let shows = found.sections.iter().find(|s| s.key == "trace-shows").unwrap().lines.join(" ");
    assert!(shows.contains("Peak vacuum drops by 60 mmHg each minute"), "{shows}");
}

#[test]
fn what_the_figures_rest_on_is_what_they_rest_on() {
    let mut person = begun();
    person.import_file(&file("two-phases.csv")).unwrap();
    let found = findings(&person);
    let expression = found.sections.iter().find(|s| s.key == "trace-phases").unwrap().rows.len();
    assert_eq!(expression, 2);
    let shows = &found.sections.iter().find(|s| s.key == "trace-shows").unwrap().lines;
    let rests = shows.iter().find(|line| line.starts_with("Peak vacuum ") && line.contains(", over ")).unwrap();
    assert!(rests.contains(" of ") && rests.ends_with(" cycles."), "{rests}");
    let counts: Vec<u32> =
        rests.split(|c: char| !c.is_ascii_digit()).filter_map(|figure| figure.parse().ok()).collect();
    let [.., part, all] = counts[..] else { panic!("{counts:?}") };
    assert!(part < all, "{rests}: the expression's are fewer than all");
}

#[test]
fn a_zero_that_moved_lone_readings_and_a_slow_gauge_are_said() {
    let mut text = "time (s),pressure (mmHg)\n".to_owned();
    for row in 0..3_000 {
        let at = f64::from(row) * 0.04;
        let bad = if row == 1_000 { 300.0 } else { 0.0 };
        let wave = 100.0 * (1.0 - (std::f64::consts::TAU * at * 0.9).cos());
        text.push_str(&format!("{at:.2},{:.1}\n", wave + bad + at / 4.0));
    }
    let mut person = begun();
    person.import_file(text.as_bytes()).unwrap();
    let found = findings(&person);
    let shows = found.sections.iter().find(|s| s.key == "trace-shows").unwrap().lines.join(" ");
    assert!(shows.contains("The gauge’s zero moved up by 30 mmHg"), "{shows}");
    assert!(shows.contains("One reading is far from all the others. It was not used."), "{shows}");
    assert!(found.caption.ends_with("200 mmHg"), "{}", found.caption);
    assert!(!shows.contains("It can’t show more than"), "300 a minute are no pump's: {shows}");
    let slow: String = std::iter::once("time (s),pressure (mmHg)\n".to_owned())
        .chain((0..600).map(|row| {
            let at = f64::from(row) / 10.0;
            format!("{at:.1},{:.1}\n", 100.0 - 100.0 * (std::f64::consts::TAU * at * 0.9).cos())
        }))
        .collect();
    let mut person = begun();
    person.import_file(slow.as_bytes()).unwrap();
    let found = findings(&person);
    let shows = found.sections.iter().find(|s| s.key == "trace-shows").unwrap().lines.join(" ");
    assert!(
        shows.contains("The gauge took 10 readings a second. It can’t show more than 120 cycles per minute."),
        "{shows}"
    );
}

#[test]
fn cycles_are_held_against_the_maker_where_it_states_them() {
    let mut person = person();
    person.import_file(br#"{"fact":"pump","id":"p","cycles_low":{"value":20,"unit":"/min"},"cycles_high":{"value":50,"unit":"/min"}}"#).unwrap();
    person.send(Event::BeginTrace { pump: "p".to_owned() }).unwrap();
    person.import_file(&made("time (s),pressure (mmHg)", 200.0)).unwrap();
    assert_eq!(findings(&person).headline, "Faster than its maker’s 20 to 50 cycles per minute");
}

#[test]
fn a_file_that_does_not_say_its_unit_is_asked_about_and_says_nothing_false_until_then() {
    let mut person = begun();
    person.import_file(&made("time,pressure", 30.0)).unwrap();
    let found = findings(&person);
    assert!(found.asks[0].text.starts_with("The file does not name its unit"));
    assert!(found.caption.ends_with("30"), "no unit stands behind it: {}", found.caption);
    person.press("meant-kPa").unwrap();
    let found = findings(&person);
    assert!(found.asks.is_empty());
    assert!(found.caption.ends_with("225 mmHg"), "{}", found.caption);
}

#[test]
fn forty_millimetres_of_mercury_at_the_highest_are_asked_about() {
    let mut person = begun();
    person.import_file(&made("time (s),pressure (mmHg)", 40.0)).unwrap();
    assert!(findings(&person).asks[0].text.contains("Was it kPa?"));
    person.press("meant-mmHg").unwrap();
    assert!(findings(&person).asks.is_empty() && findings(&person).caption.ends_with("40 mmHg"));
    person.press("undo").unwrap();
    person.press("meant-kPa").unwrap();
    assert!(findings(&person).caption.ends_with("300 mmHg"), "{}", findings(&person).caption);
}

#[test]
fn a_file_that_is_no_trace_is_told_and_the_record_stays_as_it_was() {
    let mut person = begun();
    person.press("pick").unwrap();
    let before = person.record().unwrap();
    for (text, key) in [
        ("nothing but words\nand more of them\n", "bad-trace-no-rows"),
        ("0,120\n", "bad-trace-one-sample"),
        (&(0..600).map(|n| format!("{},120\n", f64::from(n) / 20.0)).collect::<String>(), "bad-trace-constant"),
        (&(0..600).map(|n| format!("{},{}\n", n * 40, n % 4)).collect::<String>(), "bad-trace-slow"),
    ] {
        let found = person.import_file(text.as_bytes()).map_err(|trouble| trouble.key);
        assert_eq!(found, Err(key), "{text:.40}");
        assert_eq!(person.record().unwrap(), before);
    }
}

#[test]
fn a_record_is_a_record_even_while_a_trace_is_waited_for() {
    let mut person = begun();
    person.press("pick").unwrap();
    person.import_file(br#"{"fact":"note","id":"n","at":{"at":"2026-03-01T09:00:00+01:00","zone":"Europe/Berlin"},"text":"hello"}"#).unwrap();
    assert_eq!(person.only("note").unwrap()["text"], "hello");
}

#[test]
fn a_trace_that_nobody_asked_for_finds_its_place() {
    let mut person = person();
    person.press("place-now").unwrap();
    person.import_file(&made("time (s),pressure (mmHg)", 200.0)).unwrap();
    let trace = person.only("trace").unwrap();
    assert_eq!(trace["pump"], "p", "there is one pump");
    assert!(trace["findings"].is_object());
    assert!(findings(&person).caption.ends_with("200 mmHg"));
}

#[test]
fn the_program_may_be_killed_between_asking_for_a_file_and_getting_it() {
    let mut person = begun();
    person.press("pick").unwrap();
    person.killed_and_opened().unwrap();
    person.import_file(&made("time (s),pressure (mmHg)", 200.0)).unwrap();
    assert!(person.only("trace").unwrap()["findings"].is_object(), "the one that waited got it");
}

#[test]
fn the_trace_of_the_invented_family_as_it_is_read() {
    let mut person = Person::of_the_invented_family().unwrap();
    person.send(Event::Go { place: Place::Trace { id: "trace-heron".to_owned() } }).unwrap();
    insta::assert_snapshot!("kit_trace_as_read", person.reads().unwrap());
}

#[test]
fn every_place_of_every_picture_of_kit_is_within_the_unit() {
    let mut person = Person::of_the_invented_family().unwrap();
    let places = [
        Place::Pump { id: "pump-heron".to_owned() },
        Place::Pump { id: "pump-lantern-ward".to_owned() },
        Place::Pump { id: "pump-thimble".to_owned() },
        Place::Trace { id: "trace-heron".to_owned() },
        Place::Fit,
    ];
    let mut seen = 0;
    for place in places {
        let Screen::Findings { findings, .. } = person.show(&place).unwrap() else { panic!("findings") };
        let mut all: Vec<f32> = Vec::new();
        if let Some(dial) = &findings.dial {
            all.extend(dial.arcs.iter().flat_map(|a| [a.from, a.to]));
            all.extend(dial.hands.iter().flat_map(|h| [h.low, h.at, h.high]));
            all.extend(dial.ticks.iter().map(|t| t.at));
            assert!(dial.hands.iter().all(|h| h.low <= h.at && h.at <= h.high) && !dial.spoken.is_empty());
        }
        for plot in findings.sections.iter().filter_map(|s| s.plot.as_ref()) {
            all.extend(plot.bands.iter().flat_map(|b| [b.low, b.high]));
            all.extend(plot.stretches.iter().flat_map(|s| [s.from, s.to]));
            all.extend(plot.columns.iter().flat_map(|c| [c.at, c.low, c.high]));
            all.extend(plot.points.iter().flat_map(|p| [p.at, p.low, p.middle, p.high]));
            all.extend(plot.courses.iter().flat_map(|c| &c.points).flat_map(|p| [p.at, p.low, p.middle, p.high]));
            all.extend(plot.marks.iter().chain(&plot.ticks).chain(&plot.scale).map(|t| t.at));
            assert!(!plot.spoken.is_empty() && !plot.legend.is_empty());
        }
        seen += all.len();
        assert!(all.iter().all(|at| (0.0..=1.0).contains(at)), "{place:?}");
    }
    assert!(seen > 1000, "{seen}");
}
