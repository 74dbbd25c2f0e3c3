//! The table of every kind of record and every field it may have.

use super::Takes;

/// The kinds of record.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Kind {
    /// How the person wants things: one record.
    Settings,
    /// Rules that were set to another value: one record.
    Rules,
    /// A child.
    Child,
    /// A pump.
    Pump,
    /// A part of a pump that wears.
    Part,
    /// A flange.
    Flange,
    /// A gauge that pumps are checked with.
    Gauge,
    /// A check of a pump with a gauge.
    Check,
    /// A trace of pressure over time.
    Trace,
    /// Nipples measured, and signs of how a flange fits.
    Fit,
    /// A session: expressing, or a feed at the breast.
    Session,
    /// How sessions are to fall over a day, and sleep with them: one record.
    Rhythm,
    /// A point of the day that stands: a shift, a break, a care time, a feed.
    FixedPoint,
    /// A planned session that was moved, left out, or put off.
    PlanChange,
    /// Milk given by bottle, tube or cup.
    Feed,
    /// Temperature and signs at the breast.
    Sign,
    /// A child's weight.
    Weight,
    /// Something that changed in life, from a day on.
    LifeEvent,
    /// A free note.
    Note,
    /// A visit with the consultant, that was or is to be.
    Visit,
    /// A question for the consultant.
    Question,
    /// The consultant whose keys were taken in.
    Consultant,
    /// A caution that was dealt with.
    CautionDealt,
    /// A plan from the consultant: what belongs to all of it.
    Plan,
    /// One part of a plan, which is accepted or left by itself.
    PlanPart,
    /// A family on the consultant's desk.
    CaseFamily,
}

/// A field: its name, what it takes, and the group it is shown in.
#[derive(Debug, Clone, Copy)]
pub struct Spec {
    /// Stable name.
    pub key: &'static str,
    /// What it takes.
    pub takes: Takes,
    /// The group of the form it stands in; `""` is not shown.
    pub group: &'static str,
}

const fn spec(key: &'static str, takes: Takes, group: &'static str) -> Spec {
    Spec { key, takes, group }
}

/// Sides of the body, as a field says them.
pub const SIDES: &[&str] = &["left", "right", "both"];
/// How milk is expressed or fed.
pub const METHODS: &[&str] = &["electric_pump", "hand_pump", "by_hand", "at_breast"];
/// Where a session took place.
pub const WHERE: &[&str] = &["home", "work", "neonatal_unit", "on_the_way"];
const GRADES: &[&str] = &["personal", "hospital", "hand"];
const POWERS: &[&str] = &["mains", "battery", "both"];
const PARTS: &[&str] = &["valve", "membrane", "tubing", "connector", "bottle_seal", "other"];
const SEXES: &[&str] = &["girl", "boy"];
const WAYS: &[&str] = &["bottle", "tube", "cup", "spoon_or_syringe"];
const MILKS: &[&str] = &["own_fresh", "own_stored", "donor", "formula"];
const FELT: &[&str] = &["seen_or_felt", "not_felt"];
/// Where on the body a sign is.
pub const WHERE_ON_BODY: &[&str] = &["left", "right", "both", "neither"];
/// How it is since it was written down before.
pub const SINCE_BEFORE: &[&str] = &["better", "same", "worse"];
/// Paper of the visit sheet.
pub const PAPERS: &[&str] = &["a4", "letter"];

/// What can change in life.
pub const LIFE_EVENTS: &[&str] =
    &["medicine", "illness", "periods_back", "back_to_work", "journey", "solid_food", "other"];

