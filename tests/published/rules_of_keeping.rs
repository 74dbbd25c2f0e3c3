//! Until when milk is good. Values: CDC, Human Milk Storage Guidelines (after ABM Clinical Protocol 8,
//! Eglash and Simon, Breastfeed Med 2017;12:390-395): fresh in a room of up to 25 °C 4 hours, in the
//! fridge 4 days, in the freezer 6 months at best and 12 acceptable; thawed 24 hours from fully
//! thawed and never frozen again; warmed 2 hours; what is left of a feed 2 hours from its end.

use drawwell_core::answer::keeping::{
    in_force, keep, lasts, refused, use_first, Clock, GoodUntil, InForce, Kept, Odd, Refusal, State, StepsBack, Untold,
};
use drawwell_core::answer::supply::intake::by_age;
use drawwell_core::answer::Estimate;
use drawwell_core::guidance::KeepingRules;
use drawwell_core::quantity::{Production, Quantity, Temperature, Volume};
use drawwell_core::record::{Container, Happened, KeptIn, MilkEvent, Taken};
use drawwell_core::time::{Instant, Moment, Span, Zone};

fn at(text: &str) -> Moment {
    Moment::from_parts(text, "Europe/Berlin").unwrap()
}

fn milliliters(volume: f64) -> Volume {
    Volume::from_canonical(volume)
}

fn container(expressed: &str, place: KeptIn, room: Option<f64>) -> Container {
    Container {
        id: "c".into(),
        label: None,
        expressed: at(expressed),
        amount: Some(milliliters(80.0)),
        kept_in: Some(place),
        room: room.map(Temperature::from_canonical),
    }
}

fn event(number: usize, when: &str, what: Happened) -> MilkEvent {
    MilkEvent { id: format!("e{number}"), container: "c".into(), at: at(when), what, taken: None }
}

fn home() -> InForce {
    in_force(None, None, None)
}

fn kept(container: &Container, events: &[(&str, Happened)], now: &str) -> Kept {
    let events: Vec<MilkEvent> = events.iter().enumerate().map(|(n, (when, what))| event(n, when, *what)).collect();
    keep(container, &events, &home(), at(now).instant())
}

fn until(kept: &Kept) -> (Option<Moment>, Option<Clock>) {
    let zone = Zone::named("Europe/Berlin").unwrap();
    match kept.good_until {
        GoodUntil::At { at, clock, .. } => (Some(Moment::new(at, zone)), Some(clock)),
        GoodUntil::Untold(_) => (None, None),
    }
}

#[test]
fn fresh_in_a_room_of_22_degrees_is_good_for_four_hours_that_instant_included() {
    let milk = container("2026-08-14T08:00:00+02:00", KeptIn::Room, Some(22.0));
    let noon = kept(&milk, &[], "2026-08-14T12:00:00+02:00");
    assert_eq!(until(&noon), (Some(at("2026-08-14T12:00:00+02:00")), Some(Clock::Room)));
    assert!(!noon.is_past(at("2026-08-14T12:00:00+02:00").instant()));
    assert!(noon.is_past(at("2026-08-14T12:00:00.001+02:00").instant()));
}

#[test]
fn a_room_of_25_degrees_is_in_the_table_and_a_warmer_one_is_not() {
    let milk = |room| {
        kept(&container("2026-08-14T08:00:00+02:00", KeptIn::Room, Some(room)), &[], "2026-08-14T09:00:00+02:00")
    };
    assert_eq!(until(&milk(25.0)).1, Some(Clock::Room));
    assert_eq!(milk(25.1).good_until, GoodUntil::Untold(Untold::TooWarm));
    assert_eq!(milk(26.0).good_until, GoodUntil::Untold(Untold::TooWarm));
    assert!(!milk(26.0).is_usable(at("2026-08-14T09:00:00+02:00").instant()));
}

