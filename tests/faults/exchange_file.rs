//! Files of the exchange form that are not as they should be: what can be taken
//! is, and the report says which lines were not and why.

use drawwell_core::screen::shapes::Screen;
use drawwell_core::share::exchange::{Report, MOST_WRONG_LINES_TOLD};
use drawwell_tests::person::Person;

fn person() -> Person {
    Person::at("2026-08-14T12:40:00+02:00", "Europe/Berlin").unwrap()
}

fn report(person: &mut Person, file: &[u8]) -> Report {
    person.import_file(file).unwrap();
    person.app().unwrap().report().unwrap().clone()
}

fn wrong(report: &Report) -> Vec<(u64, &str, &str)> {
    report.wrong.iter().map(|w| (w.line, w.why.key, w.why.field.as_str())).collect()
}

fn note(id: &str, text: &str) -> String {
    format!(
        r#"{{"fact":"note","id":"{id}","at":{{"at":"2026-03-01T09:00:00+01:00","zone":"Europe/Berlin"}},"text":"{text}"}}"#
    )
}

#[test]
fn cut_in_half_the_whole_lines_are_taken() {
    let demo = std::fs::read(drawwell_tests::place::demo_data("family.jsonl")).unwrap();
    let half = &demo[..demo.len() / 2];
    let lines = half.iter().filter(|b| **b == b'\n').count() as u64;
    let report = report(&mut person(), half);
    assert_eq!(report.taken, lines - 1, "every whole line but the first, which says what file it is");
    assert_eq!(wrong(&report), [(lines + 1, "line-not-json", "")]);
}

#[test]
fn a_wrong_line_in_the_middle_costs_that_line_alone() {
    let file = [
        note("a", "one"),
        r#"{"fact":"session","id":"b","started":{"at":"2026-03-01T09:00:00+01:00","zone":"Europe/Berlin"},"amount_left":{"value":-3,"unit":"mL"}}"#.to_owned(),
        note("c", "three"),
        "[1,2]".to_owned(),
        r#"{"id":"d"}"#.to_owned(),
        r#"{"fact":"unicorn","id":"d"}"#.to_owned(),
        r#"{"fact":"note","id":"no good"}"#.to_owned(),
        r#"{"fact":"pump","id":"a"}"#.to_owned(),
        r#"{"fact":"settings","id":"other"}"#.to_owned(),
        r#"{"fact":"session","id":"e","marks":{"m":{"does":"dance"}}}"#.to_owned(),
        r#"{"fact":"note","id":"f","at":{"at":"2027-03-01T09:00:00+01:00","zone":"Europe/Berlin"}}"#.to_owned(),
        note("g", "eleven"),
    ]
    .join("\n");
    let mut person = person();
    let report = report(&mut person, file.as_bytes());
    assert_eq!(
        wrong(&report),
        [
            (2, "bad-range", "amount_left"),
            (4, "line-not-object", ""),
            (5, "line-no-fact", "fact"),
            (6, "line-unknown-fact", "fact"),
            (7, "line-bad-id", "id"),
            (8, "line-other-kind", "id"),
            (9, "line-bad-id", "id"),
            (10, "bad-mark", "marks/m"),
            (11, "bad-future", "at"),
        ]
    );
    assert_eq!(report.taken, 3);
    let Screen::List { list, .. } = person.screen().unwrap() else { panic!("the report") };
    assert_eq!(list.groups[1].title, "9 lines were not imported");
    assert_eq!(list.groups[1].rows[0].detail, "Left: please enter 0 to 2000 mL.");
}

#[test]
fn latin_1_is_told_line_by_line_and_ascii_lines_are_taken() {
    let mut file = note("a", "plain").into_bytes();
    file.push(b'\n');
    file.extend(note("b", "XX").replace("XX", "caf\u{fffd}").replace('\u{fffd}', "@").into_bytes());
    let at = file.iter().rposition(|b| *b == b'@').unwrap();
    file[at] = 0xe9; // é in Latin-1
    let report = report(&mut person(), &file);
    assert_eq!((report.taken, wrong(&report)), (1, vec![(2, "line-not-utf8", "")]));
}

#[test]
fn a_million_lines_are_taken_and_only_the_first_wrong_ones_are_told_one_by_one() {
    let mut file = Vec::with_capacity(140 << 20);
    for n in 0..1_000_000 {
        let line = if n % 1000 == 999 { "not a fact".to_owned() } else { note(&format!("n{n}"), "x") };
        file.extend(line.into_bytes());
        file.push(b'\n');
    }
    let report = report(&mut person(), &file);
    assert_eq!((report.taken, report.wrong_count, report.wrong.len()), (999_000, 1000, MOST_WRONG_LINES_TOLD));
}

#[test]
fn a_line_longer_than_any_fact_is_passed_over() {
    let mut file = note("a", &"x".repeat(20 << 20)).into_bytes();
    file.push(b'\n');
    file.extend(note("b", "short").into_bytes());
    let report = report(&mut person(), &file);
    assert_eq!((report.taken, wrong(&report)), (1, vec![(1, "line-too-long", "")]));
}

