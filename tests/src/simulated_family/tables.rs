//! What Supply makes of families with known truth, in figures.

use drawwell_core::answer::supply::concurrent::{from_days, What};
use drawwell_core::answer::supply::course::{course, Heading};
use drawwell_core::answer::supply::level::{level, Level};
use drawwell_core::answer::supply::quiet_hours::quiet_hours;
use drawwell_core::answer::supply::summary::{summarise, Summary};
use drawwell_core::answer::supply::{since, watch, Calendar, DayProduction, Of, Series, Spread};
use drawwell_core::guidance::{Rules, SupplyRules};
use drawwell_core::quantity::Quantity;
use drawwell_core::time::{DayStart, LocalDay, Zone};

use super::{Family, Simulator, WrittenDown};

/// The rules as they are shipped.
pub fn rules() -> SupplyRules {
    SupplyRules::read(&Rules::default())
}

/// Days of a family, from the first included to the last excluded.
pub fn days(told: &WrittenDown, from: i32, to: i32) -> Vec<DayProduction> {
    let mut spread = Spread::new(&told.removals, Calendar { start: DayStart::MIDNIGHT, zone: Zone::UTC });
    (from..to).filter_map(|d| LocalDay::from_number(told.first.number() + d)).map(|day| spread.day(day)).collect()
}

/// How daily production came out, over 28 days of many families.
#[derive(Debug, Clone, Copy)]
pub struct Production {
    /// Mean of estimate over truth, less 1, where a level was told.
    pub bias: f64,
    /// How often a level was told.
    pub told: f64,
    /// How often it was said that too much is missing.
    pub too_much: f64,
    /// How often the range of the level held the long-run truth.
    pub level_held: f64,
    /// The bias of what is said of now, and how often its range held the long-run truth.
    pub now: (f64, f64),
    /// How often the range of the slope held none, which is the truth.
    pub slope_held: f64,
}

/// The first 14 days teach what is ordinary.
const TAUGHT: i32 = 14;
const SPAN: i32 = 28;

/// Lives that the truth in the long run is taken from.
const LIVES: u64 = 20;

/// The mean of some days.
fn mean(truth: &[f64]) -> f64 {
    truth.iter().sum::<f64>() / truth.len().max(1) as f64
}

/// What such a family makes a day in the long run.
pub fn in_the_long_run(by: Simulator, family: &Family) -> f64 {
    let one = |seed| mean(by.live(family, 240, seed + 1_000_000).truth.get(10..230).unwrap_or_default());
    let lives: Vec<f64> = (0..LIVES).map(one).collect();
    mean(&lives)
}

/// What the rate has to become so that production becomes so many times what it was: a
/// fuller breast makes less, so that production follows the rate in part only.
pub fn rate_for(by: Simulator, family: &Family, becomes: f64) -> f64 {
    let changed = |times: f64| in_the_long_run(by, &Family { change: Some((0, times)), ..*family });
    let part = (changed(0.8) / changed(1.0)).ln() / 0.8_f64.ln();
    becomes.powf(1.0 / part)
}

