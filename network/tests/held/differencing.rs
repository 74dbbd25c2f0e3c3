//! Who asks often, and holds answers against each other, sees no few families.

use std::collections::{BTreeMap, BTreeSet};

use drawwell_network::report::engine::Found;
use drawwell_network::report::small_cells::{suppress, SUPPRESSED};
use drawwell_network::report::{publish, Published, Report, Rule};
use drawwell_network::store::{Change, Store};
use drawwell_network::table::{Cell, Row};
use proptest::prelude::*;

use crate::shared::{bare, put_all, store_in, Network};

const HEADINGS: [&str; 4] = ["holding", "rising", "falling", "cannot_tell"];
const GESTATIONS: [Option<i64>; 4] = [Some(180), Some(210), Some(270), None];

fn families(published: &Published, row: &Row) -> Option<i64> {
    published.cell(row, "families").and_then(Cell::whole)
}

/// Which cell a row is, by the report.
fn name(report: &Report, published: &Published, row: &Row) -> Vec<Cell> {
    report.cells.iter().filter_map(|column| published.cell(row, column).cloned()).collect()
}

fn by_cell(report: &Report, published: &Published) -> BTreeMap<Vec<Cell>, Row> {
    published.rows.iter().map(|row| (name(report, published, row), row.clone())).collect()
}

/// Any counts in cells of a report whose strata have three columns' worth of cells.
fn found(report: &Report, counts: &[(u8, u8, i64)]) -> Found {
    let cells: BTreeMap<(u8, u8), i64> = counts.iter().map(|(s, c, n)| ((*s, *c), *n)).collect();
    let rows = cells.iter().map(|((s, c), n)| {
        let mut row: Row = report
            .cells
            .iter()
            .map(|column| {
                let of = if report.stratum.contains(column) { s } else { c };
                Cell::Text(format!("{column}-{of}"))
            })
            .collect();
        row.push(Cell::Whole(*n));
        row.extend(report.wide.iter().map(|_| Cell::Whole(7)));
        row
    });
    let columns = report.cells.iter().copied().chain(["families"]).chain(report.wide.iter().copied());
    Found { columns: columns.map(str::to_owned).collect(), rows: rows.collect() }
}

proptest! {
    /// Nothing under the smallest cell is ever told, spreads need fifty, and whoever knows the
    /// total of a stratum can't tell a hidden cell from it: those that are hidden are of enough
    /// families together, or are all there is.
    #[test]
    fn no_small_cell_is_told_nor_follows_from_a_total(
        counts in prop::collection::vec((0u8..3, 0u8..6, 1i64..70), 1..14),
        which in 0usize..10,
    ) {
        let report = Report::all().unwrap().remove(which);
        let before = found(&report, &counts);
        for rule in Rule::ALL {
            let published = suppress(&report, before.clone(), &rule).unwrap();
            let mut strata: BTreeMap<Vec<Cell>, (i64, usize, usize)> = BTreeMap::new();
            for (row, was) in published.rows.iter().zip(&before.rows) {
                let count = was[report.cells.len()].whole().unwrap();
                let stratum = report.stratum.iter().filter_map(|c| published.cell(row, c).cloned()).collect();
                let held = strata.entry(stratum).or_default();
                held.2 += 1;
                match families(&published, row) {
                    Some(told) => {
                        prop_assert!(count >= rule.under);
                        prop_assert!((told - count).abs() <= rule.rounds_to / 2 && told % rule.rounds_to == 0);
                    }
                    None => {
                        held.0 += count;
                        held.1 += 1;
                        prop_assert!(row[report.cells.len()..row.len() - 1].iter().all(|cell| *cell == Cell::Null));
                    }
                }
                let wide = report.wide.iter().any(|w| published.cell(row, w).is_some_and(|c| *c != Cell::Null));
                prop_assert!(!wide || count >= 50);
            }
            for (together, hidden, all) in strata.values() {
                prop_assert!(*hidden == 0 || *together >= rule.under || hidden == all, "{together} in {hidden} of {all}");
            }
        }
    }
}

