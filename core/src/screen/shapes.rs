//! What crosses to the shell: plain data, ready to draw.
//!
//! Every text is already in the person's language and units. Every picture is
//! given in unit coordinates: 0 is left or bottom, 1 is right or top. The
//! build script of `bindings` reads this file and hands each declaration to
//! UniFFI, so a shape is written once, here.

// A field is named so that it tells itself; the doc comments say only what a name cannot.
// A screen crosses once a tap and is built in place: its size costs nothing there.
#![allow(missing_docs, clippy::large_enum_variant)]

use serde::{Deserialize, Serialize};

/// The instant a call is made, and the zone the person is in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Clock {
    /// Milliseconds since 1970-01-01T00:00:00Z.
    pub unix_milliseconds: i64,
    /// IANA zone name, such as `Europe/Berlin`.
    pub zone: String,
}

/// A place the person can be in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Place {
    /// The running session, or what to start.
    Now,
    /// One local day: 0 is today, 1 is yesterday.
    Day { days_back: u32 },
    /// One record, opened to be corrected.
    Entry { id: String },
    /// When to express next, and what the night holds.
    Tonight,
    /// How much milk is made, over so many days: 0 is all there are.
    Supply { days: u32 },
    /// The figures behind it.
    SupplyFigures { days: u32 },
    /// So many days beside as many before them: 0 is since the last visit.
    Compare { days: u32 },
    /// Pumps, parts, flanges and gauges.
    Kit,
    /// One pump: what it pulls, how it wears, what its levels mean.
    Pump { id: String },
    /// A check with a gauge, reading by reading.
    Check { id: String },
    /// A trace of pressure over time.
    Trace { id: String },
    /// Which flange to try.
    Fit,
    /// One caution: what was seen, what to do, where that comes from.
    Caution { key: String },
    /// All cautions that stand.
    Cautions,
    /// What the consultant gets, what comes back, and what needs a look.
    Visit,
    /// A plan from the consultant, or one she is writing.
    Plan { id: String },
    /// A consultant whose keys were taken in.
    Consultant { id: String },
    /// Where a consultant's key is taken in, or a passphrase set instead.
    Sharing,
    /// Where the passphrase of a file that came is typed.
    Sealed,
    /// The record as tables, each a file.
    Tables,
    /// Before the record is erased from this device: what goes, and what remains.
    Erasing,
    /// What a consultant keeps once for all families.
    Desk,
    /// Her own card, to be handed on.
    OwnCard,
    /// What she keeps of one family.
    CaseFamily { id: String },
    /// Before a family is removed from her machine: what goes, and what remains.
    Removing { id: String },
    /// The visit sheet, before it goes out.
    Sheet,
    /// Children, settings, and the record as a whole.
    Family,
    /// What came of the last file that was brought in.
    Report,
}

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
    /// Choose how the next session is done: field and value of the set-up.
    SetUp { field: String, value: String },
    /// Mark something in the running session.
    Mark { deed: Deed },
    /// Say how much it hurt: 0 to 10, for the pain mark named.
    Pain { mark: String, score: u32 },
    /// End the running session.
    Finish,
    /// End a session at a moment that was asked for.
    FinishAt { session: String, unix_milliseconds: i64 },
    /// The session goes on: do not ask again for a while.
    StillRunning { session: String },
    /// Draw the water line of a column to a height between 0 and 1.
    DrawAmount { session: String, part: Part, height: f32 },
    /// Raise or lower an amount by a fine step: +1 or -1.
    StepAmount { session: String, part: Part, steps: i32 },
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
    /// Ask for the plan as a calendar file.
    HandOverCalendar,
    /// Take in a consultant's card: the line that her QR code holds.
    TakeCardIn { card: String },
    /// Ask for the record, sealed for a consultant.
    ShareWith { consultant: String },
    /// Accept a part of a plan, or leave it.
    PlanAnswer { part: String, accept: bool },
    /// Accept every part of a plan that was not answered.
    PlanAcceptAll { plan: String },
    /// Ask where a plan goes that was written on this desk.
    SendPlan { plan: String },
    /// Add a part to a plan that is being written.
    AddPlanPart { plan: String, part: String },
    /// Erase the record from this device for good.
    EraseRecord,
    /// Open a family of the caseload beside the list.
    OpenFamily { family: String },
    /// Open a place of the consultant's own desk beside the list.
    OpenDesk { place: Place },
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
    /// Leave a part out of whatever is shared, or take it in again.
    LeaveOut { part: String, out: bool },
    /// Ask for the visit sheet on a paper.
    HandOverSheet { paper: String },
    /// Ask for a table of the record.
    HandOverSpreadsheet { table: String },
    /// Ask for the record as a health record.
    HandOverHealthRecord,
    /// The host says how it can call: on the minute, and so that it is seen.
    AlarmsAre { exact: bool, shown: bool },
    /// A caution was dealt with.
    CautionDealt { key: String },
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
    /// Write down something new: the kind of record, on a day.
    Add { kind: String, days_back: u32 },
    /// Give a field the value that was typed or chosen.
    Enter { id: String, field: String, typed: String },
    /// Move a field by so many of its own steps.
    Step { id: String, field: String, steps: i32 },
    /// Make a field say nothing again.
    Clear { id: String, field: String },
    /// Take a record out.
    TakeOut { id: String },
    /// Bring a record back that was taken out.
    BringBack { id: String },
    /// Take back the last act.
    Undo,
    /// Do again what was taken back.
    Redo,
    /// Ask for the whole record as a file.
    HandOverRecord,
    /// Ask for a file to bring in.
    PickRecord,
    /// Look around with the invented family.
    LookAround,
    /// Leave the invented family.
    LeaveLookAround,
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
    TurnedDown,
}