const NOTE: Takes = Takes::Text { most: 4000 };
const NAME: Takes = Takes::Text { most: 80 };
/// A public key as text: an age recipient, or a minisign key.
const KEY: Takes = Takes::Text { most: 200 };
const PAIN: Takes = Takes::Whole { least: 0, most: 10 };
const VACUUM: Takes = Takes::Vacuum { least: 0.0, most: 760.0 };
const SPEED: Takes = Takes::Speed { least: 1.0, most: 240.0 };
const LEVEL: Takes = Takes::Whole { least: 0, most: 99 };
/// What a pump runs on while it is checked.
const RUNS_ON: &[&str] = &["mains", "battery"];
/// How a gauge is connected.
const CONNECTED: &[&str] = &["dead_headed", "with_flange"];
const AT_ONCE: &[&str] = &["one", "both"];
/// Units that a gauge or a trace may be in, by UCUM code.
pub const VACUUM_UNITS: &[&str] = &["mm[Hg]", "kPa", "mbar", "cm[H2O]"];
/// Accuracy classes of EN 837-1: per cent of the span.
pub const CLASSES: &[&str] = &["0.1", "0.25", "0.6", "1", "1.6", "2.5", "4"];

/// A gauge's span may reach beyond full vacuum.
const SPAN: Takes = Takes::Vacuum { least: 10.0, most: 1600.0 };
const RESOLUTION: Takes = Takes::Vacuum { least: 0.01, most: 100.0 };
const NIPPLE: Takes = Takes::Length { least: 5.0, most: 35.0 };
const FLANGE: Takes = Takes::Length { least: 8.0, most: 45.0 };
const CHILD_MASS: Takes = Takes::Mass { least: 200.0, most: 30_000.0 };

const SESSION: &[Spec] = &[
    spec("started", Takes::Moment, "when"),
    spec("ended", Takes::Moment, "when"),
    spec("amount_left", Takes::Amount, "amount"),
    spec("amount_right", Takes::Amount, "amount"),
    spec("amount_together", Takes::Amount, "amount"),
    spec("weight_before", CHILD_MASS, "weighing"),
    spec("weight_after", CHILD_MASS, "weighing"),
    spec("child", Takes::Refers(Kind::Child), "weighing"),
    spec("method", Takes::Choice(METHODS), "how"),
    spec("sides", Takes::Choice(SIDES), "how"),
    spec("pump", Takes::Refers(Kind::Pump), "how"),
    spec("flange_left", Takes::Refers(Kind::Flange), "how"),
    spec("flange_right", Takes::Refers(Kind::Flange), "how"),
    spec("where", Takes::Choice(WHERE), "how"),
    spec("hands_on", Takes::Flag, "how"),
    spec("letdowns", Takes::Whole { least: 0, most: 20 }, "letdown"),
    spec("letdown_felt", Takes::Choice(FELT), "letdown"),
    spec("pain_left_letdown", PAIN, "comfort"),
    spec("pain_left_expression", PAIN, "comfort"),
    spec("pain_right_letdown", PAIN, "comfort"),
    spec("pain_right_expression", PAIN, "comfort"),
    spec("turned_down", Takes::Whole { least: 0, most: 50 }, "comfort"),
    spec("level_letdown", LEVEL, "setting"),
    spec("vacuum_letdown", VACUUM, "setting"),
    spec("cycles_letdown", SPEED, "setting"),
    spec("level_expression", LEVEL, "setting"),
    spec("vacuum_expression", VACUUM, "setting"),
    spec("cycles_expression", SPEED, "setting"),
    spec("note", NOTE, "note"),
    spec("gap_before", Takes::Choice(&["whole", "missed"]), ""),
    spec("amount_is_right", Takes::Flag, ""),
    spec("settled", Takes::Flag, ""),
    spec("afterwards", Takes::Flag, ""),
    spec("asked", Takes::Moment, ""),
];

const GAUGE: &[Spec] = &[
    spec("name", NAME, "what"),
    spec("span", SPAN, "gauge"),
    spec("reads_in", Takes::Choice(VACUUM_UNITS), "gauge"),
    spec("accuracy_class", Takes::Choice(CLASSES), "gauge"),
    spec("greatest_error", RESOLUTION, "gauge"),
    spec("resolution", RESOLUTION, "gauge"),
    spec("note", NOTE, "note"),
];

