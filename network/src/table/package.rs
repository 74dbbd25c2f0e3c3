//! What the tables are, for other programs (Frictionless Data Package 1.0) and for the docs.

use serde_json::{json, Value};

use super::{Holds, Table, TABLES, VERSION};

/// The data package that lies in a store.
pub fn package() -> Value {
    json!({
        "profile": "data-package",
        "name": "drawwell-network",
        "version": VERSION.to_string(),
        "resources": TABLES.iter().map(resource).collect::<Vec<_>>(),
    })
}

fn resource(table: &Table) -> Value {
    let fields: Vec<Value> = table
        .columns
        .iter()
        .map(|column| {
            json!({
                "name": column.name,
                "type": match column.holds { Holds::Whole => "integer", Holds::Text => "string" },
                "description": format!("{} ({}).", column.meaning, column.unit),
                "constraints": { "required": !column.may_lack },
            })
        })
        .collect();
    json!({
        "name": table.name,
        "path": format!("{}/network_version={VERSION}/", table.name),
        "format": "parquet",
        "description": format!("A row is {}. From {}.", table.one_row, table.source),
        "schema": { "fields": fields },
    })
}

/// The same as a page.
pub fn page() -> String {
    let mut page = String::new();
    for table in TABLES {
        page.push_str(&format!("\n**{}**: a row is {}. From {}.\n\n", table.name, table.one_row, table.source));
        page.push_str("| column | unit or words | what it is |\n|---|---|---|\n");
        for column in table.columns {
            let lacks = if column.may_lack && column.holds == Holds::Whole { ", or null" } else { "" };
            page.push_str(&format!("| `{}` | {}{lacks} | {} |\n", column.name, column.unit, column.meaning));
        }
    }
    page
}