/// Over so many families of a kind.
pub fn production(by: Simulator, family: &Family, families: u64) -> Production {
    let rules = rules();
    let truth = in_the_long_run(by, family);
    let (mut now, mut now_held) = (0.0, 0);
    let (mut biases, mut too_much, mut level_held, mut slopes, mut slope_held) = (Vec::new(), 0, 0, 0, 0);
    for seed in 0..families {
        let told = by.live(family, (TAUGHT + SPAN + 1) as u32, seed);
        let lived = days(&told, TAUGHT, TAUGHT + SPAN);
        let series = Series::of(&lived, Of::Both, &rules);
        match level(&series, &rules) {
            Level::Known(found) => {
                let then = told.truth.get(TAUGHT as usize..(TAUGHT + SPAN) as usize).unwrap_or_default();
                biases.push(found.value.canonical() / mean(then) - 1.0);
                level_held += u32::from(found.low.canonical() <= truth && truth <= found.high.canonical());
                if let Some(said) = summarise(&lived, &lived, &rules).level.known() {
                    now += said.value.canonical() / mean(then) - 1.0;
                    now_held += u32::from(said.low.canonical() <= truth && truth <= said.high.canonical());
                }
            }
            Level::TooMuchMissing => too_much += 1,
            Level::NeedsDays(_) => {}
        }
        if let Ok(found) = course(&series, &rules) {
            slopes += 1;
            slope_held += u32::from(found.drift.low.canonical() <= 0.0 && found.drift.high.canonical() >= 0.0);
        }
    }
    let told = biases.len().max(1) as f64;
    Production {
        bias: biases.iter().sum::<f64>() / told,
        told: biases.len() as f64 / families as f64,
        too_much: f64::from(too_much) / families as f64,
        level_held: f64::from(level_held) / told,
        now: (now / told, f64::from(now_held) / told),
        slope_held: f64::from(slope_held) / f64::from(slopes.max(1)),
    }
}

/// What is said some days after a lasting change.
#[derive(Debug, Clone, Copy)]
pub struct After {
    /// How often a level was told.
    pub told: f64,
    /// Bias of the figure of now.
    pub bias: f64,
    /// How often its range held the truth of now.
    pub held: f64,
    /// How often it was said that the level had changed.
    pub changed: f64,
    /// How often the course was called holding without a word of the change.
    pub holding: f64,
    /// How many of the days since count as complete.
    pub complete: f64,
}

/// Days lived before the change.
const LIVED: i32 = 45;

/// Over so many families: so many days after their rate became so many times what it was.
pub fn after_change(by: Simulator, family: &Family, becomes: f64, since: i32, families: u64) -> After {
    let rules = rules();
    let becomes = rate_for(by, family, becomes);
    let truth = in_the_long_run(by, &Family { change: Some((0, becomes)), ..*family });
    let (mut told, mut bias, mut held, mut changed, mut holding, mut complete) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
    for seed in 0..families {
        let family = Family { change: Some((LIVED as u32, becomes)), ..*family };
        let life = by.live(&family, (LIVED + since + 1) as u32, seed + 300_000);
        let lived = days(&life, 1, LIVED + since);
        let later = lived.get((LIVED - 1) as usize..).unwrap_or_default();
        complete += later.iter().filter(|d| d.observed() >= rules.complete_day).count() as f64 / f64::from(since);
        let span = lived.get(lived.len().saturating_sub(SPAN as usize)..).unwrap_or_default();
        let said = summarise(span, &lived, &rules);
        changed += f64::from(u8::from(said.turned.is_some()));
        holding +=
            f64::from(u8::from(said.turned.is_none() && since < SPAN && said.heading() == Some(Heading::Holding)));
        let Some(level) = said.level.known() else { continue };
        told += 1.0;
        bias += level.value.canonical() / truth - 1.0;
        held += f64::from(u8::from((level.low.canonical()..=level.high.canonical()).contains(&truth)));
    }
    let all = families as f64;
    After {
        told: told / all,
        bias: bias / f64::max(told, 1.0),
        held: held / f64::max(told, 1.0),
        changed: changed / all,
        holding: holding / all,
        complete: complete / all,
    }
}

/// What a steady course is called over 28 days.
#[derive(Debug, Clone, Copy)]
pub struct Called {
    /// Right: the word for which way it goes.
    pub right: f64,
    /// The other way.
    pub wrong: f64,
    /// Holding.
    pub holding: f64,
    /// Nothing yet.
    pub silent: f64,
    /// How often a dated step was told of it.
    pub step: f64,
    /// Bias of the figure of now.
    pub bias: f64,
    /// How often its range held the truth of now.
    pub held: f64,
}

