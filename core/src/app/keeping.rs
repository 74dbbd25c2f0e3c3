//! Events of milk that is kept: containers are filled, and what happens to them is written down, each
//! a fact of its own, so that two phones add up.

use serde_json::{json, Value};

use super::kit::of_kind;
use super::state::{buzz, App, Present};
use crate::answer::keeping::{refused, Refusal, State};
use crate::gather::keeping::{not_kept_yet, one, KeptMilk};
use crate::gather::Record;
use crate::quantity::{Entered, Quantity, Unit, Volume, VolumeUnit};
use crate::record::choices::CLEANED;
use crate::record::{check, text, Amount, Happened, KeptIn, Kind, Session, Taken};
use crate::screen::shapes::{Effect, MilkDeed};
use crate::trouble::{Detail, Trouble};

impl App {
    /// One container with what came and is in none yet.
    pub(super) fn keep_milk(&mut self, session: &str, kept_in: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        of_kind(&record, session, Kind::Session)?;
        let of = record.session(session)?;
        let amount = not_kept_yet(&record, &of)?.filter(|amount| amount.canonical() > 0.0);
        let amount = amount.ok_or_else(|| Trouble::bad("amount", "bad-nothing-to-keep"))?;
        check::field(Kind::Container, "kept_in", &json!(kept_in))?;
        let at = of.started.clone().unwrap_or_else(|| record.present());
        let label = KeptMilk::read(&record)?.next_label();
        let amount = Amount::Known(as_read(&record, &of, amount));
        let values: [(&str, Value); 6] = [
            ("kind", json!(Kind::Container.name())),
            ("at", at.to_json()),
            ("amount", amount.to_json()),
            ("kept_in", json!(kept_in)),
            ("label", json!(label.to_string())),
            ("sessions", json!(session)),
        ];
        self.journal_mut()?.act("keep-milk", session, present.now, |w| {
            let id = w.new_id();
            values.iter().try_for_each(|(field, value)| w.set(&id, field, value))
        })?;
        Ok(vec![buzz("keep-milk")])
    }

    /// To what is in a container already: it is as old as the oldest in it.
    pub(super) fn pour_into(
        &mut self,
        session: &str,
        container: &str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        of_kind(&record, session, Kind::Session)?;
        let fields = of_kind(&record, container, Kind::Container)?;
        let of = record.session(session)?;
        let amount = not_kept_yet(&record, &of)?.filter(|amount| amount.canonical() > 0.0);
        let amount = amount.ok_or_else(|| Trouble::bad("amount", "bad-nothing-to-keep"))?;
        let kept = one(&record, container)?.filter(|kept| !kept.is_gone && kept.state == State::Fresh);
        if kept.is_none() {
            return Err(Trouble::bad("container", "bad-pour"));
        }
        let before = fields.get("amount").and_then(Amount::from_json).and_then(|amount| amount.known());
        let before = before.ok_or_else(|| Trouble::bad("amount", "bad-pour-unknown"))?;
        let together = Volume::from_canonical(((before.canonical() + amount.canonical()) * 10.0).round() / 10.0);
        let together = Amount::Known(as_read(&record, &of, together)).to_json();
        check::field(Kind::Container, "amount", &together)?;
        let sessions = format!("{} {session}", text(&fields, "sessions").unwrap_or_default());
        let sessions = json!(sessions.trim());
        check::field(Kind::Container, "sessions", &sessions)?;
        let began = of
            .started
            .as_ref()
            .filter(|began| crate::record::moment(&fields, "at").is_some_and(|at| began.instant() < at.instant()));
        self.journal_mut()?.act("pour-into", container, present.now, |w| {
            w.set(container, "amount", &together)?;
            if let Some(began) = began {
                w.set(container, "at", &began.to_json())?;
            }
            w.set(container, "sessions", &sessions)
        })?;
        Ok(vec![buzz("pour-into")])
    }

    /// Something happened to a container. What can't be is refused with why.
    pub(super) fn milk(&mut self, container: &str, deed: &MilkDeed, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        of_kind(&record, container, Kind::Container)?;
        let kept = one(&record, container)?.ok_or_else(|| Trouble::bad("container", "bad-reference"))?;
        let (what, taken) = happened(deed)?;
        if let Some(why) = refused(&kept, what, taken.as_ref().map(Entered::quantity)) {
            return Err(Trouble::bad("happened", refusal(why)));
        }
        // All that is left is said as such: so nothing is left over by a rounding.
        let all = |taken: &Entered<Volume>| {
            kept.left.is_some_and(|left| (taken.quantity().canonical() - left.canonical()).abs() < 0.05)
        };
        let taken = taken.filter(|taken| !all(taken));
        let mut values: Vec<(&str, Value)> = vec![
            ("kind", json!(Kind::MilkEvent.name())),
            ("at", record.present().to_json()),
            ("container", json!(container)),
            ("happened", json!(what.name())),
        ];
        if let Happened::Moved(place) = what {
            values.push(("kept_in", json!(place.name())));
        }
        if let MilkDeed::ThrownOut { because } = deed {
            check::field(Kind::MilkEvent, "thrown_out", &json!(because))?;
            values.push(("thrown_out", json!(because)));
        }
        if let Some(taken) = &taken {
            check::field(Kind::MilkEvent, "taken", &taken.to_json())?;
            values.push(("taken", taken.to_json()));
        }
        let feed = match what {
            Happened::Taken(Taken::Given) => feed(&record, &kept, taken)?,
            _ => Vec::new(),
        };
        self.journal_mut()?.act("milk", container, present.now, |w| {
            // A new id is new once something is written under it.
            let meal = w.new_id();
            feed.iter().try_for_each(|(field, value)| w.set(&meal, field, value))?;
            let id = w.new_id();
            if !feed.is_empty() {
                w.set(&id, "feed", &json!(meal))?;
            }
            values.iter().try_for_each(|(field, value)| w.set(&id, field, value))
        })?;
        Ok(vec![buzz("milk")])
    }