#[test]
fn four_days_in_the_fridge_are_96_hours_also_over_a_clock_change() {
    let milk = container("2026-10-23T10:00:00+02:00", KeptIn::Fridge, None);
    let found = kept(&milk, &[], "2026-10-24T10:00:00+02:00");
    assert_eq!(until(&found), (Some(at("2026-10-27T09:00:00+01:00")), Some(Clock::Fridge)));
    assert_eq!(found.good_until.at().unwrap().since(milk.expressed.instant()), Span::hours(96));
}

/// Months are of the calendar: 31 August and six months is 28 February, in a leap year the 29th.
#[test]
fn months_in_the_freezer_are_of_the_calendar_and_end_where_a_month_does() {
    for (expressed, best, acceptable) in [
        ("2025-08-31T10:00:00+02:00", "2026-02-28T10:00:00+01:00", "2026-08-31T10:00:00+02:00"),
        ("2027-08-31T10:00:00+02:00", "2028-02-29T10:00:00+01:00", "2028-08-31T10:00:00+02:00"),
        ("2024-02-29T10:00:00+01:00", "2024-08-29T10:00:00+02:00", "2025-02-28T10:00:00+01:00"),
    ] {
        let found = kept(&container(expressed, KeptIn::Freezer, None), &[], expressed);
        let GoodUntil::At { at: until, clock, acceptable: last, .. } = found.good_until else { panic!("{expressed}") };
        assert_eq!((until, clock), (at(best).instant(), Clock::Freezer), "{expressed}");
        assert_eq!(last, Some(at(acceptable).instant()), "{expressed}");
    }
}

/// Best within six months, acceptable for twelve: it is past its time after twelve.
#[test]
fn frozen_milk_that_is_past_its_best_is_not_past_its_time() {
    let milk = container("2026-01-10T08:00:00+01:00", KeptIn::Freezer, None);
    for (now, usable) in
        [("2026-08-14T08:00:00+02:00", true), ("2027-01-10T08:00:00+01:00", true), ("2027-01-10T08:00:01+01:00", false)]
    {
        assert_eq!(kept(&milk, &[], now).is_usable(at(now).instant()), usable, "{now}");
    }
    // Taken out to thaw after its best, it has its 24 hours.
    let thawed = [
        ("2026-08-14T08:00:00+02:00", Happened::Moved(KeptIn::Fridge)),
        ("2026-08-15T06:00:00+02:00", Happened::Thawed),
    ];
    let found = kept(&milk, &thawed, "2026-08-15T07:00:00+02:00");
    assert_eq!((found.lapsed_before, until(&found).1), (None, Some(Clock::Thawed)));
}

#[test]
fn thawed_milk_has_24_hours_from_fully_thawed_and_not_from_the_freezer_door() {
    let milk = container("2026-06-01T08:00:00+02:00", KeptIn::Freezer, None);
    let out = ("2026-08-14T20:00:00+02:00", Happened::Moved(KeptIn::Fridge));
    let thawing = kept(&milk, &[out], "2026-08-15T02:00:00+02:00");
    assert_eq!((thawing.state, thawing.good_until), (State::Thawing, GoodUntil::Untold(Untold::StillThawing)));
    let thawed = kept(&milk, &[out, ("2026-08-15T06:00:00+02:00", Happened::Thawed)], "2026-08-15T07:00:00+02:00");
    assert_eq!(until(&thawed), (Some(at("2026-08-16T06:00:00+02:00")), Some(Clock::Thawed)));
    let in_room = kept(
        &milk,
        &[
            out,
            ("2026-08-15T06:00:00+02:00", Happened::Thawed),
            ("2026-08-15T09:00:00+02:00", Happened::Moved(KeptIn::Room)),
        ],
        "2026-08-15T09:30:00+02:00",
    );
    assert_eq!(until(&in_room), (Some(at("2026-08-15T11:00:00+02:00")), Some(Clock::Warmed)));
}