/// A network of bare families: number, site, gestation, heading by their place.
fn bare_network(folder: &std::path::Path, families: &[(usize, usize, usize)]) -> Store {
    let store = store_in(folder, 1);
    put_all(
        &store,
        families.iter().enumerate().map(|(number, (site, born, heading))| {
            bare(number, ["one", "two", "three"][site % 3], GESTATIONS[born % 4], HEADINGS[heading % 4]).1
        }),
    );
    store
}

/// What two reports of one store tell between them: of each cell that was told anew, how many
/// families moved.
fn told_anew(
    report: &Report,
    first: &Published,
    second: &Published,
    moved: impl Fn(&[Cell]) -> i64,
) -> Result<(), TestCaseError> {
    let (first, after) = (by_cell(report, first), by_cell(report, second));
    for (cell, row) in &after {
        let Some(before) = first.get(cell) else { continue };
        let told = |row: &Row| !matches!(row.last().and_then(Cell::text), Some("small" | "with_small"));
        if told(before) && told(row) && before[..before.len() - 1] != row[..row.len() - 1] {
            prop_assert!(moved(cell) >= 11, "{cell:?} was told anew for {}", moved(cell));
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 12, ..ProptestConfig::default() })]

    /// One family is left out, a few more come in, or a site of a few: no figure that was told
    /// before is told otherwise, so that no difference is of a few.
    #[test]
    fn leaving_one_out_or_taking_a_few_in_changes_no_figure(
        families in prop::collection::vec((0usize..2, 0usize..3, 0usize..4), 60..140),
        leave in prop::collection::vec(0usize..60, 0..4),
        come in prop::collection::vec((0usize..3, 0usize..4, 0usize..4), 0..7),
    ) {
        let folder = tempfile::tempdir().unwrap();
        let store = bare_network(folder.path(), &families);
        let reports: Vec<Report> = ["trends", "follow_up"].map(|name| Report::named(name).unwrap()).into();
        let first: Vec<Published> = reports.iter().map(|report| publish(&store, report, &Rule::CMS).unwrap()).collect();
        let gone = leave.iter().map(|number| (bare(*number, "one", None, "holding").0, None)).collect();
        store.change(0, &Change { gone, ..Change::default() }).unwrap();
        put_all(&store, come.iter().enumerate().map(|(number, (site, born, heading))| {
            bare(1000 + number, ["one", "two", "three"][*site], GESTATIONS[*born], HEADINGS[*heading]).1
        }));
        for (report, first) in reports.iter().zip(&first) {
            let second = publish(&store, report, &Rule::CMS).unwrap();
            // At most ten moved in all, so none was told anew.
            told_anew(report, first, &second, |_| 0)?;
        }
    }

    /// Where enough come, the cell is told anew, and only that.
    #[test]
    fn a_cell_is_told_anew_once_enough_came(more in 1usize..25) {
        let folder = tempfile::tempdir().unwrap();
        let store = bare_network(folder.path(), &vec![(0, 1, 0); 40]);
        let report = Report::named("trends").unwrap();
        publish(&store, &report, &Rule::CMS).unwrap();
        let mut seen = BTreeSet::new();
        // One by one, a report after each: they wait until they are eleven.
        for number in 0..more {
            put_all(&store, [bare(2000 + number, "one", GESTATIONS[1], HEADINGS[0]).1]);
            let published = publish(&store, &report, &Rule::CMS).unwrap();
            seen.insert(families(&published, &published.rows[0]).unwrap());
        }
        let expected: BTreeSet<i64> =
            (1..=more as i64).map(|came| 40 + 11 * (came / 11)).collect();
        prop_assert_eq!(seen, expected);
    }
}