    pub(super) fn cleaned(&mut self, how: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        if !CLEANED.contains(&how) {
            return Err(Trouble::bad("cleaned", "bad-choice").with("words", Detail::choices(CLEANED.iter().copied())));
        }
        let at = self.read(present)?.present().to_json();
        self.journal_mut()?.act("cleaned", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::Cleaning.name()))?;
            w.set(&id, "at", &at)?;
            w.set(&id, "cleaned", &json!(how))
        })?;
        Ok(vec![buzz("cleaned")])
    }
}

/// An amount in the unit that is read, with the figures of a reading where it is one.
fn as_read(record: &Record<'_>, session: &Session, amount: Volume) -> Entered<Volume> {
    let typed = [&session.together, &session.left, &session.right].into_iter().flatten().find_map(|part| match part {
        Amount::Known(typed) if typed.quantity() == amount => Some(typed.clone()),
        _ => None,
    });
    let unit = record.settings.volume;
    let rounded = |unit: VolumeUnit| {
        let places = if unit == VolumeUnit::Milliliter { 10.0 } else { 100.0 };
        Entered::of((amount.in_unit(unit) * places).round() / places, unit)
    };
    typed.unwrap_or_else(|| rounded(unit))
}

/// What a tap says happened, and how much was taken where it was typed.
fn happened(deed: &MilkDeed) -> Result<(Happened, Option<Entered<Volume>>), Trouble> {
    Ok(match deed {
        MilkDeed::Moved { kept_in } => {
            let place = KeptIn::named(kept_in).ok_or_else(|| {
                Trouble::bad("kept_in", "bad-choice")
                    .with("words", Detail::choices(KeptIn::ALL.iter().map(|p| p.name())))
            })?;
            (Happened::Moved(place), None)
        }
        MilkDeed::Thawing => (Happened::Thawing, None),
        MilkDeed::Thawed => (Happened::Thawed, None),
        MilkDeed::Warmed => (Happened::Warmed, None),
        MilkDeed::Begun => (Happened::Begun, None),
        MilkDeed::FeedEnded => (Happened::FeedEnded, None),
        MilkDeed::Given { typed, .. } if typed.trim().is_empty() => (Happened::Taken(Taken::Given), None),
        MilkDeed::Given { typed, unit } => {
            let unit = VolumeUnit::from_ucum(unit).ok_or_else(|| Trouble::bad("taken", "bad-unit"))?;
            let taken = Entered::parse(typed, unit).map_err(|_| Trouble::bad("taken", "bad-number"))?;
            (Happened::Taken(Taken::Given), Some(taken))
        }
        MilkDeed::GivenAway => (Happened::Taken(Taken::GivenAway), None),
        MilkDeed::ThrownOut { .. } => (Happened::Taken(Taken::ThrownOut), None),
        MilkDeed::LostInPowerCut => (Happened::Taken(Taken::LostInPowerCut), None),
    })
}

const fn refusal(why: Refusal) -> &'static str {
    match why {
        Refusal::FrozenAgain => "bad-frozen-again",
        Refusal::NotFrozen => "bad-not-frozen",
        Refusal::Gone => "bad-milk-gone",
        Refusal::MoreThanThereIs => "bad-more-than-there-is",
    }
}

/// The feed that was given: of the only child there is.
fn feed(
    record: &Record<'_>,
    kept: &crate::answer::keeping::Kept,
    taken: Option<Entered<Volume>>,
) -> Result<Vec<(&'static str, Value)>, Trouble> {
    let unit = record.settings.volume;
    let left = || kept.left.map(|left| Entered::of((left.in_unit(unit) * 100.0).round() / 100.0, unit));
    let amount = taken.or_else(left).map_or(Amount::Unknown, Amount::Known);
    let mut values = vec![
        ("kind", json!(Kind::Feed.name())),
        ("at", record.present().to_json()),
        ("amount", amount.to_json()),
        ("milk", json!("own_stored")),
    ];
    if let [child] = record.journal.of_kind(Kind::Child)?.as_slice() {
        values.push(("child", json!(child.subject)));
    }
    Ok(values)
}