/// Which column or container an amount belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Part {
    Left,
    Right,
    Together,
}

/// Something the shell lets the person do: a word, and what to send.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Action {
    /// Stable name of this action on its screen, for tests.
    pub key: String,
    /// The word on it.
    pub label: String,
    /// A smaller line under the word, or empty.
    pub detail: String,
    /// What a screen reader says.
    pub spoken: String,
    /// What to send when it is tapped.
    pub event: Event,
    /// How it stands among its neighbours.
    pub weight: Weight,
    /// The sign drawn on it.
    pub sign: Sign,
    /// Chosen now, where it is one of several.
    pub chosen: bool,
    /// Whether it can be tapped.
    pub open: bool,
}

/// How strongly an action is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Weight {
    /// The one thing to do.
    Main,
    /// An ordinary control.
    Plain,
    /// A line of text.
    Quiet,
    /// Asks for care: takes something out.
    Careful,
}

/// A small drawn sign; each has one meaning everywhere.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Sign {
    None,
    Now,
    Day,
    Tonight,
    Supply,
    Kit,
    Visit,
    Family,
    Start,
    Finish,
    Rest,
    Letdown,
    Stronger,
    Softer,
    Faster,
    Slower,
    Hurts,
    Undo,
    Redo,
    Add,
    Earlier,
    Later,
    Back,
    Unknown,
    Caution,
    Out,
    In,
    /// Leave one out.
    Skip,
    /// Again in a while.
    Snooze,
    Calendar,
}

/// What surrounds every screen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Frame {
    pub title: String,
    /// The line under the title, or empty.
    pub subtitle: String,
    /// The places at the foot of the screen, the present one chosen.
    pub places: Vec<Action>,
    pub back: Option<Action>,
    pub undo: Option<Action>,
    pub redo: Option<Action>,
    pub notices: Vec<Notice>,
    pub look: Look,
    /// Ask for this screen again after so long, where it moves by itself.
    pub ask_again_milliseconds: Option<u32>,
}

/// A quiet line above the screen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Notice {
    /// Stable name of this notice.
    pub key: String,
    pub tone: Tone,
    pub text: String,
    pub spoken: String,
    pub actions: Vec<Action>,
}

