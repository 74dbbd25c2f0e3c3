//! Pumps of known truth: verdicts are wrong no more often than they say, ranges hold the
//! truth as often as they say.

use drawwell_core::answer::pump::levels::LevelCurve;
use drawwell_core::answer::pump::wear::{course, Forecast, NewPart, Point};
use drawwell_core::answer::pump::{judge, sides, Limits, Pull, Verdict, Whose};
use drawwell_core::quantity::{Level, Quantity, Share};
use drawwell_core::record::{Gauge, GaugeCheck, ReadingPlace, Sides};
use drawwell_core::time::{Instant, Span};
use drawwell_tests::chance::Chance;
use drawwell_tests::gauge_bench::{check_at, gauge, mercury, place};

const NOW: Instant = Instant::from_unix_milliseconds(1_786_000_000_000);
const MONTH_HOURS: f64 = 730.5;

/// A gauge in a hand: what it is wrong by, and how finely it is read.
struct Held {
    gauge: Gauge,
    wrong_by: f64,
    step: f64,
}

impl Held {
    /// Any gauge: its error lies anywhere within its class.
    fn any(chance: &mut Chance) -> Self {
        let class = [0.6, 1.0, 1.6, 2.5, 4.0][chance.whole(0, 4) as usize];
        let span = [450.0, 600.0, 760.0][chance.whole(0, 2) as usize];
        let step = [0.5, 1.0, 2.0, 5.0][chance.whole(0, 3) as usize];
        let greatest = class / 100.0 * span;
        Self { gauge: gauge(span, class, step), wrong_by: chance.between(-greatest, greatest), step }
    }

    fn reads(&self, truth: f64, spread: f64, chance: &mut Chance) -> f64 {
        (((truth + self.wrong_by + spread * chance.normal()) / self.step).round() * self.step).max(0.0)
    }
}

fn readings(
    place: ReadingPlace,
    truth: f64,
    count: usize,
    spread: f64,
    held: &Held,
    chance: &mut Chance,
) -> Vec<(ReadingPlace, f64)> {
    (0..count).map(|_| (place, held.reads(truth, spread, chance))).collect()
}

fn left() -> ReadingPlace {
    place(Sides::Left, None)
}

/// Every true value as likely as any other, as the method takes it.
#[test]
fn a_verdict_is_wrong_no_more_often_than_it_says() {
    let mut chance = Chance::on(1, "verdicts");
    let limits =
        Limits { low: Some(mercury(250.0)), high: Some(mercury(290.0)), usually_to: None, whose: Whose::Maker };
    let sure = Share::of(0.95);
    let (mut said, mut wrong, mut expected_wrong) = (0, 0, 0.0);
    // Chances of meeting the range that were told, by tenths, and how often it did.
    let mut told = [(0, 0.0, 0); 10];
    for _ in 0..3000 {
        let held = Held::any(&mut chance);
        let truth = chance.between(200.0, 340.0);
        let spread = chance.between(0.3, 3.0);
        let count = chance.whole(3, 6) as usize;
        let check = check_at(NOW, &readings(left(), truth, count, spread, &held, &mut chance));
        let pull = Pull::of(&check, Some(&held.gauge), |_| true).unwrap();
        let judged = judge(&pull, &limits, sure, None);
        let meets = (250.0..=290.0).contains(&truth);
        let tenth = &mut told[((judged.meets.fraction() * 10.0) as usize).min(9)];
        *tenth = (tenth.0 + 1, tenth.1 + judged.meets.fraction(), tenth.2 + u32::from(meets));
        let (right, sure_of) = match judged.verdict {
            Verdict::Meets => (meets, judged.meets),
            Verdict::Below => (truth < 250.0, judged.below),
            Verdict::Above => (truth > 290.0, judged.above),
            Verdict::CannotTell => continue,
        };
        said += 1;
        wrong += u32::from(!right);
        expected_wrong += 1.0 - sure_of.fraction();
    }
    println!("{said} verdicts, {wrong} wrong, {expected_wrong:.1} owned up to; {told:?}");
    assert!(said > 1500, "it often can tell: {said}");
    assert!(
        f64::from(wrong) <= expected_wrong + 3.0 * expected_wrong.sqrt(),
        "{wrong} wrong, {expected_wrong:.1} said"
    );
    for (count, sum, met) in told.into_iter().filter(|tenth| tenth.0 >= 40) {
        let count = f64::from(count);
        let (said, met) = (sum / count, f64::from(met) / count);
        let room = 3.0 * (0.25 / count).sqrt();
        assert!((said - met).abs() < room, "said {said:.2}, was {met:.2} of {count}");
    }
}