/// Over so many families whose rate changes by a share each week.
pub fn called(by: Simulator, family: &Family, a_week: f64, families: u64) -> Called {
    let rules = rules();
    let rate = rate_for(by, family, 1.0 + a_week) - 1.0;
    let family = Family { drift_a_week: rate, drift_from: TAUGHT as u32, ..*family };
    let last = TAUGHT + SPAN - 1;
    let lives: Vec<f64> = (0..10 * LIVES)
        .filter_map(|seed| by.live(&family, (last + 1) as u32, seed + 2_000_000).truth.get(last as usize).copied())
        .collect();
    let truth = mean(&lives);
    let (mut right, mut wrong, mut holding, mut silent, mut step, mut bias, mut held) = (0, 0, 0, 0, 0, 0.0, 0);
    for seed in 0..families {
        let days_lived = (TAUGHT + SPAN + 1) as u32;
        let life = by.live(&family, days_lived, seed + 600_000);
        let lived = days(&life, TAUGHT, TAUGHT + SPAN);
        let said = summarise(&lived, &lived, &rules);
        step += u32::from(said.turned.is_some());
        match said.heading().filter(|_| said.turned.is_none()) {
            Some(Heading::Holding) => holding += 1,
            None => silent += 1,
            Some(heading) if (heading == Heading::Rising) == (a_week > 0.0) => right += 1,
            Some(_) => wrong += 1,
        }
        let Some(level) = said.level.known() else { continue };
        bias += level.value.canonical() / truth - 1.0;
        held += u32::from((level.low.canonical()..=level.high.canonical()).contains(&truth));
    }
    let share = |n: u32| f64::from(n) / families as f64;
    Called {
        right: share(right),
        wrong: share(wrong),
        holding: share(holding),
        silent: share(silent),
        step: share(step),
        bias: bias / families as f64,
        held: share(held),
    }
}

/// Since when it is said to go up or down.
#[derive(Debug, Clone, Copy)]
pub struct Began {
    /// How often a day is told.
    pub told: f64,
    /// How often its range held the day, of those told.
    pub held: f64,
    /// Days in the range, at the mean.
    pub wide: f64,
    /// How often a dated step is told in its place.
    pub step: f64,
}

/// Over so many families who go up or down by a share each week, from so many days before the end
/// of the span on; a course that went so from before its first day has none.
pub fn began(by: Simulator, family: &Family, a_week: f64, span: i32, ago: Option<i32>, families: u64) -> Began {
    let rules = rules();
    let rate = rate_for(by, family, 1.0 + a_week) - 1.0;
    let from = TAUGHT + ago.map_or(0, |ago| span - ago);
    let family = Family { drift_a_week: rate, drift_from: from as u32, ..*family };
    let (mut told, mut held, mut wide, mut step) = (0, 0, 0.0, 0);
    for seed in 0..families {
        let life = by.live(&family, (TAUGHT + span + 1) as u32, seed + 5_000_000);
        let lived = days(&life, TAUGHT, TAUGHT + span);
        let said = summarise(&lived, &lived, &rules);
        step += u32::from(said.turned.is_some());
        let Some(began) = said.began else { continue };
        told += 1;
        wide += (began.latest.days_since(began.earliest) + 1) as f64;
        let day = life.first.number() + from;
        held += u32::from((began.earliest.number()..=began.latest.number()).contains(&day));
    }
    let of_told = f64::from(told.max(1));
    let share = |n: u32| f64::from(n) / families as f64;
    Began { told: share(told), held: f64::from(held) / of_told, wide: wide / of_told, step: share(step) }
}

/// How the watch behaves.
#[derive(Debug, Clone, Copy)]
pub struct Watched {
    /// Days to notice a lasting drop: the middle of the families.
    pub delay: Option<i64>,
    /// Nine in ten families are noticed within this; none where fewer are.
    pub late: Option<i64>,
}

/// Quiet days watched a family, after those that the own level needs.
const QUIET: i32 = 100;
const BEFORE: i32 = 20;
/// The drop comes on this day, and is looked for until the last.
const DROPS_ON: i32 = 60;
const UNTIL: i32 = 100;