/// How a notice is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Tone {
    /// For information.
    Quiet,
    /// A gentle question.
    Asks,
    /// Something went wrong or needs care.
    Caution,
}

/// How the person wants it drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Look {
    pub hand: Hand,
    pub palette: Palette,
}

/// The hand that holds the phone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Hand {
    Right,
    Left,
}

/// The palette that was asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Palette {
    /// As the device is set.
    AsDevice,
    Light,
    Night,
}

/// A screen, ready to draw.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Screen {
    Welcome { frame: Frame, welcome: WelcomeScreen },
    Ready { frame: Frame, ready: ReadyScreen },
    Running { frame: Frame, running: RunningScreen },
    Amounts { frame: Frame, amounts: AmountsScreen },
    Day { frame: Frame, day: DayScreen },
    Tonight { frame: Frame, tonight: TonightScreen },
    Supply { frame: Frame, supply: SupplyScreen },
    Findings { frame: Frame, findings: FindingsScreen },
    Check { frame: Frame, check: CheckScreen },
    Card { frame: Frame, card: CardScreen },
    Form { frame: Frame, form: FormScreen },
    List { frame: Frame, list: ListScreen },
    Sheet { frame: Frame, sheet: SheetScreen },
}

/// The first screen over an empty record.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WelcomeScreen {
    pub headline: String,
    pub lines: Vec<String>,
    pub actions: Vec<Action>,
}

/// Before a session: how long each side has rested, and what to start.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ReadyScreen {
    /// The figure of the moment, such as `3 h 10`.
    pub figure: String,
    /// What the figure is, such as `since the last session`.
    pub caption: String,
    pub columns: Vec<Column>,
    /// Rows of choices: method, sides, pump, flange.
    pub set_up: Vec<ChoiceRow>,
    pub start: Action,
    /// Other things to write down from here.
    pub add: Vec<Action>,
    pub spoken: String,
}

/// One side's column of water.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Column {
    pub part: Part,
    pub label: String,
    /// What is written on it, such as `3 h 10` or `60 mL`.
    pub text: String,
    /// Height of the water line, 0 to 1; none where it is not known.
    pub height: Option<f32>,
    /// A second, fainter line, such as what it was last time.
    pub ghost: Option<f32>,
    pub spoken: String,
}

/// A row of choices under one label.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ChoiceRow {
    pub key: String,
    pub label: String,
    pub options: Vec<Action>,
}

/// While a session runs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RunningScreen {
    /// Elapsed time, such as `12:34`.
    pub figure: String,
    /// The phase it is in, and how long.
    pub caption: String,
    pub strip: Strip,
    /// Pairs of less and more about a value between them.
    pub dials: Vec<Dial>,
    /// Letdown, phase, rest, it hurts.
    pub marks: Vec<Action>,
    /// After `it hurts`: how much, and whether it was turned down.
    pub pain: Option<ChoiceRow>,
    pub finish: Action,
    pub spoken: String,
}

/// A value with less on one side and more on the other.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Dial {
    pub key: String,
    pub label: String,
    pub value: String,
    pub spoken: String,
    pub less: Action,
    pub more: Action,
}

/// A session as it ran, along a line of time from 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Strip {
    pub bands: Vec<Band>,
    /// Letdowns that were seen or felt.
    pub notches: Vec<Notch>,
    /// The setting as a step line: from each point on, this height.
    pub vacuum: Vec<StepPoint>,
    pub cycles: Vec<StepPoint>,
    pub pains: Vec<PainMark>,
    pub ticks: Vec<Tick>,
    pub spoken: String,
}

/// A phase within a strip.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Band {
    pub from: f32,
    pub to: f32,
    pub phase: Phase,
    pub label: String,
}

/// The phases of a session.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Phase {
    /// Not said.
    Unsaid,
    Letdown,
    Expression,
    Rest,
}

/// A letdown within a strip.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Notch {
    pub at: f32,
    pub label: String,
}

/// A point of a step line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct StepPoint {
    pub at: f32,
    pub height: f32,
    pub label: String,
}

