//! A session that is over already, the questions after the first screen, and where an act can be undone.

use drawwell_core::screen::shapes::{Event, Part, Place, Screen, StartingQuestion};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;
use serde_json::json;

fn person() -> Person {
    Person::welcomed("2026-03-01T13:00:00+01:00", "Europe/Berlin").unwrap()
}

/// Six gestures: that it was, when it ended, how long, left, right, done. Nothing is typed.
#[test]
fn a_session_that_is_over_costs_six_taps() {
    let mut person = person();
    person.press("just-pumped").unwrap();
    person.press("ended-30").unwrap();
    person.press("lasted-20").unwrap();
    person.draws(Part::Left, 0.5).unwrap();
    person.draws(Part::Right, 0.25).unwrap();
    person.press("amounts-done").unwrap();
    assert_eq!(person.taps, 6);
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    let session = person.only("session").unwrap();
    assert_eq!(session["started"]["at"], "2026-03-01T12:10:00.000+01:00");
    assert_eq!(session["ended"]["at"], "2026-03-01T12:30:00.000+01:00");
    assert_eq!(session["amount_left"]["value"], json!(60.0));
    assert_eq!(session["amount_right"]["value"], json!(30.0));
    let Screen::Ready { ready, .. } = person.screen().unwrap() else { panic!() };
    assert_eq!(ready.figure, "30 min");
    assert_eq!(ready.today.detail, "90 mL · One session");
}

/// A length that nobody knows is none: the end is kept, and nothing is running.
#[test]
fn a_length_that_is_not_known_is_not_made_up() {
    let mut person = person();
    person.press("just-pumped").unwrap();
    person.press("ended-15").unwrap();
    person.press("lasted-unknown").unwrap();
    person.press("amounts-later").unwrap();
    let session = person.only("session").unwrap();
    assert_eq!(session["started"]["at"], "2026-03-01T12:45:00.000+01:00");
    assert!(session.get("ended").is_none(), "{session}");
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }), "nothing runs");
    person.press("place-day").unwrap();
    assert!(person.reads().unwrap().contains("length not known"), "{}", person.reads().unwrap());
}

/// It is logged as the next session is set up, and the page says how.
#[test]
fn it_is_logged_as_the_page_says() {
    let mut person = person();
    person.press("next_sides-left").unwrap();
    person.press("just-pumped").unwrap();
    assert_eq!(person.frame().unwrap().subtitle, "Left · Electric pump");
    person.press("ended-0").unwrap();
    person.press("lasted-10").unwrap();
    let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!() };
    assert_eq!(amounts.columns.iter().map(|column| column.column.part).collect::<Vec<_>>(), [Part::Left]);
    person.press("undo").unwrap();
    assert!(person.only("session").is_err(), "one undo takes it back whole");
}

/// At the breast nothing is collected, so nothing is asked.
#[test]
fn at_the_breast_no_amount_is_asked_for() {
    let mut person = person();
    person.press("next_method-at_breast").unwrap();
    person.press("just-pumped").unwrap();
    person.press("ended-0").unwrap();
    person.press("lasted-15").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
}

/// The first notice leads to the amounts that are missing, drawn and not typed.
#[test]
fn a_session_that_lacks_an_amount_opens_where_it_is_drawn() {
    let mut person = person();
    person.press("start").unwrap();
    person.wait(Span::minutes(15)).unwrap();
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
    person.press("open-lacking").unwrap();
    person.draws(Part::Left, 0.5).unwrap();
    person.draws(Part::Right, 0.5).unwrap();
    person.press("amounts-done").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    assert_eq!(person.find("open-lacking").unwrap(), None);
}

/// A step goes to the next mark of what the unit fits, a held one by its finest.
#[test]
fn steps_fit_the_unit_and_are_fine_while_held() {
    for (unit, first, more, less, fine) in
        [("mL", "62", "65 mL", "60 mL", "63 mL"), ("[foz_us]", "2.1", "2.25 fl oz", "2 fl oz", "2.15 fl oz")]
    {
        let mut person = person();
        let settings = ("settings".to_owned(), "volume_unit".to_owned(), unit.to_owned());
        person.send(Event::Enter { id: settings.0, field: settings.1, typed: settings.2 }).unwrap();
        person.press("place-now").unwrap();
        person.press("just-pumped").unwrap();
        person.press("ended-0").unwrap();
        person.press("lasted-10").unwrap();
        let typed = |person: &mut Person, figure: &str| {
            let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!() };
            let row = amounts.columns[0].typing.clone();
            person.send(Event::Enter { id: row.id, field: row.field, typed: figure.to_owned() }).unwrap();
        };
        let reads = |person: &Person| {
            let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!() };
            amounts.columns[0].column.text.clone()
        };
        for (key, after) in [("amount-left-more", more), ("amount-left-less", less), ("amount-left-more-fine", fine)] {
            typed(&mut person, first);
            person.press(key).unwrap();
            assert_eq!(reads(&person), after, "{key} from {first}");
        }
    }
}

