//! What the consultant keeps once for all families: gauges, pumps with their makers'
//! ranges, pumps on offer with the figures of their sheets, flanges in stock, her own card.

use super::super::shapes::{Event, ListGroup, ListRow, ListScreen, Place, Screen};
use super::super::{kit, View};
use crate::record::{Kind, RULES, SETTINGS};
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Desk, words.say("desk-title"), words.say("desk-subtitle"))?;
    frame.places = Vec::new();
    let mut groups = vec![own(view)];
    for kind in [Kind::Gauge, Kind::Pump, Kind::OfferedPump] {
        groups.push(kit::group(view, kind)?);
    }
    let mut stock = opens(view, "desk-stock", "desk-settings", Place::Entry { id: SETTINGS.to_owned() });
    stock.rows.push(row(view, "desk-rules", Place::Entry { id: RULES.to_owned() }));
    stock.rows.push(crate::screen::recovery::row(view));
    groups.push(stock);
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("desk-intro"), groups } })
}

fn own(view: &View<'_>) -> ListGroup {
    opens(view, "desk-own", "own-card", Place::OwnCard)
}

fn opens(view: &View<'_>, group: &str, key: &str, place: Place) -> ListGroup {
    let rows = vec![row(view, key, place)];
    ListGroup { key: group.to_owned(), title: view.words().say(group), rows, empty: String::new(), add: Vec::new() }
}

fn row(view: &View<'_>, key: &str, place: Place) -> ListRow {
    let words = view.words();
    let row = view.text_row(words.say(key), words.say(&format!("{key}-detail")));
    row.opens(format!("open-{key}"), Event::Go { place })
}
