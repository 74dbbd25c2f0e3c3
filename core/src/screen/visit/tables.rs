//! The record as tables, each a file for a spreadsheet.

use super::super::shapes::{Action, Event, Export, ListGroup, ListScreen, Place, Screen, Sign, Weight};
use super::super::View;
use crate::share::spreadsheet::Table;
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Tables, words.say("tables-page"), String::new())?;
    frame.back = Some(view.back());
    let tables = Table::ALL.iter().map(|table| {
        let name = table.name();
        let event = Event::Export { what: Export::Table { table: name.to_owned() } };
        Action::new(format!("table-{name}"), words.say(&format!("table-{name}")), event).sign(Sign::Out)
    });
    let all = Action::new("table-all", words.say("table-all"), Event::Export { what: Export::Tables })
        .detail(words.say("table-all-detail"))
        .sign(Sign::Out)
        .weight(Weight::Main);
    let group = |key: &str, title: String, add: Vec<Action>| ListGroup {
        key: key.to_owned(),
        title,
        rows: Vec::new(),
        empty: String::new(),
        add,
    };
    let groups = vec![
        group("all-tables", String::new(), vec![all]),
        group("tables", words.say("tables-one-by-one"), tables.collect()),
    ];
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("tables-intro"), groups } })
}