#[test]
fn a_range_holds_the_truth_nine_times_in_ten_at_every_gauge() {
    let mut chance = Chance::on(2, "ranges");
    let mut holds = 0;
    for _ in 0..2000 {
        let held = Held::any(&mut chance);
        let truth = chance.between(150.0, 340.0);
        let spread = chance.between(0.3, 4.0);
        let check = check_at(NOW, &readings(left(), truth, 3, spread, &held, &mut chance));
        let estimate = Pull::of(&check, Some(&held.gauge), |_| true).unwrap().estimate;
        holds += i32::from(estimate.low.canonical() <= truth && truth <= estimate.high.canonical());
    }
    println!("{holds} of 2000");
    assert!((1740..=1900).contains(&holds), "{holds} of 2000");
}

#[test]
fn sides_that_pull_alike_are_seldom_called_apart_and_such_that_do_not_are() {
    let mut chance = Chance::on(3, "sides");
    let (mut false_alarms, mut seen) = (0, 0);
    for turn in 0..1000 {
        let held = Held::any(&mut chance);
        let truth = chance.between(200.0, 320.0);
        let apart = if turn % 2 == 0 { 0.0 } else { 15.0 };
        let mut all = readings(left(), truth, 3, 1.5, &held, &mut chance);
        all.extend(readings(place(Sides::Right, None), truth - apart, 3, 1.5, &held, &mut chance));
        let check = check_at(NOW, &all);
        let of = |side: Sides| Pull::of(&check, Some(&held.gauge), |r| r.place.side == side).unwrap();
        let found = sides::apart(&of(Sides::Left), &of(Sides::Right)).unwrap();
        match turn % 2 {
            0 => false_alarms += i32::from(found.apart),
            _ => seen += i32::from(found.apart),
        }
    }
    println!("{false_alarms} and {seen} of 500");
    assert!(false_alarms <= 65, "{false_alarms} of 500");
    assert!(seen >= 480, "{seen} of 500");
}

/// A pump whose vacuum rises with its level by some curve of its own.
struct Dial {
    top: f64,
    bend: f64,
}

impl Dial {
    fn pulls(&self, level: u32, last: u32) -> f64 {
        40.0 + (self.top - 40.0) * (f64::from(level) / f64::from(last)).powf(self.bend)
    }
}

#[test]
fn a_levels_range_holds_the_truth_read_or_between() {
    let mut chance = Chance::on(4, "levels");
    let (mut read, mut read_holds, mut between, mut between_holds) = (0, 0, 0, 0);
    for _ in 0..300 {
        let held = Held::any(&mut chance);
        let dial = Dial { top: chance.between(220.0, 330.0), bend: chance.between(0.5, 1.6) };
        let spread = chance.between(0.3, 3.0);
        let mut all = readings(left(), dial.pulls(9, 9), 3, spread, &held, &mut chance);
        for level in [1, 3, 6] {
            all.extend(readings(place(Sides::Left, Some(level)), dial.pulls(level, 9), 1, spread, &held, &mut chance));
        }
        let check = check_at(NOW, &all);
        let curve = LevelCurve::of(&check, &held.gauge, Some(Level::new(9)), Sides::Left).unwrap();
        for level in 1..=9 {
            let pull = curve.at(Level::new(level)).unwrap();
            let truth = dial.pulls(level, 9);
            let holds = i32::from(pull.vacuum.low.canonical() <= truth && truth <= pull.vacuum.high.canonical());
            match pull.was_read() {
                true => (read, read_holds) = (read + 1, read_holds + holds),
                false => (between, between_holds) = (between + 1, between_holds + holds),
            }
        }
        assert!(curve.at(Level::new(0)).is_none() && curve.at(Level::new(10)).is_none(), "outside is unknown");
        let rising: Vec<f64> = (1..=9).map(|l| curve.at(Level::new(l)).unwrap().vacuum.value.canonical()).collect();
        assert!(rising.windows(2).all(|pair| pair[0] <= pair[1]), "{rising:?}");
    }
    println!("read {read_holds} of {read}, between {between_holds} of {between}");
    assert!(read_holds * 100 >= read * 87, "{read_holds} of {read}");
    assert!(between_holds * 100 >= between * 95, "{between_holds} of {between}");
}

