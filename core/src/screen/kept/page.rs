//! All milk that is kept.

use super::text::{good_until, left, name, place, rules, source, when, Days};
use super::{cleaning, labels, shelf};
use crate::answer::keeping::{lasts, InForce, Kept, StepsBack};
use crate::gather::keeping::{need, sum, KeptMilk};
use crate::guidance::KeepingRules;
use crate::quantity::Quantity;
use crate::record::{KeptIn, KEEPING};
use crate::screen::section::section;
use crate::screen::shapes::{
    Action, Event, FindingsScreen, ListRow, Notice, Place, Screen, Section, Sign, Tone, Weight,
};
use crate::screen::View;
use crate::time::Span;
use crate::trouble::Trouble;

/// What lapses within this is named beforehand.
const WEEK: Span = Span::hours(7 * 24);
/// An amount to begin with, in mL, where it is asked what to use first.
const FIRST_WISHED: u32 = 60;
/// Rows of one place that are listed.
const LISTED: usize = 40;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Kept, words.say("kept-title"), words.say("kept-subtitle"))?;
    frame.back = Some(view.back());
    let milk = KeptMilk::read(view)?;
    let (amount, unknown) = milk.usable(view.now);
    let usable = milk.kept.iter().filter(|one| one.is_usable(view.now)).count();
    let (headline, figure, caption) = match milk.kept.is_empty() {
        true => (words.say("kept-nothing"), String::new(), words.say("kept-how-to-begin")),
        false => {
            let needs = [("bottles", usable.into()), ("unknown", unknown.into())];
            let key = if unknown == 0 { "kept-caption" } else { "kept-caption-partly" };
            (words.say("kept-headline"), words.volume(amount), words.with(key, &needs))
        }
    };
    let mut sections = Vec::new();
    if let Some(shelf) = shelf::picture(view, &milk.kept) {
        sections.push(Section { shelf: Some(shelf), ..section("shelf", words.say("section-shelf")) });
    }
    sections.extend(places(view, &milk.kept));
    if !milk.kept.is_empty() {
        sections.push(labels::section_of(view, ""));
    }
    sections.push(cleaning::of(view, &milk.in_force, milk.needs_unit.is_some())?);
    sections.push(rules_section(view, &milk));
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [headline.as_str(), figure.as_str(), caption.as_str()].join(" "),
            headline,
            figure,
            caption,
            dial: None,
            lines: lines(view, &milk)?,
            asks: past(view, &milk).into_iter().collect(),
            actions: actions(view, &milk),
            sections,
        },
    })
}

fn actions(view: &View<'_>, milk: &KeptMilk) -> Vec<Action> {
    let words = view.words();
    let mut actions = Vec::new();
    if milk.kept.iter().any(|one| one.is_usable(view.now)) {
        let place = Place::UseFirst { milliliters: FIRST_WISHED };
        actions.push(
            Action::new("use-first", words.say("kept-use-first"), Event::Go { place })
                .detail(words.say("kept-use-first-detail"))
                .sign(Sign::Later)
                .weight(Weight::Main),
        );
    }
    let add = Event::Add { kind: "container".to_owned(), days_back: 0 };
    actions.push(Action::new("add-container", words.say("add-container"), add).sign(Sign::Add));
    actions
}

/// What lapses within a week, how long what is frozen lasts, and whether two have one label.
fn lines(view: &View<'_>, milk: &KeptMilk) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let mut lines = Vec::new();
    if let InForce::StepsBack(why) = &milk.in_force {
        lines.push(words.say(steps_back(*why)));
    }
    let (soon, _) = milk.lapsing(view.now, WEEK);
    if let Some(first) = soon.first().and_then(|one| one.good_until.next_end(view.now)) {
        lines.push(words.with(
            "kept-lapse-this-week",
            &[("bottles", soon.len().into()), ("when", when(view, first, Days::AsOfToday).into())],
        ));
    }
    let is_frozen = |one: &&Kept| one.is_usable(view.now) && one.place.is_some_and(KeptIn::freezes);
    let (frozen, _) = sum(milk.kept.iter().filter(is_frozen));
    if frozen.canonical() > 0.0 {
        lines.push(match need(view)?.and_then(|need| lasts(frozen, need)) {
            Some(days) => words.with(
                "kept-lasts",
                &[
                    ("amount", words.volume(frozen).into()),
                    ("days", days_of(days.value).into()),
                    ("low", days_of(days.low).into()),
                    ("high", days_of(days.high).into()),
                ],
            ),
            None => words.with("kept-lasts-unknown", &[("amount", words.volume(frozen).into())]),
        });
    }
    let twice = milk.kept.iter().filter_map(|one| one.label.as_deref()).find(|label| milk.labelled(label) > 1);
    lines.extend(twice.map(|label| words.with("kept-two-labels", &[("label", label.into())])));
    Ok(lines)
}