/// False alarms in 100 quiet days, over so many families.
pub fn false_alarms(by: Simulator, family: &Family, families: u64) -> f64 {
    let rules = rules();
    let mut alarms = 0;
    for seed in 0..families {
        let told = by.live(family, (BEFORE + QUIET + 1) as u32, seed);
        let series = watch::series(&days(&told, 1, BEFORE + QUIET), &rules);
        let from = series.days.partition_point(|(day, _)| day.days_since(told.first) < i64::from(BEFORE));
        let said = watch::watched(&series, from, &rules);
        alarms += said.windows(2).filter(|w| matches!(w, [None, Some(_)])).count();
    }
    alarms as f64 * 100.0 / (families as f64 * f64::from(QUIET))
}

/// Over so many families of a kind, with a drop to so many times what was made.
pub fn watched(by: Simulator, family: &Family, falls_to: f64, families: u64) -> Watched {
    let rules = rules();
    let falls_to = rate_for(by, family, falls_to);
    let mut delays: Vec<i64> = Vec::new();
    for seed in 0..families {
        let falls = Family { change: Some((DROPS_ON as u32, falls_to)), ..*family };
        let told = by.live(&falls, (UNTIL + 1) as u32, seed + 500_000);
        let series = watch::series(&days(&told, 1, UNTIL), &rules);
        let from = series.days.partition_point(|(day, _)| day.days_since(told.first) < i64::from(DROPS_ON));
        let mut later = series.days.iter().skip(from).zip(watch::each(&series, from, &rules));
        let noticed = later.find(|(_, drop)| drop.is_some());
        delays.push(noticed.map_or(i64::MAX, |((day, _), _)| day.days_since(told.first) - i64::from(DROPS_ON) + 1));
    }
    delays.sort_unstable();
    let at =
        |share: f64| delays.get((delays.len() as f64 * share) as usize).copied().filter(|delay| *delay != i64::MAX);
    Watched { delay: at(0.5), late: at(0.9) }
}

/// How changes of the past are found: one of this size, 40 days in.
#[derive(Debug, Clone, Copy)]
pub struct Found {
    /// How often a quiet family was told of a change.
    pub false_changes: f64,
    /// How often the change was found.
    pub found: f64,
    /// How often its range of dates held the day.
    pub date_held: f64,
    /// How many days that range has, in the mean.
    pub wide: f64,
    /// How often its range of sizes held the size.
    pub size_held: f64,
}

/// Over so many families of a kind.
pub fn found(by: Simulator, family: &Family, becomes: f64, families: u64) -> Found {
    let rules = rules();
    let becomes = rate_for(by, family, becomes);
    let (mut quiet, mut found, mut date, mut size, mut wide) = (0, 0, 0, 0, 0);
    for seed in 0..families {
        let series = Series::of(&days(&by.live(family, 61, seed), 1, 60), Of::Both, &rules);
        quiet += u32::from(!since::changes(&series, &rules).is_empty());
        let told = by.live(&Family { change: Some((40, becomes)), ..*family }, 71, seed + 900_000);
        let changes = since::changes(&Series::of(&days(&told, 1, 70), Of::Both, &rules), &rules);
        let away = |change: &since::Change| (change.on.days_since(told.first) - 40).abs();
        let Some(change) = changes.iter().min_by_key(|c| away(c)) else { continue };
        found += 1;
        wide += change.latest.days_since(change.earliest) + 1;
        let held = change.earliest.days_since(told.first)..=change.latest.days_since(told.first);
        date += u32::from(held.contains(&40));
        let made = |from: usize, to: usize| mean(told.truth.get(from..to).unwrap_or_default());
        let truth = made(40, 69) - made(1, 40);
        size += u32::from(change.size.low.canonical() <= truth && truth <= change.size.high.canonical());
    }
    let share = |n: u32, of: f64| f64::from(n) / of.max(1.0);
    Found {
        false_changes: share(quiet, families as f64),
        found: share(found, families as f64),
        date_held: share(date, f64::from(found)),
        wide: wide as f64 / f64::from(found.max(1)),
        size_held: share(size, f64::from(found)),
    }
}

