//! The page that explains the exchange form: what it shows is so.

use std::{collections::BTreeSet, fs};

use drawwell_core::{
    record::Kind,
    share::exchange::{import, MOST_WRONG_LINES_TOLD},
    trouble,
};
use drawwell_tests::{demo_family, place::demo_data};
use serde_json::Value;

use crate::{record::Record, schema};

/// What the page shows.
struct Page {
    /// Lines in blocks of the exchange form.
    right: Vec<String>,
    /// Lines in the first table of wrong ones.
    wrong: Vec<String>,
    /// Lines in the second, which the schema lets through.
    wrong_in_meaning: Vec<String>,
}

fn page() -> Page {
    let text = fs::read_to_string(demo_data("README.md")).unwrap();
    let mut page = Page { right: vec![], wrong: vec![], wrong_in_meaning: vec![] };
    let (mut in_block, mut tables) = (false, 0);
    for line in text.lines() {
        match line {
            "```jsonl" => in_block = true,
            "```" => in_block = false,
            "| line | why |" => tables += 1,
            _ if in_block => page.right.push(line.to_owned()),
            _ => {
                let shown = line.strip_prefix("| `").and_then(|rest| rest.split_once("` | "));
                match (tables, shown) {
                    (1, Some((shown, _))) => page.wrong.push(shown.to_owned()),
                    (2, Some((shown, _))) => page.wrong_in_meaning.push(shown.to_owned()),
                    _ => {}
                }
            }
        }
    }
    page
}

#[test]
fn it_has_an_example_of_every_kind_of_fact() {
    let shown: BTreeSet<String> = page()
        .right
        .iter()
        .filter_map(|line| serde_json::from_str::<Value>(line).unwrap()["fact"].as_str().map(str::to_owned))
        .collect();
    assert_eq!(shown, Kind::ALL.iter().map(|kind| kind.name().to_owned()).collect());
}

#[test]
fn every_example_is_valid_and_is_taken() {
    let (page, validator) = (page(), schema::validator());
    for line in &page.right {
        let value: Value = serde_json::from_str(line).unwrap();
        let wrong: Vec<String> = validator.iter_errors(&value).map(|error| error.to_string()).collect();
        assert!(wrong.is_empty(), "{line}\n{wrong:?}");
    }
    let mut record = Record::empty();
    let report = record.import(&page.right.join("\n"));
    assert_eq!(report.wrong, []);
    assert_eq!(report.taken as usize, page.right.len() - 1, "all but the first line are facts");
}

#[test]
fn what_no_version_knows_comes_out_again() {
    let mut record = Record::empty();
    record.import(&page().right.join("\n"));
    let out = record.export();
    assert!(out.contains(r#""weather":{"sky":"clear"}"#), "{out}");
    let mut other = Record::empty();
    other.import(&out);
    assert_eq!(other.export(), out);
}

#[test]
fn every_wrong_example_is_refused_by_core_and_by_the_schema() {
    let (page, validator) = (page(), schema::validator());
    assert!(page.wrong.len() > 15);
    for line in &page.wrong {
        let value: Value = serde_json::from_str(line).unwrap();
        assert!(!validator.is_valid(&value), "the schema lets this through: {line}");
        assert_refused(&page.right, line);
    }
}

#[test]
fn what_the_schema_can_not_see_is_refused_by_core() {
    let (page, validator) = (page(), schema::validator());
    assert!(page.wrong_in_meaning.len() > 5);
    for line in &page.wrong_in_meaning {
        if let Ok(value) = serde_json::from_str::<Value>(line) {
            assert!(validator.is_valid(&value), "the schema sees this, so it belongs in the first table: {line}");
        }
        assert_refused(&page.right, line);
    }
}

/// The line is told as wrong by its number, and the record stays as it was.
fn assert_refused(right: &[String], line: &str) {
    let mut record = Record::empty();
    record.import(&right.join("\n"));
    let before = record.export();
    let report = record.import(&format!("{{\"drawwell\":\"exchange\",\"version\":1}}\n{line}\n"));
    assert_eq!(report.wrong.iter().map(|wrong| wrong.line).collect::<Vec<_>>(), [2], "{line}");
    assert_eq!(report.taken, 0, "{line}");
    assert_eq!(record.export(), before, "{line}");
}

#[test]
fn wrong_lines_do_not_keep_others_out_and_the_first_are_told() {
    let mut lines = page().right;
    let wrong = MOST_WRONG_LINES_TOLD + 10;
    for number in 0..wrong {
        lines.insert(2, format!("{{\"fact\":\"note\",\"id\":\"note {number}\"}}"));
    }
    let report = Record::empty().import(&lines.join("\n"));
    assert_eq!(report.taken as usize, page().right.len() - 1);
    assert_eq!(report.wrong_count as usize, wrong);
    assert_eq!(report.wrong.len(), MOST_WRONG_LINES_TOLD);
    assert_eq!(report.wrong[0].line, 3);
}

#[test]
fn a_newer_file_is_refused_whole() {
    let mut record = Record::empty();
    let file = "{\"drawwell\":\"exchange\",\"version\":2}\n".to_owned() + &page().right[1];
    let now = demo_family::present().instant();
    let refused = import(record.journal(), &mut file.as_bytes(), now).unwrap_err();
    assert_eq!(refused.kind, trouble::Kind::Newer);
    assert_eq!(record.export().lines().count(), 1);
}