/// Pain within a strip; the height is the score out of ten, none if unsaid.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PainMark {
    pub at: f32,
    pub height: Option<f32>,
    /// Whether the setting was turned down for it.
    pub turned_down: bool,
    pub label: String,
}

/// A label along a line of time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Tick {
    pub at: f32,
    pub label: String,
}

/// After a session: what came.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct AmountsScreen {
    pub session: String,
    pub headline: String,
    pub caption: String,
    pub strip: Strip,
    pub columns: Vec<AmountColumn>,
    /// Labels along the height of the columns.
    pub scale: Vec<Tick>,
    /// Each side, or together.
    pub together: ChoiceRow,
    pub done: Action,
    pub later: Action,
    pub spoken: String,
}

/// A column whose water line the thumb draws up.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct AmountColumn {
    pub column: Column,
    /// What the column reads at each height it can stand at, from the ground
    /// up, so that the thumb sees the amount while it still draws.
    pub readings: Vec<Tick>,
    pub less: Action,
    pub more: Action,
    pub unknown: Action,
}

/// One local day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DayScreen {
    pub earlier: Option<Action>,
    pub later: Option<Action>,
    /// What came, such as `480 mL`.
    pub figure: String,
    /// What is and is not in the figure.
    pub caption: String,
    pub sides: Vec<SideTotal>,
    pub picture: DayPicture,
    pub entries: Vec<EntryRow>,
    /// Said where there is nothing.
    pub empty: String,
    pub add: Vec<Action>,
    pub taken_out_label: String,
    pub taken_out: Vec<EntryRow>,
}

/// What one side gave in a day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SideTotal {
    pub part: Part,
    pub label: String,
    pub text: String,
    /// What is not known of it, or empty.
    pub note: String,
}

/// The day along its clock, 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DayPicture {
    pub bars: Vec<DayBar>,
    pub ticks: Vec<Tick>,
    /// Labels along the height.
    pub scale: Vec<Tick>,
    /// Where the present moment stands, on today.
    pub now: Option<f32>,
    pub spoken: String,
}

/// A session within the day: what each side gave, stacked from the ground.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DayBar {
    pub at: f32,
    /// None where the amount is not known.
    pub left: Option<f32>,
    pub right: Option<f32>,
    pub together: Option<f32>,
    /// Some of it is not known: drawn open at the top.
    pub open: bool,
    /// A feed at the breast, drawn as a mark and not as an amount.
    pub feed: bool,
}

/// A record in a day's list.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct EntryRow {
    pub id: String,
    pub time: String,
    pub title: String,
    pub detail: String,
    /// What came, at the end of the row; or what is not known of it.
    pub amount: String,
    pub strip: Option<Strip>,
    /// A word of care, such as an overlap, or empty.
    pub care: String,
    pub spoken: String,
    pub open: Action,
    pub others: Vec<Action>,
}

/// When to express next, and what the night holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct TonightScreen {
    /// What the figure is, such as `Next session`; or what has to be known first.
    pub headline: String,
    /// The figure of the moment, such as `03:15`, or empty. It stands larger than all else.
    pub figure: String,
    /// In how long, such as `in 2 h 40`.
    pub caption: String,
    /// Why then, in a short sentence, or empty.
    pub why: String,
    /// Gentle questions, and what gives way where not all can be kept.
    pub asks: Vec<Notice>,
    /// The main thing to do, at the foot; none while there is nothing to start.
    pub start: Option<Action>,
    /// Earlier, later, again in a while, leave out: under the thumb.
    pub actions: Vec<Action>,
    /// None where there is no plan.
    pub night: Option<NightPicture>,
    /// What the night leaves and brings, each a figure with its name.
    pub figures: Vec<NightFigure>,
    /// A choice before there is a plan, such as how many sessions a day.
    pub choices: Vec<ChoiceRow>,
    /// The times to come, each with why then.
    pub times: ListGroup,
    /// What a choice costs, how milk comes back, what was, what is set.
    pub sections: Vec<Section>,
    pub spoken: String,
}

