//! What a caution opens to: what to do, what was seen, what came of it, where that comes from.

use super::words::{became, because, heading};
use super::{call, line};
use crate::answer::caution::{Because, Caution};
use crate::gather::caution as gathered;
use crate::guidance::{Advice, CautionSource, Rules, Urgency};
use crate::record::choices::DEALT_HOW;
use crate::record::{Kind, RULES};
use crate::screen::section::section;
use crate::screen::shapes::{
    Action, Event, FindingsScreen, ListGroup, ListRow, ListScreen, Place, Screen, Section, Sign, Weight,
};
use crate::screen::tab::SUPPLY_SPAN;
use crate::screen::View;
use crate::time::Span;
use crate::trouble::Trouble;

/// What was over so long ago is no longer listed on the page; the visit sheet has its own days.
const TELLS_BACK: Span = Span::hours(28 * 24);

/// The way from the group to all there were; on that page it would lead to itself.
const EARLIER: &str = "open-cautions";

/// A caution on its own page; one that no longer stands says what became of it.
pub(in crate::screen) fn show(view: &View<'_>, key: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let place = Place::Caution { key: key.to_owned() };
    let mut frame = view.frame(&place, words.say("caution-page"), String::new())?;
    frame.back = Some(view.back());
    let named = |found: Vec<Caution>| found.into_iter().find(|caution| caution.key() == key);
    let found = match named(view.cautions.clone()) {
        Some(active) => Some(active),
        None => named(gathered::since(view, view.now.minus(TELLS_BACK))?),
    };
    let findings = match found {
        Some(caution) => findings(view, &caution)?,
        None => over(view),
    };
    Ok(Screen::Findings { frame, findings })
}

/// All that stand, the most urgent first; and what became of those before.
pub(in crate::screen) fn show_all(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Cautions, words.say("cautions-page"), String::new())?;
    frame.back = Some(view.back());
    // The page has the group's title on top.
    let mut group = ListGroup { title: String::new(), ..group(view)? };
    group.add.retain(|action| action.key != EARLIER);
    let earlier = earlier(view)?;
    Ok(Screen::List {
        frame,
        list: ListScreen {
            intro: words.say("cautions-intro"),
            groups: std::iter::once(group).chain(earlier).collect(),
        },
    })
}

/// The cautions that stand, as rows that open.
pub(in crate::screen) fn group(view: &View<'_>) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let active = view.cautions.clone();
    let rows: Vec<ListRow> = active.iter().map(|caution| row(view, caution)).collect::<Result<_, _>>()?;
    let mut add = vec![add_sign(view)];
    if rows.is_empty() {
        let open = Event::Go { place: Place::Cautions };
        add.push(Action::new(EARLIER, words.say("cautions-earlier-open"), open).weight(Weight::Quiet));
    }
    Ok(ListGroup {
        key: "cautions".to_owned(),
        title: words.say("cautions-page"),
        empty: if rows.is_empty() { words.say("cautions-none") } else { String::new() },
        rows,
        add,
    })
}

/// Those that are over, and what became of each.
fn earlier(view: &View<'_>) -> Result<Option<ListGroup>, Trouble> {
    let found = gathered::since(view, view.now.minus(TELLS_BACK))?;
    let rows: Vec<ListRow> = found
        .iter()
        .filter(|caution| !caution.stands())
        .map(|caution| {
            let row = view.text_row(heading(view, caution), became(view, caution, true).unwrap_or_default());
            let open = Event::Go { place: Place::Caution { key: caution.key() } };
            row.opens(format!("open-{}-{}", caution.key(), caution.began.unix_milliseconds()), open)
        })
        .collect();
    Ok((!rows.is_empty()).then(|| ListGroup {
        key: "earlier".to_owned(),
        title: view.words().say("cautions-earlier"),
        rows,
        empty: String::new(),
        add: Vec::new(),
    }))
}

/// A row that opens a caution.
fn row(view: &View<'_>, caution: &Caution) -> Result<ListRow, Trouble> {
    let words = view.words();
    let open = Event::Go { place: Place::Caution { key: caution.key() } };
    let asks = words.say(&format!("urgency-{}", caution.urgency().name()));
    let detail = match became(view, caution, is_of_now(view, caution)?) {
        Some(became) => format!("{asks}\n{became}"),
        None => asks,
    };
    let row = view.text_row(heading(view, caution), detail);
    Ok(row.opens(format!("open-{}", caution.key()), open).sign(Sign::Caution))
}

fn is_of_now(view: &View<'_>, caution: &Caution) -> Result<bool, Trouble> {
    let hold = gathered::rules(view)?.signs_hold;
    Ok(!caution.source.urgency_waits() || caution.is_of_now(view.now, hold))
}

fn add_sign(view: &View<'_>) -> Action {
    let event = Event::Add { kind: Kind::Sign.name().to_owned(), days_back: 0 };
    Action::new("add-sign", view.words().say("add-sign"), event).sign(Sign::Add)
}

fn over(view: &View<'_>) -> FindingsScreen {
    let words = view.words();
    page_of(view, words.say("caution-over"), words.say("caution-over-detail"))
}

