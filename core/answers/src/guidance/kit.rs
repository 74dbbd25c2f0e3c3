//! The rules that Kit goes by, typed.

use super::Rules;
use crate::quantity::{Length, Quantity, Share, Speed, Vacuum};
use crate::time::Span;

/// Cycles per minute, from and to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CycleRange {
    /// The slowest.
    pub low: Speed,
    /// The fastest.
    pub high: Speed,
}

/// The rules of pumps and gauges.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KitRules {
    /// A personal grade pump reaches this, usually up to the second.
    pub personal: (Vacuum, Vacuum),
    /// A hospital grade pump reaches this, its top usually by the second.
    pub hospital: (Vacuum, Vacuum),
    /// A highest vacuum in here is held good.
    pub good: (Vacuum, Vacuum),
    /// Above this a hand pump carries the note on its exemption.
    pub hand_exemption: Vacuum,
    /// A verdict is given from this chance on.
    pub verdict_chance: Share,
    /// Applied and set vacuum further apart than this are flagged.
    pub set_apart: Vacuum,
    /// Readings of one place further apart than this are asked about.
    pub readings_apart: Vacuum,
    /// A highest reading below this is asked about: it may be in kPa.
    pub likely_kilopascal: Vacuum,
    /// How long a personal grade motor lasts, from and to.
    pub motor_life: (Span, Span),
    /// The cycles of usual pumps.
    pub usual_cycles: CycleRange,
    /// A stated highest vacuum above this is asked about: it may be in mbar.
    pub likely_millibar: Vacuum,
    /// A hospital grade pump's top is mostly from here on.
    pub hospital_usual: Vacuum,
    /// Above this for nearly all of a child's milk, or a long stay on a neonatal unit.
    pub most_above: Vacuum,
    /// So long after birth letdown comes easiest.
    pub early_weeks: Span,
    /// The cycles of a stimulation phase.
    pub stimulation_cycles: CycleRange,
}

/// A month of UCUM: 30.4375 days.
pub const MONTH_HOURS: f64 = 730.5;

impl KitRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        let vacuum = |key: &str| Vacuum::from_canonical(rules.value(key));
        let speed = |key: &str| Speed::from_canonical(rules.value(key));
        let months = |key: &str| Span::hours((rules.value(key) * MONTH_HOURS).round() as i64);
        Self {
            personal: (vacuum("personal_low"), vacuum("personal_high")),
            hospital: (vacuum("hospital_low"), vacuum("hospital_high")),
            good: (vacuum("good_low"), vacuum("good_high")),
            hand_exemption: vacuum("hand_exemption"),
            verdict_chance: Share::of(rules.value("verdict_chance") / 100.0),
            set_apart: vacuum("set_apart"),
            readings_apart: vacuum("readings_apart"),
            likely_kilopascal: vacuum("likely_kilopascal"),
            motor_life: (months("life_from"), months("life_to")),
            usual_cycles: CycleRange { low: speed("usual_cycles_low"), high: speed("usual_cycles_high") },
            likely_millibar: vacuum("likely_millibar"),
            hospital_usual: vacuum("hospital_usual"),
            most_above: vacuum("most_above"),
            early_weeks: Span::hours((rules.value("early_weeks") * 7.0 * 24.0).round() as i64),
            stimulation_cycles: CycleRange {
                low: speed("stimulation_cycles_low"),
                high: speed("stimulation_cycles_high"),
            },
        }
    }
}

/// The rules of flanges.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FitRules {
    /// A flange is wider than the nipple by at least this.
    pub gap_least: Length,
    /// And by at most this.
    pub gap_most: Length,
    /// What pumps come with, from and to.
    pub comes_with: (Length, Length),
    /// Measured again after so long.
    pub measure_again: Span,
}

impl FitRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        let length = |key: &str| Length::from_canonical(rules.value(key));
        Self {
            gap_least: length("gap_least"),
            gap_most: length("gap_most"),
            comes_with: (length("comes_with_low"), length("comes_with_high")),
            measure_again: Span::hours((rules.value("measure_again") * 24.0).round() as i64),
        }
    }
}
