//! The record as tables, each a file for a spreadsheet.

use super::super::shapes::{Action, Event, ListGroup, ListScreen, Place, Screen, Sign};
use super::super::View;
use crate::share::spreadsheet::Table;
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Tables, words.say("tables-page"), String::new())?;
    frame.back = Some(view.back());
    let tables = Table::ALL.iter().map(|table| {
        let name = table.name();
        let event = Event::HandOverSpreadsheet { table: name.to_owned() };
        Action::new(format!("table-{name}"), words.say(&format!("table-{name}")), event).sign(Sign::Out)
    });
    let group = ListGroup {
        key: "tables".to_owned(),
        title: String::new(),
        rows: Vec::new(),
        empty: String::new(),
        add: tables.collect(),
    };
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("tables-intro"), groups: vec![group] } })
}
