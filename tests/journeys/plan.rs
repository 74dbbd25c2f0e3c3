//! A plan that comes back: whose it is, what it would change, accepted whole or in parts,
//! and every reason for which one is refused.

use drawwell_core::screen::shapes::{DeskEvent, Event, Export, FindingsScreen, ListRow, Place, Screen, Secret};
use drawwell_core::share::sealed::{open, seal, OpenWith, SealFor};
use drawwell_core::time::Span;
use drawwell_core::trouble::Detail;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{self, shares, takes, Desk};
use serde_json::Value;

type Parts<'a> = &'a [(&'a str, &'a [(&'a str, &'a str)])];

const PLAN: Parts<'_> = &[
    ("plan", &[("plan_words", "The breaks at work first.")]),
    ("rhythm", &[("sessions_a_day", "6"), ("longest_interval", "8:00")]),
    ("setting", &[("pump_name", "Heron"), ("level", "7"), ("use_or_try", "try")]),
    ("aim", &[("aim", "600")]),
    ("rule", &[("rule", "breast_fever"), ("rule_value", "38.3")]),
    ("check", &[("plan_check", "pump"), ("check_by", "2026-06-10")]),
    ("words", &[("words", "You are doing well.")]),
];

fn person() -> Person {
    Person::welcomed("2026-05-25T04:06:00+02:00", "Europe/Berlin").unwrap()
}

fn acquainted() -> (Person, Desk) {
    visiting::acquainted().unwrap()
}

fn plan_of(desk: &mut Desk, parts: Parts<'_>) -> Vec<u8> {
    let plan = desk.writes_a_plan(parts).unwrap();
    desk.takes(Event::Export { what: Export::Plan { plan } }).unwrap()
}

fn page(person: &Person) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    findings.clone()
}

fn lines(page: &FindingsScreen, title: &str) -> Vec<String> {
    page.sections.iter().find(|section| section.title == title).unwrap().lines.clone()
}

fn fact(person: &mut Person, fact: &str) -> Vec<Value> {
    let record = person.record().unwrap();
    let lines = record.lines().map(|line| serde_json::from_str::<Value>(line).unwrap());
    lines.filter(|line| line["fact"] == fact).collect()
}

#[test]
fn the_parent_sees_what_each_part_says_and_would_change_and_nothing_holds_before_it_is_accepted() {
    let (mut person, mut desk) = acquainted();
    let set = Event::Enter { id: "rhythm".into(), field: "sessions_a_day".into(), typed: "7".into() };
    person.send(set).unwrap();
    let file = plan_of(&mut desk, PLAN);
    person.import_file(&file).unwrap();
    let page = page(&person);
    assert!(page.lines.contains(&"The breaks at work first.".to_owned()));
    assert_eq!(lines(&page, "How often, and sleep"), ["Sessions a day: from 7 to 6", "Longest gap: 8 h"],);
    assert_eq!(lines(&page, "A goal"), ["Goal for a day, set with your consultant: 600 mL"]);
    let unlike = "Your record has no pump called Heron. Levels differ from pump to pump, so we can’t compare.";
    assert_eq!(lines(&page, "A setting to try"), ["Heron · level 7", unlike]);
    assert_eq!(lines(&page, "A changed rule"), ["Fever with signs at the breast: from 38.5 °C to 38.3 °C"]);
    assert_eq!(lines(&page, "Something to check"), ["The pump, by Wednesday 10 June"]);
    assert_eq!(fact(&mut person, "rhythm")[0]["sessions_a_day"], 7);
    assert_eq!(fact(&mut person, "rules"), [] as [Value; 0]);
    person.press("place-now").unwrap();
    person.press("open-plan").unwrap();
}

