//! The visit sheet: what goes out is what is seen, and its figures are the screens' own.

use drawwell_core::screen::shapes::{
    Effect, Event, Export, Paper, Place, Screen, SheetPart, SheetRow, SheetScreen, SheetSection,
};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

/// The invented family, whose last visit was 28 days ago.
fn demo() -> Person {
    Person::of_the_invented_family().unwrap()
}

const SINCE_VISIT: u32 = 28;

/// The same without a visit.
fn never_visited() -> Person {
    let mut person = demo();
    for id in ["visit-2026-04-14", "visit-2026-07-17"] {
        person.send(Event::Remove { id: id.to_owned() }).unwrap();
    }
    person
}

fn sheet(person: &mut Person) -> SheetScreen {
    let Screen::Sheet { sheet, .. } = person.show(&Place::Sheet).unwrap() else { panic!("a sheet") };
    sheet
}

fn span(person: &mut Person) -> String {
    person.show(&Place::Sheet).unwrap().frame().subtitle.clone()
}

fn part(sheet: &SheetScreen, key: &str) -> Option<SheetPart> {
    sheet.parts.iter().find(|part| part.key == key).cloned()
}

fn section(sheet: &SheetScreen, key: &str) -> SheetSection {
    let mut all = sheet.parts.iter().flat_map(|part| &part.sections);
    all.find(|section| section.key == key).unwrap_or_else(|| panic!("no {key}")).clone()
}

fn row(section: &SheetSection, label: &str) -> SheetRow {
    let found = section.rows.iter().find(|row| row.label == label);
    found.unwrap_or_else(|| panic!("no {label} in {:?}", section.rows)).clone()
}

fn visit(person: &mut Person, days_back: u32) {
    person.send(Event::Add { kind: "visit".to_owned(), days_back }).unwrap();
}

/// What a press is given: the page as data.
fn page(person: &mut Person, paper: Paper) -> serde_json::Value {
    fn press(data: &str, _: &drawwell_core::time::Moment) -> Result<Vec<u8>, String> {
        Ok(data.as_bytes().to_vec())
    }
    let (path, clock) = (person.path().to_owned(), person.clock().clone());
    let opening = drawwell_core::screen::shapes::Opening {
        device: "press".to_owned(),
        language: "en".to_owned(),
        look_around: false,
    };
    let mut app = drawwell_core::app::App::open(path, opening, &clock).unwrap().with_sheet_renderer(press);
    let mut file = Vec::new();
    app.export(&Export::Sheet { paper }, &mut file, &clock).unwrap();
    serde_json::from_slice(&file).unwrap()
}

#[test]
fn supply_is_what_the_supply_screen_says_over_the_same_days() {
    let mut person = demo();
    let sheet = sheet(&mut person);
    let supply = crate::supply::supply(&mut person, SINCE_VISIT);
    let said = section(&sheet, "supply");
    assert_eq!(said.headline, supply.headline);
    assert_eq!(said.figure, supply.figure);
    assert_eq!(said.caption, supply.caption);
    assert_eq!(said.weeks.as_ref(), Some(&supply.weeks));
    // How much of the time was observed stands in a part of its own.
    let (observed, rest): (Vec<_>, Vec<_>) = supply.lines.iter().partition(|line| line.starts_with("Your log covers"));
    assert!(rest.iter().all(|line| said.lines.contains(line)));
    let shown = serde_json::to_string(&section(&sheet, "observed")).unwrap();
    assert!(observed.len() == 1 && shown.contains("86%") && observed[0].contains("86%"), "{shown}");
    for side in &supply.sides {
        assert_eq!(row(&said, &side.column.label).value, side.column.text);
    }
    for held in &supply.against.rows {
        assert_eq!(row(&said, &held.title).note, held.detail);
    }
}

#[test]
fn how_much_was_observed_is_what_the_figures_behind_say() {
    let mut person = demo();
    let observed = section(&sheet(&mut person), "observed");
    let Screen::List { list, .. } = person.show(&Place::SupplyFigures { days: SINCE_VISIT }).unwrap() else {
        panic!("list")
    };
    let group = |key: &str| list.groups.iter().find(|g| g.key == key).unwrap();
    let rests = &group("figures-both").rows[0].detail;
    let complete = row(&observed, "days with enough logged").value;
    assert!(rests.starts_with(&format!("{complete} days have enough logged; ")), "{rests}");
    assert!(
        rests.contains(&format!("{} of the time is logged; ", row(&observed, "of the time logged").value)),
        "{rests}"
    );
    assert!(
        rests.ends_with(&format!("{} of gaps may hide a session", row(&observed, "of gaps may hide a session").value)),
        "{rests}"
    );
    // The days as the Day screen counts them.
    let mut sessions = 0;
    for days_back in 1..=SINCE_VISIT {
        let Screen::Day { day, .. } = person.show(&Place::Day { days_back }).unwrap() else { panic!("day") };
        sessions += day.caption.split(' ').next().unwrap().parse::<u32>().unwrap();
    }
    assert_eq!(row(&observed, "sessions with expressing").value, sessions.to_string());
}

