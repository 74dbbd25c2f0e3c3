//! Every screen without a screen: the surface on the command line, JSON out.
//!
//! `drawwell-headless --journal F --at RFC3339 --zone IANA [--device D] [--key-file K]
//!  (import F | export F | calendar F | sheet F | sheet-letter F | choice-page F | labels F | csv TABLE F |
//!  csv-schema TABLE F | fhir F |
//!  show PLACE | tap JSON)`
//!
//! The key of a sealed record is 64 hexadecimal figures, in the file of `--key-file` or in the
//! variable `DRAWWELL_KEY`; without either a record is not sealed.
//!
//! The offset in `--at` is what the clock on the wall shows, and goes before the zone's data;
//! `Z` leaves it to them.
//!
//! `drawwell-headless statistics` needs no journal: see `statistics_lines`.
//!
//! PLACE is `now`, `day`, `day:3`, `supply:28`, `supply-figures:28`, `kit`, `pump:ID`,
//! `check:ID`, `trace:ID`, `count:ID`, `fit`, `choice`, `kept`, `container:ID`, `use-first:60`,
//! `comfort`, `letdown`, `trial:ID`, `family`, `report` or `entry:ID`; an event is written as
//! serde writes it, such as `"Start"` or
//! `{"Mark":{"deed":"Letdown"}}`. Trouble is JSON on standard error, and exit 1.

mod statistics_lines;

use std::io::Write;
use std::process::ExitCode;

use drawwell::{Drawwell, Trouble};
use drawwell_core::journal::Key;
use drawwell_core::screen::shapes::{Clock, Event, Export, LabelPaper, Opening, Paper, Place};
use drawwell_core::time::Moment;

const USAGE: &str = "drawwell-headless --journal FILE --at RFC3339 --zone IANA [--device NAME] [--key-file FILE] \
                     (import FILE | export FILE | calendar FILE | sheet FILE | sheet-letter FILE | choice-page FILE | labels FILE | \
                     csv TABLE FILE | csv-schema TABLE FILE | fhir FILE | show PLACE | tap JSON)\n\
                     drawwell-headless statistics < REQUESTS";

struct Asked {
    journal: String,
    clock: Clock,
    device: String,
    key: Option<Vec<u8>>,
    what: String,
    /// Which table, where one is asked for.
    table: Option<String>,
    with: String,
}

fn read_arguments(mut arguments: impl Iterator<Item = String>) -> Option<Asked> {
    let (mut journal, mut at, mut zone, mut device) = (None, None, None, "headless".to_owned());
    let mut figures = std::env::var("DRAWWELL_KEY").ok().filter(|figures| !figures.is_empty());
    let mut rest = Vec::new();
    while let Some(argument) = arguments.next() {
        match argument.as_str() {
            "--journal" => journal = Some(arguments.next()?),
            "--at" => at = Some(arguments.next()?),
            "--zone" => zone = Some(arguments.next()?),
            "--device" => device = arguments.next()?,
            "--key-file" => figures = Some(std::fs::read_to_string(arguments.next()?).ok()?),
            _ => rest.push(argument),
        }
    }
    let zone = zone?;
    let at = at?;
    let moment = Moment::from_parts(&at, &zone).ok()?;
    let (what, table, with) = match <[String; 2]>::try_from(rest) {
        Ok([what, with]) => (what, None, with),
        Err(rest) => {
            let [what, table, with] = <[String; 3]>::try_from(rest).ok()?;
            (what, Some(table), with)
        }
    };
    // Figures that are no key are refused by the record, and told.
    let key = figures.map(|figures| Key::from_figures(&figures).map_or(Vec::new(), |key| key.bytes().to_vec()));
    let clock = Clock { unix_milliseconds: moment.instant().unix_milliseconds(), zone, offset_seconds: offset_of(&at) };
    Some(Asked { journal: journal?, clock, device, key, what, table, with })
}

/// The offset that an RFC 3339 time says. `Z` and `-00:00` say none (RFC 9557 section 2).
fn offset_of(at: &str) -> Option<i32> {
    let says_none = at.ends_with(['Z', 'z']) || at.ends_with("-00:00");
    let offset = chrono::DateTime::parse_from_rfc3339(at).ok()?.offset().local_minus_utc();
    (!says_none).then_some(offset)
}