/// A consultant need not know what a rule is called within: she chooses it by what it says.
#[test]
fn a_rule_is_chosen_from_all_that_a_family_goes_by_and_kept_within_its_bounds() {
    let (_, mut desk) = acquainted();
    let family = desk.families().unwrap()[0].2.clone();
    let screen = desk.send(Event::OnDesk { event: DeskEvent::WritePlan { family } }).unwrap();
    let Screen::Findings { findings, .. } = screen.beside else { panic!("{:?}", screen.beside) };
    let press = |screen: &Screen, key: &str| drawwell_tests::person::offered(screen, key).unwrap();
    let add = findings.sections.iter().flat_map(|s| &s.actions).find(|a| a.key == "add-part-rule").unwrap();
    let screen = desk.send(add.event.clone()).unwrap();
    let Screen::List { list, .. } = &screen.beside else { panic!("{:?}", screen.beside) };
    let keys: Vec<&str> = list.groups.iter().map(|group| group.key.as_str()).collect();
    assert!(keys.contains(&"caution-rules") && !keys.contains(&"caseload-rules"), "{keys:?}");
    let rows: Vec<_> = list.groups.iter().flat_map(|group| &group.rows).collect();
    let row = rows.iter().find(|row| row.title == "Severe pain starts at").unwrap();
    assert!(row.detail.starts_with("Default: 7") && row.detail.contains("Palos"), "{}", row.detail);
    let screen = desk.send(row.open.clone().unwrap().event).unwrap();
    let Screen::Form { form, .. } = &screen.beside else { panic!("{:?}", screen.beside) };
    let row = |field: &str| form.groups.iter().flat_map(|g| &g.rows).find(|row| row.field == field).unwrap().clone();
    assert_eq!(row("rule").value, "Severe pain starts at");
    assert!(row("rule_value").hint.starts_with("Default: 7"));
    let enter = |typed: &str| Event::Enter { id: form.id.clone(), field: "rule_value".into(), typed: typed.into() };
    for beyond in ["0", "11"] {
        let refused = desk.send(enter(beyond)).unwrap_err();
        assert_eq!((refused.key, refused.field.as_str()), ("bad-range", "rule_value"));
    }
    desk.send(enter("8")).unwrap();
    // Another rule has another value.
    let again = press(&screen.beside, "choose-rule");
    let screen = desk.send(again.event).unwrap();
    let screen = desk.send(press(&screen.beside, "choose-longest_gap").event).unwrap();
    let Screen::Form { form, .. } = &screen.beside else { panic!("{:?}", screen.beside) };
    let value = form.groups.iter().flat_map(|g| &g.rows).find(|row| row.field == "rule_value").unwrap();
    assert_eq!((value.value.as_str(), value.unit.as_str()), ("", "h"));
}

fn part_on_desk(page: &Screen, title: &str) -> ListRow {
    let Screen::Findings { findings, .. } = page else { panic!("{page:?}") };
    findings.sections.iter().flat_map(|s| &s.rows).find(|row| row.title == title).unwrap().clone()
}

/// Before she sends it she sees what it would change in that family's record.
#[test]
fn the_consultant_sees_what_a_plan_would_change_while_she_writes_it() {
    let mut person = person();
    let enter = |id: &str, field: &str, typed: &str| Event::Enter {
        id: id.to_owned(),
        field: field.to_owned(),
        typed: typed.to_owned(),
    };
    person.send(enter("settings", "sheet_name", "Juniper")).unwrap();
    person.send(enter("rhythm", "sessions_a_day", "7")).unwrap();
    person.send(enter("rules", "breast_fever", "38.1")).unwrap();
    person.send(Event::Add { kind: "pump".to_owned(), days_back: 0 }).unwrap();
    let Screen::Form { form, .. } = person.screen().unwrap().clone() else { panic!("a form") };
    person.send(enter(&form.id, "name", "Heron")).unwrap();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    person.press("mark-stronger").unwrap();
    person.press("finish").unwrap();
    let mut desk = Desk::beside(&person).unwrap();
    let card = desk.caseload.own_card().unwrap();
    desk.import_file(&shares(&mut person, &card).unwrap()).unwrap();

    let plan = desk.writes_a_plan(PLAN).unwrap();
    let page =
        desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Plan { id: plan } } }).unwrap().beside;
    let Screen::Findings { findings, .. } = &page else { panic!("{page:?}") };
    assert_eq!(findings.headline, "A plan for Juniper");
    let Screen::List { list, .. } = desk.caseload.here(&desk.clock).unwrap().families else { panic!("a list") };
    let row = list.groups.iter().flat_map(|group| &group.rows).next().unwrap();
    assert!(row.open.as_ref().unwrap().chosen, "and the list shows whose it is");
    assert_eq!(
        part_on_desk(&page, "How often, and sleep").detail,
        "Sessions a day: from 7 to 6 \u{b7} Longest gap: 8 h"
    );
    let screen = desk.send(part_on_desk(&page, "How often, and sleep").open.unwrap().event).unwrap();
    let Screen::Form { form, .. } = &screen.beside else { panic!("{:?}", screen.beside) };
    let hint =
        |field: &str| form.groups.iter().flat_map(|g| &g.rows).find(|row| row.field == field).unwrap().hint.clone();
    assert_eq!(hint("sessions_a_day"), "7 now");
    assert!(!hint("shortest_interval").contains("now"), "nothing is set there yet");
    let rule = part_on_desk(&page, "A changed rule");
    assert_eq!(rule.detail, "Fever with signs at the breast: from 38.1 °C to 38.3 °C");
    let setting = part_on_desk(&page, "A setting to try");
    assert_eq!(setting.detail, "Heron \u{b7} level 7 \u{b7} stronger than the last setting in the record");

    // Its pumps are offered by name, and its rules as they stand there.
    let screen = desk.send(setting.open.unwrap().event).unwrap();
    assert_eq!(screen.beside.frame().subtitle, "For Juniper");
    let Screen::Form { form, .. } = &screen.beside else { panic!("{:?}", screen.beside) };
    let name = form.groups.iter().flat_map(|g| &g.rows).find(|row| row.field == "pump_name").unwrap();
    assert_eq!(name.options.iter().map(|o| (o.label.as_str(), o.chosen)).collect::<Vec<_>>(), [("Heron", true)]);
    desk.send(name.options[0].event.clone()).unwrap();
    let screen = desk.send(rule.open.unwrap().event).unwrap();
    let another = drawwell_tests::person::offered(&screen.beside, "choose-rule").unwrap();
    let screen = desk.send(another.event).unwrap();
    let Screen::List { list, .. } = &screen.beside else { panic!("{:?}", screen.beside) };
    let rows: Vec<_> = list.groups.iter().flat_map(|group| &group.rows).collect();
    let fever = rows.iter().find(|row| row.title == "Fever with signs at the breast").unwrap();
    assert!(fever.detail.starts_with("Now 38.1 °C in this family’s record. Default: 38.5 °C. "), "{}", fever.detail);
    assert!(rows.iter().find(|row| row.title == "Severe pain starts at").unwrap().detail.starts_with("Default: 7"));
}

