//! Milk that is kept: filled with one tap after a session, moved and given with one tap each, and
//! never said to be good for longer than the rules in force say.

use drawwell_core::screen::shapes::{Event, FindingsScreen, MilkDeed, Place, Screen};
use drawwell_core::time::Span;
use drawwell_tests::person::Person;

fn person() -> Person {
    Person::welcomed("2026-08-14T08:00:00+02:00", "Europe/Berlin").unwrap()
}

/// A session of ten minutes with so much in one bottle; the page of its amounts is open.
fn pumped(person: &mut Person, milliliters: u32) {
    person.press("place-now").unwrap();
    person.press("start").unwrap();
    person.wait(Span::minutes(10)).unwrap();
    person.press("finish").unwrap();
    person.press("amounts-together").unwrap();
    let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!("amounts") };
    let (id, typed) = (amounts.session.clone(), milliliters.to_string());
    person.send(Event::Enter { id, field: "amount_together".into(), typed }).unwrap();
}

fn kept(person: &mut Person) -> FindingsScreen {
    person.send(Event::Go { place: Place::Kept }).unwrap();
    shown(person)
}

fn shown(person: &Person) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("findings") };
    findings.clone()
}

/// The page of the bottle with this label.
fn open(person: &mut Person, label: &str) -> FindingsScreen {
    let page = kept(person);
    let row = page.sections.iter().flat_map(|section| &section.rows).find(|row| row.title.contains(label)).unwrap();
    person.send(row.open.as_ref().unwrap().event.clone()).unwrap();
    shown(person)
}

fn one_in_the_fridge() -> Person {
    let mut person = person();
    pumped(&mut person, 80);
    person.press("keep-fridge").unwrap();
    person.press("amounts-done").unwrap();
    person
}

#[test]
fn one_tap_after_a_session_keeps_all_of_it_in_one_bottle() {
    let mut person = person();
    pumped(&mut person, 80);
    assert!(person.reads().unwrap().contains("Keep in"));
    person.press("keep-fridge").unwrap();
    assert!(person.reads().unwrap().contains("Bottle 1"), "and it says where it is");
    assert!(person.find("keep-fridge").unwrap().is_none(), "nothing is left to keep");
    let container = person.only("container").unwrap();
    assert_eq!(container["amount"]["typed"], "80", "as it was typed");
    let page = kept(&mut person);
    assert_eq!((page.figure.as_str(), page.caption.as_str()), ("80 mL", "In one bottle."));
    person.send(Event::Undo).unwrap();
    assert_eq!(kept(&mut person).headline, "No kept milk");
}

/// Milk that was kept and given is not there to be kept again.
#[test]
fn milk_of_a_session_that_is_gone_is_not_offered_again() {
    let mut person = one_in_the_fridge();
    let session = person.only("session").unwrap()["id"].as_str().unwrap().to_owned();
    open(&mut person, "Bottle 1");
    person.press("give-all").unwrap();
    person.send(Event::Go { place: Place::Amounts { id: session.clone() } }).unwrap();
    assert!(person.find("keep-fridge").unwrap().is_none());
    assert!(person.send(Event::KeepMilk { session, kept_in: "fridge".into() }).is_err());
}

#[test]
fn what_is_not_known_cannot_be_kept_and_is_not_offered() {
    let mut person = person();
    person.press("start").unwrap();
    person.press("finish").unwrap();
    assert!(person.find("keep-fridge").unwrap().is_none());
    let Screen::Amounts { amounts, .. } = person.screen().unwrap() else { panic!("amounts") };
    let session = amounts.session.clone();
    assert!(person.send(Event::KeepMilk { session, kept_in: "fridge".into() }).is_err());
    assert!(person.only("container").is_err());
}

#[test]
fn the_next_session_of_the_day_can_be_poured_to_it_and_it_is_as_old_as_its_oldest() {
    let mut person = one_in_the_fridge();
    let before = person.only("container").unwrap();
    person.wait(Span::hours(3)).unwrap();
    pumped(&mut person, 45);
    person.press("keep-pour").unwrap();
    let after = person.only("container").unwrap();
    assert_eq!(after["amount"]["value"], 125.0);
    assert_eq!(after["at"], before["at"]);
    assert_eq!(after["sessions"].as_str().unwrap().split(' ').count(), 2);
}

