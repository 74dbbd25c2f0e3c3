//! The words that a choice takes, by what they are about.

/// Sides of the body, as a field says them.
pub const SIDES: &[&str] = &["left", "right", "both"];
/// How milk is expressed or fed.
pub const METHODS: &[&str] = &["electric_pump", "hand_pump", "by_hand", "at_breast"];

/// Where a session took place.
pub const WHERE: &[&str] = &["home", "work", "neonatal_unit", "on_the_way"];
/// How a pump is sold.
pub const GRADES: &[&str] = &["personal", "hospital", "hand"];

/// What a pump may run on.
pub const POWERS: &[&str] = &["mains", "battery", "both"];
/// Parts that wear.
pub const PARTS: &[&str] = &["valve", "membrane", "tubing", "connector", "bottle_seal", "other"];

/// As it is written down at birth.
pub const SEXES: &[&str] = &["girl", "boy"];
/// How milk is given.
pub const WAYS: &[&str] = &["bottle", "tube", "cup", "spoon_or_syringe"];

/// Which milk.
pub const MILKS: &[&str] = &["own_fresh", "own_stored", "donor", "formula"];
/// How a letdown was told.
pub const FELT: &[&str] = &["seen_or_felt", "not_felt"];

/// Where on the body a sign is.
pub const WHERE_ON_BODY: &[&str] = &["left", "right", "both", "neither"];
/// How it is since it was written down before.
pub const SINCE_BEFORE: &[&str] = &["better", "same", "worse"];

/// Paper of the visit sheet.
pub const PAPERS: &[&str] = &["a4", "letter"];

/// Where milk is kept.
pub const KEPT_IN: &[&str] = &["room", "cooler", "fridge", "freezer", "deep_freezer"];
/// What happens to milk that is kept.
pub const MILK_EVENTS: &[&str] = &[
    "moved",
    "thawing",
    "thawed",
    "warmed",
    "begun",
    "feed_ended",
    "given",
    "given_away",
    "thrown_out",
    "lost_in_power_cut",
];
/// Why milk was thrown out.
pub const THROWN_OUT: &[&str] = &["past_its_time", "left_over", "smelled_off", "spilled", "other"];
/// How parts were cleaned.
pub const CLEANED: &[&str] = &["washed", "sanitised"];
/// Which rules for keeping milk are in force.
pub const KEEPING_RULES: &[&str] = &["home_2017", "older_2010", "unit"];

/// What can change in life.
pub const LIFE_EVENTS: &[&str] =
    &["medicine", "illness", "periods_back", "back_to_work", "journey", "solid_food", "other"];
/// What a pump runs on while it is checked.
pub const RUNS_ON: &[&str] = &["mains", "battery"];

/// How a gauge is connected.
pub const CONNECTED: &[&str] = &["dead_headed", "with_flange"];
/// Sides that are checked at once.
pub const AT_ONCE: &[&str] = &["one", "both"];

/// Units that a gauge or a trace may be in, by UCUM code.
pub const VACUUM_UNITS: &[&str] = &["mm[Hg]", "kPa", "mbar", "cm[H2O]"];
/// Accuracy classes of EN 837-1: per cent of the span.
pub const CLASSES: &[&str] = &["0.1", "0.25", "0.6", "1", "1.6", "2.5", "4"];

/// What stands in a day.
pub const FIXED_POINTS: &[&str] = &["shift", "break", "care_time", "feed", "other"];

/// The days on which it stands.
pub const DAYS: &[&str] = &[
    "every_day",
    "monday_to_friday",
    "saturday_sunday",
    "monday",
    "tuesday",
    "wednesday",
    "thursday",
    "friday",
    "saturday",
    "sunday",
];
/// Whether a session is to be in it.
pub const SESSION_IN: &[&str] = &["in_it", "not_in_it", "either"];

/// What was done with a planned session.
pub const PLAN_CHANGES: &[&str] = &["moved", "skipped", "snoozed"];
/// How reminders come.
pub const REMINDERS: &[&str] = &["sound", "quiet", "none"];

/// Who looked at what a caution was about, and what was done.
pub const DEALT_HOW: &[&str] =
    &["emergency_team", "doctor_or_midwife", "advice_by_phone", "consultant_knows", "nobody_needed"];
/// What a part of a plan is about.
pub const PLAN_PARTS: &[&str] = &["setting", "search", "trial", "rhythm", "aim", "check", "visit", "rule", "words"];

/// Whether a setting is to be used from now on, tried, or not gone above.
pub const USE_OR_TRY: &[&str] = &["use", "try", "at_most"];
/// The phase that a setting is for.
pub const PLAN_PHASES: &[&str] = &["letdown", "expression"];

/// What is to be checked.
pub const PLAN_CHECKS: &[&str] = &["pump", "flange", "weight", "temperature", "pain"];
/// What was done with a part of a plan.
pub const PLAN_ANSWERS: &[&str] = &["accepted", "left"];

/// What a guided search looks for.
pub const SEARCHED: &[&str] = &["vacuum", "speed"];
/// How a search ended.
pub const SEARCH_ENDED: &[&str] =
    &["found", "as_planned", "nothing_hurt", "all_hurt", "pain_rose", "letdown_came", "no_letdown", "stopped"];

/// What two ways differ in.
pub const TRIAL_DIFFERS: &[&str] = &["vacuum", "speed", "flange", "pump", "hands_on", "other"];
/// How two ways are compared: a side each, swapped; or a session each.
pub const TRIAL_DESIGNS: &[&str] = &["sides", "sessions"];
/// What the ways are compared by, chosen before the first session.
pub const TRIAL_OUTCOMES: &[&str] = &["amount", "time_to_most", "pain", "letdown"];
/// How a trial ended.
pub const TRIAL_ENDED: &[&str] = &["finished", "settled", "pain_rose", "caution", "changed", "stopped"];
/// The way that was drawn: of a session, or of its left side.
pub const TRIAL_WAYS: &[&str] = &["a", "b"];
/// The way that was done.
pub const TRIAL_DONE: &[&str] = &["a", "b", "neither"];

/// What a network of units may count a family for: its own care, or research as well.
pub const CONSENT_SCOPES: &[&str] = &["network", "research"];