/// What she wrote is there also where that family's record can't be read.
#[test]
fn a_plan_can_be_written_for_a_family_whose_record_is_damaged() {
    let (_, mut desk) = acquainted();
    let plan = desk.writes_a_plan(PLAN).unwrap();
    desk.opened_again().unwrap();
    for file in std::fs::read_dir(desk.folder().join("families")).unwrap() {
        std::fs::write(file.unwrap().path(), b"no journal").unwrap();
    }
    let page =
        desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Plan { id: plan } } }).unwrap().beside;
    assert!(part_on_desk(&page, "How often, and sleep").detail.contains("Sessions a day: 6"));
}

/// A family's record that goes bad while it is open is no fault of the desk's own, which stays as it is.
#[test]
fn a_family_that_goes_bad_while_a_plan_is_written_leaves_the_desk_as_it_is() {
    let mut person = Person::of_the_invented_family().unwrap();
    let mut desk = Desk::beside(&person).unwrap();
    desk.import_file(person.record().unwrap().as_bytes()).unwrap();
    let plan = desk.writes_a_plan(PLAN).unwrap();
    desk.opened_again().unwrap();
    let family = desk.families().unwrap()[0].2.clone();
    desk.send(Event::OnDesk { event: DeskEvent::OpenFamily { family } }).unwrap();
    let files = std::fs::read_dir(desk.folder().join("families")).unwrap().map(|file| file.unwrap().path());
    let record = files.into_iter().find(|path| path.extension().is_some_and(|ending| ending == "drawwell")).unwrap();
    // What was read of it already is let go of once somebody else wrote.
    let other = rusqlite::Connection::open(&record).unwrap();
    other.execute("UPDATE clock SET stamp = stamp + 1", []).unwrap();
    // Pages that only a plan asks for, under the open record.
    let mut bytes = std::fs::read(&record).unwrap();
    let mut spoiled = 0;
    for page in bytes.chunks_exact_mut(4096).skip(1) {
        let holds = |text: &[u8]| page.windows(text.len()).any(|part| part == text);
        if page[0] == 0x0a && holds(b"rhythm") && !holds(b"settings") {
            page.fill(0xa5);
            spoiled += 1;
        }
    }
    assert!(spoiled > 0, "no page to spoil");
    std::fs::write(&record, bytes).unwrap();
    let page =
        desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Plan { id: plan } } }).unwrap().beside;
    assert_eq!(part_on_desk(&page, "How often, and sleep").detail, "Sessions a day: 6 \u{b7} Longest gap: 8:00");
    let beside = std::fs::read_dir(desk.folder()).unwrap().map(|file| file.unwrap().file_name());
    let set_aside: Vec<_> = beside.filter(|name| name.to_string_lossy().contains("damaged")).collect();
    assert!(set_aside.is_empty(), "{set_aside:?}");
}

