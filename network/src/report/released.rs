//! What was published before, so that no two reports of one store show a few families between
//! them. A cell is published anew only where it is of the same families as before, or where
//! enough came or left together; else what was published before is published again. So leaving
//! one family out, or taking three in from one more site, changes no figure.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use datafusion::arrow::array::{ArrayRef, RecordBatch, StringArray};
use datafusion::arrow::compute::{cast, concat_batches};
use datafusion::arrow::datatypes::{DataType, Field, Schema, SchemaRef};
use datafusion::parquet::arrow::ArrowWriter;
use datafusion::parquet::basic::{Compression, ZstdLevel};
use datafusion::parquet::file::properties::WriterProperties;
use serde::{Deserialize, Serialize};

use super::engine::Engine;
use super::listed::BETWEEN;
use super::small_cells::SUPPRESSED;
use super::{Published, Report, Rule};
use crate::store::manifest::Part;
use crate::store::Store;
use crate::table::Cell;
use crate::trouble::Stop;

/// The word for a row that stays as it was published before.
pub const AS_BEFORE: &str = "as_before";

/// What was published last.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
struct Release {
    /// How many there were, with this one.
    number: u64,
    /// By which rule; a store goes by one.
    rule: String,
    /// Each published row, by its cell.
    rows: BTreeMap<String, Vec<Option<serde_json::Value>>>,
    /// The families of each published cell.
    members: Option<Part>,
}

fn folder(report: &Report) -> String {
    format!("released/{}", report.name)
}

fn members_schema() -> SchemaRef {
    Arc::new(Schema::new(vec![Field::new("cell", DataType::Utf8, true), Field::new("family", DataType::Utf8, false)]))
}

fn last(store: &Store, report: &Report) -> Result<Release, Stop> {
    let listed = store.objects().list(&folder(report))?;
    let number = |path: &String| path.rsplit('/').next()?.strip_suffix(".json")?.parse::<u64>().ok();
    let Some(last) = listed.iter().filter_map(number).max() else { return Ok(Release::default()) };
    let path = format!("{}/{last:08}.json", folder(report));
    let bytes = store.objects().get(&path)?.ok_or_else(|| Stop::Damaged { file: path.clone(), why: "it is gone" })?;
    serde_json::from_slice(&bytes).map_err(|why| Stop::Json { what: "a release", why })
}

/// Publishes a report beside what was published before.
///
/// # Errors
/// Where the store can't be read or written, or was reported by another rule before.
pub fn publish(
    store: &Store,
    engine: &Engine<'_>,
    report: &Report,
    rule: &Rule,
    mut now: Published,
) -> Result<Published, Stop> {
    let before = last(store, report)?;
    if before.number > 0 && before.rule != rule.name {
        return Err(Stop::refused(format!("{} goes by the rule {} in this store", report.name, before.rule)));
    }
    let paths: Vec<String> = before.members.iter().map(|part| part.path.clone()).collect();
    engine.register("released", &paths, &members_schema())?;
    let pinned = pinned(engine, report, rule, &before)?;
    let mut rows = BTreeMap::new();
    let mut fresh = BTreeSet::new();
    let mut kept = BTreeSet::new();
    let suppressed = now.at(SUPPRESSED).unwrap_or(0);
    let names = name_of(&now, report);
    let mut seen: BTreeSet<String> = BTreeSet::new();
    for (row, name) in now.rows.iter_mut().zip(names) {
        seen.insert(name.clone());
        if let Some(old) = before.rows.get(&name).filter(|_| pinned.contains(&name)) {
            *row = old.iter().map(as_cell).collect();
            if let Some(says) = row.get_mut(suppressed) {
                *says = AS_BEFORE.into();
            }
            rows.insert(name.clone(), old.clone());
            kept.insert(name);
            continue;
        }
        let hidden = row.get(suppressed).and_then(Cell::text).is_some_and(|why| why != "spread");
        if !hidden {
            rows.insert(name.clone(), row.iter().map(as_json).collect());
            fresh.insert(name);
        }
    }
    // A cell that nobody is in any more, by a few that left it.
    for (name, old) in before.rows.iter().filter(|(name, _)| pinned.contains(*name) && !seen.contains(*name)) {
        let mut row: Vec<Cell> = old.iter().map(as_cell).collect();
        if let Some(says) = row.get_mut(suppressed) {
            *says = AS_BEFORE.into();
        }
        now.rows.push(row);
        rows.insert(name.clone(), old.clone());
        kept.insert(name.clone());
    }
    // What is hidden now was told once: it is held against that when it is told again.
    for (name, old) in before.rows {
        if let Entry::Vacant(place) = rows.entry(name) {
            kept.insert(place.key().clone());
            place.insert(old);
        }
    }
    let number = before.number + 1;
    let members = write_members(store, engine, report, number, &fresh, &kept)?;
    let release = Release { number, rule: rule.name.to_owned(), rows, members: Some(members) };
    let text = serde_json::to_vec(&release).map_err(|why| Stop::Json { what: "a release", why })?;
    if !store.objects().put_new(&format!("{}/{number:08}.json", folder(report)), text)? {
        return Err(Stop::refused("the report is being published by somebody else: do it again"));
    }
    sweep(store, report, &release)?;
    Ok(now)
}

