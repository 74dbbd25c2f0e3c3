//! A consultant's day: files that come, who needs a look first, a family read, and removed.

use drawwell_core::record::Kind;
use drawwell_core::screen::shapes::{
    CaseloadScreen, DeskEvent, Effect, Event, Frame, ListRow, ListScreen, Place, Screen, Secret, Weight,
};
use drawwell_core::share::sealed::card::Card;
use drawwell_core::time::{Moment, Span};
use drawwell_core::trouble::Detail;
use drawwell_tests::person::Person;
use drawwell_tests::visiting::{shares, takes, Desk};
use drawwell_tests::written::Written;

/// A family that began at its own time, as each has a device of its own in life.
fn family(name: &str) -> Person {
    let second = name.bytes().map(u32::from).sum::<u32>() % 60;
    let mut person = Person::welcomed(&format!("2026-05-25T04:06:{second:02}+02:00"), "Europe/Berlin").unwrap();
    let event = Event::Enter { id: "settings".into(), field: "sheet_name".into(), typed: name.into() };
    person.send(event).unwrap();
    person
}

fn desk() -> Desk {
    Desk::beside(&family("Her own")).unwrap()
}

/// Brings a file in at the present of the family it is from.
fn brings(desk: &mut Desk, person: &Person, file: &[u8]) -> CaseloadScreen {
    desk.clock = person.clock().clone();
    desk.import_file(file).unwrap()
}

fn rows(desk: &mut Desk) -> Vec<(String, String, String)> {
    desk.families().unwrap()
}

/// The journals of families, and what lies beside them.
fn files_of(desk: &Desk) -> Vec<String> {
    let folder = std::fs::read_dir(desk.folder().join("families")).unwrap();
    let mut names: Vec<String> =
        folder.flatten().map(|entry| entry.file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

fn sign(person: &mut Person, key: &str) {
    person.send(Event::Add { kind: Kind::Sign.name().to_owned(), days_back: 0 }).unwrap();
    person.press(key).unwrap();
}

#[test]
fn an_empty_desk_says_how_to_begin_and_hands_its_card_on() {
    let mut desk = desk();
    assert_eq!(rows(&mut desk), []);
    let screen = desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::OwnCard } }).unwrap();
    let Screen::Card { card, frame } = screen.beside else { panic!("{:?}", screen.beside) };
    assert!(frame.places.is_empty(), "a desk has no places at its foot");
    let read = Card::read(&card.line).unwrap();
    assert_eq!(card.words, read.words().join(" "));
    assert_eq!(card.matrix.dark.len() as u32, card.matrix.size * card.matrix.size);
    desk.opened_again().unwrap();
    assert_eq!(Card::read(&desk.caseload.own_card().unwrap()).unwrap(), read, "the keys stay");
}

#[test]
fn who_needs_a_look_stands_first_with_the_reason_in_words() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let (mut quiet, mut ill, mut faint) = (family("Quiet"), family("Ill"), family("Faint"));
    sign(&mut ill, "shivering-yes");
    sign(&mut faint, "fainting-yes");
    for person in [&mut quiet, &mut ill, &mut faint] {
        let file = shares(person, &card).unwrap();
        brings(&mut desk, person, &file);
    }
    let families = rows(&mut desk);
    let titles: Vec<&str> = families.iter().map(|row| row.0.as_str()).collect();
    assert_eq!(titles, ["Faint", "Ill", "Quiet"]);
    assert!(families[0].1.starts_with("Emergency: fainting"), "{}", families[0].1);
    assert!(families[1].1.starts_with("Today: shivering"), "{}", families[1].1);
    assert!(families[2].1.starts_with("25 May"), "{}", families[2].1);
}

/// The list as it is drawn, with what it is narrowed by.
fn seen(screen: &CaseloadScreen) -> (&Frame, &ListScreen, Vec<&str>) {
    let Screen::List { frame, list } = &screen.families else { panic!("{:?}", screen.families) };
    let names = list.groups.iter().flat_map(|group| &group.rows).map(|row| row.title.as_str()).collect();
    (frame, list, names)
}