#[test]
fn sessions_and_gaps_are_the_middle_of_the_day_by_day_figures() {
    let mut person = demo();
    let rhythm = section(&sheet(&mut person), "rhythm");
    let Screen::List { list, .. } = person.show(&Place::SupplyFigures { days: SINCE_VISIT }).unwrap() else {
        panic!("list")
    };
    let days = &list.groups.iter().find(|g| g.key == "figures-days").unwrap().rows;
    let mut counts: Vec<u32> = days
        .iter()
        .map(|day| day.detail.split("; ").last().unwrap().split(' ').next().unwrap().parse().unwrap())
        .collect();
    counts.sort_unstable();
    let said = row(&rhythm, "Milk removals a day, median");
    assert_eq!(said.value, counts[counts.len() / 2].to_string());
    assert_eq!(said.note, format!("{} to {}", counts[0], counts[counts.len() - 1]));
    let longest = row(&rhythm, "The longest");
    // The figures tell the longest gap of one side, which is that of both or longer.
    let of_that_day = days.iter().find(|day| day.title == longest.note).unwrap();
    let hours = |said: &str| said.split(" h").next().and_then(|h| h.split(' ').next_back()?.parse::<u32>().ok());
    assert!(hours(&of_that_day.detail) >= hours(&longest.value), "{longest:?} {of_that_day:?}");
}

#[test]
fn nights_are_what_tonight_looks_back_on_and_a_pump_what_its_page_says() {
    let mut person = demo();
    let sheet = sheet(&mut person);
    let Screen::Tonight { tonight, .. } = person.show(&Place::Tonight).unwrap() else { panic!("tonight") };
    let back = tonight.sections.iter().find(|s| s.key == "nights").unwrap();
    assert_eq!(section(&sheet, "nights").lines, back.lines);
    let Screen::Findings { findings, .. } = person.show(&Place::Pump { id: "pump-heron".to_owned() }).unwrap() else {
        panic!("findings")
    };
    let pump = row(&section(&sheet, "pump"), "Heron");
    assert_eq!(pump.value, findings.headline);
    assert!(pump.note.starts_with(&format!("{} \u{b7} {}", findings.figure, findings.caption)), "{}", pump.note);
}

#[test]
fn what_is_left_out_is_seen_as_left_out_and_is_not_on_the_page() {
    let mut person = demo();
    let keys = |page: &serde_json::Value| -> Vec<String> {
        page["sections"].as_array().unwrap().iter().map(|s| s["key"].as_str().unwrap().to_owned()).collect()
    };
    let before = sheet(&mut person);
    let whole = page(&mut person, Paper::A4);
    let shown: Vec<String> =
        before.parts.iter().flat_map(|p| &p.sections).chain([&before.sources]).map(|s| s.key.clone()).collect();
    assert_eq!(keys(&whole), shown, "what is seen is what goes out");
    for found in &before.parts {
        person.send(found.leave.event.clone()).unwrap();
        let after = part(&sheet(&mut person), &found.key).unwrap();
        assert!(after.out && !after.said_out.is_empty());
        let page = page(&mut person, Paper::A4);
        for gone in &found.sections {
            assert!(!keys(&page).contains(&gone.key), "{} is left out", gone.key);
        }
        person.send(after.leave.event).unwrap();
        assert_eq!(part(&sheet(&mut person), &found.key).as_ref(), Some(found), "taken in again it is as it was");
    }
    assert_eq!(page(&mut person, Paper::A4), whole);
}

#[test]
fn what_rests_on_a_part_that_is_left_out_goes_with_it() {
    let mut person = never_visited();
    visit(&mut person, 120);
    let told = |person: &mut Person| serde_json::to_string(&page(person, Paper::A4)["sections"]).unwrap();
    // No change of level is told of this family any more: it rises slowly, and a step is told only
    // where it fits better than that.
    assert!(told(&mut person).contains("Your own best two weeks"));
    person.send(Event::LeaveOut { part: "supply".to_owned(), out: true }).unwrap();
    let without = told(&mut person);
    assert!(!without.contains("Your own best two weeks"));
    assert!(!without.contains("a day less since") && !without.contains("a day more since"));
    assert!(!without.contains("No level is told"), "a rule without its part");
}

