//! What a caution opens to: what to do, what was seen, where that comes from.

use super::words::{because, heading};
use crate::answer::caution::{Because, Caution};
use crate::guidance::{CautionSource, Rules, Urgency};
use crate::record::RULES;
use crate::screen::frame::SUPPLY_SPAN;
use crate::screen::shapes::{
    Action, Event, FindingsScreen, ListGroup, ListRow, ListScreen, Place, Screen, Section, Sign, Weight,
};
use crate::screen::View;
use crate::trouble::Trouble;

/// A caution on its own page; one that no longer stands says so.
pub(in crate::screen) fn show(view: &View<'_>, key: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let place = Place::Caution { key: key.to_owned() };
    let mut frame = view.frame(&place, words.say("caution-page"), String::new())?;
    frame.back = Some(view.back());
    let cautions = super::standing(view)?;
    let findings = match cautions.iter().find(|caution| caution.key() == key) {
        Some(caution) => findings(view, caution)?,
        None => over(view),
    };
    Ok(Screen::Findings { frame, findings })
}

/// All that stand, the most urgent first.
pub(in crate::screen) fn show_all(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Cautions, words.say("cautions-page"), String::new())?;
    frame.back = Some(view.back());
    // The page has the group's title on top.
    let group = ListGroup { title: String::new(), ..group(view)? };
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("cautions-intro"), groups: vec![group] } })
}

/// The cautions that stand, as rows that open.
pub(in crate::screen) fn group(view: &View<'_>) -> Result<ListGroup, Trouble> {
    let rows: Vec<ListRow> = super::standing(view)?.iter().map(|caution| row(view, caution)).collect();
    Ok(ListGroup {
        key: "cautions".to_owned(),
        title: view.words().say("cautions-page"),
        empty: if rows.is_empty() { view.words().say("cautions-none") } else { String::new() },
        rows,
        add: vec![add_sign(view)],
    })
}

/// A row that opens a caution.
fn row(view: &View<'_>, caution: &Caution) -> ListRow {
    let words = view.words();
    let open = Event::Go { place: Place::Caution { key: caution.key() } };
    let row = view.told_row(heading(view, caution), words.say(&format!("urgency-{}", caution.urgency().name())));
    row.opens(format!("open-{}", caution.key()), open).sign(Sign::Caution)
}

fn add_sign(view: &View<'_>) -> Action {
    let event = Event::Add { kind: crate::record::Kind::Sign.name().to_owned(), days_back: 0 };
    Action::new("add-sign", view.words().say("add-sign"), event).sign(Sign::Add)
}

fn over(view: &View<'_>) -> FindingsScreen {
    let words = view.words();
    let (headline, caption) = (words.say("caution-over"), words.say("caution-over-detail"));
    FindingsScreen {
        spoken: words.with("row-spoken", &[("title", headline.clone().into()), ("detail", caption.clone().into())]),
        headline,
        figure: String::new(),
        caption,
        dial: None,
        lines: Vec::new(),
        asks: Vec::new(),
        actions: vec![add_sign(view)],
        sections: Vec::new(),
    }
}

fn findings(view: &View<'_>, caution: &Caution) -> Result<FindingsScreen, Trouble> {
    let words = view.words();
    let headline = words.say(&format!("urgency-{}", caution.urgency().name()));
    let caption = heading(view, caution);
    let mut lines = vec![words.say(&format!("caution-{}-do", caution.source.key))];
    if caution.urgency() != Urgency::Consultant {
        lines.push(words.say("caution-comes-first"));
    }
    lines.push(words.say("not-a-diagnosis"));
    Ok(FindingsScreen {
        spoken: [&headline, &caption].into_iter().chain(&lines).map(String::as_str).collect::<Vec<_>>().join(". "),
        headline,
        figure: String::new(),
        caption,
        dial: None,
        lines,
        asks: Vec::new(),
        actions: actions(view, caution),
        sections: vec![seen(view, caution), sources(view, caution.source)?],
    })
}

fn actions(view: &View<'_>, caution: &Caution) -> Vec<Action> {
    let words = view.words();
    let mut actions =
        vec![Action::new("caution-dealt", words.say("caution-dealt"), Event::CautionDealt { key: caution.key() })
            .detail(words.say("caution-dealt-detail"))
            .weight(Weight::Plain)];
    let open = |key: &str, place: Place, sign: Sign| {
        Action::new(key, words.say(key), Event::Go { place }).sign(sign).weight(Weight::Quiet)
    };
    match caution.because.first() {
        Some(Because::Drop(_)) => {
            actions.push(open("caution-open-supply", Place::Supply { days: SUPPLY_SPAN }, Sign::Supply));
        }
        Some(Because::Pull(..)) => {
            if let Some(id) = caution.of.clone() {
                actions.push(open("caution-open-pump", Place::Pump { id }, Sign::Kit));
            }
        }
        Some(Because::PainRose(..) | Because::PainHigh(..)) => {
            actions.push(open("caution-open-fit", Place::Fit, Sign::Kit));
        }
        _ => actions.push(add_sign(view)),
    }
    actions
}

fn seen(view: &View<'_>, caution: &Caution) -> Section {
    Section {
        key: "seen".to_owned(),
        title: view.words().say("caution-seen"),
        lines: caution.because.iter().map(|fact| because(view, fact)).collect(),
        plot: None,
        fields: Vec::new(),
        rows: Vec::new(),
        actions: Vec::new(),
    }
}

/// Where it comes from: its source, and each limit it goes by with its own.
fn sources(view: &View<'_>, source: &CautionSource) -> Result<Section, Trouble> {
    let words = view.words();
    let rules = Rules::read(&view.journal.record(RULES)?.map(|(_, fields)| fields).unwrap_or_default());
    let mut lines = vec![words.with(
        if source.from_memory { "caution-source-from-memory" } else { "caution-source" },
        &[("source", source.source.clone().into()), ("year", source.year.to_string().into())],
    )];
    if !source.reviewed {
        lines.push(words.say("caution-not-reviewed"));
    }
    let rows = source
        .rules
        .iter()
        .filter_map(|key| Some((key, Rules::named(key)?)))
        .map(|(key, rule)| {
            let title = words.say(&format!("field-{}", key.replace('_', "-")));
            let value = words.rule_value(rule, rules.set_to(key).unwrap_or(rule.value));
            let detail = words.with(
                if rules.set_to(key).is_some() { "caution-rule-set" } else { "caution-rule" },
                &[
                    ("value", value.into()),
                    ("source", rule.source.clone().into()),
                    ("year", rule.year.to_string().into()),
                ],
            );
            view.told_row(title, detail)
        })
        .collect();
    Ok(Section {
        key: "sources".to_owned(),
        title: words.say("caution-sources"),
        lines,
        plot: None,
        fields: Vec::new(),
        rows,
        actions: Vec::new(),
    })
}