fn days_of(span: Span) -> String {
    let days = span.in_minutes() as f64 / 1440.0;
    crate::quantity::say_decimal(days, usize::from(days < 10.0))
}

pub(super) const fn steps_back(why: StepsBack) -> &'static str {
    match why {
        StepsBack::InHospital => "kept-steps-back-hospital",
        StepsBack::Preterm => "kept-steps-back-preterm",
        StepsBack::WeakDefences => "kept-steps-back-defences",
        StepsBack::NotEntered => "kept-units-rules-not-entered",
    }
}

/// Those that are past their time: what the rules say, and nobody's fault.
fn past(view: &View<'_>, milk: &KeptMilk) -> Option<Notice> {
    let (_, past) = milk.lapsing(view.now, WEEK);
    let first = past.first()?;
    let text = view.words().with("kept-past-their-time", &[("bottles", past.len().into())]);
    let open = Event::Go { place: Place::Container { id: first.id.clone() } };
    let label = name(view, first.label.as_deref());
    let actions = vec![Action::new("open-past", label, open).weight(Weight::Quiet)];
    Some(Notice { key: "kept-past".to_owned(), tone: Tone::Asks, spoken: text.clone(), text, actions })
}

/// A row a container, by where it is.
fn places(view: &View<'_>, kept: &[Kept]) -> Vec<Section> {
    let words = view.words();
    let all = KeptIn::ALL.into_iter().map(Some).chain([None]);
    let sections = all.filter_map(|at| {
        let own: Vec<&Kept> = kept.iter().filter(|one| one.place == at).collect();
        let (title, key) = match at {
            Some(at) => (words.say(&format!("choice-kept-in-{}", at.name())), format!("kept-{}", at.name())),
            None => (words.say("kept-somewhere"), "kept-somewhere".to_owned()),
        };
        let more = own.len().saturating_sub(LISTED);
        let lines = (more > 0).then(|| words.with("kept-more", &[("more", more.into())]));
        (!own.is_empty()).then(|| Section {
            rows: own.iter().take(LISTED).map(|one| row(view, one)).collect(),
            lines: lines.into_iter().collect(),
            ..section(&key, title)
        })
    });
    sections.collect()
}

/// What it is called and holds, and until when it is good.
pub(super) fn row(view: &View<'_>, one: &Kept) -> ListRow {
    let words = view.words();
    let needs = [("name", name(view, one.label.as_deref()).into()), ("amount", left(view, one).into())];
    let title = words.with("kept-row", &needs);
    let detail = [place(view, one), good_until(view, one, Days::AsOfToday)].join(" \u{b7} ");
    view.text_row(title, detail)
        .opens(format!("open-{}", one.id), Event::Go { place: Place::Container { id: one.id.clone() } })
}

/// The rules in force, and what other sources say.
fn rules_section(view: &View<'_>, milk: &KeptMilk) -> Section {
    let words = view.words();
    let mut lines = vec![rules(view, &milk.in_force)];
    if milk.needs_unit.is_some() {
        lines.push(words.say("kept-unit-goes-before"));
    }
    let key = milk.in_force.rules().map(|rules| rules.key.clone());
    let others = KeepingRules::shipped().into_iter().filter(|set| Some(&set.key) != key.as_ref());
    let mut rows: Vec<ListRow> = milk.in_force.rules().map(|rules| set_row(view, rules)).into_iter().collect();
    rows.extend(others.map(|set| set_row(view, &set)));
    lines.push(words.say("kept-sources-differ"));
    lines.push(words.say("kept-defers"));
    let open = Event::Go { place: Place::Entry { id: KEEPING.to_owned() } };
    let choose = Action::new("keeping-rules", words.say("kept-choose-rules"), open).sign(Sign::Settings);
    Section { lines, rows, actions: vec![choose], ..section("kept-rules", words.say("section-kept-rules")) }
}

/// A set in one row: what it says of the room, the fridge and the freezer.
fn set_row(view: &View<'_>, set: &KeepingRules) -> ListRow {
    let words = view.words();
    let span = |span: Option<Span>| span.map_or_else(|| words.say("kept-not-said"), |span| words.span(span));
    let months = set.freezer.map_or_else(
        || words.say("kept-not-said"),
        |(best, _)| words.with("kept-months", &[("months", best.get().into())]),
    );
    let needs = [("room", span(set.room).into()), ("fridge", span(set.fridge).into()), ("freezer", months.into())];
    view.text_row(source(view, set), words.with("kept-set", &needs))
}
