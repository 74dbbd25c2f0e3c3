//! What a person did.

use serde::{Deserialize, Serialize};

use super::{Export, Place, Secret, StartingQuestion};

/// What a person did.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Event {
    /// Show a place.
    Go { place: Place },
    /// Go back to where this place was opened from.
    Back,
    /// The window came to the front: look at the record again.
    Wake,
    /// Close the line at the top of the screen.
    Dismiss { notice: String },
    /// Start a session as it is set up.
    Start,
    /// Log a session that is over already: when it ended, and how long it was where that is known.
    JustPumped { minutes_ago: u32, lasted_minutes: Option<u32> },
    /// Pass the first screen.
    Begin,
    /// Answer what is asked once after it.
    StartingAnswer { question: StartingQuestion, answer: String },
    /// Choose how the next session is done: field and value of the set-up.
    SetUp { field: String, value: String },
    /// Mark something in the running session.
    Mark { deed: Deed },
    /// So much has come by now, in the unit of this UCUM code.
    SoFar { typed: String, unit: String },
    /// Say how much it hurt: 0 to 10, for the pain mark named.
    Pain { mark: String, score: u32 },
    /// End the running session.
    Finish,
    /// End a session at a moment that was asked for.
    FinishAt { session: String, unix_milliseconds: i64 },
    /// The session goes on: do not ask again for a while.
    StillRunning { session: String },
    /// Set an amount to what the person saw beside the line that they drew: a reading of its
    /// column, as it stood, in its unit by UCUM code.
    DrawAmount { session: String, part: Part, typed: String, unit: String },
    /// Raise or lower an amount by a step, or by a fine one: +1 or -1.
    StepAmount { session: String, part: Part, steps: i32, fine: bool },
    /// Say that an amount is not known.
    AmountUnknown { session: String, part: Part },
    /// Leave the amounts that are still missing for later.
    AmountsLater { session: String },
    /// The amounts are as they should be.
    AmountsDone { session: String },
    /// Measure both sides in one container, or each in its own.
    MeasureTogether { session: String, together: bool },
    /// No session was missed in the gap before this one.
    GapIsWhole { session: String },
    /// A session was missed in the gap before this one.
    GapHidesOne { session: String },
    /// The amounts of this session are right as they stand.
    AmountIsRight { session: String },
    /// Write down a session that was missed, at about this time.
    AddMissed { unix_milliseconds: i64 },
    /// Move a session that is planned by so many steps of the plan.
    MovePlanned { unix_milliseconds: i64, steps: i32 },
    /// Leave a session that is planned out.
    SkipPlanned { unix_milliseconds: i64 },
    /// Remind of a session that is planned again in a while.
    SnoozePlanned { unix_milliseconds: i64 },
    /// Take in a consultant's card: the line that her QR code holds.
    TakeCardIn { card: String },
    /// Take in what waits for a yes: a card whose words are the same, a file.
    TakeWaiting,
    /// Leave what waits for a yes.
    LeaveWaiting,
    /// The words of a consultant who is here are the same.
    WordsSame { consultant: String },
    /// Accept a part of a plan, or leave it.
    PlanAnswer { part: String, accept: bool },
    /// Accept every part of a plan that was not answered.
    PlanAcceptAll { plan: String },
    /// Add a part to a plan that is being written.
    AddPlanPart { plan: String, part: String },
    /// Leave a sealed file that waits for its passphrase.
    LeaveSealed,
    /// The rule that a part of a plan sets anew.
    ChooseRule { part: String, rule: String },
    /// Erase the record from this device for good.
    EraseRecord,
    /// Make a recovery code for the key of the record, and show it this once.
    MakeRecovery,
    /// Seal a record for which the host can keep no key: its recovery code is asked for at each
    /// start.
    SealWithCode,
    /// What a consultant does at the desk; no other record answers it.
    OnDesk { event: DeskEvent },
    /// Leave a part out of whatever is shared, or take it in again.
    LeaveOut { part: String, out: bool },
    /// Let a network of units count this family: for what, and for how many months.
    GiveConsent { scope: String, months: Option<u32> },
    /// Let no network count it any more.
    WithdrawConsent,
    /// The host says how it can call: on the minute, and so that it is seen.
    AlarmsAre { exact: bool, shown: bool },
    /// A caution was dealt with, and by whom.
    CautionDealt { key: String, how: String },
    /// The signs of a caution are still there, or no more.
    SignsAgain { key: String, still: bool },
    /// Signs are better, the same or worse since they were written down.
    SinceBefore { word: String },
    /// Open the dialler with a number of the settings.
    Call { which: String },
    /// Begin a check of a pump with a gauge.
    BeginCheck { pump: String },
    /// Choose at which level and side the gauge is read next.
    ReadAt { check: String, level: Option<u32>, side: String },
    /// The readings of a check are right as they stand.
    ReadingsAreRight { check: String },
    /// The figures of a check or a trace were meant in another unit.
    MeantIn { id: String, unit: String },
    /// Write down a trace of a pump.
    BeginTrace { pump: String },
    /// Ask for the file of a trace.
    PickTrace { trace: String },
    /// Fill a container with the milk of a session that is in none yet, and put it somewhere.
    KeepMilk { session: String, kept_in: String },
    /// Pour it to what is in a container already.
    PourInto { session: String, container: String },
    /// Something happened to a container.
    Milk { container: String, deed: MilkDeed },
    /// Parts were cleaned: how.
    Cleaned { how: String },
    /// Begin a guided search in the running session; `beyond` to go above what was comfortable
    /// before.
    StartSearch { searched: Searched, beyond: bool },
    /// The pump is set to what the search proposes.
    SearchAt,
    /// Stop the search.
    StopSearch,
    /// Begin a comparison of two ways: its order is drawn from the seed, or where the host has
    /// none, from its clock.
    BeginTrial { id: String, seed: Option<u32> },
    /// How the session of a comparison was done.
    TrialDone { session: String, way: String },
    /// Stop a comparison; settled where its answer is clear.
    StopTrial { id: String, settled: bool },
    /// Write down something new: the kind of record, on a day.
    Add { kind: String, days_back: u32 },
    /// Give a field the value that was typed or chosen.
    Enter { id: String, field: String, typed: String },
    /// Give a passphrase or a code to the row that asks for it.
    EnterSecret { id: String, secret: Secret },
    /// Move a field by so many of its own steps.
    Step { id: String, field: String, steps: i32 },
    /// Make a field say nothing again.
    Clear { id: String, field: String },
    /// Take a record out.
    Remove { id: String },
    /// Bring a record back that was taken out.
    BringBack { id: String },
    /// Take back the last act.
    Undo,
    /// Do again what was taken back.
    Redo,
    /// Ask for something as a file.
    Export { what: Export },
    /// Ask for a file to bring in.
    PickRecord,
    /// Look around with the invented family.
    LookAround,
    /// Leave the invented family.
    LeaveLookAround,
}