fn point(at: Instant, truth: f64, spread: f64, held: &Held, chance: &mut Chance) -> Point {
    let check: GaugeCheck = check_at(at, &readings(left(), truth, 3, spread, held, chance));
    Point {
        at,
        check: "check".to_owned(),
        gauge: "gauge".to_owned(),
        pull: Pull::of(&check, Some(&held.gauge), |_| true).unwrap(),
    }
}

fn month(months: f64) -> Instant {
    NOW.plus(Span::milliseconds((months * MONTH_HOURS * 3_600_000.0) as i64))
}

/// Eight times in ten: pumps that lose the same each month, checks that differ by more than
/// their readings do, one gauge with an error of its own.
#[test]
fn a_forecast_holds_the_truth_eight_times_in_ten() {
    let mut chance = Chance::on(5, "forecasts");
    let (mut told, mut holds, mut closed) = (0, 0, 0);
    for _ in 0..1500 {
        let held = Held::any(&mut chance);
        let (start, loss) = (chance.between(275.0, 300.0), chance.between(0.8, 4.0));
        let limit = mercury(250.0);
        let count = chance.whole(3, 9);
        let every = chance.between(0.7, 2.0);
        let now = month(every * (count - 1) as f64 + 0.2);
        if start - loss * (every * (count - 1) as f64 + 0.2) < 252.0 {
            continue;
        }
        // Day by day a pump pulls a little more or less.
        let points: Vec<Point> = (0..count)
            .map(|n| {
                let at = every * n as f64;
                let truth = start - loss * at + 1.5 * chance.normal();
                point(month(at), truth, 1.0, &held, &mut chance)
            })
            .collect();
        let reached = month((start - 250.0) / loss);
        // Else the line had passed the limit, or no end came in sight.
        if let Forecast::Between(soonest, latest) = course(&points, &[], Some(limit), now).unwrap().forecast {
            told += 1;
            closed += i32::from(latest.is_some());
            holds += i32::from(soonest <= reached && latest.is_none_or(|latest| reached <= latest));
        }
    }
    println!("{holds} of {told}, {closed} with both ends");
    assert!(told > 500, "{told}");
    assert!((70..=90).contains(&(holds * 100 / told)), "{holds} of {told}");
}

#[test]
fn a_pull_that_comes_back_with_a_new_part_was_the_part_and_one_that_does_not_was_not() {
    let mut chance = Chance::on(6, "parts");
    let (mut by_part, mut by_motor, mut without) = (0, 0, 0);
    for _ in 0..200 {
        let held = Held::any(&mut chance);
        let mut at = |months: f64, truth: f64| point(month(months), truth, 1.0, &held, &mut chance);
        let parts = [NewPart { at: month(2.5), part: "valve".to_owned() }];
        let worn = [at(0.0, 270.0), at(1.0, 262.0), at(2.0, 240.0), at(3.0, 269.0)];
        let tired = [at(0.0, 270.0), at(1.0, 262.0), at(2.0, 240.0), at(3.0, 238.0)];
        let end = month(3.1);
        let limit = Some(mercury(220.0));
        by_part += i32::from(course(&worn, &parts, limit, end).unwrap().came_back.is_some());
        by_motor += i32::from(course(&tired, &parts, limit, end).unwrap().came_back.is_some());
        let no_part = course(&worn, &[], limit, end).unwrap();
        without += i32::from(no_part.came_back.is_some());
    }
    println!("{by_part}, {by_motor}, {without}");
    assert!(by_part >= 196, "{by_part} of 200");
    assert!(by_motor <= 20, "{by_motor} of 200");
    assert_eq!(without, 0, "nothing was new");
}
