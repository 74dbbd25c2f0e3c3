//! Which pump: pumps on offer compared by what their makers state, before a gauge can touch one.

use drawwell_core::screen::shapes::{
    Effect, Event, Export, FindingsScreen, Opening, Paper, Place, PlotPicture, Screen, Section,
};
use drawwell_tests::person::{offered, Person};
use serde_json::{json, Value};

fn person() -> Person {
    let mut person = Person::welcomed("2026-03-01T10:00:00+01:00", "Europe/Berlin").unwrap();
    person.press("place-kit").unwrap();
    person
}

/// A person with these pumps on offer, as a file says them.
fn offered_to(pumps: &[Value]) -> Person {
    let mut person = person();
    let line = |(at, pump): (usize, &Value)| {
        let mut line = json!({ "fact": "offered_pump", "id": format!("o{at:02}") });
        for (key, value) in pump.as_object().unwrap() {
            line[key] = value.clone();
        }
        line.to_string()
    };
    let file: Vec<String> = pumps.iter().enumerate().map(line).collect();
    person.import_file(file.join("\n").as_bytes()).unwrap();
    person.send(Event::Go { place: Place::Choice }).unwrap();
    person
}

fn mmhg(value: f64) -> Value {
    json!({ "value": value, "unit": "mm[Hg]", "typed": value.to_string(), "typed_unit": "mm[Hg]" })
}

fn page(person: &Person) -> FindingsScreen {
    let Screen::Findings { findings, .. } = person.screen().unwrap() else { panic!("{:?}", person.screen()) };
    findings.clone()
}

fn section(found: &FindingsScreen, key: &str) -> Option<Section> {
    found.sections.iter().find(|section| section.key == key).cloned()
}

/// What is said of each pump under a heading.
fn said(found: &FindingsScreen, key: &str) -> Vec<String> {
    section(found, key).map(|section| section.rows.into_iter().map(|row| row.detail).collect()).unwrap_or_default()
}

fn picture(found: &FindingsScreen) -> PlotPicture {
    section(found, "offer-picture").and_then(|section| section.plot).unwrap()
}

#[test]
fn the_invented_family_compares_three_pumps() {
    let mut person = Person::of_the_invented_family().unwrap();
    person.press("place-kit").unwrap();
    person.press("open-choice").unwrap();
    insta::assert_snapshot!("choice_as_read", person.reads().unwrap());
    insta::assert_yaml_snapshot!("choice_picture", picture(&page(&person)));
    let found = page(&person);
    assert_eq!(found.headline, "3 pumps side by side");
    // A grade that is claimed and not met by its own figures is said.
    let grades = said(&found, "offer-grade");
    assert_eq!(grades[0], "Does not fit. Called Multi-user (hospital-grade), but states 240 to 270 mmHg.");
    // What was not asked for has no heading, and each that has one has its rule and its source.
    assert!(section(&found, "offer-most-milk").is_none() && section(&found, "offer-stimulation").is_none());
    for key in ["offer-grade", "offer-strength", "offer-cycles", "offer-set-apart", "offer-motor", "offer-shared-use"] {
        let lines = section(&found, key).unwrap().lines;
        assert_eq!(lines.last().map(String::as_str), Some("Common practice, no source"), "{key}");
        assert!(lines.len() > 1, "{key}: {lines:?}");
    }
}