#[test]
fn accepting_all_sets_all_and_one_undo_takes_it_back() {
    let (mut person, mut desk) = acquainted();
    person.import_file(&plan_of(&mut desk, PLAN)).unwrap();
    let before = person.record().unwrap();
    person.press("plan-accept-all").unwrap();
    let rhythm = &fact(&mut person, "rhythm")[0];
    assert_eq!((&rhythm["sessions_a_day"], &rhythm["longest_interval"]), (&Value::from(6), &Value::from(480)));
    assert_eq!(fact(&mut person, "rules")[0]["breast_fever"], 38.3);
    assert!(fact(&mut person, "plan_part").iter().all(|part| part["answer"] == "accepted"));
    assert!(page(&person).actions.is_empty(), "nothing waits any more");
    person.press("undo").unwrap();
    assert_eq!(person.record().unwrap(), before);
}

#[test]
fn parts_are_accepted_and_left_by_themselves() {
    let (mut person, mut desk) = acquainted();
    person.import_file(&plan_of(&mut desk, PLAN)).unwrap();
    let key = |person: &Person, title: &str, action: usize| {
        let section = page(person).sections.into_iter().find(|section| section.title == title).unwrap();
        section.actions[action].key.clone()
    };
    let accept = key(&person, "A goal", 0);
    person.press(&accept).unwrap();
    let leave = key(&person, "A changed rule", 1);
    person.press(&leave).unwrap();
    assert_eq!(fact(&mut person, "settings")[0]["aim"]["value"], 600.0);
    assert_eq!(fact(&mut person, "rules"), [] as [Value; 0]);
    assert!(lines(&page(&person), "A changed rule").contains(&"You declined this.".to_owned()));
    // An answer can be changed.
    let accept = key(&person, "A changed rule", 0);
    person.press(&accept).unwrap();
    assert_eq!(fact(&mut person, "rules")[0]["breast_fever"], 38.3);
}

/// What was answered is among what changed; a consultant's own words are not told back.
#[test]
fn the_next_visit_sheet_tells_what_was_accepted_and_what_was_left() {
    let (mut person, mut desk) = acquainted();
    person.import_file(&plan_of(&mut desk, PLAN)).unwrap();
    let parts = page(&person).sections;
    let press = |title: &str, key: &str| {
        let section = parts.iter().find(|section| section.title == title).unwrap();
        section.actions.iter().find(|action| action.key.starts_with(key)).unwrap().event.clone()
    };
    person.send(press("How often, and sleep", "plan-accept")).unwrap();
    person.send(press("A goal", "plan-leave")).unwrap();
    let Screen::Sheet { sheet, .. } = person.show(&Place::Sheet).unwrap() else { panic!("a sheet") };
    let changes = sheet.parts.iter().flat_map(|part| &part.sections).find(|section| section.key == "changes").unwrap();
    let told: Vec<_> = changes.rows.iter().map(|row| (row.label.as_str(), row.note.as_str())).collect();
    assert_eq!(
        told,
        [
            ("Consultant’s plan: How often, and sleep", "Accepted. Sessions a day: 6 \u{b7} Longest gap: 8:00"),
            ("Consultant’s plan: A goal", "Declined. Goal for a day, set with your consultant: 600 mL"),
        ]
    );
}

#[test]
fn both_records_show_the_answer_once_the_record_is_shared_again() {
    let (mut person, mut desk) = acquainted();
    person.import_file(&plan_of(&mut desk, PLAN)).unwrap();
    person.press("plan-accept-all").unwrap();
    let id = fact(&mut person, "plan")[0]["id"].as_str().unwrap().to_owned();
    person.wait(Span::hours(1)).unwrap();
    let card = desk.caseload.own_card().unwrap();
    let file = shares(&mut person, &card).unwrap();
    desk.clock = person.clock().clone();
    desk.import_file(&file).unwrap();
    let screen = desk.send(Event::Go { place: Place::Plan { id } }).unwrap();
    let Screen::Findings { findings, .. } = screen.beside else { panic!("{:?}", screen.beside) };
    assert!(lines(&findings, "A goal").contains(&"You accepted this.".to_owned()));
}