/// What a consultant does at a desk with many families.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum DeskEvent {
    /// Open a family of the caseload beside the list.
    OpenFamily { family: String },
    /// Open a place of the consultant's own desk beside the list.
    OpenDesk { place: Place },
    /// Show only families that need a look for this reason; all where it names none.
    OnlyReason { reason: String },
    /// Remove a family from this machine for good.
    RemoveFamily { family: String },
    /// Begin a plan for a family.
    WritePlan { family: String },
    /// Ask for a folder whose new files are brought in.
    WatchFolder,
    /// Watch no folder any more.
    LeaveFolder,
    /// The host says which folder it watches, by its name; empty where it watches none.
    FolderIs { name: String },
}

/// What happened to milk that is kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum MilkDeed {
    /// It was put somewhere else.
    Moved {
        kept_in: String,
    },
    Thawing,
    Thawed,
    Warmed,
    /// The child began to drink from it.
    Begun,
    FeedEnded,
    /// Given to the child: so much, in the unit of this UCUM code; all that is left where it is empty.
    Given {
        typed: String,
        unit: String,
    },
    GivenAway,
    ThrownOut {
        because: String,
    },
    LostInPowerCut,
}

/// What a guided search looks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Searched {
    /// A comfortable vacuum.
    Vacuum,
    /// The speed that brings the letdown.
    Speed,
}

/// What a thumb can mark while a session runs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Deed {
    LetdownPhase,
    ExpressionPhase,
    Rest,
    Letdown,
    Stronger,
    Softer,
    Faster,
    Slower,
    Hurts,
    Comfortable,
    TurnedDown,
    /// On with the other side.
    ChangeSide,
    /// The dials are as they were last time.
    AsLastTime,
}

/// Which column or container an amount belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Part {
    Left,
    Right,
    Together,
}
