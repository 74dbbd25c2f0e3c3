//! American Academy of Pediatrics, Age terminology during the perinatal period,
//! Pediatrics 2004;114:1362: corrected age is chronological age less the weeks born before
//! 40 weeks; their example: born at 28 weeks, at 24 months it is 21 months corrected.

use chrono::NaiveDate;
use drawwell_core::answer::age::Age;

fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

#[test]
fn their_example() {
    // Twelve weeks early are 84 days: 24 months after 10 January 2022.
    let (birth, day) = (date("2022-01-10"), date("2024-01-10"));
    assert_eq!(Age::on(day, birth), Some(Age::Years { years: 2 }));
    assert_eq!(Age::corrected_on(day, birth, 28, 0), Some(Age::Months { months: 21 }));
}

#[test]
fn around_the_day_it_was_due() {
    let birth = date("2026-03-12");
    // 29 weeks and 2 days are 75 days early: due on 26 May.
    let on = |day: &str| Age::corrected_on(date(day), birth, 29, 2);
    assert_eq!(on("2026-05-25"), Some(Age::NotYetDue { days: 1 }));
    assert_eq!(on("2026-05-26"), Some(Age::Weeks { weeks: 0, days: 0 }));
    assert_eq!(on("2026-06-03"), Some(Age::Weeks { weeks: 1, days: 1 }));
    assert_eq!(on("2026-03-11"), None, "before it was born");
}

#[test]
fn used_up_to_three_years_and_no_further() {
    let birth = date("2022-01-10");
    assert!(Age::corrected_on(date("2025-01-09"), birth, 28, 0).is_some());
    assert_eq!(Age::corrected_on(date("2025-01-10"), birth, 28, 0), None);
}

#[test]
fn a_month_is_whole_on_its_day() {
    let birth = date("2026-01-31");
    assert_eq!(Age::on(date("2026-07-31"), birth), Some(Age::Weeks { weeks: 25, days: 6 }));
    assert_eq!(Age::on(date("2026-08-30"), birth), Some(Age::Months { months: 6 }));
    assert_eq!(Age::on(date("2026-08-31"), birth), Some(Age::Months { months: 7 }));
}