#[test]
fn every_sheet_says_that_it_is_no_diagnosis_and_what_it_rests_on() {
    for mut person in [demo(), Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap()] {
        let sheet = sheet(&mut person);
        assert_eq!(sheet.foot, "This is not a diagnosis. Local guidance and licensed care come first.");
        let page = page(&mut person, Paper::A4);
        assert_eq!(page["foot"], serde_json::json!(sheet.foot));
        assert_eq!(page["sections"].as_array().unwrap().last().unwrap()["key"], "sources");
    }
}

#[test]
fn an_empty_record_makes_a_sheet_without_any_part() {
    let mut person = Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap();
    let sheet = sheet(&mut person);
    assert_eq!(sheet.parts, []);
    assert!(sheet.intro.starts_with("Only the sources are on it"));
    assert!(sheet.sources.rows.is_empty(), "no rule without an answer that rests on it");
    assert!(sheet.hand_over.open);
}

#[test]
fn it_begins_with_the_last_visit_before_today_and_not_before_the_record() {
    let mut person = never_visited();
    assert_eq!(span(&mut person), "31 July 2026 to 14 August 2026", "fourteen days where there was no visit");
    visit(&mut person, 3);
    assert_eq!(span(&mut person), "Since the visit of 11 August 2026, to 14 August 2026");
    visit(&mut person, 0);
    assert_eq!(
        span(&mut person),
        "Since the visit of 11 August 2026, to 14 August 2026",
        "today's is the one it is for"
    );
    let Screen::Supply { supply, .. } = person.show(&Place::Supply { days: 3 }).unwrap() else { panic!("supply") };
    assert_eq!(section(&sheet(&mut person), "supply").figure, supply.figure);
}

#[test]
fn ten_years_since_the_last_visit_and_nothing_since_then_both_read_well() {
    let mut person = never_visited();
    // The invented record is five months old: what lies before it is not told as not observed.
    visit(&mut person, 3650);
    let long = sheet(&mut person);
    assert!(span(&mut person).ends_with(" March 2026 to 14 August 2026"), "{}", span(&mut person));
    assert!(section(&long, "supply").weeks.unwrap().bars.len() < 200);
    // Nothing for a year after the last entry.
    let mut person = demo();
    person.wait(Span::hours(24 * 365)).unwrap();
    visit(&mut person, 20);
    let none = sheet(&mut person);
    assert_eq!(section(&none, "observed").lines, ["Nothing was logged in these days."]);
    for key in ["sessions", "comfort", "notes", "changes", "body"] {
        assert_eq!(part(&none, key), None, "{key} has no answer and no placeholder");
    }
}

#[test]
fn a_question_waits_on_the_sheet_until_it_is_answered() {
    let mut person = Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap();
    person.send(Event::Add { kind: "question".to_owned(), days_back: 0 }).unwrap();
    person.enter("question", "May I leave out the session at three?").unwrap();
    let asked = section(&sheet(&mut person), "questions");
    assert_eq!(asked.rows.len(), 1);
    assert_eq!(asked.rows[0].label, "May I leave out the session at three?");
    person.enter("answered", "true").unwrap();
    assert_eq!(part(&sheet(&mut person), "questions"), None);
}

#[test]
fn the_name_is_the_one_that_was_chosen_or_none() {
    let mut person = demo();
    let enter = |person: &mut Person, typed: &str| {
        let (id, field) = ("settings".to_owned(), "sheet_name".to_owned());
        person.send(Event::Enter { id, field, typed: typed.to_owned() })
    };
    assert_eq!(page(&mut person, Paper::A4)["who"], "");
    for name in ["Mara L.", "#eval(\"x\") *a* $b$ <c>", "ليلى", "\u{1f469}\u{200d}\u{1f37c}", &"x".repeat(300)] {
        enter(&mut person, name).unwrap();
        let page = page(&mut person, Paper::A4);
        assert_eq!(page["who"], serde_json::json!(name), "as it was typed");
    }
    let before = person.record().unwrap();
    assert!(enter(&mut person, &"x".repeat(301)).is_err());
    assert_eq!(person.record().unwrap(), before);
    person.send(Event::LeaveOut { part: "who".to_owned(), out: true }).unwrap();
    let page = page(&mut person, Paper::A4);
    assert_eq!(page["who"], "");
    assert!(!page["title"].as_str().unwrap().contains('x'));
}