#[test]
fn what_cannot_wait_weighs_most_and_as_shared_is_said_once_over_the_list() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let (mut ill, mut sore, mut quiet) = (family("Ill"), family("Faint"), family("Quiet"));
    sign(&mut ill, "shivering-yes");
    sign(&mut sore, "nipple_damage-left");
    for person in [&mut ill, &mut sore, &mut quiet] {
        let file = shares(person, &card).unwrap();
        brings(&mut desk, person, &file);
    }
    let clock = desk.clock.clone();
    let screen = desk.caseload.here(&clock).unwrap();
    let (_, list, names) = seen(&screen);
    assert_eq!(names, ["Ill", "Faint", "Quiet"]);
    let rows: Vec<&ListRow> = list.groups.iter().flat_map(|group| &group.rows).collect();
    let weights: Vec<Weight> = rows.iter().map(|row| row.open.as_ref().unwrap().weight).collect();
    assert_eq!(weights, [Weight::Main, Weight::Quiet, Weight::Quiet]);
    assert_eq!(list.intro, "Each as last shared:");
    assert!(rows.iter().all(|row| row.aside.starts_with("25 May, 04:06")), "{rows:?}");
    assert!(rows.iter().all(|row| row.spoken.contains("As shared 25 May")), "a voice hears one row at a time");
    assert!(screen.finding.is_empty(), "three are seen at a glance");
}

#[test]
fn many_families_are_found_by_a_part_of_their_name_and_by_why_they_need_a_look() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    for name in ["Marigold Wren", "Noor", "Pell", "Ida", "Wim"] {
        let mut person = family(name);
        if name == "Pell" || name == "Wim" {
            sign(&mut person, "nipple_damage-left");
        }
        let file = shares(&mut person, &card).unwrap();
        brings(&mut desk, &person, &file);
    }
    let clock = desk.clock.clone();
    let screen = desk.caseload.here(&clock).unwrap();
    let [by_name, by_reason] = screen.finding.as_slice() else { panic!("{:?}", screen.finding) };
    let options: Vec<&str> = by_reason.options.iter().map(|option| option.label.as_str()).collect();
    assert_eq!(options, ["All", "Cautions"], "only reasons that are there");
    let cautions = by_reason.options[1].event.clone();
    let typed =
        |typed: &str| Event::Enter { id: by_name.id.clone(), field: by_name.field.clone(), typed: typed.to_owned() };
    let screen = desk.send(typed(" wren ")).unwrap();
    let (frame, _, names) = seen(&screen);
    assert_eq!((names, frame.subtitle.as_str()), (vec!["Marigold Wren"], "1 of 5 families"));
    let screen = desk.send(typed("w")).unwrap();
    assert_eq!(seen(&screen).2, ["Wim", "Marigold Wren"], "in the order of their reasons");
    let screen = desk.send(cautions.clone()).unwrap();
    assert_eq!(seen(&screen).2, ["Wim"]);
    let screen = desk.send(typed("noor")).unwrap();
    let (frame, list, names) = seen(&screen);
    assert_eq!((names.len(), frame.subtitle.as_str()), (0, "0 of 5 families"));
    assert!(list.groups.last().unwrap().empty.starts_with("No family fits"));
    let clear = screen.finding[0].clear.clone().unwrap();
    let screen = desk.send(clear.event).unwrap();
    let mut names = seen(&screen).2;
    names.sort_unstable();
    assert_eq!(names, ["Pell", "Wim"]);
    let screen = desk.send(screen.finding[1].options[0].event.clone()).unwrap();
    assert_eq!(seen(&screen).2.len(), 5);
    desk.send(cautions).unwrap();
    desk.opened_again().unwrap();
    let clock = desk.clock.clone();
    let screen = desk.caseload.here(&clock).unwrap();
    assert_eq!(seen(&screen).2.len(), 5, "nobody is hidden when the program opens");
}

