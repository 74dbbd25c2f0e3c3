//! Every table and every column. A column that may say nothing has one beside it, of the same
//! name with `_why`, that says why.

use super::{Column, Holds, IntoRow, Row, Table};

/// The version of the tables: one that is newer is not read.
pub const VERSION: u32 = 1;

macro_rules! taken {
    (whole) => { i64 };
    (lacks) => { Option<i64> };
    (text) => { String };
    (word) => { &'static str };
    (why) => { Option<&'static str> };
}

macro_rules! holds {
    (whole) => {
        (Holds::Whole, false)
    };
    (lacks) => {
        (Holds::Whole, true)
    };
    (text) => {
        (Holds::Text, false)
    };
    (word) => {
        (Holds::Text, false)
    };
    (why) => {
        (Holds::Text, true)
    };
}

macro_rules! tables {
    ($($row:ident $name:literal: $one_row:literal, from $source:literal { $($field:ident: $takes:ident, $unit:literal, $meaning:literal;)* })*) => {
        $(
            #[doc = concat!("A row of `", $name, "`: ", $one_row, ".")]
            #[derive(Debug, Clone, PartialEq, Eq)]
            pub struct $row {
                $(#[doc = $meaning] pub $field: taken!($takes),)*
            }

            impl IntoRow for $row {
                const TABLE: Table = Table {
                    name: $name,
                    one_row: $one_row,
                    source: $source,
                    columns: &[$(Column {
                        name: stringify!($field),
                        holds: holds!($takes).0,
                        may_lack: holds!($takes).1,
                        unit: $unit,
                        meaning: $meaning,
                    },)*],
                };

                fn into_row(self) -> Row {
                    vec![$(self.$field.into(),)*]
                }
            }
        )*

        /// All of them.
        pub const ALL: &[Table] = &[$(<$row as IntoRow>::TABLE,)*];
    };
}

tables! {
    Families "families": "a family that said yes", from "child, consent, site; ages as in answer/age (AAP 2004)" {
        family: text, "pseudonym", "HMAC-SHA-256 of its id under the network's key";
        site: text, "name", "The unit that brought it in";
        scope: word, "network, research", "What it said yes to";
        gestation_days: lacks, "d", "Completed days of gestation at birth";
        gestation_days_why: why, "no_child, not_said, twins_differ", "Why that is not known";
        children: whole, "count", "Children that were born together";
        first_day: lacks, "day of life", "The day of life of the first session; the day of birth is 0";
        first_day_why: why, "no_birth, no_session", "Why that is not known";
        last_day: lacks, "day of life", "The day of life of the last session";
        last_day_why: why, "no_birth, no_session", "Why that is not known";
        sessions: whole, "count", "Sessions that are over";
        pumps: whole, "count", "Pumps that were written down";
    }
    Sessions "sessions": "a session that is over", from "session, removal, pump, check (answer/pump/levels), fit" {
        family: text, "pseudonym", "Whose it is";
        number: whole, "count", "Its place among the family's sessions, from 1";
        day: lacks, "day of life", "When it began; the day of birth is 0";
        day_why: why, "no_birth, before_birth", "Why that is not known";
        corrected_day: lacks, "day", "The same, counted from the day that was due";
        corrected_day_why: why, "no_birth, before_birth, no_gestation", "Why that is not known";
        minute: whole, "min", "When it began, by the clock on the wall, from midnight";
        lasted_minutes: lacks, "min", "How long it was";
        lasted_minutes_why: why, "no_end, too_long", "Why that is not known";
        since_minutes: lacks, "min", "From the end of the session before to its end";
        since_minutes_why: why, "first, too_long", "Why that is not known";
        method: word, "as in the record, or unsaid", "How it was done";
        sides: word, "left, right, both", "Which sides took part";
        milk_tenths: lacks, "0.1 mL", "What came, both sides together";
        milk_tenths_why: why, "unknown, one_side_unknown, at_breast", "Why that is not known";
        grade: word, "personal, hospital, hand, unsaid", "What its pump is made for";
        vacuum_tenths: lacks, "0.1 mmHg", "The strongest vacuum of expressing, as the pump showed it or by the curve of its check";
        vacuum_tenths_why: why, "not_said, no_check", "Why that is not known";
        pain: lacks, "0 to 10", "The strongest pain that was said of it";
        pain_why: why, "not_said", "Why that is not known";
    }
    Days "days": "a day from the first session to the last whole day", from "answer/supply/day: intervals spread over local days" {
        family: text, "pseudonym", "Whose it is";
        number: whole, "count", "Its place among the family's days, from 1";
        day: lacks, "day of life", "The day of birth is 0";
        day_why: why, "no_birth, before_birth", "Why that is not known";
        corrected_day: lacks, "day", "The same, counted from the day that was due";
        corrected_day_why: why, "no_birth, before_birth, no_gestation", "Why that is not known";
        made_tenths: lacks, "0.1 mL", "What was made over the day, both sides, where enough of it was observed";
        made_tenths_why: why, "not_observed, incomplete", "Why that is not known";
        observed_percent: whole, "%", "How much of the day was observed";
        collected_tenths: lacks, "0.1 mL", "What came by the clock: the sessions that ended in it";
        collected_tenths_why: why, "amount_unknown, no_session", "Why that is not known";
        sessions: whole, "count", "Sessions that ended in it";
        night_sessions: whole, "count", "Those of them that ended between midnight and six";
        amounts_unknown: whole, "count", "Those of them whose amount is not known";
    }
    Trends "trends": "how a family's milk goes, as of when it was shared last", from "answer/supply/summary (Theil 1950, Sen 1968)" {
        family: text, "pseudonym", "Whose it is";
        level_tenths: lacks, "0.1 mL", "How much a day now";
        level_low: lacks, "0.1 mL", "Where that may lie at the least, nine times in ten";
        level_high: lacks, "0.1 mL", "And at the most";
        level_tenths_why: why, "needs_days, too_much_missing, no_session", "Why the level and its range are not known";
        week_tenths: lacks, "0.1 mL", "By how much a day's milk changes in a week";
        week_low: lacks, "0.1 mL", "Where that may lie at the least, nine times in ten";
        week_high: lacks, "0.1 mL", "And at the most";
        week_tenths_why: why, "needs_days, too_much_missing, no_session", "Why the change and its range are not known";
        heading: word, "holding, rising, falling, cannot_tell", "What that is called";
        days: whole, "count", "Days looked at";
        complete_days: whole, "count", "Days complete enough to count";
    }
    Checks "checks": "one side of a check of a pump with a gauge", from "answer/pump (JCGM 101 and 106), answer/pump/wear" {
        family: text, "pseudonym", "Whose it is";
        pump: whole, "count", "The pump's place among the family's, from 1";
        number: whole, "count", "The row's place among the pump's, from 1";
        grade: word, "personal, hospital, hand, unsaid", "What the pump is made for";
        side: word, "left, right, both", "Which side was read";
        day: lacks, "day of life", "When it was checked";
        day_why: why, "no_birth, before_birth", "Why that is not known";
        used_days: lacks, "d", "How long the pump was in use";
        used_days_why: why, "not_said", "Why that is not known";
        pull_tenths: lacks, "0.1 mmHg", "What it pulls at the highest level";
        pull_low: lacks, "0.1 mmHg", "Where that may lie at the least, nine times in ten";
        pull_high: lacks, "0.1 mmHg", "And at the most";
        pull_tenths_why: why, "gauge_unknown, at_end_of_span, needs_readings, not_read", "Why the pull and its range are not known";
        verdict: word, "meets, below, above, cannot_tell", "Whether that meets its range";
        latest: whole, "0 or 1", "Whether it is of the pump's latest check of that side";
        wear_tenths: lacks, "0.1 mmHg", "By how much that side's pull changes in a month, at its latest check";
        wear_low: lacks, "0.1 mmHg", "Where that may lie at the least, nine times in ten";
        wear_high: lacks, "0.1 mmHg", "And at the most";
        wear_tenths_why: why, "needs_checks, not_latest", "Why the wear and its range are not known";
    }
    Refills "refills": "how fast one side, or both measured together, fills again as of the end of a week of life", from "answer/refill (Daly 1996)" {
        family: text, "pseudonym", "Whose it is";
        week: whole, "week of life", "The week at whose end it holds, from 1";
        side: word, "left, right, together", "Which side";
        rate_tenths: whole, "0.1 mL", "What a day would make at the rate just after an emptying";
        rate_low: whole, "0.1 mL", "Where that may lie at the least, nine times in ten";
        rate_high: whole, "0.1 mL", "And at the most";
        slows: word, "yes, no_sign, cannot_tell", "Whether refilling slows as the breast fills";
        flattens_tenths: lacks, "0.1 mL", "The amount it flattens to";
        flattens_tenths_why: why, "no_sign, cannot_tell", "Why that is not known";
        intervals: whole, "count", "Intervals that it rests on";
    }
    Comfort "comfort": "a setting that a hand set, and how it felt to one side in one phase of a session", from "answer/comfort/used, of the last 56 days" {
        family: text, "pseudonym", "Whose it is";
        number: whole, "count", "Its place among the family's, from 1";
        day: lacks, "day of life", "When it was";
        day_why: why, "no_birth, before_birth", "Why that is not known";
        side: word, "left, right", "Which side felt it";
        phase: word, "letdown, expression, rest", "In which phase";
        vacuum_tenths: lacks, "0.1 mmHg", "How strong it was";
        vacuum_tenths_why: why, "no_check", "Why that is not known";
        comfortable: whole, "0 or 1", "Whether it was comfortable";
        flange_over_tenths: lacks, "0.1 mm", "How much wider the flange was than the nipple, by the latest measure before";
        flange_over_tenths_why: why, "no_flange, no_measure", "Why that is not known";
    }
    FollowUp "follow_up": "how long a family was followed", from "session, rhythm; as of when it was shared last" {
        family: text, "pseudonym", "Whose it is";
        last_day: lacks, "day of life", "The day of life of the last session";
        last_day_why: why, "no_birth, no_session", "Why that is not known";
        silent_days: lacks, "d", "Days from the last session to when it was shared last";
        silent_days_why: why, "no_session", "Why that is not known";
        ends_by_plan: whole, "0 or 1", "Whether expressing was being ended by plan";
    }
    Refused "refused": "a file that could not be read; of no family", from "the take-in" {
        family: text, "pseudonym", "HMAC-SHA-256 of the site and the file's name";
        site: text, "name", "The unit that brought it";
        why: text, "key of a message", "Why it could not be read";
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_may_lack_says_why_beside_it_and_names_stand_once() {
        for table in ALL {
            let names: Vec<&str> = table.columns.iter().map(|column| column.name).collect();
            let once: std::collections::BTreeSet<&&str> = names.iter().collect();
            assert_eq!(once.len(), names.len(), "{}", table.name);
            assert_eq!(names.first(), Some(&"family"));
            for column in table.columns.iter().filter(|column| column.may_lack && column.holds == Holds::Whole) {
                // The ends of a range lack where its value does.
                let stem = column.name.trim_end_matches("_low").trim_end_matches("_high");
                let why = [format!("{}_why", column.name), format!("{stem}_tenths_why")];
                assert!(why.iter().any(|why| names.contains(&why.as_str())), "{}.{}", table.name, column.name);
            }
        }
    }
}