const CHECK: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("pump", Takes::Refers(Kind::Pump), "how"),
    spec("gauge", Takes::Refers(Kind::Gauge), "how"),
    spec("connected", Takes::Choice(CONNECTED), "how"),
    spec("flange", Takes::Refers(Kind::Flange), "how"),
    spec("ran_on", Takes::Choice(RUNS_ON), "how"),
    spec("sides_at_once", Takes::Choice(AT_ONCE), "how"),
    spec("set_vacuum", Takes::Vacuum { least: 0.0, most: 760.0 }, "how"),
    spec("altitude", Takes::Altitude { least: -500.0, most: 9000.0 }, "air"),
    spec("air_pressure", Takes::AirPressure { least: 300.0, most: 1100.0 }, "air"),
    spec("note", NOTE, "note"),
    spec("next_level", LEVEL, ""),
    spec("next_side", Takes::Choice(SIDES), ""),
    spec("readings_are_right", Takes::Flag, ""),
];

const TRACE: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("pump", Takes::Refers(Kind::Pump), "how"),
    spec("side", Takes::Choice(SIDES), "how"),
    spec("level", LEVEL, "how"),
    spec("connected", Takes::Choice(CONNECTED), "how"),
    spec("ran_on", Takes::Choice(RUNS_ON), "how"),
    spec("unit", Takes::Choice(VACUUM_UNITS), "file"),
    spec("note", NOTE, "note"),
    spec("findings", Takes::Findings, ""),
    spec("unit_is_right", Takes::Flag, ""),
];

