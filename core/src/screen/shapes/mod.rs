//! What crosses to the shell: plain data, ready to draw.
//!
//! Every text is already in the person's language and units. Every picture is
//! given in unit coordinates: 0 is left or bottom, 1 is right or top. The
//! build script of `bindings` reads every file of this folder and hands each
//! declaration to UniFFI, so a shape is written once, here.

// A field is named so that it tells itself; the doc comments say only what a name cannot.
// A screen crosses once a tap and is built in place: its size costs nothing there.
#![allow(missing_docs, clippy::large_enum_variant)]

mod action;
mod call;
mod card;
mod caseload;
mod check;
mod day;
mod event;
mod export;
mod findings;
mod form;
mod frame;
mod list;
mod pictures;
mod place;
mod secret;
mod session;
mod sheet;
mod strip;
mod supply;
mod tonight;

pub use action::{Action, Sign, Weight};
pub use call::{Clock, Effect, Opening, Screen, Update};
pub use card::{CardScreen, Matrix};
pub use caseload::{CaseloadScreen, CaseloadUpdate, Menu};
pub use check::CheckScreen;
pub use day::{DayBar, DayChoice, DayPicture, DayScreen, EntryRow, SideTotal};
pub use event::{Deed, DeskEvent, Event, MilkDeed, Part, Searched};
pub use export::{Export, Paper};
pub use findings::{FindingsScreen, Section};
pub use form::{FieldGroup, FieldKind, FieldRow, FormScreen};
pub use frame::{Appearance, Frame, Hand, Notice, Palette, Tone};
pub use list::{ListGroup, ListRow, ListScreen};
pub use pictures::{
    DialArc, DialHand, DialPicture, PlotBand, PlotColumn, PlotCourse, PlotPicture, PlotPoint, PlotStretch, ShelfBoard,
    ShelfBottle, ShelfPicture,
};
pub use place::{Place, StartingQuestion};
pub use secret::Secret;
pub use session::{
    AmountColumn, AmountsScreen, Arc, ChoiceRow, Column, Dial, QuestionScreen, Reading, ReadyScreen, Rest,
    RunningScreen, SetUpLine, WelcomeScreen,
};
pub use sheet::{SheetPart, SheetRow, SheetScreen, SheetSection};
pub use strip::{Band, Notch, PainMark, Phase, StepPoint, Strip, Tick};
pub use supply::{
    BreakMark, ChangeNote, HourBar, HoursPicture, ProductionBar, RibbonPoint, SideCourse, SupplyScreen, WeeksPicture,
};
pub use tonight::{NightFigure, NightPicture, NightStretch, Peg, PegState, StretchKind, TonightScreen};
