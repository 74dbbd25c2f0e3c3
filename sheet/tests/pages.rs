//! A page comes of whatever core may say, twice the same, and of nothing else.

#![allow(clippy::indexing_slicing, reason = "a test that meets what it did not expect stops there")]

use drawwell_sheet::{set, Made, NotSet};
use serde_json::{json, Value};

const MADE: Made = Made { year: 2026, month: 8, day: 14, hour: 12, minute: 40, second: 0, offset_minutes: 120 };

fn section(key: &str) -> Value {
    json!({
        "key": key, "title": key, "headline": "Holding", "figure": "about 640 mL a day", "caption": "610 to 670 mL",
        "lines": ["A line."], "weeks": null, "plot": null,
        "rows": [{ "label": "Left", "value": "300 mL", "note": "one\ntwo" }, { "label": "#x", "value": "", "note": "" }],
    })
}

fn sheet(who: &str, sections: Vec<Value>) -> String {
    json!({
        "title": "Visit sheet", "language": "en", "paper": "a4", "heading": "Visit sheet", "who": who,
        "span": "31 July 2026 to 14 August 2026", "made": "Made 14 August 2026", "sections": sections,
        "foot": "This is not a diagnosis.", "footer": "Drawwell", "seen": ["Seen by", "On"], "page": "Page", "undrawn_words": "{sign}: not drawn",
    })
    .to_string()
}

#[test]
fn every_section_is_set_with_all_it_may_hold() {
    let all = ["cautions", "signs", "questions", "child", "observed", "supply", "rhythm", "pain", "sources"];
    let mut sections: Vec<Value> = all.iter().map(|key| section(key)).collect();
    if let Some(weeks) = sections.iter_mut().find(|s| s["key"] == "supply").and_then(|s| s.get_mut("weeks")) {
        *weeks = json!({
            "bars": [
                { "from": 0.0, "to": 0.5, "height": 0.6, "by_the_clock": 0.5, "observed": 0.8, "counts": true },
                { "from": 0.5, "to": 1.0, "height": null, "by_the_clock": null, "observed": 0.0, "counts": false },
            ],
            "ribbon": [
                { "at": 0.1, "low": 0.5, "middle": 0.6, "high": 0.7 },
                { "at": 0.9, "low": 0.5, "middle": 0.6, "high": 0.7 },
            ],
            "breaks": [{ "from": 0.4, "to": 0.5, "label": "2 August" }], "aim": { "at": 0.8, "label": "Aim" },
            "legend": "Hatched: not observed.", "ticks": [{ "at": 0.0, "label": "1 August" }],
            "scale": [{ "at": 1.0, "label": "1000 mL" }], "spoken": "Two days.",
        });
    }
    let page = sheet("Mara #eval(1) *a*", sections);
    let first = set(&page, MADE);
    assert!(first.as_ref().is_ok_and(|pdf| pdf.starts_with(b"%PDF-1.7")), "{:?}", first.err());
    assert_eq!(first, set(&page, MADE), "the same in gives the same out");
}

#[test]
fn a_page_with_nothing_on_it_is_a_page() {
    assert!(set(&sheet("", Vec::new()), MADE).is_ok());
}

#[test]
fn what_is_no_sheet_is_refused() {
    for data in ["", "[]", "3", "{"] {
        assert_eq!(set(data, MADE), Err(NotSet::Data), "{data}");
    }
    assert!(matches!(set("{}", MADE), Err(NotSet::Page(_))));
}
