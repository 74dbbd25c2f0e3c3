//! Every sentence that is asked for is there, and none of them blames.

use std::collections::BTreeSet;

use drawwell_core::record::{FieldType, Kind};
use drawwell_core::screen::shapes::{Event, Place};
use drawwell_core::text::Texts;
use drawwell_tests::person::Person;
use drawwell_tests::place::sentences;

/// Marks a sentence that was asked for and is not there.
const GAP: char = '\u{27e8}';

fn demo() -> Person {
    Person::of_the_invented_family().unwrap()
}

#[test]
fn no_screen_of_five_months_asks_for_a_sentence_that_is_not_there() {
    let mut person = demo();
    let mut ids = BTreeSet::from(["rules".to_owned()]);
    for line in person.record().unwrap().lines().skip(1) {
        let line: serde_json::Value = serde_json::from_str(line).unwrap();
        ids.insert(line["id"].as_str().unwrap().to_owned());
    }
    let mut places =
        vec![Place::Now, Place::Sheet, Place::Tonight, Place::Kit, Place::Visit, Place::Family, Place::Report];
    places.extend((0..160).map(|days_back| Place::Day { days_back }));
    places.extend(ids.into_iter().map(|id| Place::Entry { id }));
    for place in places {
        let shown = serde_json::to_string(&person.show(&place).unwrap()).unwrap();
        assert!(!shown.contains(GAP), "{place:?}: {}", shown.split(GAP).nth(1).unwrap_or_default());
    }
}

#[test]
fn every_field_and_choice_of_every_form_has_its_words() {
    let mut person = demo();
    for kind in
        ["session", "feed", "sign", "note", "child", "pump", "part", "flange", "fixed_point", "visit", "question"]
    {
        person.send(Event::Add { kind: kind.to_owned(), days_back: 0 }).unwrap();
        for method in ["electric_pump", "hand_pump", "by_hand", "at_breast"] {
            if kind == "session" {
                person.enter("method", method).unwrap();
            }
            assert!(!person.reads().unwrap().contains(GAP), "{kind} {method}");
        }
    }
    let texts = Texts::new("en");
    for kind in Kind::ALL {
        for spec in kind.fields().iter().filter(|s| !s.group.is_empty()) {
            let key = format!("field-{}", spec.key.replace('_', "-"));
            assert!(texts.has(&key), "{key}");
            if let FieldType::Choice(words) = spec.field_type {
                let own =
                    |word: &str| word.chars().filter(|c| c.is_ascii_alphanumeric() || *c == '_').collect::<String>();
                for word in words {
                    let keys = [
                        format!("choice-{}-{}", spec.key.replace('_', "-"), own(word)),
                        format!("choice-breast-{word}"),
                    ];
                    assert!(keys.iter().any(|key| texts.has(key)), "{keys:?}");
                }
            }
        }
    }
}

#[test]
fn every_sentence_key_in_the_source_is_there_and_every_sentence_is_used() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../core");
    let mut source = String::new();
    let mut folders = ["src", "base/src", "answers/src", "journal/src"].map(|floor| root.join(floor)).to_vec();
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap().map(Result::unwrap) {
            match entry.path() {
                path if path.is_dir() => folders.push(path),
                path => source.push_str(&std::fs::read_to_string(path).unwrap()),
            }
        }
    }
    let locale = sentences();
    let keys: Vec<&str> = locale
        .lines()
        .filter(|l| l.starts_with(|c: char| c.is_ascii_lowercase()))
        .filter_map(|l| l.split_once(" =").map(|(key, _)| key))
        .collect();
    assert_eq!(keys.len(), keys.iter().collect::<BTreeSet<_>>().len(), "a key stands once");
    let texts = Texts::new("en");
    for key in &keys {
        assert!(texts.has(key), "{key}: a file of sentences is not read");
    }
    // Keys that are put together from a word and a name.
    let made = [
        "act-",
        "place-",
        "field-",
        "hint-",
        "choice-",
        "group-",
        "kind-",
        "kinds-",
        "none-",
        "add-",
        "unit-",
        "weekday-",
        "month-",
        "phase-",
        "code-",
        "csv-",
        "part-of-day-",
        "beside-",
        "figures-of-",
        "side-",
        "mark-",
        "dial-",
        "amount-",
        "amounts-",
        "step-",
        "day-",
        "verdict-",
        "section-",
        "connected-",
        "trace-",
        "night-figure-",
        "starting-",
        "plan-",
        "reminder-",
        "evidence-",
        "sheet-part-",
        "sheet-section-",
        "urgency-",
        "reason-",
        "caseload-",
        "desk-",
        "erasing-",
        "recovery-",
        "sealed-detail-",
        "removing-",
        "table-",
        "caution-",
        "advice-",
        "call-",
        "sign-",
        "done-",
        "term-",
    ];
    for key in &keys {
        let used =
            source.contains(&format!("\"{key}\"")) || made.iter().any(|m| key.starts_with(m)) || key.ends_with("-do");
        assert!(used, "{key} is used nowhere");
    }
    let texts = Texts::new("en");
    for trouble in source.split("Trouble::bad(").skip(1).chain(source.split("Trouble::new(").skip(1)) {
        let Some(call) = trouble.split([')', ';']).next() else { continue };
        // The field it is about, where it is written out, stands before.
        let literals: Vec<&str> = call.split('"').skip(1).step_by(2).collect();
        if let Some(literal) = literals.last().filter(|l| l.contains('-')) {
            assert!(texts.has(literal), "{literal}");
            assert!(texts.has(&format!("{literal}-do")), "{literal}-do: every trouble says what to do");
        }
    }
}