/// Questions may be answered or skipped: what is skipped is not written.
#[test]
fn what_is_asked_after_the_first_screen_can_be_skipped() {
    let mut person = Person::at("2026-03-01T13:00:00+01:00", "Europe/Berlin").unwrap();
    person.press("begin").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Question { .. }));
    for _ in 0..3 {
        person.press("skip").unwrap();
    }
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    assert!(person.only("child").is_err());
    let record = person.record().unwrap();
    assert!(!record.contains("volume_unit") && !record.contains("sessions_a_day"), "{record}");
}

#[test]
fn what_is_answered_after_the_first_screen_is_kept_and_each_leads_on() {
    let mut person = Person::at("2026-03-01T13:00:00+01:00", "Europe/Berlin").unwrap();
    person.press("begin").unwrap();
    person.press("answer-[foz_us]").unwrap();
    person.press("answer-3").unwrap();
    person.press("answer-8").unwrap();
    assert!(matches!(person.screen().unwrap(), Screen::Ready { .. }));
    assert_eq!(person.only("settings").unwrap()["volume_unit"], "[foz_us]");
    assert_eq!(person.only("child").unwrap()["birth"], "2026-02-26");
    assert_eq!(person.only("rhythm").unwrap()["sessions_a_day"], 8);
}

/// An answer from elsewhere that is none is refused in words, and nothing is kept of it.
#[test]
fn an_answer_that_is_none_is_refused() {
    let mut person = Person::at("2026-03-01T13:00:00+01:00", "Europe/Berlin").unwrap();
    person.press("begin").unwrap();
    let before = person.record().unwrap();
    for (question, answer) in [
        (StartingQuestion::Units, "pint"),
        (StartingQuestion::Birth, "soon"),
        (StartingQuestion::SessionsADay, "900"),
        (StartingQuestion::SessionsADay, ""),
    ] {
        let trouble = person.send(Event::StartingAnswer { question, answer: answer.to_owned() }).unwrap_err();
        assert!(!trouble.field.is_empty(), "{trouble:?}");
    }
    assert!(person.send(Event::JustPumped { minutes_ago: 5, lasted_minutes: Some(u32::MAX) }).is_err());
    assert_eq!(person.record().unwrap(), before);
}

/// Elsewhere nobody would know what is taken back.
#[test]
fn undo_shows_where_the_act_happened() {
    let mut person = person();
    person.press("start").unwrap();
    assert!(person.find("undo").unwrap().is_some());
    person.press("place-supply").unwrap();
    assert_eq!(person.find("undo").unwrap(), None);
    person.press("place-now").unwrap();
    assert!(person.find("undo").unwrap().is_some());
    person.killed_and_opened().unwrap();
    assert!(person.find("undo").unwrap().is_some(), "nothing is lost by a start");
    person.press("finish").unwrap();
    person.press("amounts-later").unwrap();
    person.open_day(0).unwrap();
    person.press("add-note").unwrap();
    assert!(person.find("undo").unwrap().is_some(), "where it led");
    person.press("back").unwrap();
    assert!(person.find("undo").unwrap().is_some(), "and where it began");
}

/// The arc on the face of a clock ends at the hour it is, and is as long as the rest was.
#[test]
fn a_rest_is_an_arc_that_ends_now() {
    for (hours, turns) in [(3, 0.25), (8, 2.0 / 3.0), (30, 1.0)] {
        let mut person = person();
        person.press("start").unwrap();
        person.press("finish").unwrap();
        person.press("amounts-later").unwrap();
        person.wait(Span::hours(hours)).unwrap();
        let Screen::Ready { ready, .. } = person.show(&Place::Now).unwrap() else { panic!() };
        let arc = ready.rests[0].arc.unwrap();
        assert!((arc.to - arc.from - turns).abs() < 1e-3, "{hours} h: {arc:?}");
        let hour = (13 + hours) % 12;
        assert!((arc.to - 1.0 - hour as f32 / 12.0).abs() < 1e-3, "{hours} h: {arc:?}");
    }
}

