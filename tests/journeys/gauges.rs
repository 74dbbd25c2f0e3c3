//! Gauges with a date, two gauges on one pump, and a pump's speed.

use drawwell_core::screen::shapes::{Event, FindingsScreen, Place, Screen, Section};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn gauge(id: &str, name: &str, more: &str) -> String {
    format!(
        r#"{{"fact":"gauge","id":"{id}","name":"{name}","span":{{"value":450,"unit":"mm[Hg]"}},"reads_in":"mm[Hg]","accuracy_class":"1.6","resolution":{{"value":2,"unit":"mm[Hg]"}}{more}}}"#
    )
}

fn check(id: &str, gauge: &str, minute: u32, reads: f64) -> String {
    let reading = |n: u32| {
        let at = format!("2026-02-20T10:{:02}:00+01:00", minute + n);
        format!(
            r#""{n:03}":{{"at":"{at}","zone":"Europe/Berlin","side":"left","vacuum":{{"value":{reads},"unit":"mm[Hg]"}}}}"#
        )
    };
    let readings: Vec<String> = (0..3).map(reading).collect();
    format!(
        r#"{{"fact":"check","id":"{id}","at":{{"at":"2026-02-20T10:{minute:02}:00+01:00","zone":"Europe/Berlin"}},"pump":"p","gauge":"{gauge}","connected":"dead_headed","readings":{{{}}}}}"#,
        readings.join(",")
    )
}

const PUMP: &str = r#"{"fact":"pump","id":"p","name":"Marl","grade":"personal"}"#;

fn person_with(lines: &[String]) -> Person {
    let mut person = Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap();
    person.import_file([&[PUMP.to_owned()], lines].concat().join("\n").as_bytes()).unwrap();
    person.press("place-kit").unwrap();
    person
}

fn page(person: &Person) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    findings.clone()
}

fn section(person: &Person, key: &str) -> Option<Section> {
    page(person).sections.into_iter().find(|section| section.key == key)
}