/// Whatever the list is narrowed to: what can't wait is seen, also where it comes in meanwhile.
#[test]
fn a_family_that_cannot_wait_is_never_hidden() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    for name in ["Marigold Wren", "Noor", "Pell", "Ida"] {
        let mut person = family(name);
        let file = shares(&mut person, &card).unwrap();
        brings(&mut desk, &person, &file);
    }
    let mut faint = family("Faint");
    let file = shares(&mut faint, &card).unwrap();
    brings(&mut desk, &faint, &file);
    let name = Event::Enter { id: "find-family".to_owned(), field: "find_name".to_owned(), typed: "noor".to_owned() };
    assert_eq!(seen(&desk.send(name).unwrap()).2, ["Noor"]);
    sign(&mut faint, "fainting-yes");
    let file = shares(&mut faint, &card).unwrap();
    let screen = brings(&mut desk, &faint, &file);
    assert_eq!(seen(&screen).2, ["Faint", "Noor"]);
    let only = Event::OnDesk { event: DeskEvent::OnlyReason { reason: "visit".to_owned() } };
    assert_eq!(seen(&desk.send(only).unwrap()).2, ["Faint"]);
}

#[test]
fn a_family_opens_to_the_same_screens_and_only_to_be_read() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let mut person = family("Pell");
    let mut written = Written::within(drawwell_core::time::Zone::named("Europe/Berlin").unwrap());
    written.both("one", person.now().minus(Span::hours(2)), 60.0, 50.0);
    person.import_file(&written.file()).unwrap();
    let file = shares(&mut person, &card).unwrap();
    // A week goes by before the consultant looks: the record is seen as it was shared.
    desk.clock = person.clock().clone();
    desk.clock.unix_milliseconds += Span::hours(168).in_milliseconds();
    let screen = desk.import_file(&file).unwrap();
    let Screen::Supply { frame, .. } = &screen.beside else { panic!("{:?}", screen.beside) };
    assert_eq!(frame.places.len(), 5);
    assert_eq!(frame.notices.iter().map(|n| n.key.as_str()).collect::<Vec<_>>(), ["as-of"]);
    let screen = desk.send(Event::Go { place: Place::Now }).unwrap();
    let Screen::Ready { ready, .. } = &screen.beside else { panic!("{:?}", screen.beside) };
    assert_eq!(ready.figure, "2 h", "as of when it was shared");
    assert!(!ready.start.open, "nothing can be started in it");
    let refused = desk.send(Event::Start).unwrap_err();
    assert_eq!(refused.key, "trouble-only-read");
    let Screen::Ready { .. } = desk.send(Event::Go { place: Place::Now }).unwrap().beside else { panic!() };
}

#[test]
fn the_same_file_twice_and_an_older_after_a_newer_change_nothing_wrongly() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let mut person = family("Pell");
    let older = shares(&mut person, &card).unwrap();
    person.wait(Span::hours(3)).unwrap();
    sign(&mut person, "shivering-yes");
    let newer = shares(&mut person, &card).unwrap();
    desk.clock = person.clock().clone();
    for file in [&newer, &newer, &older] {
        desk.import_file(file).unwrap();
        let families = rows(&mut desk);
        assert_eq!(families.len(), 1);
        assert!(families[0].1.starts_with("Today: shivering\n25 May, 07:06"), "{}", families[0].1);
    }
}

#[test]
fn a_record_in_the_exchange_form_makes_a_family_and_other_files_are_refused_and_leave_nothing() {
    let mut desk = desk();
    let mut person = Person::of_the_invented_family().unwrap();
    let record = person.record().unwrap();
    brings(&mut desk, &person, record.as_bytes());
    assert_eq!(rows(&mut desk).len(), 1);
    let files = files_of(&desk);
    for (file, key) in [
        (&b"hello"[..], "family-file-not-one"),
        (b"{\"resourceType\":\"Bundle\"}", "family-file-not-one"),
        (b"", "family-file-not-one"),
        (b"\xff\xfe\x00", "family-file-not-one"),
        (b"{\"drawwell\":\"family\",\"version\":99}", "trouble-newer-file"),
        (b"{\"drawwell\":\"family\",\"version\":1,\"family\":\"../../x\"}", "family-file-not-one"),
    ] {
        let refused = desk.import_file(file).unwrap_err();
        assert_eq!(refused.key, key, "{}", String::from_utf8_lossy(file));
    }
    assert_eq!(files_of(&desk), files);
    assert_eq!(rows(&mut desk).len(), 1);
}

