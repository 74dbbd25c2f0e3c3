//! Places the person can be in.

use serde::{Deserialize, Serialize};

/// A place the person can be in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Place {
    /// The running session, or what to start.
    Now,
    /// What came of one session: the water of each side, drawn up.
    Amounts { id: String },
    /// A session that is over already: when it ended, and then how long it was.
    JustPumped { minutes_ago: Option<u32> },
    /// After the first screen: what may be asked once, and left open.
    Starting { question: StartingQuestion },
    /// One local day: 0 is today, 1 is yesterday.
    Day { days_back: u32 },
    /// One record, opened to be corrected.
    Entry { id: String },
    /// When to express next, and what the night holds.
    Tonight,
    /// How much milk is made, over so many days: 0 is all there are.
    Supply { days: u32 },
    /// What lies behind the word and the picture.
    SupplyMore { days: u32 },
    /// The figures behind it.
    SupplyFigures { days: u32 },
    /// So many days beside as many before them: 0 is since the last visit.
    Compare { days: u32 },
    /// Milk that is kept.
    Kept,
    /// A container of it.
    Container { id: String },
    /// What to use first for so many mL.
    UseFirst { milliliters: u32 },
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
    /// Which vacuum is comfortable, and whether more brings more.
    Comfort,
    /// How soon milk lets down.
    Letdown,
    /// A comparison of two ways.
    Trial { id: String },
    /// One caution: what was seen, what to do, where that comes from.
    Caution { key: String },
    /// All cautions that stand.
    Cautions,
    /// What the consultant gets, what comes back, and what needs a look.
    Visit,
    /// A plan from the consultant, or one she is writing.
    Plan { id: String },
    /// Rules to choose from, for a part of a plan that sets one anew.
    PlanRules { part: String },
    /// A consultant whose keys were taken in.
    Consultant { id: String },
    /// Where a consultant's key is taken in, or a passphrase set instead.
    Sharing,
    /// Where the passphrase of a file that came is typed.
    Sealed,
    /// What is asked before something from outside is kept.
    Asked,
    /// Whether a network of units may count this family: for what, and then until when.
    Consent { scope: Option<String> },
    /// The record as tables, each a file.
    Tables,
    /// Before the record is erased from this device: what goes, and what remains.
    Erasing,
    /// Whether the record is sealed, and what opens it where its key is lost.
    Recovery,
    /// What a consultant keeps once for all families.
    Desk,
    /// Her own card, to be handed on.
    OwnCard,
    /// What she keeps of one family.
    CaseFamily { id: String },
    /// Before a family is removed from her machine: what goes, and what remains.
    Removing { id: String },
    /// What a word of the trade means, by its name in the table.
    Term { word: String },
    /// The visit sheet, before it goes out.
    Sheet,
    /// Children, settings, and the record as a whole.
    Family,
    /// What came of the last file that was brought in.
    Report,
}

/// What is asked once, after the first screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum StartingQuestion {
    /// In which unit amounts are read.
    Units,
    /// When the child was born.
    Birth,
    /// How many sessions a day were agreed.
    SessionsADay,
}