#[test]
fn a_bottle_says_until_when_it_is_good_and_by_which_clock() {
    let mut person = one_in_the_fridge();
    let page = open(&mut person, "Bottle 1");
    assert_eq!(page.figure, "80 mL");
    assert!(page.caption.starts_with("Good until: ") && page.caption.ends_with("08:00"), "{}", page.caption);
    assert!(page.lines.iter().any(|line| line.contains("in the fridge")), "{:?}", page.lines);
    person.wait(Span::hours(97)).unwrap();
    let past = open(&mut person, "Bottle 1");
    assert!(past.caption.starts_with("Past its time since: "), "{}", past.caption);
    assert!(kept(&mut person).asks.iter().any(|ask| ask.text == "One bottle is past the time in the rules."));
}

#[test]
fn thawed_milk_is_not_frozen_again_and_why_is_said() {
    let mut person = one_in_the_fridge();
    open(&mut person, "Bottle 1");
    person.press("move-freezer").unwrap();
    assert!(shown(&person).caption.contains("Best by 14 February"), "{}", shown(&person).caption);
    person.wait(Span::hours(48)).unwrap();
    open(&mut person, "Bottle 1");
    person.press("milk-thawed").unwrap();
    assert!(person.find("move-freezer").unwrap().is_none());
    let container = person.only("container").unwrap()["id"].as_str().unwrap().to_owned();
    let again = Event::Milk { container, deed: MilkDeed::Moved { kept_in: "freezer".into() } };
    assert_eq!(person.send(again).unwrap_err().key, "bad-frozen-again");
}