/// Such a record says no moment at which it was shared: it is as of what was written down last,
/// by the clock where that was, and not of a visit that was still to come.
#[test]
fn a_record_in_the_exchange_form_is_as_of_what_was_written_down_last() {
    let mut desk = desk();
    let record = Person::of_the_invented_family().unwrap().record().unwrap();
    assert!(record.contains(r#""fact":"visit","id":"visit-2026-08-17""#), "a visit three days ahead");
    desk.clock.unix_milliseconds =
        Moment::from_parts("2026-11-26T12:00:00Z", "UTC").unwrap().instant().unix_milliseconds();
    desk.clock.zone = "America/New_York".to_owned();
    let screen = desk.import_file(record.as_bytes()).unwrap();
    let said = rows(&mut desk)[0].1.clone();
    let told = screen.beside.frame().notices.iter().find(|n| n.text.starts_with("As shared")).unwrap();
    assert_eq!(told.text, "As shared Friday 14 August, 09:59. You can read it, not change it.");
    assert_eq!(said, "14 August, 09:59");
}

#[test]
fn a_file_that_is_cut_in_its_middle_says_its_line_and_changes_nothing() {
    let mut desk = desk();
    let key = desk.caseload.own_card().map(|card| Card::read(&card).unwrap().sealing_key).unwrap();
    let header = r#"{"drawwell":"family","version":1,"family":"a-1","made":{"at":"2026-05-25T04:06:00+02:00","zone":"Europe/Berlin"},"sealing_key":"KEY","left_out":[]}"#;
    let header = header.replace("KEY", &key);
    let change = r#"{"device":"a","number":1,"stamp":65536,"subject":"n","field":"kind","value":"note","replaces":[]}"#;
    let refused = desk.import_file(format!("{header}\n{change}\n{}", &change[..40]).as_bytes()).unwrap_err();
    assert_eq!((refused.key, refused.needs), ("family-file-line", vec![("line", Detail::Count(3))]));
    assert_eq!(files_of(&desk), [""; 0]);
    desk.import_file(format!("{header}\n{change}\n").as_bytes()).unwrap();
    assert_eq!(rows(&mut desk).len(), 1);
}

#[test]
fn a_family_can_be_removed_for_good_and_nothing_of_it_stays() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let (mut one, mut two) = (family("Marigold Wren"), family("Two"));
    two.wait(Span::hours(1)).unwrap();
    let files = [shares(&mut one, &card).unwrap(), shares(&mut two, &card).unwrap()];
    desk.clock = two.clock().clone();
    for file in &files {
        desk.import_file(file).unwrap();
    }
    let (_, _, family) = rows(&mut desk).into_iter().find(|row| row.0 == "Marigold Wren").unwrap();
    desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::CaseFamily { id: family.clone() } } })
        .unwrap();
    let note = Event::Enter { id: family.clone(), field: "note".into(), typed: "Tired, and doing well.".into() };
    desk.send(note).unwrap();
    desk.send(Event::OnDesk { event: DeskEvent::OpenFamily { family: family.clone() } }).unwrap();
    // Its page says first what goes and what remains, and nothing is gone by then.
    let screen = desk
        .send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Removing { id: family.clone() } } })
        .unwrap();
    let Screen::Findings { findings, .. } = screen.beside else { panic!("{:?}", screen.beside) };
    assert_eq!(findings.sections.iter().map(|s| s.title.as_str()).collect::<Vec<_>>(), ["What goes", "What stays"]);
    assert_eq!(rows(&mut desk).len(), 2);
    desk.send(findings.actions[0].event.clone()).unwrap();
    assert_eq!(rows(&mut desk).iter().map(|row| row.0.as_str()).collect::<Vec<_>>(), ["Two"]);
    assert_eq!(files_of(&desk).iter().filter(|name| name.ends_with(".drawwell")).count(), 1);
    assert_eq!(
        desk.send(Event::OnDesk { event: DeskEvent::OpenFamily { family } }).unwrap_err().key,
        "trouble-no-such-record"
    );
    desk.opened_again().unwrap();
    for entry in std::fs::read_dir(desk.folder()).unwrap().flatten().filter(|e| e.path().is_file()) {
        let bytes = std::fs::read(entry.path()).unwrap();
        let held = |text: &str| bytes.windows(text.len()).any(|part| part == text.as_bytes());
        assert!(!held("Marigold") && !held("doing well"), "{:?}", entry.file_name());
    }
    // And it may come back as if it had never been here.
    desk.import_file(&files[0]).unwrap();
    assert_eq!(rows(&mut desk).len(), 2);
}