/// How often a change of what is made has company that is none; and how often a session fewer
/// a day from the same day on is found beside it.
pub fn company(by: Simulator, family: &Family, families: u64) -> (f64, f64) {
    let rules = rules();
    let (mut falsely, mut truly, mut told, mut told_too) = (0, 0, 0, 0);
    for seed in 0..families {
        let family = Family { change: Some((40, 0.6)), ..*family };
        let life = by.live(&family, 71, seed + 1_200_000);
        let lived = days(&life, 1, 70);
        let changes = since::changes(&Series::of(&lived, Of::Both, &rules), &rules);
        if let Some(change) = changes.last() {
            told += 1;
            falsely += u32::from(!from_days(&change.into(), &lived).is_empty());
        }
        let fewer = WrittenDown { removals: fewer(&life, 40), ..life.clone() };
        let lived = days(&fewer, 1, 70);
        let changes = since::changes(&Series::of(&lived, Of::Both, &rules), &rules);
        if let Some(change) = changes.last() {
            told_too += 1;
            let found = from_days(&change.into(), &lived);
            truly +=
                u32::from(found.iter().any(|f| matches!(f.what, What::Emptyings(before, after) if after < before)));
        }
    }
    (f64::from(falsely) / f64::from(told.max(1)), f64::from(truly) / f64::from(told_too.max(1)))
}

/// The same life, every day's second session from a day on put off into the next: its milk
/// came with that.
fn fewer(told: &WrittenDown, from: i32) -> Vec<drawwell_core::record::Removal> {
    use drawwell_core::quantity::Volume;
    use drawwell_core::record::Milk;
    let day =
        |at: drawwell_core::time::Instant| (at.unix_milliseconds() - 1_767_225_600_000).div_euclid(86_400_000) as i32;
    let mut kept: Vec<drawwell_core::record::Removal> = Vec::new();
    let mut carried: Option<Milk> = None;
    let mut last = i32::MIN;
    let mut nth = 0;
    for removal in &told.removals {
        let today = day(removal.at);
        (nth, last) = if today == last { (nth + 1, last) } else { (0, today) };
        let add = |one: Option<Volume>, more: Option<Volume>| {
            one.zip(more).map(|(one, more)| Volume::from_canonical(one.canonical() + more.canonical())).or(one)
        };
        let milk = match (carried.take(), removal.milk) {
            (Some(Milk::Sides { left: l, right: r }), Milk::Sides { left, right }) => {
                Milk::Sides { left: add(left, l), right: add(right, r) }
            }
            (_, milk) => milk,
        };
        if today >= from && nth == 1 {
            carried = Some(milk);
        } else {
            kept.push(drawwell_core::record::Removal { milk, ..removal.clone() });
        }
    }
    kept
}

/// Bias of the figure of now where families write down otherwise, and how often the page says
/// that it rests on hours in which nothing was written down.
pub fn habits(by: Simulator, family: &Family, families: u64) -> (f64, f64) {
    let rules = rules();
    let truth = in_the_long_run(by, family);
    let (mut bias, mut told, mut rests) = (0.0, 0, 0);
    for seed in 0..families {
        let life = by.live(family, (TAUGHT + SPAN + 1) as u32, seed + 1_500_000);
        let lived = days(&life, TAUGHT, TAUGHT + SPAN);
        rests += u32::from(quiet_hours(&life.removals).is_some());
        let Summary { level, .. } = summarise(&lived, &lived, &rules);
        if let Some(level) = level.known() {
            told += 1;
            bias += level.value.canonical() / truth - 1.0;
        }
    }
    (bias / f64::from(told.max(1)), f64::from(rests) / families as f64)
}