/// A figure of the night.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NightFigure {
    pub key: String,
    /// Such as `Sleep left`.
    pub title: String,
    /// Such as `6 h 10`.
    pub figure: String,
    /// Its range, or what it is made of, or empty.
    pub detail: String,
    pub spoken: String,
}

/// The night from dusk to morning, along a line of time from 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NightPicture {
    /// Sessions that were and that are to come.
    pub pegs: Vec<Peg>,
    /// What else fills the time: sleep, shifts, breaks, care times, feeds.
    pub stretches: Vec<NightStretch>,
    /// What the breasts hold: it fills between sessions and falls at each. Empty where it cannot be told.
    pub water: Vec<RibbonPoint>,
    /// Where the present moment stands, if within.
    pub now: Option<f32>,
    /// Labels along the line of time.
    pub ticks: Vec<Tick>,
    /// Labels along the height of the water.
    pub scale: Vec<Tick>,
    /// What its signs mean.
    pub legend: String,
    pub spoken: String,
}

/// A session in the night's picture.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Peg {
    pub at: f32,
    pub until: f32,
    pub state: PegState,
    /// Its time, such as `03:15`.
    pub label: String,
}

/// What a peg stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum PegState {
    /// It was.
    Done,
    /// The next one.
    Next,
    /// To come.
    Planned,
    /// Set by hand or by a fixed point.
    Fixed,
    /// A feed at the breast.
    Feed,
    /// It was to be and was left out.
    Skipped,
}

/// A stretch of the night.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NightStretch {
    pub from: f32,
    pub to: f32,
    pub kind: StretchKind,
    /// Such as `4 h 30`, or the name of what it is; may be empty.
    pub label: String,
}

/// What a stretch of the night is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum StretchKind {
    /// The sleep window that was chosen: the ground under the sleep.
    Window,
    /// Sleep that is left between sessions.
    Sleep,
    /// No session can be then.
    Busy,
    /// A session is to be then.
    Wanted,
    /// A feed.
    Feed,
}

/// How much milk is made, whether that holds, and since when not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SupplyScreen {
    /// The word of the moment, such as `Holding`; or that it cannot be told yet.
    pub headline: String,
    /// How much a day, such as `about 640 mL a day`, or empty.
    pub figure: String,
    /// The range of the figure, and what it rests on.
    pub caption: String,
    /// What more there is to say, each a short sentence.
    pub lines: Vec<String>,
    /// Gentle questions: a session may be missing, an amount may be mistyped.
    pub asks: Vec<Notice>,
    /// Over how many days.
    pub spans: ChoiceRow,
    pub weeks: WeeksPicture,
    /// When it changed, the latest first.
    pub changes: Vec<ChangeNote>,
    /// Left and right.
    pub sides: Vec<SideCourse>,
    pub hours: HoursPicture,
    /// Morning, afternoon, evening, night.
    pub parts: ListGroup,
    /// Against what it is held.
    pub against: ListGroup,
    /// The way to the figures behind all this; none where there are none.
    pub figures: Option<Action>,
    pub spoken: String,
}

/// Production over days or weeks, along a line of time from 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WeeksPicture {
    pub bars: Vec<ProductionBar>,
    /// The course with its range; empty where it cannot be told.
    pub ribbon: Vec<RibbonPoint>,
    /// Where it changed.
    pub breaks: Vec<BreakMark>,
    /// An aim that was set.
    pub aim: Option<Tick>,
    /// What its signs mean, or empty.
    pub legend: String,
    /// Labels along the line of time.
    pub ticks: Vec<Tick>,
    /// Labels along the height.
    pub scale: Vec<Tick>,
    pub spoken: String,
}

/// One day, or one week: from and to along the line of time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ProductionBar {
    pub from: f32,
    pub to: f32,
    /// What was made, scaled to 24 h; none where nothing is known.
    pub height: Option<f32>,
    /// What was collected by the clock, a mark within or above the bar.
    pub by_the_clock: Option<f32>,
    /// The share that was observed, 0 to 1: the rest is drawn hatched.
    pub observed: f32,
    /// Whether it counts towards the course.
    pub counts: bool,
}