#[test]
fn a_visit_that_is_due_is_a_reason() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let mut person = family("Pell");
    let file = shares(&mut person, &card).unwrap();
    brings(&mut desk, &person, &file);
    let family = rows(&mut desk)[0].2.clone();
    let mut said = |date: &str| {
        desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::CaseFamily { id: family.clone() } } })
            .unwrap();
        desk.send(Event::Enter { id: family.clone(), field: "next_visit".into(), typed: date.into() }).unwrap();
        rows(&mut desk)[0].1.lines().next().unwrap().to_owned()
    };
    assert_eq!(said("2026-05-25"), "Visit today");
    assert_eq!(said("2026-05-26"), "Visit tomorrow");
    assert!(said("2026-05-27").starts_with("25 May"));
    assert_eq!(said("2026-05-20"), "Visit was due 20 May");
}

/// What the desk keeps once is used for every family: a pump of the same name takes its
/// maker's range from there, and what the family says itself goes before.
#[test]
fn a_pump_takes_its_makers_range_from_the_desk() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let mut person = family("Pell");
    let kit = r#"{"fact":"pump","id":"p","name":"Marl","grade":"hospital"}
{"fact":"gauge","id":"g","name":"Bag","span":{"value":450,"unit":"mm[Hg]"},"accuracy_class":"0.1"}
{"fact":"check","id":"c","at":{"at":"2026-05-24T10:00:00+02:00","zone":"Europe/Berlin"},"pump":"p","gauge":"g","readings":{"000":{"at":"2026-05-24T10:00:00+02:00","zone":"Europe/Berlin","side":"left","vacuum":{"value":240,"unit":"mm[Hg]"}},"001":{"at":"2026-05-24T10:01:00+02:00","zone":"Europe/Berlin","side":"left","vacuum":{"value":240,"unit":"mm[Hg]"}},"002":{"at":"2026-05-24T10:02:00+02:00","zone":"Europe/Berlin","side":"left","vacuum":{"value":240,"unit":"mm[Hg]"}}}}
"#;
    person.import_file(kit.as_bytes()).unwrap();
    let file = shares(&mut person, &card).unwrap();
    brings(&mut desk, &person, &file);
    let detail = rows(&mut desk)[0].1.clone();
    assert!(detail.contains("Marl pulls"), "below what a hospital grade reaches: {detail}");
    // Far below it is a caution, and still named as the family names it.
    let weak = kit.replace("\"value\":240", "\"value\":170").replace("\"id\":\"p\"", "\"id\":\"q\"");
    let weak = weak.replace("\"pump\":\"p\"", "\"pump\":\"q\"").replace("\"id\":\"c\"", "\"id\":\"d\"");
    let mut other = family("Noor");
    other.import_file(weak.replace("Marl", "Loam").as_bytes()).unwrap();
    let weak_file = shares(&mut other, &card).unwrap();
    brings(&mut desk, &other, &weak_file);
    let first = rows(&mut desk)[0].1.clone();
    assert!(first.starts_with("For you: Loam pulls far below its range"), "{first}");
    let case = rows(&mut desk)[0].2.clone();
    desk.send(Event::OnDesk { event: DeskEvent::RemoveFamily { family: case } }).unwrap();
    desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Desk } }).unwrap();
    let screen = desk.send(Event::Add { kind: "pump".into(), days_back: 0 }).unwrap();
    let Screen::Form { form, .. } = screen.beside else { panic!("{:?}", screen.beside) };
    for (field, typed) in [("name", "marl"), ("maximum_vacuum_low", "230"), ("maximum_vacuum_high", "250")] {
        desk.send(Event::Enter { id: form.id.clone(), field: field.into(), typed: typed.into() }).unwrap();
    }
    let detail = rows(&mut desk)[0].1.clone();
    assert!(!detail.contains("Marl pulls"), "the maker's own range: {detail}");
}