#[test]
fn what_is_left_of_a_feed_has_two_hours_from_its_end() {
    let milk = container("2026-08-14T08:00:00+02:00", KeptIn::Fridge, None);
    let began = ("2026-08-14T10:00:00+02:00", Happened::Begun);
    let goes_on = kept(&milk, &[began], "2026-08-14T10:10:00+02:00");
    let GoodUntil::At { at: first, feed_goes_on, .. } = goes_on.good_until else { panic!("an end") };
    assert_eq!((first, feed_goes_on), (at("2026-08-14T12:00:00+02:00").instant(), true), "until its end is noted");
    let ended = kept(&milk, &[began, ("2026-08-14T10:20:00+02:00", Happened::FeedEnded)], "2026-08-14T10:30:00+02:00");
    assert_eq!(until(&ended), (Some(at("2026-08-14T12:20:00+02:00")), Some(Clock::AfterFeed)));
}

/// A feed, or warming, gives no milk more time than it had.
#[test]
fn warming_and_a_feed_give_no_time_and_a_cooler_has_its_own_within_that_of_the_fridge() {
    let milk = container("2026-08-14T08:00:00+02:00", KeptIn::Room, Some(20.0));
    for what in [Happened::Begun, Happened::Warmed, Happened::Moved(KeptIn::Cooler)] {
        let found = kept(&milk, &[("2026-08-14T11:30:00+02:00", what)], "2026-08-14T11:40:00+02:00");
        let most = if what == Happened::Moved(KeptIn::Cooler) {
            "2026-08-15T11:30:00+02:00"
        } else {
            "2026-08-14T12:00:00+02:00"
        };
        assert_eq!(until(&found).0, Some(at(most)), "{what:?}");
    }
    let in_cooler_late = container("2026-08-14T08:00:00+02:00", KeptIn::Fridge, None);
    let found = kept(
        &in_cooler_late,
        &[("2026-08-18T06:00:00+02:00", Happened::Moved(KeptIn::Cooler))],
        "2026-08-18T07:00:00+02:00",
    );
    assert_eq!(until(&found).0, Some(at("2026-08-18T08:00:00+02:00")), "the four days go on");
}

#[test]
fn what_stood_too_long_before_it_was_put_in_the_fridge_is_past_its_time() {
    let milk = container("2026-08-14T08:00:00+02:00", KeptIn::Room, Some(20.0));
    for (moved, past) in [("2026-08-14T12:00:00+02:00", false), ("2026-08-14T12:01:00+02:00", true)] {
        let found = kept(&milk, &[(moved, Happened::Moved(KeptIn::Fridge))], "2026-08-14T13:00:00+02:00");
        assert_eq!(found.is_past(at("2026-08-14T13:00:00+02:00").instant()), past, "{moved}");
    }
}

#[test]
fn thawed_milk_is_not_frozen_again() {
    let milk = container("2026-06-01T08:00:00+02:00", KeptIn::Freezer, None);
    let thawed = ("2026-08-15T06:00:00+02:00", Happened::Thawed);
    let before = kept(&milk, &[thawed], "2026-08-15T07:00:00+02:00");
    assert_eq!(refused(&before, Happened::Moved(KeptIn::Freezer), None), Some(Refusal::FrozenAgain));
    assert_eq!(refused(&before, Happened::Moved(KeptIn::Room), None), None);
    // Where it was done all the same, on another phone: it is said, and no time is told.
    let again = kept(
        &milk,
        &[thawed, ("2026-08-15T07:00:00+02:00", Happened::Moved(KeptIn::Freezer))],
        "2026-08-15T08:00:00+02:00",
    );
    assert!(again.odd.contains(&Odd::FrozenAgain));
    assert_eq!(again.good_until, GoodUntil::Untold(Untold::FrozenAgain));
    assert!(!again.is_usable(at("2026-08-15T08:00:00+02:00").instant()));
}

