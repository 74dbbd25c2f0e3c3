//! What is closed on a screen of somebody who only reads, and what is not there on a desk.

use super::changes::Changes;
use crate::screen::shapes::Event;

/// The desk has no places at its foot: the families stand beside it.
pub(super) fn without_places(mut screen: crate::screen::shapes::Screen) -> crate::screen::shapes::Screen {
    let frame = screen.frame_mut();
    frame.places.clear();
    frame.notices.retain(|notice| notice.key != "caution");
    screen
}

/// Closes every action of a screen that would change a record that is only read.
pub(super) fn closed(screen: crate::screen::shapes::Screen) -> crate::screen::shapes::Screen {
    let Ok(mut value) = serde_json::to_value(&screen) else { return screen };
    close(&mut value);
    serde_json::from_value(value).unwrap_or(screen)
}

fn close(value: &mut serde_json::Value) {
    match value {
        serde_json::Value::Array(all) => all.iter_mut().for_each(close),
        serde_json::Value::Object(all) => {
            // An action is what has an event and may be open.
            let changes = match (all.get("event"), all.get("open")) {
                (Some(event), Some(serde_json::Value::Bool(_))) => {
                    serde_json::from_value::<Event>(event.clone()).is_ok_and(|event| !Changes::of(&event).only_reads())
                }
                _ => false,
            };
            if changes {
                all.insert("open".to_owned(), serde_json::Value::Bool(false));
            }
            all.values_mut().for_each(close);
        }
        _ => {}
    }
}
