//! Which vacuum is comfortable, said of what was set by hand and how it felt; a guided search in a
//! running session; and how soon milk lets down.

use drawwell_core::screen::shapes::{Event, Export, FindingsScreen, Place, Screen, Searched};
use drawwell_core::time::{Instant, Span, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::written::{milliliters, Written};
use serde_json::{json, Value};

/// A setting in mmHg or a level, and whether it was comfortable; nothing where nobody said.
type Said = (Setting, Option<bool>);

#[derive(Clone, Copy)]
enum Setting {
    Vacuum(f64),
    Level(u32),
}

const NOW: &str = "2026-05-25T08:00:00+02:00";

/// A person with a pump of twelve levels, and sessions every five hours up to now.
fn with_sessions(said: &[Said]) -> Person {
    let mut person = Person::welcomed(NOW, "Europe/Berlin").unwrap();
    logs(&mut person, said);
    person
}

fn logs(person: &mut Person, said: &[Said]) {
    let mut written = Written::within(Zone::named("Europe/Berlin").unwrap());
    written.fact("pump", "p", &[("name", json!("Marl")), ("levels", json!(12))]);
    let now = person.now();
    for (number, (setting, comfortable)) in said.iter().enumerate() {
        let ended = now.minus(Span::hours(5 * (said.len() - number) as i64));
        let marks = marks(&written, ended.minus(Span::minutes(15)), *setting, *comfortable);
        let fields = [
            ("pump", json!("p")),
            ("marks", marks),
            ("amount_left", milliliters(60.0 + (number % 4) as f64)),
            ("amount_right", milliliters(50.0)),
        ];
        written.session(&format!("s{number}"), ended, &fields);
    }
    person.import_file(&written.file()).unwrap();
    person.press("place-now").unwrap();
}

fn marks(written: &Written, began: Instant, setting: Setting, comfortable: Option<bool>) -> Value {
    let mark = |minutes: i64, does: &str| {
        let mut mark = written.moment(began.plus(Span::minutes(minutes)));
        mark["does"] = json!(does);
        mark
    };
    let phase = |minutes: i64, phase: &str| {
        let mut mark = mark(minutes, "phase");
        mark["phase"] = json!(phase);
        mark
    };
    let mut set = mark(2, "setting");
    set["carried"] = json!(false);
    match setting {
        Setting::Vacuum(vacuum) => {
            set["vacuum"] =
                json!({ "value": vacuum, "unit": "mm[Hg]", "typed": vacuum.to_string(), "typed_unit": "mm[Hg]" });
        }
        Setting::Level(level) => set["level"] = json!(level),
    }
    let mut all = json!({
        "0": phase(0, "letdown"), "1": mark(1, "letdown"), "2": phase(2, "expression"), "3": set,
    });
    match comfortable {
        Some(true) => all["4"] = mark(5, "comfortable"),
        Some(false) => {
            all["4"] = mark(5, "pain");
            all["4"]["score"] = json!(4);
        }
        None => {}
    }
    all
}

fn findings(person: &mut Person, place: &Place) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.show(place).unwrap() else { panic!("findings") };
    findings
}

/// Comfortable up to 180 mmHg, and not from 200 on.
fn up_to_180() -> Vec<Said> {
    let settings = [140.0, 160.0, 180.0, 200.0, 220.0, 150.0, 170.0, 210.0];
    (0..24).map(|n| settings[n % settings.len()]).map(|v| (Setting::Vacuum(v), Some(v <= 180.0))).collect()
}

#[test]
fn the_ceiling_is_said_of_each_side_with_its_range_and_what_it_rests_on() {
    let mut person = with_sessions(&up_to_180());
    person.press("place-kit").unwrap();
    person.press("comfort").unwrap();
    let shown = findings(&mut person, &Place::Comfort);
    assert_eq!(shown.headline, "Comfortable up to about");
    assert!(shown.figure.contains("Left") && shown.figure.contains("Right"), "{}", shown.figure);
    assert!(shown.caption.contains("24 sessions"), "{}", shown.caption);
    let left = shown.sections.iter().find(|section| section.key == "comfort-left-expression").unwrap();
    assert!(left.lines[0].contains("Likely range:"), "{:?}", left.lines);
    let plot = left.plot.as_ref().unwrap();
    assert_eq!(plot.points.len(), 24, "every session is a dot");
    assert_eq!(plot.points.iter().filter(|point| point.open).count(), 9, "open where it hurt");
    assert_eq!(plot.bands.len(), 1, "the band of common practice is background");
    assert!(shown.lines.iter().any(|line| line.starts_with("Less vacuum is just fine")));
}