#[test]
fn the_same_plan_twice_says_nothing_new_and_a_visit_is_made_once() {
    let (mut person, mut desk) = acquainted();
    let parts: Parts<'_> = &[("visit", &[("visit_at", "11:00"), ("visit_at/date", "2026-06-12")])];
    let plan = plan_of(&mut desk, parts);
    person.import_file(&plan).unwrap();
    person.press("plan-accept-all").unwrap();
    let record = person.record().unwrap();
    person.import_file(&plan).unwrap();
    assert_eq!(person.record().unwrap(), record);
    let visits = fact(&mut person, "visit");
    assert_eq!(visits.len(), 1);
    assert_eq!(visits[0]["at"]["at"], "2026-06-12T11:00:00.000+02:00");
}

#[test]
fn a_stronger_setting_is_said_to_be_one() {
    let (mut person, mut desk) = acquainted();
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    for _ in 0..6 {
        person.press("mark-stronger").unwrap();
    }
    person.press("finish").unwrap();
    let last = fact(&mut person, "session")[0]["marks"].as_object().unwrap().len();
    assert!(last > 0);
    for (level, told) in [("6", false), ("7", true)] {
        person.wait(Span::minutes(5)).unwrap();
        desk.clock = person.clock().clone();
        let plan = plan_of(&mut desk, &[("setting", &[("level", level), ("plan_phase", "expression")])]);
        person.import_file(&plan).unwrap();
        let said = lines(&page(&person), "A setting to use");
        assert_eq!(said.iter().any(|line| line.contains("stronger than your last setting")), told, "{level}: {said:?}");
    }
}

#[test]
fn every_plan_that_is_not_for_this_family_from_its_consultant_is_refused_with_its_reason() {
    let (mut person, mut desk) = acquainted();
    let good = plan_of(&mut desk, PLAN);
    let record = person.record().unwrap();

    // Another consultant, who has the record and whose card was never taken in.
    let typed =
        |id: &str| Event::EnterSecret { id: id.into(), secret: Secret { words: "otter plum kite anchor".into() } };
    let by_passphrase = takes(&mut person, typed("seal-passphrase")).unwrap();
    let mut stranger = Desk::beside(&person).unwrap();
    stranger.import_file(&by_passphrase).unwrap();
    stranger.send(typed("open-passphrase")).unwrap();
    let theirs = plan_of(&mut stranger, PLAN);
    assert_eq!(person.import_file(&theirs).unwrap_err().key, "signed-by-a-stranger");
    assert_eq!(person.record().unwrap(), record);

    // Changed on its way: sealed anew for the family by somebody who could read it.
    let keys = family_keys(&mut person);
    let plain = String::from_utf8(open(&good, &OpenWith::Keys(vec![keys.0])).unwrap()).unwrap();
    let resealed = |text: &str| seal(text.as_bytes(), &SealFor::Keys(vec![keys.1.clone()])).unwrap();
    for (was, is, key) in [
        ("\"sessions_a_day\":6", "\"sessions_a_day\":5", "signed-not-as-it-was"),
        ("drawwell plan for", "drawwell plan to", "signed-not-as-it-was"),
        ("untrusted comment: ", "", "family-file-not-one"),
    ] {
        assert!(plain.contains(was), "{was}");
        assert_eq!(person.import_file(&resealed(&plain.replacen(was, is, 1))).unwrap_err().key, key, "{was}");
    }
    assert_eq!(person.import_file(&good[..good.len() / 2]).unwrap_err().key, "sealed-cut");
    assert_eq!(person.record().unwrap(), record);
    // Signed and not sealed, it is still hers.
    person.import_file(plain.as_bytes()).unwrap();
}

/// The secret and the public key of a family, as its record keeps them.
fn family_keys(person: &mut Person) -> (String, String) {
    let journal = drawwell_core::journal::Journal::open(person.path(), "reader", person.now()).unwrap().journal;
    let (opens, signs) = (journal.secret("opens").unwrap().unwrap(), journal.secret("signs").unwrap().unwrap());
    let keys = drawwell_core::share::sealed::own_keys::OwnKeys::read(&opens, &signs).unwrap();
    (opens, keys.sealing_key().unwrap())
}

