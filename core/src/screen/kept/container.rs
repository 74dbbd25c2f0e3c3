//! One container: until when it is good, what can be done with it, and what happened to it.

use super::labels;
use super::text::{clock, good_until, left, name, odd, place, when, Days};
use crate::answer::keeping::{refused, GoodUntil, Kept};
use crate::gather::keeping::{events, one};
use crate::quantity::{Entered, Quantity, Unit, Volume};
use crate::record::choices::THROWN_OUT;
use crate::record::{text, Fields, Happened, KeptIn, Kind, MilkEvent, Taken};
use crate::screen::section::section;
use crate::screen::shapes::{Action, Event, FindingsScreen, ListRow, MilkDeed, Place, Screen, Section, Sign, Weight};
use crate::screen::View;
use crate::trouble::{Kind as TroubleKind, Trouble};

/// Shares of what is left that are offered to be given.
const SHARES: [f64; 2] = [0.25, 0.5];

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let gone = || Trouble::new(TroubleKind::Missing, "trouble-no-such-record");
    let (kind, _) = view.record(id)?;
    let kept = one(view, id)?.filter(|_| kind == Kind::Container).ok_or_else(gone)?;
    let label = name(view, kept.label.as_deref());
    let expressed = words.with("kept-expressed", &[("when", when(view, kept.expressed, Days::AsOfToday).into())]);
    let mut frame = view.frame(&Place::Container { id: id.to_owned() }, label, expressed)?;
    frame.back = Some(view.back());
    let headline = if kept.is_gone { words.say("kept-is-gone") } else { place(view, &kept) };
    let figure = if kept.is_gone { String::new() } else { left(view, &kept) };
    let caption = if kept.is_gone { String::new() } else { good_until(view, &kept, Days::AsOfToday) };
    let mut lines = odd(view, &kept);
    if !kept.is_gone {
        lines.extend(clock(view, &kept));
        if kept.is_past(view.now) {
            lines.push(words.say("kept-past-what-now"));
        }
        if let GoodUntil::At { feed_goes_on: true, .. } = kept.good_until {
            lines.push(words.say("kept-note-the-end"));
        }
    }
    let mut sections = deeds(view, &kept);
    if !kept.is_gone {
        sections.push(labels::section_of(view, id));
    }
    let history = events(view, id)?;
    if !history.is_empty() {
        let rows = history.iter().rev().map(|(event, fields)| happened_row(view, event, fields)).collect();
        sections.push(Section { rows, ..section("kept-history", words.say("section-kept-history")) });
    }
    let open = Event::Go { place: Place::Entry { id: id.to_owned() } };
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [headline.as_str(), figure.as_str(), caption.as_str()].join(" "),
            headline,
            figure,
            caption,
            dial: None,
            lines,
            asks: Vec::new(),
            actions: vec![Action::new("edit-container", words.say("kept-correct"), open)
                .sign(Sign::Settings)
                .weight(Weight::Quiet)],
            sections,
        },
    })
}

