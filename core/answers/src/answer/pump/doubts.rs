//! What to ask before readings are believed.

use crate::guidance::KitRules;
use crate::quantity::{Level, Quantity, Unit, Vacuum, VacuumUnit};
use crate::record::{Gauge, GaugeCheck, Reading, ReadingPlace};

/// A doubt about the readings of a check.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Doubt {
    /// The highest reading is so low that it may have been meant in another unit.
    PerhapsKilopascal {
        /// As it stands.
        read: Vacuum,
        /// What it would be.
        meant: Vacuum,
    },
    /// Readings of one place lie so far apart that one may be mistyped.
    FarApart {
        /// Where.
        place: ReadingPlace,
        /// The lowest.
        low: Vacuum,
        /// The highest.
        high: Vacuum,
    },
}

/// Whether a reading is at the highest level of a pump: said so, or its last level.
pub fn at_highest(reading: &Reading, levels: Option<Level>) -> bool {
    match (reading.place.level, levels) {
        (None, _) => true,
        (Some(level), Some(last)) => level == last,
        (Some(_), None) => false,
    }
}

/// Whether a gauge stood at the end of its span: the truth may lie beyond.
pub fn at_end_of_span(reading: &Reading, gauge: Option<&Gauge>) -> bool {
    gauge.and_then(|gauge| gauge.span).is_some_and(|span| reading.vacuum.quantity() >= span)
}

/// What there is to ask; nothing once the person said that all is right.
pub fn doubts(check: &GaugeCheck, levels: Option<Level>, rules: &KitRules) -> Vec<Doubt> {
    if check.are_right {
        return Vec::new();
    }
    let mut found = Vec::new();
    let highest = check.readings.iter().map(|(_, r)| r).filter(|r| at_highest(r, levels));
    if let Some(top) =
        highest.max_by(|a, b| a.vacuum.quantity().canonical().total_cmp(&b.vacuum.quantity().canonical()))
    {
        let read = top.vacuum.quantity();
        if top.vacuum.unit() == VacuumUnit::MillimeterOfMercury && read < rules.likely_kilopascal {
            let (factor, _) = VacuumUnit::Kilopascal.factor_and_zero();
            found.push(Doubt::PerhapsKilopascal { read, meant: Vacuum::from_canonical(read.canonical() * factor) });
        }
    }
    let mut places: Vec<ReadingPlace> = Vec::new();
    for (_, reading) in &check.readings {
        if places.contains(&reading.place) {
            continue;
        }
        places.push(reading.place);
        let values = check.readings.iter().filter(|(_, r)| r.place == reading.place).map(|(_, r)| r.vacuum.quantity());
        let (low, high) = values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
            (low.min(value.canonical()), high.max(value.canonical()))
        });
        if high - low > rules.readings_apart.canonical() {
            found.push(Doubt::FarApart {
                place: reading.place,
                low: Vacuum::from_canonical(low),
                high: Vacuum::from_canonical(high),
            });
        }
    }
    found
}