/// ISO/IEC 17025: a calibration says what a gauge showed on its day. Past the date that its owner set, every verdict
/// says so, and the class is no longer taken for granted; on that date it still is.
#[test]
fn a_verdict_by_a_gauge_past_its_date_says_so() {
    let verdict = |due: &str| {
        let more = format!(r#","calibrated_on":"2025-02-01","calibration_due":"{due}""#);
        let mut person = person_with(&[gauge("g", "Bag", &more), check("c", "g", 5, 280.0)]);
        let in_kit = person.reads().unwrap();
        person.press("open-p").unwrap();
        let headline = page(&person).headline;
        assert!(in_kit.contains(&headline), "Kit says the same: {headline}");
        let says = section(&person, "says").unwrap().lines.join(" ");
        (headline, says)
    };
    let (headline, says) = verdict("2026-02-20");
    assert_eq!(headline, "As strong as pumps of this type usually are");
    assert!(!says.contains("calibration"), "{says}");
    let (headline, says) = verdict("2026-02-19");
    assert_eq!(headline, "As strong as pumps of this type usually are, if the gauge still reads right");
    assert!(says.contains("The gauge’s calibration was due on 19 February 2026."), "{says}");
    assert!(says.contains("don’t rely on the class on its face"), "{says}");
}

/// What a maker states in one figure, and the type a pump is sold as: the gauge bears it out, or not.
#[test]
fn a_check_bears_out_what_is_stated_or_not() {
    let said = |grade: &str, stated: f64, reads: f64| {
        let pump = format!(
            r#"{{"fact":"pump","id":"p","name":"Marl","grade":"{grade}","maximum_vacuum_high":{{"value":{stated},"unit":"mm[Hg]"}}}}"#
        );
        let mut person = person_with(&[pump, gauge("g", "Bag", ""), check("c", "g", 5, reads)]);
        person.press("open-p").unwrap();
        section(&person, "offer-claim").map(|section| section.lines.join(" ")).unwrap_or_default()
    };
    let practice = "Common practice, no source";
    assert_eq!(
        said("hospital", 320.0, 270.0),
        format!(
            "Left: the check says no. It does not reach 320 mmHg. \
             Left: the check says no. It does not reach 300 mmHg. {practice}"
        )
    );
    assert_eq!(
        said("personal", 260.0, 280.0),
        format!("Left: the check agrees. It reaches 260 mmHg. Left: the check agrees. It reaches 250 mmHg. {practice}")
    );
    assert_eq!(said("hand", 260.0, 262.0), "Left: the check can’t tell if it reaches 260 mmHg.");
}

#[test]
fn a_gauge_is_not_due_before_it_was_calibrated() {
    let mut person = person_with(&[gauge("g", "Bag", r#","calibrated_on":"2026-02-01""#)]);
    person.press("open-g").unwrap();
    assert_eq!(person.enter("calibration_due", "2026-01-31").unwrap_err().key, "bad-due-before");
    person.enter("calibration_due", "2026-02-01").unwrap();
    person.enter("serial", "0417").unwrap();
    person.press("back").unwrap();
    assert!(person.reads().unwrap().contains("was due 1 February 2026"), "{}", person.reads().unwrap());
}

/// EN 837-1, class 1.6 over 450 mmHg: 7.2 mmHg each, and half of 2 mmHg each that it is read to.
#[test]
fn two_gauges_on_one_pump_agree_or_do_not() {
    let said = |other: f64| {
        let lines =
            [gauge("g", "Bag", ""), gauge("h", "Shelf", ""), check("c", "g", 5, 280.0), check("d", "h", 25, other)];
        let mut person = person_with(&lines);
        person.press("open-p").unwrap();
        section(&person, "gauges").map(|section| section.lines[0].clone())
    };
    assert_eq!(
        said(270.0).as_deref(),
        Some("Left: Shelf and Bag are 10 mmHg apart. Both can be right: they may differ by 17 mmHg.")
    );
    assert_eq!(
        said(260.0).as_deref(),
        Some("Left: Shelf and Bag are 20 mmHg apart. That is more than they may differ (17 mmHg).")
    );
    // One gauge twice is no second gauge.
    let mut person = person_with(&[gauge("g", "Bag", ""), check("c", "g", 5, 280.0), check("d", "g", 25, 260.0)]);
    person.press("open-p").unwrap();
    assert!(section(&person, "gauges").is_none());
}

/// A step of the speed dial, counted by tapping along for ten cycles: 1.25 s each are 48 a minute.
#[test]
fn a_step_of_the_speed_dial_is_counted_by_tapping_along() {
    let mut person = person_with(&[]);
    person.press("open-p").unwrap();
    person.press("count").unwrap();
    assert_eq!(page(&person).headline, "Tap along with the pump");
    let id = person.only("speed_count").unwrap()["id"].as_str().unwrap().to_owned();
    person.send(Event::Enter { id, field: "speed_step".to_owned(), typed: "3".to_owned() }).unwrap();
    for tap in 0..11 {
        if tap == 10 {
            assert_eq!(page(&person).headline, "One more tap");
        }
        // A hand is off by some hundredths of a second.
        person.wait(Span::milliseconds(1250 + [0, 30, -20, -10][tap % 4])).unwrap();
        person.press("tap").unwrap();
    }
    let found = page(&person);
    assert_eq!(found.headline, "48 cycles per minute");
    assert!(found.caption.starts_with("Nine times out of ten, the true speed is 47 to 49 cycles"), "{}", found.caption);
    person.press("back").unwrap();
    let rows = section(&person, "speed").unwrap().rows;
    assert_eq!(rows[0].title, "Step 3");
    assert_eq!(rows[0].detail, "48 cycles per minute (47 to 49 cycles per minute), counted");

    // A tap that was missed is seen; and it is counted once more.
    person.press(&rows[0].open.clone().unwrap().key).unwrap();
    person.wait(Span::milliseconds(3750)).unwrap();
    person.press("tap").unwrap();
    assert_eq!(page(&person).headline, "A tap was missed or doubled");
    person.press("count-again").unwrap();
    assert_eq!(page(&person).headline, "Tap along with the pump");
    person.press("undo").unwrap();
    assert_eq!(page(&person).headline, "A tap was missed or doubled");
}

/// A hundred cycles a minute, twenty rows a second.
fn fast_trace(a_minute: f64) -> Vec<u8> {
    let mut text = "time (s),pressure (mmHg)\n".to_owned();
    for row in 0..1200 {
        let at = f64::from(row) * 0.05;
        let wave = (1.0 - (std::f64::consts::TAU * at * a_minute / 60.0).cos()) / 2.0;
        text.push_str(&format!("{at:.2},{:.1}\n", 90.0 * wave));
    }
    text.into_bytes()
}

/// The band of a stimulation phase is from memory; that it is its own band is the rule.
#[test]
fn a_trace_of_the_stimulation_phase_alone_is_not_faster_than_usual() {
    let traced = |a_minute: f64| {
        let mut person = person_with(&[]);
        person.press("open-p").unwrap();
        person.press("trace").unwrap();
        person.import_file(&fast_trace(a_minute)).unwrap();
        person
    };
    let mut person = traced(100.0);
    let found = page(&person);
    assert_eq!(found.headline, "As fast as a Stimulation phase: 70 to 125 cycles per minute");
    assert_eq!(found.asks[0].text, "Does this trace show the Stimulation phase alone?");
    person.press("trace-phase-letdown").unwrap();
    let found = page(&person);
    assert_eq!(found.headline, "Within the usual 70 to 125 cycles per minute of a Stimulation phase");
    assert!(found.asks.is_empty());
    person.press("undo").unwrap();
    person.press("trace-phase-expression").unwrap();
    assert_eq!(page(&person).headline, "Faster than the usual 40 to 70 cycles per minute");
    // Beyond that band nothing is asked; nor where it is as fast as usual.
    assert_eq!(page(&traced(140.0)).headline, "Faster than the usual 40 to 70 cycles per minute");
    let usual = page(&traced(60.0));
    assert_eq!((usual.headline.as_str(), usual.asks.len()), ("Within the usual 40 to 70 cycles per minute", 0));
}

/// A trace at a step of the speed dial makes a row of the map, before a count of the same step.
#[test]
fn a_trace_at_a_step_is_a_row_of_the_map() {
    let mut person = person_with(&[]);
    person.press("open-p").unwrap();
    person.press("trace").unwrap();
    person.import_file(&fast_trace(60.0)).unwrap();
    let id = person.only("trace").unwrap()["id"].as_str().unwrap().to_owned();
    person.send(Event::Enter { id, field: "speed_step".to_owned(), typed: "2".to_owned() }).unwrap();
    person.send(Event::Go { place: Place::Pump { id: "p".to_owned() } }).unwrap();
    let rows = section(&person, "speed").unwrap().rows;
    assert_eq!((rows.len(), rows[0].title.as_str()), (1, "Step 2"));
    assert!(rows[0].detail.starts_with("60 cycles per minute (") && rows[0].detail.ends_with(", from a trace"));
}