fn place(text: &str) -> Option<Place> {
    Some(match text.split_once(':') {
        Some(("supply", days)) => Place::Supply { days: days.parse().ok()? },
        Some(("supply-more", days)) => Place::SupplyMore { days: days.parse().ok()? },
        Some(("supply-figures", days)) => Place::SupplyFigures { days: days.parse().ok()? },
        Some(("day", days_back)) => Place::Day { days_back: days_back.parse().ok()? },
        Some(("entry", id)) => Place::Entry { id: id.to_owned() },
        Some(("pump", id)) => Place::Pump { id: id.to_owned() },
        Some(("check", id)) => Place::Check { id: id.to_owned() },
        Some(("plan", id)) => Place::Plan { id: id.to_owned() },
        Some(("caution", key)) => Place::Caution { key: key.to_owned() },
        Some(("term", word)) => Place::Term { word: word.to_owned() },
        Some(("trace", id)) => Place::Trace { id: id.to_owned() },
        None if text == "sheet" => Place::Sheet,
        Some(("trial", id)) => Place::Trial { id: id.to_owned() },
        None if text == "fit" => Place::Fit,
        None if text == "choice" => Place::Choice,
        Some(("count", id)) => Place::SpeedCount { id: id.to_owned() },
        None if text == "kept" => Place::Kept,
        Some(("container", id)) => Place::Container { id: id.to_owned() },
        Some(("use-first", amount)) => Place::UseFirst { milliliters: amount.parse().ok()? },
        None if text == "comfort" => Place::Comfort,
        None if text == "letdown" => Place::Letdown,
        None if text == "tonight" => Place::Tonight,
        None if text == "now" => Place::Now,
        None if text == "day" => Place::Day { days_back: 0 },
        None if text == "kit" => Place::Kit,
        None if text == "cautions" => Place::Cautions,
        None if text == "erasing" => Place::Erasing,
        None if text == "recovery" => Place::Recovery,
        None if text == "tables" => Place::Tables,
        None if text == "compare" => Place::Compare { days: 0 },
        None if text == "visit" => Place::Visit,
        None if text == "family" => Place::Family,
        None if text == "recovery" => Place::Recovery,
        None if text == "report" => Place::Report,
        // Any other, as JSON: a new place is asked for before it has a word of its own.
        _ => return serde_json::from_str(text).ok(),
    })
}

enum Failed {
    Usage,
    Told(Box<Trouble>),
}

impl From<Trouble> for Failed {
    fn from(trouble: Trouble) -> Self {
        Self::Told(Box::new(trouble))
    }
}

fn run(asked: &Asked) -> Result<serde_json::Result<String>, Failed> {
    let opening = Opening { device: asked.device.clone(), language: "en".to_owned(), look_around: false };
    let now = asked.clock.clone();
    let drawwell = Drawwell::open(asked.journal.clone(), opening, now.clone(), asked.key.clone())?;
    let export = |what: Export| {
        let update = drawwell.export(what, asked.with.clone(), now.clone())?;
        Ok::<_, Failed>(serde_json::to_string_pretty(&update))
    };
    if let Some(table) = asked.table.clone() {
        return match asked.what.as_str() {
            "csv" if table == "all" => export(Export::Tables),
            "csv" => export(Export::Table { table }),
            "csv-schema" => export(Export::TableSchema { table }),
            _ => Err(Failed::Usage),
        };
    }
    Ok(match asked.what.as_str() {
        "import" => serde_json::to_string_pretty(&drawwell.import_file(asked.with.clone(), now)?),
        "calendar" => export(Export::Calendar)?,
        "export" => export(Export::Record)?,
        "fhir" => export(Export::HealthRecord)?,
        "sheet" => export(Export::Sheet { paper: Paper::A4 })?,
        "sheet-letter" => export(Export::Sheet { paper: Paper::Letter })?,
        "labels" => export(Export::Labels { on: LabelPaper::A4Of24, container: String::new() })?,
        "choice-page" => export(Export::Choice { paper: Paper::A4 })?,
        "show" => serde_json::to_string_pretty(&drawwell.show(place(&asked.with).ok_or(Failed::Usage)?, now)?),
        "tap" => {
            let event: Event = serde_json::from_str(&asked.with).map_err(|_| Failed::Usage)?;
            serde_json::to_string_pretty(&drawwell.update(event, now)?)
        }
        _ => return Err(Failed::Usage),
    })
}

fn main() -> ExitCode {
    if std::env::args().skip(1).eq(["statistics"]) {
        let done = statistics_lines::answer_lines(std::io::stdin().lock(), std::io::stdout().lock());
        return if done.is_ok() { ExitCode::SUCCESS } else { ExitCode::FAILURE };
    }
    let Some(asked) = read_arguments(std::env::args().skip(1)) else {
        eprintln!("{USAGE}");
        return ExitCode::from(2);
    };
    match run(&asked) {
        Ok(Ok(json)) => {
            // A reader that has seen enough, such as `head`, is no fault.
            writeln!(std::io::stdout(), "{json}").ok();
            ExitCode::SUCCESS
        }
        Ok(Err(_)) | Err(Failed::Usage) => {
            eprintln!("{USAGE}");
            ExitCode::from(2)
        }
        Err(Failed::Told(trouble)) => {
            eprintln!("{}", serde_json::to_string(&*trouble).unwrap_or_default());
            ExitCode::FAILURE
        }
    }
}