/// What can be done with it now, by what it is about.
fn deeds(view: &View<'_>, kept: &Kept) -> Vec<Section> {
    let words = view.words();
    let action = |key: String, label: String, what: Happened, amount: Option<Volume>, deed: MilkDeed| {
        let event = Event::Milk { container: kept.id.clone(), deed };
        refused(kept, what, amount).is_none().then(|| Action::new(key, label, event))
    };
    let given = Happened::Taken(Taken::Given);
    let all = MilkDeed::Given { typed: String::new(), unit: String::new() };
    let mut give: Vec<Action> = action("give-all".to_owned(), words.say("kept-give-all"), given, None, all)
        .into_iter()
        .map(|all| all.sign(Sign::In))
        .collect();
    give.extend(parts(view, kept).into_iter().filter_map(|amount| {
        let label = words.with("kept-give-some", &[("amount", words.entered(&amount, amount.unit()).into())]);
        let deed = MilkDeed::Given { typed: amount.typed().to_owned(), unit: amount.unit().ucum().to_owned() };
        action(format!("give-{}", amount.typed()), label, given, Some(amount.quantity()), deed)
    }));
    let to = KeptIn::ALL.into_iter().filter(|to| kept.place != Some(*to)).filter_map(|to| {
        let label = words.say(&format!("choice-kept-in-{}", to.name()));
        let deed = MilkDeed::Moved { kept_in: to.name().to_owned() };
        action(format!("move-{}", to.name()), label, Happened::Moved(to), None, deed)
    });
    let simple = |what: Happened, deed: MilkDeed| {
        let label = words.say(&format!("choice-happened-{}", what.name()));
        action(format!("milk-{}", what.name()), label, what, None, deed)
    };
    let begun = kept.is_begun;
    let mut states: Vec<Option<Action>> = vec![
        simple(Happened::Thawing, MilkDeed::Thawing),
        simple(Happened::Thawed, MilkDeed::Thawed),
        simple(Happened::Warmed, MilkDeed::Warmed),
    ];
    states.push(match begun {
        true => simple(Happened::FeedEnded, MilkDeed::FeedEnded),
        false => simple(Happened::Begun, MilkDeed::Begun),
    });
    let thrown = Happened::Taken(Taken::ThrownOut);
    let mut out: Vec<Action> = THROWN_OUT
        .iter()
        .filter_map(|because| {
            let label = words.say(&format!("choice-thrown-out-{because}"));
            action(
                format!("throw-{because}"),
                label,
                thrown,
                None,
                MilkDeed::ThrownOut { because: (*because).to_owned() },
            )
        })
        .collect();
    out.extend(simple(Happened::Taken(Taken::GivenAway), MilkDeed::GivenAway));
    out.extend(simple(Happened::Taken(Taken::LostInPowerCut), MilkDeed::LostInPowerCut));
    let all = [
        ("kept-give", give),
        ("kept-move", to.collect()),
        ("kept-state", states.into_iter().flatten().collect()),
        ("kept-out", out),
    ];
    all.into_iter()
        .filter(|(_, actions)| !actions.is_empty())
        .map(|(key, actions)| Section { actions, ..section(key, words.say(&format!("section-{key}"))) })
        .collect()
}

/// Some of what is left, rounded to what can be read off.
fn parts(view: &View<'_>, kept: &Kept) -> Vec<Entered<Volume>> {
    let unit = view.settings.volume;
    let Some(left) = kept.left else { return Vec::new() };
    let step = if unit == crate::quantity::VolumeUnit::Milliliter { 5.0 } else { 0.25 };
    let part = |share: f64| {
        let amount = (left.in_unit(unit) * share / step).round() * step;
        (amount > 0.0 && amount < left.in_unit(unit)).then(|| Entered::of((amount * 100.0).round() / 100.0, unit))
    };
    let mut found: Vec<Entered<Volume>> = Vec::new();
    for amount in SHARES.into_iter().filter_map(part) {
        if found.iter().all(|known| known.typed() != amount.typed()) {
            found.push(amount);
        }
    }
    found
}

/// Something that happened, with when and how much.
fn happened_row(view: &View<'_>, event: &MilkEvent, fields: &Fields) -> ListRow {
    let words = view.words();
    let what = match event.what {
        Happened::Moved(to) => {
            let to = words.say(&format!("choice-kept-in-{}", to.name()));
            words.with("kept-moved-to", &[("place", to.into())])
        }
        other => words.say(&format!("choice-happened-{}", other.name())),
    };
    let mut detail = vec![when(view, event.at.instant(), Days::AsOfToday)];
    detail.extend(
        fields.get("taken").and_then(Entered::<Volume>::from_json).map(|t| words.entered(&t, view.settings.volume)),
    );
    detail.extend(text(fields, "thrown_out").map(|because| words.say(&format!("choice-thrown-out-{because}"))));
    let open = Event::Go { place: Place::Entry { id: event.id.clone() } };
    view.text_row(what, detail.join(" \u{b7} ")).opens(format!("open-{}", event.id), open)
}
