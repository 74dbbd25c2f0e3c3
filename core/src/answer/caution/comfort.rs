//! Cautions from pain within and across sessions. Scores stay raw, 0 to 10.

use super::{Because, Caution};
use crate::guidance::CautionRules;
use crate::quantity::Score;
use crate::record::{whole, Does, Fields, Session};
use crate::time::Instant;

/// The pain of one session, in the order it was felt.
#[derive(Debug, Clone, PartialEq)]
pub struct SessionPain {
    /// When the session began.
    pub at: Instant,
    /// Runs of scores in order of time: those marked as it ran, and those of each side
    /// from letdown to expression.
    pub runs: Vec<Vec<Score>>,
}

impl SessionPain {
    /// Reads a session's pain; none where nothing was said of it.
    pub fn read(id: &str, fields: &Fields) -> Option<Self> {
        let session = Session::read(id, fields);
        let at = session.started.as_ref()?.instant();
        let marked = session.marks.iter().filter_map(|(_, mark)| match mark.does {
            Does::Pain { score } => score,
            _ => None,
        });
        let of_side = |side: &str| {
            let score = |phase: &str| whole(fields, &format!("pain_{side}_{phase}")).map(Score::new);
            ["letdown", "expression"].into_iter().filter_map(score).collect::<Vec<_>>()
        };
        let runs: Vec<Vec<Score>> = [marked.collect(), of_side("left"), of_side("right")]
            .into_iter()
            .filter(|run: &Vec<Score>| !run.is_empty())
            .collect();
        (!runs.is_empty()).then_some(Self { at, runs })
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

/// Cautions from sessions that said pain, in order of time; one that said nothing of it
/// is not among them.
pub fn cautions(sessions: &[SessionPain], now: Instant, rules: &CautionRules) -> Vec<Caution> {
    let standing = |s: &&SessionPain| s.at <= now && now.since(s.at) <= rules.signs_hold;
    let recent: Vec<&SessionPain> = sessions.iter().filter(standing).collect();
    let mut found = Vec::new();
    let severe = |s: &&&SessionPain| s.at_end().is_some_and(|score| score >= rules.severe_pain);
    let run: Vec<&&SessionPain> = recent.iter().rev().take_while(severe).collect();
    if run.len() >= rules.pain_sessions.get() as usize {
        let because = run.iter().filter_map(|s| Some(Because::PainHigh(s.at, s.at_end()?))).collect();
        found.extend(run.first().and_then(|last| Caution::new("pain-stays-high", last.at, because)));
    }
    let rose = recent.iter().rev().find_map(|s| {
        let (from, to) = s.rise()?;
        (to.get() - from.get() >= rules.pain_rise.get()).then_some((s.at, from, to))
    });
    if let Some((at, from, to)) = rose {
        found.extend(Caution::new("pain-rises", at, vec![Because::PainRose(at, from, to)]));
    }
    found
}