#[test]
fn a_pump_on_offer_is_added_by_hand_and_nothing_has_to_be_said() {
    let mut person = person();
    person.press("open-choice").unwrap();
    assert_eq!(page(&person).headline, "No pump to compare yet");
    person.press("add-offered_pump").unwrap();
    person.press("back").unwrap();
    // Nothing stated at all, and one pump only.
    let found = page(&person);
    assert_eq!(found.headline, "One pump so far");
    assert_eq!(said(&found, "offer-grade"), ["Its type is not stated."]);
    assert_eq!(said(&found, "offer-strength"), ["No vacuum is stated."]);
    assert!(picture(&found).points.is_empty(), "what is not stated is left open");
    assert_eq!(picture(&found).ticks[0].label, "1 ?");
    assert!(said(&found, "offer-asks")[0].starts_with("How strong is its vacuum at most, in mmHg? How many cycles"));

    person.press(&row_key(&found)).unwrap();
    person.enter("name", "Larder").unwrap();
    person.enter("maximum_vacuum_high", "33.3 kPa").unwrap();
    person.enter("price", "199").unwrap();
    person.press("back").unwrap();
    let found = page(&person);
    // UCUM: 33.3 kPa are 249.77 mmHg, which is below 250 and is seen to be.
    let strong = "Fits. States 33.3 kPa (249.8 mmHg): a weaker motor. It is enough for some in the first weeks.";
    assert_eq!(said(&found, "offer-strength"), [strong]);
    // A price without a currency is asked about.
    assert_eq!(found.asks[0].text, "Larder: in which currency is the price?");
    person.press(&row_key(&found)).unwrap();
    person.enter("currency", "eur").unwrap();
    person.press("back").unwrap();
    let found = page(&person);
    assert!(found.asks.is_empty(), "{:?}", found.asks);
    assert_eq!(said(&found, "offer-facts"), ["199 EUR"]);
}

fn row_key(found: &FindingsScreen) -> String {
    section(found, "offer-pumps").unwrap().rows[0].open.clone().unwrap().key
}

/// What is wanted is held against what is stated; what is wanted of none has no heading.
#[test]
fn what_is_wanted_makes_the_lines() {
    let mut person = offered_to(&[json!({ "maximum_vacuum_high": mmhg(249.0), "grade": "personal" })]);
    assert!(said(&page(&person), "offer-strength")[0].ends_with("It is enough for some in the first weeks."));
    person.press("wanted").unwrap();
    person.press("how_often-nearly_all_milk").unwrap();
    person.press("letdown_needs_more-yes").unwrap();
    person.press("sensitive_nipples-yes").unwrap();
    person.enter("weeks_wanted", "160").unwrap();
    person.press("back").unwrap();
    let found = page(&person);
    assert_eq!(found.caption, "For nearly all of the milk · 160 weeks · Sensitive nipples · Letdown takes long");
    assert_eq!(
        said(&found, "offer-strength"),
        ["Does not fit. States 249 mmHg: a weaker motor. It is enough for some in the first weeks. Used daily, it \
          works harder and wears out sooner."]
    );
    assert_eq!(said(&found, "offer-most-milk"), ["Does not fit. States 249 mmHg, which is not above 300 mmHg."]);
    assert_eq!(said(&found, "offer-stimulation"), ["Not stated."]);
    assert_eq!(said(&found, "offer-motor"), ["Does not fit. Made for one person."]);
    let lines = section(&found, "offer-set-apart").unwrap().lines;
    assert!(lines.contains(&"With sensitive nipples, try slower and with less vacuum.".to_owned()), "{lines:?}");
}

/// The bad input of the question: each is answered, asked about, or refused with what to do.
#[test]
fn figures_that_contradict_or_are_in_another_unit_are_refused_or_asked_about() {
    let mut person = offered_to(&[json!({ "name": "Larder", "maximum_vacuum_low": mmhg(280.0) })]);
    person.press(&row_key(&page(&person))).unwrap();
    let why = person.enter("maximum_vacuum_high", "250").unwrap_err();
    assert_eq!((why.key, why.field.as_str()), ("bad-order", "maximum_vacuum_high"), "a maximum below its minimum");
    assert_eq!(person.enter("currency", "euro").unwrap_err().key, "bad-text-long");
    assert_eq!(person.enter("currency", "€").unwrap_err().key, "bad-currency");
    assert_eq!(person.enter("name", &"x".repeat(200)).unwrap_err().key, "bad-text-long", "two hundred letters");
    assert_eq!(person.enter("price", "-1").unwrap_err().key, "bad-range");

    // 33 typed as mmHg, where kPa was meant.
    let mut person = offered_to(&[json!({ "name": "Larder", "maximum_vacuum_high": mmhg(33.0) })]);
    let found = page(&person);
    assert_eq!(
        found.asks[0].text, "Larder: 33 mmHg is low for a maximum. Is it in kPa? That would be 248 mmHg.",
        "33 kPa are 247.5 mmHg by UCUM"
    );
    assert_eq!(said(&found, "offer-strength"), ["A question about its figures comes first."]);
    assert!(picture(&found).points.is_empty());
    person.press("meant-o00").unwrap();
    let found = page(&person);
    assert!(found.asks.is_empty());
    assert!(said(&found, "offer-strength")[0].contains("States 33 kPa (247.5 mmHg): a weaker motor."));
    let stored = &person.only("offered_pump").unwrap()["maximum_vacuum_high"];
    assert_eq!((stored["typed"].as_str(), stored["typed_unit"].as_str()), (Some("33"), Some("kPa")), "as typed");
    person.press("undo").unwrap();
    // Or it is right as it is.
    person.press("figures-right-o00").unwrap();
    assert!(page(&person).asks.is_empty());
    assert!(said(&page(&person), "offer-strength")[0].contains("below what is good for any pump"));

    let mut person = offered_to(&[json!({ "name": "Larder", "maximum_vacuum_high": mmhg(400.0) })]);
    assert!(page(&person).asks[0].text.contains("Is it in mbar? That would be 300 mmHg."));
    person.press("meant-o00").unwrap();
    assert!(said(&page(&person), "offer-strength")[0].ends_with("States 400 mbar (300 mmHg): good for any pump."));
}