#[test]
fn it_is_handed_over_on_the_paper_that_was_chosen() {
    let mut person = demo();
    let mut handed = |paper: &str| {
        let (id, field) = ("settings".to_owned(), "paper".to_owned());
        person.send(Event::Enter { id, field, typed: paper.to_owned() }).unwrap();
        let event = sheet(&mut person).hand_over.event;
        person.effects.clear();
        person.send(event).unwrap();
        let found = person.effects.iter().find_map(|effect| match effect {
            Effect::HandOver { what: Export::Sheet { paper }, content_type, .. } => {
                Some((*paper, content_type.clone()))
            }
            _ => None,
        });
        let (on, content_type) = found.unwrap();
        assert_eq!(content_type, "application/pdf");
        page(&mut person, on)["paper"].as_str().unwrap().to_owned()
    };
    assert_eq!(handed("a4"), "a4");
    assert_eq!(handed("letter"), "us-letter");
}

#[test]
fn without_a_press_the_trouble_is_told_and_the_record_stays() {
    let mut person = demo();
    let (before, clock) = (person.record().unwrap(), person.clock().clone());
    let trouble =
        person.app().unwrap().export(&Export::Sheet { paper: Paper::A4 }, &mut Vec::new(), &clock).unwrap_err();
    assert_eq!(trouble.key, "trouble-no-press");
    assert_eq!(person.record().unwrap(), before);
}

#[test]
fn pain_is_told_as_it_was_said_and_what_was_not_said_is_not_none() {
    let mut person = Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap();
    for pain in [Some("4"), None, Some("7")] {
        person.press("start").unwrap();
        person.wait(Span::minutes(15)).unwrap();
        person.press("finish").unwrap();
        person.press("amounts-later").unwrap();
        if let Some(score) = pain {
            let Screen::Day { day, .. } = person.show(&Place::Day { days_back: 0 }).unwrap() else { panic!("day") };
            let (id, field) = (day.entries[0].id.clone(), "pain_left_expression".to_owned());
            person.send(Event::Enter { id, field, typed: score.to_owned() }).unwrap();
        }
        person.wait(Span::hours(3)).unwrap();
        person.press("place-now").unwrap();
    }
    let pain = section(&sheet(&mut person), "pain");
    assert_eq!(row(&pain, "Sessions and feeds that hurt").value, "2 of 3");
    assert_eq!(row(&pain, "Highest").value, "7 out of 10");
    assert_eq!(pain.lines, ["Pain was not noted in one session. That does not mean there was none."]);
    assert_eq!(pain.plot.unwrap().points.len(), 2);
}

/// What a unit's chart asks of a child. 1,240 g at birth is the family's own; the gain is by hand from its weights.
#[test]
fn a_child_is_told_with_its_birth_and_what_it_gains_a_day() {
    let mut person = demo();
    let child = section(&sheet(&mut person), "child");
    assert_eq!(child.rows.len(), 1, "one of three years matters here only where it was weighed: {:?}", child.rows);
    let tavi = row(&child, "Tavi");
    assert!(tavi.note.starts_with("Born 12 March 2026, 1240 g"), "{}", tavi.note);
    assert!(tavi.note.contains(" g a day over "), "{}", tavi.note);
}

#[test]
fn a_gain_is_the_difference_over_the_days_between_and_an_older_child_is_told_where_it_was_weighed() {
    let mut person = Person::welcomed("2026-03-20T10:00:00+01:00", "Europe/Berlin").unwrap();
    let file = r#"{"fact":"child","id":"young","name":"Wren","birth":"2026-03-01"}
{"fact":"child","id":"old","name":"Alder","birth":"2022-03-01","birth_weight":{"value":3000,"unit":"g"}}
{"fact":"weight","id":"w1","at":{"at":"2026-03-10T09:00:00+01:00","zone":"Europe/Berlin"},"child":"young","weight":{"value":3000,"unit":"g"}}
{"fact":"weight","id":"w2","at":{"at":"2026-03-18T09:00:00+01:00","zone":"Europe/Berlin"},"child":"young","weight":{"value":3200,"unit":"g"}}
"#;
    person.import_file(file.as_bytes()).unwrap();
    let child = section(&sheet(&mut person), "child");
    assert_eq!(child.rows.iter().map(|row| row.label.as_str()).collect::<Vec<_>>(), ["Wren"]);
    let note = row(&child, "Wren").note;
    assert!(note.contains("+25 g a day over 8 days"), "{note}");
    let weighed = r#"{"fact":"weight","id":"w3","at":{"at":"2026-03-18T09:00:00+01:00","zone":"Europe/Berlin"},"child":"old","weight":{"value":16000,"unit":"g"}}
"#;
    person.import_file(weighed.as_bytes()).unwrap();
    let child = section(&sheet(&mut person), "child");
    let old = row(&child, "Alder").note;
    assert!(old.starts_with("Born 1 March 2022, 3000 g"), "{old}");
    assert!(!old.contains("a day over"), "one weight is no gain: {old}");
}