/// A point of the course: its height, and the range it may lie in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RibbonPoint {
    pub at: f32,
    pub low: f32,
    pub middle: f32,
    pub high: f32,
}

/// A change of level: somewhere between two points.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BreakMark {
    pub from: f32,
    pub to: f32,
    pub label: String,
}

/// A change, told: when, how much, and what else changed then.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ChangeNote {
    pub key: String,
    pub title: String,
    pub detail: String,
    /// Said over `beside`: what else changed then, not that it was the cause.
    pub beside_label: String,
    pub beside: Vec<ListRow>,
    pub spoken: String,
}

/// One side: its water line, its word, its course.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SideCourse {
    pub column: Column,
    pub headline: String,
    pub detail: String,
    pub weeks: WeeksPicture,
}

/// How fast milk is made at each hour of the day, from 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HoursPicture {
    pub title: String,
    /// What its signs mean.
    pub legend: String,
    pub bars: Vec<HourBar>,
    pub ticks: Vec<Tick>,
    pub scale: Vec<Tick>,
    pub spoken: String,
}

/// One hour of the day: the middle of the days, and where half of them lie.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HourBar {
    pub from: f32,
    pub to: f32,
    pub height: Option<f32>,
    pub low: f32,
    pub high: f32,
}

/// What was found out about one thing: a pump, a trace, a fit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FindingsScreen {
    /// The word of the moment, such as `Meets its range`; or that it cannot be told yet.
    pub headline: String,
    /// The figure of the moment, or empty.
    pub figure: String,
    /// Its range, and what it rests on, or empty.
    pub caption: String,
    pub dial: Option<DialPicture>,
    /// What more there is to say, each a short sentence.
    pub lines: Vec<String>,
    /// Gentle questions.
    pub asks: Vec<Notice>,
    /// What to do from here, the main one first.
    pub actions: Vec<Action>,
    pub sections: Vec<Section>,
    pub spoken: String,
}

/// A part of what was found: words, a picture, fields, rows, each where there is one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Section {
    pub key: String,
    pub title: String,
    pub lines: Vec<String>,
    pub plot: Option<PlotPicture>,
    pub fields: Vec<FieldRow>,
    pub rows: Vec<ListRow>,
    pub actions: Vec<Action>,
}

/// A dial like the gauge in the hand: 0 is where its sweep begins, 1 where it ends.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DialPicture {
    /// Ranges along the rim.
    pub arcs: Vec<DialArc>,
    /// Readings, each with its error as a wedge.
    pub hands: Vec<DialHand>,
    pub ticks: Vec<Tick>,
    /// What stands in the middle, such as `262`, and under it its unit.
    pub figure: String,
    pub unit: String,
    /// What its signs mean.
    pub legend: String,
    pub spoken: String,
}

/// A range along the rim of a dial.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DialArc {
    pub from: f32,
    pub to: f32,
    pub label: String,
}

/// A reading on a dial: where it points, and the range the truth lies in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DialHand {
    pub low: f32,
    pub at: f32,
    pub high: f32,
    /// A letter or a word beside its tip, such as `L`, or empty.
    pub label: String,
}

/// A picture over two axes, each from 0 to 1. Every part of it may be empty.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotPicture {
    /// Ranges along the height, drawn across the whole.
    pub bands: Vec<PlotBand>,
    /// Stretches along the width, such as phases; the word is written at their head.
    pub stretches: Vec<PlotStretch>,
    /// Between lowest and highest at each place, as a trace is drawn.
    pub columns: Vec<PlotColumn>,
    /// Lines with their range.
    pub courses: Vec<PlotCourse>,
    pub points: Vec<PlotPoint>,
    /// Places along the width where something changed.
    pub marks: Vec<Tick>,
    /// Labels along the width.
    pub ticks: Vec<Tick>,
    /// Labels along the height.
    pub scale: Vec<Tick>,
    /// What its signs mean, or empty.
    pub legend: String,
    pub spoken: String,
}