/// What comes by itself, from a folder that is watched, leaves open what is open.
#[test]
fn a_file_that_comes_by_itself_leaves_open_what_is_open() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let (mut one, mut two) = (family("One"), family("Two"));
    let files = [shares(&mut one, &card).unwrap(), shares(&mut two, &card).unwrap()];
    desk.clock = two.clock().clone();
    desk.import_file(&files[0]).unwrap();
    desk.send(Event::Go { place: Place::Kit }).unwrap();
    let mut takes = |file: &[u8]| {
        let clock = desk.clock.clone();
        desk.caseload.import_quietly(&mut &*file, &clock).unwrap().caseload
    };
    let screen = takes(&files[1]);
    assert!(matches!(screen.beside, Screen::List { .. }), "the kit of the first: {:?}", screen.beside);
    // The same family anew is what is open, with what is new in it; and a folder holds other things too.
    one.wait(Span::hours(1)).unwrap();
    for file in [&shares(&mut one, &card).unwrap()[..], b"a letter"] {
        let screen = takes(file);
        let Screen::List { list, .. } = screen.families else { panic!("{:?}", screen.families) };
        let rows: Vec<(String, bool)> = list
            .groups
            .into_iter()
            .flat_map(|group| group.rows)
            .map(|row| (row.title, row.open.unwrap().chosen))
            .collect();
        assert_eq!(rows.len(), 2);
        assert!(rows.contains(&("One".to_owned(), true)), "{rows:?}");
    }
}

/// Both limits of the list are rules of the desk, and no family's.
#[test]
fn when_a_family_needs_a_look_is_set_on_the_desk() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let mut person = family("Pell");
    let mut written = Written::within(drawwell_core::time::Zone::named("Europe/Berlin").unwrap());
    written.both("one", person.now().minus(Span::minutes(36 * 60 + 30)), 60.0, 50.0);
    person.import_file(&written.file()).unwrap();
    let file = shares(&mut person, &card).unwrap();
    brings(&mut desk, &person, &file);
    let first = |desk: &mut Desk| rows(desk)[0].1.lines().next().unwrap().to_owned();
    assert!(first(&mut desk).starts_with("Nothing logged since 23 May"), "{}", first(&mut desk));
    let case = rows(&mut desk)[0].2.clone();
    desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::CaseFamily { id: case.clone() } } }).unwrap();
    desk.send(Event::Enter { id: case, field: "next_visit".into(), typed: "2026-05-28".into() }).unwrap();
    let screen = desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Desk } }).unwrap();
    let Screen::List { list, .. } = screen.beside else { panic!("{:?}", screen.beside) };
    let rules = list.groups.iter().flat_map(|group| &group.rows).find(|row| row.title == "When a family needs a look");
    let screen = desk.send(rules.unwrap().open.clone().unwrap().event).unwrap();
    let Screen::Form { form, .. } = screen.beside else { panic!("{:?}", screen.beside) };
    let fields: Vec<&str> = form.groups.iter().flat_map(|g| &g.rows).map(|row| row.field.as_str()).collect();
    assert_eq!(fields, ["look_after_gap", "visit_ahead"], "what a family's record goes by is set there");
    let mut set = |field: &str, typed: &str| {
        desk.send(Event::Enter { id: form.id.clone(), field: field.into(), typed: typed.into() })
            .map(|_| first(&mut desk))
    };
    assert!(set("look_after_gap", "37").unwrap().starts_with("25 May"));
    assert!(set("look_after_gap", "36").unwrap().starts_with("Nothing logged"));
    assert!(set("look_after_gap", "48").unwrap().starts_with("25 May"));
    assert_eq!(set("visit_ahead", "3").unwrap(), "Visit on 28 May");
    assert!(set("visit_ahead", "2").unwrap().starts_with("25 May"));
    assert_eq!(set("visit_ahead", "15").unwrap_err().key, "bad-range");
    // And a family's own rules do not ask for them.
    let screen = person.show(&Place::Entry { id: "rules".into() }).unwrap();
    let Screen::Form { form, .. } = screen else { panic!("{screen:?}") };
    assert!(form.groups.iter().all(|group| group.key != "caseload-rules"));
}