#[test]
fn thirty_pumps_are_thirty_rows_and_their_numbers_do_not_meet() {
    let pumps: Vec<Value> =
        (0..30).map(|n| json!({ "maximum_vacuum_high": mmhg(200.0 + 5.0 * f64::from(n)) })).collect();
    let found = page(&offered_to(&pumps));
    assert_eq!(found.headline, "30 pumps side by side");
    assert_eq!(said(&found, "offer-strength").len(), 30);
    let picture = picture(&found);
    assert_eq!(picture.points.len(), 30);
    let numbers: Vec<&str> = picture.ticks.iter().map(|tick| tick.label.as_str()).collect();
    assert_eq!(numbers, ["5", "10", "15", "20", "25", "30"]);
}

/// More is not better, and no order is one of merit: the pumps stay as they were added.
#[test]
fn nothing_is_ranked() {
    let found = page(&offered_to(&[
        json!({ "name": "A", "maximum_vacuum_high": mmhg(200.0) }),
        json!({ "name": "B", "maximum_vacuum_high": mmhg(351.0) }),
        json!({ "name": "C", "maximum_vacuum_high": mmhg(300.0) }),
    ]));
    let names: Vec<String> = section(&found, "offer-strength").unwrap().rows.into_iter().map(|row| row.title).collect();
    assert_eq!(names, ["A", "B", "C"]);
    assert!(said(&found, "offer-strength")[1].ends_with("That is more than any pump needs. More is not better."));
    let says = section(&found, "says").unwrap().lines;
    assert!(says.contains(&"Pumps are in the order you added them. There is no score.".to_owned()));
}

/// Before a gauge touched a pump, what it states has a word in Kit, with one end or two.
#[test]
fn a_stated_maximum_alone_has_a_word_in_kit() {
    let in_kit = |more: Value| {
        let mut pump = json!({ "fact": "pump", "id": "p", "name": "Marl" });
        for (key, value) in more.as_object().unwrap() {
            pump[key] = value.clone();
        }
        let mut person = person();
        person.import_file(pump.to_string().as_bytes()).unwrap();
        person.press("place-kit").unwrap();
        let Screen::List { list, .. } = person.screen().unwrap() else { panic!("a list") };
        let row = list.groups.iter().find(|group| group.key == "pump").unwrap().rows[0].detail.clone();
        person.press("open-p").unwrap();
        (row, page(&person))
    };
    let (row, found) = in_kit(json!({ "maximum_vacuum_high": mmhg(200.0) }));
    assert_eq!(row, "200 mmHg · Not checked yet · States 200 mmHg: below what is good for any pump.");
    let says = section(&found, "says").unwrap().lines;
    assert_eq!(says[0], "States 200 mmHg: below what is good for any pump.");
    assert_eq!(says[1], "220 to 350 mmHg is good for any pump. Below 250 mmHg the motor is weaker.");
    assert_eq!(says[2], "Common practice, no source");

    let hospital =
        json!({ "grade": "hospital", "maximum_vacuum_low": mmhg(240.0), "maximum_vacuum_high": mmhg(270.0) });
    let (row, found) = in_kit(hospital);
    assert!(row.ends_with("Called Multi-user (hospital-grade), but states 240 to 270 mmHg."), "{row}");
    assert_eq!(section(&found, "says").unwrap().lines[1], "Pumps of that type reach 300 mmHg or more.");

    let (row, found) = in_kit(json!({ "maximum_vacuum_high": mmhg(33.0) }));
    assert!(row.ends_with("A question about its figures comes first."), "{row}");
    assert!(found.asks[0].text.starts_with("Marl: 33 mmHg is low for a maximum. Is it in kPa?"), "{:?}", found.asks);

    let (row, _) = in_kit(json!({ "maximum_vacuum_low": mmhg(260.0) }));
    assert_eq!(row, "260 mmHg or more · Not checked yet · States 260 mmHg or more: good for any pump.");
    let (row, _) = in_kit(json!({}));
    assert_eq!(row, "Not checked yet", "nothing is stated, and nothing said");
}

