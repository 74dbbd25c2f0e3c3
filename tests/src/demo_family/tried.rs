//! What the parent tries out: a search for a comfortable level, and hands on the breast against
//! the pump alone, a session each in drawn order.

use drawwell_core::{
    answer::trial::{order, write_order, Way},
    quantity::{Count, Level, Score},
    record::{mark::Phase, Kind, Mark, MarkKind, MARKS},
    time::{Moment, Span},
};

use super::{
    fact::Fact,
    routine::{Doing, With},
    story,
};

const TRIAL: &str = "trial-hands";
const SEARCH: &str = "search-level";
const PLANNED: u32 = 24;
const SEED: u32 = 20_260_727;
/// The trial begins on this day, the search is on that.
const COMPARES_FROM: i64 = 137;
const SEARCHES_ON: i64 = 150;

/// What was tried so far, as the days go on.
#[derive(Default)]
pub(super) struct Tried {
    place: u32,
    last: Option<Moment>,
    search: Option<Fact>,
}

impl Tried {
    /// A session takes its place in what is tried.
    pub(super) fn take(&mut self, doing: &Doing, fact: Fact) -> Fact {
        if doing.with != With::HomePump || !fact.fields.contains_key("ended") {
            return fact;
        }
        let fact = if doing.day >= COMPARES_FROM && self.place < PLANNED { self.compared(doing, fact) } else { fact };
        if doing.day >= SEARCHES_ON && self.search.is_none() {
            return self.searched(fact);
        }
        fact
    }

    fn compared(&mut self, doing: &Doing, mut fact: Fact) -> Fact {
        let Some(drawn) = order(SEED, Count::new(PLANNED)).get(self.place as usize).copied() else { return fact };
        // Twice there was no hand free at work.
        let done = if [6, 14].contains(&self.place) { Way::B } else { drawn };
        fact.fields.remove("hands_on");
        let fact = if done == Way::A { fact.yes("hands_on") } else { fact };
        let place = self.place;
        self.place += 1;
        self.last = Some(story::moment(doing.day, doing.second + 1800));
        fact.says("trial", TRIAL)
            .says("trial_place", place)
            .says("trial_drawn", drawn.name())
            .says("trial_done", done.name())
    }

    /// Level by level in the first expression of a session; one step back from what was too much.
    fn searched(&mut self, mut fact: Fact) -> Fact {
        let mut began: Option<Moment> = None;
        for (key, value) in fact.fields.range(MARKS.to_owned()..).take_while(|(key, _)| key.starts_with(MARKS)) {
            let Ok(mark) = Mark::from_json(key, value) else { continue };
            if mark.kind == MarkKind::Phase(Phase::Expression) && began.is_none() {
                began = Some(mark.at);
            }
        }
        let Some((began, zone)) = began.and_then(|began| Some((began.instant(), began.zone()?))) else { return fact };
        let at = |seconds: i64| Moment::new(began.plus(Span::seconds(seconds)), zone);
        let steps = [(4, None), (5, None), (6, None), (7, Some(2)), (6, None)];
        for (number, (level, hurt)) in (0_i64..).zip(steps) {
            let set = MarkKind::Setting {
                level: Some(Level::new(level)),
                vacuum: None,
                cycles: None,
                for_discomfort: false,
                carried: false,
            };
            let felt = match hurt {
                Some(score) => MarkKind::Pain { score: Some(Score::new(score)) },
                None => MarkKind::Comfortable,
            };
            for (part, after, kind) in [("a", 10, set), ("b", 40, felt)] {
                let mark = Mark { at: at(40 * number + after), side: None, kind };
                fact = fact.says(&format!("{MARKS}s{number}{part}"), mark.to_json(None));
            }
        }
        let search = Fact::new(Kind::Search, SEARCH)
            .when("at", &at(5))
            .when("ended", &at(205))
            .says("searched", "vacuum")
            .says("search_side", "both")
            .says("search_phase", "expression")
            .says("search_ended", "found")
            .says("session", fact.id.as_str());
        self.search = Some(search);
        fact
    }

    /// The trial and the search themselves.
    pub(super) fn facts(self) -> Vec<Fact> {
        let trial = Fact::new(Kind::Trial, TRIAL)
            .when("at", &story::moment(COMPARES_FROM, 5 * 3600))
            .says("way_a", "hands on the breast")
            .says("way_b", "the pump alone")
            .says("differs", "hands_on")
            .says("trial_design", "sessions")
            .says("outcome", "amount")
            .says("trial_sessions", PLANNED)
            .says("seed", SEED)
            .says("drawn", write_order(&order(SEED, Count::new(PLANNED))));
        let trial = match self.last {
            Some(last) => trial.when("ended", &last).says("trial_ended", "finished"),
            None => trial,
        };
        self.search.into_iter().chain([trial]).collect()
    }
}
