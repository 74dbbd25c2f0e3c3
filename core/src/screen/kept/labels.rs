//! Labels for containers, as JSON for the typesetter: what is in it, when it was pumped, until when
//! it is good, and a code that opens it.

use serde_json::{json, Value};

use super::text::{good_until, left, name, when, Days};
use crate::answer::keeping::Kept;
use crate::gather::keeping::{one, KeptMilk};
use crate::screen::qr_code;
use crate::screen::section::section;
use crate::screen::shapes::{Action, Event, Export, LabelPaper, Section, Sign};
use crate::screen::View;
use crate::share::bottle_link;
use crate::trouble::{Kind, Trouble};

/// Each paper, with the word of its action.
const PAPERS: [(LabelPaper, &str); 4] = [
    (LabelPaper::A4Of24, "labels-a4-24"),
    (LabelPaper::A4Of65, "labels-a4-65"),
    (LabelPaper::LetterOf30, "labels-letter-30"),
    (LabelPaper::Strip, "labels-strip"),
];

/// Labels on a page, in mm. Of usual sheets, from memory.
struct Grid {
    page: [f64; 2],
    label: [f64; 2],
    columns: u32,
    rows: u32,
    left: f64,
    top: f64,
    between: f64,
}

const fn grid(on: LabelPaper) -> Grid {
    match on {
        LabelPaper::A4Of24 => {
            Grid { page: [210.0, 297.0], label: [70.0, 37.0], columns: 3, rows: 8, left: 0.0, top: 0.5, between: 0.0 }
        }
        LabelPaper::A4Of65 => Grid {
            page: [210.0, 297.0],
            label: [38.1, 21.2],
            columns: 5,
            rows: 13,
            left: 4.75,
            top: 10.7,
            between: 2.5,
        },
        LabelPaper::LetterOf30 => Grid {
            page: [215.9, 279.4],
            label: [66.675, 25.4],
            columns: 3,
            rows: 10,
            left: 4.7625,
            top: 12.7,
            between: 3.175,
        },
        LabelPaper::Strip => {
            Grid { page: [62.0, 29.0], label: [62.0, 29.0], columns: 1, rows: 1, left: 0.0, top: 0.0, between: 0.0 }
        }
    }
}

/// Labels of one container, or of all that are not gone.
pub(crate) fn to_json(view: &View<'_>, on: LabelPaper, container: &str) -> Result<String, Trouble> {
    let words = view.words();
    let kept = match container.is_empty() {
        true => KeptMilk::read(view)?.kept,
        false => one(view, container)?.into_iter().collect(),
    };
    if kept.is_empty() {
        return Err(Trouble::new(Kind::Missing, "trouble-no-such-record"));
    }
    let labels = kept.iter().map(|one| label(view, one)).collect::<Result<Vec<Value>, Trouble>>()?;
    let grid = grid(on);
    let [width, height] = grid.page;
    let [label_width, label_height] = grid.label;
    Ok(json!({
        "form": "labels",
        "title": words.say("labels-title"),
        "language": view.texts.language(),
        "page_width": width,
        "page_height": height,
        "label_width": label_width,
        "label_height": label_height,
        "columns": grid.columns,
        "rows": grid.rows,
        "left": grid.left,
        "top": grid.top,
        "between": grid.between,
        "labels": labels,
    })
    .to_string())
}

fn label(view: &View<'_>, one: &Kept) -> Result<Value, Trouble> {
    let words = view.words();
    let called = one.label.clone().unwrap_or_default();
    Ok(json!({
        "label": called,
        "amount": left(view, one),
        "expressed": words.with("kept-expressed", &[("when", when(view, one.expressed, Days::ByDate).into())]),
        "until": good_until(view, one, Days::ByDate),
        "code": qr_code::svg(&bottle_link::write(&one.id))?,
        "code_text": words.with("labels-code", &[("name", name(view, one.label.as_deref()).into())]),
    }))
}

/// The ways to print them.
pub(super) fn section_of(view: &View<'_>, container: &str) -> Section {
    let words = view.words();
    let action = |(on, key): (LabelPaper, &str)| {
        let what = Export::Labels { on, container: container.to_owned() };
        Action::new(key, words.say(key), Event::Export { what }).sign(Sign::Out)
    };
    Section {
        lines: vec![words.say("labels-how")],
        actions: PAPERS.into_iter().map(action).collect(),
        ..section("labels", words.say("section-labels"))
    }
}
