//! Cautions from pain within and across sessions. Scores stay raw, 0 to 10.

use super::life::Track;
use super::{Because, Caution, Dealt};
use crate::guidance::CautionRules;
use crate::quantity::{Count, Score};
use crate::record::session::PAINS;
use crate::record::{whole_number, Fields, MarkKind, Session};
use crate::time::Instant;

/// The pain of one session, in the order it was felt.
#[derive(Debug, Clone, PartialEq)]
pub struct SessionPain {
    /// When the session began.
    pub at: Instant,
    /// Runs of scores in order of time: those marked as it ran, and those of each side
    /// from letdown to expression. None where nothing was said of pain.
    pub runs: Vec<Vec<Score>>,
    /// Whether it was said to hurt, without how much.
    pub unscored: bool,
    /// Whether the pump was turned down because it hurt.
    pub turned_down: bool,
}

impl SessionPain {
    /// Reads a session's pain; none where its time is not known.
    pub fn read(id: &str, fields: &Fields) -> Option<Self> {
        let session = Session::read(id, fields);
        let at = session.started.as_ref()?.instant();
        let marked: Vec<Option<Score>> = session
            .marks
            .iter()
            .filter_map(|(_, mark)| match mark.kind {
                MarkKind::Pain { score } => Some(score),
                _ => None,
            })
            .collect();
        let of_side = |side| {
            let own = PAINS.iter().filter(move |(_, of, _)| *of == side);
            own.filter_map(|(key, _, _)| whole_number(fields, key)).map(Score::new).collect::<Vec<_>>()
        };
        let runs: Vec<Vec<Score>> = [
            marked.iter().flatten().copied().collect(),
            of_side(crate::record::Sides::Left),
            of_side(crate::record::Sides::Right),
        ]
        .into_iter()
        .filter(|run: &Vec<Score>| !run.is_empty())
        .collect();
        let down = |kind: &MarkKind| matches!(kind, MarkKind::Setting { for_discomfort: true, .. });
        Some(Self {
            at,
            unscored: marked.iter().any(Option::is_none),
            turned_down: session.last_mark(down).is_some()
                || whole_number(fields, "turned_down").is_some_and(|times| times > 0),
            runs,
        })
    }

    /// Whether a score was said.
    fn scored(&self) -> bool {
        !self.runs.is_empty()
    }

    /// The steepest rise from the first to the last score of a run.
    fn rise(&self) -> Option<(Score, Score)> {
        let ends = self.runs.iter().filter_map(|run| Some((*run.first()?, *run.last()?)));
        ends.filter(|(from, to)| to > from).max_by_key(|(from, to)| to.get() - from.get())
    }

    /// The highest score there was.
    pub fn highest(&self) -> Option<Score> {
        self.runs.iter().flatten().copied().max()
    }

    /// The highest score at the end of a run.
    fn at_end(&self) -> Option<Score> {
        self.runs.iter().filter_map(|run| run.last().copied()).max()
    }
}

/// Which sessions are looked at, each list in order of time.
pub struct Sessions<'a> {
    /// Those that said a score; others between them say nothing of pain.
    pub with_pain: &'a [SessionPain],
    /// Sessions after each other, whether they said anything or not, up to the latest.
    pub after_each_other: &'a [SessionPain],
}

/// Every caution from the sessions up to now, whatever became of it.
pub fn cautions(sessions: &Sessions<'_>, dealt: &[Dealt], now: Instant, rules: &CautionRules) -> Vec<Caution> {
    let track = |key: &str| Track::new(key, dealt, rules.signs_hold);
    let (Some(high), Some(rises), Some(often), Some(hurts)) =
        (track("pain-stays-high"), track("pain-rises"), track("pain-often"), track("hurts-often"))
    else {
        return Vec::new();
    };
    let up_to_now = |all: &'_ [SessionPain]| all.iter().position(|s| s.at > now).unwrap_or(all.len());
    let scored: Vec<&SessionPain> =
        sessions.with_pain.iter().take(up_to_now(sessions.with_pain)).filter(|session| session.scored()).collect();
    let all = sessions.after_each_other.get(..up_to_now(sessions.after_each_other)).unwrap_or_default();
    let mut found = stays_high(high, &scored, now, rules);
    found.extend(rising(rises, &scored, now, rules));
    let of_pain = |session: &SessionPain| session.highest().is_some_and(|score| score >= rules.pain_often);
    found.extend(often_in(often, all, now, rules, of_pain, |at, some, of| {
        Because::PainOften(at, rules.pain_often, some, of)
    }));
    let of_hurt = |session: &SessionPain| session.unscored || session.turned_down;
    found.extend(often_in(hurts, all, now, rules, of_hurt, Because::HurtsOften));
    found
}

/// Severe pain at the end of so many sessions after each other that said a score.
fn stays_high(mut track: Track<'_>, scored: &[&SessionPain], now: Instant, rules: &CautionRules) -> Vec<Caution> {
    let mut run: Vec<(Instant, Score)> = Vec::new();
    for session in scored {
        let Some(score) = session.at_end() else { continue };
        if score < rules.severe_pain {
            run.clear();
            track.answer(session.at, Because::PainHigh(session.at, score));
            continue;
        }
        // What is no longer of now is no run with what is.
        run.retain(|(at, _)| session.at.since(*at) <= rules.signs_hold);
        run.push((session.at, score));
        if run.len() < rules.pain_sessions.get() as usize {
            continue;
        }
        let tell = if track.is_open(session.at) { run.len() - 1 } else { 0 };
        for (at, score) in run.iter().skip(tell) {
            track.add(session.at, Because::PainHigh(*at, *score));
        }
    }
    track.by(now)
}

fn rising(mut track: Track<'_>, scored: &[&SessionPain], now: Instant, rules: &CautionRules) -> Vec<Caution> {
    for session in scored {
        let Some((from, to)) = session.rise() else { continue };
        if to.get() - from.get() >= rules.pain_rise.get() {
            track.add(session.at, Because::PainRose(session.at, from, to));
        }
    }
    track.by(now)
}

/// In so many of the latest sessions after each other.
fn often_in(
    mut track: Track<'_>,
    all: &[SessionPain],
    now: Instant,
    rules: &CautionRules,
    counts: impl Fn(&SessionPain) -> bool,
    because: impl Fn(Instant, Count, Count) -> Because,
) -> Vec<Caution> {
    let of = rules.pain_often_of.get() as usize;
    let enough = rules.pain_often_in.get() as usize;
    for (last, session) in all.iter().enumerate() {
        let window = all.get((last + 1).saturating_sub(of)..=last).unwrap_or_default();
        let some = window.iter().filter(|session| counts(session)).count();
        if some >= enough {
            track.add(session.at, because(session.at, Count::new(some as u32), Count::new(window.len() as u32)));
        } else {
            track.answer(session.at, Because::Session(session.at));
        }
    }
    track.by(now)
}