#[test]
fn giving_it_is_a_feed_and_giving_some_leaves_the_rest() {
    let mut person = one_in_the_fridge();
    open(&mut person, "Bottle 1");
    person.press("give-40").unwrap();
    assert_eq!(shown(&person).figure, "40 mL");
    person.press("give-all").unwrap();
    assert_eq!(shown(&person).headline, "This bottle is empty");
    assert_eq!(kept(&mut person).headline, "No kept milk");
    let record = person.record().unwrap();
    assert_eq!(record.matches(r#""fact":"feed""#).count(), 2);
    assert_eq!(record.matches(r#""milk":"own_stored""#).count(), 2);
}

#[test]
fn more_than_there_is_is_refused_and_nothing_is_changed() {
    let mut person = one_in_the_fridge();
    let before = person.record().unwrap();
    let container = person.only("container").unwrap()["id"].as_str().unwrap().to_owned();
    for (deed, key) in [
        (MilkDeed::Given { typed: "81".into(), unit: "mL".into() }, "bad-more-than-there-is"),
        (MilkDeed::Given { typed: "some".into(), unit: "mL".into() }, "bad-number"),
        (MilkDeed::Given { typed: "10".into(), unit: "kg".into() }, "bad-unit"),
        (MilkDeed::Moved { kept_in: "cellar".into() }, "bad-choice"),
        (MilkDeed::ThrownOut { because: "bored".into() }, "bad-choice"),
        (MilkDeed::Thawed, "bad-not-frozen"),
    ] {
        let event = Event::Milk { container: container.clone(), deed };
        assert_eq!(person.send(event.clone()).unwrap_err().key, key, "{event:?}");
        assert_eq!(person.record().unwrap(), before);
    }
}

#[test]
fn what_to_use_first_names_the_bottles_and_what_is_left_over() {
    let mut person = one_in_the_fridge();
    person.wait(Span::hours(3)).unwrap();
    pumped(&mut person, 60);
    person.press("keep-fridge").unwrap();
    kept(&mut person);
    person.press("use-first").unwrap();
    let page = shown(&person);
    assert_eq!((page.headline.as_str(), page.caption.as_str()), ("Use this bottle", "20 mL is left over."));
    person.press("wish-120").unwrap();
    let page = shown(&person);
    assert_eq!((page.headline.as_str(), page.figure.as_str()), ("Use these 2 bottles", "140 mL"));
    assert_eq!(page.sections.iter().find(|section| section.key == "use-these").unwrap().rows.len(), 2);
    person.press("wish-240").unwrap();
    assert_eq!(shown(&person).caption, "That is all there is.");
}

/// A table for home steps back (ABM Clinical Protocol 8: for healthy term infants).
#[test]
fn for_a_preterm_child_the_unit_is_asked_and_its_rules_hold_once_entered() {
    let mut person = one_in_the_fridge();
    person.import_file(br#"{"fact":"child","id":"c","birth":"2026-08-01","gestation_weeks":33}"#).unwrap();
    let page = open(&mut person, "Bottle 1");
    assert_eq!(page.caption, "Ask your unit how long it keeps");
    assert!(kept(&mut person).lines.iter().any(|line| line.starts_with("Your baby came early")));
    person.press("keeping-rules").unwrap();
    person.enter("unit_fridge", "24:00").unwrap();
    let page = open(&mut person, "Bottle 1");
    assert!(page.caption.starts_with("Good until: "), "{}", page.caption);
}

#[test]
fn two_bottles_with_one_label_are_said() {
    let mut person = person();
    let bottle = |id: &str| {
        format!(
            r#"{{"fact":"container","id":"{id}","at":{{"at":"2026-08-14T06:00:00+02:00","zone":"Europe/Berlin"}},"kept_in":"fridge","label":"7"}}"#
        )
    };
    person.import_file(format!("{}\n{}", bottle("a"), bottle("b")).as_bytes()).unwrap();
    let page = kept(&mut person);
    assert!(
        page.lines.contains(&"Two bottles have label 7. Please give one a new label.".to_owned()),
        "{:?}",
        page.lines
    );
    assert!(page.caption.contains("The amount in 2 is not known"), "{}", page.caption);
}

#[test]
fn what_lapses_within_a_day_is_said_on_now() {
    let mut person = one_in_the_fridge();
    person.press("place-now").unwrap();
    assert!(!person.reads().unwrap().contains("best used within a day"));
    person.wait(Span::hours(73)).unwrap();
    person.press("place-now").unwrap();
    assert!(person.reads().unwrap().contains("A bottle is best used within a day: 80 mL."));
}

#[test]
fn cleaning_is_a_list_to_tick_for_today() {
    let mut person = person();
    kept(&mut person);
    person.press("cleaned-sanitised").unwrap();
    let said = person.reads().unwrap();
    assert!(said.contains("Today at 08:00") && said.contains("Not yet today"), "{said}");
    person.wait(Span::hours(24)).unwrap();
    kept(&mut person);
    assert!(!person.reads().unwrap().contains("Today at"), "tomorrow is another day");
}

#[test]
fn the_shelf_shows_each_place_with_the_soonest_to_lapse_in_front() {
    let mut person = one_in_the_fridge();
    person.wait(Span::hours(3)).unwrap();
    pumped(&mut person, 40);
    person.press("keep-fridge").unwrap();
    let page = kept(&mut person);
    let shelf = page.sections.iter().find_map(|section| section.shelf.clone()).unwrap();
    assert_eq!(shelf.boards.len(), 1);
    let bottles: Vec<(&str, Option<f32>)> =
        shelf.boards[0].bottles.iter().map(|bottle| (bottle.label.as_str(), bottle.full)).collect();
    assert_eq!(bottles, [("1", Some(1.0)), ("2", Some(0.5))]);
    assert!(shelf.spoken.contains("Bottle 1 with 80 mL, Bottle 2 with 40 mL"), "{}", shelf.spoken);
}

/// A day before: for who wants it alone, and never for what is gone.
#[test]
fn a_reminder_comes_a_day_before_milk_lapses_where_it_is_wanted() {
    use drawwell_core::screen::shapes::Effect;
    let alarm = |person: &Person| {
        let last = person.effects.iter().rev().find_map(|effect| match effect {
            Effect::SetAlarm { key, unix_milliseconds, .. } if key == "kept-milk" => Some(Some(*unix_milliseconds)),
            Effect::ClearAlarm { key } if key == "kept-milk" => Some(None),
            _ => None,
        });
        last.expect("the alarm is set or cleared")
    };
    let mut person = one_in_the_fridge();
    let began = person.only("container").unwrap()["at"]["at"].as_str().unwrap().to_owned();
    assert_eq!(began, "2026-08-14T08:00:00.000+02:00");
    assert_eq!(alarm(&person), None);
    let wanted = Event::Enter { id: "keeping".into(), field: "remind_of_milk".into(), typed: "yes".into() };
    person.send(wanted).unwrap();
    let four_days = 1_786_687_200_000 + 96 * 3_600_000;
    assert_eq!(alarm(&person), Some(four_days - 24 * 3_600_000));
    let container = person.only("container").unwrap()["id"].as_str().unwrap().to_owned();
    let all = MilkDeed::Given { typed: String::new(), unit: String::new() };
    person.send(Event::Milk { container, deed: all }).unwrap();
    assert_eq!(alarm(&person), None);
}

/// The phone's own camera reads the label's code.
#[test]
fn the_code_on_a_label_opens_its_bottle_and_another_says_that_it_is_not_here() {
    let mut person = one_in_the_fridge();
    let id = person.only("container").unwrap()["id"].as_str().unwrap().to_owned();
    person.send(Event::TakeCardIn { card: drawwell_core::share::bottle_link::write(&id) }).unwrap();
    assert_eq!(shown(&person).figure, "80 mL");
    let other = Event::TakeCardIn { card: "drawwell:bottle?id=nobody".into() };
    assert_eq!(person.send(other).unwrap_err().key, "bad-bottle");
}