#[test]
fn with_few_sessions_it_says_how_many_more_and_silence_is_not_comfort() {
    let mut said: Vec<Said> = up_to_180().into_iter().take(4).collect();
    said.extend([(Setting::Vacuum(240.0), None); 30]);
    let shown = findings(&mut with_sessions(&said), &Place::Comfort);
    assert_eq!((shown.headline.as_str(), shown.figure.as_str()), ("Can’t tell yet", ""));
    assert!(shown.caption.contains("6 more sessions"), "{}", shown.caption);
    assert!(shown.lines.iter().any(|line| line.contains("30 sessions do not say how it felt")), "{:?}", shown.lines);
}

#[test]
fn where_settings_never_varied_it_cannot_be_told_and_a_search_is_offered() {
    let shown = findings(&mut with_sessions(&[(Setting::Level(5), Some(true)); 15]), &Place::Comfort);
    assert_eq!(shown.headline, "Can’t tell yet");
    let left = &shown.sections[0];
    assert!(left.lines.iter().any(|line| line.starts_with("A search can show it.")), "{:?}", left.lines);
}

/// A mean of many (Kent 2008) is no reason for one: who is comfortable at 240 mmHg is not led down,
/// who is at 150 not up.
#[test]
fn nobody_is_led_to_the_band_or_to_the_mean_of_a_study() {
    for comfortable in [240.0, 150.0] {
        let said: Vec<Said> =
            (0..20).map(|n| (Setting::Vacuum(comfortable - 10.0 * f64::from(n % 3)), Some(true))).collect();
        let mut person = with_sessions(&said);
        let shown = findings(&mut person, &Place::Comfort);
        assert!(shown.figure.contains(&format!("at least {comfortable:.0}")), "{}", shown.figure);
        let all = serde_json::to_string(&shown).unwrap().to_lowercase();
        assert!(all.contains("there is no need to try more") && all.contains("it is not something to reach"));
        for urging in ["increase", "turn it up", "go higher", "turn it down to"] {
            assert!(!all.contains(urging), "{urging}");
        }
    }
}

#[test]
fn letdowns_are_told_by_their_median_and_one_not_marked_is_not_none() {
    let mut person = with_sessions(&up_to_180());
    let shown = findings(&mut person, &Place::Letdown);
    assert_eq!(shown.figure, "01:00");
    assert!(shown.caption.contains("24 sessions"), "{}", shown.caption);
    person.press("start").unwrap();
    person.wait(Span::minutes(9)).unwrap();
    person.press("finish").unwrap();
    let shown = findings(&mut person, &Place::Letdown);
    assert!(shown.lines.iter().any(|line| line == "One session has none marked. That does not mean there was none."));
}

/// Five of the latest ten at the top fire, four do not, and one below the top does not (common
/// practice, no source).
#[test]
fn the_flange_is_named_before_the_vacuum_where_the_dial_is_at_its_top_in_half() {
    let line = "Level 12 of 12 in most sessions: look at the flange before the vacuum.";
    for (top, at_top, fires) in [(12, 5, true), (12, 4, false), (11, 10, false)] {
        let said: Vec<Said> = (0..10).map(|n| (Setting::Level(if n < at_top { top } else { 6 }), Some(true))).collect();
        let mut person = with_sessions(&said);
        let fit = r#"{"fact":"fit","id":"f","at":{"at":"2026-05-20T08:00:00.000+02:00","zone":"Europe/Berlin"},"areola_drawn_in":"left","nipple_left_before":{"value":16,"unit":"mm","typed":"16","typed_unit":"mm"}}"#;
        person.import_file(fit.as_bytes()).unwrap();
        person.press("place-kit").unwrap();
        assert_eq!(person.reads().unwrap().contains(line), fires, "{top} in {at_top}");
        person.press("comfort").unwrap();
        assert_eq!(person.reads().unwrap().contains(line), fires, "{top} in {at_top}");
    }
}