/// A page with nothing to do on it but to write down more.
fn page_of(view: &View<'_>, headline: String, caption: String) -> FindingsScreen {
    FindingsScreen {
        spoken: view
            .words()
            .with("row-spoken", &[("title", headline.clone().into()), ("detail", caption.clone().into())]),
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
    if !caution.stands() {
        let became = became(view, caution, true).unwrap_or_default();
        let page = page_of(view, heading(view, caution), became);
        return Ok(FindingsScreen { sections: vec![seen(view, caution), sources(view, caution.source)?], ..page });
    }
    let of_now = is_of_now(view, caution)?;
    let headline = match of_now {
        true => words.say(&format!("urgency-{}", caution.urgency().name())),
        false => words.say("caution-waits"),
    };
    let caption = heading(view, caution);
    let mut lines = Vec::new();
    if !of_now {
        lines.extend(became(view, caution, false));
        lines.push(words.say("caution-waits-do"));
    }
    lines.push(words.say(&format!("caution-{}-do", caution.source.key)));
    let mut beside: Vec<String> = caution.source.advice.iter().map(|key| words.say(&format!("advice-{key}"))).collect();
    if caution.urgency() != Urgency::Consultant {
        beside.push(words.say("caution-comes-first"));
    }
    beside.push(words.say("not-a-diagnosis"));
    let mut sections = vec![seen(view, caution), sources(view, caution.source)?];
    // Where it cannot wait, the call stands right under what to do, also where type is large.
    match caution.urgency() {
        Urgency::Now => sections.insert(0, until_then(view, beside)),
        Urgency::Today | Urgency::Soon | Urgency::Consultant => lines.extend(beside),
    }
    // Who reads a family's record at a desk deals with nothing in it.
    if view.shared.is_none() {
        let sources = sections.len().saturating_sub(1);
        sections.insert(sources, came_of_it(view, caution));
    }
    Ok(FindingsScreen {
        spoken: [&headline, &caption].into_iter().chain(&lines).map(String::as_str).collect::<Vec<_>>().join(". "),
        headline,
        figure: String::new(),
        caption,
        dial: None,
        lines,
        asks: Vec::new(),
        actions: actions(view, caution)?,
        sections,
    })
}

fn actions(view: &View<'_>, caution: &Caution) -> Result<Vec<Action>, Trouble> {
    let words = view.words();
    let mut actions = call::all(view, caution)?;
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
        Some(Because::PainRose(..) | Because::PainHigh(..) | Because::PainOften(..) | Because::HurtsOften(..)) => {
            actions.push(open("caution-open-fit", Place::Fit, Sign::Kit));
        }
        _ => actions.push(add_sign(view)),
    }
    Ok(actions)
}

/// What to do until help is there.
fn until_then(view: &View<'_>, lines: Vec<String>) -> Section {
    Section { lines, ..section("until-then", view.words().say("caution-until-then")) }
}

/// What came of it: who looked at it, or that the signs are there no more or still there.
fn came_of_it(view: &View<'_>, caution: &Caution) -> Section {
    let words = view.words();
    let key = caution.key();
    let mut actions: Vec<Action> = DEALT_HOW
        .iter()
        .filter(|how| caution.urgency() == Urgency::Now || **how != "emergency_team")
        .map(|how| {
            let event = Event::CautionDealt { key: key.clone(), how: (*how).to_owned() };
            Action::new(format!("dealt-{how}"), words.say(&format!("choice-dealt-how-{how}")), event)
        })
        .collect();
    if caution.source.key == line::NO_WORD {
        actions = line::answers(view);
    }
    if caution.because.iter().any(|fact| matches!(fact, Because::Sign(..))) {
        let again = |key_of: &str, still: bool| {
            let event = Event::SignsAgain { key: key.clone(), still };
            Action::new(key_of, words.say(key_of), event).weight(Weight::Quiet)
        };
        actions.push(again("signs-gone", false));
        actions.push(again("signs-still", true));
    }
    Section {
        lines: vec![words.say("caution-dealt-detail")],
        actions,
        ..section("came-of-it", words.say("caution-came-of-it"))
    }
}

fn seen(view: &View<'_>, caution: &Caution) -> Section {
    Section {
        lines: caution.because.iter().map(|fact| because(view, fact)).collect(),
        ..section("seen", view.words().say("caution-seen"))
    }
}

/// Where it comes from: its source, each limit it goes by, and each line said beside it, with
/// its own. What was written down from memory says so on each of its lines.
fn sources(view: &View<'_>, source: &CautionSource) -> Result<Section, Trouble> {
    let words = view.words();
    let rules = Rules::read(&view.journal.record(RULES)?.map(|(_, fields)| fields).unwrap_or_default());
    let mut lines = vec![source_text(view, &source.source, source.year, source.from_memory)];
    if !source.reviewed {
        lines.push(words.say("caution-not-reviewed"));
    }
    let of_rules = source.rules.iter().filter_map(|key| Some((key, Rules::named(key)?))).map(|(key, rule)| {
        let title = words.say(&format!("field-{}", key.replace('_', "-")));
        let value = words.rule_value(rule, rules.set_to(key).unwrap_or(rule.value));
        let key = if rules.set_to(key).is_some() { "caution-rule-set" } else { "caution-rule" };
        let from = source_text(view, &rule.source, rule.year, rule.from_memory);
        view.text_row(title, words.with(key, &[("value", value.into()), ("source", from.into())]))
    });
    let of_advice = source.advice.iter().filter_map(|key| Advice::named(key)).map(|advice| {
        let from = source_text(view, &advice.source, advice.year, advice.from_memory);
        view.text_row(words.say(&format!("advice-{}", advice.key)), from)
    });
    Ok(Section { lines, rows: of_rules.chain(of_advice).collect(), ..section("sources", words.say("caution-sources")) })
}

/// A source with its year, and that it was written down from memory where it was.
pub(in crate::screen) fn source_text(view: &View<'_>, source: &str, year: u32, from_memory: bool) -> String {
    let key = if from_memory { "caution-source-from-memory" } else { "caution-source" };
    view.words().with(key, &[("source", source.to_owned().into()), ("year", year.to_string().into())])
}