/// A range along the height.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotBand {
    pub low: f32,
    pub high: f32,
    pub label: String,
}

/// A stretch along the width.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotStretch {
    pub from: f32,
    pub to: f32,
    pub phase: Phase,
    pub label: String,
}

/// Lowest and highest at a place along the width.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotColumn {
    pub at: f32,
    pub low: f32,
    pub high: f32,
}

/// A line with its range; dashed where it is drawn on beyond what was seen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotCourse {
    pub points: Vec<RibbonPoint>,
    pub dashed: bool,
}

/// A point with its range: a round sign for left, a square one for right, a
/// diamond for both or neither; open where it was not read but lies between.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotPoint {
    pub at: f32,
    pub low: f32,
    pub middle: f32,
    pub high: f32,
    pub part: Option<Part>,
    pub open: bool,
}

/// A check with a gauge: what to do, what it shows, what was read.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CheckScreen {
    /// What is read now, such as `Left, reading 2 of 3`; or that all is read.
    pub headline: String,
    /// What to do, step by step, each a short sentence.
    pub steps: Vec<String>,
    /// Where the figure is typed.
    pub reading: FieldRow,
    /// Said over `near`.
    pub near_label: String,
    /// Figures near the last one: one tap writes one down.
    pub near: Vec<Action>,
    /// What was read so far, on the dial.
    pub dial: Option<DialPicture>,
    /// Gentle questions.
    pub asks: Vec<Notice>,
    /// At which level and which side it is read next.
    pub at: Vec<ChoiceRow>,
    /// What was read, the latest first; a row opens to be corrected.
    pub readings: ListGroup,
    /// Gauge, how it was connected, power.
    pub set_up: Vec<FieldRow>,
    /// To what the check says.
    pub done: Action,
    pub spoken: String,
}

/// A record, field by field.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FormScreen {
    pub id: String,
    pub strip: Option<Strip>,
    /// Words of care, such as an overlap or an edit on another device.
    pub notices: Vec<Notice>,
    pub groups: Vec<FieldGroup>,
    pub actions: Vec<Action>,
}

/// Fields that belong together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FieldGroup {
    pub key: String,
    pub title: String,
    pub rows: Vec<FieldRow>,
}

/// One field.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FieldRow {
    pub id: String,
    pub field: String,
    pub label: String,
    pub kind: FieldKind,
    /// What stands in it, as typed.
    pub value: String,
    /// The unit behind it, or empty.
    pub unit: String,
    /// Said where nothing stands in it, or what may be typed.
    pub hint: String,
    /// For choices: one may be chosen, or several where it says so.
    pub options: Vec<Action>,
    pub less: Option<Action>,
    pub more: Option<Action>,
    pub clear: Option<Action>,
    /// The word with which it is sent, where it is not sent by being left. What was typed is sent as
    /// [`Event::Enter`], and then let go.
    pub done: Option<Action>,
    pub spoken: String,
}

/// How a field is filled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum FieldKind {
    Choice,
    Number,
    Time,
    Text,
    LongText,
    /// Typed as it is, learned by no keyboard and kept by nothing.
    Secret,
    /// Told, not asked.
    Fact,
}

/// Groups of rows that open.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ListScreen {
    pub intro: String,
    pub groups: Vec<ListGroup>,
}

/// Rows that belong together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ListGroup {
    pub key: String,
    pub title: String,
    pub rows: Vec<ListRow>,
    /// Said where there is no row.
    pub empty: String,
    pub add: Vec<Action>,
}

/// A row of a list.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ListRow {
    pub title: String,
    pub detail: String,
    pub spoken: String,
    /// What a tap on it does, if anything.
    pub open: Option<Action>,
}

/// A card to be handed on: as a code to be scanned, and as a line of text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CardScreen {
    pub matrix: Matrix,
    /// Said over `words`.
    pub words_label: String,
    /// Words to compare by voice.
    pub words: String,
    /// Said over `line`.
    pub line_label: String,
    /// The line that the code holds; it can be marked and copied.
    pub line: String,
    pub lines: Vec<String>,
    pub actions: Vec<Action>,
    pub spoken: String,
}