/// Every report, on the invented network: one family goes, and no figure tells that it did.
#[test]
fn no_report_tells_that_one_family_left() {
    let network = Network::of(77, 60);
    let reports = Report::all().unwrap();
    let first: Vec<Published> =
        reports.iter().map(|report| publish(&network.store, report, &Rule::CMS).unwrap()).collect();
    let told: usize = first
        .iter()
        .flat_map(|p| &p.rows)
        .filter(|row| row.last() == Some(&Cell::Null) || row.last().and_then(Cell::text) == Some("spread"))
        .count();
    assert!(told > 20, "there is something to be told: {told}");
    let family = network.rows("families")[0][0].text().unwrap().to_owned();
    let gone = BTreeMap::from([(family.clone(), None)]);
    network.store.change(network.store.bucket_of(&family), &Change { gone, ..Change::default() }).unwrap();
    let mut as_before = 0;
    for (report, first) in reports.iter().zip(&first) {
        let second = publish(&network.store, report, &Rule::CMS).unwrap();
        let (before, after) = (by_cell(report, first), by_cell(report, &second));
        for (cell, row) in &after {
            let at = |row: &Row| row[..row.len() - 1].to_vec();
            let hidden = matches!(row.last().and_then(Cell::text), Some("small" | "with_small"));
            if let Some(before) = before.get(cell).filter(|_| !hidden) {
                assert_eq!(at(before), at(row), "{} {cell:?}", report.name);
            }
            as_before += usize::from(row.last().and_then(Cell::text) == Some("as_before"));
        }
    }
    assert!(as_before > 10, "it was in some cells: {as_before}");
}

/// Told, hidden beside a small cell, and told again with one family more: it is as it was told.
#[test]
fn what_was_hidden_in_between_is_held_against_what_was_told() {
    let folder = tempfile::tempdir().unwrap();
    let store = bare_network(folder.path(), &vec![(0, 1, 0); 20]);
    let report = Report::named("trends").unwrap();
    let told = |published: &Published| {
        let row = published.rows.iter().find(|row| row[1] == Cell::from("holding")).unwrap();
        (families(published, row), row.last().and_then(Cell::text).map(str::to_owned))
    };
    assert_eq!(told(&publish(&store, &report, &Rule::CMS).unwrap()), (Some(20), None));
    let rising: Vec<_> = (500..503).map(|number| bare(number, "one", GESTATIONS[1], "rising")).collect();
    put_all(&store, rising.iter().map(|(_, change)| change.clone()));
    assert_eq!(told(&publish(&store, &report, &Rule::CMS).unwrap()), (None, Some("with_small".to_owned())));
    let gone = rising.into_iter().map(|(family, _)| (family, None)).collect();
    store.change(0, &Change { gone, ..Change::default() }).unwrap();
    put_all(&store, [bare(600, "one", GESTATIONS[1], "holding").1]);
    assert_eq!(told(&publish(&store, &report, &Rule::CMS).unwrap()), (Some(20), Some("as_before".to_owned())));
}

#[test]
fn a_store_goes_by_one_rule() {
    let folder = tempfile::tempdir().unwrap();
    let store = bare_network(folder.path(), &vec![(0, 1, 0); 40]);
    let report = Report::named("trends").unwrap();
    publish(&store, &report, &Rule::NHS).unwrap();
    assert!(publish(&store, &report, &Rule::CMS).unwrap_err().to_string().contains("nhs"));
}

/// Asked for a site of three families, a report says that they are few and no more.
#[test]
fn a_site_of_three_families_says_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let store = bare_network(folder.path(), &[vec![(0, 1, 0); 40], vec![(1, 1, 0); 3]].concat());
    let report = Report::named("follow_up").unwrap();
    let published = publish(&store, &report, &Rule::CMS).unwrap();
    let of_two: Vec<&Row> = published.rows.iter().filter(|row| row[0] == Cell::from("two")).collect();
    assert_eq!(of_two.len(), 1);
    assert_eq!(families(&published, of_two[0]), None);
    assert_eq!(published.cell(of_two[0], SUPPRESSED), Some(&Cell::from("small")));
}