#[test]
fn a_change_that_was_no_trial_gets_a_weaker_before_and_after_with_what_else_changed() {
    let said: Vec<Said> = (0..40).map(|n| (Setting::Vacuum(160.0), Some(n % 2 == 0))).collect();
    let mut person = with_sessions(&said);
    let flange = r#"{"fact":"flange","id":"f","name":"The narrow one","in_use_since":"2026-05-20"}"#;
    assert!(findings(&mut person, &Place::Comfort).sections.iter().all(|s| s.key != "comfort-changed"));
    person.import_file(flange.as_bytes()).unwrap();
    let shown = findings(&mut person, &Place::Comfort);
    let changed = shown.sections.iter().find(|section| section.key == "comfort-changed").unwrap();
    assert!(changed.lines[0].starts_with("This is weaker"), "{:?}", changed.lines);
    assert_eq!(changed.rows[0].title, "The narrow one, from 20 May");
    assert!(changed.rows[0].detail.contains("Nothing else is noted"), "{}", changed.rows[0].detail);
    let measures: Vec<&str> = changed.rows[1..].iter().map(|row| row.title.as_str()).collect();
    assert_eq!(measures, ["Milk of a session", "Pain", "Time to the first letdown"]);
    // A session that was comfortable says so of pain, too.
    let rests_on = |detail: &str| detail.ends_with("from 15 sessions before and 25 after");
    assert!(changed.rows[1..].iter().all(|row| rests_on(&row.detail)), "{:?}", changed.rows);
    let mut beside = Written::within(Zone::named("Europe/Berlin").unwrap());
    let at = beside.moment(person.now().minus(Span::hours(70)));
    beside.fact("life_event", "l", &[("at", at), ("what", json!("medicine"))]);
    person.import_file(&beside.file()).unwrap();
    let shown = findings(&mut person, &Place::Comfort);
    let changed = shown.sections.iter().find(|section| section.key == "comfort-changed").unwrap();
    assert!(changed.rows[0].detail.contains("Also changed then: A medicine (22 May)"), "{}", changed.rows[0].detail);
}

#[test]
fn the_sheet_says_the_ceiling_the_letdown_and_the_flange() {
    let mut person = with_sessions(&up_to_180());
    let Screen::Sheet { sheet, .. } = person.show(&Place::Sheet).unwrap() else { panic!("a sheet") };
    let comfort = sheet.parts.iter().flat_map(|part| &part.sections).find(|section| section.key == "comfort").unwrap();
    let labels: Vec<&str> = comfort.rows.iter().map(|row| row.label.as_str()).collect();
    assert_eq!(labels, ["Comfortable up to about", "Time to the first letdown"]);
    assert!(comfort.rows[0].note.contains("Left: likely"), "{:?}", comfort.rows);
}

/// Nobody is led above what was comfortable by a plan without being told.
#[test]
fn a_planned_setting_above_what_was_comfortable_says_so_and_one_below_does_not() {
    for (vacuum, above) in [("230", true), ("140", false)] {
        let (mut person, mut desk) = drawwell_tests::visiting::acquainted().unwrap();
        logs(&mut person, &up_to_180());
        let plan = desk.writes_a_plan(&[("setting", &[("pump_name", "Marl"), ("vacuum", vacuum)])]).unwrap();
        let file = desk.takes(Event::Export { what: Export::Plan { plan } }).unwrap();
        person.import_file(&file).unwrap();
        let said = person.reads().unwrap().contains("This is above what has been comfortable for you, about");
        assert_eq!(said, above, "{vacuum}");
    }
}

/// The record that people look around in has a search and a comparison.
#[test]
fn the_invented_family_has_a_search_and_a_comparison() {
    let mut person = Person::of_the_invented_family().unwrap();
    let trial = findings(&mut person, &Place::Trial { id: "trial-hands".to_owned() });
    assert!(trial.lines.contains(&"24 of 24 planned sessions are done.".to_owned()), "{:?}", trial.lines);
    assert!(trial.sections.iter().any(|section| section.key == "trial-figures"));
    for place in [Place::Comfort, Place::Letdown, Place::Trial { id: "trial-hands".to_owned() }] {
        insta::assert_snapshot!(said(&findings(&mut person, &place)));
    }
}

/// What a page says, without its pictures.
fn said(page: &FindingsScreen) -> String {
    let mut lines = vec![page.headline.clone(), page.figure.clone(), page.caption.clone()];
    lines.extend(page.lines.clone());
    for section in &page.sections {
        lines.push(format!("# {}", section.title));
        lines.extend(section.lines.clone());
        lines.extend(section.rows.iter().map(|row| format!("- {}: {}", row.title, row.detail)));
    }
    lines.join("\n")
}

fn in_a_search() -> Person {
    let mut person = with_sessions(&[(Setting::Level(4), Some(true)); 3]);
    person.press("start").unwrap();
    person.wait(Span::minutes(2)).unwrap();
    person.press("mark-expression-phase").unwrap();
    person.press("place-kit").unwrap();
    person.press("comfort").unwrap();
    person.press("start-search").unwrap();
    person
}