/// Cells that were published before and of which a few families came or left since.
fn pinned(engine: &Engine<'_>, report: &Report, rule: &Rule, before: &Release) -> Result<BTreeSet<String>, Stop> {
    if before.rows.is_empty() {
        return Ok(BTreeSet::new());
    }
    let sql = format!(
        "SELECT coalesce(n.cell, b.cell) AS cell, CAST(count(b.family) AS BIGINT) AS was,
           CAST(count(*) FILTER (WHERE n.family IS NULL OR b.family IS NULL) AS BIGINT) AS moved
         FROM ({}) n FULL JOIN released b ON n.cell = b.cell AND n.family = b.family
         GROUP BY coalesce(n.cell, b.cell)",
        report.members()
    );
    let found = engine.run(&sql)?;
    let few = |row: &&Vec<Cell>| match row.as_slice() {
        [_, Cell::Whole(was), Cell::Whole(moved)] => *was > 0 && (1..rule.under.max(report.smallest)).contains(moved),
        _ => false,
    };
    let name = |row: &Vec<Cell>| row.first().and_then(Cell::text).map(str::to_owned);
    Ok(found.rows.iter().filter(few).filter_map(name).collect())
}

/// Keeps the families of what is published: those of now, or those of before.
fn write_members(
    store: &Store,
    engine: &Engine<'_>,
    report: &Report,
    number: u64,
    fresh: &BTreeSet<String>,
    kept: &BTreeSet<String>,
) -> Result<Part, Stop> {
    let names = |all: &BTreeSet<String>| -> Result<RecordBatch, Stop> {
        let column: ArrayRef = Arc::new(all.iter().map(|name| Some(name.as_str())).collect::<StringArray>());
        let schema = Schema::new(vec![Field::new("cell", DataType::Utf8, true)]);
        Ok(RecordBatch::try_new(Arc::new(schema), vec![column])?)
    };
    engine.register_rows("published_now", names(fresh)?)?;
    engine.register_rows("published_before", names(kept)?)?;
    let sql = format!(
        "SELECT n.cell AS cell, n.family AS family FROM ({}) n JOIN published_now p ON n.cell = p.cell
         UNION ALL
         SELECT b.cell AS cell, b.family AS family FROM released b JOIN published_before p ON b.cell = p.cell
         ORDER BY cell, family",
        report.members()
    );
    let schema = members_schema();
    let mut bytes = Vec::new();
    let properties = WriterProperties::builder()
        .set_compression(Compression::ZSTD(ZstdLevel::try_new(3)?))
        .set_created_by("drawwell-network".to_owned())
        .build();
    let mut writer = ArrowWriter::try_new(&mut bytes, Arc::clone(&schema), Some(properties))?;
    for batch in engine.batches(&sql)? {
        let columns =
            batch.columns().iter().map(|column| cast(column, &DataType::Utf8)).collect::<Result<Vec<_>, _>>()?;
        writer.write(&concat_batches(&schema, &[RecordBatch::try_new(Arc::clone(&schema), columns)?])?)?;
    }
    writer.close()?;
    let part = Part::of(format!("{}/members-{number:08}.parquet", folder(report)), &bytes, &[]);
    store.objects().put(&part.path, bytes)?;
    Ok(part)
}

/// Families of earlier releases are kept no longer than they are needed.
fn sweep(store: &Store, report: &Report, now: &Release) -> Result<(), Stop> {
    let kept = now.members.as_ref().map(|part| part.path.clone());
    for path in store.objects().list(&folder(report))? {
        if path.ends_with(".parquet") && Some(&path) != kept.as_ref() {
            store.objects().delete(&path)?;
        }
    }
    Ok(())
}

/// Which cell each row is.
fn name_of(published: &Published, report: &Report) -> Vec<String> {
    let name = |row: &Vec<Cell>| {
        let words = report.cells.iter().map(|column| match published.cell(row, column) {
            Some(Cell::Whole(whole)) => whole.to_string(),
            Some(Cell::Text(text)) => text.clone(),
            Some(Cell::Null) | None => String::new(),
        });
        words.collect::<Vec<_>>().join(&BETWEEN.to_string())
    };
    published.rows.iter().map(name).collect()
}

fn as_json(cell: &Cell) -> Option<serde_json::Value> {
    match cell {
        Cell::Null => None,
        Cell::Whole(whole) => Some((*whole).into()),
        Cell::Text(text) => Some(text.clone().into()),
    }
}

fn as_cell(value: &Option<serde_json::Value>) -> Cell {
    match value {
        Some(serde_json::Value::String(text)) => text.as_str().into(),
        Some(value) => value.as_i64().into(),
        None => Cell::Null,
    }
}