const FIT: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("nipple_left_before", NIPPLE, "nipple"),
    spec("nipple_left_after", NIPPLE, "nipple"),
    spec("nipple_right_before", NIPPLE, "nipple"),
    spec("nipple_right_after", NIPPLE, "nipple"),
    spec("areola_drawn_in", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("rubbing", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("marked_nipple", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("only_at_highest", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("note", NOTE, "note"),
];

const FEED: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("amount", Takes::Amount, "amount"),
    spec("way", Takes::Choice(WAYS), "how"),
    spec("milk", Takes::Choice(MILKS), "how"),
    spec("child", Takes::Refers(Kind::Child), "how"),
    spec("note", NOTE, "note"),
];

const SIGN: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("temperature", Takes::Temperature { least: 30.0, most: 45.0 }, "body"),
    spec("redness", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("heat", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("lump", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("swelling", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("nipple_damage", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("shivering", Takes::Flag, "body"),
    spec("painful_place", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("breast_pain", PAIN, "breast"),
    spec("pus", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("blood", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("spreading_redness", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("dark_skin", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("pain_beyond_what_is_seen", Takes::Flag, "body"),
    spec("fainting", Takes::Flag, "body"),
    spec("confusion", Takes::Flag, "body"),
    spec("severe_weakness", Takes::Flag, "body"),
    spec("short_of_breath", Takes::Flag, "body"),
    spec("keeps_vomiting", Takes::Flag, "body"),
    spec("chest_pain", Takes::Flag, "body"),
    spec("seizure", Takes::Flag, "body"),
    spec("lasting_headache", Takes::Flag, "body"),
    spec("trouble_seeing", Takes::Flag, "body"),
    spec("heavy_bleeding", Takes::Flag, "body"),
    spec("severe_belly_pain", Takes::Flag, "body"),
    spec("swollen_leg", Takes::Flag, "body"),
    spec("swollen_face_or_hands", Takes::Flag, "body"),
    spec("thoughts_of_harm", Takes::Flag, "body"),
    spec("since_before", Takes::Choice(SINCE_BEFORE), "body"),
    spec("note", NOTE, "note"),
];

const WEIGHT: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("weight", CHILD_MASS, "weighing"),
    spec("child", Takes::Refers(Kind::Child), "weighing"),
    spec("note", NOTE, "note"),
];

const LIFE_EVENT: &[Spec] =
    &[spec("at", Takes::Moment, "when"), spec("what", Takes::Choice(LIFE_EVENTS), "what"), spec("note", NOTE, "note")];

const fn percent(key: &'static str, least: f64, most: f64) -> Spec {
    spec(key, Takes::Number { least, most }, "supply-rules")
}

const fn mercury(key: &'static str) -> Spec {
    spec(key, Takes::Number { least: 50.0, most: 600.0 }, "kit-rules")
}

/// A field a rule, named as in the tables of [`crate::guidance`].
const RULES_FIELDS: &[Spec] = &[
    percent("complete_day", 30.0, 100.0),
    percent("bears_doubt", 5.0, 100.0),
    percent("least_complete", 1.0, 100.0),
    percent("band_a_week", 1.0, 30.0),
    percent("watched_day", 20.0, 100.0),
    spec("watch_reference", Takes::Number { least: 0.1, most: 3.0 }, "supply-rules"),
    spec("watch_decision", Takes::Number { least: 0.5, most: 20.0 }, "supply-rules"),
    spec("fever", Takes::Number { least: 36.0, most: 42.0 }, "supply-rules"),
    spec("volume_day", Takes::Number { least: 1.0, most: 60.0 }, "volume-rules"),
    spec("volume_reached", Takes::Number { least: 50.0, most: 2000.0 }, "volume-rules"),
    spec("volume_between", Takes::Number { least: 50.0, most: 2000.0 }, "volume-rules"),
    spec("need_a_kilogram", Takes::Number { least: 50.0, most: 250.0 }, "volume-rules"),
    spec("intake_from", Takes::Number { least: 1.0, most: 30.0 }, "volume-rules"),
    spec("preterm_below", Takes::Number { least: 20.0, most: 44.0 }, "volume-rules"),
    mercury("personal_low"),
    mercury("personal_high"),
    mercury("hospital_low"),
    mercury("hospital_high"),
    mercury("good_low"),
    mercury("good_high"),
    mercury("hand_exemption"),
    spec("verdict_chance", Takes::Number { least: 60.0, most: 99.9 }, "kit-rules"),
    spec("set_apart", Takes::Number { least: 1.0, most: 200.0 }, "kit-rules"),
    spec("readings_apart", Takes::Number { least: 5.0, most: 400.0 }, "kit-rules"),
    spec("likely_kilopascal", Takes::Number { least: 10.0, most: 150.0 }, "kit-rules"),
    spec("life_from", Takes::Number { least: 1.0, most: 240.0 }, "kit-rules"),
    spec("life_to", Takes::Number { least: 1.0, most: 240.0 }, "kit-rules"),
    spec("usual_cycles_low", Takes::Number { least: 5.0, most: 200.0 }, "kit-rules"),
    spec("usual_cycles_high", Takes::Number { least: 5.0, most: 200.0 }, "kit-rules"),
    spec("gap_least", Takes::Number { least: -3.0, most: 10.0 }, "fit-rules"),
    spec("gap_most", Takes::Number { least: -3.0, most: 10.0 }, "fit-rules"),
    spec("comes_with_low", Takes::Number { least: 10.0, most: 40.0 }, "fit-rules"),
    spec("comes_with_high", Takes::Number { least: 10.0, most: 40.0 }, "fit-rules"),
    spec("measure_again", Takes::Number { least: 1.0, most: 365.0 }, "fit-rules"),
    spec("longest_gap", Takes::Number { least: 1.0, most: 24.0 }, "night-rules"),
    spec("longest_gap_early", Takes::Number { least: 1.0, most: 24.0 }, "night-rules"),
    spec("early_days", Takes::Number { least: 0.0, most: 60.0 }, "night-rules"),
    spec("least_sessions", Takes::Number { least: 1.0, most: 12.0 }, "night-rules"),
    spec("least_sessions_early", Takes::Number { least: 1.0, most: 14.0 }, "night-rules"),
    spec("asleep_again", Takes::Number { least: 0.0, most: 90.0 }, "night-rules"),
    spec("usual_length", Takes::Number { least: 5.0, most: 60.0 }, "night-rules"),
    spec("catches_up", Takes::Number { least: 30.0, most: 100.0 }, "night-rules"),
    spec("late_after", Takes::Number { least: 5.0, most: 120.0 }, "night-rules"),
    spec("highest_rate", Takes::Number { least: 10.0, most: 200.0 }, "night-rules"),
    spec("breast_fever", Takes::Number { least: 37.0, most: 41.0 }, "caution-rules"),
    spec("fever_with_place", Takes::Number { least: 37.0, most: 41.0 }, "caution-rules"),
    spec("fever_after_birth", Takes::Number { least: 37.0, most: 41.0 }, "caution-rules"),
    spec("fever_later", Takes::Number { least: 37.0, most: 41.0 }, "caution-rules"),
    spec("after_birth", Takes::Number { least: 30.0, most: 730.0 }, "caution-rules"),
    spec("no_better_after", Takes::Number { least: 6.0, most: 96.0 }, "caution-rules"),
    spec("signs_together", Takes::Number { least: 1.0, most: 72.0 }, "caution-rules"),
    spec("signs_hold", Takes::Number { least: 24.0, most: 336.0 }, "caution-rules"),
    spec("severe_pain", Takes::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_rise", Takes::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_sessions", Takes::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_often", Takes::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_often_in", Takes::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_often_of", Takes::Number { least: 2.0, most: 20.0 }, "caution-rules"),
    spec("breast_pain_high", Takes::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("engorged_from", Takes::Number { least: 0.0, most: 14.0 }, "caution-rules"),
    spec("engorged_to", Takes::Number { least: 1.0, most: 30.0 }, "caution-rules"),
    spec("blood_lasts", Takes::Number { least: 1.0, most: 60.0 }, "caution-rules"),
    spec("pump_far_below", Takes::Number { least: 5.0, most: 80.0 }, "caution-rules"),
    spec("look_after_gap", Takes::Number { least: 6.0, most: 336.0 }, DESK_RULES),
    spec("visit_ahead", Takes::Number { least: 0.0, most: 14.0 }, DESK_RULES),
];

/// Rules of a consultant's desk: no family's record goes by them.
pub const DESK_RULES: &str = "caseload-rules";

/// A rule that a family's record goes by, and so a plan can set anew.
pub fn rule_of_a_family(key: &str) -> Option<&'static Spec> {
    Kind::Rules.field(key).filter(|spec| spec.group != DESK_RULES)
}

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

const fn span(key: &'static str, least_minutes: u32, most_minutes: u32, group: &'static str) -> Spec {
    spec(key, Takes::Span { least_minutes, most_minutes }, group)
}

const RHYTHM: &[Spec] = &[
    spec("sessions_a_day", Takes::Whole { least: 1, most: 24 }, "rhythm"),
    span("longest_interval", 60, 1440, "rhythm"),
    span("shortest_interval", 30, 720, "rhythm"),
    spec("sleep_from", Takes::ClockTime, "sleep"),
    spec("sleep_until", Takes::ClockTime, "sleep"),
    span("sleep_stretch", 60, 720, "sleep"),
    spec("night_sessions", Takes::Whole { least: 0, most: 8 }, "sleep"),
    spec("reminders", Takes::Choice(REMINDERS), "reminders"),
    spec("night_reminders", Takes::Choice(REMINDERS), "reminders"),
    span("lead_time", 0, 60, "reminders"),
    spec("block_at", Takes::ClockTime, "block"),
    spec("block_sessions", Takes::Whole { least: 2, most: 6 }, "block"),
    span("block_express", 5, 30, "block"),
    span("block_rest", 5, 30, "block"),
    spec("fewer_from", Takes::Date, "ending"),
    spec("fewer_every", Takes::Whole { least: 1, most: 30 }, "ending"),
    spec("fewer_until", Takes::Whole { least: 0, most: 12 }, "ending"),
    spec("note", NOTE, "note"),
    spec("calendar", Takes::Findings, ""),
];

const FIXED_POINT: &[Spec] = &[
    spec("what", Takes::Choice(FIXED_POINTS), "what"),
    spec("name", NAME, "what"),
    spec("from", Takes::ClockTime, "time-of-day"),
    spec("until", Takes::ClockTime, "time-of-day"),
    spec("days", Takes::Choice(DAYS), "time-of-day"),
    spec("on", Takes::Date, "time-of-day"),
    spec("session_in", Takes::Choice(SESSION_IN), "what"),
    spec("note", NOTE, "note"),
];

const PLAN_CHANGE: &[Spec] = &[
    spec("at", Takes::Moment, ""),
    spec("change", Takes::Choice(PLAN_CHANGES), ""),
    spec("of", Takes::Moment, ""),
    spec("to", Takes::Moment, ""),
];

const VISIT: &[Spec] = &[spec("at", Takes::Moment, "when"), spec("note", NOTE, "note")];

const QUESTION: &[Spec] =
    &[spec("at", Takes::Moment, "when"), spec("question", NOTE, "question"), spec("answered", Takes::Flag, "question")];

const CONSULTANT: &[Spec] = &[
    spec("name", NAME, "who"),
    spec("taken_in", Takes::Date, "who"),
    spec("note", NOTE, "note"),
    spec("sealing_key", KEY, ""),
    spec("signing_key", KEY, ""),
    spec("compared", Takes::Text { most: 64 }, ""),
];

/// Who looked at what a caution was about, and what was done.
pub const DEALT_HOW: &[&str] =
    &["emergency_team", "doctor_or_midwife", "advice_by_phone", "consultant_knows", "nobody_needed"];

const CAUTION_DEALT: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("dealt_how", Takes::Choice(DEALT_HOW), "what"),
    spec("note", NOTE, "note"),
    spec("caution", Takes::Text { most: 80 }, ""),
    spec("seen", Takes::Moment, ""),
];

/// What a part of a plan is about.
pub const PLAN_PARTS: &[&str] = &["setting", "rhythm", "aim", "check", "visit", "rule", "words"];
/// Whether a setting is to be used from now on, or tried.
pub const USE_OR_TRY: &[&str] = &["use", "try"];
/// The phase that a setting is for.
pub const PLAN_PHASES: &[&str] = &["letdown", "expression"];
/// What is to be checked.
pub const PLAN_CHECKS: &[&str] = &["pump", "flange", "weight", "temperature", "pain"];
/// What was done with a part of a plan.
pub const PLAN_ANSWERS: &[&str] = &["accepted", "left"];

const PLAN: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("good_until", Takes::Date, "when"),
    spec("plan_words", NOTE, "plan-words"),
    spec("plan_for", Takes::Text { most: 128 }, ""),
    spec("plan_from", NAME, ""),
    spec("signing_key", KEY, ""),
    spec("revision", Takes::Whole { least: 1, most: 10_000 }, ""),
    spec("sent", Takes::Moment, ""),
    spec("came", Takes::Moment, ""),
];

const PLAN_PART: &[Spec] = &[
    spec("plan", Takes::Refers(Kind::Plan), ""),
    spec("plan_part", Takes::Choice(PLAN_PARTS), "plan-part"),
    spec("use_or_try", Takes::Choice(USE_OR_TRY), "setting"),
    spec("pump_name", NAME, "setting"),
    spec("plan_phase", Takes::Choice(PLAN_PHASES), "setting"),
    spec("level", LEVEL, "setting"),
    spec("vacuum", VACUUM, "setting"),
    spec("cycles", SPEED, "setting"),
    span("lasts", 1, 60, "setting"),
    spec("sessions_a_day", Takes::Whole { least: 1, most: 24 }, "rhythm"),
    span("longest_interval", 60, 1440, "rhythm"),
    span("shortest_interval", 30, 720, "rhythm"),
    span("sleep_stretch", 60, 720, "rhythm"),
    spec("night_sessions", Takes::Whole { least: 0, most: 8 }, "rhythm"),
    spec("aim", Takes::Volume { least: 10.0, most: 5000.0 }, "aims"),
    spec("plan_check", Takes::Choice(PLAN_CHECKS), "plan-check"),
    spec("check_by", Takes::Date, "plan-check"),
    spec("visit_at", Takes::Moment, "plan-visit"),
    spec("rule", Takes::Text { most: 80 }, "plan-rule"),
    spec("rule_value", Takes::Number { least: -1000.0, most: 100_000.0 }, "plan-rule"),
    spec("words", NOTE, "plan-words"),
    spec("answer", Takes::Choice(PLAN_ANSWERS), ""),
    spec("answered", Takes::Moment, ""),
];

const CASE_FAMILY: &[Spec] = &[
    spec("name", NAME, "who"),
    spec("next_visit", Takes::Date, "when"),
    spec("note", NOTE, "note"),
    spec("family", Takes::Text { most: 128 }, ""),
    spec("sealing_key", KEY, ""),
    spec("signing_keys", Takes::Text { most: 2000 }, ""),
    spec("shared", Takes::Moment, ""),
];

const NOTES: &[Spec] = &[spec("at", Takes::Moment, "when"), spec("text", NOTE, "note")];

const CHILD: &[Spec] = &[
    spec("name", NAME, "who"),
    spec("birth", Takes::Date, "who"),
    spec("gestation_weeks", Takes::Whole { least: 20, most: 44 }, "who"),
    spec("gestation_days", Takes::Whole { least: 0, most: 6 }, "who"),
    spec("sex", Takes::Choice(SEXES), "who"),
    spec("birth_weight", CHILD_MASS, "who"),
];

const PUMP: &[Spec] = &[
    spec("name", NAME, "what"),
    spec("grade", Takes::Choice(GRADES), "what"),
    spec("power", Takes::Choice(POWERS), "what"),
    spec("levels", Takes::Whole { least: 1, most: 99 }, "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("maximum_vacuum_low", VACUUM, "maker"),
    spec("maximum_vacuum_high", VACUUM, "maker"),
    spec("cycles_low", SPEED, "maker"),
    spec("cycles_high", SPEED, "maker"),
    spec("warranty_until", Takes::Date, "maker"),
    spec("note", NOTE, "note"),
];

const PART: &[Spec] = &[
    spec("part", Takes::Choice(PARTS), "what"),
    spec("pump", Takes::Refers(Kind::Pump), "what"),
    spec("side", Takes::Choice(SIDES), "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("until", Takes::Date, "what"),
    spec("note", NOTE, "note"),
];

const FLANGES: &[Spec] = &[
    spec("size", FLANGE, "what"),
    spec("side", Takes::Choice(SIDES), "what"),
    spec("name", NAME, "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("note", NOTE, "note"),
];

const SETTINGS: &[Spec] = &[
    spec("hand", Takes::Choice(&["right", "left"]), "look"),
    spec("palette", Takes::Choice(&["as_device", "light", "night"]), "look"),
    spec("hour_clock", Takes::Choice(&["24", "12"]), "look"),
    spec("volume_unit", Takes::Choice(&["mL", "[foz_us]"]), "units"),
    spec("vacuum_unit", Takes::Choice(&["mm[Hg]", "kPa"]), "units"),
    spec("temperature_unit", Takes::Choice(&["Cel", "[degF]"]), "units"),
    spec("mass_unit", Takes::Choice(&["g", "kg", "[lb_av]"]), "units"),
    spec("day_start", Takes::Whole { least: 0, most: 12 }, "time"),
    spec("zone", Takes::Zone, "time"),
    spec("flange_sizes", Takes::Sizes { least: 8.0, most: 45.0 }, "kit"),
    spec("aim", Takes::Volume { least: 10.0, most: 5000.0 }, "aims"),
    spec("emergency_call", Takes::Phone, "calls"),
    spec("today_call", Takes::Phone, "calls"),
    spec("out_of_hours_call", Takes::Phone, "calls"),
    spec("sheet_name", Takes::Text { most: 300 }, "sharing"),
    spec("paper", Takes::Choice(PAPERS), "sharing"),
    spec("left_out", Takes::Text { most: 400 }, ""),
    spec("family", Takes::Text { most: 128 }, ""),
    spec("next_method", Takes::Choice(METHODS), ""),
    spec("next_sides", Takes::Choice(SIDES), ""),
    spec("next_pump", Takes::Refers(Kind::Pump), ""),
    spec("next_where", Takes::Choice(WHERE), ""),
    spec("welcomed", Takes::Flag, ""),
];

impl Kind {
    /// Every kind, in the order of the exchange form.
    pub const ALL: &'static [Self] = &[
        Self::Settings,
        Self::Rules,
        Self::Child,
        Self::Pump,
        Self::Part,
        Self::Flange,
        Self::Gauge,
        Self::Check,
        Self::Trace,
        Self::Fit,
        Self::Rhythm,
        Self::FixedPoint,
        Self::Session,
        Self::PlanChange,
        Self::Feed,
        Self::Sign,
        Self::Weight,
        Self::LifeEvent,
        Self::Note,
        Self::Visit,
        Self::Question,
        Self::Consultant,
        Self::CautionDealt,
        Self::Plan,
        Self::PlanPart,
        Self::CaseFamily,
    ];

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Settings => "settings",
            Self::Rules => "rules",
            Self::Child => "child",
            Self::Pump => "pump",
            Self::Part => "part",
            Self::Flange => "flange",
            Self::Gauge => "gauge",
            Self::Check => "check",
            Self::Trace => "trace",
            Self::Fit => "fit",
            Self::Session => "session",
            Self::Rhythm => "rhythm",
            Self::FixedPoint => "fixed_point",
            Self::PlanChange => "plan_change",
            Self::Feed => "feed",
            Self::Sign => "sign",
            Self::Weight => "weight",
            Self::LifeEvent => "life_event",
            Self::Note => "note",
            Self::Visit => "visit",
            Self::Question => "question",
            Self::Consultant => "consultant",
            Self::CautionDealt => "caution_dealt",
            Self::Plan => "plan",
            Self::PlanPart => "plan_part",
            Self::CaseFamily => "case_family",
        }
    }

    /// The kind of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|k| k.name() == name)
    }

    /// Its fields, in the order they are shown.
    pub const fn fields(self) -> &'static [Spec] {
        match self {
            Self::Settings => SETTINGS,
            Self::Rules => RULES_FIELDS,
            Self::Child => CHILD,
            Self::Pump => PUMP,
            Self::Part => PART,
            Self::Flange => FLANGES,
            Self::Gauge => GAUGE,
            Self::Check => CHECK,
            Self::Trace => TRACE,
            Self::Fit => FIT,
            Self::Session => SESSION,
            Self::Rhythm => RHYTHM,
            Self::FixedPoint => FIXED_POINT,
            Self::PlanChange => PLAN_CHANGE,
            Self::Feed => FEED,
            Self::Sign => SIGN,
            Self::Weight => WEIGHT,
            Self::LifeEvent => LIFE_EVENT,
            Self::Note => NOTES,
            Self::Visit => VISIT,
            Self::Question => QUESTION,
            Self::Consultant => CONSULTANT,
            Self::CautionDealt => CAUTION_DEALT,
            Self::Plan => PLAN,
            Self::PlanPart => PLAN_PART,
            Self::CaseFamily => CASE_FAMILY,
        }
    }

    /// The id of its one record, for kinds of which there is one.
    pub const fn only(self) -> Option<&'static str> {
        match self {
            Self::Settings => Some(super::SETTINGS),
            Self::Rules => Some(super::RULES),
            Self::Rhythm => Some(super::RHYTHM),
            _ => None,
        }
    }

    /// What the names of its members begin with, where it holds any number of
    /// them, and under which word the exchange form gathers them.
    pub const fn members(self) -> Option<(&'static str, &'static str)> {
        match self {
            Self::Session => Some((super::MARKS, "marks")),
            Self::Check => Some((super::READINGS, "readings")),
            _ => None,
        }
    }

    /// The field of this name.
    pub fn field(self, key: &str) -> Option<&'static Spec> {
        self.fields().iter().find(|s| s.key == key)
    }

    /// The field that says when it was, for kinds that stand in a day.
    pub const fn time_field(self) -> Option<&'static str> {
        match self {
            Self::Session => Some("started"),
            Self::Check
            | Self::Trace
            | Self::Fit
            | Self::Feed
            | Self::Sign
            | Self::Weight
            | Self::LifeEvent
            | Self::PlanChange
            | Self::Note
            | Self::Visit
            | Self::Question
            | Self::CautionDealt
            | Self::Plan => Some("at"),
            Self::Settings
            | Self::Rules
            | Self::Rhythm
            | Self::FixedPoint
            | Self::Child
            | Self::Pump
            | Self::Part
            | Self::Flange
            | Self::Gauge
            | Self::Consultant
            | Self::PlanPart
            | Self::CaseFamily => None,
        }
    }
}