/// A file with a passphrase that comes by itself waits: nobody is asked for words in the
/// middle of something else.
#[test]
fn files_with_a_passphrase_wait_until_they_are_asked_for() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let (mut open, mut one, mut two) = (family("Open"), family("One"), family("Two"));
    let file = shares(&mut open, &card).unwrap();
    brings(&mut desk, &open, &file);
    desk.send(Event::Go { place: Place::Kit }).unwrap();
    let sealed = |person: &mut Person, words: &str| {
        person.press("place-visit").unwrap();
        person.press("open-sharing").unwrap();
        let id = "seal-passphrase".to_owned();
        takes(person, Event::EnterSecret { id, secret: Secret { words: words.to_owned() } }).unwrap()
    };
    let files = [sealed(&mut one, "heron and barley"), sealed(&mut two, "alder and flints")];
    let clock = desk.clock.clone();
    let mut waits = Vec::new();
    for file in &files {
        let screen = desk.caseload.import_quietly(&mut file.as_slice(), &clock).unwrap().caseload;
        assert!(matches!(screen.beside, Screen::List { .. }), "what is open stays open");
        let Screen::List { list, .. } = screen.families else { panic!("{:?}", screen.families) };
        let action = list.groups.iter().flat_map(|group| &group.add).find(|a| a.key == "open-sealed").cloned();
        waits.push(action.unwrap());
    }
    assert_eq!(
        waits.iter().map(|a| a.label.as_str()).collect::<Vec<_>>(),
        ["One file needs its passphrase", "2 files need their passphrases"]
    );
    desk.send(waits.pop().unwrap().event).unwrap();
    let typed = |desk: &mut Desk, words: &str| {
        let id = "open-passphrase".to_owned();
        desk.send(Event::EnterSecret { id, secret: Secret { words: words.into() } })
    };
    assert!(typed(&mut desk, "heron and rye").is_err());
    typed(&mut desk, "heron and barley").unwrap();
    let mut names: Vec<String> = rows(&mut desk).into_iter().map(|row| row.0).collect();
    names.sort();
    assert_eq!(names, ["One", "Open"]);
    // The other can be left, and is asked for no more.
    desk.send(Event::OnDesk { event: DeskEvent::OpenDesk { place: Place::Sealed } }).unwrap();
    let screen = desk.send(Event::LeaveSealed).unwrap();
    let Screen::List { list, .. } = screen.families else { panic!("{:?}", screen.families) };
    assert!(list.groups.iter().flat_map(|group| &group.add).all(|a| a.key != "open-sealed"));
    assert_eq!(typed(&mut desk, "alder and flints").unwrap_err().key, "sealed-nothing-waits");
}

#[test]
fn the_menu_offers_files_and_a_folder_also_where_a_family_is_open() {
    let mut desk = desk();
    let card = desk.caseload.own_card().unwrap();
    let mut person = family("Pell");
    let file = shares(&mut person, &card).unwrap();
    brings(&mut desk, &person, &file);
    let clock = desk.clock.clone();
    let mut asks = |event: Event| desk.caseload.update(event, &clock).unwrap();
    assert!(matches!(asks(Event::PickRecord).effects.as_slice(), [Effect::PickFile { .. }]));
    assert_eq!(asks(Event::OnDesk { event: DeskEvent::WatchFolder }).effects, [Effect::PickFolder]);
    let menu = asks(Event::OnDesk { event: DeskEvent::FolderIs { name: "Inbox".to_owned() } }).caseload.menu;
    let leave =
        menu.actions.iter().find(|action| action.event == Event::OnDesk { event: DeskEvent::LeaveFolder }).unwrap();
    assert_eq!(leave.label, "Stop watching “Inbox”");
    assert_eq!(asks(Event::OnDesk { event: DeskEvent::LeaveFolder }).effects, [Effect::LeaveFolder]);
    let menu = asks(Event::OnDesk { event: DeskEvent::FolderIs { name: String::new() } }).caseload.menu;
    assert!(menu.actions.iter().any(|action| action.event == Event::OnDesk { event: DeskEvent::WatchFolder }));
}