#[test]
fn what_cannot_have_been_so_is_said_and_counts_as_it_can() {
    let now = "2026-08-15T08:00:00+02:00";
    let fresh = container("2026-08-14T08:00:00+02:00", KeptIn::Fridge, None);
    let thawed = kept(&fresh, &[("2026-08-14T10:00:00+02:00", Happened::Thawed)], now);
    assert_eq!((thawed.state, thawed.odd), (State::Fresh, vec![Odd::ThawedBeforeFrozen]));
    assert_eq!(refused(&kept(&fresh, &[], now), Happened::Thawed, None), Some(Refusal::NotFrozen));
    let future = container("2026-08-16T08:00:00+02:00", KeptIn::Fridge, None);
    assert_eq!(kept(&future, &[], now).odd, vec![Odd::InFuture]);
    let early = kept(&fresh, &[("2026-08-13T10:00:00+02:00", Happened::Moved(KeptIn::Freezer))], now);
    assert_eq!(early.odd, vec![Odd::BeforeExpressed]);
    let gone = ("2026-08-14T10:00:00+02:00", Happened::Taken(Taken::Given));
    let after = kept(&fresh, &[gone, ("2026-08-14T11:00:00+02:00", Happened::Warmed)], now);
    assert_eq!((after.is_gone, after.odd), (true, vec![Odd::AfterGone]));
    assert_eq!(refused(&kept(&fresh, &[gone], now), Happened::Warmed, None), Some(Refusal::Gone));
}

#[test]
fn one_container_taken_on_two_phones_is_said_with_how_much_too_much() {
    let fresh = container("2026-08-14T08:00:00+02:00", KeptIn::Fridge, None);
    let take = |number: usize, when: &str| MilkEvent {
        taken: Some(milliliters(50.0)),
        ..event(number, when, Happened::Taken(Taken::Given))
    };
    let both = [take(1, "2026-08-14T10:00:00+02:00"), take(2, "2026-08-14T10:01:00+02:00")];
    let found = keep(&fresh, &both, &home(), at("2026-08-14T12:00:00+02:00").instant());
    assert_eq!((found.left, found.overdrawn), (Some(milliliters(0.0)), milliliters(20.0)));
    assert!(found.odd.contains(&Odd::TakenTwice));
    let one = keep(&fresh, &both[..1], &home(), at("2026-08-14T12:00:00+02:00").instant());
    assert_eq!(one.left, Some(milliliters(30.0)));
    let taken = Happened::Taken(Taken::Given);
    assert_eq!(refused(&one, taken, Some(milliliters(31.0))), Some(Refusal::MoreThanThereIs));
    assert_eq!(refused(&one, taken, Some(milliliters(30.0))), None);
}

/// A table for home steps back for a child in hospital, preterm or with weak defences.
#[test]
fn for_a_child_that_needs_it_the_units_rules_hold_and_without_them_nothing_is_told() {
    let now = at("2026-08-14T09:00:00+02:00").instant();
    let milk = container("2026-08-14T08:00:00+02:00", KeptIn::Fridge, None);
    let by = |rules: &InForce| keep(&milk, &[], rules, now).good_until;
    for why in [StepsBack::InHospital, StepsBack::Preterm, StepsBack::WeakDefences] {
        assert_eq!(by(&in_force(None, None, Some(why))), GoodUntil::Untold(Untold::UnitsRules));
    }
    let mut fields = std::collections::BTreeMap::new();
    assert_eq!(KeepingRules::of_unit(&fields), None);
    fields.insert("unit_fridge".to_owned(), serde_json::json!(24 * 60));
    let unit = KeepingRules::of_unit(&fields).unwrap();
    let with_unit = in_force(None, Some(&unit), Some(StepsBack::Preterm));
    assert_eq!(by(&with_unit).at(), Some(at("2026-08-15T08:00:00+02:00").instant()));
    let frozen = keep(&container("2026-08-14T08:00:00+02:00", KeptIn::Freezer, None), &[], &with_unit, now);
    assert_eq!(frozen.good_until, GoodUntil::Untold(Untold::NotInTheRules), "what they don't say is not told");
    let by_choice = in_force(Some("home_2017"), Some(&unit), Some(StepsBack::Preterm));
    assert_eq!(by(&by_choice).at(), Some(at("2026-08-18T08:00:00+02:00").instant()), "a choice has the last word");
    assert_eq!(in_force(Some("unit"), None, None), InForce::StepsBack(StepsBack::NotEntered));
}

