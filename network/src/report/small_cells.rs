//! What would show a few families is taken out: cells under the smallest size, a further cell
//! where a total would give one away, and the ends of a spread that rest on few.

use std::collections::BTreeMap;

use super::engine::Found;
use super::Report;
use crate::table::{Cell, Row};
use crate::trouble::Stop;

/// The column that says how many families a cell is of.
pub const FAMILIES: &str = "families";
/// The column that says why a row says less.
pub const SUPPRESSED: &str = "suppressed";

/// By which rule cells are small.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rule {
    /// Its name.
    pub name: &'static str,
    /// Cells of fewer families are suppressed.
    pub under: i64,
    /// What counts are rounded to.
    pub rounds_to: i64,
    /// The ends of a spread need so many families.
    pub wide_from: i64,
}

impl Rule {
    /// Under 11 suppressed (CMS cell size suppression policy, 2020, from memory); spreads from 50
    /// (common practice, no source).
    pub const CMS: Self = Self { name: "cms", under: 11, rounds_to: 1, wide_from: 50 };
    /// 1 to 7 suppressed, the rest rounded to 5 (NHS Digital, disclosure control for hospital
    /// episode statistics, from memory).
    pub const NHS: Self = Self { name: "nhs", under: 8, rounds_to: 5, wide_from: 50 };
    /// Both of them.
    pub const ALL: [Self; 2] = [Self::CMS, Self::NHS];

    /// The rule of a name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|rule| rule.name == name)
    }
}

/// A report as it may be seen.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Published {
    /// The names of its columns; the last is [`SUPPRESSED`].
    pub columns: Vec<String>,
    /// Its rows.
    pub rows: Vec<Row>,
}

impl Published {
    /// Where a column stands.
    pub fn at(&self, name: &str) -> Option<usize> {
        self.columns.iter().position(|column| column == name)
    }

    /// A cell of a row.
    pub fn cell<'r>(&self, row: &'r Row, name: &str) -> Option<&'r Cell> {
        row.get(self.at(name)?)
    }
}

/// Why a row says nothing but which cell it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Hidden {
    /// It is of few families.
    Small,
    /// It hides one that is.
    WithSmall,
}

/// Suppresses.
///
/// # Errors
/// Where the report lacks a column that it says it has.
pub fn suppress(report: &Report, found: Found, rule: &Rule) -> Result<Published, Stop> {
    let mut columns = found.columns;
    if columns.is_empty() {
        columns = report.cells.iter().map(|name| (*name).to_owned()).chain([FAMILIES.to_owned()]).collect();
    }
    let place = |name: &str| {
        let at = columns.iter().position(|column| column == name);
        at.ok_or_else(|| Stop::refused(format!("{} lacks its column {name}", report.name)))
    };
    let families = place(FAMILIES)?;
    let cells = report.cells.iter().map(|name| place(name)).collect::<Result<Vec<_>, _>>()?;
    let stratum = report.stratum.iter().map(|name| place(name)).collect::<Result<Vec<_>, _>>()?;
    let wide: Vec<usize> = report.wide.iter().filter_map(|name| place(name).ok()).collect();
    let under = rule.under.max(if rule.rounds_to > 1 { 1 } else { report.smallest });
    let count = |row: &Row| row.get(families).and_then(Cell::whole).unwrap_or(0);
    let hidden = hidden(&found.rows, &stratum, &count, under);
    let mut rows = found.rows;
    for (row, hidden) in rows.iter_mut().zip(&hidden) {
        let of = count(row);
        for (at, cell) in row.iter_mut().enumerate() {
            let says_which = cells.contains(&at);
            let few = wide.contains(&at) && of < rule.wide_from;
            if !says_which && (hidden.is_some() || few) {
                *cell = Cell::Null;
            }
        }
        if let Some(Cell::Whole(families)) = row.get_mut(families) {
            *families = (*families + rule.rounds_to / 2) / rule.rounds_to * rule.rounds_to;
        }
        row.push(match hidden {
            Some(Hidden::Small) => "small".into(),
            Some(Hidden::WithSmall) => "with_small".into(),
            None if !wide.is_empty() && of < rule.wide_from => "spread".into(),
            None => Cell::Null,
        });
    }
    columns.push(SUPPRESSED.to_owned());
    Ok(Published { columns, rows })
}

/// Which rows are hidden. Within a stratum those that are hidden are of enough families
/// together, so that a total tells of none of them.
fn hidden(rows: &[Row], stratum: &[usize], count: &dyn Fn(&Row) -> i64, under: i64) -> Vec<Option<Hidden>> {
    let mut hidden: Vec<Option<Hidden>> =
        rows.iter().map(|row| (count(row) < under).then_some(Hidden::Small)).collect();
    let mut strata: BTreeMap<Vec<&Cell>, Vec<usize>> = BTreeMap::new();
    for (at, row) in rows.iter().enumerate() {
        strata.entry(stratum.iter().filter_map(|column| row.get(*column)).collect()).or_default().push(at);
    }
    for mut inside in strata.into_values() {
        inside.sort_by_key(|at| rows.get(*at).map_or(0, count));
        let mut together = 0;
        let mut any = false;
        for at in inside {
            let (Some(row), Some(hidden)) = (rows.get(at), hidden.get_mut(at)) else { continue };
            if hidden.is_some() {
                any = true;
            } else if any && together < under {
                *hidden = Some(Hidden::WithSmall);
            } else {
                continue;
            }
            together += count(row);
        }
    }
    hidden
}