#[test]
fn no_sentence_blames_or_urges() {
    let locale = sentences().to_lowercase();
    assert!(!locale.is_empty());
    for word in
        ["failed", "poor", "insufficient", "goal not reached", "should have", "you forgot", "bad mother", "too little"]
    {
        assert!(!locale.contains(word), "{word}");
    }
}

#[test]
fn every_caution_has_its_name_and_what_to_do() {
    let texts = Texts::new("en");
    let advice = drawwell_core::guidance::CautionSource::all().iter().flat_map(|caution| &caution.advice);
    for key in advice {
        assert!(texts.has(&format!("advice-{key}")), "{key}");
    }
    for caution in drawwell_core::guidance::CautionSource::all() {
        assert!(texts.has(&format!("caution-{}", caution.key)), "{}", caution.key);
        assert!(texts.has(&format!("caution-{}-do", caution.key)), "{}", caution.key);
        assert!(texts.has(&format!("urgency-{}", caution.urgency.name())), "{}", caution.key);
    }
}

/// Words that are chosen by a number are chosen so also where it comes as text: one is one.
#[test]
fn every_sentence_that_counts_is_given_a_number() {
    let texts = Texts::new("en");
    let counting: Vec<(&str, &str)> =
        texts.that_count().flat_map(|(key, names)| names.iter().map(move |name| (key, name.as_str()))).collect();
    assert!(counting.len() > 40, "the sentences were read: {}", counting.len());
    let mut chosen = 0;
    for (key, name) in counting {
        // Fluent takes a name of its own making for each variable; nobody else uses this one.
        let name: &'static str = Box::leak(name.to_owned().into_boxed_str());
        for figure in [0_i64, 1, 2, 5] {
            let as_number = texts.say_with(key, &[(name, figure.into())]);
            let as_text = texts.say_with(key, &[(name, figure.to_string().into())]);
            assert_eq!(as_text, as_number, "{key} by {name}");
        }
        let of = |figure: i64| texts.say_with(key, &[(name, figure.into())]).replace(&figure.to_string(), "");
        chosen += usize::from(of(1) != of(2));
    }
    assert!(chosen > 40, "and one differs from two: {chosen}");
}

#[test]
fn the_page_about_visits_has_every_caution_with_its_urgency_and_source() {
    let page = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../docs/visit.md")).unwrap();
    for caution in drawwell_core::guidance::CautionSource::all() {
        let row = page.lines().find(|line| line.starts_with(&format!("| `{}` |", caution.key)));
        let row = row.unwrap_or_else(|| panic!("{}", caution.key));
        assert!(row.contains(&format!("| {} |", caution.urgency.name())), "{row}");
        assert!(row.contains(&caution.source) && row.contains(&caution.year.to_string()), "{row}");
        assert_eq!(row.contains("from memory"), caution.from_memory, "{row}");
        assert_eq!(row.contains("72 h"), caution.lapses, "{row}");
    }
}
