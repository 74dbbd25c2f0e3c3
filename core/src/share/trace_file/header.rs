//! What the words over the columns say.

use crate::answer::trace::TimeUnit;
use crate::quantity::VacuumUnit;

/// What a heading says of its column.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Heading {
    /// How surely it is the time: 0 not, 2 in a whole word.
    pub(super) time: u8,
    /// The same for the pressure.
    pub(super) pressure: u8,
    pub(super) time_unit: Option<TimeUnit>,
    pub(super) unit: Option<VacuumUnit>,
    /// A unit of pressure that traces are not read in.
    pub(super) other_unit: Option<&'static str>,
}

const TIME_WORDS: [&str; 9] = ["time", "times", "timestamp", "elapsed", "clock", "zeit", "temps", "tiempo", "datetime"];
const PRESSURE_WORDS: [&str; 10] =
    ["pressure", "vacuum", "suction", "press", "vac", "pres", "druck", "vakuum", "pression", "unterdruck"];

/// Reads a heading such as `Time (s)`, `p [kPa]` or `pressure_mmHg`.
pub(super) fn heading(text: &str) -> Heading {
    let lower = text.to_lowercase();
    let words: Vec<&str> = lower.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
    let has = |any: &[&str]| words.iter().any(|word| any.contains(word));
    let together: String = words.concat();
    let unit = pressure_unit(&together);
    let other_unit = match unit {
        Some(_) => None,
        None => ["psi", "inhg", "bar", "pa", "torr", "atm"].into_iter().find(|other| has(&[other])),
    };
    let time_unit = if unit.is_some() {
        None
    } else if has(&["ms", "msec", "msecs", "millisecond", "milliseconds", "millis"]) {
        Some(TimeUnit::Millisecond)
    } else if has(&["us", "\u{b5}s", "\u{3bc}s", "usec", "microsecond", "microseconds"]) {
        Some(TimeUnit::Microsecond)
    } else if has(&["min", "mins", "minute", "minutes"]) {
        Some(TimeUnit::Minute)
    } else if has(&["s", "sec", "secs", "second", "seconds"]) {
        Some(TimeUnit::Second)
    } else {
        None
    };
    let surely = |whole: bool, hint: bool| if whole { 2 } else { u8::from(hint) };
    Heading {
        time: surely(has(&TIME_WORDS), has(&["t"]) || time_unit.is_some()),
        pressure: surely(
            unit.is_some() || has(&PRESSURE_WORDS),
            has(&["p"]) || words.iter().any(|word| word.starts_with("pressure") || word.starts_with("vacuum")),
        ),
        time_unit,
        unit,
        other_unit,
    }
}

/// The unit of pressure that a text names, if it names one.
pub(super) fn pressure_unit(text: &str) -> Option<VacuumUnit> {
    let plain: String = text
        .to_lowercase()
        .chars()
        .filter(|c| c.is_alphanumeric())
        .map(|c| if c == '\u{2082}' { '2' } else { c })
        .collect();
    let mut named = [
        ("mmhg", VacuumUnit::MillimeterOfMercury),
        ("kpa", VacuumUnit::Kilopascal),
        ("cmh2o", VacuumUnit::CentimeterOfWater),
        ("cmwc", VacuumUnit::CentimeterOfWater),
        ("mbar", VacuumUnit::Millibar),
        ("hpa", VacuumUnit::Millibar),
    ]
    .into_iter()
    .filter(|(word, _)| plain.contains(word))
    .map(|(_, unit)| unit);
    let first = named.next()?;
    named.all(|other| other == first).then_some(first)
}