/// Of sessions that do not say how long they were, or how many letdowns there were, nothing is told.
#[test]
fn minutes_and_letdowns_are_of_what_was_noted() {
    let mut person = Person::welcomed("2026-03-05T10:00:00+01:00", "Europe/Berlin").unwrap();
    let session = |id: &str, day: u32, from: &str, until: Option<&str>, letdowns: Option<u32>| {
        let at = |time: &str| format!(r#"{{"at":"2026-03-0{day}T{time}:00+01:00","zone":"Europe/Berlin"}}"#);
        let ended = until.map(|until| format!(r#","ended":{}"#, at(until))).unwrap_or_default();
        let letdowns = letdowns.map(|count| format!(r#","letdowns":{count}"#)).unwrap_or_default();
        format!(
            r#"{{"fact":"session","id":"{id}","started":{}{ended}{letdowns},"method":"electric_pump","sides":"both","afterwards":true}}"#,
            at(from)
        ) + "\n"
    };
    let file = [
        session("a", 2, "08:00", Some("08:20"), Some(2)),
        session("b", 2, "14:00", Some("14:30"), None),
        session("c", 3, "08:00", Some("08:40"), Some(4)),
        session("d", 3, "14:00", Some("14:20"), Some(3)),
        session("e", 4, "08:00", Some("08:20"), None),
        session("f", 4, "14:00", None, None),
    ];
    person.import_file(file.concat().as_bytes()).unwrap();
    let rhythm = section(&sheet(&mut person), "rhythm");
    let minutes = row(&rhythm, "Expressing a day, median");
    assert_eq!((minutes.value.as_str(), minutes.note.as_str()), ("1 h", "50 min to 1 h"), "the fourth is open");
    let letdowns = row(&rhythm, "Letdowns a session, median");
    assert_eq!((letdowns.value.as_str(), letdowns.note.as_str()), ("3", "2 to 4; noted in 3 of 6"));
}

#[test]
fn nipples_levels_and_who_saw_it_are_on_the_page() {
    let mut person = demo();
    let all = sheet(&mut person);
    let nipple = row(&section(&all, "kit"), "Nipple width");
    assert_eq!(nipple.value, "Left 16 mm \u{b7} Right 17 mm");
    assert!(nipple.note.starts_with("Measured 29 June 2026; checked, no signs seen"), "{}", nipple.note);
    let levels = section(&all, "settings");
    assert!(levels.rows.iter().any(|row| row.value.ends_with(" of 12")), "{:?}", levels.rows);
    assert_eq!(page(&mut person, Paper::A4)["seen"], serde_json::json!(["Seen by", "On"]));
}

/// A medicine of the last weeks is told also where the visit lies between; anything else is not.
#[test]
fn a_medicine_is_told_from_before_the_last_visit() {
    let mut person = Person::welcomed("2026-03-20T10:00:00+01:00", "Europe/Berlin").unwrap();
    let event = |id: &str, day: &str, what: &str| {
        format!(
            r#"{{"fact":"life_event","id":"{id}","at":{{"at":"2026-{day}T09:00:00+01:00","zone":"Europe/Berlin"}},"what":"{what}"}}"#
        ) + "\n"
    };
    let visit = r#"{"fact":"visit","id":"v","at":{"at":"2026-03-15T09:00:00+01:00","zone":"Europe/Berlin"}}"#;
    let file = [
        event("old", "02-10", "medicine"),
        event("m", "03-01", "medicine"),
        event("j", "03-02", "journey"),
        event("b", "03-17", "back_to_work"),
        format!("{visit}\n"),
    ];
    person.import_file(file.concat().as_bytes()).unwrap();
    let changes = section(&sheet(&mut person), "changes");
    let days: Vec<&str> = changes.rows.iter().map(|row| row.value.as_str()).collect();
    assert_eq!(days, ["1 March", "17 March"]);
}