/// Sources disagree, and each is taken as a whole (ABM Clinical Protocol 8, 2010: from memory).
#[test]
fn each_set_has_its_source_and_year_and_none_is_mixed() {
    let sets = KeepingRules::shipped();
    let named: Vec<(&str, Option<u32>)> = sets.iter().map(|set| (set.key.as_str(), set.year)).collect();
    assert_eq!(named, [("home_2017", Some(2017)), ("older_2010", Some(2010))]);
    let hours = |hours: i64| Some(Span::hours(hours));
    let told: Vec<[Option<Span>; 2]> = sets.iter().map(|set| [set.room, set.fridge]).collect();
    assert_eq!(told, [[hours(4), hours(96)], [hours(6), hours(120)]]);
    assert!(sets.iter().all(|set| set.source.len() > 10));
}

/// CDC, How to Keep Your Breast Pump Kit Clean: daily sanitising under two months of age.
#[test]
fn parts_are_sanitised_daily_at_59_days_and_not_for_that_at_61() {
    let home = home();
    let under = home.rules().unwrap().sanitise_under.unwrap();
    assert!(Span::hours(24 * 59) < under && Span::hours(24 * 61) >= under);
}

fn of(number: u32, left: f64, hours: i64) -> Kept {
    let now = Instant::from_unix_milliseconds(0);
    let zone = Zone::named("Europe/Berlin").unwrap();
    let container = Container {
        id: format!("{number:03}"),
        label: None,
        expressed: Moment::new(now.minus(Span::hours(96 - hours)), zone),
        amount: Some(milliliters(left)),
        kept_in: Some(KeptIn::Fridge),
        room: None,
    };
    keep(&container, &[], &home(), now)
}

fn chosen(all: &[Kept], wished: f64) -> Option<(Vec<String>, f64, Option<f64>)> {
    let all: Vec<&Kept> = all.iter().collect();
    let found = use_first(&all, milliliters(wished), Instant::from_unix_milliseconds(0))?;
    Some((found.ids, found.together.canonical(), found.left_over.map(|over| over.canonical())))
}

#[test]
fn what_lapses_first_is_used_and_as_little_as_can_be_is_left_over() {
    let all = [of(1, 60.0, 10), of(2, 70.0, 20), of(3, 60.0, 30), of(4, 60.0, 40)];
    let ids = |found: &[&str]| found.iter().map(|id| (*id).to_owned()).collect::<Vec<_>>();
    assert_eq!(chosen(&all, 60.0), Some((ids(&["001"]), 60.0, Some(0.0))));
    assert_eq!(chosen(&all, 120.0), Some((ids(&["001", "003"]), 120.0, Some(0.0))), "and of two the sooner");
    assert_eq!(chosen(&all, 125.0), Some((ids(&["001", "002"]), 130.0, Some(5.0))));
    assert_eq!(
        chosen(&all, 500.0),
        Some((ids(&["001", "002", "003", "004"]), 250.0, None)),
        "all, and it is not enough"
    );
    assert_eq!(chosen(&[], 60.0), None);
    assert_eq!(chosen(&[of(1, 60.0, -1)], 60.0), None, "what is past its time is no milk to use");
}

/// Rios-Leyvraz and Yao 2023 for 90 days: 735.0 mL a day. 7350 mL last ten days.
#[test]
fn what_is_frozen_lasts_its_amount_over_the_need_with_the_range_of_the_need() {
    let need = by_age(90).unwrap();
    let of = |milliliters: f64| Production::from_canonical(milliliters);
    let found = lasts(milliliters(10.0 * need.canonical()), Estimate { value: need, low: of(478.0), high: of(1356.0) })
        .unwrap();
    assert!((found.value.in_minutes() - 10 * 1440).abs() <= 1);
    assert!(found.low < found.value && found.value < found.high);
    let none = Estimate { value: of(0.0), low: of(0.0), high: of(0.0) };
    assert_eq!(lasts(milliliters(500.0), none), None, "with no need there is no number of days");
}
