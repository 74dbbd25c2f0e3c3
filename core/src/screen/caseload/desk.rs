//! What the consultant keeps once for all families: gauges, pumps with their makers'
//! ranges, flanges in stock, her own card.

use super::super::shapes::{Action, Event, ListGroup, ListScreen, Place, Screen, Sign, Weight};
use super::super::{kit, View};
use crate::record::{Kind, SETTINGS};
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Desk, words.say("desk-title"), words.say("desk-subtitle"))?;
    frame.places = Vec::new();
    let mut groups = vec![own(view), kit::group(view, Kind::Gauge)?, kit::group(view, Kind::Pump)?];
    groups.push(opens(view, "desk-stock", "desk-settings", Place::Entry { id: SETTINGS.to_owned() }));
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("desk-intro"), groups } })
}

fn own(view: &View<'_>) -> ListGroup {
    opens(view, "desk-own", "own-card", Place::OwnCard)
}

fn opens(view: &View<'_>, group: &str, key: &str, place: Place) -> ListGroup {
    let words = view.words();
    let mut row = view.told_row(words.say(key), words.say(&format!("{key}-detail")));
    row.open = Some(
        Action::new(format!("open-{key}"), row.title.clone(), Event::Go { place })
            .spoken(row.spoken.clone())
            .sign(Sign::None)
            .weight(Weight::Quiet),
    );
    ListGroup { key: group.to_owned(), title: words.say(group), rows: vec![row], empty: String::new(), add: Vec::new() }
}