#[test]
fn a_plan_for_another_family_is_refused() {
    let (mut person, mut desk) = acquainted();
    let plan = plan_of(&mut desk, PLAN);
    let plain = open(&plan, &OpenWith::Keys(vec![family_keys(&mut person).0])).unwrap();
    let mut other = Person::welcomed("2026-05-25T04:06:33+02:00", "Europe/Berlin").unwrap();
    let card = desk.caseload.own_card().unwrap();
    shares(&mut other, &card).unwrap();
    assert_eq!(other.import_file(&plan).unwrap_err().key, "sealed-other-key");
    assert_eq!(other.import_file(&plain).unwrap_err().key, "plan-for-another", "nor where it was opened for them");
}

#[test]
fn a_plan_is_good_until_its_day_and_not_after() {
    for (days, refused) in [(10, false), (11, true)] {
        let (mut person, mut desk) = acquainted();
        let plan = plan_of(&mut desk, &[("plan", &[("good_until", "2026-06-04"), ("plan_words", "Rest.")])]);
        person.wait(Span::hours(24 * days)).unwrap();
        let came = person.import_file(&plan);
        assert_eq!(came.is_err(), refused, "{days}");
        if let Err(trouble) = came {
            assert_eq!(
                (trouble.key, &trouble.needs[0].1),
                ("plan-out-of-date", &Detail::Date(chrono::NaiveDate::from_ymd_opt(2026, 6, 4).unwrap()))
            );
        }
    }
}

#[test]
fn an_older_plan_after_a_newer_one_is_refused() {
    let (mut person, mut desk) = acquainted();
    let older = plan_of(&mut desk, PLAN);
    desk.clock.unix_milliseconds += 60_000;
    let newer = plan_of(&mut desk, PLAN);
    person.wait(Span::minutes(5)).unwrap();
    person.import_file(&newer).unwrap();
    assert_eq!(person.import_file(&older).unwrap_err().key, "plan-older");
}

#[test]
fn a_consultant_who_was_taken_out_is_a_stranger() {
    let (mut person, mut desk) = acquainted();
    let plan = plan_of(&mut desk, PLAN);
    let id = fact(&mut person, "consultant")[0]["id"].as_str().unwrap().to_owned();
    person.send(Event::Remove { id }).unwrap();
    assert_eq!(person.import_file(&plan).unwrap_err().key, "signed-by-a-stranger");
}

#[test]
fn a_plan_that_says_nothing_or_what_no_phone_could_take_is_not_sent() {
    let (_, mut desk) = acquainted();
    let mut refused = |parts: Parts<'_>| {
        let plan = desk.writes_a_plan(parts).unwrap();
        desk.takes(Event::Export { what: Export::Plan { plan } }).unwrap_err()
    };
    assert_eq!(refused(&[]).key, "plan-empty");
    let trouble = refused(&[("words", &[("words", "Well.")]), ("aim", &[])]);
    assert_eq!((trouble.key, &trouble.needs[0].1), ("plan-part-empty", &Detail::Count(2)));
    let trouble = refused(&[("rule", &[("rule", "breast_fever")])]);
    assert_eq!((trouble.key, &trouble.needs[0].1), ("plan-part-empty", &Detail::Count(1)));
    for (rule, key) in [("milk_a_day", "bad-rule"), ("look_after_gap", "bad-rule")] {
        let trouble = desk.writes_a_plan(&[("rule", &[("rule", rule)])]).unwrap_err();
        assert_eq!(trouble.key, key, "{rule}");
    }
}

/// What a desk does not let out, another program could have signed.
#[test]
fn a_plan_that_sets_what_is_no_rule_of_a_family_is_refused_whole() {
    let read = |rule: &str, value: &str| {
        let header = r#"{"drawwell":"plan","version":1,"plan":"d-1","family":"a-1","from":"Ada","made":{"at":"2026-05-25T04:06:00+02:00","zone":"Europe/Berlin"}}"#;
        let plan = r#"{"fact":"plan","id":"plan-d-1","plan_words":"Rest."}"#;
        let part = format!(
            r#"{{"fact":"plan_part","id":"plan-d-1-1","plan":"plan-d-1","plan_part":"rule","rule":"{rule}"{value}}}"#
        );
        drawwell_core::share::plan::read(&format!("{header}\n{plan}\n{part}\n")).map(|read| read.parts.len())
    };
    assert_eq!(read("breast_fever", r#","rule_value":38.3"#), Ok(1));
    for (rule, value) in [
        ("milk_a_day", r#","rule_value":3"#),
        ("look_after_gap", r#","rule_value":36"#),
        ("breast_fever", r#","rule_value":55"#),
        ("breast_fever", ""),
    ] {
        assert_eq!(read(rule, value).unwrap_err().key, "plan-rule", "{rule} {value}");
    }
}