#[test]
fn a_file_of_a_newer_version_is_refused_whole() {
    let mut person = person();
    let file = format!("{{\"drawwell\":\"exchange\",\"version\":2}}\n{}", note("a", "x"));
    let trouble = person.import_file(file.as_bytes()).unwrap_err();
    assert_eq!((trouble.kind, trouble.key), (drawwell_core::trouble::Kind::Newer, "trouble-newer-file"));
    assert_eq!(person.record().unwrap().lines().count(), 1);
}

#[test]
fn fields_that_are_not_known_here_come_back_as_they_were() {
    let line = r#"{"fact":"pump","id":"p","hum":{"decibel":[41.5,null,"loud"]},"name":"Marl"}"#;
    let mut person = person();
    person.import_file(line.as_bytes()).unwrap();
    assert!(person.record().unwrap().contains(line));
}

#[test]
fn a_mark_keeps_what_is_not_known_of_it_when_it_is_amended() {
    let line = r#"{"fact":"session","id":"s","marks":{"m":{"at":"2026-03-01T09:00:00.000+01:00","does":"pain","glow":7,"zone":"Europe/Berlin"}},"started":{"at":"2026-03-01T09:00:00.000+01:00","zone":"Europe/Berlin"}}"#;
    let mut person = person();
    person.import_file(line.as_bytes()).unwrap();
    person
        .send(drawwell_core::screen::shapes::Event::Enter {
            id: "s".into(),
            field: "marks/m/side".into(),
            typed: "left".into(),
        })
        .unwrap();
    assert!(person.record().unwrap().contains(r#""glow":7,"side":"left""#));
}

#[test]
fn brought_in_twice_it_says_nothing_new() {
    let demo = std::fs::read(drawwell_tests::place::demo_data("family.jsonl")).unwrap();
    let mut person = person();
    let first = report(&mut person, &demo);
    let once = person.record().unwrap();
    let second = report(&mut person, &demo);
    assert_eq!((second.taken, second.unchanged), (0, first.taken));
    assert_eq!(person.record().unwrap(), once);
}

#[test]
fn an_older_copy_does_not_empty_what_was_written_since() {
    let mut person = person();
    person.import_file(note("a", "one").as_bytes()).unwrap();
    person.import_file(br#"{"fact":"note","id":"a"}"#).unwrap();
    assert!(person.record().unwrap().contains(r#""text":"one""#));
}

#[test]
fn a_check_whose_readings_cannot_be_costs_that_line_alone() {
    let at = r#""at":"2026-03-01T09:00:00+01:00","zone":"Europe/Berlin""#;
    let check = |id: &str, reading: &str, more: &str| {
        format!(r#"{{"fact":"check","id":"{id}","at":{{{at}}},"readings":{{"r":{reading}}}{more}}}"#)
    };
    let reading = |value: f64| format!(r#"{{{at},"side":"left","vacuum":{{"value":{value},"unit":"mm[Hg]"}}}}"#);
    let file = [
        check("a", &reading(262.0), ""),
        check("b", r#"{"side":"left"}"#, ""),
        check("c", &reading(-20.0), ""),
        check("d", &reading(826.0), ""),
        check("e", &reading(540.0), r#","altitude":{"value":3000,"unit":"m"}"#),
        check("f", &reading(262.0).replace("left", "above"), ""),
        r#"{"fact":"check","id":"g","readings":[1,2]}"#.to_owned(),
        r#"{"fact":"pump","id":"h","readings":{}}"#.to_owned(),
        r#"{"fact":"pump","id":"i","readings/r":1}"#.to_owned(),
        r#"{"fact":"gauge","id":"j","accuracy_class":"0"}"#.to_owned(),
        r#"{"fact":"fit","id":"k","nipple_left_before":{"value":1.6,"unit":"mm"}}"#.to_owned(),
        r#"{"fact":"trace","id":"l","findings":"good"}"#.to_owned(),
        r#"{"fact":"settings","id":"settings","flange_sizes":[15,"17"]}"#.to_owned(),
        note("m", "the last"),
    ]
    .join("\n");
    let mut person = person();
    let report = report(&mut person, file.as_bytes());
    assert_eq!(
        wrong(&report),
        [
            (2, "bad-reading", "readings/r"),
            (3, "bad-range", "readings/r"),
            (4, "bad-range", "readings/r"),
            (5, "bad-beyond-air", "readings/r"),
            (6, "bad-reading", "readings/r"),
            (7, "bad-reading", "readings"),
            (8, "bad-reading", "readings"),
            (9, "line-reserved", "readings"),
            (10, "bad-choice", "accuracy_class"),
            (11, "bad-range-centimeters", "nipple_left_before"),
            (12, "bad-findings", "findings"),
            (13, "bad-sizes", "flange_sizes"),
        ]
    );
    assert_eq!(report.taken, 2);
}