/// The sheet says a choice while it is open, and Visit leads to it; one that was made is over.
#[test]
fn a_choice_is_on_the_sheet_and_in_visit_while_it_is_open() {
    let sheet = |person: &mut Person| serde_json::to_string(&person.show(&Place::Sheet).unwrap()).unwrap();
    let visit = |person: &mut Person| offered(&person.show(&Place::Visit).unwrap(), "open-choice").is_some();
    let mut person = Person::of_the_invented_family().unwrap();
    assert!(sheet(&mut person).contains("Larder 290 mmHg · Tumbler 200 mmHg or more"));
    assert!(visit(&mut person));
    let decide = |person: &mut Person, id: &str, how: &str| {
        let (id, field) = (id.to_owned(), "decided".to_owned());
        person.send(Event::Enter { id, field, typed: how.to_owned() }).unwrap();
    };
    decide(&mut person, "offered-1-thicket", "set_aside");
    assert!(!sheet(&mut person).contains("Thicket") && sheet(&mut person).contains("Larder"));
    decide(&mut person, "offered-2-larder", "chosen");
    assert!(!sheet(&mut person).contains("Larder") && !visit(&mut person));
}

/// The family's page: what the screen says, for the pumps that were not set aside.
#[test]
fn the_page_says_what_the_screen_says() {
    fn press(data: &str, _: &drawwell_core::time::Moment) -> Result<Vec<u8>, String> {
        Ok(data.as_bytes().to_vec())
    }
    let mut person = Person::of_the_invented_family().unwrap();
    person.send(Event::Go { place: Place::Choice }).unwrap();
    let found = page(&person);
    person.press("hand-over-choice").unwrap();
    let asked = person.effects.iter().any(|effect| {
        matches!(effect, Effect::HandOver { file_name, .. } if file_name == "drawwell-which-pump-2026-08-14.pdf")
    });
    assert!(asked, "{:?}", person.effects);
    let (path, clock) = (person.path().to_owned(), person.clock().clone());
    let opening = Opening { device: "press".to_owned(), language: "en".to_owned(), look_around: false };
    let mut app = drawwell_core::app::App::open(path, opening, &clock).unwrap().with_sheet_renderer(press);
    let mut out = Vec::new();
    app.export(&Export::Choice { paper: Paper::A4 }, &mut out, &clock).unwrap();
    let written: Value = serde_json::from_slice(&out).unwrap();
    assert_eq!((&written["heading"], &written["paper"]), (&json!("Which pump"), &json!("a4")));
    let sections = written["sections"].as_array().unwrap();
    for on_screen in
        found.sections.iter().filter(|section| section.key.starts_with("offer-") && !section.rows.is_empty())
    {
        if on_screen.key == "offer-pumps" {
            continue;
        }
        let on_page = sections.iter().find(|section| section["key"] == on_screen.key.as_str()).unwrap();
        let notes: Vec<&str> =
            on_page["rows"].as_array().unwrap().iter().filter_map(|row| row["note"].as_str()).collect();
        let details: Vec<&str> = on_screen.rows.iter().map(|row| row.detail.as_str()).collect();
        assert_eq!(notes, details, "{}", on_screen.key);
    }
    assert!(sections[0]["plot"]["points"].as_array().is_some_and(|points| points.len() == 3));
}