/// What the row of the search says.
fn asks(person: &Person) -> String {
    let Screen::Running { running, .. } = person.screen().unwrap() else { panic!("runs") };
    running.pain.iter().find(|row| row.key == "search").map(|row| row.label.clone()).unwrap_or_default()
}

fn step(person: &mut Person, felt: &str) {
    person.press("search-at").unwrap();
    person.wait(Span::minutes(1)).unwrap();
    person.press(felt).unwrap();
}

#[test]
fn a_search_goes_up_by_one_and_ends_at_what_was_comfortable_before() {
    let mut person = in_a_search();
    for level in 1..=4 {
        assert_eq!(asks(&person), format!("Try level {level}"));
        step(&mut person, "search-comfortable");
    }
    assert!(asks(&person).starts_with("level 4 is as much as was comfortable before."), "{}", asks(&person));
    let search = person.only("search").unwrap();
    assert_eq!((search["search_ended"].as_str(), search.get("beyond")), (Some("found"), None));
    person.press("search-beyond").unwrap();
    assert_eq!(asks(&person), "Try level 1", "above it only by choice, and from low again");
}

#[test]
fn a_search_goes_back_one_step_at_the_first_discomfort() {
    let mut person = in_a_search();
    step(&mut person, "search-comfortable");
    step(&mut person, "search-hurts");
    assert_eq!(asks(&person), "Back to level 1");
    step(&mut person, "search-comfortable");
    assert!(asks(&person).starts_with("level 1 is comfortable, and the next one was not."), "{}", asks(&person));
    person.press("undo").unwrap();
    assert_eq!(asks(&person), "At level 1: how is it?", "a last step that was taken back leaves it going on");
}

#[test]
fn a_search_rests_when_it_hurts_much_and_can_be_stopped_at_any_time() {
    let mut person = in_a_search();
    step(&mut person, "search-comfortable");
    step(&mut person, "search-hurts");
    person.press("pain-5").unwrap();
    assert!(asks(&person).starts_with("The pain is rising. Let the pump rest."), "{}", asks(&person));
    assert_eq!(person.only("search").unwrap()["search_ended"], "pain_rose");
    let mut person = in_a_search();
    person.press("search-at").unwrap();
    person.press("search-stop").unwrap();
    assert_eq!(asks(&person), "");
    assert_eq!(person.only("search").unwrap()["search_ended"], "stopped");
}

#[test]
fn a_search_is_offered_where_it_hurts_and_takes_back_like_any_tap() {
    let mut person = with_sessions(&[(Setting::Level(4), Some(true)); 3]);
    person.press("start").unwrap();
    assert!(person.find("start-search").unwrap().is_none(), "nobody is asked for it");
    person.press("mark-hurts").unwrap();
    person.press("start-search").unwrap();
    assert_eq!(asks(&person), "Try level 1");
    person.press("undo").unwrap();
    assert_eq!(asks(&person), "");
}

#[test]
fn without_a_running_session_a_search_is_refused() {
    let mut person = with_sessions(&[]);
    assert!(person.send(Event::StartSearch { searched: Searched::Vacuum, beyond: false }).is_err());
}

/// A search, a comparison and a ceiling may be proposed; none begins by itself.
#[test]
fn a_plan_may_propose_a_search_a_comparison_and_a_setting_to_stay_below() {
    let (mut person, mut desk) = drawwell_tests::visiting::acquainted().unwrap();
    let plan = desk
        .writes_a_plan(&[
            ("search", &[("words", "Before the next visit.")]),
            ("trial", &[("way_a", "warm"), ("way_b", "cold"), ("trial_design", "sessions"), ("outcome", "letdown")]),
            ("setting", &[("vacuum", "180"), ("use_or_try", "at_most")]),
        ])
        .unwrap();
    let file = desk.takes(Event::Export { what: Export::Plan { plan } }).unwrap();
    person.import_file(&file).unwrap();
    let shown = person.reads().unwrap();
    for said in ["A search for comfort", "Two ways to compare", "Way A: warm", "A setting to stay below"] {
        assert!(shown.contains(said), "{said}: {shown}");
    }
    assert!(person.only("trial").is_err(), "nothing is set up before it is accepted");
    person.press("plan-accept-all").unwrap();
    let trial = person.only("trial").unwrap();
    assert_eq!((trial["way_a"].as_str(), trial.get("drawn")), (Some("warm"), None), "and the parent begins it");
    let id = trial["id"].as_str().unwrap().to_owned();
    person.press("place-kit").unwrap();
    person.press(&format!("open-{id}")).unwrap();
    person.press("begin-trial").unwrap();
    assert!(person.only("trial").unwrap()["drawn"].is_string());
}