/// A square of dark and light, row by row, its quiet border in it. Drawn dark on light in
/// every palette.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Matrix {
    /// Fields along a side.
    pub size: u32,
    pub dark: Vec<bool>,
}

/// The consultant's window: the families, and beside them what is open.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CaseloadScreen {
    /// The list of families.
    pub families: Screen,
    /// A family, only to be read, or the consultant's own desk.
    pub beside: Screen,
    pub menu: Menu,
}

/// What a window offers in its menu.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Menu {
    pub label: String,
    pub actions: Vec<Action>,
}

/// The answer to an event in the consultant's window.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CaseloadUpdate {
    pub caseload: CaseloadScreen,
    pub effects: Vec<Effect>,
}

/// The visit sheet, before it goes out: its parts exactly as they go out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SheetScreen {
    pub intro: String,
    /// The name on it, and its paper.
    pub fields: Vec<FieldRow>,
    pub parts: Vec<SheetPart>,
    /// The rules it rests on; they always go along.
    pub sources: SheetSection,
    /// What is said on every sheet.
    pub foot: String,
    /// To hand it over as a PDF.
    pub hand_over: Action,
    pub spoken: String,
}

/// A part of the sheet that can be left out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SheetPart {
    pub key: String,
    pub title: String,
    pub sections: Vec<SheetSection>,
    /// Whether it is left out: it is then not on the page.
    pub out: bool,
    /// Said of one that is left out, or empty.
    pub said_out: String,
    /// To leave it out, or take it in again.
    pub leave: Action,
}

/// Words, rows and a picture under one title, each where there is one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SheetSection {
    pub key: String,
    pub title: String,
    /// The word of the moment, such as `Holding`, or empty.
    pub headline: String,
    /// Its figure, or empty.
    pub figure: String,
    /// The range of the figure, and what it rests on, or empty.
    pub caption: String,
    pub lines: Vec<String>,
    pub rows: Vec<SheetRow>,
    pub weeks: Option<WeeksPicture>,
    pub plot: Option<PlotPicture>,
}

/// A line of the sheet.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SheetRow {
    pub label: String,
    /// What stands at its end, or empty.
    pub value: String,
    /// What is said under it, or empty.
    pub note: String,
}

/// What only the host can do. Each is keyed and may be repeated.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Effect {
    /// A short touch, to say that a tap is on disk.
    Buzz { key: String },
    /// Keep the screen lit, or let it sleep.
    KeepScreenOn { on: bool },
    /// Call this person at an instant; replaces the alarm of the same key. What it shows
    /// takes the place of what was shown in the same slot. A quiet one makes no sound.
    SetAlarm { key: String, slot: String, unix_milliseconds: i64, title: String, text: String, quiet: bool },
    /// Let go of an alarm.
    ClearAlarm { key: String },
    /// Let the person say where a file goes, then call `take_out` with its key and path.
    HandOver { key: String, file_name: String, content_type: String },
    /// Let the person pick a file, then call `bring_in` with it.
    PickFile { key: String, content_types: Vec<String> },
    /// Let the person pick a folder, watch it, also after the next start, call `take_in`
    /// with each new file in it once it is whole, and say so with [`Event::FolderIs`].
    PickFolder,
    /// Let go of the folder that is watched, and say so with [`Event::FolderIs`].
    LeaveFolder,
    /// Open a fresh record elsewhere and bring the invented family in.
    OpenLookAround,
    /// Go back to the person's own record.
    CloseLookAround,
    /// Call `tend` soon, off the thread that draws.
    Tend,
}

/// The answer to an event.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Update {
    pub screen: Screen,
    pub effects: Vec<Effect>,
}

/// How a record is opened.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Opening {
    /// Stable name of this device, made once by the host at random.
    pub device: String,
    /// The language asked for, such as `en`.
    pub language: String,
    /// Whether this is the invented family's record.
    pub look_around: bool,
}