/// Where nobody chose, the host's region says how things are read; what was chosen goes before it,
/// and neither is written down by itself.
#[test]
fn an_untouched_record_is_read_as_is_usual_where_the_host_is() {
    use drawwell_core::app::App;
    use drawwell_core::screen::shapes::{Clock, Opening};
    let clock = |milliseconds| Clock {
        unix_milliseconds: milliseconds,
        zone: "America/Chicago".to_owned(),
        offset_seconds: None,
    };
    let folder = tempfile::tempdir().unwrap();
    let open = |language: &str| {
        let opening = Opening { device: "thumb".to_owned(), language: language.to_owned(), look_around: false };
        App::open(folder.path().join("record.drawwell"), opening, &clock(1_770_000_000_000)).unwrap()
    };
    let started = |app: &mut App| {
        let Screen::Day { day, .. } = app.show(&Place::Day { days_back: 0 }, &clock(1_770_000_600_000)).unwrap() else {
            panic!()
        };
        (day.entries[0].time.clone(), day.entries[0].amount.clone())
    };
    let mut app = open("en-US");
    app.update(Event::Start, &clock(1_770_000_000_000)).unwrap();
    app.update(Event::Finish, &clock(1_770_000_600_000)).unwrap();
    let Screen::Amounts { amounts, .. } = app.here(&clock(1_770_000_600_000)).unwrap() else { panic!() };
    assert_eq!(amounts.columns[0].unit, "[foz_us]");
    for (part, typed) in [(Part::Left, "2"), (Part::Right, "1")] {
        let event = Event::DrawAmount {
            session: amounts.session.clone(),
            part,
            typed: typed.to_owned(),
            unit: "[foz_us]".to_owned(),
        };
        app.update(event, &clock(1_770_000_600_000)).unwrap();
    }
    assert_eq!(started(&mut app), ("8:40 pm".to_owned(), "3 fl oz".to_owned()));
    drop(app);
    assert_eq!(started(&mut open("en-US-u-hc-h23")).0, "20:40");
    assert_eq!(started(&mut open("de-DE")), ("20:40".to_owned(), "89 mL".to_owned()), "nothing of it was written down");
    let chosen = Event::Enter { id: "settings".to_owned(), field: "volume_unit".to_owned(), typed: "mL".to_owned() };
    open("de-DE").update(chosen, &clock(1_770_000_600_000)).unwrap();
    assert_eq!(started(&mut open("en-US")).1, "89 mL", "what was chosen goes before the region");
}

/// What the form shows as chosen where nobody chose is what things are read in.
#[test]
fn an_untouched_settings_form_shows_what_holds() {
    use drawwell_core::app::App;
    use drawwell_core::screen::shapes::{Clock, Opening};
    let clock = Clock { unix_milliseconds: 1_770_000_000_000, zone: "UTC".to_owned(), offset_seconds: None };
    let chosen = |language: &str| {
        let folder = tempfile::tempdir().unwrap();
        let opening = Opening { device: "thumb".to_owned(), language: language.to_owned(), look_around: false };
        let mut app = App::open(folder.path().join("record.drawwell"), opening, &clock).unwrap();
        let Screen::Form { form, .. } = app.show(&Place::Entry { id: "settings".to_owned() }, &clock).unwrap() else {
            panic!("a form")
        };
        let rows = form.groups.into_iter().flat_map(|group| group.rows);
        let options = rows.flat_map(|row| row.options).filter(|option| option.chosen).map(|option| option.key);
        options.filter(|key| key.contains("_unit-") || key.starts_with("hour_clock")).collect::<Vec<_>>()
    };
    let metric = ["hour_clock-24", "volume_unit-mL", "vacuum_unit-mm[Hg]", "temperature_unit-Cel", "mass_unit-g"];
    assert_eq!(chosen("de-DE"), metric);
    let customary =
        ["hour_clock-12", "volume_unit-[foz_us]", "vacuum_unit-mm[Hg]", "temperature_unit-[degF]", "mass_unit-[lb_av]"];
    assert_eq!(chosen("en-US"), customary);
}
