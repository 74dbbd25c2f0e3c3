//! What a call is made with, and what it answers.

use serde::{Deserialize, Serialize};

use super::{
    AmountsScreen, CardScreen, CheckScreen, DayScreen, Export, FindingsScreen, FormScreen, Frame, ListScreen,
    QuestionScreen, ReadyScreen, RunningScreen, SheetScreen, SupplyScreen, TonightScreen, WelcomeScreen,
};

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

/// The instant a call is made, and the zone the person is in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Clock {
    /// Milliseconds since 1970-01-01T00:00:00Z.
    pub unix_milliseconds: i64,
    /// IANA zone name, such as `Europe/Berlin`.
    pub zone: String,
    /// Seconds east of universal time that the host's own clock now shows there. A host may
    /// leave it: its data are asked because they may be newer than the program's.
    #[serde(default)]
    pub offset_seconds: Option<i32>,
}

/// A screen, ready to draw.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Screen {
    Welcome { frame: Frame, welcome: WelcomeScreen },
    Question { frame: Frame, question: QuestionScreen },
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

/// The answer to an event.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Update {
    pub screen: Screen,
    pub effects: Vec<Effect>,
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
    /// Let the person say where a file goes, then call `export` with this and its path.
    HandOver { what: Export, file_name: String, content_type: String },
    /// Let the person pick a file, then call `import_file` with it.
    PickFile { key: String, content_types: Vec<String> },
    /// Let the person pick a folder, watch it, also after the next start, call `import_quietly`
    /// with each new file in it once it is whole, and say so with [`DeskEvent::FolderIs`](super::DeskEvent::FolderIs).
    PickFolder,
    /// Let go of the folder that is watched, and say so with [`DeskEvent::FolderIs`](super::DeskEvent::FolderIs).
    LeaveFolder,
    /// Open a fresh record elsewhere and bring the invented family in.
    OpenLookAround,
    /// Go back to the person's own record.
    CloseLookAround,
    /// Open the dialler with this number. Nothing is dialled before the person does it.
    Dial { number: String },
    /// Let go of every copy of a file that came in or went out.
    ForgetFiles,
    /// Keep the key that the record is open with, in the platform's own store.
    KeepKey,
    /// Call `maintain` soon, off the thread that draws.
    Maintain,
}
